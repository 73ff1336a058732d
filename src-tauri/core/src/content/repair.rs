//! What the repair record says: finished sentences in one language, no layout.

use serde::Serialize;

use super::shared::{Field, Labels, Letterhead, PhotoLine};

/// The record of a repair: before and after, passes, sizes, fit, torque notes, who and when.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct RepairRecord {
    /// RFC 5646, such as `de`; every sentence below is in it.
    pub locale: String,
    /// Over the paper; the PDF's own title too.
    pub title: String,
    /// Who it is from; none where the workshop gave no particulars.
    pub workshop: Option<Letterhead>,
    /// The verdict, its sentence first.
    pub verdict: Vec<String>,
    /// What identifies the car and the visit; empty fields are left out.
    pub vehicle: Vec<Field>,
    /// The bore before and after, as drawings with their words.
    pub bores: Vec<BoreFigure>,
    /// What was done and what followed, part by part.
    pub sections: Vec<RepairSection>,
    /// Over `photos`.
    pub photos_heading: String,
    /// By the part of the work, each with its marks.
    pub photos: Vec<PhotoLine>,
    /// What holds for every such repair.
    pub cautions: Vec<String>,
    /// Over `cautions`.
    pub cautions_heading: String,
    /// Who worked, when, and what the ledger stands at.
    pub foot: Vec<Field>,
    /// One line for each page's foot.
    pub page_foot: String,
    /// What a paper prints beside its sentences.
    pub labels: Labels,
}

/// A bore at one depth as a polar drawing: the unit circle is round, the deviation is magnified.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct BoreFigure {
    /// What it is about.
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
    /// Inner circle of the minimum zone: between the two lies the whole wall.
    pub zone_inner: Vec<[f64; 2]>,
    /// Angles count clockwise on the drawing.
    pub clockwise: bool,
    /// Where the wall is farthest out and farthest in, with their words.
    pub marks: Vec<PlotMark>,
    /// Rings of a known deviation, outer and inner.
    pub scale: Vec<ScaleRing>,
    /// What the shape shows, in sentences.
    pub lines: Vec<String>,
}

/// A place on a polar drawing.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct PlotMark {
    /// x to the right and y up.
    pub at: [f64; 2],
    /// The wall lies farther out than anywhere else; else farther in.
    pub outward: bool,
    /// Its deviation and its angle.
    pub label: String,
}

/// A ring of one deviation from round.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct ScaleRing {
    /// Radius on the drawing, round being 1.
    pub radius: f64,
    /// What the ring stands for: deviation with its unit.
    pub label: String,
}

/// One seat of a fit.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct FitTable {
    /// Which seat, and its diameter.
    pub heading: String,
    /// Over the rows' names, then each temperature.
    pub columns: Vec<String>,
    /// A name and its value at each temperature.
    pub rows: Vec<Vec<String>>,
    /// Sizes, what becomes of it hot, strength, how it goes together.
    pub lines: Vec<String>,
}

/// A part of the record.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct RepairSection {
    /// What it is about.
    pub heading: String,
    /// Of the fit, a table a seat; else none.
    pub tables: Vec<FitTable>,
    /// What was done and measured there.
    pub text: Vec<String>,
}
