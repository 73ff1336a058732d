//! An import that is killed has happened as a whole or not at all, and leaves no half-written photo.

use std::cell::Cell;
use std::collections::BTreeSet;
use std::io::{BufRead, BufReader};
use std::path::Path;
use std::process::{Command, Stdio};
use std::time::{Duration, Instant};

use sha2::{Digest, Sha256};
use steady_core::app::Steady;
use steady_core::app::request::Request;
use steady_core::app::response::Response;

use tempfile::TempDir;

use crate::backup_files::whole;
use crate::backup_kills::{End, Harm, Whole, copied, harmed_everywhere, killed_everywhere};
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

/// So many photos that several are put on disk at once.
#[test]
fn import_puts_every_photo_on_disk_before_one_of_them_gets_its_name() {
    let (_folder, here) = scratch();
    for number in 0..VISITS {
        let visit = small_visit(&here, &format!("TR {number:04}"));
        keep_photo(&here, &visit, 100 + number);
    }
    let (data, files) = (tempfile::tempdir().unwrap(), tempfile::tempdir().unwrap());
    std::fs::write(files.path().join("all.steady"), exported(&here, &[])).unwrap();
    let log = tempfile::NamedTempFile::new().unwrap();
    let mut strace = Command::new("strace");
    strace.args(["-f", "-qq", "-y", "-s", "4096", "-e", "trace=?fsync,?rename,?renameat,?renameat2", "-o"]);
    strace.arg(log.path()).arg(env!("CARGO_BIN_EXE_keeper")).arg("import");
    let status = strace.arg(data.path()).arg(files.path()).arg("all.steady").stdout(Stdio::null()).status();
    assert!(
        status.unwrap_or_else(|fault| panic!("strace is needed, apt-get install strace: {fault}")).success()
    );
    photos_are_whole(data.path(), true);
    let text = std::fs::read_to_string(log.path()).unwrap();
    let lines: Vec<&str> = text.lines().collect();
    let named = |line: &str| line.contains("rename") && line.contains("/photos/");
    let first = lines.iter().position(|line| named(line)).unwrap();
    let (before, after) = lines.split_at(first);
    let synced = |line: &&&str| line.contains("fsync(") && line.contains(".jpg>");
    let (there, late) = (before.iter().filter(synced).count(), after.iter().filter(synced).count());
    assert_eq!((there >= usize::from(VISITS), late), (true, 0), "{there} of {VISITS}");
    let ended = |lines: &[&str], what: &str| lines.iter().filter(|line| line.contains(what)).count();
    assert_eq!(ended(before, "fsync resumed"), ended(before, "<unfinished"), "a sync had not ended");
}

/// What a data folder holds that lasts: without the moments at which something was done, and what opening makes.
fn lasting(data: &Path) -> Whole {
    let (mut files, mut rows) = whole(data);
    files.retain(|path, _| path != Path::new("lock") && path != Path::new("data-id"));
    let of_moment = |row: &String| {
        row.contains("\"placed\"")
            || ["sqlite_sequence", "import:", "brought:", "trust:"].iter().any(|table| row.starts_with(table))
    };
    rows.retain(|row| !of_moment(row));
    (files, rows)
}

/// A folder with a visit that a file makes longer and another that it brings, and the file in a folder.
fn before_and_file() -> (TempDir, TempDir, [String; 2]) {
    let ((_there, writer), (data, here)) = (scratch(), scratch());
    let known = small_visit(&writer, "TR 0001");
    here.import(&mut &exported(&writer, &[&known])[..]).unwrap();
    keep_photo(&writer, &known, 140);
    let new = small_visit(&writer, "TR 0002");
    let files = tempfile::tempdir().unwrap();
    std::fs::write(files.path().join("a.steady"), exported(&writer, &[])).unwrap();
    (data, files, [known, new])
}

fn entries(steady: &Steady, visit: &str) -> Option<u64> {
    match steady.handle(Request::Look { visit: visit.to_owned() }).ok()? {
        Response::Visit(standing) => Some(standing.ledger.entries),
        other => panic!("no standing but {other:?}"),
    }
}

#[test]
fn import_killed_between_any_two_file_operations_is_whole_or_not_at_all() {
    let (data, files, visits) = before_and_file();
    drop(open(data.path()).unwrap());
    let file = std::fs::read(files.path().join("a.steady")).unwrap();
    let stand = |data: &Path| visits.each_ref().map(|visit| entries(&open(data).unwrap(), visit));
    let before = (lasting(data.path()), stand(data.path()));
    let words = |data: &Path, files: &Path| {
        ["import", &data.to_string_lossy(), &files.to_string_lossy(), "a.steady"].map(str::to_owned).to_vec()
    };
    let after = {
        let done = copied(data.path());
        open(done.path()).unwrap().import(&mut &file[..]).unwrap();
        (lasting(done.path()), stand(done.path()))
    };
    let (none, all) = (Cell::new(0), Cell::new(0));
    let kills = killed_everywhere([data.path(), files.path()], words, |data, _, at| {
        let now = (stand(data), lasting(data));
        let (wanted, count) = if now.0 == before.1 { (&before, &none) } else { (&after, &all) };
        count.set(count.get() + 1);
        assert_eq!((now.0, now.1 == wanted.0), (wanted.1, true), "{at}");
        open(data).unwrap().import(&mut &file[..]).unwrap();
        assert!(lasting(data) == after.0, "{at}: the second try brings all of it");
    });
    println!("{kills} kills: {} left nothing, {} came after all was there", none.get(), all.get());
    assert!(kills > 60 && none.get() > 30 && all.get() > 5, "{kills}: {} and {}", none.get(), all.get());
}

/// A disk that fills at any write: it is told as such, nothing of the file is kept, and what was here can still be
/// handed on to another disk.
#[test]
fn import_on_a_disk_that_fills_at_any_write_is_told_and_leaves_nothing() {
    let (data, files, visits) = before_and_file();
    drop(open(data.path()).unwrap());
    let file = std::fs::read(files.path().join("a.steady")).unwrap();
    let before = lasting(data.path());
    let words = |data: &Path, files: &Path| {
        ["import", &data.to_string_lossy(), &files.to_string_lossy(), "a.steady"].map(str::to_owned).to_vec()
    };
    let (mut told, mut all) = (0, 0);
    let full = (Harm::Full, &["write", "pwrite64", "copy_file_range", "sendfile"][..]);
    harmed_everywhere(full, [data.path(), files.path()], words, |data, _, end, at| {
        all += 1;
        told += usize::from(end == End::ToldFull);
        assert_ne!(end, End::Otherwise, "{at}: a full disk is told as such");
        let steady = open(data).unwrap();
        assert!(!exported(&steady, &[&visits[0]]).is_empty());
        drop(steady);
        if end == End::ToldFull {
            assert!(lasting(data) == before, "{at}: something of it stayed");
        }
        open(data).unwrap().import(&mut &file[..]).unwrap();
    });
    println!("{all} disks that filled, {told} told");
    assert!(told > 10, "{told} of {all}");
}

#[test]
fn import_killed_while_it_is_taken_back_is_taken_back_or_stands() {
    let (data, files, visits) = before_and_file();
    let stand = |data: &Path| visits.each_ref().map(|visit| entries(&open(data).unwrap(), visit));
    let before = stand(data.path());
    let file = std::fs::read(files.path().join("a.steady")).unwrap();
    open(data.path()).unwrap().import(&mut &file[..]).unwrap();
    let after = stand(data.path());
    assert!(before[1].is_none() && after[1].is_some(), "{before:?} {after:?}");
    let words =
        |data: &Path, _: &Path| ["take-back", &data.to_string_lossy(), "2"].map(str::to_owned).to_vec();
    let (stood, gone) = (Cell::new(0), Cell::new(0));
    let kills = killed_everywhere([data.path(), files.path()], words, |data, _, at| {
        let now = stand(data);
        let steady = open(data).unwrap();
        let again = steady.handle(Request::TakeBackImport { import: 2 }).map_err(|failure| failure.code);
        if now == after {
            assert!(again.is_ok(), "{at}: {again:?}");
            stood.set(stood.get() + 1);
        } else {
            assert_eq!((now, again.err().as_deref()), (before, Some("unknown-import")), "{at}");
            gone.set(gone.get() + 1);
        }
        drop(steady);
        assert_eq!(stand(data), before, "{at}");
        assert_eq!(
            open(data).unwrap().import(&mut &file[..]).unwrap().taken.len(),
            2,
            "{at}: and comes again"
        );
    });
    println!("{kills} kills: it stood after {}, and was taken back after {}", stood.get(), gone.get());
    assert!(kills > 15 && stood.get() > 5, "{kills}: {} and {}", stood.get(), gone.get());
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
