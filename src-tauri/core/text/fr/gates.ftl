### Conditions : une à la fois, confirmées avant les étapes qu'elles ouvrent. gates-GROUPE nomme le groupe,
### gates-GROUPE-why dit pourquoi cela vaut une demi-minute.

gates-running = Avant de lancer le moteur
gates-running-why = Un arbre qui tourne prend le tissu et entraîne la personne. Des mécaniciens en sont morts. Personnes formées et autorisées seulement ; vos règles locales passent avant.
gate-wheels-on-floor = Toutes les roues sont au sol, pas sur le pont élévateur.
gate-brake-and-chocks = Le frein de stationnement est serré et les roues sont calées.
gate-neutral-or-park = La boîte est au point mort ou sur P.
gate-doors-shut = Toutes les portes sont fermées : en ouvrir une peut lancer la pompe d’embrayage.
gate-nobody-near = Personne n’est sous la voiture ni près de son arbre et de ses roues.
gate-fumes-out = L’échappement est mené dehors, ou les portes de l’atelier sont ouvertes.
gate-clothing-secured = Vêtements amples, cordons et cheveux sont attachés.

gates-creep = Avant de laisser avancer la voiture
gates-creep-why = Une voiture qui avance seule ne s’arrête pour personne. Personnes formées et autorisées seulement ; vos règles locales passent avant.
gate-creep-wheels-on-floor = Toutes les roues sont au sol, pas sur le pont élévateur.
gate-creep-chocks-out = Les cales sont enlevées et la voie est libre devant.
gate-creep-foot-over-brake = Le conducteur est assis, le pied au-dessus du frein.
gate-creep-gear-selected = La marche ou la première est engagée, frein tenu.
gate-creep-driver-ready = Le conducteur est assis, le pied sur le frein, et la marche avant ou la première est engagée.
gate-creep-brake-off = Le frein de stationnement est desserré et les cales sont retirées.
gate-creep-distance = Dix mètres devant et cinq derrière sont libres et le restent.
gate-creep-nobody-around = Personne n’est devant la voiture, derrière ou dessous.
gate-creep-fumes-out = L’échappement est mené dehors, ou les portes de l’atelier sont ouvertes.

gates-lift = Avant que quelqu’un passe dessous
gates-lift-why = Une voiture qui glisse ou un arbre qui tourne ne prévient pas. Personnes formées et autorisées seulement ; vos règles locales passent avant.
gate-nobody-in-car = Personne n’est dans la voiture.
gate-engine-off = Si le point mort demande le contact, il a été mis d’abord. Maintenant le moteur est arrêté et la clé ou le badge est hors de portée. L’arrêt-démarrage, le démarrage à distance et le mode hybride « prêt » sont coupés.
gate-shaft-still = L’arbre est immobile.
gate-lift-rated = Le pont élévateur supporte cette voiture, et ses bras sont aux points de levage du constructeur.
gate-lift-inspected = Le contrôle du pont est à jour, et rien n’y est abîmé.
gate-not-alone = Quelqu’un à portée de voix sait que vous êtes sous la voiture.
gate-air-suspension = La suspension pneumatique, s’il y en a une, est en mode cric ou étayée.
gate-shaken-low = La voiture a été secouée à faible hauteur, et elle tenait bien.
gate-locks-engaged = Le pont repose sur ses verrous, ou les chandelles sont en place.
gate-platform-chocked = Sur un pont à plateaux, les roues sont calées avant le point mort. Sur deux colonnes elles pendent et peuvent tourner : personne n’y touche.
gate-heat-judged = La chaleur de l’échappement et de l’arbre a été contrôlée sans toucher (thermomètre infrarouge).
gate-eyes-covered = La protection des yeux est mise.
gate-high-voltage-untouched = On ne touche pas aux câbles orange haute tension : c’est un travail pour personnes habilitées.

## Sous la voiture, selon ce qui la porte.
gate-empty-and-still = Personne n’est dans la voiture, et l’arbre est immobile.
gate-lift-fits = Le pont supporte cette voiture, il est contrôlé et intact, et la tient aux points du constructeur. La suspension pneumatique est en mode cric ou étayée.
gate-wheels-chocked = Les roues au sol ou sur le pont sont calées dans les deux sens.
gate-pit-air = Pas de vapeurs dans la fosse : l’air y circule, rien n’y brûle ni ne fait d’étincelles.
gate-pit-way-out = La sortie de la fosse est libre, et ses bords ouverts sont protégés. La suspension pneumatique est en mode cric ou étayée.
gate-ramps-fit = Les rampes supportent cette voiture, sont intactes et posées sur un sol ferme et plat.
gate-ramps-firm = La voiture est en butée sur les rampes, et secouée, elle tenait bien. La suspension pneumatique est en mode cric ou étayée.
gate-stands-fit = Des chandelles qui supportent cette voiture sont aux points du constructeur, sur un sol ferme et plat. La voiture ne repose pas sur un cric.
gate-stands-chocked = Les roues encore au sol sont calées. La suspension pneumatique est en mode cric ou étayée.
gate-guarded = La protection des yeux est mise, la chaleur de l’échappement et de l’arbre a été contrôlée sans toucher, et on ne touche pas aux câbles orange.
