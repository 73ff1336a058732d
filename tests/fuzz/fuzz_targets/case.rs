//! A written case: refused with the ledger as it was, or driven through.

#![no_main]

#[path = "../src/workshop.rs"]
mod workshop;

use libfuzzer_sys::fuzz_target;
use steady_core::app::replay::replay;

fuzz_target!(|bytes: &[u8]| {
    let Ok(text) = std::str::from_utf8(bytes) else { return };
    let workshop = workshop::shared();
    let before = workshop.visits();
    let done = replay(&workshop.steady, text, workshop.folder());
    assert_eq!(workshop.visits() - before, u64::from(done.is_ok()));
});
