//! A process that backs up, restores or erases is killed before each of its file operations in turn: whatever
//! stood before still stands, or the whole of what was asked for does, and asking again brings it about.
//!
//! strace (Debian's) counts the operations and sends the signal on entering one of them.

use std::collections::{BTreeMap, BTreeSet};
use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};

use serde_json::json;
use sha2::{Digest, Sha256};
use steady_core::app::Steady;
use steady_core::app::backup::generations;
use tempfile::TempDir;

use crate::backup_files::whole;
use crate::backup_generations::{files, on_day, photo_of, restore};
use crate::handover_files::{hex, jpeg, keep_photo, small_visit};
use crate::support::{MORNING, code, holds, open, scratch};

/// System calls that change a file or make a change last.
const CHANGES: &str = "?write,?pwrite64,?rename,?renameat,?renameat2,?unlink,?unlinkat,?fsync,?fdatasync,\
                       ?mkdir,?mkdirat,?rmdir,?ftruncate,?copy_file_range,?sendfile";

/// What befalls the keeper at an operation.
#[derive(Debug, Clone, Copy)]
pub enum Harm {
    /// It is killed on entering it.
    Killed,
    /// The disk has no room from then on.
    Full,
}

/// The keeper's exit status where it was told that the disk is full.
const TOLD_FULL: i32 = 3;

/// How a run of the keeper ended.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum End {
    Done,
    ToldFull,
    Otherwise,
}

/// Runs the keeper, harmed on entering the operation named, if one is.
fn keeper(words: &[&str], harm: Option<(Harm, &str, usize)>, log: &Path) -> End {
    let mut strace = Command::new("strace");
    strace.args(["-f", "-qq", "-o"]).arg(log);
    match harm {
        Some((harm, call, nth)) => {
            let what = match harm {
                Harm::Killed => format!("signal=SIGKILL:when={nth}"),
                Harm::Full => format!("error=ENOSPC:when={nth}+"),
            };
            strace.arg("-e").arg(format!("trace={call}")).arg("-e").arg(format!("inject={call}:{what}"));
        }
        None => {
            strace.arg("-e").arg(format!("trace={CHANGES}"));
        }
    }
    strace.arg(env!("CARGO_BIN_EXE_keeper")).args(words);
    let done = strace.stdout(Stdio::null()).stderr(Stdio::null()).status();
    let done = done.unwrap_or_else(|fault| panic!("strace is needed, apt-get install strace: {fault}"));
    match done.code() {
        Some(0) => End::Done,
        Some(TOLD_FULL) => End::ToldFull,
        _ => End::Otherwise,
    }
}

/// How often each kind of operation happens in a whole run.
fn operations(words: &[&str]) -> BTreeMap<String, usize> {
    let log = tempfile::NamedTempFile::new().unwrap();
    assert_eq!(keeper(words, None, log.path()), End::Done, "{words:?}");
    let mut counts = BTreeMap::new();
    for line in std::fs::read_to_string(log.path()).unwrap().lines() {
        let call = line.split_once(' ').map_or("", |(_, rest)| rest.trim_start());
        if let Some((name, _)) = call.split_once('(').filter(|(name, _)| !name.contains(' ')) {
            *counts.entry(name.to_owned()).or_default() += 1;
        }
    }
    counts
}

pub fn copied(from: &Path) -> TempDir {
    let to = tempfile::tempdir().unwrap();
    for (path, bytes) in files(from) {
        let path = to.path().join(path);
        std::fs::create_dir_all(path.parent().unwrap()).unwrap();
        std::fs::write(path, bytes).unwrap();
    }
    std::fs::create_dir_all(to.path().join("photos")).unwrap();
    to
}

/// Kills a run of `words` before each of its operations; `words` and `after` are given a fresh copy of the start
/// each time. Gives back how many kills there were.
pub fn killed_everywhere(
    starts: [&Path; 2],
    words: impl Fn(&Path, &Path) -> Vec<String>,
    after: impl Fn(&Path, &Path, &str),
) -> usize {
    let mut kills = 0;
    harmed_everywhere((Harm::Killed, &[]), starts, words, |first, second, end, at| {
        kills += usize::from(end != End::Done);
        after(first, second, at);
    });
    kills
}

/// Places of one kind of operation at which a disk fills: what comes after one that failed fails too, so that not
/// each place says something new.
const FILLS: usize = 40;

/// Harms a run of `words` at each of its operations, or at each of those named.
pub fn harmed_everywhere(
    (harm, calls): (Harm, &[&str]),
    starts: [&Path; 2],
    words: impl Fn(&Path, &Path) -> Vec<String>,
    mut after: impl FnMut(&Path, &Path, End, &str),
) {
    let counts = {
        let [first, second] = starts.map(copied);
        let words = words(first.path(), second.path());
        operations(&words.iter().map(String::as_str).collect::<Vec<_>>())
    };
    for (call, count) in counts.iter().filter(|(call, _)| calls.is_empty() || calls.contains(&call.as_str()))
    {
        let step = if matches!(harm, Harm::Killed) { 1 } else { count.div_ceil(FILLS) };
        for nth in (1..=*count).step_by(step) {
            let [first, second] = starts.map(copied);
            let words = words(first.path(), second.path());
            let words: Vec<&str> = words.iter().map(String::as_str).collect();
            let log = tempfile::NamedTempFile::new().unwrap();
            let end = keeper(&words, Some((harm, call, nth)), log.path());
            after(first.path(), second.path(), end, &format!("{call} {nth} of {count}"));
        }
    }
}

/// What a data folder holds: files and rows.
pub type Whole = (BTreeMap<PathBuf, Vec<u8>>, Vec<String>);

/// Where two data folders differ, in words that can be read.
fn differences((files, rows): &Whole, (wanted, lines): &Whole) -> Vec<String> {
    let paths: BTreeSet<&PathBuf> = files.keys().chain(wanted.keys()).collect();
    let paths = paths.into_iter().filter(|path| files.get(*path) != wanted.get(*path));
    let more = rows.iter().filter(|row| !lines.contains(row)).map(|row| format!("+ {row}"));
    let less = lines.iter().filter(|row| !rows.contains(row)).map(|row| format!("- {row}"));
    paths.map(|path| path.display().to_string()).chain(more).chain(less).collect()
}

/// Every file that the lists of a backup name, and whether each is what its name says.
fn listed_files(backup: &Path, at: &str) -> BTreeSet<PathBuf> {
    let stand = files(backup);
    let mut listed = BTreeSet::new();
    for (path, text) in stand.iter().filter(|(path, _)| path.starts_with("generations")) {
        let text = std::str::from_utf8(text).unwrap();
        let list: serde_json::Value = serde_json::from_str(text.split_once('\n').unwrap().1).unwrap();
        let named = |piece: &serde_json::Value, kind: &str| {
            let sha256 = piece["sha256"].as_str().unwrap();
            PathBuf::from(format!("files/{}/{sha256}.{kind}", &sha256[..2]))
        };
        let photos = list["photos"].as_array().unwrap().iter().map(|photo| named(photo, "jpg"));
        let own = list["own"].as_object().unwrap().values().map(|own| named(own, "toml"));
        for file in photos.chain(own).chain([named(&list["database"], "db")]) {
            let bytes = stand
                .get(&file)
                .unwrap_or_else(|| panic!("{at}: {} lacks {}", path.display(), file.display()));
            assert!(
                file.to_string_lossy().contains(&hex(&Sha256::digest(bytes))),
                "{at}: {}",
                file.display()
            );
            listed.insert(file);
        }
    }
    listed
}

/// A workshop's own file, a visit erased since the last backup, and as many backups as stay.
fn kept_for_a_week() -> (TempDir, TempDir) {
    let (data, steady) = scratch();
    std::fs::create_dir_all(data.path().join("layouts")).unwrap();
    std::fs::write(data.path().join("layouts/own.toml"), "not a layout").unwrap();
    let backup = tempfile::tempdir().unwrap();
    let gone = small_visit(&steady, "QZX 90817");
    keep_photo(&steady, &gone, 200);
    for day in 0..7 {
        small_visit(&steady, &format!("TR {day:04}"));
        on_day(data.path(), backup.path(), day % 3).unwrap();
    }
    steady.erase(&gone, "QZX 90817").unwrap();
    let last = small_visit(&steady, "TR 0100");
    keep_photo(&steady, &last, 90);
    drop(steady);
    (data, backup)
}

#[test]
fn backup_killed_between_any_two_file_operations_loses_nothing() {
    let (data, backup) = kept_for_a_week();
    let before = whole(data.path());
    let words = |data: &Path, backup: &Path| {
        let at = (MORNING.0 + 3 * 86_400_000).to_string();
        ["backup", &data.to_string_lossy(), &backup.to_string_lossy(), &at].map(str::to_owned).to_vec()
    };
    let kills = killed_everywhere([data.path(), backup.path()], words, |data, backup, at| {
        assert_eq!(whole(data), before, "{at}");
        listed_files(backup, at);
        let visits = generations(backup).unwrap().last().unwrap().visits;
        assert!([7, 8].contains(&visits), "{at}: {visits}");
        let again = on_day(data, backup, 4).unwrap();
        assert_eq!(again.visits, 8, "{at}");
        let listed = listed_files(backup, at);
        let stand = files(backup);
        let stored: BTreeSet<PathBuf> =
            stand.keys().filter(|path| path.starts_with("files")).cloned().collect();
        assert_eq!(stored, listed, "{at}: nothing but what a list names");
        assert!(!stand.keys().any(|path| path.starts_with("unfinished")), "{at}");
        assert!(!stand.values().any(|bytes| holds(bytes, "QZX 90817")), "{at}: the erased visit");
        assert!(generations(backup).unwrap().len() >= 7, "{at}");
    });
    assert!(kills > 200, "{kills}");
}

#[test]
fn restore_killed_between_any_two_file_operations_is_whole_or_not_at_all() {
    let (data, backup) = kept_for_a_week();
    on_day(data.path(), backup.path(), 3).unwrap();
    let (here, steady) = scratch();
    let own = small_visit(&steady, "TR 9000");
    restore(&steady, backup.path());
    let damaged = photo_of(&steady, &own);
    drop(steady);
    // The same folder again, without what the backup brought, and with a photo damaged.
    let (here_before, steady) = scratch();
    small_visit(&steady, "TR 9000");
    drop(steady);
    drop(here);
    std::fs::write(here_before.path().join(format!("photos/{damaged}.jpg")), b"no picture").unwrap();
    let lasting = |data: &Path| -> Whole {
        let (mut files, mut rows) = whole(data);
        files.retain(|path, _| path != Path::new("lock") && path != Path::new("data-id"));
        let of_moment = |row: &String| {
            row.contains("\"placed\"")
                || ["sqlite_sequence", "knowledge", "import:", "trust:"]
                    .iter()
                    .any(|table| row.starts_with(table))
        };
        rows.retain(|row| !of_moment(row));
        (files, rows)
    };
    let before = lasting(here_before.path());
    let after = {
        let done = copied(here_before.path());
        restore(&open(done.path()).unwrap(), backup.path());
        lasting(done.path())
    };
    assert_ne!(before, after);
    let words = |data: &Path, backup: &Path| {
        ["restore", &data.to_string_lossy(), &backup.to_string_lossy()].map(str::to_owned).to_vec()
    };
    let (none, all) = (std::cell::Cell::new(0), std::cell::Cell::new(0));
    let photo = PathBuf::from(format!("photos/{damaged}.jpg"));
    let kills = killed_everywhere([here_before.path(), backup.path()], words, |data, backup, at| {
        let steady = open(data).unwrap();
        drop(steady);
        let mut now = lasting(data);
        if now.1 == before.1 {
            assert_eq!(differences(&now, &before), [""; 0], "{at}: files without their entries");
            none.set(none.get() + 1);
        } else {
            // What is left to be healed is as damaged as it was.
            now.0.insert(photo.clone(), after.0[&photo].clone());
            assert_eq!(differences(&now, &after), [""; 0], "{at}");
            all.set(all.get() + 1);
        }
        restore(&open(data).unwrap(), backup);
        assert_eq!(differences(&lasting(data), &after), [""; 0], "{at}");
    });
    let (none, all) = (none.get(), all.get());
    assert!(
        kills > 150 && none > 50 && all > 5,
        "{kills} kills: {none} left nothing, {all} came after all was there"
    );
}

#[test]
fn erasure_killed_between_any_two_file_operations_is_finished_at_the_next_start() {
    let (data, steady) = scratch();
    let (gone, other) = (small_visit(&steady, "QZX 90817"), small_visit(&steady, "TR 4417"));
    for shade in [90, 120, 150] {
        keep_photo(&steady, &gone, shade);
    }
    keep_photo(&steady, &other, 200);
    let photos = files(&data.path().join("photos"));
    drop(steady);
    let nowhere = tempfile::tempdir().unwrap();
    let words = |data: &Path, _: &Path| {
        ["erase", &data.to_string_lossy(), &gone, "QZX 90817"].map(str::to_owned).to_vec()
    };
    let is = |steady: &Steady, visit: &str| code(steady, json!({ "ask": "look", "visit": visit }));
    let kills = killed_everywhere([data.path(), nowhere.path()], words, |data, _, at| {
        let steady = open(data).unwrap();
        assert_eq!(is(&steady, &other), "ok", "{at}");
        if is(&steady, &gone) == "ok" {
            assert_eq!(files(&data.join("photos")), photos, "{at}: a visit that stands has its photos");
            steady.erase(&gone, "QZX 90817").unwrap();
        }
        drop(steady);
        assert_eq!(holding(data, "QZX 90817"), [""; 0].map(PathBuf::from), "{at}");
        assert_eq!(files(&data.join("photos")).len(), 4, "{at}: the other visit's two photos");
        assert_eq!(is(&open(data).unwrap(), &gone), "unknown-visit", "{at}");
    });
    assert!(kills > 60, "{kills}");
}

/// Files of a data folder in which a word stands.
fn holding(data: &Path, word: &str) -> Vec<PathBuf> {
    files(data).into_iter().filter(|(_, bytes)| holds(bytes, word)).map(|(path, _)| path).collect()
}

/// Files on their way into a data folder.
fn on_their_way(data: &Path) -> Vec<PathBuf> {
    let folders = ["incoming", "outgoing"].map(|name| data.join(name));
    folders.iter().filter(|folder| folder.is_dir()).flat_map(|folder| files(folder).into_keys()).collect()
}

#[test]
fn photo_killed_on_its_way_leaves_nothing_that_a_start_does_not_clear() {
    let (data, steady) = scratch();
    let visit = small_visit(&steady, "QZX 90817");
    drop(steady);
    let camera = tempfile::tempdir().unwrap();
    std::fs::write(camera.path().join("photo.jpg"), jpeg(120)).unwrap();
    let words = |data: &Path, camera: &Path| {
        ["keep-photo", &data.to_string_lossy(), &camera.to_string_lossy(), &visit].map(str::to_owned).to_vec()
    };
    let halfway = std::cell::Cell::new(0);
    let kills = killed_everywhere([data.path(), camera.path()], words, |data, _, at| {
        halfway.set(halfway.get() + usize::from(!on_their_way(data).is_empty()));
        let steady = open(data).unwrap();
        assert_eq!(on_their_way(data), [""; 0].map(PathBuf::from), "{at}");
        steady.erase(&visit, "QZX 90817").unwrap();
        drop(steady);
        assert_eq!(files(&data.join("photos")).len(), 0, "{at}: the photos went with their visit");
    });
    assert!(kills > 30 && halfway.get() > 5, "{kills} kills, {} with a file on its way", halfway.get());
}

#[test]
fn salvage_killed_anywhere_leaves_no_copy_of_what_it_read() {
    let (lost, steady) = scratch();
    let (gone, other) = (small_visit(&steady, "QZX 90817"), small_visit(&steady, "TR 4417"));
    drop(steady);
    let (data, steady) = scratch();
    small_visit(&steady, "TR 0001");
    drop(steady);
    let words = |data: &Path, lost: &Path| {
        ["salvage", &data.to_string_lossy(), &lost.to_string_lossy()].map(str::to_owned).to_vec()
    };
    let halfway = std::cell::Cell::new(0);
    let kills = killed_everywhere([data.path(), lost.path()], words, |data, lost, at| {
        halfway.set(halfway.get() + usize::from(!on_their_way(data).is_empty()));
        let steady = open(data).unwrap();
        assert_eq!(on_their_way(data), [""; 0].map(PathBuf::from), "{at}");
        steady.salvage(&lost.join("steady.db")).unwrap();
        for visit in [&gone, &other] {
            assert_eq!(code(&steady, json!({ "ask": "look", "visit": visit })), "ok", "{at}");
        }
        steady.erase(&gone, "QZX 90817").unwrap();
        drop(steady);
        assert_eq!(holding(data, "QZX 90817"), [""; 0].map(PathBuf::from), "{at}");
    });
    assert!(kills > 30 && halfway.get() > 5, "{kills} kills, {} with a file on its way", halfway.get());
}

/// A disk that fills at any write: it is told as such, what stood stands, and the same again brings it about.
#[test]
fn backup_on_a_disk_that_fills_at_any_write_is_told_and_loses_nothing() {
    let (data, backup) = kept_for_a_week();
    let before = whole(data.path());
    let words = |data: &Path, backup: &Path| {
        let at = (MORNING.0 + 3 * 86_400_000).to_string();
        ["backup", &data.to_string_lossy(), &backup.to_string_lossy(), &at].map(str::to_owned).to_vec()
    };
    let stood = listed_files(backup.path(), "before");
    let (mut told, mut all) = (0, 0);
    let full = (Harm::Full, &["write", "pwrite64", "copy_file_range", "sendfile"][..]);
    harmed_everywhere(full, [data.path(), backup.path()], words, |data, backup, end, at| {
        all += 1;
        told += usize::from(end == End::ToldFull);
        assert_ne!(end, End::Otherwise, "{at}: a full disk is told as such");
        assert_eq!(whole(data), before, "{at}");
        let stands: BTreeSet<PathBuf> = files(backup).into_keys().collect();
        assert!(end == End::Done || stood.is_subset(&stands), "{at}: an earlier generation lost a file");
        assert_eq!(on_day(data, backup, 4).unwrap().visits, 8, "{at}");
        listed_files(backup, at);
    });
    println!("{all} disks that filled, {told} told");
    assert!(told > 20, "{told} of {all}");
}

#[test]
fn restore_and_erasure_on_a_disk_that_fills_at_any_write_are_told_and_lose_nothing() {
    let (from, backup) = kept_for_a_week();
    on_day(from.path(), backup.path(), 3).unwrap();
    let (data, steady) = scratch();
    let visit = small_visit(&steady, "QZX 90817");
    drop(steady);
    let full = || (Harm::Full, &["write", "pwrite64", "copy_file_range", "sendfile"][..]);
    let (mut all, mut told) = (0, 0);
    let stands = |data: &Path, at: &str| {
        let steady = open(data).unwrap();
        let is = code(&steady, json!({ "ask": "look", "visit": visit }));
        assert_eq!(on_their_way(data), [""; 0].map(PathBuf::from), "{at}");
        (steady, is)
    };
    let words = |data: &Path, backup: &Path| {
        ["restore", &data.to_string_lossy(), &backup.to_string_lossy()].map(str::to_owned).to_vec()
    };
    harmed_everywhere(full(), [data.path(), backup.path()], words, |data, backup, end, at| {
        (all, told) = (all + 1, told + usize::from(end == End::ToldFull));
        assert_ne!(end, End::Otherwise, "restore, {at}: a full disk is told as such");
        let (steady, is) = stands(data, at);
        assert_eq!(is, "ok", "restore, {at}");
        restore(&steady, backup);
    });
    let words = |data: &Path, _: &Path| {
        ["erase", &data.to_string_lossy(), &visit, "QZX 90817"].map(str::to_owned).to_vec()
    };
    harmed_everywhere(full(), [data.path(), from.path()], words, |data, _, end, at| {
        (all, told) = (all + 1, told + usize::from(end == End::ToldFull));
        let (steady, is) = stands(data, at);
        // Gone and not yet swept up is told in words of its own; the next start went on with it.
        assert!(end != End::Otherwise || is != "ok", "erase, {at}: a full disk is told as such");
        if is == "ok" {
            steady.erase(&visit, "QZX 90817").unwrap();
        }
        drop(steady);
        assert_eq!(holding(data, "QZX 90817"), [""; 0].map(PathBuf::from), "erase, {at}");
    });
    println!("{all} disks that filled, {told} told");
    // What comes after the commit puts the log into the database, which may wait.
    assert!(told > 15, "{told} of {all}");
}

/// All a phone has: a file for a screen, made within the data folder.
#[test]
fn file_for_a_screen_on_a_disk_that_fills_is_told_and_leaves_nothing() {
    let (data, steady) = scratch();
    let visit = small_visit(&steady, "QZX 90817");
    drop(steady);
    let nothing = tempfile::tempdir().unwrap();
    let (mut all, mut told) = (0, 0);
    for asked in ["prepare-export", "prepare-backup"] {
        let words = |data: &Path, _: &Path| {
            let mut words = vec![asked.to_owned(), data.to_string_lossy().into_owned()];
            words.extend((asked == "prepare-export").then(|| visit.clone()));
            words
        };
        let full = (Harm::Full, &["write", "pwrite64", "copy_file_range", "sendfile"][..]);
        harmed_everywhere(full, [data.path(), nothing.path()], words, |data, _, end, at| {
            (all, told) = (all + 1, told + usize::from(end == End::ToldFull));
            assert_ne!(end, End::Otherwise, "{asked}, {at}: a full disk is told as such");
            let left = on_their_way(data);
            assert!(end == End::Done || left.is_empty(), "{asked}, {at}: {left:?}");
            let steady = open(data).unwrap();
            assert_eq!(code(&steady, json!({ "ask": "look", "visit": visit })), "ok", "{asked}, {at}");
        });
    }
    println!("{all} disks that filled, {told} told");
    assert!(told > 5, "{told} of {all}");
}
