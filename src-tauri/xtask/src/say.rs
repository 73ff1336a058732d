//! What xtask tells the person at the terminal; the one place that writes to it.

use std::io::{Write as _, stderr, stdout};

/// One line on standard output. A closed pipe is no error.
pub fn line(text: &str) {
    let _ = writeln!(stdout().lock(), "{text}").and_then(|()| stdout().flush());
}

/// A step that begins.
pub fn step(text: &str) {
    line(&format!("== {text}"));
}

/// Why xtask stops.
pub fn error(text: &str) {
    let _ = writeln!(stderr().lock(), "xtask: {text}");
}
