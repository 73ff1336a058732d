//! What a stranger's file says, as one short quoted word on a terminal: it can forge no line beside it.

/// Letters that are shown; what is longer ends in an ellipsis.
const LETTERS: usize = 40;

/// In quotes, with white space as one space, without control and format characters, and cut short.
pub fn quoted(text: &str) -> String {
    let seen: String = text.chars().filter(|letter| letter.is_whitespace() || !is_unseen(*letter)).collect();
    let line = seen.split_whitespace().collect::<Vec<_>>().join(" ").replace('"', "'");
    let cut: String = line.chars().take(LETTERS).collect();
    let rest = if cut.len() < line.len() { "…" } else { "" };
    format!("\"{cut}{rest}\"")
}

/// Control characters and those of Unicode's category Cf (Unicode 16, `UnicodeData.txt`).
fn is_unseen(letter: char) -> bool {
    letter.is_control()
        || matches!(letter,
            '\u{ad}' | '\u{600}'..='\u{605}' | '\u{61c}' | '\u{6dd}' | '\u{70f}' | '\u{890}'..='\u{891}'
            | '\u{8e2}' | '\u{180e}' | '\u{200b}'..='\u{200f}' | '\u{202a}'..='\u{202e}'
            | '\u{2060}'..='\u{206f}' | '\u{feff}' | '\u{fff9}'..='\u{fffb}' | '\u{110bd}' | '\u{110cd}'
            | '\u{13430}'..='\u{1343f}' | '\u{1bca0}'..='\u{1bca3}' | '\u{1d173}'..='\u{1d17a}'
            | '\u{e0001}' | '\u{e0020}'..='\u{e007f}')
}

#[cfg(test)]
mod tests {
    use super::quoted;

    #[test]
    fn a_word_of_a_file_forges_no_line() {
        assert_eq!(quoted("OT 5001"), "\"OT 5001\"");
        assert_eq!(quoted("A\n\r\t  \u{2028}\u{a0}B"), "\"A B\"");
        assert_eq!(quoted("A\u{2066}\u{61c}\u{200b}\u{ad}\u{e0041}\u{1b}B"), "\"AB\"");
        assert_eq!(quoted("A\" now B"), "\"A' now B\"", "it ends no quote");
        assert_eq!(quoted(&"x".repeat(41)), format!("\"{}…\"", "x".repeat(40)));
    }
}
