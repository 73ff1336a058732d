//! Handing over: what leaves one data folder arrives in another, whole, once, and by union.

use std::path::Path;

use base64::Engine;
use base64::engine::general_purpose::STANDARD;
use serde_json::{Value, json};
use steady_core::app::handover::{Imported, Wanted, verify};
use steady_core::app::replay::replay;
use steady_core::app::request::Request;
use steady_core::app::response::Response;
use steady_core::app::{PhotoSize, Steady};
use steady_core::model::rating::Word;

use crate::support::{ask, code, fetched, open, scratch, unlocked};

/// A handover file of these visits; none means all.
pub fn exported(steady: &Steady, visits: &[&str]) -> Vec<u8> {
    let visits: Vec<String> = visits.iter().map(|visit| (*visit).to_owned()).collect();
    let mut file = Vec::new();
    steady.export(Wanted { visits: &visits, papers: false, locale: None, sheet: None }, &mut file).unwrap();
    file
}

/// The demo visit that felt play, with its photos.
pub fn demo_visit(steady: &Steady) -> String {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("../demo-data");
    let case = std::fs::read_to_string(folder.join("03-pops-and-play.json")).unwrap();
    replay(steady, &case, &folder).unwrap().visit
}

fn imported(steady: &Steady, file: &[u8]) -> Imported {
    steady.import(&mut &*file).unwrap()
}

pub fn rigid(steady: &Steady, plate: &str) -> String {
    let intake = json!({ "vehicle": { "layout": "rigid-engine-speed", "plate": plate } });
    let standing = ask(steady, json!({ "ask": "open", "intake": intake }));
    for gate in &standing.gate_sets.iter().find(|set| set.id == "lift").unwrap().gates {
        let request =
            json!({ "ask": "confirm-gate", "visit": standing.visit, "set": "lift", "gate": gate.id });
        ask(steady, request);
    }
    standing.visit
}

/// Two devices of one workshop: each was confirmed on the other.
fn acquainted([one, other]: [&Steady; 2]) {
    for (here, there) in [(one, other), (other, one)] {
        let Response::Devices(list) = there.handle(Request::Devices).unwrap() else { panic!("no list") };
        let confirm = json!({ "ask": "confirm-device", "device": list.own.device, "code": list.own.code });
        assert_eq!(code(here, confirm), "ok");
    }
}

fn answer(visit: &str, value: &str) -> Value {
    json!({ "ask": "answer", "visit": visit, "step": "play-vertical", "value": value })
}

#[test]
fn visit_arrives_with_its_photos_and_papers() {
    let ((_a, here), (_b, there)) = (scratch(), scratch());
    let visit = demo_visit(&here);
    let before = ask(&here, json!({ "ask": "look", "visit": visit }));
    let mut file = Vec::new();
    let wanted = Wanted { visits: std::slice::from_ref(&visit), papers: true, locale: None, sheet: None };
    let made = here.export(wanted, &mut file).unwrap();
    assert_eq!(made.bytes, file.len() as u64);
    let told = verify(&mut &*file).unwrap();
    assert_eq!((told.visits, told.photos, told.papers), (vec![visit.clone()], made.photos, 2));
    assert_eq!(told.entries, before.ledger.entries);

    let arrived = imported(&there, &file);
    assert_eq!((arrived.taken, arrived.entries), (vec![visit.clone()], before.ledger.entries));
    assert!(arrived.photos > 0 && arrived.photos == made.photos);
    let after = ask(&there, json!({ "ask": "look", "visit": visit }));
    assert_eq!(
        (&after.ledger, &after.urgency, &after.sorting),
        (&before.ledger, &before.urgency, &before.sorting)
    );
    assert_eq!(unlocked(&after), unlocked(&before));
    for photo in after.steps.iter().filter_map(|step| step.photo.as_ref()) {
        let sha256 = &photo.photo.sha256;
        let full = |steady: &Steady| steady.photo(sha256, PhotoSize::Full).unwrap();
        assert_eq!(full(&there), full(&here));
        assert!(there.photo(sha256, PhotoSize::Thumb).is_ok(), "made anew from its photo");
    }
    let Response::Visits(page) =
        there.handle(Request::Visits { search: String::new(), after: None }).unwrap()
    else {
        panic!("no page")
    };
    assert_eq!(page.visits[0].word, Some(Word::Danger));
}

#[test]
fn same_file_twice_changes_nothing_the_second_time() {
    let ((_a, here), (_b, there)) = (scratch(), scratch());
    let visit = demo_visit(&here);
    let file = exported(&here, &[]);
    assert_eq!(file, exported(&here, &[&visit]), "same ledger and clock, same bytes");
    imported(&there, &file);
    let before = ask(&there, json!({ "ask": "look", "visit": visit }));
    let again = imported(&there, &file);
    assert_eq!((again.taken.len(), again.unchanged, again.entries), (0, 1, 0));
    assert_eq!(ask(&there, json!({ "ask": "look", "visit": visit })), before);
    assert_eq!(imported(&here, &file).unchanged, 1, "a device's own file brings it nothing new");
}

/// Both devices answer without knowing of each other: after the exchange both answers stand on both
/// devices, the worse counts, and making it milder asks for a reason on either.
#[test]
fn two_copies_of_a_visit_become_one_ledger_with_both_chains() {
    let ((_a, here), (_b, there)) = (scratch(), scratch());
    acquainted([&here, &there]);
    let visit = rigid(&here, "TR 4417");
    imported(&there, &exported(&here, &[&visit]));
    ask(&here, answer(&visit, "none"));
    let felt = ask(&there, answer(&visit, "felt"));
    assert_eq!(felt.urgency.word, Some(Word::Danger));

    let back = imported(&here, &exported(&there, &[&visit]));
    assert_eq!((back.taken.len(), back.entries), (1, 1));
    imported(&there, &exported(&here, &[&visit]));
    let [one, other] = [&here, &there].map(|steady| ask(steady, json!({ "ask": "look", "visit": visit })));
    for standing in [&one, &other] {
        assert_eq!(standing.ledger.broken_at, None);
        assert_eq!(standing.urgency.word, Some(Word::Danger));
        let play = standing.steps.iter().find(|step| step.id == "play-vertical").unwrap();
        assert!(play.answered.as_ref().unwrap().disputed);
    }
    assert_eq!((one.ledger, one.urgency, one.steps), (other.ledger, other.urgency, other.steps));
    for steady in [&here, &there] {
        assert_eq!(code(steady, answer(&visit, "none")), "reason-needed");
    }
}

/// The list shows what the merged ledger adds up to, and each device goes on in its own chain.
#[test]
fn work_goes_on_after_a_merge() {
    let ((_a, here), (_b, there)) = (scratch(), scratch());
    acquainted([&here, &there]);
    let visit = rigid(&here, "TR 4417");
    for round in 0..3 {
        imported(&there, &exported(&here, &[&visit]));
        ask(&there, answer(&visit, ["none", "not-done", "none"][round]));
        imported(&here, &exported(&there, &[&visit]));
        ask(&here, answer(&visit, ["not-done", "none", "not-done"][round]));
    }
    imported(&there, &exported(&here, &[]));
    let [one, other] = [&here, &there].map(|steady| ask(steady, json!({ "ask": "look", "visit": visit })));
    assert_eq!((one.ledger.broken_at, &one.ledger), (None, &other.ledger));
    let play = one.steps.iter().find(|step| step.id == "play-vertical").unwrap();
    assert!(!play.answered.as_ref().unwrap().disputed, "each answer named the one before it");
}

/// The clock stands still here, as one that lags behind does: what was written after an import still reads
/// after it, on both devices.
#[test]
fn entries_read_after_what_their_writer_saw() {
    let ((_a, here), (_b, there)) = (scratch(), scratch());
    for (one, other) in [(&here, &there), (&there, &here)] {
        let visit = rigid(one, "TR 4417");
        imported(other, &exported(one, &[&visit]));
        ask(other, json!({ "ask": "leave-part", "visit": visit }));
        imported(one, &exported(other, &[&visit]));
        for steady in [one, other] {
            assert_eq!(ask(steady, json!({ "ask": "look", "visit": visit })).entered, None);
        }
    }
}

/// A data folder copied and used twice writes two chains under one name: neither is touched.
#[test]
fn chains_of_one_name_that_differ_are_refused() {
    let (folder, here) = scratch();
    let visit = rigid(&here, "TR 4417");
    drop(here);
    let twin = tempfile::tempdir().unwrap();
    std::fs::create_dir(twin.path().join("photos")).unwrap();
    std::fs::copy(folder.path().join("steady.db"), twin.path().join("steady.db")).unwrap();
    let [here, twin] = [folder.path(), twin.path()].map(|folder| open(folder).unwrap());
    ask(&here, answer(&visit, "none"));
    let before = ask(&twin, answer(&visit, "felt"));
    let failure = twin.import(&mut &*exported(&here, &[&visit])).unwrap_err();
    assert_eq!(failure.code, "handover-forked");
    assert!(failure.message.contains(&visit), "{}", failure.message);
    assert_eq!(ask(&twin, json!({ "ask": "look", "visit": visit })), before);
    // A good visit in the same file comes in all the same.
    let (_c, other) = scratch();
    let good = rigid(&other, "TR 2");
    imported(&here, &exported(&other, &[&good]));
    let both = imported(&twin, &exported(&here, &[&visit, &good]));
    assert_eq!(both.taken, [good]);
    let apart: Vec<_> =
        both.set_apart.iter().map(|apart| (apart.visit.as_str(), apart.why.code.as_str())).collect();
    assert_eq!(apart, [(visit.as_str(), "handover-forked")]);
    assert_eq!(ask(&twin, json!({ "ask": "look", "visit": visit })), before);
}

#[test]
fn missing_photo_is_said_and_the_rest_travels() {
    let ((folder, here), (_b, there)) = (scratch(), scratch());
    let visit = demo_visit(&here);
    let standing = ask(&here, json!({ "ask": "look", "visit": visit }));
    let photo = standing.steps.iter().find_map(|step| step.photo.clone()).unwrap().photo.sha256;
    std::fs::remove_file(folder.path().join(format!("photos/{photo}.jpg"))).unwrap();
    let file = exported(&here, &[&visit]);
    assert_eq!(verify(&mut &*file).unwrap().photos_missing, 1);
    imported(&there, &file);
    assert_eq!(ask(&there, json!({ "ask": "look", "visit": visit })).ledger, standing.ledger);
    assert_eq!(there.photo(&photo, PhotoSize::Full).unwrap_err().code, "photo-missing");
}

#[test]
fn what_cannot_be_exported_is_named() {
    let (folder, steady) = scratch();
    let refused = |steady: &Steady, visit: &str| {
        let visits: &[String] = if visit.is_empty() { &[] } else { &[visit.to_owned()] };
        steady
            .export(Wanted { visits, papers: false, locale: None, sheet: None }, &mut Vec::new())
            .unwrap_err()
            .code
    };
    assert_eq!(refused(&steady, ""), "nothing-to-export");
    assert_eq!(refused(&steady, "nobody"), "unknown-visit");
    let broken = rigid(&steady, "TR 1");
    let whole = rigid(&steady, "TR 2");
    drop(steady);
    let database = rusqlite::Connection::open(folder.path().join("steady.db")).unwrap();
    database.execute_batch("DROP TRIGGER entry_is_never_changed").unwrap();
    let done = database.execute(
        "UPDATE entry SET body = replace(body, 'TR 1', 'TR 9') WHERE visit = ?1 AND seq = 1",
        [&broken],
    );
    assert_eq!(done.unwrap(), 1);
    drop(database);
    let steady = open(folder.path()).unwrap();
    assert_eq!(refused(&steady, &broken), "chain-broken");
    let all = steady
        .export(Wanted { visits: &[], papers: false, locale: None, sheet: None }, &mut Vec::new())
        .unwrap();
    assert_eq!((all.visits, all.left_out), (1, vec![broken]));
    assert_eq!(verify(&mut &*exported(&steady, &[])).unwrap().visits, [whole]);
}

/// Through the requests of a screen: fetched by its id here, sent in pieces there.
#[test]
fn screens_carry_a_file_across() {
    let ((_a, here), (_b, there)) = (scratch(), scratch());
    let visit = demo_visit(&here);
    let handle = |steady: &Steady, request: Value| {
        steady.handle(serde_json::from_value::<Request>(request).unwrap()).unwrap()
    };
    let Response::Handover(file) = handle(&here, json!({ "ask": "export", "visits": [visit] })) else {
        panic!("no file")
    };
    let bytes = fetched(&here, &file.file);
    assert!(file.name.ends_with(".steady") && file.bytes == bytes.len() as u64, "{file:?}");
    let upload = "0191d2f0-0000-7000-8000-000000000009";
    for (index, piece) in bytes.chunks(512 * 1024).enumerate() {
        let base64 = STANDARD.encode(piece);
        handle(&there, json!({ "ask": "import-piece", "upload": upload, "index": index, "base64": base64 }));
    }
    let Response::Imported(done) = handle(&there, json!({ "ask": "import", "upload": upload })) else {
        panic!("not taken in")
    };
    assert_eq!(done.taken, [visit]);
    assert_eq!(code(&there, json!({ "ask": "import", "upload": upload })), "upload-unknown");
    for unknown in [upload, "", "../steady.db", "lock"] {
        let failure = here.outgoing(unknown).unwrap_err();
        assert_eq!(failure.code, "upload-unknown", "{unknown}");
    }
}

/// What came to nothing takes no room.
#[test]
fn export_that_is_refused_leaves_no_file() {
    let (folder, here) = scratch();
    demo_visit(&here);
    let unknown = "0191d2f0-0000-7000-8000-000000000001";
    for _ in 0..2 {
        assert_eq!(code(&here, json!({ "ask": "export", "visits": [unknown] })), "unknown-visit");
    }
    assert_eq!(std::fs::read_dir(folder.path().join("outgoing")).unwrap().count(), 0);
}

/// A person looks at one file while another is made, and not at the tenth before.
#[test]
fn latest_few_files_wait_to_be_fetched_and_none_of_an_erased_visit() {
    let (folder, here) = scratch();
    let visit = demo_visit(&here);
    let make = || {
        let request = json!({ "ask": "paper", "visit": visit, "paper": "note", "locale": "en" });
        let Response::Paper(file) = here.handle(serde_json::from_value(request).unwrap()).unwrap() else {
            panic!("no paper")
        };
        file.file
    };
    let files: Vec<String> = (0..6).map(|_| make()).collect();
    let waiting = |file: &&String| here.outgoing(file).is_ok();
    assert_eq!(files.iter().filter(waiting).collect::<Vec<_>>(), files[2..].iter().collect::<Vec<_>>());
    let word = visit.rsplit('-').next().unwrap();
    here.erase(&visit, word).unwrap();
    assert_eq!(files.iter().filter(waiting).count(), 0);
    assert!(!folder.path().join("outgoing").exists());
}
