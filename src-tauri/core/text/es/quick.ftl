### La comprobación a mano como camino propio, y lo que sostiene el coche.

ui-lift-kind = ¿Qué sostiene el coche?
ui-lift-kind-why = Después vienen sus condiciones, siete como mucho.
lift-two-post = Elevador de dos columnas
lift-platform = Elevador de plataforma
lift-pit = Foso
lift-ramps = Rampas
lift-stands = Borriquetas

order-hands-on = Solo la prueba a mano
ui-order-hands-on-about = Debajo del coche: mirar el soporte, sentir el juego en las dos direcciones, y hay una calificación. El resto puede seguir.
ui-find-out-why = Averiguar por qué hace ruido
ui-find-out-why-about = La prueba a mano está hecha. Los demás pasos buscan la causa.
ui-leave-part = Salir de esta parte
ui-lift-changed = ¿Se bajó o se movió el coche, o alguien subió a él? Salga antes de esta parte.
ui-gate-again = Ya confirmada por { $by }, { $when }.
ui-gate-again-part = ¿Ya no es así? Salga de esta parte: sus condiciones se confirman entonces de nuevo.

## Deshacer la última entrada: cuál es, antes de que se vaya.
ui-undo-by = De { $by }, { $when }
ui-undo-others = Esta entrada es de { $by }, no de usted. ¿Deshacerla?
ui-undo-do = Deshacerla
ui-undo-keep = Dejarla
ui-undone = Deshecho: { $what }
ui-undone-what = { $about ->
    [none] { $what }
   *[other] { $what }, { $about }
}
ui-redo = Anotarlo otra vez
ui-redo-gate = Una condición se confirma de nuevo junto al coche, en su fila.
ui-redo-photo = Una foto se toma de nuevo con la cámara.
ui-redo-gauge = Las lecturas se escriben de nuevo en la pantalla del comparador.

## Junto al botón que se pulsó.
ui-recorded = Anotado.
