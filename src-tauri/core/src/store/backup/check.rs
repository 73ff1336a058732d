//! Reads everything of a backup back, and says what is no longer what its name says.

use std::collections::BTreeMap;
use std::fs;
use std::path::Path;

use serde::Serialize;

use super::fault::BackupFault;
use super::list::Object;
use super::place::{self, Held, LISTS};
use super::proving::ALL;
use super::{Progress, read};
use crate::store::fault::StoreFault;
use crate::store::folders;

/// What was found of a backup that was read back whole.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Checked {
    /// Generations whose list is whole.
    pub generations: u64,
    /// Files that were read.
    pub files: u64,
    /// What is missing or damaged.
    pub damaged: Vec<Damage>,
}

/// A file of a backup that is missing or damaged.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Damage {
    /// Where it stands in the backup's folder.
    pub file: String,
    /// The generations that need it, by their time; none where the file is itself the list of one.
    pub generations: Vec<String>,
}

/// Reads back every file that a generation names. Where one is damaged, the next backup proves all that it could
/// write anew. No backup is made here meanwhile: what it lets go would read as missing.
///
/// # Errors
/// As [`read::generations`]; [`BackupFault::NotABackup`] where no backup is there, [`BackupFault::Busy`] and
/// [`BackupFault::Link`].
pub fn check(root: &Path, progress: &mut dyn FnMut(Progress)) -> Result<Checked, StoreFault> {
    // What is no backup is told so, and nothing is written to it.
    read::generations(root)?;
    let held = Held::new(root)?;
    let lists = read::generations(root)?;
    if lists.sound.is_empty() && lists.damaged.is_empty() {
        // Nothing was read, and nothing read is not all of it whole.
        return Err(BackupFault::NotABackup.into());
    }
    let mut needed: BTreeMap<Object, Vec<String>> = BTreeMap::new();
    for list in &lists.sound {
        for object in list.objects() {
            let by = needed.entry(object).or_default();
            if by.last() != Some(&list.made_at.rfc3339()) {
                by.push(list.made_at.rfc3339());
            }
        }
    }
    let of = needed.len() as u64;
    let of_list = |name: &String| Damage { file: format!("{LISTS}/{name}"), generations: Vec::new() };
    let mut damaged: Vec<Damage> = lists.damaged.iter().map(of_list).collect();
    for (done, (object, generations)) in (1..).zip(needed) {
        let path = place::object_path(root, &object.name);
        // What a link leads to is no part of the backup, and may be gone with its place.
        let is_file = fs::symlink_metadata(&path).is_ok_and(|found| found.is_file());
        let whole =
            |(sha256, bytes): (String, u64)| object.name.starts_with(&sha256) && bytes == object.bytes;
        if !is_file || !folders::hash_of(&path).is_ok_and(whole) {
            damaged.push(Damage { file: place::object_name(&object.name), generations });
        }
        progress(Progress { done, of });
    }
    if !damaged.is_empty() {
        held.doubt(ALL);
    }
    Ok(Checked { generations: lists.sound.len() as u64, files: of, damaged })
}
