//! Setting aside is killed before each of its file operations: nothing is lost, and the next start ends it.

use std::fs;
use std::path::{Path, PathBuf};

use sha2::{Digest, Sha256};

use crate::backup_kills::{End, Harm, harmed_everywhere};
use crate::set_aside::{damage, filled, home};
use crate::support::open;

/// What is asked for in all.
const KILLS: usize = 400;
/// What moves, makes and takes away files and folders.
const MOVES: &[&str] = &["rename", "mkdir", "unlink", "rmdir", "fsync", "ftruncate", "write"];

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
    let nowhere = tempfile::tempdir().unwrap();
    let words = |data: &Path, _: &Path| ["open", &data.to_string_lossy()].map(str::to_owned).to_vec();
    let (mut kills, mut renames) = (0, 0);
    for (name, spoil) in spoils {
        let (model, _) = filled();
        spoil(model.path());
        let before = ledger(model.path());
        assert!(before.len() >= 2, "{name}");
        // The bytes of the new database are the same whatever was set aside for it.
        let calls = if kills == 0 { &[][..] } else { MOVES };
        harmed_everywhere(
            (Harm::Killed, calls),
            [model.path(), nowhere.path()],
            words,
            |folder, _, end, at| {
                kills += usize::from(end != End::Done);
                renames += usize::from(end != End::Done && at.starts_with("rename "));
                let left = contents(folder);
                assert!(before.iter().all(|file| left.contains(file)), "{name}: {at} lost something");
                let steady = open(folder).unwrap();
                let asides = home(&steady).set_aside;
                assert_eq!(asides.len(), 1, "{name}: {at}");
                let aside = contents(Path::new(&asides[0].folder));
                assert!(before.iter().all(|file| aside.contains(file)), "{name}: {at} left something behind");
            },
        );
    }
    println!("{kills} kills, {renames} of them between two names, nothing lost");
    assert!(kills >= KILLS && renames >= 20, "only {kills} kills, {renames} at a rename");
}
