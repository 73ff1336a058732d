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
