//! Why a fit was not worked out. Each has a code; its sentences are the texts `error-CODE` and `error-CODE-help`.

use crate::model::typed::TypedFault;

/// What was wrong with sizes, materials or temperatures.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum FitFault {
    /// The input is not of the form of a fit, or an option is unknown.
    Unreadable,
    /// A number was not readable, in this field.
    Typed(TypedFault, &'static str),
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
    /// A bearing whose bore or width, whichever this is, cannot be.
    BearingRefused(&'static str),
    /// A measured size far from nominal, or an uncertainty that cannot be, in this field.
    MeasuredSizeRefused(&'static str),
    /// A material that is not in the table, in this field.
    UnknownMaterial(&'static str),
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
            Self::Typed(TypedFault::Comma, _) => "decimal-comma",
            Self::Typed(TypedFault::OtherUnit, _) => "mixed-units",
            Self::Typed(TypedFault::NotANumber, _) => "not-a-number",
            Self::OutsideMissing => "bearing-outside-missing",
            Self::SeatMissing => "seat-missing",
            Self::BoreNotMeasured => "bore-not-measured",
            Self::BoreReadInPart => "bore-size-in-part",
            Self::UnknownClass => "unknown-class",
            Self::DiameterNotTabled => "diameter-not-tabled",
            Self::BoreNotTabled => "bore-not-tabled",
            Self::BearingRefused(_) => "bearing-refused",
            Self::MeasuredSizeRefused(_) => "measured-size-refused",
            Self::UnknownMaterial(_) => "unknown-material",
            Self::NegativeWall => "negative-wall",
            Self::SleeveTooThin => "sleeve-too-thin",
            Self::SleeveIncomplete => "sleeve-incomplete",
            Self::UnknownGroup => "unknown-group",
            Self::TemperatureRefused => "temperature-refused",
        }
    }
    /// The field that it is about, by its name among the values of a fit.
    pub fn field(self) -> Option<&'static str> {
        match self {
            Self::Typed(_, field)
            | Self::BearingRefused(field)
            | Self::MeasuredSizeRefused(field)
            | Self::UnknownMaterial(field) => Some(field),
            Self::OutsideMissing | Self::DiameterNotTabled => Some("bearing-od"),
            Self::SeatMissing | Self::UnknownClass => Some("class"),
            Self::BoreNotMeasured | Self::BoreReadInPart => Some("bore"),
            Self::BoreNotTabled => Some("bearing-bore"),
            Self::NegativeWall => Some("housing-od"),
            Self::SleeveTooThin => Some("sleeve-od"),
            Self::SleeveIncomplete => Some("sleeve"),
            Self::UnknownGroup => Some("group"),
            Self::TemperatureRefused => Some("temp"),
            Self::Unreadable => None,
        }
    }
}
