//! What every test needs: a scratch data folder, a press that prints nothing, a case in one line.

use std::io::Read as _;
use std::path::Path;
use std::sync::atomic::{AtomicI64, Ordering};
use std::sync::{Arc, LazyLock};

use serde_json::{Value, json};
use steady_core::app::press::{Paper, Press, PressError, PrintRun};
use steady_core::app::replay::replay;
use steady_core::app::request::Request;
use steady_core::app::response::Response;
use steady_core::app::{Setup, Steady, failure::Failure};
use steady_core::content::finding::Finding;
use steady_core::content::note::Note;
use steady_core::model::ids;
use steady_core::model::standing::{Standing, StepStand};
use steady_core::model::time::Moment;
use steady_core::trade::rows::Form;
use tempfile::TempDir;

/// A press that prints the title: for tests that are not about paper.
pub struct PlainPress;

impl Press for PlainPress {
    fn print(&self, paper: Paper<'_>, _run: &PrintRun<'_>) -> Result<Vec<u8>, PressError> {
        Ok(match paper {
            Paper::Finding(finding) => finding.title.clone().into_bytes(),
            Paper::Note(note) => note.title.clone().into_bytes(),
            Paper::Repair(record) => record.title.clone().into_bytes(),
            Paper::Machinist(page) => page.title.clone().into_bytes(),
            Paper::BeforeAfter(page) => page.title.clone().into_bytes(),
        })
    }
}

/// 25 November 2026, 09:30 UTC.
pub const MORNING: Moment = Moment(1_795_599_000_000);

/// Opens a data folder with a fixed clock.
pub fn open(folder: &Path) -> Result<Steady, Failure> {
    Steady::open(Setup { data_dir: folder.to_owned(), press: Arc::new(PlainPress), clock: || MORNING })
}

/// The same with a clock that goes on a second each time it is asked.
pub fn open_ticking(folder: &Path) -> Result<Steady, Failure> {
    static TICKS: AtomicI64 = AtomicI64::new(0);
    let clock = || Moment(MORNING.0 + 1_000 * TICKS.fetch_add(1, Ordering::Relaxed));
    Steady::open(Setup { data_dir: folder.to_owned(), press: Arc::new(PlainPress), clock })
}

/// A scratch folder with an open Steady in it and a technician at work.
pub fn scratch() -> (TempDir, Steady) {
    let folder = tempfile::tempdir().unwrap();
    let steady = open(folder.path()).unwrap();
    steady.handle(Request::SetTechnician { name: "Kim Demo".to_owned() }).unwrap();
    (folder, steady)
}

/// Asks in JSON and expects a standing.
#[track_caller]
pub fn ask(steady: &Steady, request: Value) -> Standing {
    let request: Request = serde_json::from_value(request).unwrap();
    match steady.handle(request).unwrap() {
        Response::Visit(standing) => Arc::unwrap_or_clone(standing),
        other => panic!("no standing but {other:?}"),
    }
}

/// A visit's steps without what is locked: that hangs on the hour and on who asks.
pub fn unlocked(standing: &Standing) -> Vec<StepStand> {
    standing.steps.iter().cloned().map(|step| StepStand { lock: None, ..step }).collect()
}

/// The bytes of a file that the core made, as a shell fetches them.
#[track_caller]
pub fn fetched(steady: &Steady, file: &str) -> Vec<u8> {
    let mut bytes = Vec::new();
    steady.outgoing(file).unwrap().read_to_end(&mut bytes).unwrap();
    bytes
}

/// Whether bytes hold a word, in letters as written.
pub fn holds(bytes: &[u8], word: &str) -> bool {
    memchr::memmem::find(bytes, word.as_bytes()).is_some()
}

/// Asks in JSON, as a shell does, and gives back the error code, or `ok`.
#[track_caller]
pub fn code(steady: &Steady, request: Value) -> String {
    let refused = steady.handle_json(&request.to_string()).err();
    let failure = refused.map(|json| serde_json::from_str::<Value>(&json).unwrap());
    failure.map_or_else(|| "ok".to_owned(), |failure| failure["code"].as_str().unwrap().to_owned())
}

/// A case: layout and answers as `step=value` pairs, values of any-of steps joined by `+`.
pub fn case(layout: &str, answers: &str) -> Value {
    let answers: Vec<Value> = answers.split_whitespace().map(answer).collect();
    let vehicle = match layout {
        "rigid-engine-speed" => json!({
            "layout": layout, "seat": "bare", "gearbox": "automated-clutch", "cylinders": 6, "idle_rpm": [700, 800]
        }),
        _ => {
            json!({ "layout": layout, "gearbox": "automated-clutch", "cylinders": 6, "idle_rpm": [700, 800] })
        }
    };
    json!({ "vehicle": vehicle, "complaint": "it makes a noise", "answers": answers })
}

/// Whether a step takes several answers, whatever support it is done at.
fn takes_several(step: &str) -> bool {
    static SEVERAL: LazyLock<Vec<String>> = LazyLock::new(|| {
        let steps = steady_core::trade::load(&[]).unwrap().0.steps;
        steps.into_iter().filter(|row| row.form == Form::AnyOf).map(|row| row.id).collect()
    });
    SEVERAL.iter().any(|id| id == ids::base(step))
}

/// One `step=value`. Behind it, where wanted: `@cold`, `@warm` or `@41.5` for the housing, `~free` or `~along` for
/// whether the shaft was turned by itself, `~warm` or `~cold` for the engine.
pub fn answer(text: &str) -> Value {
    let (step, value) = text.split_once('=').unwrap();
    let (value, beside) = value.split_once('~').map_or((value, None), |(value, it)| (value, Some(it)));
    let (value, temperature) = value.split_once('@').map_or((value, None), |(value, at)| (value, Some(at)));
    let temperature = temperature.map(|at| at.parse::<f64>().map_or(json!(at), |degrees| json!(degrees)));
    let free = beside.filter(|it| ["free", "along"].contains(it)).map(|it| it == "free");
    let engine = beside.filter(|it| ["warm", "cold"].contains(it));
    let value = match value.parse::<f64>() {
        Ok(reading) => json!(reading),
        Err(_) if takes_several(step) => {
            json!(value.split('+').collect::<Vec<_>>())
        }
        Err(_) => json!(value),
    };
    json!({ "step": step, "value": value, "temperature": temperature, "free": free, "engine": engine })
}

/// Replays a case in a scratch folder and gives back its report.
#[track_caller]
pub fn report(case: &Value) -> Value {
    let (_folder, steady) = scratch();
    replay(&steady, &case.to_string(), Path::new(".")).unwrap().report
}

/// Replays a case in a scratch folder and gives back where it stands.
#[track_caller]
pub fn standing_of(case: &Value) -> Standing {
    let (_folder, steady) = scratch();
    let visit = replay(&steady, &case.to_string(), Path::new(".")).unwrap().report["visit"].clone();
    ask(&steady, json!({ "ask": "look", "visit": visit }))
}

/// Probability of a cause in a report.
#[track_caller]
pub fn probability(report: &Value, cause: &str) -> f64 {
    let causes = report["causes"].as_array().unwrap();
    causes.iter().find(|row| row["id"] == cause).unwrap()["probability"].as_f64().unwrap()
}

/// A visit's finding in English.
pub fn finding(steady: &Steady, visit: &str) -> Finding {
    let request = Request::Finding { visit: visit.to_owned(), locale: "en".to_owned() };
    match steady.handle(request).unwrap() {
        Response::Finding(finding) => *finding,
        other => panic!("no finding but {other:?}"),
    }
}

/// A visit's note in English.
pub fn note(steady: &Steady, visit: &str) -> Note {
    let request = Request::Note { visit: visit.to_owned(), locale: "en".to_owned() };
    match steady.handle(request).unwrap() {
        Response::Note(note) => *note,
        other => panic!("no note but {other:?}"),
    }
}

/// The papers of a case replayed in a folder of its own.
pub fn papers(case: &Value) -> (Finding, Note) {
    let (_folder, steady) = scratch();
    let report = replay(&steady, &case.to_string(), Path::new(".")).unwrap().report;
    let visit = report["visit"].as_str().unwrap();
    (finding(&steady, visit), note(&steady, visit))
}

/// All that a note says, in one.
pub fn said(note: &Note) -> String {
    note.sections.iter().flat_map(|section| section.text.clone()).collect::<Vec<_>>().join(" ")
}

/// Opens a visit of a car and enters the lift.
pub fn under(steady: &Steady, plate: &str, layout: &str, occasion: &str) -> String {
    let vehicle = json!({ "layout": layout, "plate": plate });
    let intake = json!({ "vehicle": vehicle, "complaint": "it hums", "occasion": occasion });
    let visit = ask(steady, json!({ "ask": "open", "intake": intake })).visit;
    enter_lift(steady, &visit);
    visit
}

/// Confirms every gate of the lift.
pub fn enter_lift(steady: &Steady, visit: &str) {
    let look = ask(steady, json!({ "ask": "look", "visit": visit }));
    for gate in &look.gate_sets.iter().find(|set| set.id == "lift").unwrap().gates {
        ask(steady, json!({ "ask": "confirm-gate", "visit": visit, "set": "lift", "gate": gate.id }));
    }
}

/// Answers a step of a visit; `more` stands beside the answer.
pub fn answered(steady: &Steady, visit: &str, step: &str, value: Value, more: Value) -> Standing {
    let mut request = json!({ "ask": "answer", "visit": visit, "step": step, "value": value });
    request.as_object_mut().unwrap().extend(more.as_object().unwrap().clone());
    ask(steady, request)
}
