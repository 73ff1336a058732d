### What was set aside because it could not be used, and what can be read from it. Refusals as in errors.ftl.

## Why a folder was set aside.
set-aside-damaged = The database was damaged and was set aside with its photos. Nothing was deleted.
set-aside-no-database = The file of the database was no database. It was set aside with the photos. Nothing was deleted.
set-aside-empty = The file of the database was empty. It was set aside with the photos. Nothing was deleted.
set-aside-missing = The database was missing. The photos were set aside. Nothing was deleted.

## Refusals.
error-salvage-missing = There is no such database
error-salvage-missing-help = Check the name and that the disk is connected. If the folder was set aside without a database, only its photos are there.
error-salvage-empty = The file of the database is empty
error-salvage-empty-help = Nothing was ever in it, or all of it is gone. Look for another copy: a backup, or another device.
error-salvage-no-database = The file is no database of Steady
error-salvage-no-database-help = Nothing in it reads as a part of one. Name the steady.db of a data folder, of a backup or of a set-aside folder. It was left as it is.
error-unknown-set-aside = There is no such set-aside folder
error-unknown-set-aside-help = It was moved or removed since Steady started. Go back to the first screen and look again.
error-erase-set-aside = Nothing was erased, because a set-aside folder could not be searched for the visit
error-erase-set-aside-help = Mend what is named, or move that folder out of the data folder, then erase again. What lies in a folder that was moved away is not erased.
error-erase-unswept = The visit is erased, but parts of it may still be in files that could not be cleared yet
error-erase-unswept-help = Close whatever else reads the data, such as a backup or an export. Steady then goes on by itself, on the first screen or when it is started again. The visit does not come back.
error-nothing-to-export-set-aside = There is no visit to hand over: the data was set aside
error-nothing-to-export-set-aside-help = Take back what can be read first: on the first screen, or with steady salvage.

## On the screens.
ui-set-aside = Data was set aside
ui-set-aside-readable = { $visits ->
    [0] No visit can be read from it whole.
    [one] 1 visit can be read from it, with { $photos } of its photos.
   *[other] { $visits } visits can be read from it, with { $photos } of their photos.
}
ui-set-aside-lost = { $lost ->
    [one] Of 1 visit something was found and not all.
   *[other] Of { $lost } visits something was found and not all.
}
ui-set-aside-uncounted = What can be read from it could not be counted. It is tried again when Steady starts.
ui-set-aside-folder = Set-aside folder
ui-take-back = Take back what can be read
ui-taking-back = Reading it …
ui-taken-back = { $taken ->
    [0] Everything that can be read was here already.
    [one] 1 visit taken back.
   *[other] { $taken } visits taken back.
}
ui-taken-back-lost = { $lost ->
    [one] 1 visit is no longer whole and stays in the folder.
   *[other] { $lost } visits are no longer whole and stay in the folder.
}
ui-taken-back-photos = { $photos ->
    [one] 1 photo was not found whole.
   *[other] { $photos } photos were not found whole.
}
ui-dismiss-set-aside = I have read this
ui-dismiss-set-aside-about = The notice goes away. The folder stays, and the settings show it.
