### Fotos: marcas, pares, fotos que se estaban tomando, el código para entregar un texto. Rechazos como en errors.ftl.

## Rechazos.
error-photo-heic = La foto es un HEIC, que aquí no se puede leer
error-photo-heic-help = Ponga la cámara en JPEG («más compatible») y tómela de nuevo, o elija una copia en JPEG.
error-photo-not-of-step = Esta foto no pertenece al paso
error-photo-not-of-step-help = Abra el paso de nuevo y elija una de sus fotos. No se registró nada.
error-photo-not-wanted = Ya nada espera esta foto
error-photo-not-wanted-help = Abra el paso y añada la foto allí.
error-marks-too-many = Demasiadas marcas en una foto
error-marks-too-many-help = Una foto admite hasta 12. Quite algunas y guarde el resto.
error-mark-refused = Una marca no se puede guardar
error-mark-refused-help = Dibújela sobre la imagen y algo más grande, una línea libre con menos trazos.
error-mark-label-refused = Las palabras sobre la foto no se pueden guardar
error-mark-label-refused-help = Escriba de 1 a 40 caracteres en una línea, sin caracteres de control.
error-waiver-too-long = El motivo es demasiado largo
error-waiver-too-long-help = Dígalo en 200 caracteres como máximo.

## El registro.
entry-photo-marked = Foto marcada
entry-photos-paired = Fotos mostradas como antes y después, o de nuevo por separado

## Documentos.
photo-caption-marked = { $caption }. Marcado: { $labels }
photo-alt-marked = { $alt } La foto está marcada.
photo-alt-labelled = { $alt } Marcado en ella: { $labels }.
photo-caption-before = Antes, { $at }: { $said }
photo-caption-after = Después, { $at }: { $said }
photo-alt-before = Antes, guardada { $at }. { $said }
photo-alt-after = Después, guardada { $at }. { $said }

## Mirar de cerca y marcar.
ui-photo-closer = Mirar de cerca, marcar
ui-photo-title = Foto: { $title }
ui-photo-back = Volver al paso
ui-photo-none-yet = Todavía no hay foto de este paso.
ui-zoom = Ampliación
ui-zoom-in = Más grande
ui-zoom-out = Más pequeña
ui-zoom-one = 1:1
ui-zoom-fit = Entera
ui-mark-tools = Lo que hace el dedo
ui-mark-look = Mover
ui-mark-arrow = Flecha
ui-mark-ring = Anillo
ui-mark-freehand = Dibujar
ui-mark-label = Palabras
ui-mark-how-look = Arrastre para mover, pellizque o pulse + y - para ampliar. Con teclado: las flechas mueven, + y - amplían.
ui-mark-how-arrow = Arrastre desde la cola hasta la punta. Con teclado: las flechas mueven la cruz, Intro fija cada extremo.
ui-mark-how-ring = Arrastre sobre lo que rodea el anillo. Con teclado: las flechas mueven la cruz, Intro fija cada esquina.
ui-mark-how-freehand = Dibuje con el dedo. Con teclado: Intro baja y sube el lápiz, las flechas dibujan.
ui-mark-how-label = Escriba las palabras y toque dónde van. Con teclado: las flechas mueven la cruz, Intro las fija.
ui-mark-words = Palabras sobre la foto, hasta 40 caracteres
ui-mark-back = Quitar la última marca
ui-mark-clear = Quitar todas las marcas
ui-mark-keep = Guardar las marcas
ui-mark-drop = Dejar como estaba
ui-mark-undone = Se deshizo el último cambio en las marcas.
ui-mark-count = { $count ->
    [0] Sin marcas
    [one] { $count } marca
   *[other] { $count } marcas
}
ui-mark-unsaved = Aún sin guardar.
ui-mark-kept = Las marcas están guardadas. La foto misma queda como se tomó.
ui-pair = Antes y después
ui-pair-about = Las fotos anteriores de este paso se conservan. Una de ellas puede estar junto a la última, aquí y en el informe.
ui-pair-before = Antes, { $when }
ui-pair-after = Después, { $when }
ui-pair-with = Mostrar esta como «antes»
ui-pair-alone = Mostrar solo la última

## Una foto que se estaba tomando cuando la aplicación terminó.
ui-wanted = Se estaba tomando una foto para «{ $title }», { $when }.
ui-wanted-choose = Elegirla
ui-wanted-found = Usar la foto de la cámara, { $when }
ui-wanted-drop = Ya no hace falta

## El texto corto como código.
ui-qr = Mostrar como código QR
ui-qr-hide = Ocultar el código QR
ui-qr-of = Código QR que contiene el texto corto
ui-qr-about = Apunte con la cámara del otro teléfono. Contiene el texto corto de arriba; nada pasa por una red.
