### The repair record.

bore-line-size = Mean diameter { $size }, ± { $expanded }.
bore-line-size-unknown = Mean diameter not measured.
bore-line-ovality = Largest ovality { $value }, ± { $expanded }.
bore-line-roundness = Largest out-of-roundness { $value } (minimum zone), ± { $expanded }.
bore-line-roundness-least = Out of round by at least { $value }, ± { $expanded }: this way of measuring is blind to some shapes.
bore-line-taper-wider = Wider from the face inwards by { $value }, ± { $expanded }.
bore-line-taper-narrower = Narrower from the face inwards by { $value }, ± { $expanded }.
bore-line-taper-none = No taper is told: { $value }, ± { $expanded }.

repair-title = Repair record: bearing seat of the prop shaft
repair-foot = Repair record, visit { $visit }. What is not recorded here was not measured.
repair-bore-found = Bore as found
repair-bore-finished = Bore as finished
repair-bore-caption = Depth { $depth }, the least round. Deviation drawn { $times } times larger; dashed: round. { $turn ->
    [clockwise] Angles count clockwise from 0°.
   *[counter] Angles count counter-clockwise from 0°.
    }
repair-bore-alt = Polar drawing of the bore at depth { $depth }, its deviation from round drawn { $times } times larger. The sentences beside it give its figures.
repair-heading-gates = Safety checks confirmed
repair-heading-plan = Skim plan
repair-heading-passes = Passes cut
repair-heading-fit = Fit
repair-heading-ring = Bearing turned by hand after assembly
repair-heading-notes = Fasteners and torques
repair-not-recorded = Not recorded.
repair-gate = { $gate } ({ $by }, { $at })
repair-pass = Pass { $pass }: the cutter touched { $contact } ({ $by }, { $at }).
repair-pass-measured = Pass { $pass }: the cutter touched { $contact }; diameter { $diameter } ({ $by }, { $at }).
repair-contact-none = nowhere
repair-contact-partly = in places
repair-contact-all-round = all round
repair-ring-free = It turns freely ({ $by }, { $at }).
repair-ring-stiff = IT TURNS STIFFLY ({ $by }, { $at }). The seat presses the bearing: this repair will not last.
repair-ring-rough = IT TURNS ROUGHLY ({ $by }, { $at }). The bearing is damaged: this repair will not last.
repair-note = { $text } ({ $by }, { $at })
repair-photo-bench-found = Bore as found
repair-photo-bench-finished = Bore as finished
repair-photo-bench-ring = Bearing turned by hand
repair-photo-pass = After pass { $pass }
repair-photo-alt = Photo of the work: { $caption }.
repair-caution-rating = This record is no rating: after the repair, feel for play by hand before the car is driven. That check is a visit of its own.
repair-caution-maker = The maker's procedure, sizes and torques come before this record, and so does your local law.
repair-caution-measured = Figures hold for the places and angles that were measured, with the uncertainty given beside them.
repair-caution-torque = New fasteners, at the maker's torque. A torque written here is what the workshop says it used.

entry-gauged = Gauge read
entry-bore-found = Bore read as found
entry-bore-finished = Bore read as finished
entry-housing-looked = Housing looked at on the bench
entry-pass-cut = Pass cut
entry-fit-given = Fit worked out
entry-ring-turned = Bearing turned by hand
entry-bench-noted = Note of the bench
