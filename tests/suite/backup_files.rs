//! A backup as one file: fetched as a whole, taken in by pieces, and readable by Debian's `tar`; whatever is not one, or
//! was changed, is refused and leaves the data folder as it was.

use std::collections::BTreeMap;
use std::path::Path;

use base64::Engine;
use base64::engine::general_purpose::STANDARD;
use rusqlite::types::ValueRef;
use serde_json::json;
use steady_core::app::Steady;
use steady_core::app::backup::{BackupReady, Restored};
use steady_core::app::failure::Failure;
use steady_core::app::request::Request;
use steady_core::app::response::Response;

use crate::backup_generations::{files, photo_of, restore};
use crate::handover_files::{keep_photo, small_visit};
use crate::support::{self, code, scratch};

const NAME: &str = "0191d2f0-0000-7000-8000-0000000000aa";

fn said(steady: &Steady, request: serde_json::Value) -> Result<Response, Failure> {
    steady.handle(serde_json::from_value::<Request>(request).unwrap())
}

/// Makes a backup file ready and fetches it.
pub fn fetched(steady: &Steady) -> (BackupReady, Vec<u8>) {
    let ready = loop {
        let answer = said(steady, json!({ "ask": "prepare-backup", "backup": NAME })).unwrap();
        let Response::BackupReady(ready) = answer else { panic!("no backup") };
        if ready.ready {
            break ready;
        }
    };
    let file = support::fetched(steady, &ready.file);
    assert_eq!(file.len() as u64, ready.bytes);
    (ready, file)
}

/// Sends a backup file and has it taken in.
pub fn sent(steady: &Steady, file: &[u8]) -> Result<Restored, Failure> {
    for (index, piece) in file.chunks(512 * 1024).enumerate() {
        let base64 = STANDARD.encode(piece);
        let request = json!({ "ask": "restore-piece", "upload": NAME, "index": index, "base64": base64 });
        assert_eq!(code(steady, request), "ok");
    }
    match said(steady, json!({ "ask": "restore", "upload": NAME }))? {
        Response::Restored(restored) => Ok(restored),
        other => panic!("not restored but {other:?}"),
    }
}

/// What a data folder holds: its files, and of the database what it says.
pub fn whole(data: &Path) -> (BTreeMap<std::path::PathBuf, Vec<u8>>, Vec<String>) {
    let mut files = files(data);
    files.retain(|path, _| !path.to_string_lossy().starts_with("steady.db"));
    let database = rusqlite::Connection::open(data.join("steady.db")).unwrap();
    let mut rows = Vec::new();
    let tables: Vec<String> = database
        .prepare("SELECT name FROM sqlite_schema WHERE type = 'table' ORDER BY name")
        .unwrap()
        .query_map([], |row| row.get(0))
        .unwrap()
        .flatten()
        .collect();
    for table in tables {
        let mut statement = database.prepare(&format!("SELECT * FROM \"{table}\" ORDER BY 1, 2")).unwrap();
        let columns = statement.column_count();
        let mut found = statement.query([]).unwrap();
        while let Some(row) = found.next().unwrap() {
            let values: Vec<String> =
                (0..columns).map(|column| said_of(row.get_ref(column).unwrap())).collect();
            rows.push(format!("{table}: {}", values.join(" ")));
        }
    }
    (files, rows)
}

fn said_of(value: ValueRef<'_>) -> String {
    value.as_str().map_or_else(|_| format!("{value:?}"), |text| format!("{text:?}"))
}

#[test]
fn backup_file_brings_everything_to_another_device() {
    let (data, steady) = scratch();
    let layouts = data.path().join("layouts");
    std::fs::create_dir_all(&layouts).unwrap();
    std::fs::write(layouts.join("own.toml"), "not a layout").unwrap();
    let visit = small_visit(&steady, "TR 0001");
    keep_photo(&steady, &visit, 90);
    let gone = small_visit(&steady, "TR 0002");
    steady.erase(&gone, "TR 0002").unwrap();
    let (ready, file) = fetched(&steady);
    assert_eq!((ready.visits, ready.done, ready.of, ready.photos_missing.len()), (1, 2, 2, 0));
    let (new_data, new) = scratch();
    let restored = sent(&new, &file).unwrap();
    assert_eq!((restored.imported.taken, restored.imported.photos), (vec![visit.clone()], 2));
    assert_eq!(std::fs::read(new_data.path().join("layouts/own.toml")).unwrap(), b"not a layout");
    assert!(new.photo(&photo_of(&new, &visit), steady_core::app::PhotoSize::Thumb).is_ok());
    assert_eq!(code(&new, json!({ "ask": "look", "visit": gone })), "unknown-visit");
    assert_eq!(sent(&new, &file).unwrap().imported.unchanged, 1);
    assert!(!new_data.path().join("incoming").exists(), "nothing of it is left behind");
}

/// Unpacked by hand it is a backup's folder.
#[test]
fn unpacked_backup_file_is_a_backup_folder() {
    let (_data, steady) = scratch();
    let visit = small_visit(&steady, "TR 0001");
    let (_, file) = fetched(&steady);
    let folder = tempfile::tempdir().unwrap();
    std::fs::write(folder.path().join("backup.tar"), &file).unwrap();
    let mut tar = std::process::Command::new("tar");
    tar.args(["-xf", "backup.tar"]).current_dir(folder.path());
    assert!(tar.status().unwrap().success());
    let (_new, new) = scratch();
    assert_eq!(restore(&new, folder.path()).imported.taken, [visit]);
}

#[test]
fn changed_backup_file_is_refused_and_changes_nothing() {
    let (_data, steady) = scratch();
    small_visit(&steady, "TR 0001");
    let (_, file) = fetched(&steady);
    let (new_data, new) = scratch();
    small_visit(&new, "TR 0009");
    let before = whole(new_data.path());
    let database = file.windows(15).position(|part| part == b"SQLite format 3").unwrap();
    let cut = |to: usize| file[..to].to_vec();
    let flipped = |at: usize| {
        let mut file = file.clone();
        file[at] ^= 1;
        file
    };
    let longer = [&file[..], &[0; 512]].concat();
    for (changed, expected) in [
        (b"no backup".to_vec(), "backup-file"),
        (vec![0; 4096], "backup-file"),
        (flipped(0), "backup-file"),
        (flipped(520), "backup-damaged"),
        (flipped(1024 + 3), "backup-damaged"),
        (flipped(2048), "backup-damaged"),
        (flipped(database + 9_000), "backup-damaged"),
        (flipped(database - 400), "backup-damaged"),
        (cut(file.len() - 512), "backup-damaged"),
        (cut(1536), "backup-damaged"),
        (longer, "backup-damaged"),
    ] {
        assert_eq!(sent(&new, &changed).unwrap_err().code, expected);
        assert_eq!(whole(new_data.path()), before);
    }
    assert_eq!(code(&new, json!({ "ask": "restore", "upload": NAME })), "upload-unknown");
    assert_eq!(new.outgoing(NAME).unwrap_err().code, "upload-unknown");
}

/// What was copied to be fetched would outlive the visit.
#[test]
fn erasing_takes_the_backup_file_that_waits_along() {
    let (data, steady) = scratch();
    let visit = small_visit(&steady, "TR 0001");
    let (ready, _) = fetched(&steady);
    let mut begun = steady.outgoing(&ready.file).unwrap();
    steady.erase(&visit, "TR 0001").unwrap();
    assert_eq!(steady.outgoing(&ready.file).unwrap_err().code, "upload-unknown");
    assert!(
        std::io::Read::read_to_end(&mut begun, &mut Vec::new()).is_err(),
        "what is being fetched breaks off"
    );
    assert!(!data.path().join("outgoing").exists());
}

/// A damaged photo is named and not packed.
#[test]
fn damaged_photo_does_not_go_into_a_backup_file() {
    let (data, steady) = scratch();
    let visit = small_visit(&steady, "TR 0001");
    let sha256 = photo_of(&steady, &visit);
    std::fs::write(data.path().join(format!("photos/{sha256}.jpg")), b"no picture").unwrap();
    let (ready, file) = fetched(&steady);
    assert_eq!(ready.photos_missing, [sha256]);
    let (_new, new) = scratch();
    assert_eq!(sent(&new, &file).unwrap().photos_missing, 1);
}
