### The sentences of the finding (for the trade) and of the note (for the owner), and how numbers and dates read.
### Signs of numbers and shares, order of the date: Unicode CLDR, locale en-GB. The moment is ISO 8601.

number-group = { "," }
number-group-from = 4
number-point = { "." }
list-joint = { ", " }
reading-rpm = { $value } rpm
percent = { $number }%
percent-below = under { $number }%
percent-above = over { $number }%
date-day = { $day } { $month } { $year }
month-1 = January
month-2 = February
month-3 = March
month-4 = April
month-5 = May
month-6 = June
month-7 = July
month-8 = August
month-9 = September
month-10 = October
month-11 = November
month-12 = December
time-utc = { $year }-{ $month }-{ $day } { $clock } UTC
length-mm = { $mm } mm
length-both = { $mm } mm ({ $thou } thousandths of an inch)
length-shown = both
answer-missing = Not checked
word-none-yet = none yet

## The finding.

finding-title = Finding: prop shaft and its support bearing
finding-heading-next = What to do next
finding-heading-vehicle = Vehicle and visit
finding-heading-complaint = Complaint
finding-heading-reasons = Why this rating
finding-heading-suspicion = What raises suspicion
finding-heading-steps = What was checked
finding-heading-causes = Causes, likeliest first
finding-heading-causes-found = Causes, what is behind the finding first
finding-heading-unknown = What is not known
finding-heading-road = Roadworthiness rules, for information
finding-heading-cautions = Cautions
finding-heading-signed = Receipt of the owner's note

finding-sum-danger = DANGER: do not drive this car.
finding-sum-warning = WARNING: not to be driven. Have it taken for repair on a recovery truck.
finding-sum-repaired = Repaired since: after assembly the bearing turned freely by hand. The rating tells what was found before.
finding-sum-caution = CAUTION: book the repair.
finding-sum-notice = NOTICE: no bearing work is needed.
finding-sum-unrated = NOT YET CHECKED: the hands-on check is open, so there is no rating.
finding-sum-suspicion = Suspicion only: { $reason }
finding-sum-still = The hands-on check is not finished.
finding-sum-likely = Most likely: { $causes }.
finding-sum-no-cause = No single cause stands out.
finding-sum-bearing = At least one bearing cause: { $bearing }.
finding-sum-nothing-yet = Nothing was recorded yet, so the causes are not sorted.
finding-cause-share = { $cause } ({ $percent })

finding-next-danger = Do not drive it, do not road-test it, do not start the engine again. Load it on a recovery truck with the engine off; do not tow it on its driven wheels.
finding-next-danger-owner = Tell the owner today, and have them sign that they received the note.
finding-next-warning = Do not hand it back to be driven. Have it taken for repair on a recovery truck, engine off, not towed on its driven wheels.
finding-next-repaired = Feel for play by hand again, cold and warm, before the car is handed back. Until then the rating above stands.
finding-next-warning-owner = Give the owner the note, and quote the repair.
finding-next-caution = Book the repair, and quote for the faults found.
finding-next-caution-owner = Give the owner the note. Ask for the car back if noise or vibration grows.
finding-next-notice = Quote no bearing work.
finding-next-notice-owner = Give the owner the note. Ask for the car back if the noise returns or changes.
finding-next-unrated = Do not pass it and do not condemn it: noise and vibration prove nothing.
finding-next-unrated-owner = Quote a repair only after the hands-on check.
finding-next-finish = Finish the check: { $steps }.
finding-next-check = Next check: { $step }. { $why }
finding-next-maker = Before any repair, read the maker's procedure for this car.

field-label = Make and model
field-plate = Plate
field-vin = VIN
field-layout = Shaft layout
field-seat = Bearing seat
field-gearbox = Gearbox
field-cylinders = Cylinders
field-idle = Idle range
field-idle-value = { $low } to { $high } rpm
field-odometer = Odometer
field-odometer-km = { $value } km
field-odometer-miles = { $value } miles
field-maker-play = Maker's movement figure
field-owner = Owner
field-contact = Contact
field-vehicle = Vehicle
field-opened = Car came in
field-checked = Last checked
field-date = Date (UTC)
field-technician = Technician
field-visit = Visit
field-ledger = Record
field-ledger-value = { $entries ->
    [one] { $entries } entry, latest hash { $head }
   *[other] { $entries } entries, latest hash { $head }
}
field-ledger-broken = Fault in the record
field-ledger-broken-value = From entry { $at } on, the record does not fit together. Entries may be changed or missing.
field-knowledge = Rules and figures
field-complaint = In the owner's words
field-complaint-none = None written down
field-sounds = What the owner notices
field-when = When it happens

reason-rests-on = { $reason } Rests on: { $answers }.
answer-at-step = { $step }: { $answer }
answer-and-gauge = { $answer } by hand, movement proven by gauge
weight-strong = { $answer } (strong)
weight-clear = { $answer } (clear)
weight-slight = { $answer } (slight)
weight-by-gauge = { $answer } (by gauge)

detail-answered = { $at }, by { $by }
detail-cold = Felt with the housing cold
detail-warm = Felt with the housing warm
detail-no-temperature = Cold or warm was not recorded
detail-milder = Changed from a DANGER or WARNING answer. Reason given: { $reason }
detail-milder-again = Changed or taken back once, then entered again; it stands. Reason given: { $reason }
detail-disputed = Two devices recorded different answers. The worse one counts.
photo-caption = { $step }: { $answer }
photo-alt = Photo taken at the step "{ $step }". Recorded answer: { $answer }.
photo-none = No photo: { $reason }
photo-none-taken = No photo was taken. Steady noted by itself that there was nothing to show.

unknown-hands-on = { $step }: not done. Only the hands-on check decides.
unknown-unsure = { $step }: result unsure, treated as not passed.
unknown-disputed = { $step }: two devices recorded different answers.
unknown-open = { $count ->
    [one] One other step was not checked.
   *[other] { $count } other steps were not checked.
}
unknown-figure = Movement was judged by the maker's figure, but the figure itself is not recorded. Enter it at intake.
unknown-cold = Buzz, knock or vibration with a cold check: a bearing seat can loosen when hot. Feel for movement again with the housing warm.
unknown-not-reproduced = Not reproduced: nothing was heard while running.
unknown-not-listened = Not reproduced: no running check was done, so nothing was listened for.
unknown-ledger = The record does not fit together from entry { $at } on.

caution-scope = This finding covers what was checked, as it was on that day. Parts not named were not checked.
caution-sorting = Probabilities rest on workshop judgement and are not measured. Only the hands-on check decides about the bearing.
caution-maker = The maker's procedures and your local law come before this finding.
caution-quote = This is not a quote and not an expert report for a court.

signed-text = { $decision }. Note received on { $at } by { $name }.
signed-text-nameless = { $decision }. Note received on { $at }; no name was given.
signed-outdated = Something was recorded after this was signed: the signed note may not say it.
signed-language = The note that was signed was in another language: { $language }.
signed-note = Signed for the note with SHA-256 { $hash }.
signed-alt = Signature, drawn by hand.

finding-foot = Finding, visit { $visit }. What is not named was not checked.

## The note. Short words and short sentences: an owner under stress reads it once.

note-title = What we found on your car
note-heading-found = What we found
note-heading-means = What it means
note-heading-could-happen = What could happen
note-heading-do-now = What to do now
note-heading-not-known = What we do not know yet
note-heading-ask = Who to ask

note-found-unrated = We have not done the full check by hand yet.
note-found-suspicion = Some signs raise a suspicion. Only the check by hand can tell.
note-found-rest-open = The rest of the check is still open.
note-found-repaired = This note tells what we found before the repair. The bearing was repaired after that.
note-found-more = { $count ->
    [one] There is one more point. The workshop can show it to you.
   *[other] There are { $count } more points. The workshop can show them to you.
}

note-means-shaft = The prop shaft brings the engine's power to the wheels. A bearing holds the shaft steady.
note-means-danger = This is our most serious rating. The car must not be driven.
note-means-warning = Only one of our ratings is more serious. The car must not be driven.
note-means-caution = Something needs a repair or a closer look. Do not put it off.
note-means-notice = We found no reason to work on the bearing now.
note-means-unrated = There is no rating yet. A sound can hint at a fault, but only a check by hand can decide.
note-likely = The most likely cause: { $about }

note-could-movement-at-support = The shaft can break loose while you drive. It can hit the car or the road. You could lose control.
note-could-housing-broken = The bearing can come away while you drive. Then the shaft can hit the car or the road. You could lose control.
note-could-coupling-failing = The joint can break while you drive. Then the shaft can hit the car or the road. You could lose control.
note-could-shaft-fibre-damaged = The shaft can break while you drive. Parts can hit the car or the road. You could lose control.
note-could-running-stopped = A part may be about to break. If it breaks while you drive, you could lose control.
note-could-rubber-play = The rubber can tear more. Then the shaft can swing, hit the car, and harm other parts.
note-could-turns-badly = The bearing can get hot and lock up or break. Then the shaft can come loose.
note-could-shaft-damaged = The shaft can shake more and more. The shaking can break its bearing and its joints.
note-could-far-end-play = The joint can wear more until the shaft comes loose.
note-could-play-unsure = If the bearing is loose, the shaft can come loose while you drive.
note-could-bearing-likely = If the bearing fails, the shaft can come loose while you drive.
note-could-cause-likely = The fault can get worse and harm other parts.
note-could-cause-likely-misfire = The fault can get worse. It can overheat a part of the exhaust, and that part costs a lot.
note-could-finding-unexplained = We cannot say for sure. It can be the start of a fault that gets worse.
note-could-cold-check-buzz = If the bearing is loose when hot, the shaft can come loose while you drive.
note-could-no-bearing-action = The noise may come back. Any part can wear with time.
note-could-unrated = We cannot say yet. If the bearing is loose, the shaft can come loose while you drive.

note-now-danger = Do not drive the car, not even home. Do not start the engine. Leave it here, or have it taken on a recovery truck. Ask us for a price to fix it.
note-now-warning = Do not drive the car. Have it taken for repair on a recovery truck, engine off. It must not be towed on its driven wheels.
note-now-caution = Book the repair. If the noise or the shaking grows, stop and call us.
note-now-notice = There is no bearing work to do now. Come back if the noise comes back or sounds different.
note-now-unrated = Let us finish the check by hand. Until then we cannot tell you if you may drive the car. If it knocks or shakes more than before, stop and call us.
note-now-repaired = Ask us if the car may be driven again. Do not drive it until we say so. If it knocks or shakes more than before, stop and call us.

note-open-none = We finished every part of this check. We looked only at the parts named in our finding.
note-open-play-vertical = We have not felt if the shaft moves up and down.
note-open-play-lateral = We have not felt if the shaft moves from side to side.
note-open-tube-open-check = We have not opened the tube to feel the bearings in it.
note-open-turn-by-hand = We have not turned the shaft by hand.
note-unsure-play-vertical = We felt for movement up and down, but we are not sure.
note-unsure-play-lateral = We felt for movement from side to side, but we are not sure.
note-unsure-play-far-end = We felt for movement at the far end, but we are not sure.
note-unsure-tube-open-check = We felt the bearings in the tube, but we are not sure.
note-disputed = Two of our records do not agree. We count the worse one.
note-open-others = { $count ->
    [one] One check was not done.
   *[other] { $count } checks were not done.
}
note-figure = The maker says how much it may move. We did not write that number down.
note-cold = We felt for movement with the part cold. It may be loose when it is hot.
note-not-reproduced = We ran the engine and did not hear the noise.
note-not-listened = We did not run the engine to listen, so the noise was not reproduced.
note-ledger = Our record of this check may be incomplete or have been changed. Ask the workshop about it.

note-ask-technician = Ask the workshop that gave you this note. Name on the check: { $technician }.
note-ask-workshop = Ask the workshop that gave you this note.
note-ask-second = You may ask another workshop to look too. The maker's rules and your local law come first.

note-receipt-heading = Your receipt
note-receipt-text = You sign only that you got this note. You can choose any one of these, and change your mind.
note-foot = Note for the owner. It covers what was checked, as it was on that day.

short-head = { $vehicle }, { $date }: { $label }. { $headline }.
short-head-nameless = Your car, { $date }: { $label }. { $headline }.
short-now-danger = Not even home. Do not start the engine. Leave it here, or have it taken on a recovery truck.
short-now-warning = Have it taken for repair, engine off. It must not be towed on its driven wheels.
short-now-caution = If the noise or the shaking grows, stop and call us.
short-now-notice = Come back if the noise comes back or sounds different.
short-now-unrated = Let us finish the check by hand. Until then we cannot tell you if you may drive the car.
short-more = There is more in the full note: ask us for it.

# Labels of a paper's printing
paper-label-for = Speaks for it:
paper-label-against = Speaks against it:
paper-label-photo-missing = The photo is recorded, but its file could not be read when this was printed.
paper-label-photo-damaged = The photo is recorded, but its file was damaged or changed since. It is not shown here and proves nothing until a good copy is taken in.
paper-label-name = Name
paper-label-date = Date
paper-label-signature = Signature
paper-label-page = Page { "{page}" } of { "{pages}" }
