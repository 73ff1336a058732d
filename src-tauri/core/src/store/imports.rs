//! Which import brought how much of each chain, so that a whole import can be taken back: its lines stay on disk
//! and are left out of every reading, and count again with the next import that brings them.
//!
//! Counted by chains and not by lines: a file always carries a chain from its first line on, so what counts of one
//! is its beginning up to the furthest import that was not taken back, and never has a hole.

use std::collections::BTreeMap;

use rusqlite::{Connection, OptionalExtension, params};

use super::fault::StoreFault;
use super::open::Store;
use crate::model::line::Line;
use crate::model::time::Moment;

/// An import that was written down.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct ImportRow {
    /// Row id of table `import`; never used again.
    pub id: i64,
    /// When it was taken in.
    pub at: Moment,
    /// The device that made the file.
    pub device: String,
    /// When, by that device's clock.
    pub made: Moment,
    /// When it was taken back.
    pub taken_back: Option<Moment>,
    /// How many visits it brought lines of.
    pub visits: u64,
}

impl Store {
    /// The latest imports of files, the latest first.
    ///
    /// # Errors
    /// What SQLite says.
    pub fn imports(&self, most: u32) -> Result<Vec<ImportRow>, StoreFault> {
        let read = || -> Result<Vec<ImportRow>, rusqlite::Error> {
            let mut statement = self.connection.prepare_cached(
                "SELECT id, at, device, made, taken_back,
                     (SELECT count(DISTINCT visit) FROM brought WHERE brought.import = import.id) AS visits
                 FROM import WHERE device <> '' ORDER BY id DESC LIMIT ?1",
            )?;
            let rows = statement.query_map([most], |row| {
                Ok(ImportRow {
                    id: row.get("id")?,
                    at: Moment(row.get("at")?),
                    device: row.get("device")?,
                    made: Moment(row.get("made")?),
                    taken_back: row.get::<_, Option<i64>>("taken_back")?.map(Moment),
                    visits: row.get::<_, i64>("visits")?.unsigned_abs(),
                })
            })?;
            rows.collect()
        };
        read().map_err(StoreFault::sql("list imports"))
    }
}

/// Begins an import; gives back its number.
pub(super) fn begin(
    connection: &Connection,
    now: Moment,
    (device, made): (&str, Moment),
) -> Result<i64, rusqlite::Error> {
    let sql = "INSERT INTO import (at, device, made) VALUES (?1, ?2, ?3)";
    connection.execute(sql, params![now.0, device, made.0])?;
    Ok(connection.last_insert_rowid())
}

/// How far the chains of a visit count that imports brought; `without` is an import thought away.
pub(super) fn reaches(
    connection: &Connection,
    visit: &str,
    without: Option<i64>,
) -> Result<BTreeMap<String, u64>, rusqlite::Error> {
    let mut statement = connection.prepare_cached(
        "SELECT device, coalesce(max(lines) FILTER (WHERE taken_back IS NULL AND import IS NOT ?2), 0) AS lines
         FROM brought WHERE visit = ?1 GROUP BY device",
    )?;
    let rows = statement.query_map(params![visit, without], |row| {
        Ok((row.get("device")?, row.get::<_, i64>("lines")?.unsigned_abs()))
    })?;
    rows.collect()
}

/// How far each chain of these lines goes; they come by device and place.
pub(super) fn lengths<'a>(lines: impl IntoIterator<Item = &'a Line>) -> BTreeMap<&'a str, u64> {
    let mut lengths = BTreeMap::new();
    for line in lines {
        let length = lengths.entry(line.device.as_str()).or_insert(0);
        *length = line.seq.max(*length);
    }
    lengths
}

/// Writes down how far an import brought each chain. A chain that was here without any such note gets one for what
/// was here before.
pub(super) fn note(
    connection: &Connection,
    import: i64,
    visit: &str,
    (device, lines, before): (&str, u64, u64),
) -> Result<(), rusqlite::Error> {
    let known: Option<i64> = connection
        .prepare_cached("SELECT 1 AS known FROM brought WHERE visit = ?1 AND device = ?2 LIMIT 1")?
        .query_row(params![visit, device], |row| row.get("known"))
        .optional()?;
    let sql = "INSERT INTO brought (visit, device, import, lines) VALUES (?1, ?2, ?3, ?4)";
    let mut insert = connection.prepare_cached(sql)?;
    let stored = |lines: u64| i64::try_from(lines).unwrap_or(i64::MAX);
    if known.is_none() && before > 0 {
        insert.execute(params![visit, device, 0, stored(before)])?;
    }
    insert.execute(params![visit, device, import, stored(lines)]).map(|_| ())
}

/// Whether what counts of a visit was brought by files, and none of them is the one that this device made at this time.
pub(super) fn rests_on_others(
    connection: &Connection,
    visit: &str,
    (device, made): (&str, Moment),
) -> Result<bool, rusqlite::Error> {
    let mut statement = connection.prepare_cached(
        "SELECT count(*) AS files, count(*) FILTER (WHERE import.device = ?2 AND import.made = ?3) AS same
         FROM brought JOIN import ON import.id = brought.import
         WHERE brought.visit = ?1 AND brought.taken_back IS NULL AND import.device <> ''",
    )?;
    let found = |row: &rusqlite::Row<'_>| Ok((row.get::<_, i64>("files")?, row.get::<_, i64>("same")?));
    statement.query_row(params![visit, device, made.0], found).map(|(files, same)| files > 0 && same == 0)
}

/// Visits that an import brought lines of and that were not taken back yet.
pub(super) fn visits(connection: &Connection, import: i64) -> Result<Vec<String>, rusqlite::Error> {
    let mut statement = connection.prepare_cached(
        "SELECT DISTINCT visit FROM brought WHERE import = ?1 AND taken_back IS NULL ORDER BY visit",
    )?;
    statement.query_map([import], |row| row.get("visit"))?.collect()
}

/// Takes back what an import brought of a visit.
pub(super) fn take_back(
    connection: &Connection,
    import: i64,
    visit: &str,
    now: Moment,
) -> Result<(), rusqlite::Error> {
    let sql = "UPDATE brought SET taken_back = ?3 WHERE import = ?1 AND visit = ?2 AND taken_back IS NULL";
    connection.prepare_cached(sql)?.execute(params![import, visit, now.0]).map(|_| ())
}

/// Marks an import as taken back.
pub(super) fn close(connection: &Connection, import: i64, now: Moment) -> Result<bool, rusqlite::Error> {
    let sql = "UPDATE import SET taken_back = ?2 WHERE id = ?1 AND taken_back IS NULL AND device <> ''";
    connection.execute(sql, params![import, now.0]).map(|changed| changed > 0)
}
