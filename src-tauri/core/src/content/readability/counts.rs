//! What the reading measures count in a text: sentences, words, syllables, long and short words.

use super::syllables::Rule;

/// Counts of one text.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq)]
pub struct Counts {
    /// Runs of words up to a full stop, exclamation or question mark.
    pub sentences: usize,
    /// Runs of letters between spaces; a number alone is none.
    pub words: usize,
    /// Syllables of all words.
    pub syllables: usize,
    /// Words of one syllable.
    pub of_one: usize,
    /// Words of three syllables or more.
    pub of_three: usize,
    /// Words of more than six letters.
    pub long: usize,
}

/// Counts a text, with the rule for syllables of its language.
pub fn counts(text: &str, syllables: Rule) -> Counts {
    let mut counts = Counts::default();
    let mut in_sentence = false;
    for token in text.split_whitespace() {
        let word: String = token.chars().filter(|sign| sign.is_alphabetic()).collect();
        if !word.is_empty() {
            let spoken = syllables(&word.to_lowercase());
            counts.words += 1;
            counts.syllables += spoken;
            counts.of_one += usize::from(spoken == 1);
            counts.of_three += usize::from(spoken >= 3);
            counts.long += usize::from(word.chars().count() > 6);
            in_sentence = true;
        }
        if in_sentence && token.trim_end_matches(['"', ')', '»', '“']).ends_with(['.', '!', '?']) {
            counts.sentences += 1;
            in_sentence = false;
        }
    }
    counts.sentences += usize::from(in_sentence);
    counts
}
