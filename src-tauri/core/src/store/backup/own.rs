//! The workshop's own files as a backup takes them: layouts, and causes with their signs.

use std::fs;
use std::path::{Path, PathBuf};

use super::list::is_own_path;
use crate::model::limits;
use crate::store::open::OWN_FOLDERS;

/// Those that are taken and those that are not.
#[derive(Debug, Default)]
pub struct OwnFiles {
    /// Path in the data folder, and where the file is.
    pub taken: Vec<(String, PathBuf)>,
    /// Paths of those that are larger than any that is taken in, of a name that not every system takes, or too many.
    pub left_out: Vec<String>,
}

/// The own files of a data folder, as many of each folder as are taken in, in name order. What cannot be looked at now is
/// not among them.
pub fn own_files(data: &Path) -> OwnFiles {
    let mut own = OwnFiles::default();
    for folder in OWN_FOLDERS {
        let mut files: Vec<_> = fs::read_dir(data.join(folder)).into_iter().flatten().flatten().collect();
        files.sort_by_key(fs::DirEntry::file_name);
        let mut count = 0;
        for file in files {
            let name = file.file_name();
            let path = format!("{folder}/{}", name.to_string_lossy());
            let Ok(found) = fs::metadata(file.path()) else { continue };
            if !found.is_file() || !path.ends_with(".toml") {
                continue;
            }
            // Of two names that are no text, both would read the same.
            let fits = found.len() <= limits::OWN_FILE_BYTES && name.len() <= limits::OWN_NAME_BYTES;
            if fits && count < limits::OWN_FILES && name.to_str().is_some() && is_own_path(&path) {
                count += 1;
                own.taken.push((path, file.path()));
            } else {
                own.left_out.push(path);
            }
        }
    }
    own
}
