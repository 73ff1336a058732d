# Run-out of the shaft, read at the bench after assembly

entry-run-out-read = Run-out of the shaft read
repair-run-out = Run-out of the shaft beside the bearing, one turn: { $size } ({ $by }, { $at }). No limit is known that holds for every shaft.
ui-bench-run-out = Run-out of the shaft beside the bearing, mm
ui-bench-run-out-about = With a dial on the shaft beside the bearing, turn it by hand, one full turn, and note the whole swing of the pointer. No limit is known that holds for every shaft: the figure is kept to compare by.
error-run-out-refused = The run-out is not one that a dial shows
error-run-out-refused-help = Enter the whole swing of the pointer in millimetres, from 0 to 10.

ui-ring-which = Which bearing?
ui-ring-place-one = The only one
ui-ring-place-front = Front
ui-ring-place-rear = Rear
ui-ring-temperature = How warm is it?
ui-ring-cold = Cold
ui-ring-warm = Still warm
ui-ring-clearance = Radial internal clearance left, mm (may stay empty)
repair-ring-front = Front bearing: { $line }
repair-ring-rear = Rear bearing: { $line }
repair-ring-front-open = The front bearing was not turned yet.
repair-ring-rear-open = The rear bearing was not turned yet.
repair-ring-warm = It was still warm: a warm housing is wider and lets go. Turn it again when it is cold.
repair-ring-clearance = Radial internal clearance left: { $clearance }.
repair-ring-clearance-gone = NO INTERNAL CLEARANCE IS LEFT ({ $clearance }): it runs hot and fails early.
error-clearance-refused = No bearing of a shaft has this internal clearance
error-clearance-refused-help = Enter it in millimetres, from 0 to 1, such as 0.012, or leave it empty.
