//! Reads the pages of an SQLite database where SQLite itself gives up: every version of every page that the file and
//! its log still hold, and in each the records that stand there, whatever the tree above them says.
//!
//! Written after SQLite's published description, "Database File Format"; each module names the sections it follows.
//! Nothing is believed here. Whoever asks proves what was read: a ledger's line by its hash and its chain.
//!
//! Everything is bounded by the length of the files: a page is looked at once, a chain of pages followed no longer than
//! its record says, and no record longer than [`limits::SALVAGED_BYTES`](crate::model::limits::SALVAGED_BYTES) is read.
//!
//! Own code, 500 lines to keep: SQLite's recovery extension is not in rusqlite's bundled build and would need unsafe
//! code. Lines prove themselves, so a reader may try every byte of a damaged page. A visit is taken only where its
//! card, the index's count or the keys beside its own say that no line is missing behind its last; of a log that was
//! cut short, a visit reads as it was at an earlier moment, as after a power cut.

mod cells;
mod log;
mod record;

use std::collections::HashMap;
use std::fs::File;
use std::io::{self, Read, Seek, SeekFrom};
use std::path::Path;

pub use cells::{Cell, Kind, Leaf};
use log::Log;
pub use record::SqliteRecord;

use super::folders::with_ending;

/// SQLite's own size of a page, bytes, where the file no longer says.
const USUAL_SIZE: usize = 4_096;

/// Where one version of a page stands.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct PageAt {
    /// In the log instead of the database.
    log: bool,
    /// Its first byte there.
    offset: u64,
}

/// One version of a page.
#[derive(Debug, Clone, Copy)]
pub struct Version {
    /// Where it stands.
    pub place: PageAt,
    /// How it stands to the others.
    pub state: State,
}

/// How a version of a page stands to the others.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum State {
    /// It is the latest.
    Current,
    /// A later one took its place.
    Older,
    /// Nobody can tell whether it was ever kept: what it holds is a hint and no more.
    Unsure,
}

/// Which versions a record's further pages are taken from.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum From {
    /// The latest of each page.
    Latest,
    /// Those of the database alone, as if there were no log.
    Database,
    /// Those that an earlier round of the log left behind, where there is one.
    Left,
}

/// The pages of a database and of its log.
#[derive(Debug)]
pub struct Pages {
    database: File,
    log: Option<File>,
    /// Bytes in a page.
    size: usize,
    /// Bytes at a page's end that SQLite leaves to others.
    reserved: usize,
    /// Bytes in the database.
    bytes: u64,
    frames: Log,
    latest: HashMap<u32, u64>,
    left: HashMap<u32, u64>,
}

impl Pages {
    /// Opens a database and the log beside it.
    ///
    /// # Errors
    /// What the file system says; no content is an error.
    pub fn open(path: &Path) -> io::Result<Self> {
        let mut database = File::open(path)?;
        let bytes = database.metadata()?.len();
        let mut log = File::open(with_ending(path, "-wal")).ok();
        let head = head(&mut database)?;
        let logged = log.as_mut().and_then(log::page_size);
        let size = page_size(&head).or(logged).unwrap_or(USUAL_SIZE);
        let reserved = head.get(20).copied().filter(|_| page_size(&head).is_some()).map_or(0, usize::from);
        // The format asks for 480 usable bytes at the least.
        let reserved = if size - reserved < 480 { 0 } else { reserved };
        let frames = log.as_mut().map_or_else(Log::default, |log| Log::read(log, size));
        let by_page = |frames: &[log::Frame]| frames.iter().map(|frame| (frame.page, frame.offset)).collect();
        let (latest, left) = (by_page(&frames.committed), by_page(&frames.left));
        Ok(Self { database, log, size, reserved, bytes, frames, latest, left })
    }

    /// Every version of every page, the log's last.
    pub fn versions(&self) -> impl Iterator<Item = Version> {
        let size = self.size as u64;
        let of_database = (0..self.bytes.div_ceil(size)).map(move |index| {
            let number = u32::try_from(index + 1).unwrap_or(u32::MAX);
            let place = PageAt { log: false, offset: index * size };
            let state = if self.latest.contains_key(&number) { State::Older } else { State::Current };
            Version { place, state }
        });
        let of_log = |frames: &[log::Frame], state: fn(bool) -> State| {
            let version = |frame: &log::Frame| {
                let is_latest = self.latest.get(&frame.page) == Some(&frame.offset);
                Version { place: PageAt { log: true, offset: frame.offset }, state: state(is_latest) }
            };
            frames.iter().map(version).collect::<Vec<_>>()
        };
        let unsure = of_log(&self.frames.unsure, |_| State::Unsure);
        let left = of_log(&self.frames.left, |_| State::Older);
        let standing =
            of_log(&self.frames.committed, |latest| if latest { State::Current } else { State::Older });
        of_database.chain(unsure).chain(left).chain(standing)
    }

    /// The bytes of a version; what is cut off reads as zeros. Nothing where it cannot be read.
    pub fn bytes(&self, place: PageAt) -> Option<Vec<u8>> {
        let mut file = if place.log { self.log.as_ref()? } else { &self.database };
        file.seek(SeekFrom::Start(place.offset)).ok()?;
        let mut bytes = Vec::with_capacity(self.size);
        file.take(self.size as u64).read_to_end(&mut bytes).ok()?;
        bytes.resize(self.size, 0);
        Some(bytes)
    }

    /// Where the first page's tree begins: behind the database's own header ("The Database Header").
    pub fn tree_at(place: PageAt) -> usize {
        if !place.log && place.offset == 0 { 100 } else { 0 }
    }

    /// The cells of a page.
    pub fn leaf(&self, bytes: &[u8], at: usize) -> Leaf {
        cells::read(bytes, at, self.usable())
    }

    /// A cell's record, with what stands of it on further pages.
    pub fn record(&self, bytes: &[u8], cell: &Cell, from: From) -> Option<SqliteRecord> {
        let mut payload = bytes.get(cell.payload.clone())?.to_vec();
        let mut next = cell.overflow;
        let mut left = cell.bytes.checked_sub(payload.len() as u64)?;
        while left > 0 {
            let page = self.page(next?, from)?;
            let usable = page.get(..self.usable())?;
            let (head, content) = usable.split_at_checked(4)?;
            let take = usize::try_from(left).unwrap_or(usize::MAX).min(content.len());
            payload.extend(content.get(..take)?);
            left -= take as u64;
            next = Some(u32::from_be_bytes(head.try_into().ok()?)).filter(|page| *page > 0);
        }
        SqliteRecord::read(payload)
    }

    fn page(&self, number: u32, from: From) -> Option<Vec<u8>> {
        let logged = match from {
            From::Latest => self.latest.get(&number),
            From::Left => self.left.get(&number),
            From::Database => None,
        };
        if let Some(offset) = logged {
            return self.bytes(PageAt { log: true, offset: *offset });
        }
        let offset = u64::from(number.checked_sub(1)?) * self.size as u64;
        (offset < self.bytes).then_some(())?;
        self.bytes(PageAt { log: false, offset })
    }

    fn usable(&self) -> usize {
        self.size - self.reserved
    }
}

fn head(file: &mut File) -> io::Result<Vec<u8>> {
    let mut head = Vec::new();
    file.take(100).read_to_end(&mut head)?;
    Ok(head)
}

/// "The Database Header": sixteen bytes that name the format, then a page's size; one stands for 65,536.
fn page_size(head: &[u8]) -> Option<usize> {
    let size = u16::from_be_bytes(head.get(16..18)?.try_into().ok()?);
    let size = if size == 1 { 65_536 } else { usize::from(size) };
    (head.starts_with(b"SQLite format 3\0") && is_page_size(size)).then_some(size)
}

fn is_page_size(size: usize) -> bool {
    size.is_power_of_two() && (512..=65_536).contains(&size)
}
