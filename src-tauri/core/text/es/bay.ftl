### The screens around the work: first start, settings, practice, the driver's seat, interruptions.

## First start.
ui-welcome-what-title = Comprobar el ruido con las manos
ui-welcome-what = Steady lo lleva paso a paso hasta el rodamiento de un árbol de transmisión: qué escuchar desde el asiento, qué mover con la mano bajo el coche, qué anotar.
ui-welcome-maker = El procedimiento del fabricante y la ley local van antes que Steady. Steady no necesita red.
ui-welcome-rule-title = Solo la comprobación con las manos decide
ui-welcome-rule = El ruido y la vibración levantan sospecha. Solo moviendo el árbol con la mano se sabe.
ui-welcome-open = Lo que no se comprobó nunca se llama seguro. Puede parar en cualquier paso y volver.

## Settings.
ui-settings = Ajustes
ui-settings-of = Ajustes. Técnico: { $name }
ui-thumb = ¿Qué pulgar maneja la pantalla?
ui-thumb-left = Izquierdo
ui-thumb-right = Derecho
ui-theme-contrast = Alto contraste

## Practice.
ui-practice = Práctica
ui-practice-about = Recorra cada pantalla con un coche que no existe. Queda aparte de sus visitas, y de él no se puede hacer ningún documento ni archivo.
ui-practice-start = Empezar una visita de práctica
ui-practice-car = Coche de práctica
ui-practice-ribbon = Práctica. No es un coche real.
ui-practice-end = Borrarla

## The driver's seat.
ui-driver-open = Pantalla para el conductor
ui-driver-short = Conductor
ui-driver-title = Está en el asiento del conductor
ui-driver-nobody = No hay nadie bajo el coche. Nadie pasa debajo.
ui-driver-running-1 = Quédese sentado. Freno de mano puesto, sin marcha.
ui-driver-running-2 = Pise el pedal despacio, hasta unas 2500 rpm.
ui-driver-running-3 = Mantenga menos de diez segundos. Suelte.
ui-driver-idle-1 = Siga sentado. Freno de mano puesto, sin marcha.
ui-driver-idle-2 = Deje el motor al ralentí. Pie fuera del pedal.
ui-driver-idle-3 = Si le piden subirlo: pise un poco, despacio, y suelte.
ui-driver-creep-1 = Tenga el pie sobre el freno.
ui-driver-creep-2 = Suelte el freno poco a poco. Avance el largo de un coche.
ui-driver-creep-3 = Frene hasta parar.
ui-driver-stop = PARE YA
ui-driver-stop-running = Golpeteo fuerte o vibración fuerte: pie fuera del pedal, motor apagado.
ui-driver-stop-creep = Golpeteo fuerte, o alguien cerca del coche: frene a fondo, motor apagado.
ui-driver-stopped = Tuve que pararlo
ui-driver-done = Hecho

## Interruptions.
ui-clock-behind = El reloj de este dispositivo va por detrás de la última anotación de esta visita ({ $when }). No se ha perdido nada y el orden se mantiene; ponga el reloj en hora antes de seguir.

## Another layout chosen after steps were answered: what it takes back.
ui-relayout = Lo que retira el cambio
ui-relayout-why = Estas respuestas son del coche como se anotó primero y ya no valen para él. Quedan en el registro como retiradas, con sus fotos:
ui-relayout-reason = Una de ellas pedía PELIGRO o ADVERTENCIA: diga por qué se retira.
ui-relayout-do = Cambiar
ui-relayout-keep = Dejarlo como estaba

## What a found DANGER closes.
ui-next-closed = Cerrado, porque se encontró PELIGRO y el motor no se pone más en marcha:
