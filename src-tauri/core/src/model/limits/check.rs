//! The few questions that every field is asked.

use std::ops::RangeInclusive;

/// A field that is beyond its bound, by its name in the entry; never by its value.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
#[error("{0} is beyond what is recorded")]
pub struct Beyond(pub &'static str);

/// The outcome of a check.
pub type Checked = Result<(), Beyond>;

/// `field` is beyond its bound unless `fits`.
pub fn ensure(field: &'static str, fits: bool) -> Checked {
    if fits { Ok(()) } else { Err(Beyond(field)) }
}

/// At most so many characters, each of which shows as itself.
pub fn text(field: &'static str, text: &str, most: usize) -> Checked {
    // A character takes four bytes at most: what is far too long is not counted.
    ensure(field, text.len() <= 4 * most && text.chars().count() <= most)?;
    ensure(field, is_printable(text, most > super::LINE))
}

/// Whether no character moves, hides or turns round what stands beside it on a screen or a terminal. A text of one
/// line holds none that ends it.
pub fn is_printable(text: &str, has_lines: bool) -> bool {
    let ends_a_line = |character| matches!(character, '\n' | '\r' | '\t') && has_lines;
    // Embeddings and overrides, Unicode Standard Annex 9, 2.1 and 2.2; marks and isolates stay.
    let turns = |character| matches!(character, '\u{202a}'..='\u{202e}' | '\u{2028}' | '\u{2029}');
    text.chars().all(|character| ends_a_line(character) || !(character.is_control() || turns(character)))
}

/// At most so many characters, if there is a text.
pub fn maybe_text(field: &'static str, value: Option<&String>, most: usize) -> Checked {
    value.map_or(Ok(()), |value| text(field, value, most))
}

/// An id: some characters on one line.
pub fn id(field: &'static str, id: &str) -> Checked {
    text(field, id, super::ID)?;
    ensure(field, !id.is_empty() && !id.chars().any(char::is_control))
}

/// A SHA-256 in lower-case hexadecimal digits.
pub fn hash(field: &'static str, hash: &str) -> Checked {
    let digits = hash.bytes().all(|byte| matches!(byte, b'0'..=b'9' | b'a'..=b'f'));
    ensure(field, hash.len() == 64 && digits)
}

/// At most so many.
pub fn count<T>(field: &'static str, list: &[T], most: usize) -> Checked {
    ensure(field, list.len() <= most)
}

/// A number within its range; what is not a number is in none.
pub fn number<T: PartialOrd>(field: &'static str, number: T, range: &RangeInclusive<T>) -> Checked {
    ensure(field, range.contains(&number))
}

/// A number within its range, if there is one.
pub fn maybe_number<T: PartialOrd>(
    field: &'static str,
    value: Option<T>,
    range: &RangeInclusive<T>,
) -> Checked {
    value.map_or(Ok(()), |value| number(field, value, range))
}
