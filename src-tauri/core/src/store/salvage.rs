//! Reads another Steady's database, whole or damaged: line by line, so that one page that cannot be read
//! costs only what stands on it. The file itself is never opened, only a copy of it.

use std::collections::BTreeMap;
use std::fs;
use std::path::{Path, PathBuf};

use rusqlite::Connection;
use sha2::{Digest, Sha256};

use super::fault::StoreFault;
use super::ledger;
use super::open::Store;
use super::photo_files::PhotoSize;
use super::{foreign_schema, migrations, workshop};
use crate::model::hex;
use crate::model::limits;
use crate::model::line::Line;
use crate::model::time::Moment;
use crate::model::workshop::Workshop;

/// More lines than any workshop writes; a damaged counter does not make the search endless.
const MOST_LINES: i64 = 10_000_000;
/// No line takes fewer bytes: it holds two hashes and two ids.
const LEAST_LINE_BYTES: u64 = 200;
/// Lines that cannot be read, as a multiple of those that the file could hold: behind them the search ends.
const MOST_UNREAD: u64 = 10;

/// Another Steady's database.
#[derive(Debug)]
pub struct Foreign {
    connection: Option<Connection>,
    copy: PathBuf,
    photos: PathBuf,
    lines: BTreeMap<String, Vec<i64>>,
    /// Lines that are there and cannot be read, of whatever visit.
    unread: Vec<i64>,
}

impl Store {
    /// Opens another Steady's database; its photos are looked for in the folder `photos` beside it.
    ///
    /// # Errors
    /// [`StoreFault::Damaged`] if nothing in it can be read, [`StoreFault::Newer`], or what the file
    /// system says.
    pub fn foreign(&self, database: &Path) -> Result<Foreign, StoreFault> {
        let copy = self.folder.join("incoming").join("salvage");
        fs::create_dir_all(&copy).map_err(StoreFault::file)?;
        let beside = database.parent().unwrap_or_else(|| Path::new("")).join("photos");
        let mut foreign =
            Foreign { connection: None, copy, photos: beside, lines: BTreeMap::new(), unread: Vec::new() };
        foreign.open(database)?;
        Ok(foreign)
    }
}

impl Foreign {
    fn open(&mut self, database: &Path) -> Result<(), StoreFault> {
        let copy = self.copy.join("steady.db");
        fs::copy(database, &copy).map_err(StoreFault::file)?;
        let log = |path: &Path| PathBuf::from(format!("{}-wal", path.display()));
        if log(database).exists() {
            fs::copy(log(database), log(&copy)).map_err(StoreFault::file)?;
        }
        let mut connection = Connection::open(&copy).map_err(StoreFault::sql("open"))?;
        let bytes = fs::metadata(&copy).map_err(StoreFault::file)?.len();
        migrations::check_known(&connection)?;
        let budget = foreign_schema::guard(&mut connection, bytes)?;
        let most_unread = MOST_UNREAD * (1_000 + bytes / LEAST_LINE_BYTES);
        (self.lines, self.unread) = lines(&connection, most_unread);
        if budget.is_spent() {
            return Err(StoreFault::Endless);
        }
        self.connection = Some(connection);
        Ok(())
    }

    /// The workshop's particulars; empty where there are none or they cannot be read.
    pub fn workshop(&self) -> Workshop {
        self.connection.as_ref().and_then(|connection| workshop::read(connection).ok()).unwrap_or_default()
    }

    /// Visits of which at least one line or the card can be read.
    pub fn visits(&self) -> Vec<String> {
        self.lines.keys().cloned().collect()
    }

    /// A visit's lines by device and place; nothing if one that was found cannot be read, or if the index or
    /// the card knows of more than was found: what is cut short would read as whole.
    pub fn lines(&self, visit: &str) -> Option<Vec<Line>> {
        let connection = self.connection.as_ref()?;
        let mut statement = connection.prepare_cached(one_line(connection)).ok()?;
        let ids = self.lines.get(visit)?;
        let read: Result<Vec<Line>, _> =
            ids.iter().map(|id| statement.query_row([id], ledger::line)).collect();
        let mut lines = read.ok()?;
        if !self.is_whole(visit, ids, lines.iter().map(|line| line.at).max()) {
            return None;
        }
        lines.sort_by(|a, b| (&a.device, a.seq).cmp(&(&b.device, b.seq)));
        Some(lines)
    }

    /// Whether every line of a visit was found: as many as the index knows; where the index cannot be read,
    /// up to the moment its card names; where neither can, no line behind its first that could not be read.
    fn is_whole(&self, visit: &str, found: &[i64], latest: Option<Moment>) -> bool {
        match (self.indexed(visit), self.updated(visit)) {
            (Some(lines), _) => lines == found.len(),
            (None, Some(updated)) => latest >= Some(updated),
            (None, None) => !self.unread.iter().any(|id| found.first().is_some_and(|first| id > first)),
        }
    }

    /// How many lines of a visit the index knows, whatever became of the lines.
    fn indexed(&self, visit: &str) -> Option<usize> {
        let sql = "SELECT count(seq) AS lines FROM entry WHERE visit = ?1";
        let lines = self.connection.as_ref()?.query_row(sql, [visit], |row| row.get::<_, i64>("lines"));
        usize::try_from(lines.ok()?).ok()
    }

    /// When the latest line was written, as the visit's card has it.
    fn updated(&self, visit: &str) -> Option<Moment> {
        let sql = "SELECT updated_at FROM card WHERE visit = ?1";
        let connection = self.connection.as_ref()?;
        connection.query_row(sql, [visit], |row| row.get::<_, i64>("updated_at")).ok().map(Moment)
    }

    /// Visits that were erased there, and when.
    pub fn erased(&self) -> Vec<(String, Moment)> {
        let read = |connection: &Connection| -> Result<Vec<(String, Moment)>, rusqlite::Error> {
            let mut statement = connection.prepare("SELECT visit, at FROM erased")?;
            statement.query_map([], |row| Ok((row.get("visit")?, Moment(row.get("at")?))))?.collect()
        };
        // Older databases have no such table.
        self.connection.as_ref().and_then(|connection| read(connection).ok()).unwrap_or_default()
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
        self.connection.as_ref().and_then(|connection| read(connection).ok()).unwrap_or_default()
    }

    /// A photo and its thumbnail, if both are there and the photo is what its name says.
    pub fn photo(&self, sha256: &str) -> Option<[Vec<u8>; 2]> {
        let read = |size: PhotoSize| {
            let path = self.photos.join(size.file_name(sha256));
            let fits = fs::metadata(&path).is_ok_and(|file| file.len() <= limits::PHOTO_BYTES);
            if fits { fs::read(path).ok() } else { None }
        };
        let full = read(PhotoSize::Full).filter(|bytes| hex::encode(&Sha256::digest(bytes)) == sha256)?;
        Some([full, read(PhotoSize::Thumb)?])
    }
}

impl Drop for Foreign {
    fn drop(&mut self) {
        self.connection = None;
        // Cleared at the next start if it cannot be now.
        let _ = fs::remove_dir_all(&self.copy);
    }
}

/// The statement that reads a line by its id, in databases from before signatures too.
fn one_line(connection: &Connection) -> &'static str {
    let signed = connection.prepare("SELECT signature FROM entry LIMIT 0").is_ok();
    match signed {
        true => "SELECT visit, device, seq, at, prev, hash, signature, body FROM entry WHERE id = ?1",
        false => {
            "SELECT visit, device, seq, at, prev, hash, NULL AS signature, body FROM entry WHERE id = ?1"
        }
    }
}

/// Where each visit's lines stand, asked one by one, and those that cannot be read.
fn lines(connection: &Connection, most_unread: u64) -> (BTreeMap<String, Vec<i64>>, Vec<i64>) {
    let counted = |sql: &str| connection.query_row(sql, [], |row| row.get::<_, i64>("last")).ok();
    let last = counted("SELECT seq AS last FROM sqlite_sequence WHERE name = 'entry'")
        .or_else(|| counted("SELECT max(id) AS last FROM entry"))
        .unwrap_or(MOST_LINES);
    let mut found: BTreeMap<String, Vec<i64>> = BTreeMap::new();
    let mut unread = Vec::new();
    let (Ok(mut one), Ok(mut after)) = (
        connection.prepare("SELECT visit FROM entry WHERE id = ?1"),
        connection.prepare("SELECT id FROM entry WHERE id > ?1 ORDER BY id LIMIT 1"),
    ) else {
        return (found, unread);
    };
    let mut id = 1;
    while id <= last.min(MOST_LINES) && (unread.len() as u64) < most_unread {
        let mut next = id + 1;
        match one.query_row([id], |row| row.get::<_, String>("visit")) {
            Ok(visit) => found.entry(visit).or_default().push(id),
            // Erased visits leave gaps, and a damaged counter a long one behind the last line.
            Err(rusqlite::Error::QueryReturnedNoRows) => {
                match after.query_row([id], |row| row.get::<_, i64>("id")) {
                    Ok(there) => next = next.max(there),
                    Err(rusqlite::Error::QueryReturnedNoRows) => break,
                    Err(_) => {}
                }
            }
            Err(_) => unread.push(id),
        }
        id = next;
    }
    // A visit whose lines are all gone is still known by its card, so that its loss is said.
    if let Ok(mut cards) = connection.prepare("SELECT visit FROM card") {
        let visits = cards.query_map([], |row| row.get::<_, String>("visit"));
        for visit in visits.into_iter().flatten().map_while(Result::ok) {
            found.entry(visit).or_default();
        }
    }
    (found, unread)
}
