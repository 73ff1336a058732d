### Lo que añadieron las segundas reglas: pasos y respuestas para soportes de goma, acoplamientos y traqueteo al ralentí,
### disposiciones, causas, motivos, y a qué se limita una calificación.

step-at-support = { $step } (soporte { $number })
reason-at-support-1 = En el primer soporte, el más cercano a la caja de cambios.
reason-at-support-1-owner = Es el primero de los rodamientos del árbol.
reason-at-support-2 = En el segundo soporte.
reason-at-support-2-owner = Es el segundo de los rodamientos del árbol.
reason-at-support-3 = En el tercer soporte.
reason-at-support-3-owner = Es el tercero de los rodamientos del árbol.

## Pasos.
step-support-look = Mirar el soporte de goma
step-support-look-do = Ilumine la goma todo alrededor, por los dos lados, y luego el soporte y sus tornillos. Anote lo que encuentre.
step-support-look-watch = Escape caliente cerca. No se cuelgue del soporte. No toque los cables naranjas. Primero, el procedimiento del fabricante.
step-clutch-pedal-effect = Pedal de embrague pisado
step-clutch-pedal-effect-do = Caja en punto muerto, motor al ralentí. Pise el embrague a fondo. ¿Desaparece el traqueteo? Suéltelo.
step-clutch-pedal-effect-watch = Quédese en el asiento, siempre en punto muerto. Pie listo en el freno. Primero, el procedimiento del fabricante.
step-selector-effect = Selector en D
step-selector-effect-do = Pise fuerte el freno, motor al ralentí. Ponga D tres segundos. ¿Desaparece el traqueteo? Vuelva a P.
step-selector-effect-watch = El coche tira: freno pisado, freno de mano puesto, nadie delante ni detrás. Primero, el procedimiento del fabricante.
drawing-support-look = El anillo de goma que rodea el rodamiento y su soporte, iluminados desde abajo.
drawing-clutch-pedal-effect = Un pie pisa a fondo el embrague con el motor al ralentí.
drawing-selector-effect = Un pie sujeta el freno mientras el selector pasa de P a marcha.

## Respuestas.
answer-not-seen = No se pudo ver
answer-crazed = Cuarteado
answer-torn = Rasgado
answer-torn-through = Rasgado del todo
answer-off-centre = Caído o descentrado
answer-oil-soaked = Empapado de aceite
answer-bracket-cracked = Soporte agrietado
answer-springy = Elástico: valor desconocido
answer-knocks = Golpea: llega a un tope
answer-slides = Solo se desliza a lo largo
answer-bolt-loose = Tornillo flojo
answer-bolt-missing = Falta un tornillo
answer-boot-torn = Fuelle roto
answer-joint-stiff = Articulación dura
answer-touches-fibre = Roza un árbol de fibra
answer-support-look-sound = Bien todo alrededor
answer-clutch-pedal-effect-gone = Traqueteo desaparece
answer-clutch-pedal-effect-less = Menos
answer-clutch-pedal-effect-same = Igual
answer-selector-effect-gone = Traqueteo desaparece
answer-selector-effect-less = Menos
answer-selector-effect-same = Igual
answer-play-far-end-unsure = Dudoso

## Disposiciones.
layout-rigid-output-speed = Soporte rígido, giro de salida
layout-rigid-output-speed-about = Árbol de dos piezas detrás de la caja, con el rodamiento central sujeto de forma rígida. En punto muerto está quieto. Empujado y tirado a mano no debe moverse nada.
layout-two-centres = Dos soportes centrales de goma
layout-two-centres-about = Árbol de tres piezas detrás de la caja con dos rodamientos centrales en anillos de goma. Cada uno se comprueba aparte; el primero es el más cercano a la caja.
layout-one-piece = Una pieza, sin rodamiento central
layout-one-piece-about = Un árbol de la caja al eje trasero, con una articulación en cada extremo y nada en medio. Decide el juego en los extremos.
layout-front-shaft = Árbol delantero, tracción total
layout-front-shaft-about = Árbol de la caja de transferencia al eje delantero, con una articulación en cada extremo. Decide el juego en los extremos.
layout-half-shaft = Semieje con soporte
layout-half-shaft-about = Semieje a una rueda delantera, con el rodamiento en un soporte junto a la caja. En punto muerto está quieto. Empujado y tirado a mano no debe moverse nada.
drawing-none = Un árbol con una articulación en cada extremo y ningún rodamiento en medio.

## Causas.
cause-torsional-rattle = Traqueteo de volante, embrague o engranajes
cause-torsional-rattle-about = Los engranajes o piezas del embrague traquetean al ralentí. No es cosa del rodamiento.
cause-wheel-or-tyre = Rueda o neumático
cause-wheel-or-tyre-about = Una rueda o un neumático está desequilibrado o deformado y hace vibrar el coche.
cause-joint-angle-or-balance = Ángulo o equilibrado del árbol
cause-joint-angle-or-balance-about = El árbol gira con un ángulo incorrecto o desequilibrado, y hace vibrar el coche.
cause-misfire-next = Cambie la bobina o la bujía entre dos cilindros y vea si el fallo se muda. Después compruebe el equilibrio de los inyectores y, después, la compresión.
cause-torsional-rattle-next = Compruebe el juego del volante y los muelles del disco de embrague antes de culpar a la caja.
cause-wheel-or-tyre-next = Equilibre las ruedas, compruebe que neumáticos y llantas giran sin salto y repita el mismo tramo a la misma velocidad.
cause-joint-angle-or-balance-next = Mida los ángulos de las articulaciones con el coche a su altura y compárelos con los del fabricante. Compruebe la fase de las articulaciones y los contrapesos.

## Motivos.
rule-support-broken = El soporte de goma está rasgado del todo, su parte metálica está agrietada o uno de sus tornillos está flojo.
rule-support-broken-owner = La pieza que sujeta el rodamiento está rasgada del todo, agrietada o floja.
rule-support-torn = La goma del soporte está rasgada.
rule-support-torn-owner = El anillo de goma que sujeta el rodamiento está rasgado.
rule-support-ageing = El soporte de goma está descentrado, empapado de aceite o cuarteado.
rule-support-ageing-owner = El anillo de goma que sujeta el rodamiento está viejo, con aceite o fuera de sitio.
rule-coupling-bolts = Un tornillo de un acoplamiento está flojo o falta.
rule-coupling-bolts-owner = Un tornillo que sujeta el árbol está flojo o falta.
rule-mount-broken = Un soporte del motor o de la caja está roto.
rule-mount-broken-owner = Una pieza que sujeta el motor o la caja de cambios está rota.
rule-touches-fibre = Algo roza un árbol de fibra.
rule-touches-fibre-owner = El árbol es de fibra y algo lo roza.
rule-far-end-unsure = No se pudo descartar movimiento en el extremo del árbol. Vuelva a probar con otra persona que mire la articulación.
rule-far-end-unsure-owner = Buscamos movimiento en el extremo del árbol y no estamos seguros.
rule-drag-unchecked = Hay un silbido o un runruneo y el árbol no se giró por sí solo: no se sabe si el rodamiento va frenado. Gírelo desacoplado.
rule-drag-unchecked-owner = Hay un silbido o un runruneo, y aún no hemos girado el árbol por sí solo.
rule-bearing-likely-suspected = Por lo oído, un fallo del rodamiento es probable al menos en un 50 %: sospecha, no confirmada a mano. La confirmarían juego en caliente, un giro libre o un comparador.
rule-bearing-likely-suspected-owner = Lo que oímos puede venir del rodamiento. A mano no notamos nada malo allí.

rule-no-bearing-action-play = No se notó juego y no se encontró nada más.
rule-no-bearing-action-play-owner = Probamos el rodamiento a mano. No se mueve más de lo debido y allí no hemos encontrado ninguna avería.
rule-no-bearing-action-play-not-reproduced = No reproducido: no se oyó nada. No se notó juego y no se encontró nada más.
rule-no-bearing-action-play-not-reproduced-owner = El ruido no se reprodujo: no apareció mientras tuvimos el coche. Buscamos movimiento a mano y allí no hemos encontrado ninguna avería.
rule-no-bearing-action-play-not-listened = No reproducido: no se hizo prueba con el motor en marcha. No se notó juego y no se encontró nada más.
rule-no-bearing-action-play-not-listened-owner = El ruido no se reprodujo: no pusimos el motor en marcha para escuchar. Buscamos movimiento a mano y no hemos encontrado ninguna avería.

rule-no-bearing-action-ends = No se notó juego en los extremos del árbol y no se encontró nada más.
rule-no-bearing-action-ends-owner = Probamos a mano los dos extremos del árbol y allí no hemos encontrado ninguna avería.
rule-no-bearing-action-ends-not-reproduced = No reproducido: no se oyó nada. No se notó juego en los extremos del árbol y no se encontró nada más.
rule-no-bearing-action-ends-not-reproduced-owner = El ruido no se reprodujo: no apareció mientras tuvimos el coche. Probamos a mano los dos extremos del árbol y allí no hemos encontrado ninguna avería.
rule-no-bearing-action-ends-not-listened = No reproducido: no se hizo prueba con el motor en marcha. No se notó juego en los extremos del árbol y no se encontró nada más.
rule-no-bearing-action-ends-not-listened-owner = El ruido no se reprodujo: no pusimos el motor en marcha para escuchar. Probamos a mano los dos extremos del árbol y allí no hemos encontrado ninguna avería.
note-means-shaft-ends = El árbol lleva la fuerza del motor a las ruedas. Una articulación en cada extremo lo sujeta.
note-open-play-far-end = No hemos buscado movimiento en los extremos del árbol.

note-could-support-broken = El rodamiento puede caer en marcha. Entonces el árbol puede dar contra el coche o contra el suelo. Usted podría perder el control.
note-could-support-torn = La goma puede rasgarse del todo. Entonces el árbol puede oscilar, dar contra el coche y dañar otras piezas.
note-could-support-ageing = La goma puede empeorar y dejar que el árbol oscile.
note-could-coupling-bolts = La articulación se puede soltar en marcha. Entonces el árbol puede dar contra el coche o contra el suelo. Usted podría perder el control.
note-could-mount-broken = El motor puede moverse demasiado. Eso puede romper las articulaciones del árbol.
note-could-touches-fibre = La fibra puede cortarse donde roza. Entonces el árbol puede romperse en marcha.
note-could-far-end-unsure = Si la articulación está floja, puede desgastarse más hasta que el árbol se suelte.
note-could-drag-unchecked = Si el rodamiento gira duro, puede calentarse y romperse.

## A qué se limita una calificación.
limit-turn-by-hand = Limitado al juego; no se comprobó si el rodamiento va frenado.
limit-turn-by-hand-owner = No comprobamos si el rodamiento gira duro.
limit-housing-look = El soporte no se miró, o no entero.
limit-housing-look-owner = No hemos visto entera la pieza que sujeta el rodamiento.
limit-support-look = El soporte de goma no se miró, o no entero.
limit-support-look-owner = No hemos visto entera la goma que sujeta el rodamiento.
limit-no-figure = Sin valor conocido, juzgado al tacto.
limit-no-figure-owner = No conocemos el límite del fabricante. Juzgamos al tacto cuánto cede la goma.
limit-tube-closed = Calificado desde fuera: el tubo está cerrado y sus rodamientos no se probaron.
limit-tube-closed-owner = El tubo que rodea el árbol sigue cerrado. Solo miramos y escuchamos desde fuera.
limit-tube-nothing = Sin comprobar aún, y nada encontrado desde fuera.
limit-tube-nothing-owner = Por ahora no encontramos nada desde fuera.
unknown-limit = { $step }: { $lack }

detail-degrees = Probado a { $degrees } °C
detail-engine-warm = Leído con el motor caliente
detail-engine-cold = Leído con el motor frío: no cuenta para las causas
detail-heard-front = Más fuerte delante
detail-heard-middle = Más fuerte en medio
detail-heard-rear = Más fuerte detrás
detail-heard-all-along = Igual de fuerte en todo el coche

next-free-turn = Desacople el árbol y gírelo solo: así se ve si su rodamiento va frenado.
next-far-end = El extremo quedó dudoso: mire su articulación.
next-unsure = Quedó dudoso: vuelva a probar con otra persona que mire la articulación.

error-temperature-out-of-range = La temperatura está fuera de rango
error-temperature-out-of-range-help = Anote grados Celsius entre -40 y 150, o frío o caliente.
error-figure-missing = El valor de movimiento del fabricante no está anotado
error-figure-missing-help = Anote el valor del fabricante, o diga lo que notó la mano: «elástico» si cede y vuelve, «golpea» si llega a un tope, «dudoso» si no lo sabe.

road-boot = Fuelle de una articulación. Manual MOT (UK) 6.1.7 (g): leve si está muy deteriorado, grave si falta, está roto o suelto y entra suciedad; en esta fila no hay resultado peligroso. Directiva 2014/45/UE, anexo I, 6.1.7 (g): leve si está muy deteriorado, grave si falta o está roto. Steady no elige; deciden sus normas locales.

## Se pregunta junto a una respuesta.
ui-free-yes = Desacoplado
ui-engine = ¿Motor caliente o frío?
ui-engine-warm = Motor caliente
ui-engine-cold = Motor frío
ui-feel-anew = Hágalo otra vez y anote lo que siente ahora.
ui-heard-at = ¿Dónde es más fuerte?
ui-heard-front = Delante
ui-heard-middle = En medio
ui-heard-rear = Detrás
ui-heard-all-along = Igual en todo
ui-temperature-degrees = Temperatura del soporte, grados Celsius
ui-degrees = { $degrees } °C
ui-limits = Fuera de esta calificación
ui-support-none = Sin rodamiento entre los extremos
ui-figure = Valor del fabricante, mm
ui-figure-keep = Anotar el valor
ui-basis = De dónde sale la cifra
ui-earlier-rules = Este coche entró con las reglas { $then }; la calificación mostrada sigue las reglas { $now }.
ui-cause-next = Siguiente: { $what }

## How a step is done at a support of its kind; without one, as everywhere.
step-play-vertical-do-rubber = Agarre el árbol junto al rodamiento. Empuje arriba, deje bajar. Mire rodamiento y soporte. Cede y vuelve: «Elástico». Llega a un tope: «Golpea».
step-play-lateral-do-rubber = Agarre el árbol junto al rodamiento. Empuje a la izquierda, tire a la derecha. Mire rodamiento y soporte. Cede y vuelve: «Elástico». Llega a un tope: «Golpea».
step-play-far-end-do-none = Agarre el árbol por un extremo y luego por el otro. Empuje arriba y abajo, luego de lado a lado. Mire cada articulación. Deslizarse a lo largo es normal en una articulación deslizante.
next-warm = Probado en frío, y eso no descarta nada: pruebe otra vez con el soporte caliente.
