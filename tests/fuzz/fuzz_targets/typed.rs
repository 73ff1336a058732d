//! Short texts that a person or a page gives: a VIN and a photo's address.

#![no_main]

use libfuzzer_sys::fuzz_target;
use steady_core::app::photo_address;
use steady_core::walk::vin;

fuzz_target!(|bytes: &[u8]| {
    let Ok(text) = std::str::from_utf8(bytes) else { return };
    let _ = vin::hint(text);
    if let Some(digit) = vin::check_digit(text) {
        assert!(digit.is_ascii_digit() || digit == 'X');
    }
    if let Some((sha256, _)) = photo_address(text) {
        assert!(!sha256.contains(['/', '.', '\\']), "{sha256}");
    }
});
