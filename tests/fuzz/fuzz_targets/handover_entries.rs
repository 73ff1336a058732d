//! A handover file that a stranger's device signed and chained as it should be, around entries that are anything:
//! one entry a line, in the one spelling it has where it can be read. What is taken in can be looked at, exported, and
//! verified.

#![no_main]

#[path = "../src/stranger.rs"]
mod stranger;
#[path = "../src/workshop.rs"]
mod workshop;

use std::sync::atomic::{AtomicU32, Ordering};

use libfuzzer_sys::fuzz_target;
use steady_core::app::handover::verify;
use steady_core::app::request::Request;
use steady_core::model::entry::EntryBody;

/// A visit of its own each time, since a workshop takes a visit's entries but once.
static VISITS: AtomicU32 = AtomicU32::new(0);

/// An entry's body as Steady writes it; what is none as it is.
fn spelled(body: &str) -> String {
    let read = serde_json::from_str::<EntryBody>(body);
    read.and_then(|body| serde_json::to_string(&body)).unwrap_or_else(|_| body.to_owned())
}

fuzz_target!(|bytes: &[u8]| {
    let lines = std::str::from_utf8(bytes).unwrap_or_default().lines().take(50);
    let bodies: Vec<String> = lines.map(spelled).collect();
    let bodies: Vec<&str> = bodies.iter().map(String::as_str).collect();
    let visit = stranger::visit(VISITS.fetch_add(1, Ordering::Relaxed));
    let file = stranger::file(&visit, &bodies);
    if verify(&mut &file[..]).is_err() {
        return;
    }
    let workshop = workshop::shared();
    if workshop.steady.import(&mut &file[..]).is_err() {
        return;
    }
    // What these answer, refusals too, is theirs; that they answer is what is asked.
    let _ = workshop.steady.handle(Request::Look { visit: visit.clone() });
    let _ = workshop.steady.handle(Request::Note { visit, locale: "de".to_owned() });
});
