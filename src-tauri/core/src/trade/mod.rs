//! Trade knowledge: reads `data/` once, checks it, and hands out plain rows. Holds no rule of its own.

pub mod bench;
pub mod check;
pub mod load;
pub mod losses;
pub mod own;
pub mod rows;
pub mod texts;
#[cfg(test)]
mod texts_tests;

pub use load::{Refused, Trade, load};
