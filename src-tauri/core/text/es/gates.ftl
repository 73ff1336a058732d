### Condiciones: una cada vez, confirmadas antes de los pasos que abren. gates-GRUPO nombra el grupo,
### gates-GRUPO-why dice por qué vale ese medio minuto.

gates-running = Antes de arrancar el motor
gates-running-why = Un árbol que gira atrapa la ropa y arrastra a la persona. Ha matado a mecánicos. Solo personas formadas y autorizadas; primero, sus normas locales.
gate-wheels-on-floor = Todas las ruedas están en el suelo, no en el elevador.
gate-brake-and-chocks = El freno de mano está puesto y las ruedas están calzadas.
gate-neutral-or-park = El cambio está en punto muerto o en P.
gate-doors-shut = Todas las puertas están cerradas: al abrir una puede arrancar la bomba del embrague.
gate-nobody-near = No hay nadie bajo el coche ni cerca del árbol o de las ruedas.
gate-fumes-out = El escape da al exterior o las puertas del taller están abiertas.
gate-clothing-secured = La ropa suelta, los cordones y el pelo están recogidos.

gates-creep = Antes de dejar avanzar el coche
gates-creep-why = Un coche que avanza solo no se para por nadie. Solo personas formadas y autorizadas; primero, sus normas locales.
gate-creep-wheels-on-floor = Todas las ruedas están en el suelo, no en el elevador.
gate-creep-chocks-out = Los calzos están fuera y el camino está libre.
gate-creep-foot-over-brake = El conductor está sentado con el pie sobre el freno.
gate-creep-gear-selected = La marcha de avance o la primera está puesta con el freno pisado.
gate-creep-driver-ready = El conductor está sentado con el pie en el freno y ha seleccionado la marcha de avance o primera.
gate-creep-brake-off = El freno de mano está suelto y los calzos están retirados.
gate-creep-distance = Diez metros por delante y cinco por detrás están libres y siguen libres.
gate-creep-nobody-around = No hay nadie delante, detrás ni debajo del coche.
gate-creep-fumes-out = El escape da al exterior o las puertas del taller están abiertas.

gates-lift = Antes de que nadie pase debajo
gates-lift-why = Un coche que resbala o un árbol que gira no avisan. Solo personas formadas y autorizadas; primero, sus normas locales.
gate-nobody-in-car = No hay nadie dentro del coche.
gate-engine-off = Si el punto muerto necesita el contacto, se puso antes. Ahora el motor está parado y la llave o el mando está fuera de alcance. El arranque y parada automáticos, el arranque remoto y el «listo» del híbrido están desactivados.
gate-shaft-still = El árbol está quieto.
gate-lift-rated = El elevador soporta este coche y sus brazos están en los puntos de elevación del fabricante.
gate-lift-inspected = La inspección del elevador está vigente y no tiene daños.
gate-not-alone = Alguien al alcance de la voz sabe que usted está debajo del coche.
gate-air-suspension = La suspensión neumática, si la lleva, está en modo gato o apuntalada.
gate-shaken-low = Se sacudió el coche a poca altura y estaba firme.
gate-locks-engaged = El elevador descansa en sus trinquetes o las borriquetas están puestas.
gate-platform-chocked = En un elevador de plataforma, las ruedas están calzadas antes de poner punto muerto. En uno de dos columnas cuelgan y pueden girar: nadie las toca.
gate-heat-judged = El calor del escape y del árbol se comprobó sin tocar (termómetro infrarrojo).
gate-eyes-covered = La protección ocular está puesta.
gate-high-voltage-untouched = Los cables naranjas de alta tensión no se tocan: ese trabajo es para personal cualificado.

## Debajo del coche, según lo que lo sostiene.
gate-empty-and-still = No hay nadie dentro del coche y el árbol está quieto.
gate-lift-fits = El elevador soporta este coche, tiene la inspección vigente, no está dañado y lo sostiene en los puntos del fabricante. La suspensión neumática está en modo gato o apuntalada.
gate-wheels-chocked = Las ruedas que están en el suelo o sobre el elevador están calzadas en los dos sentidos.
gate-pit-air = En el foso no hay vapores: circula el aire y nada arde ni echa chispas.
gate-pit-way-out = La salida del foso está libre y sus bordes abiertos están protegidos. La suspensión neumática está en modo gato o apuntalada.
gate-ramps-fit = Las rampas soportan este coche, no están dañadas y están en suelo firme y nivelado.
gate-ramps-firm = El coche está en los topes de las rampas y, al moverlo, estaba firme. La suspensión neumática está en modo gato o apuntalada.
gate-stands-fit = Borriquetas que soportan este coche están en los puntos del fabricante, en suelo firme y nivelado. El coche no descansa en un gato.
gate-stands-chocked = Las ruedas que siguen en el suelo están calzadas. La suspensión neumática está en modo gato o apuntalada.
gate-guarded = La protección ocular está puesta, el calor del escape y del árbol se comprobó sin tocar y los cables naranjas no se tocan.
