### Sicherungen: warum eine nicht angelegt oder nicht übernommen wurde, und was zu tun ist.

error-backup-folder = Dieser Ordner ist keine Sicherung von Steady
error-backup-folder-help = Nennen Sie einen leeren Ordner oder einen, in dem schon eine Sicherung liegt. Er blieb, wie er war.
error-backup-file = Diese Datei ist keine Sicherung von Steady
error-backup-file-help = Wählen Sie eine Datei, die Steady als Sicherung gespeichert hat; ihr Name beginnt mit steady-backup. Nichts wurde übernommen.
error-backup-of-another = Dieser Ordner ist die Sicherung eines anderen Datenordners
error-backup-of-another-help = Nennen Sie den Ordner, der zu diesen Daten gehört, oder einen leeren. Nach dem Wiederherstellen in einen neuen Datenordner ist das normal: Nennen Sie einen leeren Ordner. War der Datenordner vertippt, nennen Sie den richtigen. Nichts wurde geändert.
error-backup-inside-data = Dieser Ordner liegt im Datenordner selbst
error-backup-inside-data-help = Nennen Sie einen Ordner auf einem anderen Laufwerk, damit ein Defekt nicht beide trifft.
error-backup-link = Im Ordner der Sicherung liegt eine Verknüpfung, wo eine Datei oder ein Ordner sein muss
error-backup-link-help = Nennen Sie einen anderen Ordner, oder nehmen Sie die Verknüpfung weg. Steady schreibt nichts durch Verknüpfungen.
error-backup-unwritable = Der Ort der Sicherung lässt sich nicht beschreiben
error-backup-unwritable-help = Nennen Sie einen Ordner, in den dieser Benutzer schreiben darf, auf einem Laufwerk ohne Schreibschutz. Die Daten sind, wie sie waren.
error-backup-busy = Ein anderes Steady arbeitet an dieser Sicherung
error-backup-busy-help = Warten Sie, bis es fertig ist, und versuchen Sie es noch einmal.
error-backup-newer = Die Sicherung stammt von einem neueren Steady
error-backup-newer-help = Aktualisieren Sie zuerst Steady. Die Sicherung blieb, wie sie war.
error-backup-would-lose = Vorgänge der letzten Sicherung sind nicht mehr hier, und niemand hat sie gelöscht
error-backup-would-lose-help = War der Datenordner vertippt, oder ist die Datenbank beschädigt? Stellen Sie zuerst die Sicherung wieder her, dann sichern Sie neu. Nichts wurde geändert.
error-backup-damaged = Eine Datei der Sicherung fehlt oder ist beschädigt
error-backup-damaged-help = Versuchen Sie die Sicherung einer anderen Zeit. Nichts wurde geändert. Um weiter zu sichern, nennen Sie einen leeren Ordner und behalten Sie diesen.
error-backup-unread = Eine Datei der Sicherung ist da und ließ sich nicht lesen
error-backup-unread-help = Das Laufwerk oder sein Kabel ist vielleicht defekt. Versuchen Sie es noch einmal. Misslingt es wieder, sichern Sie in einen leeren Ordner auf einem anderen Laufwerk und behalten Sie diesen.
error-backup-forked = Diese Daten und die letzte Sicherung gingen vom selben Anfang aus verschieden weiter
error-backup-forked-help = Eine Kopie des Datenordners ist ebenfalls in Gebrauch und hat diese Sicherung geschrieben. Nennen Sie für die Sicherung dieses Ordners einen leeren, und behalten Sie beide Sicherungen. Arbeiten Sie dann nur noch in einem der beiden Ordner. Nichts wurde geändert.
error-backup-checked = Dateien der Sicherung sind beschädigt
error-backup-checked-help = Sie sind oben genannt. Sichern Sie noch einmal: Was im Datenordner unversehrt ist, wird neu geschrieben. Prüfen Sie dann wieder; was noch beschädigt ist, gibt es nur in dieser Sicherung. Behalten Sie sie, und sichern Sie in einen leeren Ordner weiter.
error-read-while-written = In die Daten wurde geschrieben, während sie gelesen wurden
error-read-while-written-help = Schließen Sie das Steady, das diesen Ordner benutzt, und versuchen Sie es noch einmal. Nichts wurde übernommen.
error-photos-unhealed = Alles wurde übernommen, aber hier beschädigte Fotos ließen sich nicht ersetzen
error-photos-unhealed-help = Prüfen Sie, ob in den Ordner photos im Datenordner geschrieben werden darf, und übernehmen Sie dasselbe noch einmal.
error-backup-not-verified = Was geschrieben wurde, liest sich nicht so zurück
error-backup-not-verified-help = Das Laufwerk ist vielleicht defekt. Sichern Sie jetzt auf ein anderes. Frühere Sicherungen blieben, wie sie waren.
error-backup-no-generation = Die Sicherung enthält nichts aus dieser Zeit
error-backup-no-generation-help = Lassen Sie auflisten, was sie enthält, und nennen Sie eine dieser Zeiten oder keine.
error-backup-data-damaged = Die Datenbank des Datenordners ist beschädigt, deshalb wurde nichts gesichert
error-backup-data-damaged-help = Starten Sie Steady: Es legt die Datenbank unversehrt beiseite. Übernehmen Sie dann die letzte Sicherung; sie blieb, wie sie war.
error-no-data = In diesem Datenordner sind keine Vorgänge
error-no-data-help = Prüfen Sie, ob der Datenordner richtig genannt ist. Nichts wurde angelegt.
error-photo-damaged = Die Datei des Fotos ist nicht die, die abgelegt wurde
error-photo-damaged-help = Sie wurde beschädigt oder verändert und wird nicht als Beleg gezeigt. Übernehmen Sie eine gute Kopie: aus einer Sicherung oder von einem Gerät, das sie hat.

## The screens.
ui-backup = Sicherung
ui-backup-about = Alles in einer Datei: Vorgänge, Fotos, die eigenen Einstellungen der Werkstatt. Bewahren Sie sie nicht auf diesem Gerät auf. Sie enthält Namen von Kunden.
ui-backup-make = Sicherung anlegen
ui-backup-making = Jedes Foto wird gelesen und eingepackt … { $percent } %
ui-backup-save = Sicherung speichern
ui-backup-holds = { $visits ->
    [one] 1 Vorgang
   *[other] { $visits } Vorgänge
}, { $size } MB
ui-backup-photos-missing = { $photos ->
    [one] 1 Foto fehlt hier oder ist beschädigt und ist nicht enthalten. Übernehmen Sie zuerst eine frühere Sicherung.
   *[other] { $photos } Fotos fehlen hier oder sind beschädigt und sind nicht enthalten. Übernehmen Sie zuerst eine frühere Sicherung.
}
ui-backup-broken = { $visits ->
    [one] Das Protokoll von 1 Vorgang ist beschädigt. Er ist so enthalten, wie er ist: Behalten Sie auch eine frühere Sicherung.
   *[other] Die Protokolle von { $visits } Vorgängen sind beschädigt. Sie sind so enthalten, wie sie sind: Behalten Sie auch eine frühere Sicherung.
}
ui-backup-own-left-out = { $files ->
    [one] 1 eigene Datei der Werkstatt ist zu groß, hat einen Namen, den nicht jedes System annimmt, oder ist eine zu viel und wurde ausgelassen.
   *[other] { $files } eigene Dateien der Werkstatt sind zu groß, haben Namen, die nicht jedes System annimmt, oder sind zu viele und wurden ausgelassen.
}
ui-restore = Sicherung übernehmen
ui-restore-about = Wählen Sie eine Sicherungsdatei. Was sie enthält und dieses Gerät nicht hat, wird übernommen, beschädigte Fotos werden heil, und nichts wird überschrieben. Auch eine beschädigte Datenbank von Steady darf gewählt werden: Jeder Vorgang, der noch ganz zu lesen ist, wird übernommen.
ui-restore-choose = Sicherungsdatei wählen
ui-restore-mended = { $entries ->
    [one] 1 beschädigter Eintrag ist wieder heil.
   *[other] { $entries } beschädigte Einträge sind wieder heil.
}
ui-restore-healed = { $photos ->
    [one] 1 beschädigtes Foto ist wieder heil.
   *[other] { $photos } beschädigte Fotos sind wieder heil.
}
ui-restore-devices = { $devices ->
    [one] Was über 1 Gerät entschieden war, kam mit. Sehen Sie es unter Einstellungen, Geräte an; dort können Sie damit neu beginnen.
   *[other] Was über { $devices } Geräte entschieden war, kam mit. Sehen Sie sie unter Einstellungen, Geräte an; dort können Sie mit jedem neu beginnen.
}
ui-restore-differs = { $visits ->
    [one] 1 Vorgang geht hier anders weiter und blieb, wie er ist.
   *[other] { $visits } Vorgänge gehen hier anders weiter und blieben, wie sie sind.
}
ui-restore-damaged = { $visits ->
    [one] 1 Vorgang ist in der Sicherung beschädigt und blieb dort. Versuchen Sie eine frühere Sicherung.
   *[other] { $visits } Vorgänge sind in der Sicherung beschädigt und blieben dort. Versuchen Sie eine frühere Sicherung.
}
ui-restore-of-another = Sie ist nicht von diesem Gerät: Wem sie vertraut und was dort gelöscht wurde, kam nicht mit, und kein hier nicht bestätigtes Gerät hat eine Einstufung milder gemacht.
ui-restore-files-damaged = { $files ->
    [one] 1 Datei der Sicherung ist beschädigt und wurde ausgelassen. Alles andere kam an.
   *[other] { $files } Dateien der Sicherung sind beschädigt und wurden ausgelassen. Alles andere kam an.
}
ui-restore-photos-missing = { $photos ->
    [one] 1 Foto ist weder hier noch in der Sicherung heil.
   *[other] { $photos } Fotos sind weder hier noch in der Sicherung heil.
}
ui-photo-damaged = Die Datei dieses Fotos fehlt oder ist beschädigt. Es wird deshalb nicht gezeigt und beweist nichts. Übernehmen Sie eine gute Kopie: aus einer Sicherung oder von einem Gerät, das sie hat.
