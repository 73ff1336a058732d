### The steps of the walk: what is checked (step-ID), how (-do), and what to watch for (-watch).
### Read by a technician with gloves on: short, imperative. The maker's procedure comes before all of it.

step-road-speed-vibration = Vibration on the road
step-road-speed-vibration-do = Ask the owner. Does a vibration grow with road speed?
step-road-speed-vibration-watch = Do not road-test to find out. Road-test only once everything felt and seen on this car is in order.

step-idle-speed = Idle speed
step-idle-speed-do = Let the engine settle. Read the rev counter or the scan tool. Enter the rpm.
step-idle-speed-watch = Stay in the seat. Keep everybody away from the shaft and the wheels. The maker's procedure comes first.

step-idle-noise = Noise at idle
step-idle-noise-do = Listen from the seat. Mark every noise you hear. One you leave out counts as not heard.
step-idle-noise-watch = Do not lean under the car to hear better. A heavy knock: stop the engine at once. The maker's procedure comes first.

step-idle-raise-effect = Idle raised a little
step-idle-raise-effect-do = Raise idle by 150 to 200 rpm. Listen again. Let it drop.
step-idle-raise-effect-watch = Raise it by the pedal or the maker's procedure, from the seat. Keep hands out of the engine bay.

step-misfire-evidence = Misfire evidence
step-misfire-evidence-do = Read the misfire counts of each cylinder. Read the fault codes.
step-misfire-evidence-watch = Route the cable clear of pedals and belts. Follow the maker's procedure for the scan tool.

step-air-leak-by-ear = Air leak, by ear
step-air-leak-by-ear-do = Engine on. Stand beside the car, outside the engine bay. Move the end of a long tube along the intake hoses; listen at the other.
step-air-leak-by-ear-watch = Nobody leans over the engine. Keep hands, hair and tube away from the fan, belts and hot parts. Follow the maker's procedure.
step-air-leak-test = Air leak test
step-air-leak-test-do = Engine off. Fill the intake with smoke. Look where it leaves, then enter what you found.
step-air-leak-test-watch = Never use flammable spray. Keep hands and hair away from the fan, belts and hot parts. Follow the maker's procedure. Start again only when everybody has stepped back.

step-engagement-setting = Clutch engagement setting
step-engagement-setting-do = Read the engagement speed the clutch is set to. Compare it with the maker's standard.
step-engagement-setting-watch = Read only. Changing the setting here can make the car move. Follow the maker's procedure.

step-neutral-2500-buzz = Buzz near 2,500 rpm
step-neutral-2500-buzz-do = In neutral, raise the engine slowly to about 2,500 rpm. Hold for less than ten seconds. Feel for a buzz in the floor under your feet.
step-neutral-2500-buzz-watch = The shaft turns at engine speed though the car stands. Knock or strong vibration: stop the engine now. The maker's procedure comes first.

step-running-stop = Had to stop the engine?
step-running-stop-do = Engine off now. Then say why you stopped it.
step-running-stop-watch = After a heavy knock or strong vibration do not run the engine again. Go to the hands-on check. The maker's procedure comes first.

step-creep-noise = Noise while creeping
step-creep-noise-do = Let the car creep one car length, foot over the brake. Listen. Stop.
step-creep-noise-watch = The car moves. Brake at once if anybody comes near. Follow the maker's procedure for the gearbox.

step-engagement-reset-effect = Clutch engagement reset to standard
step-engagement-reset-effect-do = Set the engagement speed to the maker's standard. Let the car creep again. Listen.
step-engagement-reset-effect-watch = Set it only by the maker's procedure, brake held. The car can lurch on the first try.

step-housing-look = Look at the housing
step-housing-look-do = Light the housing all round. Look for cracks, loose fasteners, marks, grease or dust. Mark on screen all you find.
step-housing-look-watch = Hot exhaust close by. Do not hang on the housing. Leave orange cables alone. The maker's procedure comes first.

step-play-vertical = Play up and down
step-play-vertical-do = Grip the shaft close to the bearing. Push it up, let it down. Watch the gap between shaft and housing. If both move together, answer "Not done", check housing, bolts and mounts, then feel again.
step-play-vertical-watch = Hands only, no pry bar. Keep fingers clear of joints and edges. Keep clear of hot parts. Follow the maker's procedure.

step-play-lateral = Play side to side
step-play-lateral-do = Grip the shaft close to the bearing. Push left, pull right. Watch the gap between shaft and housing. If both move together, answer "Not done", check housing, bolts and mounts, then feel again.
step-play-lateral-watch = Hands only, no pry bar. Keep fingers clear of joints and edges. Keep clear of hot parts. Follow the maker's procedure.

step-tube-open-check = Bearings in the opened tube
step-tube-open-check-do = Open the tube by the maker's procedure. Feel for movement at each bearing with your hands. Enter what you felt.
step-tube-open-check-watch = High voltage on board: have qualified people isolate it first. Heavy parts come free. Prop them before you undo anything, and follow the maker's procedure to the letter.

step-play-far-end = Play at the far end
step-play-far-end-do = Grip the shaft at its far end. Push up and down, then side to side. Watch the joint. Sliding along the shaft is normal at a plunge joint or slip yoke.
step-play-far-end-watch = Hands only. Keep fingers out of the joint: it pinches. The maker's procedure comes first.

step-turn-by-hand = Turn the shaft by hand
step-turn-by-hand-do = Only if neutral is in already; else answer "Not done". Turn the shaft slowly, one full turn. Feel for roughness or drag. Regular bumps are engine compression: do not count them.
step-turn-by-hand-watch = Keep clear of the wheels: hanging free they may turn. Fingers clear of joints. Nobody gets into the car for it. The maker's procedure comes first.

step-coupling-look = Look at the couplings
step-coupling-look-do = Light each coupling and joint. Look for cracks, torn rubber or boots, loose or missing bolts, wear. Mark on screen all you find.
step-coupling-look-watch = Wear eye protection: rust and grit fall. Do not put fingers between the arms of a joint. The maker's procedure comes first.

step-shaft-look = Look at the shaft
step-shaft-look-do = Look along the shaft as far as it can be seen. Look for dents, bends, frayed fibre, a bright spot where a weight was.
step-shaft-look-watch = Broken fibre cuts and stings: gloves on, do not run your hand along it. The shaft must not be turned by the engine. The maker's procedure comes first.

step-shield-and-mounts = Shields and mounts
step-shield-and-mounts-do = Press every heat shield near the shaft. Look at the engine and gearbox mounts. Look for rub marks.
step-shield-and-mounts-watch = Shield edges cut and may be hot. Do not lever on a mount that carries load. The maker's procedure comes first.
