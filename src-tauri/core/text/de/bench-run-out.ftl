# Rundlauf der Welle, nach dem Zusammenbau an der Werkbank abgelesen

entry-run-out-read = Rundlauf der Welle abgelesen
repair-run-out = Rundlauf der Welle neben dem Lager, eine Umdrehung: { $size } ({ $by }, { $at }). Eine Grenze, die für jede Welle gilt, ist nicht bekannt.
ui-bench-run-out = Rundlauf der Welle neben dem Lager, mm
ui-bench-run-out-about = Die Messuhr neben dem Lager an die Welle setzen, die Welle von Hand einmal ganz drehen und den ganzen Ausschlag des Zeigers notieren. Eine Grenze, die für jede Welle gilt, ist nicht bekannt: Der Wert dient dem Vergleich.
error-run-out-refused = So einen Rundlauf zeigt keine Messuhr
error-run-out-refused-help = Den ganzen Ausschlag des Zeigers in Millimetern eingeben, von 0 bis 10.

ui-ring-which = Welches Lager?
ui-ring-place-one = Das einzige
ui-ring-place-front = Vorn
ui-ring-place-rear = Hinten
ui-ring-temperature = Wie warm ist es?
ui-ring-cold = Kalt
ui-ring-warm = Noch warm
ui-ring-clearance = Verbleibende radiale Lagerluft, mm (darf leer bleiben)
repair-ring-front = Vorderes Lager: { $line }
repair-ring-rear = Hinteres Lager: { $line }
repair-ring-front-open = Das vordere Lager wurde noch nicht gedreht.
repair-ring-rear-open = Das hintere Lager wurde noch nicht gedreht.
repair-ring-warm = Es war noch warm: Ein warmes Gehäuse ist weiter und lässt los. Drehen Sie es kalt noch einmal.
repair-ring-clearance = Verbleibende radiale Lagerluft: { $clearance }.
repair-ring-clearance-gone = KEINE LAGERLUFT MEHR ({ $clearance }): Es läuft heiß und fällt früh aus.
error-clearance-refused = Kein Lager einer Welle hat diese Lagerluft
error-clearance-refused-help = Geben Sie sie in Millimetern ein, von 0 bis 1, etwa 0,012, oder lassen Sie das Feld leer.
