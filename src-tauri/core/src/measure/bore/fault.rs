//! Why a bore's readings, or what was asked of them, were refused.

/// A refusal, with the line of the file where there is one.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
#[error("{}", self.why.code())]
pub struct BoreFault {
    /// Code and text.
    pub why: BoreRefusal,
    /// Line of the file, counted from 1.
    pub line: Option<usize>,
    /// The two ways in which what stands there can be read, where that is why.
    pub readings: Option<[String; 2]>,
}

impl BoreFault {
    /// What stands at a line can be read in two ways.
    pub fn two_readings(why: BoreRefusal, line: usize, readings: [String; 2]) -> Self {
        Self { why, line: Some(line), readings: Some(readings) }
    }

    /// At this line of the file, from 1.
    pub fn at(why: BoreRefusal, line: usize) -> Self {
        Self { why, line: Some(line), readings: None }
    }
}

impl From<BoreRefusal> for BoreFault {
    fn from(why: BoreRefusal) -> Self {
        Self { why, line: None, readings: None }
    }
}

/// What was wrong.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[expect(missing_docs, reason = "each variant is its own code, explained by the text error-CODE")]
pub enum BoreRefusal {
    Empty,
    NoHeader,
    HeaderWord,
    HeaderMissing,
    KindUnknown,
    UnitUnknown,
    Columns,
    CellCount,
    NotANumber,
    DecimalComma,
    CommaTwoWays,
    MixedUnits,
    Instrument,
    SizeImplausible,
    TooFewAngles,
    AngleRepeated,
    TooManyReadings,
    TooManyDepths,
    NotRound,
    WallNegative,
    WallMissing,
    PassDepth,
    TooManyPasses,
    NoDatum,
    CannotSeeOval,
    ReadInPart,
    TwoReadings,
}

impl BoreRefusal {
    /// Every refusal, for the test that each has its texts.
    pub const ALL: [Self; 27] = [
        Self::Empty,
        Self::NoHeader,
        Self::HeaderWord,
        Self::HeaderMissing,
        Self::KindUnknown,
        Self::UnitUnknown,
        Self::Columns,
        Self::CellCount,
        Self::NotANumber,
        Self::DecimalComma,
        Self::CommaTwoWays,
        Self::MixedUnits,
        Self::Instrument,
        Self::SizeImplausible,
        Self::TooFewAngles,
        Self::AngleRepeated,
        Self::TooManyReadings,
        Self::TooManyDepths,
        Self::NotRound,
        Self::WallNegative,
        Self::WallMissing,
        Self::PassDepth,
        Self::TooManyPasses,
        Self::NoDatum,
        Self::CannotSeeOval,
        Self::ReadInPart,
        Self::TwoReadings,
    ];

    /// Stable code; its sentences are the texts `error-CODE` and `error-CODE-help`.
    pub fn code(self) -> &'static str {
        match self {
            Self::Empty => "bore-empty",
            Self::NoHeader => "bore-no-header",
            Self::HeaderWord => "bore-header-word",
            Self::HeaderMissing => "bore-header-missing",
            Self::KindUnknown => "bore-kind-unknown",
            Self::UnitUnknown => "bore-unit-unknown",
            Self::Columns => "bore-columns",
            Self::CellCount => "bore-cell-count",
            Self::NotANumber => "bore-not-a-number",
            Self::DecimalComma => "bore-decimal-comma",
            Self::CommaTwoWays => "decimal-comma",
            Self::MixedUnits => "bore-mixed-units",
            Self::Instrument => "bore-instrument",
            Self::SizeImplausible => "bore-size-implausible",
            Self::TooFewAngles => "bore-too-few-angles",
            Self::AngleRepeated => "bore-angle-repeated",
            Self::TooManyReadings => "bore-too-many-readings",
            Self::TooManyDepths => "bore-too-many-depths",
            Self::NotRound => "bore-not-round",
            Self::WallNegative => "bore-wall-negative",
            Self::WallMissing => "bore-wall-missing",
            Self::PassDepth => "bore-pass-depth",
            Self::TooManyPasses => "bore-too-many-passes",
            Self::NoDatum => "bore-no-datum",
            Self::CannotSeeOval => "bore-cannot-see-oval",
            Self::ReadInPart => "bore-read-in-part",
            Self::TwoReadings => "bore-two-readings",
        }
    }
}
