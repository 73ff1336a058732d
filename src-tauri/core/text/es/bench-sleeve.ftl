# El casquillo nuevo: por fuera, y su interior antes de meterlo

fit-sleeve-outside = Para este alojamiento el casquillo mide por fuera de { $least } a { $most }: lo menor aún aguanta el día más caliente, lo mayor aún se soporta el más frío.
fit-sleeve-outside-least = Para este alojamiento el casquillo mide por fuera al menos { $least }, para aguantar el día más caliente. Cuánto se soporta el más frío no se sabe: falta el exterior del soporte o un límite elástico.
fit-sleeve-outside-unknown = No se sabe cuánto puede medir el casquillo por fuera: dé la temperatura más baja y la más alta.
fit-sleeve-none-holds = NINGÚN CASQUILLO de este material aguanta en este alojamiento el día más caliente y se soporta el más frío. Tome otro material, o cambie el soporte.
fit-sleeve-closes = Al entrar a presión su interior se cierra de { $least } a { $most }, { $mean } de media.
fit-sleeve-bored = Tornéelo a { $least } hasta { $most } antes de meterlo a presión, o a la medida final después.
fit-sleeve-bored-after = El cierre varía más de lo que el alojamiento permite: tornee el casquillo después de meterlo.
