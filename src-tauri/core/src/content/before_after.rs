//! What the sheet for the customer says: the bore before and after at one scale, and what was done. Finished sentences in one
//! language, in an owner's words, no layout.

use serde::Serialize;

use super::shared::{Field, Labels, Letterhead};

/// One page for whoever paid for the work.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct BeforeAfter {
    /// RFC 5646, such as `de`; every sentence below is in it.
    pub locale: String,
    /// Over the paper; the PDF's own title too.
    pub title: String,
    /// Who it is from; none where the workshop gave no particulars.
    pub workshop: Option<Letterhead>,
    /// What identifies the car and the visit; empty fields are left out.
    pub vehicle: Vec<Field>,
    /// What the drawings show.
    pub about: String,
    /// Before, then after.
    pub bores: Vec<BoreSide>,
    /// How much larger the deviation is drawn, alike on both sides.
    pub scale: String,
    /// Over `done`.
    pub done_heading: String,
    /// What was done, in the order of the work; what is not recorded is not said to be done.
    pub done: Vec<String>,
    /// Over `cautions`.
    pub cautions_heading: String,
    /// What still has to be done before the car is driven, and what this sheet is not.
    pub cautions: Vec<String>,
    /// Who worked, when, and what the ledger stands at.
    pub foot: Vec<Field>,
    /// One line for the page's foot.
    pub page_foot: String,
    /// What a paper prints beside its sentences.
    pub labels: Labels,
}

/// The bore before or after the work.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct BoreSide {
    /// Before or after.
    pub heading: String,
    /// Out of round by how much, and the limit; or that it was not measured.
    pub says: String,
    /// Whether that is within the limit, beyond it, or neither is sure.
    pub compared: String,
    /// The drawing in words.
    pub alt: String,
    /// The wall in pieces, point by point, x to the right and y up; none where it was not measured.
    pub wall: Vec<Vec<[f64; 2]>>,
    /// The wall is one piece all round: its last point joins its first.
    pub whole: bool,
}
