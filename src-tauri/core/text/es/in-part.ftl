### De qué no habla una calificación, un árbol que gira con lo que lleva unido, y lo que zumba con la velocidad.

headline-notice-in-part = El rodamiento no necesita nada, hasta donde se revisó
finding-sum-notice-in-part = AVISO: el rodamiento no necesita nada, hasta donde se revisó.
finding-next-unlooked = Antes de devolver el coche, mire lo que quedó fuera: { $parts }.

## Lo que nadie miró de la transmisión.
limit-unlooked = Sin mirar, o no del todo: { $parts }. De esto, esta calificación no dice nada.
limit-unlooked-owner = No miramos, o no del todo: { $parts }. De eso no podemos decir nada.
unlooked-play-far-end = el juego en el extremo del árbol
unlooked-play-far-end-owner = el extremo del árbol
unlooked-coupling-look = los acoplamientos y sus tornillos
unlooked-coupling-look-owner = las articulaciones y sus tornillos
unlooked-shaft-look = el propio árbol
unlooked-shaft-look-owner = el propio árbol
unlooked-shield-and-mounts = las chapas y los soportes
unlooked-shield-and-mounts-owner = las chapas térmicas y las piezas que sujetan el motor
ui-unlooked = Sin mirar

## Girado con las ruedas.
ui-free-engine = ¿Está el árbol desacoplado del motor?
ui-free-wheels = ¿Está el árbol desacoplado de ruedas y diferencial?
ui-free-no-engine = Arrastra el motor
ui-free-no-wheels = Arrastra las ruedas
detail-free-engine = Girado libre del motor
detail-free-wheels = Girado libre de ruedas y diferencial
detail-not-free-engine = Girado junto con el motor
detail-not-free-wheels = Girado junto con las ruedas
rule-stiff-with-wheels = El árbol va duro, pero giraban con él ruedas, frenos y diferencial: no se sabe qué frena. Gírelo desacoplado.
rule-stiff-with-wheels-owner = Costaba girar el árbol, pero las ruedas giraban con él. Aún no lo hemos girado solo.
note-could-stiff-with-wheels = La pieza que no gira libre puede calentarse y fallar. Puede ser un rodamiento, una articulación o un freno.
limit-turn-by-hand-none = Limitado al juego; las articulaciones no se giraron por sí solas.
limit-turn-by-hand-none-owner = No giramos el árbol por sí solo.

## Los dos extremos de un árbol que nada sujeta en medio.
step-play-far-end-ends = Juego en ambos extremos
rule-far-end-play-ends = En uno de los extremos del árbol, o en ambos, se notó movimiento transversal o un golpe. Anote en cuál antes de empezar.
rule-far-end-play-ends-owner = El árbol está flojo en uno de sus extremos, o en los dos.
rule-far-end-unsure-ends = Se probaron ambos extremos del árbol y no se pudo descartar movimiento. Pruebe ambos otra vez con otra persona que mire la articulación.
rule-far-end-unsure-ends-owner = Buscamos movimiento en los dos extremos del árbol y no estamos seguros.

## Sospecha en un tubo aún cerrado.
rule-bearing-likely-suspected-closed = Por lo oído, un fallo del rodamiento es probable al menos en un 50 %: sospecha. El tubo está cerrado y ninguna mano pudo probarlo. Lo diría abrir el tubo según el fabricante.
rule-bearing-likely-suspected-closed-owner = Lo que oímos puede venir de un rodamiento del tubo. El tubo está cerrado y aún nadie pudo tocarlo.

## Lo que zumba con la velocidad.
cause-wheel-bearing-or-axle = Rodamiento de rueda, o engranajes del eje o de la caja de transferencia
cause-wheel-bearing-or-axle-about = Un rodamiento de rueda, o engranajes del eje o de la caja de transferencia, están gastados y zumban al rodar.
cause-wheel-bearing-or-axle-next = Tome una curva suave a cada lado: un zumbido que crece hacia un lado es el rodamiento de la rueda exterior. Un aullido que va y viene con el pedal es el diferencial o, si la hay, la caja de transferencia: compruebe su aceite y su juego. Luego gire cada rueda a mano en el elevador.
step-road-bend = En carretera: en curva
step-road-bend-do = Misma velocidad, una curva larga y suave a la izquierda, luego a la derecha. ¿Crece un zumbido hacia un lado?
step-road-bend-watch = Carretera ancha sin tráfico, sin volantazos. Golpeteo fuerte o mucha vibración: pare. El procedimiento del fabricante va primero.
drawing-road-bend = Un coche en la carretera, con ondas bajo el suelo.
answer-louder = Más fuerte a un lado
answer-road-bend-none = Sin zumbido
answer-road-bend-same = Igual a ambos lados
