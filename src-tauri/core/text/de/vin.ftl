# Eine FIN, aus dem Foto ihres Strichcodes gelesen.

ui-vin-read = Aus dem Strichcode lesen
ui-vin-reading = Wird gelesen …
ui-vin-was-read = Aus dem Strichcode gelesen. Vergleichen Sie sie mit dem Fahrzeug; das Foto wird nicht behalten.

error-no-vin-in-photo = Im Foto wurde keine FIN gefunden
error-no-vin-in-photo-help = Füllen Sie das halbe Bild mit dem Strichcode, halten Sie still, vermeiden Sie Spiegelungen, und versuchen Sie es noch einmal; oder tippen Sie die FIN ein.
