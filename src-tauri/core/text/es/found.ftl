### Lo que se encontró a mano, lo que se suavizó, lo que una visita anterior dejó abierto, y lo que pide una PRECAUCIÓN
### sin avería. Para el taller; lo que acaba en -owner o empieza por note- o short- es para el cliente.

finding-sum-found = Encontrado: { $findings }.
finding-sum-behind = Detrás, lo más probable: { $causes }.
finding-sum-beside = También probable: { $causes }.
finding-sum-else-none = Aparte de lo encontrado no destaca ninguna causa.
made-milder = { $step }: primero se respondió «{ $was }», un PELIGRO o una ADVERTENCIA. { $by } lo cambió a «{ $now }» ({ $at }). Motivo indicado: { $reason }
made-milder-withdrawn = { $step }: primero se respondió «{ $was }», un PELIGRO o una ADVERTENCIA. { $by } lo retiró ({ $at }). Motivo indicado: { $reason }
made-milder-again = Se volvió a introducir y vale.
still-open-before = Sigue abierto: este coche se calificó con { $label } el { $day }. Nada muestra que se haya arreglado, y esta visita no lo anula. Tras la reparación abra una visita nueva, «Revisión tras la reparación», y compruebe otra vez los mismos sitios, en caliente donde se prueba a mano.
still-open-layout = Entonces se revisó como «{ $layout }»: compruebe cuál es la disposición correcta.
still-open-corrected = Esa visita se anotó primero como este coche y se corrigió a «{ $car }» cuando ya se había revisado algo: mire qué coche era.
still-open-unread = El registro de aquella visita no se puede leer entero; su calificación es la de la lista. Queda abierta hasta que se pueda leer de nuevo: recupere una copia de seguridad o el archivo de disposición del taller.
note-still-open-danger = El { $day } calificamos este coche como { $label }. Aún no hemos visto que esté arreglado.
note-still-open-warning = El { $day } calificamos este coche como { $label }. Aún no hemos visto que esté arreglado.
before-other-layout = La última vez este coche se anotó como «{ $layout }». Mire debajo del coche cuál es la correcta.
error-reason-too-short = El motivo es demasiado corto
error-reason-too-short-help = Diga en pocas palabras, con ocho letras o más, por qué la respuesta es ahora más suave. El informe lo muestra.
cause-range = { $word }, entre { $low } y { $high }
cause-something-else = Algo que no está en esta lista

finding-sum-caution-look = PRECAUCIÓN: aún no se ha encontrado avería. Reserve más tiempo para buscar.
finding-next-still-open = Aclare primero lo que una visita anterior dejó abierto: pregunte qué se hizo, mírelo y anótelo.
finding-next-drive-open = Hasta entonces nadie puede decir si se puede conducir el coche.
note-now-still-open-danger = No conduzca el coche antes de preguntarnos. Nuestra calificación anterior sigue en pie.
note-now-still-open-warning = No conduzca el coche antes de preguntarnos. Nuestra calificación anterior sigue en pie.
short-now-still-open-danger = No conduzca el coche antes de preguntarnos. Nuestra calificación anterior sigue en pie.
short-now-still-open-warning = No conduzca el coche antes de preguntarnos. Nuestra calificación anterior sigue en pie.
finding-next-caution-look = Reserve más tiempo para buscar la causa. No presupueste aún un arreglo: no se encontró avería.
headline-caution-look = Pida cita para mirarlo de cerca
note-now-caution-look = Pida cita para que miremos mejor. Si el ruido o el temblor aumenta, pare y llámenos.
short-now-caution-look = Pida cita para que miremos mejor. Si el ruido o el temblor aumenta, pare y llámenos.
finding-next-after-repair = Haga la prueba en carretera antes de devolver el coche: misma velocidad y marcha que en el síntoma descrito.
stop-road-test = En el taller está hecha toda prueba posible. Puede seguir una prueba en carretera.
next-looks-first = El juego quedó sin probar: mire antes lo que sujeta el rodamiento y también los tacos, y luego vuelva a probar.

note-likely-else = Además de lo que encontramos, la causa puede ser esta: { $about }
note-in-order = Probamos a mano el árbol y su rodamiento y los encontramos en buen estado.
note-in-order-ends = Probamos a mano los dos extremos del árbol y los encontramos en buen estado.
note-open-support-look = Aún no hemos visto la goma que sujeta el rodamiento.
note-open-which = { $count ->
    [one] Es: { $steps }.
   *[other] Son: { $steps }.
}

rule-coupling-worn = Un acoplamiento o una articulación del árbol está gastado o va duro.
rule-coupling-worn-owner = Una articulación del árbol está gastada.
rule-coupling-worn-joint-stiff-owner = Una articulación del árbol va dura.
note-could-coupling-worn = La articulación se puede gastar más hasta que el árbol tiemble o se suelte.
rule-boot-torn = El fuelle de una articulación está roto: sale la grasa y entra suciedad.
rule-boot-torn-owner = La funda de goma de una articulación está rota. Sale la grasa y entra suciedad.
note-could-boot-torn = Sin grasa la articulación se gasta. Al final se puede romper.

rule-cold-check-buzz-rubber = El soporte se probó en frío o sin anotar la temperatura. Una prueba en frío no descarta nada: la goma está dura en frío y cede más en caliente. Vuelva a probar en caliente.
rule-cold-check-buzz-rubber-owner = Probamos la goma en frío, y en caliente cede más.
unknown-cold-rubber = Ruido o vibración con prueba en frío: la goma cede más en caliente. Vuelva a probar con el soporte caliente.
note-cold-rubber = Probamos la goma en frío. En caliente cede más.
note-could-cold-check-buzz-rubber = Si la goma cede demasiado en caliente, el árbol puede oscilar y dañar otras piezas.

rule-no-bearing-action-after-repair = Tras la reparación: no se notó juego y no se encontró nada más. La reparación aguanta, hasta donde se revisó.
rule-no-bearing-action-after-repair-owner = Volvimos a mirar después del arreglo. Buscamos movimiento a mano y no encontramos ninguna avería.
rule-no-bearing-action-play-not-driven = No reproducido: no se condujo el coche en carretera, donde se reclama. No se notó juego y no se encontró nada más.
rule-no-bearing-action-play-not-driven-owner = Usted lo nota en carretera, y allí no lo hemos conducido. Buscamos movimiento a mano y no encontramos ninguna avería.
rule-no-bearing-action-ends-not-driven = No reproducido: no se condujo el coche en carretera, donde se reclama. No se notó juego en los extremos del árbol y no se encontró nada más.
rule-no-bearing-action-ends-not-driven-owner = Usted lo nota en carretera, y allí no lo hemos conducido. Probamos a mano los dos extremos del árbol y no encontramos ninguna avería.
unknown-not-driven = No reproducido: se reclama en carretera, y allí no se condujo.
note-not-driven = Usted lo nota en carretera, y allí no lo hemos conducido.

## Lo que se encontró, según la única respuesta que hay detrás.
rule-support-broken-torn-through-owner = El anillo de goma que sujeta el rodamiento está roto del todo.
rule-support-broken-bracket-cracked-owner = La pieza que sujeta el rodamiento tiene una grieta.
rule-support-broken-fastener-loose-owner = Un tornillo que sujeta el rodamiento está flojo.
rule-housing-broken-cracked-owner = La pieza que sujeta el rodamiento tiene una grieta.
rule-housing-broken-fastener-loose-owner = Un tornillo que sujeta el rodamiento está flojo.
rule-movement-at-support-felt-owner = Notamos a mano que el árbol se mueve en su rodamiento. Ahí no se debe mover nada.
rule-coupling-bolts-bolt-loose-owner = Un tornillo que sujeta el árbol está flojo.
rule-coupling-bolts-bolt-missing-owner = Falta un tornillo que sujeta el árbol.
rule-support-ageing-crazed-owner = El anillo de goma que sujeta el rodamiento es viejo y tiene muchas grietas finas.
rule-support-ageing-oil-soaked-owner = El anillo de goma que sujeta el rodamiento está empapado de aceite.
rule-support-ageing-off-centre-owner = El anillo de goma que sujeta el rodamiento cuelga o está fuera de sitio.
rule-rubber-play-knocks-owner = El rodamiento se mueve en su anillo de goma hasta dar en un tope.
rule-rubber-play-beyond-figure-owner = El rodamiento se mueve en su anillo de goma más de lo que permite el fabricante.
rule-turns-badly-rough-owner = El árbol gira áspero a mano.
rule-turns-badly-resists-owner = Cuesta girar el árbol a mano.

## Según la disposición.
drawing-rigid-output-speed = Dónde está el rodamiento: el árbol va bajo el piso en dos partes, del cambio al eje trasero. Entre ellas, su rodamiento está en un alojamiento de metal.
drawing-two-centres = Dónde están los rodamientos: el árbol va bajo el piso en tres partes. Entre ellas hay dos rodamientos en anillos de goma.
drawing-half-shaft = Dónde está el rodamiento: el árbol va a lo ancho del coche, del cambio a una rueda delantera. Junto al motor, su rodamiento está en un soporte de metal.
drawing-front-shaft = Un árbol va del centro del coche al eje delantero, con una articulación en cada extremo y ningún rodamiento entre ellas.
drawing-one-piece = Un árbol va bajo el piso del cambio al eje trasero, con una articulación en cada extremo y ningún rodamiento entre ellas.

## En un tubo.
step-shaft-look-do-tube = Solo con el tubo abierto. Cerrado, nadie puede ver el árbol: responda «No se pudo ver».
step-turn-by-hand-do-tube = Solo con el tubo abierto y el árbol a mano. Cerrado, responda «No hecho». Si no, gírelo despacio una vuelta entera y note si va áspero o frenado.

## What stays open, in a headline, and joints that decide.
headline-caution-open = Avería encontrada; la prueba a mano sigue abierta
finding-sum-caution-open = PRECAUCIÓN: se encontró algo, y la prueba que decide sigue abierta.
headline-still-open-danger = Un PELIGRO anterior no está resuelto
headline-still-open-warning = Una ADVERTENCIA anterior no está resuelta
finding-sum-still-open-danger = Un PELIGRO anterior no está resuelto: hasta que lo esté, nada de esto da el coche por bueno.
finding-sum-still-open-warning = Una ADVERTENCIA anterior no está resuelta: hasta que lo esté, nada de esto da el coche por bueno.
note-open-coupling-look = No hemos mirado las articulaciones del árbol.
limit-coupling-look = Las articulaciones y sus tornillos no se miraron, o no del todo.
limit-coupling-look-owner = No hemos visto del todo las articulaciones del árbol.
note-could-turns-badly-none = Una articulación se puede calentar y romper. Entonces el árbol se puede soltar.
next-left-out = Se ha dejado fuera hasta ahora: mírelo antes de entregar el coche.
note-changed = Una respuesta se cambió durante la revisión: al principio señalaba más peligro. Pregúntenos por qué.
rule-sagging-touches = El soporte de goma está descolgado y algo roza: lo más probable, el propio árbol. Busque marcas de roce en él.
rule-sagging-touches-owner = La goma que sujeta el árbol está descolgada y algo roza.
note-could-sagging-touches = El árbol puede rozar, dañarse y soltarse en marcha.
rule-play-unsure-none = Se probaron ambos extremos del árbol y no se pudo descartar movimiento. Pruebe ambos otra vez con otra persona que mire la articulación.
rule-play-unsure-none-owner = Buscamos movimiento en los dos extremos del árbol y no estamos seguros.
note-could-play-unsure-none = Si una articulación está floja, el árbol se puede soltar en marcha.
note-could-unrated-none = Aún no lo sabemos. Si una articulación está floja, el árbol se puede soltar en marcha.
finding-next-again-owner = Dé la nota al cliente. No presupueste nada hasta haber probado otra vez a mano.
rule-cold-check-buzz-repaired = Tras una reparación, y probado a mano en frío o sin temperatura: una prueba en frío no descarta nada. Pruebe otra vez en caliente antes de decir que la reparación aguanta.
rule-cold-check-buzz-repaired-owner = El coche se reparó y lo hemos probado a mano en frío. Solo en caliente se ve si la reparación aguanta.
next-whose-roughness = Desacople el árbol y gírelo solo: así se ve si la aspereza es suya.
finding-elsewhere = No cuenta: { $answers }. El coche estaba anotado entonces con otra disposición u otro valor. Compruébelo de nuevo.
rule-set-apart = Se encontró algo mientras este coche estaba anotado con otra disposición u otro valor, y ni se ha comprobado de nuevo ni se ha retirado. Resuélvalo primero.
rule-set-apart-owner = Encontramos algo en este coche que aún no hemos resuelto.
note-could-set-apart = Si está en el rodamiento, el árbol puede soltarse en marcha.
