### Wie viel einer Bohrung gemessen wurde, was das offen lässt, und die eine Grenze für ihre Form.

bore-part = In der Tiefe { $depth } wurden nur { $read } von 360 Grad gemessen; die größte Lücke hat { $gap } Grad. Was darin liegt, ist nicht gemessen: Nichts wird rund genannt, und das Maß ist das des gemessenen Teils. Messen Sie rundum, mindestens alle 30 Grad.
bore-depths-unread = Von { $from } bis { $to } ab der Stirnfläche wurde kein Ring rundum gemessen. Kegel, Einschnürung und Verschleiß sind dort nicht gemessen.
bore-seat-width-unknown = Wie breit der Sitz ist, wurde nicht angegeben; wie viel davon gemessen wurde, kann also niemand sagen. Geben Sie die Breite zu den Messwerten an.
bore-line-size-part = Durchmesser des gemessenen Teils { $size }, ± { $expanded }, falls er rund ist.
bore-line-roundness-part = Rundheitsabweichung mindestens { $value }, ± { $expanded }: Nur ein Teil der Bohrung wurde gemessen.
bore-line-limit = Grenze für die Form dieses Sitzes: { $limit }, die Hälfte von IT5 bei seinem Durchmesser (ISO 286-1; Anteil nach Katalogen von Lagerherstellern). Urteil und Passung nehmen dieselbe. Die Angabe des Herstellers geht vor.
bore-line-limit-unknown = Noch keine Grenze für die Form: Sie richtet sich nach dem Durchmesser. Stellen Sie die Messuhr in einem Ring von bekanntem Maß ein, oder rechnen Sie die Passung aus.

verdict-gap-depths = Messungen rundum nahe beiden Enden des Sitzes und dazwischen, und die Breite des Sitzes

skim-verdict-read-in-part = Was gemessen wurde, ist frühestens nach Durchgang { $passes } sauber, mit der Unsicherheit nach Durchgang { $allow }. Der Rest wurde nicht gemessen: Ob er sauber wird, ist nicht bekannt. Messen Sie die Bohrung rundum, bevor Sie das erste Mal schneiden.

error-bore-read-in-part = Die Bohrung wurde nur zum Teil gemessen
error-bore-read-in-part-help = Eine freie Achse braucht Messwerte rundum, mindestens alle 30 Grad, in jeder Tiefe. Messen Sie weiter, oder planen Sie um die Bezugsachse.
error-bore-size-in-part = Die Bohrung wurde nur zum Teil gemessen, ihr Maß ist also nicht bekannt
error-bore-size-in-part-help = Messen Sie sie rundum, mindestens alle 30 Grad, oder geben Sie das Maß als Zahl an.

bore-read-two-ways = { $phrase }: „{ $one }“ oder „{ $other }“
error-bore-two-readings = Eine Zahl kann auf zwei Arten gelesen werden
error-bore-two-readings-help = Schreiben Sie sie in jeder Zeile mit Dezimalpunkt und ohne Tausendergruppen. In einer Tabellenkalkulation nehmen Sie die Gruppen vor dem Speichern heraus.
