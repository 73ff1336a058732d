### Short words around the walk: signal words, likelihood, stations, layouts, locks, the ledger's entries.

word-danger = DANGER
word-warning = WARNING
word-caution = CAUTION
word-notice = NOTICE
word-unrated = NOT YET CHECKED
headline-danger = DO NOT DRIVE
headline-warning = Do not drive: recovery truck only
headline-caution = Book the repair
headline-notice = No bearing work needed
headline-unrated = The hands-on check is still open

## The IPCC scale of likelihood words.
likelihood-virtually-certain = Virtually certain
likelihood-very-likely = Very likely
likelihood-likely = Likely
likelihood-about-as-likely-as-not = About as likely as not
likelihood-unlikely = Unlikely
likelihood-very-unlikely = Very unlikely
likelihood-exceptionally-unlikely = Exceptionally unlikely

station-seat = Driver's seat
station-support = Support
station-shaft = Shaft
station-far-end = Far end
station-around = Around the shaft
station-account = Owner's account

layout-rigid-engine-speed = Rigid support, engine speed
layout-rigid-engine-speed-about = One shaft from the engine to a gearbox at the rear axle. It turns with the engine even while the car stands. Pushed and pulled by hand it must not move at all.
layout-rubber-centre = Rubber centre support
layout-rubber-centre-about = Two-piece shaft behind the gearbox, its centre bearing in a rubber ring. Some give is normal; the maker's figure is the limit.
layout-torque-tube = Torque tube
layout-torque-tube-about = Engine-speed shaft inside a tube, on several bearings. It cannot be gripped until the tube is opened by the maker's procedure.

seat-bare = Bare aluminium seat
seat-sleeved = Steel-sleeved seat
gearbox-automated-clutch = Automated clutch
gearbox-torque-converter = Torque converter
gearbox-manual = Manual

sound-buzz = Buzz
sound-knock = Knock
sound-vibration = Vibration
sound-rattle = Rattle
sound-pops = Pops
sound-hiss = Hiss
sound-whine = Whine

waiver-cannot-reach = The camera cannot reach it
waiver-too-dark = Too dark for a picture
waiver-hands-busy = Both hands were needed
waiver-nothing-to-see = Nothing to see in a picture
waiver-nothing-to-show = nothing to show, noted by Steady itself
waiver-owner-declined = The owner wants no photos
waiver-not-in-case = The case file names no photo

decision-repair = Have it repaired
decision-decide-later = I will think about it
decision-decline = Leave it as it is, I was told the risk

entry-opened = Car came in
entry-amended = Intake changed
entry-order-chosen = Order chosen
entry-gate-confirmed = Safety check confirmed
entry-lift-said = Changed what holds the car up
entry-part-left = Part left, its safety checks closed
entry-answered = Answered
entry-photo-kept = Photo saved
entry-photo-waived = No photo, with a reason
entry-withdrawn = Taken back
entry-arranged = Arranged by the replay
entry-received = Note received and signed
arranged-gates-confirmed = The case left safety checks out; the replay confirmed them.
arranged-steps-ordered = The case gave answers in another order; the replay ordered the steps.
arranged-times-set-back = The case says how many days ago it was; the replay set the times of its entries back.

lock-gates-open = Locked: confirm the safety checks first.
lock-other-part = Locked: leave the part you are in first.
lock-gates-of-another = Locked: somebody else confirmed the safety checks of this part. Leave it and confirm them yourself.
lock-gates-too-old = Locked: the safety checks of this part were confirmed too long ago. Leave it, look again, and confirm them anew.
lock-not-driven = Locked: this car may not be driven. The result says why.
lock-set-apart = Locked: what was found with another layout is still open. Answer it anew, or take it back with a reason.
lock-earlier-danger = Locked: an earlier DANGER of this car is still open. The hands-on check comes first, engine off.
lock-danger-found = Locked: DANGER was found, so the engine is not run again.

next-hands-on = Only the hands-on check decides.

part-leave-running = Engine off, leave the seat
part-leave-creep = Car stopped, brake set
part-leave-lift = Out from under the car

order-under-car-first = Everything, under the car first
order-running-first = Everything, engine first
