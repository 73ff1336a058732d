### Die Schritte: was geprüft wird (step-ID), wie (-do) und worauf zu achten ist (-watch).
### Gelesen mit Handschuhen: kurz, als Anweisung. Die Vorschrift des Herstellers geht allem vor.

step-road-speed-vibration = Vibration auf der Straße
step-road-speed-vibration-do = Fragen Sie den Kunden: Wächst eine Vibration mit dem Tempo?
step-road-speed-vibration-watch = Keine Probefahrt, um es herauszufinden. Probefahrt erst, wenn an diesem Auto alles in Ordnung ist, was sich fühlen und sehen lässt.

step-idle-speed = Leerlaufdrehzahl
step-idle-speed-do = Motor beruhigen lassen. Drehzahlmesser oder Diagnosegerät ablesen. U/min eingeben.
step-idle-speed-watch = Bleiben Sie auf dem Sitz. Niemand an Welle und Räder lassen. Die Vorschrift des Herstellers geht vor.

step-idle-noise = Geräusch im Leerlauf
step-idle-noise-do = Vom Sitz aus horchen. Jedes gehörte Geräusch ankreuzen. Was fehlt, gilt als nicht gehört.
step-idle-noise-watch = Nicht unter das Auto beugen, um besser zu hören. Bei hartem Klopfen sofort Motor aus. Die Vorschrift des Herstellers geht vor.

step-idle-raise-effect = Leerlauf etwas erhöht
step-idle-raise-effect-do = Leerlauf um 150 bis 200 U/min anheben. Noch einmal horchen. Absinken lassen.
step-idle-raise-effect-watch = Mit dem Pedal oder nach Herstellervorschrift anheben, vom Sitz aus. Hände aus dem Motorraum.

step-misfire-evidence = Anzeichen für Aussetzer
step-misfire-evidence-do = Aussetzerzähler jedes Zylinders auslesen. Fehlercodes auslesen.
step-misfire-evidence-watch = Kabel weg von Pedalen und Riemen führen. Für das Diagnosegerät gilt die Herstellervorschrift.

step-air-leak-by-ear = Nebenluft, mit dem Ohr
step-air-leak-by-ear-do = Motor an. Neben dem Auto stehen, außerhalb des Motorraums. Ende eines langen Schlauchs an den Ansaugschläuchen entlangführen; am anderen Ende horchen.
step-air-leak-by-ear-watch = Niemand beugt sich über den Motor. Hände, Haare, Schlauch weg von Lüfter, Riemen, heißen Teilen. Nach Herstellervorschrift vorgehen.
step-air-leak-test = Prüfung auf Nebenluft
step-air-leak-test-do = Motor aus. Ansaugung mit Rauch füllen. Nachsehen, wo er austritt, dann Ergebnis eingeben.
step-air-leak-test-watch = Nie brennbares Spray. Hände und Haare weg von Lüfter, Riemen und heißen Teilen. Nach Herstellervorschrift vorgehen. Erst wieder starten, wenn alle zurückgetreten sind.

step-engagement-setting = Einstellung des Kupplungspunkts
step-engagement-setting-do = Ablesen, bei welcher Drehzahl die Kupplung greifen soll. Mit dem Standard des Herstellers vergleichen.
step-engagement-setting-watch = Nur ablesen. Wer hier verstellt, kann das Auto in Bewegung setzen. Nach Herstellervorschrift vorgehen.

step-neutral-2500-buzz = Brummen nahe 2.500 U/min
step-neutral-2500-buzz-do = Im Leerlauf den Motor langsam auf etwa 2.500 U/min bringen. Unter zehn Sekunden halten. Fühlen, ob der Boden unter den Füßen brummt.
step-neutral-2500-buzz-watch = Die Welle dreht mit dem Motor, obwohl das Auto steht. Bei Klopfen oder starker Vibration jetzt Motor aus. Die Vorschrift des Herstellers geht vor.

step-running-stop = Mussten Sie den Motor abstellen?
step-running-stop-do = Motor jetzt aus. Dann angeben, warum Sie ihn abgestellt haben.
step-running-stop-watch = Nach hartem Klopfen oder starker Vibration den Motor nicht mehr laufen lassen. Zur Prüfung von Hand gehen. Die Vorschrift des Herstellers geht vor.

step-creep-noise = Geräusch beim Kriechen
step-creep-noise-do = Auto eine Wagenlänge kriechen lassen, Fuß über der Bremse. Horchen. Anhalten.
step-creep-noise-watch = Das Auto bewegt sich. Sofort bremsen, wenn jemand nahe kommt. Für das Getriebe gilt die Herstellervorschrift.

step-engagement-reset-effect = Kupplungspunkt wieder auf Standard
step-engagement-reset-effect-do = Kupplungspunkt auf den Standard des Herstellers stellen. Auto noch einmal kriechen lassen. Horchen.
step-engagement-reset-effect-watch = Nur nach Herstellervorschrift stellen, Bremse getreten. Das Auto kann beim ersten Versuch einen Satz machen.

step-housing-look = Gehäuse ansehen
step-housing-look-do = Gehäuse rundum ausleuchten. Nach Rissen, lockeren Schrauben, Spuren, Fett oder Staub suchen. Ankreuzen, was Sie finden.
step-housing-look-watch = Heißer Auspuff daneben. Nicht an das Gehäuse hängen. Orange Kabel nicht berühren. Die Vorschrift des Herstellers geht vor.

step-play-vertical = Spiel auf und ab
step-play-vertical-do = Welle nahe am Lager greifen. Hochdrücken, sinken lassen. Den Spalt zwischen Welle und Gehäuse beobachten. Bewegen sich beide zusammen: „Nicht gemacht“, Gehäuse, Schrauben und Aufhängung ansehen, dann neu fühlen.
step-play-vertical-watch = Nur mit den Händen, kein Montiereisen. Finger weg von Gelenken und Kanten. Abstand zu heißen Teilen. Der Herstellervorschrift folgen.

step-play-lateral = Spiel hin und her
step-play-lateral-do = Welle nahe am Lager greifen. Nach links drücken, nach rechts ziehen. Den Spalt zwischen Welle und Gehäuse beobachten. Bewegen sich beide zusammen: „Nicht gemacht“, Gehäuse, Schrauben und Aufhängung ansehen, dann neu fühlen.
step-play-lateral-watch = Nur mit den Händen, kein Montiereisen. Finger weg von Gelenken und Kanten. Abstand zu heißen Teilen. Der Herstellervorschrift folgen.

step-tube-open-check = Lager im geöffneten Rohr
step-tube-open-check-do = Rohr nach Herstellervorschrift öffnen. An jedem Lager mit den Händen nach Bewegung fühlen. Eingeben, was Sie gefühlt haben.
step-tube-open-check-watch = Hochvolt an Bord: zuerst durch Fachkundige freischalten lassen. Schwere Teile kommen frei. Vor dem Lösen abstützen, und die Herstellervorschrift genau befolgen.

step-play-far-end = Spiel am Wellenende
step-play-far-end-do = Welle an ihrem Ende greifen. Auf und ab drücken, dann hin und her. Das Gelenk beobachten. Längs gleiten ist an Verschiebegelenk oder Schiebestück normal.
step-play-far-end-watch = Nur mit den Händen. Finger aus dem Gelenk: Es klemmt. Die Vorschrift des Herstellers geht vor.

step-turn-by-hand = Welle von Hand drehen
step-turn-by-hand-do = Nur wenn der Leerlauf schon eingelegt ist, sonst „Nicht gemacht“. Welle langsam eine volle Umdrehung drehen. Auf rauen oder schweren Lauf achten. Gleichmäßige Stufen sind die Kompression: sie zählen nicht.
step-turn-by-hand-watch = Abstand zu den Rädern: frei hängend können sie drehen. Finger weg von Gelenken. Niemand steigt dafür ins Auto. Die Herstellervorschrift geht vor.

step-coupling-look = Gelenke und Gelenkscheiben ansehen
step-coupling-look-do = Jede Gelenkscheibe, jedes Gelenk ausleuchten: Risse, Gummi, Manschetten, Schrauben, Verschleiß. Ankreuzen, was Sie finden.
step-coupling-look-watch = Augen schützen: Rost und Schmutz fallen. Keine Finger zwischen die Arme eines Gelenks. Die Vorschrift des Herstellers geht vor.

step-shaft-look = Welle ansehen
step-shaft-look-do = An der Welle entlangsehen, so weit sie zu sehen ist. Nach Dellen, Knicken, ausgefranster Faser, blankem Fleck eines Gewichts suchen.
step-shaft-look-watch = Gebrochene Faser schneidet und sticht: Handschuhe an, nicht darüberstreichen. Der Motor darf die Welle nicht drehen. Die Vorschrift des Herstellers geht vor.

step-shield-and-mounts = Bleche und Aggregatelager
step-shield-and-mounts-do = Jedes Hitzeschutzblech nahe der Welle drücken. Motor- und Getriebelager ansehen. Nach Scheuerspuren suchen.
step-shield-and-mounts-watch = Blechkanten schneiden und können heiß sein. Nicht an einem Lager hebeln, das Last trägt. Die Vorschrift des Herstellers geht vor.
