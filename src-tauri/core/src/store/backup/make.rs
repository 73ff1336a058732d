//! Makes a generation, and lets go of those that no longer stay.

use std::collections::{BTreeMap, BTreeSet};
use std::fs::{self, OpenOptions};
use std::io;
use std::path::Path;

use rusqlite::Connection;
use serde::Serialize;

use super::fault::BackupFault;
use super::keep;
use super::list::{List, Object, Piece, is_own_path};
use super::place::{Claim, Place};
use super::source::{self, Holds};
use crate::model::time::Moment;
use crate::store::data_id::data_id;
use crate::store::fault::StoreFault;
use crate::store::folders;
use crate::store::open::OWN_FOLDERS;
use crate::store::photo_files::PhotoSize;

/// Photos that are written before the first of them is synced; the disk has work meanwhile.
const BATCH: usize = 32;

/// How far a long piece of work is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Progress {
    /// Photos done.
    pub done: u64,
    /// Photos in all.
    pub of: u64,
}

/// What a backup holds now.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct BackedUp {
    /// The generation's time, RFC 3339: what to restore it by.
    pub generation: String,
    /// Whether it is new; if nothing changed, the generation before stands for it.
    pub new: bool,
    /// Visits in it.
    pub visits: u64,
    /// Photos in it.
    pub photos: u64,
    /// Photos that were not in the backup yet.
    pub photos_copied: u64,
    /// Photos that are missing in the data folder, or were to be copied and are damaged. Those that the backup
    /// holds stay in it.
    pub photos_damaged_here: Vec<String>,
    /// Photos that are neither whole here nor in the backup.
    pub photos_missing: Vec<String>,
    /// Generations of the backup.
    pub generations: u64,
}

/// Backs a data folder up. It may be open elsewhere: everything is read from one snapshot of the database, and
/// photos never change.
///
/// # Errors
/// [`BackupFault`], or what SQLite or the file system says; every earlier generation still stands.
pub fn make(
    data: &Path,
    folder: &Path,
    now: Moment,
    progress: &mut dyn FnMut(Progress),
) -> Result<BackedUp, StoreFault> {
    let connection = source::open_read_only(data)?;
    let id = data_id(data)?;
    let claim = Claim::new(folder, data, &id)?;
    let here = source::holds(&connection)?;
    here.is_no_less_than(&last_visits(&claim)?)?;
    let mut place = claim.begin()?;
    // Again, now that nobody else writes here.
    let mut lists = place.lists()?;
    let last = lists.last().cloned();
    let mut work = Work { data, place: &mut place, known: known(&lists) };
    let database = work.database(&connection)?;
    // The copy may hold more than was looked at before; what it holds is what is backed up.
    let holds = work.holds(&database)?;
    let photos = work.photos(&holds, progress)?;
    let own = work.own()?;
    let list = List {
        number: last.as_ref().map_or(1, |last| last.number + 1),
        made_at: now,
        made_by: env!("CARGO_PKG_VERSION").to_owned(),
        data: id,
        visits: holds.visits,
        missing: photos.missing.iter().cloned().collect(),
        database,
        photos: photos.there,
        own,
    };
    let same = last.filter(|last| last.objects().eq(list.objects()) && last.own == list.own);
    let stands = same.clone().unwrap_or_else(|| list.clone());
    if same.is_none() {
        place
            .sync(list.objects().map(|object| object.name).collect::<Vec<_>>().iter().map(String::as_str))?;
        place.write_list(&list)?;
        lists.push(list);
    }
    tidy(&mut place, &mut lists, &holds.erased)?;
    Ok(BackedUp {
        generation: stands.made_at.rfc3339(),
        new: same.is_none(),
        visits: stands.visits.len() as u64,
        photos: stands.photos.len() as u64,
        photos_copied: photos.copied,
        photos_damaged_here: photos.damaged_here,
        photos_missing: stands.missing.clone(),
        generations: lists.len() as u64,
    })
}

/// The visits of the last generation, or of the bare copy that an earlier program made.
fn last_visits(claim: &Claim) -> Result<BTreeMap<String, u64>, StoreFault> {
    if let Some(last) = claim.lists()?.pop() {
        return Ok(last.visits);
    }
    match claim.mirrored_database() {
        Some(database) => {
            let mirrored = database.parent().map(source::open_read_only).transpose()?;
            Ok(mirrored.map(|mirrored| Holds::read(&mirrored)).transpose()?.unwrap_or_default().visits)
        }
        None => Ok(BTreeMap::new()),
    }
}

/// Every photo that a generation names, with its length.
fn known(lists: &[List]) -> BTreeMap<String, u64> {
    lists.iter().flat_map(|list| &list.photos).map(|photo| (photo.sha256.clone(), photo.bytes)).collect()
}

/// Removes generations that no longer stay and visits that were erased, then files that nothing names.
fn tidy(
    place: &mut Place,
    lists: &mut Vec<List>,
    erased: &BTreeMap<String, Moment>,
) -> Result<(), StoreFault> {
    let kept = keep::kept(lists);
    let (staying, mut dropped): (Vec<List>, Vec<List>) =
        lists.drain(..).partition(|list| kept.contains(&list.number));
    let mut left = Vec::new();
    for list in staying {
        let in_it = |(visit, _): &(&String, &Moment)| list.visits.contains_key(*visit);
        let gone: BTreeMap<String, Moment> =
            erased.iter().filter(in_it).map(|(visit, at)| (visit.clone(), *at)).collect();
        if gone.is_empty() {
            left.push(list);
            continue;
        }
        // One whose database is damaged could not be restored either, and holds the visit for nobody: it goes.
        left.extend(without(place, &list, &gone)?);
        dropped.push(list);
    }
    let files: BTreeSet<String> = left.iter().map(List::file_name).collect();
    for list in dropped.iter().filter(|list| !files.contains(&list.file_name())) {
        place.drop_list(list)?;
    }
    *lists = left;
    place.clear_unlisted(lists, &dropped)?;
    place.clear_mirror()
}

/// A generation without the visits that were erased since: its database made anew, its list in the old one's
/// place. Nothing if its database is not what its list says.
fn without(
    place: &mut Place,
    list: &List,
    gone: &BTreeMap<String, Moment>,
) -> Result<Option<List>, StoreFault> {
    let passing = place.passing("erasing.db");
    let copied = folders::copy_hashed(&place.path(&list.database.object("db").name), &passing);
    if !copied.is_ok_and(|(sha256, _)| sha256 == list.database.sha256) {
        folders::remove_if_there(&passing).map_err(StoreFault::file)?;
        return Ok(None);
    }
    source::erase_from(&passing, gone)?;
    let holds = Holds::read(&source::open_copy(&passing)?)?;
    let (sha256, bytes) = folders::hash_of(&passing).map_err(StoreFault::file)?;
    let database = Piece { sha256, bytes };
    sync_and_commit(place, &passing, &database.object("db"))?;
    let mut left = List { visits: holds.visits, database, ..list.clone() };
    left.photos.retain(|photo| holds.photos.contains(&photo.sha256));
    left.missing.retain(|photo| holds.photos.contains(photo));
    place.sync([left.database.object("db").name.as_str()].into_iter())?;
    place.write_list(&left)?;
    Ok(Some(left))
}

/// Syncs, reads back and names what was written under a passing name.
fn sync_and_commit(place: &mut Place, passing: &Path, object: &Object) -> Result<(), StoreFault> {
    let synced = OpenOptions::new().write(true).open(passing).and_then(|file| file.sync_all());
    synced.map_err(StoreFault::file)?;
    place.commit(passing, object)
}

struct Work<'a> {
    data: &'a Path,
    place: &'a mut Place,
    /// Photos that a generation names, with their length.
    known: BTreeMap<String, u64>,
}

#[derive(Default)]
struct Photos {
    there: Vec<Piece>,
    copied: u64,
    damaged_here: Vec<String>,
    missing: BTreeSet<String>,
}

impl Work<'_> {
    fn database(&mut self, connection: &Connection) -> Result<Piece, StoreFault> {
        let passing = self.place.passing("steady.db");
        source::copy(connection, &passing)?;
        let (sha256, bytes) = folders::hash_of(&passing).map_err(StoreFault::file)?;
        let piece = Piece { sha256, bytes };
        self.keep(&passing, &piece.object("db"))?;
        Ok(piece)
    }

    /// What the copy holds.
    fn holds(&self, database: &Piece) -> Result<Holds, StoreFault> {
        Holds::read(&source::open_copy(&self.place.path(&database.object("db").name))?)
    }

    /// Every photo that lines name: in the backup already, or copied and proven by its hash.
    fn photos(&mut self, holds: &Holds, progress: &mut dyn FnMut(Progress)) -> Result<Photos, StoreFault> {
        let mut photos = Photos::default();
        let mut fresh = Vec::new();
        for sha256 in &holds.photos {
            match self.standing(sha256)? {
                Some(piece) => {
                    if !self.path(sha256).is_file() {
                        photos.damaged_here.push(sha256.clone());
                    }
                    photos.there.push(piece);
                }
                None => fresh.push(sha256.clone()),
            }
        }
        let of = fresh.len() as u64;
        for batch in fresh.chunks(BATCH) {
            let mut written = Vec::new();
            for sha256 in batch {
                match self.written(sha256)? {
                    Some(piece) => written.push(piece),
                    None => {
                        photos.damaged_here.push(sha256.clone());
                        photos.missing.insert(sha256.clone());
                    }
                }
            }
            for piece in written {
                let object = piece.object("jpg");
                sync_and_commit(self.place, &self.place.passing(&object.name), &object)?;
                photos.there.push(piece);
                photos.copied += 1;
            }
            progress(Progress { done: photos.copied + photos.missing.len() as u64, of });
        }
        photos.there.sort();
        Ok(photos)
    }

    /// A photo that the backup holds: at the length that its generation knows, or proven where a backup that
    /// was cut off left it.
    fn standing(&self, sha256: &str) -> Result<Option<Piece>, StoreFault> {
        let name = Piece { sha256: sha256.to_owned(), bytes: 0 }.object("jpg").name;
        let Some(bytes) = self.place.length_of(&name) else { return Ok(None) };
        let proven = match self.known.get(sha256) {
            Some(known) => *known == bytes,
            None => folders::hash_of(&self.place.path(&name)).map_err(StoreFault::file)?.0 == sha256,
        };
        Ok(proven.then(|| Piece { sha256: sha256.to_owned(), bytes }))
    }

    /// A photo copied under its passing name; nothing if it is not here, or is not what its name says.
    fn written(&self, sha256: &str) -> Result<Option<Piece>, StoreFault> {
        let passing = self.place.passing(&format!("{sha256}.jpg"));
        match folders::copy_hashed(&self.path(sha256), &passing) {
            Ok((copied, bytes)) if copied == sha256 => Ok(Some(Piece { sha256: sha256.to_owned(), bytes })),
            Ok(_) => {
                folders::remove_if_there(&passing).map_err(StoreFault::file)?;
                Ok(None)
            }
            Err(error) if error.kind() == io::ErrorKind::NotFound => {
                folders::remove_if_there(&passing).map_err(StoreFault::file)?;
                Ok(None)
            }
            Err(error) => Err(StoreFault::file(error)),
        }
    }

    /// The workshop's own files.
    fn own(&mut self) -> Result<BTreeMap<String, Piece>, StoreFault> {
        let mut own = BTreeMap::new();
        for folder in OWN_FOLDERS {
            let Ok(files) = fs::read_dir(self.data.join(folder)) else { continue };
            for file in files.flatten() {
                let path = format!("{folder}/{}", file.file_name().to_string_lossy());
                if !is_own_path(&path) || !file.path().is_file() {
                    continue;
                }
                let passing = self.place.passing(&format!("{}.toml", "0".repeat(64)));
                let (sha256, bytes) =
                    folders::copy_hashed(&file.path(), &passing).map_err(StoreFault::file)?;
                let piece = Piece { sha256, bytes };
                self.keep(&passing, &piece.object("toml"))?;
                own.insert(path, piece);
            }
        }
        Ok(own)
    }

    /// Commits a file, unless the store has it.
    fn keep(&mut self, passing: &Path, object: &Object) -> Result<(), StoreFault> {
        if self.place.has(object) {
            return folders::remove_if_there(passing).map_err(StoreFault::file);
        }
        sync_and_commit(self.place, passing, object)
    }

    fn path(&self, sha256: &str) -> std::path::PathBuf {
        self.data.join("photos").join(PhotoSize::Full.file_name(sha256))
    }
}

impl From<BackupFault> for StoreFault {
    fn from(fault: BackupFault) -> Self {
        Self::Backup(fault)
    }
}
