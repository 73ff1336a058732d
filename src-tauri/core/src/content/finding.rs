//! What the service writer's finding says: finished sentences in one language, no layout.

use serde::Serialize;

use super::shared::{Band, CauseLine, Field, Labels, PhotoLine, Signed};

/// The finding.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct Finding {
    /// Language tag.
    pub locale: String,
    /// Document title.
    pub title: String,
    /// The urgency band.
    pub band: Band,
    /// The answer in ten seconds: two to four sentences.
    pub answer: Vec<String>,
    /// What to do next, first thing first.
    pub next: Vec<String>,
    /// Vehicle and visit.
    pub vehicle: Vec<Field>,
    /// The complaint in the owner's words.
    pub complaint: Vec<Field>,
    /// Every rule that fired, strongest first.
    pub reasons: Vec<ReasonLine>,
    /// What was checked, step by step.
    pub steps: Vec<StepLine>,
    /// Likely causes, most likely first.
    pub causes: Vec<CauseLine>,
    /// What people say beside the sorting: the technician's opinion, the confirmed outcome.
    pub said: Vec<String>,
    /// What is not known.
    pub unknown: Vec<String>,
    /// Roadworthiness rows, for information.
    pub road: Vec<String>,
    /// The usual cautions.
    pub cautions: Vec<String>,
    /// The receipt, if one was signed.
    pub signed: Option<Signed>,
    /// Technician, dates, ledger head: the foot of the document.
    pub foot: Vec<Field>,
    /// One line for every page's foot.
    pub page_foot: String,
    /// Headings of the parts above, by name of the field.
    pub headings: FindingHeadings,
    /// Labels.
    pub labels: Labels,
}

/// One rule that fired.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct ReasonLine {
    /// `danger`, `warning`, `caution` or `notice`.
    pub word: String,
    /// The signal word as printed.
    pub label: String,
    /// The sentence.
    pub text: String,
}

/// One step as checked.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct StepLine {
    /// Step id.
    pub step: String,
    /// What was checked.
    pub title: String,
    /// How.
    pub how: String,
    /// The answer in words, or that there is none.
    pub answer: String,
    /// `danger`, `warning`, `caution`, `notice`, or none.
    pub word: Option<String>,
    /// Signal word as printed, or "none yet".
    pub label: String,
    /// Time, who, cold or warm, reason for a milder answer.
    pub details: Vec<String>,
    /// Photo, if kept.
    pub photo: Option<PhotoLine>,
    /// The earlier photo that stands beside it, if the technician chose to pair them.
    pub before: Option<PhotoLine>,
    /// Why there is no photo.
    pub waiver: Option<String>,
}

/// Headings of a finding.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct FindingHeadings {
    /// Over `next`.
    pub next: String,
    /// Over `vehicle`.
    pub vehicle: String,
    /// Over `complaint`.
    pub complaint: String,
    /// Over `reasons`.
    pub reasons: String,
    /// Over `steps`.
    pub steps: String,
    /// Over `causes`.
    pub causes: String,
    /// Over `unknown`.
    pub unknown: String,
    /// Over `road`.
    pub road: String,
    /// Over `cautions`.
    pub cautions: String,
    /// Over `signed`.
    pub signed: String,
}
