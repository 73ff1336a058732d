//! The database as a backup reads it: beside whoever works on it, without changing a byte, from one snapshot.

use std::collections::{BTreeMap, BTreeSet};
use std::ops::Deref;
use std::path::{Path, PathBuf};
use std::time::Duration;

use rusqlite::backup::Backup;
use rusqlite::{Connection, OpenFlags, TransactionBehavior, params};

use super::fault::BackupFault;
use crate::model::fresh_id::fresh_id;
use crate::model::time::Moment;
use crate::store::fault::StoreFault;
use crate::store::folders::{length, with_ending};
use crate::store::open::DATABASE;
use crate::store::{erase, keys, ledger, migrations, private};

/// How long to wait for a process that is about to write.
const PATIENCE: Duration = Duration::from_secs(5);

/// A database that is open to be read. What SQLite puts beside it for that goes when this is dropped.
#[derive(Debug)]
pub struct Reading {
    connection: Connection,
    // Dropped after the connection.
    _beside: Option<Cleared>,
}

impl From<Connection> for Reading {
    fn from(connection: Connection) -> Self {
        Self { connection, _beside: None }
    }
}

impl Deref for Reading {
    type Target = Connection;

    fn deref(&self) -> &Connection {
        &self.connection
    }
}

/// A database beside which nothing of SQLite's lay: whoever reads one makes a log and its index, and only who may write
/// takes them away again.
#[derive(Debug)]
struct Cleared(PathBuf);

impl Cleared {
    fn before(path: &Path) -> Option<Self> {
        let lies = |end: &&str| !matches!(length(&with_ending(path, end)), Ok(None));
        let nothing = !["-wal", "-shm", "-journal"].iter().any(lies);
        nothing.then(|| Self(path.to_owned()))
    }
}

impl Drop for Cleared {
    fn drop(&mut self) {
        if !["-wal", "-shm"].iter().any(|end| with_ending(&self.0, end).exists()) {
            return;
        }
        // Whoever came meanwhile holds a lock of SQLite's own, and keeps both; there is no line in the log to be written.
        let flags = OpenFlags::SQLITE_OPEN_READ_WRITE | OpenFlags::SQLITE_OPEN_NO_MUTEX;
        let looked = Connection::open_with_flags(&self.0, flags).and_then(|connection| {
            connection.query_row("SELECT count(*) FROM sqlite_schema", [], |_| Ok(()))
        });
        // A damaged one says so again; on a disk that takes nothing, both stay.
        drop(looked);
    }
}

/// Opens a data folder's database for reading. The folder's lock is not asked for: SQLite's write-ahead log
/// lets a reader look at the last whole transaction while another process writes.
///
/// # Errors
/// [`BackupFault::NoData`] where there is no database, [`StoreFault::Newer`], or what SQLite says.
pub fn open_read_only(data: &Path) -> Result<Reading, StoreFault> {
    let path = data.join(DATABASE);
    if !path.is_file() {
        return Err(BackupFault::NoData.into());
    }
    let _beside = Cleared::before(&path);
    let connection = open_copy(&path).map_err(of_data)?;
    let reading = Reading { connection, _beside };
    migrations::check_known(&reading).map_err(of_data)?;
    Ok(reading)
}

/// Opens a database for reading.
///
/// # Errors
/// What SQLite says.
pub fn open_copy(path: &Path) -> Result<Connection, StoreFault> {
    let flags = OpenFlags::SQLITE_OPEN_READ_ONLY | OpenFlags::SQLITE_OPEN_NO_MUTEX;
    let open = |path: &Path, flags| -> Result<Connection, rusqlite::Error> {
        let connection = Connection::open_with_flags(path, flags)?;
        connection.busy_timeout(PATIENCE)?;
        connection.pragma_update(None, "trusted_schema", false)?;
        connection.query_row("SELECT count(*) FROM sqlite_schema", [], |_| Ok(()))?;
        Ok(connection)
    };
    let as_it_is = || {
        let uri = flags | OpenFlags::SQLITE_OPEN_URI;
        open(&unchanging(path), uri).map_err(StoreFault::sql("open for reading"))
    };
    // Tried without room for it, the index of the log would be left behind in part.
    if !has_log(path) && path.parent().is_some_and(has_no_room) {
        return as_it_is();
    }
    let opened = open(path, flags).map_err(StoreFault::sql("open for reading"));
    if matches!(opened, Err(StoreFault::Unwritable(_))) && is_still(path) { as_it_is() } else { opened }
}

/// What SQLite writes beside a database that is read: the first piece of the index of its log, bytes.
/// Source: the WAL-index file format of sqlite.org.
#[cfg(unix)]
const LOG_INDEX: u64 = 32 * 1024;

/// Whether a folder's disk has no room for what SQLite writes to read a database in it. Asked of the disk, not tried:
/// what is tried may be left there.
#[cfg(unix)]
pub fn has_no_room(folder: &Path) -> bool {
    rustix::fs::statvfs(folder).is_ok_and(|disk| disk.f_bavail.saturating_mul(disk.f_frsize) < LOG_INDEX)
}

/// Elsewhere SQLite is asked, and says so itself.
#[cfg(not(unix))]
pub fn has_no_room(_: &Path) -> bool {
    false
}

/// Whether nobody can be writing to a database: no log is beside it, on a disk that takes nothing, where SQLite makes
/// no index of the log either.
fn is_still(path: &Path) -> bool {
    !has_log(path) && path.parent().is_some_and(takes_nothing)
}

/// Whether anything is written in a database's log: of an empty one there is nothing to read.
fn has_log(path: &Path) -> bool {
    length(&with_ending(path, "-wal")).map_or(true, |bytes| bytes.is_some_and(|bytes| bytes > 0))
}

/// Whether no file can be made in a folder.
fn takes_nothing(folder: &Path) -> bool {
    let probe = folder.join(format!(".steady-{}", fresh_id().simple()));
    match private::create(&probe) {
        // Made, and so gone again.
        Ok(_) => std::fs::remove_file(probe).is_err(),
        Err(fault) => fault.kind() == std::io::ErrorKind::ReadOnlyFilesystem,
    }
}

/// The address by which SQLite reads a file without a look at what may be beside it.
fn unchanging(path: &Path) -> PathBuf {
    let plain = |byte: &u8| byte.is_ascii_alphanumeric() || b"/-._~".contains(byte);
    let path = path.to_string_lossy().replace(std::path::MAIN_SEPARATOR, "/");
    let spelled = |byte: u8| if plain(&byte) { char::from(byte).to_string() } else { format!("%{byte:02X}") };
    let root = if path.starts_with('/') || !path.contains(':') { "" } else { "/" };
    let path: String = path.bytes().map(spelled).collect();
    format!("file:{root}{path}?immutable=1").into()
}

/// What a ledger holds, as far as losing it goes.
#[derive(Debug, Default)]
pub struct Holds {
    /// Visits, each with its number of lines.
    pub visits: BTreeMap<String, u64>,
    /// Visits erased at their owners' wish, and when.
    pub erased: BTreeMap<String, Moment>,
    /// Photos that lines name.
    pub photos: BTreeSet<String>,
}

impl Holds {
    /// Reads it from a database of any version.
    ///
    /// # Errors
    /// What SQLite says.
    pub fn read(connection: &Connection) -> Result<Self, StoreFault> {
        let read = || -> Result<Self, rusqlite::Error> {
            let mut holds = Self::default();
            if has_table(connection, "entry")? {
                let mut lines = connection.prepare("SELECT visit, body FROM entry")?;
                let mut rows = lines.query([])?;
                while let Some(row) = rows.next()? {
                    *holds.visits.entry(ledger::text(row, "visit")?).or_default() += 1;
                    let body = row.get_ref("body")?.as_bytes().unwrap_or_default();
                    holds.photos.extend(photo_in(&String::from_utf8_lossy(body)));
                }
            }
            if has_table(connection, "erased")? {
                let mut erased = connection.prepare("SELECT visit, at FROM erased")?;
                let rows = erased.query_map([], |row| Ok((row.get("visit")?, Moment(row.get("at")?))))?;
                holds.erased = rows.collect::<Result<_, _>>()?;
            }
            Ok(holds)
        };
        read().map_err(StoreFault::sql("read what a ledger holds"))
    }

    /// Refuses to follow a fuller copy: every visit of it has to be here with no fewer lines, or erased.
    ///
    /// # Errors
    /// [`BackupFault::WouldLose`].
    pub fn is_no_less_than(&self, visits: &BTreeMap<String, u64>) -> Result<(), BackupFault> {
        let here = |visit: &str| self.visits.get(visit).copied().unwrap_or(0);
        let gone =
            |(visit, lines): &(&String, &u64)| here(visit) < **lines && !self.erased.contains_key(*visit);
        let mut lost = visits.iter().filter(gone).map(|(visit, _)| visit.clone());
        match lost.next() {
            Some(first) => Err(BackupFault::WouldLose { visits: lost.count() + 1, first }),
            None => Ok(()),
        }
    }
}

/// What the ledger of a data folder holds.
///
/// # Errors
/// [`BackupFault::DataDamaged`], or what SQLite says.
pub fn holds(connection: &Connection) -> Result<Holds, StoreFault> {
    Holds::read(connection).map_err(of_data)
}

/// The photo that a line names: its body's `photo.sha256`. Cheap where none is named.
fn photo_in(body: &str) -> Option<String> {
    if !body.contains("\"photo\"") {
        return None;
    }
    let body: crate::model::entry::EntryBody = serde_json::from_str(body).ok()?;
    body.photo().map(|photo| photo.sha256.clone())
}

/// Whether a table is there.
///
/// # Errors
/// What SQLite says.
pub fn has_table(connection: &Connection, name: &str) -> Result<bool, rusqlite::Error> {
    let sql = "SELECT count(*) AS tables FROM sqlite_schema WHERE type = 'table' AND name = ?1";
    connection.query_row(sql, [name], |row| row.get::<_, i64>("tables")).map(|tables| tables > 0)
}

/// Whether a table is there and has this column.
///
/// # Errors
/// What SQLite says.
pub fn has_column(connection: &Connection, table: &str, column: &str) -> Result<bool, rusqlite::Error> {
    let sql = "SELECT count(*) AS columns FROM pragma_table_info(?1) WHERE name = ?2";
    connection.query_row(sql, [table, column], |row| row.get::<_, i64>("columns")).map(|found| found > 0)
}

/// Copies the whole database, without what belongs to the device alone. The copy is whole and checked.
///
/// # Errors
/// What SQLite says.
pub fn copy(from: &Connection, to: &Path) -> Result<(), StoreFault> {
    // SQLite would make it readable to others.
    private::create(to).map_err(StoreFault::file)?;
    let copy = || -> Result<(), rusqlite::Error> {
        from.execute("VACUUM INTO ?1", [to.to_string_lossy()])?;
        let copied = open_plain(to)?;
        for name in keys::OWN {
            copied.execute("DELETE FROM setting WHERE name = ?1", params![name])?;
        }
        copied.close().map_err(|(_, fault)| fault)
    };
    copy().map_err(StoreFault::sql("back up")).and_then(|()| check(to)).map_err(of_data)
}

/// Damage of what is read beside whoever works on it: nothing was set aside by this.
fn of_data(fault: StoreFault) -> StoreFault {
    if matches!(fault, StoreFault::Damaged) { BackupFault::DataDamaged.into() } else { fault }
}

/// Copies the whole database into memory.
///
/// # Errors
/// What SQLite says.
pub fn copy_in_memory(from: &Connection) -> Result<Connection, StoreFault> {
    let copy = || -> Result<Connection, rusqlite::Error> {
        let mut copied = Connection::open_in_memory()?;
        // In one step: a second would begin again if somebody wrote in between.
        Backup::new(from, &mut copied)?.step(-1)?;
        copied.pragma_update(None, "trusted_schema", false)?;
        Ok(copied)
    };
    copy().map_err(StoreFault::sql("copy into memory")).map_err(of_data)
}

/// Takes erased visits out of a backup's database, whatever version it is of, and leaves their tombstones.
///
/// # Errors
/// What SQLite says.
pub fn erase_from(database: &Path, visits: &BTreeMap<String, Moment>) -> Result<(), StoreFault> {
    let mut connection = open_plain(database).map_err(StoreFault::sql("open a backup"))?;
    migrations::migrate(&mut connection)?;
    let erase = || -> Result<(), rusqlite::Error> {
        let transaction = connection.transaction_with_behavior(TransactionBehavior::Immediate)?;
        for (visit, at) in visits {
            erase::erase_rows(&transaction, visit, *at)?;
        }
        transaction.commit()?;
        connection.execute_batch("VACUUM")?;
        connection.close().map_err(|(_, fault)| fault)
    };
    erase().map_err(StoreFault::sql("erase from a backup"))?;
    check(database)
}

/// A database without a log beside it, in which nothing that is removed stays readable.
fn open_plain(path: &Path) -> Result<Connection, rusqlite::Error> {
    let connection = Connection::open(path)?;
    connection.query_row("PRAGMA journal_mode = DELETE", [], |_| Ok(()))?;
    connection.query_row("PRAGMA secure_delete = ON", [], |_| Ok(()))?;
    connection.pragma_update(None, "synchronous", "FULL")?;
    connection.pragma_update(None, "trusted_schema", false)?;
    Ok(connection)
}

/// Reads a database from its first page to its last.
///
/// # Errors
/// [`StoreFault::Damaged`], or what SQLite says.
pub fn check(path: &Path) -> Result<(), StoreFault> {
    let connection = open_copy(path)?;
    let verdict = connection.query_row("PRAGMA quick_check(1)", [], |row| row.get::<_, String>(0));
    if verdict.map_err(StoreFault::sql("check a copy"))? == "ok" { Ok(()) } else { Err(StoreFault::Damaged) }
}
