### Pasos que comparten una pantalla: el juego en las dos direcciones, y lo que se puede dar por bueno de una vez.

## Las dos direcciones.
pair-play = Sentir el juego
pair-play-watch = Solo las manos, sin palanca. Dedos lejos de articulaciones, bordes y piezas calientes. Siga el procedimiento del fabricante.
pair-play-do = Agarre cerca del rodamiento. Mire el hueco entre árbol y soporte. Si se mueven juntos: «No hecho», mire soporte, tornillos y tacos, y repita.
pair-play-do-rubber = Agarre el árbol junto al rodamiento. Mire rodamiento y soporte. Cede y vuelve: «Elástico». Llega a un tope: «Golpea».
pair-play-do-rubber-figure = Agarre el árbol junto al rodamiento. Mire rodamiento y soporte. El fabricante permite { $figure }. Llega a un tope: «Golpea».
pair-play-vertical = Arriba y abajo: empuje, deje bajar
pair-play-lateral = De lado a lado: a izquierda y derecha
pair-short-play-vertical = Arriba y abajo
pair-short-play-lateral = De lado a lado
pair-within-figure = Hasta { $figure }
pair-beyond-figure = Más de { $figure }
pair-of = { $what }: { $direction }

## Lo que hay que mirar.
ui-looks = Mirar cada pieza
ui-looks-watch = Gafas y guantes puestos. Escape caliente cerca. No se cuelgue ni haga palanca, ni dedos en articulaciones. No toque los cables naranjas. Primero, el procedimiento del fabricante.
ui-looks-do = Ilumine cada pieza. Si no está bien o no se ve, abra su fila.
ui-looks-sound = { $count ->
    [one] Esta, bien
   *[other] Las { $count }, bien
}
ui-looks-none = Aquí no queda nada que mirar.
ui-photo-which = ¿Foto de qué pieza?
looked-housing-look = Soporte
looked-housing-look-for = Grietas, tornillos, marcas, grasa
looked-support-look = Anillo de goma
looked-support-look-for = Goma, soporte, tornillos
looked-coupling-look = Acoplamientos y articulaciones
looked-coupling-look-for = Grietas, goma, fuelles, tornillos
looked-shaft-look = Árbol
looked-shaft-look-for = Golpes, dobleces, fibra, pesos
looked-shield-and-mounts = Chapas y soportes del motor
looked-shield-and-mounts-for = Presione las chapas. Soportes, roces

error-looks-changed = Ahora están abiertas otras piezas que las de la lista
error-looks-changed-help = No se ha anotado nada. Lea otra vez la lista y diga después que están bien.
