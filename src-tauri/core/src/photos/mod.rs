//! Photo intake: what a camera gives becomes an upright JPEG of bounded size with nothing private in it.

pub mod barcode;
mod code;
mod colours;
mod decode;
pub mod intake;
mod lanczos;
mod outline;
mod plan;
mod shrink;
pub mod validate;
