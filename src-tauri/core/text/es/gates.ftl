### Condiciones: una cada vez, confirmadas antes de los pasos que abren. gates-GRUPO nombra el grupo,
### gates-GRUPO-why dice por qué vale ese medio minuto.

gates-running = Antes de arrancar el motor
gates-running-why = Un eje que gira atrapa la ropa y arrastra a la persona. Ha matado a mecánicos.
gate-wheels-on-floor = Todas las ruedas están en el suelo, no en el elevador.
gate-brake-and-chocks = El freno de mano está puesto y las ruedas están calzadas.
gate-neutral-or-park = El cambio está en punto muerto o en P.
gate-doors-shut = Todas las puertas están cerradas: al abrir una puede arrancar la bomba del embrague.
gate-nobody-near = No hay nadie bajo el coche ni cerca del eje o de las ruedas.
gate-fumes-out = El escape da al exterior o las puertas del taller están abiertas.
gate-clothing-secured = La ropa suelta, los cordones y el pelo están recogidos.

gates-creep = Antes de dejar avanzar el coche
gates-creep-why = Un coche que avanza solo no nota quién está delante.
gate-creep-wheels-on-floor = Todas las ruedas están en el suelo, no en el elevador.
gate-creep-chocks-out = Los calzos están fuera y el camino está libre.
gate-creep-foot-over-brake = El conductor está sentado con el pie sobre el freno.
gate-creep-nobody-around = No hay nadie delante, detrás ni debajo del coche.
gate-creep-fumes-out = El escape da al exterior o las puertas del taller están abiertas.

gates-lift = Antes de que nadie pase debajo
gates-lift-why = Un coche que resbala o un eje que gira no avisan.
gate-nobody-in-car = No hay nadie dentro del coche.
gate-engine-off = El motor está parado y la llave o el mando está lejos. El arranque y parada automáticos, el arranque remoto y el «listo» del híbrido están desactivados.
gate-shaft-still = El eje está quieto.
gate-lift-rated = El elevador soporta este coche y sus brazos están en los puntos de elevación del fabricante.
gate-air-suspension = La suspensión neumática, si la lleva, está en modo gato o apuntalada.
gate-shaken-low = Se sacudió el coche a poca altura y estaba firme.
gate-locks-engaged = El elevador descansa en sus trinquetes o las borriquetas están puestas.
gate-platform-chocked = En un elevador de plataforma, las ruedas están calzadas antes de poner punto muerto.
gate-heat-judged = El calor del escape y del eje se valoró sin tocar.
gate-eyes-covered = La protección ocular está puesta.
gate-high-voltage-untouched = Los cables naranjas de alta tensión no se tocan: ese trabajo es para personal cualificado.
