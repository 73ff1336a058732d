//! The printed papers, read back with tools that are not ours. Every PDF stays in Cargo's
//! `target/tmp` for a look by eye.

mod finding;
mod note;
mod sample;
mod tools;
