//! A gauge file: refused by a named code, or judged, with a sentence for every part.

#![no_main]

use libfuzzer_sys::fuzz_target;
use steady_core::app::gauge::gauge;

fuzz_target!(|bytes: &[u8]| {
    let Ok(text) = std::str::from_utf8(bytes) else { return };
    match gauge(text, "en") {
        Ok(report) => {
            assert!(!report.lines.is_empty());
            let lines = report.lines.join("\n");
            assert!(!lines.contains("NaN") && !lines.contains("inf "), "{lines}");
        }
        Err(failure) => assert_ne!(failure.code, "internal"),
    }
});
