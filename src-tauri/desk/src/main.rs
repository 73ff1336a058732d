//! The binary `steady`: a loopback desk for a browser, and the command line.
//!
//! Holds no rule of the trade and no SQL: every request goes to [`steady_core::app::Steady`] as it
//! came. The phone app's shell, the other way in, is the folder above.

mod args;
mod bore;
mod fault;
mod fit;
mod gauge;
mod handover;
mod house;
mod outcome;
mod replay;
mod say;
mod serve;
mod sorted;
mod workshop;

use std::process::ExitCode;

use args::Command;
use steady_core::app::failure::Failure;

/// Status of everything refused: bad arguments, bad input, a folder that cannot be used.
const REFUSED: u8 = 2;

fn main() -> ExitCode {
    fault::keep_panics_short();
    match args::read(lexopt::Parser::from_env()).and_then(run) {
        Ok(()) => ExitCode::SUCCESS,
        Err(failure) => {
            say::failure(&failure);
            ExitCode::from(REFUSED)
        }
    }
}

fn run(command: Command) -> Result<(), Failure> {
    match command {
        Command::Help => {
            say::line(args::HELP);
            Ok(())
        }
        Command::Version => {
            say::line(concat!("steady ", env!("CARGO_PKG_VERSION")));
            Ok(())
        }
        Command::Serve(how) => serve::run(&how),
        Command::Replay(how) => replay::run(&how),
        Command::Bore(how) => bore::measure(&how),
        Command::Skim(how) => bore::plan(&how),
        Command::Gauge(how) => gauge::run(&how),
        Command::Fit(how) => fit::run(&how),
        Command::Handover(how) => handover::run(&how),
        Command::Outcome(how) => outcome::run(&how),
        Command::Sorted(how) => sorted::run(&how),
        Command::Workshop(how) => workshop::run(&how),
    }
}
