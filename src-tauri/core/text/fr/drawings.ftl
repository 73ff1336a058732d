### Ce que montre chaque dessin, en mots : au toucher, et pour qui ne peut pas le voir.

drawing-road-speed-vibration = Une voiture sur la route ; sous son plancher, des ondes qui grandissent de gauche à droite avec la vitesse.
drawing-idle-speed = Un compte-tours vu du siège du conducteur, l’aiguille au ralenti.
drawing-idle-noise = Le siège du conducteur avec une oreille ; des ondes sonores viennent de l’arbre sous le plancher.
drawing-idle-raise-effect = Un compte-tours dont l’aiguille monte un peu depuis le ralenti, et une oreille à côté.
drawing-misfire-evidence = Un outil de diagnostic avec une barre par cylindre ; une barre est plus haute que les autres.
drawing-air-leak-by-ear = Un long tube d’une oreille à une durite dont la fissure siffle.
drawing-air-leak-test = Une durite d’admission d’où sort de la fumée par une fissure, et une bombe aérosol barrée.
drawing-engagement-setting = Une échelle de régime avec deux repères : le standard du constructeur et le point où l’embrayage est réglé.
drawing-neutral-2500-buzz = Un compte-tours monté du ralenti à 2 500, un levier au point mort, et des ondes sous les pieds du conducteur.
drawing-running-stop = Une main qui coupe le moteur.
drawing-creep-noise = Une voiture qui avance lentement, un pied au-dessus du frein, et une oreille.
drawing-engagement-reset-effect = Une échelle de régime avec une flèche du repère relevé vers le repère standard.
drawing-housing-look = Une lampe qui éclaire le palier du roulement ; une fissure, une vis desserrée et une trace de graisse sont entourées.
drawing-play-vertical = Vue de côté, le palier ouvert. Les deux mains tiennent l’arbre près du roulement. Des flèches montrent le haut et le bas. Un œil surveille l’écart entre le roulement et le palier.
drawing-play-lateral = Vue dans l’axe de l’arbre. Les deux mains le tiennent près du roulement. Des flèches montrent la gauche et la droite. Un œil surveille l’écart entre l’arbre et le palier.
drawing-tube-open-check = Un tube ouvert sur sa longueur, l’arbre dedans sur ses roulements, et une main à l’un d’eux.
drawing-play-far-end = Deux mains tiennent l’arbre par son extrémité, près du cardan. Des flèches montrent le haut et le bas, et le travers de l’arbre.
drawing-turn-by-hand = Deux mains font rouler l’arbre sur lui-même, le long d’une flèche qui en fait le tour. Les doigts sont loin du cardan.
drawing-coupling-look = Un flector à trois bras ; une fissure dans le caoutchouc et une vis desserrée sont entourées.
drawing-shaft-look = L’arbre entier de côté ; un choc, de la fibre effilochée et la place d’une masse perdue sont entourés.
drawing-shield-and-mounts = Un écran thermique près de l’arbre et un support moteur ; un doigt appuie sur l’écran.

drawing-rigid = Où se trouve le roulement : l’arbre passe sous le plancher, du moteur au pont arrière. Près du moteur, son roulement est dans un palier rigide en métal.
drawing-rubber = Où se trouve le roulement : l’arbre passe sous le plancher en deux parties. Entre les deux, son roulement est dans un anneau de caoutchouc.
drawing-tube = Où se trouve le roulement : l’arbre passe dans un tube fermé sous le plancher. Ses roulements sont dans le tube.
