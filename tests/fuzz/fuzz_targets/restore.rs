//! A backup from somewhere: one file as it came, or a folder whose list names, by the right hashes, a database that
//! is anything. Restored as a whole, each photo being what its name says and nothing left where files wait, or refused
//! with every visit and every file as it was.

#![no_main]

#[path = "../src/workshop.rs"]
mod workshop;

use std::collections::BTreeMap;
use std::fs;
use std::path::Path;

use libfuzzer_sys::fuzz_target;
use steady_core::model::time::Moment;
use steady_core::store::backup::MARKER;
use steady_core::store::backup::list::{List, Piece};

const DATA: &str = "0191d2f0-0000-7000-8000-00000000000a";

fuzz_target!(|bytes: &[u8]| {
    let Some((kind, rest)) = bytes.split_first() else { return };
    let workshop = workshop::shared();
    let place = workshop.folder().join("backup");
    // Left by the input before.
    let _ = fs::remove_file(&place);
    let _ = fs::remove_dir_all(&place);
    if *kind == b'f' { fs::write(&place, rest).expect("the scratch folder can be written") } else { packed(&place, rest) }
    let before = (workshop.visits(), workshop.files());
    let outcome = workshop.steady.restore(&place, None, &mut |_| {});
    let files = workshop.files();
    if let Err(failure) = outcome {
        assert_ne!(failure.code, "internal", "{failure:?}");
        assert_eq!((workshop.visits(), files), before, "a refused backup left something behind");
        return;
    }
    for (path, sha256) in &before.1 {
        // A thumbnail is made anew from its photo, and a damaged photo made whole.
        assert!(is_photo(path) || files.get(path) == Some(sha256), "{} is another now", path.display());
    }
    for (path, sha256) in &files {
        assert!(!path.starts_with("incoming"), "{} was left behind", path.display());
        let name = path.file_stem().unwrap_or_default().to_string_lossy();
        let is_full = is_photo(path) && !name.ends_with(".thumb");
        assert!(!is_full || name == *sha256, "{} is not what its name says", path.display());
    }
});

fn is_photo(path: &Path) -> bool {
    path.starts_with("photos")
}

/// A folder with one generation: this database.
fn packed(place: &Path, database: &[u8]) {
    let list = List {
        number: 1,
        made_at: Moment(0),
        made_by: String::new(),
        data: DATA.to_owned(),
        visits: BTreeMap::new(),
        missing: Vec::new(),
        database: Piece::of(database),
        photos: Vec::new(),
        own: BTreeMap::new(),
    };
    let object = list.database.object("db").name;
    let write = |path: &str, bytes: &[u8]| {
        let path = place.join(path);
        fs::create_dir_all(path.parent().unwrap_or(place)).expect("a folder can be made");
        fs::write(path, bytes).expect("a file can be written");
    };
    write(MARKER, format!("{{\"steady_backup\":1,\"data\":\"{DATA}\"}}").as_bytes());
    write(&format!("generations/{}", list.file_name()), list.text().expect("a list can be written").as_bytes());
    write(&format!("files/{}/{object}", &object[..2]), database);
}
