//! `cargo xtask bench`: the measurements, written into `tests/bench/RESULTS.md`. They are no tests and never fail for
//! being slow.

use crate::{Outcome, results, screens, start};

/// Runs the command.
pub fn run() -> Outcome<()> {
    let mut figures = start::captured(&mut start::cargo(&["bench", "--workspace", "--bench", "bench"]))?;
    figures.extend(screens::speed()?);
    results::write("tests/bench/RESULTS.md", &figures)
}
