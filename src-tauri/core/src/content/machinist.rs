//! What the machinist's sheet says: one page to cut, fit and measure by. Finished sentences in one language, no layout.

use serde::Serialize;

use super::shared::{Field, Labels, Letterhead};

/// One page for whoever cuts: what to take off, what to press in, what to measure.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct MachinistSheet {
    /// RFC 5646, such as `de`; every sentence below is in it.
    pub locale: String,
    /// Over the paper; the PDF's own title too.
    pub title: String,
    /// Who it is from; none where the workshop gave no particulars.
    pub workshop: Option<Letterhead>,
    /// What tells this housing from another; empty fields are left out.
    pub identity: Vec<Field>,
    /// The verdict, its sentence first.
    pub verdict: Vec<String>,
    /// The housing cut along its axis.
    pub section: SectionDrawing,
    /// Over the sizes.
    pub sizes_heading: String,
    /// Over their columns: mark, what, size, how to measure, measured.
    pub size_columns: [String; 5],
    /// Every size, with its mark in the drawing.
    pub sizes: Vec<SizeLine>,
    /// Over the passes.
    pub passes_heading: String,
    /// Over their columns: pass, cut, diameter, touched, wall left, measured.
    pub pass_columns: [String; 6],
    /// The passes in their order; none where nothing is to be cut.
    pub passes: Vec<PassLine>,
    /// Over `stop`.
    pub stop_heading: String,
    /// When to stop, the hardest limit first.
    pub stop: Vec<String>,
    /// Over `joining`.
    pub joining_heading: String,
    /// How each part goes into the other: grip cold and hot, heat, cold, force.
    pub joining: Vec<String>,
    /// Over `cautions`.
    pub cautions_heading: String,
    /// What holds for every such work.
    pub cautions: Vec<String>,
    /// The code that brings the visit up.
    pub code: VisitCode,
    /// Who worked, when, and what the ledger stands at.
    pub foot: Vec<Field>,
    /// One line for the page's foot.
    pub page_foot: String,
    /// What a paper prints beside its sentences.
    pub labels: Labels,
}

/// A section of the housing along its axis: not to scale, marks where the sizes are.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct SectionDrawing {
    /// The drawing in words.
    pub alt: String,
    /// Under it: what the marks and hatchings are.
    pub caption: String,
    /// A sleeve is drawn between housing and bearing.
    pub sleeve: bool,
    /// Letter of the datum axis.
    pub datum: String,
}

/// A size to work to.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct SizeLine {
    /// Where it stands in the drawing.
    pub mark: String,
    /// Seat, sleeve or bearing, in words.
    pub what: String,
    /// Its limits with their unit; what is not known says so.
    pub target: String,
    /// It was neither given nor measured.
    pub open: bool,
    /// With what and where.
    pub how: String,
}

/// One pass of the cutter.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct PassLine {
    /// Its number, or what it cuts to.
    pub pass: String,
    /// Cut on the diameter since the first touch.
    pub cut: String,
    /// Diameter after it.
    pub diameter: String,
    /// How much of the seat it will have touched.
    pub touched: String,
    /// Thinnest wall left.
    pub wall: String,
    /// The cutter may not go on after it.
    pub stop: bool,
}

/// A square code, row by row.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct VisitCode {
    /// The code in words.
    pub alt: String,
    /// What scanning it opens, in words.
    pub caption: String,
    /// `1` for a dark module, `0` for a light one, with the light rim.
    pub rows: Vec<String>,
}
