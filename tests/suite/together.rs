//! Two directions on one screen, and several looks said to be sound at once: what the core tells the screens of them, and
//! that the ledger holds what it would hold had each been answered by itself.

use serde_json::{Value, json};
use steady_core::app::Steady;
use steady_core::app::request::Request;
use steady_core::model::standing::{AnswerForm, Position, Standing, StepStand};

use crate::support::{ask, code, scratch};

fn opened(steady: &Steady, vehicle: Value) -> Standing {
    ask(steady, json!({ "ask": "open", "intake": { "vehicle": vehicle, "complaint": "a buzz" } }))
}

/// A visit in which the lift's gates stand entered, in this order of its parts.
fn under(steady: &Steady, vehicle: Value, order: &str) -> Standing {
    let visit = opened(steady, vehicle).visit;
    let standing = ask(steady, json!({ "ask": "choose-order", "visit": visit, "order": order }));
    let lift = standing.gate_sets.into_iter().find(|set| set.id == "lift").unwrap();
    for gate in lift.gates {
        ask(steady, json!({ "ask": "confirm-gate", "visit": visit, "set": "lift", "gate": gate.id }));
    }
    ask(steady, json!({ "ask": "look", "visit": visit }))
}

fn rigid() -> Value {
    json!({ "layout": "rigid-engine-speed", "seat": "bare", "gearbox": "manual" })
}

fn answered(steady: &Steady, visit: &str, step: &str, value: Value) -> Standing {
    ask(
        steady,
        json!({ "ask": "answer", "visit": visit, "step": step, "value": value, "temperature": "warm" }),
    )
}

fn all_sound(visit: &str, steps: &[&str]) -> Value {
    all_sound_by("rigid-engine-speed", visit, steps)
}

fn all_sound_by(layout: &str, visit: &str, steps: &[&str]) -> Value {
    json!({ "ask": "all-sound", "visit": visit, "layout": layout, "steps": steps })
}

fn step<'s>(standing: &'s Standing, id: &str) -> &'s StepStand {
    standing.steps.iter().find(|step| step.id == id).unwrap()
}

fn offered(standing: &Standing, id: &str) -> Vec<String> {
    match &step(standing, id).form {
        AnswerForm::OneOf { choices } | AnswerForm::AnyOf { choices } => {
            choices.iter().map(|choice| choice.id.clone()).collect()
        }
        AnswerForm::Reading { .. } => Vec::new(),
    }
}

const LOOKS: [&str; 4] = ["housing-look", "coupling-look", "shaft-look", "shield-and-mounts"];

#[test]
fn the_two_directions_at_a_support_are_told_as_a_pair() {
    let (_folder, steady) = scratch();
    let both = |end: &str| [format!("play-vertical{end}"), format!("play-lateral{end}")];
    for (layout, expected) in [
        ("rigid-engine-speed", vec![(both(""), None)]),
        ("rubber-centre", vec![(both(""), None)]),
        ("two-centres", vec![(both(""), Some(1)), (both(":2"), Some(2))]),
        ("torque-tube", vec![]),
        ("one-piece", vec![]),
    ] {
        let pairs = opened(&steady, json!({ "layout": layout })).pairs;
        assert!(pairs.iter().all(|pair| pair.id == "play"), "{layout}");
        let told: Vec<_> = pairs.into_iter().map(|pair| (pair.steps, pair.at_support)).collect();
        assert_eq!(told, expected, "{layout}");
    }
}

/// One below the other on a screen, they are still two: what the first found closes nothing of the second.
#[test]
fn movement_in_the_first_direction_leaves_the_second_to_be_felt() {
    let (_folder, steady) = scratch();
    let visit = under(&steady, rigid(), "hands-on").visit;
    answered(&steady, &visit, "housing-look", json!(["sound"]));
    ask(
        &steady,
        json!({ "ask": "waive-photo", "visit": visit, "step": "housing-look", "reason": "too-dark" }),
    );
    answered(&steady, &visit, "play-vertical", json!("felt"));
    let waived = ask(
        &steady,
        json!({ "ask": "waive-photo", "visit": visit, "step": "play-vertical", "reason": "too-dark" }),
    );
    assert_eq!(waived.position, Position::Step { step: "play-lateral".to_owned() });
    assert_eq!(waived.urgency.word.map(|word| word.id()), Some("danger"));
    let both = answered(&steady, &visit, "play-lateral", json!("none"));
    let value = |id: &str| json!(step(&both, id).answered.as_ref().unwrap().value);
    assert_eq!([value("play-vertical"), value("play-lateral")], [json!("felt"), json!("none")]);
    assert_eq!(both.urgency.word.map(|word| word.id()), Some("danger"));
}

#[test]
fn all_sound_says_what_each_look_by_itself_would_say() {
    let (_folder, steady) = scratch();
    let standing = under(&steady, rigid(), "under-car-first");
    assert_eq!(standing.position, Position::Looks);
    assert_eq!(standing.looks.open, LOOKS);
    let entries = standing.ledger.entries;
    let together = ask(&steady, all_sound(&standing.visit, &LOOKS));
    assert_eq!(together.ledger.entries, entries + 4);
    assert!(together.looks.open.is_empty());

    let visit = under(&steady, rigid(), "under-car-first").visit;
    for look in LOOKS {
        answered(&steady, &visit, look, json!(["sound"]));
    }
    let one_by_one = ask(&steady, json!({ "ask": "look", "visit": visit }));
    assert_eq!(together.steps, one_by_one.steps);
    assert_eq!(together.urgency, one_by_one.urgency);
    assert_eq!(together.sorting, one_by_one.sorting);
    // What holds the shaft is shown on a photo, whoever said that it is sound.
    assert_eq!(together.position, Position::Step { step: "housing-look".to_owned() });
    assert_eq!(one_by_one.position, together.position);
}

#[test]
fn each_look_that_was_said_to_be_sound_is_taken_back_by_its_name() {
    let (_folder, steady) = scratch();
    let standing = under(&steady, rigid(), "under-car-first");
    let mut standing = ask(&steady, all_sound(&standing.visit, &LOOKS));
    for look in LOOKS.into_iter().rev() {
        let offer = standing.undo.clone().unwrap();
        assert_eq!((offer.what.as_str(), offer.step.as_deref()), ("answered", Some(look)));
        standing = ask(&steady, json!({ "ask": "undo", "visit": standing.visit, "entry": offer.entry }));
        assert!(step(&standing, look).answered.is_none());
    }
    assert_eq!(standing.looks.open, LOOKS);
}

#[test]
fn a_look_that_was_answered_stays_as_it_was_answered() {
    let (_folder, steady) = scratch();
    let visit = under(&steady, rigid(), "under-car-first").visit;
    for (look, said) in [("coupling-look", "worn"), ("shaft-look", "not-seen")] {
        answered(&steady, &visit, look, json!([said]));
    }
    let before = ask(&steady, json!({ "ask": "look", "visit": visit }));
    assert_eq!(before.looks.steps, LOOKS);
    assert_eq!(before.looks.open, ["housing-look", "shield-and-mounts"]);
    assert_eq!(code(&steady, all_sound(&visit, &LOOKS)), "looks-changed");
    let refused = ask(&steady, json!({ "ask": "look", "visit": visit }));
    assert_eq!(refused.ledger, before.ledger, "nothing of a refused list is written");
    let after = ask(&steady, all_sound(&visit, &["housing-look", "shield-and-mounts"]));
    for (look, said) in [("coupling-look", "worn"), ("shaft-look", "not-seen"), ("housing-look", "sound")] {
        assert_eq!(json!(step(&after, look).answered.as_ref().unwrap().value), json!([said]), "{look}");
    }
}

#[test]
fn nothing_is_said_to_be_sound_that_was_not_listed_or_cannot_be_answered() {
    let (_folder, steady) = scratch();
    let shut = opened(&steady, rigid());
    assert!(shut.looks.open.is_empty());
    assert_eq!(code(&steady, all_sound(&shut.visit, &LOOKS)), "gate-closed");
    let visit = under(&steady, rigid(), "under-car-first").visit;
    for (steps, expected) in [
        (vec![], "looks-changed"),
        (vec!["housing-look"], "looks-changed"),
        (vec!["housing-look", "coupling-look", "shield-and-mounts", "shaft-look"], "looks-changed"),
        ([LOOKS.as_slice(), &["play-vertical"]].concat(), "looks-changed"),
        ([LOOKS.as_slice(), &["support-look"]].concat(), "step-does-not-apply"),
        ([LOOKS.as_slice(), &["no-such-look"]].concat(), "unknown-step"),
    ] {
        assert_eq!(code(&steady, all_sound(&visit, &steps)), expected, "{steps:?}");
    }
    steady.handle(Request::SetTechnician { name: "Pat Ode".to_owned() }).unwrap();
    assert_eq!(code(&steady, all_sound(&visit, &LOOKS)), "gates-of-another");
    assert!(ask(&steady, json!({ "ask": "look", "visit": visit })).looks.open.is_empty());
}

#[test]
fn the_looks_are_those_of_the_car_and_of_what_is_asked() {
    let (_folder, steady) = scratch();
    let looks = |layout: &str, order: &str| {
        let standing = under(&steady, json!({ "layout": layout }), order);
        (standing.looks.open.join(" "), standing.position == Position::Looks)
    };
    let further = "coupling-look shaft-look shield-and-mounts";
    for (layout, order, open, together) in [
        ("rigid-engine-speed", "hands-on", "housing-look".to_owned(), false),
        ("half-shaft", "hands-on", "housing-look coupling-look".to_owned(), true),
        ("two-centres", "hands-on", "support-look support-look:2".to_owned(), true),
        ("two-centres", "under-car-first", format!("support-look support-look:2 {further}"), true),
        ("one-piece", "under-car-first", further.to_owned(), false),
        // Nobody sees the shaft in a tube that is closed.
        ("torque-tube", "under-car-first", "housing-look coupling-look shield-and-mounts".to_owned(), true),
    ] {
        assert_eq!(looks(layout, order), (open, together), "{layout}, {order}");
    }
}

#[test]
fn the_shaft_in_a_tube_is_looked_at_once_the_tube_is_open() {
    let (_folder, steady) = scratch();
    let visit = under(&steady, json!({ "layout": "torque-tube" }), "under-car-first").visit;
    let open = answered(&steady, &visit, "tube-open-check", json!("none"));
    assert_eq!(open.looks.open, LOOKS);
    let shut = answered(&steady, &visit, "tube-open-check", json!("not-done"));
    assert!(!shut.looks.steps.contains(&"shaft-look".to_owned()));
}

#[test]
fn answers_by_the_makers_figure_are_offered_where_it_is_written_down() {
    let (_folder, steady) = scratch();
    let rubber = |figure: Value| json!({ "layout": "rubber-centre", "maker_play_mm": figure });
    let unknown = under(&steady, rubber(Value::Null), "hands-on");
    assert_eq!(offered(&unknown, "play-vertical"), ["none", "springy", "knocks", "unsure", "not-done"]);
    assert!(step(&unknown, "play-vertical").asks_figure);
    let visit = unknown.visit;
    answered(&steady, &visit, "play-vertical", json!("springy"));
    let mut intake = json!(unknown.intake);
    intake["vehicle"]["maker_play_mm"] = json!(1.5);
    let known = ask(&steady, json!({ "ask": "amend", "visit": visit, "intake": intake }));
    let by_figure = ["none", "within-figure", "knocks", "beyond-figure", "unsure", "not-done"];
    assert_eq!(offered(&known, "play-lateral"), by_figure);
    assert!(!step(&known, "play-lateral").asks_figure);
    assert!(
        offered(&known, "play-vertical").contains(&"springy".to_owned()),
        "what was answered stays in view"
    );
    let rigid = under(&steady, rigid(), "hands-on");
    assert!(!step(&rigid, "play-vertical").asks_figure);
}
