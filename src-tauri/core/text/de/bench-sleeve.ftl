# Die neue Hülse: außen, und ihre Bohrung vor dem Einpressen

fit-sleeve-outside = Für diese Bohrung misst die Hülse außen { $least } bis { $most }: das Kleinste hält noch bei der höchsten Temperatur, das Größte wird bei der niedrigsten noch ertragen.
fit-sleeve-outside-least = Für diese Bohrung misst die Hülse außen mindestens { $least }, um bei der höchsten Temperatur zu halten. Wie viel bei der niedrigsten ertragen wird, ist nicht bekannt: der Außendurchmesser des Gehäuses oder eine Streckgrenze fehlt.
fit-sleeve-outside-unknown = Was die Hülse außen messen darf, ist nicht bekannt: geben Sie die niedrigste und die höchste Temperatur an.
fit-sleeve-none-holds = KEINE HÜLSE aus diesem Werkstoff hält in dieser Bohrung bei der höchsten Temperatur und wird bei der niedrigsten ertragen. Nehmen Sie einen anderen Werkstoff, oder ersetzen Sie das Gehäuse.
fit-sleeve-closes = Beim Einpressen schließt sich ihre Bohrung um { $least } bis { $most }, im Mittel { $mean }.
fit-sleeve-bored = Drehen Sie sie vor dem Einpressen auf { $least } bis { $most }, oder danach auf das fertige Maß.
fit-sleeve-bored-after = Die Bohrung schließt sich um unterschiedlich mehr, als der Sitz zulässt: drehen Sie die Hülse nach dem Einpressen.
