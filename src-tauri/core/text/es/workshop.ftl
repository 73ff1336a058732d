### Los datos propios del taller, sus unidades y lo que ponen en los papeles.

length-um = { $um } µm
length-thou = { $thou } thou
length-inch = { $inch } in
readings-joint = { "; " }
odometer-converted = { $converted } (leído: { $read })

letterhead-phone = Teléfono { $phone }
note-ask-named = Pregunte en { $workshop }.
note-ask-named-technician = Pregunte en { $workshop }. Nombre en la revisión: { $technician }.
note-ask-phone = Teléfono: { $phone }.
note-receipt-from = Nota de: { $workshop }

## La decisión de quien es dueño cuando no hay nada que reparar. Las tres se registran igual con cualquier calificación.
decision-repair-notice = Quiero que lo miren otra vez
decision-decide-later-notice = Me lo voy a pensar
decision-decline-notice = No quiero que se haga nada más
decision-repair-unrated = Terminen la revisión, por favor
decision-decide-later-unrated = Me lo voy a pensar
decision-decline-unrated = No quiero que se revise
decision-short-repair = adelante
decision-short-decide-later = se lo piensa
decision-short-decline = se deja como está

## El informe.
finding-heading-scope = Alcance del trabajo en el rodamiento
finding-heading-gauges = Lecturas del comparador
finding-not-checked = Sin revisar: { $steps }.
detail-gauge = Leído con un comparador: véase la tabla de lecturas.
gauge-column-place = Dónde
gauge-column-readings = Lecturas
gauge-column-mean = Media en el rodamiento
gauge-column-expanded = Incertidumbre expandida, 95 %
gauge-column-limit = Límite
gauge-column-decision = Decisión
gauge-plus-minus = ± { $expanded }
gauge-expanded-none = no se conoce con una sola lectura
gauge-limit-unknown = no se conoce

scope-before-teardown = La medición tras el desmontaje decide cuál de estos trabajos hace falta. Mientras el rodamiento no esté fuera y su alojamiento medido, nadie puede decirlo.
scope-bench = La medición dice: { $verdict }
scope-bearings-only = Solo los rodamientos
scope-bearings-only-about = Rodamientos nuevos en el alojamiento tal como está, si es redondo, firme y sano.
scope-skim-and-sleeve = Alojamiento restaurado con casquillo
scope-skim-and-sleeve-about = Se mandrina el alojamiento gastado y se prensa un casquillo, si queda bastante pared.
scope-replace-housing = Soporte sustituido
scope-replace-housing-about = Un soporte nuevo y rodamientos nuevos, si está agrietado o queda poca pared.
scope-chosen = Resultado de la medición
scope-ruled-out = Descartado
scope-open = Abierto
scope-hours = { $from } a { $to } h
scope-hours-exact = { $hours } h
scope-hours-are = Las horas son las que suele necesitar este taller; un coche puede necesitar más o menos.
scope-rate = Tarifa: { $rate } por hora, como la anotó el taller.
scope-no-quote = Esto es un alcance del trabajo, nunca un presupuesto.

paper-label-unprintable = «[…]» sustituye letras para las que este papel no tiene tipografía. El registro de la visita las conserva como se escribieron.

## La pantalla.
ui-workshop = El taller
ui-workshop-about = Lo que anote estará en todos los papeles desde ahora. Lo que quede vacío se omite.
ui-workshop-name = Nombre
ui-workshop-address = Dirección, línea por línea
ui-workshop-phone = Teléfono
ui-workshop-length = Longitudes
ui-workshop-length-none = Como es usual en el idioma
ui-workshop-length-mm = Milímetros
ui-workshop-length-thou = Milésimas de pulgada
ui-workshop-distance = Distancias
ui-workshop-distance-none = Como se leyeron
ui-workshop-distance-km = Kilómetros
ui-workshop-distance-miles = Millas
ui-workshop-work = Trabajo en el rodamiento
ui-workshop-work-about = Horas que le suele llevar cada trabajo. El informe las muestra como alcance del trabajo, nunca como presupuesto.
ui-workshop-from = Horas de
ui-workshop-to = Horas a
ui-workshop-rate = Tarifa por hora
ui-workshop-currency = Moneda
ui-workshop-saved = Guardado. Desde ahora está en todos los papeles.
ui-workshop-draft = Aún sin guardar. Lo escrito queda aquí hasta que lo guarde o lo descarte.
ui-handover-papers = También los papeles, para quien lea sin Steady
ui-handover-papers-language = Idioma de los papeles
ui-handover-as-made = Como se hicieron la última vez

error-workshop-too-long = Los datos del taller no caben en un papel
error-workshop-too-long-help = Nombre y dirección admiten 100 caracteres por línea, cuatro líneas como mucho; el teléfono 60, la moneda 12. Acorte lo que pase de ahí. No se cambió nada.
error-workshop-number = No se pueden leer las horas o la tarifa
error-workshop-number-help = Escriba 2.5 o 2,5, y los miles sin signo, por ejemplo 1250. Las horas van de menos a más, hasta 200. No se cambió nada.
error-workshop-unreadable = No se puede leer el archivo del taller
error-workshop-unreadable-help = Compruebe que está entero y que tiene la forma del archivo de demo-data/workshop. No se cambió nada.
