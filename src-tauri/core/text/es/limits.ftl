### Lo que se rechaza porque pasa de lo que se puede anotar, o porque no es lo que tiene que ser.
### Los límites están en `src/model/limits.rs`. Rechazos como en errors.ftl.

## Algo escrito o dibujado.
error-intake-too-long = Un texto de la recepción es demasiado largo o lleva caracteres que no se ven
error-intake-too-long-help = Nombres, matrícula, bastidor y contacto admiten 200 caracteres; la queja y cuándo ocurre, 10.000. Acorte lo que sea más largo y vuelva a teclear lo pegado.
error-layout-fixed = La disposición ya no se puede cambiar
error-layout-fixed-help = El reloj comparador o el banco han medido en su árbol. Abra una visita nueva para este coche con la disposición correcta.
error-layout-takes-back = El cambio retira respuestas
error-layout-takes-back-help = Las respuestas ya no son las que se mostraron. Guarde otra vez.
error-warm-from-refused = Un alojamiento no está caliente a esa temperatura
error-warm-from-refused-help = Anote la cifra del fabricante en grados Celsius, 30 o más, o déjela en blanco.
error-signature-refused = La firma no se puede guardar
error-signature-refused-help = Borre el recuadro y pida al cliente que firme otra vez, dentro del marco y solo con su nombre.
error-bench-note-empty = La nota del banco está vacía
error-bench-note-empty-help = Escriba lo que se vio o se hizo, o deje la nota fuera.
error-bench-note-too-long = La nota del banco es demasiado larga
error-bench-note-too-long-help = Dígalo en 2000 caracteres como máximo, o escriba dos notas.
error-wall-refused = La pared que tiene que quedar no puede ser correcta
error-wall-refused-help = Anótela en milímetros, de 0,1 a 100, o déjela fuera si no se sabe.
error-pass-number-refused = No hay ninguna pasada con ese número
error-pass-number-refused-help = Las pasadas se cuentan desde 1 y hasta 200.
error-pass-without-bore = El alojamiento aún no se ha medido
error-pass-without-bore-help = Mida primero el alojamiento tal como se encontró y después anote la pasada.
error-pass-diameter-refused = El diámetro después de la pasada no puede ser correcto
error-pass-diameter-refused-help = Anótelo en milímetros, de 1 a 1000, o déjelo fuera si no se midió.
error-gauge-not-here = En este paso no va ningún reloj comparador
error-gauge-not-here-help = El reloj se lee en las dos comprobaciones de juego del soporte.
error-bore-too-many-depths = Hay más profundidades de las que se pueden admitir
error-bore-too-many-depths-help = El máximo es 200. Las lecturas de una profundidad tienen que nombrar exactamente la misma.
error-entry-beyond = Un valor pasa de lo que se puede anotar
error-entry-beyond-help = Busque una cifra de más o un texto pegado por error. No se anotó nada.

## Una visita que ya no admite más.
error-visit-full = La visita tiene tantas anotaciones como puede tener
error-visit-full-help = Abra una visita nueva para el coche y siga allí. Todo lo anotado hasta ahora se conserva.
error-visit-photos-full = La visita tiene tantas fotos como puede tener
error-visit-photos-full-help = Admite 200. Abra una visita nueva para el coche o dé un motivo para no hacer la foto. Todo lo guardado se conserva.
error-bench-notes-full = El banco tiene tantas notas como puede tener
error-bench-notes-full-help = Admite 100 en una visita. Todo lo anotado se conserva.

## Un archivo.
error-handover-spelling = Una anotación del archivo de entrega no está escrita como escribe Steady
error-handover-spelling-help = No se fíe de esta copia. Pida que creen el archivo de nuevo en el aparato de origen. No se incorporó nada.
error-handover-beyond = Una anotación del archivo de entrega contiene más de lo que se puede anotar
error-handover-beyond-help = Ningún aparato escribe una anotación así. Pida que creen el archivo de nuevo en el aparato de origen. No se incorporó nada.
error-case-photo-unreadable = No se puede leer una foto que nombra el caso
error-case-photo-unreadable-help = Nombre un archivo por su ruta desde el archivo del caso y compruebe que puede leerlo. No se anotó nada.
error-case-too-long = El caso tiene más filas de las que caben en una visita
error-case-too-long-help = Admite 1000 respuestas y condiciones, y otras tantas filas del banco. No se anotó nada.
error-database-foreign = La base de datos no la creó Steady
error-database-foreign-help = Contiene algo que Steady nunca escribe. Elija el archivo steady.db de una carpeta de datos o de una copia de seguridad. No se incorporó nada.
