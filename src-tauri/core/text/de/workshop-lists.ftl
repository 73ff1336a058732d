# Die eigenen Hülsen und Messmittel der Werkstatt

stock-sleeve = Hülse aus { $material }, außen { $outside }, Bohrung { $bore }
stock-open = { $sleeve }: ob sie passt, ist nicht bekannt. Rechnen Sie die Passung mit den Temperaturen und dem Außendurchmesser des Gehäuses aus.
stock-fits = { $sleeve }: PASST in die vorhandene Bohrung, die { $least } bis { $most } haben darf, wenn die Wand es zulässt.
stock-bore-to = { $sleeve }: Drehen Sie das Gehäuse dafür auf { $least } bis { $most } aus, wenn die Wand es zulässt.
stock-bore-too-wide = { $sleeve }: zu klein. Die Bohrung darf höchstens { $most } haben und ist weiter oder muss es werden.
stock-too-thin = { $sleeve }: zu dünn, wenn sie für das Lager ausgedreht ist.
stock-no-wall = { $sleeve }: zu groß, vom Gehäuse bliebe keine Wand.
stock-own-bore-too-wide = { $sleeve }: Ihre eigene Bohrung ist für dieses Lager zu weit.
stock-none-holds = { $sleeve }: Kein Übermaß hält heiß und wird kalt ertragen.
stock-wall-too-thin = { $sleeve }: zu groß, dem Gehäuse bliebe weniger Wand, als es behalten muss.
stock-housing-replaced = { $sleeve }: Keine Hülse kommt hinein, das Gehäuse ist zu ersetzen.

ui-stock = Hülsen im Regal
ui-stock-about = Maße, die Sie haben oder kaufen. Die Werkbank sagt, welche davon in das vorliegende Gehäuse passt.
ui-stock-empty = Die Werkstatt hat keine eigenen Hülsen eingetragen.
ui-stock-take = In die Passung übernehmen
ui-stock-outside = Außendurchmesser, mm
ui-stock-bore = Bohrung, wie gekauft, mm
ui-stock-more = Noch eine Hülse

ui-instruments = Messmittel
ui-instruments-about = Womit Sie messen. Wählen Sie es an der Werkbank, dann sind Schritt und Fehler eingetragen; ist seine Kalibrierung abgelaufen, wird das gesagt.
ui-instrument-name = Name oder Nummer
ui-instrument-resolution = Kleinster Schritt, mm
ui-instrument-mpe = Zulässiger Fehler, mm
ui-instrument-repeatability = Streuung wiederholter Ablesungen, mm (darf leer bleiben)
ui-instrument-calibrated = Kalibriert am
ui-instrument-due = Gültig bis
ui-instrument-more = Noch ein Messmittel
ui-instrument-which = Messmittel der Werkstatt
ui-instrument-none = Ein anderes
ui-instrument-overdue = DIE KALIBRIERUNG GILT HEUTE NICHT (eingetragen bis { $due }). Lassen Sie kalibrieren, bevor Sie danach entscheiden.
ui-instrument-no-date = KEINE KALIBRIERUNG BEKANNT. Lassen Sie kalibrieren, bevor Sie danach entscheiden.

instrument-line-due = Gemessen mit { $name }, kalibriert am { $calibrated }, gültig bis { $due }.
instrument-line-overdue = GEMESSEN MIT { $name }, DESSEN KALIBRIERUNG ABGELAUFEN WAR, am { $due }: Der Fehler kann größer sein, als die Unsicherheit sagt.
instrument-line-no-date = GEMESSEN MIT { $name }, VON DEM KEINE GÜLTIGE KALIBRIERUNG BEKANNT IST: Der Fehler kann größer sein, als die Unsicherheit sagt.

error-workshop-sleeve = Eine Hülse des Bestands ist nicht zu lesen
error-workshop-sleeve-help = Geben Sie Werkstoff, Außendurchmesser und die kleinere Bohrung in Millimetern an, von 1 bis 1.000; höchstens 40 Hülsen. Nichts wurde geändert.
error-workshop-instrument = Ein Messmittel ist nicht zu lesen
error-workshop-instrument-help = Geben Sie jedem einen eigenen Namen, seinen Schritt und seinen zulässigen Fehler in Millimetern, über 0 und bis 1; der Tag der Kalibrierung liegt vor dem Tag, bis zu dem sie gilt. Höchstens 20 Messmittel. Nichts wurde geändert.
error-unknown-instrument = Die Werkstatt hat kein Messmittel dieses Namens
error-unknown-instrument-help = Tragen Sie es bei den Angaben der Werkstatt ein, oder geben Sie Schritt und Fehler von Hand an.
