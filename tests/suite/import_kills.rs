//! An import that is killed has happened as a whole or not at all, and leaves no half-written photo.

use std::collections::BTreeSet;
use std::io::{BufRead, BufReader};
use std::path::Path;
use std::process::{Command, Stdio};
use std::time::{Duration, Instant};

use sha2::{Digest, Sha256};
use steady_core::app::request::Request;
use steady_core::app::response::Response;

use crate::handover::exported;
use crate::handover_files::{hex, keep_photo, small_visit};
use crate::support::{open, scratch};

const VISITS: u8 = 20;
const KILLS: u32 = 36;
/// Kills that come only after the import has ended.
const LATE: u32 = 4;

/// Starts an import of the files and kills it after a while, if it has not ended by then.
fn import_and_kill(data: &Path, files: &Path, after: Duration) -> Duration {
    let mut importer = Command::new(env!("CARGO_BIN_EXE_importer"));
    let mut child = importer.arg(data).arg(files).stdout(Stdio::piped()).spawn().unwrap();
    let mut lines = BufReader::new(child.stdout.take().unwrap()).lines();
    assert_eq!(lines.next().unwrap().unwrap(), "ready");
    let begun = Instant::now();
    while begun.elapsed() < after && child.try_wait().unwrap().is_none() {
        std::thread::sleep(Duration::from_micros(200));
    }
    child.kill().unwrap();
    child.wait().unwrap();
    begun.elapsed()
}

#[test]
fn killed_import_has_happened_as_a_whole_or_not_at_all() {
    let (_folder, here) = scratch();
    for number in 0..VISITS {
        let visit = small_visit(&here, &format!("TR {number:04}"));
        keep_photo(&here, &visit, 100 + number);
    }
    let files = tempfile::tempdir().unwrap();
    std::fs::write(files.path().join("all.steady"), exported(&here, &[])).unwrap();
    let data = tempfile::tempdir().unwrap();
    let whole = import_and_kill(data.path(), files.path(), Duration::from_secs(60));
    let (mut none, mut all) = (0, 0);
    for kill in 0..KILLS {
        let data = tempfile::tempdir().unwrap();
        let late = kill >= KILLS - LATE;
        let after = if late { Duration::from_secs(60) } else { whole * kill / (KILLS - LATE) };
        import_and_kill(data.path(), files.path(), after);
        let steady = open(data.path()).unwrap();
        let Response::Home(home) = steady.handle(Request::Home).unwrap() else { panic!("no home") };
        match home.visits {
            0 => none += 1,
            visits => {
                assert_eq!(visits, u64::from(VISITS), "kill {kill}");
                all += 1;
            }
        }
        photos_are_whole(data.path(), home.visits > 0);
        assert!(!data.path().join("incoming").exists(), "kill {kill}: staged photos are cleared");
        if kill % 6 != 0 {
            continue;
        }
        let again = steady.import(&mut &std::fs::read(files.path().join("all.steady")).unwrap()[..]).unwrap();
        assert_eq!(again.taken.len() as u64 + again.unchanged, u64::from(VISITS), "kill {kill}");
        photos_are_whole(data.path(), true);
    }
    println!("{KILLS} kills: {none} left nothing, {all} came after everything was there");
    assert!(none > 5 && all >= LATE, "{none} and {all}: the kills missed the import");
}

/// Every photo file is what its name says; with `all`, all of them are there.
fn photos_are_whole(data: &Path, all: bool) {
    let mut full = BTreeSet::new();
    for file in std::fs::read_dir(data.join("photos")).unwrap().flatten() {
        let name = file.file_name().into_string().unwrap();
        let bytes = std::fs::read(file.path()).unwrap();
        match name.strip_suffix(".thumb.jpg") {
            Some(_) => assert!(bytes.ends_with(&[0xff, 0xd9]), "{name}"),
            None => {
                let sha256 = name.strip_suffix(".jpg").unwrap().to_owned();
                assert_eq!(hex(&Sha256::digest(&bytes)), sha256);
                full.insert(sha256);
            }
        }
    }
    assert!(!all || full.len() == usize::from(VISITS) + 1, "{}", full.len());
}
