//! What the service writer's finding says: finished sentences in one language, no layout.

use serde::Serialize;

use super::shared::{Band, CauseLine, Field, Labels, Letterhead, PhotoLine, Signed};

/// What the service writer reads before quoting, whole and in order.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct Finding {
    /// RFC 5646, such as `de`; every sentence below is in it.
    pub locale: String,
    /// Over the paper; the PDF's own title too.
    pub title: String,
    /// Who it is from; none where the workshop gave no particulars.
    pub workshop: Option<Letterhead>,
    /// Across the top, before anything is read.
    pub band: Band,
    /// The answer in ten seconds: two to four sentences.
    pub answer: Vec<String>,
    /// What to do next, first thing first.
    pub next: Vec<String>,
    /// What identifies the car and the visit; empty fields are left out.
    pub vehicle: Vec<Field>,
    /// The complaint in the owner's words.
    pub complaint: Vec<Field>,
    /// Every rule that fired, strongest first.
    pub reasons: Vec<ReasonLine>,
    /// The work in three tiers, where a bearing is concerned.
    pub scope: Option<Scope>,
    /// What was checked, step by step.
    pub steps: Vec<StepLine>,
    /// Every step that was not checked, in one sentence.
    pub not_checked: Option<String>,
    /// The readings of every gauge.
    pub gauges: Option<GaugeTable>,
    /// Likely causes, most likely first.
    pub causes: Vec<CauseLine>,
    /// What people say beside the sorting: the technician's opinion, the confirmed outcome.
    pub said: Vec<String>,
    /// What is still open, weightiest first: no finding may read as more than it is.
    pub unknown: Vec<String>,
    /// Roadworthiness rows, for information.
    pub road: Vec<String>,
    /// What holds for every finding.
    pub cautions: Vec<String>,
    /// The owner's receipt for the note; none before it is signed.
    pub signed: Option<Signed>,
    /// Technician, dates, ledger head: the foot of the document.
    pub foot: Vec<Field>,
    /// One line for every page's foot.
    pub page_foot: String,
    /// Headings of the parts above, by name of the field.
    pub headings: FindingHeadings,
    /// What a paper prints beside its sentences.
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
    /// Why, with the answers it rests on.
    pub text: String,
}

/// The work that may follow, in three tiers. Never a quote.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct Scope {
    /// Who decides between them, or what was decided and why.
    pub lead: Vec<String>,
    /// The tiers, mildest first.
    pub tiers: Vec<ScopeTier>,
    /// What the hours and the rate are, and what this is not.
    pub terms: Vec<String>,
}

/// One tier of the work.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct ScopeTier {
    /// `bearings-only`, `skim-and-sleeve` or `replace-housing`.
    pub tier: String,
    /// As printed.
    pub name: String,
    /// What it takes in.
    pub about: String,
    /// The workshop's own hours; empty if it entered none.
    pub hours: String,
    /// `chosen`, `ruled-out` or `open`.
    pub state: String,
    /// The state as printed.
    pub state_label: String,
}

/// The readings of every gauge.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct GaugeTable {
    /// Heads of the columns, in the order of a row's fields; the ratio stands with the readings.
    pub columns: Vec<String>,
    /// A row for each place.
    pub rows: Vec<GaugeRow>,
}

/// What one gauge read.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct GaugeRow {
    /// The step it was read at.
    pub place: String,
    /// Each reading as the gauge showed it.
    pub readings: String,
    /// What a reading is at the bearing, where the gauge stood elsewhere; else empty.
    pub ratio: String,
    /// Mean movement at the bearing.
    pub mean: String,
    /// Its expanded uncertainty, 95 %.
    pub expanded: String,
    /// What it is held against, and whose limit that is.
    pub limit: String,
    /// Proven, none proven, not decided, or to be compared.
    pub decision: String,
}

/// Most further photos of a step that are printed; the record keeps every one.
pub const FURTHER: usize = 6;

/// One step as checked.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct StepLine {
    /// By which its texts are named.
    pub step: String,
    /// What was checked.
    pub title: String,
    /// What hand or eye did there.
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
    /// Further photos of it, oldest first, at most [`FURTHER`]: a crack is shown from afar and from near.
    pub further: Vec<PhotoLine>,
    /// Why there is no photo.
    pub waiver: Option<String>,
}

/// Headings of a finding, each by the name of the field that it stands over.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
#[expect(missing_docs, reason = "each is the heading of the finding's field of its name")]
pub struct FindingHeadings {
    pub next: String,
    pub vehicle: String,
    pub complaint: String,
    pub reasons: String,
    pub scope: String,
    pub steps: String,
    pub gauges: String,
    pub causes: String,
    pub unknown: String,
    pub road: String,
    pub cautions: String,
    pub signed: String,
}
