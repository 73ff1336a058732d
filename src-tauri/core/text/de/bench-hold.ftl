### Was hält: die Wand, wenn eine Hülse ihren Platz hat, die Hülse heiß und kalt, Klassen heiß, und der Hebel einer Messuhr.

verdict-why-wall-not-decided = Ob neben der Hülse genug Wand bleibt, liegt innerhalb der Unsicherheit der Wand: Messen Sie sie feiner.
verdict-why-sleeve-too-small = Die Bohrung für die Hülse wird nicht rundum sauber: Es braucht eine größere Hülse.
verdict-why-sleeve-loose-hot = Die Hülse oder das Lager darin wäre heiß lose: Es braucht mehr Übermaß.
verdict-why-sleeve-too-tight = Die Hülse würde ein Teil zu nah an seine Streckgrenze pressen: Es braucht weniger Übermaß.
verdict-gap-sleeve = die Hülse, die eingesetzt wird: ihr Außendurchmesser und die Bohrung, in die sie kommt
verdict-gap-sleeve-hot-fit = eine Hülse, die bei der höchsten Temperatur hält
verdict-gap-sleeve-stress = eine Hülse, deren Spannung jedes Teil trägt, mit dem Außendurchmesser des Gehäuses

skim-sleeve-unknown = In diesem Plan ist keine Hülse. Sie braucht eigenen Platz, oft einen Millimeter und mehr auf jeder Seite: Geben Sie ihr Maß an, bevor Sie der Wand trauen.
skim-verdict-before-sleeve = Rundum sauber nach Durchgang { $passes }, und für diesen Schnitt allein reicht die Wand. Die Hülse nimmt mehr davon: Ob dann genug bleibt, ist nicht bekannt. Planen Sie bis Durchgang { $allow }; hören Sie bei Durchgang { $safe } auf, ganz gleich, wo das Werkzeug gegriffen hat.
skim-verdict-before-sleeve-ample = Rundum sauber nach Durchgang { $passes }, und für diesen Schnitt allein reicht die Wand bei weitem. Die Hülse nimmt mehr davon: Ob dann genug bleibt, ist nicht bekannt. Planen Sie bis Durchgang { $allow }; ist der Sitz dann nicht rundum sauber, messen Sie neu, bevor Sie weiterschneiden.
skim-sleeve-too-small = Die Bohrung { $bore } für die Hülse ist nicht sicher weit genug, um sauber zu werden. Nehmen Sie eine größere Hülse.
skim-sleeve-cut = Für die Hülse geht die Bohrung weiter bis { $bore }: { $cut } am Radius, wo am meisten abgetragen wird. Messen Sie vorher die Wand.
skim-sleeve-wall = Für die Hülse geht die Bohrung weiter bis { $bore }: { $cut } am Radius, wo am meisten abgetragen wird, und dort bleiben { $wall } Wand.

fit-holding-classes = Bis { $celsius } °C bleiben im bloßen Gehäuse diese Klassen in jeder Paarung fest: { $classes }.
fit-holding-none = KEINE KLASSE DER TABELLE HÄLT im bloßen Gehäuse bis { $celsius } °C: Die engste, { $class }, kann über { $loosens } °C lose sein.
fit-holding-no-range = Im bloßen Gehäuse kann die engste Klasse der Tabelle, { $class }, über { $loosens } °C lose sein. Geben Sie die Temperaturen im Betrieb an, dann zeigt sich, was hält.
fit-holding-never = Im bloßen Gehäuse löst sich die engste Klasse der Tabelle, { $class }, bei keiner Temperatur über 20 °C.
fit-holding-bare = Was hält: eine bloße Bohrung von höchstens { $bore } bei 20 °C. Rechnen Sie vor dem Schnitt ihre Spannung mit der gemessenen Bohrung aus.
fit-holding-sleeve = Oder eine Hülse aus { $material } mit mehr als { $grip } Übermaß im Gehäuse bei 20 °C, ihre Bohrung nach dem Einpressen höchstens { $bore }: Heiß lässt das Gehäuse sie los, und ihre Bohrung geht auf.

gauge-other-lever = Nach dem anderen Hebel sind 1 mm an der Messuhr { $ratio } mm am Lager, und es bewegt sich um { $mean }. { $decision }
gauge-remedy-find-lever = Würde entscheiden: herauszufinden, welches Lager sich bewegt und worum die Welle kippt. Beobachten Sie ein Lager mit einer zweiten Messuhr.
