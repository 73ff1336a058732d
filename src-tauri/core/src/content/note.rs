//! What the owner's plain-language risk note says: finished sentences in one language, no layout.

use serde::Serialize;

use super::shared::{Band, Field, Labels, Letterhead, PhotoLine, Signed};

/// The note; one page.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct Note {
    /// Language tag.
    pub locale: String,
    /// Document title.
    pub title: String,
    /// The workshop, if it gave its particulars.
    pub workshop: Option<Letterhead>,
    /// The urgency band: DO NOT DRIVE, or NOT YET CHECKED, cannot be missed.
    pub band: Band,
    /// Vehicle and date.
    pub vehicle: Vec<Field>,
    /// What we found, what it means, what could happen, what to do now, what we don't know yet, who to ask.
    pub sections: Vec<NoteSection>,
    /// One photo.
    pub photo: Option<PhotoLine>,
    /// Which drawing of where the bearing sits: `rigid`, `rubber` or `tube`.
    pub drawing: String,
    /// The drawing in words.
    pub drawing_words: String,
    /// The receipt's heading.
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
    /// Labels.
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
    /// Heading.
    pub heading: String,
    /// Sentences.
    pub text: Vec<String>,
}

/// One of the owner's decisions.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct DecisionLine {
    /// `repair`, `decide-later` or `decline`.
    pub id: String,
    /// As printed.
    pub label: String,
}
