//! Starts other programs, with their output passed on, and says which one failed.

use std::io::{BufRead as _, BufReader};
use std::process::{Command, ExitStatus, Stdio};

use crate::tally::Tally;
use crate::{Outcome, rooms, say};

/// A program to be started in the repository's top folder.
pub fn program(name: &str, words: &[&str]) -> Command {
    let mut command = Command::new(name);
    command.args(words).current_dir(rooms::top());
    command
}

/// The cargo that runs xtask, held to the lock file.
pub fn cargo(words: &[&str]) -> Command {
    let (command, rest) = words.split_at(1.min(words.len()));
    cargo_as_it_is(&[command, &["--locked"], rest].concat())
}

/// The same for a command that builds nothing.
pub fn cargo_as_it_is(words: &[&str]) -> Command {
    program(&std::env::var("CARGO").unwrap_or_else(|_| "cargo".to_owned()), words)
}

/// Runs to the end; anything but success is an error.
pub fn to_the_end(command: &mut Command) -> Outcome<()> {
    say::step(&shown(command));
    let status = command.status().map_err(|error| unstartable(command, &error))?;
    succeeded(command, status)
}

/// Runs a test runner to the end and counts its tests.
pub fn counted(command: &mut Command, tally: &mut Tally) -> Outcome<()> {
    by_line(command, |line| tally.read(line))
}

/// Runs to the end; gives back the lines that were printed, all of them passed on too.
pub fn captured(command: &mut Command) -> Outcome<Vec<String>> {
    let mut lines = Vec::new();
    by_line(command, |line| lines.push(line.to_owned()))?;
    Ok(lines)
}

fn by_line(command: &mut Command, mut read: impl FnMut(&str)) -> Outcome<()> {
    say::step(&shown(command));
    let mut child = command.stdout(Stdio::piped()).spawn().map_err(|error| unstartable(command, &error))?;
    if let Some(output) = child.stdout.take() {
        for line in BufReader::new(output).split(b'\n') {
            let line = line.map_err(|error| format!("{}: {error}", shown(command)))?;
            let line = String::from_utf8_lossy(&line);
            read(&line);
            say::line(&line);
        }
    }
    let status = child.wait().map_err(|error| unstartable(command, &error))?;
    succeeded(command, status)
}

/// What a program prints, if it can be started and succeeds.
pub fn asked(name: &str, words: &[&str]) -> Option<String> {
    let output = program(name, words).stderr(Stdio::null()).output().ok()?;
    output.status.success().then(|| String::from_utf8_lossy(&output.stdout).trim().to_owned())
}

/// Anything but success is an error.
pub fn succeeded(command: &Command, status: ExitStatus) -> Outcome<()> {
    if status.success() { Ok(()) } else { Err(format!("{} failed ({status})", shown(command))) }
}

/// Why a program could not be started.
pub fn unstartable(command: &Command, error: &std::io::Error) -> String {
    format!("{} cannot be started: {error}", command.get_program().to_string_lossy())
}

/// A command as it would be typed.
pub fn shown(command: &Command) -> String {
    let program = std::path::Path::new(command.get_program());
    let name = program.file_name().unwrap_or(command.get_program());
    let words = command.get_args().map(|word| word.to_string_lossy());
    std::iter::once(name.to_string_lossy()).chain(words).collect::<Vec<_>>().join(" ")
}
