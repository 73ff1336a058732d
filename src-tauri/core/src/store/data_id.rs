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
    if let Some(id) = known(folder)? {
        return Ok(id);
    }
    let fresh = fresh_id().to_string();
    let passing = folder.join(format!("{FILE}.{}.part", std::process::id()));
    folders::write_by(&folder.join(FILE), &passing, fresh.as_bytes()).map_err(StoreFault::file)?;
    // Of two processes that made one at once, both go on with the one that stayed.
    known(folder)?.ok_or_else(|| StoreFault::File(std::io::Error::other("the id does not read back")))
}

/// The folder's id, if it has one: what its file says. One that cannot be read now says nothing new.
///
/// # Errors
/// What the file system says.
pub fn known(folder: &Path) -> Result<Option<String>, StoreFault> {
    match fs::read(folder.join(FILE)) {
        Ok(text) => {
            let text = String::from_utf8_lossy(&text);
            Ok(Uuid::try_parse(text.trim()).ok().map(|id| id.to_string()))
        }
        Err(fault) if fault.kind() == std::io::ErrorKind::NotFound => Ok(None),
        Err(fault) => Err(StoreFault::file(fault)),
    }
}
