//! The workshop's own particulars: who it is, its units, and what it usually needs. Entered by the workshop,
//! kept in its data folder, and an input of every paper. How typed ones are read is in `app::workshop`.

use serde::{Deserialize, Serialize};

use super::typed::LengthUnit;
use super::verdict::Verdict;
use super::visit::DistanceUnit;

/// The particulars; an empty part is left out of the papers.
#[derive(Debug, Clone, Default, PartialEq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct Workshop {
    /// Name over the door.
    pub name: String,
    /// Address, line by line.
    pub address: Vec<String>,
    /// Phone, as the workshop writes it.
    pub phone: String,
    /// Units of its papers and screens.
    pub units: Units,
    /// Hours for each outcome of the bench that it entered, mildest first.
    pub hours: Vec<TierHours>,
    /// Rate an hour, in `currency`.
    pub rate: Option<f64>,
    /// Currency, as the workshop writes it.
    pub currency: String,
    /// Sleeves it has on its shelf, or buys.
    pub sleeves: Vec<StockSleeve>,
    /// Instruments it measures with.
    pub instruments: Vec<OwnInstrument>,
}

/// A size of sleeve that the workshop has.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct StockSleeve {
    /// Id in `data/bench/materials.toml`.
    pub material: String,
    /// Outside diameter, mm.
    pub outside_mm: f64,
    /// Its bore as it is bought, mm; it is bored to size from there.
    pub bore_mm: f64,
}

/// An instrument of the workshop.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct OwnInstrument {
    /// As the workshop calls it: a number on its case, or a name. No two are called alike.
    pub name: String,
    /// Smallest step it shows, mm.
    pub resolution_mm: f64,
    /// Its maximum permissible error, mm.
    pub mpe_mm: f64,
    /// Standard deviation of repeated readings, mm, where it was tried.
    pub repeatability_mm: Option<f64>,
    /// Day it was last calibrated, `2026-11-25`; none where nobody knows.
    pub calibrated: Option<String>,
    /// Last day that holds for, as its certificate or the workshop's rule says.
    pub due: Option<String>,
    /// That day is past, or no calibration is known by now: as of when this was asked for.
    pub overdue: bool,
}

impl OwnInstrument {
    /// Whether it has to be calibrated before it is used on `day`: what is not known is not taken for valid.
    pub fn is_overdue(&self, day: &str) -> bool {
        is_overdue(self.calibrated.as_deref(), self.due.as_deref(), day)
    }
}

/// Whether a calibration of one day that holds until another does not hold on `day`; days as `2026-11-25`. One that is still
/// to come proves nothing.
pub fn is_overdue(calibrated: Option<&str>, due: Option<&str>, day: &str) -> bool {
    calibrated.is_none_or(|calibrated| calibrated > day) || due.is_none_or(|due| due < day)
}

/// Units that lengths and distances are shown in; none: as the language has it.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct Units {
    /// Millimetres or inches; none: as the language has it.
    #[serde(default)]
    pub length: Option<LengthUnit>,
    /// Of distances driven.
    #[serde(default)]
    pub distance: Option<DistanceUnit>,
}

/// Hours for one outcome of the bench.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct TierHours {
    /// Verdict the hours are for.
    pub tier: Verdict,
    /// Hours at least.
    pub from: f64,
    /// Hours at most.
    pub to: f64,
}

/// The particulars as a screen or a file gives them: numbers are texts, as typed.
#[derive(Debug, Clone, Default, PartialEq, Deserialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct WorkshopGiven {
    /// On papers and messages; one line (`limits::LINE`).
    #[serde(default)]
    pub name: String,
    /// Address, line by line; empty lines are left out.
    #[serde(default)]
    pub address: Vec<String>,
    /// As typed: no form is asked for.
    #[serde(default)]
    pub phone: String,
    /// Of lengths and distances shown.
    #[serde(default)]
    pub units: Units,
    /// Hours; one with both ends empty is not entered.
    #[serde(default)]
    pub hours: Vec<HoursGiven>,
    /// Rate an hour; empty is not entered.
    #[serde(default)]
    pub rate: String,
    /// As printed behind an amount: `€`, `GBP`.
    #[serde(default)]
    pub currency: String,
    /// Sleeves of the stock; one with nothing in it is left out.
    #[serde(default)]
    pub sleeves: Vec<SleeveGiven>,
    /// Instruments; one with nothing in it is left out.
    #[serde(default)]
    pub instruments: Vec<InstrumentGiven>,
}

/// A sleeve of the stock as typed.
#[derive(Debug, Clone, Default, PartialEq, Eq, Deserialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct SleeveGiven {
    /// Id in `data/bench/materials.toml`.
    pub material: String,
    /// Outside diameter, mm or with its unit.
    pub outside: String,
    /// Bore as it is bought, mm or with its unit.
    pub bore: String,
}

/// An instrument as typed.
#[derive(Debug, Clone, Default, PartialEq, Eq, Deserialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct InstrumentGiven {
    /// What the workshop calls it.
    pub name: String,
    /// Smallest step, mm or with its unit.
    pub resolution: String,
    /// Maximum permissible error, mm or with its unit.
    pub mpe: String,
    /// Standard deviation of repeated readings, mm or with its unit; may be empty.
    #[serde(default)]
    pub repeatability: String,
    /// Day of the calibration, `2026-11-25`; may be empty.
    #[serde(default)]
    pub calibrated: String,
    /// Last day it holds for; may be empty.
    #[serde(default)]
    pub due: String,
}

/// Hours as typed; where one end is empty it is the same as the other.
#[derive(Debug, Clone, PartialEq, Eq, Deserialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct HoursGiven {
    /// Verdict the hours are for.
    pub tier: Verdict,
    /// Hours at least.
    pub from: String,
    /// Hours at most.
    pub to: String,
}
