//! A camera's file: refused, or taken in as what a photo from another device must be.

#![no_main]

use libfuzzer_sys::fuzz_target;
use steady_core::photos::intake::{LONG_SIDE, THUMB_SIDE, take_in};
use steady_core::photos::validate;

// A panic within decoding is contained by intake, and only one that gets out is a finding.
fuzz_target!(init: std::panic::set_hook(Box::new(|_| {})), |bytes: &[u8]| {
    let Ok(taken) = take_in(bytes) else { return };
    assert_eq!(validate::check(&taken.full), Ok(()));
    assert_eq!(validate::check(&taken.thumb), Ok(()));
    assert!(taken.width.max(taken.height) <= LONG_SIDE);
    let thumb = image::load_from_memory(&taken.thumb).expect("a thumbnail can be read");
    assert!(thumb.width().max(thumb.height()) <= THUMB_SIDE);
});
