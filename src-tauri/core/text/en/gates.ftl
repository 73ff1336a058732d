### Gates: one condition each, confirmed before the steps behind the set open. gates-SET names the set,
### gates-SET-why says why it is worth the half minute.

gates-running = Before the engine runs
gates-running-why = A turning shaft catches cloth and pulls a person in. It has killed mechanics. Trained and authorised people only; your local rules come first.
gate-wheels-on-floor = All wheels stand on the floor, not on the lift.
gate-brake-and-chocks = The parking brake is set and the wheels are chocked.
gate-neutral-or-park = The gearbox is in neutral or park.
gate-doors-shut = All doors are shut: opening one may start the clutch pump.
gate-nobody-near = Nobody is under the car or near its shaft and wheels.
gate-fumes-out = The exhaust is led outside, or the bay doors are open.
gate-clothing-secured = Loose clothing, cords and hair are tied back.

gates-creep = Before the car may creep
gates-creep-why = A creeping car will not stop for a person. Trained and authorised people only; your local rules come first.
gate-creep-wheels-on-floor = All wheels stand on the floor, not on the lift.
gate-creep-chocks-out = The chocks are out and the way ahead is clear.
gate-creep-foot-over-brake = The driver sits in the seat with a foot over the brake.
gate-creep-gear-selected = Drive or first gear is selected with the brake held.
gate-creep-driver-ready = The driver sits with a foot on the brake, and drive or first gear is selected.
gate-creep-brake-off = The parking brake is off and the chocks are out.
gate-creep-distance = Ten metres ahead and five behind are clear and stay clear.
gate-creep-nobody-around = Nobody is ahead of the car, behind it or beneath it.
gate-creep-fumes-out = The exhaust is led outside, or the bay doors are open.

gates-lift = Before anybody goes under
gates-lift-why = A car that slips, or a shaft that turns, gives no warning. Trained and authorised people only; your local rules come first.
gate-nobody-in-car = Nobody is in the car.
gate-engine-off = If neutral needs the ignition on, it was selected first. Now the engine is off and the key or fob is out of range. Start-stop, remote start and hybrid "ready" are off.
gate-shaft-still = The shaft stands still.
gate-lift-rated = The lift is rated for this car, and its arms are at the maker's lifting points.
gate-lift-inspected = The lift's inspection is in date, and nothing on it is damaged.
gate-not-alone = Somebody within call knows that you are under the car.
gate-air-suspension = Air suspension, if fitted, is in jack mode or propped.
gate-shaken-low = The car was shaken while still low, and it sat firm.
gate-locks-engaged = The lift rests on its locks, or the stands are set.
gate-platform-chocked = On a platform lift, the wheels are chocked before neutral. On a two-post lift they hang free and may turn: nobody touches them.
gate-heat-judged = Exhaust and shaft were checked for heat without touching (infrared thermometer).
gate-eyes-covered = Eye protection is on.
gate-high-voltage-untouched = Orange high-voltage cables stay untouched: that work is for qualified people.

## Under the car, by what holds it up.
gate-empty-and-still = Nobody is in the car, and the shaft stands still.
gate-lift-fits = The lift is rated for this car, its inspection is in date, it is undamaged and holds the car where the maker says. Air suspension is in jack mode or propped.
gate-wheels-chocked = The wheels on the ground or on the lift are chocked, both ways.
gate-pit-air = No fumes in the pit: air moves through it, and nothing burns or sparks.
gate-pit-way-out = The way out of the pit is clear, and its open edges are guarded. Air suspension is in jack mode or propped.
gate-ramps-fit = The ramps are rated for this car, undamaged, on firm and level ground.
gate-ramps-firm = The car stands at the ramps' stops and was rocked: it sat firm. Air suspension is in jack mode or propped.
gate-stands-fit = Stands rated for this car are set at the maker's points, on firm and level ground. The car does not rest on a jack.
gate-stands-chocked = Wheels that still stand on the ground are chocked. Air suspension is in jack mode or propped.
gate-guarded = Eye protection is on, exhaust and shaft were checked for heat without touching, and orange cables stay untouched.
