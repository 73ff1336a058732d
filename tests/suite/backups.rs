//! The opposite of loss: backups, restoring, and what a damaged database still gives.

use std::os::unix::fs::FileExt;
use std::path::Path;

use rusqlite::Connection;
use serde_json::json;
use steady_core::app::request::Request;
use steady_core::app::response::Response;
use steady_core::app::{PhotoSize, Steady};

use crate::backup_generations::{back_up, databases, restore};
use crate::handover::demo_visit;
use crate::handover_files::small_visit;
use crate::support::{ask, code, holds, open, open_ticking, scratch, unlocked};

fn technician(steady: &Steady) -> String {
    let Response::Home(home) = steady.handle(Request::Home).unwrap() else { panic!("no home") };
    home.technician
}

fn setting(folder: &Path, name: &str) -> Option<String> {
    let database = Connection::open(folder.join("steady.db")).unwrap();
    database.query_row("SELECT value FROM setting WHERE name = ?1", [name], |row| row.get(0)).ok()
}

#[test]
fn backup_restores_everything_but_the_device_itself() {
    let (folder, steady) = scratch();
    let visit = demo_visit(&steady);
    let before = ask(&steady, json!({ "ask": "look", "visit": visit }));
    assert_eq!(code(&steady, json!({ "ask": "export" })), "ok");
    let backup = tempfile::tempdir().unwrap();
    let made = back_up(&steady, backup.path());
    assert_eq!(made.visits, 1);
    drop(steady);
    for name in ["device", "key"] {
        let own = setting(folder.path(), name).unwrap();
        let database = databases(backup.path()).remove(0);
        let kept: u32 = Connection::open(&database)
            .unwrap()
            .query_row("SELECT count(*) FROM setting WHERE name = ?1", [name], |row| row.get(0))
            .unwrap();
        assert_eq!(kept, 0);
        let bytes = std::fs::read(&database).unwrap();
        let left = name == "key" && holds(&bytes, &own);
        assert!(!left, "the key's bytes are in the backup");
    }
    let new = tempfile::tempdir().unwrap();
    let steady = open(new.path()).unwrap();
    let restored = restore(&steady, backup.path());
    assert_eq!((restored.imported.taken.len(), restored.lost.len(), restored.photos_missing), (1, 0, 0));
    let after = ask(&steady, json!({ "ask": "look", "visit": visit }));
    assert_eq!(unlocked(&after), unlocked(&before));
    assert_eq!((after.ledger, after.urgency), (before.ledger, before.urgency));
    assert_eq!(technician(&steady), "Kim Demo");
    assert_eq!(restore(&steady, backup.path()).imported.unchanged, 1);
    drop(steady);
    assert_ne!(setting(new.path(), "device"), setting(folder.path(), "device"));
}

/// A workshop's own layout goes with the backup; without it the visits that need it could not be shown.
#[test]
fn own_layouts_are_restored_first() {
    let folder = tempfile::tempdir().unwrap();
    let layouts = folder.path().join("layouts");
    std::fs::create_dir_all(&layouts).unwrap();
    let own = "id = \"twin-rubber\"\nname = \"Twin rubber\"\nsupport = \"rubber\"\nspeed = \"output\"\nallowed_movement = \"maker-figure\"\n\
               causes = [\"worn-bearing\", \"torn-support-rubber\"]\nbasis = \"common practice, no source\"\n";
    std::fs::write(layouts.join("own.toml"), own).unwrap();
    let steady = open(folder.path()).unwrap();
    steady.handle(Request::SetTechnician { name: "Kim Demo".to_owned() }).unwrap();
    let visit =
        ask(&steady, json!({ "ask": "open", "intake": { "vehicle": { "layout": "twin-rubber" } } })).visit;
    let backup = tempfile::tempdir().unwrap();
    back_up(&steady, backup.path());
    let file = crate::handover::exported(&steady, &[]);
    let (_new, new) = scratch();
    assert_eq!(new.import(&mut &*file).unwrap_err().code, "unknown-layout");
    assert_eq!(restore(&new, backup.path()).imported.taken, std::slice::from_ref(&visit));
    assert_eq!(code(&new, json!({ "ask": "look", "visit": visit })), "ok");
    assert_eq!(code(&new, json!({ "ask": "look-as-sorted", "visit": visit })), "ok");
}

/// Visits mined out of a database bring the knowledge that sorted them along.
#[test]
fn salvaged_visits_can_be_sorted_again_as_they_were() {
    let folder = tempfile::tempdir().unwrap();
    std::fs::create_dir_all(folder.path().join("layouts")).unwrap();
    std::fs::write(folder.path().join("layouts/own.toml"), "not a layout").unwrap();
    let steady = open(folder.path()).unwrap();
    steady.handle(Request::SetTechnician { name: "Kim Demo".to_owned() }).unwrap();
    let visit = small_visit(&steady, "TR 0001");
    let asked = json!({ "ask": "look-as-sorted", "visit": visit });
    let then = ask(&steady, asked.clone()).knowledge;
    assert!(then.contains('+'), "{then}");
    drop(steady);
    let (_new, new) = scratch();
    assert_eq!(new.salvage(&folder.path().join("steady.db")).unwrap().imported.taken, [visit]);
    assert_eq!(ask(&new, asked).knowledge, then);
}

/// Pages in the middle are overwritten: every visit that still verifies is taken out, the others are
/// named, and the damaged file is not touched.
#[test]
fn damaged_database_gives_every_visit_that_still_verifies() {
    let folder = tempfile::tempdir().unwrap();
    let steady = open_ticking(folder.path()).unwrap();
    steady.handle(Request::SetTechnician { name: "Kim Demo".to_owned() }).unwrap();
    let visits: Vec<String> =
        (0..40).map(|number| small_visit(&steady, &format!("TR {number:04}"))).collect();
    drop(steady);
    let path = folder.path().join("steady.db");
    let database = Connection::open(&path).unwrap();
    database.query_row("PRAGMA wal_checkpoint(TRUNCATE)", [], |_| Ok(())).unwrap();
    let pages: i64 = database.query_row("PRAGMA page_count", [], |row| row.get(0)).unwrap();
    let root: i64 = database
        .query_row("SELECT rootpage FROM sqlite_schema WHERE name = 'entry'", [], |row| row.get(0))
        .unwrap();
    drop(database);
    // From the last page backwards: leaves of the ledger and of its indexes, never the roots.
    let file = std::fs::OpenOptions::new().write(true).open(&path).unwrap();
    for page in (pages - 9..pages - 3).filter(|page| *page > root + 8) {
        file.write_all_at(&[0x5a; 4096], u64::try_from(page).unwrap() * 4096).unwrap();
    }
    drop(file);
    let damaged = std::fs::read(&path).unwrap();
    let (_new, new) = scratch();
    let salvaged = new.salvage(&path).unwrap();
    let taken = salvaged.imported.taken.len();
    println!("of {} visits {taken} salvaged, {} named as lost", visits.len(), salvaged.lost.len());
    assert!(taken >= 20 && taken < visits.len(), "{taken} of {}", visits.len());
    assert_eq!(taken + salvaged.lost.len(), visits.len(), "each visit is taken out or named");
    assert_eq!(std::fs::read(&path).unwrap(), damaged);
    for visit in &salvaged.imported.taken {
        let standing = ask(&new, json!({ "ask": "look", "visit": visit }));
        assert_eq!(standing.ledger.broken_at, None);
        let photo = standing.steps.iter().find_map(|step| step.photo.clone()).unwrap();
        assert!(new.photo(&photo.photo.sha256, PhotoSize::Full).is_ok());
    }
}

/// Found by fuzzing: such a file kept the search busy for ten million lines.
#[test]
fn unreadable_ledger_with_a_damaged_counter_is_named_as_lost() {
    let (folder, steady) = scratch();
    let visit = small_visit(&steady, "TR 4417");
    drop(steady);
    let path = folder.path().join("steady.db");
    let database = Connection::open(&path).unwrap();
    database.execute("UPDATE sqlite_sequence SET seq = 9000000000 WHERE name = 'entry'", []).unwrap();
    database.query_row("PRAGMA wal_checkpoint(TRUNCATE)", [], |_| Ok(())).unwrap();
    let root = "SELECT rootpage FROM sqlite_schema WHERE name = 'entry'";
    let page: u64 = database.query_row(root, [], |row| row.get::<_, i64>(0)).unwrap().try_into().unwrap();
    drop(database);
    let (_long, counted) = scratch();
    assert_eq!(counted.salvage(&path).unwrap().imported.taken, std::slice::from_ref(&visit));
    let file = std::fs::OpenOptions::new().write(true).open(&path).unwrap();
    file.write_all_at(&[0x5a; 4096], (page - 1) * 4096).unwrap();
    let (_new, new) = scratch();
    let salvaged = new.salvage(&path).unwrap();
    assert!(salvaged.imported.taken.is_empty());
    assert_eq!(salvaged.lost.len(), 1, "{:?}", salvaged.lost);
}

#[test]
fn set_aside_database_is_mined_where_it_lies() {
    let (folder, steady) = scratch();
    let visit = small_visit(&steady, "TR 4417");
    drop(steady);
    std::fs::write(folder.path().join("suspect"), b"").unwrap();
    let path = folder.path().join("steady.db");
    let database = Connection::open(&path).unwrap();
    database.query_row("PRAGMA wal_checkpoint(TRUNCATE)", [], |_| Ok(())).unwrap();
    let card = "SELECT rootpage FROM sqlite_schema WHERE name = 'card'";
    let page: u64 = database.query_row(card, [], |row| row.get::<_, i64>(0)).unwrap().try_into().unwrap();
    drop(database);
    std::fs::OpenOptions::new()
        .write(true)
        .open(&path)
        .unwrap()
        .write_all_at(&[0x5a; 64], (page - 1) * 4096)
        .unwrap();
    let steady = open(folder.path()).unwrap();
    let Response::Home(home) = steady.handle(Request::Home).unwrap() else { panic!("no home") };
    assert_eq!((home.visits, home.set_aside.len()), (0, 1));
    let aside = Path::new(&home.set_aside[0].folder).join("steady.db");
    assert_eq!(steady.salvage(&aside).unwrap().imported.taken, std::slice::from_ref(&visit));
    let standing = ask(&steady, json!({ "ask": "look", "visit": visit }));
    assert!(standing.steps.iter().any(|step| step.photo.is_some()));
    assert_eq!(steady.salvage(&aside).unwrap().imported.unchanged, 1);
}

#[test]
fn what_is_no_database_is_named() {
    let (folder, steady) = scratch();
    let path = folder.path().join("other.db");
    assert_eq!(steady.salvage(&path).unwrap_err().code, "salvage-missing");
    std::fs::write(&path, b"").unwrap();
    assert_eq!(steady.salvage(&path).unwrap_err().code, "salvage-empty");
    std::fs::write(&path, [7; 8192]).unwrap();
    assert_eq!(steady.salvage(&path).unwrap_err().code, "salvage-no-database");
    let bare = Connection::open(folder.path().join("bare.db")).unwrap();
    bare.execute("CREATE TABLE other (id INTEGER)", []).unwrap();
    drop(bare);
    assert_eq!(steady.salvage(&folder.path().join("bare.db")).unwrap_err().code, "database-foreign");
    let newer = Connection::open(folder.path().join("newer.db")).unwrap();
    newer.pragma_update(None, "user_version", 99).unwrap();
    drop(newer);
    assert_eq!(steady.salvage(&folder.path().join("newer.db")).unwrap_err().code, "newer-data");
}
