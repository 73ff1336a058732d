### Die Sätze des Befunds (für die Werkstatt) und der Kundeninfo, und wie Zahlen und Daten zu lesen sind.
### Zeichen für Zahlen und Anteile, Reihenfolge des Datums: Unicode CLDR, Sprache de.

number-group = { "." }
number-group-from = 4
number-point = { "," }
list-joint = { ", " }
reading-rpm = { $value } U/min
percent = { $number } %
percent-below = unter { $number } %
percent-above = über { $number } %
date-day = { $day }. { $month } { $year }
month-1 = Januar
month-2 = Februar
month-3 = März
month-4 = April
month-5 = Mai
month-6 = Juni
month-7 = Juli
month-8 = August
month-9 = September
month-10 = Oktober
month-11 = November
month-12 = Dezember
time-utc = { $day }.{ $month }.{ $year }, { $clock } UTC
length-mm = { $mm } mm
length-both = { $mm } mm ({ $thou } Tausendstel Zoll)
length-shown = mm
answer-missing = Nicht geprüft
word-none-yet = noch keine

## Der Befund.

finding-title = Befund: Kardanwelle und ihr Stützlager
finding-heading-next = Was als Nächstes zu tun ist
finding-heading-vehicle = Fahrzeug und Vorgang
finding-heading-complaint = Beanstandung
finding-heading-reasons = Warum diese Einstufung
finding-heading-suspicion = Was Verdacht weckt
finding-heading-steps = Was geprüft wurde
finding-heading-causes = Ursachen, die wahrscheinlichste zuerst
finding-heading-causes-found = Ursachen, was hinter dem Befund steckt, zuerst
finding-heading-unknown = Was nicht bekannt ist
finding-heading-road = Prüfvorschriften zur Verkehrssicherheit (UK, EU), zur Information
finding-heading-cautions = Vorbehalte
finding-heading-signed = Empfang der Kundeninfo

finding-sum-danger = GEFAHR: Fahren Sie dieses Auto nicht.
finding-sum-warning = WARNUNG: nicht fahren. Auf einem Abschleppwagen zur Reparatur bringen lassen.
finding-sum-repaired = Seither repariert: Nach dem Zusammenbau ließ sich das Lager von Hand frei drehen. Die Einstufung sagt, was vorher gefunden wurde.
finding-sum-caution = VORSICHT: Vereinbaren Sie die Reparatur.
finding-sum-notice = HINWEIS: Am Lager ist nichts zu tun.
finding-sum-unrated = NOCH NICHT GEPRÜFT: Die Prüfung von Hand ist offen, darum gibt es keine Einstufung.
finding-sum-suspicion = Nur ein Verdacht: { $reason }
finding-sum-still = Die Prüfung von Hand ist nicht zu Ende.
finding-sum-likely = Am ehesten: { $causes }.
finding-sum-no-cause = Keine einzelne Ursache sticht heraus.
finding-sum-bearing = Mindestens eine Ursache am Lager: { $bearing }.
finding-sum-nothing-yet = Noch wurde nichts eingetragen, darum sind die Ursachen nicht sortiert.
finding-cause-share = { $cause } ({ $percent })

finding-next-danger = Nicht fahren, keine Probefahrt, Motor nicht mehr starten. Mit ausgeschaltetem Motor auf einem Abschleppwagen abtransportieren, nicht auf den Antriebsrädern schleppen.
finding-next-danger-owner = Sagen Sie es dem Kunden heute, und lassen Sie den Empfang der Kundeninfo unterschreiben.
finding-next-warning = Nicht zum Fahren herausgeben. Auf einem Abschleppwagen zur Reparatur bringen lassen, Motor aus, nicht auf den Antriebsrädern geschleppt.
finding-next-repaired = Vor der Rückgabe noch einmal von Hand nach Spiel fühlen, kalt und warm. Bis dahin gilt die Einstufung oben.
finding-next-warning-owner = Geben Sie dem Kunden die Kundeninfo, und bieten Sie die Reparatur an.
finding-next-caution = Planen Sie die Reparatur ein, und machen Sie ein Angebot für die gefundenen Fehler.
finding-next-caution-owner = Geben Sie dem Kunden die Kundeninfo. Bitten Sie ihn zu kommen, wenn Geräusch oder Vibration zunimmt.
finding-next-notice = Bieten Sie keine Arbeit am Lager an.
finding-next-notice-owner = Geben Sie dem Kunden die Kundeninfo. Bitten Sie ihn zu kommen, wenn das Geräusch wiederkehrt oder sich ändert.
finding-next-unrated = Geben Sie es nicht frei, und erklären Sie nichts für defekt: Geräusch und Vibration beweisen nichts.
finding-next-unrated-owner = Bieten Sie eine Reparatur erst nach der Prüfung von Hand an.
finding-next-finish = Schließen Sie die Prüfung ab: { $steps }.
finding-next-check = Nächste Prüfung: { $step }. { $why }
finding-next-maker = Lesen Sie vor jeder Reparatur die Vorschrift des Herstellers für dieses Auto.

field-label = Marke und Modell
field-plate = Kennzeichen
field-vin = FIN
field-layout = Bauart der Welle
field-seat = Lagersitz
field-gearbox = Getriebe
field-cylinders = Zylinder
field-idle = Leerlaufbereich
field-idle-value = { $low } bis { $high } U/min
field-odometer = Kilometerstand
field-odometer-km = { $value } km
field-odometer-miles = { $value } Meilen
field-maker-play = Bewegung laut Hersteller
field-owner = Kunde
field-contact = Kontakt
field-vehicle = Fahrzeug
field-opened = Annahme
field-checked = Zuletzt geprüft
field-date = Datum (UTC)
field-technician = Geprüft von
field-visit = Vorgang
field-ledger = Protokoll
field-ledger-value = { $entries ->
    [one] { $entries } Eintrag, letzte Prüfsumme { $head }
   *[other] { $entries } Einträge, letzte Prüfsumme { $head }
}
field-ledger-broken = Fehler im Protokoll
field-ledger-broken-value = Ab Eintrag { $at } passt das Protokoll nicht zusammen. Einträge können geändert sein oder fehlen.
field-knowledge = Regeln und Zahlen
field-complaint = In den Worten des Kunden
field-complaint-none = Nichts aufgeschrieben
field-sounds = Was der Kunde bemerkt
field-when = Wann es auftritt

reason-rests-on = { $reason } Gestützt auf: { $answers }.
answer-at-step = { $step }: { $answer }
answer-and-gauge = { $answer } von Hand, Bewegung mit der Messuhr nachgewiesen
weight-strong = { $answer } (stark)
weight-clear = { $answer } (deutlich)
weight-slight = { $answer } (schwach)
weight-by-gauge = { $answer } (mit der Messuhr)

detail-answered = { $at }, von { $by }
detail-cold = Bei kaltem Gehäuse gefühlt
detail-warm = Bei warmem Gehäuse gefühlt
detail-no-temperature = Ob kalt oder warm, wurde nicht eingetragen
detail-milder = Geändert nach einer Antwort mit GEFAHR oder WARNUNG. Genannter Grund: { $reason }
detail-milder-again = Einmal geändert oder zurückgenommen, dann wieder eingetragen; sie gilt. Genannter Grund: { $reason }
detail-disputed = Zwei Geräte haben verschiedene Antworten eingetragen. Die schlimmere zählt.
photo-caption = { $step }: { $answer }
photo-alt = Foto, aufgenommen beim Schritt „{ $step }“. Eingetragene Antwort: { $answer }.
photo-none = Kein Foto: { $reason }
photo-none-taken = Es wurde kein Foto aufgenommen. Steady hat selbst vermerkt, dass es nichts zu zeigen gab.

unknown-hands-on = { $step }: nicht gemacht. Nur die Prüfung von Hand entscheidet.
unknown-unsure = { $step }: gemacht, aber unsicher geblieben; gilt als nicht bestanden.
unknown-disputed = { $step }: Zwei Geräte haben verschiedene Antworten eingetragen.
unknown-open = { $count ->
    [one] Ein weiterer Schritt wurde nicht geprüft.
   *[other] { $count } weitere Schritte wurden nicht geprüft.
}
unknown-cold = Brummen, Klopfen oder Vibrieren bei kalter Prüfung: Ein Lagersitz kann heiß lose werden. Mit warmem Gehäuse noch einmal nach Spiel fühlen.
unknown-not-reproduced = Nicht reproduziert: Bei laufendem Motor war nichts zu hören.
unknown-not-listened = Nicht reproduziert: Es gab keine Prüfung mit laufendem Motor, also hat niemand gehorcht.
unknown-figure = Die Bewegung wurde nach der Herstellerangabe beurteilt, doch die Angabe selbst ist nicht eingetragen. Geben Sie sie in der Annahme ein.
unknown-ledger = Ab Eintrag { $at } passt das Protokoll nicht zusammen.

caution-scope = Dieser Befund deckt ab, was geprüft wurde, so wie es an dem Tag war. Nicht genannte Teile wurden nicht geprüft.
caution-sorting = Wahrscheinlichkeiten beruhen auf Einschätzung der Werkstatt und sind nicht gemessen. Über das Lager entscheidet nur die Prüfung von Hand.
caution-maker = Die Vorschriften des Herstellers und das örtliche Recht gehen diesem Befund vor.
caution-quote = Dies ist kein Kostenvoranschlag und kein Gutachten für ein Gericht.

signed-text = { $decision }. { $name } hat die Kundeninfo am { $at } erhalten.
signed-text-nameless = { $decision }. Kundeninfo erhalten am { $at }; kein Name genannt.
signed-outdated = Nach der Unterschrift wurde etwas eingetragen: In der unterschriebenen Kundeninfo steht das vielleicht nicht.
signed-language = Unterschrieben wurde die Kundeninfo in einer anderen Sprache: { $language }.
signed-note = Unterschrieben für die Kundeninfo mit SHA-256 { $hash }.
signed-alt = Unterschrift, von Hand gezeichnet.

finding-foot = Befund, Vorgang { $visit }. Was nicht genannt ist, wurde nicht geprüft.

## Die Kundeninfo. Kurze Wörter und kurze Sätze: Ein Kunde unter Druck liest sie einmal.

note-title = Was wir an Ihrem Auto gefunden haben
note-heading-found = Was wir gefunden haben
note-heading-means = Was das heißt
note-heading-could-happen = Was passieren kann
note-heading-do-now = Was jetzt zu tun ist
note-heading-not-known = Was wir noch nicht wissen
note-heading-ask = Wen Sie fragen können

note-found-unrated = Wir haben noch nicht alles von Hand geprüft.
note-found-suspicion = Einige Zeichen wecken einen Verdacht. Klar wird es nur, wenn wir von Hand prüfen.
note-found-rest-open = Der Rest der Prüfung ist noch offen.
note-found-repaired = Hier steht, was wir vor der Reparatur gefunden haben. Danach wurde das Lager repariert.
note-found-more = { $count ->
    [one] Es gibt noch einen Punkt. Die Werkstatt kann ihn Ihnen zeigen.
   *[other] Es gibt noch { $count } Punkte. Die Werkstatt kann sie Ihnen zeigen.
}

note-means-shaft = Die Kardanwelle bringt die Kraft vom Motor zu den Rädern. Ein Lager hält die Welle ruhig.
note-means-danger = Das ist unsere schwerste Einstufung. Das Auto darf nicht gefahren werden.
note-means-warning = Nur eine unserer Einstufungen wiegt schwerer. Das Auto darf nicht gefahren werden.
note-means-caution = Etwas muss repariert oder genau angesehen werden. Schieben Sie es nicht auf.
note-means-notice = Wir haben keinen Grund gefunden, jetzt am Lager zu arbeiten.
note-means-unrated = Es gibt noch keine Einstufung. Ein Geräusch kann auf einen Fehler deuten, doch nur die Prüfung von Hand klärt es.
note-likely = Am ehesten ist es das: { $about }

note-could-movement-at-support = Die Welle kann sich beim Fahren losreißen. Sie kann das Auto oder die Straße treffen. Sie können die Kontrolle verlieren.
note-could-housing-broken = Das Lager kann sich beim Fahren lösen. Dann kann die Welle das Auto oder die Straße treffen. Sie können die Kontrolle verlieren.
note-could-coupling-failing = Das Gelenk kann beim Fahren brechen. Dann kann die Welle das Auto oder die Straße treffen. Sie können die Kontrolle verlieren.
note-could-shaft-fibre-damaged = Die Welle kann beim Fahren brechen. Teile können das Auto oder die Straße treffen. Sie können die Kontrolle verlieren.
note-could-running-stopped = Vielleicht steht ein Teil kurz vor dem Bruch. Bricht es beim Fahren, können Sie die Kontrolle verlieren.
note-could-rubber-play = Der Gummi kann weiter reißen. Dann kann die Welle schlagen, das Auto treffen und andere Teile beschädigen.
note-could-turns-badly = Das Lager kann heiß werden und dann blockieren oder brechen. Dann kann sich die Welle lösen.
note-could-shaft-damaged = Die Welle kann immer stärker rütteln. Das kann ihr Lager und ihre Gelenke zerstören.
note-could-far-end-play = Das Gelenk kann weiter verschleißen, bis sich die Welle löst.
note-could-play-unsure = Ist das Lager lose, kann sich die Welle beim Fahren lösen.
note-could-bearing-likely = Versagt das Lager, kann sich die Welle beim Fahren lösen.
note-could-cause-likely = Der Fehler kann schlimmer werden und andere Teile beschädigen.
note-could-cause-likely-misfire = Der Fehler kann schlimmer werden. Er kann ein Teil im Auspuff zu heiß machen, und das Teil ist teuer.
note-could-finding-unexplained = Das lässt sich nicht sicher sagen. Es kann der Anfang von einem Fehler sein, der schlimmer wird.
note-could-cold-check-buzz = Ist das Lager lose, wenn es heiß ist, kann sich die Welle beim Fahren lösen.
note-could-no-bearing-action = Das Geräusch kann wiederkommen. Jedes Teil kann mit der Zeit verschleißen.
note-could-unrated = Das wissen wir noch nicht. Ist das Lager lose, kann sich die Welle beim Fahren lösen.

note-now-danger = Fahren Sie das Auto nicht, auch nicht nach Hause. Starten Sie den Motor nicht. Lassen Sie es hier, oder lassen Sie es auf einem Abschleppwagen abtransportieren. Fragen Sie uns, was die Reparatur kostet.
note-now-warning = Fahren Sie das Auto nicht. Lassen Sie es auf einem Abschleppwagen zur Reparatur bringen, Motor aus. Es darf nicht auf den Antriebsrädern geschleppt werden.
note-now-caution = Machen Sie einen Termin für die Reparatur. Wird das Geräusch oder das Rütteln stärker, halten Sie an und rufen Sie uns an.
note-now-notice = Am Lager ist jetzt nichts zu tun. Kommen Sie, wenn das Geräusch wieder da ist oder anders klingt.
note-now-unrated = Lassen Sie uns von Hand fertig prüfen. Bis dahin wissen wir nicht, ob Sie das Auto fahren dürfen. Wenn es mehr klopft oder rüttelt als bisher, halten Sie an und rufen Sie uns an.
note-now-repaired = Fragen Sie uns, ob das Auto wieder gefahren werden darf. Fahren Sie nicht, bevor wir es sagen. Wenn es mehr klopft oder rüttelt als bisher, halten Sie an und rufen Sie uns an.

note-open-none = Wir haben jeden Teil dieser Prüfung abgeschlossen. Wir haben nur die Teile angesehen, die im Befund stehen.
note-open-play-vertical = Wir haben nicht gefühlt, ob sich die Welle auf und ab bewegt.
note-open-play-lateral = Wir haben nicht gefühlt, ob sich die Welle hin und her bewegt.
note-open-tube-open-check = Wir haben das Rohr nicht geöffnet, um die Lager darin zu fühlen.
note-open-turn-by-hand = Wir haben die Welle nicht von Hand gedreht.
note-unsure-play-vertical = Wir haben auf und ab nach Bewegung gefühlt, sind aber nicht sicher.
note-unsure-play-lateral = Wir haben hin und her nach Bewegung gefühlt, sind aber nicht sicher.
note-unsure-play-far-end = Wir haben am fernen Ende der Welle nach Bewegung gefühlt, sind aber nicht sicher.
note-unsure-tube-open-check = Wir haben die Lager im Rohr gefühlt, sind aber nicht sicher.
note-disputed = Zwei unserer Einträge passen nicht zusammen. Bei uns zählt der schlimmere.
note-open-others = { $count ->
    [one] Eine Prüfung fehlt noch.
   *[other] Es fehlen noch { $count } Prüfungen.
}
note-cold = Wir haben am kalten Teil nach Bewegung gefühlt. Heiß kann es lose sein.
note-not-reproduced = Wir haben den Motor laufen lassen und das Geräusch nicht gehört.
note-not-listened = Wir haben den Motor nicht laufen lassen, um zu horchen. Das Geräusch wurde also nicht reproduziert.
note-figure = Der Hersteller sagt, wie viel Bewegung erlaubt ist. Wir haben diese Zahl nicht notiert.
note-ledger = Unser Protokoll dieser Prüfung ist vielleicht nicht vollständig oder wurde vielleicht geändert. Fragen Sie die Werkstatt danach.

note-ask-technician = Fragen Sie die Werkstatt, die Ihnen dieses Blatt gab. Bei der Prüfung eingetragen: { $technician }.
note-ask-workshop = Fragen Sie die Werkstatt, die Ihnen dieses Blatt gab.
note-ask-second = Sie können auch eine zweite Werkstatt fragen. Die Regeln des Herstellers und das Recht vor Ort gehen vor.

note-receipt-heading = Ihre Empfangsbestätigung
note-receipt-text = Sie unterschreiben nur, dass Sie dieses Blatt bekommen haben. Sie können frei wählen, und Sie können es sich anders überlegen.
note-foot = Info für den Kunden. Sie gilt für das, was geprüft wurde, so wie es an dem Tag war.

short-head = { $vehicle }, { $date }: { $label }. { $headline }.
short-head-nameless = Ihr Auto, { $date }: { $label }. { $headline }.
short-now-danger = Auch nicht nach Hause. Starten Sie den Motor nicht. Lassen Sie das Auto hier, oder lassen Sie es auf einem Abschleppwagen abtransportieren.
short-now-warning = Lassen Sie es zur Reparatur bringen, Motor aus. Es darf nicht auf den Antriebsrädern geschleppt werden.
short-now-caution = Wird das Geräusch oder das Rütteln stärker, halten Sie an und rufen Sie uns an.
short-now-notice = Kommen Sie, wenn das Geräusch wieder da ist oder anders klingt.
short-now-unrated = Lassen Sie uns von Hand fertig prüfen. Bis dahin wissen wir nicht, ob Sie das Auto fahren dürfen.
short-more = In der Kundeninfo steht mehr: Fragen Sie uns danach.

# Beschriftungen im Druck
paper-label-for = Spricht dafür:
paper-label-against = Spricht dagegen:
paper-label-photo-missing = Das Foto ist eingetragen, doch seine Datei war beim Druck nicht lesbar.
paper-label-photo-damaged = Das Foto ist eingetragen, doch seine Datei wurde seither beschädigt oder verändert. Es wird hier nicht gezeigt und beweist nichts, bis eine gute Kopie übernommen ist.
paper-label-name = Name
paper-label-date = Datum
paper-label-signature = Unterschrift
paper-label-page = Seite { "{page}" } von { "{pages}" }
