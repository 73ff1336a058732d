//! The ledger on disk: only ever added to, chained, set aside when damaged, refused when newer.

use rusqlite::Connection;
use serde_json::json;
use steady_core::app::request::Request;
use steady_core::app::response::Response;
use steady_core::model::rating::Word;

use crate::support::{ask, code, enter_lift, open, scratch, under};

#[test]
fn entries_cannot_be_changed_or_removed() {
    let (folder, steady) = scratch();
    ask(&steady, json!({ "ask": "open", "intake": { "vehicle": { "layout": "torque-tube" } } }));
    drop(steady);
    let database = Connection::open(folder.path().join("steady.db")).unwrap();
    for statement in ["UPDATE entry SET body = '{}'", "DELETE FROM entry"] {
        let fault = database.execute(statement, []).unwrap_err().to_string();
        assert!(fault.contains("only grows"), "{statement}: {fault}");
    }
}

#[test]
fn what_was_corrected_or_taken_back_is_named_with_what_there_was_before() {
    let (_folder, steady) = scratch();
    let visit = under(&steady, "KL55 WRG", "rigid-engine-speed", "complaint");
    let given = json!({ "ask": "answer", "visit": visit, "step": "play-vertical", "value": "felt" });
    let entry = ask(&steady, given).undo.unwrap().entry;
    ask(&steady, json!({ "ask": "undo", "visit": visit, "entry": entry, "reason": "the wrong key" }));
    let vehicle = json!({ "layout": "rigid-engine-speed", "plate": "KL55 WRO", "seat": "bare" });
    let intake = json!({ "vehicle": vehicle, "complaint": "it hums", "occasion": "complaint" });
    ask(&steady, json!({ "ask": "amend", "visit": visit, "intake": intake }));
    for lift in ["two-post", "platform"] {
        ask(&steady, json!({ "ask": "say-lift", "visit": visit, "set": "lift", "lift": lift }));
    }
    let Response::History(history) = steady.handle(Request::History { visit }).unwrap() else {
        panic!("no history")
    };
    let told = serde_json::to_value(&history.entries).unwrap();
    let of = |what: &str| told.as_array().unwrap().iter().rfind(|line| line["what"] == what).unwrap();
    let taken = of("withdrawn");
    assert_eq!(
        [&taken["took_back"], &taken["about"], &taken["value"]],
        ["answered", "play-vertical", "felt"],
        "{taken:#}"
    );
    assert_eq!(
        of("amended")["changes"],
        json!([
            { "field": "plate", "before": ["KL55 WRG"], "now": ["KL55 WRO"] },
            { "field": "seat", "before": [], "now": ["bare"] },
        ])
    );
    let lifted = json!([{ "field": "lift", "before": ["two-post"], "now": ["platform"] }]);
    assert_eq!(of("lift-said")["changes"], lifted);
}

#[test]
fn broken_chain_is_shown() {
    let (folder, steady) = scratch();
    let standing =
        ask(&steady, json!({ "ask": "open", "intake": { "vehicle": { "layout": "torque-tube" } } }));
    ask(
        &steady,
        json!({ "ask": "answer", "visit": standing.visit, "step": "road-speed-vibration", "value": "none" }),
    );
    drop(steady);
    let database = Connection::open(folder.path().join("steady.db")).unwrap();
    database.execute_batch("DROP TRIGGER entry_is_never_changed").unwrap();
    database
        .execute("UPDATE entry SET body = replace(body, '\"none\"', '\"not-tried\"') WHERE seq = 2", [])
        .unwrap();
    drop(database);
    let steady = open(folder.path()).unwrap();
    let standing = ask(&steady, json!({ "ask": "look", "visit": standing.visit }));
    assert_eq!(standing.ledger.broken_at, Some(2));
    assert!(standing.steps.iter().any(|step| step.answered.is_some()), "the entry must stay readable");
}

#[test]
fn everything_is_there_after_opening_again() {
    let (folder, steady) = scratch();
    let standing = ask(
        &steady,
        json!({ "ask": "open", "intake": { "vehicle": { "layout": "torque-tube" }, "complaint": "buzz" } }),
    );
    let before = ask(
        &steady,
        json!({ "ask": "answer", "visit": standing.visit, "step": "road-speed-vibration", "value": "none" }),
    );
    drop(steady);
    let steady = open(folder.path()).unwrap();
    let after = ask(&steady, json!({ "ask": "look", "visit": standing.visit }));
    assert_eq!(after, before);
}

#[test]
fn damaged_database_is_set_aside_with_its_photos() {
    let (folder, steady) = scratch();
    ask(&steady, json!({ "ask": "open", "intake": { "vehicle": { "layout": "torque-tube" } } }));
    drop(steady);
    std::fs::write(folder.path().join("photos/abc.jpg"), b"picture").unwrap();
    std::fs::remove_file(folder.path().join("steady.db-wal")).ok();
    std::fs::write(folder.path().join("steady.db"), vec![7_u8; 8192]).unwrap();
    let steady = open(folder.path()).unwrap();
    let Response::Home(home) = steady.handle(Request::Home).unwrap() else { panic!("no home") };
    assert_eq!(home.visits, 0);
    let aside = std::path::PathBuf::from(&home.set_aside[0].folder);
    assert_eq!(std::fs::read(aside.join("photos/abc.jpg")).unwrap(), b"picture");
    assert_eq!(std::fs::read(aside.join("steady.db")).unwrap(), vec![7_u8; 8192]);
}

#[test]
fn newer_data_is_refused_untouched() {
    let (folder, steady) = scratch();
    drop(steady);
    let path = folder.path().join("steady.db");
    Connection::open(&path).unwrap().pragma_update(None, "user_version", 99).unwrap();
    let failure = open(folder.path()).err().unwrap();
    assert_eq!(failure.code, "newer-data");
    let version: i64 =
        Connection::open(&path).unwrap().query_row("PRAGMA user_version", [], |row| row.get(0)).unwrap();
    assert_eq!(version, 99);
}

/// Two devices answered without knowing of each other: both stand and the worse counts.
#[test]
fn devices_that_disagree_both_stand_and_the_worse_counts() {
    use steady_core::model::answer::AnswerValue;
    use steady_core::model::entry::EntryBody;
    use steady_core::model::time::Moment;
    use steady_core::signing::key::DeviceKey;
    use steady_core::signing::line::Writer;
    use steady_core::store::ledger::next_entry;
    let (folder, steady) = scratch();
    let standing =
        ask(&steady, json!({ "ask": "open", "intake": { "vehicle": { "layout": "rigid-engine-speed" } } }));
    for gate in &standing.gate_sets.iter().find(|set| set.id == "lift").unwrap().gates {
        ask(
            &steady,
            json!({ "ask": "confirm-gate", "visit": standing.visit, "set": "lift", "gate": gate.id }),
        );
    }
    ask(
        &steady,
        json!({ "ask": "answer", "visit": standing.visit, "step": "play-vertical", "value": "none" }),
    );
    drop(steady);
    let body = EntryBody::Answered {
        step: "play-vertical".to_owned(),
        value: AnswerValue::One("felt".to_owned()),
        temperature: None,
        free: None,
        engine: None,
        heard_at: None,
        layout: None,
        figure_mm: None,
        clock: None,
        reason: None,
        supersedes: Vec::new(),
        by: "Robin Demo".to_owned(),
    };
    let other = Writer::of(DeviceKey::from_seed(&[7; 32]));
    let (entry, line) = next_entry(&[], &standing.visit, &other, Moment(1), body);
    let database = Connection::open(folder.path().join("steady.db")).unwrap();
    database
        .execute(
            "INSERT INTO entry (visit, device, seq, at, prev, hash, signature, body)
             VALUES (?1, ?2, 1, 1, ?3, ?4, ?5, ?6)",
            rusqlite::params![entry.visit, entry.device, entry.prev, entry.hash, entry.signature, line.body],
        )
        .unwrap();
    drop(database);
    let steady = open(folder.path()).unwrap();
    let standing = ask(&steady, json!({ "ask": "look", "visit": standing.visit }));
    assert_eq!(standing.ledger.broken_at, None);
    assert_eq!(standing.urgency.word, Some(Word::Danger));
    let play = standing.steps.iter().find(|step| step.id == "play-vertical").unwrap();
    assert!(play.answered.as_ref().unwrap().disputed);
    let milder =
        json!({ "ask": "answer", "visit": standing.visit, "step": "play-vertical", "value": "none" });
    assert_eq!(code(&steady, milder), "reason-needed");
}

#[test]
fn list_is_found_by_plate_vin_owner_and_date() {
    let (_folder, steady) = scratch();
    for (plate, vin, owner) in [("TR 4417", "1M8GDM9AXKP042788", "Åsa Björk"), ("QX 100%", "", "Lee O'Brien")]
    {
        ask(
            &steady,
            json!({ "ask": "open", "intake": {
            "vehicle": { "layout": "torque-tube", "plate": plate, "vin": vin }, "owner": { "name": owner } } }),
        );
    }
    let found = |search: &str| {
        let request = Request::Visits { search: search.to_owned(), after: None };
        let Response::Visits(page) = steady.handle(request).unwrap() else { panic!("no page") };
        page.visits.iter().map(|card| card.plate.clone()).collect::<Vec<_>>()
    };
    for (search, plates) in [
        ("tr4417", vec!["TR 4417"]),
        ("tr 44", vec!["TR 4417"]),
        ("TR-44", vec!["TR 4417"]),
        ("042788", vec!["TR 4417"]),
        ("åsa", vec!["TR 4417"]),
        ("asa bjork", vec!["TR 4417"]),
        ("o'brien", vec!["QX 100%"]),
        ("o\u{2019}brien", vec!["QX 100%"]),
        ("100%", vec!["QX 100%"]),
        ("%", vec!["QX 100%"]),
        ("_", vec![]),
        ("2026-11-25", vec!["QX 100%", "TR 4417"]),
        ("25.11.2026", vec!["QX 100%", "TR 4417"]),
        ("11/25/2026", vec!["QX 100%", "TR 4417"]),
        ("25 November 2026", vec!["QX 100%", "TR 4417"]),
        ("25. nov", vec!["QX 100%", "TR 4417"]),
        ("25 novembre", vec!["QX 100%", "TR 4417"]),
        ("octobre", vec![]),
        ("26.11.2026", vec![]),
        ("", vec!["QX 100%", "TR 4417"]),
        ("nobody", vec![]),
    ] {
        assert_eq!(found(search), plates, "{search}");
    }
}

#[test]
fn rating_is_found_by_its_signal_word() {
    let (_folder, steady) = scratch();
    let grave = under(&steady, "TR 4417", "rigid-engine-speed", "complaint");
    enter_lift(&steady, &grave);
    ask(
        &steady,
        json!({ "ask": "answer", "visit": grave, "step": "play-vertical", "value": "felt", "temperature": "warm" }),
    );
    under(&steady, "QX 100", "rigid-engine-speed", "complaint");
    for (search, plates) in [
        ("danger", vec!["TR 4417"]),
        ("Gefahr tr", vec!["TR 4417"]),
        ("danger qx", vec![]),
        ("warning", vec![]),
        ("dang", vec![]),
    ] {
        let request = Request::Visits { search: search.to_owned(), after: None };
        let Response::Visits(page) = steady.handle(request).unwrap() else { panic!("no page") };
        let found: Vec<_> = page.visits.iter().map(|card| card.plate.clone()).collect();
        assert_eq!(found, plates, "{search}");
        assert_eq!(page.total as usize, plates.len(), "{search}");
    }
}

#[test]
fn pages_hold_every_visit_once() {
    let (_folder, steady) = scratch();
    for _ in 0..75 {
        ask(&steady, json!({ "ask": "open", "intake": { "vehicle": { "layout": "torque-tube" } } }));
    }
    let mut seen = std::collections::BTreeSet::new();
    let mut after = None;
    loop {
        let Response::Visits(page) = steady.handle(Request::Visits { search: String::new(), after }).unwrap()
        else {
            panic!("no page")
        };
        assert_eq!(page.total, 75);
        for card in page.visits {
            assert!(seen.insert(card.visit), "a visit came twice");
        }
        after = page.next;
        if after.is_none() {
            break;
        }
    }
    assert_eq!(seen.len(), 75);
}
