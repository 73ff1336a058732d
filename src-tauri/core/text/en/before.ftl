### A car that was here before: what brings it in, what the noise is heard under, and what earlier visits found.

occasion = What brings it in
occasion-complaint = The complaint, for the first time
occasion-after-repair = Check after the repair
occasion-comeback = The noise is back after a repair
occasion-said-after-repair = This visit is a look after a repair.
occasion-said-comeback = The noise came back after a repair.
conditions = Heard at
conditions-about = The same speed, gear and warmth next time make before and after comparable.
conditions-speed = Speed
conditions-gear = Gear
conditions-engine-warm = Engine warm
conditions-engine-cold = Engine cold
speed-km = { $value } km/h
speed-miles = { $value } mph
conditions-gear-said = gear { $gear }
conditions-again = As on { $day }: { $said }
field-conditions = Heard at
field-occasion = Visit
before-title = Earlier visits of this car
before-known = { $count ->
    [one] This car was here once before
   *[other] This car was here { $count } times before
}
before-take-car = Copy what is known of the car
before-taken = Copied. Check that it still holds.
before-step = On { $day }: { $said }
before-none = No earlier visit of this car is on this device. It is found by its VIN or its plate.
before-broken = The record of this visit is broken. What it says proves nothing.
before-not-checked = Nothing was checked by hand.
before-now = This visit
before-curve = Movement read by gauge, visit by visit, with its uncertainty
before-curve-about = { $place }: each dot is one visit, the bar its uncertainty. A repair between two dots starts anew: another bearing or bearing seat is read.
before-movement = { $place }: { $movement }
before-repaired = Repaired here
before-open = Open that visit
intake-warm-from = Housing counts as warm from, °C (maker)
before-outcome = It turned out: { $causes }
