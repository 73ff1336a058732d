### The chrome of the screens: buttons, headings, hints. What a step, an answer, a gate or a paper says is in
### the files beside this one.

ui-name = Steady
ui-waiting = One moment …
ui-retry = Try again
ui-dismiss = Close
ui-save = Save
ui-next = Next
ui-later = Later
ui-no-plate = No plate

## When the core cannot be reached, or a screen trips.
ui-error-no-core = The screens cannot reach Steady
ui-error-no-core-help = Nothing you recorded is lost. Start Steady again; in a browser, open the address it gives.
ui-error-screen = This screen failed
ui-error-screen-help = Nothing you recorded is lost. Try again; if it comes back, close Steady and open it again.

## Who is at work.
ui-technician = Your name
ui-technician-title = Who is at the car?
ui-technician-why = Your name stands beside everything you record, and on the papers. It leaves this device only with papers and files you pass on.
ui-technician-change = Technician: { $name }. Change

## The list of visits.
ui-new-visit = New visit
ui-search = Plate, VIN, owner or date
ui-search-only = Only cars rated { $word }
ui-found = { $total ->
    [0] No visits
    [one] 1 visit
   *[other] { $total } visits
}
ui-empty = No car has come in yet. Start with “New visit”.
ui-card-still-open = Still open from an earlier visit:
ui-nothing-found = No visit matches. Try fewer letters.
ui-more = Show more
ui-steps-settled = { $settled } of { $steps } steps checked{ $open ->
    [0] {""}
   *[other] , { $open } left open
}
ui-repair-torn-down = On the bench after teardown
ui-repair-turns-free = The bearing turned freely after assembly
ui-repair-checked-again = Checked again after the repair
ui-outcome-confirmed = Confirmed what it was
ui-signed = Signed: { $decision }
ui-language = Language
ui-theme = Theme
ui-theme-system = Device
ui-theme-dark = Dark
ui-theme-daylight = Daylight
ui-versions = Version { $version }, rules and figures { $knowledge }
ui-notices = Third-party software and its licences
ui-notices-about = Lists every part of Steady that others made, then their licences, in English.
ui-notices-none = The list is not in this build.

## Intake.
ui-intake = Intake
ui-layout = How the car carries its shaft
ui-layout-needed = Choose one of these. Everything else can wait.
ui-layout-others = Another layout
ui-support-rigid = Held rigidly: no movement by hand is allowed.
ui-support-rubber = Held in a rubber ring: some give is normal.
ui-support-tube = Inside a tube: cannot be gripped.
ui-seat = Bearing seat
ui-maker-figure = Maker's movement figure, mm
ui-complaint-sounds = What the owner notices
ui-complaint = In the owner's words
ui-when = When it happens
ui-car = The car
ui-plate = Plate
ui-label = Make and model
ui-vin = VIN
ui-vin-fits = The check digit fits.
ui-vin-differs = The check digit does not fit. Look again; outside North America that need not mean anything.
ui-vin-not-a-vin = Not a full VIN: 17 characters, without I, O and Q.
ui-gearbox = Gearbox
ui-number-unread = Not read as a number. Write digits alone, without a sign for thousands.
ui-odometer = Odometer
ui-unit = Unit
ui-unit-km = km
ui-unit-miles = miles
ui-unit-rpm = rpm
ui-cylinders = Cylinders
ui-idle-range = Maker's idle range, rpm
ui-idle-low = From
ui-idle-high = To
ui-owner = The owner
ui-owner-name = Name
ui-owner-contact = Phone or address
ui-start-visit = Start the visit
ui-discard = Discard what I wrote here

## The walk.
ui-to-visits = To the list of visits
ui-to-intake = { $name }. Open intake
ui-to-result = { $word }. Open the result
ui-live-rating = Rating of the visit: { $word }
ui-shaft-line = Stations along the shaft
ui-station = { $name }: { $settled } of { $steps } checked{ $open ->
    [0] {""}
   *[other] , { $open } left open
}, { $word }
ui-all-steps = All steps
ui-locked = Locked
ui-step-where = { $station }, { $at } of { $of }
ui-step-before = Step before: { $title }
ui-step-after = Step after: { $title }
ui-this-step = This step
ui-step-unrated = Recorded
ui-show-how = Show how
ui-hide-how = Hide how
ui-more-behind = More
ui-drawing = Drawing: { $words } Press to see it large.
ui-disputed = Two devices gave different answers here. The worse one counts.
ui-elsewhere = Not counted: { $answer } ({ $by }, { $at }). The car was entered with another layout or figure then. Check it again.
ui-elsewhere-drop = Take back what is not counted
ui-milder = Made milder because: { $reason }
ui-temperature = Housing cold or warm?
ui-temperature-cold = Cold
ui-temperature-warm = Warm
ui-temperature-first = Choose cold or warm first
ui-above-first = Answer the question above first
ui-reading = Reading in { $unit }, { $min } to { $max }
ui-reading-usual = e.g. { $usual }
ui-erase = Erase the last digit
ui-undo = Undo
ui-undo-what = { $about ->
    [none] Undo: { $what }
   *[other] Undo: { $what }, { $about }
}
ui-undo-nothing = Nothing to undo
# A refusal behind the name of the field that it is about.
ui-problem-at = { $field }: { $what }
ui-stop = STOP
ui-reason-title = A DANGER or WARNING answer becomes milder. Why?
ui-reason-why = Your reason stays in the record, and the finding shows it.
ui-reason-ok = Record with this reason
ui-leave-as-is = Leave it as it is

## The photo of a step.
ui-photo-take = Photo
ui-photo-again = One more photo
ui-photo-sending = Saving …
ui-photo-none = No photo: say why
ui-photo-waived = No photo, why?
ui-photo-why = Why is there no photo?
ui-photo-own-words = In your own words
ui-photo-because = No photo: { $reason }
ui-photo-of = Photo taken at: { $title }
ui-photo-at = Saved { $when }

## Gates, order, leaving.
ui-gates-left = { $left ->
    [one] One safety check to go. Tap it once it is done.
   *[other] { $left } safety checks to go. Tap each once it is done.
}
ui-gates-open = All confirmed. Go on to the steps.
ui-confirmed = { $by }, { $when }
ui-order-title = How do you want to check?
ui-order-why = Running the engine makes the exhaust and the housing hot. Under the car that means a wait, or burns.
ui-order-running-first-about = Listen first. Go under while the housing is still warm, once the exhaust has cooled. Only a warm check can clear a noise.
ui-order-under-car-first-about = Hands-on check first, cold. Then the engine, if nothing dangerous was found.
ui-leave-running = Stop the engine. Take the key or fob with you. Come away from the seat.
ui-leave-running-done = The engine is off
ui-leave-creep = Stop the car. Set the brake, engine off. Put the chocks back.
ui-leave-creep-done = The car stands, engine off
ui-leave-lift = Tools out. Come out from under the car, everybody. Then, from outside, gearbox back in park or gear.
ui-leave-lift-done = Nobody is under the car
ui-leave-why = The safety checks of this part close with it. To come back, confirm them again.
ui-leave-still = Before you come out:
ui-left = This part is closed

## The result.
ui-why = Why
ui-unrated-why = No rating until the hands-on check is done. Not yet checked does not mean safe.
ui-missing = Still missing
ui-next-check = Next check to do
ui-go-on = Go on with the check
ui-causes = Causes, most likely first
ui-causes-found = Causes: what is behind the finding first
ui-found-by-hand = What was found
ui-causes-about = Noise and vibration raise suspicion. Only the hands-on check decides. Several may be true at once.
ui-for = Speaks for it
ui-against = Speaks against it
ui-weight-for = { $step }: { $answer } makes it { $times } times as likely.
ui-weight-against = { $step }: { $answer } makes it { $times } times less likely.
ui-weight-gauge-with = { $step }, by gauge: its readings are { $odds } times as likely with movement as without.
ui-weight-gauge-without = { $step }, by gauge: its readings are { $odds } times as likely without movement as with.
ui-weight-makes-more = It makes it { $times } times as likely.
ui-weight-makes-less = It makes it { $times } times less likely.
ui-no-weights = Nothing answered so far speaks for or against it.
ui-road = For information: roadworthiness
ui-papers = Papers
ui-finding = Finding
ui-note = Owner's note
ui-ledger = Record

## Papers and the receipt.
ui-paper-language = Language of this paper
ui-sheet = Sheet
ui-sheet-a4 = A4
ui-sheet-us-letter = US Letter
ui-pdf-make = Make the PDF
ui-pdf-making = Making it …
ui-pdf-open = Open
ui-pdf-save = Save a copy
ui-pdf-where = Saved papers go to the folder for downloads.
ui-short-text = Short text to send
ui-copy = Copy
ui-copied = Copied.
ui-copy-by-hand = The text is selected. Copy it from here.
ui-decision = What you decide
ui-owner-signs = Your name (may stay empty)
ui-sign-here = Sign here with your finger
ui-pad-empty = Signature field, empty
ui-pad-signed = Signature field, signed
ui-pad-clear = Clear the signature
ui-sign = Sign that I received this note
ui-sign-needs = Choose one of the three and sign above.
ui-sign-again = Sign again
ui-receipt-outdated = What is recorded, or how it is rated, has changed since this was signed. The note may say more now than the one that was seen.
ui-note-hash = This note: SHA-256 { $hash }

## The ledger.
ui-chain-whole = { $entries ->
    [one] One entry. The record is whole.
   *[other] { $entries } entries. The record is whole.
}
ui-chain-broken = THE RECORD IS BROKEN at entry { $seq }. From there on it is not what was written. Treat the visit as not checked, and keep this device's data as it is.
ui-ledger-broken = The record of this visit is broken at entry { $seq }. Do not rely on it.
ui-ledger-empty = Nothing is recorded yet.
ui-ledger-change = { $before }, now { $now }
ui-ledger-head = Latest hash: { $head }
ui-reason-was = Reason: { $reason }
ui-superseded = No longer counts; a later entry took its place.

ui-rating = Rating
ui-outcome = Where the check stands

## The sorting, opened up.
ui-interval = between { $low } and { $high }
ui-before = Before any answer: { $before }.
ui-together-for = Taken together, these answers make it another { $times } times as likely.
ui-together-against = These answers partly say the same: together they count { $times } times less.
ui-causes-more = { $count ->
    [one] One more cause
   *[other] { $count } more causes
}
ui-next-gain = On average this saves about { $minutes } minutes of needless repair or waiting.
ui-next-none = No further check
ui-turn = If “{ $step }” came out as “{ $answer }”, { $cause } would lead ({ $share }).
ui-judgements = What a wrong decision would cost
ui-judgements-about = Losses are workshop judgement, counted in minutes. The rating above follows its rules and not this table.
ui-judgement-acts = Now { $now }. The advice would change below { $at }.
ui-judgement-waits = Now { $now }. The advice would change from { $at } on.
ui-judgement-loss = { $course }: { $minutes ->
    [one] one minute lost
   *[other] { $minutes } minutes lost
} on average, if { $loss }.
ui-judgement-alone = These numbers are workshop judgement alone: too few confirmed outcomes yet.
ui-taught = These numbers were taught by { $outcomes } confirmed outcomes of this layout.
ui-opinion = I think it is …
ui-opinion-open = I think it is something else
ui-opinion-choose = Choose a cause
ui-opinion-why = Why
ui-opinion-about = It stands in the finding beside the sorting and does not change it.
ui-opinion-was = { $by } thinks: { $cause }
ui-turned-out = What it turned out to be
ui-turned-out-about = After teardown or the repair: tap every cause that was really there. It teaches the sorting.
ui-turned-out-choose = What was really there
ui-turned-out-by = Who says so (empty: { $technician })
ui-turned-out-save = Confirm
ui-turned-out-kept = Recorded. It counts once, however often it is corrected.
ui-turned-out-again = Confirm again to correct it; both stay in the record.
ui-calibration = How often the causes were right
ui-calibration-about = Compares what was said of each cause with what was found at teardown or after the repair.
ui-outcomes-count = { $outcomes ->
    [0] No confirmed outcome yet
    [one] One confirmed outcome
   *[other] { $outcomes } confirmed outcomes
}
ui-judgement-alone-page = The numbers still rest on judgement alone. A layout’s numbers learn from { $enough } outcomes on.
ui-layout-taught = { $layout }: { $outcomes } outcomes; its numbers are taught by them.
ui-layout-not-taught = { $layout }: { $outcomes } of { $enough } outcomes.
ui-reliability = Forecast and outcome
ui-reliability-about = Of all causes called about 70% likely, about 70% should turn out to be there. On the dashed line it fits.
ui-reliability-drawing = Diagram: forecast across, how often it was so up; the table beneath has its numbers.
ui-said = Forecast
ui-was = Found
ui-count = Count
ui-share = { $share }%
ui-scores = Scores, lower is better
ui-scores-about = Over { $forecasts } probabilities: one for each cause and visit.
ui-brier = Brier score
ui-brier-calibration = of which calibration: said too high or too low
ui-brier-refinement = of which refinement: what the groups could not tell apart
ui-brier-grouping = of which grouping: differences inside a group
ui-log-score = Logarithmic score
ui-log-score-base = The same for base rates only
ui-better-than-base = The sorting says more than the workshop’s base rates would.
ui-no-better-than-base = So far the sorting says no more than the workshop’s base rates would.
ui-weak-signs = Weak signs
ui-weak-signs-about = Signs that were about as frequent without their causes as with them.
ui-weak-share = { $part } of { $whole }
ui-weak-with = With one of its causes: { $share }
ui-weak-without = With none of them: { $share }

## The gauge.
ui-gauge = Use a gauge
ui-gauge-back = Back to: { $step }
ui-gauge-about = Hands only, no pry bar: push, read, pull, read. Enter the whole movement each time. Clamp or bolt the gauge’s base to the housing itself: aluminium holds no magnet. A gauge settles “unsure”; it never clears what a hand felt.
ui-gauge-readings = Whole movement, push against pull
ui-gauge-reading = Reading { $at }
ui-gauge-more = One more reading
ui-gauge-place = Where the gauge stands
ui-gauge-at-bearing = At the bearing
ui-gauge-on-shaft = Elsewhere on the shaft
ui-lever = Which bearing moves, and what the shaft tilts about
ui-lever-near = Of a pair, the bearing nearer to the gauge moves
ui-lever-far = Of a pair, the bearing farther from the gauge moves
ui-lever-either = Of a pair, not known which
ui-lever-joint = One bearing alone
ui-lever-about-pair = A loose bearing of a pair tilts the shaft about the other one, not about the far joint. Not known which: both are worked out, and a proof needs both.
ui-lever-about-joint = One bearing alone: the shaft tilts about its far joint.
ui-lever-apart = From bearing to bearing, mm
ui-lever-out = From the nearer bearing to the gauge, mm
ui-lever-joint-bearing = From the joint to the bearing, mm
ui-lever-joint-gauge = From the joint to the gauge, mm
ui-gauge-mark = Without a maker’s figure, the bearing’s own clearance is the yardstick. It is not an official limit.
ui-gauge-bore = Bearing bore, mm
ui-gauge-group = Clearance group
ui-gauge-group-none = Not known
ui-gauge-save = Record the readings
ui-gauge-plot = Readings along a line: circles are readings, the disc is their mean with its interval, the upright line is the limit.
ui-gauge-plot-about = Circles: readings. Disc and bar: mean and 95% interval. Upright line: limit; within the grey band nothing is proven.
ui-gauge-limit = limit
ui-trend-plot = Movement over visits: points with their intervals, a straight line through them, the limit as a broken line.
ui-trend-about = Points: this car’s visits, each with its interval. Line: the trend. Broken line: limit.
ui-trend-first = { $days } days ago
ui-trend-today = today

## The bench.
ui-bench = Bench
ui-bench-about = After teardown. The bore decides whether new bearings alone will last.
ui-bench-about-rubber = After teardown. A rubber support is replaced whole, with its bearing. Read a bore only where the maker lets the housing be kept.
ui-bench-verdict = Verdict
ui-done = done
ui-bench-next = Next: { $part }
ui-bench-complete = Everything asked for is recorded. The repair record can be made.
ui-bench-not-asked = not asked for so far
ui-bench-no-plan = Measure the bore as found first: the plan is worked out from it.
ui-bench-clean = The cutter has touched all round. No further pass is needed.
ui-bench-cut-more = Cut one more pass all the same
ui-measure-again = Measure again
ui-photo-back-bench = Back to the bench
ui-bench-look = Look at the housing
ui-look-cracked = Any crack, or a broken lug?
ui-look-ring-turned = Bright or scored marks of a bearing that spun in its bore?
ui-look-yes = Yes
ui-look-no = No
ui-look-wall = Least wall that may be left, mm
ui-bench-found = Bore as found
ui-bench-skim = Skim plan and passes
ui-bench-finished = Bore as finished
ui-bench-fit = Fit
ui-bench-ring = After assembly: turn the bearing by hand
ui-bench-ring-about = Turn the shaft by hand in its bearing, slowly, one full turn. It must turn freely: a bearing pressed into an oval seat turns stiff and fails early.
ui-bench-notes = Fasteners and torques
ui-bench-notes-about = New fasteners, at the maker’s torque. Write down what was used and where the figure is from.
ui-bench-note = Note
ui-bench-passes = Passes cut
ui-bench-after-pass = After pass { $pass }
ui-bench-pass = Pass { $pass }: { $contact }
ui-bench-diameter = Diameter after pass { $pass }, mm (may stay empty)
ui-bench-contact = Pass { $pass } is cut. Where did the cutter touch?
ui-bench-photo-at = Photo { $at } of { $of } of this work
ui-bench-photo-more = Take one more photo
ui-contact-none = Nowhere
ui-contact-partly = In places
ui-contact-all-round = All round
ui-ring-free = Free
ui-ring-stiff = Stiff
ui-ring-rough = Rough
ui-bore-kind = How it is measured
ui-bore-kind-two-point = Two points
ui-bore-kind-three-point = Three points
ui-bore-kind-dial = Swept dial
ui-bore-kind-coordinates = Coordinates
ui-bore-about-two-point = Diameters between two opposite contacts. Blind to three, five or any odd number of lobes.
ui-bore-about-three-point = Diameters by three contacts. Blind to an oval.
ui-bore-about-dial = A dial swept round a turntable, with its sign and zero.
ui-bore-about-coordinates = Points from a measuring machine, x and y from the datum axis: pasted here, or as a file.
ui-bore-unit-mm = mm
ui-bore-unit-um = µm
ui-bore-unit-in = inch
ui-bore-unit-thou = thou
ui-bore-resolution = Smallest step
ui-bore-mpe = Largest error it may have
ui-bore-repeatability = Scatter, if tried
ui-bore-wall = Thinnest wall, mm, if measured
ui-bore-seat = Width of the seat, mm
ui-bore-wall-error = Wall read within ± mm
ui-bore-turn = Angles count
ui-bore-turn-clockwise = clockwise
ui-bore-turn-counter = counter-clockwise
ui-bore-zero-diameter = Diameter at zero
ui-bore-zero = Zero was
ui-bore-zero-set = set to a ring of that size
ui-bore-zero-nominal = only assumed
ui-bore-higher = A higher reading is
ui-bore-higher-wider = wider
ui-bore-higher-narrower = narrower
ui-bore-angles = Angles
ui-bore-depths = Depths
ui-bore-depth = Depth, mm
ui-bore-at-depth = { $depth } deep
ui-bore-filled = { $done } of { $all } readings entered
ui-bore-points = Points, one a line: x;y or depth;x;y
ui-bore-pasted = { $done } lines pasted
ui-bore-save = Record this bore
ui-bore-file = Or take a file
ui-polar = The wall at depth { $depth }, its deviation from round drawn larger than life
ui-polar-scale = Deviation drawn { $times } times larger. Dashed: round.
ui-polar-clockwise = Angles count clockwise.
ui-polar-counter = Angles count counter-clockwise.
ui-polar-flagged = Ringed: does not fit its neighbours; read it again.
ui-polar-mirrored = Hollow: drawn from the reading across, not read here.
ui-polar-unread = Open: not read. What lies there is not known.
ui-skim-picture = After pass { $pass }, { $share }% of the ring is touched
ui-skim-pass = Pass { $pass } of { $of }.
ui-skim-touched = { $share }% of the ring touched.
ui-skim-clean = Clean all round.
ui-skim-diameter = Diameter { $diameter }.
ui-skim-wall = Wall left: { $wall }.
ui-skim-wall-thin = THE WALL IS TOO THIN: stop.
ui-skim-before = Pass before
ui-skim-after = Next pass
ui-skim-rings = Rings from outside in: { $depths } deep. Thick: touched.
ui-fit-about = Everything in mm, uncertainties in µm. A measured size wins over a class.
ui-fit-bearing = The bearing
ui-fit-seat = The seat
ui-fit-sleeve = The sleeve
ui-fit-sleeve-material = Sleeve material
ui-fit-sleeved = With a sleeve
ui-fit-measured = The bore as measured here: { $diameter } mm ± { $expanded } µm
ui-fit-unknown = Not known
ui-fit-bearing-od = Outside diameter, nominal
ui-fit-bearing-bore = Bore
ui-fit-bearing-width = Width
ui-fit-od = Outside diameter, measured
ui-fit-od-u = its uncertainty, µm
ui-fit-group = Clearance group
ui-fit-class = Hole class
ui-fit-bore = Seat bore, measured
ui-fit-bore-u = its uncertainty, µm
ui-fit-housing = Housing material
ui-fit-housing-od = Housing outside diameter
ui-fit-sleeve-od = Sleeve outside diameter
ui-fit-sleeve-od-u = its uncertainty, µm
ui-fit-housing-bore = Housing bore for the sleeve
ui-fit-housing-bore-u = its uncertainty, µm
ui-fit-temp-low = Lowest temperature in use, °C
ui-fit-temp-high = Highest temperature in use, °C
ui-fit-save = Work the fit out
