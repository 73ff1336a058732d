//! What somebody does at the bench, as a screen or a case file says it: the one type that requests, replayed cases
//! and practice share. `app::bench` makes of it what the ledger keeps, a [`BenchBody`](super::bench::BenchBody).

use std::collections::BTreeMap;

use serde::Deserialize;

use super::bench::{BearingPlace, BoreStage, Contact, HousingLook, RingTurn, SleeveWay};
use super::mark::Mark;
use super::photo_of::WorkPlace;

/// Something done at the bench. The first name of each says which it is: `{"ring": "free"}`.
#[derive(Debug, Clone, PartialEq, Deserialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
#[serde(untagged, deny_unknown_fields)]
pub enum BenchAct {
    /// Confirms a gate.
    Gate {
        /// Id in `data/bench/teardown.toml`.
        gate: String,
    },
    /// Looks at the torn-down housing.
    Look {
        /// What was seen.
        look: HousingLook,
        /// Wall that has to be left as typed, mm; goes before the look's own.
        #[serde(default)]
        wall: Option<String>,
    },
    /// Reads the bore.
    Bore {
        /// Before or after the work.
        #[serde(rename = "bore")]
        stage: BoreStage,
        /// Text of a bore file.
        file: String,
        /// Name of the workshop's instrument it was read with; its step and error go before the file's.
        #[serde(default)]
        instrument: Option<String>,
    },
    /// Takes the old sleeve out.
    SleeveOut {
        /// How it came out.
        #[serde(rename = "sleeve_out")]
        way: SleeveWay,
        /// Its outside diameter as typed, mm.
        #[serde(default)]
        outside: Option<String>,
    },
    /// Cuts a pass.
    Pass {
        /// Its number, from 1.
        #[serde(rename = "pass")]
        number: u32,
        /// Where the cutter touched.
        contact: Contact,
        /// Diameter after it as typed, mm.
        #[serde(default)]
        diameter: Option<String>,
    },
    /// Works a fit out.
    Fit {
        /// Values by name, as the command line takes them.
        #[serde(rename = "fit")]
        values: BTreeMap<String, String>,
    },
    /// Turns the ring by hand after assembly.
    Ring {
        /// By hand, after assembly.
        #[serde(rename = "ring")]
        turns: RingTurn,
        /// Which of two bearings; none where the housing holds one.
        #[serde(default)]
        bearing: Option<BearingPlace>,
        /// It was cold, not still warm from heating.
        #[serde(default)]
        cold: Option<bool>,
        /// Radial internal clearance left as typed, mm.
        #[serde(default)]
        clearance: Option<String>,
    },
    /// Reads the run-out of the shaft beside the bearing after assembly.
    RunOut {
        /// Total reading of a dial over one turn as typed, mm.
        run_out: String,
    },
    /// Notes something on fasteners and torques.
    Note {
        /// In the machinist's words.
        #[serde(rename = "note")]
        text: String,
    },
    /// Makes a finished upload a photo of the work.
    Photo {
        /// What it shows.
        of: WorkPlace,
        /// UUID of a finished upload.
        upload: String,
    },
    /// Draws marks over a photo of the work, in place of those that were there.
    Mark {
        /// What the photo shows.
        of: WorkPlace,
        /// SHA-256 of the photo, hex.
        photo: String,
        /// The marks; none takes them away.
        marks: Vec<Mark>,
    },
    /// Takes back the bench's latest entry.
    Undo {
        /// SHA-256, 64 hex digits; the latest of this device's.
        #[serde(rename = "undo")]
        entry: String,
    },
}

impl BenchAct {
    /// What photos taken along with it show, if it is something that photos are taken of.
    pub fn photo_place(&self) -> Option<WorkPlace> {
        match self {
            Self::Bore { stage: BoreStage::Found, .. } => Some(WorkPlace::Found),
            Self::Bore { stage: BoreStage::Behind, .. } | Self::SleeveOut { .. } => Some(WorkPlace::Behind),
            Self::Bore { stage: BoreStage::Finished, .. } => Some(WorkPlace::Finished),
            Self::Pass { number, .. } => Some(WorkPlace::Pass(*number)),
            Self::Ring { .. } => Some(WorkPlace::Ring),
            Self::Gate { .. }
            | Self::Look { .. }
            | Self::Fit { .. }
            | Self::RunOut { .. }
            | Self::Note { .. }
            | Self::Photo { .. }
            | Self::Mark { .. }
            | Self::Undo { .. } => None,
        }
    }
}
