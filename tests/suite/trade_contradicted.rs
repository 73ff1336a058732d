//! Cases in which the obvious answer is wrong, as a driveline specialist put them. Probabilities are bounds: workshop
//! judgement, `common practice, no source`.

use serde_json::{Value, json};
use steady_core::app::request::Request;
use steady_core::app::response::Response;
use steady_core::model::rating::Word;

use crate::support::{
    answered, ask, case, code, note, papers, probability, report, said, scratch, standing_of, under,
};

const RIGID: &str = "rigid-engine-speed";
const TWO: &str = "two-centres";

fn complained(mut case: Value, sound: &str) -> Value {
    case["complaint_sounds"] = json!([sound]);
    case
}

/// The likeliest cause behind what was found, with its probability.
fn first(report: &Value) -> (&str, f64) {
    let top = &report["causes"][0];
    (top["id"].as_str().unwrap(), top["probability"].as_f64().unwrap())
}

/// Both supports of a two-centre shaft felt and turned and in order, with what differs at one of them.
fn two_centres(differs: &[(&str, &str)]) -> String {
    let order = [
        ("support-look", "sound"),
        ("play-vertical", "springy@warm"),
        ("play-lateral", "springy@warm"),
        ("support-look:2", "sound"),
        ("play-vertical:2", "springy@warm"),
        ("play-lateral:2", "springy@warm"),
    ];
    let answer = |(step, usual): &(&str, &str)| {
        let given = differs.iter().find(|(differs, _)| differs == step).map_or(*usual, |(_, given)| *given);
        format!("{step}={given} ")
    };
    order.iter().map(answer).collect::<String>() + "play-far-end=none coupling-look=sound shaft-look=sound"
}

#[test]
fn joints_that_decide_and_nobody_saw_are_not_cleared() {
    for (layout, plays) in [
        ("one-piece", "play-far-end=none"),
        ("front-shaft", "play-far-end=none"),
        ("half-shaft", "play-vertical=none@warm play-lateral=none@warm"),
    ] {
        for (look, word) in
            [("", None), ("coupling-look=not-seen", None), ("coupling-look=sound", Some("NOTICE"))]
        {
            let case = case(layout, &format!("{plays} {look}"));
            let report = report(&case);
            assert_eq!(report["urgency"]["word"].as_str(), word, "{layout} {look}: {report:#}");
            if word.is_none() {
                assert_eq!(report["next_check"]["step"], "coupling-look", "{layout} {look}");
                let (_, note) = papers(&case);
                assert!(
                    said(&note).contains("We have not looked at the joints of the shaft."),
                    "{}",
                    said(&note)
                );
            }
        }
        // What was seen there stands, and so does what hands left unsure.
        let worn = report(&case(layout, &format!("{plays} coupling-look=worn")));
        assert_eq!(worn["urgency"]["word"], "CAUTION", "{layout}");
    }
}

#[test]
fn couplings_that_this_shaft_must_have_are_not_said_to_be_missing() {
    for layout in ["one-piece", "front-shaft", "half-shaft", "rigid-output-speed", "rubber-centre"] {
        let standing = standing_of(&case(layout, ""));
        let step = standing.steps.iter().find(|step| step.id == "coupling-look").unwrap();
        let offered = serde_json::to_string(&step.form).unwrap();
        assert!(!offered.contains("none-fitted"), "{layout}: {offered}");
    }
}

#[test]
fn headline_calls_nothing_repairable_while_a_check_that_decides_is_open() {
    let springy = "play-vertical=springy@warm play-lateral=springy@warm";
    let (finding, note) = papers(&case("rubber-centre", &format!("{springy} coupling-look=worn")));
    for headline in [&finding.band.headline, &note.band.headline] {
        assert_eq!(headline, "Fault found; the hands-on check is still open");
    }
    assert!(!note.short_text.contains("Book the repair"), "{}", note.short_text);
}

#[test]
fn headline_does_not_clear_a_car_whose_earlier_danger_is_not_settled() {
    let (_folder, steady) = scratch();
    let answer =
        |visit: &str, step: &str, value: &str| answered(&steady, visit, step, json!(value), json!({}));
    let first = under(&steady, "TC 1001", RIGID, "complaint");
    assert_eq!(answer(&first, "play-vertical", "felt").headline, "danger");
    let second = under(&steady, "TC 1001", RIGID, "complaint");
    answer(&second, "play-vertical", "none");
    let standing = answer(&second, "play-lateral", "none");
    assert!(standing.urgency.word < Some(Word::Warning), "{:?}", standing.urgency);
    assert_eq!(standing.headline, "still-open-danger");
    // Whoever writes the car down again is told, however many visits came since.
    let asked = Request::VisitsBefore { plate: "tc-1001".to_owned(), vin: String::new(), visit: None };
    let Response::VisitsBefore { visits, still_open, .. } = steady.handle(asked).unwrap() else {
        panic!("no visits")
    };
    assert_eq!((visits.len(), still_open.unwrap().word), (2, Word::Danger));
}

#[test]
fn a_sound_look_does_not_outvote_rubber_that_knocks_on_its_stop() {
    for case in [
        case("rubber-centre", "play-vertical=knocks@warm play-lateral=knocks@warm support-look=sound"),
        complained(case(TWO, &two_centres(&[("play-vertical:2", "knocks@warm")])), "vibration"),
    ] {
        let report = report(&case);
        let (cause, probability) = first(&report);
        assert_eq!(cause, "torn-support-rubber", "{report:#}");
        assert!(probability >= 0.4, "{probability}");
    }
}

#[test]
fn a_sagging_support_is_the_support_and_not_the_angle_that_follows() {
    let mut sagging = two_centres(&[("support-look", "off-centre")]);
    sagging.push_str(" road-speed-vibration=grows-with-speed");
    let report = report(&complained(case(TWO, &sagging), "vibration"));
    let rubber = probability(&report, "torn-support-rubber");
    assert!(rubber >= 0.5 && rubber > probability(&report, "joint-angle-or-balance"), "{report:#}");
}

/// What clicks in a bend is a joint, whatever language it is told in; read as the exhaust's pops, cold cleared it.
#[test]
fn a_click_is_not_cleared_cold() {
    let answers = "play-vertical=none@cold play-lateral=none@cold play-far-end=none coupling-look=sound \
                   turn-by-hand=smooth~free housing-look=sound";
    for complaint in
        ["clicking in tight bends", "Es knackt in Kurven", "claquements en virage", "chasquidos al girar"]
    {
        let mut case = case("half-shaft", answers);
        case["complaint"] = json!(complaint);
        assert_eq!(report(&case)["urgency"]["word"], "CAUTION", "{complaint}");
    }
}

/// A centre bearing that runs dry squeals: felt tight, its drag is not known before the shaft was turned by itself.
#[test]
fn a_squeal_asks_for_the_free_turn() {
    for (turned, word) in
        [("", "CAUTION"), (" turn-by-hand=smooth~along", "CAUTION"), (" turn-by-hand=smooth~free", "NOTICE")]
    {
        let answers =
            format!("play-vertical=springy@warm play-lateral=springy@warm support-look=sound{turned}");
        let mut case = case("rubber-centre", &answers);
        case["complaint"] = json!("it squeals at walking speed");
        assert_eq!(report(&case)["urgency"]["word"], word, "{turned}");
    }
}

/// Told in the owner's own words, or noticed at a speed: what was not driven is not said to be gone.
#[test]
fn what_is_noticed_on_the_road_is_not_said_to_have_stayed_away_in_the_bay() {
    let answers = "play-vertical=springy@warm play-lateral=springy@warm support-look=sound turn-by-hand=smooth~free \
                   idle-noise=none";
    let mut told = case("rubber-centre", answers);
    told["complaint"] = json!("vibrates only when towing");
    let mut at_speed = case("rubber-centre", answers);
    at_speed["complaint"] = json!("a hum");
    at_speed["conditions"] = json!({ "speed": { "value": 80, "unit": "km" }, "gear": "", "engine": null });
    for case in [told, at_speed] {
        let text = said(&papers(&case).1);
        assert!(text.contains("You notice it on the road, and we have not driven the car there."), "{text}");
        assert!(!text.contains("it did not show while we had the car"), "{text}");
    }
}

#[test]
fn a_half_shaft_shudders_at_its_inner_joint() {
    let answers = "play-vertical=none@warm play-lateral=none@warm play-far-end=none turn-by-hand=smooth~free \
                   coupling-look=sound shaft-look=sound housing-look=sound shield-and-mounts=sound \
                   running-stop=none road-drive=vibration road-coast=none road-neutral=none";
    let report = report(&complained(case("half-shaft", answers), "vibration"));
    let ids: Vec<&str> =
        report["causes"].as_array().unwrap().iter().map(|cause| cause["id"].as_str().unwrap()).collect();
    assert!(!ids.contains(&"joint-angle-or-balance"), "{ids:?}");
    let place = |id: &str| ids.iter().position(|other| *other == id).unwrap();
    assert!(place("coupling-or-joint") < place("shaft-damage"), "{report:#}");
}

#[test]
fn rough_turning_without_a_bearing_is_a_joint() {
    for layout in ["one-piece", "front-shaft"] {
        let case = case(layout, "play-far-end=none coupling-look=sound turn-by-hand=rough~free");
        let report = report(&case);
        assert_eq!(first(&report).0, "coupling-or-joint", "{report:#}");
        assert_eq!(report["bearing_probability"], 0.0, "there is no bearing");
        let (finding, note) = papers(&case);
        let told = format!("{} {} {}", finding.answer.join(" "), said(&note), note.short_text);
        assert!(!told.contains("bearing"), "{told}");
    }
}

#[test]
fn a_whine_under_drive_alone_names_the_gears_that_carry_the_load() {
    let answers = "play-far-end=none turn-by-hand=smooth~free coupling-look=sound shaft-look=sound \
                   shield-and-mounts=sound idle-noise=none running-stop=none \
                   road-drive=noise road-coast=none road-neutral=none";
    let case = complained(case("front-shaft", answers), "whine");
    let (finding, _) = papers(&case);
    let named = finding.causes.iter().find(|cause| cause.cause != "normal-character").unwrap();
    assert_eq!(named.cause, "wheel-bearing-or-axle", "{:?}", finding.answer);
    assert!(named.name.contains("transfer case") && named.probability >= 0.2, "{}", named.probability);
}

#[test]
fn what_hands_found_asks_for_no_check_at_idle() {
    for (layout, answers) in [
        ("front-shaft", "play-far-end=none coupling-look=boot-torn"),
        ("half-shaft", "play-vertical=none@warm play-lateral=none@warm coupling-look=boot-torn"),
        ("one-piece", "play-far-end=none coupling-look=joint-stiff+boot-torn"),
    ] {
        let report = report(&case(layout, answers));
        let next = report["next_check"]["step"].as_str().unwrap_or("none");
        assert!(
            !["idle-speed", "idle-noise", "misfire-evidence", "air-leak-test"].contains(&next),
            "{layout}: {next}"
        );
    }
}

#[test]
fn what_was_left_out_is_looked_at_before_anything_else() {
    let answers = "play-vertical=none@warm play-lateral=none@warm housing-look=not-seen play-far-end=none \
                   coupling-look=sound shaft-look=sound shield-and-mounts=sound";
    let report = report(&case("rigid-output-speed", answers));
    assert_eq!(
        (&report["urgency"]["word"], &report["next_check"]["step"]),
        (&json!("NOTICE"), &json!("housing-look")),
        "{report:#}"
    );
}

#[test]
fn nobody_sees_the_shaft_in_a_closed_tube() {
    let case = case("torque-tube", "idle-noise=rattle shaft-look=sound coupling-look=sound");
    let standing = standing_of(&case);
    assert!(standing.urgency.unlooked.contains(&"shaft-look".to_owned()), "{:?}", standing.urgency);
    let (_, note) = papers(&case);
    assert!(!said(&note).contains("for movement only"), "{}", said(&note));
}

#[test]
fn the_note_says_which_support_is_open() {
    let (_, note) = papers(&case(TWO, &two_centres(&[("support-look:2", "not-seen")])));
    let open =
        "We have not seen the rubber that holds the bearing. It is the second of the shaft's bearings.";
    assert!(said(&note).contains(open), "{}", said(&note));
}

#[test]
fn what_comes_back_after_a_repair_is_looked_for_at_its_seat() {
    let mut case = case(RIGID, "idle-noise=knock");
    let before = probability(&report(&case), "loose-seat");
    case["occasion"] = json!("comeback");
    assert!(probability(&report(&case), "loose-seat") > before);
}

#[test]
fn what_decided_stands_before_what_is_likelier() {
    let mut case = case(
        RIGID,
        "play-vertical=felt@warm play-lateral=none@warm idle-speed=600 idle-noise=rattle idle-raise-effect=gone",
    );
    case["vehicle"]["idle_rpm"] = json!([700, 800]);
    let (finding, _) = papers(&case);
    assert_eq!(finding.causes[0].cause, "loose-seat", "{:?}", finding.answer);
    let told = finding.answer.join(" ");
    let place = |text: &str| told.find(text).unwrap_or_else(|| panic!("{text}: {told}"));
    assert!(place("Behind it, most likely: Bearing loose") < place("Also likely: Idle speed"), "{told}");
}

#[test]
fn a_vibration_among_other_complaints_is_one_of_the_road() {
    let mut case = case(RIGID, "play-vertical=none@warm play-lateral=none@warm idle-noise=none");
    case["complaint_sounds"] = json!(["vibration", "rattle"]);
    let (finding, _) = papers(&case);
    let told = format!("{} {}", finding.answer.join(" "), finding.unknown.join(" "));
    assert!(told.contains("was not driven"), "{told}");
}

#[test]
fn ends_left_unsure_are_a_warning_where_they_decide() {
    for layout in ["one-piece", "front-shaft"] {
        let case = case(layout, "play-far-end=unsure coupling-look=sound");
        let report = report(&case);
        assert_eq!(report["urgency"]["word"], "WARNING", "{report:#}");
        let (finding, note) = papers(&case);
        let told = said(&note);
        assert!(!told.contains("in order") && !told.contains("bearing is loose"), "{told}");
        assert!(!finding.next.join(" ").contains("quote the repair"), "{:?}", finding.next);
    }
}

#[test]
fn a_look_that_saw_a_part_is_no_look() {
    for (layout, answers) in [
        (
            "rubber-centre",
            "play-vertical=springy@warm play-lateral=springy@warm support-look=crazed+not-seen",
        ),
        ("one-piece", "play-far-end=none coupling-look=worn+not-seen"),
        ("one-piece", "play-far-end=none coupling-look=boot-torn+not-seen"),
    ] {
        let report = report(&case(layout, answers));
        let urgency = &report["urgency"];
        assert_eq!(
            (&urgency["word"], &urgency["do_not_drive"]),
            (&json!("CAUTION"), &Value::Null),
            "{answers}"
        );
        let look = if layout == "one-piece" { "coupling-look" } else { "support-look" };
        assert_eq!(report["next_check"]["step"], look, "{answers}");
        let (_, note) = papers(&case(layout, answers));
        let told = said(&note);
        assert!(told.contains("We have not seen all of the"), "{told}");
        assert!(!told.contains("What may be behind it"), "what was seen is told once: {told}");
    }
}

#[test]
fn cold_clears_no_car_that_was_repaired() {
    for occasion in ["comeback", "after-repair"] {
        let mut case = case(RIGID, "play-vertical=none@cold play-lateral=none@cold turn-by-hand=smooth~free");
        case["occasion"] = json!(occasion);
        assert_eq!(report(&case)["urgency"]["word"], "CAUTION", "{occasion}");
    }
}

#[test]
fn a_sagging_support_with_something_touching_is_not_driven() {
    let answers = "play-vertical=springy@warm play-lateral=springy@warm support-look=off-centre \
                   shield-and-mounts=touching";
    let report = report(&case("rubber-centre", answers));
    assert_eq!(report["urgency"]["reasons"][0]["rule"], "sagging-touches", "{report:#}");
    assert_eq!(report["urgency"]["do_not_drive"], true);
}

#[test]
fn rough_turned_with_what_hangs_on_it_asks_for_the_free_turn() {
    let answers = "play-vertical=none@warm play-lateral=none@warm turn-by-hand=rough~along";
    assert_eq!(report(&case("rigid-output-speed", answers))["next_check"]["step"], "turn-by-hand");
}

#[test]
fn what_was_only_told_or_heard_books_no_repair() {
    let springy =
        "play-vertical=springy@warm play-lateral=springy@warm support-look=sound turn-by-hand=smooth~free";
    let more = "road-speed-vibration=grows-with-speed coupling-look=sound shaft-look=sound";
    let told = standing_of(&complained(case("rubber-centre", &format!("{springy} {more}")), "vibration"));
    assert_ne!(told.headline, "caution", "{:?}", told.urgency);
    let dust =
        "play-vertical=none@warm play-lateral=none@warm turn-by-hand=smooth~free housing-look=grease-or-dust";
    assert_eq!(standing_of(&case(RIGID, dust)).headline, "caution-look");
    let leak = "play-vertical=none@warm play-lateral=none@warm idle-noise=hiss air-leak-test=leak-found";
    assert_eq!(standing_of(&case(RIGID, leak)).headline, "caution");
}

#[test]
fn what_was_found_is_not_a_suspicion_where_the_rating_is_open() {
    let (finding, _) = papers(&case(RIGID, "coupling-look=worn"));
    let told = finding.answer.join(" ");
    assert!(told.contains("Found: ") && !told.contains("Suspicion only"), "{told}");
}

#[test]
fn a_loose_bolt_points_at_the_joint_whatever_turned_smoothly() {
    let answers = "road-speed-vibration=none play-far-end=none turn-by-hand=smooth coupling-look=bolt-loose \
                   shaft-look=sound shield-and-mounts=sound";
    assert_eq!(first(&report(&case("front-shaft", answers))).0, "coupling-or-joint");
}

#[test]
fn an_engine_that_idles_low_is_no_news_beside_a_danger() {
    let answers = "play-vertical=none@warm play-lateral=none@warm coupling-look=about-to-fail idle-speed=600 \
                   idle-noise=rattle idle-raise-effect=gone";
    let mut case = case(RIGID, answers);
    case["vehicle"]["idle_rpm"] = json!([700, 800]);
    let (_, note) = papers(&case);
    assert!(!said(&note).contains("idles too slowly"), "{}", said(&note));
}

#[test]
fn a_heavy_knock_is_not_most_likely_nothing() {
    let answers = "play-vertical=none@warm play-lateral=none@warm running-stop=heavy-knock idle-noise=none";
    let (finding, _) = papers(&case(RIGID, answers));
    assert_eq!(finding.band.word, "danger");
    assert!(!finding.answer.join(" ").contains("None of these"), "{:?}", finding.answer);
    assert_ne!(finding.causes[0].cause, "normal-character");
}

#[test]
fn what_was_found_is_not_made_milder_without_a_reason() {
    let (_folder, steady) = scratch();
    let visit = under(&steady, "TC 1002", "rubber-centre", "complaint");
    let answer = |step: &str, value: Value, reason: Option<&str>| json!({ "ask": "answer", "visit": visit, "step": step, "value": value, "reason": reason });
    ask(&steady, answer("support-look", json!(["torn"]), None));
    assert_eq!(code(&steady, answer("support-look", json!(["sound"]), None)), "reason-needed");
    ask(&steady, answer("support-look", json!(["sound"]), Some("it was only dirt")));
    // What was left unsure is felt again, and needs none.
    ask(&steady, answer("play-vertical", json!("unsure"), None));
    let standing = ask(&steady, answer("play-vertical", json!("springy"), None));
    assert_eq!(standing.milder.len(), 1);
    let note = note(&steady, &visit);
    assert!(said(&note).contains("One answer was changed during the check"), "{}", said(&note));
}

#[test]
fn an_earlier_danger_is_settled_by_the_fault_being_gone() {
    let (_folder, steady) = scratch();
    let give = |visit: &str, step: &str, value: Value| {
        ask(
            &steady,
            json!({ "ask": "answer", "visit": visit, "step": step, "value": value, "temperature": null }),
        )
    };
    let first = under(&steady, "TC 1003", "front-shaft", "complaint");
    assert_eq!(give(&first, "coupling-look", json!(["bolt-missing"])).urgency.word, Some(Word::Danger));
    let other = under(&steady, "TC 1003", "one-piece", "after-repair");
    assert!(
        give(&other, "coupling-look", json!(["sound"])).still_open.is_some(),
        "another layout's coupling"
    );
    let plain = under(&steady, "TC 1003", "front-shaft", "complaint");
    assert!(
        give(&plain, "coupling-look", json!(["sound"])).still_open.is_some(),
        "nobody said it was repaired"
    );
    let again = under(&steady, "TC 1003", "front-shaft", "after-repair");
    assert!(give(&again, "play-far-end", json!("none")).still_open.is_some(), "another place");
    assert!(give(&again, "coupling-look", json!(["boot-torn"])).still_open.is_none(), "the bolt is there");
}

#[test]
fn what_was_left_unsure_is_settled_by_feeling_it_again_warm() {
    let (_folder, steady) = scratch();
    let give = |visit: &str, value: &str, warmth: &str| {
        answered(&steady, visit, "play-vertical", json!(value), json!({ "temperature": warmth }))
    };
    let first = under(&steady, "TC 1004", RIGID, "complaint");
    assert_eq!(give(&first, "unsure", "cold").urgency.word, Some(Word::Warning));
    let second = under(&steady, "TC 1004", RIGID, "complaint");
    assert!(give(&second, "none", "cold").still_open.is_some());
    assert!(give(&second, "none", "warm").still_open.is_none());
}

/// What somebody in the trade would object with, each by what the car has and what is said first.
#[test]
fn fifteen_objections_of_the_trade() {
    let rubber = "support-look=sound coupling-look=sound shaft-look=sound shield-and-mounts=sound \
                  turn-by-hand=smooth~free play-far-end=slides";
    let springy = "play-vertical=springy@warm play-lateral=springy@warm";
    let still = "play-vertical=none@warm play-lateral=none@warm";
    let rigid = "housing-look=sound coupling-look=sound shaft-look=sound shield-and-mounts=sound \
                 turn-by-hand=smooth~free play-far-end=none";
    let with = |all: &str, from: &str, to: &str| all.replace(from, to);
    let rows = [
        // A clunk when load is taken up, felt at the far end: the joint, not the support.
        ("rubber-centre", "clunk", format!("{springy} {}", with(rubber, "slides", "felt")), "WARNING", "coupling-or-joint"),
        // Rubber gives and springs back: that is its work.
        ("rubber-centre", "a hum", format!("{springy} {rubber}"), "NOTICE", "normal-character"),
        // Hangs on the shield, sounds like the bearing.
        (RIGID, "rattle", format!("{still} {} neutral-2500-buzz=felt", with(rigid, "mounts=sound", "mounts=loose")), "CAUTION", "loose-shield-or-mount"),
        // The same hum in a bend is a wheel.
        ("rubber-centre", "a hum", format!("{springy} {rubber} road-drive=noise road-coast=noise road-neutral=noise road-bend=louder"), "CAUTION", "wheel-bearing-or-axle"),
        // Shakes with speed, nothing felt: a wheel before the shaft.
        ("rubber-centre", "it shakes", format!("{springy} {rubber} road-speed-vibration=grows-with-speed"), "CAUTION", "wheel-or-tyre"),
        // A boot torn before its joint wears.
        ("half-shaft", "it clicks", format!("{still} {}", with(rigid, "coupling-look=sound", "coupling-look=boot-torn")), "CAUTION", "coupling-or-joint"),
        // Idles low, and is loose all the same.
        (RIGID, "rattle", "play-vertical=felt@cold play-lateral=none@cold idle-noise=rattle idle-speed=600~warm idle-raise-effect=gone".to_owned(), "DANGER", "loose-seat"),
        // Fitted too tight: it drags, and nothing moves.
        (RIGID, "it hisses", format!("{still} {} idle-noise=hiss", with(rigid, "smooth", "resists")), "WARNING", "squeezed-bearing"),
        // No play, and the ring spins in its bore: bright marks, dust and a buzz.
        (RIGID, "buzz", format!("{still} {} neutral-2500-buzz=felt", with(rigid, "housing-look=sound", "housing-look=marks+grease-or-dust")), "WARNING", "loose-seat"),
        // Bent, in a good bearing.
        ("rubber-centre", "it shakes", format!("{springy} {}", with(rubber, "shaft-look=sound", "shaft-look=dented")), "WARNING", "shaft-damage"),
        // Torn, and the bearing in it is tight.
        ("rubber-centre", "it shakes", format!("{springy} {}", with(rubber, "support-look=sound", "support-look=torn")), "WARNING", "torn-support-rubber"),
        // Stiff, and moves nowhere.
        ("rubber-centre", "it shakes", format!("{springy} {}", with(rubber, "coupling-look=sound", "coupling-look=joint-stiff")), "CAUTION", "coupling-or-joint"),
        // Of two supports the second alone.
        (TWO, "a knock", two_centres(&[("play-vertical:2", "knocks@warm")]), "WARNING", "torn-support-rubber"),
        // Misfires, and nobody is sure of its play.
        (RIGID, "it pops", "idle-noise=pops misfire-evidence=counts play-vertical=unsure@warm play-lateral=none@warm".to_owned(), "WARNING", "misfire"),
        // Everything is heard, and no hand finds anything: noise alone holds no car back.
        (RIGID, "everything", format!("{still} {} idle-noise=knock+whine neutral-2500-buzz=felt", with(rigid, "~free", "~along")), "CAUTION", "worn-bearing"),
    ];
    assert_eq!(rows.len(), 15);
    for (layout, complaint, answers, word, cause) in rows {
        let mut case = case(layout, &answers);
        case["complaint"] = json!(complaint);
        let report = report(&case);
        assert_eq!(report["urgency"]["word"], word, "{layout} {complaint}: {report:#}");
        assert_eq!(first(&report).0, cause, "{layout} {complaint}");
    }
}
