//! `cargo xtask run`: from a clean clone to the demo workshop's visits on the screen.

use std::env;

use crate::{Outcome, debian, demo, node, rooms, start};

/// Runs the command.
pub fn run(words: &[&str]) -> Outcome<()> {
    let how = How::read(words)?;
    node::check()?;
    node::install("ui")?;
    start::to_the_end(&mut node::npm("ui", &["run", "build"]))?;
    if how.window { open_window() } else { serve(&how) }
}

#[derive(Debug, Default, PartialEq, Eq)]
struct How<'a> {
    window: bool,
    no_open: bool,
    port: Option<&'a str>,
}

impl<'a> How<'a> {
    fn read(words: &[&'a str]) -> Outcome<Self> {
        let mut how = Self::default();
        let mut words = words.iter();
        while let Some(word) = words.next() {
            match *word {
                "--window" => how.window = true,
                "--no-open" => how.no_open = true,
                "--port" => how.port = Some(*words.next().ok_or("--port needs a number")?),
                _ => return Err("run takes --window, --port N and --no-open".to_owned()),
            }
        }
        Ok(how)
    }
}

fn serve(how: &How<'_>) -> Outcome<()> {
    start::to_the_end(&mut start::cargo(&["build", "--workspace", "--bin", "steady"]))?;
    let demo = demo::folder()?;
    let mut steady = start::program(&rooms::program("steady")?.to_string_lossy(), &["serve", "--data"]);
    steady.arg(demo);
    if let Some(port) = how.port {
        steady.args(["--port", port]);
    }
    if how.no_open {
        steady.arg("--no-open");
    }
    start::to_the_end(&mut steady)
}

fn open_window() -> Outcome<()> {
    if cfg!(target_os = "linux") {
        if env::var_os("DISPLAY").is_none() && env::var_os("WAYLAND_DISPLAY").is_none() {
            return Err("there is no display for a window\n\
                use the browser instead: cargo xtask run\n\
                or a display in memory: apt-get install xvfb xauth && xvfb-run cargo xtask run --window"
                .to_owned());
        }
        debian::ensure(debian::WINDOW)?;
    }
    start::to_the_end(&mut start::cargo(&[
        "build",
        "--workspace",
        "--bin",
        "steady",
        "--bin",
        "steady-app",
    ]))?;
    let demo = demo::folder()?;
    let app = rooms::program("steady-app")?;
    start::to_the_end(start::program(&app.to_string_lossy(), &[]).env("STEADY_DATA", demo))
}

#[cfg(test)]
mod tests {
    use super::How;

    #[test]
    fn options_are_read_and_others_refused() {
        let how = How::read(&["--port", "8123", "--no-open"]).expect("known options");
        assert_eq!(how, How { window: false, no_open: true, port: Some("8123") });
        assert!(How::read(&["--window"]).expect("known options").window);
        assert!(How::read(&["--port"]).is_err());
        assert!(How::read(&["--fast"]).is_err());
    }
}
