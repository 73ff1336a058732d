//! How hard the note reads: the Flesch-Kincaid grade, 0.39 words a sentence + 11.8 syllables a word - 15.59.
//!
//! Formula: Kincaid, Fishburne, Rogers & Chissom (1975), Navy Research Branch Report 8-75, quoted by the US
//! Department of Veterans Affairs, HSR&D. The syllables are counted by rule: groups of vowels less a silent
//! ending. A silent vowel inside a word ("movement") counts as one too many, two vowels spoken apart ("create")
//! as one too few.

use crate::model::rating::Word;
use crate::words::Words;

use super::example::{CAUSES, RULES, choose, likely, opened, rated, unanswer};
use super::note::Note;
use super::write_note::build_note;

/// Highest grade a note may have.
const HIGHEST: f64 = 8.0;

#[derive(Debug, Clone, Copy, Default, PartialEq, Eq)]
struct Counts {
    sentences: usize,
    words: usize,
    syllables: usize,
}

fn counts(text: &str) -> Counts {
    let mut counts = Counts::default();
    let mut in_sentence = false;
    for token in text.split_whitespace() {
        let word: String = token.chars().filter(|sign| sign.is_alphabetic()).collect();
        if !word.is_empty() {
            counts.words += 1;
            counts.syllables += syllables(&word.to_lowercase());
            in_sentence = true;
        }
        if in_sentence && token.trim_end_matches(['"', ')']).ends_with(['.', '!', '?']) {
            counts.sentences += 1;
            in_sentence = false;
        }
    }
    counts.sentences += usize::from(in_sentence);
    counts
}

fn grade(text: &str) -> f64 {
    let Counts { sentences, words, syllables } = counts(text);
    let (sentences, words, syllables) = (sentences as f64, words as f64, syllables as f64);
    0.39 * words / sentences + 11.8 * syllables / words - 15.59
}

/// Groups of vowels, less a silent ending.
fn syllables(word: &str) -> usize {
    let letters: Vec<char> = word.chars().collect();
    let vowel = |at: usize| letters.get(at).is_some_and(|letter| "aeiouy".contains(*letter));
    let groups = (0..letters.len()).filter(|at| vowel(*at) && (*at == 0 || !vowel(at - 1))).count();
    groups.saturating_sub(usize::from(ends_silent(word))).max(1)
}

fn ends_silent(word: &str) -> bool {
    let before = |ending: &str| word.strip_suffix(ending).and_then(|stem| stem.chars().last());
    let consonant = |letter: char| !"aeiouy".contains(letter);
    if let Some(last) = before("e") {
        // table, fibre, metre: the ending is heard.
        let heard = ["ble", "cle", "dle", "fle", "gle", "kle", "ple", "tle", "zle", "bre", "tre"];
        return consonant(last) && !heard.iter().any(|ending| word.ends_with(ending));
    }
    if let Some(last) = before("ed") {
        return consonant(last) && !matches!(last, 't' | 'd');
    }
    before("es")
        .is_some_and(|last| consonant(last) && !matches!(last, 's' | 'x' | 'z' | 'h' | 'c' | 'g' | 'l'))
}

/// What an owner reads from top to bottom, without the car's data and the headings.
fn page(note: &Note) -> String {
    let mut parts = vec![format!("{}.", note.band.headline)];
    parts.extend(note.sections.iter().flat_map(|section| section.text.clone()));
    parts.push(note.receipt_text.clone());
    parts.join(" ")
}

#[track_caller]
fn check_syllables(word: &str, want: usize) {
    assert_eq!(syllables(word), want, "{word}");
}

#[test]
fn syllables_agree_with_the_ear() {
    for (word, want) in [
        ("car", 1),
        ("drive", 1),
        ("moved", 1),
        ("felt", 1),
        ("noise", 1),
        ("bearing", 2),
        ("engine", 2),
        ("needed", 2),
        ("fibre", 2),
        ("danger", 2),
        ("vehicle", 3),
        ("together", 3),
        ("workshop", 2),
    ] {
        check_syllables(word, want);
    }
}

/// The well-known sample on the platypus, published as 1 sentence, 13 words, 24 syllables, grade 11.3.
#[test]
fn grade_agrees_with_the_published_sample() {
    let sample = "The Australian platypus is seemingly a hybrid of a mammal and reptilian creature.";
    assert_eq!(counts(sample), Counts { sentences: 1, words: 13, syllables: 24 });
    assert_eq!(format!("{:.4}", grade(sample)), "11.2646");
}

#[test]
fn one_short_word_has_the_lowest_grade() {
    assert_eq!(format!("{:.2}", grade("Stop.")), "-3.40");
}

/// Every note that a rule and a cause can bring about, with checks left open and without.
fn every_note(words: &Words) -> Vec<(String, Note)> {
    let mut notes = Vec::new();
    for cause in CAUSES {
        let mut unrated = opened();
        unrated.sorting.causes = vec![likely(cause, 0.8)];
        notes.push((format!("unrated, {cause}"), build_note(&unrated, words)));
        for (rule, word) in RULES {
            let mut standing = rated(rule, word, cause);
            notes.push((format!("{rule}, {cause}"), build_note(&standing, words)));
            unanswer(&mut standing, "misfire-evidence");
            choose(&mut standing, "play-far-end", "unsure");
            if word == Word::Danger {
                unanswer(&mut standing, "turn-by-hand");
                standing.urgency.missing.push("turn-by-hand".to_owned());
            }
            notes.push((format!("{rule}, {cause}, checks open"), build_note(&standing, words)));
        }
    }
    notes
}

#[test]
fn every_note_reads_at_grade_eight_or_lower() {
    let words = Words::of("en").expect("English is shipped");
    let mut worst = f64::MIN;
    for (name, note) in every_note(words) {
        let (page, message) = (grade(&page(&note)), grade(&note.short_text));
        println!("{name}: page {page:.1}, message {message:.1}");
        assert!(page <= HIGHEST, "{name}: the page reads at grade {page:.1}");
        assert!(message <= HIGHEST, "{name}: the message reads at grade {message:.1}");
        worst = worst.max(page).max(message);
    }
    println!("highest: {worst:.1}");
}

#[test]
fn every_message_is_short_and_ends_whole() {
    let words = Words::of("en").expect("English is shipped");
    for (name, note) in every_note(words) {
        let length = note.short_text.chars().count();
        assert!(length <= 480, "{name}: {length} characters");
        assert!(note.short_text.ends_with('.'), "{name}: {}", note.short_text);
        assert!(!note.short_text.contains("://") && !note.short_text.contains("www."), "{name}");
    }
}
