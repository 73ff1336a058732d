# A VIN read from a photo of its barcode.

ui-vin-read = Read it from the barcode
ui-vin-reading = Reading …
ui-vin-was-read = Read from the barcode. Compare it with the car; the photo is not kept.

error-no-vin-in-photo = No VIN was found in the photo
error-no-vin-in-photo-help = Fill half the picture with the barcode, hold still, keep glare off it, and try again; or type the VIN.
