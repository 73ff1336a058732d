### What a rating does not speak for, a shaft that is turned with what hangs on it, and what hums with the road's speed.

headline-notice-in-part = No bearing work needed, as far as checked
finding-sum-notice-in-part = NOTICE: no bearing work is needed, as far as checked.
finding-next-unlooked = Before the car is handed back, look at what was left out: { $parts }.

## What of the driveline nobody looked at.
limit-unlooked = Not looked at, or not all of it: { $parts }. This rating says nothing about that.
limit-unlooked-owner = We did not look at all of this: { $parts }. We can say nothing about it.
unlooked-play-far-end = play at the far end of the shaft
unlooked-play-far-end-owner = the far end of the shaft
unlooked-coupling-look = couplings and their bolts
unlooked-coupling-look-owner = the joints and their bolts
unlooked-shaft-look = the shaft itself
unlooked-shaft-look-owner = the shaft itself
unlooked-shield-and-mounts = shields and mounts
unlooked-shield-and-mounts-owner = the heat shields and the parts that hold the engine
ui-unlooked = Not looked at

## Turned with the wheels.
ui-free-engine = Is the shaft uncoupled from the engine?
ui-free-wheels = Is the shaft uncoupled from wheels and final drive?
ui-free-no-engine = Turns the engine
ui-free-no-wheels = Turns the wheels
detail-free-engine = Turned free of the engine
detail-free-wheels = Turned free of wheels and final drive
detail-not-free-engine = Turned together with the engine
detail-not-free-wheels = Turned together with the wheels
rule-stiff-with-wheels = The shaft resists, but wheels, brakes and final drive turned with it: which of them drags is not known. Turn it uncoupled.
rule-stiff-with-wheels-owner = The shaft was hard to turn, but the wheels turned with it. We have not yet turned it by itself.
note-could-stiff-with-wheels = What drags can get hot and fail. It may be a bearing, a joint or a brake.
limit-turn-by-hand-none = Limited to play; the joints were not turned by themselves.
limit-turn-by-hand-none-owner = We did not turn the shaft by itself.

## Both ends of a shaft that nothing holds between them.
step-play-far-end-ends = Play at both ends
rule-far-end-play-ends = Movement across the shaft, or a clunk, was felt at one of its ends or both. Note which before work begins.
rule-far-end-play-ends-owner = The shaft is loose at one of its ends, or at both.
rule-far-end-unsure-ends = Both ends of the shaft were felt, and movement could not be ruled out. Feel both again with a second person watching the joint.
rule-far-end-unsure-ends-owner = We felt for movement at both ends of the shaft and are not sure.

## Suspected in a tube that is still closed.
rule-bearing-likely-suspected-closed = A bearing fault is at least 50% likely by what was heard: suspected. The tube is closed, so no hand could feel for it. Opening the tube by the maker's procedure would tell.
rule-bearing-likely-suspected-closed-owner = What we heard may come from a bearing in the tube. The tube is closed, so nobody could feel for it yet.

## What hums with the road's speed.
cause-wheel-bearing-or-axle = Wheel bearing, or gears of axle or transfer case
cause-wheel-bearing-or-axle-about = A wheel bearing, or gears of the axle or the transfer case, are worn and hum while the car drives.
cause-wheel-bearing-or-axle-next = Drive a gentle bend each way: a hum that gets louder one way is the wheel bearing on the outside. A whine that comes and goes with the pedal is the final drive, or the transfer case where there is one: check its oil and its play. Then turn each wheel by hand on the lift.
step-road-bend = On the road: in a bend
step-road-bend-do = Same speed, a long gentle bend to the left, then one to the right. Does a hum get louder one way?
step-road-bend-watch = A wide road without traffic, never swerve. Heavy knock or strong vibration: stop. The maker's procedure comes first.
drawing-road-bend = A car on the road, with waves under its floor.
answer-louder = Louder one way
answer-road-bend-none = No hum
answer-road-bend-same = The same both ways
