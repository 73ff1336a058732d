//! Keeps values in order within a sentence read from right to left: a plate, a signed number or a Latin name is set apart by
//! marks that do not show (Unicode Standard Annex 9, first strong isolate). `ui/src/isolate.ts` is the same for the screens,
//! and `tests/published/isolates.toml` holds both.

use fluent_bundle::FluentValue;

/// Opens what is set apart; its first letter says in which direction it is read.
const OPEN: char = '\u{2068}';
/// Ends what is set apart.
const CLOSE: char = '\u{2069}';

/// The value as it stands within a sentence read from right to left.
pub fn isolated(value: FluentValue<'_>) -> FluentValue<'_> {
    match value {
        FluentValue::String(text) if !keeps_order(&text) => format!("{OPEN}{text}{CLOSE}").into(),
        other => other,
    }
}

/// Letters read from right to left, blanks, plain numbers and rows of them keep their order by themselves. Everything else
/// is set apart, also a number written in groups, such as a plate: its groups would be read from the right.
fn keeps_order(text: &str) -> bool {
    let letters: Vec<char> = text.chars().collect();
    let digit = |at: Option<usize>| at.and_then(|at| letters.get(at)).is_some_and(char::is_ascii_digit);
    let between = |at: usize| digit(at.checked_sub(1)) && digit(at.checked_add(1));
    letters.iter().enumerate().all(|(at, letter)| match letter {
        '\u{591}'..='\u{5F4}' | '\u{620}'..='\u{64A}' | ';' | '0'..='9' => true,
        ' ' | '\u{A0}' => !between(at),
        '.' | ',' | ':' => between(at),
        _ => false,
    })
}

#[cfg(test)]
mod tests {
    use super::isolated;
    use fluent_bundle::FluentValue;

    #[derive(serde::Deserialize)]
    struct Rows {
        value: Vec<Row>,
    }

    #[derive(serde::Deserialize)]
    struct Row {
        text: String,
        apart: bool,
    }

    #[test]
    fn what_would_lose_its_order_is_set_apart() {
        let rows: Rows =
            toml::from_str(include_str!("../../../../tests/published/isolates.toml")).expect("TOML");
        assert_eq!(rows.value.len(), 16);
        for row in rows.value {
            let want = if row.apart { format!("\u{2068}{}\u{2069}", row.text) } else { row.text.clone() };
            assert_eq!(isolated(row.text.into()), FluentValue::from(want));
        }
    }
}
