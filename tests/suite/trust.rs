//! Whom to trust is a person's choice: what a file would change is shown first, a device is confirmed by its code or
//! retired, one bad visit spoils no other, and a whole import can be taken back.

use base64::Engine;
use base64::engine::general_purpose::STANDARD;
use serde_json::{Value, json};
use steady_core::app::Steady;
use steady_core::app::handover::{Preview, TakenBack};
use steady_core::app::request::Request;
use steady_core::app::response::Response;
use steady_core::model::device::{DeviceStand, Trust};
use steady_core::model::rating::Word;
use steady_core::signing::key::DeviceKey;

use crate::backup_files::sent;
use crate::backup_generations::{back_up, restore};
use crate::handover::{exported, rigid};
use crate::handover_corpus::{VISIT, spelled, strangers_parts};
use crate::handover_files::{entries, ledger, line, sealed, signed_by, stranger, zip};
use crate::support::{ask, code, scratch};

fn asked(steady: &Steady, request: Value) -> Response {
    steady.handle(serde_json::from_value(request).unwrap()).unwrap()
}

fn preview(steady: &Steady, file: &[u8]) -> Preview {
    steady.preview(&mut &*file).unwrap()
}

fn felt(steady: &Steady, visit: &str) {
    ask(steady, json!({ "ask": "answer", "visit": visit, "step": "play-vertical", "value": "felt" }));
}

fn trust_in(steady: &Steady, visit: &str) -> Vec<(Trust, u64)> {
    let standing = ask(steady, json!({ "ask": "look", "visit": visit }));
    standing.writers.iter().map(|writer| (writer.device.trust, writer.entries)).collect()
}

/// The latest import's number.
fn latest(steady: &Steady) -> i64 {
    let Response::Devices(list) = steady.handle(Request::Devices).unwrap() else { panic!("no list") };
    list.imports[0].import
}

fn taken_back(steady: &Steady, import: i64) -> TakenBack {
    let Response::TakenBack(done) = steady.handle(Request::TakeBackImport { import }).unwrap() else {
        panic!("not taken back")
    };
    done
}

#[test]
fn preview_shows_the_sender_and_what_would_change_and_writes_nothing() {
    let ((_a, writer), (_b, here)) = (scratch(), scratch());
    let visit = rigid(&writer, "TR 4417");
    here.import(&mut &exported(&writer, &[&visit])[..]).unwrap();
    felt(&writer, &visit);
    let other = rigid(&writer, "QX 1");
    let file = exported(&writer, &[]);
    let before = ask(&here, json!({ "ask": "look", "visit": visit }));
    let told = preview(&here, &file);
    assert_eq!(told.sender.trust, Trust::NotConfirmed);
    let row = |id: &str| told.visits.iter().find(|row| row.visit == id).unwrap();
    assert_eq!(
        (row(&visit).is_new, row(&visit).before, row(&visit).after),
        (false, None, Some(Word::Danger))
    );
    assert_eq!((row(&other).is_new, row(&other).plate.as_str()), (true, "QX 1"));
    assert_eq!(ask(&here, json!({ "ask": "look", "visit": visit })), before);
    assert_eq!(code(&here, json!({ "ask": "look", "visit": other })), "unknown-visit");
    let taken = here.import(&mut &file[..]).unwrap();
    assert_eq!(told.imported, taken, "what was shown is what is done");
}

/// A rating that would read milder is told as such, before anybody agrees.
/// By a device that somebody confirmed, a milder rating is told beforehand; by any other it stays outside, whoever
/// carries it.
#[test]
fn milder_rating_is_told_beforehand_and_needs_a_confirmed_device() {
    let ((_a, writer), (_b, here), (_c, carrier)) = (scratch(), scratch(), scratch());
    let visit = rigid(&writer, "TR 4417");
    felt(&writer, &visit);
    let first = exported(&writer, &[&visit]);
    here.import(&mut &first[..]).unwrap();
    carrier.import(&mut &first[..]).unwrap();
    let undo = ask(&writer, json!({ "ask": "look", "visit": visit })).undo.unwrap().entry;
    ask(&writer, json!({ "ask": "undo", "visit": visit, "entry": undo, "reason": "the wrong car" }));
    confirmed(&carrier, &writer);
    let milder = exported(&writer, &[&visit]);
    carrier.import(&mut &milder[..]).unwrap();
    confirmed(&here, &carrier);
    let rated = || ask(&here, json!({ "ask": "look", "visit": visit })).urgency.word;
    for file in [&milder, &exported(&carrier, &[&visit])] {
        let told = preview(&here, file);
        let why = told.imported.set_apart.iter().map(|apart| apart.why.code.as_str()).collect::<Vec<_>>();
        assert_eq!((told.visits.len(), why), (0, vec!["handover-milder"]));
        assert_eq!(here.import(&mut &file[..]).unwrap_err().code, "handover-milder");
        assert_eq!(rated(), Some(Word::Danger));
    }
    confirmed(&here, &writer);
    let told = preview(&here, &milder);
    assert_eq!((told.visits[0].before, told.visits[0].after), (Some(Word::Danger), None));
    assert!(told.visits[0].milder);
    here.import(&mut &milder[..]).unwrap();
    assert_eq!(rated(), None);
}

/// What is graver comes in from anybody: nobody is driven into danger by believing it.
#[test]
fn graver_rating_comes_in_from_a_device_not_confirmed() {
    let ((_a, writer), (_b, here)) = (scratch(), scratch());
    let visit = rigid(&writer, "TR 4417");
    here.import(&mut &exported(&writer, &[&visit])[..]).unwrap();
    felt(&writer, &visit);
    here.import(&mut &exported(&writer, &[&visit])[..]).unwrap();
    assert_eq!(ask(&here, json!({ "ask": "look", "visit": visit })).urgency.word, Some(Word::Danger));
}

/// Two people compared the code of a device.
fn confirmed(here: &Steady, other: &Steady) {
    let Response::Devices(list) = other.handle(Request::Devices).unwrap() else { panic!("no list") };
    let (device, shown) = (&list.own.device, &list.own.code);
    assert_eq!(code(here, json!({ "ask": "confirm-device", "device": device, "code": shown })), "ok");
}

/// A file of a crowd of devices stays outside before it is met for ever.
#[test]
fn crowd_of_devices_stays_outside() {
    let (_folder, here) = scratch();
    let opened = String::from_utf8(strangers_parts().swap_remove(0).1).unwrap();
    let body = spelled(&json!({ "kind": "order-chosen", "order": "running-first", "by": "Kim Demo" }));
    let crowd = |devices: u8| {
        let mut all: Vec<Value> = opened.lines().map(|line| serde_json::from_str(line).unwrap()).collect();
        for number in 1..=devices {
            let key = DeviceKey::from_seed(&[100 + number; 32]);
            all.push(signed_by(&key, line(VISIT, &key.public().hex(), 1, &mut "0".repeat(64), &body)));
        }
        all.sort_by_key(|line| (line["device"].to_string(), line["seq"].as_u64()));
        zip(&sealed(&[ledger(VISIT, &all)], |_| {}))
    };
    assert_eq!(here.import(&mut &crowd(64)[..]).unwrap_err().code, "handover-writers");
    let Response::Devices(list) = here.handle(Request::Devices).unwrap() else { panic!("no list") };
    assert!(list.devices.is_empty(), "{}", list.devices.len());
    assert_eq!(here.import(&mut &crowd(20)[..]).unwrap().taken, [VISIT]);
}

#[test]
fn device_is_confirmed_by_its_code_named_retired_and_reset() {
    let ((_a, writer), (_b, here)) = (scratch(), scratch());
    let visit = rigid(&writer, "TR 4417");
    here.import(&mut &exported(&writer, &[&visit])[..]).unwrap();
    let Response::Devices(own) = writer.handle(Request::Devices).unwrap() else { panic!("no list") };
    let (device, shown) = (own.own.device.clone(), own.own.code.clone());
    let lines = ask(&here, json!({ "ask": "look", "visit": visit })).ledger.entries;
    assert_eq!(trust_in(&here, &visit), [(Trust::NotConfirmed, lines)]);
    let confirm = |code: &str| json!({ "ask": "confirm-device", "device": device, "code": code });
    assert_eq!(code(&here, confirm("1234 5678 9012 3456 7890 1234")), "code-differs");
    assert_eq!(code(&here, confirm(&shown)), "ok");
    assert_eq!(trust_in(&here, &visit), [(Trust::Confirmed, lines)]);
    assert_eq!(
        code(&here, json!({ "ask": "name-device", "device": device, "name": "x".repeat(61) })),
        "device-name-too-long"
    );
    assert_eq!(
        code(&here, json!({ "ask": "name-device", "device": stranger(), "name": "x" })),
        "unknown-device"
    );
    assert_eq!(code(&here, json!({ "ask": "name-device", "device": device, "name": "Bay 2" })), "ok");
    // Retired: what is here stays, what is new stays outside, and the others of its file do not suffer.
    assert_eq!(code(&here, json!({ "ask": "retire-device", "device": device })), "ok");
    assert_eq!(trust_in(&here, &visit), [(Trust::Retired, lines)]);
    felt(&writer, &visit);
    let file = exported(&writer, &[&visit]);
    assert_eq!(here.import(&mut &file[..]).unwrap_err().code, "handover-retired");
    assert_eq!(code(&here, json!({ "ask": "reset-device", "device": device })), "ok");
    assert_eq!(here.import(&mut &file[..]).unwrap().taken, *std::slice::from_ref(&visit));
    assert_eq!(trust_in(&here, &visit), [(Trust::NotConfirmed, lines + 1)]);
    let Response::Devices(list) = asked(&here, json!({ "ask": "devices" })) else { panic!("no list") };
    assert_eq!((list.devices.len(), list.devices[0].name.as_str()), (1, "Bay 2"));
    let decided: Vec<_> = list.decided.iter().map(|row| (row.what.as_str(), row.by.as_str())).collect();
    let by = ask(&here, json!({ "ask": "look", "visit": visit })).technician;
    assert_eq!(
        decided,
        ["confirmed", "named", "retired", "reset"].map(|what| (what, by.as_str())),
        "each is written down, with who decided it"
    );
}

/// A forged visit among good ones is set apart and named; the good ones come in.
#[test]
fn one_bad_visit_spoils_no_other() {
    let ((_a, writer), (_b, here)) = (scratch(), scratch());
    let good = rigid(&writer, "TR 4417");
    let part = entries(&exported(&writer, &[&good]))
        .into_iter()
        .find(|part| part.name.starts_with(b"visits/"))
        .unwrap();
    let device = serde_json::from_slice::<Value>(part.data.split(|byte| *byte == b'\n').next().unwrap())
        .unwrap()["device"]
        .clone();
    let mut prev = "0".repeat(64);
    let forged =
        line(VISIT, device.as_str().unwrap(), 1, &mut prev, r#"{"kind":"part-left","set":"lift","by":"x"}"#);
    let mut parts =
        vec![(String::from_utf8(part.name.clone()).unwrap(), part.data), ledger(VISIT, &[forged])];
    parts.sort();
    let taken = here.import(&mut &zip(&sealed(&parts, |_| {}))[..]).unwrap();
    assert_eq!(taken.taken, [good]);
    assert_eq!(taken.set_apart.len(), 1);
    assert_eq!(
        (taken.set_apart[0].visit.as_str(), taken.set_apart[0].why.code.as_str()),
        (VISIT, "handover-unproven")
    );
    assert_eq!(code(&here, json!({ "ask": "look", "visit": VISIT })), "unknown-visit");
}

/// Who opens a visit of another's id is set apart; if the squatter came first, its import is taken back.
#[test]
fn squatted_visit_is_set_apart_and_comes_in_once_the_squatter_is_taken_back() {
    let ((_a, writer), (_b, here)) = (scratch(), scratch());
    let (visit, good) = (rigid(&writer, "TR 4417"), rigid(&writer, "TR 4418"));
    let honest = exported(&writer, &[&visit]);
    let (_, text) = strangers_parts().remove(0);
    let body = serde_json::from_slice::<Value>(text.strip_suffix(b"\n").unwrap()).unwrap()["body"]
        .as_str()
        .unwrap()
        .to_owned();
    let mut prev = "0".repeat(64);
    let squatter = zip(&sealed(&[ledger(&visit, &[line(&visit, &stranger(), 1, &mut prev, &body)])], |_| {}));
    here.import(&mut &squatter[..]).unwrap();
    let squatted = latest(&here);
    assert_eq!(here.import(&mut &honest[..]).unwrap_err().code, "handover-opened-twice");
    let both = here.import(&mut &exported(&writer, &[&visit, &good])[..]).unwrap();
    let apart: Vec<_> =
        both.set_apart.iter().map(|apart| (apart.visit.as_str(), apart.why.code.as_str())).collect();
    assert_eq!((both.taken, apart), (vec![good], vec![(visit.as_str(), "handover-opened-twice")]));
    assert_eq!(taken_back(&here, squatted).gone, *std::slice::from_ref(&visit));
    assert_eq!(here.import(&mut &honest[..]).unwrap().taken, [visit]);
    assert_eq!(here.import(&mut &squatter[..]).unwrap_err().code, "handover-opened-twice");
}

#[test]
fn import_is_taken_back_and_comes_again_with_a_later_one() {
    let ((_a, writer), (_b, here)) = (scratch(), scratch());
    let visit = rigid(&writer, "TR 4417");
    let first = exported(&writer, &[&visit]);
    here.import(&mut &first[..]).unwrap();
    let before = ask(&here, json!({ "ask": "look", "visit": visit }));
    felt(&writer, &visit);
    let second = exported(&writer, &[&visit]);
    here.import(&mut &second[..]).unwrap();
    let danger = ask(&here, json!({ "ask": "look", "visit": visit }));
    assert_eq!(danger.urgency.word, Some(Word::Danger));
    let import = latest(&here);
    assert_eq!(taken_back(&here, import).restored, *std::slice::from_ref(&visit));
    assert_eq!(ask(&here, json!({ "ask": "look", "visit": visit })), before, "it reads as before the import");
    assert_eq!(code(&here, json!({ "ask": "take-back-import", "import": import })), "unknown-import");
    // What is left can be proven and handed on.
    let (_c, third) = scratch();
    assert_eq!(third.import(&mut &exported(&here, &[&visit])[..]).unwrap().entries, before.ledger.entries);
    assert_eq!(here.import(&mut &second[..]).unwrap().entries, 1);
    assert_eq!(ask(&here, json!({ "ask": "look", "visit": visit })), danger);
    // The first import taken back as well takes nothing away that the later file brought too.
    assert_eq!(taken_back(&here, 1).restored, *std::slice::from_ref(&visit));
    assert_eq!(ask(&here, json!({ "ask": "look", "visit": visit })), danger);
}

/// What was taken back does not come back by the backup: neither a visit that came with it nor an entry.
#[test]
fn backup_brings_back_nothing_that_was_taken_back() {
    let ((_a, writer), (_b, here), (_c, anew)) = (scratch(), scratch(), scratch());
    let visit = rigid(&writer, "TR 4417");
    here.import(&mut &exported(&writer, &[&visit])[..]).unwrap();
    let before = ask(&here, json!({ "ask": "look", "visit": visit }));
    felt(&writer, &visit);
    let other = rigid(&writer, "QX 1");
    here.import(&mut &exported(&writer, &[])[..]).unwrap();
    taken_back(&here, latest(&here));
    let folder = tempfile::tempdir().unwrap();
    let backup = folder.path().join("backup");
    back_up(&here, &backup);
    let restored = restore(&anew, &backup);
    assert_eq!((restored.imported.taken, restored.lost), (vec![visit.clone()], vec![]));
    let entries = ask(&anew, json!({ "ask": "look", "visit": visit })).ledger.entries;
    assert_eq!(entries, before.ledger.entries);
    assert_eq!(code(&anew, json!({ "ask": "look", "visit": other })), "unknown-visit");
}

/// Nor out of a database of which SQLite reads nothing any more: what was taken back, and what was decided, is read
/// from its pages.
#[test]
fn damaged_database_brings_back_nothing_that_was_taken_back() {
    let ((_a, writer), (data, here), (_c, anew), (_d, chosen)) = (scratch(), scratch(), scratch(), scratch());
    let visit = rigid(&writer, "TR 4417");
    here.import(&mut &exported(&writer, &[&visit])[..]).unwrap();
    let before = ask(&here, json!({ "ask": "look", "visit": visit })).ledger.entries;
    felt(&writer, &visit);
    let other = rigid(&writer, "QX 1");
    here.import(&mut &exported(&writer, &[])[..]).unwrap();
    taken_back(&here, latest(&here));
    let Response::Devices(own) = writer.handle(Request::Devices).unwrap() else { panic!("no list") };
    let device = own.own.device;
    asked(&here, json!({ "ask": "name-device", "device": device, "name": "Bay 2" }));
    asked(&here, json!({ "ask": "retire-device", "device": device }));
    drop(here);
    let database = data.path().join("steady.db");
    let mut bytes = std::fs::read(&database).unwrap();
    // The first page holds the schema: without it SQLite opens nothing.
    bytes[..4096].fill(0);
    std::fs::write(&database, &bytes).unwrap();
    let salvaged = anew.salvage(&database).unwrap();
    assert_eq!((salvaged.imported.taken, salvaged.lost), (vec![visit.clone()], vec![]));
    assert_eq!(salvaged.devices, 1);
    // The same file, chosen on a screen.
    assert_eq!(sent(&chosen, &bytes).unwrap().imported.taken, *std::slice::from_ref(&visit));
    for steady in [&anew, &chosen] {
        assert_eq!(ask(steady, json!({ "ask": "look", "visit": visit })).ledger.entries, before);
        assert_eq!(code(steady, json!({ "ask": "look", "visit": other })), "unknown-visit");
        let Response::Devices(list) = asked(steady, json!({ "ask": "devices" })) else { panic!("no list") };
        assert_eq!((list.devices[0].name.as_str(), list.devices[0].trust), ("Bay 2", Trust::Retired));
        assert_eq!(list.decided.len(), 2);
    }
    assert_eq!(sent(&chosen, b"neither a backup nor a database").unwrap_err().code, "backup-file");
}

/// A lost device stays retired, and a name stays given, on the device that takes the place of a broken one; what was
/// decided there about it stands.
#[test]
fn backup_brings_what_was_decided_about_devices() {
    let ((_a, writer), (_b, here), (_c, anew)) = (scratch(), scratch(), scratch());
    let visit = rigid(&writer, "TR 4417");
    here.import(&mut &exported(&writer, &[&visit])[..]).unwrap();
    let Response::Devices(theirs) = writer.handle(Request::Devices).unwrap() else { panic!("no list") };
    let device = theirs.own.device.clone();
    asked(&here, json!({ "ask": "name-device", "device": device, "name": "Bay 2" }));
    asked(&here, json!({ "ask": "retire-device", "device": device }));
    let folder = tempfile::tempdir().unwrap();
    let backup = folder.path().join("backup");
    back_up(&here, &backup);
    assert_eq!(restore(&anew, &backup).devices, 1, "it is said that whom to trust came along");
    felt(&writer, &visit);
    let more = exported(&writer, &[&visit]);
    assert_eq!(anew.import(&mut &more[..]).unwrap_err().code, "handover-retired");
    let Response::Devices(list) = asked(&anew, json!({ "ask": "reset-device", "device": device })) else {
        panic!("no list")
    };
    assert_eq!((list.devices[0].name.as_str(), list.decided.len()), ("Bay 2", 3));
    restore(&anew, &backup);
    assert_eq!(anew.import(&mut &more[..]).unwrap().entries, 1, "what was decided here since stands");
}

#[test]
fn list_says_of_what_is_not_confirmed_where_it_comes_from() {
    let ((_a, writer), (_b, here)) = (scratch(), scratch());
    let visit = rigid(&writer, "TR 4417");
    let own = rigid(&here, "QX 1");
    here.import(&mut &exported(&writer, &[&visit])[..]).unwrap();
    let Response::Devices(theirs) = writer.handle(Request::Devices).unwrap() else { panic!("no list") };
    let DeviceStand { device, code: shown, .. } = &theirs.own;
    let from = |visit: &str| {
        let Response::Visits(page) = asked(&here, json!({ "ask": "visits", "search": "" })) else {
            panic!("no page")
        };
        page.visits.iter().find(|card| card.visit == visit).unwrap().from
    };
    assert_eq!((from(&visit), from(&own)), (Some(Trust::NotConfirmed), None));
    asked(&here, json!({ "ask": "confirm-device", "device": device, "code": shown }));
    assert_eq!(from(&visit), None);
    asked(&here, json!({ "ask": "retire-device", "device": device }));
    assert_eq!((from(&visit), from(&own)), (None, None), "it was confirmed when it wrote that");
    asked(&here, json!({ "ask": "reset-device", "device": device }));
    asked(&here, json!({ "ask": "retire-device", "device": device }));
    assert_eq!((from(&visit), from(&own)), (Some(Trust::Retired), None));
}

/// A file that was looked at and left is not here any more; one that was sent wrongly neither.
#[test]
fn file_that_is_left_is_gone() {
    let ((_a, writer), (_b, here)) = (scratch(), scratch());
    let visit = rigid(&writer, "TR 4417");
    let file = exported(&writer, &[&visit]);
    let upload = "0123456789abcdef0123456789abcdef";
    let base64 = STANDARD.encode(&file);
    let piece = json!({ "ask": "import-piece", "upload": upload, "index": 0, "base64": base64 });
    asked(&here, piece.clone());
    let Response::Preview(told) = asked(&here, json!({ "ask": "preview-import", "upload": upload })) else {
        panic!("no preview")
    };
    assert_eq!(told.imported.taken, *std::slice::from_ref(&visit));
    asked(&here, json!({ "ask": "leave-import", "upload": upload }));
    assert_eq!(code(&here, json!({ "ask": "import", "upload": upload })), "upload-unknown");
    assert_eq!(code(&here, json!({ "ask": "look", "visit": visit })), "unknown-visit");
    asked(&here, piece);
    asked(&here, json!({ "ask": "preview-import", "upload": upload }));
    assert_eq!(
        code(&here, json!({ "ask": "import", "upload": upload })),
        "ok",
        "what was looked at is taken in"
    );
}

#[test]
fn visit_that_this_device_went_on_with_stays() {
    let ((_a, writer), (_b, here)) = (scratch(), scratch());
    let (mine, other) = (rigid(&writer, "TR 4417"), rigid(&writer, "QX 1"));
    here.import(&mut &exported(&writer, &[])[..]).unwrap();
    felt_here(&here, &mine);
    let done = taken_back(&here, latest(&here));
    assert_eq!((done.stayed, done.gone), (vec![mine.clone()], vec![other.clone()]));
    assert!(ask(&here, json!({ "ask": "look", "visit": mine })).ledger.entries > 1);
    assert_eq!(code(&here, json!({ "ask": "look", "visit": other })), "unknown-visit");
    let Response::Visits(page) = asked(&here, json!({ "ask": "visits", "search": "" })) else {
        panic!("no page")
    };
    assert_eq!(page.total, 1);
}

fn felt_here(steady: &Steady, visit: &str) {
    ask(steady, json!({ "ask": "leave-part", "visit": visit }));
}

#[test]
fn lines_dated_far_ahead_stay_outside() {
    let (_, text) = strangers_parts().remove(0);
    let opened = serde_json::from_slice::<Value>(text.strip_suffix(b"\n").unwrap()).unwrap();
    let day = 86_400_000_i64;
    for (ahead, expected) in [
        (day, "ok"),
        (2 * day, "ok"),
        (2 * day + 1, "handover-ahead"),
        (253_402_300_799_999 - MORNING, "handover-ahead"),
    ] {
        let (_folder, here) = scratch();
        let mut line = opened.clone();
        line["at"] = json!(MORNING + ahead);
        let text = |name: &str| line[name].as_str().unwrap().to_owned();
        let hashed = format!(
            "steady entry 1\n{VISIT}\n{}\n1\n{}\n{}\n{}",
            text("device"),
            MORNING + ahead,
            text("prev"),
            text("body")
        );
        line["hash"] = json!(crate::handover_files::sha256(hashed.as_bytes()));
        let file = zip(&sealed(&[ledger(VISIT, &[crate::handover_files::signed(line.clone())])], |_| {}));
        let code = here.import(&mut &file[..]).err().map_or("ok".to_owned(), |failure| failure.code);
        assert_eq!(code, expected, "{ahead} ms ahead");
    }
}

/// 25 November 2026, 09:30 UTC.
const MORNING: i64 = 1_795_599_000_000;
