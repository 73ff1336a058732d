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
ui-error-no-core-help = Nichts Eingetragenes ist verloren. Starten Sie Steady neu und öffnen Sie dann die Adresse, die es nennt.
ui-error-screen = Dieser Bildschirm ist gestolpert
ui-error-screen-help = Nichts Eingetragenes ist verloren. Versuchen Sie es noch einmal; kommt das wieder, schließen Sie Steady und öffnen Sie es neu.

## Wer arbeitet.
ui-technician = Ihr Name
ui-technician-title = Wer ist am Auto?
ui-technician-why = Ihr Name steht bei allem, was Sie eintragen, und auf den Papieren. Nur mit ihnen verlässt er dieses Gerät.
ui-technician-change = Geprüft von: { $name }. Ändern

## Die Liste der Vorgänge.
ui-new-visit = Neuer Vorgang
ui-search = Kennzeichen, FIN, Kunde oder Datum
ui-found = { $total ->
    [0] Keine Vorgänge
    [one] 1 Vorgang
   *[other] { $total } Vorgänge
}
ui-empty = Es ist noch kein Auto da. Beginnen Sie mit „Neuer Vorgang“.
ui-nothing-found = Kein Vorgang passt. Versuchen Sie weniger Buchstaben.
ui-more = Mehr zeigen
ui-steps-answered = { $answered } von { $steps } Schritten
ui-signed = Unterschrieben: { $decision }
ui-language = Sprache
ui-language-name = Deutsch
ui-theme = Darstellung
ui-theme-system = Gerät
ui-theme-dark = Dunkel
ui-theme-daylight = Tageslicht
ui-versions = Version { $version }, Fachwissen { $knowledge }

## Annahme.
ui-intake = Annahme
ui-layout = Wie das Auto seine Welle trägt
ui-layout-needed = Wählen Sie eine davon. Alles andere kann warten.
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
ui-odometer = Kilometerstand
ui-unit = Einheit
ui-unit-km = km
ui-unit-miles = Meilen
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
ui-station = { $name }: { $answered } von { $steps } beantwortet, { $word }
ui-all-steps = Alle Schritte
ui-locked = Gesperrt
ui-step-where = { $station }, { $at } von { $of }
ui-step-before = Schritt davor: { $title }
ui-step-after = Schritt danach: { $title }
ui-this-step = Dieser Schritt
ui-show-how = Wie es geht
ui-hide-how = Anleitung zu
ui-drawing = Zeichnung: { $words } Drücken für die Worte.
ui-disputed = Zwei Geräte gaben hier verschiedene Antworten. Die schlimmere zählt.
ui-milder = Gemildert, weil: { $reason }
ui-temperature = Gehäuse kalt oder warm?
ui-temperature-cold = Kalt
ui-temperature-warm = Warm
ui-reading = Messwert in { $unit }, { $min } bis { $max }
ui-erase = Letzte Ziffer löschen
ui-undo = Zurück
ui-undo-what = { $about ->
    [none] Zurücknehmen: { $what }
   *[other] Zurücknehmen: { $what }, { $about }
}
ui-undo-nothing = Nichts zurückzunehmen
ui-stop = STOPP
ui-reason-title = Eine Antwort mit GEFAHR wird milder. Warum?
ui-reason-why = Ihr Grund bleibt im Protokoll, und der Befund zeigt ihn.
ui-reason-ok = Mit diesem Grund eintragen
ui-leave-as-is = So lassen

## Das Foto eines Schritts.
ui-photo-take = Foto
ui-photo-again = Neues Foto
ui-photo-sending = Wird gesichert …
ui-photo-none = Kein Foto
ui-photo-waived = Kein Foto, warum?
ui-photo-why = Warum gibt es kein Foto?
ui-photo-own-words = In eigenen Worten
ui-photo-because = Kein Foto: { $reason }
ui-photo-of = Foto, aufgenommen bei: { $title }
ui-photo-larger = Foto größer oder kleiner zeigen
ui-photo-at = Gesichert { $when }

## Freigaben, Reihenfolge, Verlassen.
ui-gates-left = { $left ->
    [one] Noch eine Freigabe. Tippen Sie darauf, sobald sie erfüllt ist.
   *[other] Noch { $left } Freigaben. Tippen Sie auf jede, sobald sie erfüllt ist.
}
ui-gates-open = Alle bestätigt. Die Schritte dahinter sind offen.
ui-confirmed = { $by }, { $when }
ui-order-title = Was kommt zuerst?
ui-order-why = Läuft der Motor, werden Auspuff und Gehäuse heiß. Unter dem Auto heißt das warten, oder Verbrennungen.
ui-order-running-first-about = Erst horchen, dann abkühlen lassen, bevor Sie darunter gehen.
ui-order-under-car-first-about = Erst die Prüfung von Hand, kalt. Dann der Motor, wenn nichts Gefährliches gefunden wurde.
ui-leave-running = Motor abstellen. Schlüssel oder Funkschlüssel mitnehmen. Vom Sitz weggehen.
ui-leave-running-done = Der Motor ist aus
ui-leave-creep = Auto anhalten. Bremse feststellen, Motor aus. Keile wieder anlegen.
ui-leave-creep-done = Das Auto steht, Motor aus
ui-leave-lift = Getriebe zurück in P oder einen Gang. Werkzeug heraus. Unter dem Auto hervorkommen.
ui-leave-lift-done = Niemand ist unter dem Auto
ui-leave-why = Die Freigaben dieses Teils schließen sich damit. Wer zurückkommt, bestätigt sie neu.
ui-left = Dieser Teil ist geschlossen

## Das Ergebnis.
ui-why = Warum
ui-unrated-why = Keine Einstufung vor der Prüfung von Hand. Noch nicht geprüft heißt nicht sicher.
ui-missing = Fehlt noch
ui-next-check = Nächste Prüfung
ui-go-on = Weiter prüfen
ui-causes = Ursachen, die wahrscheinlichste zuerst
ui-causes-about = Gehör und Gefühl wecken Verdacht. Nur die Prüfung von Hand entscheidet. Mehrere können zugleich zutreffen.
ui-for = Spricht dafür
ui-against = Spricht dagegen
ui-weight-for = { $step }: { $answer } macht es { $times }-mal so wahrscheinlich.
ui-weight-against = { $step }: { $answer } macht es { $times }-mal weniger wahrscheinlich.
ui-no-weights = Keine Antwort spricht bisher dafür oder dagegen.
ui-road = Zur Information: Hauptuntersuchung
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
ui-pdf-save = Kopie sichern
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
ui-receipt-outdated = Nach dieser Unterschrift wurde etwas eingetragen. Die Kundeninfo kann jetzt mehr sagen als die gesehene.
ui-note-hash = Diese Kundeninfo: SHA-256 { $hash }

## Das Protokoll.
ui-chain-whole = { $entries ->
    [one] Ein Eintrag. Die Kette ist ganz.
   *[other] { $entries } Einträge. Die Kette ist ganz.
}
ui-chain-broken = DIE KETTE IST GEBROCHEN bei Eintrag { $seq }. Ab dort ist dieses Protokoll nicht, was geschrieben wurde. Behandeln Sie den Vorgang als nicht geprüft, und lassen Sie die Daten dieses Geräts, wie sie sind.
ui-ledger-broken = Das Protokoll dieses Vorgangs ist bei Eintrag { $seq } gebrochen. Verlassen Sie sich nicht darauf.
ui-ledger-empty = Es ist noch nichts eingetragen.
ui-ledger-head = Ende der Kette: { $head }
ui-reason-was = Grund: { $reason }
ui-superseded = Zählt nicht mehr; ein späterer Eintrag trat an seine Stelle.

ui-rating = Einstufung
ui-outcome = Wo die Prüfung steht
