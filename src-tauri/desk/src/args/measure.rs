//! The words of `steady gauge` and `steady fit`. What a value means is the core's business.

use std::path::PathBuf;

use lexopt::{Arg, Parser};
use steady_core::app::failure::Failure;
use steady_core::app::fit::NAMES;

use super::{Command, file_and_json, unknown, value};
use crate::fault;

/// Which readings to judge.
#[derive(Debug, Default, PartialEq, Eq)]
pub struct Gauge {
    /// The file of readings.
    pub file: PathBuf,
    /// Print one JSON object.
    pub json: bool,
}

/// Which fit to work out.
#[derive(Debug, Default, PartialEq, Eq)]
pub struct Fit {
    /// The values as given, by the names the core knows.
    pub values: Vec<(String, String)>,
    /// Print one JSON object.
    pub json: bool,
}

/// Reads the words behind `gauge`.
pub fn gauge(words: &mut Parser) -> Result<Command, Failure> {
    let Some((file, json)) = file_and_json(words)? else { return Ok(Command::Help) };
    if file.as_os_str().is_empty() {
        return Err(fault::failure(
            "no-file",
            "gauge needs a file of readings",
            "Name one: steady gauge FILE",
        ));
    }
    Ok(Command::Gauge(Gauge { file, json }))
}

/// Reads the words behind `fit`.
pub fn fit(words: &mut Parser) -> Result<Command, Failure> {
    let mut how = Fit::default();
    while let Some(arg) = words.next().map_err(|_| unknown())? {
        match arg {
            Arg::Long("json") => how.json = true,
            Arg::Long("help") | Arg::Short('h') => return Ok(Command::Help),
            Arg::Long(name) if NAMES.contains(&name) => {
                let name = name.to_owned();
                let value = value(words)?.into_string().map_err(|_| unknown())?;
                how.values.push((name, value));
            }
            _ => return Err(unknown()),
        }
    }
    Ok(Command::Fit(how))
}
