### Quelle part d’un alésage a été mesurée, ce qui reste ouvert, et la seule limite pour sa forme.

bore-part = À la profondeur { $depth }, seuls { $read } degrés sur 360 ont été mesurés ; le plus grand vide fait { $gap } degrés. Ce qui s’y trouve n’est pas mesuré : rien n’est dit circulaire, et la cote est celle de la partie mesurée. Mesurez tout autour, au moins tous les 30 degrés.
bore-depths-unread = De { $from } à { $to } depuis la face, aucun anneau n’a été mesuré tout autour. Conicité, étranglement et usure n’y sont pas mesurés.
bore-seat-width-unknown = La largeur du logement n’a pas été donnée : personne ne peut dire quelle part en a été mesurée. Donnez-la avec les mesures.
bore-line-size-part = Diamètre de la partie mesurée { $size }, ± { $expanded }, si elle est circulaire.
bore-line-roundness-part = Défaut de circularité d’au moins { $value }, ± { $expanded } : seule une partie de l’alésage a été mesurée.
bore-line-limit = Limite pour la forme de ce logement : { $limit }, la moitié de IT5 à son diamètre (ISO 286-1 ; part d’après les catalogues de fabricants de roulements). Le verdict et l’ajustement prennent la même. La valeur du constructeur passe d’abord.
bore-line-limit-unknown = Pas encore de limite pour la forme : elle dépend du diamètre. Réglez le comparateur dans une bague de cote connue, ou calculez l’ajustement.

verdict-gap-depths = des mesures tout autour près des deux bouts du logement et entre les deux, et la largeur du logement

skim-verdict-read-in-part = Ce qui a été mesuré est blanchi au plus tôt à la passe { $passes }, incertitude comprise à la passe { $allow }. Le reste n’a pas été mesuré : on ne sait pas s’il sera blanchi. Mesurez l’alésage tout autour avant la première passe.

error-bore-read-in-part = L’alésage n’a été mesuré qu’en partie
error-bore-read-in-part-help = Un axe libre demande des mesures tout autour, au moins tous les 30 degrés, à chaque profondeur. Continuez à mesurer, ou planifiez autour de la référence.
error-bore-size-in-part = L’alésage n’a été mesuré qu’en partie : sa cote n’est pas connue
error-bore-size-in-part-help = Mesurez-le tout autour, au moins tous les 30 degrés, ou donnez la cote comme nombre.

bore-read-two-ways = { $phrase } : « { $one } » ou « { $other } »
error-bore-two-readings = Un nombre peut être lu de deux façons
error-bore-two-readings-help = Écrivez-le à chaque ligne avec un point décimal et sans groupes de milliers. Dans un tableur, retirez les groupes avant d’enregistrer.
