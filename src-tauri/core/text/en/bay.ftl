### The screens around the work: first start, settings, practice, the driver's seat, interruptions.

## First start.
ui-welcome-what-title = Check the noise by hand
ui-welcome-what = Steady takes you step by step to the bearing of a prop shaft: what to listen for from the seat, what to move by hand under the car, what to write down.
ui-welcome-maker = The maker's procedure and local law come before Steady. Steady needs no network.
ui-welcome-rule-title = Only the hands-on check decides
ui-welcome-rule = Noise and vibration raise suspicion. Only moving the shaft by hand tells you.
ui-welcome-open = What was not checked is never called safe. You can break off at any step and come back.

## Settings.
ui-settings = Settings
ui-settings-of = Settings. Technician: { $name }
ui-thumb = Which thumb works the screen?
ui-thumb-left = Left
ui-thumb-right = Right
ui-theme-contrast = High contrast

## Practice.
ui-practice = Practice
ui-practice-about = Go through every screen with a car that does not exist. It is kept apart from your visits, and no paper or file can be made of it.
ui-practice-start = Start a practice visit
ui-practice-car = Practice car
ui-practice-ribbon = Practice. No real car.
ui-practice-end = Delete it

## The driver's seat.
ui-driver-open = Screen for the driver
ui-driver-short = Driver
ui-driver-title = You are in the driver's seat
ui-driver-nobody = Nobody is under the car. Nobody goes under it.
ui-driver-running-1 = Stay seated. Parking brake on, no gear.
ui-driver-running-2 = Press the pedal slowly, up to about 2,500 rpm.
ui-driver-running-3 = Hold for less than ten seconds. Let go.
ui-driver-idle-1 = Stay seated. Parking brake on, no gear.
ui-driver-idle-2 = Let the engine idle. Foot off the pedal.
ui-driver-idle-3 = If told to raise it: press a little, slowly, then let go.
ui-driver-creep-1 = Keep your foot over the brake.
ui-driver-creep-2 = Ease off the brake. Creep one car length.
ui-driver-creep-3 = Brake to a stop.
ui-driver-stop = STOP AT ONCE
ui-driver-stop-running = Heavy knock or strong vibration: foot off the pedal, engine off.
ui-driver-stop-creep = Heavy knock, or anybody near the car: brake hard, engine off.
ui-driver-stopped = I had to stop it
ui-driver-done = Done

## Interruptions.
ui-clock-behind = This device's clock is behind the last entry of this visit ({ $when }). Nothing is lost and the order stays; set the clock before you go on.

## Another layout chosen after steps were answered: what it takes back.
ui-relayout = What the change takes back
ui-relayout-why = These answers belong to the car as it was entered first and do not apply to it as it is now. They stay in the record as taken back, with their photos:
ui-relayout-reason = One of them asked for DANGER or WARNING: say why it is taken back.
ui-relayout-do = Change it
ui-relayout-keep = Keep it as it was

## What a found DANGER closes.
ui-next-closed = Closed, because DANGER was found and the engine is not run again:
