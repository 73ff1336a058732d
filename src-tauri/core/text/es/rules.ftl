### Motivos de una calificación: rule-ID para el taller, rule-ID-owner para el cliente, que quizá no conoce las piezas.

rule-movement-at-support = Movimiento donde no se permite ninguno, notado con la mano o probado con el comparador: el árbol se mueve en su rodamiento.
rule-movement-at-support-owner = Hemos notado o medido que el árbol se mueve en su rodamiento. Ahí no debe moverse nada.
rule-housing-broken = El soporte del rodamiento está agrietado o uno de sus tornillos está flojo.
rule-housing-broken-owner = La pieza que sujeta el rodamiento tiene una grieta, o uno de sus tornillos está flojo.
rule-coupling-failing = Un acoplamiento del árbol está a punto de fallar.
rule-coupling-failing-owner = Una articulación del árbol está a punto de romperse.
rule-shaft-fibre-damaged = La fibra del árbol está dañada.
rule-shaft-fibre-damaged-owner = El árbol es de fibra, y la fibra está dañada. Puede romperse sin avisar.
rule-running-stopped = Hubo que parar el motor por un golpeteo fuerte o una vibración fuerte.
rule-running-stopped-owner = Tuvimos que parar el motor por un golpe fuerte o un temblor fuerte.

rule-rubber-play = El soporte de goma llega a un tope o cede más de lo que permite el fabricante, o se notó movimiento.
rule-rubber-play-owner = El rodamiento se mueve en su anillo de goma. Se mueve más de lo permitido, o no sabemos cuánto se permite.
rule-turns-badly = Al girarlo a mano, el árbol va áspero o frenado.
rule-turns-badly-owner = El árbol no gira libre con la mano.
rule-shaft-damaged = El árbol está abollado o falta un contrapeso.
rule-shaft-damaged-owner = El árbol tiene una abolladura, o le falta un peso pequeño que lo equilibra.
rule-far-end-play = En el extremo del árbol se notó movimiento transversal o un golpe.
rule-far-end-play-owner = El árbol está flojo en su extremo.
rule-play-unsure = No se pudo descartar movimiento en el soporte: la prueba se hizo y quedó dudosa.
rule-play-unsure-owner = Hemos buscado movimiento en el rodamiento y no lo podemos descartar.
rule-bearing-likely = En el rodamiento se notó, se vio o quedó dudoso algo, y las señales por sí solas hacen probable una avería del rodamiento al menos en un 50 %.
rule-bearing-likely-owner = Lo encontrado hasta ahora apunta al rodamiento.

rule-cause-likely = Probable al menos en un 50 %: { $cause }.
rule-cause-likely-owner = Lo que puede haber detrás: { $about }
rule-cause-likely-misfire = Probable al menos en un 50 %: { $cause }. El combustible sin quemar puede sobrecalentar y destruir el catalizador.
rule-cause-likely-misfire-owner = Lo que puede haber detrás: { $about } Eso puede arruinar una pieza cara del escape.
rule-finding-unexplained = Se oyó, se notó o se vio algo que ningún otro motivo explica. Mire más de cerca antes de devolver el coche.
rule-finding-unexplained-owner = Hay algo, contado por usted o visto por nosotros, que hay que mirar más de cerca.
rule-cold-check-buzz = No se notó movimiento, pero en frío o sin anotar la temperatura. Una prueba en frío no descarta nada: un alojamiento puede aflojarse en caliente. Vuelva a probar en caliente.
rule-cold-check-buzz-owner = Buscamos movimiento con la pieza fría, pero puede estar floja en caliente.

rule-no-bearing-action = Las dos pruebas de juego están bien, el árbol gira suave y no se encontró nada más.
rule-no-bearing-action-owner = Hemos probado el rodamiento a mano y ahí no hemos encontrado ninguna avería.
rule-no-bearing-action-not-reproduced = No reproducido: no se oyó nada, las dos pruebas de juego están bien y el árbol gira suave.
rule-no-bearing-action-not-reproduced-owner = El ruido no se reprodujo: no apareció mientras tuvimos el coche. Hemos probado el rodamiento a mano y ahí no hemos encontrado ninguna avería.
rule-no-bearing-action-not-listened = No reproducido: no se hizo ninguna prueba en marcha. Las dos pruebas de juego están bien y el árbol gira suave.
rule-no-bearing-action-not-listened-owner = El ruido no se reprodujo: no pusimos el motor en marcha para escuchar. Hemos probado el rodamiento a mano y ahí no hemos encontrado ninguna avería.
