//! What the binary tells the person at the terminal; the one place that writes to it.
//!
//! A closed pipe (`steady replay ... | head`) is no error: nobody is left to tell.

use std::io::{Write as _, stderr, stdout};

use steady_core::app::failure::Failure;

/// One line on standard output.
pub fn line(text: &str) {
    let _ = writeln!(stdout().lock(), "{text}").and_then(|()| stdout().flush());
}

/// One line on standard error, for something that is not an answer.
pub fn aside(text: &str) {
    let _ = writeln!(stderr().lock(), "{text}");
}

/// A line on standard error that the next one is written over, until the last.
pub fn over(text: &str, last: bool) {
    let end = if last { "\n" } else { "" };
    let _ = write!(stderr().lock(), "\r{text}{end}").and_then(|()| stderr().flush());
}

/// A failure on standard error: `code: message`, and below it what to do.
pub fn failure(failure: &Failure) {
    aside(&format!("{}: {}\n{}", failure.code, failure.message, failure.help));
}
