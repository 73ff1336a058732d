//! The binary `steady`: a loopback desk for a browser, and the command line.
//!
//! Holds no rule of the trade and no SQL: every request goes to [`steady_core::app::Steady`] as it
//! came. The phone app's shell, the other way in, is the folder above.

mod args;
mod backup;
mod bore;
mod devices;
mod fault;
mod fit;
mod gauge;
mod handover;
mod house;
mod input;
mod manual;
mod out;
mod outcome;
mod quoted;
mod replay;
mod say;
mod serve;
mod sorted;
mod workshop;

use std::process::ExitCode;

use args::{Asked, Command};
use steady_core::app::failure::Failure;

/// Status of everything refused: bad arguments, bad input, a folder that cannot be used.
const REFUSED: u8 = 2;

fn main() -> ExitCode {
    fault::keep_panics_short();
    match args::read(std::env::args_os()).and_then(answer) {
        Ok(()) => ExitCode::SUCCESS,
        Err(failure) => {
            say::failure(&failure);
            ExitCode::from(REFUSED)
        }
    }
}

fn answer(asked: Asked) -> Result<(), Failure> {
    match asked {
        Asked::Run(command) => run(command),
        Asked::Say(text) => {
            say::line(text.trim_end());
            Ok(())
        }
    }
}

fn run(command: Command) -> Result<(), Failure> {
    match command {
        Command::Serve(how) => serve::run(&how),
        Command::Replay(how) => replay::run(&how),
        Command::Bore(how) => bore::measure(&how),
        Command::Skim(how) => bore::plan(&how),
        Command::Gauge(how) => gauge::run(&how),
        Command::Fit(how) => fit::run(&how),
        Command::Handover(task) => handover::run(&task),
        Command::Devices(task) => devices::run(&task),
        Command::Outcome(how) => outcome::run(&how),
        Command::Sorted(how) => sorted::run(&how),
        Command::Workshop(how) => workshop::run(&how),
        Command::Completions { shell } => {
            manual::completions(shell);
            Ok(())
        }
        Command::Manual { folder } => manual::pages(&folder),
        Command::Notices => serve::notices(),
    }
}
