# El casquillo viejo: si lo hay, cómo sale, y qué se vio del soporte

ui-look-dyed = ¿Se buscaron grietas con tinte?
ui-look-sleeved = ¿Hay en el agujero un casquillo de una reparación anterior?
ui-look-anew = El casquillo viejo está fuera: busque grietas otra vez, también donde estaba. Las respuestas de antes no cuentan.
ui-bench-old-sleeve = Sacar el casquillo viejo
ui-old-sleeve-about = Un casquillo viejo tapa la pared que llevará el nuevo. Sáquelo, busque grietas otra vez y mida el agujero de detrás. El procedimiento del fabricante va primero.
ui-old-sleeve-way = ¿Cómo salió?
ui-old-sleeve-heat = Con calor
ui-old-sleeve-heat-about = Caliente el soporte por igual, nunca con llama ni por encima de su límite, hasta que suelte el casquillo.
ui-old-sleeve-press = A presión
ui-old-sleeve-press-about = Apoye el soporte justo debajo del alojamiento, prense recto y pare si no se mueve: el calor ayuda más que la fuerza.
ui-old-sleeve-bored = Torneado
ui-old-sleeve-bored-about = Deje una piel del casquillo viejo y despréndala. La cuchilla no debe llegar al soporte.
ui-old-sleeve-outside = Diámetro exterior del casquillo viejo, mm (puede quedar vacío)
ui-old-sleeve-out = Está fuera
ui-old-sleeve-behind = Agujero detrás del casquillo viejo

look-line-cracked = EL SOPORTE ESTÁ AGRIETADO, o hay una oreja rota.
look-line-no-crack-dye = Con tinte no se encontró ninguna grieta.
look-line-no-crack-eye = A simple vista no se vio ninguna grieta. Una grieta fina solo se ve con tinte.
look-line-cracks-open = No se buscaron grietas.
look-line-ring-turned = El rodamiento ha girado en su alojamiento.
look-line-ring-still = Ninguna marca de un rodamiento que giró en su alojamiento.
look-line-ring-open = No se buscaron marcas de un rodamiento que giró en su alojamiento.
look-line-sleeved = En el agujero hay, o había, un casquillo de una reparación anterior.
look-line-bare = En el agujero no hay casquillo.
look-line-wall = Pared que tiene que quedar: { $wall }.

sleeve-out-heat = El casquillo viejo salió con calor.
sleeve-out-press = El casquillo viejo salió a presión.
sleeve-out-bored = El casquillo viejo se quitó torneándolo.
sleeve-out-size = Por fuera medía { $size }.
sleeve-out-grip = Frente al agujero de detrás eran { $grip } de apriete en frío.
sleeve-out-loose = EL CASQUILLO VIEJO ESTABA SUELTO: el agujero de detrás es { $grip } más ancho.
sleeve-out-look-again = Lo que tapaba cuenta cuando se han buscado grietas allí y se ha medido.

verdict-why-old-sleeve-out = El casquillo viejo está fuera: el agujero lleva uno nuevo.
verdict-gap-old-sleeve = si hay un casquillo viejo en el agujero
verdict-gap-behind-sleeve = el casquillo viejo fuera y el agujero de detrás medido
entry-sleeve-out = Casquillo viejo sacado
entry-bore-behind = Agujero medido detrás del casquillo viejo
repair-heading-look = Soporte mirado, casquillo viejo
repair-bore-behind = Agujero detrás del casquillo viejo
repair-photo-bench-behind = Agujero detrás del casquillo viejo
repair-sleeve-out-by = Lo sacó { $by }, { $at }.

error-sleeve-size-refused = Ningún casquillo de un alojamiento tiene ese diámetro exterior
error-sleeve-size-refused-help = Escríbalo en milímetros, de 1 a 1.000, o déjelo vacío.
error-sleeve-still-in = El casquillo viejo sigue en su sitio
error-sleeve-still-in-help = Registre primero cómo salió el casquillo viejo. Un agujero con el casquillo dentro se mide tal como se encontró.
