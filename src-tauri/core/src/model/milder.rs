//! A DANGER answer that was made milder.

use serde::Serialize;

use super::answer::AnswerValue;
use super::time::Moment;

/// A DANGER answer that was made milder.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct MilderStand {
    /// The step.
    pub step: String,
    /// What it was answered.
    pub was: AnswerValue,
    /// What it was answered instead; none where the answer was taken back.
    pub now: Option<AnswerValue>,
    /// Why, in the technician's words.
    pub reason: String,
    /// Who.
    pub by: String,
    /// When.
    pub at: Moment,
}
