### Ce qui tient : la paroi une fois la bague logée, la bague à chaud et à froid, les classes à chaud, et le levier d’un comparateur.

verdict-why-wall-not-decided = Qu’il reste assez de paroi à côté de la bague est dans l’incertitude de la paroi : mesurez-la plus finement.
verdict-why-sleeve-too-small = L’alésage pour la bague n’est pas blanchi : il faut une bague plus grande.
verdict-why-sleeve-loose-hot = La bague, ou le roulement dans la bague, serait libre à chaud : il faut plus de serrage.
verdict-why-sleeve-too-tight = La bague amènerait une pièce trop près de sa limite élastique : il faut moins de serrage.
verdict-gap-sleeve = la bague qui sera montée : son diamètre extérieur et l’alésage qui la reçoit
verdict-gap-sleeve-hot-fit = une bague qui tient à la température la plus haute
verdict-gap-sleeve-stress = une bague dont chaque pièce supporte la contrainte, avec le diamètre extérieur du carter

skim-sleeve-unknown = Ce plan ne compte aucune bague. Elle demande sa propre place, souvent un millimètre et plus de chaque côté : donnez sa cote avant de vous fier à la paroi.
skim-verdict-before-sleeve = L’alésage est blanchi tout autour à la passe { $passes }, et pour cette seule coupe la paroi suffit. La bague en prend davantage : on ne sait pas s’il en reste alors assez. Passes à prévoir : { $allow } ; arrêtez à la passe { $safe }, quel que soit le contact.
skim-verdict-before-sleeve-ample = L’alésage est blanchi tout autour à la passe { $passes }, et pour cette seule coupe la paroi suffit largement. La bague en prend davantage : on ne sait pas s’il en reste alors assez. Passes à prévoir : { $allow } ; s’il n’est pas blanchi alors, mesurez de nouveau avant de continuer.
skim-sleeve-too-small = L’alésage de { $bore } pour la bague n’est pas sûrement assez large pour être blanchi. Prenez une bague plus grande.
skim-sleeve-cut = Pour la bague, l’alésage va jusqu’à { $bore } : { $cut } sur le rayon là où l’on enlève le plus. Mesurez d’abord la paroi.
skim-sleeve-wall = Pour la bague, l’alésage va jusqu’à { $bore } : { $cut } sur le rayon là où l’on enlève le plus, et il y reste { $wall } de paroi.

fit-holding-classes = Jusqu’à { $celsius } °C, ces classes restent serrées dans chaque paire dans le carter nu : { $classes }.
fit-holding-none = AUCUNE CLASSE DU TABLEAU NE TIENT dans le carter nu jusqu’à { $celsius } °C : la plus serrée, { $class }, peut être libre au-dessus de { $loosens } °C.
fit-holding-no-range = Dans le carter nu, la classe la plus serrée du tableau, { $class }, peut être libre au-dessus de { $loosens } °C. Donnez les températures en service pour voir ce qui tient.
fit-holding-never = Dans le carter nu, la classe la plus serrée du tableau, { $class }, ne se libère à aucune température au-dessus de 20 °C.
fit-holding-bare = Ce qui tient : un alésage nu d’au plus { $bore } à 20 °C. Calculez sa contrainte avec l’alésage mesuré avant d’usiner.
fit-holding-sleeve = Ou une bague de { $material } avec plus de { $grip } de serrage dans le carter à 20 °C, son alésage d’au plus { $bore } une fois emmanchée : à chaud, le carter la relâche et son alésage s’ouvre.

gauge-other-lever = Avec l’autre levier, 1 mm au comparateur fait { $ratio } mm au roulement, et il bouge de { $mean }. { $decision }
gauge-remedy-find-lever = Trancherait : trouver quel roulement bouge et autour de quoi l’arbre bascule. Surveillez l’un des roulements avec un second comparateur.
