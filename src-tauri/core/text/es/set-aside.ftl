### Lo que se apartó porque no se podía usar, y lo que se puede leer de ello.

## Por qué se apartó una carpeta.
set-aside-damaged = La base de datos estaba dañada y se apartó con sus fotos. No se borró nada.
set-aside-no-database = El archivo de la base de datos no era una base de datos. Se apartó con las fotos. No se borró nada.
set-aside-empty = El archivo de la base de datos estaba vacío. Se apartó con las fotos. No se borró nada.
set-aside-missing = Faltaba la base de datos. Se apartaron las fotos. No se borró nada.

## Rechazos.
error-salvage-missing = No existe esa base de datos
error-salvage-missing-help = Compruebe el nombre y que el disco esté conectado. Si la carpeta se apartó sin base de datos, allí solo están las fotos.
error-salvage-empty = El archivo de la base de datos está vacío
error-salvage-empty-help = Nunca hubo nada en él, o todo se perdió. Busque otra copia: una copia de seguridad u otro dispositivo.
error-salvage-no-database = El archivo no es una base de datos de Steady
error-salvage-no-database-help = Nada en él se lee como parte de una. Indique el steady.db de una carpeta de datos, de una copia de seguridad o de una carpeta apartada. Se dejó como estaba.
error-unknown-set-aside = No existe esa carpeta apartada
error-unknown-set-aside-help = Se movió o se quitó desde que Steady se inició. Vuelva a la primera pantalla y mire otra vez.
error-erase-set-aside = No se borró nada, porque no se pudo buscar la visita en una carpeta apartada
error-erase-set-aside-help = Arregle lo que se nombra, o saque esa carpeta de la carpeta de datos, y borre otra vez. Lo que hay en una carpeta que se sacó no se borra.
error-erase-unswept = La visita está borrada, pero puede que queden partes en archivos que aún no se pudieron limpiar
error-erase-unswept-help = Cierre lo que también lea los datos, como una copia de seguridad o una exportación. Steady sigue entonces por sí solo, en la primera pantalla o al iniciarlo de nuevo. La visita no vuelve.
error-nothing-to-export-set-aside = No hay ninguna visita que entregar: los datos se apartaron
error-nothing-to-export-set-aside-help = Recupere primero lo que se pueda leer: en la primera pantalla o con steady salvage.

## En las pantallas.
ui-set-aside = Se apartaron datos
ui-set-aside-readable = { $visits ->
    [0] No se puede leer entera ninguna visita.
    [one] Se puede leer 1 visita, con { $photos } de sus fotos.
   *[other] Se pueden leer { $visits } visitas, con { $photos } de sus fotos.
}
ui-set-aside-lost = { $lost ->
    [one] De 1 visita se encontró algo, pero no todo.
   *[other] De { $lost } visitas se encontró algo, pero no todo.
}
ui-set-aside-uncounted = No se pudo contar lo que se puede leer. Se intentará de nuevo cuando Steady se inicie.
ui-set-aside-folder = Carpeta apartada
ui-take-back = Recuperar lo que se pueda leer
ui-taking-back = Leyendo …
ui-taken-back = { $taken ->
    [0] Todo lo que se puede leer ya estaba aquí.
    [one] 1 visita recuperada.
   *[other] { $taken } visitas recuperadas.
}
ui-taken-back-lost = { $lost ->
    [one] 1 visita ya no está entera y se queda en la carpeta.
   *[other] { $lost } visitas ya no están enteras y se quedan en la carpeta.
}
ui-taken-back-photos = { $photos ->
    [one] 1 foto no se encontró entera.
   *[other] { $photos } fotos no se encontraron enteras.
}
ui-dismiss-set-aside = Lo he leído
ui-dismiss-set-aside-about = El aviso desaparece. La carpeta se queda, y los ajustes la muestran.
