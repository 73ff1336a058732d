//! A handover file as it comes: refused by a named code, or verified.

#![no_main]

use libfuzzer_sys::fuzz_target;
use steady_core::app::handover::verify;

fuzz_target!(|bytes: &[u8]| {
    if let Err(failure) = verify(&mut &*bytes) {
        assert!(failure.code.starts_with("handover-"), "{failure:?}");
    }
});
