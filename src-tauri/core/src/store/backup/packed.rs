//! Reads a backup that is one file: each header is compared with the one that its list asks for, and each
//! content proven by its hash, so that nothing in it is interpreted but the list.

use std::collections::BTreeMap;
use std::fs::File;
use std::io::{Read, Seek, SeekFrom, Write};
use std::path::Path;

use sha2::{Digest, Sha256};

use super::fault::BackupFault;
use super::list::{List, Object};
use super::place::{self, LISTS, MARKER};
use super::tar;
use crate::model::hex;
use crate::model::limits;
use crate::store::fault::StoreFault;

/// A backup file, laid out by its list.
#[derive(Debug)]
pub struct Packed {
    file: File,
    /// What it holds.
    pub list: List,
    /// Where each file of the store begins, and its length.
    at: BTreeMap<String, (u64, u64)>,
}

impl Packed {
    /// Opens a backup file and compares every header in it.
    ///
    /// # Errors
    /// [`BackupFault::NotABackupFile`], [`BackupFault::Newer`], [`BackupFault::Damaged`], or what the file system
    /// says.
    pub fn open(path: &Path) -> Result<Self, StoreFault> {
        let mut file = File::open(path).map_err(StoreFault::file)?;
        let whole = file.metadata().map_err(StoreFault::file)?.len();
        let (_, marker) = named(&mut file, |name| name == MARKER).ok_or(BackupFault::NotABackupFile)?;
        let data = place::data_of(&marker)?;
        let is_list = |name: &str| name.strip_prefix(LISTS).is_some_and(|rest| rest.starts_with('/'));
        let (name, text) = named(&mut file, is_list).ok_or_else(|| damaged(LISTS))?;
        let list = List::read(&name, &text)?;
        if list.data != data || name != format!("{LISTS}/{}", list.file_name()) {
            return Err(damaged(&name).into());
        }
        let mut packed = Self { file, list, at: BTreeMap::new() };
        packed.lay_out(whole)?;
        Ok(packed)
    }

    fn lay_out(&mut self, whole: u64) -> Result<(), StoreFault> {
        let mut at = self.file.stream_position().map_err(StoreFault::file)?;
        for Object { name, bytes } in in_order(&self.list) {
            let wanted = tar::header(&place::object_name(&name), bytes).ok_or_else(|| damaged(&name))?;
            let mut header = [0; tar::BLOCK as usize];
            let read = self.file.seek(SeekFrom::Start(at)).and_then(|_| self.file.read_exact(&mut header));
            if read.is_err() || header != wanted {
                return Err(damaged(&name).into());
            }
            self.at.insert(name, (at + tar::BLOCK, bytes));
            at += tar::length(bytes);
        }
        if at + tar::END == whole { Ok(()) } else { Err(damaged("end").into()) }
    }

    /// A file of the store, if it is here and is what its name says.
    pub fn object(&self, name: &str) -> Option<Vec<u8>> {
        let (at, bytes) = *self.at.get(name)?;
        let mut file = &self.file;
        file.seek(SeekFrom::Start(at)).ok()?;
        let mut content = Vec::new();
        file.take(bytes).read_to_end(&mut content).ok()?;
        (content.len() as u64 == bytes && name.starts_with(&hex::encode(&Sha256::digest(&content))))
            .then_some(content)
    }

    /// Copies the database out, and proves it.
    ///
    /// # Errors
    /// [`BackupFault::Damaged`], or what the file system says.
    pub fn copy_database(&self, to: &Path) -> Result<(), StoreFault> {
        let name = self.list.database.object("db").name;
        let (at, bytes) = *self.at.get(&name).ok_or_else(|| damaged(&name))?;
        let mut file = &self.file;
        file.seek(SeekFrom::Start(at)).map_err(StoreFault::file)?;
        let (mut from, mut to) = (file.take(bytes), File::create(to).map_err(StoreFault::file)?);
        let (mut digest, mut piece) = (Sha256::new(), vec![0; 64 * 1024]);
        loop {
            let read = from.read(&mut piece).map_err(StoreFault::file)?;
            let Some(read) = piece.get(..read).filter(|read| !read.is_empty()) else { break };
            digest.update(read);
            to.write_all(read).map_err(StoreFault::file)?;
        }
        if hex::encode(&digest.finalize()) == self.list.database.sha256 {
            Ok(())
        } else {
            Err(damaged(&name).into())
        }
    }
}

/// The order in which a list's files stand, each once.
fn in_order(list: &List) -> Vec<Object> {
    let mut own: Vec<Object> = list.own.values().map(|piece| piece.object("toml")).collect();
    own.sort();
    own.dedup();
    let photos = list.photos.iter().map(|photo| photo.object("jpg"));
    std::iter::once(list.database.object("db")).chain(photos).chain(own).collect()
}

/// The next file, if its header is one of ours and its name is wanted: a marker or a list, held whole.
fn named(file: &mut File, wanted: impl Fn(&str) -> bool) -> Option<(String, Vec<u8>)> {
    let mut header = [0; tar::BLOCK as usize];
    file.read_exact(&mut header).ok()?;
    let name = std::str::from_utf8(header.get(..100)?).ok()?.trim_end_matches('\0').to_owned();
    let size = std::str::from_utf8(header.get(124..135)?).ok()?;
    let bytes = u64::from_str_radix(size, 8).ok().filter(|bytes| *bytes <= limits::BACKUP_LIST_BYTES)?;
    if !wanted(&name) || tar::header(&name, bytes)? != header {
        return None;
    }
    let mut content = Vec::new();
    file.take(bytes).read_to_end(&mut content).ok()?;
    let padding = i64::try_from(tar::length(bytes) - tar::BLOCK - bytes).ok()?;
    file.seek(SeekFrom::Current(padding)).ok()?;
    (content.len() as u64 == bytes).then_some((name, content))
}

fn damaged(name: &str) -> BackupFault {
    BackupFault::Damaged(name.to_owned())
}
