//! A ledger that cannot be used is set aside whole, and said to be until a person has read it.

use std::path::Path;

use rusqlite::Connection;
use serde_json::json;
use steady_core::app::Steady;
use steady_core::app::request::Request;
use steady_core::app::response::{Home, Response};
use steady_core::model::aside::{Readable, Why};

use crate::handover_files::small_visit;
use crate::support::{ask, code, open, scratch};

pub fn home(steady: &Steady) -> Home {
    match steady.handle(Request::Home).unwrap() {
        Response::Home(home) => home,
        other => panic!("no home but {other:?}"),
    }
}

/// A data folder with two visits and their photo; the log is written back.
pub fn filled() -> (tempfile::TempDir, Vec<String>) {
    let (folder, steady) = scratch();
    let visits = ["TR 4417", "TR 4418"].map(|plate| small_visit(&steady, plate)).to_vec();
    drop(steady);
    (folder, visits)
}

/// Damages the table that SQLite reads first when a visit is looked at.
pub fn damage(folder: &Path) {
    let path = folder.join("steady.db");
    let database = Connection::open(&path).unwrap();
    let root = "SELECT rootpage FROM sqlite_schema WHERE name = 'setting'";
    let page: u64 = database.query_row(root, [], |row| row.get::<_, i64>(0)).unwrap().try_into().unwrap();
    drop(database);
    let file = std::fs::OpenOptions::new().write(true).open(&path).unwrap();
    std::os::unix::fs::FileExt::write_all_at(&file, &[0x5a; 64], (page - 1) * 4096).unwrap();
}

#[track_caller]
fn check(spoil: impl FnOnce(&Path), why: Why, readable: Readable) {
    let (folder, _) = filled();
    spoil(folder.path());
    let steady = open(folder.path()).unwrap();
    let found = home(&steady);
    assert_eq!((found.visits, found.set_aside.len()), (0, 1));
    let aside = &found.set_aside[0];
    assert_eq!((aside.why, aside.readable, aside.dismissed), (why, Some(readable), false));
    let photos = std::fs::read_dir(Path::new(&aside.folder).join("photos")).unwrap().count();
    assert_eq!(photos, 2, "photo and thumbnail lie with it");
}

#[test]
fn each_reason_is_told_with_what_can_be_read() {
    let all = Readable { visits: 2, lost: 0, photos: 2 };
    let none = Readable::default();
    let write =
        |bytes: &'static [u8]| move |folder: &Path| std::fs::write(folder.join("steady.db"), bytes).unwrap();
    check(damage, Why::Damaged, all);
    check(write(b""), Why::Empty, none);
    check(write(&[7; 8192]), Why::NoDatabase, none);
    check(|folder| std::fs::remove_file(folder.join("steady.db")).unwrap(), Why::Missing, none);
    check(
        |folder| {
            let path = folder.join("steady.db");
            let mut bytes = std::fs::read(&path).unwrap();
            bytes[..100].fill(0);
            std::fs::write(path, bytes).unwrap();
        },
        Why::NoDatabase,
        all,
    );
}

#[test]
fn notice_stays_until_it_is_put_away_and_the_folder_stays_longer() {
    let (folder, visits) = filled();
    damage(folder.path());
    drop(open(folder.path()).unwrap());
    let steady = open(folder.path()).unwrap();
    assert_eq!(code(&steady, json!({ "ask": "export" })), "nothing-to-export-set-aside");
    assert_eq!(code(&steady, json!({ "ask": "take-back", "name": "../elsewhere" })), "unknown-set-aside");
    let name = home(&steady).set_aside[0].name.clone();
    let Response::Salvaged(back) = steady.handle(Request::TakeBack { name: name.clone() }).unwrap() else {
        panic!("nothing taken back")
    };
    assert_eq!((&back.imported.taken, back.lost.len(), back.photos_missing), (&visits, 0, 0));
    assert!(!ask(&steady, json!({ "ask": "look", "visit": visits[0] })).steps.is_empty());
    assert!(!home(&steady).set_aside[0].dismissed, "taking back is not reading the notice");
    assert_eq!(code(&steady, json!({ "ask": "dismiss-set-aside", "name": name })), "ok");
    drop(steady);
    let steady = open(folder.path()).unwrap();
    let found = home(&steady);
    assert_eq!(found.visits, 2);
    assert!(found.set_aside[0].dismissed);
    assert!(Path::new(&found.set_aside[0].folder).join("steady.db").exists());
}

/// Found in use: damage that shows behind the first page alone refused every start, and said that it was set aside.
#[test]
fn damage_that_shows_late_is_set_aside_at_once() {
    let (folder, _) = filled();
    damage(folder.path());
    assert!(!folder.path().join("suspect").exists());
    assert_eq!(home(&open(folder.path()).unwrap()).set_aside.len(), 1);
    assert!(!folder.path().join("suspect").exists());
}

#[test]
fn second_damage_in_the_same_moment_gets_a_folder_of_its_own() {
    let (folder, _) = filled();
    for _ in 0..2 {
        std::fs::write(folder.path().join("steady.db"), [7; 8192]).unwrap();
        let _ = std::fs::remove_file(folder.path().join("steady.db-wal"));
        drop(open(folder.path()).unwrap());
    }
    assert_eq!(home(&open(folder.path()).unwrap()).set_aside.len(), 2);
}

#[test]
fn first_start_sets_nothing_aside() {
    let folder = tempfile::tempdir().unwrap();
    drop(open(folder.path()).unwrap());
    assert!(home(&open(folder.path()).unwrap()).set_aside.is_empty());
    assert!(!folder.path().join("steady.db.part").exists());
}
