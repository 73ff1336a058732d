//! Data folders inside the data folder: the practice visit's, and those that a case is rehearsed in.

use std::io::ErrorKind;
use std::path::PathBuf;

use crate::model::fresh_id::fresh_id;

use super::fault::StoreFault;
use super::open::{DATABASE, Store};
use super::{folders, names};

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
        // Nothing of ours in there is of a visit that is kept.
        folders::clear(&self.folder().join(REHEARSALS), names::is_of_id);
    }

    /// Leaves nothing of a practice visit.
    ///
    /// # Errors
    /// What the file system says.
    pub fn clear_practice(&self) -> Result<(), StoreFault> {
        folders::clear(&self.practice_folder(), |name| names::lies_in(name).is_some());
        let is_left = self.practice_folder().join(DATABASE).exists();
        if is_left { Err(StoreFault::file(ErrorKind::PermissionDenied.into())) } else { Ok(()) }
    }
}
