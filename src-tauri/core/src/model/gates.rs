//! Gates: safety conditions that somebody confirms at the car before the steps behind them open.

use serde::{Deserialize, Serialize};

use super::time::Moment;

/// Safety checks before one part of the walk, and how they stand.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct GateSetStand {
    /// Id: `running`, `creep`, `lift` or `road`.
    pub id: String,
    /// All gates are confirmed: its steps are open.
    pub open: bool,
    /// Why its gates cannot be confirmed now.
    pub lock: Option<Lock>,
    /// What holds the car up, once that is said; its gates are then those of that kind.
    pub lift: Option<LiftKind>,
    /// The kinds of lift among which its gates differ; none where none do.
    pub lifts: Vec<LiftKind>,
    /// Its gates, in order.
    pub gates: Vec<GateStand>,
}

/// A safety condition to confirm.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct GateStand {
    /// The gate's id.
    pub id: String,
    /// Who confirmed it and when, if it stands.
    pub confirmed: Option<Confirmed>,
    /// What holds the car up that it is about; empty: whatever does.
    pub lifts: Vec<LiftKind>,
    /// Where the figures in its words come from, in the data's own words; empty where it names none.
    pub figures: String,
}

/// Of one gate: who and when. It holds for a time (`data/gates.toml`).
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct Confirmed {
    /// Name, as typed, of who recorded it.
    pub by: String,
    /// Date of its entry, by the clock of the device that wrote it.
    pub at: Moment,
}

/// Why something cannot be done now.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
#[serde(tag = "why", rename_all = "kebab-case")]
pub enum Lock {
    /// Gates of the step's own set are open.
    GatesOpen {
        /// Whose gates: the step's own.
        set: String,
    },
    /// Another part is entered and must be left first.
    OtherPart {
        /// The set that is entered.
        set: String,
    },
    /// Somebody else confirmed the gates of the entered part.
    GatesOfAnother {
        /// The set that is entered.
        set: String,
    },
    /// The gates of the entered part were confirmed too long ago.
    GatesTooOld {
        /// The set that is entered.
        set: String,
    },
    /// The car may not be driven: no road test.
    NotDriven,
    /// What was found by another layout is neither answered anew nor taken back: the engine is not run.
    SetApart,
    /// A DANGER of an earlier visit stands: the hands-on check comes before the engine.
    EarlierDanger,
    /// DANGER was found: the engine is not run again.
    DangerFound {
        /// The step that found it.
        step: String,
    },
}

/// What holds a car up while somebody is under it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
#[serde(rename_all = "kebab-case")]
pub enum LiftKind {
    /// Arms under the sills; the wheels hang free.
    TwoPost,
    /// A platform that the wheels stand on.
    Platform,
    /// The car stands over a pit.
    Pit,
    /// Drive-on ramps.
    Ramps,
    /// Axle stands.
    Stands,
}

impl LiftKind {
    /// Every kind, as they are offered.
    pub const ALL: [Self; 5] = [Self::TwoPost, Self::Platform, Self::Pit, Self::Ramps, Self::Stands];

    /// Id used in text keys and on disk.
    pub fn id(self) -> &'static str {
        match self {
            Self::TwoPost => "two-post",
            Self::Platform => "platform",
            Self::Pit => "pit",
            Self::Ramps => "ramps",
            Self::Stands => "stands",
        }
    }
}
