### Das Urteil der Werkbank, und die Freigaben ihres Teils.

verdict-bearings-only = Neue Lager in den Sitz, wie er ist.
verdict-skim-and-sleeve = Den Sitz ausdrehen und eine Hülse einpressen.
verdict-replace-housing = Das Gehäuse ersetzen.
verdict-open = Noch kein Urteil: Etwas, das darüber entscheidet, wurde nicht gemessen.
verdict-at-least-bearings-only = Noch ist jeder Ausgang möglich.
verdict-at-least-skim-and-sleeve = Neue Lager allein sind ausgeschlossen.
verdict-at-least-replace-housing = Eine kleinere Reparatur scheidet aus.

verdict-why-cracked = Das Gehäuse ist gerissen.
verdict-why-wall-too-thin = Hat die Hülse ihren Platz, bliebe weniger Wand, als bleiben muss.
verdict-why-out-of-round = Der Sitz ist erwiesen unrund.
verdict-why-roundness-not-decided = Ob der Sitz rund ist, ist nicht entschieden: Messen Sie feiner.
verdict-why-ring-turned = Das Lager hat sich in seinem Sitz mitgedreht.
verdict-why-loose-hot = Das neue Lager säße im heißen Sitz lose.
verdict-why-too-tight = Die Passung würde das Gehäuse zu nahe an seine Streckgrenze bringen.
verdict-why-seat-sound = Der Sitz ist rund, fest und in Ordnung.

verdict-missing = Nicht gemessen oder angesehen: { $gaps }.
verdict-gap-cracks = ob das Gehäuse gerissen ist
verdict-gap-ring-marks = Spuren eines Lagers, das sich in seinem Sitz mitgedreht hat
verdict-gap-diameter = Durchmesser des Sitzes
verdict-gap-roundness = Rundheit des Sitzes, mit ihrer Unsicherheit
verdict-gap-hot-fit = die Passung bei der höchsten Temperatur
verdict-gap-stress = Spannung im Gehäuse durch die Passung
verdict-gap-clean-up = der Schnitt, nach dem die Bohrung rundum sauber ist
verdict-gap-clean-diameter = der Durchmesser, bei dem die Bohrung rundum sauber war
verdict-gap-wall-left = die Wand, wie sie ist, genau genug gemessen, um zu sagen, was bleibt
verdict-gap-wall-least = die Wand, die bleiben muss

verdict-gates = Bestätigen Sie vor der Arbeit die Freigaben für { $sets }.
verdict-gates-machining = das Schneiden
verdict-gates-heat = Erhitzen und Kühlen
verdict-gates-refit = den Wiedereinbau

closing-turns-freely = Prüfen Sie nach dem Zusammenbau, ob sich das Lager von Hand frei dreht, ohne schwere Stelle. Machen Sie ein Foto, tragen Sie es ein. Dreht es sich nicht frei, zerlegen Sie es wieder.

## Freigaben. gates-SATZ nennt den Satz, gates-SATZ-why sagt, warum er die halbe Minute wert ist.
gates-teardown = Bevor etwas Schweres abgebaut wird
gates-teardown-why = Ein Auto auf zwei Säulen kippt, wenn sich sein Gewicht verlagert. Motor und Getriebe stürzen ab, wenn ihre Lager gelöst sind. Nur unterwiesene, befugte Personen; Ihre örtlichen Regeln gehen vor.
gate-teardown-lift-gates-hold = Alles, was vor dem Gang unter das Auto bestätigt wurde, gilt noch: Sperren, Böcke, Motor aus, Schlüssel weit weg.
gate-teardown-stands-and-straps = Böcke stehen, und das Auto ist an der Hebebühne festgezurrt.
gate-teardown-engine-and-gearbox-held = Motor und Getriebe sind von unten gehalten, bevor ihre Lager gelöst werden.
gate-teardown-shaft-marked = Die Stellung der Welle ist an beiden Enden markiert.
gate-teardown-maker-procedure = Die Vorschrift des Herstellers für den Ausbau liegt bereit und wird befolgt.
gate-teardown-high-voltage = Hochvolt, falls vorhanden, wurde von Fachkundigen freigeschaltet, bevor Rohr oder Welle herauskommt.

gates-heat = Bevor etwas erhitzt oder gekühlt wird
gates-heat-why = Hitze verdirbt Dichtungen und macht Leichtmetall unsichtbar weich. Trockeneis und flüssiger Stickstoff verbrennen die Haut und verdrängen Sauerstoff. Nur unterwiesene, befugte Personen; Ihre örtlichen Regeln gehen vor.
gate-heat-limits-known = Die Grenzen von Dichtungen, Fett und Gehäuse sind bekannt, und ein Thermometer ist am Teil.
gate-heat-no-flame = Keine Flamme: Ofen, Heizplatte oder Heißluft, rundum gleichmäßig.
gate-heat-cold-ventilated = Abgedichtete Lager kommen in den Gefrierschrank, bis -40 °C und nicht kälter. Kältere Mittel nur, wo der Hersteller sie erlaubt und Luft frei strömt: Sie verdrängen Sauerstoff.
gate-heat-gloves = Handschuhe gegen Hitze und Kälte sind an, die Augen sind geschützt.

gates-machining = Bevor das Werkzeug dreht
gates-machining-why = Leichtmetallspäne fliegen und schneiden, Magnesiumspäne brennen, und eine drehende Spindel greift Stoff. Nur unterwiesene, befugte Personen; Ihre örtlichen Regeln gehen vor.
gate-machining-clamped = Das Gehäuse ist auf seinem Bezug gespannt und kann sich nicht verschieben.
gate-machining-swarf-guarded = Die Schutzhauben sind zu, Lager und Ölkanäle abgedeckt. Magnesium: scharfe Werkzeuge, kein Wasser, Löscher der Klasse D bereit.
gate-machining-eyes-covered = Der Augenschutz ist auf.
gate-machining-sleeves-tied = Keine Handschuhe an der Spindel. Lose Kleidung, Bänder und Haare sind zurückgebunden.
gate-machining-spindle-stopped = Die Spindel steht still, bevor gemessen wird.

gates-refit = Bevor das Auto wieder auf seine Räder kommt
gates-refit-why = Was gelöst wurde, lockert sich am ehesten wieder. Nur unterwiesene, befugte Personen; Ihre örtlichen Regeln gehen vor.
gate-refit-new-fasteners = Schrauben und Muttern, die der Hersteller neu verlangt, sind neu.
gate-refit-maker-torque = Jede ist mit dem Drehmoment des Herstellers angezogen, in der Reihenfolge des Herstellers.
gate-refit-turns-freely = Die Welle dreht sich von Hand frei.
gate-refit-running-gates = Vor dem ersten Start werden die Freigaben für den laufenden Motor neu bestätigt.

gates-press = Bevor gepresst wird
gates-press-why = Ein Teil, das unter der Presse nachgibt, fliegt wie ein Geschoss. Nur unterwiesene, befugte Personen; Ihre örtlichen Regeln gehen vor.
gate-press-ring-fitted = Die Presse drückt nur auf den Ring, der eingepresst wird.
gate-press-housing-supported = Das Gehäuse liegt gerade auf, direkt unter dem Lagersitz.
gate-press-guarded = Die Presse ist abgeschirmt, niemand steht in ihrer Richtung, und es wird kein Hammer benutzt.
gate-press-force = Das Pressen endet, sobald die Kraft über die berechnete steigt.
verdict-gates-press = das Einpressen
