### Vorgänge übergeben: Dateien für ein anderes Gerät, Löschen, Sicherungen. Absagen wie in errors.ftl.

## Absagen bei einer Übergabedatei.
error-handover-unknown = Das ist keine Übergabedatei von Steady
error-handover-unknown-help = Wählen Sie die .steady-Datei, wie sie erstellt wurde. Eine, die entpackt und neu gepackt wurde, gilt nicht. Es wurde nichts übernommen.
error-handover-cut-short = Die Übergabedatei ist abgeschnitten
error-handover-cut-short-help = Kopieren Sie sie noch einmal von dort, wo sie erstellt wurde, oder lassen Sie sie neu erstellen. Es wurde nichts übernommen.
error-handover-newer = Die Übergabedatei stammt von einem neueren Steady
error-handover-newer-help = Installieren Sie hier die neuere Version und übernehmen Sie dann die Datei. Die Daten hier blieben unberührt.
error-handover-changed = Die Übergabedatei wurde nach dem Erstellen geändert
error-handover-changed-help = Trauen Sie dieser Kopie nicht. Lassen Sie die Datei auf dem Gerät, von dem sie kommt, neu erstellen. Es wurde nichts übernommen.
error-handover-signature = Die Signatur der Übergabedatei passt nicht
error-handover-signature-help = Trauen Sie dieser Kopie nicht. Lassen Sie die Datei auf dem Gerät, von dem sie kommt, neu erstellen. Es wurde nichts übernommen.
error-handover-part-missing = Ein Teil der Übergabedatei fehlt
error-handover-part-missing-help = Lassen Sie die Datei auf dem Gerät, von dem sie kommt, neu erstellen. Es wurde nichts übernommen.
error-handover-part-extra = Die Übergabedatei enthält etwas, das nicht hineingehört
error-handover-part-extra-help = Trauen Sie dieser Kopie nicht. Lassen Sie die Datei auf dem Gerät, von dem sie kommt, neu erstellen. Es wurde nichts übernommen.
error-handover-part-name = Die Übergabedatei nennt einen Teil, den kein Vorgang hat
error-handover-part-name-help = Trauen Sie dieser Datei nicht. Die Nummer sagt, welcher Teil ihrer Liste es ist. Es wurde nichts übernommen.
error-handover-too-large = Die Übergabedatei ist zu groß
error-handover-too-large-help = Eine Datei fasst bis zu 4 GB, und kein Text darf länger sein, als sein Feld zulässt. Übergeben Sie weniger Vorgänge auf einmal; es wurde nichts übernommen.
error-handover-chain = Ein Protokoll in der Übergabedatei ist nicht vollständig
error-handover-chain-help = Trauen Sie dieser Kopie nicht. Lassen Sie die Datei auf dem Gerät, von dem sie kommt, neu erstellen. Es wurde nichts übernommen.
error-handover-forked = Das Protokoll eines Geräts geht hier anders weiter als in der Datei
error-handover-forked-help = Ein Datenordner wurde kopiert und unter einem Namen zweimal benutzt. Behalten Sie beide Kopien; keine wurde geändert. Benutzen Sie von nun an nur einen der beiden Ordner; was der andere von diesem Vorgang enthält, lesen Sie dort.
error-handover-photo = Ein Foto in der Übergabedatei ist nicht so, wie Steady Fotos sichert
error-handover-photo-help = Trauen Sie dieser Datei nicht. Es wurde nichts übernommen.
error-file-changed = Die Datei hat sich geändert, während Sie gefragt wurden
error-file-changed-help = Es wurde nichts übernommen. Importieren Sie sie noch einmal und lesen Sie neu, was sie ändern würde.
error-handover-unreadable = Die Datei ist nicht lesbar
error-handover-unreadable-help = Prüfen Sie, ob sie da ist und ob Sie sie lesen dürfen. Es wurde nichts übernommen.
error-handover-unwritable = Die Übergabedatei kann nicht geschrieben werden
error-handover-unwritable-help = Nennen Sie einen anderen Ort, an den Sie schreiben dürfen, oder schaffen Sie Platz.

## Absagen rundherum.
error-visit-erased = Der Vorgang wurde auf diesem Gerät gelöscht
error-visit-erased-help = Der Kunde hat das verlangt, und er bleibt hier gelöscht. Es wurde nichts übernommen und nichts herausgegeben.
error-erase-word-differs = Das Wort zur Bestätigung passt nicht
error-erase-word-differs-help = Wiederholen Sie das Kennzeichen des Vorgangs oder den letzten Block seiner Kennung. Es wurde nichts gelöscht.
error-chain-broken = Das Protokoll des Vorgangs ist beschädigt
error-chain-broken-help = Es kann nicht als Ganzes übergeben werden. Lassen Sie die Daten dieses Geräts, wie sie sind, und nehmen Sie eine Sicherung von vorher.
error-nothing-to-export = Es gibt keinen Vorgang zu übergeben
error-nothing-to-export-help = Tragen Sie zuerst einen Vorgang ein, oder nennen Sie einen anderen Datenordner.
error-knowledge-not-kept = Dieser Vorgang wurde nach einem Wissensstand eingeordnet, der hier nicht aufbewahrt ist
error-knowledge-not-kept-help = Sehen Sie ihn in dem Datenordner an, der ihn eingeordnet hat, oder nennen Sie einen anderen Stand.
error-nothing-to-salvage = In dieser Datenbank ist nichts lesbar
error-nothing-to-salvage-help = Nennen Sie die steady.db eines beiseitegelegten Ordners. Sie blieb, wie sie war.

## Auf den Bildschirmen.
ui-handover = Übergeben
ui-handover-about = Eine Datei mit Protokoll und Fotos dieses Vorgangs, für ein anderes Gerät mit Steady. Sie ist signiert, und eine geänderte Kopie wird dort abgewiesen.
ui-handover-make = Datei erstellen
ui-handover-making = Wird erstellt …
ui-handover-save = Datei speichern
ui-handover-where = Gespeicherte Dateien kommen in den Ordner für Downloads.
ui-handover-share = Datei senden
ui-handover-size = { $size } MB
ui-import = Vorgänge von einem anderen Gerät übernehmen
ui-import-about = Wählen Sie eine .steady-Datei, oder legen Sie sie hier ab. Vorgänge, die schon hier sind, wachsen um das Neue; nichts wird überschrieben.
ui-import-choose = Datei wählen
ui-import-sending = Wird gelesen … { $percent } %
ui-import-taking = Wird geprüft und übernommen …
ui-import-done = { $taken ->
    [0] Alles aus der Datei war schon hier.
    [one] 1 Vorgang übernommen.
   *[other] { $taken } Vorgänge übernommen.
}
ui-import-unchanged = { $unchanged ->
    [one] 1 Vorgang war schon hier.
   *[other] { $unchanged } Vorgänge waren schon hier.
}
ui-import-erased = { $erased ->
    [one] 1 Vorgang wurde hier gelöscht und bleibt gelöscht.
   *[other] { $erased } Vorgänge wurden hier gelöscht und bleiben gelöscht.
}
ui-erase-visit = Diesen Vorgang löschen
ui-erase-visit-about = Wenn der Kunde es verlangt. Protokoll und Fotos dieses Vorgangs werden endgültig von diesem Gerät entfernt, und eine später übernommene Datei bringt sie nicht zurück. Papiere und Dateien, die vorher gespeichert oder gesendet wurden, sind davon nicht erfasst.
ui-erase-visit-word = Geben Sie zur Bestätigung { $word } ein
ui-erase-visit-now = Endgültig löschen
