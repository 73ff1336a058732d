//! The cases of the trade that must come out, each through `replay` as the command line drives it.
//! Probabilities are bounds: workshop judgement, `common practice, no source`.

use serde_json::{Value, json};

use crate::support::{case, probability, report, standing_of};

const RIGID: &str = "rigid-engine-speed";

/// A case of a car whose maker gives a movement figure.
fn figured(layout: &str, answers: &str) -> Value {
    let mut case = case(layout, answers);
    case["vehicle"]["maker_play_mm"] = json!(4.0);
    case
}

/// What a case must come to.
struct Expect<'a> {
    layout: &'a str,
    answers: &'a str,
    word: Option<&'a str>,
    first: Option<&'a str>,
    /// Cause and least probability.
    at_least: &'a [(&'a str, f64)],
    /// Greatest probability of the bearing group.
    bearing_at_most: f64,
}

const ANY: Expect<'static> =
    Expect { layout: RIGID, answers: "", word: None, first: None, at_least: &[], bearing_at_most: 1.0 };

#[track_caller]
fn check(expect: &Expect<'_>) -> Value {
    let report = report(&case(expect.layout, expect.answers));
    assert_eq!(report["urgency"]["word"], json!(expect.word), "{report:#}");
    let forbidden = expect.word.map(|word| ["DANGER", "WARNING"].contains(&word));
    let missing = !report["urgency"]["missing"].as_array().unwrap().is_empty();
    let drive = forbidden.filter(|forbidden| *forbidden || !missing);
    assert_eq!(report["urgency"]["do_not_drive"], json!(drive));
    if let Some(first) = expect.first {
        assert_eq!(report["causes"][0]["id"], first, "{report:#}");
    }
    for (cause, bound) in expect.at_least {
        let found = probability(&report, cause);
        assert!(found >= *bound, "{cause} at {found}, wanted at least {bound}");
    }
    let bearing = report["bearing_probability"].as_f64().unwrap();
    assert!(bearing <= expect.bearing_at_most, "bearing group at {bearing}");
    report
}

#[test]
fn low_idle_rattle_is_not_the_bearing() {
    check(&Expect {
        answers: "idle-speed=560 idle-noise=rattle idle-raise-effect=gone play-vertical=none play-lateral=none turn-by-hand=smooth",
        word: Some("CAUTION"),
        first: Some("low-idle"),
        at_least: &[("low-idle", 0.7)],
        bearing_at_most: 0.1,
        ..ANY
    });
}

#[test]
fn creep_rattle_with_raised_setting_is_early_engagement() {
    check(&Expect {
        answers: "creep-noise=rattle engagement-setting=raised engagement-reset-effect=gone play-vertical=none play-lateral=none turn-by-hand=smooth",
        word: Some("CAUTION"),
        first: Some("early-engagement"),
        ..ANY
    });
}

#[test]
fn pops_with_counts_are_a_misfire() {
    let report = check(&Expect {
        answers: "idle-noise=pops misfire-evidence=counts play-vertical=none play-lateral=none turn-by-hand=smooth",
        word: Some("CAUTION"),
        first: Some("misfire"),
        ..ANY
    });
    let reasons = report["urgency"]["reasons"].as_array().unwrap();
    let catalyst = |reason: &Value| reason["text"].as_str().unwrap().to_lowercase().contains("catalyst");
    assert!(reasons.iter().any(|reason| reason["rule"] == "cause-likely" && catalyst(reason)));
}

#[test]
fn buzz_and_vertical_play_condemn_the_seat() {
    let report = check(&Expect {
        answers: "neutral-2500-buzz=felt play-vertical=felt",
        word: Some("DANGER"),
        first: Some("loose-seat"),
        at_least: &[("loose-seat", 0.9)],
        ..ANY
    });
    assert_eq!(report["urgency"]["complete"], false);
    assert_eq!(report["urgency"]["missing"], json!(["play-lateral"]));
    assert_eq!(report["urgency"]["limits"], json!(["housing-look", "turn-by-hand"]));
}

#[test]
fn hiss_and_resistance_without_play_is_a_squeezed_bearing() {
    check(&Expect {
        answers: "idle-noise=hiss play-vertical=none play-lateral=none turn-by-hand=resists air-leak-test=none",
        word: Some("WARNING"),
        first: Some("squeezed-bearing"),
        ..ANY
    });
}

#[test]
fn buzz_without_hands_has_no_rating() {
    let report = check(&Expect { answers: "neutral-2500-buzz=felt", ..ANY });
    let next = report["next_check"]["step"].as_str().unwrap();
    assert!(["play-vertical", "play-lateral"].contains(&next), "next is {next}");
    assert_eq!(report["urgency"]["do_not_drive"], Value::Null);
}

#[test]
fn misfire_does_not_clear_a_bearing() {
    check(&Expect {
        answers: "idle-noise=pops misfire-evidence=counts play-lateral=felt",
        word: Some("DANGER"),
        at_least: &[("misfire", 0.8), ("loose-seat", 0.8)],
        ..ANY
    });
}

#[test]
fn nothing_heard_and_nothing_found_is_normal_character() {
    let report = check(&Expect {
        answers: "road-speed-vibration=none idle-speed=750 idle-noise=none misfire-evidence=none air-leak-test=none \
                  engagement-setting=standard neutral-2500-buzz=none running-stop=none creep-noise=none \
                  housing-look=sound play-vertical=none@warm play-lateral=none@warm play-far-end=none turn-by-hand=smooth \
                  coupling-look=sound shaft-look=sound shield-and-mounts=sound",
        word: Some("NOTICE"),
        first: Some("normal-character"),
        ..ANY
    });
    assert_eq!(report["next_check"], Value::Null);
    let text = report["urgency"]["reasons"][0]["text"].as_str().unwrap().to_lowercase();
    assert!(text.contains("not reproduced"), "{text}");
}

#[test]
fn unsure_and_not_tried_never_read_as_safe() {
    let unsure = "road-speed-vibration=not-tried misfire-evidence=not-read air-leak-test=not-tried engagement-setting=unknown \
                  neutral-2500-buzz=not-tried creep-noise=not-tried play-vertical=unsure play-lateral=unsure play-far-end=unsure";
    for (turn, word) in
        [("", "WARNING"), (" turn-by-hand=not-done", "WARNING"), (" turn-by-hand=smooth", "WARNING")]
    {
        check(&Expect { answers: &format!("{unsure}{turn}"), word: Some(word), ..ANY });
    }
    check(&Expect {
        answers: "neutral-2500-buzz=not-tried play-vertical=not-done play-lateral=not-done",
        ..ANY
    });
}

#[test]
fn rubber_within_its_figure_is_no_bearing() {
    for seat in ["none", "within-figure"] {
        let answers = format!(
            "play-vertical={seat}@warm play-lateral=within-figure@warm support-look=sound turn-by-hand=smooth"
        );
        let report = report(&figured("rubber-centre", &answers));
        assert_eq!(report["urgency"]["word"], "NOTICE", "{report:#}");
        assert_eq!(report["urgency"]["complete"], true);
        assert!(report["bearing_probability"].as_f64().unwrap() <= 0.2);
    }
}

#[test]
fn rough_or_stiff_turning_without_play_leads_to_a_bearing() {
    for turn in ["rough", "resists"] {
        let report = check(&Expect {
            answers: &format!("play-vertical=none play-lateral=none turn-by-hand={turn}"),
            word: Some("WARNING"),
            ..ANY
        });
        assert_eq!(report["causes"][0]["group"], "bearing", "{report:#}");
    }
}

#[test]
fn rubber_play_is_a_warning() {
    let beyond =
        figured("rubber-centre", "play-vertical=beyond-figure play-lateral=none turn-by-hand=smooth");
    assert_eq!(report(&beyond)["urgency"]["word"], "WARNING");
    for play in ["felt", "knocks", "unsure"] {
        check(&Expect {
            layout: "rubber-centre",
            answers: &format!("play-vertical={play} play-lateral=none turn-by-hand=smooth"),
            word: Some("WARNING"),
            ..ANY
        });
    }
}

#[test]
fn opened_tube_decides_where_nothing_can_be_gripped() {
    let tube = |answers: &str, word| check(&Expect { layout: "torque-tube", answers, word, ..ANY });
    tube("turn-by-hand=smooth", None);
    tube("neutral-2500-buzz=felt turn-by-hand=smooth", Some("CAUTION"));
    tube("tube-open-check=felt", Some("DANGER"));
    tube("tube-open-check=unsure turn-by-hand=smooth", Some("WARNING"));
    tube("tube-open-check=none@warm turn-by-hand=smooth", Some("NOTICE"));
}

#[test]
fn missing_turn_holds_back_nothing_and_is_named() {
    let plays = "play-vertical=none@warm play-lateral=none@warm";
    for turn in ["", " turn-by-hand=not-done", " turn-by-hand=smooth", " turn-by-hand=smooth~along"] {
        let report = check(&Expect { answers: &format!("{plays}{turn}"), word: Some("NOTICE"), ..ANY });
        assert_eq!(report["urgency"]["limits"], json!(["housing-look", "turn-by-hand"]), "{turn}");
        assert_eq!(report["urgency"]["complete"], true);
    }
    let free = format!("{plays} turn-by-hand=smooth~free housing-look=sound");
    let report = check(&Expect { answers: &free, word: Some("NOTICE"), ..ANY });
    assert_eq!(report["urgency"]["limits"], json!([]));
    check(&Expect { answers: &format!("{plays} misfire-evidence=code"), word: Some("CAUTION"), ..ANY });
    check(&Expect { answers: &format!("{plays} shaft-look=dented"), word: Some("WARNING"), ..ANY });
}

#[test]
fn danger_stands_without_the_hands_on_check() {
    for found in [
        "housing-look=cracked",
        "housing-look=marks+fastener-loose",
        "coupling-look=about-to-fail",
        "coupling-look=bolt-loose",
        "coupling-look=worn+bolt-missing",
        "shaft-look=fibre-damage",
        "running-stop=heavy-knock",
        "running-stop=strong-vibration",
    ] {
        check(&Expect { answers: found, word: Some("DANGER"), ..ANY });
    }
}

/// A crack was seen: the sorting must not call the housing's damage as likely as not.
#[test]
fn crack_that_was_seen_leads() {
    check(&Expect {
        answers: "housing-look=cracked",
        word: Some("DANGER"),
        first: Some("housing-damage"),
        at_least: &[("housing-damage", 0.9)],
        ..ANY
    });
}

#[test]
fn cold_none_never_clears_a_buzz() {
    let checked = "play-vertical=none@AT play-lateral=none@AT turn-by-hand=smooth";
    for (temperature, word) in [("cold", "CAUTION"), ("warm", "NOTICE")] {
        let mut case = case(RIGID, &checked.replace("AT", temperature));
        case["complaint"] = json!("there is a buzz at some speed");
        assert_eq!(report(&case)["urgency"]["word"], word);
    }
    check(&Expect {
        answers: "neutral-2500-buzz=felt play-vertical=none@warm play-lateral=none@warm turn-by-hand=smooth",
        word: Some("CAUTION"),
        ..ANY
    });
}

#[test]
fn each_step_carries_its_own_word() {
    let report = check(&Expect {
        answers: "idle-noise=rattle misfire-evidence=not-read play-vertical=none@warm play-lateral=unsure shaft-look=dented housing-look=cracked",
        word: Some("DANGER"),
        ..ANY
    });
    let word = |step: &str| {
        report["steps"].as_array().unwrap().iter().find(|row| row["step"] == step).unwrap()["word"].clone()
    };
    for (step, expected) in [
        ("idle-noise", json!("CAUTION")),
        ("misfire-evidence", Value::Null),
        ("play-vertical", json!("NOTICE")),
        ("play-lateral", json!("WARNING")),
        ("shaft-look", json!("WARNING")),
        ("housing-look", json!("DANGER")),
    ] {
        assert_eq!(word(step), expected, "{step}");
    }
}

/// Without the maker's range there is nothing to compare an idle with: it must not look checked and good.
#[test]
fn an_idle_without_a_range_is_not_rated() {
    for (range, expected) in [(json!([700, 800]), json!("NOTICE")), (Value::Null, Value::Null)] {
        let mut asked = case(RIGID, "idle-speed=760");
        asked["vehicle"]["idle_rpm"] = range.clone();
        let report = report(&asked);
        let steps = report["steps"].as_array().unwrap();
        let word = &steps.iter().find(|row| row["step"] == "idle-speed").unwrap()["word"];
        assert_eq!(*word, expected, "{range}");
    }
}

/// Its sentence says that no movement was felt; with movement felt in one direction it would be untrue.
#[test]
fn cold_check_is_not_named_where_movement_was_felt() {
    for (lateral, named) in [("felt", false), ("none", true)] {
        let report = report(&case(
            RIGID,
            &format!("neutral-2500-buzz=felt play-vertical=none@cold play-lateral={lateral}@cold"),
        ));
        let reasons = report["urgency"]["reasons"].as_array().unwrap();
        assert_eq!(reasons.iter().any(|reason| reason["rule"] == "cold-check-buzz"), named, "{lateral}");
    }
}

/// Two directions are one sign: what was felt in one must not be shown as evidence of the other.
#[test]
fn weight_goes_to_the_direction_that_spoke() {
    for (answers, shown, silent) in [
        ("play-vertical=felt play-lateral=unsure", "play-vertical", "play-lateral"),
        ("play-vertical=none play-lateral=felt", "play-lateral", "play-vertical"),
    ] {
        let standing = standing_of(&case(RIGID, answers));
        let weighed: Vec<&str> = standing
            .sorting
            .causes
            .iter()
            .flat_map(|cause| cause.speaks_for.iter().chain(&cause.against))
            .map(|weight| weight.step.as_str())
            .collect();
        assert!(weighed.contains(&shown), "{answers}: {weighed:?}");
        assert!(!weighed.contains(&silent), "{answers}: {weighed:?}");
    }
}

/// A heavy knock is noted when it happens; nobody is sent to look for one.
#[test]
fn stopping_the_engine_is_never_the_next_check() {
    let before =
        "road-speed-vibration=none idle-noise=knock play-vertical=none play-lateral=none turn-by-hand=smooth";
    let answered = before.split_whitespace().collect::<Vec<_>>();
    for upto in 0..=answered.len() {
        let report = report(&case(RIGID, &answered[..upto].join(" ")));
        assert_ne!(report["next_check"]["step"], "running-stop");
    }
}
