//! Bad input: a named code, a sentence that says what to do, and the ledger as it was.

use std::path::Path;

use serde_json::{Value, json};
use steady_core::app::failure::Failure;
use steady_core::app::replay::replay;
use steady_core::app::request::Request;
use steady_core::app::response::Response;

use crate::support::{ask, case, code, open, scratch};

fn visits(steady: &steady_core::app::Steady) -> u64 {
    let Response::Home(home) = steady.handle(Request::Home).unwrap() else { panic!("no home") };
    home.visits
}

#[track_caller]
fn says_what_to_do(failure: &Failure, code: &str) {
    assert_eq!(failure.code, code);
    for text in [&failure.message, &failure.help] {
        assert!(text.len() > 10 && !text.starts_with("error-"), "{code}: {text}");
    }
}

/// A case with one thing wrong, and the code it must be refused with.
#[track_caller]
fn refused(case: &Value, code: &str) {
    let (_folder, steady) = scratch();
    let failure = replay(&steady, &case.to_string(), Path::new(".")).unwrap_err();
    says_what_to_do(&failure, code);
    assert_eq!(visits(&steady), 0, "a refused case left a visit behind");
}

#[test]
fn refused_cases_leave_no_visit() {
    let rigid = |answers: &str| case("rigid-engine-speed", answers);
    refused(&rigid("kick-the-tyres=none"), "unknown-step");
    refused(&rigid("play-vertical=none turn-by-hand=wobbly"), "unknown-answer");
    refused(&rigid("play-vertical=12"), "wrong-kind-of-answer");
    refused(&rigid("idle-speed=fast"), "wrong-kind-of-answer");
    refused(&rigid("idle-noise=none+rattle"), "answers-contradict");
    refused(&rigid("housing-look=sound+cracked"), "answers-contradict");
    refused(&rigid("play-vertical=within-figure"), "unknown-answer");
    refused(&rigid("tube-open-check=none"), "step-does-not-apply");
    refused(&case("rubber-centre", "neutral-2500-buzz=felt"), "step-does-not-apply");
    refused(&case("torque-tube", "play-vertical=none"), "step-does-not-apply");
    refused(&rigid("idle-noise=none idle-raise-effect=gone"), "step-hidden");
    refused(&rigid("engagement-setting=standard engagement-reset-effect=gone"), "step-hidden");
    refused(&case("sky-hook", ""), "unknown-layout");
}

#[test]
fn readings_have_both_bounds() {
    for (rpm, verdict) in
        [(199, "reading-out-of-range"), (200, "ok"), (9_000, "ok"), (9_001, "reading-out-of-range")]
    {
        let (_folder, steady) = scratch();
        let case = case("rigid-engine-speed", &format!("idle-speed={rpm}"));
        let done = replay(&steady, &case.to_string(), Path::new("."));
        assert_eq!(done.err().map_or_else(|| "ok".to_owned(), |failure| failure.code), verdict, "{rpm}");
    }
}

/// Whoever signs for a car that must not be driven has read the note: a slip of the finger is nobody's word.
#[test]
fn a_dot_or_a_short_swipe_is_no_signature() {
    let (_folder, steady) = scratch();
    let visit =
        ask(&steady, json!({ "ask": "open", "intake": { "vehicle": { "layout": "rigid-engine-speed" } } }))
            .visit;
    let sha256 = crate::support::note(&steady, &visit).sha256;
    let sign = |strokes: Value| {
        code(
            &steady,
            json!({ "ask": "sign", "visit": visit, "decision": "repair", "name": "", "locale": "en",
                "note_sha256": sha256, "strokes": strokes }),
        )
    };
    for (strokes, expected) in [
        (json!([]), "signature-empty"),
        (json!([[[0.5, 0.5]]]), "signature-empty"),
        (json!([[[0.3, 0.5], [0.5, 0.5]]]), "signature-empty"),
        (json!([[[0.1, 0.5], [1.5, 0.5]]]), "signature-refused"),
        (json!([[[0.2, 0.4], [0.4, 0.7], [0.6, 0.3]]]), "ok"),
    ] {
        assert_eq!(sign(strokes.clone()), expected, "{strokes}");
    }
}

/// One code stands for any of a dozen fields of the intake; the failure says which.
#[test]
fn a_refused_intake_names_its_field() {
    let (_folder, steady) = scratch();
    let field = |change: Value| {
        let mut intake = json!({ "vehicle": { "layout": "rigid-engine-speed" } });
        for (name, value) in change.as_object().unwrap() {
            let about = if name == "owner" { &mut intake } else { &mut intake["vehicle"] };
            about[name] = value.clone();
        }
        let request = json!({ "ask": "open", "intake": intake }).to_string();
        let failure: Value = serde_json::from_str(&steady.handle_json(&request).unwrap_err()).unwrap();
        failure["field"].as_str().unwrap_or_default().to_owned()
    };
    assert_eq!(field(json!({ "cylinders": 0 })), "cylinders");
    assert_eq!(field(json!({ "idle_rpm": [900, 700] })), "idle_rpm");
    assert_eq!(field(json!({ "odometer": { "value": 4_000_000_000_u32, "unit": "km" } })), "odometer");
    assert_eq!(field(json!({ "plate": "x".repeat(201) })), "plate");
    assert_eq!(field(json!({ "warm_from_c": 5.0 })), "warm_from_c");
    assert_eq!(field(json!({ "owner": { "name": "x".repeat(201), "contact": "" } })), "owner.name");
}

#[test]
fn manual_gearbox_has_no_creep() {
    let mut with_manual = case("rigid-engine-speed", "creep-noise=none");
    with_manual["vehicle"]["gearbox"] = json!("manual");
    refused(&with_manual, "step-does-not-apply");
}

#[test]
fn case_cut_short_is_unreadable() {
    let (_folder, steady) = scratch();
    let whole = case("rigid-engine-speed", "play-vertical=none").to_string();
    for cut in [0, 1, whole.len() / 2, whole.len() - 1] {
        let failure = replay(&steady, &whole[..cut], Path::new(".")).unwrap_err();
        says_what_to_do(&failure, "case-unreadable");
    }
    assert_eq!(visits(&steady), 0);
}

/// A case may name any file as a photo: one that never ends is read as far as a photo may be long.
#[test]
#[cfg(unix)]
fn photo_without_end_is_refused() {
    let mut endless = case("rigid-engine-speed", "play-vertical=none");
    endless["answers"][0]["photo"] = json!("/dev/zero");
    refused(&endless, "photo-too-large");
    endless["answers"][0]["photo"] = json!("/nowhere/at/all.jpg");
    refused(&endless, "case-photo-unreadable");
}

#[test]
fn named_gates_are_taken_word_for_word() {
    let mut shut = case("rigid-engine-speed", "play-vertical=none");
    shut["answers"] = json!([{ "gate": "engine-off" }, { "step": "play-vertical", "value": "none" }]);
    refused(&shut, "gate-closed");
    shut["answers"] = json!([{ "gate": "engine-of" }]);
    refused(&shut, "unknown-gate");
}

#[test]
fn refused_requests_change_nothing() {
    let (_folder, steady) = scratch();
    let standing =
        ask(&steady, json!({ "ask": "open", "intake": { "vehicle": { "layout": "rigid-engine-speed" } } }));
    let visit = &standing.visit;
    for (request, expected) in [
        (json!({ "ask": "look", "visit": "nobody" }), "unknown-visit"),
        (json!({ "ask": "leave-part", "visit": visit }), "part-not-entered"),
        (
            json!({ "ask": "confirm-gate", "visit": visit, "set": "lift", "gate": "fumes-out" }),
            "unknown-gate",
        ),
        (
            json!({ "ask": "waive-photo", "visit": visit, "step": "shaft-look", "reason": " " }),
            "waiver-empty",
        ),
        (json!({ "ask": "undo", "visit": visit, "entry": "x" }), "nothing-to-undo"),
        (json!({ "ask": "note", "visit": visit, "locale": "tlh" }), "unknown-locale"),
        (
            json!({ "ask": "keep-photo", "visit": visit, "step": "shaft-look", "upload": "0191d2f0-0000-7000-8000-000000000000" }),
            "upload-unknown",
        ),
        (
            json!({ "ask": "sign", "visit": visit, "decision": "repair", "note_sha256": "old", "locale": "en", "strokes": [[[0.1, 0.1], [0.2, 0.2]]] }),
            "note-changed",
        ),
        (
            json!({ "ask": "amend", "visit": visit, "intake": { "vehicle": { "layout": "rigid-engine-speed", "cylinders": 0 } } }),
            "intake-refused",
        ),
        (
            json!({ "ask": "amend", "visit": visit, "intake": { "vehicle": { "layout": "rubber-centre", "seat": "bare" } } }),
            "intake-refused",
        ),
        (json!({ "ask": "set-technician", "name": " " }), "technician-missing"),
        (json!({ "ask": "set-technician", "name": "x".repeat(201) }), "name-too-long"),
        (
            json!({ "ask": "amend", "visit": visit, "intake": { "vehicle": { "layout": "rigid-engine-speed", "plate": "x".repeat(201) } } }),
            "intake-too-long",
        ),
        (
            json!({ "ask": "confirm-outcome", "visit": visit, "causes": ["misfire"], "by": "x".repeat(201) }),
            "name-too-long",
        ),
    ] {
        assert_eq!(code(&steady, request.clone()), expected, "{request}");
        assert_eq!(
            ask(&steady, json!({ "ask": "look", "visit": visit })).ledger,
            standing.ledger,
            "{request}"
        );
    }
}

#[test]
fn unreadable_request_is_named() {
    let (_folder, steady) = scratch();
    for request in ["", "{}", "{\"ask\":\"dance\"}", "{\"ask\":\"look\"}"] {
        let failure: Value = serde_json::from_str(&steady.handle_json(request).unwrap_err()).unwrap();
        assert_eq!(failure["code"], "unknown-request", "{request}");
    }
}

#[test]
fn nothing_is_recorded_without_a_name() {
    let folder = tempfile::tempdir().unwrap();
    let steady = open(folder.path()).unwrap();
    let request = json!({ "ask": "open", "intake": { "vehicle": { "layout": "rigid-engine-speed" } } });
    assert_eq!(code(&steady, request), "technician-missing");
}

#[test]
fn second_process_on_the_same_data_is_refused() {
    let (folder, _steady) = scratch();
    says_what_to_do(&open(folder.path()).err().unwrap(), "in-use");
}

#[test]
fn folder_that_cannot_be_made_is_named() {
    let folder = tempfile::tempdir().unwrap();
    let file = folder.path().join("taken");
    std::fs::write(&file, b"a file").unwrap();
    says_what_to_do(&open(&file).err().unwrap(), "data-folder-unwritable");
}

#[test]
fn own_layout_files_are_checked_one_by_one() {
    let folder = tempfile::tempdir().unwrap();
    let layouts = folder.path().join("layouts");
    std::fs::create_dir_all(&layouts).unwrap();
    let good = "id = \"twin-rubber\"\nname = \"Twin rubber\"\nsupport = \"rubber\"\nspeed = \"output\"\nallowed_movement = \"maker-figure\"\n\
                causes = [\"worn-bearing\", \"torn-support-rubber\"]\nbasis = \"common practice, no source\"\n";
    std::fs::write(layouts.join("good.toml"), good).unwrap();
    std::fs::write(
        layouts.join("no-basis.toml"),
        good.replace("common practice, no source", " ").replace("twin-rubber", "other"),
    )
    .unwrap();
    std::fs::write(layouts.join("taken.toml"), good.replace("twin-rubber", "rubber-centre")).unwrap();
    std::fs::write(layouts.join("broken.toml"), "id = \"x\"\nsupport = \n").unwrap();
    let steady = open(folder.path()).unwrap();
    let Response::Home(home) = steady.handle(Request::Home).unwrap() else { panic!("no home") };
    assert!(
        home.layouts
            .iter()
            .any(|layout| layout.id == "twin-rubber" && layout.own_name.as_deref() == Some("Twin rubber"))
    );
    let refused: Vec<&str> =
        home.notices.iter().map(|notice| notice.detail.split(':').next().unwrap()).collect();
    assert_eq!(refused, ["broken.toml", "no-basis.toml", "taken.toml"]);
    assert!(home.notices[0].detail.contains("line 2"), "{}", home.notices[0].detail);
}
