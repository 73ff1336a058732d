# The workshop's own sleeves and instruments

stock-sleeve = { $material } sleeve { $outside } outside, bored { $bore }
stock-open = { $sleeve }: whether it would do is not known. Work the fit out with the temperatures and the outside of the housing.
stock-fits = { $sleeve }: IT FITS the bore that there is, which may be { $least } to { $most }, if the wall allows.
stock-bore-to = { $sleeve }: bore the housing to { $least } to { $most } for it, if the wall allows.
stock-bore-too-wide = { $sleeve }: too small. The bore may be { $most } at most, and is wider or has to be.
stock-too-thin = { $sleeve }: too thin once it is bored to the bearing.
stock-no-wall = { $sleeve }: too large, no wall of the housing would be left.
stock-own-bore-too-wide = { $sleeve }: its own bore is too wide for this bearing.
stock-none-holds = { $sleeve }: no grip both holds when hot and is borne when cold.
stock-wall-too-thin = { $sleeve }: too large, the housing would keep less wall than it has to.
stock-housing-replaced = { $sleeve }: no sleeve goes in, the housing is to be replaced.

ui-stock = Sleeves on the shelf
ui-stock-about = Sizes that you have or buy. The bench says which of them would do in the housing at hand.
ui-stock-empty = The workshop has entered no sleeves of its own.
ui-stock-take = Take it into the fit
ui-stock-outside = Outside diameter, mm
ui-stock-bore = Bore as bought, mm
ui-stock-more = One more sleeve

ui-instruments = Instruments
ui-instruments-about = What you measure with. Choose it at the bench, and its step and error are filled in; when its calibration has run out, that is said.
ui-instrument-name = Name or number
ui-instrument-resolution = Smallest step, mm
ui-instrument-mpe = Permissible error, mm
ui-instrument-repeatability = Scatter of repeated readings, mm (may stay empty)
ui-instrument-calibrated = Calibrated on
ui-instrument-due = Valid until
ui-instrument-more = One more instrument
ui-instrument-which = Instrument of the workshop
ui-instrument-none = Another
ui-instrument-overdue = ITS CALIBRATION DOES NOT HOLD TODAY (noted until { $due }). Have it calibrated before you decide by it.
ui-instrument-no-date = NO CALIBRATION IS KNOWN. Have it calibrated before you decide by it.

instrument-line-due = Read with { $name }, calibrated on { $calibrated }, valid until { $due }.
instrument-line-overdue = READ WITH { $name }, WHOSE CALIBRATION HAD RUN OUT on { $due }: its error may be larger than the uncertainty says.
instrument-line-no-date = READ WITH { $name }, OF WHICH NO VALID CALIBRATION IS KNOWN: its error may be larger than the uncertainty says.

error-workshop-sleeve = A sleeve of the stock cannot be read
error-workshop-sleeve-help = Give its material, its outside diameter and its smaller bore in millimetres, from 1 to 1,000; 40 sleeves at most. Nothing was changed.
error-workshop-instrument = An instrument cannot be read
error-workshop-instrument-help = Give each a name of its own, its step and its permissible error in millimetres, above 0 and up to 1; the day of calibration lies before the day it is valid until. 20 instruments at most. Nothing was changed.
error-unknown-instrument = The workshop has no instrument of this name
error-unknown-instrument-help = Enter it with the particulars of the workshop, or give its step and error by hand.
