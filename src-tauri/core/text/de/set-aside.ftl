### Was beiseitegelegt wurde, weil es nicht zu gebrauchen war, und was sich daraus lesen lässt.

## Warum ein Ordner beiseitegelegt wurde.
set-aside-damaged = Die Datenbank war beschädigt und wurde mit ihren Fotos beiseitegelegt. Es wurde nichts gelöscht.
set-aside-no-database = Die Datei der Datenbank war keine Datenbank. Sie wurde mit den Fotos beiseitegelegt. Es wurde nichts gelöscht.
set-aside-empty = Die Datei der Datenbank war leer. Sie wurde mit den Fotos beiseitegelegt. Es wurde nichts gelöscht.
set-aside-missing = Die Datenbank fehlte. Die Fotos wurden beiseitegelegt. Es wurde nichts gelöscht.

## Ablehnungen.
error-salvage-missing = Diese Datenbank gibt es nicht
error-salvage-missing-help = Prüfen Sie den Namen und ob der Datenträger angeschlossen ist. Wurde der Ordner ohne Datenbank beiseitegelegt, liegen dort nur die Fotos.
error-salvage-empty = Die Datei der Datenbank ist leer
error-salvage-empty-help = Es stand nie etwas darin, oder alles ist fort. Suchen Sie eine andere Kopie: eine Sicherung oder ein anderes Gerät.
error-salvage-no-database = Die Datei ist keine Datenbank von Steady
error-salvage-no-database-help = Nichts darin liest sich wie ein Teil davon. Nennen Sie die steady.db eines Datenordners, einer Sicherung oder eines beiseitegelegten Ordners. Die Datei blieb, wie sie war.
error-unknown-set-aside = Diesen beiseitegelegten Ordner gibt es nicht
error-unknown-set-aside-help = Er wurde verschoben oder entfernt, seit Steady gestartet ist. Gehen Sie zum ersten Bildschirm zurück und sehen Sie noch einmal nach.
error-erase-set-aside = Nichts wurde gelöscht, weil sich ein beiseitegelegter Ordner nicht nach dem Vorgang durchsuchen ließ
error-erase-set-aside-help = Beheben Sie, was genannt ist, oder verschieben Sie diesen Ordner aus dem Datenordner, und löschen Sie dann noch einmal. Was in einem verschobenen Ordner liegt, wird nicht gelöscht.
error-erase-unswept = Der Vorgang ist gelöscht, aber Teile davon stehen vielleicht noch in Dateien, die sich noch nicht bereinigen ließen
error-erase-unswept-help = Schließen Sie, was die Daten sonst noch liest, etwa eine Sicherung oder einen Export. Steady macht dann von selbst weiter, auf dem ersten Bildschirm oder beim nächsten Start. Der Vorgang kommt nicht wieder.
error-nothing-to-export-set-aside = Es gibt keinen Vorgang zu übergeben: Die Daten wurden beiseitegelegt
error-nothing-to-export-set-aside-help = Holen Sie zuerst zurück, was lesbar ist: auf dem ersten Bildschirm oder mit steady salvage.

## Auf den Bildschirmen.
ui-set-aside = Daten wurden beiseitegelegt
ui-set-aside-readable = { $visits ->
    [0] Kein Vorgang lässt sich ganz daraus lesen.
    [one] 1 Vorgang lässt sich daraus lesen, mit { $photos } seiner Fotos.
   *[other] { $visits } Vorgänge lassen sich daraus lesen, mit { $photos } ihrer Fotos.
}
ui-set-aside-lost = { $lost ->
    [one] Von 1 Vorgang wurde etwas gefunden, aber nicht alles.
   *[other] Von { $lost } Vorgängen wurde etwas gefunden, aber nicht alles.
}
ui-set-aside-uncounted = Was sich daraus lesen lässt, konnte nicht gezählt werden. Beim nächsten Start wird es wieder versucht.
ui-set-aside-folder = Beiseitegelegter Ordner
ui-take-back = Zurückholen, was lesbar ist
ui-taking-back = Wird gelesen …
ui-taken-back = { $taken ->
    [0] Alles, was lesbar ist, war schon hier.
    [one] 1 Vorgang zurückgeholt.
   *[other] { $taken } Vorgänge zurückgeholt.
}
ui-taken-back-lost = { $lost ->
    [one] 1 Vorgang ist nicht mehr ganz und bleibt im Ordner.
   *[other] { $lost } Vorgänge sind nicht mehr ganz und bleiben im Ordner.
}
ui-taken-back-photos = { $photos ->
    [one] 1 Foto wurde nicht ganz gefunden.
   *[other] { $photos } Fotos wurden nicht ganz gefunden.
}
ui-dismiss-set-aside = Ich habe das gelesen
ui-dismiss-set-aside-about = Der Hinweis verschwindet. Der Ordner bleibt, und die Einstellungen zeigen ihn.
