### Das Drumherum der Bildschirme: Tasten, Überschriften, Winke. Was ein Schritt, eine Antwort, eine Freigabe oder
### ein Papier sagt, steht in den Dateien daneben.

ui-name = Steady
ui-waiting = Einen Moment …
ui-retry = Noch einmal
ui-dismiss = Schließen
ui-save = Speichern
ui-next = Weiter
ui-later = Später
ui-no-plate = Kein Kennzeichen

## Wenn der Kern nicht erreichbar ist oder ein Bildschirm stolpert.
ui-error-no-core = Die Anzeige erreicht Steady nicht
ui-error-no-core-help = Nichts Eingetragenes ist verloren. Starten Sie Steady neu; im Browser öffnen Sie die Adresse, die es nennt.
ui-error-screen = Dieser Bildschirm ist fehlgeschlagen
ui-error-screen-help = Nichts Eingetragenes ist verloren. Versuchen Sie es noch einmal; kommt das wieder, schließen Sie Steady und öffnen Sie es neu.

## Wer arbeitet.
ui-technician = Ihr Name
ui-technician-title = Wer ist am Auto?
ui-technician-why = Ihr Name steht bei allem, was Sie eintragen, und auf den Papieren. Er verlässt dieses Gerät nur mit Papieren und Dateien, die Sie weitergeben.
ui-technician-change = Geprüft von: { $name }. Ändern

## Die Liste der Vorgänge.
ui-new-visit = Neuer Vorgang
ui-search = Kennzeichen, FIN, Kunde oder Datum
ui-search-only = Nur Autos, die mit { $word } eingestuft sind
ui-found = { $total ->
    [0] Keine Vorgänge
    [one] 1 Vorgang
   *[other] { $total } Vorgänge
}
ui-empty = Es ist noch kein Auto da. Beginnen Sie mit „Neuer Vorgang“.
ui-card-still-open = Noch offen aus einem früheren Vorgang:
ui-nothing-found = Kein Vorgang passt. Versuchen Sie weniger Buchstaben.
ui-more = Mehr zeigen
ui-steps-settled = { $settled } von { $steps } Schritten geprüft{ $open ->
    [0] {""}
   *[other] , { $open } offen geblieben
}
ui-repair-torn-down = Nach dem Zerlegen auf der Werkbank
ui-repair-turns-free = Das Lager drehte sich nach dem Zusammenbau frei
ui-repair-checked-again = Nach der Reparatur erneut geprüft
ui-outcome-confirmed = Bestätigt, was es war
ui-signed = Unterschrieben: { $decision }
ui-language = Sprache
ui-theme = Darstellung
ui-theme-system = Gerät
ui-theme-dark = Dunkel
ui-theme-daylight = Tageslicht
ui-versions = Version { $version }, Regeln und Zahlen { $knowledge }
ui-notices = Software Dritter und ihre Lizenzen
ui-notices-about = Nennt jeden Teil von Steady, den andere gemacht haben, dann deren Lizenzen, auf Englisch.
ui-notices-none = Die Liste fehlt in dieser Fassung.

## Annahme.
ui-intake = Annahme
ui-layout = Wie das Auto seine Welle trägt
ui-layout-needed = Wählen Sie eine davon. Alles andere kann warten.
ui-layout-others = Eine andere Bauart
ui-support-rigid = Starr gehalten: Von Hand ist keine Bewegung erlaubt.
ui-support-rubber = In einem Gummiring gehalten: Etwas Nachgeben ist normal.
ui-support-tube = In einem Rohr: nicht zu greifen.
ui-seat = Lagersitz
ui-maker-figure = Bewegung laut Hersteller, mm
ui-complaint-sounds = Was der Kunde bemerkt
ui-complaint = In den Worten des Kunden
ui-when = Wann es auftritt
ui-car = Das Auto
ui-plate = Kennzeichen
ui-label = Marke und Modell
ui-vin = FIN
ui-vin-fits = Die Prüfziffer stimmt.
ui-vin-differs = Die Prüfziffer stimmt nicht. Sehen Sie noch einmal nach; außerhalb Nordamerikas muss das nichts heißen.
ui-vin-not-a-vin = Keine volle FIN: 17 Zeichen, ohne I, O und Q.
ui-gearbox = Getriebe
ui-number-unread = Nicht als Zahl gelesen. Schreiben Sie nur Ziffern, ohne Zeichen für Tausender.
ui-odometer = Kilometerstand
ui-unit = Einheit
ui-unit-km = km
ui-unit-miles = Meilen
ui-unit-rpm = U/min
ui-cylinders = Zylinder
ui-idle-range = Leerlaufbereich laut Hersteller, U/min
ui-idle-low = Von
ui-idle-high = Bis
ui-owner = Der Kunde
ui-owner-name = Name
ui-owner-contact = Telefon oder Adresse
ui-start-visit = Vorgang beginnen
ui-discard = Verwerfen, was ich hier schrieb

## Die Prüfung.
ui-to-visits = Zur Liste der Vorgänge
ui-to-intake = { $name }. Annahme öffnen
ui-to-result = { $word }. Ergebnis öffnen
ui-live-rating = Einstufung des Vorgangs: { $word }
ui-shaft-line = Stationen entlang der Welle
ui-station = { $name }: { $settled } von { $steps } geprüft{ $open ->
    [0] {""}
   *[other] , { $open } offen geblieben
}, { $word }
ui-all-steps = Alle Schritte
ui-locked = Gesperrt
ui-step-where = { $station }, { $at } von { $of }
ui-step-before = Schritt davor: { $title }
ui-step-after = Schritt danach: { $title }
ui-this-step = Dieser Schritt
ui-step-unrated = Eingetragen
ui-show-how = Wie es geht
ui-hide-how = Anleitung zu
ui-more-behind = Mehr
ui-drawing = Zeichnung: { $words } Drücken, um sie groß zu sehen.
ui-disputed = Zwei Geräte gaben hier verschiedene Antworten. Die schlimmere zählt.
ui-elsewhere = Zählt nicht: { $answer } ({ $by }, { $at }). Das Auto war damals mit anderer Bauart oder anderem Maß eingetragen. Noch einmal prüfen.
ui-elsewhere-drop = Zurücknehmen, was nicht zählt
ui-milder = Gemildert, weil: { $reason }
ui-temperature = Gehäuse kalt oder warm?
ui-temperature-cold = Kalt
ui-temperature-warm = Warm
ui-temperature-first = Erst kalt oder warm wählen
ui-above-first = Erst die Frage oben beantworten
ui-reading = Messwert in { $unit }, { $min } bis { $max }
ui-reading-usual = z. B. { $usual }
ui-erase = Letzte Ziffer löschen
ui-undo = Rückgängig
ui-undo-what = { $about ->
    [none] Zurücknehmen: { $what }
   *[other] Zurücknehmen: { $what }, { $about }
}
ui-undo-nothing = Nichts zurückzunehmen
# A refusal behind the name of the field that it is about.
ui-problem-at = { $field }: { $what }
ui-stop = STOPP
ui-reason-title = Eine Antwort mit GEFAHR oder WARNUNG wird milder. Warum?
ui-reason-why = Ihr Grund bleibt im Protokoll, und der Befund zeigt ihn.
ui-reason-ok = Mit diesem Grund eintragen
ui-leave-as-is = So lassen

## Das Foto eines Schritts.
ui-photo-take = Foto
ui-photo-again = Noch ein Foto
ui-photo-sending = Wird gespeichert …
ui-photo-none = Kein Foto: warum?
ui-photo-waived = Kein Foto, warum?
ui-photo-why = Warum gibt es kein Foto?
ui-photo-own-words = In eigenen Worten
ui-photo-because = Kein Foto: { $reason }
ui-photo-of = Foto, aufgenommen bei: { $title }
ui-photo-at = Gespeichert { $when }

## Freigaben, Reihenfolge, Verlassen.
ui-gates-left = { $left ->
    [one] Noch eine Freigabe. Tippen Sie darauf, sobald sie erfüllt ist.
   *[other] Noch { $left } Freigaben. Tippen Sie auf jede, sobald sie erfüllt ist.
}
ui-gates-open = Alle bestätigt. Weiter zu den Schritten.
ui-confirmed = { $by }, { $when }
ui-order-title = Wie möchten Sie prüfen?
ui-order-why = Läuft der Motor, werden Auspuff und Gehäuse heiß. Unter dem Auto heißt das warten, oder Verbrennungen.
ui-order-running-first-about = Erst horchen. Dann darunter, solange das Gehäuse warm ist und der Auspuff abgekühlt. Nur eine warme Prüfung kann ein Geräusch entlasten.
ui-order-under-car-first-about = Erst die Prüfung von Hand, kalt. Dann der Motor, wenn nichts Gefährliches gefunden wurde.
ui-leave-running = Motor abstellen. Schlüssel oder Funkschlüssel mitnehmen. Vom Sitz weggehen.
ui-leave-running-done = Der Motor ist aus
ui-leave-creep = Auto anhalten. Bremse feststellen, Motor aus. Keile wieder anlegen.
ui-leave-creep-done = Das Auto steht, Motor aus
ui-leave-lift = Werkzeug heraus. Alle kommen unter dem Auto hervor. Erst dann, von außen, Getriebe zurück in P oder einen Gang.
ui-leave-lift-done = Niemand ist unter dem Auto
ui-leave-why = Die Freigaben dieses Teils schließen sich damit. Wer zurückkommt, bestätigt sie neu.
ui-leave-still = Bevor Sie herauskommen:
ui-left = Dieser Teil ist geschlossen

## Das Ergebnis.
ui-why = Warum
ui-unrated-why = Keine Einstufung vor der Prüfung von Hand. Noch nicht geprüft heißt nicht sicher.
ui-missing = Fehlt noch
ui-next-check = Nächste Prüfung
ui-go-on = Weiter prüfen
ui-causes = Ursachen, die wahrscheinlichste zuerst
ui-causes-found = Ursachen: was hinter dem Befund steckt, zuerst
ui-found-by-hand = Was gefunden wurde
ui-causes-about = Geräusch und Vibration wecken Verdacht. Nur die Prüfung von Hand entscheidet. Mehrere können zugleich zutreffen.
ui-for = Spricht dafür
ui-against = Spricht dagegen
ui-weight-for = { $step }: { $answer } macht es { $times }-mal so wahrscheinlich.
ui-weight-against = { $step }: { $answer } macht es { $times }-mal weniger wahrscheinlich.
ui-weight-gauge-with = { $step }, mit der Messuhr: Ihre Werte sind mit Bewegung { $odds }-mal so wahrscheinlich wie ohne.
ui-weight-gauge-without = { $step }, mit der Messuhr: Ihre Werte sind ohne Bewegung { $odds }-mal so wahrscheinlich wie mit.
ui-weight-makes-more = Das macht es { $times }-mal so wahrscheinlich.
ui-weight-makes-less = Das macht es { $times }-mal weniger wahrscheinlich.
ui-no-weights = Keine Antwort spricht bisher dafür oder dagegen.
ui-road = Zur Information: Prüfvorschriften (UK, EU)
ui-papers = Papiere
ui-finding = Befund
ui-note = Kundeninfo
ui-ledger = Protokoll

## Papiere und Empfang.
ui-paper-language = Sprache dieses Papiers
ui-sheet = Blatt
ui-sheet-a4 = A4
ui-sheet-us-letter = US Letter
ui-pdf-make = PDF erstellen
ui-pdf-making = Wird erstellt …
ui-pdf-open = Öffnen
ui-pdf-save = Kopie speichern
ui-pdf-where = Gespeicherte Papiere kommen in den Ordner für Downloads.
ui-short-text = Kurztext zum Senden
ui-copy = Kopieren
ui-copied = Kopiert.
ui-copy-by-hand = Der Text ist markiert. Kopieren Sie ihn von hier.
ui-decision = Wie Sie sich entscheiden
ui-owner-signs = Ihr Name (darf leer bleiben)
ui-sign-here = Hier mit dem Finger unterschreiben
ui-pad-empty = Unterschriftsfeld, leer
ui-pad-signed = Unterschriftsfeld, unterschrieben
ui-pad-clear = Unterschrift löschen
ui-sign = Ich bestätige: Kundeninfo erhalten
ui-sign-needs = Wählen Sie oben eine der drei und unterschreiben Sie.
ui-sign-again = Noch einmal unterschreiben
ui-receipt-outdated = Seit der Unterschrift hat sich geändert, was eingetragen ist oder wie es eingestuft wird. Das Blatt kann jetzt mehr sagen als das gesehene.
ui-note-hash = Diese Kundeninfo: SHA-256 { $hash }

## Das Protokoll.
ui-chain-whole = { $entries ->
    [one] Ein Eintrag. Das Protokoll ist unversehrt.
   *[other] { $entries } Einträge. Das Protokoll ist unversehrt.
}
ui-chain-broken = DAS PROTOKOLL IST BESCHÄDIGT ab Eintrag { $seq }. Ab dort ist es nicht, was geschrieben wurde. Behandeln Sie den Vorgang als nicht geprüft, und lassen Sie die Daten dieses Geräts, wie sie sind.
ui-ledger-broken = Das Protokoll dieses Vorgangs ist ab Eintrag { $seq } beschädigt. Verlassen Sie sich nicht darauf.
ui-ledger-empty = Es ist noch nichts eingetragen.
ui-ledger-change = { $before }, jetzt { $now }
ui-ledger-head = Letzte Prüfsumme: { $head }
ui-reason-was = Grund: { $reason }
ui-superseded = Zählt nicht mehr; ein späterer Eintrag trat an seine Stelle.

ui-rating = Einstufung
ui-outcome = Wo die Prüfung steht

## Das Sortieren, aufgeklappt.
ui-interval = zwischen { $low } und { $high }
ui-before = Vor jeder Antwort: { $before }.
ui-together-for = Zusammengenommen machen diese Antworten es noch einmal { $times }-mal so wahrscheinlich.
ui-together-against = Diese Antworten sagen zum Teil dasselbe: Zusammen zählen sie { $times }-mal weniger.
ui-causes-more = { $count ->
    [one] Eine weitere Ursache
   *[other] { $count } weitere Ursachen
}
ui-next-gain = Im Mittel erspart das etwa { $minutes } Minuten unnötiger Reparatur oder Wartezeit.
ui-next-none = Keine weitere Prüfung
ui-turn = Käme bei „{ $step }“ „{ $answer }“ heraus, läge vorn: { $cause } ({ $share }).
ui-judgements = Was eine falsche Entscheidung kosten würde
ui-judgements-about = Die Verluste sind Einschätzung der Werkstatt, in Minuten gezählt. Die Einstufung oben folgt ihren Regeln und nicht dieser Tabelle.
ui-judgement-acts = Jetzt { $now }. Unterhalb von { $at } würde die Entscheidung kippen.
ui-judgement-waits = Jetzt { $now }. Ab { $at } würde die Entscheidung kippen.
ui-judgement-loss = { $course }: im Mittel { $minutes ->
    [one] eine Minute verloren
   *[other] { $minutes } Minuten verloren
}, falls { $loss }.
ui-judgement-alone = Diese Zahlen sind allein Einschätzung der Werkstatt: Es gibt noch zu wenige bestätigte Ergebnisse.
ui-taught = Diese Zahlen wurden aus { $outcomes } bestätigten Ergebnissen dieser Bauart gelernt.
ui-opinion = Ich meine, es ist …
ui-opinion-open = Ich meine, es ist etwas anderes
ui-opinion-choose = Ursache wählen
ui-opinion-why = Warum
ui-opinion-about = Das steht im Befund neben dem Sortieren und ändert es nicht.
ui-opinion-was = { $by } meint: { $cause }
ui-turned-out = Was sich herausgestellt hat
ui-turned-out-about = Nach dem Zerlegen oder der Reparatur: Tippen Sie auf jede Ursache, die wirklich vorlag. Daraus lernt das Sortieren.
ui-turned-out-choose = Was wirklich vorlag
ui-turned-out-by = Wer das sagt (leer: { $technician })
ui-turned-out-save = Bestätigen
ui-turned-out-kept = Eingetragen. Es zählt einmal, wie oft es auch berichtigt wird.
ui-turned-out-again = Zum Berichtigen noch einmal bestätigen; beides bleibt im Protokoll.
ui-calibration = Wie oft die Ursachen stimmten
ui-calibration-about = Vergleicht, was über jede Ursache gesagt wurde, mit dem, was beim Zerlegen oder nach der Reparatur gefunden wurde.
ui-outcomes-count = { $outcomes ->
    [0] Noch kein bestätigtes Ergebnis
    [one] Ein bestätigtes Ergebnis
   *[other] { $outcomes } bestätigte Ergebnisse
}
ui-judgement-alone-page = Die Zahlen beruhen noch allein auf Einschätzung. Die Zahlen einer Bauart lernen ab { $enough } Ergebnissen.
ui-layout-taught = { $layout }: { $outcomes } Ergebnisse; daraus sind ihre Zahlen gelernt.
ui-layout-not-taught = { $layout }: { $outcomes } von { $enough } Ergebnissen.
ui-reliability = Vorhersage und Ergebnis
ui-reliability-about = Von allen Ursachen, die zu etwa 70 % wahrscheinlich genannt wurden, sollten etwa 70 % vorliegen. Auf der gestrichelten Linie stimmt es.
ui-reliability-drawing = Diagramm: nach rechts die Vorhersage, nach oben, wie oft es so war; die Tabelle darunter nennt die Zahlen.
ui-said = Vorhersage
ui-was = Gefunden
ui-count = Anzahl
ui-share = { $share } %
ui-scores = Punktwerte, niedriger ist besser
ui-scores-about = Über { $forecasts } Wahrscheinlichkeiten: eine je Ursache und Vorgang.
ui-brier = Brier-Wert
ui-brier-calibration = davon Kalibrierung: zu hoch oder zu niedrig angegeben
ui-brier-refinement = davon Verfeinerung: was die Gruppen nicht trennen konnten
ui-brier-grouping = davon Gruppierung: Unterschiede innerhalb einer Gruppe
ui-log-score = Logarithmischer Wert
ui-log-score-base = Derselbe nur mit den Grundhäufigkeiten
ui-better-than-base = Das Sortieren sagt mehr, als die Grundhäufigkeiten der Werkstatt es würden.
ui-no-better-than-base = Bisher sagt das Sortieren nicht mehr, als die Grundhäufigkeiten der Werkstatt es würden.
ui-weak-signs = Schwache Zeichen
ui-weak-signs-about = Zeichen, die ohne ihre Ursachen etwa so häufig waren wie mit ihnen.
ui-weak-share = { $part } von { $whole }
ui-weak-with = Mit einer ihrer Ursachen: { $share }
ui-weak-without = Mit keiner davon: { $share }

## Die Messuhr.
ui-gauge = Messuhr benutzen
ui-gauge-back = Zurück zu: { $step }
ui-gauge-about = Nur mit den Händen, kein Montiereisen: drücken, ablesen, ziehen, ablesen. Geben Sie jedes Mal die ganze Bewegung ein. Klemmen oder schrauben Sie den Fuß der Messuhr am Gehäuse selbst fest: An Aluminium hält kein Magnet. Eine Messuhr klärt „unsicher“; was eine Hand gespürt hat, hebt sie nie auf.
ui-gauge-readings = Ganze Bewegung, Drücken gegen Ziehen
ui-gauge-reading = Messwert { $at }
ui-gauge-more = Noch ein Messwert
ui-gauge-place = Wo die Messuhr steht
ui-gauge-at-bearing = Am Lager
ui-gauge-on-shaft = Anderswo an der Welle
ui-lever = Welches Lager sich bewegt und worum die Welle kippt
ui-lever-near = Von einem Paar bewegt sich das Lager näher an der Messuhr
ui-lever-far = Von einem Paar bewegt sich das Lager weiter weg von der Messuhr
ui-lever-either = Von einem Paar, nicht bekannt welches
ui-lever-joint = Ein Lager allein
ui-lever-about-pair = Ein loses Lager eines Paares kippt die Welle um das andere, nicht um das ferne Gelenk. Nicht bekannt welches: Beide werden ausgerechnet, und ein Nachweis braucht beide.
ui-lever-about-joint = Ein Lager allein: Die Welle kippt um ihr fernes Gelenk.
ui-lever-apart = Von Lager zu Lager, mm
ui-lever-out = Vom näheren Lager zur Messuhr, mm
ui-lever-joint-bearing = Vom Gelenk zum Lager, mm
ui-lever-joint-gauge = Vom Gelenk zur Messuhr, mm
ui-gauge-mark = Ohne Herstellerangabe ist die Lagerluft des Lagers selbst der Maßstab. Das ist keine amtliche Grenze.
ui-gauge-bore = Bohrung des Lagers, mm
ui-gauge-group = Luftgruppe
ui-gauge-group-none = Nicht bekannt
ui-gauge-save = Messwerte eintragen
ui-gauge-plot = Messwerte auf einer Linie: Kreise sind Messwerte, die Scheibe ist ihr Mittelwert mit seinem Bereich, die senkrechte Linie ist die Grenze.
ui-gauge-plot-about = Kreise: Messwerte. Scheibe und Balken: Mittelwert und 95-%-Bereich. Senkrechte Linie: Grenze; im grauen Band ist nichts erwiesen.
ui-gauge-limit = Grenze
ui-trend-plot = Bewegung über die Vorgänge: Punkte mit ihren Intervallen, eine Gerade hindurch, die Grenze als unterbrochene Linie.
ui-trend-about = Punkte: Vorgänge dieses Autos, jeder mit seinem Intervall. Linie: der Verlauf. Unterbrochene Linie: Grenze.
ui-trend-first = vor { $days } Tagen
ui-trend-today = heute

## Die Werkbank.
ui-bench = Werkbank
ui-bench-about = Nach dem Zerlegen. Ob neue Lager allein halten, entscheidet die Bohrung.
ui-bench-about-rubber = Nach dem Zerlegen. Ein Gummilager wird als Ganzes ersetzt, mit seinem Wälzlager. Eine Bohrung nur messen, wo der Hersteller das Gehäuse behalten lässt.
ui-bench-verdict = Urteil
ui-done = erledigt
ui-bench-next = Weiter: { $part }
ui-bench-complete = Alles Verlangte ist festgehalten. Der Reparaturnachweis kann erstellt werden.
ui-bench-not-asked = bisher nicht verlangt
ui-bench-no-plan = Zuerst die Bohrung messen, wie sie vorgefunden wurde: daraus entsteht der Plan.
ui-bench-clean = Das Werkzeug hat rundum gegriffen. Es braucht keinen weiteren Durchgang.
ui-bench-cut-more = Trotzdem noch ein Durchgang
ui-measure-again = Erneut messen
ui-photo-back-bench = Zurück zur Werkbank
ui-bench-look = Gehäuse ansehen
ui-look-cracked = Ein Riss oder ein gebrochenes Befestigungsauge?
ui-look-ring-turned = Blanke oder riefige Spuren eines Lagers, das sich in seinem Sitz mitgedreht hat?
ui-look-yes = Ja
ui-look-no = Nein
ui-look-wall = Wand, die mindestens bleiben muss, mm
ui-bench-found = Bohrung, wie vorgefunden
ui-bench-skim = Ausdrehplan und Durchgänge
ui-bench-finished = Bohrung, fertig bearbeitet
ui-bench-fit = Passung
ui-bench-ring = Nach dem Zusammenbau: Lager von Hand drehen
ui-bench-ring-about = Drehen Sie die Welle von Hand in ihrem Lager, langsam, eine ganze Umdrehung. Sie muss frei drehen: Ein Lager, das in einen ovalen Sitz gepresst ist, dreht schwer und lebt nicht lange.
ui-bench-notes = Schrauben und Drehmomente
ui-bench-notes-about = Neue Schrauben und Muttern, mit dem Drehmoment des Herstellers. Schreiben Sie auf, was verwendet wurde und woher die Angabe stammt.
ui-bench-note = Notiz
ui-bench-passes = Geschnittene Durchgänge
ui-bench-after-pass = Nach Durchgang { $pass }
ui-bench-pass = Durchgang { $pass }: { $contact }
ui-bench-diameter = Durchmesser nach Durchgang { $pass }, mm (darf leer bleiben)
ui-bench-contact = Durchgang { $pass } ist geschnitten. Wo hat das Werkzeug gegriffen?
ui-bench-photo-at = Foto { $at } von { $of } dieser Arbeit
ui-bench-photo-more = Noch ein Foto aufnehmen
ui-contact-none = Nirgends
ui-contact-partly = Stellenweise
ui-contact-all-round = Rundum
ui-ring-free = Frei
ui-ring-stiff = Schwer
ui-ring-rough = Rau
ui-bore-kind = Wie gemessen wird
ui-bore-kind-two-point = Zwei Punkte
ui-bore-kind-three-point = Drei Punkte
ui-bore-kind-dial = Messuhr rundum
ui-bore-kind-coordinates = Koordinaten
ui-bore-about-two-point = Durchmesser zwischen zwei gegenüberliegenden Messpunkten. Blind für drei, fünf oder jede andere ungerade Zahl von Bögen (Gleichdick).
ui-bore-about-three-point = Durchmesser mit drei Messpunkten. Blind für ein Oval.
ui-bore-about-dial = Eine Messuhr, auf einem Drehtisch rundum gefahren, mit ihrem Vorzeichen und Nullpunkt.
ui-bore-about-coordinates = Punkte einer Messmaschine, x und y von der Bezugsachse aus: hier eingefügt oder als Datei.
ui-bore-unit-mm = mm
ui-bore-unit-um = µm
ui-bore-unit-in = Zoll
ui-bore-unit-thou = Tausendstel Zoll
ui-bore-resolution = Kleinster Schritt
ui-bore-mpe = Größter Fehler, den es haben darf
ui-bore-repeatability = Streuung, falls erprobt
ui-bore-wall = Dünnste Wand, mm, falls gemessen
ui-bore-seat = Breite des Sitzes, mm
ui-bore-wall-error = Wand gemessen auf ± mm
ui-bore-turn = Winkel zählen
ui-bore-turn-clockwise = im Uhrzeigersinn
ui-bore-turn-counter = gegen den Uhrzeigersinn
ui-bore-zero-diameter = Durchmesser bei null
ui-bore-zero = Der Nullpunkt ist
ui-bore-zero-set = mit einem Ring dieses Maßes eingestellt
ui-bore-zero-nominal = nur angenommen
ui-bore-higher = Ein höherer Messwert heißt
ui-bore-higher-wider = weiter
ui-bore-higher-narrower = enger
ui-bore-angles = Winkel
ui-bore-depths = Tiefen
ui-bore-depth = Tiefe, mm
ui-bore-at-depth = { $depth } tief
ui-bore-filled = { $done } von { $all } Messwerten eingegeben
ui-bore-points = Punkte, einer je Zeile: x;y oder Tiefe;x;y
ui-bore-pasted = { $done } Zeilen eingefügt
ui-bore-save = Diese Bohrung eintragen
ui-bore-file = Oder eine Datei nehmen
ui-polar = Die Wand in { $depth } Tiefe, ihre Abweichung von der Rundheit vergrößert gezeichnet
ui-polar-scale = Abweichung { $times }-fach vergrößert gezeichnet. Gestrichelt: rund.
ui-polar-clockwise = Winkel zählen im Uhrzeigersinn.
ui-polar-counter = Winkel zählen gegen den Uhrzeigersinn.
ui-polar-flagged = Eingekreist: passt nicht zu den Nachbarn; noch einmal messen.
ui-polar-mirrored = Hohl: aus dem Messwert gegenüber gezeichnet, hier nicht gemessen.
ui-polar-unread = Offen: nicht gemessen. Was dort liegt, ist nicht bekannt.
ui-skim-picture = Nach Durchgang { $pass } sind { $share } % des Rings erfasst
ui-skim-pass = Durchgang { $pass } von { $of }.
ui-skim-touched = { $share } % des Rings erfasst.
ui-skim-clean = Rundum sauber.
ui-skim-diameter = Durchmesser { $diameter }.
ui-skim-wall = Wand, die bleibt: { $wall }.
ui-skim-wall-thin = DIE WAND IST ZU DÜNN: Nicht weiterschneiden.
ui-skim-before = Durchgang davor
ui-skim-after = Nächster Durchgang
ui-skim-rings = Ringe von außen nach innen: { $depths } tief. Dick: erfasst.
ui-fit-about = Alles in mm, Unsicherheiten in µm. Ein gemessenes Maß geht einer Toleranzklasse vor.
ui-fit-bearing = Das Lager
ui-fit-seat = Der Sitz
ui-fit-sleeve = Die Hülse
ui-fit-sleeve-material = Werkstoff der Hülse
ui-fit-sleeved = Mit Hülse
ui-fit-measured = Die Bohrung, wie hier gemessen: { $diameter } mm ± { $expanded } µm
ui-fit-unknown = Nicht bekannt
ui-fit-bearing-od = Außen{ "\u00AD" }durchmesser, Nennmaß
ui-fit-bearing-bore = Bohrung
ui-fit-bearing-width = Breite
ui-fit-od = Außen{ "\u00AD" }durchmesser, gemessen
ui-fit-od-u = seine Unsicherheit, µm
ui-fit-group = Luftgruppe
ui-fit-class = Toleranzklasse der Bohrung
ui-fit-bore = Bohrung des Sitzes, gemessen
ui-fit-bore-u = ihre Unsicherheit, µm
ui-fit-housing = Werkstoff des Gehäuses
ui-fit-housing-od = Außen{ "\u00AD" }durchmesser des Gehäuses
ui-fit-sleeve-od = Außen{ "\u00AD" }durchmesser der Hülse
ui-fit-sleeve-od-u = seine Unsicherheit, µm
ui-fit-housing-bore = Bohrung des Gehäuses für die Hülse
ui-fit-housing-bore-u = ihre Unsicherheit, µm
ui-fit-temp-low = Tiefste Temperatur im Betrieb, °C
ui-fit-temp-high = Höchste Temperatur im Betrieb, °C
ui-fit-save = Passung ausrechnen
