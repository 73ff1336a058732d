### What was found by hand, what was made milder, what an earlier visit left open, and what a CAUTION without a fault
### asks for. For the trade; ids that end in -owner and those that begin with note- or short- are for the owner.

finding-sum-found = Found: { $findings }.
finding-sum-behind = Behind it, most likely: { $causes }.
finding-sum-beside = Also likely: { $causes }.
finding-sum-else-none = No cause stands out apart from what was found.
made-milder = { $step }: “{ $was }” was answered first, a DANGER or WARNING. { $by } changed it to “{ $now }” ({ $at }). Reason given: { $reason }
made-milder-withdrawn = { $step }: “{ $was }” was answered first, a DANGER or WARNING. { $by } took it back ({ $at }). Reason given: { $reason }
made-milder-again = It was entered again and stands.
still-open-before = Still open: this car was rated { $label } on { $day }. Nothing shows that it was put right, and this visit does not cancel it. After the repair open a new visit, "Check after the repair", and check the same places again, warm where they are felt.
still-open-layout = It was checked then as “{ $layout }”: check which layout is right.
still-open-corrected = That visit was written down as this car at first, and corrected to “{ $car }” once something was checked: look which car it was.
still-open-unread = That visit’s record cannot be read in full, so its rating is the one in the list. It stays open until the record can be read again: bring back a backup, or the workshop’s own layout file.
note-still-open-danger = On { $day } we rated this car { $label }. We have not yet seen it put right.
note-still-open-warning = On { $day } we rated this car { $label }. We have not yet seen it put right.
before-other-layout = Last time this car was entered as “{ $layout }”. Look under the car to see which one is right.
error-reason-too-short = The reason is too short
error-reason-too-short-help = Say in a few words, eight letters or more, why the answer is milder now. The finding shows it.
cause-range = { $word }, between { $low } and { $high }
cause-something-else = Something that is not on this list

finding-sum-caution-look = CAUTION: no fault is found yet. Book more time to look.
finding-next-still-open = First settle what an earlier visit left open: ask what was done, look at it, and record it.
finding-next-drive-open = Until then nobody can say whether the car may be driven.
note-now-still-open-danger = Do not drive the car before you have asked us. Our earlier rating still stands.
note-now-still-open-warning = Do not drive the car before you have asked us. Our earlier rating still stands.
short-now-still-open-danger = Do not drive the car before you have asked us. Our earlier rating still stands.
short-now-still-open-warning = Do not drive the car before you have asked us. Our earlier rating still stands.
finding-next-caution-look = Book more time to find the cause. Quote no repair yet: no fault was found.
headline-caution-look = Book a closer look
note-now-caution-look = Book a time for a closer look. If the noise or the shaking grows, stop and call us.
short-now-caution-look = Book a time for a closer look. If the noise or the shaking grows, stop and call us.
finding-next-after-repair = Drive the road test before the car is handed back: same speed, same gear as in the complaint.
stop-road-test = Every check in the bay that can be done is done. A road test can follow.
next-looks-first = Play was left for later: look at what holds the bearing and at the mounts, then feel again.

note-likely-else = Apart from what we found, this may be the cause: { $about }
note-in-order = We felt the shaft and its bearing by hand and found them in order.
note-in-order-ends = We felt both ends of the shaft by hand and found them in order.
note-open-support-look = We have not seen the rubber that holds the bearing.
note-open-which = { $count ->
    [one] It is: { $steps }.
   *[other] They are: { $steps }.
}

rule-coupling-worn = A coupling or joint of the shaft is worn or stiff.
rule-coupling-worn-owner = A joint on the shaft is worn.
rule-coupling-worn-joint-stiff-owner = A joint on the shaft is stiff.
note-could-coupling-worn = The joint can wear more until the shaft shakes or comes loose.
rule-boot-torn = The boot of a joint is torn: grease gets out, dirt gets in.
rule-boot-torn-owner = The rubber cover of a joint is torn. Grease gets out and dirt gets in.
note-could-boot-torn = Without its grease the joint wears out. In the end it can break.

rule-cold-check-buzz-rubber = The support was felt cold, or its warmth was not recorded. A cold check clears nothing: rubber is stiff when cold and gives more when warm. Feel again when it is warm.
rule-cold-check-buzz-rubber-owner = We felt the rubber part cold, and it gives more when it is warm.
unknown-cold-rubber = A noise or vibration with a cold check: rubber gives more when warm. Feel again with the support warm.
note-cold-rubber = We felt the rubber part cold. It gives more when it is warm.
note-could-cold-check-buzz-rubber = If the rubber gives way when warm, the shaft can swing and harm other parts.

rule-no-bearing-action-after-repair = After the repair: no play was felt, and nothing else was found. The repair holds, as far as it was checked.
rule-no-bearing-action-after-repair-owner = We looked again after the repair. We felt by hand for movement and found no fault.
rule-no-bearing-action-play-not-driven = Not reproduced: the car was not driven on the road, where it is complained of. No play was felt, and nothing else was found.
rule-no-bearing-action-play-not-driven-owner = You notice it on the road, and we have not driven the car there. We felt by hand for movement and found no fault.
rule-no-bearing-action-ends-not-driven = Not reproduced: the car was not driven on the road, where it is complained of. No play was felt at the ends of the shaft, and nothing else was found.
rule-no-bearing-action-ends-not-driven-owner = You notice it on the road, and we have not driven the car there. We felt both ends of the shaft by hand and found no fault there.
unknown-not-driven = Not reproduced: complained of on the road, and the car was not driven there.
note-not-driven = You notice it on the road, and we have not driven the car there.

## What was found, by the one answer behind it.
rule-support-broken-torn-through-owner = The rubber ring that holds the bearing is torn through.
rule-support-broken-bracket-cracked-owner = The bracket that holds the bearing is cracked.
rule-support-broken-fastener-loose-owner = A bolt that holds the bearing is loose.
rule-housing-broken-cracked-owner = The part that holds the bearing is cracked.
rule-housing-broken-fastener-loose-owner = A bolt that holds the bearing is loose.
rule-movement-at-support-felt-owner = We felt by hand that the shaft moves at its bearing. It must not move there at all.
rule-coupling-bolts-bolt-loose-owner = A bolt that holds the shaft is loose.
rule-coupling-bolts-bolt-missing-owner = A bolt that holds the shaft is missing.
rule-support-ageing-crazed-owner = The rubber ring that holds the bearing is old and full of fine cracks.
rule-support-ageing-oil-soaked-owner = The rubber ring that holds the bearing is soaked with oil.
rule-support-ageing-off-centre-owner = The rubber ring that holds the bearing sags or is out of place.
rule-rubber-play-knocks-owner = The bearing moves in its rubber ring until it hits a stop.
rule-rubber-play-beyond-figure-owner = The bearing moves in its rubber ring more than the maker allows.
rule-turns-badly-rough-owner = The shaft turns roughly by hand.
rule-turns-badly-resists-owner = The shaft is hard to turn by hand.

## Where the bearing sits, by layout.
drawing-rigid-output-speed = Where the bearing sits: the shaft runs under the floor in two parts, from the gearbox to the rear axle. Between them its bearing sits in a solid metal housing.
drawing-two-centres = Where the bearings sit: the shaft runs under the floor in three parts. Between them two bearings sit in rubber rings.
drawing-half-shaft = Where the bearing sits: the shaft runs across the car from the gearbox to a front wheel. Beside the engine its bearing sits in a solid metal bracket.
drawing-front-shaft = A shaft runs from the middle of the car to the front axle, with a joint at each end and no bearing between.
drawing-one-piece = One shaft runs under the floor from the gearbox to the rear axle, with a joint at each end and no bearing between.

## At a tube.
step-shaft-look-do-tube = Only with the tube open. With it closed nobody can see the shaft: answer Could not see it.
step-turn-by-hand-do-tube = Only with the tube open and the shaft free in the hand. With it closed, answer "Not done". Else turn it slowly, one full turn, and feel for roughness or drag.

## What stays open, in a headline, and joints that decide.
headline-caution-open = Fault found; the hands-on check is still open
finding-sum-caution-open = CAUTION: something was found, and the check that decides is still open.
headline-still-open-danger = An earlier DANGER is still open
headline-still-open-warning = An earlier WARNING is still open
finding-sum-still-open-danger = An earlier DANGER is still open: while it is, nothing below clears this car.
finding-sum-still-open-warning = An earlier WARNING is still open: while it is, nothing below clears this car.
note-open-coupling-look = We have not looked at the joints of the shaft.
limit-coupling-look = The joints and their bolts were not looked at, or not all of them.
limit-coupling-look-owner = We have not seen all of the joints of the shaft.
note-could-turns-badly-none = A joint can get hot and break. Then the shaft can come loose.
next-left-out = It was left out so far: look before the car is handed back.
note-changed = One answer was changed during the check: at first it pointed to more danger. Ask us why.
rule-sagging-touches = The rubber support sags, and something touches: most likely the shaft itself. Look for rub marks on it.
rule-sagging-touches-owner = The rubber that holds the shaft sags, and something touches.
note-could-sagging-touches = The shaft can rub, get damaged, and come loose while you drive.
rule-play-unsure-none = Both ends of the shaft were felt, and movement could not be ruled out. Feel both again with a second person watching the joint.
rule-play-unsure-none-owner = We felt for movement at both ends of the shaft and are not sure.
note-could-play-unsure-none = If a joint is loose, the shaft can come loose while you drive.
note-could-unrated-none = We cannot say yet. If a joint is loose, the shaft can come loose while you drive.
finding-next-again-owner = Give the owner the note. Quote nothing until it has been felt again.
rule-cold-check-buzz-repaired = After a repair, and felt cold or without a temperature: a cold check clears nothing. Feel again warm before the repair is said to hold.
rule-cold-check-buzz-repaired-owner = The car was repaired, and we felt it cold. Only warm shows whether the repair holds.
next-whose-roughness = Uncouple the shaft and turn it by itself: that shows whether the roughness is its own.
finding-elsewhere = Not counted: { $answers }. The car was entered with another layout or figure then. Check it again.
rule-set-apart = Something was found while this car was entered with another layout or figure, and it was neither checked again nor taken back. Clear this up first.
rule-set-apart-owner = We found something on this car that we have not settled yet.
note-could-set-apart = If it is at the bearing, the shaft can come loose while you drive.
