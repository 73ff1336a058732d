//! What a technician can record at a step.

use serde::{Deserialize, Serialize};

/// The value of an answer: one choice, several, or a reading.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
#[serde(untagged)]
pub enum AnswerValue {
    /// A reading in the step's unit (rpm).
    Reading(f64),
    /// One of the step's answers.
    One(String),
    /// Any of the step's answers.
    Any(Vec<String>),
}

impl AnswerValue {
    /// The chosen answer ids; empty for a reading.
    pub fn choices(&self) -> Vec<&str> {
        match self {
            Self::Reading(_) => Vec::new(),
            Self::One(one) => vec![one.as_str()],
            Self::Any(any) => any.iter().map(String::as_str).collect(),
        }
    }

    /// Whether this answer holds the given choice.
    pub fn has(&self, choice: &str) -> bool {
        self.choices().contains(&choice)
    }

    /// The reading, if it is one.
    pub fn reading(&self) -> Option<f64> {
        if let Self::Reading(value) = self { Some(*value) } else { None }
    }
}

/// Whether the housing was cold or warm when play was felt: an aluminium seat opens when hot.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
#[serde(rename_all = "kebab-case")]
pub enum Temperature {
    /// Cold.
    Cold,
    /// At running warmth.
    Warm,
}
