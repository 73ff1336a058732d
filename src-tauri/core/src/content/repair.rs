//! What the repair record says: finished sentences in one language, no layout.

use serde::Serialize;

use super::shared::{Field, Labels, Letterhead, PhotoLine};

/// The record of a repair: before and after, passes, sizes, fit, torque notes, who and when.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct RepairRecord {
    /// Language tag.
    pub locale: String,
    /// Document title.
    pub title: String,
    /// The workshop, if it gave its particulars.
    pub workshop: Option<Letterhead>,
    /// The verdict, its sentence first.
    pub verdict: Vec<String>,
    /// Vehicle and visit.
    pub vehicle: Vec<Field>,
    /// The bore before and after, as drawings with their words.
    pub bores: Vec<BoreFigure>,
    /// What was done and what followed, part by part.
    pub sections: Vec<RepairSection>,
    /// Photos of the work.
    pub photos: Vec<PhotoLine>,
    /// Cautions.
    pub cautions: Vec<String>,
    /// Heading over the cautions.
    pub cautions_heading: String,
    /// Who, when, ledger.
    pub foot: Vec<Field>,
    /// One line for each page's foot.
    pub page_foot: String,
    /// Labels.
    pub labels: Labels,
}

/// A bore at one depth as a polar drawing: the unit circle is round, the deviation is magnified.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct BoreFigure {
    /// Heading.
    pub heading: String,
    /// What is drawn how large.
    pub caption: String,
    /// The drawing in words.
    pub alt: String,
    /// The wall in pieces, point by point, x to the right and y up; between two pieces nothing was read.
    pub wall: Vec<Vec<[f64; 2]>>,
    /// The wall is one piece all round: its last point joins its first.
    pub whole: bool,
    /// Outer circle of the minimum zone, drawn the same way.
    pub zone_outer: Vec<[f64; 2]>,
    /// Its inner circle.
    pub zone_inner: Vec<[f64; 2]>,
    /// What it says.
    pub lines: Vec<String>,
}

/// A part of the record.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct RepairSection {
    /// Heading.
    pub heading: String,
    /// Sentences.
    pub text: Vec<String>,
}
