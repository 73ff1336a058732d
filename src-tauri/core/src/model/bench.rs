//! The bench's part of a visit: what it records, and where it stands. Plain types; what readings mean is in
//! `measure`, what an entry adds up to in `walk::bench`.

use std::collections::BTreeMap;

use serde::{Deserialize, Serialize};

use super::bore::{BoreReadings, BoreShape, SkimPlan};
use super::fit::{FitInput, FitResult, StockStand};
use super::gauge::{BearingMark, GaugeInput, GaugePosition, GaugeResult, Instrument};
use super::mark::Mark;
use super::photo_of::WorkPlace;
use super::sentence::Sentence;
use super::standing::{GateStand, UndoOffer};
use super::time::Moment;
use super::typed::{LengthUnit, Typed};
use super::verdict::BenchVerdict;
use super::workshop::OwnInstrument;

/// What an entry of the bench says. Of each kind the latest counts, of passes the latest of each number.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(tag = "bench", rename_all = "kebab-case", deny_unknown_fields)]
pub enum BenchBody {
    /// A gauge was used at a play step.
    Gauged {
        /// Play step, with its support: `play-lateral:2`.
        step: String,
        /// What was read, with what, where.
        gauge: Box<GaugeInput>,
        /// Why it is milder than the readings before it, where those asked for DANGER or WARNING.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        reason: Option<String>,
        /// Hashes of the readings at this step that it supersedes; those not named still stand.
        #[serde(default, skip_serializing_if = "Vec::is_empty")]
        supersedes: Vec<String>,
    },
    /// A gate of the teardown was confirmed.
    GateConfirmed {
        /// Id in `data/bench/teardown.toml`.
        gate: String,
    },
    /// The bore was read.
    BoreRead {
        /// Before or after the work.
        stage: BoreStage,
        /// What was read.
        bore: Box<BoreReadings>,
        /// The workshop's instrument that it was read with, if one was named.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        instrument: Option<InstrumentUsed>,
    },
    /// The old sleeve came out of the housing.
    SleeveOut {
        /// How it came out.
        way: SleeveWay,
        /// Its outside diameter, mm, if it was measured.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        outside_mm: Option<f64>,
    },
    /// The torn-down housing was looked at.
    Looked {
        /// What was seen, and the wall that has to be left.
        look: HousingLook,
    },
    /// A pass was cut.
    PassCut {
        /// Its number, from 1.
        number: u32,
        /// Where the cutter touched.
        contact: Contact,
        /// Diameter after it, mm, if it was measured.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        diameter_mm: Option<f64>,
    },
    /// A fit was worked out from these values.
    FitGiven {
        /// As typed; worked out anew each time.
        fit: Box<FitInput>,
    },
    /// The ring was turned by hand after assembly.
    RingTurned {
        /// By hand, nothing mounted beyond it.
        turns: RingTurn,
        /// Which of two bearings; none where the housing holds one.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        bearing: Option<BearingPlace>,
        /// It was cold; not while it was still warm from heating. Earlier lines do not say.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        cold: Option<bool>,
        /// Radial internal clearance left, mm, where it was measured.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        clearance_mm: Option<f64>,
    },
    /// The run-out of the shaft was read beside the bearing after assembly.
    RunOutRead {
        /// Total reading of a dial over one turn, mm.
        run_out_mm: f64,
    },
    /// Something about fasteners and torques was written down; all of them stand.
    Noted {
        /// In the machinist's words.
        text: String,
    },
}

/// One of two bearings of a housing.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
#[serde(rename_all = "kebab-case")]
pub enum BearingPlace {
    /// Towards the engine.
    Front,
    /// Towards the axle.
    Rear,
}

/// Which bearings turned freely, cold, since anything was cut or read. One alone stands for both.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq)]
pub struct TurnedFree {
    front: bool,
    rear: bool,
}

impl TurnedFree {
    /// Every bearing of the housing did.
    pub fn all(self) -> bool {
        self.front && self.rear
    }

    /// What holds once this is recorded. Warm, or with no clearance left, it has not turned freely.
    #[must_use]
    pub fn after(self, body: &BenchBody) -> Self {
        match body {
            BenchBody::RingTurned { turns, bearing, cold, clearance_mm } => {
                let clear = clearance_mm.is_none_or(|clearance| clearance > 0.0);
                let free = *turns == RingTurn::Free && *cold != Some(false) && clear;
                match bearing {
                    None => Self { front: free, rear: free },
                    Some(BearingPlace::Front) => Self { front: free, ..self },
                    Some(BearingPlace::Rear) => Self { rear: free, ..self },
                }
            }
            BenchBody::BoreRead { .. } | BenchBody::PassCut { .. } | BenchBody::SleeveOut { .. } => {
                Self::default()
            }
            BenchBody::Gauged { .. }
            | BenchBody::GateConfirmed { .. }
            | BenchBody::Looked { .. }
            | BenchBody::FitGiven { .. }
            | BenchBody::RunOutRead { .. }
            | BenchBody::Noted { .. } => self,
        }
    }
}

/// A look at the torn-down housing. None means not looked at, never "fine".
#[derive(Debug, Clone, Copy, Default, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct HousingLook {
    /// A crack, or a broken lug.
    #[serde(default)]
    pub cracked: Option<bool>,
    /// The ring has turned in its seat: bright or scored marks.
    #[serde(default)]
    pub ring_turned: Option<bool>,
    /// Wall that has to be left, mm: the maker's figure or the machinist's.
    #[serde(default)]
    pub wall_least_mm: Option<f64>,
    /// Cracks were looked for with dye; by eye alone a fine one does not show.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub dyed: Option<bool>,
    /// A sleeve of an earlier repair is in the bore.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub sleeved: Option<bool>,
}

/// How an old sleeve comes out.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
#[serde(rename_all = "kebab-case")]
pub enum SleeveWay {
    /// The housing is warmed until it lets go.
    Heat,
    /// Pressed out.
    Press,
    /// Bored through until what is left of it can be peeled out.
    Bored,
}

impl SleeveWay {
    /// Every way, the gentlest to the housing first.
    pub const ALL: [Self; 3] = [Self::Heat, Self::Press, Self::Bored];

    /// Id used in text keys.
    pub fn id(self) -> &'static str {
        match self {
            Self::Heat => "heat",
            Self::Press => "press",
            Self::Bored => "bored",
        }
    }

    /// The set of gates it takes, as `data/bench/teardown.toml` names it.
    pub fn gates(self) -> &'static str {
        match self {
            Self::Heat => "heat",
            Self::Press => "press",
            Self::Bored => "machining",
        }
    }
}

/// An instrument as it stood when it was used: the workshop's list may change, a record may not.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct InstrumentUsed {
    /// As the workshop calls it.
    pub name: String,
    /// Day it was last calibrated, `2026-11-25`; none where nobody knew.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub calibrated: Option<String>,
    /// Last day that held for.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub due: Option<String>,
}

/// Before, in or after the work on the bore.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
#[serde(rename_all = "kebab-case")]
pub enum BoreStage {
    /// As found after teardown, an old sleeve still in its place.
    Found,
    /// The bore of the housing behind an old sleeve, once that is out.
    Behind,
    /// As finished: skimmed, or the sleeve in its place.
    Finished,
}

/// Where a cutter touched.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
#[serde(rename_all = "kebab-case")]
pub enum Contact {
    /// Nowhere.
    None,
    /// In places.
    Partly,
    /// All round, at every depth.
    AllRound,
}

/// How the ring turns by hand after assembly.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
#[serde(rename_all = "kebab-case")]
pub enum RingTurn {
    /// Freely, all round.
    Free,
    /// Stiffly, all round or in places.
    Stiff,
    /// Roughly.
    Rough,
}

/// Readings of a gauge as a screen gives them; station, direction, support and the maker's figure are known.
#[derive(Debug, Clone, PartialEq, Deserialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct GaugeGiven {
    /// Unit of readings and instrument.
    pub unit: LengthUnit,
    /// Total movement each time, in `unit`, as typed.
    pub readings: Vec<Typed>,
    /// With its resolution and permissible error.
    pub instrument: Instrument,
    /// Where it touches.
    pub place: GaugePosition,
    /// The bearing, if known.
    #[serde(default)]
    pub bearing: Option<BearingMark>,
}

/// A gauge's readings at a step as they count.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct GaugeStand {
    /// Play step measured.
    pub step: String,
    /// What the readings say.
    pub result: GaugeResult,
    /// The same as sentences.
    pub lines: GaugeLines,
    /// Who read them.
    pub by: String,
    /// Date of its entry, by the clock of the device that wrote it.
    pub at: Moment,
}

/// Where the bench stands.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct BenchStand {
    /// Whose bench it is.
    pub visit: String,
    /// The gates of the bench, by set.
    pub gate_sets: Vec<BenchGates>,
    /// The work, part by part, in its usual order.
    pub parts: Vec<BenchPart>,
    /// The part that comes next; nothing once all that is wanted is done.
    pub next: Option<BenchPartId>,
    /// As last looked; of each thing `None` means not looked at.
    pub look: HousingLook,
    /// What was seen of the housing, as sentences.
    pub look_lines: Vec<String>,
    /// The limit for the form of this seat, micrometres; none while its diameter is not known.
    pub form_limit_um: Option<f64>,
    /// Before anything was cut.
    pub found: Option<BoreStand>,
    /// The old sleeve, once it is out.
    pub sleeve_out: Option<SleeveOutStand>,
    /// How an old sleeve comes out.
    pub sleeve_ways: Vec<SleeveWayStand>,
    /// The bore behind the old sleeve.
    pub behind: Option<BoreStand>,
    /// The plan to skim it clean.
    pub plan: Option<SkimPlan>,
    /// The plan as sentences.
    pub plan_lines: Vec<String>,
    /// Passes cut, by number.
    pub passes: Vec<PassStand>,
    /// After the last cut, a sleeve in place.
    pub finished: Option<BoreStand>,
    /// None until values were given.
    pub fit: Option<FitResult>,
    /// The fit as sentences.
    pub fit_lines: Vec<String>,
    /// The workshop's own sleeves in this housing.
    pub stock: Vec<StockStand>,
    /// How the ring turned after assembly: what was turned last.
    pub ring: Option<RingStand>,
    /// Each bearing that was turned, the front one first.
    pub rings: Vec<RingStand>,
    /// The same as sentences, with what is still to be turned.
    pub ring_lines: Vec<String>,
    /// Run-out of the shaft after assembly.
    pub run_out: Option<RunOutStand>,
    /// Notes on fasteners and torques, oldest first.
    pub notes: Vec<NoteStand>,
    /// Photos by what they show, oldest first.
    pub photos: BTreeMap<WorkPlace, Vec<WorkPhoto>>,
    /// What it comes to.
    pub verdict: BenchVerdict,
    /// The verdict as sentences, the first says it.
    pub verdict_lines: Vec<String>,
    /// The bench's latest entry, if it is of this device: what "undo" would take back.
    pub undo: Option<UndoOffer>,
    /// Materials the fit can be worked out for.
    pub materials: Vec<String>,
    /// Hole classes in the table.
    pub classes: Vec<String>,
    /// The workshop's instruments, with what is overdue now.
    pub instruments: Vec<OwnInstrument>,
}

/// A photo of the bench's work.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct WorkPhoto {
    /// Its SHA-256, hex.
    pub sha256: String,
    /// What is drawn over it.
    pub marks: Vec<Mark>,
}

/// What a gauge says, as sentences.
#[derive(Debug, Clone, Default, PartialEq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct GaugeLines {
    /// What is decided, and what it counts as.
    pub decided: Vec<Sentence>,
    /// What would decide, and what the decision rests on.
    pub rests_on: Vec<Sentence>,
    /// Where the uncertainty comes from, largest first.
    pub budget: Vec<Sentence>,
    /// Where the numbers that decide come from, in the data's own words.
    pub basis: Vec<String>,
}

impl GaugeLines {
    /// All that is decided and why, in the order it is read.
    pub fn all(&self) -> Vec<Sentence> {
        [self.decided.as_slice(), &self.rests_on, &self.budget].concat()
    }
}

/// A part of the bench's work.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
#[serde(rename_all = "kebab-case")]
pub enum BenchPartId {
    /// The gates before anything heavy comes off.
    GatesTeardown,
    /// The look at the housing.
    Look,
    /// The bore as found.
    Found,
    /// The old sleeve taken out, and the bore behind it.
    OldSleeve,
    /// The gates before a cut.
    GatesMachining,
    /// The plan and the passes cut.
    Skim,
    /// The gates before heat or cold.
    GatesHeat,
    /// The bore as finished.
    Finished,
    /// Values given and worked out.
    Fit,
    /// The gates before anything is pressed.
    GatesPress,
    /// The ring turned by hand.
    Ring,
    /// The gates before the car stands on its wheels again.
    GatesRefit,
    /// Fasteners and torques.
    Notes,
}

/// How a part stands.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct BenchPart {
    /// Which part of the work.
    pub id: BenchPartId,
    /// The verdict so far asks for it.
    pub wanted: bool,
    /// It is recorded as it should end: every gate, a cut all round, a ring that turns freely.
    pub done: bool,
}

impl BenchStand {
    /// Whether the bench recorded anything of the part itself: gates alone are no work yet.
    pub fn is_begun(&self) -> bool {
        let looked = self.look != HousingLook::default();
        let bores = self.found.is_some() || self.behind.is_some() || self.finished.is_some();
        let read = bores || self.fit.is_some() || self.sleeve_out.is_some();
        looked || read || self.ring.is_some() || !self.passes.is_empty() || !self.photos.is_empty()
    }
}

/// One set of the bench's gates.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct BenchGates {
    /// The set, as `data/bench/teardown.toml` names it.
    pub id: String,
    /// In the order they are confirmed.
    pub gates: Vec<GateStand>,
}

/// A bore that was read.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct BoreStand {
    /// As worked out now from the readings kept.
    pub shape: BoreShape,
    /// The shape as sentences.
    pub lines: Vec<String>,
    /// Angles count clockwise.
    pub clockwise: bool,
    /// Who read it.
    pub by: String,
    /// Date of its entry, by the clock of the device that wrote it.
    pub at: Moment,
}

/// An old sleeve that is out.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct SleeveOutStand {
    /// How it came out.
    pub way: SleeveWay,
    /// Its outside diameter, mm; none where it was not measured.
    pub outside_mm: Option<f64>,
    /// What that says beside the bore behind it, as sentences.
    pub lines: Vec<String>,
    /// Who took it out.
    pub by: String,
    /// Date of its entry, by the clock of the device that wrote it.
    pub at: Moment,
}

/// A way for an old sleeve to come out.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct SleeveWayStand {
    /// How it comes out.
    pub way: SleeveWay,
    /// The set of gates that it takes.
    pub gates: String,
    /// Each of them is confirmed.
    pub open: bool,
}

/// A pass that was cut.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct PassStand {
    /// From 1, as the machinist counts.
    pub number: u32,
    /// Where the cutter touched.
    pub contact: Contact,
    /// Diameter after it, mm.
    pub diameter_mm: Option<f64>,
    /// Who cut it.
    pub by: String,
    /// Date of its entry, by the clock of the device that wrote it.
    pub at: Moment,
}

/// How the ring turned.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct RingStand {
    /// By hand after assembly: `free` is what ends the repair.
    pub turns: RingTurn,
    /// Which of two bearings; none where the housing holds one.
    pub bearing: Option<BearingPlace>,
    /// It was cold; none where nobody said.
    pub cold: Option<bool>,
    /// Radial internal clearance left, mm.
    pub clearance_mm: Option<f64>,
    /// Who turned it.
    pub by: String,
    /// Date of its entry, by the clock of the device that wrote it.
    pub at: Moment,
}

/// The run-out of the shaft beside the bearing. A figure to compare by: no limit is known that holds for every shaft,
/// so nothing is judged by it.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct RunOutStand {
    /// Total reading of a dial over one turn, mm.
    pub run_out_mm: f64,
    /// Who read it.
    pub by: String,
    /// Date of its entry, by the clock of the device that wrote it.
    pub at: Moment,
}

/// A note of the bench.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct NoteStand {
    /// As written.
    pub text: String,
    /// Who wrote it.
    pub by: String,
    /// Date of its entry, by the clock of the device that wrote it.
    pub at: Moment,
}
