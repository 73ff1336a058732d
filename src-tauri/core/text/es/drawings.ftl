### Qué muestra cada dibujo, en palabras: al tocarlo, y para quien no puede verlo.

drawing-road-speed-vibration = Un coche en la carretera; bajo su piso, ondas que crecen de izquierda a derecha con la velocidad.
drawing-idle-speed = Un cuentarrevoluciones visto desde el asiento, con la aguja al ralentí.
drawing-idle-noise = El asiento del conductor con un oído; ondas de sonido llegan del árbol bajo el piso.
drawing-idle-raise-effect = Un cuentarrevoluciones cuya aguja sube un poco desde el ralentí, y un oído al lado.
drawing-misfire-evidence = Un equipo de diagnóstico con una barra por cilindro; una barra es más alta que las otras.
drawing-air-leak-by-ear = Un tubo largo que va de un oído a un manguito con una grieta que silba.
drawing-air-leak-test = Un manguito de admisión con humo que sale por una grieta, y un bote de spray tachado.
drawing-engagement-setting = Una escala de régimen con dos marcas: el estándar del fabricante y el punto donde está el embrague.
drawing-neutral-2500-buzz = Un cuentarrevoluciones subido del ralentí a 2500, una palanca en punto muerto y ondas bajo los pies del conductor.
drawing-running-stop = Una mano que para el motor.
drawing-creep-noise = Un coche que avanza despacio, un pie sobre el freno y un oído.
drawing-engagement-reset-effect = Una escala de régimen con una flecha desde la marca elevada hasta la marca estándar.
drawing-housing-look = Una lámpara que ilumina el soporte del rodamiento; una grieta, un tornillo flojo y una mancha de grasa están rodeados.
drawing-play-vertical = Vista lateral, el soporte abierto. Las dos manos sujetan el árbol cerca del rodamiento. Unas flechas apuntan arriba y abajo. Un ojo vigila el hueco entre rodamiento y soporte.
drawing-play-lateral = Vista a lo largo del árbol. Las dos manos lo sujetan cerca del rodamiento. Unas flechas apuntan a izquierda y derecha. Un ojo vigila el hueco entre árbol y soporte.
drawing-tube-open-check = Un tubo abierto a lo largo, dentro el árbol sobre sus rodamientos y una mano en uno de ellos.
drawing-play-far-end = Dos manos sujetan el árbol por su extremo, junto a la articulación. Unas flechas apuntan arriba y abajo, y de través al árbol.
drawing-turn-by-hand = Dos manos hacen rodar el árbol sobre sí mismo, siguiendo una flecha que lo rodea. Los dedos están lejos de la articulación.
drawing-coupling-look = Un acoplamiento de tres brazos; una grieta en la goma y un tornillo flojo están rodeados.
drawing-shaft-look = El árbol entero de lado; un golpe, fibra deshilachada y el hueco de un contrapeso perdido están rodeados.
drawing-shield-and-mounts = Una chapa térmica cerca del árbol y un soporte de motor; un dedo aprieta la chapa.

drawing-rigid = Dónde está el rodamiento: el árbol va bajo el piso, del motor al puente trasero. Cerca del motor, su rodamiento va en un soporte rígido de metal.
drawing-rubber = Dónde está el rodamiento: el árbol va bajo el piso en dos partes. Entre ellas, su rodamiento va en un anillo de goma.
drawing-tube = Dónde está el rodamiento: el árbol va dentro de un tubo cerrado bajo el piso. Sus rodamientos van en el tubo.
