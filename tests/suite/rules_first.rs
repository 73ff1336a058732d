//! Visits of the first rules: their entries stay readable, say by which rules they were rated, and can be read as they
//! were rated.

use serde_json::{Value, json};
use steady_core::model::answer::AnswerValue;
use steady_core::model::entry::{Entry, EntryBody, PhotoRef};
use steady_core::model::photo_of::PhotoOf;
use steady_core::model::rating::Word;
use steady_core::model::rules::VERSION;
use steady_core::model::time::Moment;
use steady_core::signing::key::DeviceKey;
use steady_core::signing::line::Writer;
use steady_core::store::ledger::next_entry;
use steady_core::trade::load;
use steady_core::trade::texts::Texts;
use steady_core::walk::{case, former, record};

use crate::support::{ask, case as case_of, scratch};

/// An entry as it was written: no version of rules, a rubber support looked at as a housing.
fn first_entries() -> Vec<Entry> {
    let opened = json!({
        "kind": "opened", "intake": { "vehicle": { "layout": "rubber-centre" } }, "knowledge": "then", "by": "Kim Demo"
    });
    let answered = |step: &str, value: Value| json!({ "kind": "answered", "step": step, "value": value, "by": "Kim Demo" });
    let photo = json!({ "kind": "photo-kept", "step": "housing-look", "by": "Kim Demo",
        "photo": { "sha256": "ab", "original_sha256": "cd", "width": 4, "height": 3 } });
    let bodies = [
        opened,
        answered("housing-look", json!(["cracked"])),
        photo,
        answered("coupling-look", json!("worn")),
        answered("play-vertical", json!("felt")),
    ];
    let writer = Writer::of(DeviceKey::from_seed(&[7; 32]));
    let mut entries: Vec<Entry> = Vec::new();
    for (at, body) in bodies.into_iter().enumerate() {
        let body: EntryBody = serde_json::from_value(body).unwrap();
        let (entry, _) = next_entry(&entries, "visit", &writer, Moment(at as i64), body);
        entries.push(entry);
    }
    entries
}

#[test]
fn entries_of_the_first_rules_name_no_version_and_are_of_version_1() {
    let entries = first_entries();
    assert!(matches!(&entries[0].body, EntryBody::Opened { rules: 1, .. }));
    assert!(!serde_json::to_string(&entries[0].body).unwrap().contains("rules"), "written as it was read");
}

#[test]
fn answers_of_the_first_rules_are_read_under_the_names_of_today() {
    let trade = load(&[]).unwrap().0;
    let record = former::named(&trade, record::read(&first_entries()));
    assert_eq!(record.opened_under, 1);
    let photo = |step: &str| -> Vec<&str> {
        let kept = record.photos.get(&PhotoOf::Step(step.to_owned())).into_iter().flatten();
        kept.map(|(PhotoRef { sha256, .. }, _)| sha256.as_str()).collect()
    };
    assert_eq!((photo("support-look"), photo("housing-look")), (vec!["ab"], vec![]));
    let case = case::case(&trade, trade.layout("rubber-centre").unwrap(), &record);
    assert!(case.has("support-look", "bracket-cracked"));
    assert_eq!(case.answer("coupling-look").unwrap().value, AnswerValue::Any(vec!["worn".to_owned()]));
    assert!(case.answer("play-vertical").unwrap().found, "felt at a rubber support stays a finding");
}

/// Noise alone was a WARNING then, the turn by hand had to be done, and an unsure far end was a WARNING.
#[test]
fn a_visit_can_be_read_as_the_first_rules_rated_it() {
    let version = Texts::earlier().remove(0).read().unwrap().0.version;
    let plays = "play-vertical=none@warm play-lateral=none@warm";
    for (answers, now, then) in [
        (
            format!("{plays} turn-by-hand=smooth~free idle-noise=hiss+whine"),
            Some(Word::Caution),
            Some(Word::Warning),
        ),
        (plays.to_owned(), Some(Word::Notice), None),
        (
            format!("{plays} turn-by-hand=smooth~free play-far-end=unsure"),
            Some(Word::Caution),
            Some(Word::Warning),
        ),
        ("play-vertical=felt".to_owned(), Some(Word::Danger), Some(Word::Danger)),
    ] {
        let (_folder, steady) = scratch();
        let case = case_of("rigid-engine-speed", &answers).to_string();
        let replayed = steady_core::app::replay::replay(&steady, &case, std::path::Path::new(".")).unwrap();
        let look = |request: Value| ask(&steady, request);
        let today = look(json!({ "ask": "look", "visit": replayed.visit }));
        assert_eq!(
            (today.urgency.word, today.urgency.rules, today.opened_under),
            (now, VERSION, VERSION),
            "{answers}"
        );
        let first = look(json!({ "ask": "look-as-sorted", "visit": replayed.visit, "knowledge": version }));
        assert_eq!((first.urgency.word, first.urgency.rules), (then, 1), "{answers}");
    }
}
