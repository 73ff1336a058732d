//! What is proven of a visit, and what is not, is said to the workshop on the finding, to the owner on the note, and to
//! whoever verifies a file.

use serde_json::{Value, json};
use steady_core::app::Steady;
use steady_core::app::devices::DeviceList;
use steady_core::app::handover::verify;
use steady_core::app::request::Request;
use steady_core::app::response::Response;

use crate::handover::{exported, rigid};
use crate::handover_corpus::VISIT;
use crate::signatures::{before_signatures, opened};
use crate::support::{ask, code, finding, note, open, scratch};

pub const PROVEN: &str =
    "Each part of this record is signed by a device of ours and stands as it was written.";
const NOT_OURS: &str = "A part of this record came from a device that we have not confirmed as ours.";
const TOO_OLD: &str = "A part of this record is too old to be signed. We cannot prove who wrote it.";

/// Checks how the finding ends what it says of signatures, none where it says nothing, and which of the three sentences
/// the note has.
#[track_caller]
pub fn says_of_its_proof(steady: &Steady, visit: &str, finding_ends: Option<&str>, note_says: &[&str]) {
    let foot = finding(steady, visit).foot;
    let proof = foot.iter().find(|field| field.label == "Proof").map(|field| field.value.as_str());
    match (proof, finding_ends) {
        (Some(proof), Some(end)) => assert!(proof.ends_with(end), "{proof}"),
        (proof, _) => assert_eq!(proof, None),
    }
    let text = serde_json::to_string(&note(steady, visit)).unwrap();
    let said: Vec<&str> =
        [PROVEN, NOT_OURS, TOO_OLD].into_iter().filter(|sentence| text.contains(sentence)).collect();
    assert_eq!(said, note_says, "{text}");
}

fn devices(steady: &Steady) -> DeviceList {
    match steady.handle(Request::Devices).unwrap() {
        Response::Devices(list) => *list,
        other => panic!("no list but {other:?}"),
    }
}

#[test]
fn finding_and_note_say_what_is_proven_and_what_is_not() {
    let ((_a, writer), (_b, here)) = (scratch(), scratch());
    let visit = rigid(&writer, "TR 4417");
    says_of_its_proof(&writer, &visit, Some("signed by this device."), &[PROVEN]);
    here.import(&mut &exported(&writer, &[&visit])[..]).unwrap();
    says_of_its_proof(&here, &visit, Some("a device not yet confirmed."), &[NOT_OURS]);
    let own = devices(&writer).own;
    let confirm = json!({ "ask": "confirm-device", "device": own.device, "code": own.code });
    assert_eq!(code(&here, confirm), "ok");
    says_of_its_proof(&here, &visit, Some("a confirmed device."), &[PROVEN]);
    ask(&here, json!({ "ask": "leave-part", "visit": visit }));
    let both = finding(&here, &visit).foot;
    let both = both.iter().find(|field| field.label == "Proof").unwrap();
    assert!(
        both.value.contains("a confirmed device.") && both.value.contains("1 entry signed by this device.")
    );
    // What was its own stays its own once it is retired.
    assert_eq!(code(&here, json!({ "ask": "retire-device", "device": own.device })), "ok");
    let text = serde_json::to_string(&note(&here, &visit)).unwrap();
    assert!(text.contains(PROVEN) && !text.contains(NOT_OURS), "{text}");
    assert_eq!(code(&here, json!({ "ask": "reset-device", "device": own.device })), "ok");
    let text = serde_json::to_string(&note(&here, &visit)).unwrap();
    assert!(text.contains(NOT_OURS) && !text.contains(PROVEN), "{text}");
}

#[test]
fn what_was_written_before_signatures_is_said_to_be_unproven() {
    let folder = before_signatures(&[opened()]);
    let here = open(folder.path()).unwrap();
    says_of_its_proof(&here, VISIT, Some("1 entry from before there were signatures."), &[TOO_OLD]);
    // What is signed now proves nothing of what was written then.
    ask(&here, json!({ "ask": "answer", "visit": VISIT, "step": "road-speed-vibration", "value": "none" }));
    let text = serde_json::to_string(&note(&here, VISIT)).unwrap();
    assert!(text.contains(TOO_OLD) && !text.contains(PROVEN), "{text}");
}

#[test]
fn verify_counts_writers_visit_by_visit() {
    let ((_a, writer), (_b, here)) = (scratch(), scratch());
    let first = rigid(&writer, "TR 4417");
    here.import(&mut &exported(&writer, &[&first])[..]).unwrap();
    ask(&here, json!({ "ask": "leave-part", "visit": first }));
    let second = rigid(&here, "TR 4418");
    let entries =
        |steady: &Steady, visit: &str| ask(steady, json!({ "ask": "look", "visit": visit })).ledger.entries;
    let [writers, own] = [&writer, &here].map(|steady| devices(steady).own);
    let told = verify(&mut &exported(&here, &[])[..]).unwrap();
    let mut found: Vec<Value> = told.writers.iter().map(|wrote| json!(wrote)).collect();
    let row = |visit: &str, of: &steady_core::model::device::DeviceStand, entries: u64| json!({ "visit": visit, "device": of.device, "code": of.code, "entries": entries });
    let mut wanted = vec![
        row(&first, &writers, entries(&writer, &first)),
        row(&first, &own, 1),
        row(&second, &own, entries(&here, &second)),
    ];
    found.sort_by_key(Value::to_string);
    wanted.sort_by_key(Value::to_string);
    assert_eq!(found, wanted);
}
