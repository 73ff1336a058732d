//! Where output goes: whole under its name or not at all, in the place of nothing that is there unless that is asked
//! for, and never among the files of the data folder.

use std::fs::{self, File};
use std::io::{self, Seek as _, Write};
use std::path::{Path, PathBuf};

use steady_core::app::failure::Failure;
use steady_core::store::backup::MARKER;
use steady_core::store::open::holds_ledger;
use tempfile::NamedTempFile;

use crate::fault;

/// What may be done at the place of an output.
#[derive(Debug, Clone, Copy)]
pub struct Leave<'a> {
    /// A file that is there may be replaced.
    pub replace: bool,
    /// The data folder, where nothing may be written.
    pub data: &'a Path,
}

/// A file on its way: written beside its target under a passing name, gone unless it is kept.
#[derive(Debug)]
pub struct Output {
    file: NamedTempFile,
    target: PathBuf,
    replace: bool,
}

impl Output {
    /// Begins a file, if it may stand there at all.
    ///
    /// # Errors
    /// `out-in-data-folder`, `out-exists`, `out-disk-full` or `out-unwritable`.
    pub fn begin(target: &Path, leave: Leave<'_>) -> Result<Self, Failure> {
        let folder = target.parent().filter(|folder| !folder.as_os_str().is_empty());
        let folder = folder.unwrap_or_else(|| Path::new("."));
        if is_inside(target, folder, leave.data) {
            return Err(fault::failure(
                "out-in-data-folder",
                "the output would stand among Steady's own files",
                "Name a place outside the data folder. Nothing was written.",
            ));
        }
        if is_of_steady(folder) {
            return Err(fault::failure(
                "out-in-data-folder",
                "the output would stand among the files of a data folder or of a backup",
                "Name a place outside of it. Nothing was written.",
            ));
        }
        if target.is_dir() {
            return Err(unwritten(&io::ErrorKind::IsADirectory.into()));
        }
        if !leave.replace && fs::symlink_metadata(target).is_ok() {
            return Err(exists());
        }
        let mut beside = tempfile::Builder::new();
        beside.prefix(".steady-").suffix(".part");
        readable(&mut beside);
        let file = beside.tempfile_in(folder).map_err(|error| unwritten(&error))?;
        Ok(Self { file, target: target.to_owned(), replace: leave.replace })
    }

    /// Puts bytes there in place of what was written so far.
    ///
    /// # Errors
    /// `out-disk-full` or `out-unwritable`.
    pub fn fill(&mut self, bytes: &[u8]) -> Result<(), Failure> {
        let file = self.file.as_file_mut();
        // Over what stands there, which takes no room that a disk may no longer have.
        let filled = file.rewind().and_then(|()| file.write_all(bytes));
        let cut = filled.and_then(|()| file.set_len(bytes.len() as u64));
        cut.and_then(|()| file.sync_all()).map_err(|error| unwritten(&error))
    }

    /// The file itself, for whoever writes it piece by piece.
    pub fn file(&mut self) -> &mut File {
        self.file.as_file_mut()
    }

    /// Gives the file its name, once it is on disk.
    ///
    /// # Errors
    /// `out-exists` where something came there meanwhile, `out-disk-full` or `out-unwritable`.
    pub fn persist(self) -> Result<PathBuf, Failure> {
        let Self { file, target, replace } = self;
        file.as_file().sync_all().map_err(|error| unwritten(&error))?;
        let named = if replace { file.persist(&target) } else { file.persist_noclobber(&target) };
        named.map_err(|fault| match fault.error.kind() {
            io::ErrorKind::AlreadyExists => exists(),
            _ => unwritten(&fault.error),
        })?;
        Ok(target)
    }
}

/// Other programs and other people read what comes out, as far as the account lets them.
#[cfg(unix)]
fn readable(beside: &mut tempfile::Builder<'_, '_>) {
    use std::os::unix::fs::PermissionsExt as _;
    beside.permissions(fs::Permissions::from_mode(0o666));
}

#[cfg(not(unix))]
fn readable(_: &mut tempfile::Builder<'_, '_>) {}

/// Whether a target stands in a folder, through whatever links and dots.
fn is_inside(target: &Path, folder: &Path, data: &Path) -> bool {
    let Ok(data) = data.canonicalize() else { return false };
    let leads = |path: &Path| path.canonicalize().is_ok_and(|path| path.starts_with(&data));
    leads(folder) || leads(target)
}

/// Whether a folder is, or lies in, a data folder or a backup, whosever.
pub fn is_of_steady(folder: &Path) -> bool {
    let Ok(folder) = folder.canonicalize() else { return false };
    folder.ancestors().any(|above| holds_ledger(above) || above.join(MARKER).exists())
}

fn exists() -> Failure {
    fault::failure(
        "out-exists",
        "there is a file of that name already",
        "Name another, or add --replace to put the new one in its place. Nothing was written.",
    )
}

/// What the system said of an output, as a failure.
pub fn unwritten(error: &io::Error) -> Failure {
    if matches!(error.kind(), io::ErrorKind::StorageFull | io::ErrorKind::QuotaExceeded) {
        return fault::failure(
            "out-disk-full",
            "there is no room left where the output goes",
            "Free some space there, or name a place on another disk. No half-written file was left, and no visit was touched.",
        );
    }
    fault::failure(
        "out-unwritable",
        format!("the output: {}", fault::cause(error)),
        "Name another place that you may write to.",
    )
}
