### L'habillage des écrans : boutons, titres, indications. Ce que dit une étape, une réponse, une condition ou un
### document se trouve dans les fichiers voisins.

ui-name = Steady
ui-waiting = Un instant …
ui-retry = Réessayer
ui-dismiss = Fermer
ui-save = Enregistrer
ui-next = Suivant
ui-later = Plus tard
ui-no-plate = Sans plaque

## Quand le noyau est hors d'atteinte, ou qu'un écran trébuche.
ui-error-no-core = Les écrans n’atteignent pas Steady
ui-error-no-core-help = Rien de ce qui est noté n’est perdu. Relancez Steady ; dans un navigateur, ouvrez l’adresse qu’il indique.
ui-error-screen = Cet écran a eu une erreur
ui-error-screen-help = Rien de ce qui est noté n’est perdu. Réessayez ; si cela revient, fermez Steady et ouvrez-le de nouveau.

## Qui travaille.
ui-technician = Votre nom
ui-technician-title = Qui est à la voiture ?
ui-technician-why = Votre nom figure à côté de tout ce que vous notez, et sur les documents. Il ne quitte cet appareil qu’avec les documents et fichiers que vous transmettez.
ui-technician-change = Technicien : { $name }. Changer

## La liste des visites.
ui-new-visit = Nouvelle visite
ui-search = Plaque, VIN, client ou date
ui-search-only = Seulement les voitures classées { $word }
ui-found = { $total ->
    [0] Aucune visite
    [one] 1 visite
   *[other] { $total } visites
}
ui-empty = Aucune voiture n’est encore arrivée. Commencez par « Nouvelle visite ».
ui-card-still-open = Encore ouvert d’une visite précédente :
ui-nothing-found = Aucune visite ne correspond. Essayez moins de lettres.
ui-more = Voir plus
ui-steps-settled = { $settled } étapes sur { $steps } contrôlées{ $open ->
    [0] {""}
   *[other] , { $open } restées ouvertes
}
ui-repair-torn-down = Sur l’établi après démontage
ui-repair-turns-free = Le roulement a tourné librement après remontage
ui-repair-checked-again = Contrôlé de nouveau après la réparation
ui-outcome-confirmed = Confirmé : ce que c’était
ui-signed = Signé : { $decision }
ui-language = Langue
ui-theme = Apparence
ui-theme-system = Appareil
ui-theme-dark = Sombre
ui-theme-daylight = Plein jour
ui-versions = Version { $version }, règles et valeurs { $knowledge }
ui-notices = Logiciels tiers et leurs licences
ui-notices-about = Nomme chaque partie de Steady que d’autres ont faite, puis leurs licences, en anglais.
ui-notices-none = La liste n’est pas dans cette version.

## Réception.
ui-intake = Réception
ui-layout = Comment la voiture porte son arbre
ui-layout-needed = Choisissez-en une. Le reste peut attendre.
ui-layout-others = Une autre disposition
ui-support-rigid = Tenu rigidement : aucun mouvement à la main n’est permis.
ui-support-rubber = Tenu dans un anneau de caoutchouc : un peu de souplesse est normal.
ui-support-tube = Dans un tube : impossible à saisir.
ui-seat = Logement du roulement
ui-maker-figure = Mouvement selon le constructeur, mm
ui-complaint-sounds = Ce que le client remarque
ui-complaint = Avec les mots du client
ui-when = Quand cela arrive
ui-car = La voiture
ui-plate = Plaque
ui-label = Marque et modèle
ui-vin = VIN
ui-vin-fits = Le chiffre de contrôle est juste.
ui-vin-differs = Le chiffre de contrôle n’est pas juste. Regardez encore ; hors d’Amérique du Nord, cela ne veut pas forcément dire quelque chose.
ui-vin-not-a-vin = Pas un VIN complet : 17 signes, sans I, O ni Q.
ui-gearbox = Boîte
ui-number-unread = Pas lu comme un nombre. Écrivez des chiffres seuls, sans signe de milliers.
ui-odometer = Compteur
ui-unit = Unité
ui-unit-km = km
ui-unit-miles = miles
ui-unit-rpm = tr/min
ui-cylinders = Cylindres
ui-idle-range = Plage de ralenti du constructeur, tr/min
ui-idle-low = De
ui-idle-high = À
ui-owner = Le client
ui-owner-name = Nom
ui-owner-contact = Téléphone ou adresse
ui-start-visit = Commencer la visite
ui-discard = Jeter ce que j’ai écrit ici

## Le contrôle.
ui-to-visits = Vers la liste des visites
ui-to-intake = { $name }. Ouvrir la réception
ui-to-result = { $word }. Ouvrir le résultat
ui-live-rating = Classement de la visite : { $word }
ui-shaft-line = Stations le long de l’arbre
ui-station = { $name } : { $settled } sur { $steps } contrôlées{ $open ->
    [0] {""}
   *[other] , { $open } restées ouvertes
}, { $word }
ui-all-steps = Toutes les étapes
ui-locked = Verrouillé
ui-step-where = { $station }, { $at } sur { $of }
ui-step-before = Étape précédente : { $title }
ui-step-after = Étape suivante : { $title }
ui-this-step = Cette étape
ui-step-unrated = Inscrit
ui-show-how = Voir comment
ui-hide-how = Cacher comment
ui-more-behind = Suite
ui-drawing = Dessin : { $words } Appuyez pour le voir en grand.
ui-disputed = Deux appareils ont donné ici des réponses différentes. La pire compte.
ui-elsewhere = Ne compte pas : { $answer } ({ $by }, { $at }). La voiture était alors inscrite avec une autre disposition ou une autre cote. À contrôler de nouveau.
ui-elsewhere-drop = Retirer ce qui ne compte pas
ui-milder = Adouci parce que : { $reason }
ui-temperature = Palier froid ou chaud ?
ui-temperature-cold = Froid
ui-temperature-warm = Chaud
ui-temperature-first = Choisissez d’abord froid ou chaud
ui-above-first = Répondez d’abord à la question ci-dessus
ui-reading = Mesure en { $unit }, de { $min } à { $max }
ui-reading-usual = p. ex. { $usual }
ui-erase = Effacer le dernier chiffre
ui-undo = Annuler
ui-undo-what = { $about ->
    [none] Annuler : { $what }
   *[other] Annuler : { $what }, { $about }
}
ui-undo-nothing = Rien à annuler
# A refusal behind the name of the field that it is about.
ui-problem-at = { $field } : { $what }
ui-stop = STOP
ui-reason-title = Une réponse DANGER ou AVERTISSEMENT s’adoucit. Pourquoi ?
ui-reason-why = Votre raison reste au registre, et le constat la montre.
ui-reason-ok = Noter avec cette raison
ui-leave-as-is = Laisser tel quel

## La photo d'une étape.
ui-photo-take = Photo
ui-photo-again = Autre photo
ui-photo-sending = Enregistrement …
ui-photo-none = Pas de photo : pourquoi ?
ui-photo-waived = Pas de photo, pourquoi ?
ui-photo-why = Pourquoi n’y a-t-il pas de photo ?
ui-photo-own-words = Avec vos mots
ui-photo-because = Pas de photo : { $reason }
ui-photo-of = Photo prise à : { $title }
ui-photo-at = Enregistrée { $when }

## Conditions, ordre, sortie.
ui-gates-left = { $left ->
    [one] Reste une condition. Touchez-la une fois remplie.
   *[other] Restent { $left } conditions. Touchez chacune une fois remplie.
}
ui-gates-open = Toutes confirmées. Passez aux étapes.
ui-confirmed = { $by }, { $when }
ui-order-title = Comment voulez-vous contrôler ?
ui-order-why = Moteur tournant, l’échappement et le palier chauffent. Sous la voiture, il faut alors attendre, ou se brûler.
ui-order-running-first-about = Écouter d’abord. Puis dessous, palier encore chaud, échappement refroidi. Seul un contrôle à chaud peut écarter un bruit.
ui-order-under-car-first-about = D’abord le contrôle à la main, à froid. Puis le moteur, si rien de dangereux n’a été trouvé.
ui-leave-running = Arrêtez le moteur. Prenez la clé ou le badge. Quittez le siège.
ui-leave-running-done = Le moteur est arrêté
ui-leave-creep = Arrêtez la voiture. Serrez le frein, moteur coupé. Remettez les cales.
ui-leave-creep-done = La voiture est arrêtée, moteur coupé
ui-leave-lift = Outils enlevés. Tout le monde sort de sous la voiture. Ensuite seulement, de l’extérieur, boîte de nouveau sur P ou en prise.
ui-leave-lift-done = Personne n’est sous la voiture
ui-leave-why = Les conditions de cette partie se referment. Pour revenir, il faudra les confirmer de nouveau.
ui-leave-still = Avant de sortir de dessous :
ui-left = Cette partie est fermée

## Le résultat.
ui-why = Pourquoi
ui-unrated-why = Pas de classement avant le contrôle à la main. Pas encore contrôlé ne veut pas dire sûr.
ui-missing = Manque encore
ui-next-check = Prochain contrôle
ui-go-on = Continuer le contrôle
ui-causes = Causes, la plus probable d’abord
ui-causes-found = Causes : d’abord ce qui explique ce qui a été trouvé
ui-found-by-hand = Ce qui a été trouvé
ui-causes-about = Bruit et vibration donnent un soupçon. Seul le contrôle à la main décide. Plusieurs peuvent être vraies à la fois.
ui-for = Pour
ui-against = Contre
ui-weight-for = { $step } : { $answer } la rend { $times } fois plus probable.
ui-weight-against = { $step } : { $answer } la rend { $times } fois moins probable.
ui-weight-gauge-with = { $step }, au comparateur : ses relevés sont { $odds } fois plus probables avec du jeu que sans.
ui-weight-gauge-without = { $step }, au comparateur : ses relevés sont { $odds } fois plus probables sans jeu qu’avec.
ui-weight-makes-more = Cela la rend { $times } fois plus probable.
ui-weight-makes-less = Cela la rend { $times } fois moins probable.
ui-no-weights = Aucune réponse ne parle encore pour ou contre.
ui-road = Pour information : règles de contrôle (Royaume-Uni, UE)
ui-papers = Documents
ui-finding = Constat
ui-note = Note du client
ui-ledger = Registre

## Documents et reçu.
ui-paper-language = Langue de ce document
ui-sheet = Feuille
ui-sheet-a4 = A4
ui-sheet-us-letter = US Letter
ui-pdf-make = Faire le PDF
ui-pdf-making = En cours …
ui-pdf-open = Ouvrir
ui-pdf-save = Garder une copie
ui-pdf-where = Les papiers enregistrés vont dans le dossier des téléchargements.
ui-short-text = Texte court à envoyer
ui-copy = Copier
ui-copied = Copié.
ui-copy-by-hand = Le texte est sélectionné. Copiez-le d’ici.
ui-decision = Ce que vous décidez
ui-owner-signs = Votre nom (peut rester vide)
ui-sign-here = Signez ici du doigt
ui-pad-empty = Champ de signature, vide
ui-pad-signed = Champ de signature, signé
ui-pad-clear = Effacer la signature
ui-sign = Signer : j’ai reçu cette note
ui-sign-needs = Choisissez une des trois réponses et signez au-dessus.
ui-sign-again = Signer de nouveau
ui-receipt-outdated = Depuis la signature, ce qui est inscrit ou son classement a changé. La note peut en dire plus que celle qui a été vue.
ui-note-hash = Cette note : SHA-256 { $hash }

## Le registre.
ui-chain-whole = { $entries ->
    [one] Une inscription. Le registre est entier.
   *[other] { $entries } inscriptions. Le registre est entier.
}
ui-chain-broken = LE REGISTRE EST ABÎMÉ à partir de l’inscription { $seq }. Dès là, il n’est pas ce qui a été écrit. Traitez la visite comme non contrôlée, et laissez les données de cet appareil telles quelles.
ui-ledger-broken = Le registre de cette visite est abîmé à partir de l’inscription { $seq }. Ne vous y fiez pas.
ui-ledger-empty = Rien n’est encore noté.
ui-ledger-change = { $before }, maintenant { $now }
ui-ledger-head = Dernière empreinte : { $head }
ui-reason-was = Raison : { $reason }
ui-superseded = Ne compte plus ; une inscription plus récente l’a remplacée.

ui-rating = Classement
ui-outcome = Où en est le contrôle

## Le tri, ouvert.
ui-interval = entre { $low } et { $high }
ui-before = Avant toute réponse : { $before }.
ui-together-for = Prises ensemble, ces réponses la rendent encore { $times } fois plus probable.
ui-together-against = Ces réponses disent en partie la même chose : ensemble, elles comptent { $times } fois moins.
ui-causes-more = { $count ->
    [one] Une cause de plus
   *[other] { $count } causes de plus
}
ui-next-gain = En moyenne, cela épargne environ { $minutes } minutes de réparation inutile ou d’attente.
ui-next-none = Pas d’autre contrôle
ui-turn = Si « { $step } » donnait « { $answer } », { $cause } passerait en tête ({ $share }).
ui-judgements = Ce que coûterait une mauvaise décision
ui-judgements-about = Les pertes sont l’avis de l’atelier, comptées en minutes. Le classement ci-dessus suit ses règles et non ce tableau.
ui-judgement-acts = Maintenant { $now }. Le conseil changerait en dessous de { $at }.
ui-judgement-waits = Maintenant { $now }. Le conseil changerait à partir de { $at }.
ui-judgement-loss = { $course } : { $minutes ->
    [one] une minute perdue
   *[other] { $minutes } minutes perdues
} en moyenne, si { $loss }.
ui-judgement-alone = Ces nombres ne sont que l’avis de l’atelier : encore trop peu d’issues confirmées.
ui-taught = Ces nombres ont appris de { $outcomes } issues confirmées de cette disposition.
ui-opinion = Je pense que c’est …
ui-opinion-open = Je pense que c’est autre chose
ui-opinion-choose = Choisissez une cause
ui-opinion-why = Pourquoi
ui-opinion-about = L’avis figure au constat à côté du tri et ne le change pas.
ui-opinion-was = { $by } pense : { $cause }
ui-turned-out = Ce que c’était en fin de compte
ui-turned-out-about = Après le démontage ou la réparation : touchez chaque cause qui était vraiment là. Le tri en apprend.
ui-turned-out-choose = Ce qui était vraiment là
ui-turned-out-by = Qui le dit (vide : { $technician })
ui-turned-out-save = Confirmer
ui-turned-out-kept = Noté. Cela compte une fois, même corrigé souvent.
ui-turned-out-again = Confirmez de nouveau pour corriger ; les deux restent au registre.
ui-calibration = Combien de fois les causes étaient justes
ui-calibration-about = Compare ce qui a été dit de chaque cause à ce qui a été trouvé au démontage ou après la réparation.
ui-outcomes-count = { $outcomes ->
    [0] Pas encore d’issue confirmée
    [one] Une issue confirmée
   *[other] { $outcomes } issues confirmées
}
ui-judgement-alone-page = Les nombres reposent encore sur le seul avis de l’atelier. Ceux d’une disposition apprennent à partir de { $enough } issues.
ui-layout-taught = { $layout } : { $outcomes } issues ; ses nombres en ont appris.
ui-layout-not-taught = { $layout } : { $outcomes } issues sur { $enough }.
ui-reliability = Prévision et résultat
ui-reliability-about = De toutes les causes dites probables à environ 70 %, environ 70 % doivent se trouver là. Sur la ligne en tirets, c’est juste.
ui-reliability-drawing = Diagramme : en largeur la prévision, en hauteur combien de fois c’était vrai ; le tableau dessous en donne les nombres.
ui-said = Prévision
ui-was = Trouvé
ui-count = Nombre
ui-share = { $share } %
ui-scores = Scores, plus bas vaut mieux
ui-scores-about = Sur { $forecasts } probabilités : une par cause et par visite.
ui-brier = Score de Brier
ui-brier-calibration = dont calibration : dit trop haut ou trop bas
ui-brier-refinement = dont raffinement : ce que les groupes n’ont pas pu distinguer
ui-brier-grouping = dont regroupement : différences à l’intérieur d’un groupe
ui-log-score = Score logarithmique
ui-log-score-base = Le même avec les seules fréquences de base
ui-better-than-base = Le tri en dit plus que les fréquences de base de l’atelier.
ui-no-better-than-base = Pour l’instant, le tri n’en dit pas plus que les fréquences de base de l’atelier.
ui-weak-signs = Signes faibles
ui-weak-signs-about = Des signes à peu près aussi fréquents sans leurs causes qu’avec elles.
ui-weak-share = { $part } sur { $whole }
ui-weak-with = Avec une de ses causes : { $share }
ui-weak-without = Avec aucune d’elles : { $share }

## Le comparateur.
ui-gauge = Mesurer au comparateur
ui-gauge-back = Retour à : { $step }
ui-gauge-about = Les mains seules, pas de levier : poussez, lisez, tirez, lisez. Entrez chaque fois le mouvement total. Serrez ou vissez le pied du comparateur sur le carter même : aucun aimant ne tient sur l’aluminium. Un comparateur tranche « incertain » ; il n’efface jamais ce qu’une main a senti.
ui-gauge-readings = Mouvement total, de poussé à tiré
ui-gauge-reading = Lecture { $at }
ui-gauge-more = Une lecture de plus
ui-gauge-place = Où se trouve le comparateur
ui-gauge-at-bearing = Au roulement
ui-gauge-on-shaft = Ailleurs sur l’arbre
ui-lever = Quel roulement bouge, et autour de quoi l’arbre bascule
ui-lever-near = D’une paire, le roulement le plus proche du comparateur bouge
ui-lever-far = D’une paire, le roulement le plus loin du comparateur bouge
ui-lever-either = D’une paire, on ne sait pas lequel
ui-lever-joint = Un seul roulement
ui-lever-about-pair = Un roulement libre d’une paire fait basculer l’arbre autour de l’autre, non autour du cardan éloigné. Si l’on ne sait pas lequel, les deux sont calculés, et une preuve demande les deux.
ui-lever-about-joint = Un seul roulement : l’arbre bascule autour de son cardan éloigné.
ui-lever-apart = De roulement à roulement, mm
ui-lever-out = Du roulement le plus proche au comparateur, mm
ui-lever-joint-bearing = Du cardan au roulement, mm
ui-lever-joint-gauge = Du cardan au comparateur, mm
ui-gauge-mark = Sans valeur du constructeur, le jeu interne du roulement sert de repère. Ce n’est pas une limite officielle.
ui-gauge-bore = Alésage du roulement, mm
ui-gauge-group = Groupe de jeu
ui-gauge-group-none = Inconnu
ui-gauge-save = Noter les lectures
ui-gauge-plot = Lectures sur une ligne : les cercles sont les lectures, le disque est leur moyenne avec son intervalle, la ligne verticale est la limite.
ui-gauge-plot-about = Cercles : lectures. Disque et barre : moyenne et intervalle à 95 %. Ligne verticale : limite ; dans la bande grise, rien n’est prouvé.
ui-gauge-limit = limite
ui-trend-plot = Jeu au fil des visites : des points avec leurs intervalles, une droite qui les traverse, la limite en trait interrompu.
ui-trend-about = Points : les visites de cette voiture, chacune avec son intervalle. Droite : la tendance. Trait interrompu : limite.
ui-trend-first = il y a { $days } jours
ui-trend-today = aujourd’hui

## L'établi.
ui-bench = Établi
ui-bench-about = Après le démontage. C’est l’alésage qui décide si des roulements neufs suffisent pour que cela tienne.
ui-bench-about-rubber = Après démontage. Un palier en caoutchouc se remplace en entier, avec son roulement. Ne mesurez un alésage que là où le constructeur permet de garder le logement.
ui-bench-verdict = Verdict
ui-done = fait
ui-bench-next = Suite : { $part }
ui-bench-complete = Tout ce qui était demandé est enregistré. Le compte rendu de réparation peut être établi.
ui-bench-not-asked = pas demandé pour l’instant
ui-bench-no-plan = Mesurez d’abord l’alésage tel que trouvé : le plan en découle.
ui-bench-clean = L’outil a touché sur tout le tour. Aucune autre passe n’est nécessaire.
ui-bench-cut-more = Faire quand même une passe de plus
ui-measure-again = Mesurer de nouveau
ui-photo-back-bench = Retour à l’établi
ui-bench-look = Regarder le palier
ui-look-cracked = Une fissure, ou une patte cassée ?
ui-look-ring-turned = Des traces brillantes ou rayées d’un roulement qui a tourné dans son logement ?
ui-look-yes = Oui
ui-look-no = Non
ui-look-wall = Paroi minimale qui doit rester, mm
ui-bench-found = Alésage tel que trouvé
ui-bench-skim = Plan de reprise et passes
ui-bench-finished = Alésage fini
ui-bench-fit = Ajustement
ui-bench-ring = Après le remontage : tourner le roulement à la main
ui-bench-ring-about = Tournez l’arbre à la main dans son roulement, lentement, un tour entier. Il doit tourner librement : un roulement pressé dans un logement ovale tourne dur et s’use tôt.
ui-bench-notes = Visserie et couples
ui-bench-notes-about = Visserie neuve, au couple du constructeur. Écrivez ce qui a servi et d’où vient la valeur.
ui-bench-note = Note
ui-bench-passes = Passes faites
ui-bench-after-pass = Après la passe { $pass }
ui-bench-pass = Passe { $pass } : { $contact }
ui-bench-diameter = Diamètre après la passe { $pass }, mm (peut rester vide)
ui-bench-contact = La passe { $pass } est faite. Où l’outil a-t-il touché ?
ui-bench-photo-at = Photo { $at } sur { $of } de ce travail
ui-bench-photo-more = Prendre une autre photo
ui-contact-none = Nulle part
ui-contact-partly = Par endroits
ui-contact-all-round = Tout autour
ui-ring-free = Librement
ui-ring-stiff = Dur
ui-ring-rough = Avec des accrocs
ui-bore-kind = Comment il est mesuré
ui-bore-kind-two-point = Deux touches
ui-bore-kind-three-point = Trois touches
ui-bore-kind-dial = Comparateur balayé
ui-bore-kind-coordinates = Coordonnées
ui-bore-about-two-point = Diamètres entre deux touches opposées. Ne voit pas trois, cinq ou un autre nombre impair de lobes.
ui-bore-about-three-point = Diamètres par trois touches. Ne voit pas un ovale.
ui-bore-about-dial = Un comparateur balayé autour d’un plateau tournant, avec son signe et son zéro.
ui-bore-about-coordinates = Points d’une machine à mesurer, x et y depuis l’axe de référence : collés ici ou en fichier.
ui-bore-unit-mm = mm
ui-bore-unit-um = µm
ui-bore-unit-in = pouce
ui-bore-unit-thou = millième de pouce
ui-bore-resolution = Plus petit échelon
ui-bore-mpe = Plus grande erreur qu’il peut avoir
ui-bore-repeatability = Dispersion, si essayée
ui-bore-wall = Paroi la plus mince, mm, si mesurée
ui-bore-seat = Largeur du logement, mm
ui-bore-wall-error = Paroi mesurée à ± mm
ui-bore-turn = Les angles comptent
ui-bore-turn-clockwise = dans le sens horaire
ui-bore-turn-counter = dans le sens antihoraire
ui-bore-zero-diameter = Diamètre à zéro
ui-bore-zero = Le zéro était
ui-bore-zero-set = réglé sur une bague de cette cote
ui-bore-zero-nominal = seulement supposé
ui-bore-higher = Une lecture plus haute veut dire
ui-bore-higher-wider = plus large
ui-bore-higher-narrower = plus étroit
ui-bore-angles = Angles
ui-bore-depths = Profondeurs
ui-bore-depth = Profondeur, mm
ui-bore-at-depth = À { $depth } de profondeur
ui-bore-filled = { $done } lectures entrées sur { $all }
ui-bore-points = Points, un par ligne : x;y ou profondeur;x;y
ui-bore-pasted = { $done } lignes collées
ui-bore-save = Noter cet alésage
ui-bore-file = Ou prendre un fichier
ui-polar = La paroi à la profondeur { $depth }, son écart au rond dessiné plus grand que nature
ui-polar-scale = Écart dessiné { $times } fois plus grand. Tirets : rond.
ui-polar-clockwise = Les angles comptent dans le sens horaire.
ui-polar-counter = Les angles comptent dans le sens antihoraire.
ui-polar-flagged = Entouré : ne va pas avec ses voisins ; mesurez de nouveau.
ui-polar-mirrored = Cercle vide : dessiné d’après la lecture d’en face, pas mesuré ici.
ui-polar-unread = Ouvert : non mesuré. On ne sait pas ce qui s’y trouve.
ui-skim-picture = Après la passe { $pass }, { $share } % du tour est touché
ui-skim-pass = Passe { $pass } sur { $of }.
ui-skim-touched = { $share } % du tour touché.
ui-skim-clean = Blanchi tout autour.
ui-skim-diameter = Diamètre { $diameter }.
ui-skim-wall = Paroi restante : { $wall }.
ui-skim-wall-thin = LA PAROI EST TROP MINCE : arrêtez.
ui-skim-before = Passe précédente
ui-skim-after = Passe suivante
ui-skim-rings = Anneaux de l’extérieur vers l’intérieur : { $depths } de profondeur. Épais : touché.
ui-fit-about = Tout en mm, les incertitudes en µm. Une cote mesurée l’emporte sur une classe.
ui-fit-bearing = Le roulement
ui-fit-seat = Le logement
ui-fit-sleeve = La chemise
ui-fit-sleeve-material = Matière de la chemise
ui-fit-sleeved = Avec une chemise
ui-fit-measured = L’alésage mesuré ici : { $diameter } mm ± { $expanded } µm
ui-fit-unknown = Inconnu
ui-fit-bearing-od = Diamètre extérieur, nominal
ui-fit-bearing-bore = Alésage
ui-fit-bearing-width = Largeur
ui-fit-od = Diamètre extérieur, mesuré
ui-fit-od-u = son incertitude, µm
ui-fit-group = Groupe de jeu
ui-fit-class = Classe d’alésage
ui-fit-bore = Alésage du logement, mesuré
ui-fit-bore-u = son incertitude, µm
ui-fit-housing = Matière du palier
ui-fit-housing-od = Diamètre extérieur du palier
ui-fit-sleeve-od = Diamètre extérieur de la chemise
ui-fit-sleeve-od-u = son incertitude, µm
ui-fit-housing-bore = Alésage du palier pour la chemise
ui-fit-housing-bore-u = son incertitude, µm
ui-fit-temp-low = Température la plus basse en service, °C
ui-fit-temp-high = Température la plus haute en service, °C
ui-fit-save = Calculer l’ajustement
