//! Units of length and numbers as they are written.
//!
//! Source of the factors: NIST SP 811, appendix B.8: 1 inch is 25.4 mm exactly.

use std::ops::RangeInclusive;

use super::fault::{BoreFault, BoreRefusal};
use crate::model::typed::{both_ways, one_way, with_point};

/// A unit a workshop writes lengths in.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Unit {
    /// Written `mm`; what is kept.
    Millimetre,
    /// Written `um`.
    Micrometre,
    /// Written `in`; 25.4 mm exactly.
    Inch,
    /// Thousandths of an inch.
    Thou,
}

/// Longest first, so that a suffix is not taken for a shorter one.
const NAMES: [(&str, Unit); 4] =
    [("thou", Unit::Thou), ("mm", Unit::Millimetre), ("um", Unit::Micrometre), ("in", Unit::Inch)];

impl Unit {
    /// The unit with this name: `mm`, `um`, `in` or `thou`.
    pub fn named(name: &str) -> Option<Self> {
        NAMES.iter().find(|(known, _)| *known == name).map(|(_, unit)| *unit)
    }

    /// A value of this unit in mm. The last operation is a division by a whole number where one is needed,
    /// so that 1 thou is the double nearest to 0.0254.
    pub fn to_mm(self, value: f64) -> f64 {
        match self {
            Self::Millimetre => value,
            Self::Micrometre => value / 1000.0,
            Self::Inch => value * 25.4,
            Self::Thou => value * 25.4 / 1000.0,
        }
    }
}

/// A plain number with a decimal point.
///
/// # Errors
/// [`BoreRefusal::DecimalComma`] for `72,01`, [`BoreRefusal::MixedUnits`] for a number with a unit behind it,
/// else [`BoreRefusal::NotANumber`]; NaN and infinity are none.
pub fn number(text: &str) -> Result<f64, BoreRefusal> {
    let text = text.trim();
    match text.parse::<f64>() {
        Ok(value) if value.is_finite() => Ok(value),
        Ok(_) => Err(BoreRefusal::NotANumber),
        Err(_) if is_number(&text.replacen(',', ".", 1)) => Err(BoreRefusal::DecimalComma),
        Err(_) if split(text).is_some() => Err(BoreRefusal::MixedUnits),
        Err(_) => Err(BoreRefusal::NotANumber),
    }
}

/// A length: a number with a unit behind it, or in `unit` where it has none. In mm.
///
/// # Errors
/// As [`number`], without the mixed units.
pub fn length_mm(text: &str, unit: Unit) -> Result<f64, BoreRefusal> {
    match split(text.trim()) {
        Some((value, own)) => number(value).map(|value| own.to_mm(value)),
        None => number(text).map(|value| unit.to_mm(value)),
    }
}

/// A length as a person types it in a field or an option, outside a file's cells: as [`length_mm`] in mm, and a comma is
/// its decimal sign unless it could part thousands that lie within `range`. Of micrometres and thousandths of an inch there
/// are thousands wherever there are any: no range tells what `12,500um` is.
///
/// # Errors
/// As [`length_mm`]; with both readings where there are two.
pub fn typed_mm(text: &str, range: &RangeInclusive<f64>) -> Result<f64, BoreFault> {
    let text = text.trim();
    let (digits, unit) = split(text).unwrap_or((text, Unit::Millimetre));
    let is_small = matches!(unit, Unit::Micrometre | Unit::Thou);
    match with_point(digits) {
        Ok(plain) => Ok(number(&plain).map(|value| unit.to_mm(value))?),
        Err(_) => one_way(digits, |thousands| is_small || range.contains(&unit.to_mm(thousands)))
            .map(|value| unit.to_mm(value))
            .map_err(|_| BoreFault { readings: both_ways(digits, text), ..BoreRefusal::CommaTwoWays.into() }),
    }
}

/// Whether a cell holds a finite number.
pub fn is_number(text: &str) -> bool {
    text.trim().parse::<f64>().is_ok_and(f64::is_finite)
}

/// What stands before a unit, where one stands behind: `1,000` of `1,000um`. Whether it is a number is not looked at.
pub fn without_unit(text: &str) -> &str {
    let text = text.trim();
    NAMES.iter().find_map(|(name, _)| text.strip_suffix(name)).map_or(text, str::trim_end)
}

fn split(text: &str) -> Option<(&str, Unit)> {
    let (name, unit) = NAMES.iter().find(|(name, _)| text.ends_with(name))?;
    let value = text.strip_suffix(name)?.trim();
    is_number(&value.replacen(',', ".", 1)).then_some((value, *unit))
}

#[cfg(test)]
mod tests {
    use super::{BoreRefusal, Unit, length_mm, number, typed_mm};

    #[track_caller]
    fn check(text: &str, unit: Unit, expected: Result<f64, BoreRefusal>) {
        assert_eq!(length_mm(text, unit), expected, "{text}");
    }

    #[test]
    fn lengths_are_exact_in_mm() {
        check("1", Unit::Inch, Ok(25.4));
        check("1", Unit::Thou, Ok(0.0254));
        check("0.001in", Unit::Millimetre, Ok(0.0254));
        check("0.5", Unit::Thou, Ok(0.0127));
        check("25.4 um", Unit::Inch, Ok(0.0254));
        check("72.013", Unit::Millimetre, Ok(72.013));
        check("-3", Unit::Micrometre, Ok(-0.003));
    }

    #[test]
    fn a_typed_length_takes_a_comma_that_reads_one_way() {
        let seat = |text: &str| typed_mm(text, &(1.0..=1_000.0)).map_err(|fault| fault.why);
        assert_eq!(seat("72,1"), Ok(72.1));
        assert_eq!(seat("72,013"), Ok(72.013), "no seat is 72013 mm wide");
        assert_eq!(seat("2,835 in"), Ok(2.835 * 25.4));
        assert_eq!(seat("72,013um"), Err(BoreRefusal::CommaTwoWays), "72013 um are a seat");
        assert_eq!(seat("1,000"), Err(BoreRefusal::CommaTwoWays), "1000 mm are the widest seat");
        for (text, range, both) in [
            ("1,250", -1e6..=1e6, ["1.250", "1250"]),
            ("12,500um", 0.0..=10.0, ["12.500um", "12500um"]),
            ("-12,500 um", 0.0..=10.0, ["-12.500 um", "-12500 um"]),
            ("100,500um", 0.1..=100.0, ["100.500um", "100500um"]),
            ("1,250thou", 0.0..=10.0, ["1.250thou", "1250thou"]),
        ] {
            let fault = typed_mm(text, &range).expect_err(text);
            assert_eq!(fault.why, BoreRefusal::CommaTwoWays, "{text}");
            assert_eq!(fault.readings, Some(both.map(str::to_owned)), "{text}");
        }
        assert_eq!(typed_mm("1,234,5", &(0.0..=10.0)).expect_err("no number").readings, None);
        assert_eq!(seat("1.234,5"), Err(BoreRefusal::CommaTwoWays));
        assert_eq!(seat("NaN"), Err(BoreRefusal::NotANumber));
        assert_eq!(seat("4,5 cm"), Err(BoreRefusal::NotANumber));
    }

    #[test]
    fn what_is_no_length_is_refused() {
        check("0,001in", Unit::Millimetre, Err(BoreRefusal::DecimalComma));
        check("72,013", Unit::Millimetre, Err(BoreRefusal::DecimalComma));
        check("NaN", Unit::Millimetre, Err(BoreRefusal::NotANumber));
        check("inf", Unit::Millimetre, Err(BoreRefusal::NotANumber));
        check("", Unit::Millimetre, Err(BoreRefusal::NotANumber));
        check("3 cm", Unit::Millimetre, Err(BoreRefusal::NotANumber));
        assert_eq!(number("72.013mm"), Err(BoreRefusal::MixedUnits));
        assert_eq!(number("2.835 in"), Err(BoreRefusal::MixedUnits));
    }
}
