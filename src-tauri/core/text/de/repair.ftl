### Der Reparaturnachweis.

bore-line-size = Mittlerer Durchmesser { $size }, ± { $expanded }.
bore-line-size-unknown = Mittlerer Durchmesser nicht gemessen.
bore-line-ovality = Größte Ovalität { $value }, ± { $expanded }.
bore-line-roundness = Größte Rundheitsabweichung { $value } (Mindestzone), ± { $expanded }.
bore-line-roundness-least = Rundheitsabweichung mindestens { $value }, ± { $expanded }: Diese Messart ist für manche Formen blind.
bore-line-taper-wider = Von der Stirnfläche nach innen weiter um { $value }, ± { $expanded }.
bore-line-taper-narrower = Von der Stirnfläche nach innen enger um { $value }, ± { $expanded }.
bore-line-taper-none = Keine Kegeligkeit nachzuweisen: { $value }, ± { $expanded }.

repair-title = Reparaturnachweis: Lagersitz der Kardanwelle
repair-foot = Reparaturnachweis, Vorgang { $visit }. Was hier nicht eingetragen ist, wurde nicht gemessen.
repair-bore-found = Bohrung, wie vorgefunden
repair-bore-finished = Bohrung, fertig bearbeitet
repair-bore-caption = Tiefe { $depth }, die am wenigsten runde. Abweichung { $times }-fach vergrößert gezeichnet; gestrichelt: rund. { $turn ->
    [clockwise] Winkel zählen im Uhrzeigersinn ab 0°.
   *[counter] Winkel zählen gegen den Uhrzeigersinn ab 0°.
    }
repair-bore-alt = Polardiagramm der Bohrung in { $depth } Tiefe, ihre Abweichung von der Rundheit { $times }-fach vergrößert gezeichnet. Die Sätze daneben nennen ihre Zahlen.
repair-heading-gates = Bestätigte Freigaben
repair-heading-plan = Ausdrehplan
repair-heading-passes = Geschnittene Durchgänge
repair-heading-fit = Passung
repair-heading-ring = Lager nach dem Zusammenbau von Hand gedreht
repair-heading-notes = Schrauben und Drehmomente
repair-not-recorded = Nicht eingetragen.
repair-gate = { $gate } ({ $by }, { $at })
repair-pass = Durchgang { $pass }: Das Werkzeug griff { $contact } ({ $by }, { $at }).
repair-pass-measured = Durchgang { $pass }: Das Werkzeug griff { $contact }; Durchmesser { $diameter } ({ $by }, { $at }).
repair-contact-none = nirgends
repair-contact-partly = stellenweise
repair-contact-all-round = rundum
repair-ring-free = Es dreht sich frei ({ $by }, { $at }).
repair-ring-stiff = ES GEHT SCHWER ({ $by }, { $at }). Der Sitz drückt auf das Lager: Diese Reparatur hält nicht.
repair-ring-rough = ES LÄUFT RAU ({ $by }, { $at }). Das Lager ist beschädigt: Diese Reparatur hält nicht.
repair-note = { $text } ({ $by }, { $at })
repair-photo-bench-found = Bohrung, wie vorgefunden
repair-photo-bench-finished = Bohrung, fertig bearbeitet
repair-photo-bench-ring = Lager von Hand gedreht
repair-photo-pass = Nach Durchgang { $pass }
repair-photo-alt = Foto der Arbeit: { $caption }.
repair-caution-rating = Dieser Nachweis ist keine Einstufung: Nach der Reparatur von Hand nach Spiel fühlen, bevor das Auto fährt. Diese Prüfung ist ein eigener Vorgang.
repair-caution-maker = Vorschrift, Maße und Drehmomente des Herstellers gehen diesem Nachweis vor, ebenso Ihr örtliches Recht.
repair-caution-measured = Zahlen gelten für die Stellen und Winkel, die gemessen wurden, mit der Unsicherheit, die daneben steht.
repair-caution-torque = Neue Schrauben und Muttern, mit dem Drehmoment des Herstellers. Ein Drehmoment, das hier steht, ist das, was die Werkstatt nach eigener Angabe benutzt hat.

entry-gauged = Mit der Messuhr gemessen
entry-bore-found = Bohrung gemessen, wie vorgefunden
entry-bore-finished = Bohrung gemessen, fertig bearbeitet
entry-housing-looked = Gehäuse auf der Werkbank angesehen
entry-pass-cut = Durchgang geschnitten
entry-fit-given = Passung ausgerechnet
entry-ring-turned = Lager von Hand gedreht
entry-bench-noted = Notiz von der Werkbank
