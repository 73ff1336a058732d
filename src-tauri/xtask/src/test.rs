//! `cargo xtask test`: every test there is, in stages; stops at the first that fails.
//!
//! Quick checks come first. Everything is a debug build in one target folder, and the programs that
//! the journeys drive are built in the same go as the tests, so that nothing is compiled twice. The phones are checked
//! while journeys run: those wait for a page most of the time.

use std::process::Command;
use std::time::{Duration, Instant};

use crate::meanwhile::{Meanwhile, Named};
use crate::scratch::Scratch;
use crate::tally::Tally;
use crate::{Outcome, debian, journeys, node, phones, say, start, supply};

type Stage = (&'static str, fn(&mut Tally) -> Outcome<()>);
type Check = (&'static str, fn() -> Command);

const STAGES: &[Stage] = &[
    ("packages", packages),
    ("supply", supply),
    ("screens", screens),
    ("style", style),
    ("form", form),
    ("build", build),
    ("suite", suite),
];

/// Stages that wait more than they work.
const JOURNEYS: &[Stage] = &[("browser", browser), ("window", window)];

/// Stages that run while journeys do, where there are any; else by themselves.
const MEANWHILE: &[Check] = &[("android", phones::android), ("ios", phones::ios)];

/// Runs the command; with names, only those stages; with `--reference` alone, the comparisons with
/// libraries that are not ours, which are no part of the tests.
pub fn run(names: &[&str]) -> Outcome<()> {
    if names == ["--reference"] {
        return start::to_the_end(&mut start::program("sh", &["tests/reference/run.sh"]));
    }
    let known = || {
        STAGES.iter().chain(JOURNEYS).map(|(name, _)| *name).chain(MEANWHILE.iter().map(|(name, _)| *name))
    };
    if let Some(odd) = names.iter().find(|name| known().all(|stage| stage != **name)) {
        let known: Vec<&str> = known().collect();
        return Err(format!("there is no stage {odd}; the stages are {}", known.join(", ")));
    }
    let mut times = Times { begun: Instant::now(), stages: Vec::new() };
    let mut tally = Tally::default();
    let outcome = all(|name| names.is_empty() || names.contains(&name), &mut times, &mut tally);
    report(&times, &tally);
    outcome
}

/// When the run began, and how long each stage took.
struct Times {
    begun: Instant,
    stages: Vec<(&'static str, Duration)>,
}

/// The chosen stages, until one fails.
fn all(chosen: impl Fn(&str) -> bool, times: &mut Times, tally: &mut Tally) -> Outcome<()> {
    let of = |stages: &'static [Stage]| stages.iter().filter(|(name, _)| chosen(name));
    of(STAGES).try_for_each(|stage| run_stage(stage, times, tally))?;
    let checks: Vec<Named> =
        MEANWHILE.iter().filter(|(name, _)| chosen(name)).map(|(name, program)| (*name, program())).collect();
    if !checks.is_empty() {
        phones::packages()?;
    }
    if of(JOURNEYS).next().is_none() {
        return checks
            .into_iter()
            .try_for_each(|(name, mut program)| timed(name, times, || start::to_the_end(&mut program)));
    }
    // Ended by a stage that fails before they have: what they found is not waited for then.
    let checks = Meanwhile::begin(checks);
    of(JOURNEYS).try_for_each(|stage| run_stage(stage, times, tally))?;
    let ended = checks.ended()?;
    times.stages.extend(ended.iter().map(|one| (one.name, one.time)));
    // Each is told, also after one that failed.
    ended.into_iter().map(|one| one.told()).fold(Ok(()), Outcome::and)
}

fn run_stage((name, stage): &Stage, times: &mut Times, tally: &mut Tally) -> Outcome<()> {
    timed(name, times, || stage(tally))
}

fn timed(name: &'static str, times: &mut Times, stage: impl FnOnce() -> Outcome<()>) -> Outcome<()> {
    say::step(&format!("stage {name}"));
    let begun = Instant::now();
    let outcome = stage().map_err(|reason| format!("stage {name}: {reason}"));
    times.stages.push((name, begun.elapsed()));
    outcome
}

/// What ran meanwhile has a time of its own, which the whole does not add.
fn report(times: &Times, tally: &Tally) {
    say::step("stage times");
    for (name, time) in &times.stages {
        say::line(&format!("{name:<10}{:>7.1} s", time.as_secs_f64()));
    }
    say::line(&format!("{:<10}{:>7.1} s", "total", times.begun.elapsed().as_secs_f64()));
    say::line(&tally.to_string());
    supply::say_unchecked();
}

fn packages(_: &mut Tally) -> Outcome<()> {
    if cfg!(target_os = "linux") {
        debian::ensure(&[debian::WINDOW, debian::TESTS, debian::PHONES].concat())?;
    }
    node::check()?;
    supply::NPM.into_iter().try_for_each(node::install)
}

fn supply(_: &mut Tally) -> Outcome<()> {
    supply::run()
}

fn screens(tally: &mut Tally) -> Outcome<()> {
    start::to_the_end(&mut node::npm("ui", &["run", "check"]))?;
    start::counted(&mut node::npm("ui", &["test"]), tally)?;
    start::to_the_end(&mut node::npm("ui", &["run", "build"]))
}

fn style(_: &mut Tally) -> Outcome<()> {
    start::to_the_end(&mut node::npm("ui", &["run", "style"]))
}

fn form(_: &mut Tally) -> Outcome<()> {
    start::to_the_end(&mut start::cargo_as_it_is(&["fmt", "--all", "--check"]))
}

/// Lints and builds in one go: Clippy's driver is the compiler itself with more lints, so that what is tested is what
/// was linted, and no dependency is compiled once to be checked and once more to be linked.
fn build(_: &mut Tally) -> Outcome<()> {
    start::to_the_end(&mut linted(&["build", "--workspace", "--all-targets"]))
}

fn suite(tally: &mut Tally) -> Outcome<()> {
    in_memory(linted(&["test", "--workspace", "--no-fail-fast"]), tally)
}

/// A cargo command that compiles the crates of this workspace by Clippy's driver, every warning an error.
fn linted(words: &[&str]) -> Command {
    let mut command = start::cargo(words);
    // How `cargo clippy` itself hands words on to its driver.
    let words = ["--deny", "warnings", ""].join("__CLIPPY_HACKERY__");
    command.env("RUSTC_WORKSPACE_WRAPPER", "clippy-driver").env("CLIPPY_ARGS", words);
    command
}

fn browser(tally: &mut Tally) -> Outcome<()> {
    // A journey waits for a page most of the time; each file has a desk and a browser of its own.
    let at_a_time = std::thread::available_parallelism().map_or(1, usize::from);
    journeys::run("tests/browser/", &[], at_a_time, tally)
}

fn window(tally: &mut Tally) -> Outcome<()> {
    let display = ["xvfb-run", "--auto-servernum", "--server-args=-screen 0 1280x1024x24"];
    journeys::run("tests/window/", &display, 1, tally)
}

/// Runs and counts tests that throw away what they write.
fn in_memory(mut command: Command, tally: &mut Tally) -> Outcome<()> {
    let scratch = Scratch::in_memory();
    scratch.lent_to(&mut command);
    start::counted(&mut command, tally)
}
