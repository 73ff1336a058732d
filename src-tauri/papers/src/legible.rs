//! Text that the embedded fonts can print and the PDF standards allow.
//!
//! The standards forbid the box a font shows for a missing glyph, and the typesetter refuses the whole
//! paper over one. So a run of characters without a glyph prints as "[…]", and the paper says once what
//! that means. The attached record keeps what was typed.

use serde_json::Value;
use unicode_normalization::char::is_combining_mark;

use crate::world::{PICTOGRAPHS, Resources};

/// In place of a run of characters that no font here has.
const MISSING: &str = "[…]";
/// Marks stacked on one letter beyond this climb into the lines above.
const MARKS_PER_LETTER: usize = 2;
/// The marks round a value that keeps its own order in a sentence (`words/isolate.rs` in the core).
const OPEN: char = '\u{2068}';
const CLOSE: char = '\u{2069}';
/// Values within values, at most.
const DEPTH: usize = 8;
/// Empty lines in a row beyond this only push the rest off the page.
const NEWLINES_IN_A_ROW: usize = 2;

/// Every string in `value`, made legible, and whether something had to be replaced.
pub(crate) fn make_legible(value: Value, resources: &Resources) -> (Value, bool) {
    let mut replaced = false;
    let value = walk(value, resources, &mut replaced);
    (value, replaced)
}

fn walk(value: Value, resources: &Resources, replaced: &mut bool) -> Value {
    match value {
        Value::String(text) => {
            let (text, missing) = legible(&text, resources);
            *replaced |= missing;
            Value::String(text)
        }
        Value::Array(all) => all.into_iter().map(|one| walk(one, resources, replaced)).collect(),
        Value::Object(all) => {
            all.into_iter().map(|(name, one)| (name, walk(one, resources, replaced))).collect()
        }
        Value::Null | Value::Bool(_) | Value::Number(_) => value,
    }
}

fn legible(text: &str, resources: &Resources) -> (String, bool) {
    let mut out = String::with_capacity(text.len());
    let (mut marks, mut newlines, mut replaced, mut base) = (0, 0, false, 0_u8);
    let apart = set_apart_soundly(text);
    for c in text.replace("\r\n", "\n").chars() {
        // The papers draw people in outline.
        if is_skin(c) && base & PICTOGRAPHS != 0 {
            continue;
        }
        if apart && matches!(c, OPEN | CLOSE) {
            out.push(c);
            base = 0;
            continue;
        }
        let (c, families) = match printable(c, resources) {
            Printed::Nothing => continue,
            Printed::Missing => {
                if !out.ends_with(MISSING) {
                    out.push_str(MISSING);
                }
                (replaced, base) = (true, 0);
                continue;
            }
            Printed::As(c, families) => (c, families),
        };
        marks = if is_combining_mark(c) { marks + 1 } else { 0 };
        newlines = if c == '\n' { newlines + 1 } else { 0 };
        // One font sets a letter with its marks: a mark that the letter's fonts lack would be a box.
        let set_together = marks == 0 || families & base != 0;
        if !set_together || marks > MARKS_PER_LETTER || newlines > NEWLINES_IN_A_ROW {
            continue;
        }
        base = if marks == 0 { families } else { base & families };
        out.push(c);
    }
    (out, replaced)
}

/// Whether the marks that set values apart in a sentence read from right to left are paired, and not nested deeper
/// than sentences are. They turn no letter round, and where they are not sound, none is kept.
fn set_apart_soundly(text: &str) -> bool {
    let mut depth = 0_usize;
    for c in text.chars() {
        match c {
            OPEN if depth == DEPTH => return false,
            OPEN => depth += 1,
            CLOSE if depth == 0 => return false,
            CLOSE => depth -= 1,
            _ => {}
        }
    }
    depth == 0
}

/// What is printed for a character.
enum Printed {
    /// It has no look of its own.
    Nothing,
    /// No font has it.
    Missing,
    /// This character, and the families that have it.
    As(char, u8),
}

fn printable(c: char, resources: &Resources) -> Printed {
    let plain = |c: char| Printed::As(c, u8::MAX);
    match c {
        '\n' | '\r' | '\u{0B}' | '\u{0C}' | '\u{85}' | '\u{2028}' | '\u{2029}' => plain('\n'),
        '\t' => plain(' '),
        _ if is_invisible(c) => Printed::Nothing,
        // Private characters mean nothing outside the font that has them, and the standards forbid them.
        '\u{E000}'..='\u{F8FF}' => Printed::Missing,
        // Put in place of a picture or a lost letter by other programs; they have a glyph, yet say nothing here.
        '\u{FFFC}' | '\u{FFFD}' => Printed::Missing,
        _ => match resources.families_with(c) {
            0 => Printed::Missing,
            families => Printed::As(c, families),
        },
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

/// The tone of a pictograph's skin, behind it.
fn is_skin(c: char) -> bool {
    matches!(c, '\u{1F3FB}'..='\u{1F3FF}')
}

#[cfg(test)]
mod tests {
    use super::{MISSING, legible};
    use crate::world::Resources;

    #[track_caller]
    fn check(text: &str, expected: &str) {
        let resources = Resources::open().expect("fonts");
        assert_eq!(legible(text, &resources), (expected.to_owned(), expected.contains(MISSING)));
    }

    #[test]
    fn ordinary_text_stays_as_it_is() {
        for text in [
            "No play felt. 700–800 rpm, 0.2 mm",
            "#strong[$x$] *a* \\ <b>",
            "Grüße, Łódź, Ωμέγα, Привет, Nguyễn",
            "\u{5E9}\u{5DC}\u{5D5}\u{5DD} \u{645}\u{631}\u{62D}\u{628}\u{627}",
            "car \u{1F697} ok",
            "thumb \u{1F44D} up",
            "\u{5E9}\u{5C1}\u{5B8}\u{5DC}\u{5D5}\u{5B9}\u{5DD} \u{645}\u{64F}",
        ] {
            check(text, text);
        }
    }

    #[test]
    fn characters_without_glyph_print_as_one_sign() {
        check("car \u{1F9FF}\u{20FFF} ok", "car \u{1F9FF}[…] ok");
        check("\u{65E5}\u{672C}", "[…]");
        check("\u{6771}\u{4EAC} \u{592A}\u{90CE}", "[…] […]");
        check("\u{E000}\u{FFFD}", "[…]");
        check("a\u{1F3FD}", "a[…]");
    }

    #[test]
    fn a_mark_that_its_letter_cannot_carry_is_left_out() {
        check("\u{5D0}\u{306}\u{5D1}a\u{64F}b\u{5B8}", "\u{5D0}\u{5D1}ab");
    }

    #[test]
    fn direction_marks_and_controls_are_left_out() {
        check("a\u{202E}b\u{0}c\u{FEFF}d\u{200D}e", "abcde");
    }

    #[test]
    fn values_stay_set_apart_where_the_marks_are_paired() {
        let paired = "\u{5D0} \u{2068}DR 2500\u{2069} \u{5D1}";
        check(paired, paired);
        check("a\u{2068}b", "ab");
        check("a\u{2069}b\u{2068}c\u{2069}", "abc");
        check(&"\u{2068}".repeat(9), "");
        check("\u{2066}a\u{2069}", "a");
    }

    #[test]
    fn stacks_of_marks_and_empty_lines_are_cut_short() {
        check("z\u{300}\u{301}\u{302}\u{303}z", "z\u{300}\u{301}z");
        check("a\r\n\n\n\n\u{2028}b\tc", "a\n\nb c");
    }
}
