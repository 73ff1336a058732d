### Backups: why one was not made or not taken in, and what to do.

error-backup-folder = That folder is no backup of Steady
error-backup-folder-help = Name an empty folder, or one that a backup was made in before. It was left as it is.
error-backup-file = That file is no backup of Steady
error-backup-file-help = Choose a file that Steady saved as a backup; its name begins with steady-backup. Nothing was taken in.
error-backup-of-another = That folder is the backup of another data folder
error-backup-of-another-help = Name the folder that belongs to this data, or an empty one. After a restore into a new data folder that is normal: name an empty folder. If the data folder was mistyped, name the right one. Nothing was changed.
error-backup-inside-data = That folder lies in the data folder itself
error-backup-inside-data-help = Name a folder on another disk, so that a broken disk does not take both.
error-backup-link = A link lies in the backup’s folder where a file or folder has to be
error-backup-link-help = Name another folder, or take the link away. Steady writes nothing through links.
error-backup-unwritable = The backup’s place cannot be written
error-backup-unwritable-help = Name a folder that this user may write to, on a disk that is not write-protected. The data is as it was.
error-backup-busy = Another Steady is at work on that backup
error-backup-busy-help = Wait until it is done, then try again.
error-backup-newer = The backup was made by a newer Steady
error-backup-newer-help = Update Steady first. The backup was left as it is.
error-backup-would-lose = Visits of the last backup are no longer here, and nobody erased them
error-backup-would-lose-help = Was the data folder mistyped, or the database damaged? Take the backup in first, with restore, then back up again. Nothing was changed.
error-backup-damaged = A file of the backup is missing or damaged
error-backup-damaged-help = Try the backup of another time. Nothing was changed. To go on backing up, name an empty folder and keep this one.
error-backup-unread = A file of the backup is there and could not be read
error-backup-unread-help = The disk or its cable may be failing. Try again. If it fails again, back up into an empty folder on another disk and keep this one.
error-backup-forked = This data and the last backup went on differently from the same beginning
error-backup-forked-help = A copy of the data folder is in use too, and wrote this backup. Name an empty folder for the backup of this one, and keep both backups. Then work in one of the two folders only. Nothing was changed.
error-backup-checked = Files of the backup are damaged
error-backup-checked-help = They are named above. Back up again: what is whole in the data folder is written anew. Then check again; what is still damaged is only in this backup, so keep it and go on in an empty folder.
error-read-while-written = The data was written to while it was read
error-read-while-written-help = Close the Steady that uses that folder, then try again. Nothing was taken in.
error-photos-unhealed = All of it was taken in, but photos that are damaged here could not be replaced
error-photos-unhealed-help = Look whether the folder photos in the data folder may be written, then take the same in again.
error-backup-not-verified = What was written does not read back as it was written
error-backup-not-verified-help = The disk may be failing. Back up to another one now. Earlier backups were left as they are.
error-backup-no-generation = The backup holds nothing of that time
error-backup-no-generation-help = List what it holds, and name one of those times or leave the time out.
error-backup-data-damaged = The database of the data folder is damaged, so nothing was backed up
error-backup-data-damaged-help = Start Steady: it sets the database aside, whole. Then take in the last backup, which was left as it is.
error-no-data = There are no visits in that data folder
error-no-data-help = Look whether the data folder was named rightly. Nothing was made.
error-photo-damaged = The photo's file is not the one that was kept
error-photo-damaged-help = It was damaged or changed, and is not shown as evidence. Take in a good copy: restore a backup, or import the visit from a device that has it.

## The screens.
ui-backup = Backup
ui-backup-about = Everything in one file: visits, photos, the workshop’s own settings. Keep it away from this device. It holds owners’ names.
ui-backup-make = Make a backup
ui-backup-making = Reading every photo and packing … { $percent }%
ui-backup-save = Save the backup
ui-backup-holds = { $visits ->
    [one] 1 visit
   *[other] { $visits } visits
}, { $size } MB
ui-backup-photos-missing = { $photos ->
    [one] 1 photo is missing or damaged here and is not in it. Take in an earlier backup first.
   *[other] { $photos } photos are missing or damaged here and are not in it. Take in an earlier backup first.
}
ui-backup-broken = { $visits ->
    [one] The record of 1 visit is broken. It is in the backup as it is: keep an earlier one too.
   *[other] The records of { $visits } visits are broken. They are in the backup as they are: keep an earlier one too.
}
ui-backup-own-left-out = { $files ->
    [one] 1 file of the workshop’s own is too large, has a name that not every system takes, or is one too many, and was left out.
   *[other] { $files } files of the workshop’s own are too large, have names that not every system takes, or are too many, and were left out.
}
ui-restore = Take in a backup
ui-restore-about = Choose a backup file. What it holds and this device does not is taken in, damaged photos are made whole, and nothing is overwritten. A damaged database of Steady may be chosen too: each visit that can still be read whole is taken in.
ui-restore-choose = Choose a backup file
ui-restore-mended = { $entries ->
    [one] 1 damaged entry is whole again.
   *[other] { $entries } damaged entries are whole again.
}
ui-restore-healed = { $photos ->
    [one] 1 damaged photo is whole again.
   *[other] { $photos } damaged photos are whole again.
}
ui-restore-devices = { $devices ->
    [one] What was decided about 1 device came along. Look at it under Settings, Devices; you can start over with it there.
   *[other] What was decided about { $devices } devices came along. Look at them under Settings, Devices; you can start over with each there.
}
ui-restore-differs = { $visits ->
    [one] 1 visit goes on differently here and stayed as it is.
   *[other] { $visits } visits go on differently here and stayed as they are.
}
ui-restore-damaged = { $visits ->
    [one] 1 visit is damaged in the backup and was left there. Try an earlier backup.
   *[other] { $visits } visits are damaged in the backup and were left there. Try an earlier backup.
}
ui-restore-of-another = It is not of this device: whom it trusts and what was erased there did not come along, and no device that is not confirmed here made a rating milder.
ui-restore-files-damaged = { $files ->
    [one] 1 file of the backup is damaged and was left out. All else came.
   *[other] { $files } files of the backup are damaged and were left out. All else came.
}
ui-restore-photos-missing = { $photos ->
    [one] 1 photo is whole neither here nor in the backup.
   *[other] { $photos } photos are whole neither here nor in the backup.
}
ui-photo-damaged = This photo’s file is missing or damaged, so it is not shown and proves nothing. Take in a good copy: from a backup, or from a device that has it.
