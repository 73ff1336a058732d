# Rundlauf der Welle, nach dem Zusammenbau an der Werkbank abgelesen

entry-run-out-read = Rundlauf der Welle abgelesen
repair-run-out = Rundlauf der Welle neben dem Lager, eine Umdrehung: { $size } ({ $by }, { $at }). Eine Grenze, die für jede Welle gilt, ist nicht bekannt.
ui-bench-run-out = Rundlauf der Welle neben dem Lager, mm
ui-bench-run-out-about = Die Messuhr neben dem Lager an die Welle setzen, die Welle von Hand einmal ganz drehen und den ganzen Ausschlag des Zeigers notieren. Eine Grenze, die für jede Welle gilt, ist nicht bekannt: Der Wert dient dem Vergleich.
error-run-out-refused = So einen Rundlauf zeigt keine Messuhr
error-run-out-refused-help = Den ganzen Ausschlag des Zeigers in Millimetern eingeben, von 0 bis 10.
