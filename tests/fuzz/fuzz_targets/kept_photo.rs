//! A photo from another device: what is let in carries one picture of kept size and nothing beside it.

#![no_main]

use libfuzzer_sys::fuzz_target;
use steady_core::photos::validate;

fuzz_target!(|bytes: &[u8]| {
    if validate::check(bytes).is_ok() {
        assert!(bytes.starts_with(&[0xff, 0xd8]) && bytes.ends_with(&[0xff, 0xd9]));
    }
});
