//! The demo workshop: every case of `demo-data` replayed, once, into a data folder of its own.

use std::fs;
use std::path::{Path, PathBuf};
use std::process::Stdio;

use crate::{Outcome, rooms, say, start};

/// Makes the demo folder on first start and returns it; later starts keep what was done in it.
pub fn folder() -> Outcome<PathBuf> {
    let demo = rooms::demo();
    if demo.exists() {
        say::line(&format!("The demo visits are in {} (remove it to begin anew)", demo.display()));
        return Ok(demo);
    }
    // Filled under another name, so that a start cut short leaves no half workshop behind.
    let part = demo.with_extension("part");
    let _ = fs::remove_dir_all(&part);
    let cases = cases()?;
    say::step(&format!("replaying {} demo visits", cases.len()));
    for case in &cases {
        replay(case, &part)?;
    }
    told(&["workshop", "demo-data/workshop/particulars.json"], &part)?;
    fs::rename(&part, &demo).map_err(|error| format!("{}: {error}", demo.display()))?;
    Ok(demo)
}

fn cases() -> Outcome<Vec<PathBuf>> {
    let folder = rooms::top().join("demo-data");
    let entries = fs::read_dir(&folder).map_err(|error| format!("{}: {error}", folder.display()))?;
    let mut cases: Vec<PathBuf> = entries
        .filter_map(|entry| entry.ok().map(|entry| entry.path()))
        .filter(|path| path.extension().is_some_and(|ending| ending == "json"))
        .collect();
    cases.sort();
    if cases.is_empty() { Err(format!("{} holds no case", folder.display())) } else { Ok(cases) }
}

fn replay(case: &Path, data: &Path) -> Outcome<()> {
    told(&["replay", &case.to_string_lossy()], data)
}

/// Has `steady` do something in the demo's folder.
fn told(words: &[&str], data: &Path) -> Outcome<()> {
    let mut steady = start::program(&rooms::program("steady")?.to_string_lossy(), words);
    steady.arg("--data").arg(data).arg("--new").stdout(Stdio::null());
    let status = steady.status().map_err(|error| format!("steady cannot be started: {error}"))?;
    if status.success() { Ok(()) } else { Err(format!("{} was refused", words.join(" "))) }
}
