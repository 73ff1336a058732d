//! `steady completions` and `steady manual`: both made from the grammar, so that neither can lag behind it.

use std::fs;
use std::path::Path;

use clap::CommandFactory as _;
use clap_complete::{Shell, generate};
use steady_core::app::failure::Failure;

use crate::args::CommandLine;
use crate::{fault, out, say};

/// Prints the completions for a shell.
pub fn completions(shell: Shell) {
    let mut script = Vec::new();
    generate(shell, &mut CommandLine::command(), "steady", &mut script);
    say::line(String::from_utf8_lossy(&script).trim_end());
}

/// Writes a page for the program and one for each command.
pub fn pages(folder: &Path) -> Result<(), Failure> {
    if out::is_of_steady(folder) {
        return Err(fault::failure(
            "out-in-data-folder",
            "the pages would stand among the files of a data folder or of a backup",
            "Name a place outside of it. Nothing was written.",
        ));
    }
    let written =
        fs::create_dir_all(folder).and_then(|()| clap_mangen::generate_to(CommandLine::command(), folder));
    written.map_err(|error| {
        let what = format!("the folder of the manual: {}", fault::cause(&error));
        fault::failure("out-unwritable", what, "Name another, or free some space.")
    })
}
