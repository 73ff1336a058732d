### Das Sortieren: warum eine Prüfung die nächste ist oder keine, Überraschungen, Entscheidungen und was eine falsche kostet.
### loss-... folgt auf „falls“: Das Verb steht am Ende.

next-informs = Diese Prüfung würde am meisten verraten.
next-rating = Diese Prüfung könnte die Einstufung noch verschärfen.
stop-nothing-changes = Keine Prüfung, die noch offen ist, würde ändern, was zu tun ist.
stop-not-worth = Was noch offen ist, würde für sein Risiko zu wenig verraten.
stop-all-done = Jede Prüfung, die möglich ist, ist gemacht.

surprise-signs-disagree = Die Zeichen widersprechen sich: Keine Ursache der Liste erklärt sie zusammen. Prüfen Sie die hier genannten Antworten noch einmal.
surprise-not-listed = Vielleicht steckt etwas dahinter, das nicht auf dieser Liste steht: Die gelisteten Ursachen erklären wenig von dem, was gefunden wurde.

judgement-warning-or-caution = Das Auto zurückhalten, oder es bis zur Reparatur fahren lassen?
judgement-bearing-now-or-watch = Das Lager jetzt reparieren, oder es beobachten?
judgement-repair-now-or-watch = Diese Ursache jetzt reparieren, oder sie beobachten?

course-hold-back = Nicht fahren, bis es repariert ist
course-drive-until-repair = Bis zur Reparatur fahren lassen
course-repair-now = Jetzt reparieren
course-watch = Beobachten

loss-held-back-in-vain = das Auto unnötig stillstand
loss-driven-on-a-bad-bearing = es mit einem schlechten Lager gefahren wurde
loss-bearing-repair-in-vain = das Lager umsonst repariert wurde
loss-bearing-fault-left = der Fehler am Lager weiterging und Gehäuse und Welle beschädigte
loss-repair-in-vain = die Reparatur umsonst war
loss-fault-left = der Fehler weiterging

entry-opinion-given = Meinung abgegeben
entry-outcome-confirmed = Ergebnis bestätigt

layout-file-refused = Eine Bauart-Datei dieser Werkstatt ist nicht brauchbar. Berichtigen Sie sie, oder nehmen Sie sie aus dem Ordner layouts; die anderen Bauarten funktionieren.
knowledge-row-refused = Eine Zeile des eigenen Fachwissens dieser Werkstatt ist nicht brauchbar. Berichtigen Sie sie, oder nehmen Sie sie aus dem Ordner knowledge; die anderen Zeilen funktionieren.

finding-opinion = { $by } meint: { $cause }. { $reason }
finding-outcome = Tatsächlich vorgefunden: { $causes }, sagt { $by } ({ $at }).
