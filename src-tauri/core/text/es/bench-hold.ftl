### Lo que aguanta: la pared cuando el casquillo tiene su sitio, el casquillo en caliente y en frío, las clases en caliente y la palanca de un comparador.

verdict-why-wall-not-decided = Que quede bastante pared junto al casquillo está dentro de la incertidumbre de la pared: mídala con más precisión.
verdict-why-sleeve-too-small = El agujero para el casquillo no queda limpio: hace falta un casquillo mayor.
verdict-why-sleeve-loose-hot = El casquillo, o el rodamiento en él, quedaría suelto en caliente: hace falta más apriete.
verdict-why-sleeve-too-tight = El casquillo llevaría una pieza demasiado cerca de su límite elástico: hace falta menos apriete.
verdict-gap-sleeve = el casquillo que se va a montar: su diámetro exterior y el agujero en que entra
verdict-gap-sleeve-hot-fit = un casquillo que aguante a la temperatura más alta
verdict-gap-sleeve-stress = un casquillo cuya tensión soporte cada pieza, con el diámetro exterior de la carcasa

skim-sleeve-unknown = En este plan no hay casquillo. Necesita su propio sitio, a menudo un milímetro y más por lado: dé su medida antes de fiarse de la pared.
skim-verdict-before-sleeve = Queda limpio tras { $passes } pasadas, y para ese corte solo la pared basta. El casquillo se lleva más: no se sabe si entonces queda bastante. Cuente con { $allow } pasadas; pare en la pasada { $safe }, muestre lo que muestre el contacto.
skim-verdict-before-sleeve-ample = Queda limpio tras { $passes } pasadas, y para ese corte solo la pared basta de sobra. El casquillo se lleva más: no se sabe si entonces queda bastante. Cuente con { $allow } pasadas; si entonces no está limpio, mida de nuevo antes de seguir cortando.
skim-sleeve-too-small = El agujero de { $bore } para el casquillo no es con seguridad lo bastante ancho para quedar limpio. Elija un casquillo mayor.
skim-sleeve-cut = Para el casquillo el agujero sigue hasta { $bore }: { $cut } en el radio donde más se corta. Mida antes la pared.
skim-sleeve-wall = Para el casquillo el agujero sigue hasta { $bore }: { $cut } en el radio donde más se corta, y ahí quedan { $wall } de pared.

fit-holding-classes = Hasta { $celsius } °C estas clases siguen apretadas en toda pareja en la carcasa sin casquillo: { $classes }.
fit-holding-none = NINGUNA CLASE DE LA TABLA AGUANTA en la carcasa sin casquillo hasta { $celsius } °C: la más apretada, { $class }, puede quedar suelta por encima de { $loosens } °C.
fit-holding-no-range = En la carcasa sin casquillo la clase más apretada de la tabla, { $class }, puede quedar suelta por encima de { $loosens } °C. Dé las temperaturas de uso para ver qué aguanta.
fit-holding-never = En la carcasa sin casquillo la clase más apretada de la tabla, { $class }, no se suelta a ninguna temperatura por encima de 20 °C.
fit-holding-bare = Lo que aguanta: un agujero sin casquillo de { $bore } como mucho a 20 °C. Calcule su tensión con el agujero medido antes de cortar.
fit-holding-sleeve = O un casquillo de { $material } con más de { $grip } de apriete en la carcasa a 20 °C, con su agujero de { $bore } como mucho una vez metido a presión: en caliente la carcasa lo suelta y su agujero se abre.

gauge-other-lever = Según la otra palanca 1 mm en el comparador son { $ratio } mm en el rodamiento, y se mueve { $mean }. { $decision }
gauge-remedy-find-lever = Lo decidiría: averiguar qué rodamiento se mueve y alrededor de qué se inclina el árbol. Vigile uno de los rodamientos con un segundo comparador.
