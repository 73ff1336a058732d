### Ein Auto, das schon einmal hier war: was es herführt, wobei das Geräusch auftritt und was frühere Vorgänge fanden.

occasion = Anlass
occasion-complaint = Die Beanstandung, zum ersten Mal
occasion-after-repair = Nachschau nach der Reparatur
occasion-comeback = Nach einer Reparatur wieder da
occasion-said-after-repair = Dieser Vorgang ist eine Nachschau nach einer Reparatur.
occasion-said-comeback = Das Geräusch kam nach einer Reparatur wieder.
conditions = Gehört bei
conditions-about = Gleiches Tempo, gleicher Gang und gleiche Wärme beim nächsten Mal machen vorher und nachher vergleichbar.
conditions-speed = Tempo
conditions-gear = Gang
conditions-engine-warm = Motor warm
conditions-engine-cold = Motor kalt
speed-km = { $value } km/h
speed-miles = { $value } mph
conditions-gear-said = Gang { $gear }
conditions-again = Wie am { $day }: { $said }
field-conditions = Gehört bei
field-occasion = Anlass
before-title = Frühere Vorgänge dieses Autos
before-known = { $count ->
    [one] Dieses Auto war schon einmal hier
   *[other] Dieses Auto war schon { $count }-mal hier
}
before-take-car = Angaben zum Auto übernehmen
before-taken = Übernommen. Bitte prüfen, ob sie noch stimmen.
before-step = Am { $day }: { $said }
before-none = Auf diesem Gerät gibt es keinen früheren Vorgang dieses Autos. Gesucht wird nach Fahrgestellnummer oder Kennzeichen.
before-broken = Das Protokoll dieses Vorgangs ist beschädigt. Was darin steht, beweist nichts.
before-not-checked = Von Hand wurde nichts geprüft.
before-now = Dieser Vorgang
before-curve = Mit der Messuhr gelesene Bewegung, Vorgang für Vorgang, mit Unsicherheit
before-curve-about = { $place }: jeder Punkt ist ein Vorgang, der Balken seine Unsicherheit. Nach einer Reparatur beginnt es neu: ein anderes Lager oder ein anderer Sitz wird gelesen.
before-movement = { $place }: { $movement }
before-repaired = Hier repariert
before-open = Diesen Vorgang öffnen
intake-warm-from = Gehäuse gilt als warm ab, °C (Hersteller)
before-outcome = Es war: { $causes }
