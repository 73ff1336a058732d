### Die Messuhr an der Welle: was ihre Messwerte sagen, und was ein Urteil darüber verhindert.

gauge-mean = Bewegung am Lager: { $mean }, aus { $count ->
    [one] einem Messwert
   *[other] { $count } Messwerten
 }.
gauge-ratio = 1 mm an der Messuhr ist { $ratio } mm am Lager.
gauge-interval = Mit 95 % Sicherheit liegt sie zwischen { $low } und { $high } (erweiterte Unsicherheit ± { $expanded }, Faktor { $factor }).
gauge-one-reading = Ein einziger Messwert sagt nichts über seine eigene Streuung, darum lässt sich kein Bereich angeben.
gauge-doubtful = { $count ->
    [one] Ein Messwert liegt
   *[other] { $count } Messwerte liegen
 } weit von den anderen. Sehen Sie noch einmal nach Messuhr und Halter; gezählt wurde trotzdem alles.

gauge-limit-maker = Grenze: { $limit }, die Angabe des Herstellers.
gauge-limit-internal-clearance = Vergleichsmaß: { $limit }, die größte Lagerluft eines solchen Lagers vor dem Einbau. Keine amtliche Grenze; die Angabe des Herstellers geht vor.
gauge-limit-none = Keine Grenze ist bekannt: vergleichen, nicht urteilen.
gauge-bands = Bis { $pass } erwiesen innerhalb der Grenze, über { $fail } erwiesen darüber.
gauge-bands-no-pass = Mit dieser Messuhr lässt sich nichts innerhalb der Grenze erweisen; über { $fail } erwiesen darüber.

gauge-decision-proven = Bewegung über der Grenze ist erwiesen.
gauge-decision-none-proven = Erwiesen ist, dass die Bewegung innerhalb der Grenze liegt.
gauge-decision-not-decided = Nicht entschieden: Die Messwerte erweisen keines von beiden.
gauge-decision-compare = Nicht beurteilt: Keine Grenze ist bekannt.

gauge-meaning-felt = Das gilt als gespürte Bewegung: GEFAHR, nicht fahren.
gauge-meaning-beyond-figure = Das gilt als Bewegung über der Herstellerangabe.
gauge-meaning-unsure = Das gilt als unsicher, und unsicher heißt nie gut.
gauge-meaning-replaces-unsure = Das klärt eine unsichere Antwort. Eine Bewegung, die eine Hand gespürt hat, hebt es nie auf.
gauge-meaning-silent = Das fügt dem, was Hände gespürt haben, nichts hinzu. Vergleichen Sie mit einem gleichen Auto oder mit einem früheren Vorgang.

gauge-remedy-more-readings = Würde entscheiden: { $readings } Messwerte insgesamt.
gauge-remedy-finer-gauge = Würde entscheiden: eine Messuhr mit { $resolution } { $unit } Skalenteilung und einer Fehlergrenze von höchstens { $mpe } { $unit }.
gauge-remedy-at-bearing = Würde entscheiden: die Messuhr am Lager selbst.
gauge-remedy-finer-gauge-more-readings = Würde entscheiden: eine Messuhr mit { $resolution } { $unit } Skalenteilung und einer Fehlergrenze von höchstens { $mpe } { $unit }, und { $readings } Messwerte insgesamt.
gauge-remedy-read-again = Noch einmal messen: mindestens { $readings } Messwerte insgesamt, dazwischen loslassen.
gauge-remedy-find-limit = Grenze suchen: die Angabe des Herstellers, oder Bohrung und Luftgruppe des Lagers.
gauge-remedy-find-figure = Suchen Sie die Herstellerangabe für diese Lagerung; ohne sie lässt sich nichts beurteilen.
gauge-remedy-too-near-limit = Weitere Messwerte klären es nicht: Die Bewegung liegt zu nahe an der Grenze. Behandeln Sie sie als unsicher.

gauge-budget = Messunsicherheitsbudget, der größte Beitrag zuerst:
gauge-budget-line = { $source }: { $contribution }, { $share } der Varianz
gauge-source-scatter = Streuung der Messwerte
gauge-source-resolution = Skalenteilung der Messuhr
gauge-source-mpe = Fehlergrenze der Messuhr
gauge-source-alignment = Messuhr nicht in Richtung der Bewegung
gauge-source-gauge-place = Abstand vom Drehpunkt zur Messuhr
gauge-source-bearing-place = Abstand vom Drehpunkt zum Lager

gauge-chances = Diese Messuhr an dieser Stelle übersieht { $missed } der Lagerungen über der Grenze, schlägt bei { $alarm } falschen Alarm und lässt { $undecided } unentschieden, wenn die Bewegungen gleichmäßig zwischen null und der doppelten Grenze liegen.
gauge-trend-growing = Über { $count } Vorgänge wächst sie um { $slope } im Jahr (± { $expanded }).
gauge-trend-shrinking = Über { $count } Vorgänge schrumpft sie um { $slope } im Jahr (± { $expanded }): Fragen Sie, was geändert wurde.
gauge-trend-no-change-shown = Über { $count } Vorgänge zeigt sich keine Änderung ({ $slope } im Jahr, ± { $expanded }); das heißt nicht, dass es keine gibt.
gauge-maker-first = Vorschrift und Angaben des Herstellers gehen allem vor, was hier steht.

## Absagen.
error-gauge-file-unreadable = Die Messuhrdatei ist nicht lesbar
error-gauge-file-unreadable-help = Prüfen Sie, ob die Datei vollständig ist und die Form der Dateien in demo-data/bench hat. Es wurde nichts beurteilt.
error-decimal-comma = Eine Zahl lässt sich auf zwei Arten lesen
error-decimal-comma-help = Ihr Komma oder Punkt kann Dezimalzeichen sein oder Tausender trennen. Hängen Sie eine Null an, etwa 1,2500, oder lassen Sie das Komma oder den Punkt weg.
error-mixed-units = Einheiten sind gemischt
error-mixed-units-help = Geben Sie jede Länge in der einen Einheit der Messung an. 1 Zoll sind 25,4 mm, ein Tausendstel Zoll 0,0254 mm.
error-not-a-number = Eine Zahl fehlt oder ist keine
error-not-a-number-help = Geben Sie ein, was das Messgerät zeigt, in Ziffern, mit Punkt oder Komma.
error-no-readings = Es gibt keine Messwerte
error-no-readings-help = Messen Sie die ganze Bewegung vom Drücken bis zum Ziehen, fünfmal, wenn es geht, und geben Sie jeden Messwert ein.
error-negative-reading = Ein Messwert liegt unter null
error-negative-reading-help = Stellen Sie die Messuhr beim Drücken auf null, und geben Sie den Weg bis zum Ziehen ohne Vorzeichen ein.
error-reading-too-large = Ein Messwert ist länger als der Weg einer Messuhr
error-reading-too-large-help = Prüfen Sie die Einheit: Vielleicht wurden Tausendstel Zoll als Millimeter eingegeben.
error-instrument-refused = Skalenteilung oder Fehlergrenze der Messuhr ist nicht über null
error-instrument-refused-help = Nehmen Sie beide aus dem Kalibrierschein der Messuhr oder dem Datenblatt ihres Herstellers. Keine Messuhr ist ohne Fehler.
error-gauge-at-pivot = Die Messuhr sitzt am Drehpunkt oder zu nahe daran
error-gauge-at-pivot-help = Rücken Sie sie zum Lager hin: Am Drehpunkt bewegt sich die Welle nicht, und nahe daran entscheidet die Stelle alles.
error-bearing-at-pivot = Das Lager sitzt am Drehpunkt
error-bearing-at-pivot-help = Prüfen Sie die drei Stellen längs der Welle. Der Drehpunkt ist das Ende, das bleibt, wo es ist.
error-place-refused = Eine Stelle längs der Welle kann nicht stimmen
error-place-refused-help = Geben Sie Drehpunkt, Messuhr und Lager in Millimetern von einem beliebigen gemeinsamen Nullpunkt ein, und ihre Unsicherheit ohne Vorzeichen.
error-limit-refused = Die Grenze ist nicht über null
error-limit-refused-help = Geben Sie die Herstellerangabe ein, wie sie im Handbuch steht, oder lassen Sie sie weg, wenn sie nicht bekannt ist.
error-bore-not-tabled = Für diese Bohrung steht keine Lagerluft in der Tabelle
error-bore-not-tabled-help = In der Tabelle stehen Bohrungen über 10 und bis 140 mm. Geben Sie stattdessen die Herstellerangabe ein, oder lassen Sie das Lager weg: Dann wird nichts beurteilt.
error-earlier-refused = Ein Ergebnis eines früheren Vorgangs kann nicht stimmen
error-earlier-refused-help = Geben Sie zu jedem an, wie viele Tage es her ist, die Bewegung und die Standardunsicherheit, alle über null.
