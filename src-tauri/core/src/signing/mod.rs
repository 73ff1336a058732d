//! Who wrote a line: a device's key, which is also its id, the signature over a line's hash, and the short code
//! that two people compare. No storage and no rule; what a missing proof means is decided above.

pub mod code;
pub mod key;
pub mod line;
