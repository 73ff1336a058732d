//! A backup as one file, for a screen: made ready step by step, fetched like any file on its way out, taken in in
//! pieces.

use std::sync::{Arc, MutexGuard, PoisonError};

use serde::Serialize;
use uuid::Uuid;

use super::super::failure::Failure;
use super::super::fault::{Fault, Refusal};
use super::super::handover;
use super::super::response::Response;
use super::super::steady::{Inner, Steady, shown};
use super::{Progress, Restored, restore};
use crate::model::limits;
use crate::model::time::Moment;
use crate::store::backup::fault::BackupFault;
use crate::store::backup::file::{BackupFile, BackupReader};
use crate::store::fault::StoreFault;
use crate::store::outgoing::OutgoingFile;
use crate::store::uploads::MAX_PIECE_BYTES;

/// The backup file that is being made or fetched, by the name a screen gave it: one at a time.
pub(in crate::app) type Prepared = Option<(Uuid, Arc<BackupFile>)>;

/// How far a backup file is.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct BackupReady {
    /// What a shell fetches or shares it by, once it is ready.
    pub file: String,
    /// File name without anything a person typed.
    pub name: String,
    /// Photos proven so far.
    #[cfg_attr(feature = "bindings", ts(type = "number"))]
    pub done: u64,
    /// Photos in all.
    #[cfg_attr(feature = "bindings", ts(type = "number"))]
    pub of: u64,
    /// Whether it can be fetched; else it has to be asked for again.
    pub ready: bool,
    /// Its length, bytes; nought until it is ready.
    #[cfg_attr(feature = "bindings", ts(type = "number"))]
    pub bytes: u64,
    /// Visits in the file, whole ones; `left_out` names the rest.
    #[cfg_attr(feature = "bindings", ts(type = "number"))]
    pub visits: u64,
    /// Photos that are missing or damaged here, and so are not in it.
    pub photos_missing: Vec<String>,
    /// The workshop's own files that were left out: larger than any that is taken in, or of a name that not every
    /// system takes.
    pub own_left_out: Vec<String>,
    /// Visits whose record lacks a line, or is no longer as it was written, or no longer proven. They are in it as they
    /// are; an earlier backup may hold them whole.
    pub visits_broken: Vec<String>,
}

impl Steady {
    /// Begins a backup file, or goes on with it; other requests are answered meanwhile.
    pub(in crate::app) fn prepare_backup(&self, backup: &str) -> Result<Response, Failure> {
        // Erasing waits: what is copied here would outlive it.
        let _reading = self.reading.read().unwrap_or_else(PoisonError::into_inner);
        let (data, now, locale) = self.what_is_read();
        let fault = |fault: Fault| shown(&fault.of_a_file(), &locale);
        let id = Uuid::try_parse(backup).map_err(|_| fault(Refusal::UnknownRequest.into()))?;
        let mut prepared = self.prepared();
        if prepared.as_ref().is_none_or(|(going, _)| *going != id) {
            *prepared = None;
            let begun = BackupFile::begin(&data, &id.simple().to_string(), now);
            *prepared = Some((id, Arc::new(begun.map_err(|begun| fault(begun.into()))?)));
        }
        let Some((_, file)) = prepared.as_mut() else { return Err(fault(StoreFault::UploadUnknown.into())) };
        // One that is being fetched is ready, and stays as it is.
        let gone_on = Arc::get_mut(file).map(BackupFile::go_on).transpose();
        let Progress { done, of } =
            gone_on.map_err(|going| fault(going.into()))?.unwrap_or_else(|| file.progress());
        Ok(Response::BackupReady(BackupReady {
            file: id.simple().to_string(),
            name: format!("steady-backup-{}.tar", file.list().made_at.day()),
            done,
            of,
            ready: done == of,
            bytes: file.bytes(),
            visits: file.list().visits.len() as u64,
            photos_missing: file.list().missing.clone(),
            own_left_out: file.own_left_out().to_vec(),
            visits_broken: file.visits_broken().to_vec(),
        }))
    }

    /// The backup file of this id, where it is one and is ready.
    pub(in crate::app) fn prepared_file(&self, id: &str) -> Option<OutgoingFile> {
        let id = Uuid::try_parse(id).ok()?;
        let prepared = self.prepared();
        let (_, file) = prepared.as_ref().filter(|(ready, file)| *ready == id && file.bytes() > 0)?;
        Some(OutgoingFile::Backup(BackupReader::new(Arc::clone(file))))
    }

    /// Forgets the backup file that waits: a visit is erased.
    pub(in crate::app) fn drop_prepared(&self) {
        *self.prepared() = None;
    }

    fn prepared(&self) -> MutexGuard<'_, Prepared> {
        self.prepared.lock().unwrap_or_else(|poisoned| {
            self.prepared.clear_poison();
            let mut prepared = poisoned.into_inner();
            *prepared = None;
            prepared
        })
    }

    /// What is needed to read the data folder beside the requests that change it.
    pub(super) fn what_is_read(&self) -> (std::path::PathBuf, Moment, String) {
        let inner = self.lock();
        (inner.store.folder().to_owned(), inner.now(), inner.locale())
    }
}

/// One piece of a backup file that a screen sends.
pub(in crate::app) fn take_piece(
    inner: &Inner,
    upload: &str,
    index: u32,
    piece: &[u8],
) -> Result<Response, Fault> {
    if piece.len() as u64 > MAX_PIECE_BYTES {
        return Err(Refusal::UploadTooLarge.into());
    }
    let added = inner.store.add_piece_up_to(limits::BACKUP_BYTES, upload, index, piece);
    let bytes = added.map_err(|fault| match fault {
        StoreFault::UploadTooLarge => BackupFault::NotABackupFile.into(),
        fault => fault,
    })?;
    Ok(Response::Uploaded { bytes })
}

/// The backup file that a screen has sent, taken in; a damaged database as far as it can be read.
pub(in crate::app) fn restore_upload(inner: &mut Inner, upload: &str) -> Result<Response, Fault> {
    let restored = match inner.store.packed_upload(upload) {
        Ok(generation) => restore::taken(inner, &generation, &mut |_| {}),
        // A backup that was damaged comes back as a whole or not at all.
        Err(StoreFault::Backup(BackupFault::NotABackupFile)) if !inner.store.is_packed(upload)? => {
            salvaged(inner, upload)
        }
        Err(fault) => Err(fault.into()),
    };
    inner.store.drop_upload(upload);
    Ok(Response::Restored(restored?))
}

/// What is no backup may be a database that was saved from a broken device.
fn salvaged(inner: &mut Inner, upload: &str) -> Result<Restored, Fault> {
    let database = inner.store.upload_path(upload)?;
    let done = handover::salvage(inner, &database).map_err(|fault| match fault {
        Fault::Store(fault) if fault.is_of_the_file() => StoreFault::from(BackupFault::NotABackupFile).into(),
        fault => fault,
    })?;
    Ok(Restored {
        imported: done.imported,
        lost: done.lost,
        devices: done.devices,
        photos_missing: done.photos_missing,
        ..Restored::default()
    })
}
