//! What is shown of an answer that was made milder: papers and screens say so for as long as it counts.

use serde::Serialize;

use super::answer::AnswerValue;
use super::standing::Standing;
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

impl MilderStand {
    /// The graver answer was given again since, and counts as it did: in the end nothing was made milder.
    pub fn stands_again(&self, standing: &Standing) -> bool {
        let step = standing.steps.iter().find(|step| step.id == self.step);
        let given = step.and_then(|step| step.answered.as_ref());
        given.is_some_and(|given| given.milder_needs_reason && given.value == self.was)
    }
}
