### Cuánto de un agujero se midió, qué deja eso abierto y el único límite para su forma.

bore-part = A la profundidad { $depth } solo se midieron { $read } de 360 grados; el mayor hueco es de { $gap } grados. Lo que hay en él no está medido: nada se llama redondo, y la medida es la de la parte medida. Mida todo alrededor, al menos cada 30 grados.
bore-depths-unread = De { $from } a { $to } desde la cara no se midió ningún anillo completo. Conicidad, estrechamiento y desgaste no están medidos ahí.
bore-seat-width-unknown = No se indicó el ancho del alojamiento, así que nadie puede decir cuánto de él se midió. Indique el ancho con las lecturas.
bore-line-size-part = Diámetro de la parte medida { $size }, ± { $expanded }, si es redonda.
bore-line-roundness-part = Desviación de redondez de al menos { $value }, ± { $expanded }: solo se midió una parte del agujero.
bore-line-limit = Límite para la forma de este alojamiento: { $limit }, la mitad de IT5 a su diámetro (ISO 286-1; proporción según catálogos de fabricantes de rodamientos). El veredicto y el ajuste usan el mismo. El valor del fabricante va primero.
bore-line-limit-unknown = Aún no hay límite para la forma: depende del diámetro. Ajuste el comparador en un anillo de medida conocida o calcule el ajuste.

verdict-gap-depths = lecturas todo alrededor cerca de los dos extremos del alojamiento y entre ellos, y el ancho del alojamiento

skim-verdict-read-in-part = Lo medido queda limpio como pronto en la pasada { $passes }, con la incertidumbre en la pasada { $allow }. El resto no se midió: no se sabe si queda limpio. Mida el agujero todo alrededor antes del primer corte.

error-bore-read-in-part = Solo se midió una parte del agujero
error-bore-read-in-part-help = Un eje libre necesita lecturas todo alrededor, al menos cada 30 grados, en cada profundidad. Siga midiendo o planifique alrededor de la referencia.
error-bore-size-in-part = Solo se midió una parte del agujero, así que no se conoce su medida
error-bore-size-in-part-help = Mídalo todo alrededor, al menos cada 30 grados, o dé la medida como número.

bore-read-two-ways = { $phrase }: «{ $one }» o «{ $other }»
error-bore-two-readings = Un número puede leerse de dos maneras
error-bore-two-readings-help = Escríbalo en cada línea con punto decimal y sin grupos de millares. En una hoja de cálculo, quite los grupos antes de guardar.
