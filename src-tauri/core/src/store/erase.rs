//! Erasing a whole visit at the owner's wish, the one removal there is: its lines, its card, whatever else
//! the database keeps by visit, and its photos, down to the bytes. A tombstone keeps it from coming back.

use std::collections::BTreeSet;
use std::time::Duration;

use rusqlite::{Connection, TransactionBehavior, params};

use super::fault::StoreFault;
use super::ledger::text;
use super::open::Store;
use crate::model::time::Moment;

impl Store {
    /// Erases a visit; `own` is this device. Once this has returned, no file of the data folder holds a byte of it.
    ///
    /// # Errors
    /// What SQLite or the file system says, or [`StoreFault::Aside`]: nothing is erased then. And
    /// [`StoreFault::Unswept`] if the visit is gone and not yet swept up: [`Store::sweep_again`] and the next start
    /// go on with it.
    pub fn erase(&mut self, visit: &str, own: &str, now: Moment) -> Result<(), StoreFault> {
        self.asides_can_be_searched()?;
        let sql = StoreFault::sql("erase a visit");
        self.connection.query_row("PRAGMA secure_delete = ON", [], |_| Ok(())).map_err(sql)?;
        erase(&mut self.connection, (visit, own), now).map_err(StoreFault::sql("erase a visit"))?;
        self.sweep().map_err(|why| StoreFault::Unswept(Box::new(why)))
    }

    /// Goes on with an erasure that something stood in the way of, unless it still does.
    pub fn sweep_again(&self) {
        let is_due = || -> Result<bool, rusqlite::Error> {
            let sql = "SELECT count(*) AS due FROM erased WHERE swept = 0";
            let due = self.connection.query_row(sql, [], |row| row.get::<_, i64>("due"))?;
            // Whoever reads holds the log; a request does not wait for that.
            Ok(due > 0 && !self.only_reads() && truncate_log_now(&self.connection).is_ok())
        };
        if is_due().unwrap_or(false) {
            // What cannot be done now is tried again, here or at the next start.
            let _ = self.sweep();
        }
    }

    /// Whether the visit was erased here.
    ///
    /// # Errors
    /// What SQLite says.
    pub fn is_erased(&self, visit: &str) -> Result<bool, StoreFault> {
        let sql = "SELECT count(*) AS erased FROM erased WHERE visit = ?1";
        let found: Result<i64, _> = self.connection.query_row(sql, [visit], |row| row.get("erased"));
        found.map(|erased| erased > 0).map_err(StoreFault::sql("look for a tombstone"))
    }

    /// Finishes what an earlier erasure could not: photos, and what the database file still holds.
    pub(super) fn sweep(&self) -> Result<(), StoreFault> {
        let sql = || StoreFault::sql("sweep up");
        let left = unswept(&self.connection).map_err(sql())?;
        let Some(photos) = left else { return Ok(()) };
        photos.iter().try_for_each(|sha256| self.remove_photo(sha256))?;
        self.clear_unnamed()?;
        let visits = unswept_visits(&self.connection).map_err(sql())?;
        let asides = visits.iter().try_for_each(|erased| self.erase_aside(erased, &photos));
        self.clear_outgoing();
        self.clear_uploads();
        let clean = || -> Result<(), rusqlite::Error> {
            self.connection.execute_batch("VACUUM")?;
            truncate_log(&self.connection)
        };
        // Where a folder that was set aside is in the way, the ledger itself is clean all the same.
        let cleaned = clean().map_err(sql());
        asides?;
        cleaned?;
        let done = || -> Result<(), rusqlite::Error> {
            let forgot = "UPDATE erased SET photos = '' WHERE swept = 0 AND photos <> ''";
            if self.connection.execute(forgot, [])? > 0 {
                clean()?;
            }
            self.connection.execute("UPDATE erased SET swept = 1 WHERE swept = 0", [])?;
            truncate_log(&self.connection)
        };
        done().map_err(sql())
    }
}

fn erase(
    connection: &mut Connection,
    (visit, own): (&str, &str),
    now: Moment,
) -> Result<(), rusqlite::Error> {
    let transaction = connection.transaction_with_behavior(TransactionBehavior::Immediate)?;
    let photos = photos_of(&transaction, visit)?.into_iter().collect::<Vec<_>>().join(" ");
    let tombstone = "INSERT INTO erased (visit, at, photos, here) VALUES (?1, ?2, ?3, EXISTS (
                         SELECT 1 FROM entry WHERE visit = ?1 AND device = ?4 AND seq = 1
                             AND substr(body, 1, 16) = '{\"kind\":\"opened\"'))";
    transaction.execute(tombstone, params![visit, now.0, photos, own])?;
    remove_rows(&transaction, visit)?;
    transaction.commit()
}

/// Takes a visit out of another copy of the ledger and leaves its tombstone there.
pub(super) fn erase_rows(connection: &Connection, visit: &str, at: Moment) -> Result<(), rusqlite::Error> {
    let tombstone = "INSERT INTO erased (visit, at, swept) VALUES (?1, ?2, 1) ON CONFLICT (visit) DO NOTHING";
    connection.execute(tombstone, params![visit, at.0])?;
    remove_rows(connection, visit)
}

fn remove_rows(connection: &Connection, visit: &str) -> Result<(), rusqlite::Error> {
    for table in tables_by_visit(connection)? {
        connection.execute(&format!("DELETE FROM \"{table}\" WHERE visit = ?1"), [visit])?;
    }
    Ok(())
}

/// Every table that keeps something by visit, those of later migrations too.
fn tables_by_visit(connection: &Connection) -> Result<Vec<String>, rusqlite::Error> {
    let mut statement = connection.prepare(
        "SELECT t.name FROM sqlite_schema AS t JOIN pragma_table_info(t.name) AS c
         WHERE t.type = 'table' AND c.name = 'visit' AND t.name <> 'erased' ORDER BY t.name",
    )?;
    statement.query_map([], |row| row.get("name"))?.collect()
}

/// Photos that lines of this visit name and lines of no other.
fn photos_of(connection: &Connection, visit: &str) -> Result<BTreeSet<String>, rusqlite::Error> {
    let mut own = connection.prepare("SELECT body FROM entry WHERE visit = ?1")?;
    let bodies: Vec<String> = own.query_map([visit], |row| text(row, "body"))?.collect::<Result<_, _>>()?;
    let mut photos: BTreeSet<String> = bodies.iter().flat_map(|body| hashes_in(body)).collect();
    let mut others = connection.prepare("SELECT body FROM entry WHERE visit <> ?1")?;
    let mut rows = others.query([visit])?;
    while let Some(row) = rows.next()? {
        let body = text(row, "body")?;
        photos.retain(|sha256| !body.contains(sha256.as_str()));
    }
    Ok(photos)
}

/// Whatever looks like a SHA-256 in a body, of an entry that cannot be read too.
pub(super) fn hashes_in(body: &str) -> impl Iterator<Item = String> {
    let word = |letter: char| !letter.is_ascii_hexdigit();
    body.split(word).filter(|word| word.len() == 64).map(str::to_owned).collect::<Vec<_>>().into_iter()
}

/// Photos of visits that are erased and not yet swept up; nothing if there is none.
fn unswept(connection: &Connection) -> Result<Option<Vec<String>>, rusqlite::Error> {
    let mut statement = connection.prepare("SELECT photos FROM erased WHERE swept = 0")?;
    let rows: Vec<String> = statement.query_map([], |row| row.get("photos"))?.collect::<Result<_, _>>()?;
    let names = || rows.iter().flat_map(|row| row.split_whitespace()).map(str::to_owned).collect();
    Ok((!rows.is_empty()).then(names))
}

/// A visit that is erased.
#[derive(Debug)]
pub(super) struct Erased {
    pub visit: String,
    /// When it was erased.
    pub at: Moment,
    /// It was opened on this device with the key of this ledger.
    pub here: bool,
}

/// Visits that are erased and not yet swept up.
fn unswept_visits(connection: &Connection) -> Result<Vec<Erased>, rusqlite::Error> {
    let mut statement = connection.prepare("SELECT visit, at, here FROM erased WHERE swept = 0")?;
    let rows = statement.query_map([], |row| {
        Ok(Erased { visit: row.get("visit")?, at: Moment(row.get("at")?), here: row.get("here")? })
    })?;
    rows.collect()
}

/// Moves everything from the log into the database file and leaves the log empty.
///
/// # Errors
/// What SQLite says; busy where another process is reading, such as a backup: the log then still holds what
/// was erased.
pub(super) fn truncate_log(connection: &Connection) -> Result<(), rusqlite::Error> {
    let busy: i64 = connection.query_row("PRAGMA wal_checkpoint(TRUNCATE)", [], |row| row.get("busy"))?;
    if busy == 0 { Ok(()) } else { Err(read_meanwhile()) }
}

/// The same without waiting for whoever reads.
fn truncate_log_now(connection: &Connection) -> Result<(), rusqlite::Error> {
    let patience: i64 = connection.query_row("PRAGMA busy_timeout", [], |row| row.get(0))?;
    connection.busy_timeout(Duration::ZERO)?;
    let done = truncate_log(connection);
    connection.busy_timeout(Duration::from_millis(patience.unsigned_abs()))?;
    done
}

fn read_meanwhile() -> rusqlite::Error {
    let busy = rusqlite::ffi::Error::new(rusqlite::ffi::SQLITE_BUSY);
    rusqlite::Error::SqliteFailure(busy, None)
}
