//! The cases that a driveline specialist asks for first: a clean car is cleared, noise alone condemns none, and what
//! was not looked at is named. Probabilities are bounds: workshop judgement, `common practice, no source`.

use serde_json::{Value, json};

use crate::support::{case, code, probability, report, scratch};

const PLAYS: &str = "play-vertical=none@warm play-lateral=none@warm";
const RIGID: &str = "rigid-engine-speed";
const RUBBER: &str = "rubber-centre";

fn word(report: &Value) -> &str {
    report["urgency"]["word"].as_str().unwrap_or("none")
}

fn has(list: &Value, id: &str) -> bool {
    list.as_array().unwrap().iter().any(|row| row == id || row["rule"] == id)
}

#[track_caller]
fn rated(layout: &str, answers: &str, expected: &str) -> Value {
    let report = report(&case(layout, answers));
    assert_eq!(word(&report), expected, "{answers}: {report:#}");
    report
}

/// All texts of the reasons in one.
fn said(report: &Value) -> String {
    let reasons = report["urgency"]["reasons"].as_array().unwrap();
    reasons.iter().map(|reason| reason["text"].as_str().unwrap()).collect::<Vec<_>>().join(" ")
}

#[test]
fn a_clean_car_whose_shaft_turns_the_engine_is_cleared_as_far_as_was_looked() {
    let mut case = case(RIGID, &format!("{PLAYS} turn-by-hand=smooth~along idle-noise=none"));
    case["vehicle"]["gearbox"] = json!("manual");
    let report = report(&case);
    assert_eq!(word(&report), "NOTICE", "{report:#}");
    assert!(has(&report["urgency"]["limits"], "turn-by-hand"));
    assert_eq!(report["urgency"]["do_not_drive"], false);
    assert!(
        said(&report).contains("Limited to play; drag of the bearing was not checked."),
        "{}",
        said(&report)
    );
}

#[test]
fn a_hiss_with_a_leak_found_is_the_leak() {
    let report = rated(RIGID, &format!("{PLAYS} idle-noise=hiss air-leak-test=leak-found"), "CAUTION");
    assert_eq!(report["causes"][0]["id"], "air-leak");
    assert!(probability(&report, "air-leak") >= 0.9);
}

#[test]
fn a_hiss_without_a_free_turn_asks_for_it() {
    for turn in ["smooth~along", "resists~along", "not-done"] {
        let answers = format!("{PLAYS} idle-noise=hiss air-leak-test=none turn-by-hand={turn}");
        let report = rated(RIGID, &answers, "CAUTION");
        assert_eq!(report["next_check"]["step"], "turn-by-hand", "{turn}");
        assert!(has(&report["urgency"]["reasons"], "drag-unchecked"));
    }
}

#[test]
fn idle_noises_do_not_speak_for_a_bearing_that_stands_still() {
    let mut case = case(
        RUBBER,
        "play-vertical=within-figure play-lateral=within-figure idle-noise=whine+hiss air-leak-test=leak-found",
    );
    case["vehicle"]["maker_play_mm"] = json!(4.0);
    let report = report(&case);
    assert_eq!(word(&report), "CAUTION", "{report:#}");
    assert!(report["bearing_probability"].as_f64().unwrap() <= 0.1, "{report:#}");
}

#[test]
fn springy_rubber_is_no_finding_and_says_how_it_was_judged() {
    let answers =
        "play-vertical=springy@warm play-lateral=springy@warm support-look=sound turn-by-hand=smooth~free";
    let report = rated(RUBBER, answers, "NOTICE");
    assert!(said(&report).contains("No figure known, judged by feel."), "{}", said(&report));
    assert_eq!(report["urgency"]["limits"], json!([]));
}

#[test]
fn looks_of_a_rubber_support_have_their_own_words() {
    for (look, expected) in [
        ("torn-through", "DANGER"),
        ("bracket-cracked", "DANGER"),
        ("fastener-loose", "DANGER"),
        ("crazed+torn-through", "DANGER"),
        ("torn", "WARNING"),
        ("off-centre", "CAUTION"),
        ("oil-soaked", "CAUTION"),
        ("crazed", "CAUTION"),
        ("grease-or-dust", "CAUTION"),
        ("sound", "NOTICE"),
        // On rubber the look is part of the check: what nobody saw is not cleared.
        ("not-seen", "none"),
    ] {
        let report =
            rated(RUBBER, &format!("{PLAYS} support-look={look} turn-by-hand=smooth~free"), expected);
        let open = look == "not-seen";
        assert_eq!(
            report["urgency"]["missing"],
            if open { json!(["support-look"]) } else { json!([]) },
            "{look}"
        );
    }
}

#[test]
fn couplings_bolts_boots_and_mounts_count() {
    for (found, expected, road) in [
        ("coupling-look=bolt-missing", "DANGER", "bolts"),
        ("coupling-look=worn+bolt-loose", "DANGER", "bolts"),
        ("coupling-look=boot-torn", "CAUTION", "boot"),
        ("coupling-look=joint-stiff", "CAUTION", "coupling"),
        ("shield-and-mounts=mount-broken", "WARNING", "mount"),
        ("shield-and-mounts=touches-fibre", "WARNING", ""),
        ("shaft-look=not-seen", "NOTICE", ""),
    ] {
        rated(RIGID, &format!("{PLAYS} turn-by-hand=smooth~free {found}"), expected);
        let standing = crate::support::standing_of(&case(RIGID, &format!("{PLAYS} {found}")));
        let rows: Vec<&str> = standing.road_rows.iter().map(|row| row.id.as_str()).collect();
        assert!(road.is_empty() || rows.contains(&road), "{found}: {rows:?}");
    }
}

#[test]
fn a_shaft_slides_at_its_far_end_and_must_not_clunk() {
    let far = |answer: &str, expected| rated(RIGID, &format!("{PLAYS} play-far-end={answer}"), expected);
    far("slides", "NOTICE");
    far("felt", "WARNING");
    let unsure = far("unsure", "CAUTION");
    assert_eq!(unsure["next_check"]["step"], "coupling-look");
    let looked = far("unsure coupling-look=sound", "CAUTION");
    assert_eq!(looked["next_check"]["step"], "play-far-end");
}

#[test]
fn an_idle_rattle_is_the_gears_or_the_idle() {
    let heard = format!("{PLAYS} idle-speed=750~warm idle-noise=rattle idle-raise-effect=gone");
    let mut manual = case(RIGID, &heard);
    manual["vehicle"]["gearbox"] = json!("manual");
    let report = report(&manual);
    let first = report["causes"][0]["id"].as_str().unwrap();
    assert!(["torsional-rattle", "low-idle"].contains(&first), "{report:#}");
    assert!(report["causes"][0]["probability"].as_f64().unwrap() <= 0.8);
    let mut pedal = case(RIGID, &format!("{heard} clutch-pedal-effect=gone"));
    pedal["vehicle"]["gearbox"] = json!("manual");
    let report = crate::support::report(&pedal);
    assert_eq!(report["causes"][0]["id"], "torsional-rattle", "{report:#}");
    assert!(probability(&report, "torsional-rattle") >= 0.7);
}

#[test]
fn a_fast_idle_of_a_cold_engine_decides_nothing() {
    let low_idle = |answers: &str| probability(&report(&case(RIGID, answers)), "low-idle");
    let unread = low_idle("idle-noise=rattle");
    assert_eq!(low_idle("idle-noise=rattle idle-speed=750~cold"), unread);
    assert!(low_idle("idle-noise=rattle idle-speed=750~warm") < unread, "warm, it speaks against it");
    assert_eq!(
        low_idle("idle-noise=rattle idle-speed=560~cold"),
        unread,
        "slow though cold, it is read again warm"
    );
    rated(RIGID, &format!("{PLAYS} idle-speed=560~cold"), "CAUTION");
    rated(RIGID, &format!("{PLAYS} idle-speed=1100~cold"), "NOTICE");
    rated(RIGID, &format!("{PLAYS} idle-speed=1100~warm"), "CAUTION");
}

#[test]
fn cold_clears_nothing() {
    for (complaint, at, expected) in [
        ("a knock now and then", "@cold", "CAUTION"),
        ("a knock now and then", "", "CAUTION"),
        ("a knock now and then", "@warm", "NOTICE"),
        ("a knock now and then", "@50", "NOTICE"),
        ("a knock now and then", "@49.5", "CAUTION"),
        ("it vibrates", "@cold", "CAUTION"),
        ("a buzz", "@cold", "CAUTION"),
        ("it rattles", "@cold", "CAUTION"),
        ("it rattles", "@warm", "NOTICE"),
    ] {
        let mut case = case(
            RIGID,
            &format!("play-vertical=none{at} play-lateral=none{at} idle-noise=none turn-by-hand=smooth~free"),
        );
        case["complaint"] = json!(complaint);
        assert_eq!(word(&report(&case)), expected, "{complaint} {at}");
    }
    rated(RIGID, "play-vertical=none@cold play-lateral=none@warm idle-noise=knock", "CAUTION");
}

/// The obvious answer to a buzz with no play is a loose shield; felt cold, the seat is not out of it.
#[test]
fn play_felt_cold_leaves_a_loose_seat_in_the_sorting() {
    let seat = |at: &str| {
        let answers = format!("neutral-2500-buzz=felt play-vertical=none@{at} play-lateral=none@{at}");
        probability(&report(&case(RIGID, &answers)), "loose-seat")
    };
    assert!(seat("cold") >= 0.3, "{}", seat("cold"));
    assert!(seat("cold") > seat("warm") && seat("warm") < 0.1);
}

/// Each of these has an obvious answer, and it is another one.
#[test]
fn the_obvious_answer_is_not_always_the_one() {
    for (layout, answers, first) in [
        // A knock at idle in neutral is not the centre bearing of a shaft that stands still.
        (RUBBER, "play-vertical=none play-lateral=none idle-noise=knock", "normal-character"),
        // A vibration with springy rubber is a wheel before it is the rubber.
        (
            RUBBER,
            "play-vertical=springy play-lateral=springy road-speed-vibration=grows-with-speed",
            "wheel-or-tyre",
        ),
        // A hiss with a warm idle that runs high is a leak, tested for or not.
        (RIGID, "play-vertical=none play-lateral=none idle-noise=hiss idle-speed=950~warm", "air-leak"),
        // A rattle that goes when the idle is raised is a misfire where one was read.
        (
            RIGID,
            "idle-noise=rattle+pops idle-raise-effect=gone misfire-evidence=counts idle-speed=720",
            "misfire",
        ),
        // Play with a rough turn and a whine is the bearing, not its seat.
        (RIGID, "play-vertical=felt turn-by-hand=rough idle-noise=whine", "worn-bearing"),
        // Rough turning without a noise is the bearing all the same.
        (
            RIGID,
            "play-vertical=none play-lateral=none turn-by-hand=rough~free idle-noise=none",
            "worn-bearing",
        ),
        // A vibration where a joint is stiff is the joint.
        (
            "one-piece",
            "play-far-end=none road-speed-vibration=grows-with-speed coupling-look=joint-stiff",
            "coupling-or-joint",
        ),
        // A buzz with a shield that touches is the shield.
        (
            RIGID,
            "play-vertical=none@warm play-lateral=none@warm neutral-2500-buzz=felt shield-and-mounts=touching",
            "loose-shield-or-mount",
        ),
        // A torn ring speaks for itself, whatever the hand felt.
        (RUBBER, "support-look=torn play-vertical=none play-lateral=none", "torn-support-rubber"),
        // A rattle that the pedal stops is the gears, though the idle was raised with the same effect.
        (
            RIGID,
            "idle-noise=rattle idle-speed=750 idle-raise-effect=gone selector-effect=gone",
            "torsional-rattle",
        ),
    ] {
        let report = report(&case(layout, answers));
        assert_eq!(report["causes"][0]["id"], first, "{layout}: {answers}: {report:#}");
    }
}

#[test]
fn what_counts_as_warm_is_the_makers_word() {
    let mut case = case(RIGID, "play-vertical=none@55 play-lateral=none@55");
    case["complaint"] = json!("a buzz");
    assert_eq!(word(&report(&case)), "NOTICE");
    case["vehicle"]["warm_from_c"] = json!(60.0);
    assert_eq!(word(&report(&case)), "CAUTION");
}

#[test]
fn a_vibration_with_road_speed_is_a_wheel_first() {
    for layout in [RIGID, RUBBER, "one-piece", "half-shaft"] {
        let plays = if layout == "one-piece" { "" } else { PLAYS };
        let answers = format!(
            "{plays} road-speed-vibration=grows-with-speed coupling-look=sound play-far-end=none shaft-look=sound"
        );
        let report = rated(layout, &answers, "CAUTION");
        assert_eq!(report["causes"][0]["id"], "wheel-or-tyre", "{layout}: {report:#}");
    }
}

#[test]
fn of_two_supports_the_one_that_moved_is_named() {
    let answers =
        "play-vertical=none@warm play-lateral=none@warm play-vertical:2=felt@warm play-lateral:2=none@warm";
    let report = rated("two-centres", answers, "WARNING");
    let reason = &report["urgency"]["reasons"][0];
    assert_eq!((&reason["rule"], &reason["steps"]), (&json!("rubber-play"), &json!(["play-vertical:2"])));
    assert!(reason["text"].as_str().unwrap().contains("At the second support."), "{reason}");
    let one = rated("two-centres", PLAYS, "none");
    let missing = json!(["support-look", "support-look:2", "play-vertical:2", "play-lateral:2"]);
    assert_eq!(one["urgency"]["missing"], missing);
    let seen = "support-look=sound support-look:2=sound";
    let both = rated("two-centres", &format!("{} {seen}", answers.replace("felt", "none")), "NOTICE");
    assert_eq!(both["urgency"]["limits"], json!(["turn-by-hand", "turn-by-hand:2"]));
}

#[test]
fn a_closed_tube_is_rated_from_outside_and_never_cleared() {
    let tube = |answers: &str, expected| rated("torque-tube", answers, expected);
    let nothing = tube("idle-noise=none turn-by-hand=smooth~free housing-look=sound", "none");
    assert_eq!(nothing["urgency"]["missing"], json!(["tube-open-check"]));
    tube("idle-noise=knock+hiss+whine", "CAUTION");
    tube("shaft-look=dented", "WARNING");
}

#[test]
fn within_a_figure_that_nobody_wrote_down_is_refused() {
    let (_folder, steady) = scratch();
    let replayed = steady_core::app::replay::replay(
        &steady,
        &case(RUBBER, "play-vertical=within-figure").to_string(),
        std::path::Path::new("."),
    );
    let failure = replayed.unwrap_err();
    assert_eq!(failure.code, "figure-missing");
    assert!(failure.help.contains("springy"), "{}", failure.help);
    let unknown = json!({ "ask": "look", "visit": "none" });
    assert_eq!(code(&steady, unknown), "unknown-visit", "nothing was recorded");
}

#[test]
fn degrees_that_no_workshop_has_are_refused() {
    let (_folder, steady) = scratch();
    let hot = case(RIGID, "play-vertical=none@400").to_string();
    let failure = steady_core::app::replay::replay(&steady, &hot, std::path::Path::new(".")).unwrap_err();
    assert_eq!(failure.code, "temperature-out-of-range");
}

/// What a case file of the first rules says of a rubber support is read under the names of today.
#[test]
fn earlier_case_files_stay_readable() {
    let report = rated(RUBBER, "housing-look=cracked play-vertical=felt", "DANGER");
    assert!(has(&report["urgency"]["reasons"], "support-broken"), "{report:#}");
    assert_eq!(report["steps"][0]["step"], "support-look");
    assert_eq!(report["steps"][0]["value"], json!(["bracket-cracked"]));
}

#[test]
fn a_finding_by_hand_or_eye_is_rated_before_the_plays_are_felt() {
    for (layout, answers, expected) in [
        (RUBBER, "support-look=torn", "WARNING"),
        (RUBBER, "play-vertical=knocks@warm", "WARNING"),
        (RIGID, "play-far-end=felt", "WARNING"),
        (RIGID, "shield-and-mounts=mount-broken", "WARNING"),
        (RIGID, "play-vertical=unsure@warm", "WARNING"),
        (RIGID, "idle-noise=knock neutral-2500-buzz=felt", "none"),
        (RUBBER, "support-look=crazed", "none"),
    ] {
        let report = rated(layout, answers, expected);
        assert!(!report["urgency"]["missing"].as_array().unwrap().is_empty(), "{answers}");
    }
}

#[test]
fn dust_and_rub_marks_confirm_no_suspicion() {
    let free = "turn-by-hand=smooth~free";
    for (layout, answers) in [
        (
            RIGID,
            format!("{PLAYS} housing-look=grease-or-dust idle-noise=hiss air-leak-test=leak-found {free}"),
        ),
        (RIGID, format!("{PLAYS} housing-look=marks neutral-2500-buzz=felt shield-and-mounts=loose {free}")),
        (
            RUBBER,
            "play-vertical=springy play-lateral=springy support-look=crazed+grease-or-dust \
            road-speed-vibration=grows-with-speed"
                .to_owned(),
        ),
    ] {
        rated(layout, &answers, "CAUTION");
    }
}

#[test]
fn a_car_that_is_not_to_be_driven_is_not_run_to_find_out_more() {
    let rest = "housing-look=sound shaft-look=sound coupling-look=sound shield-and-mounts=sound";
    for answers in [
        format!("{PLAYS} turn-by-hand=rough~free idle-noise=none {rest}"),
        format!("play-vertical=unsure@warm play-lateral=none@warm {rest}"),
        format!("{PLAYS} play-far-end=felt {rest}"),
    ] {
        let report = rated(RIGID, &answers, "WARNING");
        let next = report["next_check"]["step"].as_str().unwrap_or("none");
        let still = ["none", "play-vertical", "play-far-end", "turn-by-hand", "road-speed-vibration"];
        assert!(still.contains(&next), "{answers}: {next}");
    }
    let unsure = rated(RIGID, &format!("play-vertical=unsure@warm play-lateral=none@warm {rest}"), "WARNING");
    assert_eq!(unsure["next_check"]["step"], "play-vertical", "felt again, with a second person watching");
}

#[test]
fn a_knock_felt_cold_is_felt_again_warm() {
    let mut case = case(RIGID, "play-vertical=none@cold play-lateral=none@cold");
    case["complaint"] = json!("a clonk when pulling away");
    let report = report(&case);
    assert_eq!(word(&report), "CAUTION", "{report:#}");
    assert_eq!(report["next_check"]["step"], "play-vertical");
}

#[test]
fn an_hour_of_opening_waits_for_what_is_seen_from_outside() {
    let report = rated("torque-tube", "", "none");
    assert_ne!(report["next_check"]["step"], "tube-open-check", "{report:#}");
    let outside = "idle-noise=hiss road-speed-vibration=none misfire-evidence=none air-leak-test=none turn-by-hand=smooth~free \
        housing-look=sound coupling-look=sound shaft-look=sound shield-and-mounts=sound neutral-2500-buzz=none \
        idle-raise-effect=same running-stop=none idle-speed=750~warm engagement-setting=standard creep-noise=none";
    let report = self::report(&case("torque-tube", outside));
    assert_eq!(report["next_check"]["step"], "tube-open-check", "{report:#}");
}

#[test]
fn where_no_bearing_holds_the_shaft_none_drags() {
    let mut case = case("one-piece", "play-far-end=none coupling-look=sound");
    case["complaint"] = json!("it whines");
    let report = report(&case);
    assert!(!has(&report["urgency"]["reasons"], "drag-unchecked"), "{report:#}");
}

/// What papers, bench and screens know of rules is known of those that look, and of no other, in the same order.
#[test]
fn every_rule_that_looks_has_its_facts() {
    let looked: Vec<&str> = steady_core::urgency::RULES.iter().map(|rule| rule.facts.id).collect();
    let known: Vec<&str> = steady_core::model::rules::ALL.iter().map(|facts| facts.id).collect();
    assert_eq!(looked, known);
    let once: std::collections::BTreeSet<&str> = known.iter().copied().collect();
    assert_eq!(once.len(), known.len(), "each once");
}

/// A reason without its basis would be shown as if it needed none.
#[test]
fn every_rule_says_where_it_comes_from() {
    let (trade, _) = steady_core::trade::load(&[]).unwrap();
    for facts in steady_core::model::rules::ALL {
        let basis = trade.basis_of_rule(facts.id);
        assert!(basis.first().is_some_and(|first| !first.trim().is_empty()), "no basis of {}", facts.id);
    }
    for row in &trade.rules.rules {
        let known = steady_core::model::rules::of(&row.id);
        assert!(known.is_some(), "a basis of {}, which is no rule", row.id);
        let number = |id: &String| trade.rules.numbers.iter().any(|number| &number.id == id);
        assert!(row.numbers.iter().all(number), "{} turns on a number that is not there", row.id);
    }
}

/// Whatever language it is told in, and whether or not the words are known.
#[test]
fn a_complaint_that_nobody_named_is_not_cleared_cold() {
    for (layout, feels, rest) in [
        (RIGID, &["play-vertical=none", "play-lateral=none"][..], "housing-look=sound"),
        (RUBBER, &["play-vertical=springy", "play-lateral=springy"], "support-look=sound"),
        ("torque-tube", &["tube-open-check=none"], "housing-look=sound shaft-look=sound"),
    ] {
        for (warmth, expected) in [("", "CAUTION"), ("@cold", "CAUTION"), ("@warm", "NOTICE")] {
            let felt: Vec<String> = feels.iter().map(|feel| format!("{feel}{warmth}")).collect();
            let answers = format!("{} {rest} turn-by-hand=smooth~free", felt.join(" "));
            for complaint in ["", "a strange noise", "something odd", "it squeaks and clicks", "es quietscht"]
            {
                let mut case = case(layout, &answers);
                case["complaint"] = json!(complaint);
                assert_eq!(word(&report(&case)), expected, "{layout} {warmth} {complaint}");
            }
            let mut hiss = case(layout, &answers);
            hiss["complaint"] = json!("it hisses");
            assert_ne!(word(&report(&hiss)), "WARNING", "{layout} {warmth}");
        }
    }
}

/// What a ring leaves that turns in its seat, and a support that has let its bearing down.
#[test]
fn fretting_at_a_metal_seat_and_a_sagging_support_confirm_a_suspicion() {
    let noises = "neutral-2500-buzz=felt idle-noise=knock+whine";
    rated(RIGID, &format!("{PLAYS} housing-look=marks+grease-or-dust {noises}"), "WARNING");
    rated(RIGID, &format!("{PLAYS} housing-look=grease-or-dust {noises}"), "CAUTION");
}
