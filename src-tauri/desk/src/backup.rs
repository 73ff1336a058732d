//! `steady backup` and `steady restore`: folders for the core, and what it says of them for the person at the
//! terminal.

use std::io::{IsTerminal as _, stderr};
use std::path::Path;

use serde_json::json;
use steady_core::app::Steady;
use steady_core::app::backup::{
    self, BackedUp, Checked, Damage, GenerationSeen, Progress, Restored, back_up, check,
};
use steady_core::app::failure::Failure;
use steady_core::model::time::Moment;

use crate::handover::{Said, import_lines, left, visits};
use crate::say;

/// The backups that are there.
pub fn listed(folder: &Path) -> Result<Said, Failure> {
    let (seen, damaged) = backup::listed(folder)?;
    let lines = seen.iter().map(generation_line).chain(left("Damaged lists", &damaged)).collect();
    Ok(Said { value: json!({ "generations": seen, "lists_damaged": damaged }), lines })
}

/// Reads a backup back, and says whether all of it is whole.
pub fn checked(folder: &Path) -> Result<(Said, bool), Failure> {
    let checked = check(folder, &mut shown("Files read"))?;
    let is_whole = checked.damaged.is_empty();
    Ok((Said { value: json!(checked), lines: checked_lines(&checked) }, is_whole))
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

fn checked_lines(checked: &Checked) -> Vec<String> {
    let Checked { generations, files, damaged } = checked;
    let read = format!("{files} files of {generations} backups were read.");
    let damage = |Damage { file, generations }: &Damage| match generations.is_empty() {
        true => format!("Damaged: {file}"),
        false => format!("Missing or damaged: {file}, needed by {}", generations.join(" ")),
    };
    let whole = damaged.is_empty().then(|| "All of them are whole.".to_owned());
    std::iter::once(read).chain(damaged.iter().map(damage)).chain(whole).collect()
}

fn made_lines(made: &BackedUp) -> Vec<String> {
    let held = format!("{}, {} photos", visits(made.visits), made.photos);
    let mut lines = vec![match made.new {
        true => format!("Backed up as {}: {held}, {} of them new.", made.generation, made.photos_copied),
        false => format!("Nothing new since {}: {held}.", made.generation),
    }];
    lines.extend(left("Damaged or missing in the data folder", &made.photos_damaged_here));
    lines.extend(left("Missing from the backup too", &made.photos_missing));
    if made.renewed > 0 {
        lines.push(format!("Damaged in the backup, and written anew: {} files", made.renewed));
    }
    lines.extend(left("Damaged lists in the backup, left as they are", &made.lists_damaged));
    lines.extend(left(
        "Left out, too large, too many or of a name that not every system takes",
        &made.own_left_out,
    ));
    lines.extend(left(
        "Broken here, and backed up as they are; every earlier backup stays, look for them there",
        &made.visits_broken,
    ));
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

/// That whom to trust did not come along, where it may be another workshop's.
pub fn another(of_another: bool) -> Option<&'static str> {
    of_another.then_some(
        "It is not of this data folder: whom it trusts and what was erased there did not come along, and no device that \
         is not confirmed here made a rating milder.",
    )
}

fn restored_lines(done: &Restored) -> Vec<String> {
    let mut lines = import_lines(&done.imported);
    if let Some(generation) = &done.generation {
        lines.insert(0, format!("From the backup of {generation}"));
    }
    lines.extend(another(done.of_another).map(str::to_owned));
    if done.photos_healed > 0 {
        lines.push(format!("Damaged photos made whole: {}", done.photos_healed));
    }
    lines.extend(devices(done.devices));
    lines.extend(left("Left as they are here, where they go on differently", &done.lost));
    lines.extend(left("Damaged in the backup and left there, try an earlier one", &done.visits_damaged));
    lines.extend(left("Files of the backup that are damaged, all else came", &done.files_damaged));
    if done.photos_missing > 0 {
        lines.push(format!("Photos not found whole: {}", done.photos_missing));
    }
    lines
}
