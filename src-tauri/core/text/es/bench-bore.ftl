### El banco: la forma de un agujero y el plan para repasarlo.
### bore-... y skim-... son notas que acompañan a los números; error-bore-... son rechazos.

bore-at-line = { $phrase } (línea { $line })

## Lo que una forma de medir no puede ver

bore-two-point-blind = Dos contactos opuestos no ven tres, cinco ni ningún número impar de lóbulos: un agujero con tres lóbulos de 16 µm puede parecer redondo. Haga un barrido con comparador o tome coordenadas antes de darlo por redondo.
bore-three-point-blind = Tres contactos a 120 grados solo ven lóbulos de tres en tres: tres, seis, nueve. Un óvalo parece redondo. Mídalo con dos contactos o haga un barrido con comparador antes de darlo por redondo.
bore-no-centre = Este instrumento no sabe dónde está el eje geométrico. No se ha medido si el agujero está desplazado o inclinado.
bore-size-unknown = El comparador nunca se puso a una medida conocida, así que el diámetro no está medido. La forma y la conicidad sí.
bore-one-depth = Una sola profundidad no dice nada de la conicidad. Mida al menos en los dos extremos del alojamiento.
bore-one-angle = Muy pocos ángulos para distinguir lóbulos: una medida media y nada más.
bore-lobes-beyond = Con { $angles } ángulos se distinguen hasta { $lobes } lóbulos. Si hay más, como en marcas de vibración de la herramienta, se confunden con menos.
bore-gap = El hueco más ancho entre ángulos es de { $gap } grados, a { $depth } de profundidad. Una rebaba o un golpe dentro de un hueco no se mide.
bore-flagged = La lectura a { $angle } grados, { $depth } de profundidad, no encaja con las demás. Se usó de todos modos. Limpie ese punto, léalo otra vez y sustitúyala solo si la nueva lectura es distinta.
bore-few-for-flagging = Con menos de { $fewest } ángulos en una profundidad, un error en una lectura no se distingue de la forma.
bore-below-floor = A { $depth } de profundidad, la desviación de redondez no es mayor que la que daría un agujero perfecto con este instrumento, unos { $floor }. Para decir más hace falta un instrumento más fino.
bore-repeatability-untried = No se dieron lecturas repetidas de un mismo punto, así que la dispersión de la mano no está en la incertidumbre. Lea un punto diez veces y dé la desviación típica.

## Balance de incertidumbre de una lectura

bore-budget-resolution = Resolución: un escalón dividido por la raíz cuadrada de 12 (GUM F.2.2.1)
bore-budget-mpe = Error máximo permitido: dividido por la raíz cuadrada de 3 (GUM 4.3.7). Común a todas las lecturas para la medida, propio de cada lectura para la forma
bore-budget-repeatability = Repetibilidad: desviación típica de lecturas repetidas (GUM 4.2)
bore-budget-reading = Una lectura: raíz de la suma de los cuadrados (GUM 5.1.2). Los resultados llevan el doble de su incertidumbre típica, cerca del 95 %

## Plan de repaso

skim-verdict-skim = Queda limpio tras { $passes } pasadas y la pared que queda es suficiente, incertidumbre incluida. Cuente con { $allow } pasadas; pare en la pasada { $safe }, muestre lo que muestre el contacto.
skim-verdict-skim-ample = Queda limpio tras { $passes } pasadas y la pared que queda es de sobra suficiente, incertidumbre incluida. Cuente con { $allow } pasadas; si entonces no está limpio, mida de nuevo antes de seguir cortando.
skim-verdict-wall-unknown = Queda limpio tras { $passes } pasadas; cuente con { $allow }. No se sabe si la pared que queda es suficiente: antes del primer corte, mida la pared más delgada y pregunte al fabricante la mínima que puede quedar.
skim-verdict-wall-undecided = Queda limpio tras { $passes } pasadas, pero la pared que queda está tan cerca de la mínima pedida que la incertidumbre no deja decidir. No corte con esto: mida la pared y el agujero con un instrumento más fino.
skim-verdict-scrap = Pare y deseche la pieza: tras { $passes } pasadas quedaría limpio, pero la pared sería demasiado delgada. La última pasada que con seguridad deja bastante es la número { $safe }.
skim-at-least = Dos contactos opuestos no ven lóbulos impares, así que el corte es como mínimo este. Haga un barrido con comparador o tome coordenadas antes de contar con él.
skim-axis-moves = El eje geométrico libre está a { $shift } de la referencia. El rodamiento y el eje de transmisión se desplazan con él: compárelo con el valor del fabricante antes de cortar.
skim-axis-unseen = El plan supone un solo eje geométrico recto por el centro de todas las profundidades. Este instrumento no sabe dónde está.
skim-flagged = Una lectura se marcó porque no encaja con las demás, y está en este plan. Léala otra vez antes de cortar.
skim-size-unknown = El comparador nunca se puso a una medida conocida, así que el plan da cortes y no diámetros.
skim-between = Solo se planifican las profundidades y los ángulos leídos. Observe el contacto en el agujero real: está limpio cuando la cuchilla ha tocado todo alrededor.
skim-caution = Ponga protección contra la viruta, lleve protección ocular, sujete sin deformar el soporte y mida en frío. El procedimiento del fabricante va antes que este plan.

## Rechazos

error-bore-empty = El archivo del agujero no tiene lecturas
error-bore-empty-help = Escriba una línea de cabecera, una línea con los nombres de las columnas y debajo una lectura por línea.
error-bore-no-header = El archivo del agujero no empieza por su cabecera
error-bore-no-header-help = Empiece la primera línea con la palabra bore y siga con kind, unit, resolution y mpe, por ejemplo bore,kind=two-point,unit=mm,resolution=0.001,mpe=0.004.
error-bore-header-word = Una palabra de la cabecera no se conoce, está dos veces o no corresponde a esta forma de medir
error-bore-header-word-help = Use kind, unit, resolution, mpe, repeatability, turn, wall, wall-error y seat; zero-diameter, zero y higher solo con un comparador.
error-bore-header-missing = Falta una palabra en la cabecera
error-bore-header-missing-help = Dé kind, unit, resolution y mpe. Con un comparador, también zero-diameter, zero=set o zero=nominal, y higher=wider o higher=narrower.
error-bore-kind-unknown = No se conoce esa forma de medir
error-bore-kind-unknown-help = Escriba kind=two-point, kind=three-point, kind=dial o kind=coordinates.
error-bore-unit-unknown = No se conoce la unidad
error-bore-unit-unknown-help = Escriba unit=mm, unit=um, unit=in o unit=thou.
error-bore-columns = La línea con los nombres de las columnas no corresponde a la forma de medir
error-bore-columns-help = Ponga depth_mm o depth_in y luego angle_deg y diameter; angle_deg y reading con un comparador; x e y con coordenadas.
error-bore-cell-count = Una línea tiene celdas de más o de menos
error-bore-cell-count-help = Dé una celda por cada nombre de columna y ponga las observaciones en líneas propias que empiecen por #.
error-bore-not-a-number = Una celda no es un número
error-bore-not-a-number-help = Escriba lo que marcó el instrumento, en cifras y con punto decimal. Quite la línea si no se leyó nada.
error-bore-decimal-comma = Un número lleva coma decimal
error-bore-decimal-comma-help = Escriba un punto decimal, 72.013 y no 72,013, o separe las celdas con punto y coma o tabuladores: entonces se lee una coma decimal.
error-bore-mixed-units = Una lectura está en otra unidad que la de la cabecera
error-bore-mixed-units-help = Pase todas las lecturas a la unidad de la cabecera y escríbalas sin unidad detrás.
error-bore-instrument = El instrumento no está descrito como uno que pueda medir un agujero
error-bore-instrument-help = Dé resolution y mpe por encima de cero y por debajo de 1 mm, tomados del instrumento o de su certificado. La repetibilidad se puede dejar fuera.
error-bore-size-implausible = Ningún alojamiento de rodamiento tiene esta medida
error-bore-size-implausible-help = Revise la unidad de la cabecera. Se admiten diámetros de 1 a 1000 mm.
error-bore-too-few-angles = Hay menos ángulos de los que pide la forma
error-bore-too-few-angles-help = En cada profundidad lea al menos 3 diámetros con dos contactos, 1 con tres contactos, o 5 puntos con comparador o coordenadas; 12 muestran mucho más.
error-bore-angle-repeated = Un ángulo está dos veces en una misma profundidad
error-bore-angle-repeated-help = Deje una lectura por ángulo. Con dos contactos, el diámetro es el mismo media vuelta después; con tres, un tercio de vuelta después. Quite la lectura de cierre a 360 grados.
error-bore-too-many-readings = Hay más lecturas de las que se pueden recibir
error-bore-too-many-readings-help = No pase de 20.000 en una profundidad ni de 100.000 en total.
error-bore-not-round = Ningún círculo pasa cerca de los puntos
error-bore-not-round-help = Compruebe que x e y son puntos de la pared todo alrededor, en la unidad de la cabecera.
error-bore-wall-negative = Un espesor de pared es menor que nada
error-bore-wall-negative-help = Dé la pared más delgada tal como está ahora y la mínima que puede quedar, las dos de 0 en adelante.
error-bore-wall-missing = No se sabe cómo está ahora la pared
error-bore-wall-missing-help = Mida la pared más delgada alrededor del agujero y dela con las lecturas.
error-bore-pass-depth = La profundidad de la pasada no es la de un repaso
error-bore-pass-depth-help = Dé la pasada en diámetro, por encima de 0 y hasta 2 mm, por ejemplo 0.001in o 0.025mm.
error-bore-too-many-passes = Harían falta más de 400 pasadas
error-bore-too-many-passes-help = Dé una pasada más profunda. Si el corte es grande porque la referencia no es el eje geométrico del agujero, centre la pieza por el agujero o use un eje libre.
error-bore-no-datum = Las lecturas no conocen un eje de referencia
error-bore-no-datum-help = Haga un barrido con comparador alrededor de la referencia, o tome coordenadas con la referencia como origen. Con un instrumento de dos contactos, use un eje libre.
error-bore-cannot-see-oval = Tres contactos no ven un óvalo, así que con ellos no se puede planificar ningún corte
error-bore-cannot-see-oval-help = Lea diámetros con dos contactos en varios ángulos o, mejor, haga un barrido con comparador, y planifique con eso.
