//! The rules, the ledger and the words of Steady. No screen, no network, no Tauri.
//!
//! Read in this order: [`model`] (plain types), [`trade`] (the knowledge in `data/`), [`walk`],
//! [`sorting`] and [`urgency`] (ledger to picture), [`outcomes`] (what teardown taught), [`measure`] (what
//! instruments read), [`signing`] (who wrote a line), [`store`] and [`photos`] (what is on disk), [`words`] and
//! [`content`] (what people read), and [`app`], the way in and out.

pub mod app;
pub mod content;
pub mod handover;
pub mod measure;
pub mod model;
pub mod outcomes;
pub mod photos;
pub mod signing;
pub mod sorting;
pub mod store;
pub mod trade;
pub mod urgency;
pub mod walk;
pub mod words;
