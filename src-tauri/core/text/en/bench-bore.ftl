### The bench: shape of a bore and the plan to skim it.
### bore-... and skim-... are notes that go with the numbers; error-bore-... are refusals.

bore-at-line = { $phrase } (line { $line })

## What a way of measuring cannot see

bore-two-point-blind = Two opposite contacts cannot see three, five or any odd number of lobes: a bore with three lobes of 16 µm can read as round. Sweep a dial or take coordinates before you call it round.
bore-three-point-blind = Three contacts at 120 degrees see only lobes in threes: three, six, nine. An oval reads as round. Read it with two contacts or sweep a dial before you call it round.
bore-no-centre = This gauge does not know where the axis lies. Whether the bore is off its place or leans is not measured.
bore-size-unknown = The dial was never set to a known size, so the diameter is not measured. Form and taper are.
bore-one-depth = One depth alone says nothing about taper. Read at least the two ends of the seat.
bore-one-angle = Too few angles to tell any lobes: a mean size and no more.
bore-lobes-beyond = { $angles } angles tell up to { $lobes } lobes. More lobes than that, such as chatter marks, are not told apart from fewer.
bore-gap = The widest gap between angles is { $gap } degrees, at depth { $depth }. A burr or dent within a gap is not measured.
bore-flagged = The reading at { $angle } degrees, depth { $depth }, does not fit the others. It was used all the same. Clean the spot, read it again and replace it only if the new reading differs.
bore-few-for-flagging = With fewer than { $fewest } angles at a depth a slip in one reading cannot be told from shape.
bore-below-floor = At depth { $depth } the out-of-roundness is no more than a perfect bore would show with this instrument, about { $floor }. A finer instrument is needed to say more.
bore-repeatability-untried = No repeated readings of one spot were given, so the scatter of the hand is not in the uncertainty. Read one spot ten times and give the standard deviation.

## Budget of one reading

bore-budget-resolution = Resolution: one step over the square root of 12 (GUM F.2.2.1)
bore-budget-mpe = Maximum permissible error: over the square root of 3 (GUM 4.3.7). Shared by all readings for the size, each reading's own for the form
bore-budget-repeatability = Repeatability: standard deviation of repeated readings (GUM 4.2)
bore-budget-reading = One reading: the root of the sum of squares (GUM 5.1.2). Results carry twice their standard uncertainty, about 95%

## Skim plan

skim-verdict-skim = It cleans up after { $passes } passes and the wall left is enough, uncertainty included. Allow { $allow } passes; stop at pass { $safe } whatever the contact shows.
skim-verdict-skim-ample = It cleans up after { $passes } passes and the wall left is enough by far, uncertainty included. Allow { $allow } passes; if it is not clean then, measure again before you cut on.
skim-verdict-wall-unknown = It cleans up after { $passes } passes; allow { $allow }. Whether the wall left is enough is not known: measure the thinnest wall and ask the maker for the least that may be left, before the first cut.
skim-verdict-wall-undecided = It cleans up after { $passes } passes, but the wall left is within its uncertainty of the least asked for. Do not cut on this: measure wall and bore with a finer instrument.
skim-verdict-scrap = Stop and scrap: after { $passes } passes it would clean up, but the wall would be too thin. The last pass that surely leaves enough is number { $safe }.
skim-at-least = Two opposite contacts cannot see odd lobes, so the cut is at least this. Sweep a dial or take coordinates before you count on it.
skim-axis-moves = The free axis lies { $shift } from the datum. The bearing and the shaft move with it: check that against the maker's figure before you cut.
skim-axis-unseen = The plan assumes one straight axis through the middle of every depth. This gauge does not know where that lies.
skim-flagged = A reading was flagged as not fitting the others and is in this plan. Read it again before you cut.
skim-size-unknown = The dial was never set to a known size, so the plan gives cuts and no diameters.
skim-between = Only the depths and angles that were read are planned. Watch the contact on the real bore: it is clean when the cutter has touched all round.
skim-caution = Guard the swarf, wear eye protection, clamp without bending the housing, and measure cold. The maker's procedure comes before this plan.

## Refusals

error-bore-empty = The bore file holds no readings
error-bore-empty-help = Write a header line, a line of column names, and one reading a line below them.
error-bore-no-header = The bore file does not start with its header
error-bore-no-header-help = Start the first line with the word bore, then kind, unit, resolution and mpe, such as bore,kind=two-point,unit=mm,resolution=0.001,mpe=0.004.
error-bore-header-word = A word of the header is not known, stands twice, or does not belong to this kind
error-bore-header-word-help = Use kind, unit, resolution, mpe, repeatability, turn, wall, wall-error and seat; zero-diameter, zero and higher only for a dial.
error-bore-header-missing = A word is missing from the header
error-bore-header-missing-help = Give kind, unit, resolution and mpe. For a dial also zero-diameter, zero=set or zero=nominal, and higher=wider or higher=narrower.
error-bore-kind-unknown = The kind of measurement is not known
error-bore-kind-unknown-help = Write kind=two-point, kind=three-point, kind=dial or kind=coordinates.
error-bore-unit-unknown = The unit is not known
error-bore-unit-unknown-help = Write unit=mm, unit=um, unit=in or unit=thou.
error-bore-columns = The line of column names does not fit the kind
error-bore-columns-help = Name depth_mm or depth_in, then angle_deg and diameter; angle_deg and reading for a dial; x and y for coordinates.
error-bore-cell-count = A line has too many or too few cells
error-bore-cell-count-help = Give one cell for each column name, and put remarks on lines of their own that start with #.
error-bore-not-a-number = A cell is not a number
error-bore-not-a-number-help = Write what the instrument showed, in figures with a decimal point. Take the line out if nothing was read.
error-bore-decimal-comma = A number has a decimal comma
error-bore-decimal-comma-help = Write a decimal point, 72.013 and not 72,013, or part the cells with semicolons or tabs: then a decimal comma is read.
error-bore-mixed-units = A reading is in another unit than the header says
error-bore-mixed-units-help = Turn every reading into the unit of the header, and write it without a unit behind it.
error-bore-instrument = The instrument is not described as one that can measure a bore
error-bore-instrument-help = Give resolution and mpe above zero and below 1 mm, from the instrument or its certificate. Repeatability may be left out.
error-bore-size-implausible = No bearing seat has this size
error-bore-size-implausible-help = Check the unit in the header. Diameters from 1 to 1,000 mm are taken.
error-bore-too-few-angles = There are fewer angles than the shape needs
error-bore-too-few-angles-help = At each depth read at least 3 diameters with two contacts, 1 with three contacts, or 5 points with a dial or coordinates; 12 show far more.
error-bore-angle-repeated = An angle stands twice at one depth
error-bore-angle-repeated-help = Keep one reading for each angle. A two-point diameter is the same half a turn on, one by three contacts a third of a turn on; leave out the closing reading at 360 degrees.
error-bore-too-many-readings = There are more readings than can be taken in
error-bore-too-many-readings-help = Keep to 20,000 at one depth and 100,000 in all.
error-bore-not-round = No circle passes near the points
error-bore-not-round-help = Check that x and y are points of the wall all round, in the unit of the header.
error-bore-wall-negative = A wall thickness is less than nothing
error-bore-wall-negative-help = Give the thinnest wall as it is now, and the least that may be left, both from 0 up.
error-bore-wall-missing = The wall as it is now is not known
error-bore-wall-missing-help = Measure the thinnest wall round the bore and give it with the readings.
error-bore-pass-depth = The depth of a pass is no skim
error-bore-pass-depth-help = Give the pass on the diameter, above 0 and up to 2 mm, such as 0.001in or 0.025mm.
error-bore-too-many-passes = It would take more than 400 passes
error-bore-too-many-passes-help = Give a deeper pass. If the cut is large because the datum is not the bore's axis, set up on the bore or use a free axis.
error-bore-no-datum = The readings do not know a datum axis
error-bore-no-datum-help = Sweep a dial about the datum, or take coordinates with the datum as origin. With a two-point gauge use a free axis.
error-bore-cannot-see-oval = Three contacts cannot see an oval, so no cut can be planned from them
error-bore-cannot-see-oval-help = Read diameters with two contacts at several angles, or better sweep a dial, and plan from that.
