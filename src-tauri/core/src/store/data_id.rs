//! The id of a data folder. It says which folder a backup is of and nothing else: it is not the device's, and
//! outlives a database that was set aside.

use std::fs;
use std::path::Path;

use uuid::Uuid;

use crate::model::fresh_id::fresh_id;

use super::fault::StoreFault;
use super::folders;

/// The file that holds it.
pub const FILE: &str = "data-id";

/// The folder's id, made at first need.
///
/// # Errors
/// What the file system says.
pub fn data_id(folder: &Path) -> Result<String, StoreFault> {
    if let Some(id) = read(folder) {
        return Ok(id);
    }
    let fresh = fresh_id().to_string();
    let passing = folder.join(format!("{FILE}.{}.part", std::process::id()));
    folders::write_by(&folder.join(FILE), &passing, fresh.as_bytes()).map_err(StoreFault::file)?;
    // Of two processes that made one at once, both go on with the one that stayed.
    read(folder).ok_or_else(|| StoreFault::File(std::io::Error::other("the id does not read back")))
}

fn read(folder: &Path) -> Option<String> {
    let text = fs::read_to_string(folder.join(FILE)).ok()?;
    Uuid::try_parse(text.trim()).ok().map(|id| id.to_string())
}
