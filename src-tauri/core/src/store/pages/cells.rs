//! The cells of a page ("B-tree Pages", "Cell Payload Overflow Pages"): by the page's own list where that is sound,
//! and otherwise wherever in the page something reads as one.

use std::ops::Range;

use super::record::{promises, varint};
use crate::model::limits;

/// What a cell is a part of.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Kind {
    /// A row of a table.
    Row,
    /// A key of an index.
    Key,
}

/// One cell, with as much of its record as stands on the page.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Cell {
    /// A row or a key.
    pub kind: Kind,
    /// A row's number in its table; nought for a key.
    pub number: u64,
    /// Length of the record, bytes.
    pub bytes: u64,
    /// Where in the page the record begins and where the page's share of it ends.
    pub payload: Range<usize>,
    /// The page that it goes on at.
    pub overflow: Option<u32>,
}

/// A page's cells.
#[derive(Debug, Default)]
pub struct Leaf {
    /// Those that the page lists, in its own order; none where what it names does not read as one.
    pub listed: Vec<Option<Cell>>,
    /// Where the page lists none, or one that cannot be read: whatever reads as a cell.
    pub found: Vec<Cell>,
}

/// Reads the cells of a page whose tree begins at `at`, `usable` bytes long.
pub fn read(page: &[u8], at: usize, usable: usize) -> Leaf {
    if page.iter().all(|byte| *byte == 0) {
        return Leaf::default();
    }
    let listed = listed(page, at, usable).unwrap_or_default();
    let is_sound = !listed.is_empty() && listed.iter().all(Option::is_some);
    let found = if is_sound { Vec::new() } else { found(page, usable) };
    Leaf { listed, found }
}

/// The cells that the page lists; nothing where it is no leaf, and no index.
fn listed(page: &[u8], at: usize, usable: usize) -> Option<Vec<Option<Cell>>> {
    // Interior pages of tables (5) hold no rows.
    let (kind, header, left) = match page.get(at)? {
        0x0d => (Kind::Row, 8, 0),
        0x0a => (Kind::Key, 8, 0),
        0x02 => (Kind::Key, 12, 4),
        _ => return None,
    };
    let count = usize::from(short(page, at + 3)?);
    let named = |index: usize| {
        let place = usize::from(short(page, at + header + 2 * index)?);
        cell(page, place.checked_add(left)?, usable, kind)
    };
    // A count that leaves no room for the cells themselves is damage.
    (count <= usable / 6).then(|| (0..count).map(named).collect())
}

/// Whatever reads as a row or a key, from the first byte to the last.
fn found(page: &[u8], usable: usize) -> Vec<Cell> {
    // What only looks like a cell may stand over one that is: nothing is passed over.
    let here = |at| [Kind::Row, Kind::Key].into_iter().filter_map(move |kind| cell(page, at, usable, kind));
    (0..usable).flat_map(here).collect()
}

fn cell(page: &[u8], at: usize, usable: usize, kind: Kind) -> Option<Cell> {
    let (bytes, mut start) = varint(page, at)?;
    let mut number = 0;
    if kind == Kind::Row {
        (number, start) = varint(page, start)?;
    }
    // Two bytes make the shortest record, and one that nothing here writes.
    if !(3..=limits::SALVAGED_BYTES).contains(&bytes) {
        return None;
    }
    let here = share(bytes, usable, kind);
    let payload = start..start.checked_add(here)?;
    let record = page.get(..usable)?.get(payload.clone())?;
    if !promises(record, bytes) {
        return None;
    }
    let goes_on = here as u64 != bytes;
    let overflow = if goes_on { Some(long(page, payload.end)?).filter(|page| *page > 0) } else { None };
    Some(Cell { kind, number, bytes, payload, overflow })
}

/// How much of a record stands on its own page.
fn share(bytes: u64, usable: usize, kind: Kind) -> usize {
    let least = (usable - 12) * 32 / 255 - 23;
    let most = match kind {
        Kind::Row => usable - 35,
        Kind::Key => (usable - 12) * 64 / 255 - 23,
    };
    let Ok(bytes) = usize::try_from(bytes) else { return least };
    if bytes <= most {
        return bytes;
    }
    let rest = least + (bytes - least) % (usable - 4);
    if rest <= most { rest } else { least }
}

fn short(bytes: &[u8], at: usize) -> Option<u16> {
    Some(u16::from_be_bytes(bytes.get(at..at + 2)?.try_into().ok()?))
}

fn long(bytes: &[u8], at: usize) -> Option<u32> {
    Some(u32::from_be_bytes(bytes.get(at..at + 4)?.try_into().ok()?))
}
