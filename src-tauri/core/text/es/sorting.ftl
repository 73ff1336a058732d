### La clasificación: por qué toca una prueba o ninguna, sorpresas, decisiones y qué cuesta equivocarse.

next-informs = Esta prueba es la que más diría.
next-rating = Esta prueba aún podría agravar la calificación.
stop-nothing-changes = Ninguna prueba aún abierta cambiaría lo que hay que hacer.
stop-not-worth = Lo que sigue abierto diría demasiado poco para el riesgo que tiene.
stop-all-done = Todas las pruebas que se pueden hacer están hechas.

surprise-signs-disagree = Las señales no concuerdan: ninguna causa de la lista las explica juntas. Revise otra vez las respuestas nombradas aquí.
surprise-not-listed = Puede haber detrás algo que no está en esta lista: las causas de la lista explican poco de lo encontrado.

judgement-warning-or-caution = ¿Retener el coche o dejarlo circular hasta la reparación?
judgement-bearing-now-or-watch = ¿Reparar ya el rodamiento o vigilarlo?
judgement-repair-now-or-watch = ¿Reparar ya esta causa o vigilarla?

course-hold-back = No conducirlo hasta repararlo
course-drive-until-repair = Dejarlo circular hasta la reparación
course-repair-now = Reparar ya
course-watch = Vigilarlo

loss-held-back-in-vain = el coche estuvo parado sin necesidad
loss-driven-on-a-bad-bearing = se circuló con un rodamiento malo
loss-bearing-repair-in-vain = el rodamiento se reparó para nada
loss-bearing-fault-left = la avería del rodamiento siguió y dañó su soporte y el árbol
loss-repair-in-vain = la reparación fue para nada
loss-fault-left = la avería siguió

entry-opinion-given = Opinión dada
entry-outcome-confirmed = Resultado confirmado

layout-file-refused = Un archivo de disposición de este taller no sirve. Corríjalo o sáquelo de la carpeta layouts; las demás disposiciones funcionan.
knowledge-row-refused = Una fila del saber propio de este taller no sirve. Corríjala o sáquela de la carpeta knowledge; las demás filas funcionan.

finding-opinion = { $by } cree: { $cause }. { $reason }
finding-outcome = Se comprobó que era: { $causes }, según { $by } ({ $at }).
