### Freigaben: je eine Bedingung, bestätigt vor den Schritten dahinter. gates-SATZ nennt den Satz,
### gates-SATZ-why sagt, warum er die halbe Minute wert ist.

gates-running = Bevor der Motor läuft
gates-running-why = Eine drehende Welle greift Stoff und zieht einen Menschen hinein. Daran sind Mechaniker gestorben. Nur unterwiesene, befugte Personen; Ihre örtlichen Regeln gehen vor.
gate-wheels-on-floor = Alle Räder stehen auf dem Boden, nicht auf der Hebebühne.
gate-brake-and-chocks = Die Feststellbremse ist angezogen und die Räder sind verkeilt.
gate-neutral-or-park = Das Getriebe steht in Leerlauf oder P.
gate-doors-shut = Alle Türen sind zu: Beim Öffnen kann die Kupplungspumpe anlaufen.
gate-nobody-near = Niemand ist unter dem Auto oder nahe an Welle und Rädern.
gate-fumes-out = Das Abgas wird nach draußen geführt, oder die Tore sind offen.
gate-clothing-secured = Lose Kleidung, Bänder und Haare sind zurückgebunden.

gates-creep = Bevor das Auto kriechen darf
gates-creep-why = Ein kriechendes Auto hält nicht an, wenn jemand davor steht. Nur unterwiesene, befugte Personen; Ihre örtlichen Regeln gehen vor.
gate-creep-wheels-on-floor = Alle Räder stehen auf dem Boden, nicht auf der Hebebühne.
gate-creep-chocks-out = Die Keile sind weg und der Weg voraus ist frei.
gate-creep-foot-over-brake = Der Fahrer sitzt auf dem Sitz, den Fuß über der Bremse.
gate-creep-gear-selected = Fahrstufe oder erster Gang ist bei getretener Bremse eingelegt.
gate-creep-driver-ready = Der Fahrer sitzt mit dem Fuß auf der Bremse, und Fahrstufe oder erster Gang ist eingelegt.
gate-creep-brake-off = Die Feststellbremse ist gelöst, und die Keile sind weg.
gate-creep-distance = Zehn Meter davor und fünf dahinter sind frei und bleiben frei.
gate-creep-nobody-around = Niemand ist vor, hinter oder unter dem Auto.
gate-creep-fumes-out = Das Abgas wird nach draußen geführt, oder die Tore sind offen.

gates-lift = Bevor jemand unter das Auto geht
gates-lift-why = Ein Auto, das abrutscht, oder eine Welle, die dreht, warnt nicht vorher. Nur unterwiesene, befugte Personen; Ihre örtlichen Regeln gehen vor.
gate-nobody-in-car = Niemand ist im Auto.
gate-engine-off = Braucht der Leerlauf die Zündung, wurde er zuerst eingelegt. Jetzt ist der Motor aus und der Schlüssel oder Funkschlüssel außer Reichweite. Start-Stopp, Fernstart und Hybrid „bereit“ sind aus.
gate-shaft-still = Die Welle steht still.
gate-lift-rated = Die Hebebühne trägt dieses Auto, und ihre Arme stehen an den Aufnahmepunkten des Herstellers.
gate-lift-inspected = Die Prüfung der Hebebühne ist gültig, und an ihr ist nichts beschädigt.
gate-not-alone = Jemand in Rufweite weiß, dass Sie unter dem Auto sind.
gate-air-suspension = Eine Luftfederung, falls verbaut, ist im Wagenhebermodus oder abgestützt.
gate-shaken-low = Am Auto wurde in geringer Höhe gerüttelt, und es stand fest.
gate-locks-engaged = Die Hebebühne ruht auf ihren Sperren, oder die Böcke stehen.
gate-platform-chocked = Auf einer Fahrbahnbühne sind die Räder vor dem Leerlauf verkeilt. Auf zwei Säulen hängen sie frei und können drehen: niemand berührt sie.
gate-heat-judged = Auspuff und Welle wurden ohne Berühren auf Hitze geprüft (Infrarotthermometer).
gate-eyes-covered = Der Augenschutz ist auf.
gate-high-voltage-untouched = Orange Hochvoltkabel bleiben unberührt: Das ist Arbeit für Fachkundige.

## Unter dem Auto, je nachdem, was es hält.
gate-empty-and-still = Niemand ist im Auto, und die Welle steht still.
gate-lift-fits = Die Hebebühne trägt dieses Auto, ist geprüft und unbeschädigt und hält es an den Punkten des Herstellers. Luftfederung: Wagenhebermodus oder abgestützt.
gate-wheels-chocked = Die Räder am Boden oder auf der Bühne sind in beiden Richtungen verkeilt.
gate-pit-air = In der Grube sind keine Dämpfe: Luft zieht durch, nichts brennt oder funkt.
gate-pit-way-out = Der Weg aus der Grube ist frei, und ihre offenen Kanten sind gesichert. Luftfederung: Wagenhebermodus oder abgestützt.
gate-ramps-fit = Die Auffahrrampen tragen dieses Auto, sind unbeschädigt und stehen fest und eben.
gate-ramps-firm = Das Auto steht am Anschlag der Rampen, und beim Rütteln stand es fest. Luftfederung: Wagenhebermodus oder abgestützt.
gate-stands-fit = Böcke, die dieses Auto tragen, stehen an den Punkten des Herstellers, auf festem, ebenem Boden. Das Auto ruht nicht auf einem Wagenheber.
gate-stands-chocked = Räder, die noch am Boden stehen, sind verkeilt. Luftfederung: Wagenhebermodus oder abgestützt.
gate-guarded = Der Augenschutz ist auf, Auspuff und Welle wurden ohne Berühren auf Hitze geprüft, orange Kabel bleiben unberührt.
