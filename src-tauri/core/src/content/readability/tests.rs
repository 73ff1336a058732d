//! Every note that a rule and a cause can bring about keeps its language's limit; counts agree with the reference.

use serde_json::{Value, json};

use crate::model::rating::Word;
use crate::model::standing::RepairStage;
use crate::words::Words;

use super::super::example::{CAUSES, choose, every_rule, likely, opened, rated, unanswer};
use super::super::note::Note;
use super::super::write_note::build_note;
use super::counts::{Counts, counts};
use super::measures::{MEASURES, a_sentence, measures};
use super::syllables::{Rule, english, french, german, spanish};
use crate::model::workshop::Workshop;
use crate::words::for_tests::{checks, every_language};

/// What an owner reads from top to bottom, without the car's data and the headings.
fn page(note: &Note) -> String {
    let mut parts = vec![format!("{}.", note.band.headline)];
    parts.extend(note.sections.iter().flat_map(|section| section.text.clone()));
    parts.push(note.receipt_text.clone());
    parts.join(" ")
}

#[track_caller]
fn check_syllables(rule: Rule, words: &[(&str, usize)]) {
    for (word, want) in words {
        assert_eq!(rule(word), *want, "{word}");
    }
}

#[test]
fn syllables_agree_with_the_ear() {
    check_syllables(
        english,
        &[
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
        ],
    );
    check_syllables(
        german,
        &[
            ("auto", 2),
            ("welle", 2),
            ("lager", 2),
            ("geräusch", 2),
            ("straße", 2),
            ("reparatur", 4),
            ("motor", 2),
            ("quer", 1),
            ("bauer", 2),
            ("theorie", 3),
            ("kardanwelle", 4),
            ("werkstatt", 2),
        ],
    );
    check_syllables(
        spanish,
        &[
            ("coche", 2),
            ("rodamiento", 4),
            ("eje", 2),
            ("ruido", 2),
            ("avería", 4),
            ("aéreo", 4),
            ("que", 1),
            ("guía", 2),
            ("y", 1),
            ("cigüeñal", 3),
            ("estoy", 2),
            ("taller", 2),
        ],
    );
    check_syllables(
        french,
        &[
            ("voiture", 2),
            ("arbre", 1),
            ("roulement", 3),
            ("que", 1),
            ("pièce", 1),
            ("maïs", 2),
            ("réel", 2),
            ("panne", 1),
            ("moteur", 2),
            ("le", 1),
            ("route", 1),
            ("atelier", 3),
        ],
    );
}

/// The well-known sample on the platypus, published as 1 sentence, 13 words, 24 syllables, grade 11.3.
#[test]
fn grade_agrees_with_the_published_sample() {
    let sample = "The Australian platypus is seemingly a hybrid of a mammal and reptilian creature.";
    let found = counts(sample, english);
    assert_eq!((found.sentences, found.words, found.syllables), (1, 13, 24));
    assert_eq!(format!("{:.4}", MEASURES[0].of(sample)), "11.2646");
}

#[test]
fn a_count_sees_short_and_long_words() {
    let found = counts("Die Werkstatt prüft: 3 Teile. Reparatur!", german);
    let want = Counts { sentences: 2, words: 5, syllables: 10, of_one: 2, of_three: 1, long: 2 };
    assert_eq!(found, want);
}

/// Every note that a rule and a cause can bring about, with checks left open and without.
fn every_note(words: &Words) -> Vec<(String, Note)> {
    let mut notes = Vec::new();
    for cause in CAUSES {
        let mut unrated = opened();
        unrated.sorting.causes = vec![likely(cause, 0.8)];
        notes.push((format!("unrated, {cause}"), build_note(&unrated, &Workshop::default(), words)));
        unrated.repair = Some(RepairStage::TurnsFree);
        notes
            .push((format!("unrated, {cause}, repaired"), build_note(&unrated, &Workshop::default(), words)));
        for (rule, word) in every_rule() {
            let mut standing = rated(rule, word, cause);
            notes.push((format!("{rule}, {cause}"), build_note(&standing, &Workshop::default(), words)));
            standing.repair = Some(RepairStage::TurnsFree);
            notes.push((
                format!("{rule}, {cause}, repaired"),
                build_note(&standing, &Workshop::default(), words),
            ));
            standing.repair = None;
            unanswer(&mut standing, "misfire-evidence");
            choose(&mut standing, "play-far-end", "unsure");
            if word == Word::Danger {
                unanswer(&mut standing, "turn-by-hand");
                standing.urgency.limits.push("turn-by-hand".to_owned());
            }
            notes.push((
                format!("{rule}, {cause}, checks open"),
                build_note(&standing, &Workshop::default(), words),
            ));
        }
    }
    notes
}

#[test]
fn every_note_reads_at_grade_eight_or_lower() {
    for words in every_language() {
        let locale = words.locale();
        let notes = every_note(words);
        let unmeasured = checks(locale).no_formula.is_some_and(|why| !why.is_empty());
        assert_eq!(
            measures(locale).is_empty(),
            unmeasured,
            "{locale} has a measure, or says why it has none"
        );
        for measure in measures(locale) {
            let mut hardest: Option<f64> = None;
            for (name, note) in &notes {
                let (page, message) = (measure.of(&page(note)), measure.of(&note.short_text));
                println!("{locale}, {}, {name}: page {page:.1}, message {message:.1}", measure.name);
                assert!(measure.keeps(page), "{locale}, {name}: {} of the page is {page:.1}", measure.name);
                assert!(
                    measure.keeps(message),
                    "{locale}, {name}: {} of the message is {message:.1}",
                    measure.name
                );
                let harder = measure.harder(page, message);
                hardest = Some(hardest.map_or(harder, |before| measure.harder(before, harder)));
            }
            println!("{locale}, {}: hardest {:.1}", measure.name, hardest.expect("there are notes"));
        }
    }
}

/// No figure stands for eight years of school there; that sentences stay as short as the English ones is what can be held.
#[test]
fn a_note_without_a_formula_has_sentences_no_longer_than_in_english() {
    let english_notes = every_note(Words::of("en").expect("shipped"));
    for words in every_language().filter(|words| measures(words.locale()).is_empty()) {
        for ((name, note), (_, beside)) in every_note(words).iter().zip(&english_notes) {
            let [own, theirs] = [note, beside].map(|note| a_sentence(counts(&page(note), english)));
            assert!(
                own <= theirs,
                "{}, {name}: {own:.1} words a sentence, {theirs:.1} in English",
                words.locale()
            );
        }
    }
}

#[test]
fn every_message_is_short_and_ends_whole() {
    for words in every_language() {
        for (name, note) in every_note(words) {
            let (locale, length) = (words.locale(), note.short_text.chars().count());
            assert!(length <= 480, "{locale}, {name}: {length} characters");
            assert!(note.short_text.ends_with('.'), "{locale}, {name}: {}", note.short_text);
            assert!(
                !note.short_text.contains("://") && !note.short_text.contains("www."),
                "{locale}, {name}"
            );
        }
    }
}

/// Samples with our counts and figures, as `tests/reference/readability.py` reads them.
fn sample(locale: &str, text: &str) -> Value {
    let own = measures(locale);
    let syllables = own.first().expect("only measured languages have samples").syllables;
    let it = counts(text, syllables);
    let figures: serde_json::Map<String, Value> = own
        .iter()
        .map(|measure| (measure.name.to_owned(), format!("{:.4}", measure.of(text)).into()))
        .collect();
    let each: String = text
        .split_whitespace()
        .map(|token| token.chars().filter(|sign| sign.is_alphabetic()).collect::<String>().to_lowercase())
        .filter(|word| !word.is_empty())
        .map(|word| syllables(&word).to_string())
        .collect();
    json!({
        "locale": locale, "text": text, "sentences": it.sentences, "words": it.words, "syllables": it.syllables,
        "of_one": it.of_one, "of_three": it.of_three, "long": it.long, "syllables_each": each, "figures": figures,
    })
}

fn number(figure: &Value) -> f64 {
    figure.as_str().and_then(|figure| figure.parse().ok()).expect("a figure")
}

/// The reference holds texts of its own, so that a better sentence in a note does not make it stale.
#[test]
fn counts_and_figures_are_those_the_reference_confirmed() {
    let path = concat!(env!("CARGO_MANIFEST_DIR"), "/../../tests/reference/readability.json");
    if std::env::var_os("STEADY_WRITE_SAMPLES").is_some() {
        let samples: Vec<Value> = every_language()
            .filter(|words| !measures(words.locale()).is_empty())
            .flat_map(|words| {
                let texts = every_note(words).into_iter().step_by(29).map(|(_, note)| page(&note));
                texts.map(|text| sample(words.locale(), &text)).collect::<Vec<_>>()
            })
            .collect();
        let text = serde_json::to_string_pretty(&json!({ "samples": samples })).expect("samples are JSON");
        std::fs::write(path, text).expect("the samples can be written");
        return;
    }
    let reference = std::fs::read_to_string(path).expect("the reference is there");
    let reference: Value = serde_json::from_str(&reference).expect("the reference is JSON");
    assert_eq!(reference["checked_by"]["textstat"], "0.7.8", "run tests/reference/readability.py");
    let samples = reference["samples"].as_array().expect("samples");
    for row in samples {
        let (locale, text) = (row["locale"].as_str().expect("a tag"), row["text"].as_str().expect("a text"));
        let mut confirmed = row.clone();
        confirmed.as_object_mut().expect("a row").remove("textstat");
        assert_eq!(sample(locale, text), confirmed, "{locale}: {text}");
        for (name, figure) in row["figures"].as_object().expect("figures") {
            let (ours, theirs) = (number(figure), row["textstat"][name].as_f64());
            let theirs = theirs.unwrap_or_else(|| panic!("{locale}: textstat gave no {name}"));
            assert!((ours - theirs).abs() <= 0.0551, "{locale}, {name}: {ours} and {theirs}");
        }
    }
    assert_eq!(reference["compared"], COMPARED);
    let figures: usize =
        samples.iter().map(|row| row["figures"].as_object().map_or(0, serde_json::Map::len)).sum();
    assert_eq!((samples.len(), figures), (SAMPLES, FIGURES));
}

/// Values the reference compared: sentences, words and figures of every sample.
const COMPARED: usize = 196;
/// Texts in the reference, and figures in them.
const SAMPLES: usize = 56;
const FIGURES: usize = 84;
