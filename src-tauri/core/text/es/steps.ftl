### Los pasos: qué se revisa (step-ID), cómo (-do) y con qué tener cuidado (-watch).
### Se lee con guantes puestos: corto y en imperativo. El procedimiento del fabricante va antes que todo.

step-road-speed-vibration = Vibración en carretera
step-road-speed-vibration-do = Pregunte al cliente. ¿Crece una vibración con la velocidad?
step-road-speed-vibration-watch = Sin prueba en carretera para averiguarlo. Solo se prueba cuando todo lo que se puede tocar y ver en este coche está bien.

step-idle-speed = Régimen de ralentí
step-idle-speed-do = Deje que el motor se estabilice. Lea el cuentarrevoluciones o el equipo de diagnóstico. Anote las rpm.
step-idle-speed-watch = Quédese en el asiento. Que nadie se acerque al árbol ni a las ruedas. El procedimiento del fabricante va primero.

step-idle-noise = Ruido al ralentí
step-idle-noise-do = Escuche desde el asiento. Marque cada ruido que oiga. Lo que no marque cuenta como no oído.
step-idle-noise-watch = No se asome bajo el coche para oír mejor. Si hay golpeteo fuerte, pare el motor al momento. El procedimiento del fabricante va primero.

step-idle-raise-effect = Ralentí algo más alto
step-idle-raise-effect-do = Suba el ralentí entre 150 y 200 rpm. Escuche otra vez. Déjelo bajar.
step-idle-raise-effect-watch = Súbalo con el pedal o según el fabricante, desde el asiento. No meta las manos en el vano motor.

step-misfire-evidence = Indicios de fallo de encendido
step-misfire-evidence-do = Lea los contadores de fallos de cada cilindro. Lea los códigos de avería.
step-misfire-evidence-watch = Lleve el cable lejos de pedales y correas. Con el equipo de diagnóstico, siga el procedimiento del fabricante.

step-air-leak-by-ear = Toma de aire, de oído
step-air-leak-by-ear-do = Motor en marcha. De pie junto al coche, fuera del vano motor. Pase el extremo de un tubo largo por los manguitos de admisión; escuche por el otro.
step-air-leak-by-ear-watch = Nadie se inclina sobre el motor. Manos, pelo y tubo lejos de ventilador, correas y piezas calientes. Siga el procedimiento del fabricante.
step-air-leak-test = Prueba de tomas de aire
step-air-leak-test-do = Motor parado. Llene la admisión de humo. Mire por dónde sale y anote lo que encuentre.
step-air-leak-test-watch = Nunca use spray inflamable. Manos y pelo lejos de ventilador, correas y piezas calientes. Siga el procedimiento del fabricante. Arranque de nuevo solo cuando todos se hayan apartado.

step-engagement-setting = Ajuste del acoplamiento del embrague
step-engagement-setting-do = Lea a qué régimen está ajustado el embrague. Compárelo con el estándar del fabricante.
step-engagement-setting-watch = Solo lectura. Cambiar el ajuste aquí puede mover el coche. Siga el procedimiento del fabricante.

step-neutral-2500-buzz = Zumbido hacia 2500 rpm
step-neutral-2500-buzz-do = En punto muerto, suba el motor despacio hasta unas 2500 rpm. Manténgalo menos de diez segundos. Note si zumba el piso bajo los pies.
step-neutral-2500-buzz-watch = El árbol gira con el motor aunque el coche esté parado. Si hay golpeteo o vibración fuerte, pare el motor ya. El procedimiento del fabricante va primero.

step-running-stop = ¿Tuvo que parar el motor?
step-running-stop-do = Motor parado ya. Después diga por qué lo paró.
step-running-stop-watch = Tras un golpeteo o una vibración fuerte, no vuelva a poner el motor en marcha. Pase a la prueba a mano. El procedimiento del fabricante va primero.

step-creep-noise = Ruido al avanzar despacio
step-creep-noise-do = Deje avanzar el coche su propio largo, con el pie sobre el freno. Escuche. Pare.
step-creep-noise-watch = El coche se mueve. Frene al momento si se acerca alguien. Con el cambio, siga el procedimiento del fabricante.

step-engagement-reset-effect = Embrague de vuelta al estándar
step-engagement-reset-effect-do = Ponga el régimen de acoplamiento en el estándar del fabricante. Deje avanzar el coche otra vez. Escuche.
step-engagement-reset-effect-watch = Ajústelo solo según el fabricante, con el freno pisado. El coche puede dar un tirón al primer intento.

step-housing-look = Mirar el soporte
step-housing-look-do = Ilumine el soporte todo alrededor. Busque grietas, tornillos flojos, marcas, grasa o polvo. Anote lo que encuentre.
step-housing-look-watch = El escape caliente está cerca. No se cuelgue del soporte. No toque los cables naranjas. El procedimiento del fabricante va primero.

step-play-vertical = Juego arriba y abajo
step-play-vertical-do = Agarre el árbol cerca del rodamiento. Empuje hacia arriba y deje bajar. Mire el hueco entre árbol y soporte. Si se mueven juntos, responda «No hecho», mire soporte, tornillos y tacos, y repita.
step-play-vertical-watch = Solo las manos, sin palanca. Dedos lejos de articulaciones y bordes. Lejos de las piezas calientes. Siga el procedimiento del fabricante.

step-play-lateral = Juego de lado a lado
step-play-lateral-do = Agarre el árbol cerca del rodamiento. Empuje a la izquierda, tire a la derecha. Mire el hueco entre árbol y soporte. Si se mueven juntos, responda «No hecho», mire soporte, tornillos y tacos, y repita.
step-play-lateral-watch = Solo las manos, sin palanca. Dedos lejos de articulaciones y bordes. Lejos de las piezas calientes. Siga el procedimiento del fabricante.

step-tube-open-check = Rodamientos en el tubo abierto
step-tube-open-check-do = Abra el tubo según el fabricante. Busque movimiento con las manos en cada rodamiento. Anote lo que note.
step-tube-open-check-watch = Alta tensión a bordo: que antes la aísle personal cualificado. Quedan sueltas piezas pesadas. Apuntálelas antes de soltar nada y siga al pie de la letra el procedimiento del fabricante.

step-play-far-end = Juego en el extremo
step-play-far-end-do = Agarre el árbol por su extremo. Empuje arriba y abajo, luego de lado a lado. Mire la articulación. Deslizarse a lo largo es normal en una articulación deslizante.
step-play-far-end-watch = Solo las manos. Dedos fuera de la articulación: pellizca. El procedimiento del fabricante va primero.

step-turn-by-hand = Girar el árbol a mano
step-turn-by-hand-do = Solo si el punto muerto ya está puesto; si no, «No hecho». Gire el árbol despacio, una vuelta entera. Note si va áspero o frenado. Los topes regulares son la compresión: no cuentan.
step-turn-by-hand-watch = Lejos de las ruedas: colgadas pueden girar. Dedos lejos de las articulaciones. Nadie sube al coche para esto. Primero, el procedimiento del fabricante.

step-coupling-look = Mirar los acoplamientos
step-coupling-look-do = Ilumine cada acoplamiento y articulación: grietas, goma, fuelles, tornillos, desgaste. Anote lo que encuentre.
step-coupling-look-watch = Ojos protegidos: cae óxido y suciedad. No meta los dedos entre los brazos de una articulación. El procedimiento del fabricante va primero.

step-shaft-look = Mirar el árbol
step-shaft-look-do = Recorra con la vista el árbol hasta donde se vea. Busque golpes, dobleces, fibra deshilachada, una mancha clara donde iba un contrapeso.
step-shaft-look-watch = La fibra rota corta y pincha: guantes puestos, no pase la mano. El motor no debe girar el árbol. El procedimiento del fabricante va primero.

step-shield-and-mounts = Chapas y soportes
step-shield-and-mounts-do = Presione cada chapa térmica cerca del árbol. Mire los soportes de motor y cambio. Busque marcas de roce.
step-shield-and-mounts-watch = Los bordes de las chapas cortan y pueden quemar. No haga palanca en un soporte con carga. El procedimiento del fabricante va primero.
