//! The workshop's own files: layouts and rows of knowledge in folders of the data folder.

use std::fs;
use std::path::Path;

use super::fault::StoreFault;
use super::open::{OWN_FOLDERS, Store};

impl Store {
    /// Copies the workshop's own files into another data folder; what is there stays.
    ///
    /// # Errors
    /// What the file system says.
    pub fn copy_own_files(&self, to: &Path) -> Result<(), StoreFault> {
        for own in OWN_FOLDERS {
            let Ok(files) = fs::read_dir(self.folder.join(own)) else { continue };
            let paths = files.flatten().map(|file| file.path());
            for path in paths.filter(|path| path.is_file() && is_toml(path)) {
                let folder = to.join(own);
                fs::create_dir_all(&folder).map_err(StoreFault::file)?;
                let target = path.file_name().map(|name| folder.join(name));
                if let Some(target) = target.filter(|target| !target.exists()) {
                    fs::copy(&path, target).map_err(StoreFault::file)?;
                }
            }
        }
        Ok(())
    }
}

fn is_toml(path: &Path) -> bool {
    path.extension().is_some_and(|ending| ending == "toml")
}
