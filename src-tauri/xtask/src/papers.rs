//! `cargo xtask papers`: finding and note of every demo visit, in every language and on both sheets, printed into
//! `target/papers` and read back by the suite's own test.

use crate::{Outcome, debian, rooms, say, start};

/// Runs the command.
pub fn run() -> Outcome<()> {
    if cfg!(target_os = "linux") {
        debian::ensure(debian::TESTS)?;
    }
    let words = ["test", "--workspace", "--test", "suite", "--", "demo_papers_are_sound"];
    start::to_the_end(start::cargo(&words).env("STEADY_PAPERS", "all"))?;
    say::line(&format!("The papers are in {}", rooms::top().join("target/papers").display()));
    Ok(())
}
