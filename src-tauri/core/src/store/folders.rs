//! What a file system has to be told so that a file's name survives a cut as its bytes do.

use std::fs::{self, File};
use std::io::{self, Write};
use std::path::{Path, PathBuf};

use super::private;

/// Puts a folder's own list of names on disk. Windows opens no folder as a file and keeps names by itself.
///
/// # Errors
/// What the file system says.
pub fn sync(folder: &Path) -> io::Result<()> {
    if cfg!(windows) { Ok(()) } else { File::open(folder)?.sync_all() }
}

/// Writes a file that is whole under its name or not there at all.
///
/// # Errors
/// What the file system says; what was written so far is gone then.
pub fn write_whole(path: &Path, bytes: &[u8]) -> io::Result<()> {
    let part = beside(path, ".part");
    let written = || {
        let mut file = private::create(&part)?;
        file.write_all(bytes)?;
        file.sync_all()?;
        fs::rename(&part, path)?;
        path.parent().map_or(Ok(()), sync)
    };
    written().inspect_err(|_| {
        // Nothing half-written stays; where even that fails the next write replaces it.
        let _ = fs::remove_file(&part);
    })
}

/// The same path with something put behind its name.
pub fn beside(path: &Path, ending: &str) -> PathBuf {
    let mut name = path.as_os_str().to_owned();
    name.push(ending);
    name.into()
}
