//! What was seen or felt is the finding and comes first; what an earlier visit left open, and what was talked down,
//! stays in sight; and a paper says of no car what was not looked at.

use serde_json::{Value, json};
use steady_core::app::request::Request;
use steady_core::model::rating::Word;
use steady_core::model::standing::Standing;

use crate::support::{
    answered, ask, case, code, finding, note, open_ticking, papers, report, said, scratch, standing_of, under,
};

const PLAYS: &str = "play-vertical=none play-lateral=none";
const RIGID: &str = "rigid-engine-speed";
const RUBBER: &str = "rubber-centre";

#[test]
fn what_was_talked_down_stays_on_the_finding() {
    let (_folder, steady) = scratch();
    let visit = under(&steady, "RE 2001", RIGID, "complaint");
    let give = |value: &str, more: Value| answered(&steady, &visit, "play-vertical", json!(value), more);
    give("felt", json!({}));
    let milder =
        json!({ "ask": "answer", "visit": visit, "step": "play-vertical", "value": "none", "reason": "x" });
    assert_eq!(code(&steady, milder), "reason-too-short");
    give("none", json!({ "reason": "glove slipped" }));
    // The same answer given once more, for its temperature.
    give("none", json!({ "temperature": "warm" }));
    answered(&steady, &visit, "play-lateral", json!("none"), json!({ "temperature": "warm" }));
    let standing = ask(&steady, json!({ "ask": "look", "visit": visit }));
    let step = standing.steps.iter().find(|step| step.id == "play-vertical").unwrap();
    assert_eq!(step.answered.as_ref().unwrap().reason.as_deref(), Some("glove slipped"));
    let finding = finding(&steady, &visit);
    assert!(finding.answer.join(" ").contains("Reason given: glove slipped"), "{:?}", finding.answer);
    let line = finding.steps.iter().find(|line| line.step == "play-vertical").unwrap();
    assert!(line.details.iter().any(|detail| detail.contains("glove slipped")), "{:?}", line.details);
}

#[test]
fn an_answer_taken_back_and_given_again_was_not_changed() {
    let (_folder, steady) = scratch();
    let visit = under(&steady, "RE 2003", RIGID, "complaint");
    let give = |value: &str, more: Value| answered(&steady, &visit, "play-vertical", json!(value), more);
    let changed = "One answer was changed during the check";
    let standing = give("felt", json!({ "temperature": "warm" }));
    let entry = standing.undo.unwrap().entry;
    ask(&steady, json!({ "ask": "undo", "visit": visit, "entry": entry, "reason": "the wrong key" }));
    assert!(said(&note(&steady, &visit)).contains(changed), "until it is given again");
    give("felt", json!({ "temperature": "warm" }));
    assert!(!said(&note(&steady, &visit)).contains(changed));
    let again = finding(&steady, &visit);
    assert!(again.answer.join(" ").contains("It was entered again and stands."), "{:?}", again.answer);
    let line = again.steps.iter().find(|line| line.step == "play-vertical").unwrap();
    assert!(
        line.details.iter().any(|detail| detail.contains("entered again; it stands")),
        "{:?}",
        line.details
    );
    give("none", json!({ "reason": "glove slipped" }));
    assert!(said(&note(&steady, &visit)).contains(changed));
}

#[test]
fn a_danger_that_nothing_settled_stands_in_the_next_visit() {
    let folder = tempfile::tempdir().unwrap();
    let steady = open_ticking(folder.path()).unwrap();
    steady.handle(Request::SetTechnician { name: "Kim Demo".to_owned() }).unwrap();
    let first = under(&steady, "RE 2002", RIGID, "complaint");
    answered(&steady, &first, "play-vertical", json!("felt"), json!({}));
    let second = under(&steady, "re.2002", RUBBER, "complaint");
    for step in ["play-vertical", "play-lateral"] {
        answered(&steady, &second, step, json!("springy"), json!({ "temperature": "warm" }));
    }
    let standing = answered(&steady, &second, "support-look", json!(["sound"]), json!({}));
    let open = standing.still_open.unwrap();
    assert_eq!((open.word, open.layout.as_deref()), (Word::Danger, Some(RIGID)));
    assert!(finding(&steady, &second).answer.join(" ").contains("Still open: this car was rated DANGER"));
    let note = note(&steady, &second);
    assert!(said(&note).contains("We have not yet seen it put right"), "{}", said(&note));
    assert!(note.short_text.contains("We have not yet seen it put right"), "{}", note.short_text);
    for text in [said(&note), note.short_text] {
        assert!(text.contains("Do not drive the car before you have asked us."), "{text}");
        assert!(!text.contains("no bearing work to do now"), "{text}");
    }
    // That somebody calls it a look after the repair lifts nothing: no repair is recorded.
    let third = under(&steady, "RE 2002", RIGID, "after-repair");
    let open_in = |visit: &str| ask(&steady, json!({ "ask": "look", "visit": visit })).still_open.is_some();
    assert_eq!([&first, &second, &third].map(|visit| open_in(visit)), [false, true, true], "not to itself");
    // Nor does what it turned out to be, where that is the fault itself.
    ask(&steady, json!({ "ask": "confirm-outcome", "visit": first, "causes": ["loose-seat"] }));
    assert_eq!([&second, &third].map(|visit| open_in(visit)), [true, true]);
    // A look after the repair at the same place does, in order and warm.
    for (warmth, open) in [("cold", true), ("warm", false)] {
        let standing =
            answered(&steady, &third, "play-vertical", json!("none"), json!({ "temperature": warmth }));
        assert_eq!(standing.still_open.is_some(), open, "{warmth}");
    }
    assert!(open_in(&second), "what was looked at later says nothing of what was known then");
    // Nor does it help to write down that nothing was there: a hand felt it.
    ask(&steady, json!({ "ask": "confirm-outcome", "visit": first, "causes": ["normal-character"] }));
    assert!(open_in(&second));
}

/// Cold said later holds from then on: what was felt warm stays what it was.
#[test]
fn what_was_felt_warm_stays_warm_when_cold_is_said_later() {
    let (_folder, steady) = scratch();
    let visit = under(&steady, "WC 2004", RIGID, "complaint");
    answered(&steady, &visit, "play-vertical", json!("none"), json!({ "temperature": "warm" }));
    let standing = answered(&steady, &visit, "play-lateral", json!("none"), json!({ "temperature": "cold" }));
    let read = |id: &str| {
        let step = standing.steps.iter().find(|step| step.id == id).unwrap();
        serde_json::to_value(step.answered.as_ref().unwrap().temperature).unwrap()
    };
    assert_eq!((read("play-vertical"), read("play-lateral")), (json!("warm"), json!("cold")));
    assert_eq!(serde_json::to_value(standing.warmth).unwrap(), json!("cold"), "and holds of what comes next");
}

#[test]
fn rubber_that_nobody_saw_is_not_cleared() {
    let springy = "play-vertical=springy@warm play-lateral=springy@warm turn-by-hand=smooth";
    for (layout, rest, expected) in [
        (RUBBER, "", None),
        (RUBBER, "support-look=not-seen", None),
        (RUBBER, "support-look=sound", Some("NOTICE")),
        (RUBBER, "idle-noise=rattle", Some("CAUTION")),
        ("two-centres", "support-look=sound play-vertical:2=springy@warm play-lateral:2=springy@warm", None),
    ] {
        let report = report(&case(layout, &format!("{springy} {rest}")));
        assert_eq!(report["urgency"]["word"].as_str(), expected, "{layout} {rest}: {report:#}");
    }
    let unsure = report(&case(RUBBER, "play-vertical=unsure play-lateral=springy"));
    assert_eq!(
        unsure["urgency"]["word"], "WARNING",
        "what was left unsure is not made milder by what was not seen"
    );
    let (_, note) = papers(&case(RUBBER, springy));
    assert!(said(&note).contains("We have not seen the rubber that holds the bearing."), "{}", said(&note));
}

/// What asks for CAUTION says nothing of a bearing that nobody checked: whether the car may be driven stays open.
#[test]
fn caution_for_something_else_leaves_the_drive_open_while_what_decides_is() {
    let springy = "play-vertical=springy@warm play-lateral=springy@warm";
    for (layout, answers, open) in [
        (RUBBER, format!("{springy} coupling-look=worn"), true),
        (RUBBER, format!("{springy} shield-and-mounts=touching"), true),
        (RUBBER, format!("{springy} coupling-look=worn support-look=sound"), false),
        ("torque-tube", "coupling-look=boot-torn".to_owned(), true),
    ] {
        let case = case(layout, &answers);
        let report = report(&case);
        let flag = if open { Value::Null } else { json!(false) };
        assert_eq!(
            (&report["urgency"]["word"], &report["urgency"]["do_not_drive"]),
            (&json!("CAUTION"), &flag),
            "{layout} {answers}"
        );
        let (finding, note) = papers(&case);
        for (text, sentence) in [
            (said(&note), "we cannot tell you if you may drive the car"),
            (note.short_text, "we cannot tell you if you may drive the car"),
            (finding.next.join(" "), "nobody can say whether the car may be driven"),
        ] {
            assert_eq!(text.contains(sentence), open, "{layout} {answers}: {text}");
        }
    }
}

/// A check that is left out takes back nothing that a hand was unsure of.
#[test]
fn unsure_movement_stays_warning_whatever_is_missing() {
    for (layout, answers) in [
        (RIGID, "play-lateral=unsure"),
        (RIGID, "play-lateral=unsure play-vertical=not-done"),
        ("half-shaft", "play-lateral=unsure play-vertical=not-done"),
        ("two-centres", "play-lateral=unsure play-vertical=not-done support-look=sound"),
    ] {
        let report = report(&case(layout, answers));
        let urgency = &report["urgency"];
        assert_eq!(
            (&urgency["word"], &urgency["do_not_drive"]),
            (&json!("WARNING"), &json!(true)),
            "{layout} {answers}"
        );
    }
}

/// The message alone must not read as all good.
#[test]
fn short_text_says_what_nobody_looked_at() {
    let (_, note) = papers(&case("one-piece", "play-far-end=none coupling-look=sound"));
    assert!(note.short_text.contains("We did not look at"), "{}", note.short_text);
}

#[test]
fn a_seen_or_felt_fact_comes_before_every_probability() {
    for (layout, answers, found) in [
        (RUBBER, "play-vertical=springy play-lateral=springy support-look=fastener-loose", "Fastener loose"),
        (RIGID, "play-vertical=unsure play-lateral=unsure housing-look=fastener-loose", "Fastener loose"),
        (RUBBER, "play-vertical=knocks play-lateral=knocks support-look=sound", "Knocks"),
        (RIGID, "play-vertical=none play-lateral=none coupling-look=worn", "Worn"),
        (
            RIGID,
            "play-vertical=none play-lateral=none play-far-end=felt coupling-look=sound",
            "Movement felt",
        ),
        ("one-piece", "play-far-end=none turn-by-hand=rough", "Rough"),
    ] {
        let (finding, _) = papers(&case(layout, answers));
        let told = finding.answer.join(" ");
        let place = told.find("Found: ").unwrap_or_else(|| panic!("{layout} {answers}: {told}"));
        assert!(told[place..].contains(found), "{told}");
        assert!(!told.contains("Most likely"), "{told}");
        assert!(!told.contains("None of these causes"), "{told}");
        assert_ne!(finding.causes[0].cause, "normal-character", "{answers}");
    }
}

#[test]
fn a_worn_coupling_and_a_torn_boot_have_reasons_of_their_own() {
    let (_, worn) = papers(&case(RIGID, &format!("{PLAYS} coupling-look=worn")));
    assert!(said(&worn).contains("A joint on the shaft is worn."), "{}", said(&worn));
    let boot = standing_of(&case("front-shaft", "play-far-end=none coupling-look=boot-torn"));
    let rules: Vec<&str> = boot.urgency.reasons.iter().map(|reason| reason.rule.as_str()).collect();
    assert_eq!(rules, ["boot-torn"]);
    let (_, note) = papers(&case("front-shaft", "play-far-end=none coupling-look=boot-torn"));
    assert!(said(&note).contains("cover of a joint is torn"), "{}", said(&note));
    assert!(!said(&note).contains("links the shaft to its neighbour is worn"), "{}", said(&note));
}

#[test]
fn cold_clears_no_complaint_on_a_shaft_that_turns_with_the_engine() {
    for sound in ["buzz", "knock", "rattle", "whine", "vibration"] {
        let mut case = case(RIGID, "play-vertical=none@cold play-lateral=none@5 turn-by-hand=smooth~free");
        case["complaint_sounds"] = json!([sound]);
        let report = report(&case);
        assert_eq!(report["urgency"]["word"], "CAUTION", "{sound}: {report:#}");
    }
}

#[test]
fn a_caution_without_a_fault_books_a_look_and_no_repair() {
    let mut cold = case(RUBBER, "play-vertical=springy@cold play-lateral=springy@cold support-look=sound");
    cold["complaint_sounds"] = json!(["vibration"]);
    let (finding, note) = papers(&cold);
    assert_eq!(finding.band.headline, "Book a closer look");
    assert!(finding.next[0].starts_with("Book more time to find the cause."), "{:?}", finding.next);
    let told = format!("{} {}", finding.answer.join(" "), said(&note));
    assert!(!told.contains("seat can loosen") && !told.contains("ook the repair"), "{told}");
    let (found, _) = papers(&case(RIGID, &format!("{PLAYS} coupling-look=worn")));
    assert_eq!(found.band.headline, "Book the repair");
}

#[test]
fn what_a_likely_cause_accounts_for_is_not_called_unexplained() {
    let leak = standing_of(&case(RIGID, &format!("{PLAYS} idle-noise=hiss air-leak-test=leak-found")));
    let rules: Vec<&str> = leak.urgency.reasons.iter().map(|reason| reason.rule.as_str()).collect();
    assert!(rules.contains(&"cause-likely") && !rules.contains(&"finding-unexplained"), "{rules:?}");
}

#[test]
fn an_unsure_play_is_felt_again_before_anything_is_booked() {
    let (finding, _) = papers(&case(RIGID, "play-vertical=unsure@warm play-lateral=none@warm"));
    assert!(finding.next[0].starts_with("Next check: Play up and down."), "{:?}", finding.next);
    assert!(finding.next.iter().any(|line| line.contains("recovery truck")), "{:?}", finding.next);
}

#[test]
fn a_play_put_off_asks_first_for_what_holds_the_bearing_and_the_mounts() {
    for (answers, next) in [
        ("play-vertical=not-done", "housing-look"),
        ("play-vertical=not-done housing-look=sound", "shield-and-mounts"),
        ("play-vertical=not-done housing-look=sound shield-and-mounts=sound", "play-vertical"),
    ] {
        let standing = standing_of(&case(RIGID, answers));
        assert_eq!(standing.sorting.next_check.unwrap().step, next, "{answers}");
    }
}

#[test]
fn a_figure_is_needed_for_within_and_for_beyond() {
    let (_folder, steady) = scratch();
    let visit = under(&steady, "RU 1", RUBBER, "complaint");
    for value in ["within-figure", "beyond-figure"] {
        let request = json!({ "ask": "answer", "visit": visit, "step": "play-vertical", "value": value });
        assert_eq!(code(&steady, request), "figure-missing", "{value}");
    }
}

#[test]
fn a_vibration_of_the_road_is_not_looked_for_at_idle() {
    let mut case = case(RIGID, "play-vertical=none@warm play-lateral=none@warm idle-noise=none");
    case["complaint_sounds"] = json!(["vibration"]);
    let (finding, _) = papers(&case);
    let told = format!("{} {}", finding.answer.join(" "), finding.unknown.join(" "));
    assert!(told.contains("was not driven") && !told.contains("nothing was heard"), "{told}");
}

#[test]
fn a_look_after_the_repair_says_that_it_holds() {
    let mut case = case(
        RIGID,
        "play-vertical=none@warm play-lateral=none@warm idle-noise=none turn-by-hand=smooth~free",
    );
    case["occasion"] = json!("after-repair");
    let (finding, _) = papers(&case);
    assert!(
        finding.answer.join(" ").contains("The repair holds, as far as it was checked."),
        "{:?}",
        finding.answer
    );
}

#[test]
fn the_owner_sees_where_the_bearing_of_this_car_sits() {
    for (layout, drawing, words) in [
        ("half-shaft", "half-shaft", "front wheel"),
        ("rigid-output-speed", "rigid-output-speed", "two parts"),
        ("two-centres", "two-centres", "two bearings"),
        ("front-shaft", "front-shaft", "front axle"),
        ("one-piece", "one-piece", "One shaft"),
        (RIGID, "rigid", "Near the engine"),
        (RUBBER, "rubber", "rubber ring"),
    ] {
        let (_, note) = papers(&case(layout, ""));
        assert_eq!(note.drawing, drawing);
        assert!(note.drawing_words.contains(words), "{layout}: {}", note.drawing_words);
    }
}

#[test]
fn a_closed_tube_asks_for_nothing_that_it_hides() {
    let standing = standing_of(&case("torque-tube", "idle-noise=rattle"));
    let next = standing.sorting.next_check.map(|check| check.step).unwrap_or_default();
    assert!(!["turn-by-hand", "shaft-look"].contains(&next.as_str()), "{next}");
}

#[test]
fn an_answer_that_says_sound_does_not_speak_for_torn_rubber() {
    let answers = "support-look=sound support-look:2=torn play-vertical=springy play-lateral=springy";
    let standing = standing_of(&case("two-centres", answers));
    let torn = standing.sorting.causes.iter().find(|cause| cause.id == "torn-support-rubber").unwrap();
    let steps: Vec<&str> = torn.speaks_for.iter().map(|weight| weight.step.as_str()).collect();
    assert!(steps.contains(&"support-look:2") && !steps.contains(&"support-look"), "{steps:?}");
}

#[test]
fn an_outcome_that_is_on_no_list_can_be_recorded() {
    let (_folder, steady) = scratch();
    let visit = under(&steady, "OT 1", RIGID, "complaint");
    let confirm = |causes: Value| json!({ "ask": "confirm-outcome", "visit": visit, "causes": causes });
    let before = ask(&steady, json!({ "ask": "look", "visit": visit })).sorting.causes;
    let standing = ask(&steady, confirm(json!(["something-else"])));
    assert_eq!(standing.outcome.unwrap().causes, ["something-else"]);
    let teaches = standing.sorting.causes.iter().any(|cause| cause.id == "something-else");
    assert!(!teaches && before.len() == standing.sorting.causes.len());
    assert_eq!(code(&steady, confirm(json!(["something-else", "normal-character"]))), "outcome-contradicts");
}

#[test]
fn the_finding_prints_the_range_of_a_probability() {
    let (finding, _) = papers(&case(RIGID, &format!("{PLAYS} idle-noise=whine")));
    assert!(finding.causes[0].likelihood.contains(", between "), "{}", finding.causes[0].likelihood);
}

/// What was said of a picture is said of what was answered then: once something is found, a photo of it is asked for.
#[test]
fn nothing_to_see_in_a_picture_is_not_said_of_what_was_found_since() {
    let (_folder, steady) = scratch();
    let visit = under(&steady, "RE 2009", RIGID, "complaint");
    let waive =
        |why: &str| json!({ "ask": "waive-photo", "visit": visit, "step": "play-vertical", "reason": why });
    let stand = |standing: &Standing| {
        let step = standing.steps.iter().find(|step| step.id == "play-vertical").unwrap();
        (step.wants_photo, step.waiver.clone())
    };
    let give = |value: &str| answered(&steady, &visit, "play-vertical", json!(value), json!({}));
    ask(&steady, waive("nothing-to-see"));
    assert_eq!(stand(&give("felt")), (true, None), "said before anything was felt");
    let too_dark = Some("too-dark".to_owned());
    assert_eq!(stand(&ask(&steady, waive("too-dark"))), (true, too_dark.clone()));
    assert_eq!(stand(&give("felt")), (true, too_dark), "the same answer, given again");
    ask(
        &steady,
        json!({ "ask": "answer", "visit": visit, "step": "play-vertical", "value": "none",
        "reason": "the glove slipped" }),
    );
    ask(&steady, waive("nothing-to-see"));
    assert_eq!(stand(&give("felt")), (true, None));
    assert!(!finding(&steady, &visit).steps.iter().any(|line| {
        line.step == "play-vertical" && line.details.iter().any(|detail| detail.contains("Nothing to see"))
    }));
}
