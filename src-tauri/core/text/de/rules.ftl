### Gründe einer Einstufung: rule-ID für die Werkstatt, rule-ID-owner für den Kunden, der die Teile vielleicht nicht kennt.

rule-movement-at-support = Bewegung, wo keine erlaubt ist, von Hand gespürt oder mit der Messuhr nachgewiesen: Die Welle bewegt sich an ihrem Lager.
rule-movement-at-support-owner = Wir haben gespürt oder gemessen, dass sich die Welle an ihrem Lager bewegt. Dort darf sie sich gar nicht bewegen.
rule-housing-broken = Das Lagergehäuse ist gerissen, oder eine seiner Schrauben ist locker.
rule-housing-broken-owner = Das Teil, das das Lager hält, ist gerissen, oder eine Schraube daran ist locker.
rule-coupling-failing = Ein Gelenk oder eine Gelenkscheibe der Welle steht kurz vor dem Bruch.
rule-coupling-failing-owner = Ein Gelenk an der Welle ist kurz vor dem Bruch.
rule-shaft-fibre-damaged = Die Faser der Welle ist beschädigt.
rule-shaft-fibre-damaged-owner = Die Faserwelle ist beschädigt. Sie kann ohne Vorwarnung brechen.
rule-running-stopped = Der Motor musste wegen harten Klopfens oder starker Vibration abgestellt werden.
rule-running-stopped-owner = Wir mussten den Motor abstellen, weil es hart klopfte oder stark rüttelte.

rule-rubber-play = Das Gummilager schlägt an oder gibt mehr nach, als der Hersteller erlaubt, oder es wurde Bewegung gefühlt.
rule-rubber-play-owner = Das Lager bewegt sich in seinem Gummiring. Es bewegt sich mehr als erlaubt, oder wir wissen nicht, wie viel erlaubt ist.
rule-turns-badly = Die Welle lässt sich von Hand nur rau oder schwer drehen.
rule-turns-badly-owner = Die Welle dreht sich von Hand nicht frei.
rule-shaft-damaged = Die Welle ist eingedellt, oder ein Wuchtgewicht fehlt.
rule-shaft-damaged-owner = Die Welle hat eine Delle, oder ein kleines Gewicht fehlt, das sie rund laufen lässt.
rule-far-end-play = Am fernen Ende der Welle wurde Spiel quer zur Welle oder ein Schlag gefühlt.
rule-far-end-play-owner = Die Welle ist am fernen Ende lose.
rule-play-unsure = Bewegung an der Lagerung war nicht auszuschließen: Geprüft wurde, aber es blieb unsicher.
rule-play-unsure-owner = Wir haben am Lager nach Bewegung gefühlt. Wir können sie nicht ausschließen.
rule-bearing-likely = Am Lager wurde etwas gefühlt, gesehen oder blieb unsicher, und die Zeichen allein machen einen Lagerschaden zu mindestens 50 % wahrscheinlich.
rule-bearing-likely-owner = Was bisher gefunden wurde, deutet auf das Lager.

rule-cause-likely = Zu mindestens 50 % wahrscheinlich: { $cause }.
rule-cause-likely-owner = Das kann dahinterstecken: { $about }
rule-cause-likely-misfire = Zu mindestens 50 % wahrscheinlich: { $cause }. Unverbrannter Kraftstoff kann den Katalysator überhitzen und zerstören.
rule-cause-likely-misfire-owner = Das kann dahinterstecken: { $about } Das kann ein teures Teil im Auspuff zerstören.
rule-finding-unexplained = Etwas wurde gehört, gespürt oder gesehen, das kein anderer Grund erklärt. Sehen Sie genauer hin, bevor Sie das Auto zurückgeben.
rule-finding-unexplained-owner = Es gibt etwas, von Ihnen gesagt oder von uns gefunden, das wir genau ansehen müssen.
rule-cold-check-buzz = Es wurde kein Spiel gefühlt, aber bei kaltem Gehäuse oder ohne Angabe der Wärme. Eine kalte Prüfung entlastet nichts: Ein Lagersitz kann heiß lose werden. Warm noch einmal fühlen.
rule-cold-check-buzz-owner = Wir haben am kalten Teil nach Bewegung gefühlt, es kann aber heiß lose sein.

rule-no-bearing-action = Beide Spielprüfungen sind gut, die Welle läuft glatt, und sonst wurde nichts gefunden.
rule-no-bearing-action-owner = Wir haben das Lager von Hand geprüft und dort keinen Fehler gefunden.
rule-no-bearing-action-not-reproduced = Nicht reproduziert: Es war nichts zu hören, beide Spielprüfungen sind gut und die Welle läuft glatt.
rule-no-bearing-action-not-reproduced-owner = Das Geräusch ließ sich nicht reproduzieren: Es kam nicht, solange das Auto bei uns war. Wir haben das Lager von Hand geprüft und dort keinen Fehler gefunden.
rule-no-bearing-action-not-listened = Nicht reproduziert: Es gab keine Prüfung mit laufendem Motor. Beide Spielprüfungen sind gut und die Welle läuft glatt.
rule-no-bearing-action-not-listened-owner = Das Geräusch wurde nicht reproduziert: Wir haben den Motor nicht laufen lassen, um zu horchen. Wir haben das Lager von Hand geprüft und dort keinen Fehler gefunden.
