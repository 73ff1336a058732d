//! A layout that turns out to be another: what it takes back is named before, stays in the record, and takes a reason
//! where it was grave.

use serde_json::{Value, json};
use steady_core::app::Steady;
use steady_core::app::request::Request;
use steady_core::app::response::Response;
use steady_core::model::entry::{Entry, EntryBody};
use steady_core::model::rating::Word;
use steady_core::model::standing::Standing;
use steady_core::walk::record;

use crate::support::{MORNING, ask, code, enter_lift, scratch};

/// A visit under a car whose layout was taken for a rigid one, some of its steps answered.
fn walked(steady: &Steady, answers: &[(&str, Value)]) -> Standing {
    let intake =
        json!({ "vehicle": { "layout": "rigid-engine-speed", "gearbox": "manual", "plate": "RL 1" } });
    let mut standing = ask(steady, json!({ "ask": "open", "intake": intake }));
    enter_lift(steady, &standing.visit);
    for (step, value) in answers {
        let visit = &standing.visit;
        standing = ask(steady, json!({ "ask": "answer", "visit": visit, "step": step, "value": value }));
    }
    standing
}

fn rubber() -> Value {
    json!({ "vehicle": { "layout": "rubber-centre", "gearbox": "manual", "plate": "RL 1" } })
}

fn amend(visit: &str, takes_back: &[&str], reason: Option<&str>) -> Value {
    amend_to(visit, rubber(), takes_back, reason)
}

fn amend_to(visit: &str, intake: Value, takes_back: &[&str], reason: Option<&str>) -> Value {
    json!({ "ask": "amend", "visit": visit, "intake": intake, "takes_back": takes_back, "reason": reason })
}

fn lost(steady: &Steady, visit: &str) -> (Vec<String>, bool) {
    lost_by(steady, visit, rubber())
}

fn lost_by(steady: &Steady, visit: &str, intake: Value) -> (Vec<String>, bool) {
    let request = json!({ "ask": "amend-takes-back", "visit": visit, "intake": intake });
    match steady.handle(serde_json::from_value::<Request>(request).unwrap()).unwrap() {
        Response::TakesBack { steps, needs_reason } => (steps, needs_reason),
        other => panic!("not what is taken back but {other:?}"),
    }
}

fn answered(standing: &Standing) -> Vec<&str> {
    let steps = standing.steps.iter().filter(|step| step.answered.is_some());
    steps.map(|step| step.id.as_str()).collect()
}

#[test]
fn layout_takes_back_what_was_asked_of_another_and_keeps_the_rest() {
    let (_folder, steady) = scratch();
    let standing = walked(
        &steady,
        &[
            ("housing-look", json!(["sound"])),
            ("play-vertical", json!("none")),
            ("shaft-look", json!("sound")),
        ],
    );
    let visit = &standing.visit;
    let named = (vec!["housing-look".to_owned(), "play-vertical".to_owned()], false);
    assert_eq!(lost(&steady, visit), named);
    for seen in [&[][..], &["play-vertical"], &["housing-look", "play-vertical", "shaft-look"]] {
        assert_eq!(code(&steady, amend(visit, seen, None)), "layout-takes-back", "{seen:?}");
    }
    let now = ask(&steady, amend(visit, &["housing-look", "play-vertical"], None));
    assert_eq!(now.intake.vehicle.layout, "rubber-centre");
    assert_eq!(answered(&now), ["shaft-look"]);
    assert_eq!(now.urgency.word, None, "what was not felt of this support reads as not checked");
    assert_eq!(lost(&steady, visit), (Vec::new(), false));
}

#[test]
fn danger_is_not_taken_back_by_a_layout_without_a_word() {
    let (_folder, steady) = scratch();
    let felt = [("play-vertical", json!("none")), ("play-vertical", json!("felt"))];
    let standing = walked(&steady, &felt);
    let visit = &standing.visit;
    assert_eq!(standing.urgency.word, Some(Word::Danger));
    assert_eq!(lost(&steady, visit), (vec!["play-vertical".to_owned()], true));
    assert_eq!(code(&steady, amend(visit, &["play-vertical"], None)), "reason-needed");
    assert_eq!(code(&steady, amend(visit, &["play-vertical"], Some("..."))), "reason-too-short");
    let now = ask(&steady, amend(visit, &["play-vertical"], Some("it hangs in rubber")));
    assert_eq!(answered(&now), Vec::<&str>::new(), "nor does the answer before it come back");
    assert_eq!(now.urgency.word, None);
    let made: Vec<_> = now.milder.iter().map(|made| (made.step.as_str(), made.reason.as_str())).collect();
    assert_eq!(made, [("play-vertical", "it hangs in rubber")]);
    assert!(now.undo.is_none_or(|offer| offer.what != "answered"), "undo does not reach behind it");
}

/// Whoever wrote it: a change of intake that names a photo or a signature as taken back takes back neither.
#[test]
fn change_of_intake_takes_back_answers_and_nothing_else() {
    let entry = |seq: u64, hash: &str, body: Value| -> Entry {
        let body: EntryBody = serde_json::from_value(body).unwrap();
        let (visit, device, prev) = ("v".to_owned(), "d".to_owned(), String::new());
        Entry { visit, device, seq, at: MORNING, prev, hash: hash.to_owned(), signature: None, body }
    };
    let by = "Kim Demo";
    let intake = json!({ "vehicle": { "layout": "rigid-engine-speed" } });
    let entries = [
        entry(1, "opened", json!({ "kind": "opened", "intake": intake, "knowledge": "1", "by": by })),
        entry(2, "felt", json!({ "kind": "answered", "step": "play-vertical", "value": "felt", "by": by })),
        entry(
            3,
            "waived",
            json!({ "kind": "photo-waived", "step": "play-vertical", "reason": "too-dark", "by": by }),
        ),
        entry(
            4,
            "amended",
            json!({ "kind": "amended", "intake": intake, "takes_back": ["felt", "waived", "opened"], "by": by }),
        ),
    ];
    let record = record::read(&entries);
    assert_eq!(record.withdrawn.iter().collect::<Vec<_>>(), ["felt"]);
    assert!(record.answers.is_empty());
    assert_eq!(record.waivers.get("play-vertical").map(String::as_str), Some("too-dark"));
}
