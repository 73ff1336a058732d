//! The printed papers, read back with tools that are not ours. Every PDF stays in Cargo's
//! `target/tmp` for a look by eye.

#![allow(
    clippy::expect_used,
    clippy::unwrap_used,
    clippy::indexing_slicing,
    clippy::string_slice,
    reason = "a test may fail loudly"
)]

mod finding;
mod marks;
mod note;
mod sample;
mod tools;
