//! A workshop's own knowledge and layouts: what is refused leaves the rest sound, and what is taken can be sorted.

#![no_main]

use libfuzzer_sys::fuzz_target;
use steady_core::trade::check::check_trade;
use steady_core::trade::load::load;
use steady_core::trade::own::add;

fuzz_target!(|bytes: &[u8]| {
    let Ok(text) = std::str::from_utf8(bytes) else { return };
    let file = vec![("own.toml".to_owned(), text.to_owned())];
    let (mut trade, _) = load(&file).expect("what is shipped is sound");
    add(&mut trade, &file);
    assert_eq!(check_trade(&trade), Ok(()));
});
