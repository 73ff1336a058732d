//! A visit with its bench: a gauge that settles what hands left unsure, gates, bore, skim, fit, ring, verdict,
//! and the repair record.

use std::path::Path;

use base64::Engine;
use base64::engine::general_purpose::STANDARD;
use serde_json::{Value, json};
use steady_core::app::Steady;
use steady_core::app::request::Request;
use steady_core::app::response::Response;
use steady_core::content::build_repair;
use steady_core::model::bench::BenchStand;
use steady_core::model::gauge::GaugeDecision;
use steady_core::model::photo_of::WorkPlace;
use steady_core::model::standing::{RepairStage, Standing};
use steady_core::model::verdict::Verdict;
use steady_core::model::workshop::Workshop;
use steady_core::words::Words;

use crate::photo_marks::{jpeg, upload};
use crate::support::{ask, case, code, fetched, open, scratch};

pub fn demo(name: &str) -> String {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("../demo-data/bench");
    std::fs::read_to_string(folder.join(name)).unwrap()
}

/// A visit with these answers, in a scratch folder.
pub fn visit(steady: &Steady, answers: &str) -> String {
    let replayed = steady_core::app::replay::replay(
        steady,
        &case("rigid-engine-speed", answers).to_string(),
        Path::new("."),
    );
    replayed.unwrap().report["visit"].as_str().unwrap().to_owned()
}

#[track_caller]
pub fn bench(steady: &Steady, request: Value) -> BenchStand {
    let request: Request = serde_json::from_value(request).unwrap();
    match steady.handle(request).unwrap() {
        Response::Bench(shown) => shown.bench,
        other => panic!("no bench but {other:?}"),
    }
}

/// Gauge readings at the bearing of a 35 mm bore, group C3, mm.
fn gauge(visit: &str, step: &str, readings: &[&str]) -> Value {
    json!({ "ask": "record-gauge", "visit": visit, "step": step, "gauge": {
        "unit": "mm", "readings": readings, "instrument": { "resolution": "0.002", "mpe": "0.004" },
        "place": { "at": "bearing" }, "bearing": { "bore_mm": 35.0, "group": "C3" } } })
}

/// Opens the lift part anew: a gauge is read under the car, by whoever confirmed its gates.
fn under_the_car(steady: &Steady, visit: &str) {
    let standing = ask(steady, json!({ "ask": "look", "visit": visit }));
    if standing.entered.is_some() {
        ask(steady, json!({ "ask": "leave-part", "visit": visit }));
    }
    let lift = standing.gate_sets.iter().find(|set| set.id == "lift").unwrap();
    for gate in &lift.gates {
        let confirm = json!({ "ask": "confirm-gate", "visit": visit, "set": "lift", "gate": gate.id });
        ask(steady, confirm);
    }
}

fn word(standing: &Standing) -> String {
    standing.urgency.word.map_or_else(|| "none".to_owned(), |word| word.id().to_owned())
}

/// The hand's answer stays what the screens and the finding show; the gauge's sentences stand beside it.
#[track_caller]
fn shown_as_answered(steady: &Steady, visit: &str, hand: &str) {
    let standing = ask(steady, json!({ "ask": "look", "visit": visit }));
    let step = standing.steps.iter().find(|step| step.id == "play-vertical").unwrap();
    assert!(step.answered.as_ref().unwrap().value.has(hand), "{hand}: {:?}", step.answered);
    let request = Request::Finding { visit: visit.to_owned(), locale: "en".to_owned() };
    let Response::Finding(finding) = steady.handle(request).unwrap() else { panic!("no finding") };
    let line = finding.steps.iter().find(|step| step.step == "play-vertical").unwrap();
    assert!(line.details.iter().any(|line| line.contains("table of readings")), "{:?}", line.details);
    // What the rating rests on names the gauge where it was the gauge.
    let rests = finding.reasons.iter().any(|line| line.text.contains("movement proven by gauge"));
    let proven = standing.gauges.iter().any(|gauge| gauge.result.decision == GaugeDecision::Proven);
    assert_eq!(rests, proven, "{:?}", finding.reasons);
    let table = finding.gauges.unwrap();
    assert!(table.rows[0].mean.ends_with(" mm") && !table.rows[0].decision.is_empty(), "{:?}", table.rows);
}

const NONE: [&str; 6] = ["0.012", "0.014", "0.012", "0.012", "0.014", "0.013"];
const MUCH: [&str; 6] = ["0.13", "0.12", "0.14", "0.13", "0.12", "0.13"];

/// What hands felt, what the gauge read up and down, and the rating that must follow.
#[test]
fn gauge_settles_unsure_and_never_clears_what_a_hand_felt() {
    for (hand, readings, before, after) in [
        ("unsure", &NONE[..], "warning", "notice"),
        ("unsure", &MUCH[..], "warning", "danger"),
        ("none", &MUCH[..], "notice", "danger"),
        ("felt", &NONE[..], "danger", "danger"),
        ("none", &NONE[..1], "notice", "warning"),
        ("not-done", &NONE[..], "none", "none"),
    ] {
        let (_folder, steady) = scratch();
        let visit =
            visit(&steady, &format!("play-vertical={hand}@warm play-lateral=none@warm turn-by-hand=smooth"));
        under_the_car(&steady, &visit);
        let standing = ask(&steady, json!({ "ask": "look", "visit": visit }));
        assert_eq!(word(&standing), before, "{hand}");
        let standing = ask(&steady, gauge(&visit, "play-vertical", readings));
        assert_eq!(word(&standing), after, "{hand} {readings:?}: {:?}", standing.gauges);
        assert_eq!(standing.gauges.len(), 1);
        shown_as_answered(&steady, &visit, hand);
        let undone = json!({ "ask": "undo", "visit": visit, "entry": standing.undo.unwrap().entry, "reason": "read it wrong" });
        assert_eq!(word(&ask(&steady, undone)), before, "{hand}: undone");
    }
}

#[test]
fn gauge_is_refused_where_it_cannot_be_read() {
    let (_folder, steady) = scratch();
    let visit = visit(&steady, "play-vertical=unsure");
    under_the_car(&steady, &visit);
    assert_eq!(code(&steady, gauge(&visit, "turn-by-hand", &NONE)), "gauge-not-here");
    assert_eq!(
        code(&steady, gauge(&visit, "play-vertical", &["1,250"])),
        "decimal-comma",
        "or 1250 thousandths"
    );
    ask(&steady, json!({ "ask": "leave-part", "visit": visit }));
    assert_eq!(code(&steady, gauge(&visit, "play-vertical", &NONE)), "gate-closed");
    let standing = ask(&steady, json!({ "ask": "look", "visit": visit }));
    assert!(standing.gauges.is_empty());
}

pub fn confirm(steady: &Steady, visit: &str, set: &str) {
    let stand = bench(steady, json!({ "ask": "look-at-bench", "visit": visit }));
    let gates = stand.gate_sets.into_iter().find(|gates| gates.id == set).unwrap().gates;
    assert!(gates.len() >= 3, "{set}: {gates:?}");
    for gate in gates {
        bench(steady, json!({ "ask": "bench", "visit": visit, "act": { "gate": gate.id } }));
    }
}

#[test]
fn nothing_of_the_bench_is_recorded_before_its_gates() {
    let (_folder, steady) = scratch();
    let visit = visit(&steady, "play-vertical=felt");
    let bore = json!({ "ask": "bench", "visit": visit, "act": { "bore": "found", "file": demo("oval-two-point.csv") } });
    assert_eq!(code(&steady, bore.clone()), "gate-closed");
    assert_eq!(
        code(&steady, json!({ "ask": "bench", "visit": visit, "act": { "gate": "no-such" } })),
        "unknown-gate"
    );
    confirm(&steady, &visit, "teardown");
    assert_eq!(code(&steady, bore), "ok");
    let pass = json!({ "ask": "bench", "visit": visit, "act": { "pass": 1, "contact": "partly" } });
    assert_eq!(code(&steady, pass.clone()), "gate-closed");
    confirm(&steady, &visit, "machining");
    assert_eq!(code(&steady, pass), "ok");
    let look = json!({ "cracked": null, "ring_turned": null, "wall_least_mm": null });
    let wall = json!({ "ask": "bench", "visit": visit, "act": { "look": look, "wall": "4,5" } });
    assert_eq!(bench(&steady, wall).look.wall_least_mm, Some(4.5));
    let wall = json!({ "ask": "bench", "visit": visit, "act": { "look": look, "wall": "four" } });
    assert_eq!(code(&steady, wall), "bore-not-a-number", "never taken for no figure at all");
    for (pass, typed, read) in [(2, "72,1", 72.1), (3, "72,113", 72.113)] {
        let act = json!({ "pass": pass, "contact": "partly", "diameter": typed });
        let after = bench(&steady, json!({ "ask": "bench", "visit": visit, "act": act }));
        assert_eq!(after.passes.last().unwrap().diameter_mm, Some(read), "{typed}");
    }
    let two_commas = json!({ "pass": 4, "contact": "partly", "diameter": "72,113,5" });
    assert_eq!(code(&steady, json!({ "ask": "bench", "visit": visit, "act": two_commas })), "decimal-comma");
    let bad = json!({ "ask": "bench", "visit": visit, "act": { "bore": "found", "file": "bore,kind=two-point\n" } });
    assert_eq!(code(&steady, bad), "bore-header-missing");
}

/// What is recorded, and the part that then comes next.
#[test]
fn bench_names_the_part_that_comes_next() {
    let (_folder, steady) = scratch();
    let visit = visit(&steady, "play-vertical=felt");
    let next = |stand: &BenchStand| {
        serde_json::to_value(stand.next).unwrap().as_str().unwrap_or("nothing").to_owned()
    };
    assert_eq!(next(&bench(&steady, json!({ "ask": "look-at-bench", "visit": visit }))), "gates-teardown");
    confirm(&steady, &visit, "teardown");
    let look = |ring: bool| json!({ "cracked": false, "ring_turned": ring, "wall_least_mm": 3.0 });
    let read =
        |stage: &str, file: &str| json!({ "ask": "bench", "act": { "bore": stage, "file": demo(file) } });
    let set = |name: &str| json!({ "ask": "set", "set": name });
    let pass = |contact: &str| json!({ "ask": "bench", "act": { "pass": 1, "contact": contact } });
    let values = json!({ "bearing-od": "72", "class": "N7", "housing": "A356", "temp": "20..80" });
    let ring = |turns: &str| json!({ "ask": "bench", "act": { "ring": turns } });
    for (mut request, expected) in [
        (json!({ "ask": "bench", "act": { "look": look(true) } }), "found"),
        (read("found", "oval-two-point.csv"), "gates-machining"),
        (set("machining"), "skim"),
        (pass("partly"), "skim"),
        (pass("all-round"), "gates-heat"),
        (set("heat"), "finished"),
        (read("finished", "three-lobes-dial.csv"), "fit"),
        (json!({ "ask": "bench", "act": { "fit": values } }), "gates-press"),
        (set("press"), "ring"),
        (ring("stiff"), "ring"),
        (ring("free"), "gates-refit"),
        (set("refit"), "notes"),
        (json!({ "ask": "bench", "act": { "note": "New bolts" } }), "nothing"),
    ] {
        if let Some(set) = request["set"].as_str() {
            confirm(&steady, &visit, set);
            request = json!({ "ask": "look-at-bench" });
        }
        request["visit"] = json!(visit);
        let stand = bench(&steady, request.clone());
        assert_eq!(next(&stand), expected, "after {request}: {:?}", stand.verdict);
    }
}

/// A seat that needs no cut asks for none: neither for its gates nor for a bore afterwards.
#[test]
fn bench_wants_a_skim_only_where_the_verdict_does() {
    let (_folder, steady) = scratch();
    let visit = visit(&steady, "play-vertical=felt");
    confirm(&steady, &visit, "teardown");
    let wanted = |ring: bool, cracked: bool| {
        let look = json!({ "cracked": cracked, "ring_turned": ring, "wall_least_mm": 3.0 });
        let stand = bench(&steady, json!({ "ask": "bench", "visit": visit, "act": { "look": look } }));
        let parts = serde_json::to_value(&stand.parts).unwrap();
        let is = |id: &str| {
            parts.as_array().unwrap().iter().find(|part| part["id"] == id).unwrap()["wanted"] == json!(true)
        };
        [is("gates-machining"), is("skim"), is("finished")]
    };
    assert_eq!(wanted(false, false), [false, false, false]);
    assert_eq!(wanted(true, false), [true, true, true]);
    assert_eq!(wanted(true, true), [false, false, true], "another housing has a bore of its own");
    // Nor is a housing cut further that turned out cracked after a pass.
    confirm(&steady, &visit, "machining");
    let found = json!({ "ask": "bench", "visit": visit, "act": { "bore": "found", "file": demo("oval-two-point.csv") } });
    bench(&steady, found);
    bench(&steady, json!({ "ask": "bench", "visit": visit, "act": { "pass": 1, "contact": "partly" } }));
    assert_eq!(wanted(true, true), [false, false, true]);
}

/// Who signed for a note that knew of no repair has not seen the one that does.
#[test]
fn repair_outdates_a_receipt_and_a_later_check_the_repair() {
    let (_folder, steady) = scratch();
    let visit = visit(&steady, "play-vertical=felt");
    confirm(&steady, &visit, "teardown");
    let look = || ask(&steady, json!({ "ask": "look", "visit": visit }));
    let sign = || {
        let request = Request::Note { visit: visit.clone(), locale: "en".to_owned() };
        let Response::Note(note) = steady.handle(request).unwrap() else { panic!("no note") };
        ask(
            &steady,
            json!({ "ask": "sign", "visit": visit, "decision": "repair", "name": "", "locale": "en",
                "note_sha256": note.sha256, "strokes": [[[0.1, 0.5], [0.5, 0.2]]] }),
        );
    };
    let outdated = || look().receipt.unwrap().outdated;
    let ring =
        |turns: &str| bench(&steady, json!({ "ask": "bench", "visit": visit, "act": { "ring": turns } }));
    sign();
    bench(
        &steady,
        json!({ "ask": "bench", "visit": visit, "act": { "note": "bolts to the maker's figure" } }),
    );
    ring("stiff");
    assert!(!outdated(), "the note tells nothing of that");
    ring("free");
    assert!(outdated());
    sign();
    assert!(!outdated());
    ring("stiff");
    assert!(outdated(), "the note no longer says that it was repaired");
    ring("free");
    assert_eq!(look().repair, Some(RepairStage::TurnsFree));
    under_the_car(&steady, &visit);
    let felt = json!({ "ask": "answer", "visit": visit, "step": "play-lateral", "value": "felt", "temperature": "cold", "reason": null });
    assert_eq!(ask(&steady, felt).repair, Some(RepairStage::CheckedAgain));
    ring("free");
    assert_eq!(look().repair, Some(RepairStage::TurnsFree));
}

/// Work after the ring was turned takes it apart again: an older "free" must not stand for it.
#[test]
fn ring_that_turned_freely_is_asked_for_again_after_a_cut() {
    let (_folder, steady) = scratch();
    let visit = visit(&steady, "play-vertical=felt");
    for set in ["teardown", "machining"] {
        confirm(&steady, &visit, set);
    }
    let found = json!({ "ask": "bench", "visit": visit, "act": { "bore": "found", "file": demo("oval-two-point.csv") } });
    bench(&steady, found);
    let stage = || ask(&steady, json!({ "ask": "look", "visit": visit })).repair;
    let asks =
        |stand: &BenchStand| stand.verdict_lines.iter().any(|line| line.contains("After assembly, check"));
    let free = bench(&steady, json!({ "ask": "bench", "visit": visit, "act": { "ring": "free" } }));
    assert!(!asks(&free), "{:?}", free.verdict_lines);
    assert_eq!(stage(), Some(RepairStage::TurnsFree));
    let cut = json!({ "ask": "bench", "visit": visit, "act": { "pass": 1, "contact": "partly" } });
    let cut = bench(&steady, cut);
    assert!(asks(&cut), "{:?}", cut.verdict_lines);
    assert_eq!(stage(), Some(RepairStage::TornDown));
}

/// It is read and printed; a shaft that runs true or not decides nothing here.
#[test]
fn run_out_is_kept_as_read_and_judges_nothing() {
    let (_folder, steady) = scratch();
    let visit = visit(&steady, "play-vertical=felt");
    confirm(&steady, &visit, "teardown");
    let read = |run_out: &str| json!({ "ask": "bench", "visit": visit, "act": { "run_out": run_out } });
    for (typed, code_of) in
        [("-0.1", "run-out-refused"), ("11", "run-out-refused"), ("0,4,2", "decimal-comma")]
    {
        assert_eq!(code(&steady, read(typed)), code_of, "{typed}");
    }
    let request: Request = serde_json::from_value(read("12,500um")).unwrap();
    let refused = steady.handle(request).unwrap_err();
    assert_eq!(refused.code, "decimal-comma", "12.5 mm are no run-out, and nobody may have meant 0.0125 mm");
    assert!(
        refused.message.contains("12.500um") && refused.message.contains("12500um"),
        "{}",
        refused.message
    );
    let before = bench(&steady, json!({ "ask": "look-at-bench", "visit": visit }));
    let after = bench(&steady, read("0,42"));
    assert_eq!(after.run_out.as_ref().map(|read| read.run_out_mm), Some(0.42));
    assert_eq!(after.verdict, before.verdict);
    let standing = ask(&steady, json!({ "ask": "look", "visit": visit }));
    let record = build_repair(&standing, &after, &Workshop::default(), Words::of("en").unwrap());
    assert!(
        record.sections.iter().flat_map(|part| &part.text).any(|line| line.contains("0.42 mm")),
        "{record:?}"
    );
    let Response::History(history) = steady.handle(Request::History { visit }).unwrap() else {
        panic!("no history")
    };
    assert_eq!(history.entries.last().unwrap().what, "run-out-read");
}

/// Another's entry on the same device is offered under their name, so that the screen can ask.
#[test]
fn the_bench_names_what_undo_would_take_back_and_whose_it_is() {
    let (_folder, steady) = scratch();
    let visit = visit(&steady, "play-vertical=felt");
    let gate = "teardown-shaft-marked";
    let confirmed = json!({ "ask": "bench", "visit": visit, "act": { "gate": gate } });
    let offer = bench(&steady, confirmed).undo.unwrap();
    assert_eq!((offer.what.as_str(), offer.gate.as_deref(), offer.set), ("gate-confirmed", Some(gate), None));
    confirm(&steady, &visit, "teardown");
    steady.handle(Request::SetTechnician { name: "Robin Demo".to_owned() }).unwrap();
    let note = json!({ "ask": "bench", "visit": visit, "act": { "note": "new bolts" } });
    let offer = bench(&steady, note).undo.unwrap();
    assert_eq!((offer.what.as_str(), offer.by.as_str(), offer.gate), ("bench-noted", "Robin Demo", None));
}

#[test]
fn one_gate_is_no_teardown() {
    let (_folder, steady) = scratch();
    let visit = visit(&steady, "play-vertical=felt");
    let gate = &bench(&steady, json!({ "ask": "look-at-bench", "visit": visit })).gate_sets[0].gates[0].id;
    bench(&steady, json!({ "ask": "bench", "visit": visit, "act": { "gate": gate } }));
    assert_eq!(ask(&steady, json!({ "ask": "look", "visit": visit })).repair, None);
}

#[test]
fn gauge_without_an_answer_is_named_as_the_reason() {
    let (_folder, steady) = scratch();
    let visit = visit(&steady, "neutral-2500-buzz=felt");
    under_the_car(&steady, &visit);
    assert_eq!(word(&ask(&steady, gauge(&visit, "play-vertical", &MUCH))), "danger");
    let request = Request::Finding { visit, locale: "en".to_owned() };
    let Response::Finding(finding) = steady.handle(request).unwrap() else { panic!("no finding") };
    assert!(
        finding.reasons.iter().any(|line| line.text.contains("movement proven by gauge")),
        "{:?}",
        finding.reasons
    );
}

#[test]
fn photo_of_the_bench_is_marked_and_printed_so() {
    let (_folder, steady) = scratch();
    let visit = visit(&steady, "play-vertical=felt");
    confirm(&steady, &visit, "teardown");
    let upload = upload(&steady, &jpeg(90));
    let kept = bench(
        &steady,
        json!({ "ask": "bench", "visit": visit, "act": { "of": "bench-found", "upload": upload } }),
    );
    let photo = kept.photos[&WorkPlace::Found][0].sha256.clone();
    let mark = |of: &str, photo: &str, text: &str| {
        let marks = json!([{ "shape": "label", "at": [0.5, 0.5], "text": text }]);
        json!({ "ask": "bench", "visit": visit, "act": { "of": of, "photo": photo, "marks": marks } })
    };
    assert_eq!(code(&steady, mark("bench-ring", &photo, "scored here")), "photo-not-of-step");
    assert_eq!(code(&steady, mark("play-vertical", &photo, "scored here")), "unknown-request");
    assert_eq!(code(&steady, mark("bench-found", &photo, "")), "mark-label-refused");
    let marked = bench(&steady, mark("bench-found", &photo, " scored here "));
    assert_eq!(marked.photos[&WorkPlace::Found][0].marks.len(), 1);
    let entries = ask(&steady, json!({ "ask": "look", "visit": visit })).ledger.entries;
    let again = bench(&steady, mark("bench-found", &photo, "scored here"));
    assert_eq!(ask(&steady, json!({ "ask": "look", "visit": visit })).ledger.entries, entries, "nothing new");
    let standing = ask(&steady, json!({ "ask": "look", "visit": visit }));
    let record = build_repair(&standing, &again, &Workshop::default(), Words::of("en").unwrap());
    assert_eq!(record.photos[0].marks.len(), 1);
    assert!(record.photos[0].alt.contains("scored here"), "{:?}", record.photos);
    let undone = json!({ "ask": "bench", "visit": visit, "act": { "undo": again.undo.unwrap().entry } });
    assert_eq!(bench(&steady, undone).photos[&WorkPlace::Found][0].marks.len(), 0);
    let offered = ask(&steady, json!({ "ask": "look", "visit": visit })).undo;
    assert!(offered.is_none_or(|undo| undo.what != "photo-kept"), "the walk takes nothing of the bench back");
}

#[test]
fn bench_runs_from_bore_to_verdict_and_survives_closing() {
    let (folder, steady) = scratch();
    let visit = visit(&steady, "neutral-2500-buzz=felt play-vertical=felt housing-look=marks");
    let empty = bench(&steady, json!({ "ask": "look-at-bench", "visit": visit }));
    assert_eq!(empty.verdict.verdict, None, "nothing measured never reads as fine");
    assert!(!empty.verdict.missing.is_empty());
    confirm(&steady, &visit, "teardown");
    confirm(&steady, &visit, "machining");
    let found = bench(
        &steady,
        json!({ "ask": "bench", "visit": visit, "act": { "bore": "found", "file": demo("three-lobes-dial.csv") } }),
    );
    let plan = found.plan.clone().unwrap();
    assert!(!plan.passes.is_empty() && plan.passes.last().unwrap().clean);
    assert!(!found.found.unwrap().shape.sections[0].plot.points.is_empty());
    let look = json!({ "cracked": false, "ring_turned": true, "wall_least_mm": 3.0 });
    let looked = bench(&steady, json!({ "ask": "bench", "visit": visit, "act": { "look": look } }));
    assert_ne!(looked.verdict.at_least, Verdict::BearingsOnly, "{:?}", looked.verdict);
    let photo = format!("data:{}", STANDARD.encode("no picture"));
    assert_eq!(
        code(
            &steady,
            json!({ "ask": "bench", "visit": visit, "act": { "of": "bench-roof", "upload": photo } })
        ),
        "unknown-request"
    );
    for (number, contact) in [(1, "partly"), (2, "all-round")] {
        let pass = json!({ "ask": "bench", "visit": visit, "act": { "pass": number, "contact": contact, "diameter": "72.06" } });
        bench(&steady, pass);
    }
    let values = json!({ "bearing-od": "72", "class": "N7", "housing": "A356", "temp": "20..80" });
    let fit = bench(&steady, json!({ "ask": "bench", "visit": visit, "act": { "fit": values } }));
    assert!(fit.fit.is_some() && fit.fit_lines.len() > 3, "{:?}", fit.fit_lines);
    bench(&steady, json!({ "ask": "bench", "visit": visit, "act": { "ring": "free" } }));
    bench(
        &steady,
        json!({ "ask": "bench", "visit": visit, "act": { "note": "New bolts, 25 Nm, maker's sheet" } }),
    );
    let cracked = json!({ "cracked": true, "ring_turned": true, "wall_least_mm": 3.0 });
    let scrapped = bench(&steady, json!({ "ask": "bench", "visit": visit, "act": { "look": cracked } }));
    assert_eq!(scrapped.verdict.verdict, Some(Verdict::ReplaceHousing));
    let undo = scrapped.undo.unwrap();
    assert_eq!((undo.what.as_str(), undo.by.as_str(), undo.gate), ("housing-looked", "Kim Demo", None));
    let entry = undo.entry;
    let before = bench(&steady, json!({ "ask": "bench", "visit": visit, "act": { "undo": entry } }));
    assert_ne!(before.verdict.verdict, Some(Verdict::ReplaceHousing));
    assert_eq!(
        code(&steady, json!({ "ask": "bench", "visit": visit, "act": { "undo": entry } })),
        "undo-out-of-date"
    );
    drop(steady);
    let steady = open(folder.path()).unwrap();
    assert_eq!(bench(&steady, json!({ "ask": "look-at-bench", "visit": visit })), before);
    let paper = json!({ "ask": "paper", "visit": visit, "paper": "repair", "locale": "en" });
    let Response::Paper(file) = steady.handle(serde_json::from_value(paper).unwrap()).unwrap() else {
        panic!("no paper")
    };
    assert!(String::from_utf8(fetched(&steady, &file.file)).unwrap().starts_with("Repair record"));
}
