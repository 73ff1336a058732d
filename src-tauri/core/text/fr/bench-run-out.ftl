# Battement de l’arbre, relevé à l’établi après le remontage

entry-run-out-read = Battement de l’arbre relevé
repair-run-out = Battement de l’arbre à côté du roulement, un tour : { $size } ({ $by }, { $at }). On ne connaît pas de limite valable pour tous les arbres.
ui-bench-run-out = Battement de l’arbre à côté du roulement, mm
ui-bench-run-out-about = Posez un comparateur sur l’arbre à côté du roulement, tournez l’arbre à la main d’un tour complet et notez toute la course de l’aiguille. On ne connaît pas de limite valable pour tous les arbres : la valeur sert à comparer.
error-run-out-refused = Aucun comparateur ne montre ce battement
error-run-out-refused-help = Saisissez toute la course de l’aiguille en millimètres, de 0 à 10.

ui-ring-which = Quel roulement ?
ui-ring-place-one = Le seul
ui-ring-place-front = Avant
ui-ring-place-rear = Arrière
ui-ring-temperature = À quelle température est-il ?
ui-ring-cold = Froid
ui-ring-warm = Encore chaud
ui-ring-clearance = Jeu radial interne restant, mm (peut rester vide)
repair-ring-front = Roulement avant : { $line }
repair-ring-rear = Roulement arrière : { $line }
repair-ring-front-open = Le roulement avant n’a pas encore été tourné.
repair-ring-rear-open = Le roulement arrière n’a pas encore été tourné.
repair-ring-warm = Il était encore chaud : un palier chaud est plus large et lâche. Tournez-le de nouveau à froid.
repair-ring-clearance = Jeu radial interne restant : { $clearance }.
repair-ring-clearance-gone = IL NE RESTE AUCUN JEU INTERNE ({ $clearance }) : il chauffe et lâche tôt.
error-clearance-refused = Aucun roulement d’un arbre n’a ce jeu interne
error-clearance-refused-help = Saisissez-le en millimètres, de 0 à 1, par exemple 0,012, ou laissez vide.
