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
error-handover-held-back = Una parte de la visita se dejó fuera
error-handover-held-back-help = Sus últimas entradas son de un aparato retirado aquí, o llevan una fecha muy adelantada. Todo lo demás de la visita se incorporó, y cuenta.
error-handover-milder = Lo que dice una visita cambiaría por un aparato que aquí nadie ha confirmado
error-handover-milder-help = Mire su código en Ajustes, Aparatos en el aparato que la escribió y compárelo primero aquí; después incorpore el archivo otra vez. Hasta entonces la calificación sigue como está. No se incorporó nada de la visita.
error-handover-writers = En el archivo de entrega escribieron más aparatos de los que tiene taller alguno
error-handover-writers-help = No se fíe de él, salvo que alguien a quien conoce sepa decir cómo se hizo. No se incorporó nada de la visita.
error-unknown-device = Ese aparato no se conoce aquí
error-unknown-device-help = Abra otra vez Ajustes, Aparatos. No se cambió nada.
error-code-differs = El código no es el del aparato
error-code-differs-help = Léalo otra vez en la pantalla del otro aparato, en Ajustes, Aparatos. Si sigue sin coincidir, no se fíe de lo que vino de allí. No se confirmó nada.
error-no-device-in-photo = En la foto no se encontró el código de ningún aparato
error-no-device-in-photo-help = Abra Ajustes, Aparatos en el otro aparato, muestre allí su código QR, llene con él media imagen e inténtelo de nuevo; o compare las cifras. No se ha confirmado nada.
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
note-proven = Cada parte de este registro está firmada por un aparato nuestro y sigue como se escribió.
note-device = Una parte de este registro vino de un aparato que aún no hemos confirmado como nuestro.
note-unsigned = Una parte de este registro es demasiado antigua para llevar firma. No podemos probar quién la escribió.

## En las pantallas.
ui-devices = Aparatos
ui-devices-about = Cada aparato firma lo que se escribe en él. Compare su código una vez y se sabrá que lo que viene de él es suyo.
ui-this-device = Este aparato
ui-this-device-about = Enseñe este código a quien lo compare en otro aparato, o léaselo.
ui-device-qr = Mostrarlo como código QR
ui-device-qr-of = Código QR de la clave de este aparato
ui-device-qr-about = Otro aparato lo lee en Ajustes, Aparatos, en lugar de comparar cifras.
ui-other-devices = Otros aparatos
ui-other-devices-none = Ninguno por ahora. Un aparato aparece aquí en cuanto se incorpora algo de él.
ui-device-unnamed = Aparato sin nombre
ui-device-met = Visto por primera vez: { $when }
ui-trust-this-device = Este aparato
ui-trust-confirmed = Confirmado
ui-trust-not-confirmed = Aún sin confirmar
ui-trust-retired = Dado de baja: no entra nada nuevo de él
ui-trust-before-signatures = De antes de las firmas
ui-from-confirmed = Escrito en { $device }
ui-from-not-confirmed = De un aparato aún sin confirmar
ui-from-retired = De un aparato dado de baja
ui-from-before-signatures = Escrito antes de las firmas
ui-compare = Comparar su código
ui-compare-about = Abra Ajustes, Aparatos en el otro aparato. ¿Muestra allí «Este aparato» el mismo código, cifra por cifra?
ui-compare-scan = Leer su código QR
ui-compare-scanning = Buscando su código …
ui-compare-same = Es el mismo
ui-compare-differs = No coincide
ui-compare-differs-told = Entonces esto no vino del aparato que tiene delante. No se fíe. No se confirmó nada.
ui-device-name = Nombre del aparato
ui-device-name-keep = Guardar el nombre
ui-device-retire = Darlo de baja
ui-device-retire-about = Para un aparato perdido o sustituido. Lo que está aquí se queda; no entra nada nuevo de él.
ui-device-take-over = Este aparato lo ha sustituido
ui-device-take-over-about = Para un teléfono propio que se perdió o se cambió y cuya copia de seguridad se incorporó aquí. Lo que escribió cuenta como confirmado; de él no entra nada nuevo.
ui-device-reset = Empezar de cero con él
ui-device-reset-about = Cuenta como aún sin confirmar, como la primera vez. Lo decidido antes queda escrito.
ui-decided = Lo que se decidió
ui-decided-confirmed = Confirmado por { $by }, { $when }
ui-decided-named = Llamado «{ $name }» por { $by }, { $when }
ui-decided-retired = Dado de baja por { $by }, { $when }
ui-decided-reset = Empezado de cero por { $by }, { $when }
ui-imports = Lo que se incorporó
ui-imports-none = Aún no se incorporó ningún archivo.
ui-import-brought = { $visits ->
    [one] 1 visita, { $when }
   *[other] { $visits } visitas, { $when }
}
ui-import-was-taken-back = Deshecho: { $when }
ui-import-back = Deshacer esta incorporación
ui-import-back-about = Lo que trajo se deja fuera otra vez y sus visitas se leen como antes. Una visita que este aparato continuó se queda como está.
ui-import-back-now = Deshacerla
ui-import-gone = { $visits ->
    [one] 1 visita salió otra vez de la lista.
   *[other] { $visits } visitas salieron otra vez de la lista.
}
ui-import-restored = { $visits ->
    [one] 1 visita se lee como antes.
   *[other] { $visits } visitas se leen como antes.
}
ui-import-stayed = { $visits ->
    [one] 1 visita se queda: este aparato la continuó.
   *[other] { $visits } visitas se quedan: este aparato las continuó.
}
ui-preview = ¿Incorporar esto?
ui-preview-looking = Mirando qué cambiaría …
ui-preview-made = Creado { $when }, según el reloj de ese aparato
ui-preview-brings = { $entries ->
    [one] Trae 1 anotación nueva.
   *[other] Trae { $entries } anotaciones nuevas.
}
ui-preview-mends = { $entries ->
    [one] 1 anotación dañada aquí volvería a estar entera.
   *[other] { $entries } anotaciones dañadas aquí volverían a estar enteras.
}
ui-preview-nothing = Todo lo que trae ya está aquí.
ui-preview-is-new = Nueva aquí
ui-preview-milder = Su calificación sería más leve
ui-preview-now = Ahora
ui-preview-then = Después
ui-preview-apart = { $visits ->
    [one] 1 visita del archivo se queda fuera:
   *[other] { $visits } visitas del archivo se quedan fuera:
}
ui-preview-take = Incorporar
ui-preview-leave = No incorporar
ui-preview-left = No se incorporó nada.
