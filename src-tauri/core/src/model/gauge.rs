//! A gauge on the shaft: what was read, and what the readings say. Plain types; the rules are in
//! `measure::gauge`. Every length in a result is in millimetres and at the bearing, unless its name says
//! otherwise.

use serde::{Deserialize, Serialize};

use super::standing::Support;
use super::typed::{LengthUnit, Typed};

/// Readings of total movement, push against pull, at one place in one direction.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct GaugeInput {
    /// Unit of readings, instrument and maker's figure.
    pub unit: LengthUnit,
    /// Station along the shaft line.
    pub station: String,
    /// Direction of the push and pull.
    pub direction: Direction,
    /// What holds the bearing.
    pub support: Support,
    /// Total movement each time, in `unit`.
    pub readings: Vec<Typed>,
    /// With its resolution and permissible error.
    pub instrument: Instrument,
    /// Where the gauge touches.
    pub place: GaugePosition,
    /// The maker's figure for movement at the bearing, in `unit`, if known.
    #[serde(default)]
    pub maker_limit: Option<Typed>,
    /// The bearing, if known: it gives a rigid support a limit where the maker gives none.
    #[serde(default)]
    pub bearing: Option<BearingMark>,
    /// Results of earlier visits at the same place and direction.
    #[serde(default)]
    pub earlier: Vec<Earlier>,
}

/// Direction of a push and pull.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
#[serde(rename_all = "kebab-case")]
pub enum Direction {
    /// Up and down.
    Vertical,
    /// From side to side.
    Lateral,
}

/// A gauge, in the unit of its readings.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct Instrument {
    /// Smallest step it shows.
    pub resolution: Typed,
    /// Maximum permissible error: how far it may read off, either way.
    pub mpe: Typed,
}

/// Where the gauge touches the shaft.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
#[serde(tag = "at", rename_all = "kebab-case", deny_unknown_fields)]
pub enum GaugePosition {
    /// At the bearing itself.
    Bearing,
    /// Elsewhere: places along the shaft in millimetres from any one zero. Where a bearing of a rigid pair moves, the
    /// shaft pivots about the other bearing of the pair and not about its far joint.
    Shaft {
        /// Where the shaft pivots.
        pivot_mm: Typed,
        /// Where the gauge touches.
        gauge_mm: Typed,
        /// Where the bearing sits that moves.
        bearing_mm: Typed,
        /// What it may be instead, where it is not known which bearing moves or what the shaft pivots about: then a
        /// proof needs both.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        or: Option<Lever>,
        /// How far each distance from the pivot may be off, either way; the shipped figure if none is given.
        #[serde(default)]
        error_mm: Option<f64>,
    },
}

/// A bearing that moves and the place the shaft pivots about, in millimetres along the shaft.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct Lever {
    /// Where the shaft pivots.
    pub pivot_mm: Typed,
    /// Where the bearing sits that moves.
    pub bearing_mm: Typed,
}

/// What is marked on a deep groove ball bearing.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct BearingMark {
    /// Bore, millimetres.
    pub bore_mm: Typed,
    /// Internal clearance group.
    pub group: ClearanceGroup,
}

/// Groups of radial internal clearance (ISO 5753-1).
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub enum ClearanceGroup {
    /// Less than normal.
    C2,
    /// Normal; usually not marked.
    CN,
    /// More than normal.
    C3,
    /// More than C3.
    C4,
}

/// A result of an earlier visit.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct Earlier {
    /// Days before this visit.
    pub days_ago: f64,
    /// Movement at the bearing, millimetres.
    pub movement_mm: f64,
    /// Its standard uncertainty, millimetres.
    pub standard_mm: f64,
}

/// What the readings say.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct GaugeResult {
    /// Id of the station it was read at.
    pub station: String,
    /// In which the shaft was moved.
    pub direction: Direction,
    /// What holds the bearing.
    pub support: Support,
    /// Unit the gauge was read in.
    pub unit: LengthUnit,
    /// Every reading, in order; none is dropped.
    pub readings: Vec<ReadingStand>,
    /// Movement at the bearing for each unit of movement at the gauge; of two possible levers the greater.
    pub ratio: f64,
    /// What the other of two possible levers would make of the readings.
    pub other_lever: Option<OtherLever>,
    /// Mean movement.
    pub mean_mm: f64,
    /// Standard deviation of the readings; none for one reading.
    pub deviation_mm: Option<f64>,
    /// How well the mean is known; none for one reading.
    pub uncertainty: Option<Uncertainty>,
    /// Where the uncertainty comes from, largest share first; without scatter for one reading.
    pub budget: Vec<GaugeBudgetLine>,
    /// What the mean is compared with, and where it comes from.
    pub limit: Limit,
    /// Where the decision changes; none without limit or uncertainty.
    pub bands: Option<Bands>,
    /// By ISO 14253-1, with a guard band both sides.
    pub decision: GaugeDecision,
    /// What the urgency rules take from it.
    pub meaning: GaugeMeaning,
    /// What would decide it, as far as it can be foreseen from these readings; only where not decided.
    pub remedies: Vec<Remedy>,
    /// What the sorting takes from it; none without limit or uncertainty.
    pub likelihood: Option<Likelihood>,
    /// How good this gauge is at this place for this limit; none without limit or uncertainty.
    pub chances: Option<Chances>,
    /// Trend with earlier visits; none without any.
    pub trend: Option<Trend>,
}

/// The same readings by the other possible lever, under which the bearing moves less.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct OtherLever {
    /// Movement at the bearing for each unit of movement at the gauge.
    pub ratio: f64,
    /// Mean movement, millimetres.
    pub mean_mm: f64,
    /// What it alone would decide.
    pub decision: GaugeDecision,
}

/// As read and as it counts.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct ReadingStand {
    /// As read, in millimetres at the gauge.
    pub at_gauge_mm: f64,
    /// Millimetres at the bearing: as read, times the lever's ratio.
    pub at_bearing_mm: f64,
    /// Far from the others: worth a second look, but counted all the same.
    pub doubtful: bool,
}

/// Uncertainty of the mean movement (JCGM 100).
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct Uncertainty {
    /// Combined standard uncertainty.
    pub standard_mm: f64,
    /// Effective degrees of freedom by Welch-Satterthwaite; none: unlimited.
    pub dof: Option<f64>,
    /// The whole number of them that the factor uses; none: unlimited.
    pub dof_used: Option<u32>,
    /// Coverage factor: Student's t for 95 %, two-sided.
    pub factor: f64,
    /// Expanded uncertainty, 95 %.
    pub expanded_mm: f64,
    /// Lower end of the interval.
    pub low_mm: f64,
    /// Upper end of the interval.
    pub high_mm: f64,
}

/// One contribution to the standard uncertainty (JCGM 100).
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct GaugeBudgetLine {
    /// Where it comes from.
    pub source: BudgetSource,
    /// How it was found.
    pub evaluation: Evaluation,
    /// Shape of its distribution.
    pub shape: Shape,
    /// Standard uncertainty of the source in its own unit: millimetres, for `alignment` a ratio.
    pub standard: f64,
    /// Movement at the bearing for each unit of the source.
    pub sensitivity: f64,
    /// Its part of the standard uncertainty, millimetres at the bearing.
    pub contribution_mm: f64,
    /// Degrees of freedom; none: unlimited.
    pub dof: Option<f64>,
    /// Its share of the variance, 0 to 1.
    pub share: f64,
}

/// Sources of uncertainty.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
#[serde(rename_all = "kebab-case")]
pub enum BudgetSource {
    /// Scatter of the readings.
    Scatter,
    /// Smallest step, at push and at pull.
    Resolution,
    /// Maximum permissible error.
    Mpe,
    /// The gauge stands at an angle to the movement.
    Alignment,
    /// Distance from pivot to gauge.
    GaugePlace,
    /// Distance from pivot to bearing.
    BearingPlace,
}

/// How a contribution was found (JCGM 100).
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub enum Evaluation {
    /// From repeated readings.
    A,
    /// From other knowledge.
    B,
}

/// Shapes of distributions.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
#[serde(rename_all = "kebab-case")]
pub enum Shape {
    /// Student's t about the mean.
    Student,
    /// Even between two ends.
    Rectangular,
    /// Sum of two equal even ones.
    Triangular,
}

/// What movement is allowed at the bearing.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct Limit {
    /// Where it comes from.
    pub source: LimitSource,
    /// The limit; none if none is known.
    pub mm: Option<f64>,
    /// The same at the gauge.
    pub at_gauge_mm: Option<f64>,
}

/// Where a limit comes from.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
#[serde(rename_all = "kebab-case")]
pub enum LimitSource {
    /// The maker's figure.
    Maker,
    /// Largest internal clearance of the bearing's group before fitting. Nobody's official limit.
    InternalClearance,
    /// None known.
    None,
}

/// Where the decision changes (ISO 14253-1).
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct Bands {
    /// Guard band on both sides of the limit.
    pub guard_mm: f64,
    /// Means up to here prove that there is no movement beyond the limit; below zero: no mean can.
    pub none_up_to_mm: f64,
    /// Means above this prove movement beyond the limit.
    pub proven_above_mm: f64,
}

/// The decision, at 95 %.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
#[serde(rename_all = "kebab-case")]
pub enum GaugeDecision {
    /// Movement beyond the limit is proven.
    Proven,
    /// The movement is proven to lie within the limit.
    NoneProven,
    /// Neither.
    NotDecided,
    /// No limit is known: compare, do not judge.
    Compare,
}

/// What a gauge adds to what hands felt. A gauge never clears a hand-felt movement.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
#[serde(rename_all = "kebab-case")]
pub enum GaugeMeaning {
    /// Counts as movement felt: proven beyond the limit at a support that allows none by hand.
    Felt,
    /// Proven beyond the maker's figure at a rubber support.
    BeyondFigure,
    /// Counts as unsure.
    Unsure,
    /// Replaces an `unsure`, and nothing stronger than that.
    ReplacesUnsure,
    /// Adds nothing: a rubber support without a figure.
    Silent,
}

/// Something that would decide.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
#[serde(tag = "do", rename_all = "kebab-case")]
pub enum Remedy {
    /// Take more readings, so many in all.
    MoreReadings {
        /// So many in all, those there are included.
        readings: u32,
    },
    /// Use a finer gauge, with a permissible error finer in proportion.
    FinerGauge {
        /// Its step, millimetres.
        resolution_mm: f64,
        /// The largest permissible error it may have, millimetres.
        mpe_mm: f64,
    },
    /// Put the gauge at the bearing.
    AtBearing,
    /// Find out which bearing moves and what the shaft pivots about.
    FindLever,
    /// A finer gauge and more readings together.
    FinerGaugeMoreReadings {
        /// Its step, millimetres.
        resolution_mm: f64,
        /// The largest permissible error it may have, millimetres.
        mpe_mm: f64,
        /// So many in all, those there are included.
        readings: u32,
    },
    /// Read again first: one reading says nothing of its own scatter.
    ReadAgain {
        /// So many in all, those there are included.
        readings: u32,
    },
    /// Find the limit: the maker's figure, or the bearing's bore and group.
    FindLimit,
    /// More readings will not settle it: the movement is too near the limit.
    TooNearLimit,
}

/// Likelihoods of the readings, up to one common factor.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct Likelihood {
    /// Given movement beyond the limit.
    pub if_movement: f64,
    /// Given none beyond it.
    pub if_none: f64,
}

/// What becomes of a support whose movement may lie anywhere from none to twice the limit, evenly.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct Chances {
    /// Beyond the limit and yet taken for within it.
    pub missed: f64,
    /// Within the limit and yet taken for beyond it.
    pub false_alarm: f64,
    /// Not decided.
    pub undecided: f64,
}

/// Movement over visits, with a straight line through it.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct Trend {
    /// The visits, oldest first; this one last.
    pub points: Vec<TrendPoint>,
    /// Growth a year.
    pub slope_mm_per_year: f64,
    /// Its expanded uncertainty, 95 %.
    pub expanded_mm_per_year: f64,
    /// Where the movement of each visit lies with 95 %, in the order of the points.
    pub intervals_mm: Vec<[f64; 2]>,
    /// The line at the first and at the last visit.
    pub line_mm: [f64; 2],
    /// At 95 %.
    pub shows: TrendShows,
}

/// One visit of a trend.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct TrendPoint {
    /// Days, zero or below: this visit is 0.
    pub day: f64,
    /// Mean at the bearing, mm.
    pub movement_mm: f64,
    /// Standard uncertainty.
    pub standard_mm: f64,
}

/// What a trend shows at 95 %.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
#[serde(rename_all = "kebab-case")]
pub enum TrendShows {
    /// Movement grows.
    Growing,
    /// Movement shrinks: worth asking what was changed.
    Shrinking,
    /// No change is shown; which is not to say that there is none.
    NoChangeShown,
}
