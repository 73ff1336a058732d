//! What is damaged here is made whole by a backup or a file that holds it as it was written, and by nothing else: no line
//! says afterwards what nobody wrote, and no bad copy puts itself in the place of a good one.

use serde_json::{Value, json};
use steady_core::app::Steady;
use steady_core::app::request::Request;
use steady_core::app::response::Response;
use steady_core::model::standing::LedgerStand;

use crate::backup_damage::rotted;
use crate::backup_generations::{back_up, on_day, restore};
use crate::handover::exported;
use crate::handover_corpus::VISIT;
use crate::handover_files::{keep_photo, ledger, sealed, small_visit, stranger, zip};
use crate::signatures::{carried, forged, lines_of, opened};
use crate::support::{ask, code, open, scratch};

fn stand(steady: &Steady, visit: &str) -> LedgerStand {
    ask(steady, json!({ "ask": "look", "visit": visit })).ledger
}

/// Every way in which one line's columns rot.
const ROT: [&str; 6] = [
    "UPDATE entry SET body = replace(body, 'TR 0001', 'TR 0009') WHERE seq = 1",
    "UPDATE entry SET body = CAST(CAST(body AS BLOB) || x'ff' AS TEXT) WHERE seq = 2",
    "UPDATE entry SET at = at + 1 WHERE seq = 2",
    "UPDATE entry SET prev = lower(hex(zeroblob(32))) WHERE seq = 2",
    "UPDATE entry SET signature = 'zz' WHERE seq = 2",
    "UPDATE entry SET signature = lower(hex(zeroblob(64))) WHERE seq = (SELECT max(seq) FROM entry)",
];

#[test]
fn damaged_record_is_whole_again_from_an_earlier_backup_of_the_same_folder() {
    for change in ROT {
        let (data, steady) = scratch();
        let visit = small_visit(&steady, "TR 0001");
        keep_photo(&steady, &visit, 90);
        let (before, file) = (stand(&steady, &visit), exported(&steady, &[&visit]));
        let backup = tempfile::tempdir().unwrap();
        back_up(&steady, backup.path());
        drop(steady);
        rotted(data.path(), change);
        assert_eq!(
            on_day(data.path(), backup.path(), 1).unwrap().visits_broken,
            [visit.as_str()],
            "{change}"
        );
        let steady = open(data.path()).unwrap();
        assert!(stand(&steady, &visit).broken_at.is_some(), "{change}");
        let done = steady.restore(backup.path(), Some("2026-11-25"), &mut |_| {}).unwrap().imported;
        assert_eq!((done.taken, done.entries, done.mended), (vec![visit.clone()], 0, 1), "{change}");
        assert_eq!(stand(&steady, &visit), before, "{change}");
        assert_eq!(lines_of(&exported(&steady, &[&visit])), lines_of(&file), "{change}");
        drop(steady);
        assert!(on_day(data.path(), backup.path(), 2).unwrap().visits_broken.is_empty(), "{change}");
        // Every line is held again as it is.
        let database = rusqlite::Connection::open(data.path().join("steady.db")).unwrap();
        let fault = database.execute("UPDATE entry SET at = 1", []).unwrap_err().to_string();
        assert!(fault.contains("only grows"), "{change}: {fault}");
    }
}

#[test]
fn damaged_record_is_whole_again_from_a_file_that_says_so_before() {
    for change in ROT {
        let (data, steady) = scratch();
        let visit = small_visit(&steady, "TR 0001");
        keep_photo(&steady, &visit, 90);
        let (before, file) = (stand(&steady, &visit), exported(&steady, &[&visit]));
        drop(steady);
        rotted(data.path(), change);
        let steady = open(data.path()).unwrap();
        let told = steady.preview(&mut &file[..]).unwrap();
        let told: Vec<_> = told.visits.iter().map(|told| (told.is_new, told.entries, told.mended)).collect();
        assert_eq!(told, [(false, 0, 1)], "{change}");
        assert!(stand(&steady, &visit).broken_at.is_some(), "{change}: only looked at");
        assert_eq!(steady.import(&mut &file[..]).unwrap().mended, 1, "{change}");
        assert_eq!(stand(&steady, &visit), before, "{change}");
        assert!(
            steady.preview(&mut &file[..]).unwrap().visits.is_empty(),
            "{change}: nothing is left to mend"
        );
    }
}

/// A copy whose lines say something else, or prove nothing, mends no line.
#[test]
fn no_line_is_mended_by_another() {
    let (data, steady) = scratch();
    let visit = small_visit(&steady, "TR 0001");
    keep_photo(&steady, &visit, 90);
    let lines = lines_of(&exported(&steady, &[&visit]));
    drop(steady);
    rotted(data.path(), ROT[0]);
    let steady = open(data.path()).unwrap();
    let broken = stand(&steady, &visit);
    let mut other = lines.clone();
    let body = other[0]["body"].as_str().unwrap().replace("TR 0001", "TR 0009");
    other[0]["body"] = json!(body);
    assert_eq!(steady.import(&mut &carried(&visit, &other)[..]).unwrap_err().code, "handover-chain");
    let own = lines[0]["device"].as_str().unwrap();
    let anew: Vec<Value> =
        lines.iter().map(|line| spoken(line).replace("TR 0001", "TR 0009")).map(read).collect();
    let anew = carried(&visit, &forged(&visit, &[], own, &anew));
    assert_eq!(steady.import(&mut &anew[..]).unwrap_err().code, "handover-unproven");
    assert_eq!(stand(&steady, &visit), broken);
}

fn spoken(line: &Value) -> String {
    line["body"].as_str().unwrap().to_owned()
}

fn read(body: String) -> Value {
    serde_json::from_str(&body).unwrap()
}

/// A stranger's lines as they are, all signatures but the newest gone to ruin.
fn ruined(lines: &[Value]) -> Vec<Value> {
    let newest = lines.len() - 1;
    let ruin = |(place, mut line): (usize, Value)| {
        if place < newest {
            line["signature"] = json!("0".repeat(128));
        }
        line
    };
    lines.iter().cloned().enumerate().map(ruin).collect()
}

fn file_of(lines: &[Value]) -> Vec<u8> {
    zip(&sealed(&[ledger(VISIT, lines)], |_| {}))
}

fn take_back_all(steady: &Steady) {
    let Response::Devices(list) = steady.handle(Request::Devices).unwrap() else { panic!("no list") };
    for import in list.imports.iter().filter(|import| import.taken_back.is_none()) {
        assert_eq!(code(steady, json!({ "ask": "take-back-import", "import": import.import })), "ok");
    }
}

/// Whoever carries true lines with signatures that prove nothing spoils none of those that come later and do.
#[test]
fn file_that_was_taken_back_spoils_no_honest_one() {
    let left = json!({ "kind": "part-left", "set": "lift", "by": "Kim Demo" });
    let lines = forged(VISIT, &[], &stranger(), &[opened(), left.clone(), left.clone(), left]);
    let (bad, start) = (file_of(&ruined(&lines)), file_of(&lines[..2]));
    // Nor where the good ones were here first.
    for first in [None, Some(&start)] {
        let (data, here) = scratch();
        if let Some(first) = first {
            here.import(&mut &first[..]).unwrap();
        }
        here.import(&mut &bad[..]).unwrap();
        take_back_all(&here);
        here.import(&mut &start[..]).unwrap();
        let stands = stand(&here, VISIT);
        assert_eq!((stands.entries, stands.broken_at), (2, None));
        assert_eq!(lines_of(&exported(&here, &[VISIT])), lines[..2]);
        let backup = tempfile::tempdir().unwrap();
        assert!(on_day(data.path(), backup.path(), 1).unwrap().visits_broken.is_empty());
        let (_new, new) = scratch();
        assert_eq!(restore(&new, backup.path()).imported.taken, [VISIT]);
    }
}
