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
