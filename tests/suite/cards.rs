//! What the shaft line and the list of visits say of a visit: how much of it is decided, not merely answered,
//! how far its repair has come, and whether its outcome is confirmed.

use std::path::Path;

use rusqlite::Connection;
use serde_json::{Value, json};
use steady_core::app::Steady;
use steady_core::app::replay::replay;
use steady_core::app::request::Request;
use steady_core::app::response::{Response, VisitCard};
use steady_core::model::rating::Word;
use steady_core::model::standing::{RepairStage, Standing};

use crate::support::{answered, ask, case, code, open, scratch, under};

fn visit(steady: &Steady, answers: &str) -> String {
    let replayed = replay(steady, &case("rigid-engine-speed", answers).to_string(), Path::new("."));
    replayed.unwrap().report["visit"].as_str().unwrap().to_owned()
}

fn look(steady: &Steady, visit: &str) -> Standing {
    ask(steady, json!({ "ask": "look", "visit": visit }))
}

/// The card of the one visit there is.
fn card(steady: &Steady) -> VisitCard {
    let request = Request::Visits { search: String::new(), after: None };
    let Response::Visits(mut page) = steady.handle(request).unwrap() else { panic!("no page") };
    page.visits.remove(0)
}

/// What is answered at the support, and how many steps there are then answered and settled.
#[test]
fn answers_that_decide_nothing_do_not_count_as_settled() {
    for (answers, answered, settled) in [
        ("", 0, 0),
        ("play-vertical=not-done", 1, 0),
        ("play-vertical=unsure play-lateral=not-done", 2, 0),
        ("play-vertical=unsure play-lateral=none", 2, 1),
        ("housing-look=sound play-vertical=felt play-lateral=none", 3, 3),
    ] {
        let (_folder, steady) = scratch();
        let visit = visit(&steady, answers);
        let standing = look(&steady, &visit);
        let station = standing.stations.iter().find(|station| station.id == "support").unwrap();
        assert_eq!((station.answered, station.conclusive), (answered, settled), "{answers}");
        for step in standing.steps.iter().filter(|step| step.answered.is_some()) {
            let value = &step.answered.as_ref().unwrap().value;
            assert_eq!(step.is_conclusive(), !value.has("not-done") && !value.has("unsure"), "{}", step.id);
        }
        let card = card(&steady);
        assert_eq!((card.answered, card.conclusive), (answered, settled), "{answers}");
    }
}

/// A newer visit does not stand in the list as if nothing were known of the car.
#[test]
fn card_of_a_newer_visit_says_what_an_earlier_one_left_open() {
    let (_folder, steady) = scratch();
    let first = under(&steady, "CD 1001", "rigid-engine-speed", "complaint");
    answered(&steady, &first, "play-vertical", json!("felt"), json!({}));
    let second = under(&steady, "CD 1001", "rigid-engine-speed", "complaint");
    under(&steady, "CD 1002", "rigid-engine-speed", "complaint");
    let cards = || {
        let request = Request::Visits { search: String::new(), after: None };
        let Response::Visits(page) = steady.handle(request).unwrap() else { panic!("no page") };
        page.visits
    };
    for card in cards() {
        let open = (card.visit == second).then_some(Word::Danger);
        assert_eq!(card.still_open, open, "{} {:?}", card.plate, card.word);
    }
    answered(&steady, &second, "play-lateral", json!("felt"), json!({}));
    assert!(cards().iter().all(|card| card.still_open.is_none()), "its own DANGER says it already");
}

#[test]
fn gauge_that_proves_none_settles_what_hands_left_unsure() {
    let (_folder, steady) = scratch();
    let visit = visit(&steady, "play-vertical=unsure");
    let settled = |standing: &Standing| {
        standing.steps.iter().find(|step| step.id == "play-vertical").unwrap().is_conclusive()
    };
    let before = look(&steady, &visit);
    assert!(!settled(&before));
    let readings = json!({ "unit": "mm", "readings": ["0.012", "0.014", "0.012", "0.012", "0.014", "0.013"],
        "instrument": { "resolution": "0.002", "mpe": "0.004" }, "place": { "at": "bearing" },
        "bearing": { "bore_mm": 35.0, "group": "C3" } });
    let lift = before.gate_sets.iter().find(|set| set.id == "lift").unwrap();
    for gate in &lift.gates {
        ask(&steady, json!({ "ask": "confirm-gate", "visit": visit, "set": "lift", "gate": gate.id }));
    }
    let gauge = json!({ "ask": "record-gauge", "visit": visit, "step": "play-vertical", "gauge": readings });
    assert!(settled(&ask(&steady, gauge)));
}

#[test]
fn card_says_how_far_the_repair_has_come_and_that_it_is_confirmed() {
    let (_folder, steady) = scratch();
    let visit = visit(&steady, "play-vertical=felt play-lateral=none");
    let stands = |repair: Option<RepairStage>, confirmed: bool| {
        let card = card(&steady);
        assert_eq!((card.repair, card.confirmed), (repair, confirmed));
        assert_eq!(look(&steady, &visit).repair, repair);
    };
    stands(None, false);
    let Response::Bench(bench) = steady
        .handle(serde_json::from_value(json!({ "ask": "look-at-bench", "visit": visit })).unwrap())
        .unwrap()
    else {
        panic!("no bench")
    };
    for gate in &bench.bench.gate_sets.iter().find(|set| set.id == "teardown").unwrap().gates {
        let confirm = json!({ "ask": "bench", "visit": visit, "act": { "gate": gate.id } });
        assert_eq!(code(&steady, confirm), "ok");
    }
    stands(Some(RepairStage::TornDown), false);
    let ring = |turns: &str| -> Value { json!({ "ask": "bench", "visit": visit, "act": { "ring": turns } }) };
    assert_eq!(code(&steady, ring("stiff")), "ok");
    stands(Some(RepairStage::TornDown), false);
    assert_eq!(code(&steady, ring("free")), "ok");
    stands(Some(RepairStage::TurnsFree), false);
    let outcome = json!({ "ask": "confirm-outcome", "visit": visit, "causes": ["loose-seat"], "by": null });
    assert_eq!(code(&steady, outcome), "ok");
    stands(Some(RepairStage::TurnsFree), true);
    for stage in [RepairStage::TornDown, RepairStage::TurnsFree, RepairStage::CheckedAgain] {
        assert_eq!(RepairStage::from_id(stage.id()), Some(stage), "a card is read as it was written");
    }
}

/// A card that was written before these were counted is derived anew when it is listed.
#[test]
fn card_of_an_earlier_version_is_derived_anew() {
    let (folder, steady) = scratch();
    visit(&steady, "play-vertical=felt play-lateral=not-done");
    drop(steady);
    let database = Connection::open(folder.path().join("steady.db")).unwrap();
    let forget = "UPDATE card SET settled = NULL, repair = NULL, confirmed = 0";
    assert_eq!(database.execute(forget, []).unwrap(), 1);
    let steady = open(folder.path()).unwrap();
    let shown = card(&steady);
    assert_eq!((shown.answered, shown.conclusive), (2, 1));
    let kept: Option<u32> = database.query_row("SELECT settled FROM card", [], |row| row.get(0)).unwrap();
    assert_eq!(kept, Some(1));
}
