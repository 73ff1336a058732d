//! `cargo xtask numbers`: the page that lists every number of the data with its basis, written by the test that also
//! holds it to the data.

use crate::{Outcome, start};

/// Runs the command.
pub fn run() -> Outcome<()> {
    let words = ["test", "--workspace", "--test", "suite", "the_page_of_numbers_is_that_of_the_data"];
    start::to_the_end(start::cargo(&words).env("STEADY_WRITE_NUMBERS", "1"))
}
