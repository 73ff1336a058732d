//! The road test is there once everything felt and seen is in order, and a walk is whole without it. What it brings is
//! a suspicion like any noise: CAUTION at most. Common practice, no source.

use serde_json::{Value, json};
use steady_core::app::Steady;
use steady_core::model::standing::{Position, Standing};

use crate::support::{ask, case, code, report, scratch};

const CLEAN: &str = "road-speed-vibration=none idle-noise=none misfire-evidence=none air-leak-test=none \
    neutral-2500-buzz=none running-stop=none housing-look=sound play-vertical=none@warm play-lateral=none@warm \
    play-far-end=slides turn-by-hand=smooth~along coupling-look=sound shaft-look=sound shield-and-mounts=sound";

fn road_steps(standing: &Standing) -> usize {
    standing.steps.iter().filter(|step| step.set.as_deref() == Some("road")).count()
}

/// Where a visit of a manual car with these answers stands.
fn walked(layout: &str, answers: &str) -> Standing {
    let (_folder, steady) = scratch();
    visit(&steady, layout, answers)
}

fn visit(steady: &Steady, layout: &str, answers: &str) -> Standing {
    let mut case = case(layout, answers);
    case["vehicle"]["gearbox"] = json!("manual");
    let replayed = steady_core::app::replay::replay(steady, &case.to_string(), std::path::Path::new("."));
    ask(steady, json!({ "ask": "look", "visit": replayed.unwrap().visit }))
}

#[test]
fn a_road_test_waits_until_everything_felt_and_seen_is_in_order() {
    let rigid = "rigid-engine-speed";
    let without = |step: &str| {
        CLEAN.split_whitespace().filter(|it| !it.starts_with(step)).collect::<Vec<_>>().join(" ")
    };
    let with = |from: &str, to: &str| CLEAN.replace(from, to);
    for (answers, offered) in [
        (CLEAN.to_owned(), 4),
        (String::new(), 0),
        (without("play-lateral"), 0),
        (without("coupling-look"), 0),
        (without("shaft-look"), 0),
        (without("housing-look"), 0),
        (without("shield-and-mounts"), 0),
        (without("play-far-end"), 0),
        (without("idle-noise"), 4),
        (with("play-vertical=none@warm", "play-vertical=none@cold"), 0),
        (with("play-vertical=none@warm", "play-vertical=none"), 0),
        (with("turn-by-hand=smooth~along", "turn-by-hand=rough~free"), 0),
        (with("turn-by-hand=smooth~along", "turn-by-hand=not-done"), 4),
        (with("play-vertical=none@warm", "play-vertical=unsure"), 0),
        (with("play-vertical=none@warm", "play-vertical=not-done"), 0),
        (with("play-vertical=none@warm", "play-vertical=felt"), 0),
        (with("coupling-look=sound", "coupling-look=worn"), 0),
        (with("coupling-look=sound", "coupling-look=not-seen"), 0),
        (with("shaft-look=sound", "shaft-look=dented"), 0),
        (with("running-stop=none", "running-stop=heavy-knock"), 0),
    ] {
        assert_eq!(road_steps(&walked(rigid, &answers)), offered, "{answers}");
    }
}

#[test]
fn every_support_of_the_shaft_has_to_be_in_order() {
    let rubber = CLEAN.replace("housing-look", "support-look").replace("neutral-2500-buzz=none", "");
    let second =
        "support-look:2=sound play-vertical:2=springy@warm play-lateral:2=none@warm turn-by-hand:2=not-done";
    for (answers, offered) in [
        (rubber.clone(), 0),
        (format!("{rubber} {second}"), 4),
        (format!("{rubber} {}", second.replace("springy", "knocks")), 0),
        (format!("{rubber} {}", second.replace("springy@warm", "springy@cold")), 0),
    ] {
        assert_eq!(road_steps(&walked("two-centres", &answers)), offered, "{answers}");
    }
}

#[test]
fn a_walk_is_whole_without_the_road_test() {
    let (_folder, steady) = scratch();
    let mut case = case("rigid-engine-speed", &format!("{CLEAN} idle-speed=750~warm"));
    case["vehicle"]["gearbox"] = json!("manual");
    for answer in case["answers"].as_array_mut().unwrap() {
        if answer["step"] != "road-speed-vibration" {
            answer["waiver"] = json!("too-dark");
        }
    }
    let walk = |steady: &Steady, case: &Value| {
        let replayed = steady_core::app::replay::replay(steady, &case.to_string(), std::path::Path::new("."));
        let standing = ask(steady, json!({ "ask": "look", "visit": replayed.unwrap().visit }));
        // The part that is entered is left first.
        let left = standing.entered.is_some();
        if left { ask(steady, json!({ "ask": "leave-part", "visit": standing.visit })) } else { standing }
    };
    let seat = |standing: &Standing| standing.stations.iter().find(|it| it.id == "seat").unwrap().steps;
    let without = walk(&steady, &case);
    assert_eq!((road_steps(&without), without.position.clone()), (4, Position::Done));
    case["answers"].as_array_mut().unwrap().push(json!({ "step": "road-drive", "value": ["none"] }));
    let begun = walk(&steady, &case);
    assert_eq!(begun.position, Position::Done, "nor does a drive that was begun ask for the rest");
    assert_eq!(seat(&begun), seat(&without) + 1, "what was driven counts");
}

#[test]
fn a_road_test_too_early_is_refused() {
    let (_folder, steady) = scratch();
    let standing = visit(&steady, "rigid-engine-speed", "");
    let answer = json!({ "ask": "answer", "visit": standing.visit, "step": "road-drive", "value": ["none"] });
    assert_eq!(code(&steady, answer), "step-hidden");
    let gate =
        json!({ "ask": "confirm-gate", "visit": standing.visit, "set": "road", "gate": "road-law-allows" });
    assert_eq!(code(&steady, gate), "unknown-gate");
}

#[test]
fn what_a_road_test_brings_is_a_suspicion() {
    let first = |report: &Value| report["causes"][0]["id"].as_str().unwrap().to_owned();
    for (answers, word, cause) in [
        ("road-drive=none road-coast=none road-neutral=none", "NOTICE", "normal-character"),
        ("road-drive=vibration road-coast=vibration road-neutral=vibration", "CAUTION", "wheel-or-tyre"),
        (
            "road-drive=noise+vibration road-coast=noise road-neutral=noise+vibration",
            "CAUTION",
            "wheel-or-tyre",
        ),
        ("road-drive=vibration road-coast=none road-neutral=none", "CAUTION", "joint-angle-or-balance"),
        ("road-drive=not-driven", "NOTICE", "normal-character"),
    ] {
        let complained = if answers.contains("vibration") { "grows-with-speed" } else { "none" };
        let before =
            CLEAN.replace("road-speed-vibration=none", &format!("road-speed-vibration={complained}"));
        let mut case = case("rigid-engine-speed", &format!("{before} {answers}"));
        case["vehicle"]["gearbox"] = json!("manual");
        let report = report(&case);
        assert_eq!(report["urgency"]["word"], word, "{answers}: {report:#}");
        assert_eq!(first(&report), cause, "{answers}");
        assert_eq!(report["urgency"]["do_not_drive"], false, "{answers}");
    }
}
