### Le verdict de l'établi, et les conditions de la partie établi.

verdict-bearings-only = Roulements neufs dans le logement tel quel.
verdict-skim-and-sleeve = Reprendre le logement et y presser une chemise.
verdict-replace-housing = Remplacer le palier.
verdict-open = Pas encore de verdict : une chose qui en décide n’a pas été mesurée.
verdict-at-least-bearings-only = Toutes les issues restent possibles.
verdict-at-least-skim-and-sleeve = Des roulements neufs seuls sont exclus.
verdict-at-least-replace-housing = Une réparation plus légère est exclue.

verdict-why-cracked = Le palier est fissuré.
verdict-why-wall-too-thin = Une fois la bague logée, il resterait moins de paroi qu’il n’en faut.
verdict-why-out-of-round = Il est prouvé que le logement n’est pas rond.
verdict-why-roundness-not-decided = On ne sait pas encore si le logement est rond : mesurez-le plus finement.
verdict-why-ring-turned = Le roulement a tourné dans son logement.
verdict-why-loose-hot = Le roulement neuf aurait du jeu dans le logement chaud.
verdict-why-too-tight = L’ajustement pousserait le palier trop près de sa limite élastique.
verdict-why-seat-sound = Le logement est rond, serré et en bon état.

verdict-missing = Ni mesuré ni regardé : { $gaps }.
verdict-gap-cracks = si le palier est fissuré
verdict-gap-ring-marks = traces d’un roulement qui a tourné dans son logement
verdict-gap-diameter = diamètre du logement
verdict-gap-roundness = circularité du logement, avec son incertitude
verdict-gap-hot-fit = l’ajustement à la température la plus haute
verdict-gap-stress = contrainte du palier due à l’ajustement
verdict-gap-clean-up = la reprise qui blanchit tout autour
verdict-gap-clean-diameter = le diamètre auquel l’alésage était net tout autour
verdict-gap-wall-left = la paroi telle qu’elle est, mesurée assez finement pour dire ce qui reste
verdict-gap-wall-least = la paroi qui doit rester

verdict-gates = Confirmez avant le travail les conditions pour { $sets }.
verdict-gates-machining = la coupe
verdict-gates-heat = chauffer et refroidir
verdict-gates-refit = le remontage

closing-turns-freely = Après le remontage, vérifiez que le roulement tourne librement à la main, sans point dur. Prenez une photo, notez-le. S’il ne tourne pas librement, démontez de nouveau.

## Conditions. gates-GROUPE nomme le groupe, gates-GROUPE-why dit pourquoi cela vaut une demi-minute.
gates-teardown = Avant de déposer quoi que ce soit de lourd
gates-teardown-why = Une voiture sur un pont à deux colonnes bascule quand son poids se déplace. Moteur et boîte tombent quand leurs supports sont ôtés. Personnes formées et autorisées seulement ; vos règles locales passent avant.
gate-teardown-lift-gates-hold = Tout ce qui a été confirmé avant de passer dessous tient encore : verrous, chandelles, moteur arrêté, clé au loin.
gate-teardown-stands-and-straps = Les chandelles sont en place et la voiture est sanglée au pont élévateur.
gate-teardown-engine-and-gearbox-held = Moteur et boîte sont tenus par dessous avant de desserrer leurs supports.
gate-teardown-shaft-marked = La position de l’arbre est repérée aux deux extrémités.
gate-teardown-maker-procedure = La procédure du constructeur pour la dépose est sous la main et suivie.
gate-teardown-high-voltage = La haute tension, s’il y en a, a été isolée par des personnes habilitées avant de sortir un tube ou un arbre.

gates-heat = Avant de chauffer ou de refroidir quoi que ce soit
gates-heat-why = La chaleur détruit les joints d’étanchéité et ramollit l’alliage sans que cela se voie. La glace carbonique et l’azote liquide brûlent la peau et chassent l’oxygène. Personnes formées et autorisées seulement ; vos règles locales passent avant.
gate-heat-limits-known = Les limites des joints d’étanchéité, de la graisse et du palier sont connues, et un thermomètre est sur la pièce.
gate-heat-no-flame = Pas de flamme : four, plaque chauffante ou air chaud, également tout autour.
gate-heat-cold-ventilated = Les roulements étanches vont au congélateur, jusqu’à -40 °C et pas plus froid. Plus froid, seulement si le constructeur le permet et si l’air circule : cela chasse l’oxygène.
gate-heat-gloves = Les gants contre le chaud et le froid et la protection des yeux sont mis.

gates-machining = Avant de faire tourner l’outil
gates-machining-why = Les copeaux d’alliage léger volent et coupent, ceux de magnésium brûlent, et une broche qui tourne attrape le tissu. Personnes formées et autorisées seulement ; vos règles locales passent avant.
gate-machining-clamped = Le palier est bridé sur sa référence et ne peut pas glisser.
gate-machining-swarf-guarded = Les carters sont fermés, roulements et passages d’huile couverts. Magnésium : outils affûtés, pas d’eau, extincteur de classe D à portée.
gate-machining-eyes-covered = La protection des yeux est mise.
gate-machining-sleeves-tied = Pas de gants à la broche. Vêtements amples, cordons et cheveux sont attachés.
gate-machining-spindle-stopped = La broche est à l’arrêt avant toute mesure.

gates-refit = Avant de remettre la voiture sur ses roues
gates-refit-why = Les fixations défaites sont celles qui se desserrent. Personnes formées et autorisées seulement ; vos règles locales passent avant.
gate-refit-new-fasteners = Les vis et écrous que le constructeur veut neufs sont neufs.
gate-refit-maker-torque = Tous sont au couple du constructeur, dans l’ordre du constructeur.
gate-refit-turns-freely = L’arbre tourne librement à la main.
gate-refit-running-gates = Avant le premier démarrage, les conditions pour le moteur tournant sont confirmées à nouveau.

gates-press = Avant de presser quoi que ce soit
gates-press-why = Une pièce qui lâche sous la presse part comme un projectile. Personnes formées et autorisées seulement ; vos règles locales passent avant.
gate-press-ring-fitted = La presse n’appuie que sur la bague que l’on monte.
gate-press-housing-supported = Le palier est appuyé d’équerre, juste sous le logement.
gate-press-guarded = La presse est protégée, personne n’est dans son axe, et aucun marteau n’est utilisé.
gate-press-force = On arrête de presser dès que la force dépasse celle calculée.
verdict-gates-press = l’emmanchement
