//! The grammar of `steady workshop`.

use std::path::PathBuf;

use lexopt::{Arg, Parser};
use steady_core::app::failure::Failure;

use super::{Command, folder, unknown};

/// What to do with the workshop's particulars.
#[derive(Debug, Default, PartialEq, Eq)]
pub struct Workshop {
    /// The file to take them from; without one they are printed.
    pub file: Option<PathBuf>,
    /// Data folder, if given.
    pub data: Option<PathBuf>,
    /// Print one JSON object.
    pub json: bool,
}

/// Reads what follows the command.
pub fn read(words: &mut Parser) -> Result<Command, Failure> {
    let mut how = Workshop::default();
    while let Some(arg) = words.next().map_err(|_| unknown())? {
        match arg {
            Arg::Long("data") => how.data = Some(folder(words)?),
            Arg::Long("json") => how.json = true,
            Arg::Long("help") | Arg::Short('h') => return Ok(Command::Help),
            Arg::Value(file) if how.file.is_none() => how.file = Some(file.into()),
            _ => return Err(unknown()),
        }
    }
    Ok(Command::Workshop(how))
}
