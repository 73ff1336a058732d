//! What the binary tells the person at the terminal; the one place that writes to it.
//!
//! A closed pipe (`steady replay ... | head`) is no error: nobody is left to tell.

use std::borrow::Cow;
use std::io::{Write as _, stderr, stdout};

use steady_core::app::failure::Failure;
use steady_core::model::limits::is_printable;

/// Lines on standard output.
pub fn line(text: &str) {
    let _ = writeln!(stdout().lock(), "{}", shown(text)).and_then(|()| stdout().flush());
}

/// Lines on standard error, for something that is not an answer.
pub fn note(text: &str) {
    let _ = writeln!(stderr().lock(), "{}", shown(text));
}

/// What a name or a plate brought from elsewhere must not do to the terminal: move it, clear it, write over it.
fn shown(text: &str) -> Cow<'_, str> {
    if is_printable(text, true) && !text.contains('\r') {
        return Cow::Borrowed(text);
    }
    let shows = |character: char| {
        let lone = character.encode_utf8(&mut [0; 4]).to_owned();
        character != '\r' && is_printable(&lone, true)
    };
    text.chars().map(|character| if shows(character) { character } else { '\u{fffd}' }).collect()
}

/// A line on standard error that the next one is written over, until the last.
pub fn over(text: &str, last: bool) {
    let end = if last { "\n" } else { "" };
    let _ = write!(stderr().lock(), "\r{text}{end}").and_then(|()| stderr().flush());
}

/// A failure on standard error: `code: message`, and below it what to do.
pub fn failure(failure: &Failure) {
    note(&format!("{}: {}\n{}", failure.code, failure.message, failure.help));
}

#[cfg(test)]
mod tests {
    use super::shown;

    #[test]
    fn nothing_that_was_brought_reaches_into_the_terminal() {
        assert_eq!(shown("TR 4417\nSent by"), "TR 4417\nSent by");
        assert_eq!(
            shown("\u{1b}[2J\rTR\0 4417\u{202e}\u{9b}"),
            "\u{fffd}[2J\u{fffd}TR\u{fffd} 4417\u{fffd}\u{fffd}"
        );
    }
}
