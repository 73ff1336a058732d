### Devices and their keys: who wrote what, whom to trust, what a file brings. Refusals as in errors.ftl.

## Refusals.
error-key-unreadable = This device's own key cannot be read
error-key-unreadable-help = It is needed to sign what is recorded. Set this data folder aside, and restore its latest backup into a new one.
error-handover-before-signatures = The handover file was made before entries were signed
error-handover-before-signatures-help = Update Steady on the device that it comes from, and have the file made anew there. Nothing was taken in.
error-handover-unproven = An entry in the handover file is not proven to be its writer's
error-handover-unproven-help = Do not trust this copy. Have the file made anew on the device that wrote the visit. Nothing of it was taken in.
error-handover-unsigned = The handover file holds entries from before there were signatures
error-handover-unsigned-help = Nobody can prove who wrote them, so they come in only from a backup of your own. Nothing of the visit was taken in.
error-handover-own-name = The handover file holds entries in this device's own name that it does not hold
error-handover-own-name-help = This device brings itself nothing. If its data folder was copied or put back to an earlier day, restore its latest backup; if not, do not trust the file. Nothing of the visit was taken in.
error-handover-retired = The handover file holds new entries of a device that was retired here
error-handover-retired-help = A device that was lost may be in other hands. If it was found again, put it back under Settings, Devices, and take the file in once more. Nothing of the visit was taken in.
error-handover-ahead = The handover file holds entries from a date that lies far ahead
error-handover-ahead-help = Compare date and time on both devices. Set the wrong one right, and take the file in again once that date has come. Nothing of the visit was taken in.
error-handover-opened-twice = A visit in the handover file is another one here
error-handover-opened-twice-help = Two devices each say that they opened it, which cannot be. If the one here came with an import that you do not trust, take that import back first. Nothing of the visit was taken in.
error-handover-held-back = A part of the visit was left out
error-handover-held-back-help = Its last entries are of a device that was retired here, or are dated far ahead. Everything else of the visit was taken in, and counts.
error-handover-milder = What a visit says would change by a device that nobody here has confirmed
error-handover-milder-help = Look at its code under Settings, Devices on the device that wrote it, and compare it here first; then take the file in again. Until then the visit stays as it is. Nothing of it was taken in.
error-handover-writers = More devices wrote in the handover file than any workshop has
error-handover-writers-help = Do not trust it, unless somebody you know can say how it was made. Nothing of the visit was taken in.
error-unknown-device = That device is not known here
error-unknown-device-help = Open Settings, Devices again. Nothing was changed.
error-code-differs = The code is not that of the device
error-code-differs-help = Read it once more from the other device's screen, under Settings, Devices. If it still differs, do not trust what came from there. Nothing was confirmed.
error-no-device-in-photo = No code of a device was found in the photo
error-no-device-in-photo-help = Open Settings, Devices on the other device, let it show its QR code, fill half the picture with it, and try again; or compare the digits. Nothing was confirmed.
error-device-name-too-long = The name of the device is too long
error-device-name-too-long-help = Up to 60 characters. Nothing was changed.
error-unknown-import = That import is not known here, or was taken back already
error-unknown-import-help = Open Settings, Devices again. Nothing was changed.

## What is proven, on the finding and the note.
field-signed = Proof
signed-this-device = { $entries ->
    [one] 1 entry signed by this device.
   *[other] { $entries } entries signed by this device.
}
signed-confirmed = { $entries ->
    [one] 1 entry signed by { $device }, a confirmed device.
   *[other] { $entries } entries signed by { $device }, a confirmed device.
}
signed-not-confirmed = { $entries ->
    [one] 1 entry signed by { $device }, a device not yet confirmed.
   *[other] { $entries } entries signed by { $device }, a device not yet confirmed.
}
signed-retired = { $entries ->
    [one] 1 entry signed by { $device }, a device no longer in use.
   *[other] { $entries } entries signed by { $device }, a device no longer in use.
}
signed-before-signatures = { $entries ->
    [one] 1 entry from before there were signatures.
   *[other] { $entries } entries from before there were signatures.
}
unknown-device = { $entries ->
    [one] 1 entry came from a device that is not confirmed here.
   *[other] { $entries } entries came from a device that is not confirmed here.
}
unknown-unsigned = { $entries ->
    [one] 1 entry was written before there were signatures. Nothing proves who wrote it.
   *[other] { $entries } entries were written before there were signatures. Nothing proves who wrote them.
}
note-proven = Each part of this record is signed by a device of ours and stands as it was written.
note-device = A part of this record came from a device that we have not confirmed as ours.
note-unsigned = A part of this record is too old to be signed. We cannot prove who wrote it.

## On the screens.
ui-devices = Devices
ui-devices-about = Every device signs what is written on it. Compare its code once, and what comes from it is known to be its own.
ui-this-device = This device
ui-this-device-about = Show this code to whoever compares it on another device, or read it out.
ui-device-qr = Show it as a QR code
ui-device-qr-of = QR code of this device’s key
ui-device-qr-about = Another device scans it under Settings, Devices, in place of comparing digits.
ui-other-devices = Other devices
ui-other-devices-none = None so far. A device stands here once something was taken in from it.
ui-device-unnamed = Device without a name
ui-device-met = First seen: { $when }
ui-trust-this-device = This device
ui-trust-confirmed = Confirmed
ui-trust-not-confirmed = Not yet confirmed
ui-trust-retired = Retired: nothing new comes in from it
ui-trust-before-signatures = From before there were signatures
ui-from-confirmed = Written on { $device }
ui-from-not-confirmed = From a device not yet confirmed
ui-from-retired = From a device that was retired
ui-from-before-signatures = Written before there were signatures
ui-compare = Compare its code
ui-compare-about = Open Settings, Devices on the other device. Does “This device” show the same code there, digit by digit?
ui-compare-scan = Scan its QR code
ui-compare-scanning = Looking for its code …
ui-compare-same = It is the same
ui-compare-differs = It differs
ui-compare-differs-told = Then this did not come from the device in front of you. Do not trust it. Nothing was confirmed.
ui-device-name = Name of the device
ui-device-name-keep = Keep the name
ui-device-retire = Retire it
ui-device-retire-about = For a device that was lost or replaced. What is here stays; nothing new comes in from it.
ui-device-take-over = This device took its place
ui-device-take-over-about = For a phone of yours that was lost or replaced, and whose backup was taken in here. What it wrote counts as confirmed; nothing new comes in from it.
ui-device-reset = Start over with it
ui-device-reset-about = It counts as not yet confirmed, as when it was first seen. What was decided before stays written down.
ui-decided = What was decided
ui-decided-confirmed = Confirmed by { $by }, { $when }
ui-decided-named = Called “{ $name }” by { $by }, { $when }
ui-decided-retired = Retired by { $by }, { $when }
ui-decided-reset = Started over by { $by }, { $when }
ui-imports = What was taken in
ui-imports-none = No file was taken in so far.
ui-import-brought = { $visits ->
    [one] 1 visit, { $when }
   *[other] { $visits } visits, { $when }
}
ui-import-was-taken-back = Taken back: { $when }
ui-import-back = Take this import back
ui-import-back-about = What it brought is left out again, and its visits read as before. A visit that this device went on with stays as it is.
ui-import-back-now = Take it back
ui-import-gone = { $visits ->
    [one] 1 visit is out of the list again.
   *[other] { $visits } visits are out of the list again.
}
ui-import-restored = { $visits ->
    [one] 1 visit reads as before.
   *[other] { $visits } visits read as before.
}
ui-import-stayed = { $visits ->
    [one] 1 visit stays: this device went on with it.
   *[other] { $visits } visits stay: this device went on with them.
}
ui-preview = Take this in?
ui-preview-looking = Looking at what it would change …
ui-preview-made = Made { $when }, by that device’s clock
ui-preview-brings = { $entries ->
    [one] It brings 1 new entry.
   *[other] It brings { $entries } new entries.
}
ui-preview-mends = { $entries ->
    [one] 1 entry that is damaged here would be whole again.
   *[other] { $entries } entries that are damaged here would be whole again.
}
ui-preview-nothing = Everything in it is here already.
ui-preview-is-new = New here
ui-preview-milder = Its rating would become milder
ui-preview-now = Now
ui-preview-then = Then
ui-preview-apart = { $visits ->
    [one] 1 visit of the file stays outside:
   *[other] { $visits } visits of the file stay outside:
}
ui-preview-take = Take in
ui-preview-leave = Leave it
ui-preview-left = Nothing was taken in.
