//! Damage in a backup: what is whole here is written anew, one damaged file keeps nobody out of the rest, what only the
//! backup holds is not let go, and all of it can be read back.

use std::os::unix::fs::{PermissionsExt as _, symlink};
use std::path::{Path, PathBuf};

use rusqlite::Connection;
use serde_json::json;
use steady_core::app::backup::{check, generations, listed};
use steady_core::app::handover::{Wanted, verify};
use steady_core::app::request::Request;
use steady_core::app::response::Response;
use steady_core::app::{PhotoSize, Steady};
use steady_core::model::limits;
use steady_core::model::workshop::Workshop;

use crate::backup_files::{fetched, sent};
use crate::backup_folders::mirror;
use crate::backup_generations::{back_up, databases, files, of_kind, on_day, photo_of, restore};
use crate::handover::exported;
use crate::handover_files::{keep_photo, small_visit};
use crate::proven::{PROVEN, says_of_its_proof};
use crate::set_aside::home;
use crate::support::{ask, code, holds, open, scratch};

/// Changes one line of a ledger behind its triggers, as rot does.
#[track_caller]
pub fn rotted(data: &Path, change: &str) {
    let database = Connection::open(data.join("steady.db")).unwrap();
    let mut found = database.prepare("SELECT name, sql FROM sqlite_schema WHERE type = 'trigger'").unwrap();
    let triggers: Vec<(String, String)> =
        found.query_map([], |row| Ok((row.get(0)?, row.get(1)?))).unwrap().flatten().collect();
    for (name, _) in &triggers {
        database.execute_batch(&format!("DROP TRIGGER {name}")).unwrap();
    }
    database.pragma_update(None, "ignore_check_constraints", true).unwrap();
    assert_eq!(database.execute(change, []).unwrap(), 1);
    for (_, sql) in &triggers {
        database.execute_batch(sql).unwrap();
    }
}

/// Changes one bit in the middle.
fn rot(path: &Path) {
    let mut bytes = std::fs::read(path).unwrap();
    let middle = bytes.len() / 2;
    bytes[middle] ^= 1;
    std::fs::write(path, bytes).unwrap();
}

fn lists(backup: &Path) -> Vec<PathBuf> {
    let found = std::fs::read_dir(backup.join("generations")).unwrap().flatten().map(|list| list.path());
    let mut lists: Vec<PathBuf> = found.collect();
    lists.sort();
    lists
}

#[test]
fn what_rots_in_a_backup_is_written_anew_from_what_is_whole_here() {
    let (data, steady) = scratch();
    let visit = small_visit(&steady, "TR 0001");
    let backup = tempfile::tempdir().unwrap();
    back_up(&steady, backup.path());
    let good = files(&backup.path().join("files"));
    let found = check(backup.path(), &mut |_| {}).unwrap();
    assert_eq!((found.generations, found.files, found.damaged.len()), (1, 2, 0));
    for kind in ["db", "jpg"] {
        rot(&of_kind(backup.path(), kind)[0]);
        assert_eq!(check(backup.path(), &mut |_| {}).unwrap().damaged.len(), 1, "{kind}");
        let made = on_day(data.path(), backup.path(), 1).unwrap();
        assert_eq!((made.new, made.renewed, made.photos_missing.len()), (false, 1, 0), "{kind}");
        assert_eq!(files(&backup.path().join("files")), good, "{kind}");
        assert!(check(backup.path(), &mut |_| {}).unwrap().damaged.is_empty(), "{kind}");
    }
    // Where neither is whole, it is named, and not counted as there the time after.
    let photo = photo_of(&steady, &visit);
    rot(&of_kind(backup.path(), "jpg")[0]);
    rot(&data.path().join(format!("photos/{photo}.jpg")));
    for day in [2, 3] {
        let made = on_day(data.path(), backup.path(), day).unwrap();
        assert_eq!((made.photos, &made.photos_missing), (0, &vec![photo.clone()]), "{day}");
    }
}

#[test]
fn one_damaged_file_keeps_nobody_out_of_the_rest() {
    let (data, steady) = scratch();
    let layouts = data.path().join("layouts");
    std::fs::create_dir_all(&layouts).unwrap();
    std::fs::write(layouts.join("own.toml"), "not a layout").unwrap();
    std::fs::File::create(layouts.join("vast.toml")).unwrap().set_len(limits::OWN_FILE_BYTES + 1).unwrap();
    small_visit(&steady, "TR 0001");
    let backup = tempfile::tempdir().unwrap();
    assert_eq!(back_up(&steady, backup.path()).own_left_out, ["layouts/vast.toml"]);
    let (ready, file) = fetched(&steady);
    assert_eq!(ready.own_left_out, ["layouts/vast.toml"]);
    let (_there, there) = scratch();
    assert_eq!(sent(&there, &file).unwrap().imported.taken.len(), 1);
    small_visit(&steady, "TR 0002");
    on_day(data.path(), backup.path(), 1).unwrap();
    // What another system puts beside each file.
    let newest = lists(backup.path())[1].file_name().unwrap().to_str().unwrap().to_owned();
    std::fs::write(backup.path().join(format!("generations/._{newest}")), [0, 5, 22, 7]).unwrap();
    assert_eq!(generations(backup.path()).unwrap().len(), 2);
    // An own file.
    rot(&of_kind(backup.path(), "toml")[0]);
    let (new_data, new) = scratch();
    let restored = restore(&new, backup.path());
    assert_eq!(restored.imported.taken.len(), 2);
    assert_eq!(restored.files_damaged, ["layouts/own.toml"]);
    assert!(!new_data.path().join("layouts/own.toml").exists());
    // The list of the first: the second stands, and nothing that the first may need goes.
    let first = lists(backup.path()).into_iter().find(|path| path.to_str().unwrap().contains("/000001_"));
    let first = first.unwrap();
    rot(&first);
    let name = first.file_name().unwrap().to_str().unwrap();
    assert_eq!(listed(backup.path()).unwrap().1, [name]);
    assert_eq!(restore(&new, backup.path()).files_damaged, ["layouts/own.toml", name]);
    small_visit(&steady, "TR 0003");
    let made = on_day(data.path(), backup.path(), 2).unwrap();
    assert_eq!((made.visits, made.generations, made.renewed), (3, 2, 1));
    assert_eq!(made.lists_damaged, [name]);
    assert_eq!(databases(backup.path()).len(), 3, "the first one's database stays");
    assert!(first.exists());
}

/// Of a generation whose list is damaged, the database goes if it holds a visit that was erased.
#[test]
fn erased_visit_goes_from_a_generation_whose_list_is_damaged() {
    let (data, steady) = scratch();
    let gone = small_visit(&steady, "QZX 90817");
    let backup = tempfile::tempdir().unwrap();
    on_day(data.path(), backup.path(), 0).unwrap();
    small_visit(&steady, "TR 0002");
    on_day(data.path(), backup.path(), 1).unwrap();
    rot(&lists(backup.path())[0]);
    steady.erase(&gone, "QZX 90817").unwrap();
    on_day(data.path(), backup.path(), 2).unwrap();
    assert!(!files(backup.path()).values().any(|bytes| holds(bytes, "QZX 90817")));
    assert_eq!(databases(backup.path()).len(), 2);
}

/// A generation whose database cannot be copied just now stays, and the next backup goes on.
#[test]
fn generation_that_an_erasure_cannot_reach_now_stays() {
    let (data, steady) = scratch();
    let gone = small_visit(&steady, "QZX 90817");
    let backup = tempfile::tempdir().unwrap();
    on_day(data.path(), backup.path(), 0).unwrap();
    small_visit(&steady, "TR 0002");
    on_day(data.path(), backup.path(), 1).unwrap();
    steady.erase(&gone, "QZX 90817").unwrap();
    let in_the_way = backup.path().join("unfinished/erasing.db");
    std::fs::create_dir(&in_the_way).unwrap();
    assert!(on_day(data.path(), backup.path(), 2).is_err());
    assert_eq!(generations(backup.path()).unwrap().len(), 3);
    std::fs::remove_dir(in_the_way).unwrap();
    assert_eq!(on_day(data.path(), backup.path(), 2).unwrap().generations, 3);
    let visits: Vec<u64> = generations(backup.path()).unwrap().iter().map(|seen| seen.visits).collect();
    assert_eq!(visits, [0, 1, 1]);
}

#[test]
fn photos_that_only_an_earlier_bare_copy_holds_come_along() {
    let (data, steady) = scratch();
    let visit = small_visit(&steady, "TR 0001");
    let photo = photo_of(&steady, &visit);
    drop(steady);
    let backup = tempfile::tempdir().unwrap();
    mirror(data.path(), backup.path());
    std::fs::copy(data.path().join("steady.db"), backup.path().join("steady.db")).unwrap();
    std::fs::remove_file(data.path().join(format!("photos/{photo}.jpg"))).unwrap();
    let made = on_day(data.path(), backup.path(), 1).unwrap();
    assert_eq!((made.photos, made.photos_missing.len(), made.photos_damaged_here.len()), (1, 0, 1));
    let left: Vec<_> =
        std::fs::read_dir(backup.path()).unwrap().flatten().map(|file| file.file_name()).collect();
    assert!(!left.iter().any(|name| name.to_string_lossy().starts_with("steady.db")), "{left:?}");
    let steady = open(data.path()).unwrap();
    restore(&steady, backup.path());
    assert!(steady.photo(&photo, PhotoSize::Full).is_ok());
}

/// The last lines of a folder that was copied while it was open stand in its log alone.
#[test]
fn bare_copy_with_a_log_is_restored_whole() {
    let (data, steady) = scratch();
    let visits = ["TR 0001", "TR 0002"].map(|plate| small_visit(&steady, plate));
    let copied = tempfile::tempdir().unwrap();
    for name in ["steady.db", "steady.db-wal"] {
        std::fs::copy(data.path().join(name), copied.path().join(name)).unwrap();
    }
    let (_new, new) = scratch();
    assert_eq!(restore(&new, copied.path()).imported.taken, visits);
}

/// Two folders that went on from one copy: the one does not let the other's backup go.
#[test]
fn copied_data_folder_takes_no_backup_over() {
    let (data, steady) = scratch();
    let visit = small_visit(&steady, "TR 0001");
    let backup = tempfile::tempdir().unwrap();
    back_up(&steady, backup.path());
    drop(steady);
    let clone = tempfile::tempdir().unwrap();
    for (path, bytes) in files(data.path()) {
        let path = clone.path().join(path);
        std::fs::create_dir_all(path.parent().unwrap()).unwrap();
        std::fs::write(path, bytes).unwrap();
    }
    let (steady, other) = (open(data.path()).unwrap(), open(clone.path()).unwrap());
    keep_photo(&steady, &visit, 90);
    keep_photo(&other, &visit, 91);
    assert_eq!(on_day(data.path(), backup.path(), 1).unwrap().generations, 2);
    let stood = files(backup.path());
    let refused = on_day(clone.path(), backup.path(), 2).unwrap_err();
    assert_eq!(refused.code, "backup-forked");
    assert!(refused.message.contains(&visit), "{}", refused.message);
    assert_eq!(files(backup.path()), stood);
    let own = tempfile::tempdir().unwrap();
    assert_eq!(on_day(clone.path(), own.path(), 2).unwrap().visits, 1, "what to do");
    assert_eq!(on_day(data.path(), backup.path(), 3).unwrap().visits, 1);
}

/// A line's signature that rotted where later lines of its device prove what it says: the record is whole to whoever asks.
#[test]
fn record_whose_newest_signature_is_whole_is_proven_to_whoever_asks() {
    let (data, steady) = scratch();
    let visit = small_visit(&steady, "TR 0001");
    keep_photo(&steady, &visit, 90);
    drop(steady);
    rotted(data.path(), "UPDATE entry SET signature = lower(hex(zeroblob(64))) WHERE seq = 2");
    let steady = open(data.path()).unwrap();
    says_of_its_proof(&steady, &visit, Some("signed by this device."), &[PROVEN]);
    let file = exported(&steady, &[&visit]);
    assert_eq!(verify(&mut &*file).unwrap().visits, std::slice::from_ref(&visit));
    let (_there, there) = scratch();
    assert_eq!(there.import(&mut &*file).unwrap().taken, std::slice::from_ref(&visit));
    let backup = tempfile::tempdir().unwrap();
    assert!(on_day(data.path(), backup.path(), 1).unwrap().visits_broken.is_empty());
    assert!(fetched(&steady).0.visits_broken.is_empty());
    let (_new, new) = scratch();
    let restored = restore(&new, backup.path());
    assert_eq!((restored.imported.taken, restored.visits_damaged.len()), (vec![visit.clone()], 0));
    let ledger = |steady: &Steady| ask(steady, json!({ "ask": "look", "visit": visit })).ledger;
    assert_eq!([ledger(&there), ledger(&new)], [ledger(&steady), ledger(&steady)]);
    assert_eq!(ledger(&steady).broken_at, None);
}

/// A line lost, changed, or no longer proven by any behind it, told wherever the visit is asked for.
#[test]
fn broken_record_is_named_at_each_backup_and_goes_nowhere_as_whole() {
    for change in [
        "DELETE FROM entry WHERE seq = 2",
        "UPDATE entry SET body = replace(body, 'TR 0001', 'TR 0009') WHERE seq = 1",
        "UPDATE entry SET signature = lower(hex(zeroblob(64))) WHERE seq = (SELECT max(seq) FROM entry)",
        "UPDATE entry SET signature = 'zz' WHERE seq = 2",
        "UPDATE entry SET signature = upper(signature) WHERE seq = 2",
        "UPDATE entry SET signature = substr(signature, 1, 50) || char(0) || substr(signature, 52) WHERE seq = 2",
        // A byte that is no text.
        "UPDATE entry SET signature = CAST(CAST(signature AS BLOB) || x'ff' AS TEXT) WHERE seq = 2",
        "UPDATE entry SET body = CAST(CAST(body AS BLOB) || x'ff' AS TEXT) WHERE seq = 2",
        "UPDATE entry SET prev = CAST(CAST(prev AS BLOB) || x'ff' AS TEXT) WHERE seq = 2",
    ] {
        let (data, steady) = scratch();
        let visit = small_visit(&steady, "TR 0001");
        keep_photo(&steady, &visit, 90);
        drop(steady);
        rotted(data.path(), change);
        let steady = open(data.path()).unwrap();
        let other = small_visit(&steady, "TR 0002");
        let broken = std::slice::from_ref(&visit);
        assert!(
            ask(&steady, json!({ "ask": "look", "visit": visit })).ledger.broken_at.is_some(),
            "{change}"
        );
        says_of_its_proof(&steady, &visit, None, &[]);
        assert_eq!(code(&steady, json!({ "ask": "export", "visits": [visit] })), "chain-broken", "{change}");
        let all = Wanted { visits: &[], papers: false, locale: None, sheet: None };
        assert_eq!(steady.export(all, &mut Vec::new()).unwrap().left_out, broken, "{change}");
        let backup = tempfile::tempdir().unwrap();
        for day in [1, 2] {
            let made = on_day(data.path(), backup.path(), day).unwrap();
            assert_eq!(made.visits_broken, broken, "{change} on day {day}");
        }
        assert_eq!(fetched(&steady).0.visits_broken, broken, "{change}");
        let (_new, new) = scratch();
        let restored = restore(&new, backup.path());
        assert_eq!(
            (restored.imported.taken, restored.visits_damaged),
            (vec![other], broken.to_vec()),
            "{change}"
        );
    }
}

/// What rots in a line's id is two records' fault and nobody else's: the line's, whose visit is none any more, and that of
/// the visit it was of.
#[test]
fn line_whose_visit_cannot_be_read_keeps_nobody_from_the_others() {
    for column in ["visit", "device", "hash"] {
        let (data, steady) = scratch();
        let visit = small_visit(&steady, "TR 0001");
        drop(steady);
        rotted(
            data.path(),
            &format!(
                "UPDATE entry SET {column} = CAST(CAST({column} AS BLOB) || x'ff' AS TEXT) WHERE seq = 1"
            ),
        );
        let steady = open(data.path()).unwrap();
        let other = small_visit(&steady, "TR 0002");
        let all = Wanted { visits: &[], papers: false, locale: None, sheet: None };
        assert!(steady.export(all, &mut Vec::new()).unwrap().left_out.contains(&visit), "{column}");
        let backup = tempfile::tempdir().unwrap();
        assert!(back_up(&steady, backup.path()).visits_broken.contains(&visit), "{column}");
        assert!(fetched(&steady).0.visits_broken.contains(&visit), "{column}");
        let (_new, new) = scratch();
        let restored = restore(&new, backup.path());
        assert_eq!(restored.imported.taken, std::slice::from_ref(&other), "{column}");
        assert!(restored.visits_damaged.contains(&visit), "{column}");
        steady.erase(&other, "TR 0002").unwrap();
    }
}

/// A backup's folder that a stranger prepared leads to nothing of the data folder.
#[test]
fn nothing_behind_a_link_is_removed_or_written_over() {
    let (data, steady) = scratch();
    let visit = small_visit(&steady, "TR 0001");
    let photo = photo_of(&steady, &visit);
    let backup = tempfile::tempdir().unwrap();
    back_up(&steady, backup.path());
    let marker = backup.path().join("steady-backup.json");
    let mirrored = |names: &str| {
        let text = std::fs::read_to_string(&marker).unwrap();
        let text = text.strip_suffix('}').unwrap();
        std::fs::write(&marker, format!("{text},\"mirror\":[{names}]}}")).unwrap();
    };
    mirrored(&format!("\"photos/{photo}.jpg\""));
    symlink(data.path().join("photos"), backup.path().join("photos")).unwrap();
    assert_eq!(on_day(data.path(), backup.path(), 1).unwrap_err().code, "backup-link");
    assert!(steady.photo(&photo, PhotoSize::Full).is_ok());
    std::fs::remove_file(backup.path().join("photos")).unwrap();
    let victim = data.path().join("victim.txt");
    std::fs::write(&victim, b"precious").unwrap();
    symlink(&victim, backup.path().join("steady-backup.json.part")).unwrap();
    on_day(data.path(), backup.path(), 1).unwrap();
    assert!(!std::fs::read_to_string(&marker).unwrap().contains("mirror"), "the marker was written anew");
    assert_eq!(std::fs::read(&victim).unwrap(), b"precious");
}

#[test]
fn no_other_account_opens_what_a_backup_holds() {
    let (_data, steady) = scratch();
    small_visit(&steady, "TR 0001");
    let backup = tempfile::tempdir().unwrap();
    let lock = backup.path().join("backup-lock");
    back_up(&steady, backup.path());
    std::fs::set_permissions(&lock, std::fs::Permissions::from_mode(0o666)).unwrap();
    back_up(&steady, backup.path());
    for path in files(backup.path()).into_keys() {
        let mode = std::fs::metadata(backup.path().join(&path)).unwrap().permissions().mode() & 0o777;
        assert_eq!(mode, 0o600, "{}", path.display());
    }
}

/// A stranger's folder brings no letterhead and no name that nobody could have entered here; its visits come in.
#[test]
fn particulars_beyond_their_bounds_stay_in_the_backup() {
    let rows = [
        ("UPDATE setting SET value = ?1 WHERE name = 'technician'", "x".repeat(300), true),
        ("UPDATE setting SET value = ?1 WHERE name = 'technician'", "\u{1b}[2J".to_owned(), true),
        ("INSERT INTO workshop (line, name) VALUES (1, ?1)", "x".repeat(101), false),
        ("INSERT INTO workshop (line, address) VALUES (1, ?1)", "x\n".repeat(5), false),
    ];
    for (sql, value, is_name) in rows {
        let (data, steady) = scratch();
        small_visit(&steady, "TR 4417");
        drop(steady);
        let database = Connection::open(data.path().join("steady.db")).unwrap();
        assert_eq!(database.execute(sql, [&value]).unwrap(), 1);
        drop(database);
        let backup = tempfile::tempdir().unwrap();
        on_day(data.path(), backup.path(), 0).unwrap();
        for salvaged in [false, true] {
            let new = tempfile::tempdir().unwrap();
            let steady = open(new.path()).unwrap();
            if salvaged {
                steady.salvage(&data.path().join("steady.db")).unwrap();
            } else {
                restore(&steady, backup.path());
            }
            let found = home(&steady);
            assert_eq!(found.visits, 1, "{sql}");
            let Response::Workshop(workshop) = steady.handle(Request::Workshop).unwrap() else {
                panic!("no particulars")
            };
            assert_eq!(*workshop, Workshop::default(), "{sql}");
            assert!(!is_name || found.technician.is_empty(), "{sql}");
        }
    }
}

/// What a link leads to is no part of a backup, and where there is none, none is whole.
#[test]
fn check_reads_no_links_and_is_refused_where_no_backup_is() {
    let (_data, steady) = scratch();
    small_visit(&steady, "TR 0003");
    let (backup, elsewhere) = (tempfile::tempdir().unwrap(), tempfile::tempdir().unwrap());
    back_up(&steady, backup.path());
    let (database, moved) = (of_kind(backup.path(), "db")[0].clone(), elsewhere.path().join("moved.db"));
    std::fs::copy(&database, &moved).unwrap();
    std::fs::remove_file(&database).unwrap();
    symlink(&moved, &database).unwrap();
    assert_eq!(check(backup.path(), &mut |_| {}).unwrap().damaged.len(), 1);
    for list in lists(backup.path()) {
        std::fs::remove_file(list).unwrap();
    }
    assert_eq!(check(backup.path(), &mut |_| {}).unwrap_err().code, "backup-folder");
}
