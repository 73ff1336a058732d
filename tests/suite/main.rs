//! The suite: everything checked from outside the core, in one binary. Modules mirror the core's rooms.

#![expect(
    clippy::unwrap_used,
    clippy::indexing_slicing,
    clippy::string_slice,
    reason = "a test may fail loudly"
)]

mod backups;
mod bad_input;
mod bench_tools;
mod bindings;
mod cases;
mod demo;
mod erase;
mod gates;
mod handover;
mod handover_corpus;
mod handover_files;
mod handover_hostile;
mod import_kills;
mod kills;
mod ledger;
mod monotone;
mod own_layout;
mod papers;
mod photos;
mod published;
mod tidy;
