//! Two people at one car, with two devices, two tabs or two clocks: what one of them did not know of clears nothing, and
//! a look at the car grows old by the clock of whoever looked.

use std::sync::Arc;
use std::sync::atomic::{AtomicI64, Ordering};

use serde_json::{Value, json};
use steady_core::app::request::Request;
use steady_core::app::response::Response;
use steady_core::app::{Setup, Steady};
use steady_core::model::gates::Lock;
use steady_core::model::rating::Word;
use steady_core::model::standing::{Position, Standing};
use steady_core::model::time::Moment;

use crate::handover::exported;
use crate::support::{MORNING, PlainPress, answered, ask, code, enter_lift, finding, scratch, under};

const RIGID: &str = "rigid-engine-speed";

fn look(steady: &Steady, visit: &str) -> Standing {
    ask(steady, json!({ "ask": "look", "visit": visit }))
}

/// Each confirms the other's device.
fn acquainted(one: &Steady, other: &Steady) {
    for (here, there) in [(one, other), (other, one)] {
        let Response::Devices(list) = there.handle(Request::Devices).unwrap() else { panic!("no list") };
        let (device, shown) = (&list.own.device, &list.own.code);
        assert_eq!(code(here, json!({ "ask": "confirm-device", "device": device, "code": shown })), "ok");
    }
}

fn taken_in(to: &Steady, from: &Steady, visit: &str) -> String {
    let taken = to.import(&mut &exported(from, &[visit])[..]);
    taken.err().map_or("ok".to_owned(), |failure| failure.code)
}

/// The visit's intake with another layout.
fn laid(standing: &Standing, layout: &str) -> Value {
    let mut intake = serde_json::to_value(&standing.intake).unwrap();
    intake["vehicle"]["layout"] = json!(layout);
    intake["vehicle"]["seat"] = Value::Null;
    intake
}

fn lift_anew(steady: &Steady, visit: &str) {
    if look(steady, visit).entered.is_some() {
        ask(steady, json!({ "ask": "leave-part", "visit": visit }));
    }
    enter_lift(steady, visit);
}

/// Readings of a gauge, mm: about half a millimetre, or about a hundredth.
fn gauge(visit: &str, loose: bool, reason: Option<&str>) -> Value {
    let readings = if loose {
        ["0.50", "0.52", "0.50", "0.51", "0.50", "0.52"]
    } else {
        ["0.012", "0.014", "0.012", "0.012", "0.014", "0.013"]
    };
    json!({ "ask": "record-gauge", "visit": visit, "step": "play-vertical", "reason": reason, "gauge": {
        "unit": "mm", "readings": readings, "instrument": { "resolution": "0.002", "mpe": "0.004" },
        "place": { "at": "bearing" }, "bearing": { "bore_mm": 35.0, "group": "C3" } } })
}

/// Everything the rigid layout's lift asks for, sound and warm.
fn all_sound(steady: &Steady, visit: &str) -> Standing {
    for step in ["play-vertical", "play-lateral", "play-far-end"] {
        let more = if step == "play-far-end" { json!({}) } else { json!({ "temperature": "warm" }) };
        answered(steady, visit, step, json!("none"), more);
    }
    for step in ["housing-look", "coupling-look", "shaft-look", "shield-and-mounts"] {
        answered(steady, visit, step, json!(["sound"]), json!({}));
    }
    answered(steady, visit, "turn-by-hand", json!("smooth"), json!({ "free": true }))
}

#[test]
fn what_another_layout_asked_counts_for_nothing_and_is_named() {
    let ((_a, one), (_b, other)) = (scratch(), scratch());
    acquainted(&one, &other);
    let visit = under(&one, "TP 1", RIGID, "complaint");
    assert_eq!(taken_in(&other, &one, &visit), "ok");
    answered(&one, &visit, "play-vertical", json!("felt"), json!({ "temperature": "warm" }));
    // The other has not seen the answer: nothing is taken back, and the car has another layout.
    let intake = laid(&look(&other, &visit), "one-piece");
    let amended = ask(&other, json!({ "ask": "amend", "visit": visit, "intake": intake }));
    assert_eq!(amended.intake.vehicle.layout, "one-piece");
    assert_eq!(taken_in(&one, &other, &visit), "ok");
    let standing = look(&one, &visit);
    assert_eq!((standing.urgency.word, standing.urgency.do_not_drive), (Some(Word::Warning), Some(true)));
    assert_eq!(standing.elsewhere.len(), 1);
    assert_eq!(standing.elsewhere[0].step, "play-vertical");
    let said = finding(&one, &visit).answer.join(" ");
    assert!(said.contains("Not counted") && said.contains("Movement felt"), "{said}");
    let entries: Vec<String> = standing.elsewhere.iter().map(|each| each.entry.clone()).collect();
    let drop = |reason: Option<&str>| json!({ "ask": "take-back-elsewhere", "visit": visit, "entries": entries, "reason": reason });
    let unseen = json!({ "ask": "take-back-elsewhere", "visit": visit, "entries": [], "reason": "unseen" });
    assert_eq!(code(&one, unseen), "layout-takes-back");
    assert_eq!(code(&one, drop(None)), "reason-needed");
    let after = ask(&one, drop(Some("this car has no centre bearing")));
    assert!(after.elsewhere.is_empty());
    assert_eq!(after.milder.last().map(|made| made.reason.as_str()), Some("this car has no centre bearing"));
    assert_eq!(code(&one, drop(Some("once more"))), "nothing-to-undo");
}

#[test]
fn answers_given_at_one_end_clear_no_shaft_that_hangs_on_both() {
    let ((_a, one), (_b, other)) = (scratch(), scratch());
    acquainted(&one, &other);
    let visit = under(&one, "TP 2", "rigid-output-speed", "complaint");
    assert_eq!(taken_in(&other, &one, &visit), "ok");
    lift_anew(&other, &visit);
    all_sound(&other, &visit);
    let intake = laid(&look(&one, &visit), "one-piece");
    ask(&one, json!({ "ask": "amend", "visit": visit, "intake": intake }));
    assert_eq!(taken_in(&one, &other, &visit), "ok");
    let standing = look(&one, &visit);
    assert!(
        standing.urgency.word > Some(Word::Notice) || standing.urgency.word.is_none(),
        "{:?}",
        standing.urgency
    );
    assert!(standing.urgency.missing.contains(&"play-far-end".to_owned()));
    assert!(standing.elsewhere.iter().any(|each| each.step == "play-far-end"));
}

#[test]
fn another_gearbox_names_what_it_takes_back() {
    let (_folder, steady) = scratch();
    let vehicle = json!({ "layout": RIGID, "gearbox": "torque-converter", "plate": "TP 3" });
    let intake = json!({ "vehicle": vehicle, "complaint": "it rattles" });
    let visit = ask(&steady, json!({ "ask": "open", "intake": intake })).visit;
    for set in ["running", "creep"] {
        let gates = look(&steady, &visit).gate_sets.into_iter().find(|stand| stand.id == set).unwrap().gates;
        for gate in gates.iter().filter(|gate| gate.confirmed.is_none()) {
            ask(&steady, json!({ "ask": "confirm-gate", "visit": visit, "set": set, "gate": gate.id }));
        }
    }
    answered(&steady, &visit, "creep-noise", json!("rattle"), json!({}));
    let mut manual = intake.clone();
    manual["vehicle"]["gearbox"] = json!("manual");
    let amend =
        |seen: &[&str]| json!({ "ask": "amend", "visit": visit, "intake": manual, "takes_back": seen });
    assert_eq!(code(&steady, amend(&["creep-noise"])), "part-still-entered");
    ask(&steady, json!({ "ask": "leave-part", "visit": visit }));
    assert_eq!(code(&steady, amend(&[])), "layout-takes-back");
    assert_eq!(code(&steady, amend(&["creep-noise"])), "ok");
}

#[test]
fn a_photo_that_no_screen_would_show_is_named_before_the_layout_changes() {
    let (_folder, steady) = scratch();
    let visit = under(&steady, "TP 4", RIGID, "complaint");
    let upload = crate::photo_marks::upload(&steady, &crate::photo_marks::jpeg(40));
    ask(&steady, json!({ "ask": "keep-photo", "visit": visit, "step": "housing-look", "upload": upload }));
    let intake = laid(&look(&steady, &visit), "one-piece");
    let request = json!({ "ask": "amend-takes-back", "visit": visit, "intake": intake });
    let Response::TakesBack { steps, .. } = steady.handle(serde_json::from_value(request).unwrap()).unwrap()
    else {
        panic!("nothing named")
    };
    assert_eq!(steps, ["housing-look"]);
}

#[test]
fn a_shaft_free_of_its_wheels_is_not_free_of_the_engine() {
    let (_folder, steady) = scratch();
    let visit = under(&steady, "TP 5", "rigid-output-speed", "complaint");
    answered(&steady, &visit, "turn-by-hand", json!("smooth"), json!({ "free": true }));
    let intake = laid(&look(&steady, &visit), RIGID);
    let amend = json!({ "ask": "amend", "visit": visit, "intake": intake });
    assert_eq!(code(&steady, amend), "layout-takes-back");
}

#[test]
fn another_maker_figure_takes_back_what_was_judged_by_the_first() {
    let (_folder, steady) = scratch();
    let visit = under(&steady, "TP 6", "rubber-centre", "complaint");
    let mut intake = serde_json::to_value(look(&steady, &visit).intake).unwrap();
    intake["vehicle"]["maker_play_mm"] = json!(3.0);
    ask(&steady, json!({ "ask": "amend", "visit": visit, "intake": intake }));
    answered(&steady, &visit, "play-vertical", json!("within-figure"), json!({ "temperature": "warm" }));
    intake["vehicle"]["maker_play_mm"] = json!(1.0);
    let amend =
        |seen: &[&str]| json!({ "ask": "amend", "visit": visit, "intake": intake, "takes_back": seen });
    assert_eq!(code(&steady, amend(&[])), "layout-takes-back");
    let after = ask(&steady, amend(&["play-vertical"]));
    assert!(after.steps.iter().all(|step| step.id != "play-vertical" || step.answered.is_none()));
}

#[test]
fn a_form_that_was_opened_before_writes_over_nothing() {
    let (_folder, steady) = scratch();
    let visit = under(&steady, "TP 7", RIGID, "complaint");
    let before = look(&steady, &visit);
    let mut intake = serde_json::to_value(&before.intake).unwrap();
    intake["complaint_sounds"] = json!(["buzz"]);
    let amend = |intake: &Value| json!({ "ask": "amend", "visit": visit, "intake": intake, "from": before.intake_entry });
    assert_eq!(code(&steady, amend(&intake)), "ok");
    intake["complaint_sounds"] = json!([]);
    assert_eq!(code(&steady, amend(&intake)), "intake-changed");
    assert_eq!(look(&steady, &visit).intake.complaint_sounds, ["buzz"]);
}

#[test]
fn a_movement_that_a_gauge_proved_goes_with_a_reason_alone() {
    let (_folder, steady) = scratch();
    let visit = under(&steady, "TP 8", RIGID, "complaint");
    all_sound(&steady, &visit);
    assert_eq!(ask(&steady, gauge(&visit, true, None)).urgency.word, Some(Word::Danger));
    assert_eq!(code(&steady, gauge(&visit, false, None)), "reason-needed");
    let undo = look(&steady, &visit).undo.unwrap();
    assert!(undo.needs_reason, "{undo:?}");
    let take_back = |reason: Option<&str>| json!({ "ask": "undo", "visit": visit, "entry": undo.entry, "reason": reason });
    assert_eq!(code(&steady, take_back(None)), "reason-needed");
    let after = ask(&steady, gauge(&visit, false, Some("the stand had moved")));
    assert_eq!(after.urgency.word, Some(Word::Notice));
    let said = finding(&steady, &visit).answer.join(" ");
    assert!(said.contains("the stand had moved") && said.contains("movement read by gauge"), "{said}");
    let Response::Bench(shown) = steady.handle(Request::LookAtBench { visit }).unwrap() else { panic!() };
    assert_eq!(shown.bench.undo, None, "a gauge at a step is taken back in the walk alone");
}

#[test]
fn of_two_gauges_that_did_not_know_of_each_other_the_worse_counts() {
    let ((_a, one), (_b, other)) = (scratch(), scratch());
    acquainted(&one, &other);
    let visit = under(&one, "TP 9", RIGID, "complaint");
    all_sound(&one, &visit);
    assert_eq!(taken_in(&other, &one, &visit), "ok");
    ask(&one, gauge(&visit, true, None));
    lift_anew(&other, &visit);
    ask(&other, gauge(&visit, false, None));
    assert_eq!(taken_in(&one, &other, &visit), "ok");
    assert_eq!(look(&one, &visit).urgency.word, Some(Word::Danger));
}

#[test]
fn a_car_that_may_not_be_driven_has_no_road_test() {
    let (_folder, steady) = scratch();
    let visit = under(&steady, "TP 10", RIGID, "complaint");
    all_sound(&steady, &visit);
    ask(&steady, gauge(&visit, true, Some("")));
    ask(&steady, json!({ "ask": "leave-part", "visit": visit }));
    let standing = look(&steady, &visit);
    let road = |standing: &Standing| standing.gate_sets.iter().find(|set| set.id == "road").cloned();
    let locked = |standing: &Standing| road(standing).is_none_or(|road| !road.open && road.lock.is_some());
    assert!(locked(&standing), "{:?}", road(&standing));
    // The same car comes back: nothing has lifted what was found.
    let again = under(&steady, "TP 10", RIGID, "complaint");
    all_sound(&steady, &again);
    ask(&steady, json!({ "ask": "leave-part", "visit": again }));
    let standing = look(&steady, &again);
    assert_eq!(standing.still_open.as_ref().map(|open| open.word), Some(Word::Danger));
    assert_eq!(road(&standing).unwrap().lock, Some(Lock::NotDriven));
    let gate = &road(&standing).unwrap().gates[0].id;
    let confirm = json!({ "ask": "confirm-gate", "visit": again, "set": "road", "gate": gate });
    assert_eq!(code(&steady, confirm), "not-driven");
}

#[test]
fn undo_does_not_reach_back_over_going_on_to_the_next_part() {
    let (_folder, steady) = scratch();
    let vehicle = json!({ "layout": RIGID, "gearbox": "torque-converter", "plate": "TP 11" });
    let visit = ask(&steady, json!({ "ask": "open", "intake": { "vehicle": vehicle } })).visit;
    for set in ["running", "creep"] {
        let gates = look(&steady, &visit).gate_sets.into_iter().find(|stand| stand.id == set).unwrap().gates;
        for gate in gates.iter().filter(|gate| gate.confirmed.is_none()) {
            ask(&steady, json!({ "ask": "confirm-gate", "visit": visit, "set": set, "gate": gate.id }));
        }
    }
    let mut taken = 0;
    while let Some(undo) = look(&steady, &visit).undo {
        ask(&steady, json!({ "ask": "undo", "visit": visit, "entry": undo.entry }));
        taken += 1;
    }
    let standing = look(&steady, &visit);
    assert!(taken > 0 && standing.entered.as_deref() == Some("creep"), "{taken}: {:?}", standing.entered);
}

/// What the clock of the next tests says.
static CLOCK: AtomicI64 = AtomicI64::new(0);

#[test]
fn a_look_grows_old_by_the_clock_of_whoever_looked() {
    const DAY: i64 = 86_400_000;
    let folder = tempfile::tempdir().unwrap();
    let clock = || Moment(CLOCK.load(Ordering::Relaxed));
    let setup = Setup { data_dir: folder.path().to_owned(), press: Arc::new(PlainPress), clock };
    // Ahead by forty days for one entry.
    CLOCK.store(MORNING.0 + 40 * DAY, Ordering::Relaxed);
    let steady = Steady::open(setup).unwrap();
    steady.handle(Request::SetTechnician { name: "Kim Demo".to_owned() }).unwrap();
    let intake = json!({ "vehicle": { "layout": RIGID, "plate": "TP 12" } });
    let visit = ask(&steady, json!({ "ask": "open", "intake": intake })).visit;
    CLOCK.store(MORNING.0, Ordering::Relaxed);
    enter_lift(&steady, &visit);
    let felt = json!({ "ask": "answer", "visit": visit, "step": "play-lateral", "value": "none" });
    assert_eq!(code(&steady, felt.clone()), "ok", "they were just confirmed");
    for days in [1, 30, 41] {
        CLOCK.store(MORNING.0 + days * DAY, Ordering::Relaxed);
        assert!(matches!(look(&steady, &visit).position, Position::Leave { .. }), "{days} days later");
        assert_eq!(code(&steady, felt.clone()), "gates-too-old", "{days} days later");
    }
    // A DANGER of a visit dated ahead is an earlier one all the same.
    CLOCK.store(MORNING.0 + 60 * DAY, Ordering::Relaxed);
    let grave = under(&steady, "TP 13", RIGID, "complaint");
    answered(&steady, &grave, "play-vertical", json!("felt"), json!({ "temperature": "warm" }));
    CLOCK.store(MORNING.0 + 50 * DAY, Ordering::Relaxed);
    let next = under(&steady, "TP 13", RIGID, "complaint");
    assert_eq!(look(&steady, &next).still_open.map(|open| open.word), Some(Word::Danger));
    assert_eq!(look(&steady, &grave).still_open, None, "a later visit is no earlier one");
}

#[test]
fn a_line_that_others_name_and_nobody_has_is_missed() {
    let ((_a, one), (_b, other), (_c, third)) = (scratch(), scratch(), scratch());
    for (here, there) in [(&one, &other), (&third, &one), (&third, &other)] {
        acquainted(here, there);
    }
    let visit = under(&one, "TP 14", RIGID, "complaint");
    all_sound(&one, &visit);
    assert_eq!(taken_in(&other, &one, &visit), "ok");
    assert_eq!(taken_in(&third, &one, &visit), "ok");
    answered(&one, &visit, "play-vertical", json!("felt"), json!({ "temperature": "warm" }));
    assert_eq!(taken_in(&other, &one, &visit), "ok");
    lift_anew(&other, &visit);
    let more = json!({ "temperature": "warm", "reason": "felt again, it was the mount" });
    answered(&other, &visit, "play-vertical", json!("none"), more);
    // The import that brought the felt answer is taken back, and what is left goes on.
    let Response::Devices(list) = other.handle(Request::Devices).unwrap() else { panic!("no list") };
    other.handle(Request::TakeBackImport { import: list.imports[0].import }).unwrap();
    assert_eq!(taken_in(&third, &other, &visit), "ok");
    let (_d, unknown) = scratch();
    assert_eq!(taken_in(&unknown, &other, &visit), "ok");
    let told = look(&unknown, &visit);
    assert!(told.ledger.broken_at.is_some(), "of a visit from elsewhere every line counts");
    for steady in [&other, &third] {
        let standing = look(steady, &visit);
        assert!(standing.ledger.broken_at.is_some());
        let made = standing.milder.last().unwrap();
        assert_eq!(
            (made.step.as_str(), made.reason.as_str()),
            ("play-vertical", "felt again, it was the mount")
        );
        let said = finding(steady, &visit).answer.join(" ");
        assert!(said.contains("not in this record any more"), "{said}");
    }
}

#[test]
fn nobody_unknown_clears_repairs_or_signs_for_a_visit() {
    let ((_a, here), (_b, stranger)) = (scratch(), scratch());
    let visit = under(&here, "TP 15", RIGID, "complaint");
    answered(&here, &visit, "play-vertical", json!("felt"), json!({ "temperature": "warm" }));
    answered(&here, &visit, "coupling-look", json!(["bolt-loose"]), json!({}));
    assert_eq!(taken_in(&stranger, &here, &visit), "ok");
    // One of two dangers, with a reason.
    lift_anew(&stranger, &visit);
    let more = json!({ "temperature": "warm", "reason": "felt again, nothing there" });
    answered(&stranger, &visit, "play-vertical", json!("none"), more);
    assert_eq!(taken_in(&here, &stranger, &visit), "handover-milder");
    // A repair, which the owner's note would tell.
    let (_c, bench) = scratch();
    assert_eq!(taken_in(&bench, &here, &visit), "ok");
    let Response::Bench(shown) = bench.handle(Request::LookAtBench { visit: visit.clone() }).unwrap() else {
        panic!("no bench")
    };
    for gate in shown.bench.gate_sets.iter().flat_map(|set| &set.gates) {
        ask_bench(&bench, &visit, json!({ "gate": gate.id }));
    }
    assert_eq!(taken_in(&here, &bench, &visit), "handover-milder");
    // A visit that nobody has checked yet.
    let bare = under(&here, "TP 16", RIGID, "complaint");
    let (_d, clearer) = scratch();
    assert_eq!(taken_in(&clearer, &here, &bare), "ok");
    lift_anew(&clearer, &bare);
    all_sound(&clearer, &bare);
    assert_eq!(taken_in(&here, &clearer, &bare), "handover-milder");
    let standing = look(&here, &visit);
    assert_eq!((standing.urgency.word, standing.repair), (Some(Word::Danger), None));
}

fn ask_bench(steady: &Steady, visit: &str, act: Value) {
    let request = json!({ "ask": "bench", "visit": visit, "act": act });
    steady.handle(serde_json::from_value(request).unwrap()).unwrap();
}

#[test]
fn what_was_seen_before_a_tube_was_open_was_not_seen() {
    let (_folder, steady) = scratch();
    let visit = under(&steady, "TP 17", "torque-tube", "complaint");
    answered(&steady, &visit, "shaft-look", json!(["sound"]), json!({}));
    answered(&steady, &visit, "tube-open-check", json!("none"), json!({ "temperature": "warm" }));
    let unlooked = || look(&steady, &visit).urgency.unlooked.contains(&"shaft-look".to_owned());
    assert!(unlooked());
    answered(&steady, &visit, "shaft-look", json!(["sound"]), json!({}));
    assert!(!unlooked());
}

#[test]
fn a_note_signed_for_another_rating_is_out_of_date() {
    let (_folder, steady) = scratch();
    let visit = under(&steady, "TP 18", RIGID, "complaint");
    all_sound(&steady, &visit);
    let note = crate::support::note(&steady, &visit);
    let sign = json!({ "ask": "sign", "visit": visit, "decision": "repair", "name": "Robin Demo",
        "note_sha256": note.sha256, "locale": "en", "strokes": [[[0.1, 0.1], [0.4, 0.5], [0.8, 0.2]]] });
    assert_eq!(code(&steady, sign), "ok");
    let card = || {
        let request = Request::Visits { search: "TP 18".to_owned(), after: None };
        let Response::Visits(page) = steady.handle(request).unwrap() else { panic!("no page") };
        page.visits[0].receipt
    };
    assert!(card().is_some());
    answered(&steady, &visit, "play-vertical", json!("felt"), json!({ "temperature": "warm" }));
    assert_eq!(card(), None, "nobody signed for DANGER");
}

#[test]
fn what_another_layout_found_is_not_answered_away_without_a_word() {
    let ((_a, one), (_b, other)) = (scratch(), scratch());
    acquainted(&one, &other);
    let visit = under(&one, "TP 20", RIGID, "complaint");
    assert_eq!(taken_in(&other, &one, &visit), "ok");
    answered(&one, &visit, "play-vertical", json!("felt"), json!({ "temperature": "warm" }));
    let intake = laid(&look(&other, &visit), "rubber-centre");
    ask(&other, json!({ "ask": "amend", "visit": visit, "intake": intake }));
    assert_eq!(taken_in(&one, &other, &visit), "ok");
    let undo = look(&one, &visit).undo.unwrap();
    assert!(undo.needs_reason, "{undo:?}");
    let springy = |reason: Value| {
        json!({ "ask": "answer", "visit": visit, "step": "play-vertical", "value": "springy", "temperature": "warm",
            "reason": reason })
    };
    assert_eq!(code(&one, springy(Value::Null)), "reason-needed");
    let after = ask(&one, springy(json!("it hangs in rubber, and gives")));
    assert!(after.elsewhere.is_empty());
    assert_eq!(after.milder.last().map(|made| made.step.as_str()), Some("play-vertical"));
}

#[test]
fn readings_that_nobody_saw_stay_whatever_reason_is_given() {
    let ((_a, one), (_b, other)) = (scratch(), scratch());
    acquainted(&one, &other);
    let visit = under(&one, "TP 21", RIGID, "complaint");
    all_sound(&one, &visit);
    assert_eq!(taken_in(&other, &one, &visit), "ok");
    ask(&one, gauge(&visit, true, None));
    lift_anew(&other, &visit);
    ask(&other, gauge(&visit, false, Some("the gauge was set to zero anew")));
    assert_eq!(taken_in(&one, &other, &visit), "ok");
    assert_eq!(look(&one, &visit).urgency.word, Some(Word::Danger));
    // Nor does it matter whose line came last.
    lift_anew(&one, &visit);
    assert_eq!(code(&one, gauge(&visit, false, None)), "reason-needed");
    let after = ask(&one, gauge(&visit, false, Some("the stand had moved")));
    assert_eq!(after.urgency.word, Some(Word::Notice));
}

#[test]
fn a_gauge_at_another_kind_of_support_counts_for_nothing_and_is_named() {
    for layout in ["rubber-centre", "one-piece"] {
        let ((_a, one), (_b, other)) = (scratch(), scratch());
        acquainted(&one, &other);
        let visit = under(&one, "TP 22", RIGID, "complaint");
        assert_eq!(taken_in(&other, &one, &visit), "ok");
        ask(&one, gauge(&visit, true, None));
        let intake = laid(&look(&other, &visit), layout);
        ask(&other, json!({ "ask": "amend", "visit": visit, "intake": intake }));
        assert_eq!(taken_in(&one, &other, &visit), "ok");
        let standing = look(&one, &visit);
        assert_eq!((standing.urgency.word, standing.gauges.len()), (Some(Word::Warning), 0), "{layout}");
        assert_eq!(standing.elsewhere.len(), 1, "{layout}");
        let entries = [&standing.elsewhere[0].entry];
        let drop = json!({ "ask": "take-back-elsewhere", "visit": visit, "entries": entries,
            "reason": "another car's layout" });
        let after = ask(&one, drop);
        assert!(after.elsewhere.is_empty() && after.milder.len() == 1, "{layout}");
        // And the layout can be put right.
        let intake = laid(&after, RIGID);
        assert_eq!(code(&one, json!({ "ask": "amend", "visit": visit, "intake": intake })), "ok");
    }
}

#[test]
fn a_figure_that_somebody_else_wrote_down_judges_nothing_felt_before() {
    let ((_a, one), (_b, other)) = (scratch(), scratch());
    acquainted(&one, &other);
    let visit = under(&one, "TP 23", "rubber-centre", "complaint");
    let mut intake = serde_json::to_value(look(&one, &visit).intake).unwrap();
    intake["vehicle"]["maker_play_mm"] = json!(3.0);
    ask(&one, json!({ "ask": "amend", "visit": visit, "intake": intake }));
    assert_eq!(taken_in(&other, &one, &visit), "ok");
    answered(&one, &visit, "play-vertical", json!("within-figure"), json!({ "temperature": "warm" }));
    intake["vehicle"]["maker_play_mm"] = json!(0.5);
    ask(&other, json!({ "ask": "amend", "visit": visit, "intake": intake }));
    assert_eq!(taken_in(&one, &other, &visit), "ok");
    let standing = look(&one, &visit);
    assert!(standing.urgency.missing.contains(&"play-vertical".to_owned()));
    assert_eq!(standing.elsewhere.len(), 1);
}

#[test]
fn one_line_of_nobody_known_keeps_no_honest_lines_out() {
    let ((_a, here), (_b, other), (_c, stranger)) = (scratch(), scratch(), scratch());
    acquainted(&here, &other);
    let visit = under(&here, "TP 24", RIGID, "complaint");
    assert_eq!(taken_in(&stranger, &here, &visit), "ok");
    ask(&stranger, json!({ "ask": "choose-order", "visit": visit, "order": "running-first" }));
    assert_eq!(taken_in(&other, &stranger, &visit), "ok");
    lift_anew(&other, &visit);
    all_sound(&other, &visit);
    let file = exported(&other, &[&visit]);
    let taken = here.import(&mut &file[..]).unwrap();
    assert_eq!(taken.taken, std::slice::from_ref(&visit));
    assert_eq!(taken.set_apart.len(), 1, "and what stayed outside is told");
    assert_eq!(look(&here, &visit).urgency.word, Some(Word::Notice));
}

#[test]
fn an_earlier_danger_keeps_the_engine_off_until_hands_have_felt() {
    let (_folder, steady) = scratch();
    let visit = under(&steady, "TP 25", RIGID, "complaint");
    answered(&steady, &visit, "play-vertical", json!("felt"), json!({ "temperature": "warm" }));
    let intake = json!({ "vehicle": { "layout": RIGID, "plate": "TP 25" }, "complaint": "it rattles" });
    let again = ask(&steady, json!({ "ask": "open", "intake": intake })).visit;
    ask(&steady, json!({ "ask": "choose-order", "visit": again, "order": "running-first" }));
    let running =
        |standing: &Standing| standing.gate_sets.iter().find(|set| set.id == "running").unwrap().clone();
    let standing = look(&steady, &again);
    let gate = running(&standing).gates[0].id.clone();
    let confirm = json!({ "ask": "confirm-gate", "visit": again, "set": "running", "gate": gate });
    assert_eq!(code(&steady, confirm.clone()), "earlier-danger");
    enter_lift(&steady, &again);
    all_sound(&steady, &again);
    ask(&steady, json!({ "ask": "leave-part", "visit": again }));
    assert_eq!(running(&look(&steady, &again)).lock, None);
    assert_eq!(code(&steady, confirm), "ok");
}

#[test]
fn a_layout_that_was_wrong_takes_its_gauge_back_with_a_reason() {
    let (_folder, steady) = scratch();
    let visit = under(&steady, "TP 26", RIGID, "complaint");
    ask(&steady, gauge(&visit, true, None));
    let intake = laid(&look(&steady, &visit), "rubber-centre");
    let amend = |seen: &[&str], reason: Value| json!({ "ask": "amend", "visit": visit, "intake": intake, "takes_back": seen, "reason": reason });
    assert_eq!(code(&steady, amend(&[], Value::Null)), "layout-takes-back");
    assert_eq!(code(&steady, amend(&["play-vertical"], Value::Null)), "reason-needed");
    let after = ask(&steady, amend(&["play-vertical"], json!("it hangs in rubber")));
    assert_eq!((after.gauges.len(), after.milder.len()), (0, 1));
}

#[test]
fn a_receipt_for_less_than_the_record_holds_is_out_of_date() {
    let ((_a, one), (_b, other)) = (scratch(), scratch());
    acquainted(&one, &other);
    let visit = under(&one, "TP 27", RIGID, "complaint");
    assert_eq!(taken_in(&other, &one, &visit), "ok");
    answered(&one, &visit, "play-vertical", json!("felt"), json!({ "temperature": "warm" }));
    lift_anew(&other, &visit);
    answered(&other, &visit, "coupling-look", json!(["bolt-loose"]), json!({}));
    let note = crate::support::note(&other, &visit);
    let sign = json!({ "ask": "sign", "visit": visit, "decision": "repair", "name": "Robin Demo",
        "note_sha256": note.sha256, "locale": "en", "strokes": [[[0.1, 0.1], [0.4, 0.5], [0.8, 0.2]]] });
    assert_eq!(code(&other, sign), "ok");
    assert!(!look(&other, &visit).receipt.unwrap().outdated);
    assert_eq!(taken_in(&one, &other, &visit), "ok");
    let standing = look(&one, &visit);
    assert_eq!(standing.urgency.word, Some(Word::Danger));
    assert!(standing.receipt.unwrap().outdated, "nobody who signed had seen what the first had felt");
}

#[test]
fn nobody_unknown_writes_a_known_car_down_anew() {
    let ((_a, here), (_b, stranger)) = (scratch(), scratch());
    let visit = under(&here, "TP 28", RIGID, "complaint");
    assert_eq!(taken_in(&stranger, &here, &visit), "ok");
    let mut intake = serde_json::to_value(look(&stranger, &visit).intake).unwrap();
    intake["vehicle"]["plate"] = json!("XX 1");
    ask(&stranger, json!({ "ask": "amend", "visit": visit, "intake": intake }));
    assert_eq!(taken_in(&here, &stranger, &visit), "handover-milder");
}
