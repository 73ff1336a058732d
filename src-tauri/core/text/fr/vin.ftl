# Un VIN lu sur la photo de son code-barres.

ui-vin-read = Le lire sur le code-barres
ui-vin-reading = Lecture …
ui-vin-was-read = Lu sur le code-barres. Comparez-le à celui de la voiture ; la photo n’est pas gardée.

error-no-vin-in-photo = Aucun VIN n’a été trouvé sur la photo
error-no-vin-in-photo-help = Remplissez la moitié de l’image avec le code-barres, ne bougez pas, évitez les reflets et recommencez ; ou tapez le VIN.
