//! Photos of a handover file on their way in: whole and synced in a folder of their own first, moved under
//! their names together, before the entries that name them are kept. What is left after a crash is cleared
//! at the next start with the uploads.

use std::collections::BTreeSet;
use std::fs::{self, File, OpenOptions};
use std::path::PathBuf;

use super::fault::StoreFault;
use super::folders::sync;
use super::open::Store;
use super::photo_files::PhotoSize;
use super::private;

/// Photos gathered and not yet kept; dropped, they are gone.
#[derive(Debug)]
pub struct Staging {
    folder: PathBuf,
    photos: PathBuf,
    names: BTreeSet<String>,
}

impl Store {
    /// An empty staging folder.
    ///
    /// # Errors
    /// What the file system says.
    pub fn staging(&self) -> Result<Staging, StoreFault> {
        let folder = self.folder.join("incoming").join("handover");
        if folder.exists() {
            fs::remove_dir_all(&folder).map_err(StoreFault::file)?;
        }
        private::folder(&folder).map_err(StoreFault::file)?;
        Ok(Staging { folder, photos: self.folder.join("photos"), names: BTreeSet::new() })
    }

    /// Whether a photo's file is there.
    pub fn has_photo(&self, sha256: &str, size: PhotoSize) -> bool {
        self.photo_path(sha256, size).is_file()
    }

    /// A photo's file, for reading piece by piece.
    ///
    /// # Errors
    /// What the file system says.
    pub fn photo_file(&self, sha256: &str, size: PhotoSize) -> std::io::Result<File> {
        File::open(self.photo_path(sha256, size))
    }
}

impl Staging {
    /// Keeps a photo's bytes for later; nothing if a file of that name is here or has been added.
    ///
    /// # Errors
    /// What the file system says.
    pub fn add(&mut self, name: &str, bytes: &[u8]) -> Result<(), StoreFault> {
        if self.names.contains(name) || self.photos.join(name).exists() {
            return Ok(());
        }
        private::write(&self.folder.join(name), bytes).map_err(StoreFault::file)?;
        self.names.insert(name.to_owned());
        Ok(())
    }

    /// Moves every photo under its name, synced. The system has had time to write the first by now, so
    /// that syncing one by one at the end costs little.
    ///
    /// # Errors
    /// What the file system says.
    pub fn keep(self) -> Result<(), StoreFault> {
        for name in &self.names {
            let file =
                OpenOptions::new().write(true).open(self.folder.join(name)).map_err(StoreFault::file)?;
            file.sync_all().map_err(StoreFault::file)?;
        }
        for name in &self.names {
            fs::rename(self.folder.join(name), self.photos.join(name)).map_err(StoreFault::file)?;
        }
        sync(&self.photos).map_err(StoreFault::file)
    }
}

impl Drop for Staging {
    fn drop(&mut self) {
        // Cleared at the next start if it cannot be now.
        let _ = fs::remove_dir_all(&self.folder);
    }
}
