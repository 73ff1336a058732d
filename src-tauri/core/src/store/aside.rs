//! Sets a ledger that cannot be used aside, whole, with its photos. Nothing is deleted.
//!
//! What is moved is gathered in a folder whose name still ends in `.part`; one rename of that folder is the moment
//! from which on the data counts as set aside. A start that finds such a folder goes on where the last was cut,
//! before it looks at anything else, so nothing new is ever begun beside what is half moved.

use std::fs;
use std::io::{self, ErrorKind, Read as _};
use std::path::{Path, PathBuf};

use serde::{Deserialize, Serialize};

use super::fault::StoreFault;
use super::folders::{length, remove_if_there, sync, with_ending, write_whole};
use super::names::{self, ASIDE};
use super::open::{DATABASE, SUSPECT, Store};
use super::private;
use super::staging::PLACING;
use crate::model::aside::{Readable, Why};
use crate::model::time::Moment;

/// How the name of a folder ends that is still being filled.
const PART: &str = ".part";
/// What is known of a folder, inside it.
const ABOUT: &str = "about.json";
/// What goes along, in this order.
const MOVED: [&str; 6] = [DATABASE, "steady.db-wal", "steady.db-shm", "photos", SUSPECT, PLACING];

/// A folder that was set aside.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Aside {
    /// Its name in the data folder.
    pub name: String,
    /// Where it is.
    pub folder: PathBuf,
    /// What kept it from being used.
    pub why: Why,
    /// What can be read from it; none where it could not be counted.
    pub readable: Option<Readable>,
    /// A person has read the notice and put it away.
    pub dismissed: bool,
}

#[derive(Debug, Clone, Serialize, Deserialize)]
struct About {
    why: Why,
    #[serde(default)]
    readable: Option<Readable>,
    #[serde(default)]
    dismissed: bool,
}

/// Goes on with a setting aside that was cut.
///
/// # Errors
/// What the file system says.
pub fn finish(folder: &Path) -> Result<(), StoreFault> {
    for part in asides_in(folder)?.iter().filter(|name| name.ends_with(PART)) {
        let part = folder.join(part);
        let about = part.join(ABOUT);
        if length(&about).map_err(StoreFault::file)?.is_some() {
            fill(folder, &part)?;
        } else {
            // Cut before anything was moved: what is found now decides anew.
            let cleared = remove_if_there(&with_ending(&about, PART)).and_then(|()| fs::remove_dir(&part));
            match cleared {
                // Nothing of Steady's is in it.
                Err(fault) if fault.kind() == ErrorKind::DirectoryNotEmpty => {}
                other => other.map_err(StoreFault::file)?,
            }
        }
    }
    Ok(())
}

/// Why the files of a data folder cannot be a ledger, as far as that shows without opening one.
///
/// # Errors
/// What the file system says: what cannot be looked at now is no reason to set anything aside.
pub fn reason(folder: &Path) -> Result<Option<Why>, StoreFault> {
    let why = || -> io::Result<Option<Why>> {
        Ok(match length(&folder.join(DATABASE))? {
            Some(0) => Some(Why::Empty),
            // SQLite clears a log away beside a file that it takes for no database.
            Some(_) => (!begins_as_database(folder)?).then_some(Why::NoDatabase),
            None => {
                let log = length(&folder.join("steady.db-wal"))?.is_some_and(|log| log > 0);
                (log || holds_photos(folder)).then_some(Why::Missing)
            }
        })
    };
    why().map_err(StoreFault::file)
}

fn begins_as_database(folder: &Path) -> io::Result<bool> {
    let mut head = [0; 16];
    // What cannot be opened at all is not for us to judge.
    let Ok(mut file) = fs::File::open(folder.join(DATABASE)) else { return Ok(true) };
    match file.read_exact(&mut head) {
        Ok(()) => Ok(&head == b"SQLite format 3\0"),
        Err(fault) if matches!(fault.kind(), ErrorKind::UnexpectedEof | ErrorKind::IsADirectory) => Ok(false),
        Err(fault) => Err(fault),
    }
}

/// Whether the database of a folder is another program's, which stays as it is: it has more than its first page, and
/// no step of ours was applied to it. Both stand in SQLite's header: pages at byte 28, the user's version at byte 60.
pub fn is_of_another(folder: &Path) -> bool {
    let mut head = [0; 64];
    // What cannot be read now is not judged by this.
    let read = fs::File::open(folder.join(DATABASE)).and_then(|mut file| file.read_exact(&mut head));
    let number = |at: usize| {
        let bytes = head.get(at..at + 4).and_then(|bytes| bytes.try_into().ok()).unwrap_or_default();
        u32::from_be_bytes(bytes)
    };
    read.is_ok() && number(60) == 0 && number(28) > 1
}

/// Whether photos of a ledger lie in a folder. A person's own pictures in a folder of that name are none.
pub fn holds_photos(folder: &Path) -> bool {
    let photos = fs::read_dir(folder.join("photos"));
    photos.is_ok_and(|files| {
        files.flatten().any(|file| names::is_of_photos(&file.file_name().to_string_lossy()))
    })
}

/// Whether something was set aside in a folder.
pub fn is_in(folder: &Path) -> bool {
    asides_in(folder).is_ok_and(|names| !names.is_empty())
}

/// Moves the ledger and its photos into a folder of their own.
///
/// # Errors
/// What the file system says; the next start then goes on.
pub fn set_aside(folder: &Path, now: Moment, why: Why) -> Result<(), StoreFault> {
    let part = with_ending(&free_name(folder, now), PART);
    private::folder(&part).map_err(StoreFault::file)?;
    let begun = about(&part, &About { why, readable: None, dismissed: false });
    begun.and_then(|()| sync(folder).map_err(StoreFault::file)).inspect_err(|_| {
        // Nothing was moved yet; left behind, it would be taken for a beginning.
        let _ = fs::remove_dir_all(&part);
    })?;
    fill(folder, &part)
}

/// A name that no folder has, finished or not.
fn free_name(folder: &Path, now: Moment) -> PathBuf {
    let stamp = now.rfc3339().replace([':', '.'], "-");
    let name = |number: u32| match number {
        0 => folder.join(format!("{ASIDE}{stamp}")),
        _ => folder.join(format!("{ASIDE}{stamp}-{number}")),
    };
    let free = |path: &PathBuf| !path.exists() && !with_ending(path, PART).exists();
    (0..).map(name).find(free).unwrap_or_else(|| name(u32::MAX))
}

fn fill(folder: &Path, part: &Path) -> Result<(), StoreFault> {
    for name in MOVED {
        match fs::rename(folder.join(name), part.join(name)) {
            Err(fault) if fault.kind() == ErrorKind::NotFound => {}
            other => other.map_err(StoreFault::file)?,
        }
    }
    sync(part).and_then(|()| sync(folder)).map_err(StoreFault::file)?;
    fs::rename(part, part.with_extension("")).map_err(StoreFault::file)?;
    sync(folder).map_err(StoreFault::file)
}

fn asides_in(folder: &Path) -> Result<Vec<String>, StoreFault> {
    let files = fs::read_dir(folder).map_err(StoreFault::file)?.flatten();
    let name = |file: fs::DirEntry| file.file_name().into_string().ok();
    let mut names: Vec<String> = files.filter_map(name).filter(|name| names::is_aside(name)).collect();
    names.sort();
    Ok(names)
}

fn about(folder: &Path, about: &About) -> Result<(), StoreFault> {
    let text = serde_json::to_vec(about).unwrap_or_default();
    write_whole(&folder.join(ABOUT), &text).map_err(StoreFault::file)
}

/// What is known of a folder; of one that an earlier program set aside, that it was damaged.
fn known(folder: &Path) -> About {
    let text = fs::read(folder.join(ABOUT)).unwrap_or_default();
    let unknown = About { why: Why::Damaged, readable: None, dismissed: false };
    serde_json::from_slice(&text).unwrap_or(unknown)
}

impl Store {
    /// Every folder that was set aside, oldest first.
    ///
    /// # Errors
    /// What the file system says.
    pub fn asides(&self) -> Result<Vec<Aside>, StoreFault> {
        let told = |name: String| {
            let folder = self.folder.join(&name);
            let About { why, readable, dismissed } = known(&folder);
            Aside { name, folder, why, readable, dismissed }
        };
        Ok(asides_in(&self.folder)?.into_iter().filter(|name| !name.ends_with(PART)).map(told).collect())
    }

    /// Writes down what can be read from a folder that was set aside.
    ///
    /// # Errors
    /// What the file system says.
    pub fn note_readable(&self, aside: &Aside, readable: Readable) -> Result<(), StoreFault> {
        let now = About { readable: Some(readable), ..known(&aside.folder) };
        about(&aside.folder, &now)
    }

    /// Has what can be read from a folder counted anew at the next occasion: what is in it has changed.
    ///
    /// # Errors
    /// What the file system says.
    pub(super) fn recount(&self, aside: &Aside) -> Result<(), StoreFault> {
        let now = About { readable: None, ..known(&aside.folder) };
        about(&aside.folder, &now)
    }

    /// Puts the notice of a folder away for good; the folder stays.
    ///
    /// # Errors
    /// What the file system says.
    pub fn dismiss(&self, aside: &Aside) -> Result<(), StoreFault> {
        let now = About { dismissed: true, ..known(&aside.folder) };
        about(&aside.folder, &now)
    }
}

impl Aside {
    /// Path of its `steady.db`, which may be missing.
    pub fn database(&self) -> PathBuf {
        self.folder.join(DATABASE)
    }
}
