### Entrega de visitas: archivos para otro aparato, borrado, copias de seguridad. Rechazos como en errors.ftl.

## Rechazos de un archivo de entrega.
error-handover-unknown = No es un archivo de entrega de Steady
error-handover-unknown-help = Elija el archivo .steady tal como se creó. No vale uno descomprimido y vuelto a comprimir. No se incorporó nada.
error-handover-cut-short = El archivo de entrega está cortado
error-handover-cut-short-help = Cópielo otra vez de donde se creó, o pida que lo creen de nuevo. No se incorporó nada.
error-handover-newer = El archivo de entrega es de un Steady más nuevo
error-handover-newer-help = Instale aquí la versión más nueva e incorpore después el archivo. Los datos de aquí no se tocaron.
error-handover-changed = El archivo de entrega se cambió después de crearlo
error-handover-changed-help = No se fíe de esta copia. Pida que creen el archivo de nuevo en el aparato de origen. No se incorporó nada.
error-handover-signature = La firma del archivo de entrega no encaja
error-handover-signature-help = No se fíe de esta copia. Pida que creen el archivo de nuevo en el aparato de origen. No se incorporó nada.
error-handover-part-missing = Falta una parte del archivo de entrega
error-handover-part-missing-help = Pida que creen el archivo de nuevo en el aparato de origen. No se incorporó nada.
error-handover-part-extra = El archivo de entrega lleva algo que no le corresponde
error-handover-part-extra-help = No se fíe de esta copia. Pida que creen el archivo de nuevo en el aparato de origen. No se incorporó nada.
error-handover-part-name = El archivo de entrega nombra una parte que ninguna visita tiene
error-handover-part-name-help = No se fíe de este archivo. El número dice qué parte de su lista es. No se incorporó nada.
error-handover-too-large = El archivo de entrega es demasiado grande
error-handover-too-large-help = Un archivo admite hasta 4 GB, y ningún texto más largo que su campo. Entregue menos visitas a la vez; no se incorporó nada.
error-handover-chain = Un registro del archivo de entrega no está entero
error-handover-chain-help = No se fíe de esta copia. Pida que creen el archivo de nuevo en el aparato de origen. No se incorporó nada.
error-handover-forked = El registro de un aparato sigue de forma distinta aquí y en el archivo
error-handover-forked-help = Se copió una carpeta de datos y se usó dos veces con el mismo nombre. Guarde las dos copias; no se cambió ninguna. A partir de ahora use solo una de las dos carpetas; lo que la otra contiene de esta visita se lee allí.
error-handover-photo = Una foto del archivo de entrega no está como Steady guarda las fotos
error-handover-photo-help = No se fíe de este archivo. No se incorporó nada.
error-file-changed = El archivo cambió mientras se le preguntaba
error-file-changed-help = No se incorporó nada. Impórtelo otra vez y lea de nuevo qué cambiaría.
error-handover-unreadable = No se puede leer el archivo
error-handover-unreadable-help = Compruebe que está ahí y que usted puede leerlo. No se incorporó nada.
error-handover-unwritable = No se puede escribir el archivo de entrega
error-handover-unwritable-help = Indique otro lugar en el que pueda escribir, o libere espacio.

## Rechazos a su alrededor.
error-visit-erased = La visita se borró en este aparato
error-visit-erased-help = Lo pidió el cliente, y aquí sigue borrada. No entró ni salió nada.
error-erase-word-differs = La palabra para confirmar no encaja
error-erase-word-differs-help = Repita la matrícula de la visita, o el último bloque de su identificador. No se borró nada.
error-chain-broken = El registro de la visita está dañado
error-chain-broken-help = No se puede entregar como entero. Deje los datos de este aparato como están y use una copia de seguridad anterior.
error-nothing-to-export = No hay ninguna visita que entregar
error-nothing-to-export-help = Anote primero una visita, o indique otra carpeta de datos.
error-knowledge-not-kept = Esta visita se clasificó con un saber que aquí no se conserva
error-knowledge-not-kept-help = Mírela en la carpeta de datos que la clasificó, o indique otra versión.
error-nothing-to-salvage = En esa base de datos no se puede leer nada
error-nothing-to-salvage-help = Indique el steady.db de una carpeta apartada. Se dejó como estaba.

## En las pantallas.
ui-handover = Entregar
ui-handover-about = Un archivo con el registro y las fotos de esta visita, para otro aparato con Steady. Va firmado, y allí se rechaza una copia cambiada.
ui-handover-make = Crear el archivo
ui-handover-making = Creando …
ui-handover-save = Guardar el archivo
ui-handover-where = Los archivos guardados van a la carpeta de descargas.
ui-handover-share = Enviar el archivo
ui-handover-size = { $size } MB
ui-import = Incorporar visitas de otro aparato
ui-import-about = Elija un archivo .steady o suéltelo aquí. Las visitas que ya están aquí crecen con lo nuevo; no se sobrescribe nada.
ui-import-choose = Elegir un archivo
ui-import-sending = Leyendo … { $percent } %
ui-import-taking = Comprobando e incorporando …
ui-import-done = { $taken ->
    [0] Todo lo del archivo ya estaba aquí.
    [one] 1 visita incorporada.
   *[other] { $taken } visitas incorporadas.
}
ui-import-unchanged = { $unchanged ->
    [one] 1 visita ya estaba aquí.
   *[other] { $unchanged } visitas ya estaban aquí.
}
ui-import-erased = { $erased ->
    [one] 1 visita se borró aquí y sigue borrada.
   *[other] { $erased } visitas se borraron aquí y siguen borradas.
}
ui-erase-visit = Borrar esta visita
ui-erase-visit-about = Si el cliente quiere que desaparezca. El registro y las fotos de esta visita se quitan de este aparato para siempre, y un archivo incorporado después no la trae de vuelta. No alcanza a los documentos y archivos guardados o enviados antes.
ui-erase-visit-word = Para confirmar, escriba { $word }
ui-erase-visit-now = Borrar para siempre
