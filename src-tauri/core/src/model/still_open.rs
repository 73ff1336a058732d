//! What an earlier visit of the same car left open.

use serde::Serialize;

use super::rating::Word;
use super::time::Moment;

/// An earlier visit of the same car that ended in DANGER or WARNING, with neither an outcome recorded in it nor a
/// repair since.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct StillOpen {
    /// Id of that visit.
    pub visit: String,
    /// When the car came in then.
    pub opened_at: Moment,
    /// DANGER or WARNING.
    pub word: Word,
    /// The layout it was checked by, where this visit goes by another.
    pub layout: Option<String>,
    /// Plate, or VIN where that alone differs, that it goes by now, where it was written down as this car only before it was corrected.
    pub corrected_to: Option<String>,
    /// Its record cannot be read in full, and the rating is what the list of visits says: nothing lifts it.
    pub unread: bool,
}
