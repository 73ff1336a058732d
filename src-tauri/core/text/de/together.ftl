### Schritte, die sich eine Ansicht teilen: das Spiel in beide Richtungen, und was zugleich in Ordnung genannt werden kann.

## Beide Richtungen.
pair-play = Spiel fühlen
pair-play-watch = Nur mit den Händen, kein Montiereisen. Finger weg von Gelenken, Kanten, heißen Teilen. Der Herstellervorschrift folgen.
pair-play-do = Nahe am Lager greifen. Spalt zwischen Welle und Gehäuse beobachten. Bewegen sich beide: „Nicht gemacht“, Gehäuse, Schrauben, Aufhängung ansehen, neu fühlen.
pair-play-do-rubber = Welle am Lager greifen. Lager gegen Halter beobachten. Federt es zurück: „Federt“. Stößt es an: „Schlägt an“.
pair-play-do-rubber-figure = Welle am Lager greifen. Lager gegen Halter beobachten. Der Hersteller erlaubt { $figure }. Stößt es an: „Schlägt an“.
pair-play-vertical = Auf und ab: heben, sinken lassen
pair-play-lateral = Hin und her: nach links, nach rechts
pair-short-play-vertical = Auf und ab
pair-short-play-lateral = Hin und her
pair-within-figure = Bis { $figure }
pair-beyond-figure = Über { $figure }
pair-of = { $what }: { $direction }

## Was anzusehen ist.
ui-looks = Jedes Teil ansehen
ui-looks-watch = Augenschutz und Handschuhe an. Heißer Auspuff. An nichts hängen oder hebeln, keine Finger in Gelenke. Orange Kabel nicht berühren. Die Vorschrift des Herstellers geht vor.
ui-looks-do = Jedes Teil ausleuchten. Nicht in Ordnung oder nicht zu sehen: Zeile öffnen.
ui-looks-sound = { $count ->
    [one] Dieses in Ordnung
   *[other] Alle { $count } in Ordnung
}
ui-looks-none = Hier ist nichts mehr anzusehen.
ui-photo-which = Foto von welchem Teil?
looked-housing-look = Gehäuse
looked-housing-look-for = Risse, Schrauben, Spuren, Fett, Staub
looked-support-look = Gummilager
looked-support-look-for = Gummi, Halter, Schrauben
looked-coupling-look = Gelenke, Gelenkscheiben
looked-coupling-look-for = Gummi, Manschetten, Schrauben
looked-shaft-look = Welle
looked-shaft-look-for = Dellen, Knicke, Faser, Gewichte
looked-shield-and-mounts = Bleche und Aggregatelager
looked-shield-and-mounts-for = Bleche drücken. Lager, Scheuern

error-looks-changed = Inzwischen sind andere Teile offen, als in der Liste standen
error-looks-changed-help = Es wurde nichts eingetragen. Lesen Sie die Liste noch einmal und sagen Sie dann, dass sie in Ordnung sind.
