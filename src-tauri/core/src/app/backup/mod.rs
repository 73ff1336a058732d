//! Backups as a shell asks for them: made beside whoever works on the data folder, listed, and restored.

mod file;
mod restore;

use std::path::Path;
use std::sync::PoisonError;

use serde::Serialize;

use super::failure::Failure;
use super::fault::Fault;
use super::handover::Imported;
use super::steady::{Steady, shown};
use crate::model::time::Moment;
use crate::store::backup::fault::BackupFault;
use crate::store::backup::{self, read};
use crate::store::fault::StoreFault;

pub use crate::store::backup::check::{Checked, Damage};
pub use crate::store::backup::{BackedUp, Progress};
pub use file::BackupReady;
pub(super) use file::{Prepared, restore_upload, take_piece};

/// A generation of a backup.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct GenerationSeen {
    /// Its time, RFC 3339: what to restore it by.
    pub generation: String,
    /// Visits that its list names.
    pub visits: u64,
    /// Photos that its list names, each once.
    pub photos: u64,
    /// Photos that were nowhere when it was made.
    pub photos_missing: u64,
}

/// What a restored generation brought.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct Restored {
    /// What changed here.
    #[serde(flatten)]
    pub imported: Imported,
    /// It is a backup of another data folder, and visits were here: whom that one trusts and what was erased there did
    /// not come along.
    pub of_another: bool,
    /// The generation's time, RFC 3339; none of a bare copy that an earlier Steady made.
    pub generation: Option<String>,
    /// Visits that go on differently here, and stay as they are here.
    pub lost: Vec<String>,
    /// Visits that are damaged in the backup, and were left there.
    pub visits_damaged: Vec<String>,
    /// The workshop's own files that are damaged in the backup, and its damaged lists. All else came.
    pub files_damaged: Vec<String>,
    /// Photos that were damaged here and are whole again.
    #[cfg_attr(feature = "bindings", ts(type = "number"))]
    pub photos_healed: u64,
    /// Devices about which what was decided there came along.
    #[cfg_attr(feature = "bindings", ts(type = "number"))]
    pub devices: u64,
    /// Photos that are named and are whole neither here nor in the backup.
    #[cfg_attr(feature = "bindings", ts(type = "number"))]
    pub photos_missing: u64,
}

/// Backs up a data folder that nobody has to have opened.
///
/// # Errors
/// A [`Failure`] that says what to do; every earlier generation still stands.
pub fn back_up(
    data: &Path,
    folder: &Path,
    now: Moment,
    progress: &mut dyn FnMut(Progress),
) -> Result<BackedUp, Failure> {
    backup::make(data, folder, now, progress).map_err(in_english)
}

/// The generations of a backup, the latest last.
///
/// # Errors
/// A [`Failure`] that says what to do.
pub fn generations(folder: &Path) -> Result<Vec<GenerationSeen>, Failure> {
    listed(folder).map(|(seen, _)| seen)
}

/// The generations of a backup, the latest last, and the lists in it that are damaged.
///
/// # Errors
/// A [`Failure`] that says what to do.
pub fn listed(folder: &Path) -> Result<(Vec<GenerationSeen>, Vec<String>), Failure> {
    let seen = |list: &backup::list::List| GenerationSeen {
        generation: list.made_at.rfc3339(),
        visits: list.visits.len() as u64,
        photos: list.photos.len() as u64,
        photos_missing: list.missing.len() as u64,
    };
    let lists = read::generations(folder).map_err(in_english)?;
    Ok((lists.sound.iter().map(seen).collect(), lists.damaged))
}

/// Reads back everything that a backup holds.
///
/// # Errors
/// A [`Failure`] that says what to do.
pub fn check(folder: &Path, progress: &mut dyn FnMut(Progress)) -> Result<Checked, Failure> {
    backup::check::check(folder, progress).map_err(in_english)
}

/// What a backup in which something is damaged is refused with.
#[must_use]
pub fn damaged() -> Failure {
    in_english(BackupFault::Checked.into())
}

/// Nothing is open whose language could be asked for.
fn in_english(fault: StoreFault) -> Failure {
    shown(&Fault::from(fault), "en")
}

impl Steady {
    /// Makes or renews a backup in a folder. Requests are answered meanwhile.
    ///
    /// # Errors
    /// A [`Failure`] that says what to do; an earlier backup there still stands.
    pub fn backup(&self, folder: &Path, progress: &mut dyn FnMut(Progress)) -> Result<BackedUp, Failure> {
        // Erasing waits: what is copied here would outlive it.
        let _reading = self.reading.read().unwrap_or_else(PoisonError::into_inner);
        let (data, now, locale) = self.what_is_read();
        backup::make(&data, folder, now, progress).map_err(|fault| shown(&Fault::from(fault), &locale))
    }

    /// Takes in everything that a backup's generation holds and this device does not, the latest if none is
    /// named, or a backup that is one file. All of it, or nothing.
    ///
    /// # Errors
    /// A [`Failure`] that says what to do; the data folder is then as it was.
    pub fn restore(
        &self,
        folder: &Path,
        when: Option<&str>,
        progress: &mut dyn FnMut(Progress),
    ) -> Result<Restored, Failure> {
        self.with(|inner| {
            let generation = match folder.is_file() {
                true => inner.store.packed_generation(folder)?,
                false => inner.store.generation(folder, when)?,
            };
            restore::taken(inner, &generation, progress)
        })
    }
}
