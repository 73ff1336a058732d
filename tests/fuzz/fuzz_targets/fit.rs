//! Sizes of a fit by name, `name=value` a line: refused by a named code, or worked out.

#![no_main]

use libfuzzer_sys::fuzz_target;
use steady_core::app::fit::fit_of_values;

fuzz_target!(|bytes: &[u8]| {
    let Ok(text) = std::str::from_utf8(bytes) else { return };
    let values: Vec<(String, String)> = text
        .lines()
        .filter_map(|line| line.split_once('='))
        .map(|(name, value)| (name.to_owned(), value.to_owned()))
        .collect();
    match fit_of_values(&values, "en") {
        Ok(fitted) => {
            let lines = fitted.lines.join("\n");
            assert!(!lines.contains("NaN"), "{lines}");
        }
        Err(failure) => assert_ne!(failure.code, "internal"),
    }
});
