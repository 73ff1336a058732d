### What is refused because it is beyond what can be recorded, or not what it has to be. The bounds are in
### `src/model/limits.rs`. Refusals as in errors.ftl.

## Something typed or drawn.
error-intake-too-long = A text of the intake is too long, or holds characters that do not show
error-intake-too-long-help = Names, plate, VIN and contact hold 200 characters, the complaint and when it happens 10,000. Shorten what is longer, and type anew what was pasted.
error-layout-fixed = The layout can no longer be changed
error-layout-fixed-help = Gauge or bench measured at its shaft. Open a new visit for this car with the right layout.
error-layout-takes-back = The change takes back answers
error-layout-takes-back-help = The answers meanwhile are others than those that were shown. Save once more.
error-warm-from-refused = A housing is not warm at that temperature
error-warm-from-refused-help = Enter the maker's figure in degrees Celsius, 30 or more, or leave it out.
error-signature-refused = The signature cannot be kept
error-signature-refused-help = Clear the pad and let the owner sign once more, within the frame and with their name alone.
error-bench-note-empty = The bench note is empty
error-bench-note-empty-help = Write what was seen or done, or leave the note out.
error-bench-note-too-long = The bench note is too long
error-bench-note-too-long-help = Say it in up to 2,000 characters, or write two notes.
error-wall-refused = The wall that has to be left cannot be right
error-wall-refused-help = Give it in millimetres from 0.1 to 100, or leave it out if it is not known.
error-pass-number-refused = There is no pass of that number
error-pass-number-refused-help = Passes are counted from 1 and up to 200.
error-pass-without-bore = The bore was not read yet
error-pass-without-bore-help = Read the bore as found first, then record the pass.
error-pass-diameter-refused = The diameter after the pass cannot be right
error-pass-diameter-refused-help = Give it in millimetres from 1 to 1,000, or leave it out if it was not measured.
error-gauge-not-here = No gauge belongs at this step
error-gauge-not-here-help = A gauge is read at the two play checks of the support.
error-bore-too-many-depths = There are more depths than can be taken in
error-bore-too-many-depths-help = Keep to 200. Readings of one depth have to name exactly the same depth.
error-entry-beyond = A value is beyond what can be recorded
error-entry-beyond-help = Look for a digit too many or for a text that was pasted by mistake. Nothing was recorded.

## A visit that holds all it can.
error-visit-full = The visit holds as many entries as a visit can
error-visit-full-help = Open a new visit for the car and go on there. Everything recorded so far is kept.
error-visit-photos-full = The visit holds as many photos as a visit can
error-visit-photos-full-help = It takes 200. Open a new visit for the car, or give a reason for no photo. Everything kept so far stays.
error-bench-notes-full = The bench holds as many notes as it can
error-bench-notes-full-help = It takes 100 in one visit. What was noted so far is kept.

## A file.
error-handover-spelling = An entry in the handover file is not written the way Steady writes it
error-handover-spelling-help = Do not trust this copy. Have the file made anew on the device it comes from. Nothing was taken in.
error-handover-beyond = An entry in the handover file holds more than can be recorded
error-handover-beyond-help = No device records such an entry. Have the file made anew on the device it comes from. Nothing was taken in.
error-case-photo-unreadable = A photo that the case names cannot be read
error-case-photo-unreadable-help = Name a file by its path from the case file, and check that you may read it. Nothing was recorded.
error-case-too-long = The case has more rows than a visit can hold
error-case-too-long-help = It takes 1,000 answers and safety checks, and as many rows of the bench. Nothing was recorded.
error-database-foreign = The database is not one that Steady made
error-database-foreign-help = It holds something that Steady never writes. Choose the file steady.db of a data folder or of a backup. Nothing was taken in.
