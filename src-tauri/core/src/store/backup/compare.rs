//! The ledger beside that of the last backup, line by line: whether both went on from one beginning, and whether every
//! chain is whole and proven here.

use std::collections::{BTreeMap, BTreeSet, HashSet};
use std::iter::Peekable;

use rusqlite::{Connection, Row};

use super::fault::BackupFault;
use super::source::{has_column, has_table};
use crate::model::time::Moment;
use crate::store::fault::StoreFault;
use crate::store::ledger::{self, Chains};

/// What the two have in common, and not.
#[derive(Debug, Default)]
pub struct Compared {
    /// Visits of which a line is another one there.
    forked: BTreeSet<String>,
    /// Visits of which a line of there is not here.
    missing: BTreeSet<String>,
    /// Visits that lack a line between others, or hold one that is not as it was written, or are not proven.
    pub broken: BTreeSet<String>,
}

/// Visit, device and place of a line; as bytes, for SQLite puts what is no text any more in order by these.
type Place = (Vec<u8>, Vec<u8>, i64);

/// A line of the last backup: its place and hash.
type Known = (Place, String);

impl Compared {
    /// Walks both ledgers once, in the order of their index.
    ///
    /// # Errors
    /// What SQLite says.
    pub fn of(here: &Connection, last: Option<&Connection>) -> Result<Self, StoreFault> {
        let compare = || -> Result<Self, rusqlite::Error> {
            let Some(last) = last else { return walk(here, std::iter::empty()) };
            let mut theirs =
                last.prepare("SELECT visit, device, seq, hash FROM entry ORDER BY visit, device, seq")?;
            let known = theirs.query_map([], |row| Ok((place(row)?, ledger::text(row, "hash")?)))?;
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
    let (ends, mut chains) = (ends(here)?, Chains::default());
    // Those of versions without signatures have none.
    let signature = if has_column(here, "entry", "signature")? { "signature" } else { "NULL AS signature" };
    let mut lines = here.prepare(&format!(
        "SELECT visit, device, seq, at, prev, hash, body, {signature} FROM entry ORDER BY visit, device, seq"
    ))?;
    let mut rows = lines.query([])?;
    while let Some(row) = rows.next()? {
        let line = ledger::line(row)?;
        let place = place(row)?;
        let there = at(&mut known, &place, &mut compared.missing);
        if there.is_some_and(|(_, hash)| hash != line.hash) && ledger::is_whole(&line) {
            compared.forked.insert(line.visit.clone());
        }
        chains.look(line, ends.contains(&place));
    }
    compared.missing.extend(known.map(|((visit, ..), _)| name(&visit)));
    compared.broken = chains.broken();
    Ok(compared)
}

fn place(row: &Row<'_>) -> Result<Place, rusqlite::Error> {
    let bytes = |column: &str| -> Result<Vec<u8>, rusqlite::Error> {
        Ok(row.get_ref(column)?.as_bytes().unwrap_or_default().to_vec())
    };
    Ok((bytes("visit")?, bytes("device")?, row.get_ref("seq")?.as_i64().unwrap_or(0)))
}

/// A visit's id as it is shown.
fn name(visit: &[u8]) -> String {
    String::from_utf8_lossy(visit).into_owned()
}

/// The line that each chain counts up to, of those that came with imports: what was taken back proves nothing.
fn ends(here: &Connection) -> Result<HashSet<Place>, rusqlite::Error> {
    if !has_table(here, "brought")? {
        return Ok(HashSet::new());
    }
    let mut ends = here.prepare(
        "SELECT visit, device, max(lines) AS seq FROM brought WHERE taken_back IS NULL GROUP BY visit, device",
    )?;
    ends.query_map([], place)?.collect()
}

/// The line at a place, past those before it, which are not here.
fn at(
    known: &mut Peekable<impl Iterator<Item = Known>>,
    place: &Place,
    missing: &mut BTreeSet<String>,
) -> Option<Known> {
    while let Some(((visit, ..), _)) = known.next_if(|(before, _)| before < place) {
        missing.insert(name(&visit));
    }
    known.next_if(|(there, _)| there == place)
}
