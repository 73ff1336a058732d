//! Parts that a finding and a note have in common.

use serde::Serialize;

use crate::model::mark::Mark;

/// The urgency band across the top.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct Band {
    /// `danger`, `warning`, `caution`, `notice`, or `unrated`.
    pub word: String,
    /// The signal word, or NOT YET CHECKED.
    pub label: String,
    /// What it asks for: DO NOT DRIVE ...
    pub headline: String,
}

/// The workshop's own particulars at the head of a paper; what is empty is left out.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct Letterhead {
    /// As printed.
    pub name: String,
    /// Its address, line by line.
    pub address: Vec<String>,
    /// Its phone, named as one.
    pub phone: String,
}

/// A name and its value.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct Field {
    /// As printed before the value.
    pub label: String,
    /// In words, with its unit.
    pub value: String,
}

/// A cause with what speaks for and against it.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct CauseLine {
    /// By which its texts are named.
    pub cause: String,
    /// As printed.
    pub name: String,
    /// Probability, 0 to 1.
    pub probability: f64,
    /// Probability as printed, rounded.
    pub percent: String,
    /// Word of the likelihood scale as printed.
    pub likelihood: String,
    /// Steps with their answers, heaviest first.
    #[serde(rename = "for")]
    pub speaks_for: Vec<String>,
    /// What speaks against it.
    pub against: Vec<String>,
}

/// A photo in a paper.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct PhotoLine {
    /// File, by SHA-256 in hex.
    pub sha256: String,
    /// The step and its answer, and what is marked.
    pub caption: String,
    /// For readers who hear the paper.
    pub alt: String,
    /// Marks drawn over it.
    pub marks: Vec<Mark>,
}

/// A signed receipt in a paper.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct Signed {
    /// Decision, name and time in words.
    pub text: String,
    /// The hash of the note that was signed, in words.
    pub note_line: String,
    /// Strokes, coordinates 0 to 1 of a pad twice as wide as high.
    pub strokes: Vec<Vec<[f32; 2]>>,
    /// For readers who hear the paper.
    pub alt: String,
}

/// The few words that belong to a paper's printing: labels beside empty lines, and what stands where a
/// photo should be.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct Labels {
    /// Before the signs that speak for a cause.
    pub speaks_for: String,
    /// Before the signs that speak against it.
    pub against: String,
    /// In place of a photo whose file could not be read.
    pub photo_missing: String,
    /// In place of a photo whose file is not what was kept.
    pub photo_damaged: String,
    /// Under the line for a name.
    pub name: String,
    /// Under the line for a date.
    pub date: String,
    /// Under the line for a signature.
    pub signature: String,
    /// Said once where something was written in letters that no font here has.
    pub unprintable: String,
    /// Page x of y, with `{page}` and `{pages}` to fill in.
    pub page: String,
}
