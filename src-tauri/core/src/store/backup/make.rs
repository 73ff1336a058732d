//! Makes a generation, and lets go of those that no longer stay.

use std::collections::{BTreeMap, BTreeSet};
use std::io;
use std::path::{Path, PathBuf};

use rusqlite::Connection;
use serde::Serialize;

use super::compare::Compared;
use super::fault::BackupFault;
use super::list::{List, Object, Piece};
use super::lists::Lists;
use super::own::{OwnFiles, own_files};
use super::place::{BackupFolder, Claim};
use super::proving;
use super::retain;
use super::source::{self, Holds, Reading};
use crate::model::time::Moment;
use crate::store::data_id::data_id;
use crate::store::fault::StoreFault;
use crate::store::folders::{self, CopyFault};
use crate::store::photo_files::PhotoSize;

/// Photos that are written before they are synced, several at once; the disk has work meanwhile.
const BATCH: usize = 64;

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
    /// Visits that the generation's list names.
    pub visits: u64,
    /// Photos that it names, each once.
    pub photos: u64,
    /// Photos that were not in the backup yet.
    pub photos_copied: u64,
    /// Photos that are missing in the data folder, or were to be copied and are damaged. Those that the backup
    /// holds stay in it.
    pub photos_damaged_here: Vec<String>,
    /// Photos that are neither whole here nor in the backup.
    pub photos_missing: Vec<String>,
    /// Files of the backup that were found damaged, and written anew from what is whole here.
    pub renewed: u64,
    /// Lists of generations that are damaged; what they may have named stays.
    pub lists_damaged: Vec<String>,
    /// The workshop's own files that were left out: larger than any that is taken in, or of a name that not every
    /// system takes.
    pub own_left_out: Vec<String>,
    /// Visits whose record lacks a line, or is no longer as it was written, or no longer proven. They are backed up as
    /// they are; an earlier generation may hold them whole.
    pub visits_broken: Vec<String>,
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
    let claim = Claim::new(folder, data, &id).map_err(of_the_place)?;
    let here = source::holds(&connection)?;
    let compared = {
        let last = Last::of(&claim)?;
        here.is_no_less_than(&last.visits)?;
        Compared::of(&connection, last.ledger.as_deref())?
    };
    compared.is_one_ledger(&here.erased)?;
    let mut place = claim.begin().map_err(of_the_place)?;
    // Again, now that nobody else writes here.
    let mut lists = place.lists()?;
    let last = lists.sound.last().cloned();
    let mut work = Work::new(data, &mut place, &lists);
    let database = work.database(&connection)?;
    // The copy may hold more than was looked at before; what it holds is what is backed up.
    let holds = work.holds(&database)?;
    let photos = work.photos(&holds, progress)?;
    let own = work.own()?;
    let Work { renewed, own_left_out, .. } = work;
    let list = List {
        number: lists.next_number(),
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
        lists.sound.push(list);
    }
    // An earlier generation may hold whole what is broken here: none goes until that is cleared up.
    let kept =
        if compared.broken.is_empty() { retain::retained(&lists.sound) } else { retain::all(&lists.sound) };
    tidy(&mut place, &mut lists, (&kept, &holds.erased))?;
    Ok(BackedUp {
        generation: stands.made_at.rfc3339(),
        new: same.is_none(),
        visits: stands.visits.len() as u64,
        photos: stands.photos.len() as u64,
        photos_copied: photos.copied,
        photos_damaged_here: photos.damaged_here,
        photos_missing: stands.missing.clone(),
        renewed,
        lists_damaged: lists.damaged.clone(),
        own_left_out,
        visits_broken: compared.broken.into_iter().collect(),
        generations: lists.sound.len() as u64,
    })
}

/// Nothing was written yet: what cannot be written is the backup's place.
fn of_the_place(fault: StoreFault) -> StoreFault {
    match fault {
        StoreFault::Unwritable(_) => BackupFault::Unwritable.into(),
        StoreFault::File(fault) if fault.kind() == io::ErrorKind::NotADirectory => {
            BackupFault::Unwritable.into()
        }
        StoreFault::File(fault) if fault.kind() == io::ErrorKind::AlreadyExists => {
            BackupFault::Unwritable.into()
        }
        fault => fault,
    }
}

/// What the last generation holds, or the bare copy that an earlier program made.
#[derive(Default)]
struct Last {
    visits: BTreeMap<String, u64>,
    /// Its database, where it is what its name says.
    ledger: Option<Reading>,
}

impl Last {
    fn of(claim: &Claim) -> Result<Self, StoreFault> {
        if let Some(last) = claim.lists()?.sound.pop() {
            let path = claim.path(&last.database.object("db").name);
            let proven = folders::hash_of(&path).is_ok_and(|(sha256, _)| sha256 == last.database.sha256);
            let ledger = proven.then(|| source::open_copy(&path)).transpose()?.map(Reading::from);
            return Ok(Self { visits: last.visits, ledger });
        }
        let database = claim.mirrored_database();
        let Some(folder) = database.as_deref().and_then(Path::parent) else { return Ok(Self::default()) };
        let mirrored = source::open_read_only(folder)?;
        Ok(Self { visits: Holds::read(&mirrored)?.visits, ledger: Some(mirrored) })
    }
}

/// Every photo that a generation names, with its length.
fn known(lists: &[List]) -> BTreeMap<String, u64> {
    lists.iter().flat_map(|list| &list.photos).map(|photo| (photo.sha256.clone(), photo.bytes)).collect()
}

/// Removes generations that no longer stay and visits that were erased, then files that nothing names.
fn tidy(
    place: &mut BackupFolder,
    lists: &mut Lists,
    (kept, erased): (&BTreeSet<u64>, &BTreeMap<String, Moment>),
) -> Result<(), StoreFault> {
    let (staying, mut dropped): (Vec<List>, Vec<List>) =
        lists.sound.drain(..).partition(|list| kept.contains(&list.number));
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
    lists.sound = left;
    place.clear_unlisted(lists, &dropped, &|database| hidden(database, erased))?;
    let own = lists.sound.last().map(|last| last.own.clone()).unwrap_or_default();
    place.clear_mirror(&own)
}

/// What a database that no list names any more is let go with if it holds a visit that was erased: itself and the
/// photos that it names.
fn hidden(database: &Path, erased: &BTreeMap<String, Moment>) -> BTreeSet<String> {
    let holds = source::open_copy(database).and_then(|connection| Holds::read(&connection));
    let Ok(holds) = holds else { return BTreeSet::new() };
    if holds.visits.keys().all(|visit| !erased.contains_key(visit)) {
        return BTreeSet::new();
    }
    let itself = database.file_name().map(|name| name.to_string_lossy().into_owned());
    holds.photos.iter().map(|sha256| format!("{sha256}.jpg")).chain(itself).collect()
}

/// A generation without the visits that were erased since: its database made anew, its list in the old one's
/// place. Nothing if its database is not there, or was read and is not what its list says.
///
/// # Errors
/// [`BackupFault::Unread`], what SQLite or the file system says; the generation then stands as it did.
fn without(
    place: &mut BackupFolder,
    list: &List,
    gone: &BTreeMap<String, Moment>,
) -> Result<Option<List>, StoreFault> {
    let (name, passing) = (list.database.object("db").name, place.passing("erasing.db"));
    match folders::copy_hashed(&place.path(&name), &passing) {
        Ok((sha256, _)) if sha256 == list.database.sha256 => {}
        Ok(_) => {
            folders::remove_if_there(&passing).map_err(StoreFault::file)?;
            return Ok(None);
        }
        Err(CopyFault::Read(fault)) if fault.kind() == io::ErrorKind::NotFound => return Ok(None),
        Err(CopyFault::Read(_)) => return Err(BackupFault::Unread(name).into()),
        Err(CopyFault::Write(fault)) => return Err(StoreFault::file(fault)),
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
fn sync_and_commit(place: &mut BackupFolder, passing: &Path, object: &Object) -> Result<(), StoreFault> {
    folders::sync_files(&[passing.to_owned()]).map_err(StoreFault::file)?;
    place.commit(passing, object)
}

struct Work<'a> {
    data: &'a Path,
    place: &'a mut BackupFolder,
    /// Photos that a generation names, with their length.
    known: BTreeMap<String, u64>,
    /// Photos that were nowhere whole when the last generation was made: what stands of them has to be proven.
    doubted: BTreeSet<String>,
    renewed: u64,
    own_left_out: Vec<String>,
}

#[derive(Default)]
struct Photos {
    there: Vec<Piece>,
    copied: u64,
    damaged_here: Vec<String>,
    missing: BTreeSet<String>,
}

impl<'a> Work<'a> {
    fn new(data: &'a Path, place: &'a mut BackupFolder, lists: &Lists) -> Self {
        let doubted = lists.sound.last().map(|last| last.missing.iter().cloned().collect());
        let known = known(&lists.sound);
        Self {
            data,
            place,
            known,
            doubted: doubted.unwrap_or_default(),
            renewed: 0,
            own_left_out: Vec::new(),
        }
    }

    fn database(&mut self, connection: &Connection) -> Result<Piece, StoreFault> {
        let passing = self.place.passing("steady.db");
        source::copy(connection, &passing).inspect_err(|_| {
            // Cleared by the next backup if it cannot be now.
            let _ = std::fs::remove_file(&passing);
        })?;
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
        let standing = self.all_standing(holds)?;
        let rotten = self.rotten(&standing)?;
        let mut fresh = Vec::new();
        for sha256 in &holds.photos {
            match standing.get(sha256).filter(|_| !rotten.contains(sha256)) {
                Some(bytes) => {
                    if !self.path(sha256).is_file() {
                        photos.damaged_here.push(sha256.clone());
                    }
                    photos.there.push(Piece { sha256: sha256.clone(), bytes: *bytes });
                }
                None => fresh.push(sha256.clone()),
            }
        }
        let of = fresh.len() as u64;
        for batch in fresh.chunks(BATCH) {
            let mut written = Vec::new();
            for sha256 in batch {
                let (piece, is_here) = self.written(sha256)?;
                if !is_here {
                    photos.damaged_here.push(sha256.clone());
                }
                match piece {
                    Some(piece) => written.push(piece),
                    None => {
                        photos.missing.insert(sha256.clone());
                    }
                }
            }
            let passing = |piece: &Piece| self.place.passing(&piece.object("jpg").name);
            let paths: Vec<PathBuf> = written.iter().map(passing).collect();
            folders::sync_files(&paths).map_err(StoreFault::file)?;
            for piece in written {
                let object = piece.object("jpg");
                self.place.commit(&self.place.passing(&object.name), &object)?;
                self.renewed += u64::from(rotten.contains(&piece.sha256));
                photos.there.push(piece);
                photos.copied += 1;
            }
            progress(Progress { done: photos.copied + photos.missing.len() as u64, of });
        }
        photos.there.sort();
        Ok(photos)
    }

    /// Photos that the backup holds, with their lengths.
    fn all_standing(&self, holds: &Holds) -> Result<BTreeMap<String, u64>, StoreFault> {
        let mut standing = BTreeMap::new();
        for sha256 in &holds.photos {
            standing.extend(self.standing(sha256)?.map(|piece| (piece.sha256, piece.bytes)));
        }
        Ok(standing)
    }

    /// Those of a share of them that are read back and are not what their names say.
    fn rotten(&self, standing: &BTreeMap<String, u64>) -> Result<BTreeSet<String>, StoreFault> {
        let proven_to = self.place.proven_to();
        let share = proving::share(standing, proven_to.as_deref());
        let is_rotten = |sha256: &&&str| {
            let bytes = standing.get(**sha256).copied().unwrap_or_default();
            // What cannot be read is written anew as well.
            !self.place.proves(&Piece { sha256: (**sha256).to_owned(), bytes }.object("jpg")).unwrap_or(false)
        };
        let rotten = share.iter().filter(is_rotten).map(|sha256| (*sha256).to_owned()).collect();
        let begins_anew = proven_to.is_some() || share.len() < standing.len();
        if let Some(last) = share.last().filter(|_| begins_anew) {
            self.place.set_proven_to(last)?;
        }
        Ok(rotten)
    }

    /// A photo that the backup holds: at the length that its generation knows, or proven where a backup that
    /// was cut off left it.
    fn standing(&self, sha256: &str) -> Result<Option<Piece>, StoreFault> {
        let name = Piece { sha256: sha256.to_owned(), bytes: 0 }.object("jpg").name;
        let Some(bytes) = self.place.length_of(&name) else { return Ok(None) };
        let proven = match self.known.get(sha256) {
            Some(known) if !self.doubted.contains(sha256) => *known == bytes,
            _ => folders::hash_of(&self.place.path(&name)).map_err(StoreFault::file)?.0 == sha256,
        };
        Ok(proven.then(|| Piece { sha256: sha256.to_owned(), bytes }))
    }

    /// A photo copied under its passing name, and whether it is whole here. Where it is not, it comes out of the bare
    /// copy whose place this backup takes, or there is none.
    fn written(&self, sha256: &str) -> Result<(Option<Piece>, bool), StoreFault> {
        let here = self.copied(&self.path(sha256), sha256)?;
        let (is_here, mirrored) = (here.is_some(), self.place.mirrored_photo(sha256));
        match (here, mirrored) {
            (None, Some(mirrored)) => Ok((self.copied(&mirrored, sha256)?, is_here)),
            (here, _) => Ok((here, is_here)),
        }
    }

    /// A photo copied under its passing name; nothing if it is not there, or is not what its name says.
    fn copied(&self, from: &Path, sha256: &str) -> Result<Option<Piece>, StoreFault> {
        let passing = self.place.passing(&format!("{sha256}.jpg"));
        match folders::copy_hashed(from, &passing) {
            Ok((copied, bytes)) if copied == sha256 => Ok(Some(Piece { sha256: sha256.to_owned(), bytes })),
            Ok(_) => {
                folders::remove_if_there(&passing).map_err(StoreFault::file)?;
                Ok(None)
            }
            Err(CopyFault::Read(fault)) if fault.kind() == io::ErrorKind::NotFound => Ok(None),
            Err(CopyFault::Read(fault) | CopyFault::Write(fault)) => Err(StoreFault::file(fault)),
        }
    }

    /// The workshop's own files.
    fn own(&mut self) -> Result<BTreeMap<String, Piece>, StoreFault> {
        let OwnFiles { taken, left_out } = own_files(self.data);
        self.own_left_out = left_out;
        let mut own = BTreeMap::new();
        for (path, from) in taken {
            let passing = self.place.passing(&format!("{}.toml", "0".repeat(64)));
            let copied = folders::copy_hashed(&from, &passing);
            let (sha256, bytes) = copied.map_err(|fault| match fault {
                CopyFault::Read(fault) | CopyFault::Write(fault) => StoreFault::file(fault),
            })?;
            let piece = Piece { sha256, bytes };
            self.keep(&passing, &piece.object("toml"))?;
            own.insert(path, piece);
        }
        Ok(own)
    }

    /// Commits a file, unless the store has it and it reads back as what it is.
    fn keep(&mut self, passing: &Path, object: &Object) -> Result<(), StoreFault> {
        if self.place.proves(object).unwrap_or(false) {
            return folders::remove_if_there(passing).map_err(StoreFault::file);
        }
        self.renewed += u64::from(self.place.length_of(&object.name).is_some());
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
