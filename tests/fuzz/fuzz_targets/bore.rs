//! A bore file: refused by a named code, or measured and planned to finite numbers.

#![no_main]

use libfuzzer_sys::fuzz_target;
use steady_core::app::bore::{length, plan_of, shape_of};
use steady_core::model::bore::SkimAsk;
use steady_core::words::Words;

fuzz_target!(|bytes: &[u8]| {
    let Ok(text) = std::str::from_utf8(bytes) else { return };
    let words = Words::of("en").expect("English is shipped");
    let _ = length(text, words);
    // A longer file says nothing new and only takes time.
    if text.len() > 20_000 {
        return;
    }
    match shape_of(text, words) {
        Ok(shape) => workable(&serde_json::to_string(&shape).expect("a shape can be written")),
        Err(failure) => assert!(!failure.message.is_empty() && failure.code != "internal", "{failure:?}"),
    }
    let ask = SkimAsk {
        pass_diameter_mm: 0.1,
        wall_min_mm: Some(2.0),
        sleeve_bore_mm: Some(75.0),
        ..SkimAsk::default()
    };
    if let Ok(plan) = plan_of(text, &ask, words) {
        workable(&serde_json::to_string(&plan).expect("a plan can be written"));
    }
});

/// JSON writes a number that is none as null; every number of a bore's shape is one, and those that may be
/// left out are no numbers at all then.
fn workable(json: &str) {
    assert!(!json.contains("NaN") && !json.contains("inf"), "{json}");
}
