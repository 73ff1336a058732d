//! Why readings were not taken. Each has a code; its sentences are the texts `error-CODE` and `error-CODE-help`.

use crate::model::typed::TypedFault;

/// What was wrong with the readings, the gauge or its place.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum GaugeFault {
    /// The file is not of the form of a measurement.
    Unreadable,
    /// A number was not readable.
    Typed(TypedFault),
    /// There are no readings.
    NoReadings,
    /// A reading below zero.
    NegativeReading,
    /// A reading longer than any gauge's travel: the wrong unit.
    ReadingTooLarge,
    /// Resolution or permissible error not above zero.
    InstrumentRefused,
    /// The gauge's permissible error is as large as the limit.
    GaugeTooCoarse,
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
            Self::Typed(TypedFault::Comma) => "decimal-comma",
            Self::Typed(TypedFault::OtherUnit) => "mixed-units",
            Self::Typed(TypedFault::NotANumber) => "not-a-number",
            Self::NoReadings => "no-readings",
            Self::NegativeReading => "negative-reading",
            Self::ReadingTooLarge => "reading-too-large",
            Self::InstrumentRefused => "instrument-refused",
            Self::GaugeTooCoarse => "gauge-too-coarse",
            Self::GaugeAtPivot => "gauge-at-pivot",
            Self::BearingAtPivot => "bearing-at-pivot",
            Self::PlaceRefused => "place-refused",
            Self::LimitRefused => "limit-refused",
            Self::BoreNotTabled => "bore-not-tabled",
            Self::EarlierRefused => "earlier-refused",
        }
    }
}

impl From<TypedFault> for GaugeFault {
    fn from(fault: TypedFault) -> Self {
        Self::Typed(fault)
    }
}
