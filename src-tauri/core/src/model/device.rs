//! Devices that write: what was decided here about each, and who wrote a visit.

use std::collections::BTreeMap;

use serde::Serialize;

use super::time::Moment;

/// How far a device is trusted here.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
#[serde(rename_all = "kebab-case")]
pub enum Trust {
    /// The device at hand.
    ThisDevice,
    /// Two people compared its code.
    Confirmed,
    /// Its signatures hold; nobody has said whose it is.
    NotConfirmed,
    /// Lost or replaced: nothing that it writes comes in any more.
    Retired,
    /// Written before there were signatures: nothing proves by whom.
    BeforeSignatures,
}

impl Trust {
    /// The id used in text keys.
    pub fn id(self) -> &'static str {
        match self {
            Self::ThisDevice => "this-device",
            Self::Confirmed => "confirmed",
            Self::NotConfirmed => "not-confirmed",
            Self::Retired => "retired",
            Self::BeforeSignatures => "before-signatures",
        }
    }

    /// Whether a reader has to be told that nobody here said whose a device of this standing is; `confirmed`: somebody
    /// did, once.
    pub fn is_doubtful(self, confirmed: bool) -> bool {
        match self {
            Self::NotConfirmed => true,
            Self::Retired => !confirmed,
            Self::ThisDevice | Self::Confirmed | Self::BeforeSignatures => false,
        }
    }
}

/// A device as it is known here.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct DeviceStand {
    /// Its id: its public key.
    pub device: String,
    /// The short code of its key; empty for an id from before signatures.
    pub code: String,
    /// The name that it was given here; may be empty.
    pub name: String,
    /// How far it is trusted.
    pub trust: Trust,
    /// Its code was compared, and nobody started over with it since: what it wrote stays its own after it is retired.
    pub confirmed: bool,
    /// When it was first met; none for this device.
    pub met: Option<Moment>,
}

impl DeviceStand {
    /// Whether a reader has to be told that nobody here said whose this device is.
    pub fn is_doubtful(&self) -> bool {
        self.trust.is_doubtful(self.confirmed)
    }
}

/// A device that wrote in a visit.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct WriterStand {
    /// As it is shown: name, code, trust.
    pub device: DeviceStand,
    /// Entries that it wrote there.
    #[cfg_attr(feature = "bindings", ts(type = "number"))]
    pub entries: u64,
}

/// A decision about a device, as it was written down.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct DeviceDecision {
    /// Its public key, 64 hex digits.
    pub device: String,
    /// By this device's clock.
    pub at: Moment,
    /// `confirmed`, `named`, `retired` or `reset`.
    pub what: String,
    /// The name that was given; empty for the others.
    pub name: String,
    /// Who decided it.
    pub by: String,
}

/// What was decided about a device, as far as it still counts.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Known {
    /// Name given here.
    pub name: String,
    /// How far it is trusted.
    pub trust: Trust,
    /// Its code was compared since it was met or started over with.
    pub confirmed: bool,
    /// When it was first met.
    pub met: Moment,
}

/// Every device that is known here, by id.
pub type Devices = BTreeMap<String, Known>;
