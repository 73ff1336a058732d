### Causes: the name (cause-ID) and one plain sentence that an owner can read (-about).

cause-loose-seat = Bearing loose in its housing
cause-loose-seat-about = The bearing no longer sits tight in its housing, so the shaft can move.
cause-worn-bearing = Worn bearing
cause-worn-bearing-about = The bearing itself is worn and no longer runs smoothly.
cause-squeezed-bearing = Squeezed bearing
cause-squeezed-bearing-about = The housing is out of round and presses on the bearing, so it drags.
cause-housing-damage = Damaged bearing housing
cause-housing-damage-about = The part that holds the bearing is cracked or loose.
cause-torn-support-rubber = Torn support rubber
cause-torn-support-rubber-about = The rubber ring that holds the bearing is torn or worn out.
cause-low-idle = Idle speed too low
cause-low-idle-about = The engine idles too slowly, and that makes parts between the engine and the wheels rattle.
cause-early-engagement = Clutch engages too early
cause-early-engagement-about = The clutch grips at the wrong engine speed, and that makes parts between the engine and the wheels rattle.
cause-misfire = Engine misfire
cause-misfire-about = One or more cylinders of the engine do not fire properly.
cause-coupling-or-joint = Worn coupling or joint
cause-coupling-or-joint-about = A joint that links the shaft to its neighbour is worn or stiff.
cause-shaft-damage = Damaged shaft
cause-shaft-damage-about = The shaft itself is dented, bent or out of balance.
cause-loose-shield-or-mount = Loose shield or mount
cause-loose-shield-or-mount-about = A heat shield or a mount near the shaft is loose or touches.
cause-air-leak = Air leak at the engine
cause-air-leak-about = The engine sucks in air where it should not, and that hisses.
cause-normal-character = None of these causes
cause-normal-character-about = None of the listed faults is present, and what you hear may be how this car sounds.
