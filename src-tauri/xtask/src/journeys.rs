//! The journeys: each file of a folder by Node's test runner in a process of its own, so many at a time.
//!
//! On a small machine a browser now and then draws nothing for a while beside another one. A file that failed is
//! therefore run once more, alone, and said to be: it fails where it fails then too.

use std::process::{Command, Stdio};
use std::sync::{Mutex, PoisonError};
use std::thread;

use crate::scratch::Scratch;
use crate::tally::Tally;
use crate::{Outcome, node, rooms, say, start};

/// Runs every file of a folder, `before` in front of each command, told where the programs are.
pub fn run(folder: &str, before: &[&str], at_a_time: usize, tally: &mut Tally) -> Outcome<()> {
    let scratch = Scratch::in_memory();
    let programs =
        [("STEADY_DESK", rooms::program("steady")?), ("STEADY_APP", rooms::program("steady-app")?)];
    let command = |file: &str| {
        let words = [before, &["node", "--test", "--test-reporter=spec", file]].concat();
        let (name, words) = words.split_first().ok_or("nothing to start")?;
        let mut command = start::program(name, words);
        command.envs(programs.iter().map(|(name, program)| (name, program)));
        scratch.lent_to(&mut command);
        Ok::<Command, String>(command)
    };
    let files = Mutex::new(node::tests(folder)?.into_iter());
    let done = Mutex::new((tally, Vec::new()));
    let worker = || -> Outcome<()> {
        while let Some(file) = next(&files) {
            let mut command = command(&file)?;
            let output = command.stdout(Stdio::piped()).stderr(Stdio::piped()).output();
            let output = output.map_err(|error| start::unstartable(&command, &error))?;
            let said = String::from_utf8_lossy(&[output.stdout, output.stderr].concat()).into_owned();
            let mut done = done.lock().unwrap_or_else(PoisonError::into_inner);
            say::step(&start::shown(&command));
            said.lines().for_each(say::line);
            if output.status.success() {
                said.lines().for_each(|line| done.0.read(line));
            } else {
                done.1.push(file);
            }
        }
        Ok(())
    };
    thread::scope(|scope| {
        let workers: Vec<_> = (0..at_a_time).map(|_| scope.spawn(worker)).collect();
        workers
            .into_iter()
            .try_for_each(|worker| worker.join().map_err(|_| "a journey's worker panicked".to_owned())?)
    })?;
    let (tally, failed) = done.into_inner().unwrap_or_else(PoisonError::into_inner);
    let mut twice = Vec::new();
    for file in failed {
        say::step(&format!("{file} failed beside others, and is run once more alone"));
        if start::counted(&mut command(&file)?, tally).is_err() {
            twice.push(file);
        }
    }
    if twice.is_empty() { Ok(()) } else { Err(format!("failed twice: {}", twice.join(", "))) }
}

fn next(files: &Mutex<impl Iterator<Item = String>>) -> Option<String> {
    files.lock().unwrap_or_else(PoisonError::into_inner).next()
}
