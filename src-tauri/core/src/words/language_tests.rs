//! Every language says everything English says, with the same variables, file by file, and reads numbers and
//! dates as its region does.

use std::collections::{BTreeMap, BTreeSet};

use super::Words;
use super::files::LOCALES;
use super::for_tests::{checks, every_language, folder, read, whole_languages};
use crate::model::time::Moment;

/// The variables of each message of a file on disk; a message that repeats is a fault.
fn messages(tag: &str, file: &str) -> BTreeMap<String, BTreeSet<String>> {
    let text = std::fs::read_to_string(folder(tag).join(file)).unwrap_or_default();
    fluent_bundle::FluentResource::try_new(text.clone())
        .map_err(|(_, faults)| faults)
        .unwrap_or_else(|faults| panic!("{tag}/{file}: {faults:?}"));
    let mut found: BTreeMap<String, BTreeSet<String>> = BTreeMap::new();
    let mut current = String::new();
    for line in text.lines().filter(|line| !line.starts_with('#')) {
        if let Some((id, _)) =
            line.split_once(" =").filter(|_| line.starts_with(|c: char| c.is_ascii_alphabetic()))
        {
            id.clone_into(&mut current);
            let before = found.insert(current.clone(), BTreeSet::new());
            assert!(before.is_none(), "{tag}/{file}: {id} stands twice");
        }
        for rest in line.split('$').skip(1) {
            let name = rest.chars().take_while(|c| c.is_ascii_alphanumeric() || *c == '-').collect();
            found.get_mut(&current).expect("a variable stands in a message").insert(name);
        }
    }
    found
}

/// The names in a folder of texts that end so.
fn names(tag: &str, ending: &str) -> BTreeSet<String> {
    let entries = std::fs::read_dir(folder(tag)).expect("the text folder is there").flatten();
    let names = entries.map(|entry| entry.file_name().into_string().expect("a plain name"));
    names.filter(|name| name.ends_with(ending)).collect()
}

fn files(tag: &str) -> BTreeSet<String> {
    names(tag, ".ftl")
}

/// What a language's files lack or have too much beside English, a line each.
fn differences(tag: &str) -> Vec<String> {
    let mut lines = Vec::new();
    for file in files("en").union(&files(tag)) {
        let (english, other) = (messages("en", file), messages(tag, file));
        for (id, variables) in &english {
            match other.get(id) {
                None => lines.push(format!("{tag}/{file}: {id} is missing")),
                Some(own) if own != variables => {
                    lines.push(format!("{tag}/{file}: {id} has the variables {own:?}, not {variables:?}"));
                }
                Some(_) => {}
            }
        }
        let extra = other.keys().filter(|id| !english.contains_key(*id));
        lines.extend(extra.map(|id| format!("{tag}/{file}: {id} is not in English")));
    }
    lines
}

/// The failure lists what is to be translated, file by file.
#[test]
fn every_language_has_the_same_texts_and_variables() {
    let on_disk: BTreeSet<String> = names("", "").into_iter().filter(|name| folder(name).is_dir()).collect();
    assert_eq!(on_disk, Words::locales().into_iter().map(str::to_owned).collect());
    let lines: Vec<String> = whole_languages().flat_map(differences).collect();
    assert!(
        lines.is_empty(),
        "{} differences from English. Write each in core/text, in its language and with the same variables; a language that \
         awaits its reader needs it too:\n{}",
        lines.len(),
        lines.join("\n")
    );
    assert!(messages("en", "papers.ftl").len() > 150 && messages("fr", "screens.ftl").len() > 150);
}

/// A way of writing says nothing that its language does not, and fills it in with the same variables.
#[test]
fn a_way_of_writing_says_what_its_language_says() {
    let all =
        |tag: &str| -> BTreeMap<_, _> { files(tag).iter().flat_map(|file| messages(tag, file)).collect() };
    for (tag, whole) in LOCALES.iter().filter_map(|locale| Some((locale.tag, locale.over?))) {
        let (own, whole) = (all(tag), all(whole));
        for (id, variables) in &own {
            assert_eq!(whole.get(id), Some(variables), "{tag}: {id}");
        }
        assert!(own.len() > 2 && own.len() < whole.len() / 2, "{tag} says {} of {}", own.len(), whole.len());
    }
}

/// Words of a text beside its variables.
fn said(line: &str) -> usize {
    let (_, text) = line.split_once(" =").unwrap_or_default();
    let outside = text.split('{').flat_map(|part| part.split('}').next_back());
    outside.flat_map(str::split_whitespace).filter(|word| word.contains(char::is_alphabetic)).count()
}

/// Nothing was left in English by an oversight: a sentence of several words reads differently everywhere.
#[test]
fn no_sentence_is_left_in_english() {
    for tag in whole_languages().filter(|tag| *tag != "en") {
        for file in files("en") {
            let text =
                |tag: &str| std::fs::read_to_string(folder(tag).join(&file)).expect("the file is there");
            let english = text("en");
            let lines: BTreeSet<&str> = english.lines().filter(|line| said(line) > 2).collect();
            for line in text(tag).lines() {
                assert!(!lines.contains(line), "{tag}/{file}: {line}");
            }
        }
    }
}

#[test]
fn no_language_uses_a_sign_that_is_not_its_own() {
    for tag in Words::locales() {
        let unwanted = checks(tag).unwanted;
        for file in files(tag) {
            let text = std::fs::read_to_string(folder(tag).join(&file)).expect("the file is there");
            // What stands in quotes between braces is code.
            let lines = text.lines().filter(|line| !line.starts_with('#') && !line.contains("{ \""));
            for line in lines {
                let found = unwanted.iter().find(|sign| line.contains(sign.as_str()));
                assert_eq!(found, None, "{tag}/{file}: {line}");
            }
        }
    }
    assert!(!checks("fr").unwanted.is_empty(), "French has signs that must not start a line");
}

#[test]
fn signal_words_follow_practice() {
    for words in every_language() {
        let got = ["danger", "warning", "caution", "notice"].map(|word| words.text(&format!("word-{word}")));
        assert_eq!(got, checks(words.locale()).signal_words, "{}", words.locale());
    }
}

#[test]
fn every_step_behind_a_gate_defers_to_the_maker_in_every_language() {
    let steps: toml::Table = include_str!("../../data/steps.toml").parse().expect("steps.toml is TOML");
    let rows = steps["step"].as_array().expect("rows").iter().filter(|row| row.get("set").is_some());
    let ids: Vec<&str> = rows.map(|row| row["id"].as_str().expect("an id")).collect();
    assert!(ids.len() > 10, "only {} steps are behind a gate", ids.len());
    for words in every_language() {
        let (tag, maker) = (words.locale(), checks(words.locale()).maker);
        for id in &ids {
            let watch = words.text(&format!("step-{id}-watch"));
            assert!(maker.iter().any(|name| watch.contains(name)), "{tag}: {watch}");
        }
    }
}

#[test]
fn road_rows_name_their_law_in_every_language() {
    let english = Words::of("en").expect("shipped");
    for words in whole_languages().filter(|tag| *tag != "en").map(|tag| Words::of(tag).expect("shipped")) {
        let tag = words.locale();
        let law = checks(tag).law.unwrap_or_else(|| panic!("{tag} does not say how its law is named"));
        for id in messages("en", "road.ftl").keys().filter(|id| *id != "road-source") {
            let (text, source) = (words.text(id), english.text(id));
            let row =
                source.split("UK MOT manual ").nth(1).and_then(|rest| rest.split(':').next()).expect("a row");
            assert!(text.contains(row) && text.contains("(UK)"), "{tag}: {text}");
            assert_eq!(text.contains(&law.annex), source.contains("Annex I, "), "{tag}: {text}");
            assert!(text.contains(&law.major) && text.contains(&law.dangerous), "{tag}: {text}");
        }
    }
}

#[derive(serde::Deserialize)]
struct Formats {
    number: Vec<Row>,
    percent: Vec<Row>,
    date: Vec<DateRow>,
}

#[derive(serde::Deserialize)]
struct Row {
    value: f64,
    text: String,
}

#[derive(serde::Deserialize)]
struct DateRow {
    at: String,
    text: String,
}

/// The lists come from CLDR 48; the screens' test reads the same ones.
#[test]
fn numbers_shares_and_dates_agree_with_cldr() {
    for words in every_language() {
        let tag = words.locale();
        let formats: Formats = read(tag, "formats.toml");
        assert_eq!((formats.number.len(), formats.percent.len(), formats.date.len()), (9, 2, 4), "{tag}");
        for row in &formats.number {
            assert_eq!(words.number(row.value), row.text, "{tag} {}", row.value);
        }
        for row in &formats.percent {
            assert_eq!(words.percent(row.value), row.text, "{tag} {}", row.value);
        }
        for row in &formats.date {
            let at = Moment::parse(&row.at).expect("an instant");
            assert_eq!(words.date(at), row.text, "{tag} {}", row.at);
        }
    }
}

#[test]
fn moments_and_lengths_keep_the_order_of_their_language() {
    let at = Moment::parse("2026-01-05T07:04:59.999Z").expect("an instant");
    for words in every_language() {
        let want = checks(words.locale());
        assert_eq!((words.time(at), words.length(0.8)), (want.moment, want.length), "{}", words.locale());
    }
    let english = Words::of("en").expect("shipped");
    assert_eq!(english.length(25.4), "25.4 mm (1,000 thousandths of an inch)");
}

/// A language says of itself how it is read, and whether somebody who was born to it has read it.
#[test]
fn every_language_says_how_it_is_read_and_by_whom() {
    for words in every_language() {
        let tag = words.locale();
        assert!(["ltr", "rtl"].contains(&words.text("language-direction").as_str()), "{tag}");
        let read = words.text("language-read");
        assert_eq!(read == "source", tag == "en", "{tag}: {read}");
        assert!(["source", "awaited", "yes"].contains(&read.as_str()), "{tag}: {read}");
    }
}
