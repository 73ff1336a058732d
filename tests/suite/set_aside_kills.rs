//! Setting aside is killed at each call to the file system, by strace: nothing is lost, and the next start ends it.

use std::fs;
use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};

use sha2::{Digest, Sha256};

use crate::set_aside::{damage, filled, home};
use crate::support::open;

/// Whatever changes a file or a folder, or puts one on disk.
const CALLS: &str = "openat,mkdir,rename,unlink,rmdir,ftruncate,write,pwrite64,fsync,fdatasync,close";
/// What is asked for in all.
const KILLS: usize = 400;

/// Each file below a folder, by its bytes.
fn contents(folder: &Path) -> Vec<Vec<u8>> {
    let mut found = Vec::new();
    let mut folders = vec![folder.to_owned()];
    while let Some(folder) = folders.pop() {
        for file in fs::read_dir(folder).unwrap().flatten() {
            if file.path().is_dir() {
                folders.push(file.path());
            } else {
                found.push(Sha256::digest(fs::read(file.path()).unwrap()).to_vec());
            }
        }
    }
    found
}

fn copied(from: &Path, to: &Path) {
    fs::create_dir_all(to).unwrap();
    for file in fs::read_dir(from).unwrap().flatten() {
        let target = to.join(file.file_name());
        if file.path().is_dir() {
            copied(&file.path(), &target);
        } else {
            fs::copy(file.path(), target).unwrap();
        }
    }
}

/// Opens the folder under strace and kills it at its call of that number; whether it came to be killed.
fn killed_at(folder: &Path, call: usize) -> bool {
    let status = Command::new("strace")
        .args(["-f", "-qq", "-o", "/dev/null", "-e", &format!("trace={CALLS}"), "-e"])
        .arg(format!("inject={CALLS}:signal=KILL:when={call}"))
        .arg(env!("CARGO_BIN_EXE_opener"))
        .arg(folder)
        .stdout(Stdio::null())
        .stderr(Stdio::null())
        .status()
        .unwrap_or_else(|fault| panic!("strace is needed, apt-get install strace: {fault}"));
    !status.success()
}

/// The files of the ledger that were there before the damage was met.
fn ledger(folder: &Path) -> Vec<Vec<u8>> {
    let kept = ["steady.db", "steady.db-wal"].map(|name| folder.join(name));
    let photos = fs::read_dir(folder.join("photos")).unwrap().flatten().map(|file| file.path());
    let files: Vec<PathBuf> = kept.into_iter().chain(photos).filter(|path| path.is_file()).collect();
    files.iter().map(|path| Sha256::digest(fs::read(path).unwrap()).to_vec()).collect()
}

/// What spoils a data folder.
type Spoil = fn(&Path);

#[test]
fn killed_anywhere_it_loses_nothing_and_the_next_start_ends_it() {
    let spoils: [(&str, Spoil); 5] = [
        ("damaged", |folder| damage(folder)),
        ("no database, with a log", |folder| {
            fs::write(folder.join("steady.db"), [7; 8192]).unwrap();
            fs::write(folder.join("steady.db-wal"), [9; 5000]).unwrap();
        }),
        ("known to be damaged", |folder| {
            damage(folder);
            fs::write(folder.join("suspect"), b"").unwrap();
        }),
        ("empty", |folder| fs::write(folder.join("steady.db"), b"").unwrap()),
        ("missing", |folder| fs::remove_file(folder.join("steady.db")).unwrap()),
    ];
    let mut kills = 0;
    for (name, spoil) in spoils {
        let (model, _) = filled();
        spoil(model.path());
        let before = ledger(model.path());
        assert!(before.len() >= 2, "{name}");
        let mut call = 0;
        loop {
            call += 1;
            let folder = tempfile::tempdir().unwrap();
            copied(model.path(), folder.path());
            let was_killed = killed_at(folder.path(), call);
            kills += usize::from(was_killed);
            let left = contents(folder.path());
            assert!(before.iter().all(|file| left.contains(file)), "{name}: call {call} lost something");
            let steady = open(folder.path()).unwrap();
            let asides = home(&steady).set_aside;
            assert_eq!(asides.len(), 1, "{name}: call {call}");
            let aside = contents(Path::new(&asides[0].folder));
            assert!(
                before.iter().all(|file| aside.contains(file)),
                "{name}: call {call} left something behind"
            );
            if !was_killed {
                break;
            }
        }
    }
    println!("{kills} kills, nothing lost");
    assert!(kills >= KILLS, "only {kills} kills");
}
