### Mots courts du contrôle : mots de signalement, probabilité, stations, dispositions, verrous, inscriptions du registre.
### Mots de signalement selon l'usage d'ISO 3864 et d'ANSI Z535.

word-danger = DANGER
word-warning = AVERTISSEMENT
word-caution = ATTENTION
word-notice = AVIS
word-unrated = PAS ENCORE CONTRÔLÉ
headline-danger = NE PAS ROULER
headline-warning = Ne roulez pas : dépanneuse seulement
headline-caution = Prendre rendez-vous pour la réparation
headline-notice = Rien à faire au roulement
headline-unrated = Le contrôle à la main reste à faire

## L'échelle de probabilité du GIEC dans sa version française.
likelihood-virtually-certain = Quasiment certain
likelihood-very-likely = Très probable
likelihood-likely = Probable
likelihood-about-as-likely-as-not = À peu près aussi probable qu’improbable
likelihood-unlikely = Improbable
likelihood-very-unlikely = Très improbable
likelihood-exceptionally-unlikely = Exceptionnellement improbable

station-seat = Siège du conducteur
station-support = Palier
station-shaft = Arbre
station-far-end = Extrémité
station-around = Autour de l’arbre
station-account = Récit du client

layout-rigid-engine-speed = Palier rigide, régime moteur
layout-rigid-engine-speed-about = Un seul arbre du moteur à une boîte placée au pont arrière. Il tourne avec le moteur même à l’arrêt. Poussé et tiré à la main, il ne doit pas bouger du tout.
layout-rubber-centre = Palier central en caoutchouc
layout-rubber-centre-about = Arbre en deux parties derrière la boîte, son roulement central dans un anneau de caoutchouc. Un peu de souplesse est normal ; la valeur du constructeur est la limite.
layout-torque-tube = Tube de poussée
layout-torque-tube-about = Arbre au régime moteur dans un tube, sur plusieurs roulements. On ne peut pas le saisir avant d’ouvrir le tube selon le constructeur.

seat-bare = Logement en aluminium nu
seat-sleeved = Logement chemisé d’acier
gearbox-automated-clutch = Embrayage automatisé
gearbox-torque-converter = Convertisseur de couple
gearbox-manual = Boîte manuelle

sound-buzz = Bourdonnement
sound-knock = Cognement
sound-vibration = Vibration
sound-rattle = Cliquetis
sound-pops = Pétarades
sound-hiss = Sifflement d’air
sound-whine = Hurlement

waiver-cannot-reach = L’appareil ne peut pas l’atteindre
waiver-too-dark = Trop sombre pour une photo
waiver-hands-busy = Il fallait les deux mains
waiver-nothing-to-see = Rien à voir sur une photo
waiver-nothing-to-show = rien à montrer, noté par Steady lui-même
waiver-owner-declined = Le client ne veut pas de photos
waiver-not-in-case = Le fichier de cas ne nomme pas de photo

decision-repair = Je veux faire réparer
decision-decide-later = Je vais y réfléchir
decision-decline = Laisser tel quel, le risque m’a été signalé

entry-opened = Voiture arrivée
entry-amended = Réception modifiée
entry-order-chosen = Ordre choisi
entry-gate-confirmed = Condition confirmée
entry-lift-said = Changé ce qui porte la voiture
entry-part-left = Partie quittée, conditions refermées
entry-answered = Répondu
entry-photo-kept = Photo enregistrée
entry-photo-waived = Pas de photo, avec raison
entry-withdrawn = Retiré
entry-arranged = Complété par la relecture
entry-received = Note reçue et signée
arranged-gates-confirmed = Le cas omettait des conditions ; la relecture les a confirmées.
arranged-steps-ordered = Le cas donnait les réponses dans un autre ordre ; la relecture a rangé les étapes.
arranged-times-set-back = Le cas dit à combien de jours il remonte ; la relecture a reculé les heures de ses entrées.

lock-gates-open = Verrouillé : confirmez d’abord les conditions.
lock-other-part = Verrouillé : quittez d’abord la partie où vous êtes.
lock-gates-of-another = Verrouillé : quelqu’un d’autre a confirmé les conditions de cette partie. Quittez-la et confirmez-les vous-même.
lock-gates-too-old = Verrouillé : les conditions de cette partie ont été confirmées il y a trop longtemps. Quittez-la, regardez de nouveau et confirmez-les encore une fois.
lock-not-driven = Verrouillé : cette voiture ne doit pas rouler. Le résultat dit pourquoi.
lock-set-apart = Verrouillé : ce qui a été trouvé avec une autre disposition n’est pas réglé. Répondez de nouveau, ou retirez-le avec un motif.
lock-earlier-danger = Verrouillé : un DANGER antérieur de cette voiture n’est pas réglé. D’abord le contrôle à la main, moteur coupé.
lock-danger-found = Verrouillé : DANGER a été trouvé, le moteur ne tourne donc plus.

next-hands-on = Seul le contrôle à la main décide.

part-leave-running = Moteur arrêté, quittez le siège
part-leave-creep = Voiture arrêtée, frein serré
part-leave-lift = Sortez de sous la voiture

order-under-car-first = Tout, d’abord sous la voiture
order-running-first = Tout, d’abord le moteur
