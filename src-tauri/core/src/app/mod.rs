//! The core's whole face: one enum of requests, one of responses, and the function between them.
//!
//! A shell opens a [`Steady`] on a data folder and hands it requests. Reading, deciding and writing
//! happen here, in one transaction; what to write is decided in `decide`, what it adds up to in
//! `derive`.

mod asks;
mod at_hand;
pub mod backup;
mod bench;
mod bench_findings;
mod bench_parts;
mod bench_stock;
pub mod bore;
mod concern;
mod decide;
mod derive;
pub mod devices;
mod dispatch;
mod drawn;
mod earlier;
mod elsewhere;
mod explained;
pub mod failure;
pub mod fault;
pub mod fit;
pub mod gauge;
pub mod handover;
mod history;
pub mod history_change;
mod intake;
mod knowledge;
pub mod known_car;
mod learning;
mod list;
mod looks;
mod marks;
mod milder;
mod next_check;
mod old_sleeve;
mod opinion;
mod origin;
mod outcome;
mod papers;
mod photo;
mod play_gauge;
mod practice;
pub mod press;
mod qr;
mod read_copy;
mod reason;
mod refusal;
pub mod replay;
pub mod replies;
pub mod request;
pub mod response;
mod room;
mod set_aside;
mod signature;
mod snapshot;
mod sought;
mod stale;
mod steady;
mod still_open;
mod vin;
mod wishes;
mod workshop;
mod workshop_lists;

pub use crate::store::photo_files::{PhotoSize, photo_address};
pub use papers::Printed;
pub use read_copy::ReadCopy;
pub use steady::{Setup, Steady};
