### Le comparateur sur l'arbre : ce que disent ses lectures, et ce qui empêche de les juger.

gauge-mean = Mouvement au roulement : { $mean }, d’après { $count ->
    [one] une lecture
   *[other] { $count } lectures
 }.
gauge-ratio = 1 mm au comparateur vaut { $ratio } mm au roulement.
gauge-interval = Avec 95 % de confiance, il est entre { $low } et { $high } (± { $expanded }, facteur { $factor }).
gauge-one-reading = Une seule lecture ne dit rien de sa propre dispersion, on ne peut donc pas donner d’intervalle.
gauge-doubtful = { $count ->
    [one] Une lecture est
   *[other] { $count } lectures sont
 } loin des autres. Regardez de nouveau le comparateur et son bras ; tout a été compté quand même.

gauge-limit-maker = Limite : { $limit }, la valeur du constructeur.
gauge-limit-internal-clearance = Repère : { $limit }, le plus grand jeu interne d’un tel roulement avant montage. Pas une limite officielle ; la valeur du constructeur passe d’abord.
gauge-limit-none = Aucune limite n’est connue : comparez, ne jugez pas.
gauge-bands = Prouvé dans la limite jusqu’à { $pass }, prouvé hors limite au-dessus de { $fail }.
gauge-bands-no-pass = Avec ce comparateur, rien ne peut être prouvé dans la limite ; prouvé hors limite au-dessus de { $fail }.

gauge-decision-proven = Un mouvement hors limite est prouvé.
gauge-decision-none-proven = Il est prouvé que le mouvement est dans la limite.
gauge-decision-not-decided = Pas décidé : les lectures ne prouvent ni l’un ni l’autre.
gauge-decision-compare = Pas jugé : aucune limite n’est connue.

gauge-meaning-felt = Cela compte comme un mouvement senti : DANGER, ne pas rouler.
gauge-meaning-beyond-figure = Cela compte comme un mouvement hors de la valeur du constructeur.
gauge-meaning-unsure = Cela compte comme incertain, ce qui ne veut jamais dire sûr.
gauge-meaning-replaces-unsure = Cela tranche une réponse incertaine. Cela n’efface jamais un mouvement senti à la main.
gauge-meaning-silent = Cela n’ajoute rien à ce que les mains ont senti. Comparez avec une voiture pareille ou avec une visite d’avant.

gauge-remedy-more-readings = Trancherait : { $readings } lectures en tout.
gauge-remedy-finer-gauge = Trancherait : un comparateur au { $resolution } { $unit }, avec une erreur tolérée d’au plus { $mpe } { $unit }.
gauge-remedy-at-bearing = Trancherait : le comparateur au roulement même.
gauge-remedy-finer-gauge-more-readings = Trancherait : un comparateur au { $resolution } { $unit }, avec une erreur tolérée d’au plus { $mpe } { $unit }, et { $readings } lectures en tout.
gauge-remedy-read-again = Mesurez de nouveau : au moins { $readings } lectures en tout, en lâchant l’arbre entre elles.
gauge-remedy-find-limit = Trouvez la limite : la valeur du constructeur, ou l’alésage et le groupe de jeu du roulement.
gauge-remedy-find-figure = Trouvez la valeur du constructeur pour ce palier ; sans elle, rien ne peut être jugé.
gauge-remedy-too-near-limit = D’autres lectures ne trancheront pas : le mouvement est trop près de la limite. Traitez-le comme incertain.

gauge-budget = Incertitude, la plus grande d’abord :
gauge-budget-line = { $source } : { $contribution }, { $share } de la variance
gauge-source-scatter = Dispersion des lectures
gauge-source-resolution = Échelon du comparateur
gauge-source-mpe = Erreur tolérée du comparateur
gauge-source-alignment = Comparateur pas dans l’axe du mouvement
gauge-source-gauge-place = Distance du pivot au comparateur
gauge-source-bearing-place = Distance du pivot au roulement

gauge-chances = Ce comparateur, à cet endroit, manque { $missed } des paliers hors limite, donne une fausse alarme dans { $alarm } des cas et en laisse { $undecided } sans décision, si les mouvements se répartissent également entre zéro et deux fois la limite.
gauge-trend-growing = Sur { $count } visites, il augmente de { $slope } par an (± { $expanded }).
gauge-trend-shrinking = Sur { $count } visites, il diminue de { $slope } par an (± { $expanded }) : demandez ce qui a été changé.
gauge-trend-no-change-shown = Sur { $count } visites, aucun changement ne se montre ({ $slope } par an, ± { $expanded }) ; cela ne veut pas dire qu’il n’y en a pas.
gauge-maker-first = La procédure et les valeurs du constructeur passent avant tout ce qui est dit ici.

## Refus.
error-gauge-file-unreadable = Le fichier du comparateur ne peut pas être lu
error-gauge-file-unreadable-help = Vérifiez que le fichier est entier et a la forme des fichiers de demo-data/bench. Rien n’a été jugé.
error-decimal-comma = Un nombre peut se lire de deux façons
error-decimal-comma-help = Sa virgule ou son point peut être le signe décimal ou séparer les milliers. Ajoutez un zéro à la fin, comme 1,2500, ou enlevez la virgule ou le point.
error-mixed-units = Des unités sont mélangées
error-mixed-units-help = Donnez chaque longueur dans la seule unité de la mesure. 1 pouce fait 25.4 mm, un millième de pouce 0.0254 mm.
error-not-a-number = Un nombre manque ou n’en est pas un
error-not-a-number-help = Entrez ce que l’instrument montre, en chiffres, avec un point ou une virgule.
error-no-readings = Il n’y a pas de lectures
error-no-readings-help = Lisez le mouvement total de poussé à tiré, cinq fois si vous pouvez, et entrez chaque lecture.
error-negative-reading = Une lecture est en dessous de zéro
error-negative-reading-help = Mettez le comparateur à zéro en poussant, et entrez la course jusqu’à tiré, sans signe.
error-reading-too-large = Une lecture est plus longue que la course d’un comparateur
error-reading-too-large-help = Vérifiez l’unité : des millièmes de pouce ont peut-être été entrés comme des millimètres.
error-instrument-refused = L’échelon ou l’erreur tolérée du comparateur n’est pas au-dessus de zéro
error-instrument-refused-help = Prenez les deux du certificat du comparateur ou de la fiche de son fabricant. Aucun comparateur n’est sans erreur.
error-gauge-at-pivot = Le comparateur est au pivot, ou trop près
error-gauge-at-pivot-help = Rapprochez-le du roulement : au pivot l’arbre ne bouge pas, et tout près, sa place décide de tout.
error-bearing-at-pivot = Le roulement est au pivot
error-bearing-at-pivot-help = Vérifiez les trois places le long de l’arbre. Le pivot est l’extrémité qui ne bouge pas.
error-place-refused = Une place le long de l’arbre ne peut pas être juste
error-place-refused-help = Entrez pivot, comparateur et roulement en millimètres depuis un même zéro, et leur erreur sans signe.
error-limit-refused = La limite n’est pas au-dessus de zéro
error-limit-refused-help = Entrez la valeur du constructeur telle qu’elle est dans le manuel, ou laissez-la de côté si elle n’est pas connue.
error-bore-not-tabled = Aucun jeu interne n’est au tableau pour cet alésage
error-bore-not-tabled-help = Les alésages au-dessus de 10 et jusqu’à 140 mm sont au tableau. Entrez plutôt la valeur du constructeur, ou laissez le roulement de côté : alors rien n’est jugé.
error-earlier-refused = Un résultat d’une visite d’avant ne peut pas être juste
error-earlier-refused-help = Entrez pour chacun le nombre de jours écoulés, le mouvement et l’incertitude type, tous au-dessus de zéro.
