//! Reads another Steady's database, whole or damaged. The ledger is read page by page, past whatever SQLite
//! stumbles over; each line proves itself by its hash, and a visit counts only where something shows that no line
//! behind its last is missing. The file itself is never opened for writing, only a copy of it.

use std::collections::BTreeMap;
use std::fs;
use std::path::{Path, PathBuf};

use rusqlite::Connection;
use sha2::{Digest, Sha256};

use super::fault::StoreFault;
use super::folders::{length, with_ending};
use super::mined::Mined;
use super::open::Store;
use super::pages::Pages;
use super::photo_files::PhotoSize;
use super::{devices, foreign_schema, imports, migrations, names, workshop};
use crate::model::device::DeviceDecision;
use crate::model::hex;
use crate::model::limits;
use crate::model::line::Line;
use crate::model::time::Moment;
use crate::model::workshop::Workshop;

/// Another Steady's database.
#[derive(Debug)]
pub struct Foreign {
    /// None where SQLite takes the file for no database.
    connection: Option<Connection>,
    copy: PathBuf,
    photos: PathBuf,
    pages: Pages,
    mined: Mined,
}

impl Store {
    /// Opens another Steady's database; its photos are looked for in the folder `photos` beside it.
    ///
    /// # Errors
    /// [`StoreFault::NoSuchDatabase`], [`StoreFault::EmptyDatabase`], [`StoreFault::NoDatabase`] where nothing in
    /// it reads as a ledger, [`StoreFault::Newer`], [`StoreFault::Foreign`], or what the file system says.
    pub fn foreign(&self, database: &Path) -> Result<Foreign, StoreFault> {
        let log = with_ending(database, "-wal");
        let bytes = |path: &Path| length(path).map_err(StoreFault::file);
        let whole = match bytes(database)? {
            Some(of_it) if database.is_file() => of_it.saturating_add(bytes(&log)?.unwrap_or(0)),
            _ => return Err(StoreFault::NoSuchDatabase),
        };
        match whole {
            0 => return Err(StoreFault::EmptyDatabase),
            1..=limits::DATABASE_BYTES => {}
            _ => return Err(StoreFault::NoDatabase),
        }
        let copies = self.folder.join("incoming").join(names::SALVAGE);
        fs::create_dir_all(&copies).map_err(StoreFault::file)?;
        let copied = copied(database, &log, &copies).and_then(|copy| read(&copy));
        let (connection, pages, mined) = copied.inspect_err(|_| {
            // Cleared at the next start if it cannot be now.
            let _ = fs::remove_dir_all(&copies);
        })?;
        let photos = database.parent().unwrap_or_else(|| Path::new("")).join("photos");
        let foreign = Foreign { connection, copy: copies, photos, pages, mined };
        let is_database = foreign.connection.is_some() || !foreign.mined.visits().is_empty();
        if is_database { Ok(foreign) } else { Err(StoreFault::NoDatabase) }
    }
}

fn copied(database: &Path, log: &Path, to: &Path) -> Result<PathBuf, StoreFault> {
    let copy = to.join("steady.db");
    fs::copy(database, &copy).map_err(StoreFault::file)?;
    if log.exists() {
        fs::copy(log, with_ending(&copy, "-wal")).map_err(StoreFault::file)?;
    }
    Ok(copy)
}

/// Mines the copy before SQLite is let near it: opening a log writes it back.
fn read(copy: &Path) -> Result<(Option<Connection>, Pages, Mined), StoreFault> {
    let pages = Pages::open(copy).map_err(StoreFault::file)?;
    let mined = Mined::of(&pages);
    Ok((connected(copy)?, pages, mined))
}

/// The copy as SQLite sees it, under the guard that a foreign file needs; nothing where it sees no database, or one
/// whose schema is damaged.
fn connected(copy: &Path) -> Result<Option<Connection>, StoreFault> {
    let opened = || -> Result<Connection, StoreFault> {
        let mut connection = Connection::open(copy).map_err(StoreFault::sql("open"))?;
        migrations::check_known(&connection)?;
        let bytes = fs::metadata(copy).map_err(StoreFault::file)?.len();
        // Where the work it allows is used up, what is still asked of SQLite is answered with nothing.
        foreign_schema::guard(&mut connection, bytes)?;
        Ok(connection)
    };
    match opened() {
        Ok(connection) => Ok(Some(connection)),
        Err(StoreFault::Damaged) => Ok(None),
        Err(fault) => Err(fault),
    }
}

impl Foreign {
    /// The workshop's particulars; empty where there are none or they cannot be read.
    pub fn workshop(&self) -> Workshop {
        self.connection.as_ref().and_then(|connection| workshop::read(connection).ok()).unwrap_or_default()
    }

    /// Visits of which anything at all was found.
    pub fn visits(&self) -> Vec<String> {
        self.mined.visits()
    }

    /// A visit's lines by device and place; nothing unless they are known to be all of them: what is cut short
    /// would read as whole.
    pub fn lines(&self, visit: &str) -> Option<Vec<Line>> {
        self.mined.lines(&self.pages, visit, self.counted(visit))
    }

    /// Drops the lines that came with imports that were taken back there.
    pub fn only_counting(&self, visit: &str, lines: &mut Vec<Line>) {
        let reaches = self.reaches(visit);
        lines.retain(|line| reaches.get(&line.device).is_none_or(|far| line.seq <= *far));
    }

    /// Whether everything that can be read of a visit came with imports that were taken back there.
    pub fn is_taken_back(&self, visit: &str) -> bool {
        let reaches = self.reaches(visit);
        let is_out = |line: &Line| reaches.get(&line.device).is_some_and(|far| line.seq > *far);
        let lines = if reaches.is_empty() { Vec::new() } else { self.readable_lines(visit) };
        !lines.is_empty() && lines.iter().all(is_out)
    }

    fn reaches(&self, visit: &str) -> BTreeMap<String, u64> {
        let read = |connection| imports::reaches(connection, visit, None).ok();
        let told = self.connection.as_ref().and_then(read);
        told.unwrap_or_else(|| self.mined.rows().reaches(visit))
    }

    /// Those of a visit's lines that can be read, of one that is no longer whole too.
    pub fn readable_lines(&self, visit: &str) -> Vec<Line> {
        self.mined.proven_lines(&self.pages, visit)
    }

    /// The copy's connection, where SQLite finds no damage anywhere and the schema is one of Steady's own: what is
    /// in it then need not be gathered line by line.
    pub(super) fn sound(&self) -> Option<&Connection> {
        let connection = self.connection.as_ref()?;
        let sql = "PRAGMA integrity_check(1)";
        let verdict = connection.query_row(sql, [], |row| row.get::<_, String>(0)).ok()?;
        (verdict == "ok" && foreign_schema::is_whole(connection).ok()?).then_some(connection)
    }

    /// How many lines of a visit SQLite's index knows.
    fn counted(&self, visit: &str) -> Option<usize> {
        let sql = "SELECT count(seq) AS lines FROM entry WHERE visit = ?1";
        let lines = self.connection.as_ref()?.query_row(sql, [visit], |row| row.get::<_, i64>("lines"));
        usize::try_from(lines.ok()?).ok()
    }

    /// What was decided there about devices.
    pub fn decisions(&self) -> Vec<DeviceDecision> {
        // Older databases have no such table.
        let read = |connection| devices::decisions(connection).ok();
        let told = self.connection.as_ref().and_then(read);
        told.unwrap_or_else(|| self.mined.rows().decisions())
    }

    /// Visits that were erased there, and when.
    pub fn erased(&self) -> Vec<(String, Moment)> {
        let read = |connection: &Connection| -> Result<Vec<(String, Moment)>, rusqlite::Error> {
            let mut statement = connection.prepare("SELECT visit, at FROM erased")?;
            statement.query_map([], |row| Ok((row.get("visit")?, Moment(row.get("at")?))))?.collect()
        };
        // Databases from before there were tombstones have no such table.
        let told = self.connection.as_ref().and_then(|connection| read(connection).ok());
        told.unwrap_or_else(|| self.mined.erased())
    }

    /// The technician's name and the choices of the screens.
    pub fn settings(&self) -> BTreeMap<String, String> {
        let read = |connection: &Connection| -> Result<BTreeMap<String, String>, rusqlite::Error> {
            let mut statement = connection.prepare("SELECT name, value FROM setting")?;
            statement.query_map([], |row| Ok((row.get("name")?, row.get("value")?)))?.collect()
        };
        let mut settings =
            self.connection.as_ref().and_then(|connection| read(connection).ok()).unwrap_or_default();
        settings.retain(|name, _| !super::keys::OWN.contains(&name.as_str()));
        settings
    }

    /// Every version of the knowledge that is kept there, with its texts.
    pub fn knowledge(&self) -> Vec<(String, String)> {
        let read = |connection: &Connection| -> Result<Vec<(String, String)>, rusqlite::Error> {
            let mut statement = connection.prepare("SELECT version, texts FROM knowledge")?;
            statement.query_map([], |row| Ok((row.get("version")?, row.get("texts")?)))?.collect()
        };
        // Older databases have no such table.
        let told = self.connection.as_ref().and_then(|connection| read(connection).ok());
        told.unwrap_or_else(|| self.mined.knowledge(&self.pages))
    }

    /// Whether a file of a photo is there, whatever it holds.
    pub fn has_photo(&self, sha256: &str, size: PhotoSize) -> bool {
        self.photos.join(size.file_name(sha256)).is_file()
    }

    /// A photo, if it is there and is what its name says.
    pub fn photo(&self, sha256: &str) -> Option<Vec<u8>> {
        let path = self.photos.join(PhotoSize::Full.file_name(sha256));
        let fits = fs::metadata(&path).is_ok_and(|file| file.len() <= limits::PHOTO_BYTES);
        let bytes = if fits { fs::read(path).ok()? } else { return None };
        (hex::encode(&Sha256::digest(&bytes)) == sha256).then_some(bytes)
    }
}

impl Drop for Foreign {
    fn drop(&mut self) {
        self.connection = None;
        // Cleared at the next start if it cannot be now.
        let _ = fs::remove_dir_all(&self.copy);
    }
}
