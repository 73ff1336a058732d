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
ui-error-no-core-help = No se pierde nada de lo anotado. Arranque Steady de nuevo; en un navegador, abra la dirección que indica.
ui-error-screen = Esta pantalla ha fallado
ui-error-screen-help = No se pierde nada de lo anotado. Pruebe otra vez; si se repite, cierre Steady y ábralo de nuevo.

## Quién trabaja.
ui-technician = Su nombre
ui-technician-title = ¿Quién está con el coche?
ui-technician-why = Su nombre va con todo lo que anote y en los documentos. Solo sale de este aparato con los documentos y archivos que usted entregue.
ui-technician-change = Técnico: { $name }. Cambiar

## La lista de visitas.
ui-new-visit = Nueva visita
ui-search = Matrícula, bastidor, cliente o fecha
ui-search-only = Solo coches calificados con { $word }
ui-found = { $total ->
    [0] Ninguna visita
    [one] 1 visita
   *[other] { $total } visitas
}
ui-empty = Aún no ha llegado ningún coche. Empiece con «Nueva visita».
ui-card-still-open = Sigue abierto de una visita anterior:
ui-nothing-found = Ninguna visita coincide. Pruebe con menos letras.
ui-more = Ver más
ui-steps-settled = { $settled } de { $steps } pasos comprobados{ $open ->
    [0] {""}
   *[other] , { $open } sin decidir
}
ui-repair-torn-down = En el banco tras el desmontaje
ui-repair-turns-free = El rodamiento giró libre tras el montaje
ui-repair-checked-again = Comprobado de nuevo tras la reparación
ui-outcome-confirmed = Confirmado qué era
ui-signed = Firmado: { $decision }
ui-language = Idioma
ui-theme = Aspecto
ui-theme-system = Aparato
ui-theme-dark = Oscuro
ui-theme-daylight = Luz de día
ui-versions = Versión { $version }, reglas y valores { $knowledge }
ui-notices = Software de terceros y sus licencias
ui-notices-about = Nombra cada parte de Steady que hicieron otros y después sus licencias, en inglés.
ui-notices-none = La lista no está en esta versión.

## Recepción.
ui-intake = Recepción
ui-layout = Cómo lleva el coche su árbol
ui-layout-needed = Elija una. Todo lo demás puede esperar.
ui-layout-others = Otra disposición
ui-support-rigid = Sujeto rígido: a mano no se permite movimiento.
ui-support-rubber = En un anillo de goma: que ceda algo es normal.
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
ui-number-unread = No se leyó como número. Escriba solo cifras, sin signo de millares.
ui-odometer = Cuentakilómetros
ui-unit = Unidad
ui-unit-km = km
ui-unit-miles = millas
ui-unit-rpm = rpm
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
ui-shaft-line = Estaciones a lo largo del árbol
ui-station = { $name }: { $settled } de { $steps } comprobados{ $open ->
    [0] {""}
   *[other] , { $open } sin decidir
}, { $word }
ui-all-steps = Todos los pasos
ui-locked = Bloqueado
ui-step-where = { $station }, { $at } de { $of }
ui-step-before = Paso anterior: { $title }
ui-step-after = Paso siguiente: { $title }
ui-this-step = Este paso
ui-step-unrated = Anotado
ui-show-how = Ver cómo
ui-hide-how = Ocultar cómo
ui-more-behind = Más
ui-drawing = Dibujo: { $words } Pulse para verlo grande.
ui-disputed = Dos aparatos dieron aquí respuestas distintas. Cuenta la peor.
ui-elsewhere = No cuenta: { $answer } ({ $by }, { $at }). El coche estaba anotado entonces con otra disposición u otro valor. Compruébelo de nuevo.
ui-elsewhere-drop = Retirar lo que no cuenta
ui-milder = Suavizado porque: { $reason }
ui-temperature = ¿Soporte frío o caliente?
ui-temperature-cold = Frío
ui-temperature-warm = Caliente
ui-temperature-first = Elija primero frío o caliente
ui-above-first = Responda primero a la pregunta de arriba
ui-reading = Lectura en { $unit }, de { $min } a { $max }
ui-reading-usual = p. ej. { $usual }
ui-erase = Borrar la última cifra
ui-undo = Deshacer
ui-undo-what = { $about ->
    [none] Deshacer: { $what }
   *[other] Deshacer: { $what }, { $about }
}
ui-undo-nothing = Nada que deshacer
# A refusal behind the name of the field that it is about.
ui-problem-at = { $field }: { $what }
ui-stop = ALTO
ui-reason-title = Una respuesta de PELIGRO o ADVERTENCIA se suaviza. ¿Por qué?
ui-reason-why = Su motivo queda en el registro y el informe lo muestra.
ui-reason-ok = Anotar con este motivo
ui-leave-as-is = Dejarlo como está

## La foto de un paso.
ui-photo-take = Foto
ui-photo-again = Otra foto
ui-photo-sending = Guardando …
ui-photo-none = Sin foto: ¿por qué?
ui-photo-waived = Sin foto, ¿por qué?
ui-photo-why = ¿Por qué no hay foto?
ui-photo-own-words = Con sus palabras
ui-photo-because = Sin foto: { $reason }
ui-photo-of = Foto hecha en: { $title }
ui-photo-at = Guardada { $when }

## Condiciones, orden, salida.
ui-gates-left = { $left ->
    [one] Falta una condición. Tóquela cuando esté cumplida.
   *[other] Faltan { $left } condiciones. Toque cada una cuando esté cumplida.
}
ui-gates-open = Todas confirmadas. Siga con los pasos.
ui-confirmed = { $by }, { $when }
ui-order-title = ¿Cómo quiere revisar?
ui-order-why = Con el motor en marcha se calientan el escape y el soporte. Debajo del coche eso es esperar, o quemarse.
ui-order-running-first-about = Primero escuchar. Luego debajo, con el soporte aún caliente y el escape ya frío. Solo una prueba en caliente puede descartar un ruido.
ui-order-under-car-first-about = Primero la prueba a mano, en frío. Luego el motor, si no apareció nada peligroso.
ui-leave-running = Pare el motor. Llévese la llave o el mando. Aléjese del asiento.
ui-leave-running-done = El motor está parado
ui-leave-creep = Pare el coche. Ponga el freno, motor parado. Vuelva a calzar las ruedas.
ui-leave-creep-done = El coche está quieto, motor parado
ui-leave-lift = Herramientas fuera. Salgan todos de debajo del coche. Solo entonces, desde fuera, cambio de vuelta a P o a una marcha.
ui-leave-lift-done = No hay nadie debajo del coche
ui-leave-why = Las condiciones de esta parte se cierran. Para volver hay que confirmarlas otra vez.
ui-leave-still = Antes de salir de debajo:
ui-left = Esta parte está cerrada

## El resultado.
ui-why = Por qué
ui-unrated-why = Sin calificación hasta hacer la prueba a mano. Sin comprobar no significa seguro.
ui-missing = Aún falta
ui-next-check = Siguiente prueba
ui-go-on = Seguir con la revisión
ui-causes = Causas, la más probable primero
ui-causes-found = Causas: primero lo que explica lo encontrado
ui-found-by-hand = Lo que se encontró
ui-causes-about = El ruido y la vibración despiertan sospecha. Solo la prueba a mano decide. Pueden darse varias a la vez.
ui-for = A favor
ui-against = En contra
ui-weight-for = { $step }: { $answer } la hace { $times } veces más probable.
ui-weight-against = { $step }: { $answer } la hace { $times } veces menos probable.
ui-weight-gauge-with = { $step }, con el comparador: sus lecturas son { $odds } veces más probables con movimiento que sin él.
ui-weight-gauge-without = { $step }, con el comparador: sus lecturas son { $odds } veces más probables sin movimiento que con él.
ui-weight-makes-more = La hace { $times } veces más probable.
ui-weight-makes-less = La hace { $times } veces menos probable.
ui-no-weights = Ninguna respuesta habla aún a favor o en contra.
ui-road = A título informativo: normas de inspección (Reino Unido, UE)
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
ui-pdf-where = Los documentos guardados van a la carpeta de descargas.
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
ui-receipt-outdated = Desde la firma ha cambiado lo anotado o cómo se califica. La nota puede decir ahora más que la que se vio.
ui-note-hash = Esta nota: SHA-256 { $hash }

## El registro.
ui-chain-whole = { $entries ->
    [one] Una anotación. El registro está entero.
   *[other] { $entries } anotaciones. El registro está entero.
}
ui-chain-broken = EL REGISTRO ESTÁ DAÑADO desde la anotación { $seq }. Desde ahí no es lo que se escribió. Trate la visita como no revisada y deje los datos de este aparato como están.
ui-ledger-broken = El registro de esta visita está dañado desde la anotación { $seq }. No se fíe de él.
ui-ledger-empty = Aún no hay nada anotado.
ui-ledger-change = { $before }, ahora { $now }
ui-ledger-head = Última huella: { $head }
ui-reason-was = Motivo: { $reason }
ui-superseded = Ya no cuenta; una anotación posterior ocupó su lugar.

ui-rating = Calificación
ui-outcome = En qué punto está la revisión

## La clasificación por dentro.
ui-interval = entre { $low } y { $high }
ui-before = Antes de cualquier respuesta: { $before }.
ui-together-for = Juntas, estas respuestas la hacen otras { $times } veces más probable.
ui-together-against = Estas respuestas dicen en parte lo mismo: juntas cuentan { $times } veces menos.
ui-causes-more = { $count ->
    [one] Una causa más
   *[other] { $count } causas más
}
ui-next-gain = De media ahorra unos { $minutes } minutos de reparación innecesaria o de espera.
ui-next-none = Ninguna prueba más
ui-turn = Si «{ $step }» diera «{ $answer }», iría delante { $cause } ({ $share }).
ui-judgements = Qué costaría una decisión equivocada
ui-judgements-about = Las pérdidas son criterio de taller, contadas en minutos. La calificación de arriba sigue sus reglas y no esta tabla.
ui-judgement-acts = Ahora { $now }. El consejo cambiaría por debajo de { $at }.
ui-judgement-waits = Ahora { $now }. El consejo cambiaría a partir de { $at }.
ui-judgement-loss = { $course }: { $minutes ->
    [one] un minuto perdido
   *[other] { $minutes } minutos perdidos
} de media, si { $loss }.
ui-judgement-alone = Estos números son solo criterio de taller: aún hay muy pocos resultados confirmados.
ui-taught = Estos números han aprendido de { $outcomes } resultados confirmados de esta disposición.
ui-opinion = Creo que es …
ui-opinion-open = Creo que es otra cosa
ui-opinion-choose = Elija una causa
ui-opinion-why = Por qué
ui-opinion-about = Va en el informe junto a la clasificación y no la cambia.
ui-opinion-was = { $by } cree: { $cause }
ui-turned-out = Qué era en realidad
ui-turned-out-about = Tras el desmontaje o la reparación: toque cada causa que había de verdad. La clasificación aprende de ello.
ui-turned-out-choose = Qué había de verdad
ui-turned-out-by = Quién lo dice (vacío: { $technician })
ui-turned-out-save = Confirmar
ui-turned-out-kept = Anotado. Cuenta una vez, por más que se corrija.
ui-turned-out-again = Confirme otra vez para corregirlo; las dos quedan en el registro.
ui-calibration = Cuántas veces acertaron las causas
ui-calibration-about = Compara lo que se dijo de cada causa con lo hallado en el desmontaje o tras la reparación.
ui-outcomes-count = { $outcomes ->
    [0] Aún ningún resultado confirmado
    [one] Un resultado confirmado
   *[other] { $outcomes } resultados confirmados
}
ui-judgement-alone-page = Los números se basan aún solo en el criterio. Los de una disposición aprenden a partir de { $enough } resultados.
ui-layout-taught = { $layout }: { $outcomes } resultados; sus números han aprendido de ellos.
ui-layout-not-taught = { $layout }: { $outcomes } de { $enough } resultados.
ui-reliability = Pronóstico y resultado
ui-reliability-about = De todas las causas dadas por probables en torno al 70 %, cerca del 70 % deberían resultar ciertas. Sobre la línea a trazos, encaja.
ui-reliability-drawing = Diagrama: en horizontal el pronóstico, en vertical cuántas veces fue así; la tabla de debajo tiene sus números.
ui-said = Pronóstico
ui-was = Hallado
ui-count = Cuántas
ui-share = { $share } %
ui-scores = Puntuaciones, mejor cuanto más bajas
ui-scores-about = Sobre { $forecasts } probabilidades: una por causa y visita.
ui-brier = Puntuación de Brier
ui-brier-calibration = de ella, calibración: dicho demasiado alto o demasiado bajo
ui-brier-refinement = de ella, refinamiento: lo que los grupos no distinguieron
ui-brier-grouping = de ella, agrupación: diferencias dentro de un grupo
ui-log-score = Puntuación logarítmica
ui-log-score-base = Lo mismo solo con las frecuencias de base
ui-better-than-base = La clasificación dice más de lo que dirían las frecuencias de base del taller.
ui-no-better-than-base = Por ahora la clasificación no dice más de lo que dirían las frecuencias de base del taller.
ui-weak-signs = Señales débiles
ui-weak-signs-about = Señales que fueron más o menos tan frecuentes sin sus causas como con ellas.
ui-weak-share = { $part } de { $whole }
ui-weak-with = Con una de sus causas: { $share }
ui-weak-without = Con ninguna de ellas: { $share }

## El comparador.
ui-gauge = Usar un comparador
ui-gauge-back = Volver a: { $step }
ui-gauge-about = Solo las manos, sin palanca: empuje, lea, tire, lea. Anote cada vez el movimiento entero. Fije la base del comparador con mordaza o tornillo en la carcasa misma: al aluminio no se pega ningún imán. Un comparador aclara «dudoso»; nunca anula lo que notó una mano.
ui-gauge-readings = Movimiento entero, de empujar a tirar
ui-gauge-reading = Lectura { $at }
ui-gauge-more = Una lectura más
ui-gauge-place = Dónde está el comparador
ui-gauge-at-bearing = En el rodamiento
ui-gauge-on-shaft = En otro lugar del árbol
ui-lever = Qué rodamiento se mueve y alrededor de qué se inclina el árbol
ui-lever-near = De una pareja, se mueve el rodamiento más cercano al comparador
ui-lever-far = De una pareja, se mueve el rodamiento más lejano al comparador
ui-lever-either = De una pareja, no se sabe cuál
ui-lever-joint = Un solo rodamiento
ui-lever-about-pair = Un rodamiento suelto de una pareja inclina el árbol alrededor del otro, no alrededor de la articulación lejana. Si no se sabe cuál, se calculan ambos, y una prueba necesita los dos.
ui-lever-about-joint = Un solo rodamiento: el árbol se inclina alrededor de su articulación lejana.
ui-lever-apart = De rodamiento a rodamiento, mm
ui-lever-out = Del rodamiento más cercano al comparador, mm
ui-lever-joint-bearing = De la articulación al rodamiento, mm
ui-lever-joint-gauge = De la articulación al comparador, mm
ui-gauge-mark = Sin valor del fabricante, la vara de medir es el juego propio del rodamiento. No es un límite oficial.
ui-gauge-bore = Diámetro interior del rodamiento, mm
ui-gauge-group = Grupo de juego
ui-gauge-group-none = Desconocido
ui-gauge-save = Anotar las lecturas
ui-gauge-plot = Lecturas sobre una línea: los círculos son lecturas, el disco es su media con su intervalo, la línea vertical es el límite.
ui-gauge-plot-about = Círculos: lecturas. Disco y barra: media e intervalo del 95 %. Línea vertical: límite; dentro de la banda gris no hay nada demostrado.
ui-gauge-limit = límite
ui-trend-plot = Movimiento a lo largo de las visitas: puntos con sus intervalos, una recta que los une y el límite como línea discontinua.
ui-trend-about = Puntos: visitas de este coche, cada una con su intervalo. Recta: la tendencia. Línea discontinua: límite.
ui-trend-first = hace { $days } días
ui-trend-today = hoy

## El banco.
ui-bench = Banco
ui-bench-about = Tras el desmontaje. El agujero decide si unos rodamientos nuevos por sí solos durarán.
ui-bench-about-rubber = Tras desmontar. Un soporte de goma se cambia entero, con su rodamiento. Mida un alojamiento solo donde el fabricante permite conservarlo.
ui-bench-verdict = Veredicto
ui-done = hecho
ui-bench-next = Sigue: { $part }
ui-bench-complete = Todo lo pedido está registrado. Ya se puede hacer el registro de reparación.
ui-bench-not-asked = no se pide por ahora
ui-bench-no-plan = Mida primero el agujero tal como se encontró: de ahí sale el plan.
ui-bench-clean = La herramienta ha tocado todo alrededor. No hace falta otra pasada.
ui-bench-cut-more = Dar otra pasada de todos modos
ui-measure-again = Medir de nuevo
ui-photo-back-bench = Volver al banco
ui-bench-look = Mirar el soporte
ui-look-cracked = ¿Alguna grieta o una oreja rota?
ui-look-ring-turned = ¿Marcas brillantes o rayadas de un rodamiento que giró en su alojamiento?
ui-look-yes = Sí
ui-look-no = No
ui-look-wall = Pared mínima que puede quedar, mm
ui-bench-found = Agujero tal como se encontró
ui-bench-skim = Plan de repaso y pasadas
ui-bench-finished = Agujero terminado
ui-bench-fit = Ajuste
ui-bench-ring = Tras el montaje: girar el rodamiento a mano
ui-bench-ring-about = Gire a mano el árbol en su rodamiento, despacio, una vuelta entera. Debe girar libre: un rodamiento prensado en un alojamiento ovalado gira duro y dura poco.
ui-bench-notes = Tornillería y pares de apriete
ui-bench-notes-about = Tornillería nueva, al par del fabricante. Escriba qué se usó y de dónde viene el valor.
ui-bench-note = Nota
ui-bench-passes = Pasadas dadas
ui-bench-after-pass = Tras la pasada { $pass }
ui-bench-pass = Pasada { $pass }: { $contact }
ui-bench-diameter = Diámetro tras la pasada { $pass }, mm (puede quedar vacío)
ui-bench-contact = La pasada { $pass } está dada. ¿Dónde tocó la cuchilla?
ui-bench-photo-at = Foto { $at } de { $of } de este trabajo
ui-bench-photo-more = Hacer otra foto
ui-contact-none = En ninguna parte
ui-contact-partly = En algunas partes
ui-contact-all-round = Todo alrededor
ui-ring-free = Libre
ui-ring-stiff = Duro
ui-ring-rough = Áspero
ui-bore-kind = Cómo se mide
ui-bore-kind-two-point = Dos puntos
ui-bore-kind-three-point = Tres puntos
ui-bore-kind-dial = Barrido con comparador
ui-bore-kind-coordinates = Coordenadas
ui-bore-about-two-point = Diámetros entre dos contactos opuestos. No ve tres, cinco ni ningún número impar de lóbulos.
ui-bore-about-three-point = Diámetros con tres contactos. No ve un óvalo.
ui-bore-about-dial = Un barrido con comparador sobre un plato giratorio, con su signo y su cero.
ui-bore-about-coordinates = Puntos de una máquina de medir, x e y desde el eje de referencia: pegados aquí o como archivo.
ui-bore-unit-mm = mm
ui-bore-unit-um = µm
ui-bore-unit-in = pulgadas
ui-bore-unit-thou = milésimas de pulgada
ui-bore-resolution = Escalón más pequeño
ui-bore-mpe = Mayor error que puede tener
ui-bore-repeatability = Dispersión, si se probó
ui-bore-wall = Pared más delgada, mm, si se midió
ui-bore-seat = Ancho del alojamiento, mm
ui-bore-wall-error = Pared medida a ± mm
ui-bore-turn = Los ángulos cuentan
ui-bore-turn-clockwise = en sentido horario
ui-bore-turn-counter = en sentido antihorario
ui-bore-zero-diameter = Diámetro en el cero
ui-bore-zero = El cero
ui-bore-zero-set = se puso con un anillo de esa medida
ui-bore-zero-nominal = solo se supuso
ui-bore-higher = Una lectura mayor es
ui-bore-higher-wider = más ancho
ui-bore-higher-narrower = más estrecho
ui-bore-angles = Ángulos
ui-bore-depths = Profundidades
ui-bore-depth = Profundidad, mm
ui-bore-at-depth = { $depth } de profundidad
ui-bore-filled = { $done } de { $all } lecturas anotadas
ui-bore-points = Puntos, uno por línea: x;y o profundidad;x;y
ui-bore-pasted = { $done } líneas pegadas
ui-bore-save = Anotar este agujero
ui-bore-file = O tomar un archivo
ui-polar = La pared a { $depth } de profundidad, con su desviación respecto al círculo dibujada mayor que al natural
ui-polar-scale = Desviación dibujada { $times } veces mayor. A trazos: redondo.
ui-polar-clockwise = Los ángulos cuentan en sentido horario.
ui-polar-counter = Los ángulos cuentan en sentido antihorario.
ui-polar-flagged = Rodeado: no encaja con sus vecinos; léalo otra vez.
ui-polar-mirrored = Hueco: dibujado con la lectura de enfrente, no leído aquí.
ui-polar-unread = Abierto: no medido. No se sabe qué hay ahí.
ui-skim-picture = Tras la pasada { $pass }, tocado el { $share } % del contorno
ui-skim-pass = Pasada { $pass } de { $of }.
ui-skim-touched = Tocado el { $share } % del contorno.
ui-skim-clean = Limpio todo alrededor.
ui-skim-diameter = Diámetro { $diameter }.
ui-skim-wall = Pared que queda: { $wall }.
ui-skim-wall-thin = LA PARED ES DEMASIADO DELGADA: pare.
ui-skim-before = Pasada anterior
ui-skim-after = Pasada siguiente
ui-skim-rings = Anillos de fuera adentro: { $depths } de profundidad. Grueso: tocado.
ui-fit-about = Todo en mm, incertidumbres en µm. Una medida tomada vale más que una clase.
ui-fit-bearing = El rodamiento
ui-fit-seat = El alojamiento
ui-fit-sleeve = El casquillo
ui-fit-sleeve-material = Material del casquillo
ui-fit-sleeved = Con casquillo
ui-fit-measured = El alojamiento medido aquí: { $diameter } mm ± { $expanded } µm
ui-fit-unknown = Desconocido
ui-fit-bearing-od = Diámetro exterior, nominal
ui-fit-bearing-bore = Diámetro interior
ui-fit-bearing-width = Ancho
ui-fit-od = Diámetro exterior, medido
ui-fit-od-u = su incertidumbre, µm
ui-fit-group = Grupo de juego
ui-fit-class = Clase de agujero
ui-fit-bore = Agujero del alojamiento, medido
ui-fit-bore-u = su incertidumbre, µm
ui-fit-housing = Material del soporte
ui-fit-housing-od = Diámetro exterior del soporte
ui-fit-sleeve-od = Diámetro exterior del casquillo
ui-fit-sleeve-od-u = su incertidumbre, µm
ui-fit-housing-bore = Agujero del soporte para el casquillo
ui-fit-housing-bore-u = su incertidumbre, µm
ui-fit-temp-low = Temperatura mínima en uso, °C
ui-fit-temp-high = Temperatura máxima en uso, °C
ui-fit-save = Calcular el ajuste
