### The bench verdict, and the gates of the bench part.

verdict-bearings-only = New bearings in the seat as it is.
verdict-skim-and-sleeve = Skim the seat and press in a sleeve.
verdict-replace-housing = Replace the housing.
verdict-open = No verdict yet: something that decides it was not measured.
verdict-at-least-bearings-only = Every outcome is still possible.
verdict-at-least-skim-and-sleeve = New bearings alone are ruled out.
verdict-at-least-replace-housing = A smaller repair is ruled out.

verdict-why-cracked = The housing is cracked.
verdict-why-wall-too-thin = Once the sleeve has its room, less wall would be left than has to be.
verdict-why-out-of-round = The seat is proven out of round.
verdict-why-roundness-not-decided = Whether the seat is round is not decided: measure it more finely.
verdict-why-ring-turned = The bearing has spun in its bore.
verdict-why-loose-hot = The new bearing would be loose in the hot seat.
verdict-why-too-tight = The fit would press the housing too near its yield.
verdict-why-seat-sound = The seat is round, tight and sound.

verdict-missing = Not measured or looked at: { $gaps }.
verdict-gap-cracks = whether the housing is cracked
verdict-gap-ring-marks = marks of a bearing that spun in its bore
verdict-gap-diameter = diameter of the seat
verdict-gap-roundness = roundness of the seat, with its uncertainty
verdict-gap-hot-fit = the fit at the highest temperature
verdict-gap-stress = stress of the housing by the fit
verdict-gap-clean-up = the cut that cleans up all round
verdict-gap-clean-diameter = the diameter at which it was clean all round
verdict-gap-wall-left = the wall as it is, measured well enough to say what is left
verdict-gap-wall-least = the wall that has to be left

verdict-gates = Before this work, confirm the checks for { $sets }.
verdict-gates-machining = the cut
verdict-gates-heat = heating and chilling
verdict-gates-refit = refitting

closing-turns-freely = After assembly, check that the bearing turns freely by hand, without a stiff place. Take a photo, record it. If it does not, take it apart again.

## Gates. gates-SET names the set, gates-SET-why says why it is worth the half minute.
gates-teardown = Before anything heavy comes off
gates-teardown-why = A car on two posts tips when its weight moves. Engine and gearbox drop when their mounts go. Trained and authorised people only; your local rules come first.
gate-teardown-lift-gates-hold = Everything confirmed before going under still holds: locks, stands, engine off, key away.
gate-teardown-stands-and-straps = Stands are set and the car is strapped to the lift.
gate-teardown-engine-and-gearbox-held = Engine and gearbox are held from beneath before their mounts are loosened.
gate-teardown-shaft-marked = The shaft's position is marked at both ends.
gate-teardown-maker-procedure = The maker's procedure for taking it down is at hand and followed.
gate-teardown-high-voltage = High voltage, if fitted, was isolated by qualified people before a tube or shaft comes out.

gates-heat = Before anything is heated or chilled
gates-heat-why = Heat ruins seals and softens alloy without showing it. Dry ice and liquid nitrogen burn skin and displace oxygen. Trained and authorised people only; your local rules come first.
gate-heat-limits-known = The limits of seals, grease and housing are known, and a thermometer is on the part.
gate-heat-no-flame = No flame: oven, hot plate or hot air, even all round.
gate-heat-cold-ventilated = Sealed bearings go into a freezer, down to -40 °C and no colder. Colder media are used only where the maker allows them and air moves freely: they displace oxygen.
gate-heat-gloves = Gloves for heat and cold and eye protection are on.

gates-machining = Before the cutter turns
gates-machining-why = Light-alloy swarf flies and cuts, magnesium swarf burns, and a turning spindle catches cloth. Trained and authorised people only; your local rules come first.
gate-machining-clamped = The housing is clamped on its datum and cannot shift.
gate-machining-swarf-guarded = Guards are closed, and bearings and oilways are covered. Magnesium: sharp tools, no water, a class D extinguisher at hand.
gate-machining-eyes-covered = Eye protection is on.
gate-machining-sleeves-tied = No gloves at the spindle. Loose clothing, cords and hair are tied back.
gate-machining-spindle-stopped = The spindle stands still before anything is measured.

gates-refit = Before the car goes back on its wheels
gates-refit-why = Fasteners that were undone are the ones that come loose. Trained and authorised people only; your local rules come first.
gate-refit-new-fasteners = Fasteners that the maker wants new are new.
gate-refit-maker-torque = Every one is at the maker's torque, in the maker's order.
gate-refit-turns-freely = The shaft turns freely by hand.
gate-refit-running-gates = Before the first start the safety checks for a running engine are confirmed again.

gates-press = Before anything is pressed
gates-press-why = A part that lets go under the press flies like a shot. Trained and authorised people only; your local rules come first.
gate-press-ring-fitted = The press bears only on the ring that is being fitted.
gate-press-housing-supported = The housing is supported square, right under the bearing seat.
gate-press-guarded = The press is guarded, nobody stands in line with it, and no hammer is used.
gate-press-force = Pressing stops when the force goes above what was worked out.
verdict-gates-press = pressing in
