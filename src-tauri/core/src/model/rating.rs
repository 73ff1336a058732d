//! Urgency: the signal words, why one was given, and what is still missing.

use serde::{Deserialize, Serialize};

use super::rules::{self, Facts, Tells};
use super::sentence::Sentence;

/// The signal words, mildest first, so that the derived order is the order of urgency.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
#[serde(rename_all = "UPPERCASE")]
pub enum Word {
    /// No bearing action.
    Notice,
    /// Book the repair.
    Caution,
    /// Not to be driven: to its repair on a recovery truck.
    Warning,
    /// Do not drive.
    Danger,
}

impl Word {
    /// Every rating, the mildest first.
    pub const ALL: [Self; 4] = [Self::Notice, Self::Caution, Self::Warning, Self::Danger];

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
        Self::ALL.into_iter().find(|word| word.id() == id)
    }
}

/// One rule that fired.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct Reason {
    /// The rule's id.
    pub rule: String,
    /// What the rule asks for.
    pub word: Word,
    /// The steps it rests on; empty for a rule about the sorting.
    pub steps: Vec<String>,
    /// The cause it names, for a rule about the sorting.
    pub cause: Option<String>,
    /// Where the rule and the numbers it turns on come from, in the data's own words.
    pub basis: Vec<String>,
    /// What it says to the trade, with the answers it rests on; filled in once the visit is derived.
    pub says: Vec<Sentence>,
}

impl Reason {
    /// What is known of its rule; none for one of another Steady.
    pub fn facts(&self) -> Option<&'static Facts> {
        rules::of(&self.rule)
    }

    /// Whether its rule says this.
    pub fn tells(&self, tells: Tells) -> bool {
        self.facts().is_some_and(|facts| facts.tells == tells)
    }
}

/// The visit's urgency.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct Urgency {
    /// The strongest word, or none while the hands-on check is open.
    pub word: Option<Word>,
    /// Whether the car may not be driven, which is what DANGER and WARNING say; none while there is no rating, or a
    /// milder one with a check open that decides.
    pub do_not_drive: Option<bool>,
    /// Every rule that fired, strongest first, in registry order within a word.
    pub reasons: Vec<Reason>,
    /// Whether the steps that decide are answered: play in both directions, or the opened tube.
    pub complete: bool,
    /// Steps that decide and have no answer.
    pub missing: Vec<String>,
    /// The support's other steps that say nothing: not looked at, not all seen, or not turned by itself.
    pub limits: Vec<String>,
    /// Steps of the driveline beyond the support that nobody looked at, or not all over: couplings and their bolts, the
    /// shaft, its far end, mounts. A rating says nothing of them.
    pub unlooked: Vec<String>,
    /// Nothing was found, and not all was looked at: it must not read as all good.
    pub in_part: bool,
    /// The version of the rules that gave it.
    pub rules: u32,
}
