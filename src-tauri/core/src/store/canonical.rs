//! An entry's body as it comes from outside: read, within its bounds, and spelled as this program spells it.
//!
//! A body has one spelling, so that nothing can hide in it that a screen does not show: no field twice, no
//! blanks, no number with digits that are dropped when it is read. A field that was added to a kind of entry is
//! left out where it says nothing (`skip_serializing_if`), and so the lines from before it stay canonical.

use crate::model::entry::EntryBody;
use crate::model::limits;

use super::ledger::LineFault;

/// Reads a body from outside.
///
/// # Errors
/// [`LineFault`]: no entry, one of a later program, one that is spelled otherwise, or one beyond its bounds.
pub fn read(text: &str) -> Result<EntryBody, LineFault> {
    let Ok(body) = serde_json::from_str::<EntryBody>(text) else {
        return Err(if has_kind(text) { LineFault::Newer } else { LineFault::Broken });
    };
    if !is_canonical(text, &body) {
        return Err(LineFault::Spelling);
    }
    limits::entry::check(&body).map_err(LineFault::Beyond)?;
    Ok(body)
}

/// Whether a body that this program cannot read says what kind it is: an entry of a later program.
fn has_kind(text: &str) -> bool {
    serde_json::from_str::<serde_json::Value>(text)
        .is_ok_and(|body| body.get("kind").is_some_and(|kind| kind.is_string()))
}

/// Whether a body is written as this program writes it. The JSON reader may read the last of 17 digits of a
/// number one off; such numbers are compared as the standard library reads them.
fn is_canonical(text: &str, body: &EntryBody) -> bool {
    let Ok(own) = serde_json::to_string(body) else { return false };
    if own == text {
        return true;
    }
    let (own, given) = (apart(&own), apart(text));
    own.len() == given.len() && own.iter().zip(&given).all(|(own, given)| own == given || is_same(own, given))
}

/// The same number, read one off, and written with no digit more than it needs.
fn is_same(own: &str, given: &str) -> bool {
    let (Ok(own), Ok(exact)) = (own.parse::<f64>(), given.parse::<f64>()) else { return false };
    let one_off = own.to_bits().abs_diff(exact.to_bits()) <= 1;
    one_off && serde_json::to_string(&exact).is_ok_and(|shortest| shortest == given)
}

/// A JSON text as its numbers and what stands between them.
fn apart(text: &str) -> Vec<&str> {
    let (mut parts, mut start) = (Vec::new(), 0);
    let (mut quoted, mut escaped, mut numeric) = (false, false, false);
    for (at, byte) in text.bytes().enumerate() {
        let number = !quoted && (numeric && matches!(byte, b'.' | b'e' | b'E' | b'+') || is_of_number(byte));
        if number != numeric {
            parts.extend(text.get(start..at));
            (start, numeric) = (at, number);
        }
        match byte {
            _ if escaped => escaped = false,
            b'\\' if quoted => escaped = true,
            b'"' => quoted = !quoted,
            _ => {}
        }
    }
    parts.extend(text.get(start..));
    parts
}

fn is_of_number(byte: u8) -> bool {
    byte.is_ascii_digit() || byte == b'-'
}

#[cfg(test)]
mod tests {
    use super::{apart, read};
    use crate::store::ledger::LineFault;

    #[track_caller]
    fn check(text: &str, expected: Result<(), LineFault>) {
        assert_eq!(read(text).map(|_| ()), expected, "{text}");
    }

    const LEFT: &str = r#"{"kind":"part-left","set":"lift","by":"Kim \"K\" Demo 4.50"}"#;

    #[test]
    fn body_has_one_spelling() {
        check(LEFT, Ok(()));
        check(&LEFT.replace(':', ": "), Err(LineFault::Spelling));
        check(&LEFT.replace("lift", "l\\u0069ft"), Err(LineFault::Spelling));
        check(r#"{"set":"lift","kind":"part-left","by":"Kim"}"#, Err(LineFault::Spelling));
        check(r#"{"kind":"part-left","set":"lift","by":"Kim","mood":1}"#, Err(LineFault::Newer));
        check(r#"{"by":"Kim"}"#, Err(LineFault::Broken));
    }

    #[test]
    fn number_has_one_spelling() {
        let reading = |number: &str| {
            format!(r#"{{"kind":"answered","step":"idle-speed","value":{number},"by":"Kim"}}"#)
        };
        for number in ["750.0", "0.1", "749.9999999999999", "1234.5678901234567", "1e-7", "5e-324"] {
            check(&reading(number), Ok(()));
        }
        for number in ["750", "750.00", "7.5e2", "0.1000000000000000055", "750.0E0", "-0.10"] {
            check(&reading(number), Err(LineFault::Spelling));
        }
        check(&reading("100000000.0"), Err(LineFault::Beyond(crate::model::limits::Beyond("value"))));
    }

    #[test]
    fn numbers_are_told_from_what_stands_between() {
        assert_eq!(
            apart(r#"{"a 1":[-1.5e-7,2],"b\"3":true}"#),
            [r#"{"a 1":["#, "-1.5e-7", ",", "2", r#"],"b\"3":true}"#]
        );
    }
}
