//! Files on their way in with an import or a restored backup: whole and synced in a folder of their own first,
//! then moved under their names together, before the entries that need them are kept. What came to nothing
//! leaves the data folder as it was, at once or, after a crash, at the next start.

use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::io;
use std::path::{Path, PathBuf};

use serde::{Deserialize, Serialize};

use crate::model::fresh_id::fresh_id;

use super::backup::list::{is_hash, is_own_path};
use super::fault::StoreFault;
use super::folders;
use super::merge::Merging;
use super::open::{OWN_FOLDERS, Store};
use super::photo_files::PhotoSize;
use super::uploads::INCOMING;
use super::{names, private};

/// Says which files are being placed, until the entries that came with them are kept.
pub(super) const PLACING: &str = "placing.json";
/// The setting that names the placing that was kept last.
pub(super) const PLACED: &str = "placed";

/// Files gathered and not yet kept; dropped, they are gone.
#[derive(Debug)]
pub struct Staging {
    folder: PathBuf,
    data: PathBuf,
    id: String,
    /// Files with no other in their place, by name and path in the data folder.
    fresh: BTreeMap<String, String>,
    /// Photos in whose place a damaged file lies.
    healing: BTreeMap<String, String>,
}

/// Files that stand under their names. Dropped before they are confirmed, they are gone again.
#[derive(Debug)]
pub struct Placed {
    staging: Staging,
    moved: BTreeSet<String>,
    made: Vec<PathBuf>,
    confirmed: bool,
}

#[derive(Debug, Serialize, Deserialize)]
struct Placing {
    id: String,
    files: BTreeSet<String>,
}

impl Store {
    /// An empty staging folder.
    ///
    /// # Errors
    /// What the file system says.
    pub fn staging(&self) -> Result<Staging, StoreFault> {
        let folder = self.folder.join(INCOMING).join(names::HANDOVER);
        if folder.exists() {
            fs::remove_dir_all(&folder).map_err(StoreFault::file)?;
        }
        private::folder(&folder).map_err(StoreFault::file)?;
        let id = fresh_id().to_string();
        let (fresh, healing) = (BTreeMap::new(), BTreeMap::new());
        Ok(Staging { folder, data: self.folder.clone(), id, fresh, healing })
    }

    /// Whether a photo's file is there.
    pub fn has_photo(&self, sha256: &str, size: PhotoSize) -> bool {
        self.photo_path(sha256, size).is_file()
    }

    /// A photo's file, for reading piece by piece.
    ///
    /// # Errors
    /// What the file system says.
    pub fn photo_file(&self, sha256: &str, size: PhotoSize) -> io::Result<fs::File> {
        folders::plain(&self.photo_path(sha256, size))
    }

    /// After a crash in the middle of an import or a restored backup: files whose entries were not kept go.
    ///
    /// # Errors
    /// What the file system or SQLite says.
    pub(super) fn finish_placing(&self) -> Result<(), StoreFault> {
        let path = self.folder.join(PLACING);
        let Ok(text) = fs::read(&path) else { return Ok(()) };
        // A note that was cut off itself names nothing that was moved.
        let placing = serde_json::from_slice::<Placing>(&text).ok();
        let kept = self.settings()?.remove(PLACED);
        if let Some(placing) = placing.filter(|placing| Some(&placing.id) != kept.as_ref()) {
            for path in placing.files.iter().filter(|path| is_own_path(path) || is_photo_path(path)) {
                folders::remove_if_there(&self.folder.join(path)).map_err(StoreFault::file)?;
            }
            for folder in OWN_FOLDERS {
                // One with other files in it stays.
                let _ = fs::remove_dir(self.folder.join(folder));
            }
        }
        folders::remove_if_there(&path).map_err(StoreFault::file)
    }
}

impl Staging {
    /// Keeps a photo's bytes, proven by whoever brings them, for later: where no file of that name is, or one
    /// with other bytes, which then is damaged.
    ///
    /// # Errors
    /// What the file system says.
    pub fn add(&mut self, name: &str, bytes: &[u8]) -> Result<(), StoreFault> {
        let there = self.data.join("photos").join(name);
        if self.fresh.contains_key(name) || self.healing.contains_key(name) {
            return Ok(());
        }
        let waiting = if !there.exists() {
            &mut self.fresh
        } else if is_same(&there, bytes) {
            return Ok(());
        } else {
            &mut self.healing
        };
        private::write(&self.folder.join(name), bytes).map_err(StoreFault::file)?;
        waiting.insert(name.to_owned(), format!("photos/{name}"));
        Ok(())
    }

    /// Keeps one of the workshop's own files for later, unless one of that name is here.
    ///
    /// # Errors
    /// What the file system says.
    pub fn add_own(&mut self, path: &str, bytes: &[u8]) -> Result<(), StoreFault> {
        if self.data.join(path).exists() {
            return Ok(());
        }
        // The folder's name before its own could make it longer than a file system takes.
        let name = format!("own-{}", self.fresh.len());
        private::write(&self.folder.join(&name), bytes).map_err(StoreFault::file)?;
        self.fresh.insert(name, path.to_owned());
        Ok(())
    }

    /// Whether a photo is here, and is what its name says.
    pub fn stands(&self, sha256: &str) -> bool {
        let path = self.data.join("photos").join(PhotoSize::Full.file_name(sha256));
        folders::hash_of(&path).is_ok_and(|(here, _)| here == sha256)
    }

    /// How many photos take the place of damaged ones.
    pub fn healing(&self) -> u64 {
        self.healing.len() as u64
    }

    /// Moves every file with no other in its place under its name, synced, and notes in the transaction that
    /// keeps the entries that they belong to it. The system has had time to write the first by now, so that
    /// syncing them at the end, several at once, costs little.
    ///
    /// # Errors
    /// What the file system or SQLite says; the data folder is then as it was.
    pub fn place(self, merging: &Merging<'_>) -> Result<Placed, StoreFault> {
        if !self.fresh.is_empty() {
            // Only with a note of its own, so that the note of an earlier placing is never taken for one cut off.
            merging.placed(&self.id)?;
        }
        let written = self.fresh.keys().chain(self.healing.keys());
        let written: Vec<PathBuf> = written.map(|name| self.folder.join(name)).collect();
        folders::sync_files(&written).map_err(StoreFault::file)?;
        let mut placed = Placed { moved: BTreeSet::new(), made: Vec::new(), confirmed: false, staging: self };
        placed.move_all().map_err(StoreFault::file)?;
        Ok(placed)
    }
}

impl Placed {
    fn move_all(&mut self) -> io::Result<()> {
        if !self.staging.fresh.is_empty() {
            let files = self.staging.fresh.values().cloned().collect();
            let placing = Placing { id: self.staging.id.clone(), files };
            let json = serde_json::to_vec(&placing)?;
            let passing = self.staging.folder.join(PLACING);
            folders::write_by(&self.staging.data.join(PLACING), &passing, &json)?;
        }
        let mut folders = BTreeSet::new();
        for (name, path) in &self.staging.fresh {
            let to = self.staging.data.join(path);
            let Some(folder) = to.parent() else { continue };
            if !folder.exists() {
                private::folder(folder)?;
                self.made.push(folder.to_owned());
            }
            fs::rename(self.staging.folder.join(name), &to)?;
            self.moved.insert(path.clone());
            folders.insert(folder.to_owned());
        }
        folders.iter().try_for_each(|folder| folders::sync(folder))?;
        if self.made.is_empty() { Ok(()) } else { folders::sync(&self.staging.data) }
    }

    /// The entries are kept: the files stay, and good photos take the place of damaged ones.
    ///
    /// # Errors
    /// [`StoreFault::Unhealed`]: what could not be healed is then as damaged as it was, and all else is kept.
    pub fn confirm(mut self) -> Result<(), StoreFault> {
        self.confirmed = true;
        // First of all: while it stands and another placing is kept, the next start takes this one back. Where it
        // cannot be removed now, it still names the placing that was kept last.
        let _ = folders::remove_if_there(&self.staging.data.join(PLACING));
        let heal = || -> io::Result<()> {
            for (name, path) in &self.staging.healing {
                fs::rename(self.staging.folder.join(name), self.staging.data.join(path))?;
            }
            if !self.staging.healing.is_empty() {
                folders::sync(&self.staging.data.join("photos"))?;
            }
            Ok(())
        };
        heal().map_err(|fault| StoreFault::Unhealed(Box::new(StoreFault::file(fault))))
    }
}

impl Drop for Placed {
    fn drop(&mut self) {
        if self.confirmed {
            return;
        }
        // What cannot be removed now is at the next start.
        for path in &self.moved {
            let _ = fs::remove_file(self.staging.data.join(path));
        }
        for folder in &self.made {
            let _ = fs::remove_dir(folder);
        }
        let _ = fs::remove_file(self.staging.data.join(PLACING));
    }
}

impl Drop for Staging {
    fn drop(&mut self) {
        // Cleared at the next start if it cannot be now.
        let _ = fs::remove_dir_all(&self.folder);
        let _ = fs::remove_dir(self.data.join("incoming"));
    }
}

fn is_photo_path(path: &str) -> bool {
    let hash = path.strip_prefix("photos/").and_then(|name| name.strip_suffix(".jpg"));
    hash.is_some_and(is_hash)
}

fn is_same(path: &Path, bytes: &[u8]) -> bool {
    let long = fs::metadata(path).is_ok_and(|there| there.len() == bytes.len() as u64);
    long && fs::read(path).is_ok_and(|there| there == bytes)
}
