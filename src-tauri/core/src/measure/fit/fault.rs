//! Why a fit was not worked out. Each has a code; its sentences are the texts `error-CODE` and `error-CODE-help`.

use crate::model::typed::TypedFault;

/// What was wrong with sizes, materials or temperatures.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum FitFault {
    /// The input is not of the form of a fit, or an option is unknown.
    Unreadable,
    /// A number was not readable.
    Typed(TypedFault),
    /// No outside diameter of the bearing.
    OutsideMissing,
    /// Neither class nor measured bore of the seat.
    SeatMissing,
    /// The bore as measured is asked for, and none was measured.
    BoreNotMeasured,
    /// No such hole class in the table.
    UnknownClass,
    /// The bore as measured is asked for, and only a part of it was read.
    BoreReadInPart,
    /// The table has no row for this diameter.
    DiameterNotTabled,
    /// No clearance is tabled for this bore.
    BoreNotTabled,
    /// A bearing whose bore or width cannot be.
    BearingRefused,
    /// A measured size far from nominal, or an uncertainty that cannot be.
    MeasuredSizeRefused,
    /// A material that is not in the table.
    UnknownMaterial,
    /// The housing would have no wall.
    NegativeWall,
    /// The sleeve would be thinner than one can be.
    SleeveTooThin,
    /// A sleeve needs material, outside diameter and the housing's bore, all three.
    SleeveIncomplete,
    /// No such clearance group.
    UnknownGroup,
    /// Temperatures that cannot be, or the higher first.
    TemperatureRefused,
}

impl FitFault {
    /// Its stable code.
    pub fn code(self) -> &'static str {
        match self {
            Self::Unreadable => "fit-unreadable",
            Self::Typed(TypedFault::Comma) => "decimal-comma",
            Self::Typed(TypedFault::OtherUnit) => "mixed-units",
            Self::Typed(TypedFault::NotANumber) => "not-a-number",
            Self::OutsideMissing => "bearing-outside-missing",
            Self::SeatMissing => "seat-missing",
            Self::BoreNotMeasured => "bore-not-measured",
            Self::BoreReadInPart => "bore-size-in-part",
            Self::UnknownClass => "unknown-class",
            Self::DiameterNotTabled => "diameter-not-tabled",
            Self::BoreNotTabled => "bore-not-tabled",
            Self::BearingRefused => "bearing-refused",
            Self::MeasuredSizeRefused => "measured-size-refused",
            Self::UnknownMaterial => "unknown-material",
            Self::NegativeWall => "negative-wall",
            Self::SleeveTooThin => "sleeve-too-thin",
            Self::SleeveIncomplete => "sleeve-incomplete",
            Self::UnknownGroup => "unknown-group",
            Self::TemperatureRefused => "temperature-refused",
        }
    }
}

impl From<TypedFault> for FitFault {
    fn from(fault: TypedFault) -> Self {
        Self::Typed(fault)
    }
}
