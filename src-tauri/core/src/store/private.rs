//! Files of one account alone. A data folder holds owners' names and the device's own key, and other accounts of the
//! same computer have no business in it.

use std::fs::{self, DirBuilder, File, OpenOptions};
use std::io::{self, Write as _};
use std::path::Path;

use super::names::{self, Lies};

/// Makes a folder, and those above it that are missing, of this account alone.
///
/// # Errors
/// What the file system says.
pub fn folder(path: &Path) -> io::Result<()> {
    let mut builder = DirBuilder::new();
    builder.recursive(true);
    #[cfg(unix)]
    std::os::unix::fs::DirBuilderExt::mode(&mut builder, FOLDER);
    builder.create(path)
}

/// A new, empty file of this account alone, in place of any of its name. A link of that name goes, and what it
/// leads to stays as it is.
///
/// # Errors
/// What the file system says.
pub fn create(path: &Path) -> io::Result<File> {
    match fs::remove_file(path) {
        Err(error) if error.kind() != io::ErrorKind::NotFound => return Err(error),
        _ => {}
    }
    let mut options = OpenOptions::new();
    options.write(true).create_new(true);
    #[cfg(unix)]
    std::os::unix::fs::OpenOptionsExt::mode(&mut options, FILE);
    options.open(path)
}

/// A file of this account alone that is only held, such as one that is locked: what is in it stays. Whoever may not
/// open it cannot lock it either.
///
/// # Errors
/// What the file system says.
pub fn held(path: &Path) -> io::Result<File> {
    let mut options = OpenOptions::new();
    options.write(true).create(true).truncate(false);
    #[cfg(unix)]
    std::os::unix::fs::OpenOptionsExt::mode(&mut options, FILE);
    let file = options.open(path)?;
    // One that was there keeps its mode.
    close(path, FILE);
    Ok(file)
}

/// Writes such a file.
///
/// # Errors
/// What the file system says.
pub fn write(path: &Path, bytes: &[u8]) -> io::Result<()> {
    create(path)?.write_all(bytes)
}

/// Closes a data folder and what Steady keeps in it to other accounts, as far as that can be done: some file systems
/// know no accounts, and a file of somebody else stays theirs. What a link leads to is left alone, and so is whatever
/// else a person keeps in the same folder.
pub(super) fn mend(folder: &Path) {
    close(folder, FOLDER);
    for entry in fs::read_dir(folder).into_iter().flatten().flatten() {
        let Ok(kind) = entry.file_type() else { continue };
        match names::lies_in(&entry.file_name().to_string_lossy()) {
            Some(Lies::File) if kind.is_file() => close(&entry.path(), FILE),
            Some(Lies::Folder) if kind.is_dir() => close_all(&entry.path(), false),
            Some(Lies::Tree) if kind.is_dir() => close_all(&entry.path(), true),
            _ => {}
        }
    }
}

/// Closes a folder and its files, and those in folders inside it where `deep` says so.
fn close_all(folder: &Path, deep: bool) {
    close(folder, FOLDER);
    for entry in fs::read_dir(folder).into_iter().flatten().flatten() {
        match entry.file_type() {
            Ok(kind) if kind.is_dir() && deep => close_all(&entry.path(), true),
            Ok(kind) if kind.is_file() => close(&entry.path(), FILE),
            _ => {}
        }
    }
}

/// Read, write and enter, for the owner.
const FOLDER: u32 = 0o700;
/// Read and write, for the owner.
const FILE: u32 = 0o600;

#[cfg(unix)]
fn close(path: &Path, mode: u32) {
    use std::os::unix::fs::PermissionsExt as _;
    let open = fs::metadata(path).is_ok_and(|there| there.permissions().mode() & 0o077 != 0);
    if open {
        let _ = fs::set_permissions(path, fs::Permissions::from_mode(mode));
    }
}

/// Elsewhere a person's own folders are theirs by what lies above them.
#[cfg(not(unix))]
fn close(_: &Path, _: u32) {}
