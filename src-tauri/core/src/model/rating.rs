//! Urgency: the signal words, why one was given, and what is still missing.

use serde::{Deserialize, Serialize};

/// The signal words, mildest first, so that the derived order is the order of urgency.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
#[serde(rename_all = "UPPERCASE")]
pub enum Word {
    /// No bearing action.
    Notice,
    /// Book the repair.
    Caution,
    /// Move it only to be repaired.
    Warning,
    /// Do not drive.
    Danger,
}

impl Word {
    /// Lower-case id used in text keys.
    pub fn id(self) -> &'static str {
        match self {
            Self::Notice => "notice",
            Self::Caution => "caution",
            Self::Warning => "warning",
            Self::Danger => "danger",
        }
    }

    /// The word with this id.
    pub fn from_id(id: &str) -> Option<Self> {
        [Self::Notice, Self::Caution, Self::Warning, Self::Danger].into_iter().find(|word| word.id() == id)
    }
}

/// One rule that fired.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct Reason {
    /// The rule's id; its sentence is the text `rule-ID`.
    pub rule: String,
    /// What the rule asks for.
    pub word: Word,
    /// The steps it rests on; empty for a rule about the sorting.
    pub steps: Vec<String>,
    /// The cause it names, for a rule about the sorting.
    pub cause: Option<String>,
}

/// The visit's urgency.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct Urgency {
    /// The strongest word, or none while the hands-on check is open.
    pub word: Option<Word>,
    /// True, false, or none while there is no rating.
    pub do_not_drive: Option<bool>,
    /// Every rule that fired, strongest first, in registry order within a word.
    pub reasons: Vec<Reason>,
    /// Whether the play steps and `turn-by-hand` are answered.
    pub complete: bool,
    /// Hands-on steps without an answer.
    pub missing: Vec<String>,
}
