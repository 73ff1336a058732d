# The old sleeve: whether there is one, how it comes out, and what was seen of the housing

ui-look-dyed = Were cracks looked for with dye?
ui-look-sleeved = Is a sleeve of an earlier repair in the bore?
ui-look-anew = The old sleeve is out: look for cracks again, also where it sat. The answers from before it came out do not count.
ui-bench-old-sleeve = Old sleeve out
ui-old-sleeve-about = An old sleeve hides the wall that carries the new one. Take it out, look for cracks again, and read the bore behind it. The maker's procedure comes first.
ui-old-sleeve-way = How did it come out?
ui-old-sleeve-heat = By heat
ui-old-sleeve-heat-about = Warm the housing evenly, never with a flame and no hotter than its limit, until it lets the sleeve go.
ui-old-sleeve-press = Pressed out
ui-old-sleeve-press-about = Support the housing right under the seat, press square, and stop when it does not move: heat helps more than force.
ui-old-sleeve-bored = Bored through
ui-old-sleeve-bored-about = Leave a skin of the old sleeve and peel it out. The cutter must not reach the housing.
ui-old-sleeve-outside = Outside diameter of the old sleeve, mm (may stay empty)
ui-old-sleeve-out = It is out
ui-old-sleeve-behind = Bore behind the old sleeve

look-line-cracked = THE HOUSING IS CRACKED, or a lug is broken.
look-line-no-crack-dye = No crack was found with dye.
look-line-no-crack-eye = No crack was seen by eye. A fine crack shows only with dye.
look-line-cracks-open = Cracks were not looked for.
look-line-ring-turned = The bearing has spun in its bore.
look-line-ring-still = No marks of a bearing that spun in its bore.
look-line-ring-open = Marks of a bearing that spun in its bore were not looked for.
look-line-sleeved = A sleeve of an earlier repair is, or was, in the bore.
look-line-bare = No sleeve is in the bore.
look-line-wall = Wall that has to be left: { $wall }.

sleeve-out-heat = The old sleeve came out by heat.
sleeve-out-press = The old sleeve was pressed out.
sleeve-out-bored = The old sleeve was bored through.
sleeve-out-size = Its outside measured { $size }.
sleeve-out-grip = Beside the bore behind it, that was { $grip } of grip when cold.
sleeve-out-loose = THE OLD SLEEVE WAS LOOSE: the bore behind it is wider by { $grip }.
sleeve-out-look-again = What it hid counts once it was looked at again for cracks and read.

verdict-why-old-sleeve-out = The old sleeve is out: the bore takes a new one.
verdict-gap-old-sleeve = whether an old sleeve is in the bore
verdict-gap-behind-sleeve = the old sleeve taken out and the bore behind it read
entry-sleeve-out = Old sleeve taken out
entry-bore-behind = Bore read behind the old sleeve
repair-heading-look = Housing looked at, old sleeve
repair-bore-behind = Bore behind the old sleeve
repair-photo-bench-behind = Bore behind the old sleeve
repair-sleeve-out-by = Taken out by { $by }, { $at }.

error-sleeve-size-refused = No sleeve of a seat has this outside diameter
error-sleeve-size-refused-help = Enter it in millimetres, from 1 to 1,000, or leave it empty.
error-sleeve-still-in = The old sleeve is still in its place
error-sleeve-still-in-help = Record first how the old sleeve came out. A bore with the sleeve in it is read as found.
