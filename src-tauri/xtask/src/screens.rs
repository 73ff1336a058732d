//! `cargo xtask screens`: pictures of every screen at three sizes and in every theme into `target/screens`, compared
//! with the committed ones; and what a slow phone feels, as part of the bench.

use crate::{Outcome, debian, node, rooms, start};

/// Takes the pictures; `--renew` commits to them as they are.
pub fn run(words: &[&str]) -> Outcome<()> {
    let renew = match words {
        [] => None,
        ["--renew"] => Some("--renew"),
        _ => return Err("screens takes --renew alone".to_owned()),
    };
    built(&[])?;
    let mut command = start::program("node", &["tests/browser/screens.mjs"]);
    command.args(renew).env("STEADY_DESK", rooms::program("steady")?);
    start::to_the_end(&mut command)
}

/// Measures the screens in a browser with its processor slowed, against a release build; gives back what it printed.
pub fn speed() -> Outcome<Vec<String>> {
    built(&["--release"])?;
    let program = rooms::top().join("target/release").join(format!("steady{}", std::env::consts::EXE_SUFFIX));
    start::captured(start::program("node", &["tests/browser/speed.mjs"]).env("STEADY_DESK", program))
}

fn built(profile: &[&str]) -> Outcome<()> {
    if cfg!(target_os = "linux") {
        debian::ensure(debian::TESTS)?;
    }
    node::check()?;
    ["ui", "tests/browser"].into_iter().try_for_each(node::install)?;
    start::to_the_end(&mut node::npm("ui", &["run", "build"]))?;
    start::to_the_end(&mut start::cargo(&[&["build", "--workspace", "--bin", "steady"], profile].concat()))
}
