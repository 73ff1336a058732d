### Was abgelehnt wird, weil es über das hinausgeht, was sich festhalten lässt, oder nicht ist, was es sein muss.
### Die Grenzen stehen in `src/model/limits.rs`. Ablehnungen wie in errors.ftl.

## Etwas Getipptes oder Gezeichnetes.
error-intake-too-long = Ein Text der Annahme ist zu lang oder enthält Zeichen, die man nicht sieht
error-intake-too-long-help = Namen, Kennzeichen, Fahrgestellnummer und Erreichbarkeit fassen 200 Zeichen, Beanstandung und Zeitpunkt 10.000. Kürzen Sie, was länger ist, und tippen Sie Eingefügtes neu.
error-layout-fixed = Die Bauart lässt sich nicht mehr ändern
error-layout-fixed-help = Messuhr oder Werkbank haben an ihrer Welle gemessen. Legen Sie für dieses Auto einen neuen Vorgang mit der richtigen Bauart an.
error-layout-takes-back = Die Änderung nimmt Antworten zurück
error-layout-takes-back-help = Die Antworten sind inzwischen andere als die gezeigten. Speichern Sie noch einmal.
error-warm-from-refused = Bei dieser Temperatur ist ein Gehäuse nicht warm
error-warm-from-refused-help = Geben Sie die Herstellerangabe in Grad Celsius ein, 30 oder mehr, oder lassen Sie sie weg.
error-signature-refused = Die Unterschrift lässt sich nicht sichern
error-signature-refused-help = Leeren Sie das Feld und lassen Sie den Kunden noch einmal unterschreiben, im Rahmen und nur mit seinem Namen.
error-bench-note-empty = Die Notiz der Werkbank ist leer
error-bench-note-empty-help = Schreiben Sie, was zu sehen war oder getan wurde, oder lassen Sie die Notiz weg.
error-bench-note-too-long = Die Notiz der Werkbank ist zu lang
error-bench-note-too-long-help = Sagen Sie es in bis zu 2.000 Zeichen oder schreiben Sie zwei Notizen.
error-wall-refused = Die Wand, die bleiben muss, kann nicht stimmen
error-wall-refused-help = Geben Sie sie in Millimetern von 0,1 bis 100 an, oder lassen Sie sie weg, wenn sie nicht bekannt ist.
error-pass-number-refused = Einen Durchgang mit dieser Nummer gibt es nicht
error-pass-number-refused-help = Durchgänge zählen von 1 an bis höchstens 200.
error-pass-without-bore = Die Bohrung wurde noch nicht gemessen
error-pass-without-bore-help = Messen Sie zuerst die Bohrung, wie sie vorgefunden wurde, dann tragen Sie den Durchgang ein.
error-pass-diameter-refused = Der Durchmesser nach dem Durchgang kann nicht stimmen
error-pass-diameter-refused-help = Geben Sie ihn in Millimetern von 1 bis 1.000 an, oder lassen Sie ihn weg, wenn er nicht gemessen wurde.
error-gauge-not-here = An diesen Schritt gehört keine Messuhr
error-gauge-not-here-help = Eine Messuhr wird bei den beiden Spielprüfungen am Lager abgelesen.
error-bore-too-many-depths = Es sind mehr Tiefen, als sich aufnehmen lassen
error-bore-too-many-depths-help = Höchstens 200 sind möglich. Messwerte einer Tiefe müssen genau dieselbe Tiefe nennen.
error-entry-beyond = Ein Wert geht über das hinaus, was sich festhalten lässt
error-entry-beyond-help = Suchen Sie nach einer Ziffer zu viel oder einem versehentlich eingefügten Text. Es wurde nichts eingetragen.

## Ein Vorgang, der voll ist.
error-visit-full = Der Vorgang hat so viele Einträge, wie einer haben kann
error-visit-full-help = Legen Sie für das Auto einen neuen Vorgang an und machen Sie dort weiter. Alles bisher Eingetragene bleibt.
error-visit-photos-full = Der Vorgang hat so viele Fotos, wie einer haben kann
error-visit-photos-full-help = Er fasst 200. Legen Sie für das Auto einen neuen Vorgang an, oder nennen Sie einen Grund für das fehlende Foto. Alles bisher Gesicherte bleibt.
error-bench-notes-full = Die Werkbank hat so viele Notizen, wie sie haben kann
error-bench-notes-full-help = In einem Vorgang sind es höchstens 100. Alles bisher Notierte bleibt.

## Eine Datei.
error-handover-spelling = Ein Eintrag in der Übergabedatei ist nicht so geschrieben, wie Steady schreibt
error-handover-spelling-help = Trauen Sie dieser Kopie nicht. Lassen Sie die Datei auf dem Gerät, von dem sie kommt, neu erstellen. Es wurde nichts übernommen.
error-handover-beyond = Ein Eintrag in der Übergabedatei enthält mehr, als sich festhalten lässt
error-handover-beyond-help = Kein Gerät schreibt einen solchen Eintrag. Lassen Sie die Datei auf dem Gerät, von dem sie kommt, neu erstellen. Es wurde nichts übernommen.
error-case-photo-unreadable = Ein Foto, das der Fall nennt, lässt sich nicht lesen
error-case-photo-unreadable-help = Nennen Sie eine Datei mit ihrem Pfad von der Falldatei aus und prüfen Sie, ob Sie sie lesen dürfen. Es wurde nichts eingetragen.
error-case-too-long = Der Fall hat mehr Zeilen, als ein Vorgang fassen kann
error-case-too-long-help = Er fasst 1.000 Antworten und Freigaben und ebenso viele Zeilen der Werkbank. Es wurde nichts eingetragen.
error-database-foreign = Die Datenbank ist keine, die Steady angelegt hat
error-database-foreign-help = Sie enthält etwas, das Steady nie schreibt. Wählen Sie die Datei steady.db eines Datenordners oder einer Sicherung. Es wurde nichts übernommen.
