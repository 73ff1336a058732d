//! Failures that arise at the desk itself, before or after the core is asked.
//!
//! The same three parts as the core's, so a screen or a script reads them alike.

use std::io;
use std::panic;

use steady_core::app::failure::Failure;

use crate::say;

/// Builds a failure.
pub fn failure(code: &str, message: impl Into<String>, help: &str) -> Failure {
    Failure { code: code.to_owned(), message: message.into(), help: help.to_owned(), field: None }
}

/// A fault of ours rather than of the input.
pub fn internal() -> Failure {
    failure("internal", "something went wrong inside Steady", "Start Steady again; nothing recorded is lost.")
}

/// The system's own words for an error, without the path it happened at.
pub fn cause(error: &io::Error) -> String {
    match error.kind() {
        io::ErrorKind::NotFound => "there is no such file or folder".to_owned(),
        kind => kind.to_string(),
    }
}

/// Replaces the usual panic report, which would print values a person typed.
pub fn keep_panics_short() {
    panic::set_hook(Box::new(|panic| {
        let place = panic.location().map_or_else(String::new, |at| format!(" ({}:{})", at.file(), at.line()));
        say::note(&format!("internal: something went wrong inside Steady{place}"));
    }));
}
