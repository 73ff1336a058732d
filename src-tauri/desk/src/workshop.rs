//! `steady workshop`: the workshop's own particulars, from a file or to the terminal.

use std::path::Path;

use serde_json::json;
use steady_core::app::failure::Failure;
use steady_core::app::request::Request;
use steady_core::app::response::Response;
use steady_core::model::workshop::Workshop;

use crate::args::Workshop as How;
use crate::{fault, house, input, say};

/// Particulars are a few hundred bytes; a larger file is some other one.
const LARGEST: u64 = steady_core::model::limits::SMALL_FILE_BYTES;

/// Runs the command.
pub fn run(how: &How) -> Result<(), Failure> {
    let steady = house::open(&house::data_dir(how.data.as_deref(), house::Begin::new(how.new))?)?;
    let workshop = match &how.file {
        Some(file) => steady.set_workshop_json(&read(file)?)?,
        None => match steady.handle(Request::Workshop)? {
            Response::Workshop(workshop) => *workshop,
            _ => return Err(fault::internal()),
        },
    };
    say::line(&if how.json { json!(workshop).to_string() } else { lines(&workshop).join("\n") });
    Ok(())
}

fn read(path: &Path) -> Result<String, Failure> {
    let unreadable = |cause: String| {
        let what = format!("the workshop file: {cause}");
        fault::failure("workshop-unreadable", what, "Name a file that exists and that you may read.")
    };
    input::text(path, LARGEST).map_err(unreadable)
}

fn lines(workshop: &Workshop) -> Vec<String> {
    let named = std::iter::once(&workshop.name).chain(&workshop.address).chain([&workshop.phone]);
    let mut lines: Vec<String> = named.filter(|text| !text.is_empty()).cloned().collect();
    lines.extend(workshop.hours.iter().map(|it| format!("{}: {} to {} h", it.tier.id(), it.from, it.to)));
    lines.extend(workshop.rate.map(|rate| format!("{rate} {} an hour", workshop.currency)));
    if lines.is_empty() {
        lines.push("No particulars were entered.".to_owned());
    }
    lines
}
