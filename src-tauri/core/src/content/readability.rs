//! How hard the note reads, in each language by a published measure: see `readability/measures.rs`.
//!
//! `tests/reference/readability.py` holds the counts and formulas to a library that is not ours.

mod counts;
mod measures;
mod syllables;
mod tests;
