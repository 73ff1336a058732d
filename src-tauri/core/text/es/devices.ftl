### Aparatos y sus claves: quién escribió qué, de quién fiarse, qué trae un archivo. Rechazos como en errors.ftl.

## Rechazos.
error-key-unreadable = No se puede leer la clave propia de este aparato
error-key-unreadable-help = Hace falta para firmar lo que se registra. Aparte esta carpeta de datos y restaure su última copia de seguridad en una nueva.
error-handover-before-signatures = El archivo de entrega se creó antes de que se firmaran las anotaciones
error-handover-before-signatures-help = Actualice Steady en el aparato de origen y pida que creen allí el archivo de nuevo. No se incorporó nada.
error-handover-unproven = No está probado que una anotación del archivo de entrega sea de quien la firma
error-handover-unproven-help = No se fíe de esta copia. Pida que creen el archivo de nuevo en el aparato que escribió la visita. No se incorporó nada de ella.
error-handover-unsigned = El archivo de entrega lleva anotaciones de antes de las firmas
error-handover-unsigned-help = Nadie puede probar quién las escribió; solo entran desde una copia de seguridad propia. No se incorporó nada de la visita.
error-handover-own-name = El archivo de entrega lleva anotaciones a nombre de este aparato que este no tiene
error-handover-own-name-help = Este aparato no se trae nada a sí mismo. Si su carpeta de datos se copió o se devolvió a un día anterior, restaure su última copia de seguridad; si no, no se fíe del archivo. No se incorporó nada de la visita.
