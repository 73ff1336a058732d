//! What a file system has to be told so that a file's name survives a cut as its bytes do, and files by what their
//! bytes come to.

use std::fs::{self, File, OpenOptions};
use std::io::{self, Read, Write};
use std::path::{Path, PathBuf};
use std::thread;

use sha2::{Digest, Sha256};

use super::private;
use crate::model::hex;

/// Bytes read at once.
const CHUNK: usize = 256 * 1024;

/// Puts a folder's own list of names on disk. Windows opens no folder as a file and keeps names by itself.
///
/// # Errors
/// What the file system says.
pub fn sync(folder: &Path) -> io::Result<()> {
    if cfg!(windows) { Ok(()) } else { File::open(folder)?.sync_all() }
}

/// Files that are put on disk at the same time: a disk that is asked for several writes its own log once for all of
/// them.
const AT_ONCE: usize = 8;
/// Fewer files are put on disk one after another.
const FEW: usize = 16;

/// Puts the bytes of files that were written on disk; all of them are there when it returns, in whatever order.
///
/// # Errors
/// What the file system says of one of them.
pub fn sync_files(paths: &[PathBuf]) -> io::Result<()> {
    let sync = |paths: &[PathBuf]| {
        paths.iter().try_for_each(|path| OpenOptions::new().write(true).open(path)?.sync_all())
    };
    if paths.len() < FEW {
        return sync(paths);
    }
    let (mine, others) = paths.split_at(paths.len().div_ceil(AT_ONCE));
    thread::scope(|scope| {
        let begun: Vec<_> = others
            .chunks(mine.len())
            .map(|paths| (paths, thread::Builder::new().spawn_scoped(scope, move || sync(paths))))
            .collect();
        let mut done = sync(mine);
        for (paths, begun) in begun {
            let synced = match begun {
                Ok(begun) => begun.join().unwrap_or_else(|_| Err(io::Error::other("a sync panicked"))),
                // No thread to be had: here, then.
                Err(_) => sync(paths),
            };
            done = done.and(synced);
        }
        done
    })
}

/// Writes a file that is whole under its name or not there at all.
///
/// # Errors
/// What the file system says; what was written so far is gone then.
pub fn write_whole(path: &Path, bytes: &[u8]) -> io::Result<()> {
    write_by(path, &with_ending(path, ".part"), bytes)
}

/// As [`write_whole`], under this passing name first, on the same disk.
///
/// # Errors
/// As [`write_whole`].
pub fn write_by(path: &Path, passing: &Path, bytes: &[u8]) -> io::Result<()> {
    let written = || {
        let mut file = private::create(passing)?;
        file.write_all(bytes)?;
        file.sync_all()?;
        fs::rename(passing, path)?;
        path.parent().map_or(Ok(()), sync)
    };
    written().inspect_err(|_| {
        // Nothing half-written stays; where even that fails the next write replaces it.
        let _ = fs::remove_file(passing);
    })
}

/// Why a file was not copied.
#[derive(Debug)]
pub enum CopyFault {
    /// The one could not be read.
    Read(io::Error),
    /// The other could not be written.
    Write(io::Error),
}

/// Copies a file, not yet synced; gives back the SHA-256, hex, and the length of what was copied.
///
/// # Errors
/// What the file system says, and of which of the two.
pub fn copy_hashed(from: &Path, to: &Path) -> Result<(String, u64), CopyFault> {
    let mut from = plain(from).map_err(CopyFault::Read)?;
    let mut to = private::create(to).map_err(CopyFault::Write)?;
    let mut unwritten = None;
    let copied = read_hashed(&mut from, |piece| {
        to.write_all(piece).map_err(|fault| {
            let kind = fault.kind();
            unwritten = Some(fault);
            kind.into()
        })
    });
    copied.map_err(|fault| unwritten.map_or(CopyFault::Read(fault), CopyFault::Write))
}

/// The bytes of a file, and of nothing else that may lie under its name.
///
/// # Errors
/// What the file system says.
pub fn bytes_of(path: &Path) -> io::Result<Vec<u8>> {
    let mut bytes = Vec::new();
    plain(path)?.read_to_end(&mut bytes)?;
    Ok(bytes)
}

/// Length of a file; none where nothing of that name is there. What cannot be asked is not taken for missing.
///
/// # Errors
/// What the file system says.
pub fn length(path: &Path) -> io::Result<Option<u64>> {
    match fs::metadata(path) {
        Ok(file) => Ok(Some(file.len())),
        Err(error) if error.kind() == io::ErrorKind::NotFound => Ok(None),
        Err(error) => Err(error),
    }
}

/// SHA-256, hex, and length of a file.
///
/// # Errors
/// What the file system says.
pub fn hash_of(path: &Path) -> io::Result<(String, u64)> {
    read_hashed(&mut plain(path)?, |_| Ok(()))
}

/// Opens a file. What else may lie under its name is no file: a pipe would be waited for, and a device has no end.
///
/// # Errors
/// What the file system says.
pub fn plain(path: &Path) -> io::Result<File> {
    if fs::metadata(path)?.is_file() {
        File::open(path)
    } else {
        Err(io::Error::new(io::ErrorKind::NotFound, "there is no file"))
    }
}

fn read_hashed(
    from: &mut dyn Read,
    mut each: impl FnMut(&[u8]) -> io::Result<()>,
) -> io::Result<(String, u64)> {
    let (mut digest, mut bytes) = (Sha256::new(), 0);
    let mut piece = vec![0; CHUNK];
    loop {
        let read = match from.read(&mut piece) {
            Ok(read) => read,
            Err(error) if error.kind() == io::ErrorKind::Interrupted => continue,
            Err(error) => return Err(error),
        };
        let Some(read) = piece.get(..read).filter(|read| !read.is_empty()) else {
            return Ok((hex::encode(&digest.finalize()), bytes));
        };
        digest.update(read);
        each(read)?;
        bytes += read.len() as u64;
    }
}

/// Removes a file, if it is there.
///
/// # Errors
/// What the file system says.
pub fn remove_if_there(path: &Path) -> io::Result<()> {
    match fs::remove_file(path) {
        Err(error) if error.kind() != io::ErrorKind::NotFound => Err(error),
        _ => Ok(()),
    }
}

/// Removes what is ours in a folder, by its name, and the folder where nothing of anybody else's is in it. What cannot be
/// removed now is tried again at the next start.
pub fn clear(folder: &Path, is_ours: impl Fn(&str) -> bool) {
    for file in fs::read_dir(folder).into_iter().flatten().flatten() {
        if !is_ours(&file.file_name().to_string_lossy()) {
            continue;
        }
        let is_folder = file.file_type().is_ok_and(|kind| kind.is_dir());
        let _ = if is_folder { fs::remove_dir_all(file.path()) } else { fs::remove_file(file.path()) };
    }
    let _ = fs::remove_dir(folder);
}

/// The same path with something put behind its name.
pub fn with_ending(path: &Path, ending: &str) -> PathBuf {
    let mut name = path.as_os_str().to_owned();
    name.push(ending);
    name.into()
}

#[cfg(test)]
mod tests {
    use super::{FEW, sync_files};
    use std::path::PathBuf;

    #[test]
    fn one_file_of_many_that_cannot_be_put_on_disk_is_told() {
        let folder = tempfile::tempdir().expect("a folder");
        let paths: Vec<PathBuf> = (0..3 * FEW).map(|number| folder.path().join(number.to_string())).collect();
        for path in &paths {
            std::fs::write(path, b"written").expect("written");
        }
        for few in [&paths[..0], &paths[..1], &paths[..FEW], &paths[..]] {
            assert!(sync_files(few).is_ok(), "{}", few.len());
        }
        for gone in [0, FEW, paths.len() - 1] {
            std::fs::remove_file(&paths[gone]).expect("removed");
            assert!(sync_files(&paths).is_err(), "without {gone}");
            std::fs::write(&paths[gone], b"written").expect("written");
        }
    }
}
