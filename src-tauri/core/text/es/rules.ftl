### Motivos de una calificación: rule-ID para el taller, rule-ID-owner para el cliente, que quizá no conoce las piezas.

rule-movement-at-support = Movimiento donde no se permite ninguno, notado con la mano o probado con el comparador: el eje se mueve en su rodamiento.
rule-movement-at-support-owner = Hemos notado o medido que el eje se mueve en su rodamiento. Ahí no debe moverse nada.
rule-housing-broken = El soporte del rodamiento está agrietado o uno de sus tornillos está flojo.
rule-housing-broken-owner = La pieza que sujeta el rodamiento tiene una grieta, o uno de sus tornillos está flojo.
rule-coupling-failing = Un acoplamiento del eje está a punto de fallar.
rule-coupling-failing-owner = Una junta del eje está a punto de romperse.
rule-shaft-fibre-damaged = La fibra del eje está dañada.
rule-shaft-fibre-damaged-owner = El eje es de fibra, y la fibra está dañada. Puede romperse sin avisar.
rule-running-stopped = Hubo que parar el motor por un golpeteo fuerte o una vibración fuerte.
rule-running-stopped-owner = Tuvimos que parar el motor por un golpeteo o un temblor muy fuerte.

rule-rubber-play = El soporte de goma cede más de lo que permite el fabricante, o se notó movimiento y no se conoce el valor.
rule-rubber-play-owner = El rodamiento se mueve en su aro de goma. Se mueve más de lo permitido, o no sabemos cuánto se permite.
rule-turns-badly = El eje gira áspero o se resiste a mano.
rule-turns-badly-owner = El eje no gira libre con la mano.
rule-shaft-damaged = El eje está abollado o falta un contrapeso.
rule-shaft-damaged-owner = El eje tiene un golpe, o le falta un peso pequeño que lo hace girar bien.
rule-far-end-play = Se notó movimiento en el extremo del eje, o no se pudo descartar.
rule-far-end-play-owner = El eje puede estar flojo en su extremo.
rule-play-unsure = No se pudo descartar movimiento en el soporte: la prueba se hizo y quedó dudosa.
rule-play-unsure-owner = Hemos buscado movimiento en el rodamiento y no lo podemos descartar.
rule-bearing-likely = En conjunto, las respuestas hacen una causa del rodamiento tan probable como no, o más.
rule-bearing-likely-owner = Lo encontrado hasta ahora apunta al rodamiento.

rule-cause-likely = Causa probable: { $cause }.
rule-cause-likely-owner = La avería más probable es esta: { $about }
rule-cause-likely-misfire = Causa probable: { $cause }. El combustible sin quemar puede sobrecalentar y destruir el catalizador.
rule-cause-likely-misfire-owner = La avería más probable es esta: { $about } Eso puede dañar una pieza cara del escape.
rule-finding-unexplained = Se oyó, se notó o se vio algo que ningún otro motivo explica. Mire más de cerca antes de devolver el coche.
rule-finding-unexplained-owner = Hay algo, contado por usted o visto por nosotros, que hay que mirar más de cerca.
rule-cold-check-buzz = Se notó un zumbido o el cliente se queja de él, y no se notó movimiento con el soporte frío o sin anotar su calor. Un alojamiento de aluminio se abre en caliente: pruebe otra vez en caliente.
rule-cold-check-buzz-owner = Hay un zumbido. Hemos buscado movimiento con la pieza fría, pero en caliente puede soltarse.

rule-no-bearing-action = Las dos pruebas de holgura están bien, el eje gira suave y no se encontró nada más.
rule-no-bearing-action-owner = Hemos probado el rodamiento a mano y ahí no hay ninguna avería.
rule-no-bearing-action-not-reproduced = No reproducido: no se oyó nada, las dos pruebas de holgura están bien y el eje gira suave.
rule-no-bearing-action-not-reproduced-owner = El ruido no se pudo reproducir: no salió mientras tuvimos el coche. Hemos probado el rodamiento a mano y ahí no hay ninguna avería.
rule-no-bearing-action-not-listened = No reproducido: no se hizo ninguna prueba en marcha. Las dos pruebas de holgura están bien y el eje gira suave.
rule-no-bearing-action-not-listened-owner = El ruido no se reprodujo: no pusimos en marcha el motor para escuchar. Hemos probado el rodamiento a mano y ahí no hay ninguna avería.
