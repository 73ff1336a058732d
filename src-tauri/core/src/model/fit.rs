//! A bearing's fit in its seat: what is given, and what follows. Plain types; the rules are in
//! `measure::fit`. Interference is on the diameter, in micrometres, and above zero where the parts are tight.

use serde::{Deserialize, Serialize};

use super::gauge::ClearanceGroup;
use super::typed::Typed;

/// What is known of a fit. Lengths are in millimetres, `_um` in micrometres, temperatures in Celsius.
#[derive(Debug, Clone, Default, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct FitInput {
    /// Outside diameter of the bearing, nominal.
    pub bearing_outside: Option<Typed>,
    /// Outside diameter as measured; wins over the tolerance of its class.
    #[serde(default)]
    pub measured_outside: Option<Measured>,
    /// Bore of the bearing, nominal: for its internal clearance.
    #[serde(default)]
    pub bearing_bore: Option<Typed>,
    /// Width of the bearing: for the press force.
    #[serde(default)]
    pub bearing_width: Option<Typed>,
    /// Clearance group of the bearing.
    #[serde(default)]
    pub group: Option<ClearanceGroup>,
    /// Hole class of the seat that takes the bearing, such as `N7`.
    #[serde(default)]
    pub class: Option<String>,
    /// Bore of that seat as measured, a sleeve in its place; wins over the class.
    #[serde(default)]
    pub measured_bore: Option<Measured>,
    /// Material of the housing.
    pub housing: String,
    /// Outside diameter of the housing's wall about the seat.
    #[serde(default)]
    pub housing_outside: Option<Typed>,
    /// The sleeve, if there is one.
    #[serde(default)]
    pub sleeve: Option<Sleeve>,
    /// Lowest and highest temperature of housing and bearing in use.
    #[serde(default)]
    pub temperature: Option<[Typed; 2]>,
}

/// A size taken with an instrument.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct Measured {
    /// The size, millimetres.
    pub size: Typed,
    /// Its expanded uncertainty (95 %), micrometres, if known.
    #[serde(default)]
    pub expanded_um: Option<Typed>,
}

/// A sleeve between housing and bearing.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct Sleeve {
    /// Id in `data/bench/materials.toml`.
    pub material: String,
    /// Its outside diameter.
    pub outside: Measured,
    /// The bore of the housing that takes it.
    pub housing_bore: Measured,
}

/// What follows from the sizes.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct FitResult {
    /// The seats, the bearing's first; two with a sleeve.
    pub seats: Vec<SeatFit>,
    /// What the sleeve has to be for this housing; none without one.
    pub sleeve: Option<SleeveDesign>,
    /// What the fit leaves of the bearing's internal clearance; none where bore or group is not given.
    pub clearance: Option<ClearanceStand>,
    /// What was not known and is therefore not in the figures.
    pub not_counted: Vec<NotCounted>,
    /// Form that a seat of this size should hold: half of IT5, micrometres.
    pub form_um: f64,
    /// The housing is of a light alloy: no source found prescribes one class for it.
    pub light_alloy: bool,
    /// Classes by how the load stands, for iron and steel housings.
    pub advice: Vec<Advice>,
    /// What holds this bearing in this housing when hot.
    pub holding: Holding,
}

/// A sleeve for the bore that there is.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct SleeveDesign {
    /// How far pressing it in closes its bore, micrometres on the diameter.
    pub closes_um: Spread,
    /// Least and most that its bore is cut to before it is pressed in, so that it ends within the seat asked for; none
    /// where the closing varies by more than the seat allows, so that it has to be cut afterwards.
    pub bored_before_mm: Option<[f64; 2]>,
    /// Least outside diameter of it that holds on the hottest day, millimetres; none where no temperatures were given.
    pub outside_least_mm: Option<f64>,
    /// Most outside diameter of it that every part bears on the coldest day; none where that, a wall or a yield is not
    /// known.
    pub outside_most_mm: Option<f64>,
    /// There is a diameter that both holds and is borne; none where one of them is not known.
    pub holds: Option<bool>,
}

/// What a sleeve of the stock would do in this housing.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct StockStand {
    /// Id in `data/bench/materials.toml`.
    pub material: String,
    /// Outside diameter, mm.
    pub outside_mm: f64,
    /// Its bore as it is bought, mm.
    pub bore_mm: f64,
    /// Whether it would do.
    pub says: StockSays,
    /// Least and most that the housing's bore may be for it, mm: the least is borne cold, the most holds hot. Where it is
    /// to be bored, the least is no less than it is already or has to be to be clean. None where one of them is not known.
    pub housing_bore_mm: Option<[f64; 2]>,
    /// The same as a sentence.
    pub line: String,
}

/// Whether a sleeve of the stock would do; names the text `stock-…`. The wall that is left is held against the verdict's own rule.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
#[serde(rename_all = "kebab-case")]
pub enum StockSays {
    /// Something of the fit is not known yet.
    Open,
    /// The housing's bore as it was given takes it.
    Fits,
    /// The housing is bored to a size for it.
    BoreTo,
    /// The housing's bore as it was given is too wide for it already.
    BoreTooWide,
    /// Bored to the bearing it would be thinner than a sleeve can be.
    TooThin,
    /// The housing has no wall left around it.
    NoWall,
    /// Its own bore is wider than the seat it would be bored to.
    OwnBoreTooWide,
    /// No grip both holds hot and is borne cold.
    NoneHolds,
    /// Bored for it the housing would keep less wall than it has to.
    WallTooThin,
    /// The housing is to be replaced: no sleeve goes into it.
    HousingReplaced,
}

/// What holds a bearing in a bare housing up to the highest temperature in use.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct Holding {
    /// The highest temperature in use, Celsius; none where no range was given.
    pub hottest_c: Option<f64>,
    /// Tabled classes that are tight in every pair from 20 C up to it, loosest first.
    pub classes: Vec<String>,
    /// The tightest class tabled at this diameter.
    pub tightest: String,
    /// Above this temperature even its loosest pair is loose; none if it never is above 20 C, 20 if it is by then.
    pub tightest_may_loosen_c: Option<f64>,
    /// The largest bore that is tight at the highest temperature with the smallest bearing, the housing bare.
    pub bare_bore_most_mm: Option<f64>,
    /// Where no class holds bare; none if no tabled sleeve does.
    pub sleeve: Option<HoldingSleeve>,
}

/// A sleeve of which the bearing is not let go.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct HoldingSleeve {
    /// Id in `data/bench/materials.toml`.
    pub material: String,
    /// Grip in the housing at 20 C above which the thinnest sleeve is still tight at the highest temperature,
    /// micrometres on the diameter.
    pub grip_um: f64,
    /// The largest bore of it, once pressed in, that is tight at the highest temperature with the smallest bearing: what
    /// the housing lets go of the sleeve opens its bore again.
    pub bore_most_mm: f64,
}

/// Two parts that meet: sizes, how tight, how it goes together.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct SeatFit {
    /// Which two parts meet there.
    pub seat: SeatId,
    /// Nominal diameter, millimetres.
    pub diameter_mm: f64,
    /// Of the outer part: bore.
    pub hole: SizeStand,
    /// What sits in it.
    pub part: SizeStand,
    /// Whether a measured hole lies in the class that was also given.
    pub hole_in_class: Option<bool>,
    /// Interference at 20 C.
    pub interference_um: Spread,
    /// How it stands at 20 C.
    pub state: FitState,
    /// Interference over the temperature range, lowest first.
    pub over_temperature: Vec<AtTemperature>,
    /// Change of the mean from 20 C to the highest temperature; below zero where the fit loosens.
    pub change_hot_um: f64,
    /// Above this temperature the loosest pair is loose; none if it never is above 20 C, 20 if it is by then.
    pub may_loosen_above_c: Option<f64>,
    /// Above this temperature every pair is loose.
    pub loose_above_c: Option<f64>,
    /// Pressure between the parts at 20 C.
    pub pressure_mpa: Spread,
    /// Stress in the tightest pair at the temperature of the range, or 20 C, at which it is greatest.
    pub stress: Vec<StressStand>,
    /// How it goes together.
    pub assembly: Assembly,
}

/// Where two parts meet.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
#[serde(rename_all = "kebab-case")]
pub enum SeatId {
    /// No sleeve.
    BearingInHousing,
    /// Inner seat of a sleeved housing.
    BearingInSleeve,
    /// Outer seat of a sleeved housing.
    SleeveInHousing,
}

/// A size with its limits, millimetres.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct SizeStand {
    /// Where it comes from.
    pub from: SizeFrom,
    /// Lower limit, or measured less its uncertainty.
    pub least_mm: f64,
    /// Middle of the limits, or as measured.
    pub mean_mm: f64,
    /// Upper limit, or measured plus its uncertainty.
    pub most_mm: f64,
}

/// Where a size comes from.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
#[serde(rename_all = "kebab-case")]
pub enum SizeFrom {
    /// With its own uncertainty as its limits.
    Measured,
    /// Limits of a hole class (ISO 286-2).
    Class,
    /// Tolerance of a bearing (ISO 492, Normal class).
    Bearing,
}

/// Least, mean and most of one quantity.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct Spread {
    /// At the end of the limits that gives least.
    pub least: f64,
    /// In the middle of the limits.
    pub mean: f64,
    /// At the end that gives most.
    pub most: f64,
}

/// How a fit stands.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
#[serde(rename_all = "kebab-case")]
pub enum FitState {
    /// Every pair is tight.
    Tight,
    /// Some pairs are loose.
    MayBeLoose,
    /// Every pair is loose.
    Loose,
}

/// Interference at one temperature.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct AtTemperature {
    /// Of housing and bearing alike.
    pub celsius: f64,
    /// Micrometres on the diameter; below zero loose.
    pub interference_um: Spread,
    /// How it stands.
    pub state: FitState,
}

/// Stress in one part beside its yield.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct StressStand {
    /// Housing, sleeve or bearing.
    pub part: PartId,
    /// Id in `data/bench/materials.toml`.
    pub material: String,
    /// Largest hoop stress, MPa; pulling above zero. None where the wall is not known.
    pub hoop_mpa: Option<f64>,
    /// Largest equivalent stress by Tresca, MPa: the pressure counts beside the hoop. None where the wall is not known.
    pub tresca_mpa: Option<f64>,
    /// The same by von Mises, which is never more.
    pub mises_mpa: Option<f64>,
    /// Yield, MPa; none where the material has none.
    pub yield_mpa: Option<f64>,
    /// Share of the yield that is used, by Tresca; none where either is missing.
    pub used: Option<f64>,
}

/// What can be stressed.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
#[serde(rename_all = "kebab-case")]
pub enum PartId {
    /// The bearing's outer ring.
    OuterRing,
    /// Between housing and bearing.
    Sleeve,
    /// Its wall about the seat.
    Housing,
}

/// How the tightest pair goes together.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct Assembly {
    /// Press force, newtons, with oil and dry; none where the width is not known.
    pub press_n: Option<[f64; 2]>,
    /// Temperature of the outer part that lets the inner one drop in, Celsius; none where nothing is tight.
    pub heat_to_c: Option<f64>,
    /// The outer part may not be made hotter than this.
    pub heat_limit_c: f64,
    /// The outer part alone can be made hot enough.
    pub heat_is_enough: bool,
    /// Temperature of the inner part that goes with the outer one at its limit (or as hot as needed).
    pub cool_to_c: Option<f64>,
    /// Heat and cold together are enough.
    pub cold_is_enough: bool,
}

/// What is left of the internal clearance, micrometres.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct ClearanceStand {
    /// The bearing's group; none if it was not given.
    pub group: Option<ClearanceGroup>,
    /// Least and most before fitting.
    pub before_um: Option<[f64; 2]>,
    /// Loss at 20 C.
    pub loss_um: Spread,
    /// Largest loss over the temperature range.
    pub worst_loss_um: f64,
    /// Least and most left over the range.
    pub left_um: Option<[f64; 2]>,
    /// The first group that keeps some clearance in every pair; none if even C4 does not.
    pub needed: Option<ClearanceGroup>,
}

/// What a figure leaves out.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
#[serde(rename_all = "kebab-case")]
pub enum NotCounted {
    /// The inner ring's fit on the shaft also takes clearance.
    ShaftFit,
    /// A ring warmer than the other also takes clearance.
    RingsApart,
    /// A housing warmer or colder than the bearing in it.
    HousingApart,
    /// The housing's wall: taken as endless, which gives the largest pressure and no stress.
    HousingWall,
    /// The bearing's bore: its ring is taken as of usual thickness, and no clearance is given.
    BearingBore,
    /// The bearing's clearance group.
    Group,
    /// The bearing's width: no press force.
    Width,
    /// A temperature range.
    Temperature,
    /// Uncertainty of a measured size.
    SizeUncertainty,
    /// Form of the seat: sizes alone do not show an egg.
    Form,
}

/// Classes advised under one condition.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct Advice {
    /// Id in `data/bench/advice.toml`; names the text `fit-advice-…`.
    pub condition: String,
    /// Hole classes as ISO 286 writes them, in the order of `advice.toml`.
    pub classes: Vec<String>,
}
