//! The suite: everything checked from outside the core, in one binary. Modules mirror the core's rooms.

#![expect(
    clippy::unwrap_used,
    clippy::indexing_slicing,
    clippy::string_slice,
    reason = "a test may fail loudly"
)]

mod bad_input;
mod bench_bindings;
mod bench_tools;
mod bindings;
mod cases;
mod demo;
mod fit;
mod gates;
mod gauge;
mod gauge_fit_reference;
mod kills;
mod ledger;
mod monotone;
mod monte_carlo;
mod photos;
mod published;
mod tidy;
mod verdict;
