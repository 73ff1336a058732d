//! A backup touches only what is its own: whatever else lies in or beside its folder is as it was.

use std::os::unix::fs::symlink;
use std::path::Path;
use std::sync::Arc;

use steady_core::app::backup::check;
use steady_core::app::handover::Wanted;
use steady_core::app::{ReadCopy, Setup, Steady};

use crate::backup_files::whole;
use crate::backup_generations::{back_up, databases, files, on_day, restore};
use crate::handover::exported;
use crate::handover_files::small_visit;
use crate::support::{MORNING, PlainPress, scratch};

#[track_caller]
fn refused(steady: &Steady, folder: &Path, code: &str) {
    let before = if folder.exists() { files(folder) } else { Default::default() };
    assert_eq!(steady.backup(folder, &mut |_| {}).unwrap_err().code, code, "{}", folder.display());
    if folder.exists() {
        assert_eq!(files(folder), before, "{}", folder.display());
    }
}

/// A bare copy of a data folder, as earlier programs made backups.
pub fn mirror(data: &Path, to: &Path) {
    std::fs::create_dir_all(to.join("photos")).unwrap();
    for photo in std::fs::read_dir(data.join("photos")).unwrap().flatten() {
        std::fs::copy(photo.path(), to.join("photos").join(photo.file_name())).unwrap();
    }
    let database = rusqlite::Connection::open(data.join("steady.db")).unwrap();
    database.execute("VACUUM INTO ?1", [to.join("steady.db").to_string_lossy()]).unwrap();
}

#[test]
fn folder_with_something_else_in_it_is_left_alone() {
    let (data, steady) = scratch();
    small_visit(&steady, "TR 4417");
    let letters = tempfile::tempdir().unwrap();
    std::fs::write(letters.path().join("letters.txt"), b"mine").unwrap();
    refused(&steady, letters.path(), "backup-folder");
    let pictures = tempfile::tempdir().unwrap();
    std::fs::create_dir(pictures.path().join("photos")).unwrap();
    std::fs::write(pictures.path().join("photos/holiday.jpg"), b"mine").unwrap();
    refused(&steady, pictures.path(), "backup-folder");
    let settings = tempfile::tempdir().unwrap();
    std::fs::create_dir(settings.path().join("layouts")).unwrap();
    std::fs::write(settings.path().join("layouts/mine.toml"), b"mine").unwrap();
    refused(&steady, settings.path(), "backup-folder");
    refused(&steady, data.path(), "backup-inside-data");
    refused(&steady, &data.path().join("backup"), "backup-inside-data");
    let (_other, other) = scratch();
    refused(&other, data.path(), "backup-folder");
    let restored = steady.restore(letters.path(), None, &mut |_| {}).unwrap_err();
    assert_eq!(restored.code, "backup-folder");
    let nowhere = steady.restore(&letters.path().join("mistyped"), None, &mut |_| {}).unwrap_err();
    assert_eq!(nowhere.code, "backup-folder");
}

/// What others put into a backup's folder is never removed or written over.
#[test]
fn strangers_files_in_a_backup_stay() {
    let (data, steady) = scratch();
    small_visit(&steady, "QZX 90817");
    let backup = tempfile::tempdir().unwrap();
    let first = back_up(&steady, backup.path());
    assert_eq!(first.visits, 1);
    let hash = "ab".repeat(32);
    let strange = [
        "letters.txt".to_owned(),
        "photos/holiday.jpg".to_owned(),
        "layouts/mine.toml".to_owned(),
        "files/holiday.jpg".to_owned(),
        "files/ab/holiday.jpg".to_owned(),
        // Named like a file of the store, and not what the name says.
        format!("files/ab/{hash}.jpg"),
        format!("files/cd/{hash}.jpg"),
        "unfinished/mine.txt".to_owned(),
        "generations/notes.txt".to_owned(),
    ];
    for path in &strange {
        let path = backup.path().join(path);
        std::fs::create_dir_all(path.parent().unwrap()).unwrap();
        std::fs::write(path, b"mine").unwrap();
    }
    let visits = [small_visit(&steady, "TR 0001"), small_visit(&steady, "TR 0002")];
    steady.erase(&visits[0], "TR 0001").unwrap();
    for day in 1..12 {
        small_visit(&steady, &format!("TR 1{day:03}"));
        on_day(data.path(), backup.path(), day).unwrap();
    }
    for path in &strange {
        assert_eq!(std::fs::read(backup.path().join(path)).unwrap(), b"mine", "{path}");
    }
}

#[test]
fn nothing_is_written_through_a_link() {
    let (_data, steady) = scratch();
    small_visit(&steady, "TR 4417");
    for link in ["files", "generations", "unfinished", "steady-backup.json", "backup-lock"] {
        let (backup, elsewhere) = (tempfile::tempdir().unwrap(), tempfile::tempdir().unwrap());
        back_up(&steady, backup.path());
        let path = backup.path().join(link);
        if path.is_dir() {
            std::fs::remove_dir_all(&path).unwrap()
        } else {
            std::fs::remove_file(&path).unwrap()
        }
        std::fs::write(elsewhere.path().join("mine.jpg"), b"mine").unwrap();
        symlink(elsewhere.path(), &path).unwrap();
        assert_eq!(steady.backup(backup.path(), &mut |_| {}).unwrap_err().code, "backup-link", "{link}");
        assert_eq!(files(elsewhere.path()).len(), 1, "{link}");
    }
    let (backup, elsewhere) = (tempfile::tempdir().unwrap(), tempfile::tempdir().unwrap());
    symlink(elsewhere.path(), backup.path().join("photos")).unwrap();
    std::fs::write(elsewhere.path().join("mine.jpg"), b"mine").unwrap();
    assert_eq!(steady.backup(backup.path(), &mut |_| {}).unwrap_err().code, "backup-link");
    assert_eq!(files(elsewhere.path()).len(), 1);
}

/// What the check leaves for the next backup was written through a link, and took a stranger's file.
#[test]
fn check_that_finds_damage_writes_through_no_link() {
    let (_data, steady) = scratch();
    small_visit(&steady, "TR 4417");
    for link in ["unfinished", "files", "generations", "backup-lock"] {
        let (backup, elsewhere) = (tempfile::tempdir().unwrap(), tempfile::tempdir().unwrap());
        back_up(&steady, backup.path());
        std::fs::write(&databases(backup.path())[0], b"rotten").unwrap();
        let (path, there) = (backup.path().join(link), elsewhere.path().join("theirs"));
        std::fs::rename(&path, &there).unwrap();
        for name in ["proven-to", "list"].iter().filter(|_| there.is_dir()) {
            std::fs::write(there.join(name), b"mine").unwrap();
        }
        symlink(&there, &path).unwrap();
        let before = files(elsewhere.path());
        let refused = check(backup.path(), &mut |_| {}).map(|_| ()).unwrap_err().code;
        // A list of somebody else's is no list.
        assert!(["backup-link", "backup-damaged"].contains(&refused.as_str()), "{link}: {refused}");
        assert_eq!(files(elsewhere.path()), before, "{link}");
    }
}

/// Two at once: what the one lets go, the other would miss.
#[test]
fn backup_and_check_wait_for_nobody_who_is_at_work_there() {
    let (_data, steady) = scratch();
    small_visit(&steady, "TR 4417");
    let backup = tempfile::tempdir().unwrap();
    back_up(&steady, backup.path());
    let lock = std::fs::File::options().write(true).open(backup.path().join("backup-lock")).unwrap();
    lock.lock().unwrap();
    refused(&steady, backup.path(), "backup-busy");
    assert_eq!(check(backup.path(), &mut |_| {}).unwrap_err().code, "backup-busy");
    lock.unlock().unwrap();
    assert!(check(backup.path(), &mut |_| {}).unwrap().damaged.is_empty());
}

/// A bare copy becomes the first generation's folder, once that stands; what is in it and not here is not lost.
#[test]
fn backup_of_an_earlier_program_is_taken_over() {
    let (data, steady) = scratch();
    small_visit(&steady, "TR 0001");
    let backup = tempfile::tempdir().unwrap();
    mirror(data.path(), backup.path());
    small_visit(&steady, "TR 0002");
    let (_new, new) = scratch();
    assert_eq!(restore(&new, backup.path()).imported.taken.len(), 1, "restored as it lies");
    assert_eq!(back_up(&steady, backup.path()).visits, 2);
    assert!(!backup.path().join("steady.db").exists() && !backup.path().join("photos").exists());
    assert_eq!(restore(&new, backup.path()).imported.taken.len(), 1);

    let (other_data, other) = scratch();
    small_visit(&other, "TR 0003");
    let copied = tempfile::tempdir().unwrap();
    mirror(other_data.path(), copied.path());
    refused(&steady, copied.path(), "backup-would-lose");
    std::fs::write(copied.path().join("photos/holiday.jpg"), b"mine").unwrap();
    refused(&other, copied.path(), "backup-folder");
}

#[test]
fn damage_in_a_backup_is_named_and_nothing_is_removed() {
    let (data, steady) = scratch();
    small_visit(&steady, "TR 0001");
    let backup = tempfile::tempdir().unwrap();
    on_day(data.path(), backup.path(), 0).unwrap();
    small_visit(&steady, "TR 0002");
    on_day(data.path(), backup.path(), 1).unwrap();
    // A database that rotted: the other generation is still there.
    let list =
        std::fs::read_dir(backup.path().join("generations")).unwrap().flatten().map(|list| list.path());
    let mut lists: Vec<_> = list.collect();
    lists.sort();
    let newest = std::fs::read_to_string(&lists[1]).unwrap();
    let rotten = databases(backup.path())
        .into_iter()
        .find(|path| newest.contains(path.file_stem().unwrap().to_str().unwrap()));
    let rotten = rotten.unwrap();
    let mut bytes = std::fs::read(&rotten).unwrap();
    bytes[9_000] ^= 1;
    std::fs::write(&rotten, bytes).unwrap();
    let (_new, new) = scratch();
    assert_eq!(new.restore(backup.path(), None, &mut |_| {}).unwrap_err().code, "backup-damaged");
    assert_eq!(new.restore(backup.path(), Some("2026-11-25"), &mut |_| {}).unwrap().imported.taken.len(), 1);
    // A list that rotted.
    let mut bytes = std::fs::read(&lists[0]).unwrap();
    bytes[150] ^= 1;
    std::fs::write(&lists[0], bytes).unwrap();
    let mut all = Vec::new();
    for list in &lists[1..] {
        all.push(std::fs::read(list).unwrap());
        std::fs::write(list, b"rotten").unwrap();
    }
    small_visit(&steady, "TR 0003");
    refused(&steady, backup.path(), "backup-damaged");
    for (list, text) in lists[1..].iter().zip(all) {
        std::fs::write(list, text).unwrap();
    }
    // A backup of a later program.
    let text = std::fs::read_to_string(backup.path().join("steady-backup.json")).unwrap();
    let later = text.replace("\"steady_backup\":1", "\"steady_backup\":2");
    std::fs::write(backup.path().join("steady-backup.json"), later).unwrap();
    refused(&steady, backup.path(), "backup-newer");
}

/// A backup, an export and a sorting read beside whoever works on the folder, and change no file of it.
#[test]
fn data_folder_is_read_while_it_is_open() {
    let (data, steady) = scratch();
    let visit = small_visit(&steady, "TR 0001");
    let press = Arc::new(PlainPress);
    let setup = Setup { data_dir: data.path().to_owned(), press, clock: || MORNING };
    let before = whole(data.path());
    let copy = ReadCopy::open(setup).unwrap();
    let mut file = Vec::new();
    let wanted = Wanted { visits: &[], papers: false, locale: None, sheet: None };
    assert_eq!(copy.export(wanted, &mut file).unwrap().visits, 1);
    assert!(copy.as_sorted(visit, None).is_ok());
    assert_eq!(whole(data.path()), before);
    let (_there, there) = scratch();
    there.import(&mut &*file).unwrap();
    small_visit(&steady, "TR 0002");
    let later = exported(&steady, &[]);
    assert_eq!(there.import(&mut &*later).unwrap().taken.len(), 1, "the same device's key signed both");
    let backup = tempfile::tempdir().unwrap();
    assert_eq!(on_day(data.path(), backup.path(), 0).unwrap().visits, 2);
    let nowhere = data.path().join("mistyped");
    let setup = Setup { data_dir: nowhere.clone(), press: Arc::new(PlainPress), clock: || MORNING };
    assert_eq!(ReadCopy::open(setup).err().unwrap().code, "no-data");
    assert!(!nowhere.exists());
}
