# Los casquillos y los instrumentos propios del taller

stock-sleeve = Casquillo de { $material }, { $outside } por fuera, agujero de { $bore }
stock-open = { $sleeve }: no se sabe si sirve. Calcule el ajuste con las temperaturas y el exterior del soporte.
stock-fits = { $sleeve }: SIRVE en el agujero que hay, que puede medir de { $least } a { $most }, si la pared lo permite.
stock-bore-to = { $sleeve }: para él lleve el agujero del soporte a { $least } hasta { $most }, si la pared lo permite.
stock-bore-too-wide = { $sleeve }: demasiado pequeño. El agujero puede medir { $most } como mucho, y es más ancho o tiene que serlo.
stock-too-thin = { $sleeve }: demasiado delgado una vez torneado para el rodamiento.
stock-no-wall = { $sleeve }: demasiado grande, no quedaría pared del soporte.
stock-own-bore-too-wide = { $sleeve }: su propio agujero es demasiado ancho para este rodamiento.
stock-none-holds = { $sleeve }: ningún apriete aguanta en caliente y se soporta en frío.
stock-wall-too-thin = { $sleeve }: demasiado grande, al soporte le quedaría menos pared de la que debe conservar.
stock-housing-replaced = { $sleeve }: no entra ningún casquillo, hay que sustituir el soporte.

ui-stock = Casquillos en el estante
ui-stock-about = Medidas que tiene o compra. El banco dice cuáles servirían en el soporte que tiene delante.
ui-stock-empty = El taller no ha anotado casquillos propios.
ui-stock-take = Llevarlo al ajuste
ui-stock-outside = Diámetro exterior, mm
ui-stock-bore = Agujero tal como se compra, mm
ui-stock-more = Otro casquillo

ui-instruments = Instrumentos
ui-instruments-about = Con qué mide. Elíjalo en el banco y su paso y su error quedan puestos; si su calibración ha caducado, se dice.
ui-instrument-name = Nombre o número
ui-instrument-resolution = Paso más pequeño, mm
ui-instrument-mpe = Error admisible, mm
ui-instrument-repeatability = Dispersión de lecturas repetidas, mm (puede quedar vacío)
ui-instrument-calibrated = Calibrado el
ui-instrument-due = Válido hasta
ui-instrument-more = Otro instrumento
ui-instrument-which = Instrumento del taller
ui-instrument-none = Otro
ui-instrument-overdue = LA CALIBRACIÓN NO VALE HOY (anotada hasta el { $due }). Hágalo calibrar antes de decidir por él.
ui-instrument-no-date = NO SE CONOCE NINGUNA CALIBRACIÓN. Hágalo calibrar antes de decidir por él.

instrument-line-due = Leído con { $name }, calibrado el { $calibrated }, válido hasta el { $due }.
instrument-line-overdue = LEÍDO CON { $name }, CUYA CALIBRACIÓN HABÍA CADUCADO el { $due }: su error puede ser mayor de lo que dice la incertidumbre.
instrument-line-no-date = LEÍDO CON { $name }, DEL QUE NO SE CONOCE CALIBRACIÓN VÁLIDA: su error puede ser mayor de lo que dice la incertidumbre.

error-workshop-sleeve = No se puede leer un casquillo del taller
error-workshop-sleeve-help = Dé su material, su diámetro exterior y su agujero, más pequeño, en milímetros, de 1 a 1.000; 40 casquillos como mucho. No se cambió nada.
error-workshop-instrument = No se puede leer un instrumento
error-workshop-instrument-help = Dé a cada uno un nombre propio, su paso y su error admisible en milímetros, por encima de 0 y hasta 1; el día de la calibración es anterior al día hasta el que vale. 20 instrumentos como mucho. No se cambió nada.
error-unknown-instrument = El taller no tiene ningún instrumento con ese nombre
error-unknown-instrument-help = Anótelo con los datos del taller, o dé su paso y su error a mano.
