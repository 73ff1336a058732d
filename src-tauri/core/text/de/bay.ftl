### The screens around the work: first start, settings, practice, the driver's seat, interruptions.

## First start.
ui-welcome-what-title = Das Geräusch von Hand prüfen
ui-welcome-what = Steady führt Sie Schritt für Schritt zum Lager einer Kardanwelle: worauf Sie vom Sitz aus hören, was Sie unter dem Auto von Hand bewegen, was Sie eintragen.
ui-welcome-maker = Die Anleitung des Herstellers und das örtliche Recht gehen Steady vor. Ein Netz braucht Steady nicht.
ui-welcome-rule-title = Allein die Prüfung von Hand entscheidet
ui-welcome-rule = Geräusch und Vibration wecken einen Verdacht. Ob etwas lose ist, zeigt nur die Hand an der Welle.
ui-welcome-open = Was nicht geprüft wurde, heißt nie sicher. Sie können bei jedem Schritt abbrechen und wiederkommen.

## Settings.
ui-settings = Einstellungen
ui-settings-of = Einstellungen. Techniker: { $name }
ui-thumb = Welcher Daumen bedient den Bildschirm?
ui-thumb-left = Links
ui-thumb-right = Rechts
ui-theme-contrast = Hoher Kontrast

## Practice.
ui-practice = Üben
ui-practice-about = Gehen Sie jeden Bildschirm mit einem Auto durch, das es nicht gibt. Es bleibt getrennt von Ihren Vorgängen, und weder Papier noch Datei lässt sich daraus machen.
ui-practice-start = Übungsvorgang beginnen
ui-practice-car = Übungsauto
ui-practice-ribbon = Übung. Kein echtes Auto.
ui-practice-end = Löschen

## The driver's seat.
ui-driver-open = Bildschirm für den Fahrer
ui-driver-short = Fahrer
ui-driver-title = Sie sitzen auf dem Fahrersitz
ui-driver-nobody = Niemand ist unter dem Auto. Niemand geht darunter.
ui-driver-running-1 = Sitzen bleiben. Feststellbremse an, kein Gang.
ui-driver-running-2 = Pedal langsam drücken, bis etwa 2.500 Umdrehungen.
ui-driver-running-3 = Unter zehn Sekunden halten. Loslassen.
ui-driver-idle-1 = Sitzen bleiben. Feststellbremse an, kein Gang.
ui-driver-idle-2 = Motor im Leerlauf lassen. Fuß vom Pedal.
ui-driver-idle-3 = Nur auf Zuruf: etwas drücken, langsam, dann loslassen.
ui-driver-creep-1 = Fuß über der Bremse halten.
ui-driver-creep-2 = Bremse sachte lösen. Eine Wagenlänge kriechen.
ui-driver-creep-3 = Bis zum Stand bremsen.
ui-driver-stop = SOFORT STOPP
ui-driver-stop-running = Hartes Klopfen oder starke Vibration: Fuß vom Pedal, Motor aus.
ui-driver-stop-creep = Hartes Klopfen oder jemand nah am Auto: fest bremsen, Motor aus.
ui-driver-stopped = Ich musste abstellen
ui-driver-done = Fertig

## Interruptions.
ui-clock-behind = Die Uhr dieses Geräts geht hinter dem letzten Eintrag dieses Vorgangs her ({ $when }). Nichts ist verloren, die Reihenfolge bleibt; stellen Sie die Uhr, bevor Sie weitermachen.

## Another layout chosen after steps were answered: what it takes back.
ui-relayout = Was die Änderung zurücknimmt
ui-relayout-why = Diese Antworten gehören zum Auto, wie es zuerst eingetragen war, und gelten jetzt nicht mehr. Sie bleiben als zurückgenommen im Protokoll, mit ihren Fotos:
ui-relayout-reason = Eine davon verlangte GEFAHR oder WARNUNG: Sagen Sie, warum sie zurückgenommen wird.
ui-relayout-do = Ändern
ui-relayout-keep = So lassen, wie es war

## What a found DANGER closes.
ui-next-closed = Gesperrt, weil GEFAHR gefunden wurde und der Motor nicht noch einmal läuft:
