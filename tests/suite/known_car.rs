//! A car that was here before is found by its VIN or its plate, and tells what each visit found, without its owner.

use std::fs;
use std::path::Path;

use serde_json::{Value, json};
use steady_core::app::Steady;
use steady_core::app::known_car::VisitBefore;
use steady_core::app::replay::replay;
use steady_core::app::request::Request;
use steady_core::app::response::Response;
use steady_core::model::limits;
use steady_core::model::rating::Word;
use steady_core::model::still_open::StillOpen;

use crate::support::{answered, ask, case, code, finding, open, open_ticking, scratch, under};

const RIGID: &str = "rigid-engine-speed";

/// A visit of a car, with an owner and what the noise was heard under.
fn visit(steady: &Steady, (plate, vin): (&str, &str), answers: &str) -> String {
    let mut case = case("rigid-engine-speed", answers);
    case["vehicle"]["plate"] = json!(plate);
    case["vehicle"]["vin"] = json!(vin);
    case["owner"] = json!({ "name": "Alex Example", "contact": "555" });
    case["occasion"] = json!("comeback");
    case["conditions"] = json!({ "speed": { "value": 60, "unit": "km" }, "gear": "4", "engine": "warm" });
    replay(steady, &case.to_string(), Path::new(".")).unwrap().visit
}

fn before(steady: &Steady, (plate, vin): (&str, &str), visit: Option<&str>) -> Vec<VisitBefore> {
    let (plate, vin, visit) = (plate.to_owned(), vin.to_owned(), visit.map(str::to_owned));
    let Response::VisitsBefore { visits, .. } =
        steady.handle(Request::VisitsBefore { plate, vin, visit }).unwrap()
    else {
        panic!("no visits")
    };
    visits
}

#[test]
fn visits_of_a_car_are_found_newest_first_and_never_those_of_another() {
    let (_folder, steady) = scratch();
    let vin = "ZZZDEMO0000000001";
    let first = visit(&steady, ("QT 7318", ""), "play-vertical=felt");
    let second = visit(&steady, ("QT 7318", vin), "play-vertical=none play-lateral=none");
    let other = visit(&steady, ("QT 7318", "ZZZDEMO0000000002"), "");
    for (car, asking, expected) in [
        (("qt-7318", ""), None, vec![&other, &second, &first]),
        (("QT 7318", vin), None, vec![&second, &first]),
        (("QT 7318", vin), Some(second.as_str()), vec![&first]),
        (("", vin), None, vec![&second]),
        (("QT", ""), None, vec![]),
        (("", ""), None, vec![]),
        (("AB 1", "ZZZDEMO0000000003"), None, vec![]),
    ] {
        let found = before(&steady, car, asking);
        assert_eq!(found.iter().map(|visit| &visit.visit).collect::<Vec<_>>(), expected, "{car:?}");
    }
}

#[test]
fn a_visit_before_tells_what_was_found_and_not_whose_car_it_was() {
    let (_folder, steady) = scratch();
    visit(&steady, ("QT 7318", ""), "play-vertical=felt play-lateral=not-done");
    let found = before(&steady, ("QT 7318", ""), None);
    let told = serde_json::to_value(&found[0]).unwrap();
    assert_eq!(found[0].word, Some(Word::Danger));
    let answers: Vec<(&Value, &Value)> =
        told["answers"].as_array().unwrap().iter().map(|it| (&it["step"], &it["value"])).collect();
    assert!(answers.contains(&(&json!("play-vertical"), &json!("felt"))), "{answers:?}");
    assert_eq!(told["intake"]["conditions"]["speed"]["value"], 60);
    assert_eq!(told["intake"]["occasion"], "comeback");
    assert!(!told.to_string().contains("Alex"), "the owner of then is nobody's business now");
}

/// What was found under a plate is not to be had clean by correcting it: whoever types either is told, and what was only
/// mistyped and put right before anything was checked is nobody else's.
#[test]
fn visit_whose_plate_was_corrected_is_known_under_both() {
    let (_folder, steady) = scratch();
    let amend = |visit: &str, plate: &str| {
        let vehicle = json!({ "layout": "rigid-engine-speed", "plate": plate });
        let intake = json!({ "vehicle": vehicle, "complaint": "it hums", "occasion": "complaint" });
        ask(&steady, json!({ "ask": "amend", "visit": visit, "intake": intake }))
    };
    let mistyped = under(&steady, "KC 1000", "rigid-engine-speed", "complaint");
    amend(&mistyped, "KC 1001");
    let felt = answered(&steady, &mistyped, "play-vertical", json!("felt"), json!({}));
    assert_eq!(felt.urgency.word, Some(Word::Danger));
    assert!(before(&steady, ("KC 1000", ""), None).is_empty());
    amend(&mistyped, "KC 1002");
    for (plate, corrected_to) in [("kc-1001", Some("KC 1002")), ("KC 1002", None)] {
        let found = before(&steady, (plate, ""), None);
        let told: Vec<_> = found.iter().map(|visit| (&visit.visit, visit.corrected_to.as_deref())).collect();
        assert_eq!(told, [(&mistyped, corrected_to)], "{plate}");
        let next = under(&steady, plate, "rigid-engine-speed", "complaint");
        let open = ask(&steady, json!({ "ask": "look", "visit": next })).still_open.unwrap();
        assert_eq!((open.word, open.corrected_to.as_deref()), (Word::Danger, corrected_to), "{plate}");
        let said = finding(&steady, &next).answer.join(" ");
        assert_eq!(said.contains("written down as this car at first"), corrected_to.is_some(), "{said}");
        let search = json!({ "ask": "visits", "search": plate });
        let Response::Visits(page) = steady.handle(serde_json::from_value(search).unwrap()).unwrap() else {
            panic!("no list")
        };
        assert!(page.visits.iter().any(|card| card.visit == mistyped), "{plate}");
    }
}

/// Writes a visit's car down anew.
fn corrected(steady: &Steady, visit: &str, (plate, vin): (&str, &str)) {
    let vehicle = json!({ "layout": RIGID, "plate": plate, "vin": vin });
    let intake = json!({ "vehicle": vehicle, "complaint": "it hums", "occasion": "after-repair" });
    ask(steady, json!({ "ask": "amend", "visit": visit, "intake": intake }));
}

/// The DANGER or WARNING that whoever writes down this car is told of.
fn told_open(steady: &Steady, (plate, vin): (&str, &str)) -> Option<StillOpen> {
    let asked = Request::VisitsBefore { plate: plate.to_owned(), vin: vin.to_owned(), visit: None };
    let Response::VisitsBefore { still_open, .. } = steady.handle(asked).unwrap() else {
        panic!("no visits")
    };
    still_open
}

/// A look after the repair that turns out to be of another car says nothing of the one that was found in danger.
#[test]
fn visit_corrected_to_another_car_does_not_lift_the_danger_of_the_first() {
    let folder = tempfile::tempdir().unwrap();
    let steady = open_ticking(folder.path()).unwrap();
    steady.handle(Request::SetTechnician { name: "Kim Demo".to_owned() }).unwrap();
    let grave = under(&steady, "KC 2001", RIGID, "complaint");
    answered(&steady, &grave, "play-vertical", json!("felt"), json!({}));
    let sound = under(&steady, "KC 2001", RIGID, "after-repair");
    answered(&steady, &sound, "play-vertical", json!("none"), json!({ "temperature": "warm" }));
    assert_eq!(told_open(&steady, ("KC 2001", "")), None, "looked at after the repair");
    for car in [("ZZ 9009", ""), ("ZZ 9009", "ZZZDEMO0000000001"), ("KC 2001", "ZZZDEMO0000000001")] {
        corrected(&steady, &sound, car);
        let open = told_open(&steady, ("KC 2001", "ZZZDEMO0000000002")).unwrap();
        assert_eq!((open.word, &open.visit), (Word::Danger, &grave), "{car:?}");
    }
    corrected(&steady, &sound, ("ZZ 9009", ""));
    let next = under(&steady, "KC 2001", RIGID, "complaint");
    let standing = ask(&steady, json!({ "ask": "look", "visit": next }));
    assert_eq!(standing.still_open.map(|open| open.visit), Some(grave));
}

/// A DANGER is not gone because nobody can read what led to it: by the list of visits it stays open, in front of whoever
/// writes the car down and in the next visit, until its record is readable again.
#[test]
fn danger_whose_record_cannot_be_read_stays_open() {
    let folder = tempfile::tempdir().unwrap();
    let layouts = folder.path().join("layouts");
    fs::create_dir_all(&layouts).unwrap();
    let shipped =
        Path::new(env!("CARGO_MANIFEST_DIR")).join("../src-tauri/core/data/layouts/rigid-engine-speed.toml");
    let own = fs::read_to_string(shipped).unwrap();
    let own = own.replace("id = \"rigid-engine-speed\"", "id = \"my-own\"\nname = \"my own\"");
    fs::write(layouts.join("my-own.toml"), &own).unwrap();
    let [grave, rotten] = {
        let steady = open(folder.path()).unwrap();
        steady.handle(Request::SetTechnician { name: "Kim Demo".to_owned() }).unwrap();
        ["my-own", RIGID].map(|layout| {
            let visit = under(&steady, &format!("KC {layout}"), layout, "complaint");
            let felt = answered(&steady, &visit, "play-vertical", json!("felt"), json!({}));
            assert_eq!(felt.urgency.word, Some(Word::Danger));
            visit
        })
    };
    fs::remove_file(layouts.join("my-own.toml")).unwrap();
    let database = rusqlite::Connection::open(folder.path().join("steady.db")).unwrap();
    database.execute_batch("DROP TRIGGER entry_is_never_changed").unwrap();
    let rot = "UPDATE entry SET body = replace(body, '\"felt\"', '\"fe') WHERE visit = ?1 AND instr(body, '\"felt\"')";
    assert_eq!(database.execute(rot, [&rotten]).unwrap(), 1);
    drop(database);
    let steady = open(folder.path()).unwrap();
    for (plate, visit) in [("KC my-own", &grave), (&format!("KC {RIGID}"), &rotten)] {
        let open = told_open(&steady, (plate, "")).unwrap();
        assert_eq!((open.word, &open.visit, open.unread), (Word::Danger, visit, true), "{plate}");
        let next = under(&steady, plate, RIGID, "after-repair");
        answered(&steady, &next, "play-vertical", json!("none"), json!({ "temperature": "warm" }));
        let standing =
            answered(&steady, &next, "play-lateral", json!("none"), json!({ "temperature": "warm" }));
        assert_eq!(standing.still_open.map(|open| open.word), Some(Word::Danger), "{plate}");
        assert_eq!(standing.headline, "still-open-danger");
        assert!(finding(&steady, &next).answer.join(" ").contains("cannot be read in full"));
    }
}

/// Where the plate stayed and the VIN was corrected, it is the VIN that is named.
#[test]
fn visit_whose_vin_was_corrected_is_told_by_its_vin() {
    let (_folder, steady) = scratch();
    let visit = under(&steady, "KC 3001", RIGID, "complaint");
    corrected(&steady, &visit, ("KC 3001", "ZZZDEMO0000000001"));
    answered(&steady, &visit, "play-vertical", json!("felt"), json!({}));
    corrected(&steady, &visit, ("KC 3001", "ZZZDEMO0000000002"));
    let named = |car| told_open(&steady, car).unwrap().corrected_to;
    assert_eq!(named(("kc-3001", "ZZZDEMO0000000001")).as_deref(), Some("ZZZDEMO0000000002"));
    corrected(&steady, &visit, ("KC 3002", "ZZZDEMO0000000002"));
    assert_eq!(named(("KC 3001", "ZZZDEMO0000000001")).as_deref(), Some("KC 3002"));
}

/// A car is known under every plate it was checked as: one more correction than that is refused rather than the first
/// plate forgotten.
#[test]
fn plate_that_was_checked_first_is_known_however_often_it_is_corrected() {
    let (_folder, steady) = scratch();
    let visit = under(&steady, "KC 4000", RIGID, "complaint");
    answered(&steady, &visit, "play-vertical", json!("felt"), json!({}));
    for time in 1..=limits::FORMER_CARS {
        corrected(&steady, &visit, (&format!("KC 400{time}"), ""));
    }
    let vehicle = json!({ "layout": RIGID, "plate": "KC 4999" });
    let intake = json!({ "vehicle": vehicle, "complaint": "it hums", "occasion": "after-repair" });
    let again = json!({ "ask": "amend", "visit": visit, "intake": intake });
    assert_eq!(code(&steady, again), "car-corrected-too-often");
    for time in 0..=limits::FORMER_CARS {
        let open = told_open(&steady, (&format!("KC 400{time}"), ""));
        assert_eq!(open.map(|open| open.word), Some(Word::Danger), "{time}");
    }
    // Back to one that it was known as takes no room.
    corrected(&steady, &visit, ("KC 4000", ""));
    assert_eq!(told_open(&steady, ("KC 4000", "")).unwrap().corrected_to, None);
}

/// A card that an earlier version wrote holds no plate of before; the car is found by it all the same.
#[test]
fn car_corrected_by_an_earlier_version_is_known_under_its_first_plate() {
    let folder = tempfile::tempdir().unwrap();
    let visit = {
        let steady = open(folder.path()).unwrap();
        steady.handle(Request::SetTechnician { name: "Kim Demo".to_owned() }).unwrap();
        let visit = under(&steady, "KC 5001", RIGID, "complaint");
        answered(&steady, &visit, "play-vertical", json!("felt"), json!({}));
        corrected(&steady, &visit, ("KC 5002", ""));
        visit
    };
    let database = rusqlite::Connection::open(folder.path().join("steady.db")).unwrap();
    let before = "UPDATE card SET haystack = substr(haystack, 1, instr(haystack, 'kc5001') - 2); PRAGMA user_version = 13";
    database.execute_batch(before).unwrap();
    drop(database);
    let steady = open(folder.path()).unwrap();
    let open = told_open(&steady, ("KC 5001", "")).unwrap();
    assert_eq!((open.visit, open.corrected_to.as_deref()), (visit, Some("KC 5002")));
}

/// What a later visit left open does not stand before what is graver.
#[test]
fn later_warning_does_not_hide_an_earlier_danger() {
    let (_folder, steady) = scratch();
    let grave = visit(&steady, ("KC 6001", ""), "play-vertical=felt");
    let rough = visit(&steady, ("KC 6001", ""), "turn-by-hand=rough~free");
    assert_eq!(before(&steady, ("KC 6001", ""), None)[0].visit, rough);
    let open = told_open(&steady, ("KC 6001", "")).unwrap();
    assert_eq!((open.visit, open.word), (grave, Word::Danger));
}
