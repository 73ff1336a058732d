# The sheet for the customer: the bore before and after

ui-paper-before-after = Para el cliente
owner-bore-title = El agujero que sujeta su rodamiento, antes y después
owner-bore-about = El rodamiento va en un agujero redondo. Donde ya no es redondo, el rodamiento se afloja en él. Los dibujos muestran el agujero tal como se midió.
owner-bore-before = Antes del trabajo
owner-bore-after = Después del trabajo
owner-bore-not-measured = SIN MEDIR. No se sabe nada de su forma.
owner-bore-out = Le faltan { $value } para ser redondo. Límite: { $limit }.
owner-bore-out-least = Le faltan al menos { $value } para ser redondo: no se pudo ver todo. Límite: { $limit }.
owner-bore-out-no-limit = Le faltan { $value } para ser redondo. Aún no se conoce un límite.
owner-bore-out-least-no-limit = Le faltan al menos { $value } para ser redondo: no se pudo ver todo. Aún no se conoce un límite.
owner-bore-within = Está dentro del límite.
owner-bore-beyond = ESTÁ FUERA DEL LÍMITE.
owner-bore-unsure = Está demasiado cerca del límite, o se vio demasiado poco, para decir de qué lado queda.
owner-bore-scale = Los dos están dibujados a la misma escala: lo que no es redondo se muestra { $times } veces mayor. A trazos: un agujero redondo.
owner-bore-alt = { $side }: el agujero dibujado a partir de sus medidas. La frase de debajo da la cifra.
owner-bore-heading-done = Qué se hizo
owner-bore-done-replace = La pieza que sujeta el rodamiento no se puede salvar y hay que cambiarla por otra.
owner-bore-done-sleeve-out = Se sacó un casquillo viejo.
owner-bore-done-cut = El agujero gastado se torneó otra vez redondo, en { $passes ->
    [one] una pasada
   *[other] { $passes } pasadas
    }.
owner-bore-done-cut-partly = El agujero gastado se torneó, en { $passes ->
    [one] una pasada
   *[other] { $passes } pasadas
    }, y aún no está limpio todo alrededor.
owner-bore-done-sleeve = Se montó un casquillo nuevo que sujeta el rodamiento.
owner-bore-done-turns = Ya montado y en frío, el rodamiento se giró a mano y gira libre.
owner-bore-done-does-not-turn = EL RODAMIENTO NO GIRA LIBRE. Este trabajo no está terminado.
owner-bore-done-not-turned = No consta que el rodamiento gire libre. Este trabajo no está terminado.
owner-bore-caution-check = Esta hoja no dice que el coche sea seguro. Después del trabajo el taller busca movimiento a mano y le dice lo que encuentra.
owner-bore-caution-limit = El límite es la regla de este taller para un agujero de esta medida. La cifra del fabricante va primero.
owner-bore-caution-record = El registro de reparación tiene todas las cifras. Pídalo.
owner-bore-foot = Para el cliente, visita { $visit }. Lo que no está escrito aquí no se midió.
