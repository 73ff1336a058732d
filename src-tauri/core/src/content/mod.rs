//! What a finding and a note say: content in one language, never layout.
//!
//! Types first ([`finding`], [`note`], [`shared`]), then the pure functions that fill them from a
//! [`Standing`](crate::model::standing::Standing). How they look on paper is the press's business
//! (`steady-papers`).

pub mod before_after;
pub mod finding;
pub mod machinist;
pub mod note;
pub mod repair;
pub mod shared;

mod bore_lines;
mod finding_lines;
mod fit_lines;
mod fit_table;
mod found;
mod gauge_lines;
mod gauge_table;
mod instrument_line;
mod look_lines;
mod open_points;
mod parts;
mod reasons;
mod ring_lines;
mod said;
mod scope;
mod short_text;
mod sorted_json;
mod stock_lines;
mod verdict_lines;
mod write_before_after;
mod write_finding;
mod write_machinist;
mod write_note;
mod write_repair;

pub use bore_lines::{bore_lines, note_line};
pub use fit_lines::fit_lines;
pub use gauge_lines::gauge_lines;
pub use instrument_line::instrument_line;
pub use look_lines::{look_lines, sleeve_out_lines};
pub use reasons::{reason_text, word_reasons};
pub use ring_lines::ring_lines;
pub use said::{Reader, urgency_id};
pub use stock_lines::stock_line;
pub use verdict_lines::verdict_lines;
pub use write_before_after::build_before_after;
pub use write_finding::build_finding;
pub use write_machinist::build_machinist;
pub use write_note::build_note;
pub use write_repair::build_repair;

#[cfg(test)]
mod example;
#[cfg(test)]
mod readability;
#[cfg(test)]
mod tests;
#[cfg(test)]
mod workshop_tests;
