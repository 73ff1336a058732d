### Un coche que ya estuvo aquí: qué lo trae, en qué condiciones se oye el ruido y qué se encontró antes.

occasion = Qué lo trae
occasion-complaint = El síntoma, por primera vez
occasion-after-repair = Revisión tras la reparación
occasion-comeback = El ruido ha vuelto tras una reparación
occasion-said-after-repair = Esta visita es una revisión tras una reparación.
occasion-said-comeback = El ruido volvió tras una reparación.
conditions = Se oye a
conditions-about = Con la misma velocidad, marcha y temperatura la próxima vez, el antes y el después se pueden comparar.
conditions-speed = Velocidad
conditions-gear = Marcha
conditions-engine-warm = Motor caliente
conditions-engine-cold = Motor frío
speed-km = { $value } km/h
speed-miles = { $value } mph
conditions-gear-said = marcha { $gear }
conditions-again = Como el { $day }: { $said }
field-conditions = Se oye a
field-occasion = Visita
before-title = Visitas anteriores de este coche
before-known = { $count ->
    [one] Este coche ya estuvo aquí una vez
   *[other] Este coche ya estuvo aquí { $count } veces
}
before-take-car = Copiar los datos del coche
before-taken = Copiados. Compruebe si siguen siendo ciertos.
before-step = El { $day }: { $said }
before-none = En este aparato no hay ninguna visita anterior de este coche. Se busca por bastidor o matrícula.
before-broken = El registro de esta visita está dañado. Lo que dice no prueba nada.
before-not-checked = No se comprobó nada a mano.
before-now = Esta visita
before-curve = Movimiento leído con el reloj, visita a visita, con su incertidumbre
before-curve-about = { $place }: cada punto es una visita y la barra su incertidumbre. Una reparación entre dos puntos empieza de nuevo: se lee otro rodamiento u otro alojamiento.
before-movement = { $place }: { $movement }
before-repaired = Reparado aquí
before-open = Abrir esa visita
intake-warm-from = Soporte caliente a partir de, °C (fabricante)
before-outcome = Resultó ser: { $causes }
