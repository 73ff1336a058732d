# Excentricidad del árbol, leída en el banco tras el montaje

entry-run-out-read = Excentricidad del árbol leída
repair-run-out = Excentricidad del árbol junto al rodamiento, una vuelta: { $size } ({ $by }, { $at }). No se conoce un límite que valga para todos los árboles.
ui-bench-run-out = Excentricidad del árbol junto al rodamiento, mm
ui-bench-run-out-about = Con un reloj comparador sobre el árbol junto al rodamiento, gírelo a mano una vuelta completa y anote todo el recorrido de la aguja. No se conoce un límite que valga para todos los árboles: la cifra se guarda para comparar.
error-run-out-refused = Ningún reloj comparador muestra esa excentricidad
error-run-out-refused-help = Escriba todo el recorrido de la aguja en milímetros, de 0 a 10.

ui-ring-which = ¿Qué rodamiento?
ui-ring-place-one = El único
ui-ring-place-front = Delantero
ui-ring-place-rear = Trasero
ui-ring-temperature = ¿A qué temperatura está?
ui-ring-cold = Frío
ui-ring-warm = Aún caliente
ui-ring-clearance = Juego radial interno que queda, mm (puede quedar vacío)
repair-ring-front = Rodamiento delantero: { $line }
repair-ring-rear = Rodamiento trasero: { $line }
repair-ring-front-open = El rodamiento delantero aún no se ha girado.
repair-ring-rear-open = El rodamiento trasero aún no se ha girado.
repair-ring-warm = Aún estaba caliente: un soporte caliente es más ancho y suelta. Gírelo otra vez en frío.
repair-ring-clearance = Juego radial interno que queda: { $clearance }.
repair-ring-clearance-gone = NO QUEDA JUEGO INTERNO ({ $clearance }): se calienta y falla pronto.
error-clearance-refused = Ningún rodamiento de un árbol tiene ese juego interno
error-clearance-refused-help = Escríbalo en milímetros, de 0 a 1, como 0,012, o déjelo vacío.
