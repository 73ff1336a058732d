### El veredicto del banco y las condiciones de la parte del banco.

verdict-bearings-only = Rodamientos nuevos en el alojamiento tal como está.
verdict-skim-and-sleeve = Repasar el alojamiento y montar un casquillo a presión.
verdict-replace-housing = Cambiar el soporte.
verdict-open = Aún sin veredicto: no se midió algo que lo decide.
verdict-at-least-bearings-only = Todos los resultados son aún posibles.
verdict-at-least-skim-and-sleeve = Quedan descartados los rodamientos nuevos por sí solos.
verdict-at-least-replace-housing = Una reparación menor queda descartada.

verdict-why-cracked = El soporte está agrietado.
verdict-why-wall-too-thin = Con el casquillo en su sitio quedaría menos pared de la que tiene que quedar.
verdict-why-out-of-round = Está demostrado que el alojamiento no es redondo.
verdict-why-roundness-not-decided = No está decidido si el alojamiento es redondo: mídalo con más finura.
verdict-why-ring-turned = El rodamiento ha girado en su alojamiento.
verdict-why-loose-hot = El rodamiento nuevo quedaría suelto en el alojamiento caliente.
verdict-why-too-tight = El ajuste llevaría el soporte demasiado cerca de su límite elástico.
verdict-why-seat-sound = El alojamiento es redondo, tiene apriete y está en buen estado.

verdict-missing = Sin medir o mirar: { $gaps }.
verdict-gap-cracks = si el soporte está agrietado
verdict-gap-ring-marks = marcas de un rodamiento que giró en su alojamiento
verdict-gap-diameter = diámetro del alojamiento
verdict-gap-roundness = redondez del alojamiento, con su incertidumbre
verdict-gap-hot-fit = el ajuste a la temperatura más alta
verdict-gap-stress = tensión del soporte por el ajuste
verdict-gap-clean-up = el corte que lo deja limpio todo alrededor
verdict-gap-clean-diameter = el diámetro con el que quedó limpio todo alrededor
verdict-gap-wall-left = la pared como está, medida con precisión bastante para decir qué queda
verdict-gap-wall-least = la pared que tiene que quedar

verdict-gates = Confirme antes del trabajo las condiciones de { $sets }.
verdict-gates-machining = el corte
verdict-gates-heat = calentar y enfriar
verdict-gates-refit = el montaje

closing-turns-freely = Tras el montaje, compruebe que el rodamiento gira libre a mano, sin ningún punto duro. Haga una foto, anótelo. Si no gira así, desmóntelo otra vez.

## Condiciones. gates-GRUPO nombra el grupo, gates-GRUPO-why dice por qué vale ese medio minuto.
gates-teardown = Antes de quitar nada pesado
gates-teardown-why = Un coche en un elevador de dos columnas vuelca si se mueve su peso. Motor y cambio caen al soltar sus soportes. Solo personas formadas y autorizadas; primero, sus normas locales.
gate-teardown-lift-gates-hold = Todo lo confirmado antes de pasar debajo sigue valiendo: trinquetes, borriquetas, motor parado, llave lejos.
gate-teardown-stands-and-straps = Las borriquetas están puestas y el coche está atado al elevador.
gate-teardown-engine-and-gearbox-held = Motor y cambio están sujetos desde abajo antes de aflojar sus soportes.
gate-teardown-shaft-marked = La posición del árbol está marcada en los dos extremos.
gate-teardown-maker-procedure = El procedimiento de desmontaje del fabricante está a mano y se sigue.
gate-teardown-high-voltage = La alta tensión, si la hay, la aisló personal cualificado antes de sacar un tubo o un árbol.

gates-heat = Antes de calentar o enfriar nada
gates-heat-why = El calor estropea retenes y ablanda la aleación sin que se vea. El hielo seco y el nitrógeno líquido queman la piel y desplazan el oxígeno. Solo personas formadas y autorizadas; primero, sus normas locales.
gate-heat-limits-known = Se conocen los límites de retenes, grasa y soporte, y hay un termómetro en la pieza.
gate-heat-no-flame = Sin llama: horno, placa o aire caliente, por igual todo alrededor.
gate-heat-cold-ventilated = Los rodamientos sellados van al congelador, hasta -40 °C y no más frío. Medios más fríos, solo si el fabricante los permite y el aire circula: desplazan el oxígeno.
gate-heat-gloves = Los guantes para calor y frío están puestos, los ojos protegidos.

gates-machining = Antes de que gire la cuchilla
gates-machining-why = La viruta de aleación ligera vuela y corta, la de magnesio arde, y un husillo que gira atrapa la ropa. Solo personas formadas y autorizadas; primero, sus normas locales.
gate-machining-clamped = El soporte está sujeto por su referencia y no puede moverse.
gate-machining-swarf-guarded = Las protecciones están cerradas, y rodamientos y conductos de aceite, tapados. Magnesio: herramientas afiladas, sin agua, extintor de clase D a mano.
gate-machining-eyes-covered = La protección ocular está puesta.
gate-machining-sleeves-tied = Sin guantes en el husillo. La ropa suelta, los cordones y el pelo están recogidos.
gate-machining-spindle-stopped = El husillo está parado antes de medir nada.

gates-refit = Antes de que el coche vuelva a sus ruedas
gates-refit-why = Las fijaciones que se soltaron son las que se sueltan. Solo personas formadas y autorizadas; primero, sus normas locales.
gate-refit-new-fasteners = Los tornillos y tuercas que el fabricante quiere nuevos son nuevos.
gate-refit-maker-torque = Todos están al par del fabricante, en el orden del fabricante.
gate-refit-turns-freely = El árbol gira libre a mano.
gate-refit-running-gates = Antes del primer arranque se confirman de nuevo las condiciones para el motor en marcha.

gates-press = Antes de prensar nada
gates-press-why = Una pieza que cede bajo la prensa sale como un disparo. Solo personas formadas y autorizadas; primero, sus normas locales.
gate-press-ring-fitted = La prensa apoya solo en el aro que se monta.
gate-press-housing-supported = El soporte está apoyado a escuadra, justo bajo el alojamiento.
gate-press-guarded = La prensa está protegida, nadie está en su línea y no se usa martillo.
gate-press-force = Se deja de prensar si la fuerza pasa de la calculada.
verdict-gates-press = el prensado
