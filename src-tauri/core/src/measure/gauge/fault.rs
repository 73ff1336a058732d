//! Why readings were not taken. Each has a code; its sentences are the texts `error-CODE` and `error-CODE-help`.

use crate::model::typed::TypedFault;

/// The field of a measurement that a fault is about.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Where {
    /// A reading, counted from 0.
    Reading(usize),
    /// Any other, by its name.
    Named(&'static str),
}

/// What was wrong with the readings, the gauge or its place.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum GaugeFault {
    /// The file is not of the form of a measurement.
    Unreadable,
    /// A number was not readable, in this field.
    Typed(TypedFault, Where),
    /// There are no readings.
    NoReadings,
    /// This reading is below zero.
    NegativeReading(usize),
    /// This reading is longer than any gauge's travel: the wrong unit.
    ReadingTooLarge(usize),
    /// Resolution or permissible error, whichever this is, not above zero.
    InstrumentRefused(&'static str),
    /// The gauge sits at the pivot, or too near it for its place to be known.
    GaugeAtPivot,
    /// The bearing sits at the pivot.
    BearingAtPivot,
    /// A place along the shaft or its error cannot be.
    PlaceRefused,
    /// A limit not above zero.
    LimitRefused,
    /// No clearance is tabled for this bore.
    BoreNotTabled,
    /// An earlier result that cannot be.
    EarlierRefused,
}

impl GaugeFault {
    /// Its stable code.
    pub fn code(self) -> &'static str {
        match self {
            Self::Unreadable => "gauge-file-unreadable",
            Self::Typed(TypedFault::Comma, _) => "decimal-comma",
            Self::Typed(TypedFault::OtherUnit, _) => "mixed-units",
            Self::Typed(TypedFault::NotANumber, _) => "not-a-number",
            Self::NoReadings => "no-readings",
            Self::NegativeReading(_) => "negative-reading",
            Self::ReadingTooLarge(_) => "reading-too-large",
            Self::InstrumentRefused(_) => "instrument-refused",
            Self::GaugeAtPivot => "gauge-at-pivot",
            Self::BearingAtPivot => "bearing-at-pivot",
            Self::PlaceRefused => "place-refused",
            Self::LimitRefused => "limit-refused",
            Self::BoreNotTabled => "bore-not-tabled",
            Self::EarlierRefused => "earlier-refused",
        }
    }
    /// The field that it is about: `reading-0` and on, or its name in the request.
    pub fn field(self) -> Option<String> {
        let named = match self {
            Self::Typed(_, Where::Reading(at)) | Self::NegativeReading(at) | Self::ReadingTooLarge(at) => {
                return Some(format!("reading-{at}"));
            }
            Self::Typed(_, Where::Named(field)) | Self::InstrumentRefused(field) => field,
            Self::NoReadings => "reading-0",
            Self::GaugeAtPivot => "gauge_mm",
            Self::BearingAtPivot => "bearing_mm",
            Self::BoreNotTabled => "bore_mm",
            Self::Unreadable | Self::PlaceRefused | Self::LimitRefused | Self::EarlierRefused => return None,
        };
        Some(named.to_owned())
    }
}
