//! Prints a finding and a note as PDF: [`press`] builds the core's
//! [`Press`](steady_core::app::press::Press).
//!
//! What a paper says is decided in `steady_core::content`; how it looks is decided in `templates/`.
//! This crate only carries one to the other, as data and never as markup. Read in this order:
//! [`press`], then `world` (the files and fonts the typesetter may see), `legible` (what the fonts can
//! print), `photos` (pictures small enough to send).

mod legible;
mod photos;
mod press;
mod world;

pub use press::{TypstPress, press};
