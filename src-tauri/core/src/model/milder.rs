//! What is shown of an answer that was made milder: papers and screens say so for as long as it counts.

use serde::Serialize;

use super::answer::AnswerValue;
use super::time::Moment;

/// An answer that asked for DANGER, or found what asks for WARNING, and was made milder.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct MilderStand {
    /// Step whose answer it was.
    pub step: String,
    /// The graver answer, as first given.
    pub was: AnswerValue,
    /// What it was answered instead; none where the answer was taken back.
    pub now: Option<AnswerValue>,
    /// Why, in the technician's words.
    pub reason: String,
    /// Who made it milder, name as typed.
    pub by: String,
    /// Date of its entry, by the clock of the device that wrote it.
    pub at: Moment,
}
