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
ui-error-no-core-help = Rien de ce qui est noté n’est perdu. Relancez Steady, puis ouvrez l’adresse qu’il affiche.
ui-error-screen = Cet écran a trébuché
ui-error-screen-help = Rien de ce qui est noté n’est perdu. Réessayez ; si cela revient, fermez Steady et ouvrez-le de nouveau.

## Qui travaille.
ui-technician = Votre nom
ui-technician-title = Qui est à la voiture ?
ui-technician-why = Votre nom figure à côté de tout ce que vous notez, et sur les documents. Il ne quitte cet appareil qu’avec eux.
ui-technician-change = Technicien : { $name }. Changer

## La liste des visites.
ui-new-visit = Nouvelle visite
ui-search = Plaque, VIN, client ou date
ui-found = { $total ->
    [0] Aucune visite
    [one] 1 visite
   *[other] { $total } visites
}
ui-empty = Aucune voiture n’est encore arrivée. Commencez par « Nouvelle visite ».
ui-nothing-found = Aucune visite ne correspond. Essayez moins de lettres.
ui-more = Voir plus
ui-steps-answered = { $answered } sur { $steps } étapes
ui-signed = Signé : { $decision }
ui-language = Langue
ui-language-name = Français
ui-theme = Apparence
ui-theme-system = Appareil
ui-theme-dark = Sombre
ui-theme-daylight = Plein jour
ui-versions = Version { $version }, savoir technique { $knowledge }

## Réception.
ui-intake = Réception
ui-layout = Comment la voiture porte son arbre
ui-layout-needed = Choisissez-en une. Le reste peut attendre.
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
ui-odometer = Compteur
ui-unit = Unité
ui-unit-km = km
ui-unit-miles = miles
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
ui-station = { $name } : { $answered } sur { $steps } répondues, { $word }
ui-all-steps = Toutes les étapes
ui-locked = Verrouillé
ui-step-where = { $station }, { $at } sur { $of }
ui-step-before = Étape précédente : { $title }
ui-step-after = Étape suivante : { $title }
ui-this-step = Cette étape
ui-show-how = Voir comment
ui-hide-how = Cacher comment
ui-drawing = Dessin : { $words } Appuyez pour le lire.
ui-disputed = Deux appareils ont donné ici des réponses différentes. La pire compte.
ui-milder = Adouci parce que : { $reason }
ui-temperature = Palier froid ou chaud ?
ui-temperature-cold = Froid
ui-temperature-warm = Chaud
ui-reading = Mesure en { $unit }, de { $min } à { $max }
ui-erase = Effacer le dernier chiffre
ui-undo = Annuler
ui-undo-what = { $about ->
    [none] Annuler : { $what }
   *[other] Annuler : { $what }, { $about }
}
ui-undo-nothing = Rien à annuler
ui-stop = STOP
ui-reason-title = Une réponse DANGER s’adoucit. Pourquoi ?
ui-reason-why = Votre raison reste au registre, et le constat la montre.
ui-reason-ok = Noter avec cette raison
ui-leave-as-is = Laisser tel quel

## La photo d'une étape.
ui-photo-take = Photo
ui-photo-again = Nouvelle photo
ui-photo-sending = On la garde …
ui-photo-none = Pas de photo
ui-photo-waived = Pas de photo, pourquoi ?
ui-photo-why = Pourquoi n’y a-t-il pas de photo ?
ui-photo-own-words = Avec vos mots
ui-photo-because = Pas de photo : { $reason }
ui-photo-of = Photo prise à : { $title }
ui-photo-larger = Montrer la photo plus grande ou plus petite
ui-photo-at = Gardée { $when }

## Conditions, ordre, sortie.
ui-gates-left = { $left ->
    [one] Reste une condition. Touchez-la une fois remplie.
   *[other] Restent { $left } conditions. Touchez chacune une fois remplie.
}
ui-gates-open = Toutes confirmées. Les étapes derrière sont ouvertes.
ui-confirmed = { $by }, { $when }
ui-order-title = Que faire d’abord ?
ui-order-why = Moteur tournant, l’échappement et le palier chauffent. Sous la voiture, il faut alors attendre, ou se brûler.
ui-order-running-first-about = Écouter d’abord, puis laisser refroidir avant de passer dessous.
ui-order-under-car-first-about = D’abord le contrôle à la main, à froid. Puis le moteur, si rien de dangereux n’a été trouvé.
ui-leave-running = Arrêtez le moteur. Prenez la clé ou le badge. Quittez le siège.
ui-leave-running-done = Le moteur est arrêté
ui-leave-creep = Arrêtez la voiture. Serrez le frein, moteur coupé. Remettez les cales.
ui-leave-creep-done = La voiture est arrêtée, moteur coupé
ui-leave-lift = Boîte de nouveau sur P ou en prise. Outils enlevés. Sortez de sous la voiture.
ui-leave-lift-done = Personne n’est sous la voiture
ui-leave-why = Les conditions de cette partie se referment. Pour revenir, il faudra les confirmer de nouveau.
ui-left = Cette partie est fermée

## Le résultat.
ui-why = Pourquoi
ui-unrated-why = Pas de classement avant le contrôle à la main. Pas encore contrôlé ne veut pas dire sûr.
ui-missing = Manque encore
ui-next-check = Prochain contrôle
ui-go-on = Continuer le contrôle
ui-causes = Causes, la plus probable d’abord
ui-causes-about = L’oreille et la main donnent un soupçon. Seul le contrôle à la main décide. Plusieurs peuvent être vraies à la fois.
ui-for = Pour
ui-against = Contre
ui-weight-for = { $step } : { $answer } la rend { $times } fois plus probable.
ui-weight-against = { $step } : { $answer } la rend { $times } fois moins probable.
ui-no-weights = Aucune réponse ne parle encore pour ou contre.
ui-road = Pour information : contrôle technique
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
ui-sign = Signer que j’ai reçu cette note
ui-sign-needs = Choisissez une des trois et signez au-dessus.
ui-sign-again = Signer de nouveau
ui-receipt-outdated = Quelque chose a été noté après cette signature. La note peut en dire plus que celle qui a été vue.
ui-note-hash = Cette note : SHA-256 { $hash }

## Le registre.
ui-chain-whole = { $entries ->
    [one] Une inscription. La chaîne est entière.
   *[other] { $entries } inscriptions. La chaîne est entière.
}
ui-chain-broken = LA CHAÎNE EST ROMPUE à l’inscription { $seq }. À partir de là, ce registre n’est pas ce qui a été écrit. Traitez la visite comme non contrôlée, et laissez les données de cet appareil telles quelles.
ui-ledger-broken = Le registre de cette visite est rompu à l’inscription { $seq }. Ne vous y fiez pas.
ui-ledger-empty = Rien n’est encore noté.
ui-ledger-head = Fin de la chaîne : { $head }
ui-reason-was = Raison : { $reason }
ui-superseded = Ne compte plus ; une inscription plus récente l’a remplacée.

ui-rating = Classement
ui-outcome = Où en est le contrôle
