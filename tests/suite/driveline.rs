//! What a specialist holds against a rating: drag of the wheels is not drag of the bearing, a bolt that nobody looked at
//! is named, a vibration on the road is not looked for at idle, and words and flags say the same. Probabilities are
//! bounds: workshop judgement, `common practice, no source`.

use serde_json::{Value, json};
use steady_core::app::Steady;
use steady_core::model::rating::Word;
use steady_core::model::rules::VERSION;
use steady_core::trade::texts::Texts;

use crate::support::{ask, case, report, scratch, standing_of};

const RIGID: &str = "rigid-engine-speed";
const RUBBER: &str = "rubber-centre";
const PLAYS: &str = "play-vertical=none@warm play-lateral=none@warm";
const SEEN: &str =
    "housing-look=sound play-far-end=none coupling-look=sound shaft-look=sound shield-and-mounts=sound";

/// What is asked at idle, or of what is heard there.
const AT_IDLE: [&str; 7] = [
    "idle-speed",
    "idle-noise",
    "idle-raise-effect",
    "clutch-pedal-effect",
    "selector-effect",
    "misfire-evidence",
    "air-leak-test",
];

fn word(report: &Value) -> &str {
    report["urgency"]["word"].as_str().unwrap_or("none")
}

fn rules(report: &Value) -> Vec<&str> {
    let reasons = report["urgency"]["reasons"].as_array().unwrap();
    reasons.iter().map(|reason| reason["rule"].as_str().unwrap()).collect()
}

fn said(report: &Value) -> String {
    let reasons = report["urgency"]["reasons"].as_array().unwrap();
    reasons.iter().map(|reason| reason["text"].as_str().unwrap()).collect::<Vec<_>>().join(" ")
}

fn first(report: &Value) -> &str {
    report["causes"][0]["id"].as_str().unwrap()
}

/// Replays a case and gives back a paper of it, as a screen gets it.
fn paper(steady: &Steady, case: &Value, kind: &str) -> Value {
    let replayed = steady_core::app::replay::replay(steady, &case.to_string(), std::path::Path::new("."));
    let request = json!({ "ask": kind, "visit": replayed.unwrap().visit, "locale": "en" });
    serde_json::from_str(&steady.handle_json(&request.to_string()).unwrap()).unwrap()
}

/// The same for a paper alone.
fn paper_of(case: &Value, kind: &str) -> String {
    let (_folder, steady) = scratch();
    paper(&steady, case, kind).to_string()
}

#[test]
fn a_shaft_turned_with_its_wheels_says_nothing_of_drag() {
    for (layout, plays) in [
        ("rigid-output-speed", PLAYS),
        (RUBBER, "play-vertical=none@warm play-lateral=none@warm support-look=sound"),
        ("half-shaft", "play-vertical=none@warm play-lateral=none@warm coupling-look=sound"),
        ("one-piece", "play-far-end=none coupling-look=sound"),
        ("front-shaft", "play-far-end=none coupling-look=sound"),
    ] {
        for (turn, expected, named) in [
            ("resists~along", "CAUTION", true),
            ("smooth~along", "NOTICE", true),
            ("smooth", "NOTICE", true),
            ("rough~along", "WARNING", true),
            ("resists~free", "WARNING", false),
            ("rough~free", "WARNING", false),
            ("smooth~free", "NOTICE", false),
        ] {
            let report = report(&case(layout, &format!("{plays} turn-by-hand={turn}")));
            assert_eq!(word(&report), expected, "{layout} {turn}: {report:#}");
            let limits = report["urgency"]["limits"].as_array().unwrap();
            assert_eq!(limits.contains(&json!("turn-by-hand")), named, "{layout} {turn}");
            if turn == "resists~along" {
                assert_eq!(rules(&report), ["stiff-with-wheels"], "{layout}");
                assert_eq!(report["next_check"]["step"], "turn-by-hand", "{layout}");
            }
        }
    }
}

#[test]
fn what_a_turned_engine_resists_is_no_row_of_law() {
    let rows = |turn: &str| {
        let standing = standing_of(&case(RIGID, &format!("{PLAYS} turn-by-hand={turn}")));
        standing.road_rows.iter().map(|row| row.id.clone()).collect::<Vec<_>>()
    };
    assert_eq!(rows("resists~along"), Vec::<String>::new());
    assert_eq!(rows("resists~free"), ["bearing"]);
    assert_eq!(rows("rough~along"), ["bearing"]);
}

/// The question names what turns along on this car.
#[test]
fn a_step_asks_whether_the_shaft_is_free_of_what_turns_with_it() {
    let asks = |layout: &str| {
        let standing = standing_of(&case(layout, ""));
        let turn = standing.steps.into_iter().find(|step| step.id == "turn-by-hand").unwrap();
        serde_json::to_value(turn.asks_free).unwrap()
    };
    assert_eq!((asks(RIGID), asks("torque-tube")), (json!("engine"), json!("engine")));
    assert_eq!((asks(RUBBER), asks("half-shaft")), (json!("wheels"), json!("wheels")));
}

/// Smooth without a word about the wheels was free then, an idle read cold and slow was sorted, WARNING did not set
/// the flag, and what was not looked at beyond the support was not named.
#[test]
fn a_visit_can_be_read_as_the_second_rules_rated_it() {
    let second = Texts::earlier().remove(1).read().unwrap().0;
    assert_eq!(second.rules.version, 2);
    for (answers, now, then) in [
        ("turn-by-hand=smooth", (Word::Notice, 2, 4), (Word::Notice, 1, 0)),
        ("turn-by-hand=resists~along", (Word::Caution, 2, 4), (Word::Notice, 2, 0)),
        ("turn-by-hand=rough~free", (Word::Warning, 1, 4), (Word::Warning, 1, 0)),
    ] {
        let (_folder, steady) = scratch();
        let case = case("rigid-output-speed", &format!("{PLAYS} {answers}")).to_string();
        let replayed = steady_core::app::replay::replay(&steady, &case, std::path::Path::new(".")).unwrap();
        let read = |request: Value| {
            let urgency = ask(&steady, request).urgency;
            (
                urgency.word.unwrap(),
                urgency.limits.len(),
                urgency.unlooked.len(),
                urgency.do_not_drive,
                urgency.rules,
            )
        };
        let today = read(json!({ "ask": "look", "visit": replayed.visit }));
        assert_eq!(today, (now.0, now.1, now.2, Some(now.0 >= Word::Warning), VERSION), "{answers}");
        let earlier =
            json!({ "ask": "look-as-sorted", "visit": replayed.visit, "knowledge": second.version });
        assert_eq!(read(earlier), (then.0, then.1, then.2, Some(false), 2), "{answers}");
    }
}

#[test]
fn what_forbids_driving_sets_the_flag() {
    for (answers, expected, flag) in [
        ("play-vertical=felt", "DANGER", json!(true)),
        ("play-vertical=none@warm play-lateral=none@warm turn-by-hand=rough~free", "WARNING", json!(true)),
        ("play-vertical=none@warm play-lateral=none@warm idle-noise=hiss", "CAUTION", json!(false)),
        ("play-vertical=none@warm play-lateral=none@warm", "NOTICE", json!(false)),
        ("", "none", Value::Null),
    ] {
        let report = report(&case(RIGID, answers));
        assert_eq!((word(&report), &report["urgency"]["do_not_drive"]), (expected, &flag), "{answers}");
    }
}

#[test]
fn what_nobody_looked_at_is_said_where_nothing_was_found() {
    let all =
        "play at the far end of the shaft, couplings and their bolts, the shaft itself, shields and mounts";
    for (answers, unlooked, parts) in [
        (String::new(), 4, all),
        (SEEN.to_owned(), 0, ""),
        (SEEN.replace("coupling-look=sound", "coupling-look=not-seen"), 1, "couplings and their bolts"),
        (SEEN.replace("coupling-look=sound", ""), 1, "couplings and their bolts"),
        (SEEN.replace("play-far-end=none", "play-far-end=not-done"), 1, "play at the far end of the shaft"),
        (SEEN.replace("coupling-look=sound", "coupling-look=none-fitted"), 0, ""),
    ] {
        let case = case(RIGID, &format!("{PLAYS} turn-by-hand=smooth~free idle-noise=none {answers}"));
        let report = report(&case);
        assert_eq!(word(&report), "NOTICE", "{answers}");
        assert_eq!(report["urgency"]["unlooked"].as_array().unwrap().len(), unlooked, "{answers}");
        let (finding, note) = (paper_of(&case, "finding"), paper_of(&case, "note"));
        let sentence =
            format!("Not looked at, or not all of it: {parts}. This rating says nothing about that.");
        let headline = "No bearing work needed, as far as checked";
        let in_part = unlooked > 0 || answers.is_empty();
        assert_eq!(said(&report).contains(&sentence), in_part, "{}", said(&report));
        assert_eq!(
            (finding.contains(&sentence), finding.contains(headline)),
            (in_part, in_part),
            "{finding}"
        );
        assert_eq!(note.contains(headline), in_part, "{note}");
        let next = format!("Before the car is handed back, look at what was left out: {parts}.");
        assert_eq!(finding.contains(&next), unlooked > 0, "{finding}");
        assert_eq!(finding.contains("no bearing work is needed, as far as checked"), in_part, "{finding}");
        assert_eq!(note.contains("We did not look at all of this: "), in_part, "{note}");
    }
}

/// Where the ends are what decides, they are missing and not merely unlooked at.
#[test]
fn both_ends_of_a_shaft_without_a_bearing_are_said() {
    let (felt, unsure) = ("play-far-end=felt", "play-far-end=unsure");
    for (answers, trade, owner) in [
        (felt, "was felt at one of its ends or both", "loose at one of its ends, or at both"),
        (unsure, "Both ends of the shaft were felt", "movement at both ends of the shaft"),
    ] {
        let case = case("one-piece", answers);
        let report = report(&case);
        assert!(said(&report).contains(trade), "{}", said(&report));
        assert!(!report["urgency"]["unlooked"].as_array().unwrap().contains(&json!("play-far-end")));
        let (finding, note) = (paper_of(&case, "finding"), paper_of(&case, "note"));
        assert!(finding.contains(trade) && finding.contains("Play at both ends"), "{finding}");
        assert!(note.contains(owner), "{note}");
        assert!(!(finding + &note).contains("at its far end"));
    }
}

/// Where there is no bearing, none is said to be unchecked.
#[test]
fn a_shaft_without_a_bearing_is_limited_by_its_joints() {
    let case = case("front-shaft", "play-far-end=none turn-by-hand=smooth~along");
    let (finding, note) = (paper_of(&case, "finding"), paper_of(&case, "note"));
    assert!(finding.contains("the joints were not turned by themselves"), "{finding}");
    assert!(note.contains("We did not turn the shaft by itself."), "{note}");
    assert!(!(finding + &note).contains("bearing was not checked"));
}

#[test]
fn a_vibration_on_the_road_is_not_looked_for_at_idle() {
    for layout in [RIGID, RUBBER, "rigid-output-speed", "half-shaft", "two-centres"] {
        let second =
            if layout == "two-centres" { "play-vertical:2=none@warm play-lateral:2=none@warm" } else { "" };
        for account in ["road-speed-vibration=grows-with-speed", ""] {
            let mut case = case(layout, &format!("{PLAYS} {second} {account}"));
            case["complaint"] = json!("it vibrates on the road");
            let report = report(&case);
            let next = report["next_check"]["step"].as_str().unwrap_or("none");
            assert!(!AT_IDLE.contains(&next), "{layout} {account}: {next}");
        }
    }
    // Where the owner says that speed has nothing to do with it, or tells of a rattle too, idle is where to listen.
    let done = format!("{PLAYS} {SEEN} turn-by-hand=smooth~free road-speed-vibration=none");
    let mut rattles = case(RIGID, &done);
    rattles["complaint"] = json!("it vibrates and rattles");
    let next = report(&rattles)["next_check"]["step"].clone();
    assert!(AT_IDLE.contains(&next.as_str().unwrap()), "{next}");
}

#[test]
fn a_message_says_no_sentence_twice() {
    let (_folder, steady) = scratch();
    for answers in [
        format!("{PLAYS} turn-by-hand=smooth~along idle-noise=none"),
        format!("{PLAYS} turn-by-hand=not-done idle-noise=none {SEEN}"),
        format!("{PLAYS} idle-noise=hiss turn-by-hand=smooth~along"),
    ] {
        let note = paper(&steady, &case(RIGID, &answers), "note");
        let text = note.to_string();
        let short = text.split("\"short_text\":\"").nth(1).unwrap().split("\",\"").next().unwrap().to_owned();
        let sentences: Vec<&str> = short.split(". ").map(|one| one.trim_end_matches('.')).collect();
        for (at, one) in sentences.iter().enumerate() {
            assert!(!sentences[at + 1..].contains(one), "{one}: {short}");
        }
    }
}

#[test]
fn of_a_closed_tube_nobody_says_that_a_hand_felt_nothing() {
    let case = case("torque-tube", "idle-noise=hiss+whine air-leak-test=none");
    let report = report(&case);
    assert_eq!((word(&report), rules(&report)[0]), ("CAUTION", "bearing-likely"), "{report:#}");
    let note = paper_of(&case, "note");
    assert!(said(&report).contains("no hand could feel for it"), "{}", said(&report));
    assert!(note.contains("nobody could feel for it yet") && !note.contains("felt nothing wrong"), "{note}");
}

#[test]
fn a_hum_that_a_bend_changes_is_the_wheel_bearing() {
    let clean = "road-speed-vibration=none idle-noise=none running-stop=none turn-by-hand=not-done";
    for layout in [RIGID, "rigid-output-speed", "half-shaft"] {
        for (drive, expected) in [
            (
                "road-drive=noise road-coast=noise road-neutral=noise road-bend=louder",
                "wheel-bearing-or-axle",
            ),
            ("road-drive=none road-coast=none road-neutral=none road-bend=none", "normal-character"),
        ] {
            let mut case = case(layout, &format!("{PLAYS} {SEEN} {clean} {drive}"));
            case["vehicle"]["gearbox"] = json!("manual");
            case["complaint"] = json!("a humming from below");
            let report = report(&case);
            assert_eq!(first(&report), expected, "{layout} {drive}: {report:#}");
            assert!(word(&report) != "WARNING" && word(&report) != "DANGER", "{layout} {drive}");
        }
    }
}

#[test]
fn a_shaft_and_what_is_around_it_can_show_several_things() {
    let answers = format!("{PLAYS} shaft-look=dented+weight-missing shield-and-mounts=touching+mount-broken");
    let case = case(RIGID, &answers);
    let report = report(&case);
    assert_eq!(word(&report), "WARNING");
    assert!(rules(&report).contains(&"shaft-damaged") && rules(&report).contains(&"mount-broken"));
    let rows: Vec<String> = standing_of(&case).road_rows.iter().map(|row| row.id.clone()).collect();
    assert!(rows.contains(&"shaft".to_owned()) && rows.contains(&"mount".to_owned()), "{rows:?}");
    // What an earlier case file says with one word is read as it was.
    let mut one = self::case(RIGID, PLAYS);
    one["answers"].as_array_mut().unwrap().push(json!({ "step": "shaft-look", "value": "dented" }));
    let report = crate::support::report(&one);
    assert_eq!(word(&report), "WARNING");
}

/// Nobody takes photos while driving, and nobody is asked why there is none.
#[test]
fn a_case_gives_no_reason_for_no_photo_where_none_is_wanted() {
    let road = "road-drive=none road-coast=none road-neutral=none road-bend=none";
    let rest = "road-speed-vibration=none running-stop=none turn-by-hand=not-done";
    let mut case = case(RIGID, &format!("{PLAYS} {SEEN} {rest} {road}"));
    case["vehicle"]["gearbox"] = json!("manual");
    let standing = standing_of(&case);
    for step in standing.steps.iter().filter(|step| step.answered.is_some()) {
        let told = ["road-speed-vibration", "running-stop"].contains(&step.id.as_str());
        let nothing_to_show = told || step.set.as_deref() == Some("road");
        assert_eq!(step.waiver.is_none(), nothing_to_show, "{}", step.id);
    }
    assert!(!paper_of(&case, "finding").contains("On the road: pulling\",\"no photo"));
}
