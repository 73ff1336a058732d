//! Erasing beyond the ledger: what was set aside keeps all but the visit, what no list shows can be erased too, and
//! what stands in the way is said.

use std::path::{Path, PathBuf};
use std::time::{Duration, SystemTime};

use rusqlite::Connection;
use serde_json::json;
use steady_core::app::Steady;
use steady_core::app::request::Request;
use steady_core::app::response::Response;
use tempfile::TempDir;

use crate::backup_generations::photo_of;
use crate::erase::{PLATE, WORDS, files_with};
use crate::handover::exported;
use crate::handover_files::{keep_photo, small_visit};
use crate::support::{code, open, scratch};

const ASIDE: &str = "set-aside-2026-11-25T09-30-00-000Z";

/// A data folder in which the ledger of another was set aside.
struct Folders {
    data: TempDir,
    aside: PathBuf,
}

impl Folders {
    /// `from` is closed.
    fn holding(from: &Path) -> Self {
        let (data, steady) = scratch();
        drop(steady);
        let aside = data.path().join(ASIDE);
        std::fs::create_dir_all(aside.join("photos")).unwrap();
        std::fs::copy(from.join("steady.db"), aside.join("steady.db")).unwrap();
        for photo in std::fs::read_dir(from.join("photos")).unwrap().flatten() {
            std::fs::copy(photo.path(), aside.join("photos").join(photo.file_name())).unwrap();
        }
        Self { data, aside }
    }

    fn open(&self) -> Steady {
        open(self.data.path()).unwrap()
    }

    fn database(&self) -> PathBuf {
        self.aside.join("steady.db")
    }

    fn rows(&self, table: &str) -> i64 {
        let database = Connection::open(self.database()).unwrap();
        database.query_row(&format!("SELECT count(*) FROM {table}"), [], |row| row.get(0)).unwrap()
    }

    fn has_photo(&self, sha256: &str) -> bool {
        self.aside.join(format!("photos/{sha256}.jpg")).exists()
    }
}

/// A closed data folder with a visit that is to go, another, and what belongs to neither.
fn two_visits() -> (TempDir, [String; 2]) {
    let (data, steady) = scratch();
    let visits = [small_visit(&steady, PLATE), small_visit(&steady, "TR 4417")];
    let workshop = json!({ "ask": "set-workshop", "workshop": { "name": "Bay 9" } });
    let _ = code(&steady, workshop);
    drop(steady);
    let database = Connection::open(data.path().join("steady.db")).unwrap();
    let retired = "INSERT INTO trust (device, at, what) VALUES (?1, 1, 'retired')";
    database.execute(retired, ["ab".repeat(32)]).unwrap();
    database.execute("INSERT OR REPLACE INTO workshop (line, name) VALUES (1, 'Bay 9')", []).unwrap();
    (data, visits)
}

/// Damages the page at which a table begins.
fn damage(database: &Path, table: &str) {
    let connection = Connection::open(database).unwrap();
    let root = "SELECT rootpage FROM sqlite_schema WHERE name = ?1";
    let page = connection.query_row(root, [table], |row| row.get::<_, i64>(0)).unwrap();
    drop(connection);
    let file = std::fs::OpenOptions::new().write(true).open(database).unwrap();
    let at = (u64::try_from(page).unwrap() - 1) * 4096;
    std::os::unix::fs::FileExt::write_all_at(&file, &[0x5a; 64], at).unwrap();
}

#[test]
fn what_was_set_aside_keeps_all_but_the_visit() {
    for damaged in [None, Some("card")] {
        let (from, [gone, other]) = two_visits();
        let folders = Folders::holding(from.path());
        let kept = ["trust", "workshop", "knowledge", "setting WHERE name = 'technician'"];
        let before = kept.map(|table| folders.rows(table));
        assert!(before.iter().all(|rows| *rows > 0), "{before:?}");
        if let Some(table) = damaged {
            damage(&folders.database(), table);
        }
        let steady = folders.open();
        steady.erase(&gone, PLATE).unwrap();
        assert_eq!(kept.map(|table| folders.rows(table)), before, "{damaged:?}");
        assert_eq!(files_with(folders.data.path(), &WORDS[..2]), Vec::<String>::new(), "{damaged:?}");
        let (_new, new) = scratch();
        assert_eq!(new.salvage(&folders.database()).unwrap().imported.taken, [other], "{damaged:?}");
    }
}

#[test]
fn set_aside_folder_that_cannot_be_searched_is_named_and_nothing_is_erased() {
    let sql = |sql: &'static str| {
        move |folders: &Folders| Connection::open(folders.database()).unwrap().execute_batch(sql).unwrap()
    };
    let newer = sql("PRAGMA user_version = 99");
    let own = sql("CREATE INDEX mine ON entry (at)");
    let in_the_way = |folders: &Folders| std::fs::write(folders.data.path().join("incoming"), b"x").unwrap();
    type Spoil<'a> = &'a dyn Fn(&Folders);
    let rows: [(&str, Spoil<'_>, bool); 3] =
        [("newer", &newer, true), ("own index", &own, true), ("in the way", &in_the_way, false)];
    for (name, spoil, before_it_opens) in rows {
        let (from, _) = two_visits();
        let folders = Folders::holding(from.path());
        if before_it_opens {
            spoil(&folders);
        }
        let steady = folders.open();
        let visit = small_visit(&steady, "TR 0001");
        if !before_it_opens {
            let _ = std::fs::remove_dir_all(folders.data.path().join("incoming"));
            spoil(&folders);
        }
        let stood = std::fs::read(folders.database()).unwrap();
        let refused = steady.erase(&visit, "TR 0001").unwrap_err();
        assert_eq!(refused.code, "erase-set-aside", "{name}");
        assert!(refused.message.contains(ASIDE), "{name}: {}", refused.message);
        assert_eq!(std::fs::read(folders.database()).unwrap(), stood, "{name}");
        assert_eq!(code(&steady, json!({ "ask": "look", "visit": visit })), "ok", "{name}");
        // Moved away, it is in nobody's way.
        std::fs::rename(&folders.aside, from.path().join("moved")).unwrap();
        let _ = std::fs::remove_file(folders.data.path().join("incoming"));
        steady.erase(&visit, "TR 0001").unwrap();
    }
}

/// A photo of the visit stays where another visit of the set-aside folder names it, though none here does.
#[test]
fn photos_that_others_of_the_set_aside_folder_name_stay() {
    let (from, here) = scratch();
    let (gone, other) = (small_visit(&here, PLATE), small_visit(&here, "TR 4417"));
    let shared = photo_of(&here, &gone);
    assert_eq!(photo_of(&here, &other), shared);
    keep_photo(&here, &gone, 200);
    let own = photo_of(&here, &gone);
    let file = exported(&here, &[&gone]);
    drop(here);
    let folders = Folders::holding(from.path());
    let steady = folders.open();
    steady.import(&mut &*file).unwrap();
    steady.erase(&gone, PLATE).unwrap();
    assert!(folders.has_photo(&shared) && !folders.has_photo(&own));
}

/// Where lines cannot be read, a photo that no other line names may be the visit's, unless it is older than that.
#[test]
fn photos_whose_lines_cannot_be_read_go_along() {
    let (from, steady) = scratch();
    let gone = small_visit(&steady, PLATE);
    let first = photo_of(&steady, &gone);
    keep_photo(&steady, &gone, 90);
    let second = photo_of(&steady, &gone);
    let file = exported(&steady, &[&gone]);
    drop(steady);
    let folders = Folders::holding(from.path());
    std::fs::write(folders.database(), [7; 8192]).unwrap();
    let aged = std::fs::File::options().append(true).open(folders.aside.join(format!("photos/{second}.jpg")));
    let long_ago = SystemTime::now() - Duration::from_secs(365 * 24 * 60 * 60);
    aged.unwrap().set_modified(long_ago).unwrap();
    let stranger = "ab".repeat(32);
    std::fs::write(folders.aside.join(format!("photos/{stranger}.jpg")), b"x").unwrap();
    let steady = folders.open();
    steady.import(&mut &*file).unwrap();
    let lasting = small_visit(&steady, "TR 4417");
    assert_eq!(photo_of(&steady, &lasting), first);
    steady.erase(&gone, PLATE).unwrap();
    assert!(folders.has_photo(&first), "a line here names it");
    assert!(!folders.has_photo(&second), "it was the visit's");
    assert!(!folders.has_photo(&stranger));
    // One that is older than the visit.
    let visit = small_visit(&steady, "TR 0001");
    std::fs::write(folders.aside.join(format!("photos/{stranger}.jpg")), b"x").unwrap();
    let aged =
        std::fs::File::options().append(true).open(folders.aside.join(format!("photos/{stranger}.jpg")));
    aged.unwrap().set_modified(long_ago).unwrap();
    steady.erase(&visit, "TR 0001").unwrap();
    assert!(folders.has_photo(&stranger));
}

#[test]
fn visit_that_only_a_set_aside_folder_holds_can_be_erased() {
    for damaged in [None, Some("card")] {
        let (from, [gone, _]) = two_visits();
        let folders = Folders::holding(from.path());
        if let Some(table) = damaged {
            damage(&folders.database(), table);
        }
        let steady = folders.open();
        assert!(!files_with(folders.data.path(), &WORDS).is_empty(), "{damaged:?}");
        assert_eq!(steady.erase(&gone, "TR 4417").unwrap_err().code, "erase-word-differs", "{damaged:?}");
        steady.erase(&gone, PLATE).unwrap();
        assert_eq!(files_with(folders.data.path(), &WORDS[..2]), Vec::<String>::new(), "{damaged:?}");
        assert_eq!(steady.erase(&gone, PLATE).unwrap_err().code, "visit-erased", "{damaged:?}");
    }
}

#[test]
fn visit_of_an_import_that_was_taken_back_can_be_erased() {
    let ((_a, here), (folder, there)) = (scratch(), scratch());
    let visit = small_visit(&here, PLATE);
    there.import(&mut &*exported(&here, &[&visit])).unwrap();
    let Response::Devices(devices) = there.handle(Request::Devices).unwrap() else { panic!("no devices") };
    let import = devices.imports[0].import;
    assert_eq!(code(&there, json!({ "ask": "take-back-import", "import": import })), "ok");
    assert_eq!(code(&there, json!({ "ask": "look", "visit": visit })), "unknown-visit");
    assert!(!files_with(folder.path(), &WORDS).is_empty(), "its lines are kept");
    assert_eq!(there.erase(&visit, "TR 4417").unwrap_err().code, "erase-word-differs");
    there.erase(&visit, PLATE).unwrap();
    assert_eq!(files_with(folder.path(), &WORDS), Vec::<String>::new());
    assert_eq!(there.import(&mut &*exported(&here, &[&visit])).unwrap_err().code, "visit-erased");
}

/// Another process reads meanwhile: the visit is gone, what is left of it is said to be, and goes once that ends.
#[test]
fn erasure_that_somebody_reads_beside_says_so_and_goes_on() {
    let (folder, steady) = scratch();
    let visit = small_visit(&steady, PLATE);
    let reader = Connection::open(folder.path().join("steady.db")).unwrap();
    reader.execute_batch("BEGIN").unwrap();
    let _: i64 = reader.query_row("SELECT count(*) FROM entry", [], |row| row.get(0)).unwrap();
    assert_eq!(steady.erase(&visit, PLATE).unwrap_err().code, "erase-unswept");
    assert_eq!(code(&steady, json!({ "ask": "look", "visit": visit })), "unknown-visit");
    assert_eq!(code(&steady, json!({ "ask": "home" })), "ok");
    assert!(!files_with(folder.path(), &WORDS).is_empty());
    drop(reader);
    assert_eq!(code(&steady, json!({ "ask": "home" })), "ok");
    assert_eq!(files_with(folder.path(), &WORDS), Vec::<String>::new());
}
