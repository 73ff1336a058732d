# Excentricidad del árbol, leída en el banco tras el montaje

entry-run-out-read = Excentricidad del árbol leída
repair-run-out = Excentricidad del árbol junto al rodamiento, una vuelta: { $size } ({ $by }, { $at }). No se conoce un límite que valga para todos los árboles.
ui-bench-run-out = Excentricidad del árbol junto al rodamiento, mm
ui-bench-run-out-about = Con un reloj comparador sobre el árbol junto al rodamiento, gírelo a mano una vuelta completa y anote todo el recorrido de la aguja. No se conoce un límite que valga para todos los árboles: la cifra se guarda para comparar.
error-run-out-refused = Ningún reloj comparador muestra esa excentricidad
error-run-out-refused-help = Escriba todo el recorrido de la aguja en milímetros, de 0 a 10.
