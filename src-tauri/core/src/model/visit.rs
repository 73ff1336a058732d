//! What is known at intake: the vehicle, the complaint and the owner. Plain types, no rules.
//! What is found afterwards is in [`entry`](super::entry).

use serde::{Deserialize, Serialize};

use super::occasion::{Conditions, Occasion};

/// What is written down when a car comes in. Only `vehicle.layout` has to be there.
#[derive(Debug, Clone, Default, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct Intake {
    /// What identifies it and how it is built.
    pub vehicle: Vehicle,
    /// The complaint in the owner's words; may be empty.
    #[serde(default)]
    pub complaint: String,
    /// What the owner says they notice, as ids of `data/complaints.toml` (`buzz`, `rattle` ...).
    #[serde(default)]
    pub complaint_sounds: Vec<String>,
    /// When it happens, in the owner's words.
    #[serde(default)]
    pub when: String,
    /// The owner, if given.
    #[serde(default)]
    pub owner: Owner,
    /// What brings the car in.
    #[serde(default, skip_serializing_if = "Occasion::is_complaint")]
    pub occasion: Occasion,
    /// What the noise is heard under.
    #[serde(default, skip_serializing_if = "Conditions::is_blank")]
    pub conditions: Conditions,
}

/// The car on the lift.
#[derive(Debug, Clone, Default, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct Vehicle {
    /// How the car carries its shaft: an id of a layout file.
    pub layout: String,
    /// Make and model as the shop writes it.
    #[serde(default)]
    pub label: String,
    /// Registration plate.
    #[serde(default)]
    pub plate: String,
    /// Vehicle identification number; its check digit is a hint only.
    #[serde(default)]
    pub vin: String,
    /// Rigid supports: `bare` or `sleeved`.
    #[serde(default)]
    pub seat: Option<Seat>,
    /// Number of cylinders.
    #[serde(default)]
    pub cylinders: Option<u8>,
    /// The gearbox, if known.
    #[serde(default)]
    pub gearbox: Option<Gearbox>,
    /// The maker's idle speed range, rpm, low and high.
    #[serde(default)]
    pub idle_rpm: Option<[u32; 2]>,
    /// Odometer reading with its unit.
    #[serde(default)]
    pub odometer: Option<Odometer>,
    /// Rubber supports: the maker's movement figure, millimetres, if known.
    #[serde(default)]
    pub maker_play_mm: Option<f64>,
    /// From how many degrees Celsius on the maker calls the housing warm, if known.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub warm_from_c: Option<f64>,
}

/// How the bearing sits in an aluminium housing.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
#[serde(rename_all = "kebab-case")]
pub enum Seat {
    /// Straight in the aluminium.
    Bare,
    /// In a pressed-in steel sleeve.
    Sleeved,
}

/// The kinds of gearbox that change which checks apply.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
#[serde(rename_all = "kebab-case")]
pub enum Gearbox {
    /// A clutch worked by an actuator.
    AutomatedClutch,
    /// A hydraulic converter.
    TorqueConverter,
    /// A clutch pedal.
    Manual,
}

impl Gearbox {
    /// Its id in data and case files.
    pub fn id(self) -> &'static str {
        match self {
            Self::AutomatedClutch => "automated-clutch",
            Self::TorqueConverter => "torque-converter",
            Self::Manual => "manual",
        }
    }
}

/// An odometer reading.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct Odometer {
    /// As read.
    pub value: u32,
    /// As the instrument shows it.
    pub unit: DistanceUnit,
}

/// Units an odometer shows.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
#[serde(rename_all = "kebab-case")]
pub enum DistanceUnit {
    /// Kilometres.
    Km,
    /// Statute miles, 1.609344 km each, exactly (NIST SP 811, App. B.8).
    Miles,
}

impl DistanceUnit {
    /// Id used in text keys and on disk.
    pub fn id(self) -> &'static str {
        match self {
            Self::Km => "km",
            Self::Miles => "miles",
        }
    }

    /// A distance in this unit as one in another.
    pub fn convert(self, value: f64, to: Self) -> f64 {
        match (self, to) {
            (Self::Miles, Self::Km) => value * 1.609_344,
            (Self::Km, Self::Miles) => value / 1.609_344,
            _ => value,
        }
    }
}

/// The owner, as far as they want to be known.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct Owner {
    /// As they want to be called; may be empty.
    #[serde(default)]
    pub name: String,
    /// Telephone or address for a message.
    #[serde(default)]
    pub contact: String,
}
