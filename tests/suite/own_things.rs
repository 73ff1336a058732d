//! What is a person's own, in a data folder or in a backup, stays: folders and files that Steady did not make, copies that
//! are better than what would take their place, and what a new erasure has nothing to do with.

use std::fs;
use std::path::Path;

use rusqlite::Connection;
use serde_json::json;
use steady_core::model::limits;

use crate::backup_damage::rotted;
use crate::backup_files::{fetched, sent};
use crate::backup_folders::mirror;
use crate::backup_generations::{back_up, files, on_day, restore};
use crate::handover::rigid;
use crate::handover_files::{keep_photo, small_visit};
use crate::set_aside::{filled, home};
use crate::support::{code, open, scratch};

#[test]
fn folders_of_the_names_that_steady_uses_keep_what_a_person_put_there() {
    let folder = tempfile::tempdir().unwrap();
    let own =
        ["incoming/a.txt", "outgoing/b/c.txt", "rehearsals/d.txt", "practice/e.txt", "set-aside-bills/f.txt"];
    for path in own {
        let path = folder.path().join(path);
        fs::create_dir_all(path.parent().unwrap()).unwrap();
        fs::write(path, b"mine").unwrap();
    }
    for _ in 0..2 {
        let steady = open(folder.path()).unwrap();
        assert!(home(&steady).set_aside.is_empty());
        assert_eq!(code(&steady, json!({ "ask": "set-technician", "name": "Kim Demo" })), "ok");
        let intake = json!({ "vehicle": { "layout": "torque-tube" } });
        assert_eq!(code(&steady, json!({ "ask": "start-practice", "intake": intake })), "ok");
        assert!(folder.path().join("practice/steady.db").is_file());
        assert_eq!(code(&steady, json!({ "ask": "end-practice" })), "ok");
        assert!(!folder.path().join("practice/steady.db").exists());
        drop(steady);
        for path in own {
            assert!(folder.path().join(path).is_file(), "{path}");
        }
    }
}

/// It began after the other ledger was set aside, and cannot be in it.
#[test]
fn erasing_a_new_visit_leaves_what_was_set_aside_before_as_it_is() {
    let (folder, _) = filled();
    fs::write(folder.path().join("steady.db"), [7; 8192]).unwrap();
    let steady = open(folder.path()).unwrap();
    let aside = Path::new(&home(&steady).set_aside[0].folder).to_owned();
    let before = files(&aside);
    assert!(before.len() >= 3, "{:?}", before.keys());
    assert_eq!(code(&steady, json!({ "ask": "set-technician", "name": "Kim Demo" })), "ok");
    let visit = rigid(&steady, "OT 5001");
    keep_photo(&steady, &visit, 77);
    steady.erase(&visit, "OT 5001").unwrap();
    let mut after = files(&aside);
    // The note of what can be read is written anew.
    after.insert("about.json".into(), before[Path::new("about.json")].clone());
    let names = |files: &std::collections::BTreeMap<std::path::PathBuf, Vec<u8>>| {
        files.keys().cloned().collect::<Vec<_>>()
    };
    assert_eq!(names(&after), names(&before));
    assert!(after == before);
}

/// As many lines as before, and other ones: what only the last backup holds would go in time.
#[test]
fn backup_that_would_roll_out_lines_is_refused() {
    let (data, steady) = scratch();
    let visit = small_visit(&steady, "OT 5002");
    let backup = tempfile::tempdir().unwrap();
    on_day(data.path(), backup.path(), 0).unwrap();
    let early = tempfile::tempdir().unwrap();
    fs::create_dir(early.path().join("copy")).unwrap();
    mirror(data.path(), &early.path().join("copy"));
    let outcome =
        |by: &str| json!({ "ask": "confirm-outcome", "visit": visit, "causes": ["misfire"], "by": by });
    assert_eq!(code(&steady, outcome("Kim Demo")), "ok");
    on_day(data.path(), backup.path(), 1).unwrap();
    drop(steady);
    fs::write(data.path().join("steady.db"), b"junk").unwrap();
    let steady = open(data.path()).unwrap();
    restore(&steady, &early.path().join("copy"));
    assert_eq!(code(&steady, outcome("Lee Brook")), "ok");
    assert_eq!(on_day(data.path(), backup.path(), 2).unwrap_err().code, "backup-would-lose");
    // The way out: what the backup holds comes back, and then goes on.
    restore(&steady, backup.path());
    assert!(on_day(data.path(), backup.path(), 3).unwrap().new);
}

/// No generation goes while a record here is broken: an earlier one may be the only whole copy.
#[test]
fn no_generation_rolls_out_while_a_record_is_broken() {
    let (data, steady) = scratch();
    let visit = small_visit(&steady, "OT 5003");
    let backup = tempfile::tempdir().unwrap();
    on_day(data.path(), backup.path(), 0).unwrap();
    drop(steady);
    rotted(data.path(), "UPDATE entry SET body = replace(body, 'OT 5003', 'OT 5009') WHERE seq = 1");
    let steady = open(data.path()).unwrap();
    for day in 1..12 {
        small_visit(&steady, &format!("OT 6{day:03}"));
        let made = on_day(data.path(), backup.path(), 0).unwrap();
        assert_eq!((made.visits_broken.as_slice(), made.generations), (&[visit.clone()][..], day + 1));
    }
}

#[test]
fn own_files_of_an_earlier_copy_stay_where_they_lie() {
    let (data, steady) = scratch();
    small_visit(&steady, "OT 5004");
    let backup = tempfile::tempdir().unwrap();
    mirror(data.path(), backup.path());
    for folder in [data.path(), backup.path()] {
        fs::create_dir_all(folder.join("layouts")).unwrap();
        fs::write(folder.join("layouts/both.toml"), b"in both").unwrap();
    }
    fs::write(backup.path().join("layouts/only.toml"), b"in the copy alone").unwrap();
    back_up(&steady, backup.path());
    assert_eq!(fs::read(backup.path().join("layouts/only.toml")).unwrap(), b"in the copy alone");
    assert!(!backup.path().join("layouts/both.toml").exists(), "it is in the generation");
}

/// Names that are no text would read the same, and some that are text no other system takes.
#[test]
fn own_files_whose_names_cannot_be_kept_are_named() {
    use std::os::unix::ffi::OsStrExt as _;
    let (data, steady) = scratch();
    small_visit(&steady, "OT 5005");
    let layouts = data.path().join("layouts");
    fs::create_dir_all(&layouts).unwrap();
    for name in [&b"a\xff.toml"[..], b"a\xfe.toml", b"rear: long.toml", b"right.toml"] {
        fs::write(layouts.join(std::ffi::OsStr::from_bytes(name)), name).unwrap();
    }
    let backup = tempfile::tempdir().unwrap();
    let made = back_up(&steady, backup.path());
    let (ready, file) = fetched(&steady);
    for mut left in [made.own_left_out, ready.own_left_out] {
        left.sort();
        assert_eq!(left, ["layouts/a\u{fffd}.toml", "layouts/a\u{fffd}.toml", "layouts/rear: long.toml"]);
    }
    for from_file in [false, true] {
        let (new_data, new) = scratch();
        let done = if from_file { sent(&new, &file).unwrap() } else { restore(&new, backup.path()) };
        assert_eq!(done.imported.taken.len(), 1);
        assert!(new_data.path().join("layouts/right.toml").is_file());
    }
}

/// What is more than is taken in, or has a name without room for another beside it, keeps no backup from coming back.
#[test]
fn own_files_that_are_too_many_or_of_too_long_a_name_are_named() {
    let (data, steady) = scratch();
    let visit = small_visit(&steady, "OT 5011");
    let knowledge = data.path().join("knowledge");
    fs::create_dir_all(&knowledge).unwrap();
    let long = |bytes: usize| format!("{}.toml", "a".repeat(bytes - ".toml".len()));
    let numbered = (1..=limits::OWN_FILES).map(|at| format!("b{at:03}.toml"));
    for name in numbered.chain([limits::OWN_NAME_BYTES, limits::OWN_NAME_BYTES + 1, 255].map(long)) {
        fs::write(knowledge.join(name), b"# nothing yet").unwrap();
    }
    let backup = tempfile::tempdir().unwrap();
    let made = back_up(&steady, backup.path());
    let (ready, file) = fetched(&steady);
    // In the order of their length.
    let named = [format!("b{}.toml", limits::OWN_FILES), long(limits::OWN_NAME_BYTES + 1), long(255)];
    let named = named.map(|name| format!("knowledge/{name}"));
    for mut left in [made.own_left_out, ready.own_left_out] {
        left.sort_by_key(String::len);
        assert_eq!(left, named);
    }
    for from_file in [false, true] {
        let (new_data, new) = scratch();
        let done = if from_file { sent(&new, &file).unwrap() } else { restore(&new, backup.path()) };
        assert_eq!(done.imported.taken, std::slice::from_ref(&visit));
        let there = new_data.path().join("knowledge");
        assert_eq!(fs::read_dir(&there).unwrap().count(), limits::OWN_FILES);
        assert!(there.join(long(limits::OWN_NAME_BYTES)).is_file());
    }
}

/// One visit whose layout is nowhere keeps no other from coming back.
#[test]
fn visit_without_its_layout_is_set_apart_from_the_rest() {
    let (data, steady) = scratch();
    let layouts = data.path().join("layouts");
    fs::create_dir_all(&layouts).unwrap();
    let shipped = include_str!("../../src-tauri/core/data/layouts/rigid-engine-speed.toml");
    let own = shipped.replacen("id = \"rigid-engine-speed\"", "id = \"own-rear\"", 1);
    assert_ne!(own, shipped);
    fs::write(layouts.join("own-rear.toml"), own).unwrap();
    drop(steady);
    let steady = open(data.path()).unwrap();
    let opened =
        json!({ "ask": "open", "intake": { "vehicle": { "layout": "own-rear", "plate": "OT 5006" } } });
    assert_eq!(code(&steady, opened), "ok");
    let other = small_visit(&steady, "OT 5007");
    fs::remove_file(layouts.join("own-rear.toml")).unwrap();
    let backup = tempfile::tempdir().unwrap();
    back_up(&steady, backup.path());
    let (_new, new) = scratch();
    let done = restore(&new, backup.path());
    assert_eq!(done.imported.taken, std::slice::from_ref(&other));
    assert_eq!(done.imported.set_apart[0].why.code, "unknown-layout");
    let (_new, new) = scratch();
    let done = new.salvage(&data.path().join("steady.db")).unwrap();
    assert_eq!((done.imported.taken, done.imported.set_apart.len()), (vec![other], 1));
}

/// The refusal is about the place, and not about the data.
#[test]
fn place_that_takes_no_files_is_named() {
    let (_data, steady) = scratch();
    small_visit(&steady, "OT 5010");
    let folder = tempfile::tempdir().unwrap();
    fs::write(folder.path().join("file"), b"mine").unwrap();
    for place in ["file", "file/backup"] {
        let failure = steady.backup(&folder.path().join(place), &mut |_| {}).unwrap_err();
        assert_eq!(failure.code, "backup-unwritable", "{place}");
    }
}

#[test]
fn database_of_another_program_is_left_alone() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("steady.db");
    let database = Connection::open(&path).unwrap();
    database.execute_batch("CREATE TABLE letters (body TEXT); INSERT INTO letters VALUES ('mine')").unwrap();
    drop(database);
    let before = fs::read(&path).unwrap();
    assert_eq!(open(folder.path()).err().map(|failure| failure.code).as_deref(), Some("database-foreign"));
    assert_eq!(fs::read(&path).unwrap(), before);
}

/// A pipe under the name of a photo is waited for by nobody.
#[test]
fn pipe_in_the_place_of_a_photo_is_a_missing_photo() {
    let (data, steady) = scratch();
    let visit = small_visit(&steady, "OT 5008");
    keep_photo(&steady, &visit, 60);
    let photo = crate::backup_generations::photo_of(&steady, &visit);
    let path = data.path().join(format!("photos/{photo}.jpg"));
    fs::remove_file(&path).unwrap();
    assert!(std::process::Command::new("mkfifo").arg(&path).status().unwrap().success());
    let backup = tempfile::tempdir().unwrap();
    let made = back_up(&steady, backup.path());
    assert_eq!(made.photos_missing, [photo]);
}

/// A pipe or a device among the workshop's own files is none of them, and no opening waits for it.
#[test]
fn pipe_among_the_own_files_is_passed_over() {
    let (data, steady) = scratch();
    drop(steady);
    for folder in ["layouts", "knowledge"] {
        let folder = data.path().join(folder);
        fs::create_dir_all(&folder).unwrap();
        assert!(std::process::Command::new("mkfifo").arg(folder.join("a.toml")).status().unwrap().success());
        std::os::unix::fs::symlink("/dev/zero", folder.join("b.toml")).unwrap();
    }
    let steady = open(data.path()).unwrap();
    small_visit(&steady, "OT 5012");
}
