//! Erasing a visit from databases that were set aside as damaged. What can be read of the other visits is written
//! into a new database in the old one's place: nobody could prove of a damaged file that nothing of the erased
//! visit is left in the parts that cannot be read.

use std::collections::BTreeSet;
use std::fs;
use std::path::Path;

use rusqlite::{Connection, TransactionBehavior};

use super::fault::StoreFault;
use super::folders;
use super::open::{DATABASE, Store};
use super::photo_files::PhotoSize;
use super::salvage::Foreign;
use super::{erase, ledger, migrations};
use crate::model::time::Moment;

/// The new database before it has its name.
const PASSING: &str = "steady.db.part";

impl Store {
    /// Takes a visit and its photos out of every folder that was set aside.
    ///
    /// # Errors
    /// What SQLite or the file system says; what was set aside then stands as it did.
    pub(super) fn erase_aside(&self, visit: &str, photos: &[String], at: Moment) -> Result<(), StoreFault> {
        for aside in self.asides()? {
            remove_photos(&aside.folder, photos.iter())?;
            self.written_anew(&aside.folder, visit, at)?;
            self.recount(&aside)?;
        }
        Ok(())
    }

    fn written_anew(&self, folder: &Path, visit: &str, at: Moment) -> Result<(), StoreFault> {
        let (database, passing) = (folder.join(DATABASE), folder.join(PASSING));
        folders::remove_if_there(&passing).map_err(StoreFault::file)?;
        if database.is_file() {
            // Where nothing can be read there is nothing to keep, and still something to hide.
            if let Ok(foreign) = self.foreign(&database) {
                remove_photos(folder, of_visit_alone(&foreign, visit).iter())?;
                write(&foreign, &passing, visit, at)?;
                fs::rename(&passing, &database).map_err(StoreFault::file)?;
            } else {
                folders::remove_if_there(&database).map_err(StoreFault::file)?;
            }
        }
        for log in ["steady.db-wal", "steady.db-shm"] {
            folders::remove_if_there(&folder.join(log)).map_err(StoreFault::file)?;
        }
        folders::sync(folder).map_err(StoreFault::file)
    }
}

fn remove_photos<'a>(folder: &Path, photos: impl Iterator<Item = &'a String>) -> Result<(), StoreFault> {
    for sha256 in photos {
        for size in [PhotoSize::Thumb, PhotoSize::Full] {
            let path = folder.join("photos").join(size.file_name(sha256));
            folders::remove_if_there(&path).map_err(StoreFault::file)?;
        }
    }
    Ok(())
}

/// Photos that readable lines of this visit name and those of no other.
fn of_visit_alone(foreign: &Foreign, visit: &str) -> BTreeSet<String> {
    let named = |visit: &String| {
        let lines = foreign.readable_lines(visit);
        lines.iter().flat_map(|line| erase::hashes_in(&line.body)).collect::<BTreeSet<String>>()
    };
    let mut photos = named(&visit.to_owned());
    for other in foreign.visits().iter().filter(|other| *other != visit) {
        let others = named(other);
        photos.retain(|photo| !others.contains(photo));
    }
    photos
}

/// Every line of other visits that can be read, and the tombstones.
fn write(foreign: &Foreign, to: &Path, erased: &str, at: Moment) -> Result<(), StoreFault> {
    let sql = || StoreFault::sql("write what was set aside anew");
    let mut connection = Connection::open(to).map_err(sql())?;
    migrations::migrate(&mut connection)?;
    let mut fill = || -> Result<(), rusqlite::Error> {
        let transaction = connection.transaction_with_behavior(TransactionBehavior::Immediate)?;
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
            erase::erase_rows(&transaction, &visit, when)?;
        }
        erase::erase_rows(&transaction, erased, at)?;
        transaction.commit()
    };
    fill().map_err(sql())?;
    connection.close().map_err(|(_, fault)| sql()(fault))
}
