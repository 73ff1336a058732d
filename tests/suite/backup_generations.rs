//! Generations of a backup: what each holds, what stays, what is never replaced by something worse, and what
//! of an erased visit goes from all of them.

use std::collections::BTreeMap;
use std::path::{Path, PathBuf};

use serde_json::json;
use steady_core::app::backup::{BackedUp, Restored, back_up as back_up_folder, generations};
use steady_core::app::failure::Failure;
use steady_core::app::{PhotoSize, Steady};
use steady_core::model::time::Moment;

use crate::handover_files::{keep_photo, small_visit};
use crate::support::{MORNING, ask, code, holds, open, scratch};

const DAY: i64 = 86_400_000;

/// Backs up what is open.
#[track_caller]
pub fn back_up(steady: &Steady, folder: &Path) -> BackedUp {
    steady.backup(folder, &mut |_| {}).unwrap()
}

/// Restores the latest generation.
#[track_caller]
pub fn restore(steady: &Steady, folder: &Path) -> Restored {
    steady.restore(folder, None, &mut |_| {}).unwrap()
}

/// Backs up a data folder on a day after the first.
pub fn on_day(data: &Path, folder: &Path, day: i64) -> Result<BackedUp, Failure> {
    back_up_folder(data, folder, Moment(MORNING.0 + day * DAY), &mut |_| {})
}

/// Files of a folder and those in it, by path, with their bytes.
pub fn files(folder: &Path) -> BTreeMap<PathBuf, Vec<u8>> {
    let mut found = BTreeMap::new();
    let mut folders = vec![folder.to_owned()];
    while let Some(next) = folders.pop() {
        for file in std::fs::read_dir(next).unwrap().flatten() {
            if file.metadata().unwrap().is_dir() {
                folders.push(file.path());
            } else if file.metadata().unwrap().is_file() {
                let path = file.path().strip_prefix(folder).unwrap().to_owned();
                found.insert(path, std::fs::read(file.path()).unwrap());
            }
        }
    }
    found
}

pub fn of_kind(folder: &Path, ending: &str) -> Vec<PathBuf> {
    let paths = files(&folder.join("files")).into_keys().map(|path| folder.join("files").join(path));
    paths.filter(|path| path.extension().is_some_and(|found| found == ending)).collect()
}

/// The databases of a backup's generations.
pub fn databases(folder: &Path) -> Vec<PathBuf> {
    of_kind(folder, "db")
}

/// The photo of a visit's first step that has one.
pub fn photo_of(steady: &Steady, visit: &str) -> String {
    let standing = ask(steady, json!({ "ask": "look", "visit": visit }));
    standing.steps.iter().find_map(|step| step.photo.clone()).unwrap().photo.sha256
}

fn visits_of(folder: &Path) -> Vec<u64> {
    generations(folder).unwrap().iter().map(|seen| seen.visits).collect()
}

#[test]
fn each_change_is_a_generation_and_photos_are_shared() {
    let (data, steady) = scratch();
    let first = small_visit(&steady, "TR 0001");
    let backup = tempfile::tempdir().unwrap();
    let made = back_up(&steady, backup.path());
    assert_eq!((made.new, made.visits, made.photos, made.photos_copied), (true, 1, 1, 1));
    let again = on_day(data.path(), backup.path(), 1).unwrap();
    assert_eq!((again.new, again.generations), (false, 1), "nothing new, nothing made");
    assert_eq!(again.generation, made.generation);
    let second = small_visit(&steady, "TR 0002");
    keep_photo(&steady, &second, 90);
    let grown = on_day(data.path(), backup.path(), 2).unwrap();
    assert_eq!((grown.new, grown.visits, grown.photos, grown.photos_copied), (true, 2, 2, 1));
    assert_eq!(visits_of(backup.path()), [1, 2]);
    assert_eq!(of_kind(backup.path(), "jpg").len(), 2, "a photo stands once");
    let (_new, new) = scratch();
    let old = new.restore(backup.path(), Some("2026-11-25"), &mut |_| {}).unwrap();
    assert_eq!(old.imported.taken, std::slice::from_ref(&first));
    assert_eq!(restore(&new, backup.path()).imported.taken, std::slice::from_ref(&second));
    let unknown = new.restore(backup.path(), Some("2020"), &mut |_| {}).unwrap_err();
    assert_eq!(unknown.code, "backup-no-generation");
    assert!(new.photo(&photo_of(&steady, &second), PhotoSize::Full).is_ok());
    assert!(new.photo(&photo_of(&steady, &second), PhotoSize::Thumb).is_ok(), "made anew from its photo");
}

#[test]
fn latest_seven_stay_and_one_a_month() {
    let (data, steady) = scratch();
    let backup = tempfile::tempdir().unwrap();
    // Two in November, then ten in a row in January.
    for (number, day) in (0..).zip([0, 1, 40, 41, 42, 43, 44, 45, 46, 47, 48, 49]) {
        small_visit(&steady, &format!("TR {number:04}"));
        on_day(data.path(), backup.path(), day).unwrap();
    }
    assert_eq!(visits_of(backup.path()), [2, 6, 7, 8, 9, 10, 11, 12]);
    assert_eq!(databases(backup.path()).len(), 8, "the files of the others are gone");
}

/// The nightly backup after a damaged database was set aside: the empty ledger takes nothing's place.
#[test]
fn worse_copy_takes_no_good_ones_place() {
    let (data, steady) = scratch();
    let visit = small_visit(&steady, "TR 0001");
    small_visit(&steady, "TR 0002");
    let backup = tempfile::tempdir().unwrap();
    back_up(&steady, backup.path());
    drop(steady);
    let good = files(backup.path());
    for name in ["steady.db", "steady.db-wal", "steady.db-shm"] {
        let _ = std::fs::remove_file(data.path().join(name));
    }
    let steady = open(data.path()).unwrap();
    let refused = steady.backup(backup.path(), &mut |_| {}).unwrap_err();
    assert_eq!(refused.code, "backup-would-lose");
    assert!(refused.message.ends_with("+ 1)"), "{}", refused.message);
    assert_eq!(files(backup.path()), good);
    // A mistyped data folder.
    let (_other, other) = scratch();
    small_visit(&other, "TR 0003");
    assert_eq!(other.backup(backup.path(), &mut |_| {}).unwrap_err().code, "backup-of-another");
    let nowhere = data.path().join("mistyped");
    assert_eq!(on_day(&nowhere, backup.path(), 1).unwrap_err().code, "no-data");
    assert!(!nowhere.exists());
    assert_eq!(files(backup.path()), good);
    // What to do: restore, then go on.
    assert_eq!(restore(&steady, backup.path()).imported.taken.len(), 2);
    assert_eq!(code(&steady, json!({ "ask": "look", "visit": visit })), "ok");
    assert_eq!(on_day(data.path(), backup.path(), 1).unwrap().visits, 2);
}

/// A visit that lost lines is as much a loss as one that is gone.
#[test]
fn ledger_with_fewer_lines_is_refused() {
    let (data, steady) = scratch();
    let visit = small_visit(&steady, "TR 0001");
    let backup = tempfile::tempdir().unwrap();
    let early = tempfile::tempdir().unwrap();
    back_up(&steady, early.path());
    keep_photo(&steady, &visit, 90);
    back_up(&steady, backup.path());
    drop(steady);
    for name in ["steady.db", "steady.db-wal", "steady.db-shm"] {
        let _ = std::fs::remove_file(data.path().join(name));
    }
    let steady = open(data.path()).unwrap();
    restore(&steady, early.path());
    assert_eq!(steady.backup(backup.path(), &mut |_| {}).unwrap_err().code, "backup-would-lose");
}

#[test]
fn erased_visits_go_from_every_generation() {
    let (data, steady) = scratch();
    let gone = small_visit(&steady, "QZX 90817");
    let backup = tempfile::tempdir().unwrap();
    on_day(data.path(), backup.path(), 0).unwrap();
    let other = small_visit(&steady, "TR 4417");
    keep_photo(&steady, &other, 90);
    keep_photo(&steady, &gone, 200);
    let photos = [photo_of(&steady, &gone), photo_of(&steady, &other)];
    on_day(data.path(), backup.path(), 1).unwrap();
    let is_there = |word: &str| files(backup.path()).values().any(|bytes| holds(bytes, word));
    assert!(is_there("QZX 90817") && is_there("TR 4417"));
    let [gone_photo, other_photo] = photos.map(|sha256| {
        move |folder: &Path| {
            of_kind(folder, "jpg").iter().any(|path| path.to_string_lossy().contains(&sha256))
        }
    });
    assert!(gone_photo(backup.path()) && other_photo(backup.path()));
    steady.erase(&gone, "QZX 90817").unwrap();
    assert_eq!(on_day(data.path(), backup.path(), 2).unwrap().generations, 3);
    assert!(!is_there("QZX 90817") && is_there("TR 4417"));
    assert!(!gone_photo(backup.path()) && other_photo(backup.path()));
    assert_eq!(visits_of(backup.path()), [0, 1, 1]);
    for day in ["2026-11-25", "2026-11-26", "2026-11-27"] {
        let (_new, new) = scratch();
        new.restore(backup.path(), Some(day), &mut |_| {}).unwrap();
        assert_eq!(code(&new, json!({ "ask": "look", "visit": gone })), "unknown-visit");
        assert_eq!(new.erase(&gone, "QZX 90817").unwrap_err().code, "visit-erased", "the tombstone travels");
    }
}

/// A photo that is damaged here stands in the backup as it was, and comes back from there.
#[test]
fn damaged_photo_is_kept_and_healed_from_the_backup() {
    let (data, steady) = scratch();
    let (visit, other) = (small_visit(&steady, "TR 0001"), small_visit(&steady, "TR 0002"));
    keep_photo(&steady, &other, 90);
    let photo = photo_of(&steady, &visit);
    let path = data.path().join(format!("photos/{photo}.jpg"));
    let good = std::fs::read(&path).unwrap();
    let backup = tempfile::tempdir().unwrap();
    back_up(&steady, backup.path());
    let swapped =
        std::fs::read(data.path().join(format!("photos/{}.jpg", photo_of(&steady, &other)))).unwrap();
    small_visit(&steady, "TR 0003");
    std::fs::write(&path, &swapped).unwrap();
    let made = on_day(data.path(), backup.path(), 1).unwrap();
    assert_eq!((made.photos, made.photos_missing.len()), (2, 0));
    let healed = restore(&steady, backup.path());
    assert_eq!((healed.photos_healed, healed.photos_missing), (1, 0));
    assert_eq!(std::fs::read(&path).unwrap(), good);
    // Where no good copy is, it is named and never passed off as one.
    std::fs::write(&path, &swapped).unwrap();
    let fresh = tempfile::tempdir().unwrap();
    let made = on_day(data.path(), fresh.path(), 2).unwrap();
    assert_eq!((made.photos, made.photos_missing), (1, vec![photo]));
}
