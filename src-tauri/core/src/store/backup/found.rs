//! What lies in a folder of a backup. No link is followed.

use std::fs;
use std::path::Path;

use super::fault::BackupFault;
use crate::store::fault::StoreFault;

/// What lies in a folder.
pub struct Found {
    pub name: String,
    /// Whether it is a file, and not a folder.
    pub is_file: bool,
    pub bytes: u64,
}

/// What lies in a folder, in order of names.
///
/// # Errors
/// [`BackupFault::Link`] where something is neither file nor folder, or what the file system says.
pub fn entries(folder: &Path) -> Result<Vec<Found>, StoreFault> {
    let kind = fs::symlink_metadata(folder).map_err(StoreFault::file)?;
    if !kind.is_dir() {
        return Err(BackupFault::Link.into());
    }
    let mut found = Vec::new();
    for entry in fs::read_dir(folder).map_err(StoreFault::file)? {
        let entry = entry.map_err(StoreFault::file)?;
        // Of the entry itself: a link is not followed.
        let kind = entry.metadata().map_err(StoreFault::file)?;
        if !kind.is_file() && !kind.is_dir() {
            return Err(BackupFault::Link.into());
        }
        let name = entry.file_name().to_string_lossy().into_owned();
        found.push(Found { name, is_file: kind.is_file(), bytes: kind.len() });
    }
    found.sort_by(|a, b| a.name.cmp(&b.name));
    Ok(found)
}
