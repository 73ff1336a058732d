//! What a disk, a system or a damaged file brings about is told by its own code, and leaves what stood as it was.
//!
//! strace (Debian's) lets a system call fail at the one file.

use std::io::{self, Write};
use std::path::Path;
use std::process::{Command, Stdio};
use std::sync::Arc;
use std::sync::atomic::{AtomicBool, Ordering};

use rusqlite::Connection;
use serde_json::json;
use steady_core::app::backup::generations;
use steady_core::app::handover::Wanted;
use steady_core::app::press::{Paper, Press, PressError, PrintRun};
use steady_core::app::{Setup, Steady};

use crate::backup_folders::mirror;
use crate::backup_generations::{back_up, databases, files, on_day, photo_of, restore};
use crate::handover_files::{jpeg, small_visit};
use crate::set_aside::{damage, filled, home};
use crate::support::{MORNING, code, open, scratch};

/// What the keeper is told where a system call on a file goes wrong in this way: at that file alone, or at any.
#[track_caller]
fn told(file: Option<&Path>, calls: &str, how: &str, words: &[&str]) -> String {
    let mut strace = Command::new("strace");
    strace.args(["-f", "-qq", "-o", "/dev/null"]);
    if let Some(file) = file {
        strace.arg("-P").arg(file);
    }
    strace.arg("-e").arg(format!("trace={calls}")).arg("-e").arg(format!("inject={calls}:{how}"));
    let output = strace.arg(env!("CARGO_BIN_EXE_keeper")).args(words).stdout(Stdio::null()).output();
    let output = output.unwrap_or_else(|fault| panic!("strace is needed, apt-get install strace: {fault}"));
    assert_eq!(output.status.code(), Some(1), "nothing went wrong");
    String::from_utf8_lossy(&output.stderr).lines().last().unwrap_or_default().to_owned()
}

/// A disk that gives back something else than was written, as worn ones do: no generation is made of it.
#[test]
fn backup_that_reads_back_otherwise_is_no_backup() {
    let (data, steady) = scratch();
    let visit = small_visit(&steady, "TR 4417");
    let photo = photo_of(&steady, &visit);
    drop(steady);
    let backup = tempfile::tempdir().unwrap();
    let backup = backup.path().canonicalize().unwrap();
    let [from, to] = [data.path(), &backup].map(|path| path.to_string_lossy().into_owned());
    let words = ["backup", &from, &to, "1795599000000"];
    let passing = backup.join("unfinished").join(format!("{photo}.jpg"));
    assert_eq!(told(Some(&passing), "read", "retval=0", &words), "backup-not-verified");
    assert!(generations(&backup).unwrap().is_empty());
    assert_eq!(on_day(data.path(), &backup, 0).unwrap().photos_copied, 1, "the next one is whole");
}

#[test]
fn backup_that_cannot_be_read_is_told_from_one_that_is_damaged() {
    let (_data, steady) = scratch();
    small_visit(&steady, "TR 4417");
    let backup = tempfile::tempdir().unwrap();
    back_up(&steady, backup.path());
    let (new, empty) = scratch();
    drop(empty);
    let [to, from] = [new.path(), backup.path()].map(|path| path.to_string_lossy().into_owned());
    let database = databases(backup.path()).remove(0);
    let code = told(Some(&database), "read,copy_file_range,pread64", "error=EIO", &["restore", &to, &from]);
    assert_eq!(code, "backup-unread");
    let new = open(new.path()).unwrap();
    assert_eq!(home(&new).visits, 0);
    assert_eq!(restore(&new, backup.path()).imported.taken.len(), 1, "once it can be read again");
}

/// A folder within the data folder that was moved to another disk.
#[test]
fn data_folder_on_two_disks_is_told_as_one() {
    let (data, steady) = scratch();
    let visit = small_visit(&steady, "TR 4417");
    drop(steady);
    let camera = tempfile::tempdir().unwrap();
    std::fs::write(camera.path().join("photo.jpg"), jpeg(120)).unwrap();
    let [from, to] = [data.path(), camera.path()].map(|path| path.to_string_lossy().into_owned());
    let renames = "?rename,?renameat,?renameat2";
    let words = ["keep-photo", &from, &to, &visit];
    assert_eq!(told(None, renames, "error=EXDEV", &words), "data-on-two-disks");
    let steady = open(data.path()).unwrap();
    assert_eq!(code(&steady, json!({ "ask": "look", "visit": visit })), "ok");
}

/// Damaged and not yet set aside: the nightly backup, beside whoever works there, leaves the good one as it stands.
#[test]
fn damaged_database_is_not_backed_up() {
    let (data, _) = filled();
    let stands = |data: &Path| files(data).into_keys().collect::<Vec<_>>();
    let before = stands(data.path());
    let backup = tempfile::tempdir().unwrap();
    assert_eq!(on_day(data.path(), backup.path(), 0).unwrap().visits, 2);
    assert_eq!(stands(data.path()), before, "of reading it nothing is left");
    let good = files(backup.path());
    damage(data.path());
    let bytes = std::fs::read(data.path().join("steady.db")).unwrap();
    assert_eq!(on_day(data.path(), backup.path(), 1).unwrap_err().code, "backup-data-damaged");
    assert_eq!(files(backup.path()), good);
    assert_eq!(stands(data.path()), before, "nor is anything set aside by it, or left of reading it");
    assert!(std::fs::read(data.path().join("steady.db")).unwrap() == bytes);
    let steady = open(data.path()).unwrap();
    assert_eq!(home(&steady).set_aside.len(), 1);
    assert_eq!(steady.backup(backup.path(), &mut |_| {}).unwrap_err().code, "backup-would-lose");
    assert_eq!(files(backup.path()), good);
    assert_eq!(restore(&steady, backup.path()).imported.taken.len(), 2);
}

/// Damage at which no start looks is told where it is met, and the next start sets the database aside.
#[test]
fn damage_met_at_work_is_told_and_set_aside_at_the_next_start() {
    let (folder, visits) = filled();
    let path = folder.path().join("steady.db");
    let root = "SELECT rootpage FROM sqlite_schema WHERE name = 'sqlite_autoindex_erased_1'";
    let database = Connection::open(&path).unwrap();
    let page: u64 = database.query_row(root, [], |row| row.get::<_, i64>(0)).unwrap().try_into().unwrap();
    drop(database);
    let file = std::fs::OpenOptions::new().write(true).open(&path).unwrap();
    std::os::unix::fs::FileExt::write_all_at(&file, &[0x5a; 64], (page - 1) * 4096).unwrap();
    let steady = open(folder.path()).unwrap();
    assert!(home(&steady).set_aside.is_empty());
    let erase = json!({ "ask": "erase", "visit": visits[0], "word": "TR 4417" });
    assert_eq!(code(&steady, erase), "database-damaged");
    drop(steady);
    assert_eq!(home(&open(folder.path()).unwrap()).set_aside.len(), 1);
}

/// A copy that somebody goes on writing while it is taken in is no moment of anything.
#[test]
fn bare_copy_that_is_written_meanwhile_is_refused() {
    let (data, steady) = scratch();
    small_visit(&steady, "TR 4417");
    let copy = tempfile::tempdir().unwrap();
    mirror(data.path(), copy.path());
    let (stop, log) = (Arc::new(AtomicBool::new(false)), copy.path().join("steady.db-wal"));
    let writer = {
        let (stop, log) = (Arc::clone(&stop), log.clone());
        std::thread::spawn(move || {
            let mut log = std::fs::File::create(log).unwrap();
            while !stop.load(Ordering::Relaxed) {
                log.write_all(b"x").unwrap();
            }
        })
    };
    let (_new, new) = scratch();
    // Where the writer has no turn while it is copied, it stands still and is taken in.
    let told = (0..2_000).find_map(|_| new.restore(copy.path(), None, &mut |_| {}).err());
    stop.store(true, Ordering::Relaxed);
    writer.join().unwrap();
    assert_eq!(told.unwrap().code, "read-while-written");
    std::fs::remove_file(log).unwrap();
    assert!(restore(&new, copy.path()).imported.taken.len() <= 1, "it is taken in once it stands still");
    assert_eq!(home(&new).visits, 1);
}

#[test]
fn key_that_cannot_be_read_is_told_and_not_replaced() {
    let (folder, _) = filled();
    let database = Connection::open(folder.path().join("steady.db")).unwrap();
    let key = || -> String {
        database.query_row("SELECT value FROM setting WHERE name = 'key'", [], |row| row.get(0)).unwrap()
    };
    let good = key();
    let put = |key: &str| {
        database.execute("UPDATE setting SET value = ?1 WHERE name = 'key'", [key]).unwrap();
    };
    put("not a key");
    assert_eq!(open(folder.path()).err().unwrap().code, "key-unreadable");
    assert_eq!(key(), "not a key", "another key would be another device");
    put(&good);
    assert_eq!(home(&open(folder.path()).unwrap()).visits, 2);
}

/// A press that lays out nothing.
struct Empty;

impl Press for Empty {
    fn print(&self, _: Paper<'_>, _: &PrintRun<'_>) -> Result<Vec<u8>, PressError> {
        Err(PressError("no font".to_owned()))
    }
}

#[test]
fn paper_that_cannot_be_laid_out_is_told() {
    let (folder, visits) = filled();
    let setup = Setup { data_dir: folder.path().to_owned(), press: Arc::new(Empty), clock: || MORNING };
    let steady = Steady::open(setup).unwrap();
    let paper = json!({ "ask": "paper", "visit": visits[0], "paper": "note", "locale": "en" });
    assert_eq!(code(&steady, paper), "paper-failed");
    assert_eq!(code(&steady, json!({ "ask": "look", "visit": visits[0] })), "ok");
}

/// A place that takes nothing.
struct Closed;

impl Write for Closed {
    fn write(&mut self, _: &[u8]) -> io::Result<usize> {
        Err(io::ErrorKind::BrokenPipe.into())
    }

    fn flush(&mut self) -> io::Result<()> {
        Ok(())
    }
}

#[test]
fn export_to_a_place_that_takes_nothing_is_told() {
    let (folder, _) = filled();
    let steady = open(folder.path()).unwrap();
    let wanted = Wanted { visits: &[], papers: false, locale: None, sheet: None };
    assert_eq!(steady.export(wanted, &mut Closed).unwrap_err().code, "handover-unwritable");
}

/// A file of somebody where a folder of ours goes.
#[test]
fn file_in_the_way_is_told_as_a_fault_of_the_disk() {
    let (folder, visits) = filled();
    let steady = open(folder.path()).unwrap();
    std::fs::write(folder.path().join("outgoing"), b"mine").unwrap();
    let paper = json!({ "ask": "paper", "visit": visits[0], "paper": "note", "locale": "en" });
    assert_eq!(code(&steady, paper), "storage-failed");
    assert_eq!(std::fs::read(folder.path().join("outgoing")).unwrap(), b"mine");
}
