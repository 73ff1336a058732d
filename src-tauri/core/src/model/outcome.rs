//! What a visit turned out to be, and what somebody thought before: both are recorded beside the sorting
//! and never change it. How outcomes teach is the business of `outcomes`.

use std::collections::BTreeMap;

use serde::{Deserialize, Serialize};

use super::time::Moment;

/// A confirmed outcome as it stands in the ledger. It carries all that learning needs, so that it counts
/// alike on every device it travels to.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Outcome {
    /// The causes that were really there, `something-else` for one that is on no list; none for `normal-character`.
    pub causes: Vec<String>,
    /// The car's layout.
    pub layout: String,
    /// Signs that were decided, by id: seen or not.
    pub signs: BTreeMap<String, bool>,
    /// What the sorting said just before, by cause.
    pub sorted: BTreeMap<String, f64>,
    /// The knowledge that said so.
    pub knowledge: String,
}

/// An outcome as shown.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct OutcomeStand {
    /// The causes that were really there, or `normal-character` alone.
    pub causes: Vec<String>,
    /// Who says so.
    pub by: String,
    /// When it was recorded.
    pub at: Moment,
}

/// What the technician thinks it is; shown beside the sorting, never part of it.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct OpinionStand {
    /// The cause, or `normal-character`.
    pub cause: String,
    /// Why, in their words.
    pub reason: String,
    /// Name, as typed, of who recorded it.
    pub by: String,
    /// Date of its entry, by the clock of the device that wrote it.
    pub at: Moment,
}
