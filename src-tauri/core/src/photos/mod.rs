//! Photo intake: what a camera gives becomes an upright JPEG of bounded size with nothing private in it.

pub mod barcode;
pub mod intake;
pub mod kept;
