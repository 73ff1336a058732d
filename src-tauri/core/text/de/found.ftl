### Was von Hand gefunden wurde, was gemildert wurde, was ein früherer Vorgang offen ließ, und was eine VORSICHT ohne
### Fehler verlangt. Für die Werkstatt; was auf -owner endet oder mit note- oder short- beginnt, ist für den Kunden.

finding-sum-found = Gefunden: { $findings }.
finding-sum-behind = Dahinter am ehesten: { $causes }.
finding-sum-beside = Auch wahrscheinlich: { $causes }.
finding-sum-else-none = Außer dem Gefundenen sticht keine Ursache heraus.
made-milder = { $step }: Zuerst war die Antwort „{ $was }“, eine GEFAHR oder WARNUNG. { $by } hat sie in „{ $now }“ geändert ({ $at }). Angegebener Grund: { $reason }
made-milder-withdrawn = { $step }: Zuerst war die Antwort „{ $was }“, eine GEFAHR oder WARNUNG. { $by } hat sie zurückgenommen ({ $at }). Angegebener Grund: { $reason }
made-milder-again = Sie wurde wieder eingetragen und gilt.
still-open-before = Noch offen: Dieses Auto wurde am { $day } mit { $label } eingestuft. Nichts zeigt, dass es behoben ist, und dieser Vorgang hebt es nicht auf. Nach der Reparatur einen neuen Vorgang „Nachschau nach der Reparatur“ anlegen und dieselben Stellen noch einmal prüfen, warm, wo gefühlt wird.
still-open-layout = Damals wurde es als „{ $layout }“ geprüft: Prüfen Sie, welche Bauart stimmt.
still-open-corrected = Jener Vorgang lief zuerst auf dieses Auto und wurde auf „{ $car }“ berichtigt, als schon etwas geprüft war: Sehen Sie nach, welches Auto es war.
still-open-unread = Der Vorgang von damals lässt sich nicht ganz lesen; seine Einstufung steht so in der Liste. Er bleibt offen, bis er wieder lesbar ist: Spielen Sie eine Sicherung ein, oder legen Sie die eigene Bauart-Datei der Werkstatt zurück.
note-still-open-danger = Am { $day } haben wir dieses Auto mit { $label } eingestuft. Ob das in Ordnung gebracht ist, haben wir noch nicht gesehen.
note-still-open-warning = Am { $day } haben wir dieses Auto mit { $label } eingestuft. Ob das in Ordnung gebracht ist, haben wir noch nicht gesehen.
before-other-layout = Beim letzten Mal wurde dieses Auto als „{ $layout }“ eingetragen. Sehen Sie unter dem Auto nach, was stimmt.
error-reason-too-short = Der Grund ist zu kurz
error-reason-too-short-help = Sagen Sie in ein paar Worten, mit acht Buchstaben oder mehr, warum die Antwort jetzt milder ist. Der Befund zeigt es.
cause-range = { $word }, zwischen { $low } und { $high }
cause-something-else = Etwas, das nicht auf dieser Liste steht

finding-sum-caution-look = VORSICHT: Noch ist kein Fehler gefunden. Planen Sie mehr Zeit zum Suchen ein.
finding-next-still-open = Klären Sie zuerst, was ein früherer Vorgang offen ließ: Fragen Sie, was gemacht wurde, sehen Sie es sich an, und halten Sie es fest.
finding-next-drive-open = Bis dahin kann niemand sagen, ob das Auto gefahren werden darf.
note-now-still-open-danger = Fahren Sie das Auto nicht, bevor Sie uns gefragt haben. Unsere frühere Einstufung gilt noch.
note-now-still-open-warning = Fahren Sie das Auto nicht, bevor Sie uns gefragt haben. Unsere frühere Einstufung gilt noch.
short-now-still-open-danger = Fahren Sie das Auto nicht, bevor Sie uns gefragt haben. Unsere frühere Einstufung gilt noch.
short-now-still-open-warning = Fahren Sie das Auto nicht, bevor Sie uns gefragt haben. Unsere frühere Einstufung gilt noch.
finding-next-caution-look = Planen Sie mehr Zeit für die Suche ein. Noch kein Angebot für eine Reparatur: Es wurde kein Fehler gefunden.
headline-caution-look = Termin zum genauen Nachsehen
note-now-caution-look = Machen Sie einen Termin, damit wir genau nachsehen. Wird das Geräusch oder das Rütteln stärker, halten Sie an und rufen Sie uns an.
short-now-caution-look = Machen Sie einen Termin, damit wir genau nachsehen. Wird das Geräusch oder das Rütteln stärker, halten Sie an und rufen Sie uns an.
finding-next-after-repair = Vor der Rückgabe die Probefahrt machen: gleiches Tempo, gleicher Gang wie in der Beanstandung.
stop-road-test = In der Werkstatt ist jede mögliche Prüfung gemacht. Eine Probefahrt kann folgen.
next-looks-first = Das Spiel blieb offen: erst ansehen, was das Lager und den Motor hält, dann neu fühlen.

note-likely-else = Außer dem, was wir gefunden haben, kann es das sein: { $about }
note-in-order = Wir haben die Welle und ihr Lager von Hand geprüft und in Ordnung gefunden.
note-in-order-ends = Wir haben beide Enden der Welle von Hand geprüft und in Ordnung gefunden.
note-open-support-look = Den Gummi, der das Lager hält, haben wir noch nicht gesehen.
note-open-which = { $count ->
    [one] Das ist: { $steps }.
   *[other] Das sind: { $steps }.
}

rule-coupling-worn = Eine Gelenkscheibe oder ein Gelenk der Welle ist verschlissen oder schwergängig.
rule-coupling-worn-owner = Ein Gelenk an der Welle ist verschlissen.
rule-coupling-worn-joint-stiff-owner = Ein Gelenk an der Welle geht schwer.
note-could-coupling-worn = Das Gelenk kann weiter verschleißen, bis die Welle rüttelt oder sich löst.
rule-boot-torn = Die Manschette eines Gelenks ist gerissen: Fett läuft aus, Schmutz dringt ein.
rule-boot-torn-owner = Die Gummihülle an einem Gelenk ist gerissen. Fett läuft aus, und Schmutz kommt hinein.
note-could-boot-torn = Ohne Fett verschleißt das Gelenk. Am Ende kann es brechen.

rule-cold-check-buzz-rubber = Das Gummilager wurde nur kalt oder ohne Angabe der Wärme geprüft. Eine kalte Prüfung entlastet nichts: Gummi ist kalt steif und gibt warm mehr nach. Warm noch einmal fühlen.
rule-cold-check-buzz-rubber-owner = Wir haben das Gummiteil nur kalt geprüft, warm gibt es mehr nach.
unknown-cold-rubber = Geräusch oder Vibrieren bei kalter Prüfung: Gummi gibt warm mehr nach. Mit warmem Lager noch einmal fühlen.
note-cold-rubber = Wir haben das Gummiteil kalt geprüft. Warm gibt es mehr nach.
note-could-cold-check-buzz-rubber = Gibt der Gummi warm nach, kann die Welle schlagen und andere Teile beschädigen.

rule-no-bearing-action-after-repair = Nach der Reparatur: kein Spiel gefühlt, und sonst nichts gefunden. Die Reparatur hält, soweit geprüft wurde.
rule-no-bearing-action-after-repair-owner = Wir haben nach der Reparatur noch einmal nachgesehen. Wir haben von Hand nach Bewegung gefühlt und keinen Fehler gefunden.
rule-no-bearing-action-play-not-driven = Nicht reproduziert: Das Auto wurde nicht auf der Straße gefahren, wo es beanstandet wird. Kein Spiel gefühlt, und sonst nichts gefunden.
rule-no-bearing-action-play-not-driven-owner = Sie bemerken es auf der Straße, und dort sind wir nicht gefahren. Wir haben von Hand nach Bewegung gefühlt und keinen Fehler gefunden.
rule-no-bearing-action-ends-not-driven = Nicht reproduziert: Das Auto wurde nicht auf der Straße gefahren, wo es beanstandet wird. An den Enden der Welle kein Spiel gefühlt, und sonst nichts gefunden.
rule-no-bearing-action-ends-not-driven-owner = Sie bemerken es auf der Straße, und dort sind wir nicht gefahren. Wir haben beide Enden der Welle von Hand geprüft und dort keinen Fehler gefunden.
unknown-not-driven = Nicht reproduziert: auf der Straße beanstandet, und dort wurde nicht gefahren.
note-not-driven = Sie bemerken es auf der Straße, und dort sind wir nicht gefahren.

## Was gefunden wurde, nach der einen Antwort dahinter.
rule-support-broken-torn-through-owner = Der Gummiring, der das Lager hält, ist durchgerissen.
rule-support-broken-bracket-cracked-owner = Der Halter, der das Lager trägt, hat einen Riss.
rule-support-broken-fastener-loose-owner = Eine Schraube, die das Lager hält, ist lose.
rule-housing-broken-cracked-owner = Das Teil, das das Lager hält, hat einen Riss.
rule-housing-broken-fastener-loose-owner = Eine Schraube, die das Lager hält, ist lose.
rule-movement-at-support-felt-owner = Wir haben von Hand gefühlt, dass sich die Welle an ihrem Lager bewegt. Dort darf sie sich gar nicht bewegen.
rule-coupling-bolts-bolt-loose-owner = Eine Schraube, die die Welle hält, ist lose.
rule-coupling-bolts-bolt-missing-owner = Eine Schraube, die die Welle hält, fehlt.
rule-support-ageing-crazed-owner = Der Gummiring, der das Lager hält, ist alt und voller feiner Risse.
rule-support-ageing-oil-soaked-owner = Der Gummiring, der das Lager hält, ist mit Öl getränkt.
rule-support-ageing-off-centre-owner = Der Gummiring, der das Lager hält, hängt durch oder sitzt schief.
rule-rubber-play-knocks-owner = Das Lager bewegt sich in seinem Gummiring, bis es anschlägt.
rule-rubber-play-beyond-figure-owner = Das Lager bewegt sich in seinem Gummiring mehr, als der Hersteller erlaubt.
rule-turns-badly-rough-owner = Die Welle dreht sich von Hand rau.
rule-turns-badly-resists-owner = Die Welle lässt sich von Hand schwer drehen.

## Je Bauart.
drawing-rigid-output-speed = Wo das Lager sitzt: Die Welle läuft in zwei Teilen unter dem Boden vom Getriebe zur Hinterachse. Dazwischen sitzt ihr Lager in einem festen Gehäuse aus Metall.
drawing-two-centres = Wo die Lager sitzen: Die Welle läuft in drei Teilen unter dem Boden. Dazwischen sitzen zwei Lager in Gummiringen.
drawing-half-shaft = Wo das Lager sitzt: Die Welle läuft quer im Auto vom Getriebe zu einem Vorderrad. Neben dem Motor sitzt ihr Lager in einem festen Halter aus Metall.
drawing-front-shaft = Eine Welle läuft von der Mitte des Autos zur Vorderachse, mit einem Gelenk an jedem Ende und ohne Lager dazwischen.
drawing-one-piece = Eine Welle läuft unter dem Boden vom Getriebe zur Hinterachse, mit einem Gelenk an jedem Ende und ohne Lager dazwischen.

## An einem Rohr.
step-shaft-look-do-tube = Nur bei offenem Rohr. Geschlossen sieht niemand die Welle: „Nicht zu sehen“.
step-turn-by-hand-do-tube = Nur bei offenem Rohr und griffbereiter Welle. Geschlossen: „Nicht gemacht“. Sonst langsam eine ganze Drehung, auf rauen oder schweren Lauf fühlen.

## What stays open, in a headline, and joints that decide.
headline-caution-open = Fehler gefunden; die Prüfung von Hand ist noch offen
finding-sum-caution-open = VORSICHT: Etwas wurde gefunden, und die Prüfung, die entscheidet, ist noch offen.
headline-still-open-danger = Eine frühere GEFAHR ist nicht erledigt
headline-still-open-warning = Eine frühere WARNUNG ist nicht erledigt
finding-sum-still-open-danger = Eine frühere GEFAHR ist nicht erledigt: Bis dahin gibt nichts in diesem Befund dieses Auto frei.
finding-sum-still-open-warning = Eine frühere WARNUNG ist nicht erledigt: Bis dahin gibt nichts in diesem Befund dieses Auto frei.
note-open-coupling-look = Wir haben die Gelenke der Welle nicht angesehen.
limit-coupling-look = Die Gelenke und ihre Schrauben wurden nicht oder nicht ganz angesehen.
limit-coupling-look-owner = Wir haben nicht alles an den Gelenken der Welle gesehen.
note-could-turns-badly-none = Ein Gelenk kann heiß werden und brechen. Dann kann sich die Welle lösen.
next-left-out = Das wurde bisher ausgelassen: ansehen, bevor das Auto zurückgegeben wird.
note-changed = Eine Antwort wurde während der Prüfung geändert: Zuerst wies sie auf mehr Gefahr hin. Fragen Sie uns, warum.
rule-sagging-touches = Die Gummilagerung hängt durch, und etwas streift: am ehesten die Welle selbst. Nach Schleifspuren an ihr suchen.
rule-sagging-touches-owner = Der Gummi, der die Welle hält, hängt durch, und etwas streift.
note-could-sagging-touches = Die Welle kann schleifen, Schaden nehmen und sich während der Fahrt lösen.
rule-play-unsure-none = Beide Enden der Welle wurden gefühlt, Bewegung ließ sich nicht ausschließen. Beide noch einmal fühlen, eine zweite Person beobachtet das Gelenk.
rule-play-unsure-none-owner = Wir haben an beiden Enden der Welle nach Bewegung gefühlt und sind nicht sicher.
note-could-play-unsure-none = Ist ein Gelenk lose, kann sich die Welle während der Fahrt lösen.
note-could-unrated-none = Das können wir noch nicht sagen. Ist ein Gelenk lose, kann sich die Welle während der Fahrt lösen.
finding-next-again-owner = Geben Sie dem Kunden die Kundeninfo. Bieten Sie nichts an, bevor noch einmal gefühlt wurde.
rule-cold-check-buzz-repaired = Nach einer Reparatur, und kalt oder ohne Temperatur gefühlt: Eine kalte Prüfung gibt nichts frei. Warm noch einmal fühlen, bevor es heißt, dass die Reparatur hält.
rule-cold-check-buzz-repaired-owner = Das Auto wurde repariert, und wir haben es kalt geprüft. Erst warm zeigt sich, ob die Reparatur hält.
next-whose-roughness = Die Welle abkuppeln und für sich drehen: Das zeigt, ob die Rauheit ihre eigene ist.
finding-elsewhere = Zählt nicht: { $answers }. Das Auto war damals mit anderer Bauart oder anderem Maß eingetragen. Noch einmal prüfen.
rule-set-apart = Es wurde etwas gefunden, während dieses Auto mit anderer Bauart oder anderem Maß eingetragen war, und es ist weder neu geprüft noch zurückgenommen. Das zuerst klären.
rule-set-apart-owner = Wir haben an diesem Auto etwas gefunden, das noch nicht geklärt ist.
note-could-set-apart = Liegt es am Lager, kann sich die Welle beim Fahren lösen.
