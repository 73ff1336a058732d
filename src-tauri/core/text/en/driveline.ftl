### What the second rules added: steps and answers for rubber supports, couplings and idle rattle, layouts, causes,
### reasons, and what a rating is limited to.

step-at-support = { $step } (support { $number })
reason-at-support-1 = At the first support, nearest the gearbox.
reason-at-support-1-owner = It is the first of the shaft's bearings.
reason-at-support-2 = At the second support.
reason-at-support-2-owner = It is the second of the shaft's bearings.
reason-at-support-3 = At the third support.
reason-at-support-3-owner = It is the third of the shaft's bearings.

## Steps.
step-support-look = Look at the rubber support
step-support-look-do = Light the rubber all round, both sides, then bracket and bolts. Mark on screen all you find.
step-support-look-watch = Hot exhaust close by. Do not hang on the bracket. Leave orange cables alone. The maker's procedure comes first.
step-clutch-pedal-effect = Clutch pedal pressed
step-clutch-pedal-effect-do = Gearbox in neutral, engine idling. Press the clutch pedal right down. Does the rattle go? Let it up again.
step-clutch-pedal-effect-watch = Stay in the seat, neutral stays in. Foot ready at the brake. The maker's procedure comes first.
step-selector-effect = Selector moved to drive
step-selector-effect-do = Foot hard on the brake, engine idling. Select drive for three seconds. Does the rattle go? Back to park.
step-selector-effect-watch = The car pulls: brake held down, parking brake on, nobody in front or behind. The maker's procedure comes first.
drawing-support-look = The rubber ring round the bearing and the bracket that holds it, lit from below.
drawing-clutch-pedal-effect = A foot presses the clutch pedal right down while the engine idles.
drawing-selector-effect = A foot holds the brake while the selector is moved from park to drive.

## Answers.
answer-not-seen = Could not see it
answer-crazed = Crazed
answer-torn = Torn
answer-torn-through = Torn through
answer-off-centre = Sagging or off centre
answer-oil-soaked = Oil-soaked
answer-bracket-cracked = Bracket cracked
answer-springy = Springy: no figure known
answer-knocks = Knocks: reaches a stop
answer-slides = Slides along the shaft only
answer-bolt-loose = Bolt loose
answer-bolt-missing = Bolt missing
answer-boot-torn = Boot torn
answer-joint-stiff = Joint stiff
answer-touches-fibre = Touches a fibre shaft
answer-support-look-sound = Sound all round
answer-clutch-pedal-effect-gone = Rattle gone
answer-clutch-pedal-effect-less = Less
answer-clutch-pedal-effect-same = The same
answer-selector-effect-gone = Rattle gone
answer-selector-effect-less = Less
answer-selector-effect-same = The same
answer-play-far-end-unsure = Unsure

## Layouts.
layout-rigid-output-speed = Rigid support, output speed
layout-rigid-output-speed-about = Two-piece shaft behind the gearbox, its centre bearing held rigidly. It stands still in neutral. Pushed and pulled by hand it must not move at all.
layout-two-centres = Two rubber centre supports
layout-two-centres-about = Three-piece shaft behind the gearbox with two centre bearings in rubber rings. Each is checked by itself; the first is the one nearer the gearbox.
layout-one-piece = One piece, no centre bearing
layout-one-piece-about = One shaft from the gearbox to the rear axle with a joint at each end and nothing between. What decides is play at its ends.
layout-front-shaft = Front shaft, all-wheel drive
layout-front-shaft-about = Shaft from the transfer case to the front axle with a joint at each end. What decides is play at its ends.
layout-half-shaft = Half-shaft with a support
layout-half-shaft-about = Half-shaft to a front wheel, its bearing in a bracket beside the gearbox. It stands still in neutral. Pushed and pulled by hand it must not move at all.
drawing-none = A shaft with a joint at each end and no bearing between.

## Causes.
cause-torsional-rattle = Idle rattle of flywheel, clutch or gears
cause-torsional-rattle-about = Gears or clutch parts rattle while the engine idles. The bearing has no part in it.
cause-wheel-or-tyre = Wheel or tyre
cause-wheel-or-tyre-about = A wheel or a tyre is out of balance or out of shape and shakes the car.
cause-joint-angle-or-balance = Joint angle or balance of the shaft
cause-joint-angle-or-balance-about = The shaft runs at a wrong angle or out of balance, and that shakes the car.
cause-misfire-next = Swap the coil or the plug between two cylinders and see if the fault moves along. Then check the balance of the injectors, then compression.
cause-torsional-rattle-next = Check the flywheel for play and the clutch hub for broken springs before the gearbox is blamed.
cause-wheel-or-tyre-next = Balance the wheels, check tyres and rims for run-out, and drive the same road at the same speed again.
cause-joint-angle-or-balance-next = Measure the joint angles at ride height and compare them with the maker's. Check the phase of the joints and the balance weights.

## Reasons.
rule-support-broken = The rubber support is torn through, its bracket is cracked, or a fastener of it is loose.
rule-support-broken-owner = The part that holds the bearing is torn through, cracked or loose.
rule-support-torn = The rubber of the support is torn.
rule-support-torn-owner = The rubber ring that holds the bearing is torn.
rule-support-ageing = The rubber support sits off centre, is soaked in oil or crazed.
rule-support-ageing-owner = The rubber ring that holds the bearing is old, oily or out of place.
rule-coupling-bolts = A bolt of a coupling is loose or missing.
rule-coupling-bolts-owner = A bolt that holds the shaft is loose or missing.
rule-mount-broken = A mount of engine or gearbox is broken.
rule-mount-broken-owner = A part that holds the engine or the gearbox is broken.
rule-touches-fibre = Something touches a fibre shaft.
rule-touches-fibre-owner = The shaft is made of fibre, and something rubs on it.
rule-far-end-unsure = Movement at the far end of the shaft could not be ruled out. Feel it again with a second person watching the joint.
rule-far-end-unsure-owner = We felt for movement at the far end of the shaft and are not sure.
rule-drag-unchecked = A hiss or whirr, and the shaft was not turned by itself: whether the bearing drags is not known. Turn it uncoupled.
rule-drag-unchecked-owner = There is a hiss or a whirr, and we have not yet turned the shaft by itself.
rule-bearing-likely-suspected = A bearing fault is at least 50% likely by what was heard: suspected, not confirmed by hand. It would be confirmed by play felt warm, by a free turn, or by a gauge.
rule-bearing-likely-suspected-owner = What we heard may come from the bearing. We felt nothing wrong there by hand.

rule-no-bearing-action-play = No play was felt, and nothing else was found.
rule-no-bearing-action-play-owner = We felt the bearing by hand. It does not move more than it should, and we found no fault.
rule-no-bearing-action-play-not-reproduced = Not reproduced: nothing was heard. No play was felt, and nothing else was found.
rule-no-bearing-action-play-not-reproduced-owner = The noise was not reproduced: it did not show while we had the car. We felt by hand for movement and found no fault.
rule-no-bearing-action-play-not-listened = Not reproduced: no running check was done. No play was felt, and nothing else was found.
rule-no-bearing-action-play-not-listened-owner = The noise was not reproduced: we did not run the engine to listen. We felt by hand for movement and found no fault.

rule-no-bearing-action-ends = No play was felt at the ends of the shaft, and nothing else was found.
rule-no-bearing-action-ends-owner = We felt both ends of the shaft by hand and found no fault there.
rule-no-bearing-action-ends-not-reproduced = Not reproduced: nothing was heard. No play was felt at the ends of the shaft, and nothing else was found.
rule-no-bearing-action-ends-not-reproduced-owner = The noise was not reproduced: it did not show while we had the car. We felt both ends of the shaft by hand and found no fault there.
rule-no-bearing-action-ends-not-listened = Not reproduced: no running check was done. No play was felt at the ends of the shaft, and nothing else was found.
rule-no-bearing-action-ends-not-listened-owner = The noise was not reproduced: we did not run the engine to listen. We felt both ends of the shaft by hand and found no fault there.
note-means-shaft-ends = The prop shaft brings the engine's power to the wheels. A joint at each end holds it.
note-open-play-far-end = We have not felt for movement at the ends of the shaft.

note-could-support-broken = The bearing can drop while you drive. Then the shaft can hit the car or the road. You could lose control.
note-could-support-torn = The rubber can tear through. Then the shaft can swing, hit the car, and harm other parts.
note-could-support-ageing = The rubber can get worse and let the shaft swing.
note-could-coupling-bolts = The joint can come apart while you drive. Then the shaft can hit the car or the road. You could lose control.
note-could-mount-broken = The engine can move too far. That can break the joints of the shaft.
note-could-touches-fibre = The fibre can be cut where it rubs. Then the shaft can break while you drive.
note-could-far-end-unsure = If the joint is loose, it can wear more until the shaft comes loose.
note-could-drag-unchecked = If the bearing drags, it can get hot and break.

## What a rating is limited to.
limit-turn-by-hand = Limited to play; drag of the bearing was not checked.
limit-turn-by-hand-owner = We did not check if the bearing drags.
limit-housing-look = The housing was not looked at, or not all of it.
limit-housing-look-owner = We have not seen all of the part that holds the bearing.
limit-support-look = The rubber support was not looked at, or not all of it.
limit-support-look-owner = We have not seen all of the rubber part that holds the bearing.
limit-no-figure = No figure known, judged by feel.
limit-no-figure-owner = The maker's limit is not known to us. We judged the give of the rubber by feel.
limit-tube-closed = Rated from outside: the tube is closed, and the bearings in it were not felt.
limit-tube-closed-owner = The tube round the shaft is still closed. We looked and listened from outside only.
limit-tube-nothing = Not yet checked, and nothing found from outside.
limit-tube-nothing-owner = So far we found nothing from outside.
unknown-limit = { $step }: { $lack }

detail-degrees = Felt at { $degrees } °C
detail-engine-warm = Read with the engine warm
detail-engine-cold = Read with the engine cold: not counted towards the causes
detail-heard-front = Loudest at the front
detail-heard-middle = Loudest in the middle
detail-heard-rear = Loudest at the rear
detail-heard-all-along = The same all along the car

next-free-turn = Uncouple the shaft and turn it by itself: that shows whether its bearing drags.
next-far-end = The far end was left unsure: look at its joint.
next-unsure = It was left unsure: feel it again with a second person watching the joint.

error-temperature-out-of-range = The temperature is out of range
error-temperature-out-of-range-help = Enter degrees Celsius between -40 and 150, or cold or warm.
error-figure-missing = The maker's movement figure is not written down
error-figure-missing-help = Enter the maker's figure, or say what the hand felt: “springy” where it gives and springs back, “knocks” where it reaches a stop, “unsure” where you cannot tell.

road-boot = Boot of a joint. UK MOT manual 6.1.7 (g): Minor if badly deteriorated, Major if missing, split or insecure so that dirt gets in; no Dangerous outcome in that row. Directive 2014/45/EU, Annex I, 6.1.7 (g): Minor if badly deteriorated, Major if missing or fractured. Steady does not choose; your local rules decide.

## Asked beside an answer.
ui-free-yes = Uncoupled
ui-engine = Engine warm or cold?
ui-engine-warm = Engine warm
ui-engine-cold = Engine cold
ui-feel-anew = Do it again, and enter what you feel now.
ui-heard-at = Loudest or strongest where?
ui-heard-front = Front
ui-heard-middle = Middle
ui-heard-rear = Rear
ui-heard-all-along = All along
ui-temperature-degrees = Housing temperature, degrees Celsius
ui-degrees = { $degrees } °C
ui-limits = Not in this rating
ui-support-none = No bearing between its ends
ui-figure = Maker's figure, mm
ui-figure-keep = Keep the figure
ui-basis = Where the number is from
ui-earlier-rules = This car came in under rules { $then }; the rating shown is by rules { $now }.
ui-cause-next = Next: { $what }

## How a step is done at a support of its kind; without one, as everywhere.
step-play-vertical-do-rubber = Grip the shaft by the bearing. Push up, let down. Watch bearing against bracket. Springs back: springy. Hits a stop: knocks.
step-play-lateral-do-rubber = Grip the shaft by the bearing. Push left, pull right. Watch bearing against bracket. Springs back: springy. Hits a stop: knocks.
step-play-far-end-do-none = Grip the shaft at one end, then at the other. Push up and down, then side to side. Watch each joint. Sliding along the shaft is normal at a plunge joint or slip yoke.
next-warm = Felt cold, which clears nothing: feel it again with the housing warm.
