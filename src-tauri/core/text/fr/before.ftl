### Une voiture déjà venue : ce qui l’amène, dans quelles conditions le bruit s’entend, ce que l’on avait trouvé.

occasion = Ce qui l’amène
occasion-complaint = Le symptôme, pour la première fois
occasion-after-repair = Contrôle après réparation
occasion-comeback = Le bruit est revenu après réparation
occasion-said-after-repair = Cette visite est un contrôle après une réparation.
occasion-said-comeback = Le bruit est revenu après une réparation.
conditions = S’entend à
conditions-about = Même vitesse, même rapport et même température la prochaine fois : avant et après se comparent.
conditions-speed = Vitesse
conditions-gear = Rapport
conditions-engine-warm = Moteur chaud
conditions-engine-cold = Moteur froid
speed-km = { $value } km/h
speed-miles = { $value } mph
conditions-gear-said = rapport { $gear }
conditions-again = Comme le { $day } : { $said }
field-conditions = S’entend à
field-occasion = Visite
before-title = Visites précédentes de cette voiture
before-known = { $count ->
    [one] Cette voiture est déjà venue une fois
   *[other] Cette voiture est déjà venue { $count } fois
}
before-take-car = Reprendre les données de la voiture
before-taken = Reprises. Vérifiez si elles sont encore justes.
before-step = Le { $day } : { $said }
before-none = Cet appareil ne connaît aucune visite précédente de cette voiture. Elle se cherche par son numéro de châssis ou sa plaque.
before-broken = Le registre de cette visite est abîmé. Ce qu’il dit ne prouve rien.
before-not-checked = Rien n’a été contrôlé à la main.
before-now = Cette visite
before-curve = Mouvement lu au comparateur, visite par visite, avec son incertitude
before-curve-about = { $place } : chaque point est une visite, la barre son incertitude. Après une réparation tout recommence : on lit un autre roulement ou un autre logement.
before-movement = { $place } : { $movement }
before-repaired = Réparée ici
before-open = Ouvrir cette visite
intake-warm-from = Palier chaud à partir de, °C (constructeur)
before-outcome = C’était : { $causes }
