### Die Werkbank: Form einer Bohrung und der Plan, sie auszudrehen.
### bore-... und skim-... sind Hinweise zu den Zahlen; error-bore-... sind Absagen.

bore-at-line = { $phrase } (Zeile { $line })

## Was eine Messart nicht sehen kann

bore-two-point-blind = Die Zweipunktmessung sieht drei, fünf oder jede andere ungerade Zahl von Bögen (Gleichdick) nicht: Eine Bohrung mit drei Bögen von 16 µm kann als rund gemessen werden. Fahren Sie mit einer Messuhr rundum, oder nehmen Sie Koordinaten auf, bevor Sie sie rund nennen.
bore-three-point-blind = Die Dreipunktmessung mit Messpunkten alle 120 Grad sieht Bögen nur in Vielfachen von drei: drei, sechs, neun. Ein Oval wird als rund gemessen. Messen Sie mit zwei Punkten, oder fahren Sie mit einer Messuhr rundum, bevor Sie sie rund nennen.
bore-no-centre = Dieses Messgerät weiß nicht, wo die Achse liegt. Ob die Bohrung versetzt ist oder schief steht, ist nicht gemessen.
bore-size-unknown = Die Messuhr wurde nie auf ein bekanntes Maß eingestellt, darum ist der Durchmesser nicht gemessen. Form und Kegeligkeit sind es.
bore-one-depth = Eine einzige Tiefe sagt nichts über die Kegeligkeit. Messen Sie mindestens an beiden Enden des Sitzes.
bore-one-angle = Zu wenige Winkel, um Bögen zu erkennen: ein mittleres Maß und nicht mehr.
bore-lobes-beyond = { $angles } Winkel erkennen bis zu { $lobes } Bögen. Mehr Bögen, etwa Rattermarken, sind von weniger Bögen nicht zu unterscheiden.
bore-gap = Die größte Lücke zwischen den Winkeln ist { $gap } Grad, in { $depth } Tiefe. Ein Grat oder eine Delle in einer Lücke ist nicht gemessen.
bore-flagged = Der Messwert bei { $angle } Grad in { $depth } Tiefe passt nicht zu den anderen. Er zählt trotzdem mit. Reinigen Sie die Stelle, messen Sie noch einmal, und ersetzen Sie ihn nur, wenn der neue Messwert abweicht.
bore-few-for-flagging = Bei weniger als { $fewest } Winkeln in einer Tiefe ist ein Fehler in einem Messwert nicht von der Form zu unterscheiden.
bore-below-floor = In { $depth } Tiefe ist die Rundheitsabweichung nicht größer, als eine vollkommene Bohrung sie mit diesem Messgerät zeigen würde, etwa { $floor }. Um mehr zu sagen, braucht es ein feineres Messgerät.
bore-repeatability-untried = Es gibt keine wiederholten Messwerte an einer Stelle, darum steckt die Streuung der Hand nicht in der Unsicherheit. Messen Sie eine Stelle zehnmal und geben Sie die Standardabweichung an.

## Messunsicherheitsbudget eines Messwerts

bore-budget-resolution = Auflösung: ein Schritt durch die Wurzel aus 12 (GUM F.2.2.1)
bore-budget-mpe = Fehlergrenze (MPE): durch die Wurzel aus 3 (GUM 4.3.7). Für das Maß allen Messwerten gemeinsam, für die Form jedem Messwert eigen
bore-budget-repeatability = Wiederholbarkeit: Standardabweichung wiederholter Messwerte (GUM 4.2)
bore-budget-reading = Ein Messwert: die Wurzel aus der Summe der Quadrate (GUM 5.1.2). Ergebnisse tragen das Doppelte ihrer Standardunsicherheit, etwa 95 %

## Ausdrehplan

skim-verdict-skim = Rundum sauber nach Durchgang { $passes }, und die Wand, die bleibt, reicht aus, Unsicherheit eingerechnet. Planen Sie bis Durchgang { $allow }; hören Sie bei Durchgang { $safe } auf, ganz gleich, wo das Werkzeug gegriffen hat.
skim-verdict-skim-ample = Rundum sauber nach Durchgang { $passes }, und die Wand, die bleibt, reicht bei weitem aus, Unsicherheit eingerechnet. Planen Sie bis Durchgang { $allow }; ist der Sitz dann nicht rundum sauber, messen Sie neu, bevor Sie weiter abtragen.
skim-verdict-wall-unknown = Rundum sauber nach Durchgang { $passes }; planen Sie bis Durchgang { $allow }. Ob die Wand, die bleibt, ausreicht, ist nicht bekannt: Messen Sie vor dem ersten Schnitt die dünnste Wand, und fragen Sie den Hersteller, wie viel mindestens bleiben muss.
skim-verdict-wall-undecided = Rundum sauber nach Durchgang { $passes }, doch die Wand, die bleibt, liegt innerhalb ihrer Unsicherheit um das geforderte Mindestmaß. Darauf nicht schneiden: Messen Sie Wand und Bohrung mit einem feineren Messgerät.
skim-verdict-scrap = Aufhören und verschrotten: Nach Durchgang { $passes } wäre die Bohrung sauber, aber die Wand zu dünn. Der letzte Durchgang, der sicher genug übrig lässt, ist Nummer { $safe }.
skim-at-least = Die Zweipunktmessung sieht ungerade Bögen nicht, darum ist der Schnitt mindestens so groß. Fahren Sie mit einer Messuhr rundum, oder nehmen Sie Koordinaten auf, bevor Sie sich darauf verlassen.
skim-axis-moves = Die freie Achse liegt { $shift } neben dem Bezug. Lager und Welle wandern mit: Prüfen Sie das vor dem Schnitt an der Angabe des Herstellers.
skim-axis-unseen = Der Plan nimmt eine gerade Achse durch die Mitte jeder Tiefe an. Wo sie liegt, weiß dieses Messgerät nicht.
skim-flagged = Ein Messwert passte nicht zu den anderen und steckt in diesem Plan. Messen Sie ihn vor dem Schnitt noch einmal.
skim-size-unknown = Die Messuhr wurde nie auf ein bekanntes Maß eingestellt, darum nennt der Plan Schnitte und keine Durchmesser.
skim-between = Geplant ist nur für die Tiefen und Winkel, die gemessen wurden. Beobachten Sie an der echten Bohrung, wo das Werkzeug greift: Sauber ist sie, wenn das Werkzeug rundum gegriffen hat.
skim-caution = Späne abschirmen, Augenschutz tragen, spannen, ohne das Gehäuse zu verbiegen, und kalt messen. Die Vorschrift des Herstellers geht diesem Plan vor.

## Absagen

error-bore-empty = Die Bohrungsdatei enthält keine Messwerte
error-bore-empty-help = Schreiben Sie eine Kopfzeile, eine Zeile mit Spaltennamen und darunter je Zeile einen Messwert.
error-bore-no-header = Die Bohrungsdatei beginnt nicht mit ihrer Kopfzeile
error-bore-no-header-help = Beginnen Sie die erste Zeile mit dem Wort bore, dann kind, unit, resolution und mpe, etwa bore,kind=two-point,unit=mm,resolution=0.001,mpe=0.004.
error-bore-header-word = Ein Wort der Kopfzeile ist unbekannt, steht doppelt oder gehört nicht zu dieser Messart
error-bore-header-word-help = Nehmen Sie kind, unit, resolution, mpe, repeatability, turn, wall, wall-error und seat; zero-diameter, zero und higher nur bei einer Messuhr (dial).
error-bore-header-missing = In der Kopfzeile fehlt ein Wort
error-bore-header-missing-help = Geben Sie kind, unit, resolution und mpe an. Bei einer Messuhr (dial) auch zero-diameter, zero=set oder zero=nominal, und higher=wider oder higher=narrower.
error-bore-kind-unknown = Diese Messart ist nicht bekannt
error-bore-kind-unknown-help = Schreiben Sie kind=two-point, kind=three-point, kind=dial oder kind=coordinates.
error-bore-unit-unknown = Diese Einheit ist nicht bekannt
error-bore-unit-unknown-help = Schreiben Sie unit=mm, unit=um, unit=in oder unit=thou.
error-bore-columns = Die Zeile mit den Spaltennamen passt nicht zur Messart
error-bore-columns-help = Nennen Sie depth_mm oder depth_in, dann angle_deg und diameter; bei einer Messuhr angle_deg und reading; bei Koordinaten x und y.
error-bore-cell-count = Eine Zeile hat zu viele oder zu wenige Felder
error-bore-cell-count-help = Geben Sie je Spaltenname ein Feld an, und setzen Sie Bemerkungen in eigene Zeilen, die mit # beginnen.
error-bore-not-a-number = Ein Feld ist keine Zahl
error-bore-not-a-number-help = Schreiben Sie in Ziffern, was das Messgerät zeigte, mit Punkt oder Komma. Nehmen Sie die Zeile heraus, wenn nichts abgelesen wurde.
error-bore-decimal-comma = Eine Zahl hat ein Dezimalkomma
error-bore-decimal-comma-help = Schreiben Sie einen Dezimalpunkt, 72.013 und nicht 72,013, oder trennen Sie die Zellen mit Strichpunkten oder Tabulatoren: Dann wird ein Dezimalkomma gelesen.
error-bore-mixed-units = Ein Messwert hat eine andere Einheit, als die Kopfzeile sagt
error-bore-mixed-units-help = Rechnen Sie jeden Messwert in die Einheit der Kopfzeile um, und schreiben Sie ihn ohne Einheit dahinter.
error-bore-instrument = So wie beschrieben kann das Messgerät keine Bohrung messen
error-bore-instrument-help = Geben Sie resolution und mpe über null und unter 1 mm an, vom Messgerät oder aus seinem Kalibrierschein. Die Wiederholbarkeit (repeatability) darf fehlen.
error-bore-size-implausible = Kein Lagersitz hat dieses Maß
error-bore-size-implausible-help = Prüfen Sie die Einheit in der Kopfzeile. Angenommen werden Durchmesser von 1 bis 1000 mm.
error-bore-too-few-angles = Es sind weniger Winkel, als die Form braucht
error-bore-too-few-angles-help = Messen Sie in jeder Tiefe mindestens 3 Durchmesser mit zwei Punkten, 1 mit drei Punkten, oder 5 Punkte mit Messuhr oder Koordinaten; 12 zeigen weit mehr.
error-bore-angle-repeated = Ein Winkel steht in einer Tiefe doppelt
error-bore-angle-repeated-help = Behalten Sie je Winkel einen Messwert. Ein Durchmesser aus zwei Punkten ist eine halbe Umdrehung weiter derselbe, einer aus drei Punkten eine drittel Umdrehung weiter; lassen Sie den Schlusswert bei 360 Grad weg.
error-bore-too-many-readings = Es sind mehr Messwerte, als angenommen werden können
error-bore-too-many-readings-help = Bleiben Sie bei 20.000 in einer Tiefe und 100.000 insgesamt.
error-bore-not-round = Kein Kreis geht nahe an den Punkten vorbei
error-bore-not-round-help = Prüfen Sie, ob x und y Punkte der Wand rundum sind, in der Einheit der Kopfzeile.
error-bore-wall-negative = Eine Wandstärke ist kleiner als null
error-bore-wall-negative-help = Geben Sie die dünnste Wand an, wie sie jetzt ist, und wie viel mindestens bleiben muss, beides ab 0.
error-bore-wall-missing = Die jetzige Wandstärke ist nicht bekannt
error-bore-wall-missing-help = Messen Sie die dünnste Wand rund um die Bohrung und geben Sie sie mit den Messwerten an.
error-bore-pass-depth = Diese Tiefe eines Durchgangs ist kein Ausdrehen
error-bore-pass-depth-help = Geben Sie den Durchgang auf den Durchmesser an, über 0 und bis 2 mm, etwa 0.001in oder 0.025mm.
error-bore-too-many-passes = Es bräuchte mehr als 400 Durchgänge
error-bore-too-many-passes-help = Geben Sie einen tieferen Durchgang an. Ist der Schnitt groß, weil der Bezug nicht die Achse der Bohrung ist, richten Sie nach der Bohrung aus, oder nehmen Sie eine freie Achse.
error-bore-no-datum = Die Messwerte kennen keine Bezugsachse
error-bore-no-datum-help = Fahren Sie mit einer Messuhr um den Bezug, oder nehmen Sie Koordinaten mit dem Bezug als Ursprung auf. Nehmen Sie bei einem Zweipunktmessgerät eine freie Achse.
error-bore-cannot-see-oval = Die Dreipunktmessung sieht kein Oval, darum lässt sich aus ihr kein Schnitt planen
error-bore-cannot-see-oval-help = Messen Sie Durchmesser mit zwei Punkten unter mehreren Winkeln, oder besser: Fahren Sie mit einer Messuhr rundum, und planen Sie daraus.
