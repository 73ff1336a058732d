### Wofür eine Einstufung nicht spricht, eine Welle, die mit dem dreht, was an ihr hängt, und was mit dem Tempo brummt.

headline-notice-in-part = Am Lager ist nichts zu tun, soweit geprüft
finding-sum-notice-in-part = HINWEIS: Am Lager ist nichts zu tun, soweit geprüft.
finding-next-unlooked = Vor der Rückgabe ansehen, was ausgelassen wurde: { $parts }.

## Was vom Antriebsstrang niemand angesehen hat.
limit-unlooked = Nicht oder nicht ganz angesehen: { $parts }. Darüber sagt diese Einstufung nichts.
limit-unlooked-owner = Nicht oder nicht ganz angesehen haben wir: { $parts }. Dazu können wir nichts sagen.
unlooked-play-far-end = Spiel am fernen Ende der Welle
unlooked-play-far-end-owner = das ferne Ende der Welle
unlooked-coupling-look = Gelenke und ihre Schrauben
unlooked-coupling-look-owner = die Gelenke und ihre Schrauben
unlooked-shaft-look = die Welle selbst
unlooked-shaft-look-owner = die Welle selbst
unlooked-shield-and-mounts = Bleche und Aggregatelager
unlooked-shield-and-mounts-owner = die Hitzeschutzbleche und die Teile, die den Motor halten
ui-unlooked = Nicht angesehen

## Mit den Rädern gedreht.
ui-free-engine = Ist die Welle vom Motor abgekuppelt?
ui-free-wheels = Ist die Welle von Rädern und Achsantrieb abgekuppelt?
ui-free-no-engine = Dreht den Motor mit
ui-free-no-wheels = Dreht die Räder mit
detail-free-engine = Frei vom Motor gedreht
detail-free-wheels = Frei von Rädern und Achsantrieb gedreht
detail-not-free-engine = Zusammen mit dem Motor gedreht
detail-not-free-wheels = Zusammen mit den Rädern gedreht
rule-stiff-with-wheels = Die Welle geht schwer, aber Räder, Bremsen und Achsantrieb drehten mit: Was davon schleift, ist nicht bekannt. Abgekuppelt drehen.
rule-stiff-with-wheels-owner = Die Welle ließ sich schwer drehen, aber die Räder drehten mit. Für sich haben wir sie noch nicht gedreht.
note-could-stiff-with-wheels = Was schleift, kann heiß werden und versagen. Es kann ein Lager, ein Gelenk oder eine Bremse sein.
limit-turn-by-hand-none = Beschränkt auf Spiel; die Gelenke wurden nicht für sich gedreht.
limit-turn-by-hand-none-owner = Für sich gedreht haben wir die Welle nicht.

## Beide Enden einer Welle, die dazwischen nichts hält.
step-play-far-end-ends = Spiel an beiden Enden
rule-far-end-play-ends = An einem Ende der Welle oder an beiden wurde Spiel quer zur Welle oder ein Schlag gefühlt. Vor der Arbeit notieren, an welchem.
rule-far-end-play-ends-owner = Die Welle ist an einem Ende oder an beiden lose.
rule-far-end-unsure-ends = Beide Enden der Welle wurden gefühlt, Bewegung ließ sich nicht ausschließen. Beide noch einmal fühlen, eine zweite Person beobachtet das Gelenk.
rule-far-end-unsure-ends-owner = Wir haben an beiden Enden der Welle nach Bewegung gefühlt und sind nicht sicher.

## Verdacht in einem Rohr, das noch zu ist.
rule-bearing-likely-suspected-closed = Nach dem, was zu hören war, ist ein Lagerschaden zu mindestens 50 % wahrscheinlich: Verdacht. Das Rohr ist zu, keine Hand konnte danach fühlen. Klarheit gibt das Öffnen des Rohrs nach Herstellervorschrift.
rule-bearing-likely-suspected-closed-owner = Was wir gehört haben, kann von einem Lager im Rohr kommen. Das Rohr ist zu, deshalb konnte noch niemand danach fühlen.

## Was mit dem Tempo brummt.
cause-wheel-bearing-or-axle = Radlager oder Zahnräder von Achse oder Verteilergetriebe
cause-wheel-bearing-or-axle-about = Ein Radlager oder Zahnräder der Achse oder des Verteilergetriebes sind verschlissen und brummen beim Fahren.
cause-wheel-bearing-or-axle-next = Eine sanfte Kurve in jede Richtung fahren: Ein Brummen, das in einer Richtung lauter wird, ist das kurvenäußere Radlager. Ein Heulen, das mit dem Pedal kommt und geht, ist der Achsantrieb oder, wo es eines gibt, das Verteilergetriebe: Öl und Spiel prüfen. Dann auf der Bühne jedes Rad von Hand drehen.
step-road-bend = Auf der Straße: in der Kurve
step-road-bend-do = Gleiches Tempo, eine lange sanfte Linkskurve, dann eine Rechtskurve. Wird ein Brummen in einer Richtung lauter?
step-road-bend-watch = Breite Straße ohne Verkehr, keine Schlenker. Hartes Klopfen oder starke Vibration: anhalten. Die Herstellervorschrift geht vor.
drawing-road-bend = Ein Auto auf der Straße, mit Wellen unter dem Boden.
answer-louder = In einer Richtung lauter
answer-road-bend-none = Kein Brummen
answer-road-bend-same = In beide gleich
