### Die eigenen Angaben der Werkstatt, ihre Einheiten, und was davon auf den Papieren steht.

length-um = { $um } µm
length-thou = { $thou } thou
length-inch = { $inch } in
readings-joint = { "; " }
odometer-converted = { $converted } (abgelesen: { $read })

letterhead-phone = Telefon { $phone }
note-ask-named = Fragen Sie { $workshop }.
note-ask-named-technician = Fragen Sie { $workshop }. Bei der Prüfung eingetragen: { $technician }.
note-ask-phone = Telefon: { $phone }.
note-receipt-from = Kundeninfo von: { $workshop }

## Die Entscheidung der Halter, wo nichts zu reparieren ist. Alle drei werden bei jeder Einstufung gleich festgehalten.
decision-repair-notice = Bitte noch einmal ansehen
decision-decide-later-notice = Ich überlege es mir
decision-decline-notice = Bitte nichts weiter tun
decision-repair-unrated = Bitte zu Ende prüfen
decision-decide-later-unrated = Ich überlege es mir
decision-decline-unrated = Bitte nicht weiter prüfen
decision-short-repair = soll gemacht werden
decision-short-decide-later = überlegt noch
decision-short-decline = bleibt, wie es ist

## Der Befund.
finding-heading-scope = Umfang der Arbeit am Lager
finding-heading-gauges = Messwerte der Messuhr
finding-not-checked = Nicht geprüft: { $steps }.
detail-gauge = Mit der Messuhr gemessen: siehe die Tabelle der Messwerte.
gauge-column-place = Wo
gauge-column-readings = Messwerte
gauge-column-mean = Mittel am Lager
gauge-column-expanded = Erweiterte Unsicherheit, 95 %
gauge-column-limit = Grenze
gauge-column-decision = Entscheid
gauge-plus-minus = ± { $expanded }
gauge-expanded-none = aus einem Messwert nicht bekannt
gauge-limit-unknown = keine bekannt

scope-before-teardown = Was davon nötig ist, ergibt die Messung nach dem Zerlegen. Solange das Lager nicht heraus und sein Sitz nicht gemessen ist, kann es niemand sagen.
scope-bench = Die Messung ergibt: { $verdict }
scope-bearings-only = Nur die Lager
scope-bearings-only-about = Neue Lager im Sitz, wie er ist, falls er rund, fest und heil ist.
scope-skim-and-sleeve = Sitz instand gesetzt, mit Hülse
scope-skim-and-sleeve-about = Der verschlissene Sitz wird ausgedreht und eine Hülse eingepresst, falls genug Wand bleibt.
scope-replace-housing = Gehäuse ersetzt
scope-replace-housing-about = Ein neues Gehäuse und neue Lager, falls es gerissen ist oder zu wenig Wand bleibt.
scope-chosen = Ergebnis der Messung
scope-ruled-out = Ausgeschlossen
scope-open = Offen
scope-hours = { $from } bis { $to } h
scope-hours-exact = { $hours } h
scope-hours-are = Die Stunden sind das, was diese Werkstatt gewöhnlich braucht; ein Auto kann mehr oder weniger brauchen.
scope-rate = Satz: { $rate } je Stunde, wie von der Werkstatt eingetragen.
scope-no-quote = Das ist ein Arbeitsumfang und niemals ein Angebot.

paper-label-unprintable = „[…]“ steht für Zeichen, für die dieses Papier keine Schrift hat. Die Aufzeichnung des Vorgangs behält sie, wie sie eingegeben wurden.

## Der Bildschirm.
ui-workshop = Die Werkstatt
ui-workshop-about = Was Sie eintragen, steht von jetzt an auf jedem Papier. Was leer bleibt, wird weggelassen.
ui-workshop-name = Name
ui-workshop-address = Anschrift, Zeile für Zeile
ui-workshop-phone = Telefon
ui-workshop-length = Längen
ui-workshop-length-none = Wie in der Sprache üblich
ui-workshop-length-mm = Millimeter
ui-workshop-length-thou = Tausendstel Zoll
ui-workshop-distance = Strecken
ui-workshop-distance-none = Wie abgelesen
ui-workshop-distance-km = Kilometer
ui-workshop-distance-miles = Meilen
ui-workshop-work = Arbeit am Lager
ui-workshop-work-about = Stunden, die jede Arbeit bei Ihnen gewöhnlich braucht. Ein Befund zeigt sie als Arbeitsumfang, niemals als Angebot.
ui-workshop-from = Stunden von
ui-workshop-to = Stunden bis
ui-workshop-rate = Satz je Stunde
ui-workshop-currency = Währung
ui-workshop-saved = Gespeichert. Von jetzt an steht es auf jedem Papier.
ui-workshop-draft = Noch nicht gespeichert. Das Geschriebene bleibt hier, bis Sie es speichern oder verwerfen.
ui-handover-papers = Auch die Papiere, für Leser ohne Steady
ui-handover-papers-language = Sprache der Papiere
ui-handover-as-made = Wie zuletzt gemacht

error-workshop-too-long = Die Angaben der Werkstatt passen auf kein Papier
error-workshop-too-long-help = Name und Anschrift fassen 100 Zeichen je Zeile, höchstens vier Zeilen; das Telefon 60, die Währung 12. Kürzen Sie, was länger ist. Nichts wurde geändert.
error-workshop-number = Stunden oder Satz sind nicht lesbar
error-workshop-number-help = Schreiben Sie 2,5 oder 2.5 und Tausender ohne Zeichen, etwa 1250. Stunden gehen von der kleineren zur größeren Zahl, bis 200. Nichts wurde geändert.
error-workshop-unreadable = Die Werkstattdatei ist nicht lesbar
error-workshop-unreadable-help = Prüfen Sie, ob sie ganz ist und die Form der Datei in demo-data/workshop hat. Nichts wurde geändert.
