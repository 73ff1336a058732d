//! What a visit's ledger adds up to: the one derived picture that screens draw and papers print.
//!
//! Never stored. `walk` fills the steps and gates, `sorting` the causes, `urgency` the rating; `app`
//! puts them together. Everything is ids and numbers; the words for them are in `text/`.

use serde::Serialize;

use super::answer::{AnswerValue, EngineWarmth, HeardAt, Temperature};
use super::bench::GaugeStand;
use super::certainty::{Interval, Judgement, Surprise, Turn};
use super::device::{DeviceStand, WriterStand};
use super::entry::{Order, OwnerDecision, PhotoRef};
use super::former_car::FormerCar;
pub use super::gates::{Confirmed, GateSetStand, GateStand, Lock};
use super::mark::Mark;
use super::milder::MilderStand;
use super::outcome::{OpinionStand, OutcomeStand};
use super::rating::{Urgency, Word};
use super::rules::LIKELY;
use super::still_open::StillOpen;
use super::time::Moment;
use super::together::{LooksStand, PairStand};
use super::vin::VinHint;
use super::visit::Intake;

/// Where a visit stands.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct Standing {
    /// UUID version 7: sorts by when it was opened.
    pub visit: String,
    /// When the car came in.
    pub opened_at: Moment,
    /// When the latest entry was written.
    pub updated_at: Moment,
    /// What was written down at intake, latest version.
    pub intake: Intake,
    /// What the VIN's check digit says, as a hint; none without a VIN.
    pub vin_hint: Option<VinHint>,
    /// Name of the layout in a workshop's own file; shipped layouts are named by the text `layout-ID`.
    pub layout_name: Option<String>,
    /// How the car carries its shaft.
    pub support: Support,
    /// Which part comes first, as chosen or by the complaint.
    pub order: Order,
    /// Nobody chose one, and no part was begun: the choice comes before the first of them.
    pub offers_order: bool,
    /// The gate set whose part is entered, wholly or in part; at most one.
    pub entered: Option<String>,
    /// Where the walk goes on.
    pub position: Position,
    /// How warm the housing was felt last since the part was entered; it is not asked twice.
    pub warmth: Option<Temperature>,
    /// The stations that this car has, in the order of `ids::STATIONS`.
    pub stations: Vec<StationStand>,
    /// The gate sets this car needs, in walk order.
    pub gate_sets: Vec<GateSetStand>,
    /// The steps that apply and are not hidden, in walk order.
    pub steps: Vec<StepStand>,
    /// Which of them share a screen.
    pub pairs: Vec<PairStand>,
    /// Which of them are looks that can be said to be sound at once.
    pub looks: LooksStand,
    /// The visit's urgency.
    pub urgency: Urgency,
    /// What the rating asks for, as the end of text ids: its word, or `caution-look` where nothing
    /// was found yet that could be repaired.
    pub asks: String,
    /// The end of the id of its headline: what it asks for, that a rating without a finding was only in part, that a
    /// check which decides is open, or that an earlier visit's DANGER or WARNING is not lifted.
    pub headline: String,
    /// The sorted causes.
    pub sorting: Sorting,
    /// What gauges say at the play steps.
    pub gauges: Vec<GaugeStand>,
    /// What the technician thinks it is, if they said so; never part of the sorting.
    pub opinion: Option<OpinionStand>,
    /// What it turned out to be, once that is confirmed.
    pub outcome: Option<OutcomeStand>,
    /// How far the repair has come; none before the teardown.
    pub repair: Option<RepairStage>,
    /// The steps at which hands or eyes under the car found something, weightiest first.
    pub found: Vec<String>,
    /// DANGER answers that were made milder, of each step the latest few, in ledger order, whatever was answered since.
    pub milder: Vec<MilderStand>,
    /// Answers that count for nothing: given while the car was written down with another layout, which asks the step
    /// otherwise.
    pub elsewhere: Vec<Elsewhere>,
    /// The latest earlier visit of this car whose DANGER or WARNING nothing has lifted, as far as this device knows.
    pub still_open: Option<StillOpen>,
    /// Sounds complained of, ids of `data/complaints.toml`: chosen at intake, or named in the owner's own words.
    pub sounds: Vec<String>,
    /// Rows of roadworthiness law that what was found falls under, for information.
    pub road_rows: Vec<RoadRow>,
    /// What "undo" would take back now.
    pub undo: Option<UndoOffer>,
    /// The latest receipt.
    pub receipt: Option<ReceiptStand>,
    /// The state of the chain.
    pub ledger: LedgerStand,
    /// Who wrote the entries, and how far each is trusted here.
    pub writers: Vec<WriterStand>,
    /// The version of the rules in force when the car came in; see [`Urgency::rules`] for those that rate it here.
    pub opened_under: u32,
    /// Version of the trade knowledge that derived all this: the shipped files, and behind a `+` the
    /// workshop's own, and behind a `/` how many outcomes taught the numbers, where there are any.
    pub knowledge: String,
    /// Who opened the visit.
    pub technician: String,
    /// Hash of the entry by which the intake stands: whoever changes it names it.
    pub intake_entry: String,
    /// What the car was written down as before it was corrected; no screen shows it.
    #[serde(skip)]
    #[cfg_attr(feature = "bindings", ts(skip))]
    pub former_cars: Vec<FormerCar>,
}

/// What holds the bearing at the support.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, serde::Deserialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
#[serde(rename_all = "kebab-case")]
pub enum Support {
    /// Held rigidly; no movement by hand is allowed.
    Rigid,
    /// Held in a rubber ring; some give is normal.
    Rubber,
    /// Inside a tube; cannot be gripped.
    Tube,
    /// None: the shaft is carried by its ends alone.
    #[serde(rename = "none")]
    Absent,
}

impl Support {
    /// The id used in text keys.
    pub fn id(self) -> &'static str {
        match self {
            Self::Rigid => "rigid",
            Self::Rubber => "rubber",
            Self::Tube => "tube",
            Self::Absent => "none",
        }
    }
}

impl Standing {
    /// Entries that came from devices of which this holds.
    pub fn entries_by(&self, wanted: impl Fn(&DeviceStand) -> bool) -> u64 {
        self.writers.iter().filter(|writer| wanted(&writer.device)).map(|writer| writer.entries).sum()
    }

    /// The bearing was repaired, and nothing of the car was checked since: what is known is older than the repair.
    pub fn older_than_repair(&self) -> bool {
        self.repair == Some(RepairStage::TurnsFree)
    }
}

/// How far a repair has come, by what the bench recorded.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
#[serde(rename_all = "kebab-case")]
pub enum RepairStage {
    /// Torn down, not yet proven to turn freely.
    TornDown,
    /// Put together again; the ring turns freely.
    TurnsFree,
    /// Put together again, and something of the car was checked since: what is known is no longer older than
    /// the repair.
    CheckedAgain,
}

impl RepairStage {
    /// The id used in text keys.
    pub fn id(self) -> &'static str {
        match self {
            Self::TornDown => "torn-down",
            Self::TurnsFree => "turns-free",
            Self::CheckedAgain => "checked-again",
        }
    }

    /// The stage with this id.
    pub fn from_id(id: &str) -> Option<Self> {
        [Self::TornDown, Self::TurnsFree, Self::CheckedAgain].into_iter().find(|stage| stage.id() == id)
    }
}

/// Where the walk goes on.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
#[serde(tag = "at", rename_all = "kebab-case")]
pub enum Position {
    /// Choose the order: running first makes the exhaust hot.
    Order,
    /// Everything behind the entered set is done: leave its part.
    Leave {
        /// The gate set to leave.
        set: String,
    },
    /// Confirm the open gates of this set.
    Gates {
        /// Set whose gates are open.
        set: String,
    },
    /// Do this step.
    Step {
        /// Step to answer now.
        step: String,
    },
    /// Look at several places, which can be said to be sound at once.
    Looks,
    /// Every step that can be done is answered and pictured.
    Done,
}

/// A place along the shaft line where hands and eyes go.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct StationStand {
    /// Id, one of `ids::STATIONS`.
    pub id: String,
    /// Strongest word of its steps.
    pub word: Option<Word>,
    /// Steps answered.
    pub answered: u32,
    /// Those of them whose answer decides something: see [`Answered::conclusive`].
    pub conclusive: u32,
    /// Steps that apply.
    pub steps: u32,
}

/// A step that this car has: how it is asked, what stands there, what locks it.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct StepStand {
    /// The step's id.
    pub id: String,
    /// The gate set before it; none for the owner's account.
    pub set: Option<String>,
    /// Id of the station it is done at.
    pub station: String,
    /// What kind of answer it takes.
    pub form: AnswerForm,
    /// Play steps at a support record how warm it was.
    pub asks_temperature: bool,
    /// What turning by hand asks first: whether the shaft is free of this. None at every other step.
    pub asks_free: Option<TurnsWith>,
    /// A reading of the idle asks how warm the engine was.
    pub asks_engine: bool,
    /// It was answered with a noise: where it was loudest can be said beside it.
    pub asks_heard_at: bool,
    /// More answers are offered once the maker's figure is written down.
    pub asks_figure: bool,
    /// The walk is whole without it.
    pub optional: bool,
    /// It is done at both ends of the shaft.
    pub both_ends: bool,
    /// Where the figures in its words come from, in the data's own words; empty where it names none.
    pub figures: String,
    /// The support it is done at, from 1, where the shaft has several.
    pub at_support: Option<u8>,
    /// It belongs to the hands-on check: the look at what holds the shaft, and the play.
    pub hands_on: bool,
    /// A photo, or a reason for none, is wanted: of what was found or left unsure, and of what holds the shaft. Where
    /// nothing was found there is nothing to show; a photo can be kept all the same.
    pub wants_photo: bool,
    /// The answer that stands, if any.
    pub answered: Option<Answered>,
    /// Its own rating; none while it has no answer.
    pub word: Option<Word>,
    /// Why it cannot be answered now.
    pub lock: Option<Lock>,
    /// Its latest photo.
    pub photo: Option<PhotoStand>,
    /// Photos kept before it, oldest first.
    pub earlier: Vec<PhotoStand>,
    /// The earlier photo that the technician chose to show beside the latest.
    pub before: Option<PhotoStand>,
    /// Why it goes without a photo: an id of `data/waivers.toml`, the technician's words, or what going on notes by itself,
    /// `nothing-to-show`.
    pub waiver: Option<String>,
    /// A gauge can be used here.
    pub gauge: bool,
}

/// What turns with the shaft until it is uncoupled.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
#[serde(rename_all = "kebab-case")]
pub enum TurnsWith {
    /// Through a gearbox that is coupled.
    Engine,
    /// Wheels, brakes and final drive.
    Wheels,
}

impl TurnsWith {
    /// Its id in texts.
    pub fn id(self) -> &'static str {
        match self {
            Self::Engine => "engine",
            Self::Wheels => "wheels",
        }
    }
}

impl StepStand {
    /// Whether it is one of the steps that are counted: what nobody has to do counts once it is done.
    pub fn counts(&self) -> bool {
        !self.optional || self.answered.is_some()
    }

    /// Whether something was found there.
    pub fn is_found(&self) -> bool {
        self.answered.as_ref().is_some_and(|answered| answered.found)
    }

    /// Whether it has an answer that decides something.
    pub fn is_conclusive(&self) -> bool {
        self.answered.as_ref().is_some_and(|answered| answered.conclusive)
    }
}

/// What kind of answer a step takes.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
#[serde(tag = "form", rename_all = "kebab-case")]
pub enum AnswerForm {
    /// Exactly one of these.
    OneOf {
        /// The choices, in screen order.
        choices: Vec<Choice>,
    },
    /// Any of these; a `lone` choice stands alone.
    AnyOf {
        /// The choices, in screen order.
        choices: Vec<Choice>,
    },
    /// In rpm, typed.
    Reading {
        /// Its unit: `rpm`.
        unit: String,
        /// Least accepted.
        min: f64,
        /// Greatest accepted.
        max: f64,
        /// Where the number pad starts.
        usual: f64,
    },
}

/// An answer to tap.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct Choice {
    /// The answer's id.
    pub id: String,
    /// Excludes every other choice of an any-of step (`none`, `sound`).
    pub lone: bool,
}

/// An answer that stands.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct Answered {
    /// The worst of those that stand.
    pub value: AnswerValue,
    /// How warm the housing was, if recorded.
    pub temperature: Option<Temperature>,
    /// Whether the shaft was free of the engine, if recorded.
    pub free: Option<bool>,
    /// How warm the engine was, if recorded.
    pub engine: Option<EngineWarmth>,
    /// Where a noise was loudest, if recorded.
    pub heard_at: Option<HeardAt>,
    /// Why a DANGER answer of this step was made milder, if one was and it is no longer DANGER.
    pub reason: Option<String>,
    /// Name, as typed, of who recorded it.
    pub by: String,
    /// Date of its entry, by the clock of the device that wrote it.
    pub at: Moment,
    /// Two devices gave different answers without knowing of each other; the worse one is shown.
    pub disputed: bool,
    /// Giving a milder answer needs a reason.
    pub milder_needs_reason: bool,
    /// Something was found there, by hand, by eye or by gauge.
    pub found: bool,
    /// Looked at and decided: not “not done”, “not tried” or “unsure”, unless a gauge decided it.
    pub conclusive: bool,
}

/// An answer that was given by another layout.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct Elsewhere {
    /// SHA-256, 64 hex digits: what `TakeBackElsewhere` names.
    pub entry: String,
    /// Id in the layout it was given for.
    pub step: String,
    /// As given; counts for nothing.
    pub value: AnswerValue,
    /// Name, as typed, of who recorded it.
    pub by: String,
    /// Date of its entry, by the clock of the device that wrote it.
    pub at: Moment,
}

/// A step's photo.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct PhotoStand {
    /// By hash; the file may be missing or damaged.
    pub photo: PhotoRef,
    /// When it was kept.
    pub at: Moment,
    /// Marks drawn over it.
    pub marks: Vec<Mark>,
}

/// The sorting of causes.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct Sorting {
    /// Every cause of this car and `normal-character`, most likely first.
    pub causes: Vec<CauseStand>,
    /// Probability that at least one bearing cause is present.
    pub bearing_probability: f64,
    /// The same, with nothing else that was found allowed to explain it away; the urgency reads this.
    pub bearing_unexcused: f64,
    /// The next check to do, if any is worth doing.
    pub next_check: Option<NextCheck>,
    /// Why no check is worth doing, as the id of a text (`stop-...`); none where one is.
    pub no_check: Option<String>,
    /// A sign that the list of causes does not fit this car.
    pub surprise: Option<Surprise>,
    /// What would put another cause first: the most probable answer that is still open and would.
    pub turn: Option<Turn>,
    /// The decisions that are judgement, by expected loss.
    pub judgements: Vec<Judgement>,
    /// Confirmed outcomes that taught this layout's numbers; 0 while they are judgement alone.
    pub outcomes: u32,
}

/// How likely one cause is, and what speaks for and against it.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct CauseStand {
    /// The cause's id, or `normal-character`.
    pub id: String,
    /// Its name in the workshop's own file; shipped causes are named by the text `cause-ID`.
    pub own_name: Option<String>,
    /// Whether it is the bearing's own.
    pub group: CauseGroup,
    /// Probability that it is present, 0 to 1.
    pub probability: f64,
    /// Where that probability lies, given how uncertain the judged numbers are.
    pub interval: Option<Interval>,
    /// Probability before any answer, 0 to 1.
    pub before: f64,
    /// Where that comes from, in the data's own words: of the cause itself, then of each shift on this car.
    pub basis: Vec<String>,
    /// What the answers weigh jointly beyond their single weights, decibans: the log-odds of `before`,
    /// every weight of `for` and `against`, and this add up to the log-odds of `probability`.
    pub together: f64,
    /// Word of the IPCC likelihood scale for it (`very-likely` ...).
    pub likelihood: String,
    /// Answers that speak for it, heaviest first.
    #[serde(rename = "for")]
    pub speaks_for: Vec<Weight>,
    /// Answers that speak against it, heaviest first.
    pub against: Vec<Weight>,
}

/// Weight from which an answer speaks clearly for or against a cause: it doubles or halves the odds.
pub const CLEAR_DECIBANS: f64 = 3.0;

impl CauseStand {
    /// Whether it is likely, and one of these steps, at which something was found, speaks clearly for it.
    pub fn is_behind(&self, found: &[String]) -> bool {
        self.probability >= LIKELY && self.is_pointed_at(found)
    }

    /// Whether one of these steps, at which something was found, speaks clearly for it.
    pub fn is_pointed_at(&self, found: &[String]) -> bool {
        let clear = |weight: &Weight| weight.decibans >= CLEAR_DECIBANS && found.contains(&weight.step);
        self.speaks_for.iter().any(clear)
    }
}

/// Who answers for a cause: decides scope and rating.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, serde::Deserialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
#[serde(rename_all = "kebab-case")]
pub enum CauseGroup {
    /// The bearing, its seat or its housing.
    Bearing,
    /// Something else.
    Other,
    /// None of them: the car's own character.
    Normal,
}

/// What one answer weighs for or against one cause.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct Weight {
    /// The step answered.
    pub step: String,
    /// The answer, as recorded.
    pub value: AnswerValue,
    /// Change of the cause's log-odds when this step's answer is left out, in decibans (10 log10 of the
    /// odds factor); positive speaks for the cause. Steps that speak of the same sign share its weight.
    pub decibans: f64,
    /// Where a gauge made the answer: how many times as likely its readings are with movement as without.
    pub gauge: Option<f64>,
    /// Where the numbers between the answer and the cause come from, in the data's own words.
    pub basis: Vec<String>,
}

/// The next check to do.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct NextCheck {
    /// Id of the step to do.
    pub step: String,
    /// Why, as the id of a text `next-…`; chosen in `app/next_check.rs` and `sorting/next.rs`.
    pub why: String,
    /// Expected drop of the decisions' loss if it is done, minutes; never below 0.
    pub gain: f64,
}

/// A row of roadworthiness law, with both outcomes; Steady never chooses between them.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, serde::Deserialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct RoadRow {
    /// Id of the row; its sentence is the text `road-ID`.
    pub id: String,
    /// Row of the UK manual's section 6.1.7.
    pub uk: String,
    /// Row of item 6.1.7 of Directive 2014/45/EU, Annex I.
    pub eu: String,
}

/// What "undo" would take back.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct UndoOffer {
    /// SHA-256, 64 hex digits: what `Undo` has to name.
    pub entry: String,
    /// Its kind (`answered`, `gate-confirmed`, `photo-kept`, `photo-marked`, `order-chosen` ...).
    pub what: String,
    /// Its step, if it has one.
    pub step: Option<String>,
    /// The gate, if one was confirmed.
    pub gate: Option<String>,
    /// The set of that gate, where it is one of the walk.
    pub set: Option<String>,
    /// Who made it.
    pub by: String,
    /// Date of its entry, by the clock of the device that wrote it.
    pub at: Moment,
    /// Taking it back makes a DANGER answer milder, so a reason is asked for.
    pub needs_reason: bool,
}

/// A receipt as shown.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct ReceiptStand {
    /// Of the owner, as signed.
    pub decision: OwnerDecision,
    /// Name given.
    pub name: String,
    /// Hash of the note that was seen.
    pub note_sha256: String,
    /// Language of that note.
    pub locale: String,
    /// Rating on it, if it was recorded.
    pub rating: Option<String>,
    /// Date of its entry, by the clock of the device that wrote it.
    pub at: Moment,
    /// The signature's strokes, coordinates 0 to 1.
    pub strokes: Vec<Vec<[f32; 2]>>,
    /// Something was recorded after it that the signed note may not say.
    pub outdated: bool,
}

/// The state of the chain.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct LedgerStand {
    /// Number of entries.
    #[cfg_attr(feature = "bindings", ts(type = "number"))]
    pub entries: u64,
    /// Hash of the latest entry of this device's chain.
    pub head: String,
    /// Sequence number of the first entry that does not fit the chain, if any.
    #[cfg_attr(feature = "bindings", ts(type = "number | null"))]
    pub broken_at: Option<u64>,
}
