//! What the bench says of a housing: what was found, and what is to be done. Plain types; the rule is in
//! `measure::verdict`. `None` means not measured or not looked at, never "fine".

use serde::{Deserialize, Serialize};

/// What was found on the bench.
#[derive(Debug, Clone, Default, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct BenchFindings {
    /// A crack in the housing, or a broken lug.
    #[serde(default)]
    pub cracked: Option<bool>,
    /// The ring has turned in its seat: bright or scored marks.
    #[serde(default)]
    pub ring_turned: Option<bool>,
    /// Nominal diameter of the seat, millimetres.
    #[serde(default)]
    pub diameter_mm: Option<f64>,
    /// Out-of-roundness of the seat, micrometres.
    #[serde(default)]
    pub roundness_um: Option<WithUncertainty>,
    /// That is what was seen of it: the method is blind to some shapes, or a part was not read. Then it can prove
    /// the seat out of round, and never round.
    #[serde(default)]
    pub roundness_at_least: bool,
    /// Rings read all round stand for the whole width of the seat.
    #[serde(default)]
    pub read_through: bool,
    /// Interference of the new bearing in the seat as it is, the loosest pair at the highest temperature in use.
    #[serde(default)]
    pub hot_interference_um: Option<f64>,
    /// Share of the yield that the tightest pair uses, 0 to 1 and more.
    #[serde(default)]
    pub yield_share: Option<f64>,
    /// Smallest diameter of the seat about the axis of the cut, millimetres: where the cutter first touches.
    #[serde(default)]
    pub touch_mm: Option<f64>,
    /// Smallest cut on the diameter that cleans up all round at every depth, micrometres.
    #[serde(default)]
    pub clean_up_um: Option<f64>,
    /// The last pass touched all round: it is clean, whatever was planned.
    #[serde(default)]
    pub clean_all_round: bool,
    /// Diameter of the bore after that pass, millimetres.
    #[serde(default)]
    pub clean_diameter_mm: Option<f64>,
    /// Thinnest wall as it was found, millimetres.
    #[serde(default)]
    pub wall_mm: Option<WithUncertainty>,
    /// The sleeve that will be fitted.
    #[serde(default)]
    pub sleeve: Option<SleeveFound>,
    /// Wall that has to be left, millimetres: the maker's figure or the machinist's.
    #[serde(default)]
    pub wall_least_mm: Option<f64>,
    /// A sleeve of an earlier repair is, or was, in the bore.
    #[serde(default)]
    pub old_sleeve: Option<bool>,
    /// It is out; `touch_mm`, `clean_up_um` and `wall_mm` are then those of the bore behind it.
    #[serde(default)]
    pub old_sleeve_out: bool,
}

/// What is known of the sleeve that will be fitted.
#[derive(Debug, Clone, Copy, Default, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct SleeveFound {
    /// Bore of the housing that it is pressed into, millimetres.
    pub bore_mm: f64,
    /// Interference of the looser of its two seats, micrometres: the loosest pair over the temperatures in use.
    #[serde(default)]
    pub hot_interference_um: Option<f64>,
    /// Share of the yield that the tightest pair uses in the part that bears most.
    #[serde(default)]
    pub yield_share: Option<f64>,
}

/// A value with its expanded uncertainty.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct WithUncertainty {
    /// In the unit of the field that holds it.
    pub value: f64,
    /// Its expanded uncertainty, 95 %.
    pub expanded: f64,
}

/// What is to be done, mildest first.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
#[serde(rename_all = "kebab-case")]
pub enum Verdict {
    /// New bearings in the seat as it is.
    BearingsOnly,
    /// Skim the seat and press in a sleeve.
    SkimAndSleeve,
    /// Too little wall, cracked, or no sleeve that holds.
    ReplaceHousing,
}

impl Verdict {
    /// Every outcome, mildest first.
    pub const ALL: [Self; 3] = [Self::BearingsOnly, Self::SkimAndSleeve, Self::ReplaceHousing];

    /// Id used in text keys and on disk.
    pub fn id(self) -> &'static str {
        match self {
            Self::BearingsOnly => "bearings-only",
            Self::SkimAndSleeve => "skim-and-sleeve",
            Self::ReplaceHousing => "replace-housing",
        }
    }
}

/// The verdict with what it rests on.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct BenchVerdict {
    /// What is to be done; none while something that decides it is missing.
    pub verdict: Option<Verdict>,
    /// No milder outcome is possible any more, whatever is still to be measured.
    pub at_least: Verdict,
    /// Why, in order of weight.
    pub reasons: Vec<VerdictReason>,
    /// What was not measured and could change the verdict.
    pub missing: Vec<BenchGap>,
    /// Sets of the bench's gates that the work asks for, in its order; none while the verdict is open.
    pub gates: Vec<String>,
    /// What has to be checked after assembly before the car leaves.
    pub closing_checks: Vec<ClosingCheck>,
}

/// Why a verdict is what it is; names the text `verdict-…`.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
#[serde(rename_all = "kebab-case")]
pub enum VerdictReason {
    /// The housing is cracked.
    Cracked,
    /// Too little wall would be left once the sleeve has its room.
    WallTooThin,
    /// Whether enough wall would be left is within the uncertainty of the wall.
    WallNotDecided,
    /// The sleeve's bore does not clean up.
    SleeveTooSmall,
    /// The sleeve, or the bearing in it, would be loose when hot.
    SleeveLooseHot,
    /// The sleeve would press a part too near its yield.
    SleeveTooTight,
    /// The seat is proven out of round.
    OutOfRound,
    /// The seat is not proven round: its reading and its uncertainty straddle the limit.
    RoundnessNotDecided,
    /// The ring has turned in its seat.
    RingTurned,
    /// The old sleeve is out: the bore takes a new one.
    OldSleeveOut,
    /// The new bearing would be loose when hot.
    LooseHot,
    /// The fit would press the housing too near its yield.
    TooTight,
    /// The seat is round, tight and sound.
    SeatSound,
}

/// What was not measured or looked at.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
#[serde(rename_all = "kebab-case")]
pub enum BenchGap {
    /// Nobody looked for them.
    Cracks,
    /// Marks of a turned ring.
    RingMarks,
    /// Diameter of the seat.
    Diameter,
    /// Roundness of the seat, all the way round.
    Roundness,
    /// Depths of the seat at which nothing was read, or its width.
    Depths,
    /// No fit was worked out over the temperatures in use.
    HotFit,
    /// Stress of the fit.
    Stress,
    /// The cut that cleans up.
    CleanUp,
    /// The diameter at which it was clean: it was cut clean, and nobody measured it then.
    CleanDiameter,
    /// The wall as it is, well enough to say what is left.
    WallLeft,
    /// The sleeve: its bore in the housing.
    Sleeve,
    /// A sleeve that holds hot.
    SleeveHotFit,
    /// A sleeve whose stress housing and sleeve bear.
    SleeveStress,
    /// The wall that has to be left.
    WallLeast,
    /// Whether an old sleeve is in the bore.
    OldSleeve,
    /// The old sleeve taken out, and the bore behind it.
    BehindSleeve,
}

/// Checks that close the repair.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
#[serde(rename_all = "kebab-case")]
pub enum ClosingCheck {
    /// After assembly the ring turns freely by hand.
    TurnsFreely,
}
