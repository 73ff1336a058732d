//! The ledger beside that of the last backup, line by line: whether both went on from one beginning, and whether every
//! line is still proven. What the last backup holds to the byte was proven when it was made.

use std::collections::{BTreeMap, BTreeSet};
use std::iter::Peekable;

use rusqlite::Connection;

use super::fault::BackupFault;
use super::source::has_column;
use crate::model::time::Moment;
use crate::store::fault::StoreFault;
use crate::store::ledger;

/// What the two have in common, and not.
#[derive(Debug, Default)]
pub struct Compared {
    /// Visits of which a line is another one there.
    forked: BTreeSet<String>,
    /// Visits of which a line of there is not here.
    missing: BTreeSet<String>,
    /// Visits with a line that is not as it was written, or is not proven to be its device's.
    pub unproven: BTreeSet<String>,
}

/// A line of the last backup: its place, hash and signature.
type Known = ((String, String, i64), String, Option<String>);

impl Compared {
    /// Walks both ledgers once, in the order of their index.
    ///
    /// # Errors
    /// What SQLite says.
    pub fn of(here: &Connection, last: Option<&Connection>) -> Result<Self, StoreFault> {
        let compare = || -> Result<Self, rusqlite::Error> {
            let Some(last) = last else { return walk(here, std::iter::empty()) };
            let mut theirs = last.prepare(&select("visit, device, seq, hash", last)?)?;
            let known = theirs.query_map([], |row| {
                let place = (row.get("visit")?, row.get("device")?, row.get("seq")?);
                Ok((place, row.get("hash")?, row.get("signature")?))
            })?;
            // Where it stops reading, what follows is looked at as if it were new.
            walk(here, known.map_while(Result::ok))
        };
        compare().map_err(StoreFault::sql("compare with the last backup"))
    }

    /// Refuses to go on where both went on differently, or a line is here no more: what only the last backup holds would
    /// be let go in time.
    ///
    /// # Errors
    /// [`BackupFault::WouldLose`] for visits that were not erased, [`BackupFault::Forked`].
    pub fn is_one_ledger(&self, erased: &BTreeMap<String, Moment>) -> Result<(), BackupFault> {
        let mut lost = self.missing.iter().filter(|visit| !erased.contains_key(*visit)).cloned();
        if let Some(first) = lost.next() {
            return Err(BackupFault::WouldLose { visits: lost.count() + 1, first });
        }
        let forked = |first: &String| BackupFault::Forked { visits: self.forked.len(), first: first.clone() };
        self.forked.first().map_or(Ok(()), |first| Err(forked(first)))
    }
}

fn walk(here: &Connection, known: impl Iterator<Item = Known>) -> Result<Compared, rusqlite::Error> {
    let (mut compared, mut known) = (Compared::default(), known.peekable());
    if !has_column(here, "entry", "hash")? {
        return Ok(compared);
    }
    let mut lines = here.prepare(&select("visit, device, seq, at, prev, hash, body", here)?)?;
    let mut rows = lines.query([])?;
    while let Some(row) = rows.next()? {
        let line = ledger::line(row)?;
        let place = (line.visit.clone(), line.device.clone(), row.get::<_, i64>("seq")?);
        let there = at(&mut known, &place, &mut compared.missing);
        let is_whole = ledger::is_whole(&line);
        if is_whole && there.as_ref().is_some_and(|(_, hash, _)| *hash != line.hash) {
            compared.forked.insert(line.visit.clone());
        }
        let is_known =
            there.is_some_and(|(_, hash, signature)| hash == line.hash && signature == line.signature);
        if !is_whole || !is_known && !ledger::is_proven(&line) {
            compared.unproven.insert(line.visit);
        }
    }
    compared.missing.extend(known.map(|((visit, ..), ..)| visit));
    Ok(compared)
}

/// The line at a place, past those before it, which are not here.
fn at(
    known: &mut Peekable<impl Iterator<Item = Known>>,
    place: &(String, String, i64),
    missing: &mut BTreeSet<String>,
) -> Option<Known> {
    while let Some(((visit, ..), ..)) = known.next_if(|(before, ..)| before < place) {
        missing.insert(visit);
    }
    known.next_if(|(there, ..)| there == place)
}

/// Lines in order; those of versions without signatures have none.
fn select(columns: &str, connection: &Connection) -> Result<String, rusqlite::Error> {
    let signature =
        if has_column(connection, "entry", "signature")? { "signature" } else { "NULL AS signature" };
    Ok(format!("SELECT {columns}, {signature} FROM entry ORDER BY visit, device, seq"))
}
