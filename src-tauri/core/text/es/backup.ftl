### Copias de seguridad: por qué no se hizo o no se recuperó una, y qué hacer.

error-backup-folder = Esa carpeta no es una copia de seguridad de Steady
error-backup-folder-help = Indique una carpeta vacía, o una en la que ya se hizo una copia. Se dejó como estaba.
error-backup-file = Ese archivo no es una copia de seguridad de Steady
error-backup-file-help = Elija un archivo que Steady haya guardado como copia; su nombre empieza por steady-backup. No se incorporó nada.
error-backup-of-another = Esa carpeta es la copia de otra carpeta de datos
error-backup-of-another-help = Indique la carpeta que corresponde a estos datos, o una vacía. Después de recuperar una copia en una carpeta de datos nueva es normal: indique una carpeta vacía. Si la carpeta de datos estaba mal escrita, indique la correcta. No se cambió nada.
error-backup-inside-data = Esa carpeta está dentro de la propia carpeta de datos
error-backup-inside-data-help = Indique una carpeta en otro disco, para que una avería no se lleve las dos.
error-backup-link = En la carpeta de la copia hay un enlace donde debe haber un archivo o una carpeta
error-backup-link-help = Indique otra carpeta, o quite el enlace. Steady no escribe a través de enlaces.
error-backup-unwritable = No se puede escribir en el lugar de la copia
error-backup-unwritable-help = Indique una carpeta en la que este usuario pueda escribir, en un disco sin protección contra escritura. Los datos siguen como estaban.
error-backup-busy = Otro Steady está trabajando en esa copia
error-backup-busy-help = Espere a que termine y vuelva a intentarlo.
error-backup-newer = La copia la hizo un Steady más nuevo
error-backup-newer-help = Actualice Steady primero. La copia se dejó como estaba.
error-backup-would-lose = Hay visitas de la última copia que ya no están aquí, y nadie las borró
error-backup-would-lose-help = ¿Se escribió mal la carpeta de datos, o está dañada la base de datos? Recupere primero la copia y después haga otra. No se cambió nada.
error-backup-damaged = Falta un archivo de la copia, o está dañado
error-backup-damaged-help = Pruebe con la copia de otra fecha. No se cambió nada. Para seguir haciendo copias, indique una carpeta vacía y conserve esta.
error-backup-unread = Un archivo de la copia está ahí y no se pudo leer
error-backup-unread-help = Puede que falle el disco o su cable. Inténtelo otra vez. Si vuelve a fallar, haga la copia en una carpeta vacía de otro disco y conserve esta.
error-backup-forked = Estos datos y la última copia siguieron caminos distintos desde el mismo comienzo
error-backup-forked-help = También se usa un duplicado de la carpeta de datos, y escribió esta copia. Indique una carpeta vacía para la copia de esta y conserve las dos copias. Después trabaje solo en una de las dos carpetas. No se cambió nada.
error-backup-checked = Hay archivos dañados en la copia
error-backup-checked-help = Se nombran arriba. Haga otra copia: lo que está entero en la carpeta de datos se escribe de nuevo. Después compruebe otra vez; lo que siga dañado solo está en esta copia, así que consérvela y siga en una carpeta vacía.
error-read-while-written = Se escribió en los datos mientras se leían
error-read-while-written-help = Cierre el Steady que usa esa carpeta e inténtelo otra vez. No se incorporó nada.
error-photos-unhealed = Se incorporó todo, pero no se pudieron sustituir las fotos que aquí están dañadas
error-photos-unhealed-help = Compruebe que se puede escribir en la carpeta photos de la carpeta de datos y vuelva a incorporar lo mismo.
error-backup-not-verified = Lo escrito no se lee igual que se escribió
error-backup-not-verified-help = Puede que el disco esté fallando. Haga ahora una copia en otro. Las copias anteriores se dejaron como estaban.
error-backup-no-generation = La copia no contiene nada de esa fecha
error-backup-no-generation-help = Vea qué fechas contiene e indique una de ellas, o ninguna.
error-backup-data-damaged = La base de datos de la carpeta de datos está dañada, así que no se copió nada
error-backup-data-damaged-help = Inicie Steady: aparta la base de datos, entera. Después recupere la última copia, que se dejó como estaba.
error-no-data = No hay visitas en esa carpeta de datos
error-no-data-help = Compruebe que la carpeta de datos es la correcta. No se creó nada.
error-photo-damaged = El archivo de la foto no es el que se guardó
error-photo-damaged-help = Se dañó o se cambió, y no se muestra como prueba. Incorpore una copia buena: de una copia de seguridad, o de un aparato que la tenga.

## The screens.
ui-backup = Copia de seguridad
ui-backup-about = Todo en un archivo: visitas, fotos y los ajustes propios del taller. Guárdelo fuera de este aparato. Contiene nombres de clientes.
ui-backup-make = Hacer una copia
ui-backup-making = Se lee y se empaqueta cada foto … { $percent } %
ui-backup-save = Guardar la copia
ui-backup-holds = { $visits ->
    [one] 1 visita
   *[other] { $visits } visitas
}, { $size } MB
ui-backup-photos-missing = { $photos ->
    [one] 1 foto falta aquí o está dañada, y no va en la copia. Recupere primero una copia anterior.
   *[other] { $photos } fotos faltan aquí o están dañadas, y no van en la copia. Recupere primero una copia anterior.
}
ui-backup-broken = { $visits ->
    [one] El registro de 1 visita está dañado. Va en la copia tal como está: guarde también una copia anterior.
   *[other] Los registros de { $visits } visitas están dañados. Van en la copia tal como están: guarde también una copia anterior.
}
ui-backup-own-left-out = { $files ->
    [one] 1 archivo propio del taller es demasiado grande, tiene un nombre que no todos los sistemas aceptan o está de más, y se dejó fuera.
   *[other] { $files } archivos propios del taller son demasiado grandes, tienen nombres que no todos los sistemas aceptan o son demasiados, y se dejaron fuera.
}
ui-restore = Recuperar una copia
ui-restore-about = Elija un archivo de copia. Se incorpora lo que contiene y este aparato no tiene, se arreglan las fotos dañadas y no se sobrescribe nada. También puede elegir una base de datos dañada de Steady: se incorpora cada visita que aún pueda leerse entera.
ui-restore-choose = Elegir un archivo de copia
ui-restore-mended = { $entries ->
    [one] 1 anotación dañada vuelve a estar entera.
   *[other] { $entries } anotaciones dañadas vuelven a estar enteras.
}
ui-restore-healed = { $photos ->
    [one] 1 foto dañada vuelve a estar entera.
   *[other] { $photos } fotos dañadas vuelven a estar enteras.
}
ui-restore-devices = { $devices ->
    [one] Lo decidido sobre 1 aparato vino también. Mírelo en Ajustes, Aparatos; allí puede empezar de nuevo con él.
   *[other] Lo decidido sobre { $devices } aparatos vino también. Mírelos en Ajustes, Aparatos; allí puede empezar de nuevo con cada uno.
}
ui-restore-differs = { $visits ->
    [one] 1 visita sigue aquí de otra manera y se dejó como está.
   *[other] { $visits } visitas siguen aquí de otra manera y se dejaron como están.
}
ui-restore-damaged = { $visits ->
    [one] 1 visita está dañada en la copia y se dejó allí. Pruebe con una copia anterior.
   *[other] { $visits } visitas están dañadas en la copia y se dejaron allí. Pruebe con una copia anterior.
}
ui-restore-of-another = No es de este aparato: en quién confía y lo que allí se borró no vino con ella, y ningún aparato sin confirmar aquí hizo más leve una calificación.
ui-restore-files-damaged = { $files ->
    [one] 1 archivo de la copia está dañado y se dejó fuera. Lo demás llegó.
   *[other] { $files } archivos de la copia están dañados y se dejaron fuera. Lo demás llegó.
}
ui-restore-photos-missing = { $photos ->
    [one] 1 foto no está entera ni aquí ni en la copia.
   *[other] { $photos } fotos no están enteras ni aquí ni en la copia.
}
ui-photo-damaged = El archivo de esta foto falta o está dañado, por eso no se muestra y no prueba nada. Incorpore una copia buena: de una copia de seguridad o de un aparato que la tenga.
