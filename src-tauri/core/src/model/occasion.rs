//! What brings a car in, as far as visits before this one go, and what the noise was heard under, so that before and
//! after can be compared.

use serde::{Deserialize, Serialize};

use super::answer::EngineWarmth;
use super::visit::DistanceUnit;

/// What brings the car in.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
#[serde(rename_all = "kebab-case")]
pub enum Occasion {
    /// It is here for what is noticed now.
    #[default]
    Complaint,
    /// It was repaired and is looked at again.
    AfterRepair,
    /// It was repaired and the noise is back.
    Comeback,
}

impl Occasion {
    /// Whether nothing was said beyond the complaint.
    pub fn is_complaint(&self) -> bool {
        *self == Self::Complaint
    }
}

/// What the noise is heard under. Whoever listens after a repair listens under the same.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct Conditions {
    /// How fast the car goes.
    #[serde(default)]
    pub speed: Option<Speed>,
    /// The gear, as written.
    #[serde(default)]
    pub gear: String,
    /// How warm the engine is.
    #[serde(default)]
    pub engine: Option<EngineWarmth>,
}

impl Conditions {
    /// Whether nothing was written down.
    pub fn is_blank(&self) -> bool {
        self.speed.is_none() && self.gear.is_empty() && self.engine.is_none()
    }
}

/// A speed as the car shows it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct Speed {
    /// As read.
    pub value: u32,
    /// Distance in an hour.
    pub unit: DistanceUnit,
}
