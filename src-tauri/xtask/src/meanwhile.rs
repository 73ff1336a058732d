//! Programs that run while journeys wait for their pages, at the lowest priority, so that they take what the journeys
//! leave. What they say goes to a file and is passed on once they have ended: two outputs at once nobody can read.

use std::fs::{self, File};
use std::path::{Path, PathBuf};
use std::process::{Command, ExitStatus, Stdio};
use std::sync::Arc;
use std::sync::atomic::{AtomicBool, Ordering};
use std::thread::{self, JoinHandle};
use std::time::{Duration, Instant};

use crate::{Outcome, rooms, say, start};

/// How often is looked whether a program has ended, or is to be.
const OFTEN: Duration = Duration::from_millis(200);

/// A program and the name of its stage.
pub type Named = (&'static str, Command);

/// Programs on their way, one after the other. They end with this where nobody waited for them.
pub struct Meanwhile {
    stop: Arc<AtomicBool>,
    running: Option<JoinHandle<Vec<Ended>>>,
}

/// What came of one of them.
pub struct Ended {
    /// The stage it is.
    pub name: &'static str,
    /// How long it took, wall clock.
    pub time: Duration,
    shown: String,
    log: PathBuf,
    outcome: Outcome<()>,
}

impl Meanwhile {
    /// Begins.
    pub fn begin(programs: Vec<Named>) -> Self {
        for (name, command) in &programs {
            say::step(&format!("stage {name} begins meanwhile: {}", start::shown(command)));
        }
        let stop = Arc::new(AtomicBool::new(false));
        let told = Arc::clone(&stop);
        let run = move || programs.into_iter().map(|program| one(program, &told)).collect();
        Self { stop, running: Some(thread::spawn(run)) }
    }

    /// Waits for all of them.
    ///
    /// # Errors
    /// Their thread panicked.
    pub fn ended(mut self) -> Outcome<Vec<Ended>> {
        let running = self.running.take();
        running.map_or(Ok(Vec::new()), JoinHandle::join).map_err(|_| "what ran meanwhile panicked".to_owned())
    }
}

impl Drop for Meanwhile {
    fn drop(&mut self) {
        self.stop.store(true, Ordering::Relaxed);
        if let Some(running) = self.running.take() {
            let _ = running.join();
        }
    }
}

impl Ended {
    /// Passes on what it said, and whether it succeeded.
    ///
    /// # Errors
    /// It did not, with the name of its stage.
    pub fn told(self) -> Outcome<()> {
        say::step(&format!("stage {}, that ran meanwhile", self.name));
        say::step(&self.shown);
        let said = fs::read(&self.log).unwrap_or_default();
        String::from_utf8_lossy(&said).lines().for_each(say::line);
        self.outcome.map_err(|reason| format!("stage {}: {reason}", self.name))
    }
}

fn one((name, mut command): Named, stop: &AtomicBool) -> Ended {
    let begun = Instant::now();
    let log = rooms::top().join("target").join(format!("{name}.log"));
    let outcome = to_the_end(&mut command, &log, stop).and_then(|status| start::succeeded(&command, status));
    Ended { name, time: begun.elapsed(), shown: start::shown(&command), log, outcome }
}

fn to_the_end(command: &mut Command, log: &Path, stop: &AtomicBool) -> Outcome<ExitStatus> {
    let unwritable = |error: std::io::Error| format!("{}: {error}", log.display());
    log.parent().map_or(Ok(()), fs::create_dir_all).map_err(unwritable)?;
    let out = File::create(log).map_err(unwritable)?;
    command.stdin(Stdio::null()).stderr(out.try_clone().map_err(unwritable)?).stdout(out);
    let mut child = command.spawn().map_err(|error| start::unstartable(command, &error))?;
    loop {
        if stop.load(Ordering::Relaxed) {
            let _ = child.kill();
        }
        match child.try_wait() {
            Ok(Some(status)) => return Ok(status),
            Ok(None) => thread::sleep(OFTEN),
            Err(error) => return Err(start::unstartable(command, &error)),
        }
    }
}

#[cfg(test)]
mod tests {
    use std::time::{Duration, Instant};

    use super::Meanwhile;
    use crate::start;

    #[test]
    fn what_fails_meanwhile_fails_with_the_name_of_its_stage() {
        let programs = [("meanwhile-well", "exit 0"), ("meanwhile-ill", "exit 3")];
        let programs = programs.map(|(name, script)| (name, start::program("sh", &["-c", script])));
        let ended = Meanwhile::begin(programs.into()).ended().unwrap();
        let told: Vec<_> = ended.into_iter().map(|one| (one.name, one.told())).collect();
        assert_eq!(told[0], ("meanwhile-well", Ok(())));
        assert!(
            told[1].1.as_ref().is_err_and(|reason| reason.starts_with("stage meanwhile-ill: sh ")),
            "{told:?}"
        );
    }

    #[test]
    fn what_nobody_waits_for_ends() {
        let begun = Instant::now();
        drop(Meanwhile::begin(vec![("meanwhile-long", start::program("sleep", &["60"]))]));
        assert!(begun.elapsed() < Duration::from_secs(30));
    }
}
