//! A backup as one file: the same folder with one generation, packed. It is never on disk as a whole; its bytes
//! are worked out piece by piece from files that do not change.

use std::collections::BTreeMap;
use std::fs::{self, File};
use std::io::{self, Read, Seek, SeekFrom};
use std::path::{Path, PathBuf};
use std::sync::Arc;

use super::compare::Compared;
use super::fault::BackupFault;
use super::list::{List, Piece};
use super::own::{OwnFiles, own_files};
use super::place::{self, LISTS, MARKER};
use super::source::{self, Holds};
use super::{Progress, tar};
use crate::model::time::Moment;
use crate::store::data_id::data_id;
use crate::store::fault::StoreFault;
use crate::store::folders;
use crate::store::open::DATABASE;
use crate::store::photo_files::PhotoSize;
use crate::store::private;

/// Photos proven in one go, so that whoever waits sees how far it is.
const AT_ONCE: usize = 64;

/// A backup file in the making, and then to be fetched.
#[derive(Debug)]
pub struct BackupFile {
    data: PathBuf,
    /// Where the database's copy stands; it goes with this.
    folder: PathBuf,
    list: List,
    own: Vec<Vec<u8>>,
    /// The workshop's own files that were left out: larger than any that is taken in, of a name that not every
    /// system takes, or too many.
    own_left_out: Vec<String>,
    /// Visits whose record lacks a line, or is no longer as it was written, or no longer proven.
    visits_broken: Vec<String>,
    named: Vec<String>,
    proven: usize,
    parts: Vec<Part>,
}

/// A file within the file.
#[derive(Debug)]
struct Part {
    /// Where it begins.
    at: u64,
    header: [u8; tar::BLOCK as usize],
    bytes: u64,
    content: Content,
}

#[derive(Debug)]
enum Content {
    Bytes(Vec<u8>),
    File(PathBuf),
}

impl BackupFile {
    /// Copies the database and finds the photos that have to be proven.
    ///
    /// # Errors
    /// What SQLite or the file system says.
    pub fn begin(data: &Path, id: &str, now: Moment) -> Result<Self, StoreFault> {
        let folder = data.join("outgoing").join(id);
        Self::begun(data, folder.clone(), now).inspect_err(|_| {
            // A copy that came to nothing takes no room; cleared at the next start if it cannot be now.
            let _ = fs::remove_dir_all(&folder);
        })
    }

    fn begun(data: &Path, folder: PathBuf, now: Moment) -> Result<Self, StoreFault> {
        let connection = source::open_read_only(data)?;
        private::folder(&folder).map_err(StoreFault::file)?;
        let database = folder.join(DATABASE);
        folders::remove_if_there(&database).map_err(StoreFault::file)?;
        source::copy(&connection, &database)?;
        let copy = source::open_copy(&database)?;
        let holds = Holds::read(&copy)?;
        let visits_broken = Compared::of(&copy, None)?.broken.into_iter().collect();
        drop(copy);
        let (sha256, bytes) = folders::hash_of(&database).map_err(StoreFault::file)?;
        let list = List {
            number: 1,
            made_at: now,
            made_by: env!("CARGO_PKG_VERSION").to_owned(),
            data: data_id(data)?,
            visits: holds.visits,
            missing: Vec::new(),
            database: Piece { sha256, bytes },
            photos: Vec::new(),
            own: BTreeMap::new(),
        };
        let named = holds.photos.into_iter().collect();
        let (data, own_left_out) = (data.to_owned(), Vec::new());
        let (own, parts) = (Vec::new(), Vec::new());
        Ok(Self { data, folder, list, own, own_left_out, visits_broken, named, proven: 0, parts })
    }

    /// Proves more photos, and lays the file out once all are.
    ///
    /// # Errors
    /// What the file system says.
    pub fn go_on(&mut self) -> Result<Progress, StoreFault> {
        for sha256 in self.named.iter().skip(self.proven).take(AT_ONCE) {
            match folders::hash_of(&self.photo(sha256)) {
                Ok((found, bytes)) if found == *sha256 => {
                    self.list.photos.push(Piece { sha256: sha256.clone(), bytes });
                }
                // Damaged or missing: named as such, never packed.
                _ => self.list.missing.push(sha256.clone()),
            }
        }
        self.proven = (self.proven + AT_ONCE).min(self.named.len());
        let progress = self.progress();
        if progress.done == progress.of && self.parts.is_empty() {
            self.own_files()?;
            self.lay_out()?;
        }
        Ok(progress)
    }

    /// How far it is.
    pub fn progress(&self) -> Progress {
        Progress { done: self.proven as u64, of: self.named.len() as u64 }
    }

    /// Length of the whole file, bytes; nought until every photo is proven.
    pub fn bytes(&self) -> u64 {
        self.parts.last().map_or(0, |last| last.at + tar::length(last.bytes) + tar::END)
    }

    /// As its head says; proven when it was opened.
    pub fn list(&self) -> &List {
        &self.list
    }

    /// Bytes of the file from a place on, at most so many; none behind its end.
    ///
    /// # Errors
    /// [`StoreFault::UploadUnknown`] if a file of it is gone, as after an erasure.
    pub fn read(&self, from: u64, most: u64) -> Result<Vec<u8>, StoreFault> {
        let end = (from + most).min(self.bytes());
        let mut read = Vec::new();
        let first = self.parts.partition_point(|part| part.at + tar::length(part.bytes) <= from);
        for part in self.parts.iter().skip(first).take_while(|part| part.at < end) {
            part.read(from, end, &mut read).map_err(|_| StoreFault::UploadUnknown)?;
        }
        // What pads the file, and its end, are empty.
        read.resize(usize::try_from(end.saturating_sub(from)).unwrap_or(0), 0);
        Ok(read)
    }

    /// The workshop's own files that were left out: larger than any that is taken in, of a name that not every
    /// system takes, or too many.
    pub fn own_left_out(&self) -> &[String] {
        &self.own_left_out
    }

    /// Visits that are in it as they are here: broken.
    pub fn visits_broken(&self) -> &[String] {
        &self.visits_broken
    }

    fn own_files(&mut self) -> Result<(), StoreFault> {
        let OwnFiles { taken, left_out } = own_files(&self.data);
        self.own_left_out = left_out;
        for (path, from) in taken {
            let bytes = fs::read(from).map_err(StoreFault::file)?;
            self.list.own.insert(path, Piece::of(&bytes));
            self.own.push(bytes);
        }
        Ok(())
    }

    fn lay_out(&mut self) -> Result<(), StoreFault> {
        let marker = place::marker(&self.list.data);
        self.add(MARKER, Content::Bytes(marker.into_bytes()))?;
        let list = self.list.text()?;
        self.add(&format!("{LISTS}/{}", self.list.file_name()), Content::Bytes(list.into_bytes()))?;
        let database = self.list.database.object("db").name;
        self.add(&place::object_name(&database), Content::File(self.folder.join(DATABASE)))?;
        for photo in self.list.photos.clone() {
            let name = place::object_name(&photo.object("jpg").name);
            self.add_file(&name, photo.bytes, self.photo(&photo.sha256))?;
        }
        let own: BTreeMap<String, Vec<u8>> =
            self.own.drain(..).map(|bytes| (Piece::of(&bytes).object("toml").name, bytes)).collect();
        own.into_iter()
            .try_for_each(|(name, bytes)| self.add(&place::object_name(&name), Content::Bytes(bytes)))
    }

    fn add(&mut self, name: &str, content: Content) -> Result<(), StoreFault> {
        let bytes = match &content {
            Content::Bytes(bytes) => bytes.len() as u64,
            Content::File(path) => fs::metadata(path).map_err(StoreFault::file)?.len(),
        };
        self.add_part(name, bytes, content)
    }

    fn add_file(&mut self, name: &str, bytes: u64, path: PathBuf) -> Result<(), StoreFault> {
        self.add_part(name, bytes, Content::File(path))
    }

    fn add_part(&mut self, name: &str, bytes: u64, content: Content) -> Result<(), StoreFault> {
        let at = self.parts.last().map_or(0, |last| last.at + tar::length(last.bytes));
        let header = tar::header(name, bytes).ok_or_else(|| BackupFault::Damaged(name.to_owned()))?;
        self.parts.push(Part { at, header, bytes, content });
        Ok(())
    }

    fn photo(&self, sha256: &str) -> PathBuf {
        self.data.join("photos").join(PhotoSize::Full.file_name(sha256))
    }
}

/// Reads a backup file from its beginning.
#[derive(Debug)]
pub struct BackupReader {
    file: Arc<BackupFile>,
    at: u64,
}

impl BackupReader {
    /// At its first byte.
    pub fn new(file: Arc<BackupFile>) -> Self {
        Self { file, at: 0 }
    }
}

impl Read for BackupReader {
    fn read(&mut self, to: &mut [u8]) -> io::Result<usize> {
        let bytes = self.file.read(self.at, to.len() as u64).map_err(io::Error::other)?;
        self.at += bytes.len() as u64;
        (&*bytes).read(to)
    }
}

impl Part {
    /// Adds those of its bytes that lie between two places of the file.
    fn read(&self, from: u64, end: u64, to: &mut Vec<u8>) -> io::Result<()> {
        let content = self.at + tar::BLOCK;
        let (start, stop) = (from.max(self.at), end.min(content));
        if start < stop {
            to.extend(slice(&self.header, start - self.at, stop - self.at));
        }
        let (start, stop) = (from.max(content), end.min(content + self.bytes));
        if start < stop {
            let (start, stop) = (start - content, stop - content);
            match &self.content {
                Content::Bytes(bytes) => to.extend(slice(bytes, start, stop)),
                Content::File(path) => {
                    let mut file = File::open(path)?;
                    file.seek(SeekFrom::Start(start))?;
                    let read = file.take(stop - start).read_to_end(to)?;
                    if read as u64 != stop - start {
                        return Err(io::ErrorKind::UnexpectedEof.into());
                    }
                }
            }
        }
        let (start, stop) = (from.max(content + self.bytes), end.min(self.at + tar::length(self.bytes)));
        let padding = usize::try_from(stop.saturating_sub(start)).unwrap_or(0);
        to.resize(to.len() + padding, 0);
        Ok(())
    }
}

fn slice(bytes: &[u8], start: u64, stop: u64) -> &[u8] {
    let index = |at: u64| usize::try_from(at).unwrap_or(usize::MAX);
    bytes.get(index(start)..index(stop)).unwrap_or_default()
}

impl Drop for BackupFile {
    fn drop(&mut self) {
        // Cleared at the next start if it cannot be now.
        let _ = fs::remove_dir_all(&self.folder);
    }
}
