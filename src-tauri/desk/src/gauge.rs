//! `steady gauge`: a file of readings through the core, then printed.

use std::fs;
use std::path::Path;

use steady_core::app::failure::Failure;
use steady_core::app::gauge::gauge;

use crate::args::File;
use crate::{fault, say};

/// A file of readings is a few hundred bytes; a larger one is some other file.
const LARGEST_FILE: u64 = steady_core::model::limits::SMALL_FILE_BYTES;
/// Language of the sentences.
const LOCALE: &str = "en";

/// Runs the command.
pub fn run(how: &File) -> Result<(), Failure> {
    let judged = gauge(&read(&how.file)?, LOCALE)?;
    if how.json {
        say::line(&serde_json::to_string(&judged.result).map_err(|_| fault::internal())?);
    } else {
        say::line(&judged.lines.join("\n"));
    }
    Ok(())
}

fn read(path: &Path) -> Result<String, Failure> {
    let unreadable = |what: &str| {
        fault::failure("file-unreadable", what, "Name a file that exists and that you may read.")
    };
    let of_system = |error: std::io::Error| unreadable(&format!("the file: {}", fault::cause(&error)));
    if fs::metadata(path).map_err(of_system)?.len() > LARGEST_FILE {
        return Err(unreadable("the file is larger than any file of readings"));
    }
    fs::read_to_string(path).map_err(of_system)
}
