//! Node and npm: their versions, and the packages of a folder as its lock file names them.

use std::fs;
use std::path::Path;
use std::process::Command;

use crate::{Outcome, rooms, say, start};

/// npm's name.
pub const NPM: &str = if cfg!(windows) { "npm.cmd" } else { "npm" };

/// How to get a Node that is new enough.
const ADVICE: &str = "install Node 20.19 or later of its line, or 22.12 or later, with its npm \
    (https://nodejs.org, or your system's packages)";

/// Checks that the tools are there and new enough for the UI's build.
pub fn check() -> Outcome<()> {
    let node = start::asked("node", &["--version"]).ok_or_else(|| format!("node is missing: {ADVICE}"))?;
    if !is_new_enough(&node) {
        return Err(format!("node is {node}: {ADVICE}"));
    }
    start::asked(NPM, &["--version"]).ok_or_else(|| format!("npm is missing: {ADVICE}"))?;
    Ok(())
}

/// Installs a folder's packages, unless they are those of its lock file already.
pub fn install(folder: &str) -> Outcome<()> {
    let lock = rooms::top().join(folder).join("package-lock.json");
    let installed = rooms::top().join(folder).join("node_modules/.installed-lock.json");
    let wanted = fs::read(&lock).map_err(|error| format!("{}: {error}", lock.display()))?;
    if fs::read(&installed).is_ok_and(|found| found == wanted) {
        say::line(&format!("{folder}: packages are as locked"));
        return Ok(());
    }
    start::to_the_end(&mut npm(folder, &["ci", "--no-audit", "--no-fund"]))?;
    fs::write(&installed, wanted).map_err(|error| format!("{}: {error}", installed.display()))
}

pub fn npm(folder: &str, words: &[&str]) -> Command {
    let mut command = start::program(NPM, words);
    command.current_dir(rooms::top().join(Path::new(folder)));
    command
}

/// The test files of a folder. They are named one by one: newer Nodes take a folder for a file.
pub fn tests(folder: &str) -> Outcome<Vec<String>> {
    let entries = fs::read_dir(rooms::top().join(folder)).map_err(|error| format!("{folder}: {error}"))?;
    let names = entries.filter_map(|entry| entry.ok()?.file_name().into_string().ok());
    let mut tests: Vec<String> =
        names.filter(|name| name.ends_with(".test.mjs")).map(|name| format!("{folder}{name}")).collect();
    tests.sort();
    if tests.is_empty() { Err(format!("{folder} holds no test")) } else { Ok(tests) }
}

fn is_new_enough(version: &str) -> bool {
    let mut numbers = version.trim_start_matches('v').split('.').map_while(|part| part.parse::<u32>().ok());
    match (numbers.next(), numbers.next()) {
        (Some(20), Some(minor)) => minor >= 19,
        (Some(22), Some(minor)) => minor >= 12,
        (Some(major), Some(_)) => major > 22,
        _ => false,
    }
}

#[cfg(test)]
mod tests {
    use super::is_new_enough;

    #[test]
    fn old_and_odd_versions_of_node_are_refused() {
        for good in ["v20.19.0", "v20.20.2", "v22.12.0", "v24.0.0"] {
            assert!(is_new_enough(good), "{good}");
        }
        for bad in ["v18.20.0", "v20.18.1", "v21.7.0", "v22.11.0", "", "unknown"] {
            assert!(!is_new_enough(bad), "{bad}");
        }
    }
}
