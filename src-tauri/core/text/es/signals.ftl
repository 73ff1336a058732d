### Palabras cortas de la revisión: palabras de advertencia, probabilidad, estaciones, disposiciones, bloqueos, anotaciones.
### Palabras de advertencia según la práctica de ISO 3864 y ANSI Z535.

word-danger = PELIGRO
word-warning = ADVERTENCIA
word-caution = PRECAUCIÓN
word-notice = AVISO
word-unrated = AÚN SIN COMPROBAR
headline-danger = NO CONDUZCA
headline-warning = No conduzca: solo en grúa
headline-caution = Pida cita para reparar
headline-notice = El rodamiento no necesita nada
headline-unrated = La prueba a mano sigue abierta

## La escala de probabilidad del IPCC en su versión española.
likelihood-virtually-certain = Prácticamente seguro
likelihood-very-likely = Muy probable
likelihood-likely = Probable
likelihood-about-as-likely-as-not = Tan probable como improbable
likelihood-unlikely = Improbable
likelihood-very-unlikely = Muy improbable
likelihood-exceptionally-unlikely = Excepcionalmente improbable

station-seat = Asiento del conductor
station-support = Soporte
station-shaft = Árbol
station-far-end = Extremo del árbol
station-around = Alrededor del árbol
station-account = Relato del cliente

layout-rigid-engine-speed = Soporte rígido, régimen del motor
layout-rigid-engine-speed-about = Un árbol del motor a un cambio situado atrás. Gira con el motor aunque el coche esté parado. Empujado y tirado a mano no debe moverse nada.
layout-rubber-centre = Soporte central de goma
layout-rubber-centre-about = Árbol de dos piezas tras el cambio, con su rodamiento central en un anillo de goma. Que ceda algo es normal; el límite es el valor del fabricante.
layout-torque-tube = Tubo de empuje
layout-torque-tube-about = Árbol a régimen del motor dentro de un tubo, sobre varios rodamientos. No se puede agarrar hasta abrir el tubo según el fabricante.

seat-bare = Alojamiento de aluminio sin casquillo
seat-sleeved = Alojamiento con casquillo de acero
gearbox-automated-clutch = Embrague automatizado
gearbox-torque-converter = Convertidor de par
gearbox-manual = Cambio manual

sound-buzz = Zumbido
sound-knock = Golpeteo
sound-vibration = Vibración
sound-rattle = Traqueteo
sound-pops = Petardeo
sound-hiss = Silbido de aire
sound-whine = Aullido

waiver-cannot-reach = La cámara no llega
waiver-too-dark = Demasiado oscuro para una foto
waiver-hands-busy = Hacían falta las dos manos
waiver-nothing-to-see = En una foto no se vería nada
waiver-nothing-to-show = nada que mostrar, anotado por Steady mismo
waiver-owner-declined = El cliente no quiere fotos
waiver-not-in-case = El archivo de caso no indica foto

decision-repair = Que lo reparen
decision-decide-later = Me lo voy a pensar
decision-decline = Dejarlo como está, me explicaron el riesgo

entry-opened = Llegó el coche
entry-amended = Recepción cambiada
entry-order-chosen = Orden elegido
entry-gate-confirmed = Condición confirmada
entry-lift-said = Cambiado lo que sostiene el coche
entry-part-left = Parte cerrada con sus condiciones
entry-answered = Contestado
entry-photo-kept = Foto guardada
entry-photo-waived = Sin foto, con motivo
entry-withdrawn = Retirado
entry-arranged = Completado por la reproducción
entry-received = Nota recibida y firmada
arranged-gates-confirmed = Al caso le faltaban condiciones; la reproducción las confirmó.
arranged-steps-ordered = El caso daba las respuestas en otro orden; la reproducción ordenó los pasos.
arranged-times-set-back = El caso dice hace cuántos días ocurrió; la reproducción retrasó las horas de sus entradas.

lock-gates-open = Bloqueado: confirme primero las condiciones.
lock-other-part = Bloqueado: salga primero de la parte en la que está.
lock-gates-of-another = Bloqueado: otra persona confirmó las condiciones de esta parte. Salga de ella y confírmelas usted.
lock-gates-too-old = Bloqueado: las condiciones de esta parte se confirmaron hace demasiado tiempo. Salga de ella, vuelva a mirar y confírmelas de nuevo.
lock-not-driven = Bloqueado: este coche no puede circular. El resultado dice por qué.
lock-set-apart = Bloqueado: lo encontrado con otra disposición no está resuelto. Responda de nuevo o retírelo con un motivo.
lock-earlier-danger = Bloqueado: un PELIGRO anterior de este coche no está resuelto. Primero la prueba a mano, motor parado.
lock-danger-found = Bloqueado: se encontró PELIGRO, así que el motor no se pone más en marcha.

next-hands-on = Solo la prueba a mano decide.

part-leave-running = Pare el motor y salga del asiento
part-leave-creep = Coche parado, freno puesto
part-leave-lift = Salga de debajo del coche

order-under-car-first = Todo, primero bajo el coche
order-running-first = Todo, primero el motor
