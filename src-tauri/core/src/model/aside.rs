//! What is known of a ledger that could not be used and was set aside.

use serde::{Deserialize, Serialize};

/// Why a ledger was set aside.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
#[serde(rename_all = "kebab-case")]
pub enum Why {
    /// SQLite finds damage in it.
    Damaged,
    /// The file does not begin as a database does.
    NoDatabase,
    /// The file holds no byte.
    Empty,
    /// Photos or a log are there, and no database.
    Missing,
}

/// What can be read from a folder that was set aside, as it was counted once.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct Readable {
    /// Visits whose ledger is whole.
    #[cfg_attr(feature = "bindings", ts(type = "number"))]
    pub visits: u64,
    /// Visits of which something was found and not all.
    #[cfg_attr(feature = "bindings", ts(type = "number"))]
    pub lost: u64,
    /// Photos that the whole visits name and that are there.
    #[cfg_attr(feature = "bindings", ts(type = "number"))]
    pub photos: u64,
}
