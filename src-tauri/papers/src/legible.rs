//! Text that the embedded fonts can print and the PDF standards allow.
//!
//! The standards forbid the box a font shows for a missing glyph, and the typesetter refuses the whole
//! paper over one. So a character without a glyph prints as U+FFFD, the sign for exactly that. The
//! attached record keeps what was typed.

use serde_json::Value;

use crate::world::Shelf;

const MISSING: char = '\u{FFFD}';
/// Marks stacked on one letter beyond this climb into the lines above.
const MARKS_PER_LETTER: usize = 2;
/// Empty lines in a row beyond this only push the rest off the page.
const NEWLINES_IN_A_ROW: usize = 2;

/// Every string in `value`, made legible.
pub(crate) fn make_legible(value: Value, shelf: &Shelf) -> Value {
    match value {
        Value::String(text) => Value::String(legible(&text, shelf)),
        Value::Array(all) => all.into_iter().map(|one| make_legible(one, shelf)).collect(),
        Value::Object(all) => all.into_iter().map(|(name, one)| (name, make_legible(one, shelf))).collect(),
        Value::Null | Value::Bool(_) | Value::Number(_) => value,
    }
}

fn legible(text: &str, shelf: &Shelf) -> String {
    let mut out = String::with_capacity(text.len());
    let (mut marks, mut newlines) = (0, 0);
    for c in text.replace("\r\n", "\n").chars() {
        let Some(c) = printable(c, shelf) else { continue };
        marks = if is_mark(c) { marks + 1 } else { 0 };
        newlines = if c == '\n' { newlines + 1 } else { 0 };
        if marks <= MARKS_PER_LETTER && newlines <= NEWLINES_IN_A_ROW {
            out.push(c);
        }
    }
    out
}

/// What is printed for `c`; `None` for what has no look of its own.
fn printable(c: char, shelf: &Shelf) -> Option<char> {
    match c {
        '\n' | '\r' | '\u{0B}' | '\u{0C}' | '\u{85}' | '\u{2028}' | '\u{2029}' => Some('\n'),
        '\t' => Some(' '),
        _ if is_invisible(c) => None,
        // Private characters mean nothing outside the font that has them, and the standards forbid them.
        '\u{E000}'..='\u{F8FF}' => Some(MISSING),
        // Put in place of a picture by other programs; it has a glyph, yet stands for nothing here.
        '\u{FFFC}' => Some(MISSING),
        _ if shelf.has_glyph(c) => Some(c),
        _ => Some(MISSING),
    }
}

/// Controls, joiners, variation selectors and the marks that turn the reading direction. The last would
/// let a sentence on paper read differently from the sentence recorded.
fn is_invisible(c: char) -> bool {
    c.is_control()
        || matches!(c,
            '\u{AD}' | '\u{34F}' | '\u{61C}' | '\u{180B}'..='\u{180F}' | '\u{200B}'..='\u{200F}'
            | '\u{202A}'..='\u{202E}' | '\u{2060}'..='\u{206F}' | '\u{FE00}'..='\u{FE0F}' | '\u{FEFF}'
            | '\u{FFF9}'..='\u{FFFB}' | '\u{FFFE}' | '\u{FFFF}' | '\u{E0000}'..='\u{E0FFF}')
}

/// Combining marks of the scripts the fonts have.
fn is_mark(c: char) -> bool {
    matches!(c,
        '\u{300}'..='\u{36F}' | '\u{483}'..='\u{489}' | '\u{1AB0}'..='\u{1AFF}'
        | '\u{1DC0}'..='\u{1DFF}' | '\u{20D0}'..='\u{20FF}' | '\u{FE20}'..='\u{FE2F}')
}

#[cfg(test)]
mod tests {
    use super::legible;
    use crate::world::Shelf;

    #[track_caller]
    fn check(text: &str, expected: &str) {
        let shelf = Shelf::open().expect("fonts");
        assert_eq!(legible(text, &shelf), expected);
    }

    #[test]
    fn ordinary_text_stays_as_it_is() {
        for text in
            ["No play felt. 700–800 rpm, 0.2 mm", "#strong[$x$] *a* \\ <b>", "Grüße, Łódź, Ωμέγα, Привет"]
        {
            check(text, text);
        }
    }

    #[test]
    fn a_character_without_glyph_prints_as_a_replacement() {
        check("car \u{1F697} ok", "car \u{FFFD} ok");
        check("\u{65E5}\u{672C}", "\u{FFFD}\u{FFFD}");
        check("\u{E000}", "\u{FFFD}");
    }

    #[test]
    fn direction_marks_and_controls_are_left_out() {
        check("a\u{202E}b\u{0}c\u{FEFF}d\u{200D}e", "abcde");
    }

    #[test]
    fn stacks_of_marks_and_empty_lines_are_cut_short() {
        check("z\u{300}\u{301}\u{302}\u{303}z", "z\u{300}\u{301}z");
        check("a\r\n\n\n\n\u{2028}b\tc", "a\n\nb c");
    }
}
