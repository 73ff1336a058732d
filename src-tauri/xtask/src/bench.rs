//! `cargo xtask bench`: the measurements. They are no tests and never fail for being slow.

use crate::{Outcome, screens, start};

/// Runs the command.
pub fn run() -> Outcome<()> {
    start::to_the_end(&mut start::cargo(&["bench", "--workspace", "--bench", "bench"]))?;
    screens::speed()
}
