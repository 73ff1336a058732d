//! What a shell sees of an error: a code it may branch on, a sentence, and what to do.

use serde::Serialize;

/// A refused or failed request. The ledger is as it was.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct Failure {
    /// Stable code, such as `unknown-step`.
    pub code: String,
    /// What went wrong; a short phrase that holds nothing a person typed.
    pub message: String,
    /// What to do about it.
    pub help: String,
    /// The field that it is about, by its name in the request, where the core knows it: `od`, `reading-1`, `cylinders`.
    pub field: Option<String>,
}
