# El casquillo nuevo: por fuera, y su interior antes de meterlo

fit-sleeve-outside = Para este alojamiento el casquillo mide por fuera de { $least } a { $most }: lo menor aún aguanta a la temperatura más alta, lo mayor aún se soporta a la más baja.
fit-sleeve-outside-least = Para este alojamiento el casquillo mide por fuera al menos { $least }, para aguantar a la temperatura más alta. Cuánto se soporta a la más baja no se sabe: falta el exterior del soporte o un límite elástico.
fit-sleeve-outside-unknown = No se sabe cuánto puede medir el casquillo por fuera: dé la temperatura más baja y la más alta.
fit-sleeve-none-holds = NINGÚN CASQUILLO de este material aguanta en este alojamiento a la temperatura más alta y se soporta a la más baja. Tome otro material, o cambie el soporte.
fit-sleeve-closes = Al entrar a presión su interior se cierra de { $least } a { $most }, { $mean } de media.
fit-sleeve-bored = Tornéelo a { $least } hasta { $most } antes de meterlo a presión, o a la medida final después.
fit-sleeve-bored-after = El cierre varía más de lo que el alojamiento permite: tornee el casquillo después de meterlo.
