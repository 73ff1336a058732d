//! Every language says everything English says, with the same variables, file by file, and reads numbers and
//! dates as its region does.

use std::collections::{BTreeMap, BTreeSet};
use std::path::PathBuf;

use super::Words;
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

fn folder(tag: &str) -> PathBuf {
    PathBuf::from(concat!(env!("CARGO_MANIFEST_DIR"), "/text")).join(tag)
}

fn files(tag: &str) -> BTreeSet<String> {
    let entries = std::fs::read_dir(folder(tag)).expect("the text folder is there").flatten();
    entries.map(|entry| entry.file_name().into_string().expect("a plain name")).collect()
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
    let on_disk = std::fs::read_dir(folder("")).expect("the text folder is there").flatten();
    let on_disk: BTreeSet<String> =
        on_disk.map(|entry| entry.file_name().into_string().expect("a plain name")).collect();
    assert_eq!(on_disk, Words::locales().into_iter().map(str::to_owned).collect());
    let lines: Vec<String> = Words::locales().into_iter().flat_map(differences).collect();
    assert!(lines.is_empty(), "{} differences:\n{}", lines.len(), lines.join("\n"));
    assert!(messages("en", "papers.ftl").len() > 150 && messages("fr", "screens.ftl").len() > 150);
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
    for tag in Words::locales().into_iter().filter(|tag| *tag != "en") {
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

/// French sets its double signs off by a space that does not break; a plain one would let them start a line.
#[test]
fn french_signs_never_start_a_line() {
    for file in files("fr") {
        let text = std::fs::read_to_string(folder("fr").join(&file)).expect("the file is there");
        for line in text.lines().filter(|line| !line.starts_with('#')) {
            for loose in [" :", " ;", " !", " ?", " »", "« ", " %"] {
                assert!(!line.contains(loose), "fr/{file}: {line}");
            }
            assert!(!line.contains('\''), "fr/{file}: a straight apostrophe in {line}");
        }
    }
}

#[test]
fn signal_words_follow_practice() {
    for (tag, want) in [
        ("en", ["DANGER", "WARNING", "CAUTION", "NOTICE"]),
        ("de", ["GEFAHR", "WARNUNG", "VORSICHT", "HINWEIS"]),
        ("es", ["PELIGRO", "ADVERTENCIA", "PRECAUCIÓN", "AVISO"]),
        ("fr", ["DANGER", "AVERTISSEMENT", "ATTENTION", "AVIS"]),
    ] {
        let words = Words::of(tag).expect("the language is shipped");
        let got = ["danger", "warning", "caution", "notice"].map(|word| words.text(&format!("word-{word}")));
        assert_eq!(got, want.map(str::to_owned), "{tag}");
    }
}

#[test]
fn every_step_behind_a_gate_defers_to_the_maker_in_every_language() {
    let steps: toml::Table = include_str!("../../data/steps.toml").parse().expect("steps.toml is TOML");
    for (tag, maker) in
        [("en", "maker"), ("de", "erstellervorschrift"), ("es", "fabricante"), ("fr", "constructeur")]
    {
        let words = Words::of(tag).expect("the language is shipped");
        for row in steps["step"].as_array().expect("rows").iter().filter(|row| row.get("set").is_some()) {
            let watch = words.text(&format!("step-{}-watch", row["id"].as_str().expect("an id")));
            let german = tag == "de" && watch.contains("Vorschrift des Herstellers");
            assert!(german || watch.contains(maker), "{tag}: {watch}");
        }
    }
}

#[test]
fn road_rows_name_their_law_in_every_language() {
    for (tag, annex, major, dangerous) in [
        ("de", "Anhang I, ", "erheblich", "gefährlich"),
        ("es", "anexo I, ", "grave", "pelig"),
        ("fr", "annexe I, ", "majeure", "critique"),
    ] {
        let (words, english) = (Words::of(tag).expect("shipped"), Words::of("en").expect("shipped"));
        for id in messages("en", "road.ftl").keys().filter(|id| *id != "road-source") {
            let (text, source) = (words.text(id), english.text(id));
            let row =
                source.split("UK MOT manual ").nth(1).and_then(|rest| rest.split(':').next()).expect("a row");
            assert!(text.contains(row) && text.contains("(UK)"), "{tag}: {text}");
            assert_eq!(text.contains(annex), source.contains("Annex I, "), "{tag}: {text}");
            assert!(text.contains(major) && text.contains(dangerous), "{tag}: {text}");
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
    locale: String,
    value: f64,
    text: String,
}

#[derive(serde::Deserialize)]
struct DateRow {
    locale: String,
    at: String,
    text: String,
}

/// The list comes from CLDR 48; the screens' test reads the same one.
#[test]
fn numbers_shares_and_dates_agree_with_cldr() {
    let published = include_str!("../../../../tests/published/formats.toml");
    let formats: Formats = toml::from_str(published).expect("the list is TOML");
    assert_eq!((formats.number.len(), formats.percent.len(), formats.date.len()), (36, 8, 16));
    let words = |tag: &str| Words::of(tag).expect("the language is shipped");
    for row in &formats.number {
        assert_eq!(words(&row.locale).number(row.value), row.text, "{} {}", row.locale, row.value);
    }
    for row in &formats.percent {
        assert_eq!(words(&row.locale).percent(row.value), row.text, "{} {}", row.locale, row.value);
    }
    for row in &formats.date {
        let at = Moment::parse(&row.at).expect("an instant");
        assert_eq!(words(&row.locale).date(at), row.text, "{} {}", row.locale, row.at);
    }
}

#[track_caller]
fn check_moment(tag: &str, want: &str) {
    let at = Moment::parse("2026-01-05T07:04:59.999Z").expect("an instant");
    assert_eq!(Words::of(tag).expect("the language is shipped").time(at), want);
}

#[test]
fn moments_keep_the_order_of_their_language() {
    check_moment("en", "2026-01-05 07:04 UTC");
    check_moment("de", "05.01.2026, 07:04 UTC");
    check_moment("es", "05/01/2026, 07:04 UTC");
    check_moment("fr", "05/01/2026, 07:04 UTC");
}

#[track_caller]
fn check_length(tag: &str, mm: f64, want: &str) {
    assert_eq!(Words::of(tag).expect("the language is shipped").length(mm), want);
}

/// 0.0254 mm is one thousandth of an inch exactly; figures by hand.
#[test]
fn lengths_show_thousandths_of_an_inch_where_they_are_used() {
    check_length("en", 0.8, "0.8 mm (31.5 thousandths of an inch)");
    check_length("en", 25.4, "25.4 mm (1,000 thousandths of an inch)");
    check_length("de", 0.8, "0,8\u{a0}mm");
    check_length("es", 0.8, "0,8\u{a0}mm");
    check_length("fr", 0.8, "0,8\u{a0}mm");
}
