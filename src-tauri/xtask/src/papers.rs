//! `cargo xtask papers`: finding and note of every demo visit, in every language and on both sheets, printed into
//! `target/papers` with a picture of each page, and read back by the suite's own tests.

use crate::{Outcome, debian, rooms, say, start};

/// Runs the command.
pub fn run() -> Outcome<()> {
    if cfg!(target_os = "linux") {
        debian::ensure(debian::PAPERS)?;
    }
    let tests = ["demo_papers_are_sound", "names_keep_their_letters"];
    let words = [&["test", "--workspace", "--test", "suite", "--"], tests.as_slice()].concat();
    start::to_the_end(start::cargo(&words).env("STEADY_PAPERS", "all"))?;
    say::line(&format!("The papers are in {}", rooms::top().join("target/papers").display()));
    Ok(())
}
