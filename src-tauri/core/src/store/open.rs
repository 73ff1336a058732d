//! Opening a data folder: one process at a time, damaged data set aside and never deleted, newer data
//! refused untouched.
//!
//! SQLite's `quick_check` reads the whole file, which a phone cannot afford at each start: it runs only after trouble.
//! SQLite's own report of damage leaves a mark, and the next start then looks closely.

use std::fs;
use std::path::{Path, PathBuf};
use std::sync::Arc;

use rusqlite::config::DbConfig;
use rusqlite::{Connection, OpenFlags};

use super::aside;
use super::backup::source;
use super::data_id;
use super::fault::StoreFault;
use super::folders::{length, sync, with_ending};
use super::lock::FolderLock;
use super::migrations;
use super::private;
use crate::model::aside::Why;
use crate::model::limits;
use crate::model::time::Moment;

/// An open data folder.
#[derive(Debug)]
pub struct Store {
    /// The one connection; the app serialises its use.
    pub(super) connection: Connection,
    /// The data folder.
    pub(super) folder: PathBuf,
    /// Held for as long as the store is open, or one beside it; a copy in memory holds none.
    pub(super) lock: Option<Arc<FolderLock>>,
}

pub(super) const DATABASE: &str = "steady.db";
/// Folder of a workshop's own layouts.
pub const OWN_LAYOUTS: &str = "layouts";
/// Folder of a workshop's own causes, signs and layouts.
const OWN_KNOWLEDGE: &str = "knowledge";
/// The folders with what a workshop wrote itself.
pub(super) const OWN_FOLDERS: [&str; 2] = [OWN_LAYOUTS, OWN_KNOWLEDGE];
/// Left behind when SQLite reported damage in the middle of work; the next start then looks closely.
pub(super) const SUSPECT: &str = "suspect";

/// Opens a data folder, making it if need be. What was set aside on the way stands in [`Store::asides`].
///
/// # Errors
/// [`StoreFault::Unwritable`], [`StoreFault::InUse`], [`StoreFault::Newer`], or what SQLite says.
pub fn open(folder: &Path, now: Moment) -> Result<Store, StoreFault> {
    private::folder(folder).map_err(StoreFault::Unwritable)?;
    let lock = FolderLock::take(folder)?;
    aside::finish(folder)?;
    let connection = usable(folder, now)?;
    private::folder(&folder.join("photos")).map_err(StoreFault::file)?;
    // SQLite makes its files as readable as others are; later ones, like the log, are as closed as the database.
    private::mend(folder);
    let store = Store { connection, folder: folder.to_owned(), lock: Some(Arc::new(lock)) };
    store.finish_placing()?;
    store.clear_uploads();
    store.clear_outgoing();
    store.clear_rehearsals();
    // Made while there is room: a backup of a disk that is full has nothing left to write there.
    let _ = data_id::data_id(folder);
    // An erasure that was cut off goes on; if it cannot now, the next start tries again.
    let _ = store.sweep();
    // Nothing is on its way yet: what no line names now is named by none.
    let _ = store.clear_unnamed();
    Ok(store)
}

/// Opens a copy of a data folder's database in memory, beside whoever works on the folder: one snapshot, to be
/// read. What is written to it is gone with it, and no file is changed.
///
/// # Errors
/// [`BackupFault::NoData`](super::backup::fault::BackupFault::NoData), [`StoreFault::Newer`], or what SQLite says.
pub fn open_copy(folder: &Path) -> Result<Store, StoreFault> {
    let read = source::open_read_only(folder)?;
    let mut connection = source::copy_in_memory(&read)?;
    migrations::migrate(&mut connection)?;
    Ok(Store { connection, folder: folder.to_owned(), lock: None })
}

/// Whether a folder holds a ledger, or what is left of one: opening it makes nothing new there. Names that any
/// folder may have, such as `photos` or `lock`, say nothing by themselves.
#[must_use]
pub fn holds_ledger(folder: &Path) -> bool {
    let files = [DATABASE, "steady.db-wal", data_id::FILE];
    files.iter().any(|name| folder.join(name).exists()) || aside::holds_photos(folder) || aside::is_in(folder)
}

/// The database that is there, a new one where there is none, or a new one beside what had to be set aside.
fn usable(folder: &Path, now: Moment) -> Result<Connection, StoreFault> {
    if let Some(why) = aside::reason(folder)? {
        return instead(folder, now, why);
    }
    if length(&folder.join(DATABASE)).map_err(StoreFault::file)?.is_none() {
        begin(folder)?;
    }
    if aside::is_of_another(folder) {
        return Err(StoreFault::Foreign);
    }
    // Begun without room, SQLite would leave its empty log beside it.
    if !with_ending(&folder.join(DATABASE), "-wal").exists() && source::has_no_room(folder) {
        return Err(StoreFault::Full);
    }
    match connect(folder) {
        Err(StoreFault::Damaged) => instead(folder, now, Why::Damaged),
        other => other,
    }
}

fn instead(folder: &Path, now: Moment, why: Why) -> Result<Connection, StoreFault> {
    aside::set_aside(folder, now, why)?;
    begin(folder)?;
    connect(folder)
}

/// Makes a new database under a passing name first: under its own it is whole, and one without a byte was damaged.
fn begin(folder: &Path) -> Result<(), StoreFault> {
    let part = folder.join("steady.db.part");
    let clear = || {
        for ending in ["", "-journal", "-wal", "-shm"] {
            // There is mostly nothing; what cannot be removed is found by SQLite.
            let _ = fs::remove_file(with_ending(&part, ending));
        }
    };
    clear();
    let made = || {
        // SQLite would make it readable to others, and its log and index like it.
        private::create(&part).map_err(StoreFault::file)?;
        let mut connection = Connection::open(&part).map_err(StoreFault::sql("open"))?;
        migrations::migrate(&mut connection)?;
        connection.close().map_err(|(_, fault)| StoreFault::sql("close")(fault))?;
        fs::rename(&part, folder.join(DATABASE)).and_then(|()| sync(folder)).map_err(StoreFault::file)
    };
    made().inspect_err(|_| clear())
}

fn connect(folder: &Path) -> Result<Connection, StoreFault> {
    let flags = OpenFlags::SQLITE_OPEN_READ_WRITE | OpenFlags::SQLITE_OPEN_NO_MUTEX;
    let mut connection =
        Connection::open_with_flags(folder.join(DATABASE), flags).map_err(StoreFault::sql("open"))?;
    // Until it is known to be sound, its log stays as it is: closing would write it back and clear it away.
    keep_log(&connection, true)?;
    prepare(&connection).map_err(StoreFault::sql("prepare"))?;
    if folder.join(SUSPECT).exists() {
        look_closely(&connection, folder)?;
    }
    migrations::migrate(&mut connection)?;
    keep_log(&connection, false)?;
    Ok(connection)
}

/// A connection in the middle of a transaction that only reads: it sees one moment until it is closed.
fn snapshot(database: &Path) -> Result<Connection, rusqlite::Error> {
    let flags = OpenFlags::SQLITE_OPEN_READ_ONLY | OpenFlags::SQLITE_OPEN_NO_MUTEX;
    let connection = Connection::open_with_flags(database, flags)?;
    connection.pragma_update(None, "trusted_schema", false)?;
    connection.busy_timeout(std::time::Duration::from_secs(5))?;
    connection.execute_batch("BEGIN")?;
    // The moment is that of the first look.
    connection.query_row("SELECT count(*) FROM sqlite_schema", [], |_| Ok(()))?;
    Ok(connection)
}

fn keep_log(connection: &Connection, on: bool) -> Result<(), StoreFault> {
    let set = connection.set_db_config(DbConfig::SQLITE_DBCONFIG_NO_CKPT_ON_CLOSE, on);
    set.map(|_| ()).map_err(StoreFault::sql("prepare"))
}

fn prepare(connection: &Connection) -> Result<(), rusqlite::Error> {
    // Readers and the writer do not wait for each other, and a crash leaves whole transactions.
    connection.pragma_update(None, "journal_mode", "WAL")?;
    // WAL with NORMAL may lose the last commits on power loss; a reply promises that they are on disk.
    connection.pragma_update(None, "synchronous", "FULL")?;
    // Apple's fsync leaves bytes in the drive's own memory; these two ask the drive. Others ignore them.
    connection.pragma_update(None, "fullfsync", true)?;
    connection.pragma_update(None, "checkpoint_fullfsync", true)?;
    // A system SQLite may have it off.
    connection.pragma_update(None, "foreign_keys", true)?;
    // Nothing in a foreign schema may run code.
    connection.pragma_update(None, "trusted_schema", false)?;
    connection.busy_timeout(std::time::Duration::from_secs(5))
}

/// Makes the next start look closely at a folder's database.
pub fn suspect(folder: &Path) {
    // If even this cannot be written the next start still sees what SQLite says.
    let _ = fs::write(folder.join(SUSPECT), b"");
}

fn look_closely(connection: &Connection, folder: &Path) -> Result<(), StoreFault> {
    let verdict: String = connection
        .query_row("PRAGMA quick_check(1)", [], |row| row.get(0))
        .map_err(StoreFault::sql("check"))?;
    if verdict != "ok" {
        return Err(StoreFault::Damaged);
    }
    std::fs::remove_file(folder.join(SUSPECT)).map_err(StoreFault::file)
}

impl Store {
    /// Whether this store only reads the folder: a copy in memory, or one beside whoever works on it.
    pub(super) fn only_reads(&self) -> bool {
        self.lock.is_none() || self.connection.is_readonly(rusqlite::MAIN_DB).unwrap_or(true)
    }

    /// The data folder.
    #[must_use]
    pub fn folder(&self) -> &Path {
        &self.folder
    }

    /// A store that reads the data folder as it stands now, whatever is written meanwhile, and writes nothing to
    /// the ledger.
    ///
    /// # Errors
    /// What SQLite says.
    pub fn snapshot(&self) -> Result<Self, StoreFault> {
        let connection = snapshot(&self.folder.join(DATABASE)).map_err(StoreFault::sql("read a snapshot"))?;
        Ok(Self { connection, folder: self.folder.clone(), lock: self.lock.clone() })
    }

    /// The workshop's own layout files: file name and text, in name order.
    pub fn own_layouts(&self) -> Vec<(String, String)> {
        self.own_files(OWN_LAYOUTS)
    }

    /// The workshop's own files of causes, signs and layouts: file name and text, in name order.
    pub fn own_knowledge(&self) -> Vec<(String, String)> {
        self.own_files(OWN_KNOWLEDGE)
    }

    fn own_files(&self, folder: &str) -> Vec<(String, String)> {
        let Ok(files) = std::fs::read_dir(self.folder.join(folder)) else { return Vec::new() };
        let mut paths: Vec<PathBuf> = files.flatten().map(|file| file.path()).collect();
        paths.retain(|path| path.extension().is_some_and(|ending| ending == "toml"));
        paths.sort();
        paths.truncate(limits::OWN_FILES);
        let named = |path: &PathBuf| {
            let name = path.file_name()?.to_string_lossy().into_owned();
            Some((name, own_text(path)?))
        };
        paths.iter().filter_map(named).collect()
    }
}

/// What an own file says. Of one that is too long to be one of ours a sentence that is none of its rows: it is refused by
/// name, and what is in it never held.
fn own_text(path: &Path) -> Option<String> {
    // A pipe would be waited for, and a device has no end.
    if !fs::metadata(path).is_ok_and(|found| found.is_file()) {
        return None;
    }
    let long = length(path).ok()?.is_some_and(|bytes| bytes > limits::OWN_FILE_BYTES);
    if long {
        return Some(format!("This file is longer than {} bytes.", limits::OWN_FILE_BYTES));
    }
    fs::read(path).map(|bytes| String::from_utf8_lossy(&bytes).into_owned()).ok()
}

#[cfg(test)]
mod tests {
    use super::prepare;
    use rusqlite::Connection;

    #[test]
    fn a_reply_asks_for_the_drive_itself() {
        let connection = Connection::open_in_memory().expect("a database");
        prepare(&connection).expect("prepared");
        for (name, wanted) in [("synchronous", 2), ("fullfsync", 1), ("checkpoint_fullfsync", 1)] {
            let found: i64 = connection
                .query_row(&format!("PRAGMA {name}"), [], |row| row.get(0))
                .expect("the pragma is read");
            assert_eq!(found, wanted, "{name}");
        }
    }
}
