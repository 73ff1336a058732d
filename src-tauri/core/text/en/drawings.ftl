### What each drawing shows, in words: for a tap on the drawing, and for those who cannot see it.

drawing-road-speed-vibration = A car on a road, with waves under its floor that grow from left to right with the speed.
drawing-idle-speed = A rev counter seen from the driver's seat, its needle at idle.
drawing-idle-noise = The driver's seat with an ear, and sound waves coming from the shaft under the floor.
drawing-idle-raise-effect = A rev counter whose needle moves up a little from idle, and an ear beside it.
drawing-misfire-evidence = A scan tool with one bar for each cylinder; one bar is taller than the others.
drawing-air-leak-by-ear = A long tube from an ear to a hose whose crack hisses.
drawing-air-leak-test = An intake hose with smoke leaving at a crack, and a crossed-out spray can.
drawing-engagement-setting = A scale of engine speed with two marks: the maker's standard, and the mark where the clutch is set.
drawing-neutral-2500-buzz = A rev counter raised from idle to 2,500, a gear lever in neutral, and waves under the driver's feet.
drawing-running-stop = A hand turning the engine off.
drawing-creep-noise = A car that rolls slowly forward, a foot held over the brake, and an ear.
drawing-engagement-reset-effect = A scale of engine speed with an arrow from the raised mark back to the standard mark.
drawing-housing-look = A lamp that shines on the bearing housing; a crack, a loose bolt and a grease mark are ringed.
drawing-play-vertical = Side view, the housing cut open. Both hands hold the shaft close to the bearing. Arrows point up and down. An eye watches the gap between bearing and housing.
drawing-play-lateral = View along the shaft. Both hands hold it close to the bearing. Arrows point left and right. An eye watches the gap between shaft and housing.
drawing-tube-open-check = A tube cut open along its side, the shaft inside on its bearings, and a hand at one of them.
drawing-play-far-end = Two hands hold the shaft at its far end, beside the joint. Arrows point up and down, and across the shaft.
drawing-turn-by-hand = Two hands roll the shaft about itself, along an arrow that goes round it. The fingers are clear of the joint.
drawing-coupling-look = A coupling with three arms; a crack in the rubber and a loose bolt are ringed.
drawing-shaft-look = The whole shaft from the side; a dent, frayed fibre and the spot of a lost weight are ringed.
drawing-shield-and-mounts = A heat shield near the shaft and an engine mount; a finger presses the shield.

drawing-rigid = Where the bearing sits: the shaft runs under the floor from the engine to the rear axle. Near the engine its bearing sits in a solid metal housing.
drawing-rubber = Where the bearing sits: the shaft runs under the floor in two parts. Between them its bearing sits in a rubber ring.
drawing-tube = Where the bearing sits: the shaft runs inside a closed tube under the floor. Its bearings sit in the tube.
