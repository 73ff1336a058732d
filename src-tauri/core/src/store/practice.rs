//! Data folders inside the data folder: the practice visit's, and those that a case is rehearsed in.

use std::fs;
use std::io::ErrorKind;
use std::path::PathBuf;

use crate::model::fresh_id::fresh_id;

use super::fault::StoreFault;
use super::open::Store;

/// The practice visit's folder inside the data folder.
const FOLDER: &str = "practice";
/// The folder of rehearsals, each in one of its own.
const REHEARSALS: &str = "rehearsals";

impl Store {
    /// Where the practice visit is kept.
    pub fn practice_folder(&self) -> PathBuf {
        self.folder().join(FOLDER)
    }

    /// A place for a rehearsal. What a kill leaves there goes at the next start.
    pub fn rehearsal_folder(&self) -> PathBuf {
        self.folder().join(REHEARSALS).join(fresh_id().simple().to_string())
    }

    /// Leaves nothing of any rehearsal.
    pub fn clear_rehearsals(&self) {
        // Nothing in there is of a visit that is kept; what cannot be removed now is tried again at the next start.
        let _ = fs::remove_dir_all(self.folder().join(REHEARSALS));
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
