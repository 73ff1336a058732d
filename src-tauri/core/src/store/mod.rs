//! What is on disk: the SQLite ledger, photo files, migrations, and recovery. Knows no rule.

pub mod cards;
pub mod fault;
pub mod ledger;
pub mod migrations;
pub mod open;
pub mod outcomes;
pub mod photo_files;
pub mod settings;
pub mod uploads;
