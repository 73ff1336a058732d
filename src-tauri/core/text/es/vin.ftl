# Un bastidor leído en la foto de su código de barras.

ui-vin-read = Leerlo del código de barras
ui-vin-reading = Leyendo …
ui-vin-was-read = Leído del código de barras. Compárelo con el del coche; la foto no se guarda.

error-no-vin-in-photo = En la foto no se encontró ningún bastidor
error-no-vin-in-photo-help = Llene media imagen con el código, no mueva el teléfono, evite los reflejos e inténtelo de nuevo; o escriba el bastidor.
