### Was die zweiten Regeln gebracht haben: Schritte und Antworten für Gummilager, Kupplungen und Rasseln im Leerlauf,
### Bauarten, Ursachen, Gründe, und worauf eine Einstufung beschränkt ist.

step-at-support = { $step } (Lager { $number })
reason-at-support-1 = Am ersten Lager, dem beim Getriebe.
reason-at-support-1-owner = Es ist das erste der Lager dieser Welle.
reason-at-support-2 = Am zweiten Lager.
reason-at-support-2-owner = Es ist das zweite der Lager dieser Welle.
reason-at-support-3 = Am dritten Lager.
reason-at-support-3-owner = Es ist das dritte der Lager dieser Welle.

## Schritte.
step-support-look = Gummilager ansehen
step-support-look-do = Gummi rundum und beidseitig ausleuchten, dann Halter und Schrauben. Ankreuzen, was Sie finden.
step-support-look-watch = Heißer Auspuff in der Nähe. Nicht an den Halter hängen. Orange Kabel nicht berühren. Die Herstellervorschrift geht vor.
step-clutch-pedal-effect = Kupplungspedal getreten
step-clutch-pedal-effect-do = Getriebe im Leerlauf, Motor im Leerlauf. Kupplungspedal ganz durchtreten. Verschwindet das Rasseln? Pedal wieder kommen lassen.
step-clutch-pedal-effect-watch = Sitzen bleiben, kein Gang eingelegt. Fuß bereit auf der Bremse. Die Herstellervorschrift geht vor.
step-selector-effect = Wählhebel auf Fahren
step-selector-effect-do = Bremse fest treten, Motor im Leerlauf. Drei Sekunden Fahrstufe einlegen. Verschwindet das Rasseln? Zurück auf P.
step-selector-effect-watch = Das Auto zieht an: Bremse halten, Feststellbremse an, niemand davor oder dahinter. Die Herstellervorschrift geht vor.
drawing-support-look = Der Gummiring um das Lager und sein Halter, von unten beleuchtet.
drawing-clutch-pedal-effect = Ein Fuß tritt das Kupplungspedal durch, während der Motor im Leerlauf läuft.
drawing-selector-effect = Ein Fuß hält die Bremse, während der Wählhebel von P auf Fahren geht.

## Antworten.
answer-not-seen = Nicht zu sehen
answer-crazed = Feine Risse
answer-torn = Eingerissen
answer-torn-through = Durchgerissen
answer-off-centre = Hängt durch oder außermittig
answer-oil-soaked = Ölgetränkt
answer-bracket-cracked = Halter gerissen
answer-springy = Federt: kein Maß bekannt
answer-knocks = Schlägt an
answer-slides = Gleitet nur längs
answer-bolt-loose = Schraube lose
answer-bolt-missing = Schraube fehlt
answer-boot-torn = Manschette gerissen
answer-joint-stiff = Gelenk schwergängig
answer-touches-fibre = Berührt eine Faserwelle
answer-support-look-sound = Rundum in Ordnung
answer-clutch-pedal-effect-gone = Rasseln weg
answer-clutch-pedal-effect-less = Weniger
answer-clutch-pedal-effect-same = Gleich
answer-selector-effect-gone = Rasseln weg
answer-selector-effect-less = Weniger
answer-selector-effect-same = Gleich
answer-play-far-end-unsure = Unsicher

## Bauarten.
layout-rigid-output-speed = Starres Lager, dreht mit dem Getriebeausgang
layout-rigid-output-speed-about = Zweiteilige Welle hinter dem Getriebe, das Mittellager starr gehalten. Sie steht im Leerlauf still. Von Hand gedrückt und gezogen darf sie sich gar nicht bewegen.
layout-two-centres = Zwei Mittellager in Gummi
layout-two-centres-about = Dreiteilige Welle hinter dem Getriebe mit zwei Mittellagern in Gummiringen. Jedes wird für sich geprüft; das erste ist das beim Getriebe.
layout-one-piece = Einteilig, ohne Mittellager
layout-one-piece-about = Eine Welle vom Getriebe zur Hinterachse, an jedem Ende ein Gelenk und nichts dazwischen. Es entscheidet das Spiel an den Enden.
layout-front-shaft = Vordere Welle, Allrad
layout-front-shaft-about = Welle vom Verteilergetriebe zur Vorderachse, an jedem Ende ein Gelenk. Es entscheidet das Spiel an den Enden.
layout-half-shaft = Achswelle mit Zwischenlager
layout-half-shaft-about = Achswelle zu einem Vorderrad, ihr Lager in einem Halter neben dem Getriebe. Sie steht im Leerlauf still. Von Hand gedrückt und gezogen darf sie sich gar nicht bewegen.
drawing-none = Eine Welle mit einem Gelenk an jedem Ende und keinem Lager dazwischen.

## Ursachen.
cause-torsional-rattle = Rasseln von Schwungrad, Kupplung oder Zahnrädern
cause-torsional-rattle-about = Zahnräder oder Teile der Kupplung rasseln im Leerlauf. Mit dem Lager hat das nichts zu tun.
cause-wheel-or-tyre = Rad oder Reifen
cause-wheel-or-tyre-about = Ein Rad oder ein Reifen hat eine Unwucht oder läuft nicht rund und lässt das Auto zittern.
cause-joint-angle-or-balance = Beugewinkel oder Unwucht der Welle
cause-joint-angle-or-balance-about = Die Welle läuft in einem falschen Winkel oder mit Unwucht und lässt das Auto zittern.
cause-misfire-next = Zündspule oder Kerze zwischen zwei Zylindern tauschen und sehen, ob der Fehler mitwandert. Danach Mengenabgleich der Einspritzdüsen, danach Kompression prüfen.
cause-torsional-rattle-next = Schwungrad auf Spiel und Kupplungsnabe auf gebrochene Federn prüfen, bevor das Getriebe verdächtigt wird.
cause-wheel-or-tyre-next = Räder auswuchten, Reifen und Felgen auf Schlag prüfen, dieselbe Strecke mit demselben Tempo noch einmal fahren.
cause-joint-angle-or-balance-next = Beugewinkel in Fahrhöhe messen und mit der Herstellervorgabe vergleichen. Gleichlage der Gelenke und Wuchtgewichte prüfen.

## Gründe.
rule-support-broken = Das Gummilager ist durchgerissen, sein Halter gerissen oder eine Befestigung lose.
rule-support-broken-owner = Das Teil, das das Lager hält, ist durchgerissen, gerissen oder lose.
rule-support-torn = Der Gummi des Lagers ist eingerissen.
rule-support-torn-owner = Der Gummiring, der das Lager hält, ist eingerissen.
rule-support-ageing = Das Gummilager sitzt außermittig, ist ölgetränkt oder hat feine Risse.
rule-support-ageing-owner = Der Gummiring, der das Lager hält, ist alt, ölig oder verrutscht.
rule-coupling-bolts = Eine Schraube einer Gelenkscheibe oder eines Gelenks ist lose oder fehlt.
rule-coupling-bolts-owner = Eine Schraube, die die Welle hält, ist lose oder fehlt.
rule-mount-broken = Ein Motor- oder Getriebelager ist gebrochen.
rule-mount-broken-owner = Ein Teil, das den Motor oder das Getriebe hält, ist gebrochen.
rule-touches-fibre = Etwas berührt eine Faserwelle.
rule-touches-fibre-owner = Die Welle ist aus Faser, und etwas reibt daran.
rule-far-end-unsure = Bewegung am fernen Ende der Welle ließ sich nicht ausschließen. Noch einmal fühlen, eine zweite Person beobachtet das Gelenk.
rule-far-end-unsure-owner = Wir haben am fernen Ende der Welle nach Bewegung gefühlt und sind nicht sicher.
rule-drag-unchecked = Ein Zischen oder Surren, und die Welle wurde nicht für sich gedreht: Ob das Lager schleift, ist nicht bekannt. Abgekuppelt drehen.
rule-drag-unchecked-owner = Es zischt oder surrt, und wir haben die Welle noch nicht für sich gedreht.
rule-bearing-likely-suspected = Nach dem, was zu hören war, ist ein Lagerschaden zu mindestens 50 % wahrscheinlich: Verdacht, nicht von Hand bestätigt. Bestätigen würden ihn Spiel bei warmem Gehäuse, eine freie Drehung oder eine Messuhr.
rule-bearing-likely-suspected-owner = Was wir gehört haben, kann vom Lager kommen. Von Hand haben wir dort nichts Auffälliges gespürt.

rule-no-bearing-action-play = Kein Spiel gefühlt, und sonst nichts gefunden.
rule-no-bearing-action-play-owner = Wir haben das Lager von Hand geprüft. Es bewegt sich nicht mehr als es soll, und wir haben keinen Fehler gefunden.
rule-no-bearing-action-play-not-reproduced = Nicht reproduziert: Es war nichts zu hören. Kein Spiel gefühlt, und sonst nichts gefunden.
rule-no-bearing-action-play-not-reproduced-owner = Das Geräusch ließ sich nicht reproduzieren: Es kam nicht, solange das Auto bei uns war. Wir haben von Hand nach Bewegung gefühlt und keinen Fehler gefunden.
rule-no-bearing-action-play-not-listened = Nicht reproduziert: Es gab keine Prüfung mit laufendem Motor. Kein Spiel gefühlt, und sonst nichts gefunden.
rule-no-bearing-action-play-not-listened-owner = Das Geräusch wurde nicht reproduziert: Wir haben den Motor nicht laufen lassen, um zu horchen. Wir haben von Hand nach Bewegung gefühlt und keinen Fehler gefunden.

rule-no-bearing-action-ends = An den Enden der Welle kein Spiel gefühlt, und sonst nichts gefunden.
rule-no-bearing-action-ends-owner = Wir haben beide Enden der Welle von Hand geprüft und dort keinen Fehler gefunden.
rule-no-bearing-action-ends-not-reproduced = Nicht reproduziert: Es war nichts zu hören. An den Enden der Welle kein Spiel gefühlt, und sonst nichts gefunden.
rule-no-bearing-action-ends-not-reproduced-owner = Das Geräusch ließ sich nicht reproduzieren: Es kam nicht, solange das Auto bei uns war. Wir haben beide Enden der Welle von Hand geprüft und dort keinen Fehler gefunden.
rule-no-bearing-action-ends-not-listened = Nicht reproduziert: Es gab keine Prüfung mit laufendem Motor. An den Enden der Welle kein Spiel gefühlt, und sonst nichts gefunden.
rule-no-bearing-action-ends-not-listened-owner = Das Geräusch wurde nicht reproduziert: Wir haben den Motor nicht laufen lassen, um zu horchen. Wir haben beide Enden der Welle von Hand geprüft und dort keinen Fehler gefunden.
note-means-shaft-ends = Die Kardanwelle bringt die Kraft vom Motor zu den Rädern. Ein Gelenk an jedem Ende hält sie.
note-open-play-far-end = Wir haben an den Enden der Welle nicht nach Bewegung gefühlt.

note-could-support-broken = Das Lager kann sich beim Fahren lösen und fallen. Dann kann die Welle das Auto oder die Straße treffen. Sie können die Kontrolle verlieren.
note-could-support-torn = Der Gummi kann ganz durchreißen. Dann kann die Welle schlagen, das Auto treffen und andere Teile beschädigen.
note-could-support-ageing = Der Gummi kann schlechter werden, dann schwingt die Welle.
note-could-coupling-bolts = Das Gelenk kann sich beim Fahren lösen. Dann kann die Welle das Auto oder die Straße treffen. Sie können die Kontrolle verlieren.
note-could-mount-broken = Der Motor kann sich zu weit bewegen. Dabei können die Gelenke der Welle brechen.
note-could-touches-fibre = Die Faser kann dort durchscheuern. Dann kann die Welle während der Fahrt brechen.
note-could-far-end-unsure = Ist das Gelenk lose, kann es weiter verschleißen, bis sich die Welle löst.
note-could-drag-unchecked = Schleift das Lager, kann es heiß werden und brechen.

## Worauf eine Einstufung beschränkt ist.
limit-turn-by-hand = Beschränkt auf Spiel; ob das Lager schleift, wurde nicht geprüft.
limit-turn-by-hand-owner = Ob das Lager schleift, haben wir nicht geprüft.
limit-housing-look = Das Gehäuse wurde nicht oder nicht ganz angesehen.
limit-housing-look-owner = Das Teil, das das Lager hält, haben wir nicht ganz gesehen.
limit-support-look = Das Gummilager wurde nicht oder nicht ganz angesehen.
limit-support-look-owner = Das Gummiteil, das das Lager hält, haben wir nicht ganz gesehen.
limit-no-figure = Kein Maß bekannt, nach Gefühl beurteilt.
limit-no-figure-owner = Die Grenze des Herstellers kennen wir nicht. Wie weit der Gummi nachgibt, haben wir nach Gefühl beurteilt.
limit-tube-closed = Von außen eingestuft: Das Rohr ist zu, die Lager darin wurden nicht gefühlt.
limit-tube-closed-owner = Das Rohr um die Welle ist noch zu. Wir haben nur von außen geschaut und gehört.
limit-tube-nothing = Noch nicht geprüft, und von außen nichts gefunden.
limit-tube-nothing-owner = Von außen haben wir bisher nichts gefunden.
unknown-limit = { $step }: { $lack }

detail-degrees = Gefühlt bei { $degrees } °C
detail-engine-warm = Bei warmem Motor abgelesen
detail-engine-cold = Bei kaltem Motor abgelesen: zählt bei den Ursachen nicht mit
detail-heard-front = Am lautesten vorn
detail-heard-middle = Am lautesten in der Mitte
detail-heard-rear = Am lautesten hinten
detail-heard-all-along = Im ganzen Auto gleich laut

next-free-turn = Die Welle abkuppeln und für sich drehen: Das zeigt, ob ihr Lager schleift.
next-far-end = Das ferne Ende blieb unsicher: das Gelenk dort ansehen.
next-unsure = Es blieb unsicher: noch einmal fühlen, eine zweite Person beobachtet das Gelenk.

error-temperature-out-of-range = Die Temperatur liegt außerhalb des Bereichs
error-temperature-out-of-range-help = Geben Sie Grad Celsius zwischen -40 und 150 ein, oder kalt oder warm.
error-figure-missing = Das zulässige Maß des Herstellers ist nicht eingetragen
error-figure-missing-help = Tragen Sie das Maß des Herstellers ein, oder sagen Sie, was die Hand gefühlt hat: „federt“, wo es nachgibt und zurückfedert, „schlägt an“, wo es anschlägt, „unsicher“, wo Sie es nicht wissen.

road-boot = Manschette eines Gelenks. MOT-Handbuch (UK) 6.1.7 (g): geringfügig, wenn stark gealtert, erheblich, wenn sie fehlt, aufgerissen oder lose ist, sodass Schmutz eindringt; gefährlich kommt in dieser Zeile nicht vor. Richtlinie 2014/45/EU, Anhang I, 6.1.7 (g): geringfügig, wenn stark gealtert, erheblich, wenn sie fehlt oder gebrochen ist. Steady wählt nicht; Ihre örtlichen Regeln entscheiden.

## Neben einer Antwort gefragt.
ui-free-yes = Abgekuppelt
ui-engine = Motor warm oder kalt?
ui-engine-warm = Motor warm
ui-engine-cold = Motor kalt
ui-feel-anew = Noch einmal machen und eingeben, was Sie jetzt fühlen.
ui-heard-at = Wo am lautesten oder stärksten?
ui-heard-front = Vorn
ui-heard-middle = Mitte
ui-heard-rear = Hinten
ui-heard-all-along = Überall gleich
ui-temperature-degrees = Temperatur des Gehäuses, Grad Celsius
ui-degrees = { $degrees } °C
ui-limits = Nicht in dieser Einstufung
ui-support-none = Kein Lager zwischen den Enden
ui-figure = Maß des Herstellers, mm
ui-figure-keep = Maß eintragen
ui-basis = Woher die Zahl kommt
ui-earlier-rules = Dieses Auto kam unter Regeln { $then } herein; die gezeigte Einstufung folgt Regeln { $now }.
ui-cause-next = Als Nächstes: { $what }

## How a step is done at a support of its kind; without one, as everywhere.
step-play-vertical-do-rubber = Welle am Lager greifen. Hochdrücken, sinken lassen. Lager gegen Halter beobachten. Federt es zurück: „Federt“. Stößt es an: „Schlägt an“.
step-play-lateral-do-rubber = Welle am Lager greifen. Nach links drücken, nach rechts ziehen. Lager gegen Halter beobachten. Federt es zurück: „Federt“. Stößt es an: „Schlägt an“.
step-play-far-end-do-none = Welle erst an einem, dann am anderen Ende greifen. Auf und ab drücken, dann hin und her. Jedes Gelenk beobachten. Längs gleiten ist an Verschiebegelenk oder Schiebestück normal.
next-warm = Kalt gefühlt, und das entlastet nichts: mit warmem Gehäuse noch einmal fühlen.
