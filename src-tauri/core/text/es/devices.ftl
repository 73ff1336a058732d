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
error-handover-retired = El archivo de entrega lleva anotaciones nuevas de un aparato dado de baja aquí
error-handover-retired-help = Un aparato perdido puede estar en otras manos. Si apareció, recupérelo en Ajustes, Aparatos, e incorpore el archivo otra vez. No se incorporó nada de la visita.
error-handover-ahead = El archivo de entrega lleva anotaciones con una fecha muy adelantada
error-handover-ahead-help = Compare fecha y hora en los dos aparatos. Corrija la que esté mal e incorpore el archivo cuando llegue esa fecha. No se incorporó nada de la visita.
error-handover-opened-twice = Una visita del archivo de entrega es otra aquí
error-handover-opened-twice-help = Dos aparatos dicen que la abrieron, y eso no puede ser. Si la de aquí llegó con una incorporación de la que no se fía, deshágala primero. No se incorporó nada de la visita.
error-unknown-device = Ese aparato no se conoce aquí
error-unknown-device-help = Abra otra vez Ajustes, Aparatos. No se cambió nada.
error-code-differs = El código no es el del aparato
error-code-differs-help = Léalo otra vez en la pantalla del otro aparato, en Ajustes, Aparatos. Si sigue sin coincidir, no se fíe de lo que vino de allí. No se confirmó nada.
error-device-name-too-long = El nombre del aparato es demasiado largo
error-device-name-too-long-help = Hasta 60 caracteres. No se cambió nada.
error-unknown-import = Esa incorporación no se conoce aquí, o ya se deshizo
error-unknown-import-help = Abra otra vez Ajustes, Aparatos. No se cambió nada.

## Qué está probado, en el informe y en el aviso.
field-signed = Prueba
signed-this-device = { $entries ->
    [one] 1 anotación firmada por este aparato.
   *[other] { $entries } anotaciones firmadas por este aparato.
}
signed-confirmed = { $entries ->
    [one] 1 anotación firmada por { $device }, un aparato confirmado.
   *[other] { $entries } anotaciones firmadas por { $device }, un aparato confirmado.
}
signed-not-confirmed = { $entries ->
    [one] 1 anotación firmada por { $device }, un aparato aún sin confirmar.
   *[other] { $entries } anotaciones firmadas por { $device }, un aparato aún sin confirmar.
}
signed-retired = { $entries ->
    [one] 1 anotación firmada por { $device }, un aparato dado de baja.
   *[other] { $entries } anotaciones firmadas por { $device }, un aparato dado de baja.
}
signed-before-signatures = { $entries ->
    [one] 1 anotación de antes de las firmas.
   *[other] { $entries } anotaciones de antes de las firmas.
}
unknown-device = { $entries ->
    [one] 1 anotación vino de un aparato que aquí no está confirmado.
   *[other] { $entries } anotaciones vinieron de un aparato que aquí no está confirmado.
}
unknown-unsigned = { $entries ->
    [one] 1 anotación es de antes de las firmas. Nada prueba quién la escribió.
   *[other] { $entries } anotaciones son de antes de las firmas. Nada prueba quién las escribió.
}
note-device = Una parte de este registro vino de un aparato que aún no hemos confirmado como nuestro.
note-unsigned = Una parte de este registro es anterior a las firmas. No podemos probar quién la escribió.
