//! Set-up, run, test, bench, papers, screens, fuzz, phones, numbers and icons: `cargo xtask COMMAND`. Starts other programs and nothing else.
//!
//! Holds no checks of its own: tidy rules and stale bindings are ordinary tests of the suite. No
//! dependency either, so that the first thing a newcomer waits for is small.

mod bench;
mod debian;
mod demo;
mod fuzz;
mod icons;
mod journeys;
mod marathon;
mod meanwhile;
mod node;
mod numbers;
mod papers;
mod phones;
mod results;
mod rooms;
mod run;
mod say;
mod scratch;
mod screens;
mod start;
mod supply;
mod tally;
mod test;

use std::process::ExitCode;

/// Why a command stopped: one sentence, with what to do where something can be done.
pub type Outcome<T> = Result<T, String>;

const HELP: &str = "\
cargo xtask run [--window] [--port N] [--no-open]
    Builds everything, makes the demo workshop's visits, and opens them in a browser
    (or, with --window, in the app's own window).
cargo xtask test [STAGE...]
    Runs every test, or the named stages only.
cargo xtask test --reference
    Compares with general-purpose libraries from PyPI (needs Python 3.11 or later).
cargo xtask bench
    Measures, and writes the figures into tests/bench/RESULTS.md.
cargo xtask papers
    Prints finding and note of every demo visit in every language into target/papers, and checks them.
cargo xtask screens [--renew]
    Takes pictures of every screen into target/screens and compares them with the committed ones;
    with --renew, commits to them as they are.
cargo xtask fuzz [TARGET...]
    Runs every fuzz target of tests/fuzz, or the named ones, for a minute each.
cargo xtask marathon [KILLS [SECONDS]]
    Kills a recording process 10,000 times and runs every fuzz target for ten minutes, or as often and as long as said.
cargo xtask phones
    Type-checks the app for Android and the core for iOS, and holds the phones' projects to what the code uses.
cargo xtask numbers
    Writes src-tauri/core/data/NUMBERS.md: every number of the data with its basis.
cargo xtask icons
    Draws every icon size, the phones' too, from icons/steady.svg.";

fn main() -> ExitCode {
    let words: Vec<String> = std::env::args().skip(1).collect();
    let words: Vec<&str> = words.iter().map(String::as_str).collect();
    let outcome = match words.split_first() {
        Some((&"run", rest)) => run::run(rest),
        Some((&"test", rest)) => test::run(rest),
        Some((&"bench", [])) => bench::run(),
        Some((&"papers", [])) => papers::run(),
        Some((&"screens", rest)) => screens::run(rest),
        Some((&"fuzz", rest)) => fuzz::run(rest),
        Some((&"marathon", rest)) => marathon::run(rest),
        Some((&"phones", [])) => phones::run(),
        Some((&"numbers", [])) => numbers::run(),
        Some((&"icons", [])) => icons::run(),
        Some((&("help" | "--help" | "-h"), _)) | None => {
            say::line(HELP);
            Ok(())
        }
        Some(_) => Err(format!("there is no such command\n{HELP}")),
    };
    match outcome {
        Ok(()) => ExitCode::SUCCESS,
        Err(reason) => {
            say::error(&reason);
            ExitCode::FAILURE
        }
    }
}
