//! The lists in a backup's folder: those that are whole, and those that are not.

use std::fs;
use std::path::Path;

use super::fault::BackupFault;
use super::found::entries;
use super::list::List;
use super::place::LISTS;
use crate::model::limits;
use crate::store::fault::StoreFault;

/// The lists of a backup.
#[derive(Debug, Default)]
pub struct Lists {
    /// Those that are whole, in order of their numbers.
    pub sound: Vec<List>,
    /// The names of those that are not.
    pub damaged: Vec<String>,
}

impl Lists {
    /// The number of the next generation.
    pub fn next_number(&self) -> u64 {
        let damaged = self.damaged.iter().filter_map(|name| name.split('_').next()?.parse().ok());
        self.sound
            .iter()
            .map(|list| list.number)
            .chain(damaged)
            .max()
            .map_or(1, |last| last.saturating_add(1))
    }
}

/// Every list of a backup. What else lies beside them, such as what other systems put there, is none.
///
/// # Errors
/// [`BackupFault::Damaged`] where there are lists and none is whole, other [`BackupFault`]s, or what the file system
/// says.
pub fn lists(root: &Path) -> Result<Lists, StoreFault> {
    let folder = root.join(LISTS);
    if !folder.exists() {
        return Ok(Lists::default());
    }
    let mut lists = Lists::default();
    for file in entries(&folder)?.into_iter().filter(|file| file.is_file && is_list_name(&file.name)) {
        let fits = file.bytes <= limits::BACKUP_LIST_BYTES;
        let text = fits.then(|| fs::read(folder.join(&file.name)).ok()).flatten().unwrap_or_default();
        match List::read(&file.name, &text) {
            Ok(list) => lists.sound.push(list),
            Err(BackupFault::Damaged(name)) => lists.damaged.push(name),
            Err(fault) => return Err(fault.into()),
        }
    }
    lists.sound.sort_by_key(|list: &List| list.number);
    match (lists.sound.is_empty(), lists.damaged.first()) {
        (true, Some(first)) => Err(BackupFault::Damaged(first.clone()).into()),
        _ => Ok(lists),
    }
}

/// Number, time, ending, as [`List::file_name`] writes them.
fn is_list_name(name: &str) -> bool {
    let number = name.strip_suffix(".list").and_then(|stem| stem.split_once('_')).map(|(number, _)| number);
    number.is_some_and(|number| number.len() >= 6 && number.bytes().all(|byte| byte.is_ascii_digit()))
}
