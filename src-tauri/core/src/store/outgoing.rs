//! Files on their way out, papers and handover files: kept for a shell to fetch or to share by their id, the latest
//! few of them, and cleared at the next start and when a visit is erased.

use std::fs::{self, File};
use std::io::{self, Read, Write as _};
use std::path::PathBuf;

use uuid::Uuid;

use crate::model::fresh_id::fresh_id;

use super::backup::file::BackupReader;
use super::fault::StoreFault;
use super::open::Store;
use super::{folders, names, private};

/// A file on its way out, to be read from its beginning.
#[derive(Debug)]
pub enum OutgoingFile {
    /// One that is on disk as it goes out.
    Plain(File),
    /// A backup, worked out as it is read: as a copy it could take half of a phone.
    Backup(BackupReader),
}

impl Read for OutgoingFile {
    fn read(&mut self, to: &mut [u8]) -> io::Result<usize> {
        match self {
            Self::Plain(file) => file.read(to),
            Self::Backup(file) => file.read(to),
        }
    }
}

/// As many files wait at once: a person has made one and looks at it while another is made.
const KEPT: usize = 4;

impl Store {
    /// A new, empty file, and its id. The eldest goes where there are enough.
    ///
    /// # Errors
    /// What the file system says.
    pub fn outgoing(&self) -> Result<(String, File), StoreFault> {
        let folder = self.folder.join("outgoing");
        private::folder(&folder).map_err(StoreFault::file)?;
        let mut waiting: Vec<PathBuf> =
            fs::read_dir(&folder).map_err(StoreFault::file)?.flatten().map(|file| file.path()).collect();
        waiting.retain(|path| path.is_file());
        // Ids begin with the time they were made at.
        waiting.sort();
        for eldest in waiting.iter().rev().skip(KEPT - 1) {
            // One that is being read stays where the system holds on to it.
            let _ = fs::remove_file(eldest);
        }
        let id = fresh_id().simple().to_string();
        let file = private::create(&folder.join(&id)).map_err(StoreFault::file)?;
        Ok((id, file))
    }

    /// Keeps bytes as such a file, and gives its id.
    ///
    /// # Errors
    /// What the file system says; nothing is kept then.
    pub fn put_out(&self, bytes: &[u8]) -> Result<String, StoreFault> {
        let (id, mut file) = self.outgoing()?;
        file.write_all(bytes).map_err(|fault| {
            self.drop_outgoing(&id);
            StoreFault::file(fault)
        })?;
        Ok(id)
    }

    /// Forgets such a file: one that came to nothing takes no room.
    pub fn drop_outgoing(&self, id: &str) {
        // Cleared at the next start if it cannot be now.
        let _ = fs::remove_file(self.outgoing_path(id));
    }

    /// The file with this id.
    ///
    /// # Errors
    /// [`StoreFault::UploadUnknown`] if there is none, or none any longer.
    pub fn taken_out(&self, id: &str) -> Result<OutgoingFile, StoreFault> {
        let id = Uuid::try_parse(id).map_err(|_| StoreFault::UploadUnknown)?;
        let file = File::open(self.outgoing_path(&id.simple().to_string()));
        file.map(OutgoingFile::Plain).map_err(|_| StoreFault::UploadUnknown)
    }

    pub(super) fn clear_outgoing(&self) {
        // Copies: everything in them stands in the ledger.
        folders::clear(&self.folder.join("outgoing"), names::is_of_id);
    }

    fn outgoing_path(&self, id: &str) -> PathBuf {
        self.folder.join("outgoing").join(id)
    }
}
