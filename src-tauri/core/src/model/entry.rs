//! One line of a visit's ledger and what it can say.
//!
//! An entry is written once and never changed. How entries are chained and stored is the store's
//! business (`store::ledger`); what they add up to is the walk's (`walk::record`).

use serde::{Deserialize, Serialize};

use super::answer::{AnswerValue, EngineWarmth, HeardAt, Temperature};
use super::bench::BenchBody;
use super::gates::LiftKind;
use super::mark::Mark;
use super::outcome::Outcome;
use super::photo_of::PhotoOf;
use super::time::Moment;
use super::visit::Intake;

/// A ledger entry as it stands on disk.
#[derive(Debug, Clone, PartialEq)]
pub struct Entry {
    /// The visit it belongs to (UUID version 7).
    pub visit: String,
    /// The device that wrote it: its public key, or a UUID where it was written before there were signatures.
    pub device: String,
    /// Its place in the chain of this visit and device, from 1.
    pub seq: u64,
    /// When it was written, by the device's clock.
    pub at: Moment,
    /// SHA-256 of the entry before it in the chain, in hex; 64 zeros for the first.
    pub prev: String,
    /// SHA-256 over this entry's canonical bytes, in hex.
    pub hash: String,
    /// The device's signature over the hash, in hex; none where it was written before there were signatures.
    pub signature: Option<String>,
    /// What it says.
    pub body: EntryBody,
}

/// What an entry says.
///
/// `step`, `set`, `gate` and `cause` are ids of the trade's data as they were when it was written (`walk/former.rs` reads
/// old ones); `by` is the name of whoever acted, as typed; hashes are SHA-256, 64 hex digits.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(tag = "kind", rename_all = "kebab-case", deny_unknown_fields)]
#[expect(missing_docs, reason = "ids, `by` and hashes are named once, at the head")]
pub enum EntryBody {
    /// The car came in.
    Opened {
        /// What was written down.
        intake: Intake,
        /// Version of the shipped trade knowledge.
        knowledge: String,
        /// Version of the rules; entries of the first do not name it.
        #[serde(default = "first", skip_serializing_if = "is_first")]
        rules: u32,
        /// Who opened the visit.
        by: String,
    },
    /// Intake was written anew; the latest counts.
    Amended {
        /// The whole intake as it now reads.
        intake: Intake,
        /// Hashes of the answers that it takes back, given for a layout that the car has not got.
        #[serde(default, skip_serializing_if = "Vec::is_empty")]
        takes_back: Vec<String>,
        /// Why, where they asked for DANGER or found what asks for WARNING.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        reason: Option<String>,
        /// Who changed it.
        by: String,
    },
    /// The technician chose which part comes first.
    OrderChosen {
        /// `hands-on`, `under-car-first` or `running-first`.
        order: Order,
        /// Who chose.
        by: String,
    },
    /// A gate was confirmed.
    GateConfirmed {
        /// The gate set, as `data/gates.toml` names it.
        set: String,
        gate: String,
        /// What holds the car up, where its gates hang on it; none where nobody said, and before it was asked.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        lift: Option<LiftKind>,
        /// What the clock said, where the entry had to be dated after one that lies ahead of it.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        clock: Option<Moment>,
        /// Who confirmed it.
        by: String,
    },
    /// What holds the car up was said anew, with the part entered: of the gates confirmed, those that hold of the new kind
    /// stand.
    LiftSaid {
        /// The gate set that is entered.
        set: String,
        /// What holds the car up.
        lift: LiftKind,
        /// Who said it.
        by: String,
    },
    /// The part was left; its gates are closed again.
    PartLeft {
        /// The gate set that closed.
        set: String,
        /// Who left.
        by: String,
    },
    /// A step was answered.
    Answered {
        step: String,
        /// In the form that the step takes: one, several, or a number of rpm.
        value: AnswerValue,
        /// How warm the housing was, where the step asks.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        temperature: Option<Temperature>,
        /// Whether the shaft was free of the engine, where the step asks.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        free: Option<bool>,
        /// How warm the engine was, where the step asks.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        engine: Option<EngineWarmth>,
        /// Where a noise was loudest, where the step asks.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        heard_at: Option<HeardAt>,
        /// The layout by which the step was asked; none from before that was written down.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        layout: Option<String>,
        /// The maker's figure for the movement by which it was judged, mm, where the answer compares with it.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        figure_mm: Option<f64>,
        /// What the clock said, where the entry had to be dated after one that lies ahead of it.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        clock: Option<Moment>,
        /// Why a DANGER answer was made milder.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        reason: Option<String>,
        /// Hashes of the answers to this step that it supersedes; those not named still stand.
        #[serde(default, skip_serializing_if = "Vec::is_empty")]
        supersedes: Vec<String>,
        /// Who answered.
        by: String,
    },
    /// A photo is on disk.
    PhotoKept {
        /// What it shows.
        #[serde(rename = "step")]
        of: PhotoOf,
        /// By hash; on disk before this entry.
        photo: PhotoRef,
        /// Who took it.
        by: String,
    },
    /// Marks were drawn over a photo; of each photo the latest set counts, an empty one too.
    PhotoMarked {
        /// What the photo shows.
        #[serde(rename = "step")]
        of: PhotoOf,
        /// SHA-256 of the photo, hex.
        photo: String,
        /// All of them; an empty set takes earlier ones away.
        marks: Vec<Mark>,
        /// Who drew them.
        by: String,
    },
    /// A photo of a step is shown beside an earlier one, or alone again; a later photo ends the pair.
    PhotosPaired {
        step: String,
        /// SHA-256 of the earlier photo, hex; none for the later one alone.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        before: Option<String>,
        /// SHA-256 of the later photo, hex.
        after: String,
        /// Who paired them.
        by: String,
    },
    /// A step goes without a photo, for a reason.
    PhotoWaived {
        step: String,
        /// Why: an id of `data/waivers.toml`, or the technician's own words.
        reason: String,
        /// Who waived it.
        by: String,
    },
    /// An earlier entry is taken back; what stood before it stands again.
    Withdrawn {
        /// Hash of the entry taken back.
        entry: String,
        /// Why, where taking back makes a DANGER answer milder.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        reason: Option<String>,
        /// Who took it back.
        by: String,
    },
    /// What the replay of a case arranged: gates or an order it left open, or times that lie back.
    Arranged {
        /// `gates-confirmed`, `steps-ordered` or `times-set-back`.
        what: String,
        /// Who, always the replay.
        by: String,
    },
    /// The technician thinks it is something else, or agrees; the latest counts.
    OpinionGiven {
        /// The cause, or `normal-character`.
        cause: String,
        /// Why, in their words.
        reason: String,
        by: String,
    },
    /// It was seen at teardown or after the repair what was really there; the latest counts.
    OutcomeConfirmed {
        /// What was there, and what was known before.
        outcome: Outcome,
        /// Who says so.
        by: String,
    },
    /// The bench recorded something, or a gauge did.
    Bench { bench: BenchBody, by: String },
    /// The owner signed that the note was received.
    Received {
        /// With the hash of the note that was seen.
        receipt: Receipt,
    },
}

/// The version of the rules that entries of the first do not name.
fn first() -> u32 {
    1
}

#[expect(clippy::trivially_copy_pass_by_ref, reason = "serde hands the field over by reference")]
fn is_first(rules: &u32) -> bool {
    *rules == first()
}

impl EntryBody {
    /// A photo of the bench's work, or marks over one.
    pub fn is_bench_photo(&self) -> bool {
        matches!(self, Self::PhotoKept { of, .. } | Self::PhotoMarked { of, .. } if of.work().is_some())
    }

    /// The photo this entry names, if it names one: what has to travel with the ledger.
    pub fn photo(&self) -> Option<&PhotoRef> {
        if let Self::PhotoKept { photo, .. } = self { Some(photo) } else { None }
    }
}

/// Which part of the walk comes first.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
#[serde(rename_all = "kebab-case")]
pub enum Order {
    /// The hands-on check alone; the rest once somebody wants to know what makes the noise.
    HandsOn,
    /// Under the car before any revving.
    UnderCarFirst,
    /// The engine first.
    RunningFirst,
}

impl Order {
    /// The id used in text keys and on disk.
    pub fn id(self) -> &'static str {
        match self {
            Self::HandsOn => "hands-on",
            Self::UnderCarFirst => "under-car-first",
            Self::RunningFirst => "running-first",
        }
    }
}

/// A photo file named by its content.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct PhotoRef {
    /// SHA-256 of the kept JPEG, hex; also its file name.
    pub sha256: String,
    /// SHA-256 of the bytes that were given, hex: the camera's, or of the JPEG that a web view made of a
    /// kind of picture that is not taken.
    pub original_sha256: String,
    /// Width of the kept JPEG, pixels.
    pub width: u32,
    /// Height of the kept JPEG, pixels.
    pub height: u32,
    /// Capture time as the camera wrote it (EXIF, local time without zone), if it did.
    pub taken: Option<String>,
}

/// What the owner put their name to: that they received the note, whatever they decide.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Receipt {
    /// What they decided.
    pub decision: OwnerDecision,
    /// Name as they gave it; may be empty.
    pub name: String,
    /// SHA-256 of the note's content they saw, hex.
    pub note_sha256: String,
    /// Language of the note they saw.
    pub locale: String,
    /// Rating on the note they saw, `danger` to `notice` or `unrated`: what their decision read like.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub rating: Option<String>,
    /// Lines of the record that were known where it was signed; none from before that was written down.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub lines: Option<u64>,
    /// The signature: strokes of points, each coordinate 0 to 1 of the pad's width and height.
    pub strokes: Vec<Vec<[f32; 2]>>,
}

/// The owner's decision; all are recorded alike.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
#[serde(rename_all = "kebab-case")]
pub enum OwnerDecision {
    /// "Have it repaired."
    Repair,
    /// "I will think about it."
    DecideLater,
    /// "Leave it as it is."
    Decline,
}

impl OwnerDecision {
    /// Id used in text keys.
    pub fn id(self) -> &'static str {
        match self {
            Self::Repair => "repair",
            Self::DecideLater => "decide-later",
            Self::Decline => "decline",
        }
    }

    /// The decision with this id.
    pub fn from_id(id: &str) -> Option<Self> {
        [Self::Repair, Self::DecideLater, Self::Decline].into_iter().find(|decision| decision.id() == id)
    }
}
