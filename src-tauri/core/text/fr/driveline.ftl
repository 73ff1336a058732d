### Ce que les deuxièmes règles ont apporté : étapes et réponses pour les paliers en caoutchouc, les accouplements et le
### cliquetis au ralenti, montages, causes, raisons, et ce à quoi une évaluation se limite.

step-at-support = { $step } (palier { $number })
reason-at-support-1 = Au premier palier, le plus près de la boîte.
reason-at-support-1-owner = C’est le premier des roulements de l’arbre.
reason-at-support-2 = Au deuxième palier.
reason-at-support-2-owner = C’est le deuxième des roulements de l’arbre.
reason-at-support-3 = Au troisième palier.
reason-at-support-3-owner = C’est le troisième des roulements de l’arbre.

## Étapes.
step-support-look = Regarder le palier en caoutchouc
step-support-look-do = Éclairez le caoutchouc tout autour, des deux côtés, puis la patte et ses vis. Cochez ce que vous trouvez.
step-support-look-watch = Échappement chaud à côté. Ne vous pendez pas à la patte. Ne touchez pas aux câbles orange. La procédure du constructeur passe avant.
step-clutch-pedal-effect = Pédale d’embrayage enfoncée
step-clutch-pedal-effect-do = Boîte au point mort, moteur au ralenti. Enfoncez la pédale d’embrayage à fond. Le cliquetis disparaît-il ? Relâchez.
step-clutch-pedal-effect-watch = Restez assis, toujours au point mort. Pied prêt sur le frein. La procédure du constructeur passe avant.
step-selector-effect = Sélecteur sur marche
step-selector-effect-do = Appuyez fort sur le frein, moteur au ralenti. Passez en marche trois secondes. Le cliquetis disparaît-il ? Revenez sur P.
step-selector-effect-watch = La voiture tire : frein tenu, frein de stationnement serré, personne devant ni derrière. La procédure du constructeur passe avant.
drawing-support-look = L’anneau de caoutchouc autour du roulement et sa patte, éclairés par-dessous.
drawing-clutch-pedal-effect = Un pied enfonce à fond la pédale d’embrayage, moteur au ralenti.
drawing-selector-effect = Un pied tient le frein pendant que le sélecteur passe de P à marche.

## Réponses.
answer-not-seen = Pas pu le voir
answer-crazed = Craquelé
answer-torn = Déchiré
answer-torn-through = Déchiré de part en part
answer-off-centre = Affaissé ou décentré
answer-oil-soaked = Imbibé d’huile
answer-bracket-cracked = Patte fissurée
answer-springy = Élastique : sans cote connue
answer-knocks = Cogne : arrive en butée
answer-slides = Coulisse seulement
answer-bolt-loose = Vis desserrée
answer-bolt-missing = Vis absente
answer-boot-torn = Soufflet déchiré
answer-joint-stiff = Cardan dur
answer-touches-fibre = Touche un arbre en fibre
answer-support-look-sound = Bon tout autour
answer-clutch-pedal-effect-gone = Cliquetis disparu
answer-clutch-pedal-effect-less = Moins
answer-clutch-pedal-effect-same = Pareil
answer-selector-effect-gone = Cliquetis disparu
answer-selector-effect-less = Moins
answer-selector-effect-same = Pareil
answer-play-far-end-unsure = Incertain

## Montages.
layout-rigid-output-speed = Palier rigide, vitesse de sortie
layout-rigid-output-speed-about = Arbre en deux parties derrière la boîte, son roulement central tenu rigidement. Il est immobile au point mort. Poussé et tiré à la main, il ne doit pas bouger du tout.
layout-two-centres = Deux paliers centraux en caoutchouc
layout-two-centres-about = Arbre en trois parties derrière la boîte, avec deux roulements centraux dans des anneaux de caoutchouc. Chacun se contrôle à part ; le premier est le plus près de la boîte.
layout-one-piece = Une pièce, sans palier central
layout-one-piece-about = Un arbre de la boîte au pont arrière, un cardan à chaque bout et rien entre les deux. C’est le jeu aux bouts qui décide.
layout-front-shaft = Arbre avant, quatre roues motrices
layout-front-shaft-about = Arbre de la boîte de transfert au pont avant, un cardan à chaque bout. C’est le jeu aux bouts qui décide.
layout-half-shaft = Arbre de roue avec palier
layout-half-shaft-about = Arbre vers une roue avant, son roulement dans une patte à côté de la boîte. Il est immobile au point mort. Poussé et tiré à la main, il ne doit pas bouger du tout.
drawing-none = Un arbre avec un cardan à chaque bout et aucun roulement entre les deux.

## Causes.
cause-torsional-rattle = Cliquetis du volant, de l’embrayage ou des pignons
cause-torsional-rattle-about = Des pignons ou des pièces d’embrayage cliquettent au ralenti. Le roulement n’y est pour rien.
cause-wheel-or-tyre = Roue ou pneu
cause-wheel-or-tyre-about = Une roue ou un pneu est mal équilibré ou déformé et fait vibrer la voiture.
cause-joint-angle-or-balance = Angle ou équilibrage de l’arbre
cause-joint-angle-or-balance-about = L’arbre tourne sous un mauvais angle ou mal équilibré, et fait vibrer la voiture.
cause-misfire-next = Échangez la bobine ou la bougie entre deux cylindres et voyez si le défaut suit. Puis contrôlez l’équilibrage des injecteurs, puis la compression.
cause-torsional-rattle-next = Contrôlez le jeu du volant et les ressorts du moyeu d’embrayage avant d’accuser la boîte.
cause-wheel-or-tyre-next = Équilibrez les roues, contrôlez le voile des pneus et des jantes, et reprenez la même route à la même vitesse.
cause-joint-angle-or-balance-next = Mesurez les angles des cardans à hauteur de roulage et comparez-les à ceux du constructeur. Contrôlez le calage des cardans et les masses d’équilibrage.

## Raisons.
rule-support-broken = Le palier en caoutchouc est déchiré de part en part, sa patte fissurée ou une fixation desserrée.
rule-support-broken-owner = La pièce qui tient le roulement est déchirée de part en part, fissurée ou desserrée.
rule-support-torn = Le caoutchouc du palier est déchiré.
rule-support-torn-owner = L’anneau de caoutchouc qui tient le roulement est déchiré.
rule-support-ageing = Le palier en caoutchouc est décentré, imbibé d’huile ou craquelé.
rule-support-ageing-owner = L’anneau de caoutchouc qui tient le roulement est vieux, huileux ou déplacé.
rule-coupling-bolts = Une vis d’un accouplement est desserrée ou absente.
rule-coupling-bolts-owner = Une vis qui tient l’arbre est desserrée ou absente.
rule-mount-broken = Un support du moteur ou de la boîte est cassé.
rule-mount-broken-owner = Une pièce qui tient le moteur ou la boîte est cassée.
rule-touches-fibre = Quelque chose touche un arbre en fibre.
rule-touches-fibre-owner = L’arbre est en fibre, et quelque chose frotte dessus.
rule-far-end-unsure = Un mouvement au bout de l’arbre n’a pas pu être exclu. Recommencez avec une deuxième personne qui regarde le cardan.
rule-far-end-unsure-owner = Nous avons cherché du jeu au bout de l’arbre et nous ne sommes pas sûrs.
rule-drag-unchecked = Un sifflement ou un ronronnement, et l’arbre n’a pas été tourné seul : on ne sait pas si le roulement freine. Tournez-le désaccouplé.
rule-drag-unchecked-owner = Il y a un sifflement ou un ronronnement, et nous n’avons pas encore tourné l’arbre seul.
rule-bearing-likely-suspected = D’après ce qui a été entendu, un défaut du roulement est probable à 50 % au moins : soupçon, non confirmé à la main. Le confirmeraient du jeu à chaud, une rotation libre ou un comparateur.
rule-bearing-likely-suspected-owner = Ce que nous avons entendu peut venir du roulement. À la main, nous n’y avons rien senti d’anormal.

rule-no-bearing-action-play = Aucun jeu senti, et rien d’autre trouvé.
rule-no-bearing-action-play-owner = Nous avons contrôlé le roulement à la main. Il ne bouge pas plus qu’il ne doit, et nous n’y avons pas trouvé de défaut.
rule-no-bearing-action-play-not-reproduced = Non reproduit : rien entendu. Aucun jeu senti, et rien d’autre trouvé.
rule-no-bearing-action-play-not-reproduced-owner = Le bruit n’a pas été reproduit : il n’est pas venu pendant que nous avions la voiture. Nous avons cherché du jeu à la main et nous n’avons pas trouvé de défaut.
rule-no-bearing-action-play-not-listened = Non reproduit : aucun contrôle moteur tournant. Aucun jeu senti, et rien d’autre trouvé.
rule-no-bearing-action-play-not-listened-owner = Le bruit n’a pas été reproduit : nous n’avons pas lancé le moteur pour écouter. Nous avons cherché du jeu à la main et nous n’avons pas trouvé de défaut.

rule-no-bearing-action-ends = Aucun jeu senti aux bouts de l’arbre, et rien d’autre trouvé.
rule-no-bearing-action-ends-owner = Nous avons contrôlé à la main les deux bouts de l’arbre et nous n’y avons pas trouvé de défaut.
rule-no-bearing-action-ends-not-reproduced = Non reproduit : rien entendu. Aucun jeu senti aux bouts de l’arbre, et rien d’autre trouvé.
rule-no-bearing-action-ends-not-reproduced-owner = Le bruit n’a pas été reproduit : il n’est pas venu pendant que nous avions la voiture. Nous avons contrôlé à la main les deux bouts de l’arbre et nous n’y avons pas trouvé de défaut.
rule-no-bearing-action-ends-not-listened = Non reproduit : aucun contrôle moteur tournant. Aucun jeu senti aux bouts de l’arbre, et rien d’autre trouvé.
rule-no-bearing-action-ends-not-listened-owner = Le bruit n’a pas été reproduit : nous n’avons pas lancé le moteur pour écouter. Nous avons contrôlé à la main les deux bouts de l’arbre et nous n’y avons pas trouvé de défaut.
note-means-shaft-ends = L’arbre de transmission porte la force du moteur aux roues. Un cardan à chaque bout le tient.
note-open-play-far-end = Nous n’avons pas cherché de jeu aux bouts de l’arbre.

note-could-support-broken = Le roulement peut tomber en route. L’arbre peut alors frapper la voiture ou la route. Vous pourriez perdre le contrôle.
note-could-support-torn = Le caoutchouc peut se déchirer de part en part. Alors l’arbre peut battre, frapper la voiture et abîmer d’autres pièces.
note-could-support-ageing = Le caoutchouc peut s’abîmer encore et laisser l’arbre osciller.
note-could-coupling-bolts = Le cardan peut se défaire en route. Alors l’arbre peut frapper la voiture ou la route. Vous pourriez perdre le contrôle.
note-could-mount-broken = Le moteur peut trop bouger. Cela peut casser les cardans de l’arbre.
note-could-touches-fibre = La fibre peut être coupée là où ça frotte. L’arbre peut alors casser en route.
note-could-far-end-unsure = Si le cardan a du jeu, il peut s’user encore, jusqu’à ce que l’arbre se détache.
note-could-drag-unchecked = Si le roulement freine, il peut chauffer et casser.

## Ce à quoi une évaluation se limite.
limit-turn-by-hand = Limité au jeu ; le frottement du roulement n’a pas été contrôlé.
limit-turn-by-hand-owner = Nous n’avons pas contrôlé si le roulement freine.
limit-housing-look = Le palier n’a pas été regardé, ou pas en entier.
limit-housing-look-owner = Nous n’avons pas vu toute la pièce qui tient le roulement.
limit-support-look = Le palier en caoutchouc n’a pas été regardé, ou pas en entier.
limit-support-look-owner = Nous n’avons pas vu tout le caoutchouc qui tient le roulement.
limit-no-figure = Aucune cote connue, jugé au toucher.
limit-no-figure-owner = Nous ne connaissons pas la limite du constructeur. Nous avons jugé au toucher de combien le caoutchouc cède.
limit-tube-closed = Classé de l’extérieur : le tube est fermé, ses roulements n’ont pas été contrôlés.
limit-tube-closed-owner = Le tube autour de l’arbre est encore fermé. Nous n’avons regardé et écouté que de l’extérieur.
limit-tube-nothing = Pas encore contrôlé, et rien trouvé de l’extérieur.
limit-tube-nothing-owner = De l’extérieur, nous n’avons rien trouvé pour l’instant.
unknown-limit = { $step } : { $lack }

detail-degrees = Senti à { $degrees } °C
detail-engine-warm = Lu moteur chaud
detail-engine-cold = Lu moteur froid : ne compte pas pour les causes
detail-heard-front = Le plus fort à l’avant
detail-heard-middle = Le plus fort au milieu
detail-heard-rear = Le plus fort à l’arrière
detail-heard-all-along = Aussi fort dans toute la voiture

next-free-turn = Désaccouplez l’arbre et tournez-le seul : cela montre si son roulement freine.
next-far-end = Le bout est resté incertain : regardez son cardan.
next-unsure = C’est resté incertain : recommencez avec une deuxième personne qui regarde le cardan.

error-temperature-out-of-range = La température est hors plage
error-temperature-out-of-range-help = Entrez des degrés Celsius entre -40 et 150, ou froid ou chaud.
error-figure-missing = La cote de mouvement du constructeur n’est pas notée
error-figure-missing-help = Entrez la cote du constructeur, ou dites ce que la main a senti : « élastique » si cela cède et revient, « cogne » si cela bute, « incertain » si vous ne savez pas.

road-boot = Soufflet d’un cardan. Manuel MOT (UK) 6.1.7 (g) : mineure s’il est très dégradé, majeure s’il est absent, déchiré ou mal fixé et que la saleté entre ; pas d’issue critique dans cette ligne. Directive 2014/45/UE, annexe I, 6.1.7 (g) : mineure s’il est très dégradé, majeure s’il est absent ou cassé. Steady ne choisit pas ; vos règles locales décident.

## Demandé à côté d’une réponse.
ui-free-yes = Désaccouplé
ui-engine = Moteur chaud ou froid ?
ui-engine-warm = Moteur chaud
ui-engine-cold = Moteur froid
ui-feel-anew = Refaites-le et entrez ce que vous sentez maintenant.
ui-heard-at = Le plus fort où ?
ui-heard-front = Avant
ui-heard-middle = Milieu
ui-heard-rear = Arrière
ui-heard-all-along = Partout pareil
ui-temperature-degrees = Température du palier, degrés Celsius
ui-degrees = { $degrees } °C
ui-limits = Hors de ce classement
ui-support-none = Aucun roulement entre les bouts
ui-figure = Cote du constructeur, mm
ui-figure-keep = Noter la cote
ui-basis = D’où vient le chiffre
ui-earlier-rules = Cette voiture est entrée sous les règles { $then } ; le classement affiché suit les règles { $now }.
ui-cause-next = Ensuite : { $what }

## How a step is done at a support of its kind; without one, as everywhere.
step-play-vertical-do-rubber = Saisissez l’arbre au roulement. Poussez vers le haut, laissez descendre. Regardez roulement et support. Il revient : « Élastique ». Il bute : « Cogne ».
step-play-lateral-do-rubber = Saisissez l’arbre au roulement. Poussez à gauche, tirez à droite. Regardez roulement et support. Il revient : « Élastique ». Il bute : « Cogne ».
step-play-far-end-do-none = Saisissez l’arbre à un bout, puis à l’autre. Poussez de haut en bas, puis d’un côté à l’autre. Regardez chaque cardan. Coulisser en long est normal à un manchon coulissant.
next-warm = Senti à froid, ce qui n’écarte rien : recommencez le palier chaud.
