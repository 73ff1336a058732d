# Anotar un alojamiento: teclas, croquis y lo pegado

ui-pad-at = Profundidad { $depth } mm, { $angle }°
ui-pad-sign = Cambiar el signo
ui-pad-begins = Empezar con { $begins }
ui-pad-next = Siguiente
ui-pad-repeat = Como antes
ui-pad-done = Todas las lecturas están anotadas.
ui-sketch = Croquis de { $count } lecturas tal como se anotan
ui-sketch-about = Croquis de lo anotado, con las diferencias aumentadas. El resultado llega cuando se registra el alojamiento.
ui-paste = Pegar, o la lista de un instrumento
ui-paste-field = De una hoja de cálculo o del archivo de un instrumento
ui-paste-none = Esto no cabe en { $depths } profundidades de { $angles } ángulos. Fije antes profundidades y ángulos, o pegue una columna o línea que quepa desde el lugar actual.
ui-paste-ways = Esto se puede leer de más de una manera. Elija la correcta; antes no se anota nada.
ui-paste-column = Columna { $number }, { $count } lecturas: { $first } …
ui-paste-row = { $count } lecturas: { $first } …
ui-paste-lines-are-depths = Cada línea, una profundidad: { $first } …
ui-paste-columns-are-depths = Cada columna, una profundidad: { $first } …
