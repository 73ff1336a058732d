//! Opens the desk's page in the person's browser, where there is one.

use std::path::Path;
use std::process::{Command, Stdio};

/// The opener of each desktop; `start` of Windows is a word of its shell.
#[cfg(target_os = "macos")]
const OPENER: &[&str] = &["open"];
#[cfg(target_os = "windows")]
const OPENER: &[&str] = &["cmd", "/C", "start", ""];
#[cfg(not(any(target_os = "macos", target_os = "windows")))]
const OPENER: &[&str] = &["xdg-open"];

/// Asks for a page to be opened. Without a browser the person still has the printed line.
pub fn open(page: &Path) {
    let Some((program, words)) = OPENER.split_first() else { return };
    let opener = Command::new(program)
        .args(words)
        .arg(page)
        .stdin(Stdio::null())
        .stdout(Stdio::null())
        .stderr(Stdio::null())
        .spawn();
    if let Ok(mut opener) = opener {
        // Waited for, so that no ended process stays behind while the desk runs.
        std::thread::spawn(move || opener.wait());
    }
}
