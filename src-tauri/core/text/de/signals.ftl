### Kurze Wörter rund um die Prüfung: Signalwörter, Wahrscheinlichkeit, Stationen, Bauarten, Sperren, Einträge des Protokolls.
### Signalwörter nach der Praxis von ISO 3864 und ANSI Z535.

word-danger = GEFAHR
word-warning = WARNUNG
word-caution = VORSICHT
word-notice = HINWEIS
word-unrated = NOCH NICHT GEPRÜFT
headline-danger = NICHT FAHREN
headline-warning = Nicht fahren: nur auf dem Abschleppwagen
headline-caution = Reparatur vereinbaren
headline-notice = Am Lager ist nichts zu tun
headline-unrated = Die Prüfung von Hand ist noch offen

## Die Wahrscheinlichkeitswörter des IPCC in ihrer deutschen Fassung.
likelihood-virtually-certain = Praktisch sicher
likelihood-very-likely = Sehr wahrscheinlich
likelihood-likely = Wahrscheinlich
likelihood-about-as-likely-as-not = Etwa ebenso wahrscheinlich wie nicht
likelihood-unlikely = Unwahrscheinlich
likelihood-very-unlikely = Sehr unwahrscheinlich
likelihood-exceptionally-unlikely = Besonders unwahrscheinlich

station-seat = Fahrersitz
station-support = Lagerung
station-shaft = Welle
station-far-end = Wellenende
station-around = Um die Welle
station-account = Bericht des Kunden

layout-rigid-engine-speed = Starre Lagerung, Motordrehzahl
layout-rigid-engine-speed-about = Eine Welle vom Motor zu einem Getriebe an der Hinterachse. Sie dreht mit dem Motor, auch wenn das Auto steht. Von Hand gedrückt und gezogen darf sie sich gar nicht bewegen.
layout-rubber-centre = Mittellager in Gummi
layout-rubber-centre-about = Zweiteilige Welle hinter dem Getriebe, ihr Mittellager in einem Gummiring. Etwas Nachgeben ist normal; die Grenze ist die Angabe des Herstellers.
layout-torque-tube = Zentralrohr
layout-torque-tube-about = Welle mit Motordrehzahl in einem Rohr, auf mehreren Lagern. Sie ist erst zu greifen, wenn das Rohr nach Herstellervorschrift geöffnet ist.

seat-bare = Blanker Sitz aus Aluminium
seat-sleeved = Sitz mit Stahlhülse
gearbox-automated-clutch = Automatisierte Kupplung
gearbox-torque-converter = Drehmomentwandler
gearbox-manual = Schaltgetriebe

sound-buzz = Brummen
sound-knock = Klopfen
sound-vibration = Vibration
sound-rattle = Rasseln
sound-pops = Patschen
sound-hiss = Zischen
sound-whine = Heulen

waiver-cannot-reach = Die Kamera kommt nicht hin
waiver-too-dark = Zu dunkel für ein Bild
waiver-hands-busy = Beide Hände waren nötig
waiver-nothing-to-see = Auf einem Bild ist nichts zu sehen
waiver-nothing-to-show = nichts zu zeigen, von Steady selbst vermerkt
waiver-owner-declined = Der Kunde möchte keine Fotos
waiver-not-in-case = Die Falldatei nennt kein Foto

decision-repair = Bitte reparieren
decision-decide-later = Ich überlege es mir
decision-decline = So lassen, das Risiko wurde mir genannt

entry-opened = Auto angenommen
entry-amended = Annahme geändert
entry-order-chosen = Reihenfolge gewählt
entry-gate-confirmed = Freigabe bestätigt
entry-lift-said = Geändert, was das Auto hält
entry-part-left = Teil verlassen, Freigaben geschlossen
entry-answered = Beantwortet
entry-photo-kept = Foto gespeichert
entry-photo-waived = Kein Foto, mit Grund
entry-withdrawn = Zurückgenommen
entry-arranged = Bei der Wiedergabe ergänzt
entry-received = Kundeninfo erhalten und unterschrieben
arranged-gates-confirmed = Der Fall ließ Freigaben aus; die Wiedergabe hat sie bestätigt.
arranged-steps-ordered = Der Fall gab die Antworten in anderer Folge; die Wiedergabe hat die Schritte geordnet.
arranged-times-set-back = Der Fall sagt, wie viele Tage er zurückliegt; die Wiedergabe hat die Zeiten seiner Einträge zurückgesetzt.

lock-gates-open = Gesperrt: Bestätigen Sie zuerst die Freigaben.
lock-other-part = Gesperrt: Verlassen Sie zuerst den Teil, in dem Sie sind.
lock-gates-of-another = Gesperrt: Jemand anderes hat die Freigaben dieses Teils bestätigt. Verlassen Sie ihn, und bestätigen Sie sie selbst.
lock-gates-too-old = Gesperrt: Die Freigaben dieses Teils wurden vor zu langer Zeit bestätigt. Verlassen Sie ihn, sehen Sie neu nach, und bestätigen Sie sie noch einmal.
lock-not-driven = Gesperrt: Dieses Auto darf nicht gefahren werden. Das Ergebnis sagt, warum.
lock-set-apart = Gesperrt: Was mit einer anderen Bauart gefunden wurde, ist nicht geklärt. Neu beantworten, oder mit Begründung zurücknehmen.
lock-earlier-danger = Gesperrt: Eine frühere GEFAHR dieses Autos ist nicht geklärt. Erst die Prüfung von Hand, Motor aus.
lock-danger-found = Gesperrt: GEFAHR wurde gefunden, der Motor läuft nicht noch einmal.

next-hands-on = Nur die Prüfung von Hand entscheidet.

part-leave-running = Motor aus, Sitz verlassen
part-leave-creep = Auto steht, Bremse fest
part-leave-lift = Unter dem Auto hervor

order-under-car-first = Alles, zuerst unter dem Auto
order-running-first = Alles, zuerst der Motor
