//! What a technician can record at a step.

use serde::{Deserialize, Serialize};

use super::limits;

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

/// How warm the housing was when play was felt: an aluminium seat opens when hot.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
#[serde(untagged)]
pub enum Temperature {
    /// By a hand on it.
    Felt(Warmth),
    /// As read, degrees Celsius.
    Celsius(f64),
}

/// Cold or warm, as a hand judges it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
#[serde(rename_all = "kebab-case")]
pub enum Warmth {
    /// Not at running warmth.
    Cold,
    /// At running warmth.
    Warm,
}

impl Temperature {
    /// Whether it is warm, where degrees count as warm from `from_c` on.
    pub fn is_warm(self, from_c: f64) -> bool {
        match self {
            Self::Felt(warmth) => warmth == Warmth::Warm,
            Self::Celsius(degrees) => degrees >= from_c,
        }
    }

    /// Whether it is a temperature that a housing in a workshop can have.
    pub fn is_plausible(self) -> bool {
        match self {
            Self::Felt(_) => true,
            Self::Celsius(degrees) => limits::HOUSING_C.contains(&degrees),
        }
    }
}

/// Whether the engine was at running warmth when its idle was read: a cold engine idles fast.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
#[serde(rename_all = "kebab-case")]
pub enum EngineWarmth {
    /// At its running temperature.
    Warm,
    /// Just started: idles fast, so that its reading proves nothing.
    Cold,
}

/// Where along the car a noise was loudest, to the ears of whoever heard it. A shaft carries every noise along the car:
/// it tells a reader where to look first, and no rule reads it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
#[serde(rename_all = "kebab-case")]
pub enum HeardAt {
    /// Engine and gearbox.
    Front,
    /// Between the axles.
    Middle,
    /// Rear axle and wheels.
    Rear,
    /// The same all along.
    AllAlong,
}

impl HeardAt {
    /// Its id in texts.
    pub fn id(self) -> &'static str {
        match self {
            Self::Front => "front",
            Self::Middle => "middle",
            Self::Rear => "rear",
            Self::AllAlong => "all-along",
        }
    }
}

/// Circumstances of an answer, recorded with it because it means little without them.
#[derive(Debug, Clone, Copy, Default, PartialEq)]
pub struct Circumstances {
    /// How warm the housing was, where the step asks.
    pub temperature: Option<Temperature>,
    /// Whether the shaft was free of the engine when it was turned; none where nobody said.
    pub free: Option<bool>,
    /// How warm the engine was, where the step asks.
    pub engine: Option<EngineWarmth>,
    /// Where a noise was loudest, where the step asks.
    pub heard_at: Option<HeardAt>,
}
