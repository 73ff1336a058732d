### The hands-on check as a way of its own, and what holds the car up.

ui-lift-kind = What holds the car up?
ui-lift-kind-why = Its own safety checks come next, at most seven.
lift-two-post = Two-post lift
lift-platform = Platform lift
lift-pit = Pit
lift-ramps = Ramps
lift-stands = Axle stands

order-hands-on = Hands-on check only
ui-order-hands-on-about = Under the car: look at the support, feel the play both ways, and there is a rating. The rest can follow.
ui-find-out-why = Find out why it makes a noise
ui-find-out-why-about = The hands-on check is done. The remaining steps find the cause.
ui-leave-part = Leave this part
ui-lift-changed = Car lowered or moved, or somebody in it? Leave this part first.
ui-gate-again = Confirmed already by { $by }, { $when }.
ui-gate-again-part = Not right any more? Leave this part: its safety checks are then confirmed anew.

## Taking the latest entry back: what it is, before it goes.
ui-undo-by = By { $by }, { $when }
ui-undo-others = This is { $by }'s entry, not yours. Take it back?
ui-undo-do = Take it back
ui-undo-keep = Leave it
ui-undone = Taken back: { $what }
# What was taken back, in words that follow “Taken back”.
ui-undone-what = { $about ->
    [none] { $what }
   *[other] { $what }, { $about }
}
ui-redo = Enter it again
ui-redo-gate = A safety check is confirmed anew at the car, in its row.
ui-redo-photo = A photo is taken anew with the camera.
ui-redo-gauge = Readings are typed in anew at the gauge’s own screen.

## Beside the button that was pressed.
ui-recorded = Recorded.
