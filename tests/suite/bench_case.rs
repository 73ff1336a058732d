//! A case file that goes all the way to the repair: what it records at the bench is what a screen would have
//! recorded, and a bad row is refused with its code, its place, and nothing left behind.

use std::path::{Path, PathBuf};

use serde_json::{Value, json};
use steady_core::app::replay::{Replayed, replay};
use steady_core::app::request::Request;
use steady_core::app::response::Response;
use steady_core::content::build_repair;
use steady_core::model::workshop::Workshop;
use steady_core::words::Words;

use crate::support::{case, scratch};

fn demo_folder() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../demo-data")
}

fn demo() -> Replayed {
    let (_folder, steady) = scratch();
    let case = std::fs::read_to_string(demo_folder().join("13-measured-to-the-repair.json")).unwrap();
    replay(&steady, &case, &demo_folder()).unwrap()
}

fn texts(list: &Value) -> Vec<&str> {
    list.as_array().unwrap().iter().filter_map(Value::as_str).collect()
}

#[test]
fn demo_visit_goes_from_gauge_to_outcome() {
    let Replayed { report, benched, .. } = demo();
    assert!(benched);
    let decisions: Vec<&Value> =
        report["gauges"].as_array().unwrap().iter().map(|gauge| &gauge["decision"]).collect();
    assert_eq!(decisions, [&json!("not-decided"), &json!("proven")]);
    assert_eq!(report["urgency"]["word"], "DANGER");
    let bench = &report["bench"];
    assert_eq!(bench["verdict"]["verdict"], "skim-and-sleeve", "{bench:#}");
    assert_eq!(bench["verdict"]["missing"], json!([]));
    assert_eq!(bench["verdict"]["gates"], json!(["machining", "heat", "press", "refit"]));
    // What was confirmed and turned since is not asked for again.
    let asks = |line: &&str| line.contains("Confirm before") || line.contains("After assembly, check");
    assert_eq!(texts(&bench["lines"]).iter().filter(|line| asks(line)).count(), 0, "{:#}", bench["lines"]);
    let contacts: Vec<&Value> =
        bench["passes"].as_array().unwrap().iter().map(|pass| &pass["contact"]).collect();
    assert_eq!(contacts, [&json!("partly"), &json!("partly"), &json!("all-round")]);
    assert_eq!(bench["ring"]["turns"], "free");
    assert!(bench["notes"][0]["text"].as_str().unwrap().contains("45 Nm"));
    assert_eq!(
        bench["photos"]["bench-pass-1"].as_array().map(Vec::len),
        Some(2),
        "every photo of a pass stands"
    );
    assert_eq!(report["outcome"]["causes"], json!(["loose-seat"]));
}

/// The fit's tables stand where the fit is spoken of, and photos follow the passes.
#[test]
fn the_repair_record_goes_in_the_order_of_the_work() {
    let (_folder, steady) = scratch();
    let case = std::fs::read_to_string(demo_folder().join("13-measured-to-the-repair.json")).unwrap();
    let visit = replay(&steady, &case, &demo_folder()).unwrap().visit;
    let request = Request::LookAtBench { visit };
    let Response::Bench(shown) = steady.handle(request).unwrap() else { panic!("no bench") };
    for tag in Words::locales() {
        let words = Words::of(tag).unwrap();
        let record = build_repair(&shown.standing, &shown.bench, &Workshop::default(), words);
        let headings: Vec<&str> = record.sections.iter().map(|section| section.heading.as_str()).collect();
        let order = ["gates", "look", "plan", "passes", "fit", "ring", "notes"];
        assert_eq!(headings, order.map(|id| words.text(&format!("repair-heading-{id}"))));
        let tables: Vec<bool> = record.sections.iter().map(|section| !section.tables.is_empty()).collect();
        assert_eq!(tables, [false, false, false, false, true, false, false], "{tag}");
        assert_eq!(record.photos_heading, words.text("repair-heading-photos"));
        let passes: Vec<usize> = record.photos.iter().filter_map(|photo| pass_of(&photo.caption)).collect();
        assert!(!passes.is_empty() && passes.is_sorted(), "{tag}: {passes:?}");
    }
}

/// The number that a photo's caption ends with, where it is one of a pass.
fn pass_of(caption: &str) -> Option<usize> {
    caption.rsplit(|letter: char| !letter.is_ascii_digit()).find(|part| !part.is_empty())?.parse().ok()
}

/// After the repair the finding says so, and asks for the check that a repair takes, not for the one before.
#[test]
fn finding_after_the_repair_says_so() {
    let (_folder, steady) = scratch();
    let case = std::fs::read_to_string(demo_folder().join("13-measured-to-the-repair.json")).unwrap();
    let visit = replay(&steady, &case, &demo_folder()).unwrap().visit;
    let request = Request::Finding { visit, locale: "en".to_owned() };
    let Response::Finding(finding) = steady.handle(request).unwrap() else { panic!("no finding") };
    assert!(finding.answer[0].starts_with("DANGER"), "the rating stays: {:?}", finding.answer);
    assert!(finding.answer[1].starts_with("Repaired since"), "{:?}", finding.answer);
    assert_eq!(finding.next.len(), 1);
    assert!(finding.next[0].starts_with("Feel for play by hand again"), "{:?}", finding.next);
    // What a gauge proved is not said to be unknown; what it left open is.
    let unsure: Vec<&String> = finding.unknown.iter().filter(|line| line.contains("unsure")).collect();
    assert_eq!(unsure.len(), 1, "{unsure:?}");
    assert!(unsure[0].contains("side to side"), "{unsure:?}");
}

#[test]
fn demo_car_has_a_history_that_its_last_reading_continues() {
    let (_folder, steady) = scratch();
    let replayed = |name: &str| {
        let case = std::fs::read_to_string(demo_folder().join(name)).unwrap();
        replay(&steady, &case, &demo_folder()).unwrap()
    };
    let first = replayed("11-measured-first.json");
    replayed("12-measured-again.json");
    let last = replayed("13-measured-to-the-repair.json");
    let gauges = last.report["gauges"].as_array().unwrap();
    let trend = &gauges.iter().find(|gauge| gauge["step"] == "play-vertical").unwrap()["trend"];
    assert_eq!(trend["shows"], "growing", "{trend:#}");
    let days: Vec<f64> =
        trend["points"].as_array().unwrap().iter().map(|point| point["day"].as_f64().unwrap()).collect();
    assert_eq!(days.iter().map(|day| day.round()).collect::<Vec<_>>(), [-420.0, -195.0, 0.0]);
    for (interval, point) in
        trend["intervals_mm"].as_array().unwrap().iter().zip(trend["points"].as_array().unwrap())
    {
        let [low, high] = [0, 1].map(|end| interval[end].as_f64().unwrap());
        let (movement, standard) =
            (point["movement_mm"].as_f64().unwrap(), point["standard_mm"].as_f64().unwrap());
        // 1.96 standard uncertainties either way: the normal distribution's two-sided 95 %.
        assert!((high - low - 2.0 * 1.959_964 * standard).abs() < 1e-6, "{interval} {point}");
        assert!((high + low - 2.0 * movement).abs() < 1e-9, "{interval} {point}");
    }
    // What was set back is said in the visit's own ledger, and lies before the visit that was not.
    let history = Request::History { visit: first.visit.clone() };
    let Response::History(history) = steady.handle(history).unwrap() else { panic!("no history") };
    let lines = serde_json::to_string(&history).unwrap();
    assert!(lines.contains("times-set-back"), "{lines}");
    let search = Request::Visits { search: "DEMO 11".to_owned(), after: None };
    let Response::Visits(page) = steady.handle(search).unwrap() else { panic!("no visits") };
    let listed: Vec<&str> = page.visits.iter().map(|card| card.visit.as_str()).collect();
    assert_eq!((listed.first(), listed.last()), (Some(&last.visit.as_str()), Some(&first.visit.as_str())));
}

#[test]
fn measured_bore_goes_into_the_fit_with_its_uncertainty() {
    let Replayed { report, .. } = demo();
    let size = &report["bench"]["finished"]["mean_diameter"];
    let (mean, expanded) = (size["value_mm"].as_f64().unwrap(), size["expanded_um"].as_f64().unwrap());
    assert!(expanded > 1.0, "{size}");
    let (mean, expanded) = ((mean * 1e4).round() / 1e4, (expanded * 10.0).round() / 1e4);
    let ends = [mean - expanded, mean + expanded].map(|end| format!("{end:.4}"));
    let fit = texts(&report["bench"]["fit"]);
    assert!(fit[0].starts_with("Bearing in sleeve"), "{fit:?}");
    assert!(ends.iter().all(|end| fit[1].contains(end.as_str())), "{ends:?} in {:?}", fit[1]);
    assert!(fit.iter().any(|line| line.starts_with("Sleeve in housing")), "both seats of a sleeve: {fit:?}");
}

#[test]
fn run_out_of_a_case_is_reported() {
    let (_folder, steady) = scratch();
    let mut case = case("rigid-engine-speed", "play-vertical=felt");
    case["bench"] = json!([{ "gates": "teardown" }, { "run_out": "0.42" }]);
    let Replayed { report, .. } = replay(&steady, &case.to_string(), &demo_folder()).unwrap();
    assert_eq!(report["bench"]["run_out"]["run_out_mm"], 0.42, "{:#}", report["bench"]);
}

#[test]
fn case_without_bench_says_so() {
    let (_folder, steady) = scratch();
    let replayed = replay(&steady, &case("torque-tube", "").to_string(), Path::new(".")).unwrap();
    assert!(!replayed.benched);
    assert_eq!((&replayed.report["bench"], &replayed.report["gauges"]), (&Value::Null, &json!([])));
}

/// A bench list with one thing wrong at its end, and the code that names it.
#[track_caller]
fn refused(rows: Value, code: &str) {
    let (_folder, steady) = scratch();
    let mut case = case("rigid-engine-speed", "play-vertical=felt");
    let row = rows.as_array().unwrap().len();
    case["bench"] = rows;
    let failure = replay(&steady, &case.to_string(), &demo_folder()).unwrap_err();
    assert_eq!(failure.code, code, "{failure:?}");
    assert!(failure.message.contains(&format!("row {row} ")), "{failure:?}");
    let Response::Home(home) = steady.handle(Request::Home).unwrap() else { panic!("no home") };
    assert_eq!(home.visits, 0, "a refused case left a visit behind");
}

#[test]
fn bad_rows_are_refused_with_their_place() {
    let gates = json!({ "gates": "teardown" });
    let cut = json!({ "gates": "machining" });
    let found = json!({ "bore": "found", "file": "bench/worn-seat-dial.csv" });
    for (rows, code) in [
        (json!([{ "bore": "found", "file": "bench/worn-seat-dial.csv" }]), "gate-closed"),
        (json!([{ "gates": "kitchen" }]), "unknown-gate"),
        (json!([{ "gate": "no-such-gate" }]), "unknown-gate"),
        (json!([{ "hammer": 1 }]), "bench-row-unreadable"),
        (json!([gates, { "ring": "wobbly" }]), "bench-row-unreadable"),
        (json!([gates, { "note": "x", "torque": 45 }]), "bench-row-unreadable"),
        (json!([gates, { "bore": "found", "file": "bench/no-such.csv" }]), "bench-file-unreadable"),
        (json!([gates, { "bore": "found", "file": "README.md" }]), "bore-no-header"),
        (json!([gates, { "look": { "wall_least_mm": -1.0 } }]), "wall-refused"),
        (json!([gates, { "note": "  " }]), "bench-note-empty"),
        (json!([gates, { "note": "x".repeat(2_001) }]), "bench-note-too-long"),
        (json!([gates, { "pass": 1, "contact": "partly" }]), "gate-closed"),
        (json!([gates, cut, { "pass": 1, "contact": "partly" }]), "pass-without-bore"),
        (json!([gates, cut, found, { "pass": 0, "contact": "partly" }]), "pass-number-refused"),
        (
            json!([gates, cut, found, { "pass": 1, "contact": "partly", "diameter": "72013" }]),
            "pass-diameter-refused",
        ),
        (
            json!([gates, cut, found, { "pass": 1, "contact": "partly", "diameter": "72,1,3" }]),
            "decimal-comma",
        ),
        (
            json!([gates, cut, found, { "pass": 1, "contact": "partly", "photos": ["no.jpg"] }]),
            "case-photo-unreadable",
        ),
        (json!([gates, { "ring": "free", "photos": ["README.md"] }]), "photo-not-an-image"),
        (
            json!([gates, { "fit": { "bearing-od": "72", "bore": "measured", "housing": "A356" } }]),
            "bore-not-measured",
        ),
        (
            json!([gates, found, { "fit": { "bearing-od": "72", "class": "N7", "housing": "cheese" } }]),
            "unknown-material",
        ),
    ] {
        refused(rows, code);
    }
}

#[test]
fn bad_gauge_or_outcome_leaves_no_visit() {
    let gauge = json!({ "unit": "mm", "readings": ["1,250"], "instrument": { "resolution": "0.01", "mpe": "0.02" },
        "place": { "at": "bearing" } });
    let mut read = case("rigid-engine-speed", "play-vertical=unsure");
    read["answers"][0]["gauge"] = gauge;
    let mut told = case("rigid-engine-speed", "play-vertical=unsure");
    told["outcome"] = json!({ "causes": ["gremlins"] });
    for (case, code) in [(read, "decimal-comma"), (told, "unknown-cause")] {
        let (_folder, steady) = scratch();
        assert_eq!(replay(&steady, &case.to_string(), Path::new(".")).unwrap_err().code, code);
        let Response::Home(home) = steady.handle(Request::Home).unwrap() else { panic!("no home") };
        assert_eq!(home.visits, 0, "{code}");
    }
}
