//! An answer that is made milder says why, and what was graver stays told, however often it is answered again.

use serde_json::{Value, json};
use steady_core::app::Steady;
use steady_core::model::limits;
use steady_core::model::standing::Standing;

use crate::support::{answered, ask, code, finding, scratch, under};

const RIGID: &str = "rigid-engine-speed";
const PLAY: &str = "play-vertical";

/// Answers with a reason.
fn because(steady: &Steady, visit: &str, (step, value): (&str, Value), reason: &str) -> Standing {
    answered(steady, visit, step, value, json!({ "temperature": "warm", "reason": reason }))
}

fn reasons(standing: &Standing) -> Vec<&str> {
    standing.milder.iter().map(|made| made.reason.as_str()).collect()
}

#[test]
fn milder_answer_to_a_danger_needs_a_reason() {
    let (_folder, steady) = scratch();
    let visit = under(&steady, "MI 1001", RIGID, "complaint");
    answered(&steady, &visit, PLAY, json!("felt"), json!({}));
    let none = |reason: Option<String>| json!({ "ask": "answer", "visit": visit, "step": PLAY, "value": "none", "reason": reason });
    assert_eq!(code(&steady, none(None)), "reason-needed");
    assert_eq!(code(&steady, none(Some("   ".to_owned()))), "reason-needed");
    assert_eq!(code(&steady, none(Some("x".repeat(2_001)))), "reason-too-long");
    let standing = ask(&steady, none(Some("hand was on the mount".to_owned())));
    let play = standing.steps.iter().find(|step| step.id == PLAY).unwrap();
    assert_eq!(play.answered.as_ref().unwrap().reason.as_deref(), Some("hand was on the mount"));
}

/// A reply carries the first and the latest changes to a milder answer, the finding lists them, and the history has them
/// all.
#[test]
fn reply_does_not_grow_with_each_milder_answer() {
    let (_folder, steady) = scratch();
    let visit = under(&steady, "MI 1002", RIGID, "complaint");
    let changes = limits::MILDER_OF_A_STEP + 2;
    let reason = |change: usize| format!("hand was on the mount, time {change}");
    for change in 0..changes {
        answered(&steady, &visit, "play-lateral", json!("felt"), json!({}));
        because(&steady, &visit, ("play-lateral", json!("none")), &reason(change));
    }
    answered(&steady, &visit, PLAY, json!("felt"), json!({}));
    let standing = because(&steady, &visit, (PLAY, json!("none")), "the strap was slack");
    let told = std::iter::once(0).chain(changes + 1 - limits::MILDER_OF_A_STEP..changes).map(reason);
    assert_eq!(reasons(&standing), told.chain(["the strap was slack".to_owned()]).collect::<Vec<_>>());
}

/// A reason that nobody asked for stands for no change, and puts none out of sight.
#[test]
fn danger_made_milder_stays_told_however_often_it_is_answered_again() {
    let (_folder, steady) = scratch();
    let visit = under(&steady, "MI 1003", RIGID, "complaint");
    answered(&steady, &visit, PLAY, json!("felt"), json!({ "temperature": "warm" }));
    because(&steady, &visit, (PLAY, json!("none")), "the glove slipped on the rubber");
    for time in 0..=limits::MILDER_OF_A_STEP {
        let standing = because(&steady, &visit, (PLAY, json!("none")), &format!("said again, time {time}"));
        assert_eq!(reasons(&standing), ["the glove slipped on the rubber"]);
    }
    let said = finding(&steady, &visit).answer.join(" ");
    assert!(said.contains("Reason given: the glove slipped on the rubber"), "{said}");
}

/// Of many changes at one step the gravest is among those that are told, in the finding too.
#[test]
fn gravest_of_many_changes_is_told() {
    let (_folder, steady) = scratch();
    let visit = under(&steady, "MI 1004", "rubber-centre", "complaint");
    let found = |value: &str| answered(&steady, &visit, "support-look", json!([value]), json!({}));
    let sound = |reason: &str| because(&steady, &visit, ("support-look", json!(["sound"])), reason);
    // A WARNING first, then a DANGER, then the WARNING again and again.
    for (at, value) in ["torn", "torn-through"].into_iter().chain(["torn"; 5]).enumerate() {
        found(value);
        sound(&format!("looked again, time {at}"));
    }
    let standing = ask(&steady, json!({ "ask": "look", "visit": visit }));
    let told = ["looked again, time 0", "looked again, time 1", "looked again, time 6"];
    assert_eq!(reasons(&standing), told);
    let said = finding(&steady, &visit).answer.join(" ");
    assert!(told.iter().all(|reason| said.contains(reason)), "{said}");
}
