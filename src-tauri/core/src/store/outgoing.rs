//! A handover file on its way to a screen: one at a time, in pieces, cleared at the next start.

use std::fs::{self, File};
use std::io::{Read, Seek, SeekFrom};
use std::path::PathBuf;

use super::fault::StoreFault;
use super::open::Store;
use super::uploads::MAX_PIECE_BYTES;

impl Store {
    /// A new, empty file of this name (a UUID) in place of any earlier one.
    ///
    /// # Errors
    /// What the file system says.
    pub fn outgoing(&self, export: &str) -> Result<File, StoreFault> {
        self.clear_outgoing();
        let path = self.outgoing_path(export)?;
        fs::create_dir_all(self.folder.join("outgoing")).map_err(StoreFault::file)?;
        File::create(path).map_err(StoreFault::file)
    }

    /// A piece of it; empty after the last.
    ///
    /// # Errors
    /// [`StoreFault::UploadUnknown`] if there is no such file.
    pub fn outgoing_piece(&self, export: &str, index: u32) -> Result<Vec<u8>, StoreFault> {
        let mut file = File::open(self.outgoing_path(export)?).map_err(|_| StoreFault::UploadUnknown)?;
        let mut piece = Vec::new();
        file.seek(SeekFrom::Start(u64::from(index) * MAX_PIECE_BYTES)).map_err(StoreFault::file)?;
        file.take(MAX_PIECE_BYTES).read_to_end(&mut piece).map_err(StoreFault::file)?;
        Ok(piece)
    }

    pub(super) fn clear_outgoing(&self) {
        // A copy: everything in it stands in the ledger.
        let _ = fs::remove_dir_all(self.folder.join("outgoing"));
    }

    fn outgoing_path(&self, export: &str) -> Result<PathBuf, StoreFault> {
        let id = uuid::Uuid::try_parse(export).map_err(|_| StoreFault::UploadUnknown)?;
        Ok(self.folder.join("outgoing").join(id.simple().to_string()))
    }
}
