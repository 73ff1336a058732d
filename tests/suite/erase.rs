//! Erasing at the owner's wish: nothing of the visit is left in any file, and it does not come back.

use std::path::Path;

use serde_json::json;
use steady_core::app::request::Request;
use steady_core::app::response::Response;
use steady_core::app::{PhotoSize, Steady};

use crate::handover::exported;
use crate::handover_files::{keep_photo, small_visit};
use crate::support::{ask, code, holds, open, scratch};

/// Files of a folder that hold any of these words, in letters as written.
pub fn files_with(folder: &Path, words: &[&str]) -> Vec<String> {
    let mut found = Vec::new();
    for file in std::fs::read_dir(folder).unwrap().flatten() {
        if file.path().is_dir() {
            found.extend(files_with(&file.path(), words));
            continue;
        }
        let bytes = std::fs::read(file.path()).unwrap();
        if words.iter().any(|word| holds(&bytes, word)) {
            found.push(file.path().display().to_string());
        }
    }
    found
}

fn photos(steady: &Steady, visit: &str) -> Vec<String> {
    let standing = ask(steady, json!({ "ask": "look", "visit": visit }));
    standing.steps.iter().filter_map(|step| Some(step.photo.as_ref()?.photo.sha256.clone())).collect()
}

fn visits(steady: &Steady) -> u64 {
    let Response::Home(home) = steady.handle(Request::Home).unwrap() else { panic!("no home") };
    home.visits
}

pub const PLATE: &str = "QZX 90817";
pub const WORDS: [&str; 4] = [PLATE, "qzx90817", "Åsa O'Brien", "åsa o'brien"];

#[test]
fn nothing_of_an_erased_visit_is_left_in_any_file() {
    let (folder, steady) = scratch();
    let visit = small_visit(&steady, PLATE);
    let photo = photos(&steady, &visit).remove(0);
    assert_eq!(code(&steady, json!({ "ask": "export", "visits": [visit] })), "ok");
    drop(steady);
    assert!(!files_with(folder.path(), &WORDS).is_empty(), "the search has to find what is there");
    let steady = open(folder.path()).unwrap();
    assert_eq!(code(&steady, json!({ "ask": "erase", "visit": visit, "word": "qzx-90817" })), "ok");
    // While it is still open, its log too.
    assert_eq!(files_with(folder.path(), &WORDS), Vec::<String>::new());
    assert_eq!(steady.photo(&photo, PhotoSize::Full).unwrap_err().code, "photo-missing");
    assert_eq!(steady.photo(&photo, PhotoSize::Thumb).unwrap_err().code, "photo-missing");
    assert_eq!(visits(&steady), 0);
    assert_eq!(code(&steady, json!({ "ask": "look", "visit": visit })), "unknown-visit");
    drop(steady);
    assert_eq!(files_with(folder.path(), &WORDS), Vec::<String>::new());
}

#[test]
fn erased_visit_does_not_come_back_with_a_file() {
    let ((_a, here), (_b, there)) = (scratch(), scratch());
    let (gone, other) = (small_visit(&here, PLATE), small_visit(&here, "TR 4417"));
    let (alone, both) = (exported(&here, &[&gone]), exported(&here, &[]));
    there.import(&mut &*both).unwrap();
    there.erase(&gone, PLATE).unwrap();
    assert_eq!(there.import(&mut &*alone).unwrap_err().code, "visit-erased");
    let again = there.import(&mut &*both).unwrap();
    assert_eq!((again.erased, again.unchanged, again.taken.len()), (1, 1, 0));
    assert_eq!(code(&there, json!({ "ask": "look", "visit": gone })), "unknown-visit");
    assert_eq!(code(&there, json!({ "ask": "look", "visit": other })), "ok");
    assert_eq!(there.erase(&gone, PLATE).unwrap_err().code, "visit-erased");
    let asked = code(&there, json!({ "ask": "export", "visits": [gone] }));
    assert_eq!(asked, "visit-erased");
}

#[test]
fn photos_that_another_visit_names_stay() {
    let (_folder, steady) = scratch();
    let (gone, other) = (small_visit(&steady, PLATE), small_visit(&steady, "TR 4417"));
    keep_photo(&steady, &gone, 200);
    let [all, shared] = [&gone, &other].map(|visit| photos(&steady, visit));
    assert_ne!(all, shared);
    steady.erase(&gone, PLATE).unwrap();
    assert!(steady.photo(&shared[0], PhotoSize::Full).is_ok());
    assert_eq!(steady.photo(&all[0], PhotoSize::Full).unwrap_err().code, "photo-missing");
}

#[test]
fn erasing_needs_its_word() {
    let (_folder, steady) = scratch();
    let visit = small_visit(&steady, PLATE);
    let unnamed =
        ask(&steady, json!({ "ask": "open", "intake": { "vehicle": { "layout": "torque-tube" } } })).visit;
    let tail = |visit: &str| visit.rsplit('-').next().unwrap().to_owned();
    for (visit, word) in
        [(&visit, ""), (&visit, " - "), (&visit, "QZX 9081"), (&unnamed, ""), (&unnamed, PLATE)]
    {
        let request = json!({ "ask": "erase", "visit": visit, "word": word });
        assert_eq!(code(&steady, request), "erase-word-differs", "{word}");
    }
    assert_eq!(code(&steady, json!({ "ask": "erase", "visit": "nobody", "word": "x" })), "unknown-visit");
    assert_eq!(visits(&steady), 2);
    for visit in [&visit, &unnamed] {
        assert_eq!(code(&steady, json!({ "ask": "erase", "visit": visit, "word": tail(visit) })), "ok");
    }
    assert_eq!(visits(&steady), 0);
}

/// Not even by hand: a line goes with its whole visit, and what was erased stays erased.
#[test]
fn schema_allows_no_other_removal() {
    let (folder, steady) = scratch();
    let (gone, other) = (small_visit(&steady, PLATE), small_visit(&steady, "TR 4417"));
    let lines = exported(&steady, &[&gone]);
    steady.erase(&gone, PLATE).unwrap();
    drop(steady);
    let database = rusqlite::Connection::open(folder.path().join("steady.db")).unwrap();
    let insert = "INSERT INTO entry (visit, device, seq, at, prev, hash, body)
                  VALUES (?1, 'd', 1, 1, printf('%064d', 0), printf('%064d', 1), '{}')";
    for (sql, visit, reason) in [
        ("DELETE FROM entry WHERE visit = ?1", &other, "only grows"),
        ("UPDATE entry SET at = 1 WHERE visit = ?1", &other, "only grows"),
        ("DELETE FROM erased WHERE visit = ?1", &gone, "stays erased"),
        ("UPDATE erased SET visit = 'x' WHERE visit = ?1", &gone, "stays erased"),
        ("UPDATE erased SET swept = 0 WHERE visit = ?1", &gone, "stays erased"),
        (insert, &gone, "was erased"),
    ] {
        let fault = database.execute(sql, [visit]).unwrap_err().to_string();
        assert!(fault.contains(reason), "{sql}: {fault}");
    }
    drop(database);
    assert_eq!(open(folder.path()).unwrap().import(&mut &*lines).unwrap_err().code, "visit-erased");
}

/// Erasing reaches what was set aside as damaged; what can be read of other visits stays there.
#[test]
fn nothing_of_an_erased_visit_is_left_in_what_was_set_aside() {
    let ((_there, writer), (folder, steady)) = (scratch(), scratch());
    let gone = small_visit(&writer, PLATE);
    keep_photo(&writer, &gone, 200);
    // Of another device: it may have been here before what was set aside was.
    steady.import(&mut &exported(&writer, &[&gone])[..]).unwrap();
    let other = small_visit(&steady, "TR 4417");
    let photo = photos(&steady, &gone).remove(0);
    drop(steady);
    let aside = folder.path().join("set-aside-2026-11-25T09-30-00-000Z");
    std::fs::create_dir_all(aside.join("photos")).unwrap();
    for file in std::fs::read_dir(folder.path().join("photos")).unwrap().flatten() {
        std::fs::copy(file.path(), aside.join("photos").join(file.file_name())).unwrap();
    }
    std::fs::copy(folder.path().join("steady.db"), aside.join("steady.db")).unwrap();
    let unreadable = folder.path().join("set-aside-2026-11-24T09-30-00-000Z");
    std::fs::create_dir(&unreadable).unwrap();
    std::fs::write(unreadable.join("steady.db"), [&[7; 4096], PLATE.as_bytes()].concat()).unwrap();
    let steady = open(folder.path()).unwrap();
    steady.erase(&gone, PLATE).unwrap();
    assert_eq!(files_with(folder.path(), &WORDS[..2]), Vec::<String>::new());
    assert!(!aside.join(format!("photos/{photo}.jpg")).exists());
    let (_new, new) = scratch();
    let salvaged = new.salvage(&aside.join("steady.db")).unwrap();
    assert_eq!(salvaged.imported.taken, [other]);
    assert_eq!(new.erase(&gone, PLATE).unwrap_err().code, "visit-erased");
}

/// A process that was killed after the rows were gone and before the files were: the next start goes on.
#[test]
fn erasure_that_was_cut_off_is_finished_at_the_next_start() {
    let (folder, steady) = scratch();
    let visit = small_visit(&steady, PLATE);
    let photo = photos(&steady, &visit).remove(0);
    drop(steady);
    let database = rusqlite::Connection::open(folder.path().join("steady.db")).unwrap();
    let tombstone = "INSERT INTO erased (visit, at, photos) VALUES (?1, 1, ?2)";
    database.execute(tombstone, [&visit, &photo]).unwrap();
    for table in ["entry", "card"] {
        database.execute(&format!("DELETE FROM {table} WHERE visit = ?1"), [&visit]).unwrap();
    }
    drop(database);
    let steady = open(folder.path()).unwrap();
    assert_eq!(steady.photo(&photo, PhotoSize::Full).unwrap_err().code, "photo-missing");
    assert_eq!(files_with(folder.path(), &WORDS), Vec::<String>::new());
    drop(steady);
    let database = rusqlite::Connection::open(folder.path().join("steady.db")).unwrap();
    let row =
        database.query_row("SELECT swept, photos FROM erased", [], |row| Ok((row.get(0)?, row.get(1)?)));
    assert_eq!(row.unwrap(), (1, String::new()));
}

/// Every table that keeps something by visit is emptied of it, those of later migrations too.
#[test]
fn no_table_keeps_anything_of_an_erased_visit() {
    let (folder, steady) = scratch();
    let visit = small_visit(&steady, PLATE);
    steady.erase(&visit, PLATE).unwrap();
    drop(steady);
    let database = rusqlite::Connection::open(folder.path().join("steady.db")).unwrap();
    let mut tables = database
        .prepare("SELECT t.name FROM sqlite_schema t, pragma_table_info(t.name) c WHERE t.type = 'table' AND c.name = 'visit'")
        .unwrap();
    let tables: Vec<String> = tables.query_map([], |row| row.get(0)).unwrap().flatten().collect();
    assert!(tables.len() >= 3, "{tables:?}");
    for table in tables {
        let sql = format!("SELECT count(*) FROM \"{table}\" WHERE visit = ?1");
        let rows: i64 = database.query_row(&sql, [&visit], |row| row.get(0)).unwrap();
        assert_eq!(rows, i64::from(table == "erased"), "{table}");
    }
}
