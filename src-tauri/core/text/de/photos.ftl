### Fotos: Markierungen, Paare, Fotos, die gerade entstanden, der Code zum Weitergeben. Ablehnungen wie in errors.ftl.

## Ablehnungen.
error-photo-heic = Das Foto ist ein HEIC, das hier nicht gelesen werden kann
error-photo-heic-help = Stellen Sie die Kamera auf JPEG („maximale Kompatibilität“) und nehmen Sie es neu auf, oder wählen Sie eine JPEG-Kopie.
error-photo-not-of-step = Dieses Foto gehört nicht zu dem Schritt
error-photo-not-of-step-help = Öffnen Sie den Schritt neu und wählen Sie eines seiner Fotos. Nichts wurde aufgezeichnet.
error-photo-not-wanted = Auf dieses Foto wartet nichts mehr
error-photo-not-wanted-help = Öffnen Sie den Schritt und fügen Sie das Foto dort hinzu.
error-marks-too-many = Zu viele Markierungen auf einem Foto
error-marks-too-many-help = Ein Foto nimmt bis zu 12. Nehmen Sie einige zurück und behalten Sie die übrigen.
error-mark-refused = Eine Markierung kann nicht behalten werden
error-mark-refused-help = Zeichnen Sie sie auf das Bild und etwas größer, eine freie Linie in weniger Zügen.
error-mark-label-refused = Die Worte auf dem Foto können nicht behalten werden
error-mark-label-refused-help = Schreiben Sie 1 bis 40 Zeichen in einer Zeile, ohne Steuerzeichen.
error-waiver-too-long = Die Begründung ist zu lang
error-waiver-too-long-help = Sagen Sie es in bis zu 200 Zeichen.

## Das Protokoll.
entry-photo-marked = Foto markiert
entry-photos-paired = Fotos als vorher und nachher gezeigt, oder wieder einzeln

## Papiere.
photo-caption-marked = { $caption }. Markiert: { $labels }
photo-alt-marked = { $alt } Das Foto ist markiert.
photo-alt-labelled = { $alt } Darauf markiert: { $labels }.
photo-caption-before = Vorher, { $at }: { $said }
photo-caption-after = Nachher, { $at }: { $said }
photo-alt-before = Vorher, aufgenommen { $at }. { $said }
photo-alt-after = Nachher, aufgenommen { $at }. { $said }

## Genauer hinsehen und markieren.
ui-photo-closer = Genauer ansehen, markieren
ui-photo-title = Foto: { $title }
ui-photo-back = Zurück zum Schritt
ui-photo-none-yet = Zu diesem Schritt gibt es noch kein Foto.
ui-zoom = Vergrößerung
ui-zoom-in = Größer
ui-zoom-out = Kleiner
ui-zoom-one = 1:1
ui-zoom-fit = Ganz
ui-mark-tools = Was der Finger tut
ui-mark-look = Schieben
ui-mark-arrow = Pfeil
ui-mark-ring = Ring
ui-mark-freehand = Zeichnen
ui-mark-label = Worte
ui-mark-how-look = Ziehen schiebt, zwei Finger oder + und - vergrößern. Mit Tastatur: Pfeiltasten schieben, + und - vergrößern.
ui-mark-how-arrow = Vom Ende zur Spitze ziehen. Mit Tastatur: Pfeiltasten bewegen das Kreuz, Enter setzt jedes Ende.
ui-mark-how-ring = Über das ziehen, was der Ring umschließt. Mit Tastatur: Pfeiltasten bewegen das Kreuz, Enter setzt jede Ecke.
ui-mark-how-freehand = Mit dem Finger zeichnen. Mit Tastatur: Enter setzt den Stift auf und ab, Pfeiltasten zeichnen.
ui-mark-how-label = Worte schreiben, dann die Stelle berühren. Mit Tastatur: Pfeiltasten bewegen das Kreuz, Enter setzt sie.
ui-mark-words = Worte auf dem Foto, bis zu 40 Zeichen
ui-mark-back = Letzte Markierung zurück
ui-mark-clear = Alle Markierungen wegnehmen
ui-mark-keep = Markierungen behalten
ui-mark-drop = Lassen, wie es war
ui-mark-undone = Die letzte Änderung an den Markierungen ist zurückgenommen.
ui-mark-count = { $count ->
    [0] Keine Markierungen
    [one] { $count } Markierung
   *[other] { $count } Markierungen
}
ui-mark-unsaved = Noch nicht behalten.
ui-mark-kept = Die Markierungen sind behalten. Das Foto selbst bleibt, wie es aufgenommen wurde.
ui-pair = Vorher und nachher
ui-pair-about = Frühere Fotos dieses Schritts bleiben. Eines davon kann neben dem neuesten stehen, hier und im Befund.
ui-pair-before = Vorher, { $when }
ui-pair-after = Nachher, { $when }
ui-pair-with = Dieses als „vorher“ zeigen
ui-pair-alone = Das neueste allein zeigen

## Ein Foto, das gerade entstand, als die App endete.
ui-wanted = Ein Foto zu „{ $title }“ wurde gerade aufgenommen, { $when }.
ui-wanted-choose = Auswählen
ui-wanted-found = Das Foto der Kamera nehmen, { $when }
ui-wanted-drop = Nicht mehr gewünscht

## Der kurze Text als Code.
ui-qr = Als QR-Code zeigen
ui-qr-hide = QR-Code ausblenden
ui-qr-of = QR-Code, der den kurzen Text enthält
ui-qr-about = Richten Sie die Kamera des anderen Telefons darauf. Er enthält den kurzen Text oben; nichts geht durch ein Netz.
