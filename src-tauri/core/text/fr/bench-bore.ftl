### L'établi : la forme d'un alésage et le plan pour le reprendre.
### bore-... et skim-... sont des notes qui vont avec les nombres ; error-bore-... sont des refus.

bore-at-line = { $phrase } (ligne { $line })

## Ce qu'une façon de mesurer ne peut pas voir

bore-two-point-blind = Deux touches opposées ne peuvent pas voir trois, cinq ou un autre nombre impair de lobes : un alésage à trois lobes de 16 µm peut se lire comme rond. Balayez au comparateur ou relevez des coordonnées avant de le dire rond.
bore-three-point-blind = Trois touches à 120 degrés ne voient que les lobes par trois : trois, six, neuf. Un ovale se lit comme rond. Mesurez-le avec deux touches ou balayez au comparateur avant de le dire rond.
bore-no-centre = Cet instrument ne sait pas où se trouve l’axe. On n’a pas mesuré si l’alésage est décalé ou penché.
bore-size-unknown = Le comparateur n’a jamais été réglé sur une cote connue, le diamètre n’est donc pas mesuré. La forme et la conicité le sont.
bore-one-depth = Une seule profondeur ne dit rien de la conicité. Mesurez au moins aux deux bouts du logement.
bore-one-angle = Trop peu d’angles pour distinguer des lobes : une cote moyenne, rien de plus.
bore-lobes-beyond = { $angles } angles distinguent jusqu’à { $lobes } lobes. Des lobes plus nombreux, comme des traces de broutage, ne se distinguent pas de moins nombreux.
bore-gap = Le plus grand écart entre angles est de { $gap } degrés, à la profondeur { $depth }. Une bavure ou un coup dans un écart n’est pas mesuré.
bore-flagged = La lecture à { $angle } degrés, profondeur { $depth }, ne va pas avec les autres. Elle a servi quand même. Nettoyez l’endroit, mesurez de nouveau et ne la remplacez que si la nouvelle lecture diffère.
bore-few-for-flagging = Avec moins de { $fewest } angles à une profondeur, une erreur dans une lecture ne se distingue pas de la forme.
bore-below-floor = À la profondeur { $depth }, le défaut de circularité ne dépasse pas ce qu’un alésage parfait montrerait avec cet instrument, environ { $floor }. Il faut un instrument plus fin pour en dire plus.
bore-repeatability-untried = Aucune lecture répétée d’un même endroit n’est donnée, la dispersion de la main n’est donc pas dans l’incertitude. Mesurez dix fois le même endroit et donnez l’écart type.

## Bilan d'une lecture

bore-budget-resolution = Résolution : un échelon sur la racine de 12 (GUM F.2.2.1)
bore-budget-mpe = Erreur maximale tolérée : sur la racine de 3 (GUM 4.3.7). Commune à toutes les lectures pour la cote, propre à chaque lecture pour la forme
bore-budget-repeatability = Répétabilité : écart type de lectures répétées (GUM 4.2)
bore-budget-reading = Une lecture : la racine de la somme des carrés (GUM 5.1.2). Les résultats portent deux fois leur incertitude type, environ 95 %

## Plan de reprise

skim-verdict-skim = L’alésage est blanchi tout autour à la passe { $passes }, et la paroi restante suffit, incertitude comprise. Passes à prévoir : { $allow } ; arrêtez à la passe { $safe }, quel que soit le contact.
skim-verdict-skim-ample = L’alésage est blanchi tout autour à la passe { $passes }, et la paroi restante suffit largement, incertitude comprise. Passes à prévoir : { $allow } ; s’il n’est pas blanchi alors, mesurez de nouveau avant de continuer.
skim-verdict-wall-unknown = L’alésage est blanchi tout autour à la passe { $passes } ; passes à prévoir : { $allow }. On ne sait pas si la paroi restante suffit : avant la première passe, mesurez la paroi la plus mince et demandez au constructeur le minimum qui doit rester.
skim-verdict-wall-undecided = L’alésage est blanchi tout autour à la passe { $passes }, mais l’écart entre la paroi restante et le minimum demandé est plus petit que son incertitude. N’usinez pas sur cette base : mesurez la paroi et l’alésage avec un instrument plus fin.
skim-verdict-scrap = Arrêtez et mettez au rebut : l’alésage serait blanchi à la passe { $passes }, mais la paroi serait trop mince. La dernière passe qui en laisse sûrement assez est la passe { $safe }.
skim-at-least = Deux touches opposées ne peuvent pas voir les lobes en nombre impair, la reprise est donc au moins celle-ci. Balayez au comparateur ou relevez des coordonnées avant de compter dessus.
skim-axis-moves = L’axe libre est à { $shift } de la référence. Le roulement et l’arbre se déplacent avec lui : comparez cela à la valeur du constructeur avant d’usiner.
skim-axis-unseen = Le plan suppose un seul axe droit, au milieu de chaque profondeur. Cet instrument ne sait pas où il se trouve.
skim-flagged = Une lecture signalée comme n’allant pas avec les autres est dans ce plan. Refaites-la avant d’usiner.
skim-size-unknown = Le comparateur n’a jamais été réglé sur une cote connue, le plan donne donc des passes et pas de diamètres.
skim-between = Seuls les profondeurs et les angles mesurés sont dans le plan. Surveillez le contact sur l’alésage réel : il est franc quand l’outil a touché tout autour.
skim-caution = Protégez-vous des copeaux, portez une protection des yeux, bridez sans déformer le palier, et mesurez à froid. La procédure du constructeur passe avant ce plan.

## Refus

error-bore-empty = Le fichier d’alésage ne contient aucune lecture
error-bore-empty-help = Écrivez une ligne d’en-tête, une ligne de noms de colonnes, et dessous une lecture par ligne.
error-bore-no-header = Le fichier d’alésage ne commence pas par son en-tête
error-bore-no-header-help = Commencez la première ligne par le mot bore, puis kind, unit, resolution et mpe, comme bore,kind=two-point,unit=mm,resolution=0.001,mpe=0.004.
error-bore-header-word = Un mot de l’en-tête est inconnu, figure deux fois ou ne va pas avec cette sorte de mesure
error-bore-header-word-help = Utilisez kind, unit, resolution, mpe, repeatability, turn, wall, wall-error et seat ; zero-diameter, zero et higher seulement pour un comparateur.
error-bore-header-missing = Un mot manque dans l’en-tête
error-bore-header-missing-help = Donnez kind, unit, resolution et mpe. Pour un comparateur, donnez aussi zero-diameter, zero=set ou zero=nominal, et higher=wider ou higher=narrower.
error-bore-kind-unknown = Cette sorte de mesure est inconnue
error-bore-kind-unknown-help = Écrivez kind=two-point, kind=three-point, kind=dial ou kind=coordinates.
error-bore-unit-unknown = Cette unité est inconnue
error-bore-unit-unknown-help = Écrivez unit=mm, unit=um, unit=in ou unit=thou.
error-bore-columns = La ligne des noms de colonnes ne va pas avec la sorte de mesure
error-bore-columns-help = Nommez depth_mm ou depth_in, puis angle_deg et diameter ; angle_deg et reading pour un comparateur ; x et y pour des coordonnées.
error-bore-cell-count = Une ligne a trop ou trop peu de cases
error-bore-cell-count-help = Donnez une case par nom de colonne, et mettez les remarques sur des lignes à part qui commencent par #.
error-bore-not-a-number = Une case n’est pas un nombre
error-bore-not-a-number-help = Écrivez en chiffres ce que l’instrument a montré, avec un point décimal. Enlevez la ligne si rien n’a été lu.
error-bore-decimal-comma = Un nombre a une virgule décimale
error-bore-decimal-comma-help = Écrivez un point décimal, 72.013 et non 72,013, ou séparez les cellules par des points-virgules ou des tabulations : une virgule décimale est alors lue.
error-bore-mixed-units = Une lecture est dans une autre unité que celle de l’en-tête
error-bore-mixed-units-help = Mettez toutes les lectures dans l’unité de l’en-tête, et écrivez-les sans unité derrière.
error-bore-instrument = L’instrument n’est pas décrit comme capable de mesurer un alésage
error-bore-instrument-help = Donnez resolution et mpe, au-dessus de zéro et en dessous de 1 mm, d’après l’instrument ou son certificat. La répétabilité peut manquer.
error-bore-size-implausible = Aucun logement de roulement n’a cette cote
error-bore-size-implausible-help = Vérifiez l’unité dans l’en-tête. Les diamètres de 1 à 1 000 mm sont acceptés.
error-bore-too-few-angles = Il y a moins d’angles que la forme n’en demande
error-bore-too-few-angles-help = À chaque profondeur, mesurez au moins 3 diamètres avec deux touches, 1 avec trois touches, ou 5 points au comparateur ou en coordonnées ; 12 en montrent bien plus.
error-bore-angle-repeated = Un angle figure deux fois à la même profondeur
error-bore-angle-repeated-help = Gardez une lecture par angle. Un diamètre à deux touches est le même un demi-tour plus loin, un diamètre à trois touches un tiers de tour plus loin ; ne donnez pas la lecture de fermeture à 360 degrés.
error-bore-too-many-readings = Il y a plus de lectures qu’on ne peut en prendre
error-bore-too-many-readings-help = Restez à 20 000 par profondeur et 100 000 en tout.
error-bore-not-round = Aucun cercle ne passe près des points
error-bore-not-round-help = Vérifiez que x et y sont des points de la paroi tout autour, dans l’unité de l’en-tête.
error-bore-wall-negative = Une épaisseur de paroi est inférieure à zéro
error-bore-wall-negative-help = Donnez la paroi la plus mince telle qu’elle est, et le minimum qui doit rester, tous deux à partir de 0.
error-bore-wall-missing = La paroi actuelle n’est pas connue
error-bore-wall-missing-help = Mesurez la paroi la plus mince autour de l’alésage et donnez-la avec les lectures.
error-bore-pass-depth = La profondeur de passe n’est pas celle d’une reprise
error-bore-pass-depth-help = Donnez la passe au diamètre, au-dessus de 0 et jusqu’à 2 mm, comme 0.001in ou 0.025mm.
error-bore-too-many-passes = Il faudrait plus de 400 passes
error-bore-too-many-passes-help = Donnez une passe plus profonde. Si la reprise est grande parce que la référence n’est pas l’axe de l’alésage, réglez-vous sur l’alésage ou utilisez un axe libre.
error-bore-no-datum = Les lectures ne connaissent pas d’axe de référence
error-bore-no-datum-help = Balayez au comparateur autour de la référence, ou relevez des coordonnées avec la référence pour origine. Avec un instrument à deux touches, utilisez un axe libre.
error-bore-cannot-see-oval = Trois touches ne peuvent pas voir un ovale, aucune reprise ne peut donc se prévoir d’après elles
error-bore-cannot-see-oval-help = Mesurez des diamètres avec deux touches à plusieurs angles, ou mieux, balayez au comparateur, et faites le plan d’après cela.
