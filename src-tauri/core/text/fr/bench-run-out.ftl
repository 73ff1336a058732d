# Battement de l’arbre, relevé à l’établi après le remontage

entry-run-out-read = Battement de l’arbre relevé
repair-run-out = Battement de l’arbre à côté du roulement, un tour : { $size } ({ $by }, { $at }). On ne connaît pas de limite valable pour tous les arbres.
ui-bench-run-out = Battement de l’arbre à côté du roulement, mm
ui-bench-run-out-about = Posez un comparateur sur l’arbre à côté du roulement, tournez l’arbre à la main d’un tour complet et notez toute la course de l’aiguille. On ne connaît pas de limite valable pour tous les arbres : la valeur sert à comparer.
error-run-out-refused = Aucun comparateur ne montre ce battement
error-run-out-refused-help = Saisissez toute la course de l’aiguille en millimètres, de 0 à 10.
