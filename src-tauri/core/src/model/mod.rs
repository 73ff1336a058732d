//! Plain types that every room shares: no IO, no rules.

pub mod answer;
pub mod bench;
pub mod bench_act;
pub mod bore;
pub mod calibration;
pub mod case;
pub mod certainty;
pub mod entry;
pub mod fit;
pub mod gauge;
pub mod hex;
pub mod ids;
pub mod learned;
pub mod limits;
pub mod line;
pub mod mark;
pub mod outcome;
pub mod photo_of;
pub mod rating;
pub mod standing;
pub mod time;
pub mod typed;
pub mod verdict;
pub mod visit;
pub mod wish;
pub mod workshop;
