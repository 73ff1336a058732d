//! A damaged database set aside: mined for what still verifies, or refused.

#![no_main]

#[path = "../src/workshop.rs"]
mod workshop;

use libfuzzer_sys::fuzz_target;

fuzz_target!(|bytes: &[u8]| {
    let workshop = workshop::shared();
    let database = workshop.folder().join("damaged.db");
    std::fs::write(&database, bytes).expect("the scratch folder can be written");
    if let Err(failure) = workshop.steady.salvage(&database) {
        assert_ne!(failure.code, "internal", "{failure:?}");
    }
});
