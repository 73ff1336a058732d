# Run-out of the shaft, read at the bench after assembly

entry-run-out-read = Run-out of the shaft read
repair-run-out = Run-out of the shaft beside the bearing, one turn: { $size } ({ $by }, { $at }). No limit is known that holds for every shaft.
ui-bench-run-out = Run-out of the shaft beside the bearing, mm
ui-bench-run-out-about = With a dial on the shaft beside the bearing, turn it by hand, one full turn, and note the whole swing of the pointer. No limit is known that holds for every shaft: the figure is kept to compare by.
error-run-out-refused = The run-out is not one that a dial shows
error-run-out-refused-help = Enter the whole swing of the pointer in millimetres, from 0 to 10.
