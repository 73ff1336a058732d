# L’ancienne bague : s’il y en a une, comment elle sort, et ce qu’on a vu du palier

ui-look-dyed = Les fissures ont-elles été cherchées au ressuage ?
ui-look-sleeved = Une bague d’une réparation précédente est-elle dans l’alésage ?
ui-look-anew = La vieille chemise est sortie : cherchez de nouveau des fissures, aussi là où elle était. Les réponses d’avant ne comptent pas.
ui-bench-old-sleeve = Sortir l’ancienne bague
ui-old-sleeve-about = Une ancienne bague cache la paroi qui portera la nouvelle. Sortez-la, cherchez de nouveau des fissures et mesurez l’alésage derrière. La procédure du constructeur passe d’abord.
ui-old-sleeve-way = Comment est-elle sortie ?
ui-old-sleeve-heat = À chaud
ui-old-sleeve-heat-about = Chauffez le palier uniformément, jamais à la flamme ni au-dessus de sa limite, jusqu’à ce qu’il lâche la bague.
ui-old-sleeve-press = À la presse
ui-old-sleeve-press-about = Soutenez le palier juste sous le logement, pressez droit et arrêtez si rien ne bouge : la chaleur aide plus que la force.
ui-old-sleeve-bored = Par alésage
ui-old-sleeve-bored-about = Laissez une peau de l’ancienne bague et décollez-la. L’outil ne doit pas atteindre le palier.
ui-old-sleeve-outside = Diamètre extérieur de l’ancienne bague, mm (peut rester vide)
ui-old-sleeve-out = Elle est sortie
ui-old-sleeve-behind = Alésage derrière l’ancienne bague

look-line-cracked = LE PALIER EST FISSURÉ, ou une patte est cassée.
look-line-no-crack-dye = Aucune fissure trouvée au ressuage.
look-line-no-crack-eye = Aucune fissure vue à l’œil. Une fissure fine ne se voit qu’au ressuage.
look-line-cracks-open = Les fissures n’ont pas été cherchées.
look-line-ring-turned = Le roulement a tourné dans son logement.
look-line-ring-still = Aucune trace d’un roulement qui a tourné dans son logement.
look-line-ring-open = Les traces d’un roulement qui a tourné dans son logement n’ont pas été cherchées.
look-line-sleeved = Une bague d’une réparation précédente est, ou était, dans l’alésage.
look-line-bare = Aucune bague n’est dans l’alésage.
look-line-wall = Paroi qui doit rester : { $wall }.

sleeve-out-heat = L’ancienne bague est sortie à chaud.
sleeve-out-press = L’ancienne bague est sortie à la presse.
sleeve-out-bored = L’ancienne bague a été enlevée par alésage.
sleeve-out-size = Dehors, elle mesurait { $size }.
sleeve-out-grip = Face à l’alésage derrière, cela faisait { $grip } de serrage à froid.
sleeve-out-loose = L’ANCIENNE BAGUE ÉTAIT LIBRE : l’alésage derrière est plus large de { $grip }.
sleeve-out-look-again = Ce qu’elle cachait compte une fois qu’on y a cherché des fissures et mesuré.

verdict-why-old-sleeve-out = L’ancienne bague est sortie : l’alésage en reçoit une nouvelle.
verdict-gap-old-sleeve = si une ancienne bague est dans l’alésage
verdict-gap-behind-sleeve = l’ancienne bague sortie et l’alésage derrière mesuré
entry-sleeve-out = Ancienne bague sortie
entry-bore-behind = Alésage mesuré derrière l’ancienne bague
repair-heading-look = Palier regardé, ancienne bague
repair-bore-behind = Alésage derrière l’ancienne bague
repair-photo-bench-behind = Alésage derrière l’ancienne bague
repair-sleeve-out-by = Sortie par { $by }, { $at }.

error-sleeve-size-refused = Aucune bague d’un logement n’a ce diamètre extérieur
error-sleeve-size-refused-help = Saisissez-le en millimètres, de 1 à 1 000, ou laissez vide.
error-sleeve-still-in = L’ancienne bague est encore en place
error-sleeve-still-in-help = Notez d’abord comment l’ancienne bague est sortie. Un alésage avec sa bague se mesure tel que trouvé.
