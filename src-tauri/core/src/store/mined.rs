//! What the pages of a database say of its ledger, told apart by shape: lines, the keys that an index holds of them,
//! cards, tombstones, kept knowledge, and what stands beside.
//!
//! A line counts if its hash and its signature are right: where a page was written anew, what it held before can be
//! whole but for the signature at its end. Whether a visit has more lines than were found is asked of everything else:
//! no key, card or half-read line may know of one more, and its card, the index's count, or its first and last keys
//! beside those of other visits have to say that there is none.

use std::collections::{BTreeMap, BTreeSet};

use super::ledger;
use super::mined_rows::{self, MinedRows, Row};
use super::pages::{Cell, From, Kind, Leaf, PageAt, Pages, SqliteRecord, State, Version};
use crate::model::line::Line;
use crate::model::time::Moment;

/// What was found, and where each line stands.
#[derive(Debug, Default)]
pub struct Mined {
    names: Names,
    lines: Vec<Spot>,
    /// The greatest place in a device's chain that anything knows of.
    last: BTreeMap<(u32, u32), u64>,
    /// When a visit's latest line was written, as its card says.
    updated: BTreeMap<u32, i64>,
    /// Visits whose card stands in the latest version of its page.
    carded: BTreeSet<u32>,
    /// The device whose keys are a visit's first, where the key before is known to be another visit's.
    begins: BTreeMap<u32, u32>,
    /// The last key of a device in a visit, and the device that comes next in that visit, if one does.
    ends: BTreeMap<Chain, Option<u32>>,
    erased: BTreeMap<String, i64>,
    knowledge: Vec<(PageAt, Cell, From)>,
    rows: MinedRows,
}

/// Visit, device, and a place in their chain.
type Chain = (u32, u32, u64);

/// Where a proven line stands.
#[derive(Debug, Clone)]
struct Spot {
    visit: u32,
    device: u32,
    seq: u64,
    at: i64,
    place: PageAt,
    cell: Cell,
    from: From,
}

/// Ids of visits and devices, each kept once.
#[derive(Debug, Default)]
struct Names {
    numbers: BTreeMap<String, u32>,
}

impl Names {
    fn number(&mut self, name: &str) -> u32 {
        if let Some(number) = self.numbers.get(name) {
            return *number;
        }
        let number = u32::try_from(self.numbers.len()).unwrap_or(u32::MAX);
        self.numbers.insert(name.to_owned(), number);
        number
    }
}

/// A row or key, by its shape.
enum Shape {
    Line(Line),
    /// A line whose hash is not right, or a key: there is, or was, such a line.
    Known {
        visit: String,
        device: String,
        seq: u64,
    },
    Card {
        visit: String,
        updated: i64,
    },
    Erased {
        visit: String,
        at: i64,
    },
    Knowledge,
    Row(Row),
}

impl Mined {
    /// Reads every page once.
    pub fn of(pages: &Pages) -> Self {
        let mut mined = Self::default();
        for version in pages.versions() {
            let Some(bytes) = pages.bytes(version.place) else { continue };
            let leaf = pages.leaf(&bytes, Pages::tree_at(version.place));
            mined.page(pages, version, &bytes, leaf);
        }
        mined.lines.sort_by_key(|spot| (spot.visit, spot.device, spot.seq));
        mined.lines.dedup_by_key(|spot| (spot.visit, spot.device, spot.seq));
        mined
    }

    fn page(&mut self, pages: &Pages, version: Version, bytes: &[u8], leaf: Leaf) {
        let mut before: Option<Chain> = None;
        for cell in leaf.listed {
            let shape =
                cell.and_then(|cell| shape_of(pages, bytes, &cell).map(|(shape, from)| (shape, from, cell)));
            let key = match &shape {
                Some((Shape::Known { visit, device, seq }, _, Cell { kind: Kind::Key, .. })) => {
                    Some((self.names.number(visit), self.names.number(device), *seq))
                }
                _ => None,
            };
            // An older version of the page does not know what came between since.
            if let (Some(before), Some(key), State::Current) = (before, key, version.state) {
                self.neighbours(before, key);
            }
            before = key;
            if let Some((shape, from, cell)) = shape {
                self.add(shape, version, cell, from);
            }
        }
        for cell in leaf.found {
            if let Some((shape, from)) = shape_of(pages, bytes, &cell) {
                self.add(shape, version, cell, from);
            }
        }
    }

    /// Two keys with nothing between them.
    fn neighbours(&mut self, before: Chain, next: Chain) {
        let (visit, device, _) = next;
        let same_visit = before.0 == visit;
        if !same_visit {
            self.begins.insert(visit, device);
        }
        if !same_visit || before.1 != device {
            self.ends.insert(before, same_visit.then_some(device));
        }
    }

    fn add(&mut self, shape: Shape, version: Version, cell: Cell, from: From) {
        let Version { place, state } = version;
        match shape {
            // That there is such a line is all that a page can say of which nobody knows whether it was kept.
            Shape::Line(Line { visit, device, seq, .. }) if state == State::Unsure => {
                self.add(Shape::Known { visit, device, seq }, version, cell, from);
            }
            Shape::Line(Line { visit, device, seq, at, .. }) => {
                let (visit, device) = (self.names.number(&visit), self.names.number(&device));
                self.lines.push(Spot { visit, device, seq, at: at.0, place, cell, from });
            }
            Shape::Known { visit, device, seq } => {
                let chain = (self.names.number(&visit), self.names.number(&device));
                let last = self.last.entry(chain).or_default();
                *last = seq.max(*last);
            }
            Shape::Card { visit, updated } => {
                let visit = self.names.number(&visit);
                let latest = self.updated.entry(visit).or_insert(i64::MIN);
                *latest = updated.max(*latest);
                if state == State::Current {
                    self.carded.insert(visit);
                }
            }
            Shape::Erased { .. } | Shape::Knowledge | Shape::Row(_) if state == State::Unsure => {}
            Shape::Erased { visit, at } => {
                self.erased.insert(visit, at);
            }
            Shape::Knowledge => self.knowledge.push((place, cell, from)),
            Shape::Row(row) => self.rows.add(row),
        }
    }

    /// Visits of which anything at all was found, in the order in which they were first written, as far as lines of them
    /// are left to say it; then the others, in order of id.
    pub fn visits(&self) -> Vec<String> {
        let lines = self.lines.iter().map(|spot| spot.visit);
        let known = self.last.keys().map(|(visit, _)| *visit).chain(self.updated.keys().copied());
        let visits: BTreeSet<u32> = lines.chain(known).collect();
        let mut first: BTreeMap<u32, u64> = BTreeMap::new();
        for Spot { visit, cell, .. } in &self.lines {
            let row = first.entry(*visit).or_insert(u64::MAX);
            *row = cell.number.min(*row);
        }
        let came = |number: &u32| first.get(number).copied().unwrap_or(u64::MAX);
        let mut named: Vec<(&String, &u32)> =
            self.names.numbers.iter().filter(|(_, number)| visits.contains(number)).collect();
        named.sort_by_key(|(_, number)| came(number));
        named.into_iter().map(|(name, _)| name.clone()).collect()
    }

    /// A visit's lines by device and place; nothing unless they are known to be all. `counted` is how many SQLite
    /// knows of.
    pub fn lines(&self, pages: &Pages, visit: &str, counted: Option<usize>) -> Option<Vec<Line>> {
        let (visit, spots) = self.spots(visit)?;
        self.are_all(visit, spots, counted).then_some(())?;
        let mut lines = spots.iter().map(|spot| read(pages, spot)).collect::<Option<Vec<Line>>>()?;
        lines.sort_by(|a, b| (&a.device, a.seq).cmp(&(&b.device, b.seq)));
        Some(lines)
    }

    /// Those of a visit's lines that prove themselves, of one that is no longer whole too.
    pub fn proven_lines(&self, pages: &Pages, visit: &str) -> Vec<Line> {
        let (_, spots) = self.spots(visit).unwrap_or_default();
        spots.iter().filter_map(|spot| read(pages, spot)).collect()
    }

    fn spots(&self, visit: &str) -> Option<(u32, &[Spot])> {
        let visit = *self.names.numbers.get(visit)?;
        let from = self.lines.partition_point(|spot| spot.visit < visit);
        let to = self.lines.partition_point(|spot| spot.visit <= visit);
        self.lines.get(from..to).filter(|spots| !spots.is_empty()).map(|spots| (visit, spots))
    }

    fn are_all(&self, visit: u32, spots: &[Spot], counted: Option<usize>) -> bool {
        let found: BTreeSet<(u32, u64)> = spots.iter().map(|spot| (spot.device, spot.seq)).collect();
        let has_gap =
            found.iter().any(|(device, seq)| *seq != 1 && !found.contains(&(*device, seq.wrapping_sub(1))));
        let latest = spots.iter().map(|spot| spot.at).max().unwrap_or(i64::MIN);
        let known = self.last.range((visit, 0)..=(visit, u32::MAX));
        let more_is_known = known.into_iter().any(|((_, device), seq)| !found.contains(&(*device, *seq)))
            || self.updated.get(&visit).is_some_and(|updated| *updated > latest)
            || counted.is_some_and(|counted| counted > spots.len());
        let ends_here =
            self.carded.contains(&visit) || counted == Some(spots.len()) || self.index_ends(visit, &found);
        !has_gap && !more_is_known && ends_here
    }

    /// Whether the index goes from the visit's first key to another visit's over these lines and no other.
    fn index_ends(&self, visit: u32, found: &BTreeSet<(u32, u64)>) -> bool {
        let mut left: BTreeMap<u32, u64> = BTreeMap::new();
        for (device, seq) in found {
            let last = left.entry(*device).or_default();
            *last = (*last).max(*seq);
        }
        let mut device = self.begins.get(&visit).copied();
        while let Some(at) = device {
            let Some(next) = left.remove(&at).and_then(|last| self.ends.get(&(visit, at, last))) else {
                return false;
            };
            device = *next;
        }
        self.begins.contains_key(&visit) && left.is_empty()
    }

    /// Visits that were erased there, and when.
    pub fn erased(&self) -> Vec<(String, Moment)> {
        self.erased.iter().map(|(visit, at)| (visit.clone(), Moment(*at))).collect()
    }

    /// What stands beside the lines.
    pub fn rows(&self) -> &MinedRows {
        &self.rows
    }

    /// Versions of knowledge with their texts; whoever takes them over proves the one by the other.
    pub fn knowledge(&self, pages: &Pages) -> Vec<(String, String)> {
        let texts = |(place, cell, from): &(PageAt, Cell, From)| {
            let record = pages.record(&pages.bytes(*place)?, cell, *from)?;
            Some((record.text(0)?.to_owned(), record.text(2)?.to_owned()))
        };
        let mut texts: Vec<(String, String)> = self.knowledge.iter().filter_map(texts).collect();
        texts.sort();
        texts.dedup();
        texts
    }
}

fn read(pages: &Pages, spot: &Spot) -> Option<Line> {
    let bytes = pages.bytes(spot.place)?;
    // Its signature was looked at when it was found.
    line(&pages.record(&bytes, &spot.cell, spot.from)?).filter(ledger::is_whole)
}

/// What a cell is, and from which versions of its further pages it was read.
fn shape_of(pages: &Pages, bytes: &[u8], cell: &Cell) -> Option<(Shape, From)> {
    let latest = pages.record(bytes, cell, From::Latest);
    let shape = latest.as_ref().and_then(|record| shape(record, cell.kind));
    if matches!(shape, Some(Shape::Line(_))) || cell.overflow.is_none() {
        return shape.map(|shape| (shape, From::Latest));
    }
    // The log may hold a page anew that the record does not mean, and have lost the one it does.
    let older = [From::Database, From::Left].into_iter().find_map(|from| {
        let shape = pages.record(bytes, cell, from).and_then(|record| self::shape(&record, cell.kind));
        shape.filter(|shape| matches!(shape, Shape::Line(_))).map(|shape| (shape, from))
    });
    older.or(shape.map(|shape| (shape, From::Latest)))
}

fn shape(record: &SqliteRecord, kind: Kind) -> Option<Shape> {
    let text = |column: usize| record.text(column).map(str::to_owned);
    match (kind, record.columns()) {
        (Kind::Key, 4) => {
            let seq = u64::try_from(record.int(2)?).ok()?;
            record.int(3)?;
            Some(Shape::Known { visit: visit(record, 0)?, device: device(record, 1)?, seq })
        }
        (Kind::Key, _) => None,
        (Kind::Row, 3) => {
            record.int(1)?;
            record.text(0).filter(|version| version.len() <= 200 && !version.is_empty())?;
            record.text(2).map(|_| Shape::Knowledge)
        }
        (Kind::Row, 4) => {
            let photos = record.text(2)?;
            let is_photos = photos.bytes().all(|byte| byte == b' ' || byte.is_ascii_hexdigit());
            record.int(3).filter(|swept| is_photos && (0..=1).contains(swept))?;
            Some(Shape::Erased { visit: visit(record, 0)?, at: record.int(1)? })
        }
        (Kind::Row, 5) => mined_rows::brought(record, visit(record, 0)?, device(record, 1)?).map(Shape::Row),
        (Kind::Row, 6) if record.is_null(0) => {
            mined_rows::decided(record, device(record, 1)?).map(Shape::Row)
        }
        (Kind::Row, 8..) if record.is_null(0) => {
            let line = line(record)?;
            if ledger::proves_itself(&line) {
                return Some(Shape::Line(line));
            }
            let Line { device, seq, .. } = line;
            Some(Shape::Known { visit: visit(record, 1)?, device, seq })
        }
        (Kind::Row, 12..) => {
            (1..5).try_for_each(|column| text(column).map(|_| ()))?;
            record.int(5)?;
            Some(Shape::Card { visit: visit(record, 0)?, updated: record.int(6)? })
        }
        _ => None,
    }
}

/// A row of the table `entry`: its number, then the line.
fn line(record: &SqliteRecord) -> Option<Line> {
    let text = |column: usize| record.text(column).map(str::to_owned);
    Some(Line {
        visit: text(1)?,
        device: device(record, 2)?,
        seq: u64::try_from(record.int(3)?).ok()?,
        at: Moment(record.int(4)?),
        prev: text(5)?,
        hash: text(6)?,
        body: text(7)?,
        // The column came last; rows from before have none.
        signature: text(8),
    })
}

/// A visit's id, as the app makes them.
fn visit(record: &SqliteRecord, column: usize) -> Option<String> {
    let id = record.text(column)?;
    uuid::Uuid::try_parse(id).is_ok().then(|| id.to_owned())
}

fn device(record: &SqliteRecord, column: usize) -> Option<String> {
    let id = record.text(column)?;
    let is_one = (1..=64).contains(&id.len()) && id.bytes().all(|byte| byte.is_ascii_graphic());
    is_one.then(|| id.to_owned())
}
