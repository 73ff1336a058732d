### The screens around the work: first start, settings, practice, the driver's seat, interruptions.

## First start.
ui-welcome-what-title = Contrôler le bruit à la main
ui-welcome-what = Steady vous mène pas à pas au palier d’un arbre de transmission : quoi écouter depuis le siège, quoi bouger à la main sous la voiture, quoi noter.
ui-welcome-maker = La procédure du constructeur et la loi locale passent avant Steady. Steady n’a besoin d’aucun réseau.
ui-welcome-rule-title = Seul le contrôle à la main décide
ui-welcome-rule = Bruit et vibration éveillent un soupçon. On ne le sait qu’en bougeant l’arbre à la main.
ui-welcome-open = Ce qui n’a pas été contrôlé n’est jamais dit sûr. Vous pouvez arrêter à chaque étape et revenir.

## Settings.
ui-settings = Réglages
ui-settings-of = Réglages. Technicien : { $name }
ui-thumb = Quel pouce commande l’écran ?
ui-thumb-left = Gauche
ui-thumb-right = Droit
ui-theme-contrast = Contraste élevé

## Practice.
ui-practice = Exercice
ui-practice-about = Parcourez chaque écran avec une voiture qui n’existe pas. Elle reste à part de vos visites, et aucun papier ni fichier ne peut en être fait.
ui-practice-start = Commencer une visite d’exercice
ui-practice-car = Voiture d’exercice
ui-practice-ribbon = Exercice. Pas une vraie voiture.
ui-practice-end = La supprimer

## The driver's seat.
ui-driver-open = Écran pour le conducteur
ui-driver-short = Conducteur
ui-driver-title = Vous êtes au volant
ui-driver-nobody = Personne n’est sous la voiture. Personne n’y va.
ui-driver-running-1 = Restez assis. Frein de stationnement serré, aucun rapport.
ui-driver-running-2 = Appuyez lentement, jusqu’à 2 500 tr/min environ.
ui-driver-running-3 = Tenez moins de dix secondes. Relâchez.
ui-driver-idle-1 = Restez assis. Frein de stationnement serré, pas de rapport.
ui-driver-idle-2 = Laissez tourner au ralenti. Pied hors de la pédale.
ui-driver-idle-3 = Si on vous le demande : appuyez un peu, lentement, puis lâchez.
ui-driver-creep-1 = Gardez le pied au-dessus du frein.
ui-driver-creep-2 = Lâchez le frein doucement. Avancez d’une longueur de voiture.
ui-driver-creep-3 = Freinez jusqu’à l’arrêt.
ui-driver-stop = ARRÊT IMMÉDIAT
ui-driver-stop-running = Fort cognement ou forte vibration : pied levé, moteur coupé.
ui-driver-stop-creep = Fort cognement, ou quelqu’un près de la voiture : freinez fort, moteur coupé.
ui-driver-stopped = J’ai dû couper
ui-driver-done = Terminé

## Interruptions.
ui-clock-behind = L’horloge de cet appareil retarde sur la dernière entrée de cette visite ({ $when }). Rien n’est perdu et l’ordre reste ; réglez l’horloge avant de continuer.

## Another layout chosen after steps were answered: what it takes back.
ui-relayout = Ce que le changement retire
ui-relayout-why = Ces réponses valent pour la voiture telle qu’inscrite d’abord, et ne valent plus maintenant. Elles restent dans le registre comme retirées, avec leurs photos :
ui-relayout-reason = L’une d’elles demandait DANGER ou AVERTISSEMENT : dites pourquoi elle est retirée.
ui-relayout-do = Changer
ui-relayout-keep = Laisser comme avant

## What a found DANGER closes.
ui-next-closed = Verrouillé, parce que DANGER a été trouvé et que le moteur ne tourne plus :
