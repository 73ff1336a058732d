### Las frases del informe (para el taller) y de la nota (para el cliente), y cómo se leen números y fechas.
### Signos de números y porcentajes, orden de la fecha: Unicode CLDR, idioma es.

number-group = { "." }
number-group-from = 5
number-point = { "," }
list-joint = { ", " }
reading-rpm = { $value } rpm
percent = { $number } %
percent-below = menos del { $number } %
percent-above = más del { $number } %
date-day = { $day } de { $month } de { $year }
month-1 = enero
month-2 = febrero
month-3 = marzo
month-4 = abril
month-5 = mayo
month-6 = junio
month-7 = julio
month-8 = agosto
month-9 = septiembre
month-10 = octubre
month-11 = noviembre
month-12 = diciembre
time-utc = { $day }/{ $month }/{ $year }, { $clock } UTC
length-mm = { $mm } mm
length-both = { $mm } mm ({ $thou } milésimas de pulgada)
length-shown = mm
answer-missing = Sin revisar
word-none-yet = aún ninguna

## El informe.

finding-title = Informe: árbol de transmisión y su rodamiento de apoyo
finding-heading-next = Qué hacer ahora
finding-heading-vehicle = Vehículo y visita
finding-heading-complaint = Síntoma que describe el cliente
finding-heading-reasons = Por qué esta calificación
finding-heading-suspicion = Qué despierta sospecha
finding-heading-steps = Qué se revisó
finding-heading-causes = Causas, la más probable primero
finding-heading-causes-found = Causas, primero lo que explica lo encontrado
finding-heading-unknown = Qué no se sabe
finding-heading-road = Normas de inspección (Reino Unido, UE), a título informativo
finding-heading-cautions = Advertencias
finding-heading-signed = Recibo de la nota del cliente

finding-sum-danger = PELIGRO: no conduzca este coche.
finding-sum-warning = ADVERTENCIA: no se debe conducir. Que lo lleve a reparar una grúa.
finding-sum-repaired = Reparado desde entonces: tras el montaje, el rodamiento giraba libre a mano. La calificación dice lo que se encontró antes.
finding-sum-caution = PRECAUCIÓN: pida cita para reparar.
finding-sum-notice = AVISO: el rodamiento no necesita nada.
finding-sum-unrated = AÚN SIN COMPROBAR: la prueba a mano sigue abierta, por eso no hay calificación.
finding-sum-suspicion = Solo sospecha: { $reason }
finding-sum-still = La prueba a mano no está terminada.
finding-sum-likely = Lo más probable: { $causes }.
finding-sum-no-cause = Ninguna causa destaca.
finding-sum-bearing = Al menos una causa del rodamiento: { $bearing }.
finding-sum-nothing-yet = Aún no se anotó nada, por eso las causas no están ordenadas.
finding-cause-share = { $cause } ({ $percent })

finding-next-danger = No lo conduzca, no lo pruebe en carretera, no vuelva a arrancar el motor. Cárguelo en una grúa con el motor parado; no lo remolque sobre las ruedas motrices.
finding-next-danger-owner = Dígaselo hoy al cliente y pídale que firme que recibió la nota.
finding-next-warning = No lo devuelva para conducirlo. Que lo lleve a reparar una grúa, con el motor parado y sin remolcarlo sobre las ruedas motrices.
finding-next-repaired = Antes de entregar el coche, vuelva a buscar juego a mano, en frío y en caliente. Hasta entonces vale la calificación de arriba.
finding-next-warning-owner = Dé la nota al cliente y presupueste la reparación.
finding-next-caution = Dé cita para reparar y presupueste las averías encontradas.
finding-next-caution-owner = Dé la nota al cliente. Pídale que vuelva si aumenta el ruido o la vibración.
finding-next-notice = No presupueste trabajo en el rodamiento.
finding-next-notice-owner = Dé la nota al cliente. Pídale que vuelva si el ruido aparece otra vez o cambia.
finding-next-unrated = No lo dé por bueno ni por malo: el ruido y la vibración no prueban nada.
finding-next-unrated-owner = Presupueste una reparación solo después de la prueba a mano.
finding-next-finish = Termine la revisión: { $steps }.
finding-next-check = Siguiente prueba: { $step }. { $why }
finding-next-maker = Antes de reparar, lea el procedimiento del fabricante para este coche.

field-label = Marca y modelo
field-plate = Matrícula
field-vin = Bastidor
field-layout = Disposición del árbol
field-seat = Alojamiento del rodamiento
field-gearbox = Cambio
field-cylinders = Cilindros
field-idle = Margen de ralentí
field-idle-value = { $low } a { $high } rpm
field-odometer = Cuentakilómetros
field-odometer-km = { $value } km
field-odometer-miles = { $value } millas
field-maker-play = Movimiento según el fabricante
field-owner = Cliente
field-contact = Contacto
field-vehicle = Vehículo
field-opened = Llegó el coche
field-checked = Última revisión
field-date = Fecha (UTC)
field-technician = Revisado por
field-visit = Visita
field-ledger = Registro
field-ledger-value = { $entries ->
    [one] { $entries } anotación, última huella { $head }
   *[other] { $entries } anotaciones, última huella { $head }
}
field-ledger-broken = Fallo del registro
field-ledger-broken-value = Desde la anotación { $at } el registro no encaja. Puede haber anotaciones cambiadas o perdidas.
field-knowledge = Reglas y valores
field-complaint = En palabras del cliente
field-complaint-none = Nada anotado
field-sounds = Qué nota el cliente
field-when = Cuándo ocurre

reason-rests-on = { $reason } Se basa en: { $answers }.
answer-at-step = { $step }: { $answer }
answer-and-gauge = { $answer } a mano, movimiento demostrado con reloj comparador
weight-strong = { $answer } (fuerte)
weight-clear = { $answer } (claro)
weight-slight = { $answer } (leve)
weight-by-gauge = { $answer } (con el comparador)

detail-answered = { $at }, por { $by }
detail-cold = Probado con el soporte frío
detail-warm = Probado con el soporte caliente
detail-no-temperature = No se anotó si estaba frío o caliente
detail-milder = Cambiado tras una respuesta de PELIGRO o ADVERTENCIA. Motivo dado: { $reason }
detail-milder-again = Cambiado o retirado una vez y vuelto a introducir; vale. Motivo dado: { $reason }
detail-disputed = Dos aparatos anotaron respuestas distintas. Cuenta la peor.
photo-caption = { $step }: { $answer }
photo-alt = Foto hecha en el paso «{ $step }». Respuesta anotada: { $answer }.
photo-none = Sin foto: { $reason }
photo-none-taken = No se hizo ninguna foto. Steady anotó por sí mismo que no había nada que mostrar.

unknown-hands-on = { $step }: no hecho. Solo la prueba a mano decide.
unknown-unsure = { $step }: hecho, pero quedó dudoso; se trata como no superado.
unknown-disputed = { $step }: dos aparatos anotaron respuestas distintas.
unknown-open = { $count ->
    [one] Un paso más quedó sin revisar.
   *[other] { $count } pasos más quedaron sin revisar.
}
unknown-cold = Zumbido, golpeteo o vibración con prueba en frío: un alojamiento puede aflojarse en caliente. Vuelva a buscar movimiento con el soporte caliente.
unknown-not-reproduced = No reproducido: con el motor en marcha no se oyó nada.
unknown-not-listened = No reproducido: no se hizo ninguna prueba en marcha, así que nadie escuchó.
unknown-figure = El movimiento se juzgó por el valor del fabricante, pero ese valor no está anotado. Anótelo en la recepción.
unknown-ledger = El registro no encaja entero desde la anotación { $at }.

caution-scope = Este informe cubre lo que se revisó, tal como estaba ese día. Las piezas no nombradas no se revisaron.
caution-sorting = Las probabilidades se basan en el criterio del taller y no están medidas. Sobre el rodamiento solo decide la prueba a mano.
caution-maker = Los procedimientos del fabricante y la ley local van antes que este informe.
caution-quote = Esto no es un presupuesto ni un informe pericial para un tribunal.

signed-text = { $decision }. Nota recibida el { $at } por { $name }.
signed-text-nameless = { $decision }. Nota recibida el { $at }; no se dio nombre.
signed-outdated = Se anotó algo después de esta firma: puede que la nota firmada no lo diga.
signed-language = La nota que se firmó estaba en otro idioma: { $language }.
signed-note = Firmado para la nota con SHA-256 { $hash }.
signed-alt = Firma, hecha a mano.

finding-foot = Informe, visita { $visit }. Lo que no se nombra no se revisó.

## La nota. Palabras cortas y frases cortas: un cliente preocupado la lee una vez.

note-title = Qué hemos encontrado en su coche
note-heading-found = Qué hemos encontrado
note-heading-means = Qué significa
note-heading-could-happen = Qué podría pasar
note-heading-do-now = Qué hacer ahora
note-heading-not-known = Qué no sabemos aún
note-heading-ask = A quién preguntar

note-found-unrated = Aún no hemos hecho toda la prueba a mano.
note-found-suspicion = Hay señales que dan motivo de sospecha. Solo la prueba a mano lo puede aclarar.
note-found-rest-open = El resto de la prueba aún no está hecho.
note-found-repaired = Esta nota dice lo que encontramos antes de la reparación. Después se reparó el rodamiento.
note-found-more = { $count ->
    [one] Hay un punto más. El taller se lo puede enseñar.
   *[other] Hay { $count } puntos más. El taller se los puede enseñar.
}

note-means-shaft = El árbol lleva la fuerza del motor a las ruedas. Un rodamiento lo mantiene firme.
note-means-danger = Es nuestro grado de riesgo más alto. Nadie debe conducir el coche.
note-means-warning = Es nuestro segundo grado de riesgo más alto. El coche no se debe conducir.
note-means-caution = Algo pide un arreglo o una mirada más de cerca. No lo deje para luego.
note-means-notice = No hemos encontrado motivo para tocar ahora el rodamiento.
note-means-unrated = Aún no hay calificación. Un ruido puede ser señal de avería, pero solo la prueba a mano decide.
note-likely = La causa más probable: { $about }

note-could-movement-at-support = El árbol se puede soltar en marcha. Puede dar contra el coche o contra el suelo. Usted podría perder el control.
note-could-housing-broken = El rodamiento se puede soltar en marcha. Entonces el árbol puede dar contra el coche o contra el suelo. Usted podría perder el control.
note-could-coupling-failing = La articulación se puede romper en marcha. Entonces el árbol puede dar contra el coche o contra el suelo. Usted podría perder el control.
note-could-shaft-fibre-damaged = El árbol se puede romper en marcha. Los trozos pueden dar contra el coche o contra el suelo. Usted podría perder el control.
note-could-running-stopped = Una pieza puede estar a punto de romperse. Si se rompe en marcha, usted podría perder el control.
note-could-rubber-play = La goma se puede romper más. Entonces el árbol puede oscilar, dar contra el coche y dañar otras piezas.
note-could-turns-badly = El rodamiento se puede calentar y bloquear o romper. Entonces el árbol se puede soltar.
note-could-shaft-damaged = El árbol puede temblar cada vez más. Eso puede romper su rodamiento y sus articulaciones.
note-could-far-end-play = La articulación se puede gastar más hasta que el árbol se suelte.
note-could-play-unsure = Si el rodamiento está flojo, el árbol se puede soltar en marcha.
note-could-bearing-likely = Si el rodamiento falla, el árbol se puede soltar en marcha.
note-could-cause-likely = La avería puede ir a más y dañar otras piezas.
note-could-cause-likely-misfire = La avería puede ir a más. Puede recalentar una pieza del escape, y esa pieza es cara.
note-could-finding-unexplained = No lo sabemos seguro. Puede ser el comienzo de una avería que va a más.
note-could-cold-check-buzz = Si el rodamiento está flojo en caliente, el árbol se puede soltar en marcha.
note-could-no-bearing-action = El ruido puede volver. Toda pieza se puede gastar con el tiempo.
note-could-unrated = Aún no lo sabemos. Si el rodamiento está flojo, el árbol se puede soltar en marcha.

note-now-danger = No conduzca el coche, ni siquiera a casa. No arranque el motor. Déjelo aquí o haga que lo lleven cargado en una grúa. Pídanos precio para el arreglo.
note-now-warning = No conduzca el coche. Que lo lleve a reparar una grúa, motor parado. No se debe remolcar sobre las ruedas motrices.
note-now-caution = Pida cita para el arreglo. Si el ruido o el temblor aumenta, pare y llámenos.
note-now-notice = Ahora no hay nada que hacer en el rodamiento. Vuelva si el ruido aparece otra vez o suena de otro modo.
note-now-unrated = Déjenos acabar la prueba a mano. Hasta entonces no le podemos decir si puede conducir el coche. Si da golpes o tiembla más que antes, pare y llámenos.
note-now-repaired = Pregúntenos si el coche se puede volver a conducir. No lo conduzca hasta que se lo digamos. Si da golpes o tiembla más que antes, pare y llámenos.

note-open-none = Hemos terminado todas las partes de esta prueba. Solo miramos las piezas que nombra el informe.
note-open-play-vertical = No hemos probado si el árbol se mueve arriba y abajo.
note-open-play-lateral = No hemos probado si el árbol se mueve de lado a lado.
note-open-tube-open-check = No hemos abierto el tubo para probar los rodamientos de dentro.
note-open-turn-by-hand = No hemos girado el árbol a mano.
note-unsure-play-vertical = Buscamos movimiento arriba y abajo, pero no estamos seguros.
note-unsure-play-lateral = Buscamos movimiento de lado a lado, pero no estamos seguros.
note-unsure-play-far-end = Buscamos movimiento en el extremo, pero no estamos seguros.
note-unsure-tube-open-check = Probamos los rodamientos del tubo, pero no estamos seguros.
note-disputed = Dos de nuestras anotaciones no dicen lo mismo. Cuenta la peor.
note-open-others = { $count ->
    [one] Queda una prueba sin hacer.
   *[other] Quedan { $count } pruebas sin hacer.
}
note-cold = Buscamos movimiento con la pieza fría. En caliente puede estar floja.
note-not-reproduced = Pusimos el motor en marcha y no oímos el ruido.
note-not-listened = No pusimos en marcha el motor para escuchar, así que el ruido no se reprodujo.
note-figure = El fabricante dice cuánto se puede mover. No hemos anotado ese número.
note-ledger = Nuestro registro de esta prueba puede estar incompleto o cambiado. Pregunte al taller.

note-ask-technician = Pregunte al taller que le dio esta nota. Nombre en la revisión: { $technician }.
note-ask-workshop = Pregunte al taller que le dio esta nota.
note-ask-second = También puede pedir a otro taller que lo mire. Van primero las normas del fabricante y la ley local.

note-receipt-heading = Su recibo
note-receipt-text = Firma solo que ha recibido esta nota. Puede elegir cualquiera de las tres, y puede cambiar de idea.
note-foot = Nota para el cliente. Cubre lo que se revisó, tal como estaba ese día.

short-head = { $vehicle }, { $date }: { $label }. { $headline }.
short-head-nameless = Su coche, { $date }: { $label }. { $headline }.
short-now-danger = Ni siquiera hasta casa. No arranque el motor. Déjelo aquí o haga que lo lleven cargado en una grúa.
short-now-warning = Que lo lleven a reparar, motor parado. No se debe remolcar sobre las ruedas motrices.
short-now-caution = Si el ruido o el temblor aumenta, pare y llámenos.
short-now-notice = Vuelva si el ruido aparece otra vez o suena de otro modo.
short-now-unrated = Déjenos acabar la prueba a mano. Hasta entonces no le podemos decir si puede conducir el coche.
short-more = La nota completa dice más: pídanosla.

# Rótulos de la impresión
paper-label-for = A favor:
paper-label-against = En contra:
paper-label-photo-missing = La foto está anotada, pero su archivo no se pudo leer al imprimir.
paper-label-photo-damaged = La foto está anotada, pero su archivo se dañó o se cambió después. No se muestra aquí y no prueba nada hasta que se incorpore una copia buena.
paper-label-name = Nombre
paper-label-date = Fecha
paper-label-signature = Firma
paper-label-page = Página { "{page}" } de { "{pages}" }
