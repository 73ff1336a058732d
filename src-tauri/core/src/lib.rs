//! The rules, the ledger and the words of Steady. No screen, no network, no Tauri.
//!
//! Read in this order: [`model`] (plain types), then [`app`] (the way in and out), then the rooms
//! between them.

pub mod app;
pub mod content;
pub mod model;
