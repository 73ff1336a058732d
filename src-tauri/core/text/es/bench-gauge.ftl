### El comparador en el eje: qué dicen sus lecturas y qué impide juzgarlas.

gauge-mean = Movimiento en el rodamiento: { $mean }, de { $count ->
    [one] una lectura
   *[other] { $count } lecturas
 }.
gauge-ratio = 1 mm en el comparador son { $ratio } mm en el rodamiento.
gauge-interval = Con un 95 % de confianza está entre { $low } y { $high } (± { $expanded }, factor { $factor }).
gauge-one-reading = Una sola lectura no dice nada de su propia dispersión, así que no se puede dar un intervalo.
gauge-doubtful = { $count ->
    [one] Una lectura queda
   *[other] { $count } lecturas quedan
 } lejos de las demás. Revise el comparador y su brazo; se contó de todos modos.

gauge-limit-maker = Límite: { $limit }, el valor del fabricante.
gauge-limit-internal-clearance = Medida de referencia: { $limit }, el mayor juego interno de un rodamiento así antes de montarlo. No es un límite oficial; el valor del fabricante va primero.
gauge-limit-none = No se conoce ningún límite: compare, no juzgue.
gauge-bands = Demostrado dentro del límite hasta { $pass }, demostrado fuera por encima de { $fail }.
gauge-bands-no-pass = Con este comparador no se puede demostrar nada dentro del límite; demostrado fuera por encima de { $fail }.

gauge-decision-proven = Está demostrado que el movimiento supera el límite.
gauge-decision-none-proven = Está demostrado que el movimiento queda dentro del límite.
gauge-decision-not-decided = Sin decidir: las lecturas no demuestran ni lo uno ni lo otro.
gauge-decision-compare = Sin juzgar: no se conoce ningún límite.

gauge-meaning-felt = Cuenta como movimiento notado: PELIGRO, no conduzca.
gauge-meaning-beyond-figure = Cuenta como movimiento fuera del valor del fabricante.
gauge-meaning-unsure = Cuenta como dudoso, y dudoso nunca significa seguro.
gauge-meaning-replaces-unsure = Aclara una respuesta dudosa. Nunca anula un movimiento que notó una mano.
gauge-meaning-silent = No añade nada a lo que notaron las manos. Compare con un coche igual o con una visita anterior.

gauge-remedy-more-readings = Lo decidiría: { $readings } lecturas en total.
gauge-remedy-finer-gauge = Lo decidiría: un comparador de { $resolution } { $unit } con un error permitido de { $mpe } { $unit } como mucho.
gauge-remedy-at-bearing = Lo decidiría: el comparador en el rodamiento mismo.
gauge-remedy-finer-gauge-more-readings = Lo decidiría: un comparador de { $resolution } { $unit } con un error permitido de { $mpe } { $unit } como mucho, y { $readings } lecturas en total.
gauge-remedy-read-again = Lea otra vez: al menos { $readings } lecturas en total, soltando entre una y otra.
gauge-remedy-find-limit = Busque el límite: el valor del fabricante, o el diámetro interior y el grupo de juego del rodamiento.
gauge-remedy-find-figure = Busque el valor del fabricante para este soporte; sin él no se puede juzgar nada.
gauge-remedy-too-near-limit = Más lecturas no lo aclaran: el movimiento está demasiado cerca del límite. Trátelo como dudoso.

gauge-budget = Incertidumbre, la mayor primero:
gauge-budget-line = { $source }: { $contribution }, { $share } de la varianza
gauge-source-scatter = Dispersión de las lecturas
gauge-source-resolution = Escalón del comparador
gauge-source-mpe = Error permitido del comparador
gauge-source-alignment = Comparador desalineado con el movimiento
gauge-source-gauge-place = Distancia del pivote al comparador
gauge-source-bearing-place = Distancia del pivote al rodamiento

gauge-chances = Este comparador en este lugar no detecta { $missed } de los soportes fuera del límite, da falsa alarma en { $alarm } y deja { $undecided } sin decidir, si los movimientos se reparten por igual entre cero y el doble del límite.
gauge-trend-growing = En { $count } visitas crece { $slope } al año (± { $expanded }).
gauge-trend-shrinking = En { $count } visitas disminuye { $slope } al año (± { $expanded }): pregunte qué se cambió.
gauge-trend-no-change-shown = En { $count } visitas no se muestra ningún cambio ({ $slope } al año, ± { $expanded }); eso no quiere decir que no lo haya.
gauge-maker-first = El procedimiento y los valores del fabricante van antes que todo lo dicho aquí.

## Rechazos.
error-gauge-file-unreadable = No se puede leer el archivo del comparador
error-gauge-file-unreadable-help = Compruebe que el archivo está entero y tiene la forma de los de demo-data/bench. No se juzgó nada.
error-decimal-comma = Un número puede leerse de dos maneras
error-decimal-comma-help = Su coma o punto puede ser el signo decimal o separar los miles. Añada un cero al final, como 1,2500, o quite la coma o el punto.
error-mixed-units = Hay unidades mezcladas
error-mixed-units-help = Dé todas las longitudes en la única unidad de la medición. 1 pulgada son 25.4 mm; una milésima de pulgada, 0.0254 mm.
error-not-a-number = Falta un número o no lo es
error-not-a-number-help = Anote lo que marca el instrumento, en cifras, con punto o coma.
error-no-readings = No hay lecturas
error-no-readings-help = Lea el movimiento total de empujar a tirar, cinco veces si puede, y anote todas las lecturas.
error-negative-reading = Una lectura es menor que cero
error-negative-reading-help = Ponga el comparador a cero al empujar y anote el recorrido hasta tirar, sin signo.
error-reading-too-large = Una lectura es mayor que el recorrido de un comparador
error-reading-too-large-help = Revise la unidad: quizá se anotaron milésimas de pulgada como milímetros.
error-instrument-refused = El escalón o el error permitido del comparador no es mayor que cero
error-instrument-refused-help = Tome los dos del certificado del comparador o de la hoja de su fabricante. No hay comparador sin error.
error-gauge-at-pivot = El comparador está en el pivote o demasiado cerca
error-gauge-at-pivot-help = Llévelo hacia el rodamiento: en el pivote el árbol no se mueve, y cerca de él todo depende de dónde se ponga.
error-bearing-at-pivot = El rodamiento está en el pivote
error-bearing-at-pivot-help = Revise los tres lugares a lo largo del árbol. El pivote es el extremo que se queda donde está.
error-place-refused = Un lugar a lo largo del árbol no puede ser correcto
error-place-refused-help = Anote pivote, comparador y rodamiento en milímetros desde un mismo cero cualquiera, y su error sin signo.
error-limit-refused = El límite no es mayor que cero
error-limit-refused-help = Anote el valor del fabricante tal como está en el manual, o déjelo en blanco si no se conoce.
error-bore-not-tabled = La tabla no tiene juego interno para este diámetro interior
error-bore-not-tabled-help = La tabla tiene diámetros interiores de más de 10 y hasta 140 mm. Anote en su lugar el valor del fabricante, o deje fuera el rodamiento: entonces no se juzga nada.
error-earlier-refused = Un resultado de una visita anterior no puede ser correcto
error-earlier-refused-help = Anote de cada uno cuántos días hace, el movimiento y la incertidumbre típica, todos mayores que cero.
