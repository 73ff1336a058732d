### El registro de reparación.

bore-line-size = Diámetro medio { $size }, ± { $expanded }.
bore-line-size-unknown = Diámetro medio no medido.
bore-line-ovality = Mayor ovalidad { $value }, ± { $expanded }.
bore-line-roundness = Mayor desviación de redondez { $value } (zona mínima), ± { $expanded }.
bore-line-roundness-least = Desviación de redondez de al menos { $value }, ± { $expanded }: esta forma de medir no ve algunas formas.
bore-line-taper-wider = Más ancho desde la cara hacia dentro en { $value }, ± { $expanded }.
bore-line-taper-narrower = Más estrecho desde la cara hacia dentro en { $value }, ± { $expanded }.
bore-line-taper-none = No se distingue conicidad: { $value }, ± { $expanded }.

repair-title = Registro de reparación: alojamiento del rodamiento del árbol de transmisión
repair-foot = Registro de reparación, visita { $visit }. Lo que no está anotado aquí no se midió.
repair-bore-found = Agujero tal como se encontró
repair-bore-finished = Agujero terminado
repair-bore-caption = { $depth } de profundidad, la menos redonda. Desviación dibujada { $times } veces mayor; a trazos: redondo. { $turn ->
    [clockwise] Los ángulos cuentan en sentido horario desde 0°.
   *[counter] Los ángulos cuentan en sentido antihorario desde 0°.
    }
repair-bore-alt = Dibujo polar del agujero a { $depth } de profundidad, con su desviación respecto al círculo dibujada { $times } veces mayor. Las frases de al lado dan sus cifras.
repair-heading-gates = Condiciones confirmadas
repair-heading-plan = Plan de repaso
repair-heading-passes = Pasadas dadas
repair-heading-fit = Ajuste
repair-heading-ring = Rodamiento girado a mano tras el montaje
repair-heading-notes = Tornillería y pares de apriete
repair-not-recorded = No anotado.
repair-gate = { $gate } ({ $by }, { $at })
repair-pass = Pasada { $pass }: la cuchilla tocó { $contact } ({ $by }, { $at }).
repair-pass-measured = Pasada { $pass }: la cuchilla tocó { $contact }; diámetro { $diameter } ({ $by }, { $at }).
repair-contact-none = en ninguna parte
repair-contact-partly = en algunas partes
repair-contact-all-round = todo alrededor
repair-ring-free = Gira libre ({ $by }, { $at }).
repair-ring-stiff = GIRA DURO ({ $by }, { $at }). El alojamiento aprieta el rodamiento: esta reparación no durará.
repair-ring-rough = GIRA ÁSPERO ({ $by }, { $at }). El rodamiento está dañado: esta reparación no durará.
repair-note = { $text } ({ $by }, { $at })
repair-photo-bench-found = Agujero tal como se encontró
repair-photo-bench-finished = Agujero terminado
repair-photo-bench-ring = Rodamiento girado a mano
repair-photo-pass = Tras la pasada { $pass }
repair-photo-alt = Foto del trabajo: { $caption }.
repair-caution-rating = Este registro no es una calificación: después de la reparación, busque juego a mano antes de que el coche circule. Esa prueba es una visita aparte.
repair-caution-maker = El procedimiento, las medidas y los pares de apriete del fabricante van antes que este registro, y también la ley local.
repair-caution-measured = Las cifras valen para los lugares y ángulos medidos, con la incertidumbre que figura al lado.
repair-caution-torque = Tornillería nueva, al par del fabricante. Un par escrito aquí es el que el taller dice haber usado.

entry-gauged = Comparador leído
entry-bore-found = Agujero medido tal como se encontró
entry-bore-finished = Agujero terminado medido
entry-housing-looked = Soporte mirado en el banco
entry-pass-cut = Pasada dada
entry-fit-given = Ajuste calculado
entry-ring-turned = Rodamiento girado a mano
entry-bench-noted = Nota del banco
