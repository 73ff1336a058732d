### Handing visits over: files for another device, erasing, backups. Refusals as in errors.ftl.

## Refusals of a handover file.
error-handover-unknown = This is no Steady handover file
error-handover-unknown-help = Choose the .steady file as it was made. One that was unpacked and packed again does not count. Nothing was taken in.
error-handover-cut-short = The handover file is cut short
error-handover-cut-short-help = Copy it again from where it was made, or have it made anew. Nothing was taken in.
error-handover-newer = The handover file was made by a newer Steady
error-handover-newer-help = Install the newer version here, then take the file in. The data here was left untouched.
error-handover-changed = The handover file was changed after it was made
error-handover-changed-help = Do not trust this copy. Have the file made anew on the device it comes from. Nothing was taken in.
error-handover-signature = The handover file's signature does not fit
error-handover-signature-help = Do not trust this copy. Have the file made anew on the device it comes from. Nothing was taken in.
error-handover-part-missing = A part of the handover file is missing
error-handover-part-missing-help = Have the file made anew on the device it comes from. Nothing was taken in.
error-handover-part-extra = The handover file holds something that does not belong there
error-handover-part-extra-help = Do not trust this copy. Have the file made anew on the device it comes from. Nothing was taken in.
error-handover-part-name = The handover file names a part that no visit has
error-handover-part-name-help = Do not trust this file. The number tells which part of its list it is. Nothing was taken in.
error-handover-too-large = The handover file is too large
error-handover-too-large-help = A file holds up to 4 GB, and no text longer than its field takes. Hand over fewer visits at once; nothing was taken in.
error-handover-chain = A record in the handover file is not whole
error-handover-chain-help = Do not trust this copy. Have the file made anew on the device it comes from. Nothing was taken in.
error-handover-forked = A device's record goes on differently here and in the file
error-handover-forked-help = A data folder was copied and used twice under one name. Keep both copies; neither was changed. From now on use only one of the two folders; what the other holds of this visit is read there.
error-handover-photo = A photo in the handover file is not as Steady keeps photos
error-handover-photo-help = Do not trust this file. Nothing was taken in.
error-file-changed = The file changed while you were asked about it
error-file-changed-help = Nothing was taken in. Import it again, and read anew what it would change.
error-handover-unreadable = The file cannot be read
error-handover-unreadable-help = Check that it is there and that you may read it. Nothing was taken in.
error-handover-unwritable = The handover file cannot be written
error-handover-unwritable-help = Name another place that you may write to, or free some space.

## Refusals around it.
error-visit-erased = The visit was erased on this device
error-visit-erased-help = Its owner asked for that, and it stays erased here. Nothing was taken in or out.
error-erase-word-differs = The word to confirm with does not fit
error-erase-word-differs-help = Repeat the visit's plate, or the last block of its id. Nothing was erased.
error-chain-broken = The visit's record is broken
error-chain-broken-help = It cannot be handed over as whole. Keep this device's data as it is, and use a backup from before.
error-nothing-to-export = There is no visit to hand over
error-nothing-to-export-help = Record a visit first, or name another data folder.
error-knowledge-not-kept = This visit was sorted by knowledge that is not kept here
error-knowledge-not-kept-help = Look at it in the data folder that sorted it, or name another version.
error-nothing-to-salvage = Nothing can be read in that database
error-nothing-to-salvage-help = Name the steady.db of a set-aside folder. It was left as it is.

## On the screens.
ui-handover = Hand over
ui-handover-about = A file with this visit's record and photos, for another device with Steady. It is signed, and a changed copy is refused there.
ui-handover-make = Make the file
ui-handover-making = Making it …
ui-handover-save = Save the file
ui-handover-where = Saved files go to the folder for downloads.
ui-handover-share = Send the file
ui-handover-size = { $size } MB
ui-import = Take in visits from another device
ui-import-about = Choose a .steady file, or drop it here. Visits that are here already grow by what is new; nothing is overwritten.
ui-import-choose = Choose a file
ui-import-sending = Reading it … { $percent }%
ui-import-taking = Checking and taking it in …
ui-import-done = { $taken ->
    [0] Everything in the file was here already.
    [one] 1 visit taken in.
   *[other] { $taken } visits taken in.
}
ui-import-unchanged = { $unchanged ->
    [one] 1 visit was here already.
   *[other] { $unchanged } visits were here already.
}
ui-import-erased = { $erased ->
    [one] 1 visit was erased here and stays erased.
   *[other] { $erased } visits were erased here and stay erased.
}
ui-erase-visit = Erase this visit
ui-erase-visit-about = If the owner wants it gone. Record and photos of this visit are removed from this device for good, and a file taken in later does not bring it back. Papers and files that were saved or sent before are not reached.
ui-erase-visit-word = To confirm, type { $word }
ui-erase-visit-now = Erase for good
