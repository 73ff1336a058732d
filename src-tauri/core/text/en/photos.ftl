### Photos: marks, pairs, photos that were being taken, the code to hand a text over. Refusals as in errors.ftl.

## Refusals.
error-photo-heic = The photo is a HEIC, which cannot be read here
error-photo-heic-help = Set the camera to JPEG ("most compatible") and take it again, or choose a JPEG copy of it.
error-photo-not-of-step = This photo does not belong to the step
error-photo-not-of-step-help = Open the step anew and choose one of its photos. Nothing was recorded.
error-photo-not-wanted = Nothing waits for this photo any more
error-photo-not-wanted-help = Open the step and add the photo there.
error-marks-too-many = Too many marks on one photo
error-marks-too-many-help = A photo takes up to 12. Take some back, then keep the rest.
error-mark-refused = A mark cannot be kept
error-mark-refused-help = Draw it on the picture and a little larger, a free line in fewer strokes.
error-mark-label-refused = The words on the photo cannot be kept
error-mark-label-refused-help = Write 1 to 40 characters on one line, without control characters.
error-waiver-too-long = The reason is too long
error-waiver-too-long-help = Say it in up to 200 characters.

## The ledger.
entry-photo-marked = Photo marked
entry-photos-paired = Photos shown as before and after, or apart again

## Papers.
photo-caption-marked = { $caption }. Marked: { $labels }
photo-alt-marked = { $alt } The photo is marked.
photo-alt-labelled = { $alt } Marked on it: { $labels }.
photo-caption-before = Before, { $at }: { $said }
photo-caption-after = After, { $at }: { $said }
photo-alt-before = Before, kept { $at }. { $said }
photo-alt-after = After, kept { $at }. { $said }

## Looking closely and marking.
ui-photo-closer = Look closer, mark
ui-photo-title = Photo: { $title }
ui-photo-back = Back to the step
ui-photo-none-yet = There is no photo of this step yet.
ui-zoom = Zoom
ui-zoom-in = Larger
ui-zoom-out = Smaller
ui-zoom-one = 1:1
ui-zoom-fit = Whole
ui-mark-tools = What the finger does
ui-mark-look = Move
ui-mark-arrow = Arrow
ui-mark-ring = Ring
ui-mark-freehand = Draw
ui-mark-label = Words
ui-mark-how-look = Drag to move, pinch or press + and - to zoom. By keyboard: arrow keys move, + and - zoom.
ui-mark-how-arrow = Drag from the tail to the tip. By keyboard: arrow keys move the cross, Enter sets each end.
ui-mark-how-ring = Drag across what the ring goes round. By keyboard: arrow keys move the cross, Enter sets each corner.
ui-mark-how-freehand = Draw with the finger. By keyboard: Enter sets the pen down and lifts it, arrow keys draw.
ui-mark-how-label = Write the words, then touch where they go. By keyboard: arrow keys move the cross, Enter sets them.
ui-mark-words = Words on the photo, up to 40 characters
ui-mark-back = Take back last mark
ui-mark-clear = Take all marks away
ui-mark-keep = Keep the marks
ui-mark-drop = Leave as it was
ui-mark-undone = The last change to the marks is taken back.
ui-mark-count = { $count ->
    [0] No marks
    [one] { $count } mark
   *[other] { $count } marks
}
ui-mark-unsaved = Not kept yet.
ui-mark-kept = The marks are kept. The photo itself stays as it was taken.
ui-pair = Before and after
ui-pair-about = Earlier photos of this step stay. One of them can stand beside the latest, here and in the finding.
ui-pair-before = Before, { $when }
ui-pair-after = After, { $when }
ui-pair-with = Show this one as “before”
ui-pair-alone = Show the latest alone

## A photo that was being taken when the app ended.
ui-wanted = A photo for “{ $title }” was being taken, { $when }.
ui-wanted-choose = Choose it
ui-wanted-found = Use the photo the camera took, { $when }
ui-wanted-drop = No longer wanted

## The short text as a code.
ui-qr = Show as QR code
ui-qr-hide = Hide the QR code
ui-qr-of = QR code that holds the short text
ui-qr-about = Point the other phone’s camera at it. It holds the short text above; nothing goes through a network.
