//! The answers that count, laid out for the rules: what `walk` hands to `sorting` and `urgency`.

use std::collections::BTreeMap;

use super::answer::{AnswerValue, Temperature};
use super::gauge::Likelihood;
use super::standing::Support;
use super::visit::Gearbox;

/// What was answered on this car. Steps that do not apply, are hidden or withdrawn are not in it.
#[derive(Debug, Clone, PartialEq)]
pub struct Case {
    /// What holds the bearing.
    pub support: Support,
    /// The layout's id.
    pub layout: String,
    /// The gearbox, if known.
    pub gearbox: Option<Gearbox>,
    /// The maker's idle range, rpm, if known.
    pub idle_rpm: Option<[u32; 2]>,
    /// Sounds the owner complains of.
    pub complaint_sounds: Vec<String>,
    /// Hands-on steps that a rating needs, in walk order.
    pub hands_on: Vec<String>,
    /// The answers, by step.
    pub answers: BTreeMap<String, CaseAnswer>,
}

/// One answer that counts.
#[derive(Debug, Clone, PartialEq)]
pub struct CaseAnswer {
    /// The answer.
    pub value: AnswerValue,
    /// Cold or warm, if recorded.
    pub temperature: Option<Temperature>,
    /// Something was found.
    pub found: bool,
    /// Not looked (`not-done`, `not-tried`, `not-read`, `unknown`).
    pub open: bool,
    /// What a gauge's readings weigh, where they and not the hand made this the answer that counts.
    pub measured: Option<Likelihood>,
}

impl Case {
    /// The answer to a step.
    pub fn answer(&self, step: &str) -> Option<&CaseAnswer> {
        self.answers.get(step)
    }

    /// Whether the answer to a step holds a choice.
    pub fn has(&self, step: &str, choice: &str) -> bool {
        self.answer(step).is_some_and(|answer| answer.value.has(choice))
    }

    /// Whether the answer to a step holds one of these choices.
    pub fn has_any(&self, step: &str, choices: &[&str]) -> bool {
        choices.iter().any(|choice| self.has(step, choice))
    }

    /// Whether a step was looked at: answered, and not with "not done".
    pub fn looked(&self, step: &str) -> bool {
        self.answer(step).is_some_and(|answer| !answer.open)
    }
}
