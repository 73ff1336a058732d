# Die alte Hülse: ob es eine gibt, wie sie herauskommt, und was am Gehäuse zu sehen war

ui-look-dyed = Mit Farbe nach Rissen gesucht?
ui-look-sleeved = Sitzt eine Hülse aus einer früheren Reparatur in der Bohrung?
ui-look-anew = Die alte Hülse ist heraus: Suchen Sie noch einmal nach Rissen, auch wo sie saß. Die Antworten von vorher zählen nicht.
ui-bench-old-sleeve = Alte Hülse heraus
ui-old-sleeve-about = Eine alte Hülse verdeckt die Wand, die die neue trägt. Nehmen Sie sie heraus, suchen Sie noch einmal nach Rissen, und messen Sie die Bohrung dahinter. Die Vorschrift des Herstellers geht vor.
ui-old-sleeve-way = Wie kam sie heraus?
ui-old-sleeve-heat = Mit Wärme
ui-old-sleeve-heat-about = Das Gehäuse gleichmäßig erwärmen, nie mit einer Flamme und nicht über seine Grenze, bis es die Hülse loslässt.
ui-old-sleeve-press = Ausgepresst
ui-old-sleeve-press-about = Das Gehäuse direkt unter dem Sitz abstützen, gerade pressen, und aufhören, wenn sich nichts bewegt: Wärme hilft mehr als Kraft.
ui-old-sleeve-bored = Ausgedreht
ui-old-sleeve-bored-about = Eine dünne Haut der alten Hülse stehen lassen und herausschälen. Das Werkzeug darf das Gehäuse nicht erreichen.
ui-old-sleeve-outside = Außendurchmesser der alten Hülse, mm (darf leer bleiben)
ui-old-sleeve-out = Sie ist heraus
ui-old-sleeve-behind = Bohrung hinter der alten Hülse

look-line-cracked = DAS GEHÄUSE IST GERISSEN, oder ein Befestigungsauge ist gebrochen.
look-line-no-crack-dye = Mit Farbe wurde kein Riss gefunden.
look-line-no-crack-eye = Mit bloßem Auge war kein Riss zu sehen. Ein feiner Riss zeigt sich nur mit Farbe.
look-line-cracks-open = Nach Rissen wurde nicht gesucht.
look-line-ring-turned = Das Lager hat sich in seinem Sitz mitgedreht.
look-line-ring-still = Keine Spuren eines Lagers, das sich in seinem Sitz mitgedreht hat.
look-line-ring-open = Nach Spuren eines mitgedrehten Lagers wurde nicht gesehen.
look-line-sleeved = Eine Hülse aus einer früheren Reparatur sitzt oder saß in der Bohrung.
look-line-bare = In der Bohrung sitzt keine Hülse.
look-line-wall = Wand, die bleiben muss: { $wall }.

sleeve-out-heat = Die alte Hülse kam mit Wärme heraus.
sleeve-out-press = Die alte Hülse wurde ausgepresst.
sleeve-out-bored = Die alte Hülse wurde ausgedreht.
sleeve-out-size = Außen maß sie { $size }.
sleeve-out-grip = Gegen die Bohrung dahinter waren das kalt { $grip } Übermaß.
sleeve-out-loose = DIE ALTE HÜLSE SASS LOSE: Die Bohrung dahinter ist um { $grip } weiter.
sleeve-out-look-again = Was sie verdeckt hat, zählt erst, wenn dort wieder nach Rissen gesucht und gemessen wurde.

verdict-why-old-sleeve-out = Die alte Hülse ist heraus: Die Bohrung bekommt eine neue.
verdict-gap-old-sleeve = ob eine alte Hülse in der Bohrung sitzt
verdict-gap-behind-sleeve = die alte Hülse herausgenommen und die Bohrung dahinter gemessen
entry-sleeve-out = Alte Hülse herausgenommen
entry-bore-behind = Bohrung hinter der alten Hülse gemessen
repair-heading-look = Gehäuse angesehen, alte Hülse
repair-bore-behind = Bohrung hinter der alten Hülse
repair-photo-bench-behind = Bohrung hinter der alten Hülse
repair-sleeve-out-by = Herausgenommen von { $by }, { $at }.

error-sleeve-size-refused = Keine Hülse eines Sitzes hat diesen Außendurchmesser
error-sleeve-size-refused-help = Geben Sie ihn in Millimetern ein, von 1 bis 1.000, oder lassen Sie das Feld leer.
error-sleeve-still-in = Die alte Hülse sitzt noch
error-sleeve-still-in-help = Tragen Sie zuerst ein, wie die alte Hülse herauskam. Eine Bohrung mit der Hülse darin wird als vorgefunden gemessen.
