### Ce dont une évaluation ne parle pas, un arbre tourné avec ce qui y tient, et ce qui ronfle avec la vitesse.

headline-notice-in-part = Rien à faire au roulement, pour ce qui a été contrôlé
finding-sum-notice-in-part = AVIS : rien à faire au roulement, pour ce qui a été contrôlé.
finding-next-unlooked = Avant de rendre la voiture, regardez ce qui a été laissé de côté : { $parts }.

## Ce que personne n’a regardé de la transmission.
limit-unlooked = Pas regardé, ou pas en entier : { $parts }. Ce classement n’en dit rien.
limit-unlooked-owner = Nous n’avons pas regardé, ou pas en entier : { $parts }. Nous ne pouvons rien en dire.
unlooked-play-far-end = le jeu au bout de l’arbre
unlooked-play-far-end-owner = le bout de l’arbre
unlooked-coupling-look = les cardans et leurs vis
unlooked-coupling-look-owner = les cardans et leurs vis
unlooked-shaft-look = l’arbre lui-même
unlooked-shaft-look-owner = l’arbre lui-même
unlooked-shield-and-mounts = les écrans et les supports
unlooked-shield-and-mounts-owner = les écrans thermiques et les pièces qui tiennent le moteur
ui-unlooked = Pas regardé

## Tourné avec les roues.
ui-free-engine = L’arbre est-il désaccouplé du moteur ?
ui-free-wheels = L’arbre est-il désaccouplé des roues et du pont ?
ui-free-no-engine = Entraîne le moteur
ui-free-no-wheels = Entraîne les roues
detail-free-engine = Tourné libre du moteur
detail-free-wheels = Tourné libre des roues et du pont
detail-not-free-engine = Tourné avec le moteur
detail-not-free-wheels = Tourné avec les roues
rule-stiff-with-wheels = L’arbre résiste, mais roues, freins et pont tournaient avec lui : on ne sait pas ce qui freine. Tournez-le désaccouplé.
rule-stiff-with-wheels-owner = L’arbre était dur à tourner, mais les roues tournaient avec lui. Nous ne l’avons pas encore tourné seul.
note-could-stiff-with-wheels = Ce qui freine peut chauffer et lâcher. Ce peut être un roulement, un cardan ou un frein.
limit-turn-by-hand-none = Limité au jeu ; les cardans n’ont pas été tournés seuls.
limit-turn-by-hand-none-owner = Nous n’avons pas tourné l’arbre seul.

## Les deux bouts d’un arbre que rien ne tient entre eux.
step-play-far-end-ends = Jeu aux deux bouts
rule-far-end-play-ends = Un mouvement en travers, ou un choc, a été senti à un bout de l’arbre ou aux deux. Notez lequel avant le travail.
rule-far-end-play-ends-owner = L’arbre a du jeu à un bout, ou aux deux.
rule-far-end-unsure-ends = Les deux bouts de l’arbre ont été contrôlés, et un mouvement n’a pas pu être exclu. Recommencez aux deux avec une deuxième personne qui regarde le cardan.
rule-far-end-unsure-ends-owner = Nous avons cherché du jeu aux deux bouts de l’arbre et nous ne sommes pas sûrs.

## Soupçon dans un tube encore fermé.
rule-bearing-likely-suspected-closed = D’après ce qui a été entendu, un défaut du roulement est probable à 50 % au moins : soupçon. Le tube est fermé, aucune main n’a pu le chercher. Ouvrir le tube selon le constructeur le dirait.
rule-bearing-likely-suspected-closed-owner = Ce que nous avons entendu peut venir d’un roulement dans le tube. Le tube est fermé : personne n’a encore pu le toucher.

## Ce qui ronfle avec la vitesse.
cause-wheel-bearing-or-axle = Roulement de roue, ou pignons du pont ou de la boîte de transfert
cause-wheel-bearing-or-axle-about = Un roulement de roue, ou des pignons du pont ou de la boîte de transfert, sont usés et ronflent quand la voiture roule.
cause-wheel-bearing-or-axle-next = Prenez un virage doux de chaque côté : un ronflement plus fort d’un côté est le roulement de la roue extérieure. Un hurlement qui va et vient avec la pédale est le pont ou, s’il y en a une, la boîte de transfert : contrôlez son huile et son jeu. Puis tournez chaque roue à la main sur le pont élévateur.
step-road-bend = Sur route : en virage
step-road-bend-do = Même vitesse, un long virage doux à gauche, puis un à droite. Un ronflement devient-il plus fort d’un côté ?
step-road-bend-watch = Route large sans trafic, pas de coups de volant. Fort cognement ou forte vibration : arrêtez-vous. La procédure du constructeur passe avant.
drawing-road-bend = Une voiture sur la route, avec des ondes sous le plancher.
answer-louder = Plus fort d’un côté
answer-road-bend-none = Pas de ronflement
answer-road-bend-same = Pareil des deux côtés
