### The gauge on the shaft: what its readings say, and what keeps them from being judged.

gauge-mean = Movement at the bearing: { $mean }, from { $count ->
    [one] one reading
   *[other] { $count } readings
 }.
gauge-ratio = 1 mm at the gauge is { $ratio } mm at the bearing.
gauge-interval = With 95% confidence it lies between { $low } and { $high } (± { $expanded }, factor { $factor }).
gauge-one-reading = One reading says nothing of its own scatter, so no interval can be given.
gauge-doubtful = { $count ->
    [one] One reading lies
   *[other] { $count } readings lie
 } far from the others. Look again at gauge and arm; it was counted all the same.

gauge-limit-maker = Limit: { $limit }, the maker's figure.
gauge-limit-internal-clearance = Yardstick: { $limit }, the largest internal clearance of such a bearing before it is fitted. Not an official limit; the maker's figure goes first.
gauge-limit-none = No limit is known: compare, do not judge.
gauge-bands = Proven within the limit up to { $pass }, proven beyond it above { $fail }.
gauge-bands-no-pass = With this gauge nothing can be proven within the limit; proven beyond it above { $fail }.

gauge-decision-proven = Movement beyond the limit is proven.
gauge-decision-none-proven = The movement is proven to lie within the limit.
gauge-decision-not-decided = Not decided: the readings prove neither.
gauge-decision-compare = Not judged: no limit is known.

gauge-meaning-felt = It counts as movement felt: DANGER, do not drive.
gauge-meaning-beyond-figure = It counts as movement beyond the maker's figure.
gauge-meaning-unsure = It counts as unsure, which never reads as safe.
gauge-meaning-replaces-unsure = It settles an unsure answer. It never clears a movement that a hand felt.
gauge-meaning-silent = It adds nothing to what hands felt. Compare with a like car or with an earlier visit.

gauge-remedy-more-readings = Would decide: { $readings } readings in all.
gauge-remedy-finer-gauge = Would decide: a { $resolution } { $unit } gauge with a permissible error of at most { $mpe } { $unit }.
gauge-remedy-at-bearing = Would decide: the gauge at the bearing itself.
gauge-remedy-finer-gauge-more-readings = Would decide: a { $resolution } { $unit } gauge with a permissible error of at most { $mpe } { $unit }, and { $readings } readings in all.
gauge-remedy-read-again = Read again: at least { $readings } readings in all, letting go between them.
gauge-remedy-find-limit = Find the limit: the maker's figure, or the bearing's bore and clearance group.
gauge-remedy-find-figure = Find the maker's figure for this support; without one nothing can be judged.
gauge-remedy-too-near-limit = More readings will not settle it: the movement is too near the limit. Treat it as unsure.

gauge-budget = Uncertainty, largest first:
gauge-budget-line = { $source }: { $contribution }, { $share } of the variance
gauge-source-scatter = Scatter of the readings
gauge-source-resolution = Step of the gauge
gauge-source-mpe = Permissible error of the gauge
gauge-source-alignment = Gauge out of line with the movement
gauge-source-gauge-place = Distance from pivot to gauge
gauge-source-bearing-place = Distance from pivot to bearing

gauge-chances = This gauge at this place misses { $missed } of supports beyond the limit, raises a false alarm at { $alarm }, and leaves { $undecided } undecided, if movements lie evenly between none and twice the limit.
gauge-trend-growing = Over { $count } visits it grows by { $slope } a year (± { $expanded }).
gauge-trend-shrinking = Over { $count } visits it shrinks by { $slope } a year (± { $expanded }): ask what was changed.
gauge-trend-no-change-shown = Over { $count } visits no change is shown ({ $slope } a year, ± { $expanded }); that is not to say that there is none.
gauge-maker-first = The maker's procedure and figures go before anything said here.

## Refusals.
error-gauge-file-unreadable = The gauge file cannot be read
error-gauge-file-unreadable-help = Check that the file is whole and has the form of the files in demo-data/bench. Nothing was judged.
error-decimal-comma = A number can be read two ways
error-decimal-comma-help = Its comma or point may be a decimal sign or part thousands. Add a zero at its end, such as 1,2500, or leave the comma or point out.
error-mixed-units = Units are mixed
error-mixed-units-help = Give every length in the one unit of the measurement. 1 inch is 25.4 mm, a thousandth of an inch 0.0254 mm.
error-not-a-number = A number is missing or is none
error-not-a-number-help = Enter what the instrument shows, as digits, with a point or a comma.
error-no-readings = There are no readings
error-no-readings-help = Read the total movement from push to pull, five times if you can, and enter every reading.
error-negative-reading = A reading is below zero
error-negative-reading-help = Set the gauge to zero at the push and enter the way to the pull without a sign.
error-reading-too-large = A reading is longer than a gauge's travel
error-reading-too-large-help = Check the unit: thousandths of an inch may have been entered as millimetres.
error-instrument-refused = The gauge's step or permissible error is not above zero
error-instrument-refused-help = Take both from the gauge's certificate or its maker's sheet. No gauge is without error.
error-gauge-at-pivot = The gauge sits at the pivot, or too near it
error-gauge-at-pivot-help = Move it towards the bearing: at the pivot the shaft does not move, and nearby its place decides everything.
error-bearing-at-pivot = The bearing sits at the pivot
error-bearing-at-pivot-help = Check the three places along the shaft. The pivot is the end that stays where it is.
error-place-refused = A place along the shaft cannot be right
error-place-refused-help = Enter pivot, gauge and bearing in millimetres from any one zero, and their error without a sign.
error-limit-refused = The limit is not above zero
error-limit-refused-help = Enter the maker's figure as it stands in the manual, or leave it out if it is not known.
error-bore-not-tabled = No internal clearance is tabled for this bore
error-bore-not-tabled-help = Bores over 10 and up to 140 mm are tabled. Enter the maker's figure instead, or leave the bearing out: then nothing is judged.
error-earlier-refused = A result of an earlier visit cannot be right
error-earlier-refused-help = Enter days ago, movement and standard uncertainty of each, all above zero.
