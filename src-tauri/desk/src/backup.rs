//! `steady backup` and `steady restore`: folders for the core, and what it says of them for the person at the
//! terminal.

use std::io::{IsTerminal as _, stderr};
use std::path::Path;

use serde_json::json;
use steady_core::app::Steady;
use steady_core::app::backup::{BackedUp, GenerationSeen, Progress, Restored, back_up, generations};
use steady_core::app::failure::Failure;
use steady_core::model::time::Moment;

use crate::handover::{Said, import_lines, left, visits};
use crate::say;

/// The backups that are there.
pub fn listed(folder: &Path) -> Result<Said, Failure> {
    let seen = generations(folder)?;
    Ok(Said { value: json!({ "generations": seen }), lines: seen.iter().map(generation_line).collect() })
}

/// Makes or renews a backup. The data folder may be open elsewhere.
pub fn made(data: &Path, folder: &Path) -> Result<Said, Failure> {
    let made = back_up(data, folder, Moment::now(), &mut shown("Photos copied"))?;
    Ok(Said { value: json!(made), lines: made_lines(&made) })
}

/// Takes a backup in.
pub fn restored(steady: &Steady, folder: &Path, generation: Option<&str>) -> Result<Said, Failure> {
    let done = steady.restore(folder, generation, &mut shown("Visits read"))?;
    Ok(Said { value: json!(done), lines: restored_lines(&done) })
}

/// How far it is, on one line that is written over; for a person at a terminal alone.
fn shown(what: &'static str) -> impl FnMut(Progress) {
    let watched = stderr().is_terminal();
    let mut hundredths = None;
    move |Progress { done, of }| {
        let now = done * 100 / of.max(1);
        if watched && hundredths != Some(now) {
            hundredths = Some(now);
            say::over(&format!("{what}: {done} of {of}"), done == of);
        }
    }
}

fn generation_line(seen: &GenerationSeen) -> String {
    let missing = match seen.photos_missing {
        0 => String::new(),
        missing => format!(", {missing} photos missing"),
    };
    format!("{}  {}, {} photos{missing}", seen.generation, visits(seen.visits), seen.photos)
}

fn made_lines(made: &BackedUp) -> Vec<String> {
    let held = format!("{}, {} photos", visits(made.visits), made.photos);
    let mut lines = vec![match made.new {
        true => format!("Backed up as {}: {held}, {} of them new.", made.generation, made.photos_copied),
        false => format!("Nothing new since {}: {held}.", made.generation),
    }];
    lines.extend(left("Damaged or missing in the data folder", &made.photos_damaged_here));
    lines.extend(left("Missing from the backup too", &made.photos_missing));
    if made.photos_damaged_here.len() > made.photos_missing.len() {
        lines.push("steady restore, from this backup, makes those whole that it holds.".to_owned());
    }
    lines
}

/// That whom to trust came along, where it did: it may be another workshop's backup.
pub fn devices(devices: u64) -> Option<String> {
    (devices > 0).then(|| {
        format!("What was decided about {devices} devices came along; `steady devices` lists them, `device start-over` undoes it")
    })
}

fn restored_lines(done: &Restored) -> Vec<String> {
    let mut lines = import_lines(&done.imported);
    if let Some(generation) = &done.generation {
        lines.insert(0, format!("From the backup of {generation}"));
    }
    if done.photos_healed > 0 {
        lines.push(format!("Damaged photos made whole: {}", done.photos_healed));
    }
    lines.extend(devices(done.devices));
    lines.extend(left("Left as they are here, where they go on differently", &done.lost));
    if done.photos_missing > 0 {
        lines.push(format!("Photos not found whole: {}", done.photos_missing));
    }
    lines
}
