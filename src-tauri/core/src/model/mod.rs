//! Plain types that every room shares: no IO, no rules.

pub mod answer;
pub mod case;
pub mod entry;
pub mod ids;
pub mod line;
pub mod rating;
pub mod standing;
pub mod time;
pub mod visit;
