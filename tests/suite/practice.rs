//! A practice visit is walked like any other and is in no list, outcome, paper or file; thrown away, nothing
//! of it is left.

use serde_json::{Value, json};
use steady_core::app::response::Response;
use steady_core::app::{PhotoSize, Steady};

use crate::handover_files::{plain_photo, small_visit};
use crate::support::{code, open, scratch};

fn start(steady: &Steady) -> String {
    let intake =
        json!({ "vehicle": { "layout": "rigid-engine-speed", "plate": "PRACTICE 1" }, "complaint": "" });
    let reply =
        steady.handle_json(&json!({ "ask": "start-practice", "intake": intake }).to_string()).unwrap();
    let standing: Value = serde_json::from_str(&reply).unwrap();
    standing["visit"].as_str().unwrap().to_owned()
}

fn practise(steady: &Steady, request: Value) -> String {
    code(steady, json!({ "ask": "practise", "request": request }))
}

fn visits(steady: &Steady) -> (u64, u64) {
    let home = steady.handle(serde_json::from_value(json!({ "ask": "home" })).unwrap()).unwrap();
    let list = steady.handle(serde_json::from_value(json!({ "ask": "visits" })).unwrap()).unwrap();
    let (Response::Home(home), Response::Visits(list)) = (home, list) else { panic!("no home or no list") };
    (home.visits, list.total)
}

#[test]
fn a_practice_visit_is_walked_and_is_in_no_list() {
    let (_folder, steady) = scratch();
    small_visit(&steady, "REAL 1");
    let visit = start(&steady);
    let answer =
        json!({ "ask": "answer", "visit": visit, "step": "road-speed-vibration", "value": "not-tried" });
    assert_eq!(practise(&steady, answer.clone()), "ok");
    assert_eq!(practise(&steady, json!({ "ask": "note", "visit": visit, "locale": "en" })), "ok");
    assert_eq!(visits(&steady), (1, 1));
    // Asked for as a real one, it is not there.
    assert_eq!(code(&steady, answer), "unknown-visit");
    assert_eq!(code(&steady, json!({ "ask": "export", "visits": [visit] })), "unknown-visit");
}

#[test]
fn a_practice_visit_makes_no_paper_no_file_and_no_outcome() {
    let (_folder, steady) = scratch();
    small_visit(&steady, "REAL 1");
    let visit = start(&steady);
    for request in [
        json!({ "ask": "paper", "visit": visit, "paper": "finding", "locale": "en", "sheet": "a4" }),
        json!({ "ask": "export", "visits": [visit] }),
        json!({ "ask": "confirm-outcome", "visit": visit, "causes": ["loose-seat"] }),
        json!({ "ask": "erase", "visit": visit, "word": "practice1" }),
        json!({ "ask": "calibration" }),
        json!({ "ask": "home" }),
        json!({ "ask": "set-technician", "name": "Somebody Else" }),
        json!({ "ask": "practise", "request": { "ask": "look", "visit": visit } }),
    ] {
        assert_eq!(practise(&steady, request.clone()), "not-in-practice", "{request}");
    }
}

#[test]
fn a_practice_visit_outlives_a_restart_and_leaves_nothing_when_thrown_away() {
    let (folder, steady) = scratch();
    small_visit(&steady, "REAL 1");
    let visit = start(&steady);
    drop(steady);
    let steady = open(folder.path()).unwrap();
    let look = json!({ "ask": "look", "visit": visit });
    assert_eq!(practise(&steady, look.clone()), "ok");
    assert_eq!(code(&steady, json!({ "ask": "end-practice" })), "ok");
    assert_eq!(practise(&steady, look), "no-practice");
    assert!(!folder.path().join("practice").exists());
    assert_eq!(visits(&steady), (1, 1));
}

#[test]
fn another_practice_visit_takes_the_place_of_the_one_before() {
    let (_folder, steady) = scratch();
    small_visit(&steady, "REAL 1");
    let before = start(&steady);
    let after = start(&steady);
    assert_eq!(practise(&steady, json!({ "ask": "look", "visit": before })), "unknown-visit");
    assert_eq!(practise(&steady, json!({ "ask": "look", "visit": after })), "ok");
}

#[test]
fn a_photo_of_the_practice_visit_is_shown_while_it_lasts() {
    let (_folder, steady) = scratch();
    small_visit(&steady, "REAL 1");
    assert_eq!(steady.photo(&"0".repeat(64), PhotoSize::Thumb).unwrap_err().code, "photo-missing");
    let visit = start(&steady);
    let upload = "00000000-0000-7000-8000-000000000001";
    let jpeg = plain_photo(90);
    assert_eq!(
        practise(&steady, json!({ "ask": "upload", "upload": upload, "index": 0, "base64": jpeg })),
        "ok"
    );
    let keep = json!({ "ask": "keep-photo", "visit": visit, "step": "shield-and-mounts", "upload": upload });
    let reply = steady.handle_json(&json!({ "ask": "practise", "request": keep }).to_string()).unwrap();
    let standing: Value = serde_json::from_str(&reply).unwrap();
    let steps = standing["steps"].as_array().unwrap();
    let photo = steps.iter().find_map(|step| step["photo"]["photo"]["sha256"].as_str()).unwrap().to_owned();
    assert!(!steady.photo(&photo, PhotoSize::Thumb).unwrap().is_empty());
    assert_eq!(code(&steady, json!({ "ask": "end-practice" })), "ok");
    assert_eq!(steady.photo(&photo, PhotoSize::Thumb).unwrap_err().code, "photo-missing");
}

#[test]
fn a_refused_intake_leaves_the_practice_visit_before_it() {
    let (_folder, steady) = scratch();
    let visit = start(&steady);
    let unknown = json!({ "ask": "start-practice", "intake": { "vehicle": { "layout": "boat" } } });
    assert_eq!(code(&steady, unknown), "unknown-layout");
    assert_eq!(practise(&steady, json!({ "ask": "look", "visit": visit })), "ok");
}
