//! A handover file that a stranger's device signed and chained as it should be, around entries that are anything:
//! one entry a line. What is taken in can be looked at, exported, and verified.

#![no_main]

#[path = "../src/stranger.rs"]
mod stranger;
#[path = "../src/workshop.rs"]
mod workshop;

use std::sync::atomic::{AtomicU32, Ordering};

use libfuzzer_sys::fuzz_target;
use steady_core::app::handover::verify;
use steady_core::app::request::Request;

/// A visit of its own each time, since a workshop takes a visit's entries but once.
static VISITS: AtomicU32 = AtomicU32::new(0);

fuzz_target!(|bytes: &[u8]| {
    let bodies: Vec<&str> = std::str::from_utf8(bytes).unwrap_or_default().lines().take(50).collect();
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
