//! What is on disk: the SQLite ledger, photo files, migrations, and recovery. Knows no rule.

pub mod backup;
mod canonical;
pub mod cards;
pub mod erase;
pub mod fault;
mod foreign_schema;
pub mod keys;
pub mod knowledge;
pub mod ledger;
mod lock;
pub mod merge;
pub mod migrations;
pub mod open;
pub mod outcomes;
pub mod outgoing;
pub mod photo_files;
pub mod practice;
pub mod private;
pub mod salvage;
pub mod settings;
pub mod spool;
pub mod staging;
pub mod uploads;
pub mod wishes;
pub mod workshop;
