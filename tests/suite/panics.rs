//! A panic in one request: it is told as a fault of Steady's own, and takes nothing away from the next request.

use std::path::Path;
use std::sync::Arc;
use std::sync::atomic::{AtomicBool, AtomicI64, Ordering};

use serde_json::{Value, json};
use steady_core::app::press::{Paper, Press, PressError, PrintRun};
use steady_core::app::{Setup, Steady};
use steady_core::model::time::Moment;

use crate::support::{MORNING, ask, code};

/// A press that panics at every paper.
struct Jammed;

impl Press for Jammed {
    fn print(&self, _: Paper<'_>, _: &PrintRun<'_>) -> Result<Vec<u8>, PressError> {
        panic!("jammed")
    }
}

/// Whether the clock panics when it is asked next, once.
static STRIKES: AtomicBool = AtomicBool::new(false);

fn clock() -> Moment {
    static TICKS: AtomicI64 = AtomicI64::new(MORNING.0);
    assert!(!STRIKES.swap(false, Ordering::Relaxed), "struck");
    Moment(TICKS.fetch_add(1_000, Ordering::Relaxed))
}

fn opened(folder: &Path) -> (Steady, String) {
    let setup = Setup { data_dir: folder.to_owned(), press: Arc::new(Jammed), clock };
    let steady = Steady::open(setup).unwrap();
    let named = json!({ "ask": "set-technician", "name": "Kim Demo" });
    assert_eq!(code(&steady, named), "ok");
    let intake = json!({ "vehicle": { "layout": "rigid-engine-speed" } });
    let visit = ask(&steady, json!({ "ask": "open", "intake": intake })).visit;
    (steady, visit)
}

fn answer(visit: &str, value: &str) -> Value {
    json!({ "ask": "answer", "visit": visit, "step": "road-speed-vibration", "value": value })
}

#[test]
fn press_that_panics_leaves_the_core_answering() {
    let folder = tempfile::tempdir().unwrap();
    let (steady, visit) = opened(folder.path());
    let paper = json!({ "ask": "paper", "visit": visit, "paper": "finding", "locale": "en" });
    let export = json!({ "ask": "export", "visits": [visit], "papers": true });
    for jammed in [&paper, &export, &paper] {
        assert_eq!(code(&steady, jammed.clone()), "internal", "{jammed}");
        assert_eq!(code(&steady, answer(&visit, "none")), "ok");
    }
}

#[test]
fn panic_before_an_entry_is_written_leaves_the_ledger_as_it_was() {
    let folder = tempfile::tempdir().unwrap();
    let (steady, visit) = opened(folder.path());
    let before = ask(&steady, json!({ "ask": "look", "visit": visit })).ledger;
    STRIKES.store(true, Ordering::Relaxed);
    assert_eq!(code(&steady, answer(&visit, "none")), "internal");
    assert_eq!(ask(&steady, json!({ "ask": "look", "visit": visit })).ledger, before);
    let after = ask(&steady, answer(&visit, "none")).ledger;
    assert_eq!((after.entries, after.broken_at), (before.entries + 1, None));
    drop(steady);
    let (steady, _) = opened(folder.path());
    assert_eq!(ask(&steady, json!({ "ask": "look", "visit": visit })).ledger, after);
}
