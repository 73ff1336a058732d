### Causas: el nombre (cause-ID) y una frase sencilla para el cliente (-about).

cause-loose-seat = Rodamiento suelto en su alojamiento
cause-loose-seat-about = El rodamiento ya no está bien sujeto, y por eso el árbol puede moverse.
cause-worn-bearing = Rodamiento desgastado
cause-worn-bearing-about = El rodamiento está gastado y ya no gira suave.
cause-squeezed-bearing = Rodamiento oprimido por el soporte
cause-squeezed-bearing-about = El soporte no es redondo y aprieta el rodamiento, y por eso le cuesta girar.
cause-housing-damage = Soporte del rodamiento dañado
cause-housing-damage-about = La pieza que sujeta el rodamiento tiene una grieta o está floja.
cause-torn-support-rubber = Goma del soporte rota
cause-torn-support-rubber-about = El anillo de goma que sujeta el rodamiento está rasgado o gastado.
cause-low-idle = Ralentí demasiado bajo
cause-low-idle-about = El motor gira muy lento al ralentí, y eso hace traquetear piezas entre el motor y las ruedas.
cause-early-engagement = El embrague acopla demasiado pronto
cause-early-engagement-about = El embrague agarra a un régimen equivocado del motor, y eso hace traquetear piezas entre el motor y las ruedas.
cause-misfire = Fallo de encendido
cause-misfire-about = Uno o más cilindros del motor fallan.
cause-coupling-or-joint = Acoplamiento o articulación desgastados
cause-coupling-or-joint-about = Una articulación que une el árbol con la pieza de al lado está gastada o va dura.
cause-shaft-damage = Árbol dañado
cause-shaft-damage-about = El árbol tiene un golpe, está doblado o desequilibrado.
cause-loose-shield-or-mount = Chapa o soporte flojos
cause-loose-shield-or-mount-about = Una chapa o un soporte cerca del árbol está flojo o roza.
cause-air-leak = Toma de aire en el motor
cause-air-leak-about = El motor aspira aire por donde no debe, y eso silba.
cause-normal-character = Ninguna de estas causas
cause-normal-character-about = No hay ninguna de las averías de la lista, y puede que este coche suene así.
