//! Entries on disk: appending in one transaction, reading back, and the chain of hashes.
//!
//! Each entry carries the SHA-256 of the one before it by the same device in the same visit, so that a
//! changed, lost or slipped-in line shows, and its writer's signature over its own hash, so that nobody writes
//! in another's name. A broken or unproven chain is reported, never hidden.
//!
//! The newest signature of a chain proves every line before it, through the hashes: wherever a visit is looked at, as
//! it is read, verified, exported, taken in or backed up, that one signature of each chain decides.

use std::collections::BTreeSet;
use std::mem;

use rusqlite::types::ValueRef;
use rusqlite::{Connection, Row, TransactionBehavior, params};
use sha2::{Digest, Sha256};

use super::canonical;
use super::cards::{self, CardRow};
use super::fault::StoreFault;
use super::open::Store;
use crate::model::entry::{Entry, EntryBody};
use crate::model::hex;
use crate::model::limits;
use crate::model::line::Line;
use crate::model::time::Moment;
use crate::signing::key::{PublicKey, SIGNATURE_BYTES};
use crate::signing::line::{Writer, is_signed, signs};

/// Hash before the first entry of a chain.
pub const NO_HASH: &str = "0000000000000000000000000000000000000000000000000000000000000000";

/// A visit's entries as read, and where the chain breaks.
#[derive(Debug, Clone, Default)]
pub struct Chain {
    /// Entries, by time, then device, then place in the chain.
    pub entries: Vec<Entry>,
    /// Place of the first entry that does not fit its chain.
    pub broken_at: Option<u64>,
}

/// The next entry of a device's chain, hashed and signed, and its line to append.
pub fn next_entry(
    entries: &[Entry],
    visit: &str,
    writer: &Writer,
    at: Moment,
    body: EntryBody,
) -> (Entry, Line) {
    let device = writer.device.as_str();
    let last = entries.iter().filter(|entry| entry.device == device).max_by_key(|entry| entry.seq);
    let seq = last.map_or(1, |entry| entry.seq + 1);
    let prev = last.map_or_else(|| NO_HASH.to_owned(), |entry| entry.hash.clone());
    let text = serde_json::to_string(&body).unwrap_or_default();
    let hash = hash(visit, device, seq, at, &prev, &text);
    let signature = Some(writer.sign(&hash));
    let (visit, device) = (visit.to_owned(), device.to_owned());
    let line = Line {
        visit: visit.clone(),
        device: device.clone(),
        seq,
        at,
        prev: prev.clone(),
        hash: hash.clone(),
        signature: signature.clone(),
        body: text,
    };
    (Entry { visit, device, seq, at, prev, hash, signature, body }, line)
}

/// SHA-256, hex, over the entry's fields, a line each.
fn hash(visit: &str, device: &str, seq: u64, at: Moment, prev: &str, body: &str) -> String {
    let bytes = format!("steady entry 1\n{visit}\n{device}\n{seq}\n{}\n{prev}\n{body}", at.0);
    hex::encode(&Sha256::digest(bytes.as_bytes()))
}

impl Store {
    /// Appends lines of one visit and rewrites its card, all or nothing, synced before it returns.
    ///
    /// # Errors
    /// What SQLite says; nothing was written then.
    pub fn append(&mut self, lines: &[Line], card: &CardRow) -> Result<(), StoreFault> {
        append(&mut self.connection, lines, card).map_err(StoreFault::sql("append"))
    }

    /// A visit's lines as stored, by device and place.
    ///
    /// # Errors
    /// What SQLite says.
    pub fn lines(&self, visit: &str) -> Result<Vec<Line>, StoreFault> {
        let mut lines = read(&self.connection, visit).map_err(StoreFault::sql("read a visit"))?;
        lines.sort_by(|a, b| (&a.device, a.seq).cmp(&(&b.device, b.seq)));
        Ok(lines)
    }

    /// Every visit that has entries, in order of id.
    ///
    /// # Errors
    /// What SQLite says.
    pub fn visit_ids(&self) -> Result<Vec<String>, StoreFault> {
        let read = || -> Result<Vec<String>, rusqlite::Error> {
            let mut statement =
                self.connection.prepare_cached("SELECT DISTINCT visit FROM counting ORDER BY visit")?;
            statement.query_map([], |row| text(row, "visit"))?.collect()
        };
        read().map_err(StoreFault::sql("list visits"))
    }

    /// Reads a visit's entries and checks their chains. Empty for an unknown visit.
    ///
    /// # Errors
    /// What SQLite says.
    pub fn chain(&self, visit: &str) -> Result<Chain, StoreFault> {
        let rows = read(&self.connection, visit).map_err(StoreFault::sql("read a visit"));
        Ok(checked(rows?))
    }
}

fn append(connection: &mut Connection, lines: &[Line], card: &CardRow) -> Result<(), rusqlite::Error> {
    let transaction = connection.transaction_with_behavior(TransactionBehavior::Immediate)?;
    for line in lines {
        insert(&transaction, line)?;
    }
    cards::write(&transaction, card)?;
    transaction.commit()
}

pub(super) fn insert(connection: &Connection, line: &Line) -> Result<(), rusqlite::Error> {
    let mut statement = connection.prepare_cached(
        "INSERT INTO entry (visit, device, seq, at, prev, hash, signature, body)
         VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8)",
    )?;
    let seq = i64::try_from(line.seq).unwrap_or(i64::MAX);
    let Line { visit, device, at, prev, hash, signature, body, .. } = line;
    statement.execute(params![visit, device, seq, at.0, prev, hash, signature, body])?;
    Ok(())
}

/// Whether a line reads as it was written: the hash is over the text as it stands.
pub(super) fn is_whole(row: &Line) -> bool {
    row.hash == hash(&row.visit, &row.device, row.seq, row.at, &row.prev, &row.body)
}

/// The lines of a visit that count.
pub(super) fn read(connection: &Connection, visit: &str) -> Result<Vec<Line>, rusqlite::Error> {
    let mut statement = connection.prepare_cached(
        "SELECT visit, device, seq, at, prev, hash, signature, body FROM counting
         WHERE visit = ?1 ORDER BY at, device, seq",
    )?;
    let rows = statement.query_map([visit], line)?;
    rows.collect()
}

/// Every line of a visit that is on disk, those of imports that were taken back too.
pub(super) fn read_all(connection: &Connection, visit: &str) -> Result<Vec<Line>, rusqlite::Error> {
    let mut statement = connection.prepare_cached(
        "SELECT visit, device, seq, at, prev, hash, signature, body FROM entry WHERE visit = ?1",
    )?;
    let rows = statement.query_map([visit], line)?;
    rows.collect()
}

/// A row as a line. What rotted in it until it reads as nothing is no fault: it is a line that is not whole, of one visit,
/// and keeps nobody from the others.
pub(super) fn line(row: &Row<'_>) -> Result<Line, rusqlite::Error> {
    let number =
        |column: &str| -> Result<i64, rusqlite::Error> { Ok(row.get_ref(column)?.as_i64().unwrap_or(0)) };
    let is_signed = row.get_ref("signature")? != ValueRef::Null;
    Ok(Line {
        visit: text(row, "visit")?,
        device: text(row, "device")?,
        seq: u64::try_from(number("seq")?).unwrap_or(0),
        at: Moment(number("at")?),
        prev: text(row, "prev")?,
        hash: text(row, "hash")?,
        signature: is_signed.then(|| text(row, "signature")).transpose()?,
        body: text(row, "body")?,
    })
}

/// A column of a line as text; bytes that are none read as U+FFFD, and so as what no hash fits.
pub(super) fn text(row: &Row<'_>, column: &str) -> Result<String, rusqlite::Error> {
    Ok(String::from_utf8_lossy(row.get_ref(column)?.as_bytes().unwrap_or_default()).into_owned())
}

/// Keeps every entry that can be read and marks the first that does not fit.
pub(super) fn checked(mut rows: Vec<Line>) -> Chain {
    rows.sort_by(|a, b| (&a.device, a.seq).cmp(&(&b.device, b.seq)));
    let mut broken_at = None;
    let mut before = Before::default();
    let mut timed = Vec::new();
    let mut rows = rows.into_iter().peekable();
    while let Some(row) = rows.next() {
        before = before.or_start(&row.device);
        let body = serde_json::from_str::<EntryBody>(&row.body);
        let is_newest = rows.peek().is_none_or(|next| next.device != row.device);
        let proven = if is_newest { is_proven(&row) } else { has_its_form(&row) };
        if body.is_err() || !before.fits(&row) || !proven {
            broken_at = broken_at.or(Some(row.seq));
        }
        before = before.then(&row);
        if let Ok(body) = body {
            let Line { visit, device, seq, prev, hash, signature, at, .. } = row;
            timed.push((before.latest, Entry { visit, device, seq, at, prev, hash, signature, body }));
        }
    }
    // A device whose clock was set back still reads in the order it wrote.
    timed.sort_by(|(a_time, a), (b_time, b)| (a_time, &a.device, a.seq).cmp(&(b_time, &b.device, b.seq)));
    Chain { entries: timed.into_iter().map(|(_, entry)| entry).collect(), broken_at }
}

/// Whether a line is signed where its device signs, in the form that a signature has, and not where its device never
/// did. Whether the signature is right is asked of a chain's newest line alone.
fn has_its_form(line: &Line) -> bool {
    match &line.signature {
        Some(signature) => signs(&line.device) && hex::decode::<SIGNATURE_BYTES>(signature).is_some(),
        None => !signs(&line.device),
    }
}

/// Whether a line is proven to be its device's, or stands in a chain from before there were signatures.
pub(super) fn is_proven(line: &Line) -> bool {
    has_its_form(line)
        && line.signature.as_deref().is_none_or(|signature| {
            PublicKey::from_hex(&line.device).is_some_and(|key| is_signed(&key, &line.hash, signature))
        })
}

/// Whether a line found by itself is one: as it was written, and proven as far as its time had proofs.
pub(super) fn proves_itself(line: &Line) -> bool {
    is_whole(line) && is_proven(line)
}

/// Why lines that came from outside are not a ledger.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum LineFault {
    /// A line does not fit its chain, or is not one of this visit.
    Broken,
    /// A line of a kind that this program does not know.
    Newer,
    /// A line that is not proven to be its device's.
    Unproven,
    /// A line that no Steady spells so.
    Spelling,
    /// A field of a line, or the visit, is beyond what is recorded.
    Beyond(limits::Beyond),
}

/// Checks lines from outside: in order of device and place, each chain whole from its first line on, and its
/// newest line proven.
///
/// # Errors
/// [`LineFault`]; a ledger that is only partly sound is refused as a whole.
pub fn check_lines(visit: &str, lines: &[Line]) -> Result<(), LineFault> {
    let mut before = Before::default();
    let mut last: Option<(&str, u64)> = None;
    let mut bodies = Vec::with_capacity(lines.len());
    for (index, line) in lines.iter().enumerate() {
        let here = (line.device.as_str(), line.seq);
        before = before.or_start(&line.device);
        let sound = line.visit == visit
            && line.at == line.at.datable()
            && (1..=64).contains(&line.device.len())
            && line.device.bytes().all(|byte| byte.is_ascii_graphic())
            && last.is_none_or(|last| last < here)
            && before.fits(line);
        if !sound {
            return Err(LineFault::Broken);
        }
        bodies.push(canonical::read(&line.body)?);
        let is_newest = lines.get(index + 1).is_none_or(|next| next.device != line.device);
        if !has_its_form(line) || is_newest && !is_proven(line) {
            return Err(LineFault::Unproven);
        }
        before = before.then(line);
        last = Some(here);
    }
    if lines.is_empty() {
        return Err(LineFault::Broken);
    }
    let entries: Vec<_> = lines.iter().map(|line| line.hash.as_str()).zip(&bodies).collect();
    limits::visit::check(&entries).map_err(LineFault::Beyond)
}

/// Proves the last of each device's lines, which come by device and place: what is left out behind it proves nothing.
///
/// # Errors
/// [`LineFault::Unproven`].
pub fn prove_ends(lines: &[Line]) -> Result<(), LineFault> {
    let mut chains = lines.chunk_by(|a, b| a.device == b.device);
    let proven = chains.all(|chain| chain.last().is_none_or(is_proven));
    if proven { Ok(()) } else { Err(LineFault::Unproven) }
}

/// Every chain of a database, line by line, by visit, device and place.
#[derive(Debug, Default)]
pub(super) struct Chains {
    before: Before,
    last: Option<Line>,
    broken: BTreeSet<String>,
}

impl Chains {
    /// Looks at the next line. `ends` says that what counts of its chain ends here, whatever lines follow on disk.
    pub fn look(&mut self, line: Line, ends: bool) {
        let goes_on = |last: &Line| last.visit == line.visit && last.device == line.device;
        if !self.last.as_ref().is_some_and(goes_on) {
            self.end();
        }
        if !self.before.fits(&line) || !has_its_form(&line) || ends && !is_proven(&line) {
            self.broken.insert(line.visit.clone());
        }
        self.before = mem::take(&mut self.before).then(&line);
        self.last = Some(line);
    }

    fn end(&mut self) {
        self.before = Before::default();
        let unproven = self.last.take().filter(|last| !is_proven(last));
        self.broken.extend(unproven.map(|last| last.visit));
    }

    /// The visits of which a chain lacks a line, holds one that is not as it was written, or is not proven to its end.
    pub fn broken(mut self) -> BTreeSet<String> {
        self.end();
        self.broken
    }
}

/// The end of one device's chain so far.
#[derive(Debug)]
struct Before {
    device: String,
    seq: u64,
    hash: String,
    latest: Moment,
}

impl Default for Before {
    fn default() -> Self {
        Self { device: String::new(), seq: 0, hash: NO_HASH.to_owned(), latest: Moment(i64::MIN) }
    }
}

impl Before {
    fn or_start(self, device: &str) -> Self {
        if self.device == device { self } else { Self { device: device.to_owned(), ..Self::default() } }
    }

    fn fits(&self, row: &Line) -> bool {
        row.seq == self.seq + 1 && row.prev == self.hash && is_whole(row)
    }

    fn then(self, row: &Line) -> Self {
        Self { seq: row.seq, hash: row.hash.clone(), latest: self.latest.max(row.at), ..self }
    }
}
