//! What the owner's plain-language risk note says: finished sentences in one language, no layout.

use serde::Serialize;

use super::shared::{Band, Field, Labels, Letterhead, PhotoLine, Signed};

/// What the owner reads and signs for: one page in plain words.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct Note {
    /// RFC 5646, such as `de`; every sentence below is in it.
    pub locale: String,
    /// Over the paper; the PDF's own title too.
    pub title: String,
    /// Who it is from; none where the workshop gave no particulars.
    pub workshop: Option<Letterhead>,
    /// The urgency band: DO NOT DRIVE, or NOT YET CHECKED, cannot be missed.
    pub band: Band,
    /// What identifies the car, and when it was checked.
    pub vehicle: Vec<Field>,
    /// What we found, what it means, what could happen, what to do now, what we don't know yet, who to ask.
    pub sections: Vec<NoteSection>,
    /// Of the step with the worst rating; none where none was kept.
    pub photo: Option<PhotoLine>,
    /// Which drawing of where the bearing sits: the layout's own where it has one, else that of its support.
    pub drawing: String,
    /// Said aloud where the drawing is not seen.
    pub drawing_words: String,
    /// "Receipt", in the note's language.
    pub receipt_heading: String,
    /// Whom the note is from; empty where the workshop gave no name.
    pub receipt_from: String,
    /// What signing means: received, whatever is decided.
    pub receipt_text: String,
    /// The three decisions as printed, with ids.
    pub decisions: Vec<DecisionLine>,
    /// The receipt, if signed; not part of the hash.
    pub signed: Option<Signed>,
    /// One line for the page's foot.
    pub page_foot: String,
    /// What a paper prints beside its sentences.
    pub labels: Labels,
    /// The note as a message of at most 480 characters.
    pub short_text: String,
    /// SHA-256, hex, over everything above but `signed`.
    pub sha256: String,
}

/// A part of the note.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct NoteSection {
    /// `found`, `means`, `could-happen`, `do-now`, `not-known`, `ask`.
    pub id: String,
    /// The question it answers.
    pub heading: String,
    /// Its answer, short sentences that a layman reads.
    pub text: Vec<String>,
}

/// One of the owner's decisions.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct DecisionLine {
    /// `repair`, `decide-later` or `decline`.
    pub id: String,
    /// What the owner puts a name to.
    pub label: String,
}
