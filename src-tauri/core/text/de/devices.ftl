### Geräte und ihre Schlüssel: wer was geschrieben hat, wem zu trauen ist, was eine Datei bringt. Absagen wie in errors.ftl.

## Absagen.
error-key-unreadable = Der eigene Schlüssel dieses Geräts ist nicht lesbar
error-key-unreadable-help = Er wird gebraucht, um Einträge zu signieren. Legen Sie diesen Datenordner beiseite und stellen Sie seine letzte Sicherung in einem neuen wieder her.
error-handover-before-signatures = Die Übergabedatei wurde erstellt, bevor Einträge signiert wurden
error-handover-before-signatures-help = Aktualisieren Sie Steady auf dem Gerät, von dem sie kommt, und lassen Sie die Datei dort neu erstellen. Es wurde nichts übernommen.
error-handover-unproven = Von einem Eintrag in der Übergabedatei ist nicht bewiesen, dass er von seinem Schreiber stammt
error-handover-unproven-help = Trauen Sie dieser Kopie nicht. Lassen Sie die Datei auf dem Gerät neu erstellen, das den Vorgang geschrieben hat. Nichts davon wurde übernommen.
error-handover-unsigned = Die Übergabedatei enthält Einträge aus der Zeit vor den Signaturen
error-handover-unsigned-help = Niemand kann beweisen, wer sie geschrieben hat; sie kommen nur aus einer eigenen Sicherung herein. Nichts von dem Vorgang wurde übernommen.
error-handover-own-name = Die Übergabedatei enthält Einträge im Namen dieses Geräts, die es nicht hat
error-handover-own-name-help = Dieses Gerät bringt sich selbst nichts. Wurde sein Datenordner kopiert oder auf einen früheren Tag zurückgesetzt, stellen Sie seine letzte Sicherung wieder her; wenn nicht, trauen Sie der Datei nicht. Nichts von dem Vorgang wurde übernommen.
error-handover-retired = Die Übergabedatei enthält neue Einträge eines Geräts, das hier ausgemustert ist
error-handover-retired-help = Ein verlorenes Gerät kann in fremden Händen sein. Ist es wieder da, nehmen Sie es unter Einstellungen, Geräte zurück und übernehmen Sie die Datei noch einmal. Nichts von dem Vorgang wurde übernommen.
error-handover-ahead = Die Übergabedatei enthält Einträge mit einem Datum, das weit voraus liegt
error-handover-ahead-help = Vergleichen Sie Datum und Uhrzeit auf beiden Geräten. Stellen Sie das falsche richtig und übernehmen Sie die Datei wieder, wenn jenes Datum erreicht ist. Nichts von dem Vorgang wurde übernommen.
error-handover-opened-twice = Ein Vorgang in der Übergabedatei ist hier ein anderer
error-handover-opened-twice-help = Zwei Geräte sagen, sie hätten ihn eröffnet; das kann nicht sein. Kam der hiesige mit einer Übernahme, der Sie nicht trauen, nehmen Sie zuerst diese zurück. Nichts von dem Vorgang wurde übernommen.
error-handover-held-back = Ein Teil des Vorgangs wurde ausgelassen
error-handover-held-back-help = Seine letzten Einträge stammen von einem hier stillgelegten Gerät oder tragen ein Datum weit in der Zukunft. Alles andere des Vorgangs wurde übernommen und zählt.
error-handover-milder = Was ein Vorgang sagt, würde sich durch ein Gerät ändern, das hier niemand bestätigt hat
error-handover-milder-help = Sehen Sie auf dem Gerät, das ihn geschrieben hat, unter Einstellungen, Geräte nach seinem Code, und vergleichen Sie ihn zuerst hier; übernehmen Sie die Datei dann noch einmal. Bis dahin bleibt die Einstufung, wie sie ist. Nichts von dem Vorgang wurde übernommen.
error-handover-writers = In der Übergabedatei schrieben mehr Geräte, als irgendeine Werkstatt hat
error-handover-writers-help = Trauen Sie ihr nicht, es sei denn, jemand, den Sie kennen, kann sagen, wie sie entstand. Nichts von dem Vorgang wurde übernommen.
error-unknown-device = Dieses Gerät ist hier nicht bekannt
error-unknown-device-help = Öffnen Sie Einstellungen, Geräte noch einmal. Es wurde nichts geändert.
error-code-differs = Der Code ist nicht der des Geräts
error-code-differs-help = Lesen Sie ihn noch einmal vom Bildschirm des anderen Geräts ab, unter Einstellungen, Geräte. Weicht er weiter ab, trauen Sie nicht, was von dort kam. Es wurde nichts bestätigt.
error-no-device-in-photo = Im Foto wurde kein Code eines Geräts gefunden
error-no-device-in-photo-help = Öffnen Sie am anderen Gerät Einstellungen, Geräte, lassen Sie dort den QR-Code anzeigen, füllen Sie das halbe Bild damit, und versuchen Sie es noch einmal; oder vergleichen Sie die Ziffern. Es wurde nichts bestätigt.
error-device-name-too-long = Der Name des Geräts ist zu lang
error-device-name-too-long-help = Bis zu 60 Zeichen. Es wurde nichts geändert.
error-unknown-import = Diese Übernahme ist hier nicht bekannt oder schon zurückgenommen
error-unknown-import-help = Öffnen Sie Einstellungen, Geräte noch einmal. Es wurde nichts geändert.

## Was bewiesen ist, auf Befund und Hinweis.
field-signed = Nachweis
signed-this-device = { $entries ->
    [one] 1 Eintrag, signiert von diesem Gerät.
   *[other] { $entries } Einträge, signiert von diesem Gerät.
}
signed-confirmed = { $entries ->
    [one] 1 Eintrag, signiert von { $device }, einem bestätigten Gerät.
   *[other] { $entries } Einträge, signiert von { $device }, einem bestätigten Gerät.
}
signed-not-confirmed = { $entries ->
    [one] 1 Eintrag, signiert von { $device }, einem noch nicht bestätigten Gerät.
   *[other] { $entries } Einträge, signiert von { $device }, einem noch nicht bestätigten Gerät.
}
signed-retired = { $entries ->
    [one] 1 Eintrag, signiert von { $device }, einem ausgemusterten Gerät.
   *[other] { $entries } Einträge, signiert von { $device }, einem ausgemusterten Gerät.
}
signed-before-signatures = { $entries ->
    [one] 1 Eintrag aus der Zeit vor den Signaturen.
   *[other] { $entries } Einträge aus der Zeit vor den Signaturen.
}
unknown-device = { $entries ->
    [one] 1 Eintrag kam von einem Gerät, das hier nicht bestätigt ist.
   *[other] { $entries } Einträge kamen von einem Gerät, das hier nicht bestätigt ist.
}
unknown-unsigned = { $entries ->
    [one] 1 Eintrag stammt aus der Zeit vor den Signaturen. Nichts beweist, wer ihn schrieb.
   *[other] { $entries } Einträge stammen aus der Zeit vor den Signaturen. Nichts beweist, wer sie schrieb.
}
note-proven = Jeder Teil dieses Protokolls ist von einem unserer Geräte signiert und steht da, wie er geschrieben wurde.
note-device = Ein Teil dieses Protokolls kam von einem Gerät, das wir noch nicht als unseres bestätigt haben.
note-unsigned = Ein Teil dieses Protokolls ist älter als unsere Signaturen. Wir können nicht beweisen, wer ihn schrieb.

## Auf den Bildschirmen.
ui-devices = Geräte
ui-devices-about = Jedes Gerät signiert, was auf ihm geschrieben wird. Vergleichen Sie einmal seinen Code, dann ist bekannt, was von ihm kommt.
ui-this-device = Dieses Gerät
ui-this-device-about = Zeigen Sie diesen Code dem, der ihn auf einem anderen Gerät vergleicht, oder lesen Sie ihn vor.
ui-device-qr = Als QR-Code zeigen
ui-device-qr-of = QR-Code des Schlüssels dieses Geräts
ui-device-qr-about = Ein anderes Gerät liest ihn unter Einstellungen, Geräte, statt dass Ziffern verglichen werden.
ui-other-devices = Andere Geräte
ui-other-devices-none = Bisher keine. Ein Gerät steht hier, sobald etwas von ihm übernommen wurde.
ui-device-unnamed = Gerät ohne Namen
ui-device-met = Zuerst gesehen: { $when }
ui-trust-this-device = Dieses Gerät
ui-trust-confirmed = Bestätigt
ui-trust-not-confirmed = Noch nicht bestätigt
ui-trust-retired = Ausgemustert: Neues von ihm kommt nicht herein
ui-trust-before-signatures = Aus der Zeit vor den Signaturen
ui-from-confirmed = Geschrieben auf { $device }
ui-from-not-confirmed = Von einem noch nicht bestätigten Gerät
ui-from-retired = Von einem ausgemusterten Gerät
ui-from-before-signatures = Geschrieben vor den Signaturen
ui-compare = Code vergleichen
ui-compare-about = Öffnen Sie auf dem anderen Gerät Einstellungen, Geräte. Steht dort unter „Dieses Gerät“ derselbe Code, Ziffer für Ziffer?
ui-compare-scan = Seinen QR-Code lesen
ui-compare-scanning = Sein Code wird gesucht …
ui-compare-same = Er ist gleich
ui-compare-differs = Er weicht ab
ui-compare-differs-told = Dann kam das nicht von dem Gerät, das vor Ihnen liegt. Trauen Sie ihm nicht. Es wurde nichts bestätigt.
ui-device-name = Name des Geräts
ui-device-name-keep = Namen behalten
ui-device-retire = Ausmustern
ui-device-retire-about = Für ein Gerät, das verloren oder ersetzt wurde. Was hier ist, bleibt; Neues von ihm kommt nicht mehr herein.
ui-device-take-over = Dieses Gerät hat es ersetzt
ui-device-take-over-about = Für ein eigenes Telefon, das verloren ging oder ersetzt wurde und dessen Sicherung hier übernommen wurde. Was es schrieb, zählt als bestätigt; Neues kommt von ihm nicht mehr herein.
ui-device-reset = Neu beginnen
ui-device-reset-about = Es gilt als noch nicht bestätigt, wie beim ersten Mal. Was vorher entschieden wurde, bleibt aufgeschrieben.
ui-decided = Was entschieden wurde
ui-decided-confirmed = Bestätigt von { $by }, { $when }
ui-decided-named = „{ $name }“ genannt von { $by }, { $when }
ui-decided-retired = Ausgemustert von { $by }, { $when }
ui-decided-reset = Neu begonnen von { $by }, { $when }
ui-imports = Was übernommen wurde
ui-imports-none = Bisher wurde keine Datei übernommen.
ui-import-brought = { $visits ->
    [one] 1 Vorgang, { $when }
   *[other] { $visits } Vorgänge, { $when }
}
ui-import-was-taken-back = Zurückgenommen: { $when }
ui-import-back = Diese Übernahme zurücknehmen
ui-import-back-about = Was sie brachte, bleibt wieder weg, und ihre Vorgänge lesen sich wie zuvor. Ein Vorgang, den dieses Gerät weitergeführt hat, bleibt, wie er ist.
ui-import-back-now = Zurücknehmen
ui-import-gone = { $visits ->
    [one] 1 Vorgang ist wieder aus der Liste.
   *[other] { $visits } Vorgänge sind wieder aus der Liste.
}
ui-import-restored = { $visits ->
    [one] 1 Vorgang liest sich wie zuvor.
   *[other] { $visits } Vorgänge lesen sich wie zuvor.
}
ui-import-stayed = { $visits ->
    [one] 1 Vorgang bleibt: dieses Gerät hat ihn weitergeführt.
   *[other] { $visits } Vorgänge bleiben: dieses Gerät hat sie weitergeführt.
}
ui-preview = Das übernehmen?
ui-preview-looking = Es wird nachgesehen, was sich ändern würde …
ui-preview-made = Erstellt { $when }, nach der Uhr jenes Geräts
ui-preview-brings = { $entries ->
    [one] Das bringt 1 neuen Eintrag.
   *[other] Das bringt { $entries } neue Einträge.
}
ui-preview-mends = { $entries ->
    [one] 1 hier beschädigter Eintrag wäre wieder heil.
   *[other] { $entries } hier beschädigte Einträge wären wieder heil.
}
ui-preview-nothing = Alles darin ist schon hier.
ui-preview-is-new = Hier neu
ui-preview-milder = Ihre Einstufung würde milder
ui-preview-now = Jetzt
ui-preview-then = Danach
ui-preview-apart = { $visits ->
    [one] 1 Vorgang der Datei bleibt draußen:
   *[other] { $visits } Vorgänge der Datei bleiben draußen:
}
ui-preview-take = Übernehmen
ui-preview-leave = Nicht übernehmen
ui-preview-left = Es wurde nichts übernommen.
