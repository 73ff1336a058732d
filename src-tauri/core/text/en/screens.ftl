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
ui-error-no-core-help = Nothing you recorded is lost. Start Steady again, then open the address it prints.
ui-error-screen = This screen tripped over something
ui-error-screen-help = Nothing you recorded is lost. Try again; if it comes back, close Steady and open it again.

## Who is at work.
ui-technician = Your name
ui-technician-title = Who is at the car?
ui-technician-why = Your name stands beside everything you record, and on the papers. It leaves this device only with them.
ui-technician-change = Technician: { $name }. Change

## The list of visits.
ui-new-visit = New visit
ui-search = Plate, VIN, owner or date
ui-found = { $total ->
    [0] No visits
    [one] 1 visit
   *[other] { $total } visits
}
ui-empty = No car has come in yet. Start with “New visit”.
ui-nothing-found = No visit matches. Try fewer letters.
ui-more = Show more
ui-steps-answered = { $answered } of { $steps } steps
ui-signed = Signed: { $decision }
ui-language = Language
ui-language-name = English
ui-theme = Theme
ui-theme-system = Device
ui-theme-dark = Dark
ui-theme-daylight = Daylight
ui-versions = Version { $version }, trade knowledge { $knowledge }

## Intake.
ui-intake = Intake
ui-layout = How the car carries its shaft
ui-layout-needed = Choose one of these. Everything else can wait.
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
ui-odometer = Odometer
ui-unit = Unit
ui-unit-km = km
ui-unit-miles = miles
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
ui-station = { $name }: { $answered } of { $steps } answered, { $word }
ui-all-steps = All steps
ui-locked = Locked
ui-step-where = { $station }, { $at } of { $of }
ui-step-before = Step before: { $title }
ui-step-after = Step after: { $title }
ui-this-step = This step
ui-show-how = Show how
ui-hide-how = Hide how
ui-drawing = Drawing: { $words } Press for the words.
ui-disputed = Two devices gave different answers here. The worse one counts.
ui-milder = Made milder because: { $reason }
ui-temperature = Housing cold or warm?
ui-temperature-cold = Cold
ui-temperature-warm = Warm
ui-reading = Reading in { $unit }, { $min } to { $max }
ui-erase = Erase the last digit
ui-undo = Undo
ui-undo-what = { $about ->
    [none] Undo: { $what }
   *[other] Undo: { $what }, { $about }
}
ui-undo-nothing = Nothing to undo
ui-stop = STOP
ui-reason-title = A DANGER answer becomes milder. Why?
ui-reason-why = Your reason stays in the ledger, and the finding shows it.
ui-reason-ok = Record with this reason
ui-leave-as-is = Leave it as it is

## The photo of a step.
ui-photo-take = Photo
ui-photo-again = New photo
ui-photo-sending = Keeping it …
ui-photo-none = No photo
ui-photo-waived = No photo, why?
ui-photo-why = Why is there no photo?
ui-photo-own-words = In your own words
ui-photo-because = No photo: { $reason }
ui-photo-of = Photo taken at: { $title }
ui-photo-larger = Show the photo larger or smaller
ui-photo-at = Kept { $when }

## Gates, order, leaving.
ui-gates-left = { $left ->
    [one] One gate to go. Tap it once it is done.
   *[other] { $left } gates to go. Tap each once it is done.
}
ui-gates-open = All confirmed. The steps behind are open.
ui-confirmed = { $by }, { $when }
ui-order-title = What comes first?
ui-order-why = Running the engine makes the exhaust and the housing hot. Under the car that means a wait, or burns.
ui-order-running-first-about = Listen first, then let it cool before you go under.
ui-order-under-car-first-about = Hands-on check first, cold. Then the engine, if nothing dangerous was found.
ui-leave-running = Stop the engine. Take the key or fob with you. Come away from the seat.
ui-leave-running-done = The engine is off
ui-leave-creep = Stop the car. Set the brake, engine off. Put the chocks back.
ui-leave-creep-done = The car stands, engine off
ui-leave-lift = Gearbox back in park or gear. Tools out. Come out from under the car.
ui-leave-lift-done = Nobody is under the car
ui-leave-why = The gates of this part close with it. Coming back means confirming them again.
ui-left = This part is closed

## The result.
ui-why = Why
ui-unrated-why = No rating until the hands-on check is done. Not yet checked does not mean safe.
ui-missing = Still missing
ui-next-check = Next check to do
ui-go-on = Go on with the walk
ui-causes = Causes, most likely first
ui-causes-about = Sound and feel raise suspicion. Only the hands-on check decides. Several may be true at once.
ui-for = Speaks for it
ui-against = Speaks against it
ui-weight-for = { $step }: { $answer } makes it { $times } times as likely.
ui-weight-against = { $step }: { $answer } makes it { $times } times less likely.
ui-no-weights = Nothing answered so far speaks for or against it.
ui-road = For information: roadworthiness
ui-papers = Papers
ui-finding = Finding
ui-note = Owner's note
ui-ledger = Ledger

## Papers and the receipt.
ui-paper-language = Language of this paper
ui-sheet = Sheet
ui-sheet-a4 = A4
ui-sheet-us-letter = US Letter
ui-pdf-make = Make the PDF
ui-pdf-making = Making it …
ui-pdf-open = Open
ui-pdf-save = Save a copy
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
ui-receipt-outdated = Something was recorded after this was signed. The note may say more now than the one that was seen.
ui-note-hash = This note: SHA-256 { $hash }

## The ledger.
ui-chain-whole = { $entries ->
    [one] One entry. The chain is whole.
   *[other] { $entries } entries. The chain is whole.
}
ui-chain-broken = THE CHAIN IS BROKEN at entry { $seq }. From there on, this ledger is not what was written. Treat the visit as not checked, and keep this device's data as it is.
ui-ledger-broken = The ledger of this visit is broken at entry { $seq }. Do not rely on it.
ui-ledger-empty = Nothing is recorded yet.
ui-ledger-head = Head of the chain: { $head }
ui-reason-was = Reason: { $reason }
ui-superseded = No longer counts; a later entry took its place.

ui-rating = Rating
ui-outcome = Where the check stands
