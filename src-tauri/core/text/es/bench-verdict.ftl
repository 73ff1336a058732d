### El veredicto del banco y las condiciones de la parte del banco.

verdict-bearings-only = Rodamientos nuevos en el alojamiento tal como está.
verdict-skim-and-sleeve = Repasar el alojamiento y montar un casquillo a presión.
verdict-replace-housing = Cambiar el soporte.
verdict-open = Aún sin veredicto: no se midió algo que lo decide.
verdict-at-least-bearings-only = Todos los resultados son aún posibles.
verdict-at-least-skim-and-sleeve = Quedan descartados los rodamientos nuevos por sí solos.
verdict-at-least-replace-housing = No es posible nada más leve.

verdict-why-cracked = El soporte está agrietado.
verdict-why-wall-too-thin = Con el casquillo en su sitio quedaría menos pared de la que tiene que quedar.
verdict-why-out-of-round = Está demostrado que el alojamiento no es redondo.
verdict-why-roundness-not-decided = No está decidido si el alojamiento es redondo: mídalo con más finura.
verdict-why-ring-turned = El aro ha girado en su alojamiento.
verdict-why-loose-hot = El rodamiento nuevo quedaría suelto en el alojamiento caliente.
verdict-why-too-tight = El ajuste llevaría el soporte demasiado cerca de su límite elástico.
verdict-why-seat-sound = El alojamiento es redondo, tiene apriete y está en buen estado.

verdict-missing = Sin medir o mirar: { $gaps }.
verdict-gap-cracks = si el soporte está agrietado
verdict-gap-ring-marks = marcas de un aro que giró
verdict-gap-diameter = diámetro del alojamiento
verdict-gap-roundness = redondez del alojamiento, con su incertidumbre
verdict-gap-hot-fit = el ajuste a la temperatura más alta
verdict-gap-stress = tensión del soporte por el ajuste
verdict-gap-clean-up = el corte que lo deja limpio todo alrededor
verdict-gap-wall-left = la pared como está, medida con precisión bastante para decir qué queda
verdict-gap-wall-least = la pared que tiene que quedar

verdict-gates = Confirme antes del trabajo las condiciones de { $sets }.
verdict-gates-machining = el corte
verdict-gates-heat = calentar y enfriar
verdict-gates-refit = el montaje

closing-turns-freely = Tras el montaje, compruebe que el aro gira libre a mano, sin ningún punto duro. Haga una foto, anótelo. Si no gira así, desmóntelo otra vez.

## Condiciones. gates-GRUPO nombra el grupo, gates-GRUPO-why dice por qué vale ese medio minuto.
gates-teardown = Antes de quitar nada pesado
gates-teardown-why = Un coche en un elevador de dos columnas vuelca si se mueve su peso. Motor y cambio caen al soltar sus soportes.
gate-teardown-lift-gates-hold = Todo lo confirmado antes de pasar debajo sigue valiendo: trinquetes, borriquetas, motor parado, llave lejos.
gate-teardown-stands-and-straps = Las borriquetas están puestas y el coche está atado al elevador.
gate-teardown-engine-and-gearbox-held = Motor y cambio están sujetos desde abajo antes de aflojar sus soportes.
gate-teardown-shaft-marked = La posición del eje está marcada en los dos extremos.
gate-teardown-maker-procedure = El procedimiento de desmontaje del fabricante está a mano y se sigue.

gates-heat = Antes de calentar o enfriar nada
gates-heat-why = El calor estropea retenes y el temple sin que se vea; los medios fríos queman la piel y quitan el aire.
gate-heat-limits-known = Se conocen los límites de retenes, grasa y soporte, y hay un termómetro en la pieza.
gate-heat-no-flame = Sin llama: horno, placa o aire caliente, por igual todo alrededor.
gate-heat-cold-ventilated = Los medios fríos se usan solo donde el aire circula libremente.
gate-heat-gloves = Los guantes para calor y frío están puestos, los ojos protegidos.

gates-machining = Antes de que gire la cuchilla
gates-machining-why = La viruta de aleación ligera vuela y corta, y un husillo que gira atrapa la ropa.
gate-machining-clamped = El soporte está sujeto por su referencia y no puede moverse.
gate-machining-swarf-guarded = Hay protección contra la viruta, y rodamientos y conductos de aceite están tapados.
gate-machining-eyes-covered = La protección ocular está puesta.
gate-machining-sleeves-tied = La ropa suelta, los cordones y el pelo están recogidos.

gates-refit = Antes de que el coche vuelva a sus ruedas
gates-refit-why = Lo que se aflojó es lo que se suelta.
gate-refit-new-fasteners = Los tornillos y tuercas que el fabricante quiere nuevos son nuevos.
gate-refit-maker-torque = Todos están al par del fabricante, en el orden del fabricante.
gate-refit-turns-freely = El eje gira libre a mano.
