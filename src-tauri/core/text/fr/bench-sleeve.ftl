# La nouvelle chemise : dehors, et son alésage avant l’emmanchement

fit-sleeve-outside = Pour cet alésage, la chemise mesure { $least } à { $most } dehors : le moins tient encore à la température la plus haute, le plus est encore supporté à la plus basse.
fit-sleeve-outside-least = Pour cet alésage, la chemise mesure au moins { $least } dehors, pour tenir à la température la plus haute. Ce qui est supporté à la plus basse n’est pas connu : l’extérieur du palier ou une limite élastique manque.
fit-sleeve-outside-unknown = Ce que la chemise peut mesurer dehors n’est pas connu : donnez la température la plus basse et la plus haute.
fit-sleeve-none-holds = AUCUNE CHEMISE de cette matière ne tient dans cet alésage à la température la plus haute tout en étant supportée à la plus basse. Prenez une autre matière, ou remplacez le palier.
fit-sleeve-closes = Une fois emmanchée, son alésage se ferme de { $least } à { $most }, { $mean } en moyenne.
fit-sleeve-bored = Alésez-la de { $least } à { $most } avant de l’emmancher, ou à la cote finie après.
fit-sleeve-bored-after = La fermeture varie plus que le logement ne le permet : alésez la chemise après l’avoir emmanchée.
