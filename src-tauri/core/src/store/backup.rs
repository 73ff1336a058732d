//! A backup is a folder with a whole copy of the database, every photo and the workshop's own knowledge. It
//! mirrors: what was erased here is gone from it too once the next backup is made there. The device's id
//! and key stay behind, so that a restored copy never writes under this device's name.

use std::fs::{self, File};
use std::path::Path;

use rusqlite::{Connection, params};

use super::fault::StoreFault;
use super::keys;
use super::open::{DATABASE, OWN_FOLDERS, Store};

/// What a backup holds.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct BackedUp {
    /// Visits.
    pub visits: u64,
    /// Photo files, thumbnails counted.
    pub photos: u64,
}

impl Store {
    /// Makes or renews a backup.
    ///
    /// # Errors
    /// [`StoreFault::NotABackup`] for a folder that holds something else, or what the disk says; an earlier
    /// backup's database stands until the new one is whole.
    pub fn backup(&self, folder: &Path) -> Result<BackedUp, StoreFault> {
        is_ours_or_empty(folder)?;
        let photos = mirror(&self.folder.join("photos"), &folder.join("photos"), ".jpg")?;
        for own in OWN_FOLDERS {
            mirror(&self.folder.join(own), &folder.join(own), ".toml")?;
        }
        let (part, whole) = (folder.join("steady.db.part"), folder.join(DATABASE));
        if part.exists() {
            fs::remove_file(&part).map_err(StoreFault::file)?;
        }
        copy(&self.connection, &part).map_err(StoreFault::sql("back up"))?;
        File::open(&part).and_then(|file| file.sync_all()).map_err(StoreFault::file)?;
        fs::rename(&part, &whole).map_err(StoreFault::file)?;
        File::open(folder).and_then(|folder| folder.sync_all()).map_err(StoreFault::file)?;
        Ok(BackedUp { visits: self.visits()?, photos })
    }

    /// Takes over the workshop's own files of a backup that are not here yet.
    ///
    /// # Errors
    /// What the file system says.
    pub fn take_own_files(&self, backup: &Path) -> Result<(), StoreFault> {
        OWN_FOLDERS.iter().try_for_each(|own| take_files(&backup.join(own), &self.folder.join(own)))
    }
}

impl Store {
    /// Copies the workshop's own files into another data folder.
    ///
    /// # Errors
    /// What the file system says.
    pub fn copy_own_files(&self, to: &Path) -> Result<(), StoreFault> {
        OWN_FOLDERS.iter().try_for_each(|own| take_files(&self.folder.join(own), &to.join(own)))
    }
}

fn take_files(from: &Path, to: &Path) -> Result<(), StoreFault> {
    for name in names(from, ".toml")? {
        fs::create_dir_all(to).map_err(StoreFault::file)?;
        if !to.join(&name).exists() {
            fs::copy(from.join(&name), to.join(&name)).map_err(StoreFault::file)?;
        }
    }
    Ok(())
}

fn is_ours_or_empty(folder: &Path) -> Result<(), StoreFault> {
    fs::create_dir_all(folder).map_err(StoreFault::file)?;
    let filled = fs::read_dir(folder).map_err(StoreFault::file)?.next().is_some();
    // A lock says that somebody works in there: a data folder is no backup.
    let ours = folder.join("photos").is_dir() && !folder.join("lock").exists();
    if filled && !ours { Err(StoreFault::NotABackup) } else { Ok(()) }
}

fn copy(connection: &Connection, to: &Path) -> Result<(), rusqlite::Error> {
    connection.execute("VACUUM INTO ?1", [to.to_string_lossy()])?;
    let copied = Connection::open(to)?;
    copied.query_row("PRAGMA secure_delete = ON", [], |_| Ok(()))?;
    for name in keys::OWN {
        copied.execute("DELETE FROM setting WHERE name = ?1", params![name])?;
    }
    copied.close().map_err(|(_, fault)| fault)
}

/// Makes one folder like another as far as files of an ending go; gives back how many there are.
fn mirror(from: &Path, to: &Path, ending: &str) -> Result<u64, StoreFault> {
    fs::create_dir_all(to).map_err(StoreFault::file)?;
    let wanted = names(from, ending)?;
    for name in &wanted {
        copy_synced(&from.join(name), &to.join(name))?;
    }
    for name in names(to, ending)?.iter().filter(|name| !wanted.contains(*name)) {
        fs::remove_file(to.join(name)).map_err(StoreFault::file)?;
    }
    File::open(to).and_then(|folder| folder.sync_all()).map_err(StoreFault::file)?;
    Ok(wanted.len() as u64)
}

/// Copies a file unless one of the same length and no older is there.
fn copy_synced(from: &Path, to: &Path) -> Result<(), StoreFault> {
    let copy = || -> std::io::Result<()> {
        let here = fs::metadata(from)?;
        let is_there = fs::metadata(to)
            .is_ok_and(|there| there.len() == here.len() && there.modified().ok() >= here.modified().ok());
        if is_there {
            return Ok(());
        }
        let part = to.with_extension("part");
        fs::copy(from, &part)?;
        fs::OpenOptions::new().write(true).open(&part)?.sync_all()?;
        fs::rename(part, to)
    };
    copy().map_err(StoreFault::file)
}

/// Names of a folder's files with an ending, in order; none if there is no such folder.
fn names(folder: &Path, ending: &str) -> Result<std::collections::BTreeSet<String>, StoreFault> {
    if !folder.exists() {
        return Ok(std::collections::BTreeSet::new());
    }
    let files = fs::read_dir(folder).map_err(StoreFault::file)?.flatten();
    let plain =
        |file: fs::DirEntry| file.file_name().into_string().ok().filter(|name| name.ends_with(ending));
    Ok(files.filter(|file| file.path().is_file()).filter_map(plain).collect())
}
