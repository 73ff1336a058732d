//! Erasing a visit from databases that were set aside. One without damage loses that visit's rows and keeps the rest.
//! Of a damaged one, what can be read of everything else is written into a new database in its place: nobody could
//! prove of a damaged file that nothing of the erased visit is left in the parts that cannot be read. Where a folder
//! cannot be searched now, nothing in it is touched.

use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::path::Path;
use std::time::{Duration, SystemTime};

use rusqlite::backup::Backup;
use rusqlite::{Connection, TransactionBehavior};
use uuid::Uuid;

use super::aside::Aside;
use super::backup::source;
use super::erase::Erased;
use super::fault::StoreFault;
use super::folders;
use super::open::Store;
use super::photo_files::PhotoSize;
use super::salvage::Foreign;
use super::{devices, erase, knowledge, ledger, migrations, names, private, workshop};
use crate::model::limits;
use crate::model::time::Moment;
use crate::model::workshop::Workshop;

/// The new database before it has its name.
const PASSING: &str = "steady.db.part";
/// How far the clock of the device that opened a visit may have been ahead of this one's.
const SLACK: Duration = Duration::from_secs(48 * 60 * 60);

impl Store {
    /// Looks whether every folder that was set aside can be searched, before anything is erased anywhere.
    ///
    /// # Errors
    /// [`StoreFault::Aside`] with the folder and why it cannot be.
    pub(super) fn asides_can_be_searched(&self) -> Result<(), StoreFault> {
        self.asides()?.iter().try_for_each(|aside| self.searched(aside).map(|_| ()))
    }

    /// Takes a visit and its photos out of every folder that was set aside.
    ///
    /// # Errors
    /// What SQLite or the file system says; what was set aside then stands as it did.
    pub(super) fn erase_aside(&self, erased: &Erased, photos: &[String]) -> Result<(), StoreFault> {
        self.asides()?.iter().try_for_each(|aside| self.erase_from_aside(aside, erased, photos))
    }

    /// The database of a folder that was set aside; none where nothing in it can be read.
    ///
    /// # Errors
    /// [`StoreFault::Aside`] with the folder and why it cannot be searched.
    pub(super) fn searched(&self, aside: &Aside) -> Result<Option<Foreign>, StoreFault> {
        let length = folders::length(&aside.database()).map_err(StoreFault::file)?.unwrap_or(0);
        match self.foreign(&aside.database()) {
            Ok(foreign) => Ok(Some(foreign)),
            Err(StoreFault::NoSuchDatabase | StoreFault::EmptyDatabase) => Ok(None),
            // One that is too large to be looked into may hold whatever it likes.
            Err(StoreFault::NoDatabase) if length <= limits::DATABASE_BYTES => Ok(None),
            Err(why) => Err(StoreFault::Aside { folder: aside.name.clone(), why: Box::new(why) }),
        }
    }

    fn erase_from_aside(
        &self,
        aside: &Aside,
        Erased { visit, at, here }: &Erased,
        photos: &[String],
    ) -> Result<(), StoreFault> {
        let foreign = self.searched(aside)?;
        let (database, passing) = (aside.database(), aside.folder.join(PASSING));
        folders::remove_if_there(&passing).map_err(StoreFault::file)?;
        let sound = foreign.as_ref().and_then(Foreign::sound);
        let is_in =
            foreign.as_ref().is_some_and(|foreign| foreign.visits().iter().any(|known| known == visit));
        // It began after this was set aside: nothing that cannot be read here is of it.
        if *here && sound.is_none() && !is_in {
            return remove_photos(&aside.folder, photos.iter().cloned());
        }
        match (&foreign, sound) {
            (Some(foreign), Some(connection)) => {
                let kept = named_by_others(foreign, visit);
                let own = hashes_of(foreign, visit).into_iter().chain(photos.iter().cloned());
                remove_photos(&aside.folder, own.filter(|sha256| !kept.contains(sha256)))?;
                if !is_in {
                    return Ok(());
                }
                without(connection, &passing, visit, *at)?;
            }
            (Some(foreign), None) => {
                let mut kept = named_by_others(foreign, visit);
                kept.extend(self.named()?);
                remove_unnamed(&aside.folder, &kept, (photos, opened(visit)))?;
                gathered(foreign, &passing, visit, *at)?;
            }
            // Where nothing can be read there is nothing to keep, and still something to hide.
            (None, _) => {
                remove_unnamed(&aside.folder, &self.named()?, (photos, opened(visit)))?;
                folders::remove_if_there(&database).map_err(StoreFault::file)?;
            }
        }
        if foreign.is_some() {
            fs::rename(&passing, &database).map_err(StoreFault::file)?;
        }
        for log in ["steady.db-wal", "steady.db-shm"] {
            folders::remove_if_there(&aside.folder.join(log)).map_err(StoreFault::file)?;
        }
        folders::sync(&aside.folder).map_err(StoreFault::file)?;
        self.recount(aside)
    }

    /// Photos that lines of the ledger name.
    fn named(&self) -> Result<BTreeSet<String>, StoreFault> {
        let read = || -> Result<BTreeSet<String>, rusqlite::Error> {
            let mut statement = self.connection.prepare("SELECT body FROM entry")?;
            let bodies = statement.query_map([], |row| ledger::text(row, "body"))?;
            let mut named = BTreeSet::new();
            for body in bodies {
                named.extend(erase::hashes_in(&body?));
            }
            Ok(named)
        };
        read().map_err(StoreFault::sql("look for photos that lines name"))
    }
}

/// When a visit was opened, as its id says; an id of an earlier form says nothing.
fn opened(visit: &str) -> Option<SystemTime> {
    let (seconds, _) = Uuid::try_parse(visit).ok()?.get_timestamp()?.to_unix();
    SystemTime::UNIX_EPOCH.checked_add(Duration::from_secs(seconds))
}

fn remove_photos(folder: &Path, photos: impl Iterator<Item = String>) -> Result<(), StoreFault> {
    for sha256 in photos {
        for size in [PhotoSize::Thumb, PhotoSize::Full] {
            let path = folder.join("photos").join(size.file_name(&sha256));
            folders::remove_if_there(&path).map_err(StoreFault::file)?;
        }
    }
    Ok(())
}

/// Removes photos that no line which stays names: the lines that cannot be read may have been the visit's. What was
/// put there before the visit was opened is of another.
fn remove_unnamed(
    folder: &Path,
    kept: &BTreeSet<String>,
    (photos, opened): (&[String], Option<SystemTime>),
) -> Result<(), StoreFault> {
    for file in fs::read_dir(folder.join("photos")).into_iter().flatten().flatten() {
        let name = file.file_name().to_string_lossy().into_owned();
        let sha256 = name.split('.').next().unwrap_or_default().to_owned();
        if !names::is_of_photos(&name) || kept.contains(&sha256) {
            continue;
        }
        let written = file.metadata().and_then(|file| file.modified()).ok();
        let older = written.zip(opened).is_some_and(|(written, opened)| written + SLACK < opened);
        if photos.contains(&sha256) || !older {
            folders::remove_if_there(&file.path()).map_err(StoreFault::file)?;
        }
    }
    Ok(())
}

/// Photos that readable lines of a visit name.
fn hashes_of(foreign: &Foreign, visit: &str) -> BTreeSet<String> {
    foreign.readable_lines(visit).iter().flat_map(|line| erase::hashes_in(&line.body)).collect()
}

/// Photos that readable lines of other visits name.
fn named_by_others(foreign: &Foreign, visit: &str) -> BTreeSet<String> {
    let visits = foreign.visits();
    visits.iter().filter(|other| *other != visit).flat_map(|other| hashes_of(foreign, other)).collect()
}

/// A copy of a database without damage, as it was but for the visit.
fn without(from: &Connection, to: &Path, visit: &str, at: Moment) -> Result<(), StoreFault> {
    private::create(to).map_err(StoreFault::file)?;
    let copied = || -> Result<(), rusqlite::Error> {
        let mut copy = Connection::open(to)?;
        Backup::new(from, &mut copy)?.step(-1)?;
        copy.close().map_err(|(_, fault)| fault)
    };
    copied().map_err(StoreFault::sql("copy what was set aside"))?;
    source::erase_from(to, &BTreeMap::from([(visit.to_owned(), at)]))
}

/// Every line of other visits that can be read, the tombstones, and what does not belong to one visit.
fn gathered(foreign: &Foreign, to: &Path, erased: &str, at: Moment) -> Result<(), StoreFault> {
    let sql = || StoreFault::sql("write what was set aside anew");
    private::create(to).map_err(StoreFault::file)?;
    let mut connection = Connection::open(to).map_err(sql())?;
    migrations::migrate(&mut connection)?;
    let mut fill = || -> Result<(), StoreFault> {
        let transaction =
            connection.transaction_with_behavior(TransactionBehavior::Immediate).map_err(sql())?;
        for visit in foreign.visits().iter().filter(|visit| *visit != erased) {
            let mut lines = foreign.readable_lines(visit);
            // What was taken back is not told apart from the rest any more.
            foreign.only_counting(visit, &mut lines);
            for line in lines {
                // A line twice, or one that the schema refuses, is none.
                let _ = ledger::insert(&transaction, &line);
            }
        }
        for (visit, when) in foreign.erased() {
            erase::erase_rows(&transaction, &visit, when).map_err(sql())?;
        }
        erase::erase_rows(&transaction, erased, at).map_err(sql())?;
        for (name, value) in foreign.settings() {
            let keep = "INSERT OR IGNORE INTO setting (name, value) VALUES (?1, ?2)";
            transaction.execute(keep, [name, value]).map_err(sql())?;
        }
        for (version, texts) in foreign.knowledge() {
            knowledge::keep(&transaction, &version, at, &texts)?;
        }
        devices::take_over(&transaction, &foreign.decisions(), "").map_err(sql())?;
        let particulars = foreign.workshop();
        if particulars != Workshop::default() {
            workshop::write(&transaction, &particulars).map_err(sql())?;
        }
        transaction.commit().map_err(sql())
    };
    fill()?;
    connection.close().map_err(|(_, fault)| sql()(fault))
}
