//! A photo that is being taken when the app ends: the wish is on disk before the camera opens, and what
//! arrives after a restart finds its visit and step.

use std::io::{BufRead, BufReader};
use std::path::Path;
use std::process::{Command, Stdio};

use serde_json::{Value, json};
use steady_core::app::Steady;
use steady_core::app::request::Request;
use steady_core::app::response::Response;
use steady_core::model::wish::PhotoWish;

use crate::photo_marks::{jpeg, upload, visit};
use crate::support::{ask, code, open, scratch};

const STEP: &str = "housing-look";
const FIRST: &str = "0191d2f0-0000-7000-8000-00000000aaa1";
const SECOND: &str = "0191d2f0-0000-7000-8000-00000000aaa2";

#[track_caller]
fn wishes(steady: &Steady, request: Value) -> Vec<PhotoWish> {
    let request: Request = serde_json::from_value(request).unwrap();
    match steady.handle(request).unwrap() {
        Response::Wanted { wishes } => wishes,
        other => panic!("no wishes but {other:?}"),
    }
}

fn wanted(steady: &Steady, visit: &str) -> Vec<PhotoWish> {
    wishes(steady, json!({ "ask": "wanted-photos", "visit": visit }))
}

fn want(visit: &str, step: &str, wish: &str) -> Value {
    json!({ "ask": "want-photo", "visit": visit, "step": step, "wish": wish })
}

/// Starts a process that wishes for a photo, and kills it once its reply is there: its visit and wish.
fn wish_and_kill(folder: &Path) -> (String, String) {
    let mut child =
        Command::new(env!("CARGO_BIN_EXE_wisher")).arg(folder).stdout(Stdio::piped()).spawn().unwrap();
    let mut line = String::new();
    BufReader::new(child.stdout.take().unwrap()).read_line(&mut line).unwrap();
    child.kill().unwrap();
    child.wait().unwrap();
    let (visit, wish) = line.trim().split_once(' ').unwrap();
    (visit.to_owned(), wish.to_owned())
}

#[test]
fn a_photo_that_arrives_after_a_kill_finds_its_step() {
    let folder = tempfile::tempdir().unwrap();
    let (visit, wish) = wish_and_kill(folder.path());
    let steady = open(folder.path()).unwrap();
    let open = wanted(&steady, &visit);
    assert_eq!(open.iter().map(|open| (&*open.id, &*open.step)).collect::<Vec<_>>(), [(&*wish, STEP)]);
    let upload = upload(&steady, &jpeg(90));
    let standing = ask(&steady, json!({ "ask": "keep-wanted", "wish": wish, "upload": upload }));
    assert_eq!(standing.visit, visit);
    let pictured: Vec<&str> =
        standing.steps.iter().filter(|step| step.photo.is_some()).map(|step| &*step.id).collect();
    assert_eq!(pictured, [STEP]);
    assert!(wanted(&steady, &visit).is_empty());
    let again = json!({ "ask": "keep-wanted", "wish": wish, "upload": upload });
    assert_eq!(code(&steady, again), "photo-not-wanted");
}

#[test]
fn a_wish_that_is_no_longer_wanted_is_forgotten() {
    let folder = tempfile::tempdir().unwrap();
    let (visit, wish) = wish_and_kill(folder.path());
    let steady = open(folder.path()).unwrap();
    let drop = json!({ "ask": "drop-wanted", "visit": visit, "step": STEP });
    assert!(wishes(&steady, drop).is_empty());
    let upload = upload(&steady, &jpeg(90));
    assert_eq!(
        code(&steady, json!({ "ask": "keep-wanted", "wish": wish, "upload": upload })),
        "photo-not-wanted"
    );
    let standing = ask(&steady, json!({ "ask": "look", "visit": visit }));
    assert!(standing.steps.iter().all(|step| step.photo.is_none()));
}

#[test]
fn a_step_has_one_wish_and_a_kept_photo_meets_it() {
    let (_folder, steady) = scratch();
    let visit = visit(&steady);
    wishes(&steady, want(&visit, STEP, FIRST));
    let open = wishes(&steady, want(&visit, STEP, SECOND));
    assert_eq!(open.iter().map(|open| &*open.id).collect::<Vec<_>>(), [SECOND]);
    assert_eq!(wishes(&steady, want(&visit, "shaft-look", FIRST)).len(), 2);
    let entries = ask(&steady, json!({ "ask": "look", "visit": visit })).ledger.entries;
    assert_eq!(entries, 1, "a wish is no entry");
    let upload = upload(&steady, &jpeg(90));
    ask(&steady, json!({ "ask": "keep-photo", "visit": visit, "step": STEP, "upload": upload }));
    let left = wanted(&steady, &visit);
    assert_eq!(left.iter().map(|open| &*open.step).collect::<Vec<_>>(), ["shaft-look"]);
}

#[test]
fn a_wish_needs_a_visit_a_step_and_a_name() {
    let (_folder, steady) = scratch();
    let visit = visit(&steady);
    for (request, verdict) in [
        (want("nobody", STEP, FIRST), "unknown-visit"),
        (want(&visit, "no-step", FIRST), "unknown-step"),
        (want(&visit, "tube-open-check", FIRST), "step-does-not-apply"),
        (want(&visit, STEP, "../steady.db"), "unknown-request"),
    ] {
        assert_eq!(code(&steady, request.clone()), verdict, "{request}");
    }
    assert!(wanted(&steady, &visit).is_empty());
}

#[test]
fn erasing_a_visit_takes_its_wishes_along() {
    let (folder, steady) = scratch();
    let visit = visit(&steady);
    wishes(&steady, want(&visit, STEP, FIRST));
    steady.erase(&visit, visit.rsplit('-').next().unwrap()).unwrap();
    drop(steady);
    let database = rusqlite::Connection::open(folder.path().join("steady.db")).unwrap();
    let left: i64 = database.query_row("SELECT count(*) FROM pending_capture", [], |row| row.get(0)).unwrap();
    assert_eq!(left, 0);
}
