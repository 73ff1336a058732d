//! Opening a data folder: one process at a time, damaged data set aside and never deleted, newer data
//! refused untouched.

use std::path::{Path, PathBuf};
use std::sync::Arc;

use rusqlite::{Connection, OpenFlags};

use super::fault::StoreFault;
use super::lock::FolderLock;
use super::migrations;
use super::private;
use crate::model::time::Moment;

/// An open data folder.
#[derive(Debug)]
pub struct Store {
    /// The one connection; the app serialises its use.
    pub(super) connection: Connection,
    /// The data folder.
    pub(super) folder: PathBuf,
    /// Held for as long as the store is open, or one beside it.
    pub(super) lock: Arc<FolderLock>,
}

/// A store and what a person should know of how it opened.
#[derive(Debug)]
pub struct Opened {
    /// The store.
    pub store: Store,
    /// Folder into which damaged data was set aside, if it was.
    pub set_aside: Option<PathBuf>,
}

pub(super) const DATABASE: &str = "steady.db";
/// Folder of a workshop's own layouts.
const OWN_LAYOUTS: &str = "layouts";
/// Folder of a workshop's own causes, signs and layouts.
const OWN_KNOWLEDGE: &str = "knowledge";
/// The folders with what a workshop wrote itself.
pub(super) const OWN_FOLDERS: [&str; 2] = [OWN_LAYOUTS, OWN_KNOWLEDGE];
/// Left behind when SQLite reported damage in the middle of work; the next start then looks closely.
const SUSPECT: &str = "suspect";

/// Opens a data folder, making it if need be.
///
/// # Errors
/// [`StoreFault::Unwritable`], [`StoreFault::InUse`], [`StoreFault::Newer`], or what SQLite says.
pub fn open(folder: &Path, now: Moment) -> Result<Opened, StoreFault> {
    private::folder(&folder.join("photos")).map_err(StoreFault::Unwritable)?;
    let lock = FolderLock::take(folder)?;
    let (connection, set_aside) = match connect(folder) {
        Err(StoreFault::Damaged) => {
            let aside = set_aside(folder, now)?;
            (connect(folder)?, Some(aside))
        }
        other => (other?, None),
    };
    // SQLite makes its files as readable as others are; later ones, like the log, are as closed as the database.
    private::mend(folder);
    let store = Store { connection, folder: folder.to_owned(), lock: Arc::new(lock) };
    store.clear_uploads();
    store.clear_outgoing();
    store.clear_rehearsals();
    // An erasure that was cut off goes on; if it cannot now, the next start tries again.
    let _ = store.sweep();
    Ok(Opened { store, set_aside })
}

fn connect(folder: &Path) -> Result<Connection, StoreFault> {
    let flags =
        OpenFlags::SQLITE_OPEN_READ_WRITE | OpenFlags::SQLITE_OPEN_CREATE | OpenFlags::SQLITE_OPEN_NO_MUTEX;
    let mut connection =
        Connection::open_with_flags(folder.join(DATABASE), flags).map_err(StoreFault::sql("open"))?;
    prepare(&connection).map_err(StoreFault::sql("prepare"))?;
    if folder.join(SUSPECT).exists() {
        look_closely(&connection, folder)?;
    }
    migrations::migrate(&mut connection)?;
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

fn prepare(connection: &Connection) -> Result<(), rusqlite::Error> {
    // Readers and the writer do not wait for each other, and a crash leaves whole transactions.
    connection.pragma_update(None, "journal_mode", "WAL")?;
    // WAL with NORMAL may lose the last commits on power loss; a reply promises that they are on disk.
    connection.pragma_update(None, "synchronous", "FULL")?;
    // A system SQLite may have it off.
    connection.pragma_update(None, "foreign_keys", true)?;
    // Nothing in a foreign schema may run code.
    connection.pragma_update(None, "trusted_schema", false)?;
    connection.busy_timeout(std::time::Duration::from_secs(5))
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

/// Moves the database and the photos into a folder of their own, whole.
fn set_aside(folder: &Path, now: Moment) -> Result<PathBuf, StoreFault> {
    let stamp = now.rfc3339().replace([':', '.'], "-");
    let aside = folder.join(format!("set-aside-{stamp}"));
    std::fs::create_dir(&aside).map_err(StoreFault::file)?;
    for name in [DATABASE, "steady.db-wal", "steady.db-shm", "photos", SUSPECT] {
        let from = folder.join(name);
        if from.exists() {
            std::fs::rename(from, aside.join(name)).map_err(StoreFault::file)?;
        }
    }
    std::fs::create_dir_all(folder.join("photos")).map_err(StoreFault::file)?;
    Ok(aside)
}

impl Store {
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
    pub fn beside(&self) -> Result<Self, StoreFault> {
        let connection = snapshot(&self.folder.join(DATABASE)).map_err(StoreFault::sql("read beside"))?;
        Ok(Self { connection, folder: self.folder.clone(), lock: Arc::clone(&self.lock) })
    }

    /// Notes a fault; damage makes the next start look closely. Gives the fault back.
    pub fn noted(&self, fault: StoreFault) -> StoreFault {
        if matches!(fault, StoreFault::Damaged) {
            // If even this cannot be written the next start still sees what SQLite says.
            let _ = std::fs::write(self.folder.join(SUSPECT), b"");
        }
        fault
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
        let named = |path: &PathBuf| {
            let name = path.file_name()?.to_string_lossy().into_owned();
            let text = std::fs::read(path).map(|bytes| String::from_utf8_lossy(&bytes).into_owned()).ok()?;
            Some((name, text))
        };
        paths.iter().filter_map(named).collect()
    }
}
