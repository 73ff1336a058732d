### What holds: the wall once a sleeve has its room, the sleeve hot and cold, classes hot, and the lever of a gauge.

verdict-why-wall-not-decided = Whether enough wall is left beside the sleeve is within the uncertainty of the wall: measure it more finely.
verdict-why-sleeve-too-small = The sleeve's bore does not clean up: it takes a larger sleeve.
verdict-why-sleeve-loose-hot = The sleeve, or the bearing in it, would be loose when hot: it takes more grip.
verdict-why-sleeve-too-tight = The sleeve would press a part too near its yield: it takes less grip.
verdict-gap-sleeve = the sleeve that will be fitted: its outside diameter and the bore it goes into
verdict-gap-sleeve-hot-fit = a sleeve that holds at the highest temperature
verdict-gap-sleeve-stress = a sleeve whose stress every part bears, with the housing's outside diameter

skim-sleeve-unknown = No sleeve is in this plan. It needs room of its own, often a millimetre and more on each side: give its size before you trust the wall.
skim-verdict-before-sleeve = It cleans up after { $passes } passes, and for that cut alone the wall is enough. The sleeve takes more of it: whether enough is left then is not known. Allow { $allow } passes; stop at pass { $safe } whatever the contact shows.
skim-verdict-before-sleeve-ample = It cleans up after { $passes } passes, and for that cut alone the wall is enough by far. The sleeve takes more of it: whether enough is left then is not known. Allow { $allow } passes; if it is not clean then, measure again before you cut on.
skim-sleeve-too-small = The sleeve's bore of { $bore } is not surely wide enough to clean up. Choose a larger sleeve.
skim-sleeve-cut = For the sleeve the bore goes on to { $bore }: { $cut } on the radius where the most is cut. Measure the wall before that.
skim-sleeve-wall = For the sleeve the bore goes on to { $bore }: { $cut } on the radius where the most is cut, and { $wall } of wall are left there.

fit-holding-classes = Up to { $celsius } °C these classes stay tight in every pair in the bare housing: { $classes }.
fit-holding-none = NO TABLED CLASS HOLDS in the bare housing up to { $celsius } °C: the tightest, { $class }, can be loose above { $loosens } °C.
fit-holding-no-range = In the bare housing the tightest class tabled, { $class }, can be loose above { $loosens } °C. Give the temperatures in use to see what holds.
fit-holding-never = In the bare housing the tightest class tabled, { $class }, loosens at no temperature above 20 °C.
fit-holding-bare = What does hold: a bare bore of at most { $bore } at 20 °C. Work out its stress with the bore as measured before you cut.
fit-holding-sleeve = Or a sleeve of { $material } with more than { $grip } of grip in the housing at 20 °C, its bore at most { $bore } once it is pressed in: hot, the housing lets go of it and its bore opens.

gauge-other-lever = By the other lever 1 mm at the gauge is { $ratio } mm at the bearing, and it moves { $mean }. { $decision }
gauge-remedy-find-lever = Would decide: to find out which bearing moves and what the shaft tilts about. Hold one bearing's place with a second gauge.
