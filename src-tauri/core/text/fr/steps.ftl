### Les étapes : ce qui est contrôlé (step-ID), comment (-do) et à quoi faire attention (-watch).
### Lu avec des gants : court, à l'impératif. Le mode opératoire du constructeur passe avant tout.

step-road-speed-vibration = Vibration sur route
step-road-speed-vibration-do = Demandez au client. Une vibration augmente-t-elle avec la vitesse ?
step-road-speed-vibration-watch = Pas d’essai sur route pour le savoir. Essai seulement quand tout ce qui se sent et se voit sur cette voiture est en bon état.

step-idle-speed = Régime de ralenti
step-idle-speed-do = Laissez le moteur se stabiliser. Lisez le compte-tours ou l’outil de diagnostic. Entrez les tr/min.
step-idle-speed-watch = Restez sur le siège. Tenez tout le monde loin de l’arbre et des roues. La procédure du constructeur passe avant.

step-idle-noise = Bruit au ralenti
step-idle-noise-do = Écoutez depuis le siège. Cochez chaque bruit entendu. Un bruit non coché compte comme non entendu.
step-idle-noise-watch = Ne vous penchez pas sous la voiture pour mieux entendre. Fort cognement : arrêtez aussitôt le moteur. La procédure du constructeur passe avant.

step-idle-raise-effect = Ralenti un peu relevé
step-idle-raise-effect-do = Augmentez le ralenti de 150 à 200 tr/min de plus. Écoutez encore. Laissez-le redescendre.
step-idle-raise-effect-watch = Par la pédale ou selon le constructeur, depuis le siège. Pas de mains dans le compartiment moteur.

step-misfire-evidence = Signes de ratés
step-misfire-evidence-do = Lisez les compteurs de ratés de chaque cylindre. Lisez les codes défaut.
step-misfire-evidence-watch = Passez le câble loin des pédales et des courroies. Pour l’outil, suivez la procédure du constructeur.

step-air-leak-by-ear = Prise d’air, à l’oreille
step-air-leak-by-ear-do = Moteur tournant. Debout à côté de la voiture, hors du compartiment moteur. Promenez le bout d’un long tube sur les durites d’admission ; écoutez à l’autre bout.
step-air-leak-by-ear-watch = Personne ne se penche sur le moteur. Mains, cheveux, tube loin du ventilateur, des courroies, des pièces chaudes. Suivez la procédure du constructeur.
step-air-leak-test = Recherche de prise d’air
step-air-leak-test-do = Moteur arrêté. Remplissez l’admission de fumée. Regardez où elle sort, puis entrez ce que vous trouvez.
step-air-leak-test-watch = Jamais d’aérosol inflammable. Mains et cheveux loin du ventilateur, des courroies et des pièces chaudes. Suivez la procédure du constructeur. Redémarrez seulement quand tous se sont écartés.

step-engagement-setting = Réglage de la prise d’embrayage
step-engagement-setting-do = Lisez le régime où l’embrayage doit prendre. Comparez-le au standard du constructeur.
step-engagement-setting-watch = Lecture seule. Changer le réglage ici peut faire bouger la voiture. Suivez la procédure du constructeur.

step-neutral-2500-buzz = Bourdonnement vers 2 500 tr/min
step-neutral-2500-buzz-do = Au point mort, montez lentement à environ 2 500 tr/min. Tenez moins de dix secondes. Sentez si le plancher bourdonne sous les pieds.
step-neutral-2500-buzz-watch = L’arbre tourne avec le moteur même à l’arrêt. Cognement ou forte vibration : coupez le moteur. La procédure du constructeur passe avant.

step-running-stop = Avez-vous dû couper le moteur ?
step-running-stop-do = Moteur coupé maintenant. Dites ensuite pourquoi vous l’avez coupé.
step-running-stop-watch = Après un fort cognement ou une forte vibration, ne faites plus tourner le moteur. Passez au contrôle à la main. La procédure du constructeur passe avant.

step-creep-noise = Bruit en avançant lentement
step-creep-noise-do = Laissez avancer la voiture d’une longueur, pied au-dessus du frein. Écoutez. Arrêtez.
step-creep-noise-watch = La voiture bouge. Freinez aussitôt si quelqu’un approche. Pour la boîte, suivez la procédure du constructeur.

step-engagement-reset-effect = Prise d’embrayage remise au standard
step-engagement-reset-effect-do = Réglez le régime de prise au standard du constructeur. Laissez de nouveau avancer la voiture. Écoutez.
step-engagement-reset-effect-watch = Réglez seulement selon le constructeur, frein tenu. La voiture peut bondir au premier essai.

step-housing-look = Regarder le palier
step-housing-look-do = Éclairez le palier tout autour. Cherchez fissures, vis desserrées, traces, graisse ou poussière. Cochez ce que vous trouvez.
step-housing-look-watch = Échappement chaud tout près. Ne vous suspendez pas au palier. Ne touchez pas les câbles orange. La procédure du constructeur passe avant.

step-play-vertical = Jeu de haut en bas
step-play-vertical-do = Saisissez l’arbre près du roulement. Poussez-le vers le haut, laissez-le descendre. Regardez l’espace entre arbre et palier. S’ils bougent ensemble, répondez « Pas fait », regardez palier, vis et supports, puis recommencez.
step-play-vertical-watch = Les mains seules, pas de levier. Doigts loin des cardans et des arêtes. Restez loin des pièces chaudes. Suivez la procédure du constructeur.

step-play-lateral = Jeu d’un côté à l’autre
step-play-lateral-do = Saisissez l’arbre près du roulement. Poussez à gauche, tirez à droite. Regardez l’espace entre arbre et palier. S’ils bougent ensemble, répondez « Pas fait », regardez palier, vis et supports, puis recommencez.
step-play-lateral-watch = Les mains seules, pas de levier. Doigts loin des cardans et des arêtes. Restez loin des pièces chaudes. Suivez la procédure du constructeur.

step-tube-open-check = Roulements dans le tube ouvert
step-tube-open-check-do = Ouvrez le tube selon le constructeur. Cherchez à la main un mouvement à chaque roulement. Entrez ce que vous sentez.
step-tube-open-check-watch = Haute tension à bord : faites-la d’abord isoler par des personnes habilitées. De lourdes pièces se libèrent. Étayez-les avant de rien défaire, et suivez la procédure du constructeur à la lettre.

step-play-far-end = Jeu à l’extrémité
step-play-far-end-do = Saisissez l’arbre par son extrémité. Poussez de haut en bas, puis d’un côté à l’autre. Regardez le cardan. Coulisser en long est normal à un manchon coulissant.
step-play-far-end-watch = Les mains seules. Doigts hors du cardan : il pince. La procédure du constructeur passe avant.

step-turn-by-hand = Tourner l’arbre à la main
step-turn-by-hand-do = Seulement si le point mort est déjà mis ; sinon « Pas fait ». Tournez l’arbre lentement, un tour entier. Sentez s’il accroche ou freine. Des bosses régulières sont la compression : elles ne comptent pas.
step-turn-by-hand-watch = Loin des roues : suspendues, elles peuvent tourner. Doigts loin des cardans. Personne ne monte dans la voiture pour cela. La procédure du constructeur passe avant.

step-coupling-look = Regarder cardans et flectors
step-coupling-look-do = Éclairez chaque accouplement et chaque cardan. Cherchez fissures, caoutchouc ou soufflets déchirés, vis desserrées ou absentes, usure. Cochez ce que vous trouvez.
step-coupling-look-watch = Yeux protégés : rouille et saleté tombent. Pas de doigts entre les bras d’un cardan. La procédure du constructeur passe avant.

step-shaft-look = Regarder l’arbre
step-shaft-look-do = Regardez l’arbre aussi loin qu’il se voit. Cherchez chocs, plis, fibre effilochée, une tache claire à la place d’une masse.
step-shaft-look-watch = La fibre cassée coupe et pique : gants mis, n’y passez pas la main. Le moteur ne doit pas tourner l’arbre. La procédure du constructeur passe avant.

step-shield-and-mounts = Écrans et supports
step-shield-and-mounts-do = Appuyez sur chaque écran thermique près de l’arbre. Regardez les supports du moteur et de la boîte. Cherchez des traces de frottement.
step-shield-and-mounts-watch = Les bords des écrans coupent et peuvent brûler. Pas de levier sur un support en charge. La procédure du constructeur passe avant.
