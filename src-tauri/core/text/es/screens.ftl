### Lo que rodea a las pantallas: botones, títulos, indicaciones. Lo que dice un paso, una respuesta, una condición
### o un documento está en los archivos de al lado.

ui-name = Steady
ui-waiting = Un momento …
ui-retry = Probar otra vez
ui-dismiss = Cerrar
ui-save = Guardar
ui-next = Siguiente
ui-later = Más tarde
ui-no-plate = Sin matrícula

## Cuando no se llega al núcleo o una pantalla tropieza.
ui-error-no-core = Las pantallas no llegan a Steady
ui-error-no-core-help = No se pierde nada de lo anotado. Arranque Steady de nuevo y abra la dirección que indica.
ui-error-screen = Esta pantalla ha tropezado
ui-error-screen-help = No se pierde nada de lo anotado. Pruebe otra vez; si se repite, cierre Steady y ábralo de nuevo.

## Quién trabaja.
ui-technician = Su nombre
ui-technician-title = ¿Quién está con el coche?
ui-technician-why = Su nombre va con todo lo que anote y en los documentos. Solo sale de este aparato con ellos.
ui-technician-change = Técnico: { $name }. Cambiar

## La lista de visitas.
ui-new-visit = Nueva visita
ui-search = Matrícula, bastidor, cliente o fecha
ui-found = { $total ->
    [0] Ninguna visita
    [one] 1 visita
   *[other] { $total } visitas
}
ui-empty = Aún no ha llegado ningún coche. Empiece con «Nueva visita».
ui-nothing-found = Ninguna visita coincide. Pruebe con menos letras.
ui-more = Ver más
ui-steps-answered = { $answered } de { $steps } pasos
ui-signed = Firmado: { $decision }
ui-language = Idioma
ui-language-name = Español
ui-theme = Aspecto
ui-theme-system = Aparato
ui-theme-dark = Oscuro
ui-theme-daylight = Luz de día
ui-versions = Versión { $version }, saber técnico { $knowledge }

## Recepción.
ui-intake = Recepción
ui-layout = Cómo lleva el coche su eje
ui-layout-needed = Elija una. Todo lo demás puede esperar.
ui-support-rigid = Sujeto rígido: a mano no se permite movimiento.
ui-support-rubber = En un aro de goma: que ceda algo es normal.
ui-support-tube = Dentro de un tubo: no se puede agarrar.
ui-seat = Alojamiento del rodamiento
ui-maker-figure = Movimiento según el fabricante, mm
ui-complaint-sounds = Qué nota el cliente
ui-complaint = En palabras del cliente
ui-when = Cuándo ocurre
ui-car = El coche
ui-plate = Matrícula
ui-label = Marca y modelo
ui-vin = Bastidor
ui-vin-fits = El dígito de control encaja.
ui-vin-differs = El dígito de control no encaja. Mírelo otra vez; fuera de Norteamérica no tiene por qué significar nada.
ui-vin-not-a-vin = No es un bastidor completo: 17 caracteres, sin I, O ni Q.
ui-gearbox = Cambio
ui-odometer = Cuentakilómetros
ui-unit = Unidad
ui-unit-km = km
ui-unit-miles = millas
ui-cylinders = Cilindros
ui-idle-range = Margen de ralentí del fabricante, rpm
ui-idle-low = De
ui-idle-high = A
ui-owner = El cliente
ui-owner-name = Nombre
ui-owner-contact = Teléfono o dirección
ui-start-visit = Empezar la visita
ui-discard = Descartar lo escrito aquí

## La revisión.
ui-to-visits = A la lista de visitas
ui-to-intake = { $name }. Abrir la recepción
ui-to-result = { $word }. Abrir el resultado
ui-live-rating = Calificación de la visita: { $word }
ui-shaft-line = Estaciones a lo largo del eje
ui-station = { $name }: { $answered } de { $steps } contestados, { $word }
ui-all-steps = Todos los pasos
ui-locked = Bloqueado
ui-step-where = { $station }, { $at } de { $of }
ui-step-before = Paso anterior: { $title }
ui-step-after = Paso siguiente: { $title }
ui-this-step = Este paso
ui-show-how = Ver cómo
ui-hide-how = Ocultar cómo
ui-drawing = Dibujo: { $words } Pulse para leerlo.
ui-disputed = Dos aparatos dieron aquí respuestas distintas. Cuenta la peor.
ui-milder = Suavizado porque: { $reason }
ui-temperature = ¿Soporte frío o caliente?
ui-temperature-cold = Frío
ui-temperature-warm = Caliente
ui-reading = Lectura en { $unit }, de { $min } a { $max }
ui-erase = Borrar la última cifra
ui-undo = Deshacer
ui-undo-what = { $about ->
    [none] Deshacer: { $what }
   *[other] Deshacer: { $what }, { $about }
}
ui-undo-nothing = Nada que deshacer
ui-stop = ALTO
ui-reason-title = Una respuesta de PELIGRO se suaviza. ¿Por qué?
ui-reason-why = Su motivo queda en el registro y el informe lo muestra.
ui-reason-ok = Anotar con este motivo
ui-leave-as-is = Dejarlo como está

## La foto de un paso.
ui-photo-take = Foto
ui-photo-again = Nueva foto
ui-photo-sending = Guardando …
ui-photo-none = Sin foto
ui-photo-waived = Sin foto, ¿por qué?
ui-photo-why = ¿Por qué no hay foto?
ui-photo-own-words = Con sus palabras
ui-photo-because = Sin foto: { $reason }
ui-photo-of = Foto hecha en: { $title }
ui-photo-larger = Ver la foto más grande o más pequeña
ui-photo-at = Guardada { $when }

## Condiciones, orden, salida.
ui-gates-left = { $left ->
    [one] Falta una condición. Tóquela cuando esté cumplida.
   *[other] Faltan { $left } condiciones. Toque cada una cuando esté cumplida.
}
ui-gates-open = Todas confirmadas. Los pasos que abren están listos.
ui-confirmed = { $by }, { $when }
ui-order-title = ¿Qué va primero?
ui-order-why = Con el motor en marcha se calientan el escape y el soporte. Debajo del coche eso es esperar, o quemarse.
ui-order-running-first-about = Primero escuchar; luego dejar enfriar antes de pasar debajo.
ui-order-under-car-first-about = Primero la prueba a mano, en frío. Luego el motor, si no apareció nada peligroso.
ui-leave-running = Pare el motor. Llévese la llave o el mando. Aléjese del asiento.
ui-leave-running-done = El motor está parado
ui-leave-creep = Pare el coche. Ponga el freno, motor parado. Vuelva a calzar las ruedas.
ui-leave-creep-done = El coche está quieto, motor parado
ui-leave-lift = Cambio de vuelta a P o a una marcha. Herramientas fuera. Salga de debajo del coche.
ui-leave-lift-done = No hay nadie debajo del coche
ui-leave-why = Las condiciones de esta parte se cierran. Para volver hay que confirmarlas otra vez.
ui-left = Esta parte está cerrada

## El resultado.
ui-why = Por qué
ui-unrated-why = Sin calificación hasta hacer la prueba a mano. Sin comprobar no significa seguro.
ui-missing = Aún falta
ui-next-check = Siguiente prueba
ui-go-on = Seguir con la revisión
ui-causes = Causas, la más probable primero
ui-causes-about = Oído y tacto despiertan sospecha. Solo la prueba a mano decide. Pueden darse varias a la vez.
ui-for = A favor
ui-against = En contra
ui-weight-for = { $step }: { $answer } la hace { $times } veces más probable.
ui-weight-against = { $step }: { $answer } la hace { $times } veces menos probable.
ui-no-weights = Ninguna respuesta habla aún a favor o en contra.
ui-road = A título informativo: inspección técnica
ui-papers = Documentos
ui-finding = Informe
ui-note = Nota del cliente
ui-ledger = Registro

## Documentos y recibo.
ui-paper-language = Idioma de este documento
ui-sheet = Hoja
ui-sheet-a4 = A4
ui-sheet-us-letter = Carta US
ui-pdf-make = Crear el PDF
ui-pdf-making = Creando …
ui-pdf-open = Abrir
ui-pdf-save = Guardar una copia
ui-short-text = Texto corto para enviar
ui-copy = Copiar
ui-copied = Copiado.
ui-copy-by-hand = El texto está marcado. Cópielo de aquí.
ui-decision = Qué decide usted
ui-owner-signs = Su nombre (puede quedar vacío)
ui-sign-here = Firme aquí con el dedo
ui-pad-empty = Campo de firma, vacío
ui-pad-signed = Campo de firma, firmado
ui-pad-clear = Borrar la firma
ui-sign = Firmar que recibí esta nota
ui-sign-needs = Elija una de las tres y firme arriba.
ui-sign-again = Firmar otra vez
ui-receipt-outdated = Se anotó algo después de esta firma. La nota puede decir ahora más que la que se vio.
ui-note-hash = Esta nota: SHA-256 { $hash }

## El registro.
ui-chain-whole = { $entries ->
    [one] Una anotación. La cadena está entera.
   *[other] { $entries } anotaciones. La cadena está entera.
}
ui-chain-broken = LA CADENA ESTÁ ROTA en la anotación { $seq }. Desde ahí este registro no es lo que se escribió. Trate la visita como no revisada y deje los datos de este aparato como están.
ui-ledger-broken = El registro de esta visita está roto en la anotación { $seq }. No se fíe de él.
ui-ledger-empty = Aún no hay nada anotado.
ui-ledger-head = Fin de la cadena: { $head }
ui-reason-was = Motivo: { $reason }
ui-superseded = Ya no cuenta; una anotación posterior ocupó su lugar.

ui-rating = Calificación
ui-outcome = En qué punto está la revisión
