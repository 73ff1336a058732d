//! The folder of the practice visit: a data folder of its own inside this one.

use std::fs;
use std::io::ErrorKind;
use std::path::PathBuf;

use super::fault::StoreFault;
use super::open::Store;

/// Name of the folder inside the data folder.
const FOLDER: &str = "practice";

impl Store {
    /// Where the practice visit is kept.
    pub fn practice_folder(&self) -> PathBuf {
        self.folder().join(FOLDER)
    }

    /// Leaves nothing of a practice visit.
    ///
    /// # Errors
    /// What the file system says.
    pub fn clear_practice(&self) -> Result<(), StoreFault> {
        match fs::remove_dir_all(self.practice_folder()) {
            Err(error) if error.kind() != ErrorKind::NotFound => Err(StoreFault::file(error)),
            _ => Ok(()),
        }
    }
}
