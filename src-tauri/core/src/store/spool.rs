//! What is made once and read twice, on disk for as long as an export takes. What a kill leaves behind is cleared
//! with the files on their way out.

use std::fs::{self, File};
use std::io;
use std::path::PathBuf;

use crate::model::fresh_id::fresh_id;

use super::open::Store;
use super::private;

/// Files by name; dropped, they are gone.
#[derive(Debug)]
pub struct Spool {
    folder: PathBuf,
    names: Vec<String>,
}

impl Store {
    /// An empty spool. Its folder is made with the first file.
    pub fn spool(&self) -> Spool {
        let folder = self.folder.join("outgoing").join(format!("{}.spool", fresh_id().simple()));
        Spool { folder, names: Vec::new() }
    }
}

impl Spool {
    /// The file of this name; made first where it has not been.
    ///
    /// # Errors
    /// What `make` or the file system says.
    pub fn or_put(&mut self, name: &str, make: impl FnOnce() -> io::Result<Vec<u8>>) -> io::Result<File> {
        let place = self.names.iter().position(|known| known == name);
        let path = |place: usize| self.folder.join(place.to_string());
        if let Some(place) = place {
            return File::open(path(place));
        }
        let bytes = make()?;
        private::folder(&self.folder)?;
        let path = path(self.names.len());
        private::write(&path, &bytes)?;
        self.names.push(name.to_owned());
        File::open(path)
    }
}

impl Drop for Spool {
    fn drop(&mut self) {
        // What cannot be removed now is cleared at the next start.
        let _ = fs::remove_dir_all(&self.folder);
    }
}
