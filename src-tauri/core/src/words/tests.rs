//! Every id that data or code can show has its texts, and every text can be filled in.

use std::collections::{BTreeMap, BTreeSet};
use std::path::Path;

use fluent_bundle::FluentValue;

use super::files::LOCALES;
use super::{Words, WordsError};
use crate::model::rules;
use crate::model::time::Moment;

fn english() -> &'static Words {
    Words::of("en").expect("English is shipped")
}

/// The ids of a file's messages, each with the variables it uses.
fn messages(text: &str) -> BTreeMap<String, BTreeSet<String>> {
    let mut found = BTreeMap::new();
    let mut current = String::new();
    for line in text.lines().filter(|line| !line.starts_with('#')) {
        if let Some((id, _)) =
            line.split_once(" =").filter(|_| line.starts_with(|c: char| c.is_ascii_alphabetic()))
        {
            id.clone_into(&mut current);
            found.entry(current.clone()).or_insert_with(BTreeSet::new);
        }
        for rest in line.split('$').skip(1) {
            let name = rest.chars().take_while(|c| c.is_ascii_alphanumeric() || *c == '-').collect();
            found.get_mut(&current).expect("a variable stands in a message").insert(name);
        }
    }
    found
}

fn all_messages(tag: &str) -> BTreeMap<String, BTreeSet<String>> {
    let locale = LOCALES.iter().find(|locale| locale.tag == tag).expect("the language is shipped");
    locale.files.iter().flat_map(|(_, text)| messages(text)).collect()
}

fn rows(data: &str, list: &str) -> Vec<toml::Table> {
    let table: toml::Table = data.parse().expect("the data file is TOML");
    table[list]
        .as_array()
        .expect("a list of rows")
        .iter()
        .map(|row| row.as_table().expect("a row").clone())
        .collect()
}

fn ids(data: &str, list: &str) -> Vec<String> {
    rows(data, list).iter().map(|row| row["id"].as_str().expect("an id").to_owned()).collect()
}

#[track_caller]
fn check_texts(ids: &[String], patterns: &[&str]) {
    let shipped = all_messages("en");
    assert!(!ids.is_empty());
    for id in ids {
        for pattern in patterns {
            let key = pattern.replace("ID", id);
            assert!(shipped.contains_key(&key), "the text {key} is missing");
        }
    }
}

fn owned(ids: &[&str]) -> Vec<String> {
    ids.iter().map(|id| (*id).to_owned()).collect()
}

#[test]
fn every_step_has_its_texts() {
    let steps = ids(include_str!("../../data/steps.toml"), "step");
    check_texts(&steps, &["step-ID", "step-ID-do", "step-ID-watch", "drawing-ID"]);
}

#[test]
fn every_pair_and_every_look_has_its_texts() {
    let rows = rows(include_str!("../../data/steps.toml"), "step");
    let id = |row: &toml::Table| row["id"].as_str().expect("an id").to_owned();
    let looks: Vec<_> = rows.iter().filter(|row| row.contains_key("sound_together")).map(id).collect();
    check_texts(&looks, &["looked-ID", "looked-ID-for"]);
    let pair = |row: &toml::Table| row.get("pair").and_then(toml::Value::as_str).map(str::to_owned);
    let pairs: Vec<_> = rows.iter().filter_map(pair).collect();
    check_texts(&pairs, &["pair-ID", "pair-ID-watch", "pair-ID-do"]);
    let paired: Vec<_> = rows.iter().filter(|row| row.contains_key("pair")).map(id).collect();
    check_texts(&paired, &["pair-ID", "pair-short-ID"]);
}

#[test]
fn every_step_behind_a_gate_defers_to_the_maker() {
    for row in
        rows(include_str!("../../data/steps.toml"), "step").iter().filter(|row| row.contains_key("set"))
    {
        let watch = english().text(&format!("step-{}-watch", row["id"].as_str().expect("an id")));
        assert!(watch.contains("maker"), "{watch}");
    }
}

#[test]
fn every_answer_of_every_step_has_a_text() {
    for row in rows(include_str!("../../data/steps.toml"), "step") {
        let step = row["id"].as_str().expect("an id");
        for answer in row.get("answers").and_then(|list| list.as_array()).into_iter().flatten() {
            let answer = answer["id"].as_str().expect("an id");
            let own = english().find(&format!("answer-{step}-{answer}"));
            let text = own.or_else(|| english().find(&format!("answer-{answer}")));
            assert!(text.is_some(), "{step} has no text for {answer}");
        }
    }
}

#[test]
fn readings_are_all_in_rpm() {
    for row in rows(include_str!("../../data/steps.toml"), "step") {
        let unit = row.get("unit").map(|unit| unit.as_str().expect("a unit"));
        assert!(unit.is_none_or(|unit| unit == "rpm"), "a second unit needs a text of its own");
    }
}

#[test]
fn every_gate_has_its_texts() {
    let gates = rows(include_str!("../../data/gates.toml"), "gate");
    let sets: Vec<String> = gates.iter().map(|row| row["set"].as_str().expect("a set").to_owned()).collect();
    check_texts(&ids(include_str!("../../data/gates.toml"), "gate"), &["gate-ID"]);
    check_texts(&sets, &["gates-ID", "gates-ID-why", "part-leave-ID"]);
}

#[test]
fn every_sound_waiver_and_layout_has_its_texts() {
    check_texts(&ids(include_str!("../../data/complaints.toml"), "sound"), &["sound-ID"]);
    check_texts(&ids(include_str!("../../data/waivers.toml"), "waiver"), &["waiver-ID"]);
    check_texts(&[crate::model::ids::NOTHING_TO_SHOW.to_owned()], &["waiver-ID"]);
    for entry in
        std::fs::read_dir(text_folder().join("../../data/layouts")).expect("the layouts folder is there")
    {
        let name = entry.expect("an entry").file_name().into_string().expect("a plain name");
        check_texts(&[name.replace(".toml", "")], &["layout-ID", "layout-ID-about"]);
    }
}

#[test]
fn every_cause_has_its_texts() {
    let mut causes = ids(include_str!("../../data/causes.toml"), "cause");
    causes.push("normal-character".to_owned());
    check_texts(&causes, &["cause-ID", "cause-ID-about"]);
}

#[test]
fn every_loss_and_judgement_has_its_texts() {
    let data = include_str!("../../data/losses.toml");
    let rows = rows(data, "judgement");
    let named =
        |key: &str| rows.iter().map(|row| row[key].as_str().expect("an id").to_owned()).collect::<Vec<_>>();
    check_texts(&named("id"), &["judgement-ID"]);
    check_texts(&[named("act"), named("wait")].concat(), &["course-ID"]);
    check_texts(&[named("act_loss"), named("wait_loss")].concat(), &["loss-ID"]);
}

#[test]
fn every_station_of_the_data_has_a_name() {
    let steps = rows(include_str!("../../data/steps.toml"), "step");
    let stations: Vec<String> =
        steps.iter().map(|row| row["station"].as_str().expect("a station").to_owned()).collect();
    check_texts(&stations, &["station-ID"]);
}

#[test]
fn every_road_row_names_its_rows_of_law() {
    for row in rows(include_str!("../../data/road.toml"), "row") {
        let text = english().text(&format!("road-{}", row["id"].as_str().expect("an id")));
        let (uk, eu) = (row["uk"].as_str().expect("a row"), row["eu"].as_str().expect("a row"));
        assert!(text.contains(&format!("UK MOT manual {uk}")), "{text}");
        assert!(eu.is_empty() || text.contains(&format!("Annex I, {eu}")), "{text}");
        assert!(text.contains("Major if") && text.contains("Dangerous"), "{text}");
        assert!(text.ends_with("Steady does not choose; your local rules decide."), "{text}");
    }
}

#[test]
fn every_rule_has_its_texts() {
    let rules: Vec<String> = rules::ALL.iter().map(|facts| facts.id.to_owned()).collect();
    check_texts(&rules, &["rule-ID", "rule-ID-owner", "note-could-ID"]);
    let variants = |facts: &'static rules::Facts| {
        facts.tells.variants().iter().map(|variant| format!("{}-{variant}", facts.id))
    };
    let variants: Vec<String> = rules::ALL.into_iter().flat_map(variants).collect();
    check_texts(&variants, &["rule-ID", "rule-ID-owner"]);
}

#[test]
fn every_limit_of_a_rating_has_its_texts() {
    let steps = rows(include_str!("../../data/steps.toml"), "step");
    let limits = |row: &&toml::Table| row.get("limits").and_then(toml::Value::as_bool) == Some(true);
    let limits: Vec<String> =
        steps.iter().filter(limits).map(|row| row["id"].as_str().expect("an id").to_owned()).collect();
    check_texts(&limits, &["limit-ID", "limit-ID-owner"]);
    let others = owned(&["no-figure", "tube-closed", "tube-nothing", "unlooked"]);
    check_texts(&others, &["limit-ID", "limit-ID-owner"]);
    let flagged = |flag: &str| -> Vec<String> {
        let set = |row: &&toml::Table| row.get(flag).and_then(toml::Value::as_bool) == Some(true);
        steps.iter().filter(set).map(|row| row["id"].as_str().expect("an id").to_owned()).collect()
    };
    check_texts(&flagged("driveline"), &["unlooked-ID", "unlooked-ID-owner"]);
    check_texts(&flagged("both_ends"), &["step-ID-ends"]);
}

#[test]
fn every_short_word_has_its_text() {
    let headlines =
        owned(&["notice-in-part", "caution-look", "caution-open", "still-open-danger", "still-open-warning"]);
    check_texts(&headlines, &["headline-ID", "finding-sum-ID"]);
    check_texts(&owned(&["engine", "wheels"]), &["detail-free-ID", "detail-not-free-ID"]);
    check_texts(
        &owned(&["danger", "warning", "caution", "notice", "unrated"]),
        &[
            "word-ID",
            "headline-ID",
            "note-means-ID",
            "note-now-ID",
            "short-now-ID",
            "finding-sum-ID",
            "finding-next-ID",
        ],
    );
    check_texts(
        &owned(&[
            "virtually-certain",
            "very-likely",
            "likely",
            "about-as-likely-as-not",
            "unlikely",
            "very-unlikely",
            "exceptionally-unlikely",
        ]),
        &["likelihood-ID"],
    );
    check_texts(&owned(&["bare", "sleeved"]), &["seat-ID"]);
    check_texts(&owned(&["automated-clutch", "torque-converter", "manual"]), &["gearbox-ID"]);
    check_texts(&owned(&["repair", "decide-later", "decline"]), &["decision-ID"]);
    check_texts(&owned(&["gates-confirmed", "steps-ordered", "times-set-back"]), &["arranged-ID"]);
    check_texts(&owned(&["gates-open", "other-part", "danger-found"]), &["lock-ID"]);
    check_texts(
        &owned(&[
            "hands-on",
            "informs",
            "rating",
            "free-turn",
            "whose-roughness",
            "far-end",
            "unsure",
            "left-out",
        ]),
        &["next-ID"],
    );
    check_texts(&owned(&["nothing-changes", "not-worth", "all-done"]), &["stop-ID"]);
    check_texts(&owned(&["signs-disagree", "not-listed"]), &["surprise-ID"]);
    check_texts(&owned(&["under-car-first", "running-first"]), &["order-ID"]);
    check_texts(&owned(&["rigid", "rubber", "tube", "none"]), &["drawing-ID"]);
    check_texts(
        &owned(&[
            "opened",
            "amended",
            "order-chosen",
            "gate-confirmed",
            "lift-said",
            "part-left",
            "answered",
            "photo-kept",
            "photo-marked",
            "photos-paired",
            "photo-waived",
            "withdrawn",
            "arranged",
            "received",
            "opinion-given",
            "outcome-confirmed",
        ]),
        &["entry-ID"],
    );
}

#[test]
fn every_refusal_has_a_phrase_and_a_way_out() {
    let refusals: Vec<String> = all_messages("en")
        .into_keys()
        .filter_map(|key| key.strip_prefix("error-").filter(|id| !id.ends_with("-help")).map(str::to_owned))
        .collect();
    assert!(refusals.len() >= 39, "{}", refusals.len());
    check_texts(&refusals, &["error-ID-help"]);
    for id in refusals {
        assert!(!english().text(&format!("error-{id}")).ends_with('.'), "{id}: a phrase has no full stop");
        assert!(english().text(&format!("error-{id}-help")).ends_with('.'), "{id}: help is a sentence");
    }
}

/// A phone has no command line to give an option on.
#[test]
fn no_text_names_an_option_of_the_command_line() {
    for tag in Words::locales() {
        let locale = LOCALES.iter().find(|locale| locale.tag == tag).expect("the language is shipped");
        for (file, text) in locale.files {
            let named = text.lines().find(|line| !line.starts_with('#') && line.contains("--"));
            assert_eq!(named, None, "{tag}: {file}");
        }
    }
}

#[test]
fn every_text_can_be_filled_in() {
    for tag in Words::locales() {
        let words = Words::of(tag).expect("a shipped language can be read");
        for (id, variables) in all_messages(tag) {
            let args: Vec<(&str, FluentValue<'_>)> =
                variables.iter().map(|name| (name.as_str(), 2.into())).collect();
            let text = words.get(&id, &args);
            assert!(text.as_ref().is_ok_and(|text| !text.is_empty()), "{tag}: {id}: {text:?}");
        }
    }
}

fn text_folder() -> &'static Path {
    Path::new(concat!(env!("CARGO_MANIFEST_DIR"), "/text/en"))
}

/// Files that the screens read and the core does not.
const SCREENS_OWN: [&str; 2] = ["screens.ftl", "bay.ftl"];

/// Screens and papers read the files together, so no id may stand in two of them.
#[test]
fn every_file_on_disk_is_read_and_no_text_stands_twice() {
    let shipped: Vec<&str> = LOCALES.iter().flat_map(|locale| locale.files).map(|(name, _)| *name).collect();
    let mut seen: BTreeMap<String, String> = BTreeMap::new();
    for entry in std::fs::read_dir(text_folder()).expect("the text folder is there") {
        let path = entry.expect("an entry").path();
        if path.extension().is_none_or(|ending| ending != "ftl") {
            continue;
        }
        let name = path.file_name().and_then(|name| name.to_str()).expect("a plain name").to_owned();
        assert!(
            SCREENS_OWN.contains(&name.as_str()) || shipped.contains(&format!("en/{name}").as_str()),
            "{name} is not read"
        );
        let text = std::fs::read_to_string(&path).expect("the file can be read");
        fluent_bundle::FluentResource::try_new(text.clone())
            .map_err(|(_, faults)| faults)
            .expect("the file parses");
        let keys = text.lines().filter_map(|line| line.split_once(" =")).map(|(key, _)| key.to_owned());
        for key in keys.filter(|key| key.starts_with(|c: char| c.is_ascii_alphabetic())) {
            if let Some(other) = seen.insert(key.clone(), name.clone()) {
                panic!("{key} stands in {other} and in {name}");
            }
        }
    }
}

#[test]
fn an_unknown_language_is_refused() {
    assert_eq!(Words::of("xx").err(), Some(WordsError::UnknownLocale));
    assert_eq!(Words::of("").err(), Some(WordsError::UnknownLocale));
    assert_eq!(english().locale(), "en");
}

#[test]
fn a_missing_text_is_an_error() {
    assert_eq!(english().get("no-such-text", &[]), Err(WordsError::Missing("no-such-text".to_owned())));
    assert_eq!(
        english().get("rule-cause-likely", &[]),
        Err(WordsError::Unfilled("rule-cause-likely".to_owned()))
    );
    assert_eq!(english().find("no such text"), None);
}

#[test]
fn texts_carry_no_invisible_marks() {
    let text = english().with("rule-cause-likely", &[("cause", "A { $b } cause".into())]);
    assert_eq!(text, "At least 50% likely: A { $b } cause.");
}

#[track_caller]
fn check_number(value: f64, want: &str) {
    assert_eq!(english().number(value), want);
}

#[test]
fn numbers_read_in_groups_of_three() {
    check_number(0.0, "0");
    check_number(560.0, "560");
    check_number(1200.0, "1,200");
    check_number(1_234_567.0, "1,234,567");
    check_number(0.8, "0.8");
    check_number(-1234.5, "-1,234.5");
}

#[track_caller]
fn check_percent(probability: f64, want: &str) {
    assert_eq!(english().percent(probability), want);
}

#[test]
fn no_share_reads_as_certain() {
    check_percent(0.0, "under 1%");
    check_percent(0.004, "under 1%");
    check_percent(0.005, "1%");
    check_percent(0.5, "50%");
    check_percent(0.994, "99%");
    check_percent(0.995, "over 99%");
    check_percent(1.0, "over 99%");
}

#[test]
fn dates_read_in_words_and_times_as_utc() {
    let at = Moment::parse("2026-01-05T07:04:59.999Z").expect("an instant");
    assert_eq!(english().date(at), "5 January 2026");
    assert_eq!(english().time(at), "2026-01-05 07:04 UTC");
}
