//! `steady gauge`: a file of readings through the core, then printed.

use std::path::Path;

use steady_core::app::failure::Failure;
use steady_core::app::gauge::gauge;

use crate::args::File;
use crate::{fault, input, say};

/// A file of readings is a few hundred bytes; a larger one is some other file.
const LARGEST_FILE: u64 = steady_core::model::limits::SMALL_FILE_BYTES;
/// Language of the sentences.
const LOCALE: &str = "en";

/// Runs the command.
pub fn run(how: &File) -> Result<(), Failure> {
    let report = gauge(&read(&how.file)?, LOCALE)?;
    if how.json {
        say::line(&serde_json::to_string(&report.result).map_err(|_| fault::internal())?);
    } else {
        say::line(&report.lines.join("\n"));
    }
    Ok(())
}

fn read(path: &Path) -> Result<String, Failure> {
    let unreadable = |what: &str| {
        fault::failure("file-unreadable", what, "Name a file that exists and that you may read.")
    };
    input::text(path, LARGEST_FILE).map_err(|what| unreadable(&format!("the file: {what}")))
}
