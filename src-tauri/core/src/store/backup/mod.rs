//! Backups: a folder, marked as one data folder's, with generations that share their files.
//!
//! A generation is a whole copy of the database and a list of all it is made of, by hash. It stands once its
//! list does, which is written last; so a backup that is cut off changes nothing that stood before. Only
//! files that a backup of the same data folder wrote are ever removed. The device's id and key stay behind, so
//! that a restored copy never writes under this device's name.

pub mod check;
mod compare;
pub mod fault;
pub mod file;
mod found;
pub mod list;
mod lists;
mod make;
mod own;
mod packed;
mod place;
mod proving;
pub mod read;
mod retain;
pub(super) mod source;
mod tar;

pub use make::{BackedUp, Progress, make};
pub use place::MARKER;
