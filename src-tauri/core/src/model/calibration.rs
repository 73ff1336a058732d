//! How well past sortings did, for reading. Scored in `outcomes::score`.

use serde::Serialize;

/// What confirmed outcomes say of past sortings.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct Calibration {
    /// Visits with a confirmed outcome, each counted once.
    pub outcomes: u32,
    /// Outcomes a layout needs before they move its numbers.
    pub enough: u32,
    /// No layout has enough: every number is still judgement.
    pub on_judgement_alone: bool,
    /// Outcomes of each layout that has any.
    pub layouts: Vec<LayoutOutcomes>,
    /// The scores; none without an outcome.
    pub scores: Option<Scores>,
    /// Signs that hardly told the causes apart, weakest first.
    pub weak_signs: Vec<WeakSign>,
}

/// How many outcomes a layout has, and whether they teach it.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct LayoutOutcomes {
    /// The layout's id.
    pub layout: String,
    /// Confirmed and not taken back.
    pub outcomes: u32,
    /// They are enough, and its numbers are taught by them.
    pub taught: bool,
}

/// Scores over every probability that was given for a cause before its outcome was known. Lower is better.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct Scores {
    /// Probabilities scored: one a cause and visit.
    pub forecasts: u32,
    /// Brier score: mean squared difference of probability and truth, 0 to 1.
    pub brier: f64,
    /// Part of it from probabilities that were too high or too low as a group, by the groups below.
    pub calibration: f64,
    /// Part of it from groups that hold both cars with the cause and cars without.
    pub refinement: f64,
    /// What is left because probabilities within a group differ; the three parts add up to `brier`.
    pub grouping: f64,
    /// Logarithmic score: mean of minus the natural logarithm of the probability given to the truth.
    pub log_score: f64,
    /// The same if only the workshop's own frequency of each cause had been said.
    pub log_score_base: f64,
    /// The reliability diagram, in order of probability; groups without a forecast are left out.
    pub groups: Vec<ReliabilityGroup>,
}

/// One point of the reliability diagram.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct ReliabilityGroup {
    /// Lower end of the group, 0 to 1.
    pub low: f64,
    /// Upper end of the group, 0 to 1.
    pub high: f64,
    /// Probabilities in it.
    pub count: u32,
    /// Mean of the probabilities in it, 0 to 1.
    pub mean: f64,
    /// How often the cause was really there.
    pub frequency: f64,
}

/// A sign that was about as frequent without its causes as with them.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct WeakSign {
    /// The sign's id.
    pub sign: String,
    /// The step that shows it.
    pub step: String,
    /// The answers there that say it is present; empty for a reading.
    pub answers: Vec<String>,
    /// Cars with one of its causes where it was looked for.
    pub with_cause: u32,
    /// Of those, where it was seen.
    pub seen_with_cause: u32,
    /// Cars with none of its causes where it was looked for.
    pub without_cause: u32,
    /// Of those, where it was seen.
    pub seen_without_cause: u32,
}
