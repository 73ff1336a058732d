//! A number as a person gave it: a plain number, or text that may carry a unit.
//!
//! Text is read strictly: what could mean two things is refused, never guessed.

use serde::{Deserialize, Serialize};

/// A number, or the text of one such as `0.08`, `0.08 mm` or `3 thou`.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
#[serde(untagged)]
pub enum Typed {
    /// A number in the unit that goes with the field.
    Number(f64),
    /// Text; a unit in it has to be the unit that goes with the field.
    Text(String),
}

/// Units of length that a gauge or a ruler shows.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
#[serde(rename_all = "kebab-case")]
pub enum LengthUnit {
    /// Millimetres.
    Mm,
    /// Thousandths of an inch, 0.0254 mm each, exactly (NIST SP 811, App. B.8).
    Thou,
}

/// Why text was not taken as a number.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum TypedFault {
    /// A comma: a decimal sign in one country, a group of thousands in another.
    Comma,
    /// A unit other than the one that goes with the field.
    OtherUnit,
    /// No number, or not a finite one.
    NotANumber,
}

impl LengthUnit {
    /// A length in this unit as millimetres.
    pub fn to_mm(self, value: f64) -> f64 {
        match self {
            Self::Mm => value,
            Self::Thou => value * 0.0254,
        }
    }

    /// Millimetres as a length in this unit.
    pub fn of_mm(self, mm: f64) -> f64 {
        match self {
            Self::Mm => mm,
            Self::Thou => mm / 0.0254,
        }
    }

    /// The sign written behind a number.
    pub fn sign(self) -> &'static str {
        match self {
            Self::Mm => "mm",
            Self::Thou => "thou",
        }
    }
}

/// Signs a person may write behind a length or a temperature.
const SIGNS: [&str; 11] = ["mm", "thou", "mil", "inch", "in", "\"", "um", "µm", "μm", "cm", "C"];

impl Typed {
    /// The number, where `unit` is the only sign that may stand behind it.
    ///
    /// # Errors
    /// What keeps it from being read.
    pub fn number(&self, unit: &str) -> Result<f64, TypedFault> {
        let value = match self {
            Self::Number(value) => *value,
            Self::Text(text) => read(text.trim(), unit)?,
        };
        if value.is_finite() { Ok(value) } else { Err(TypedFault::NotANumber) }
    }

    /// The length in millimetres.
    ///
    /// # Errors
    /// What keeps it from being read.
    pub fn length_mm(&self, unit: LengthUnit) -> Result<f64, TypedFault> {
        self.number(unit.sign()).map(|value| unit.to_mm(value))
    }
}

fn read(text: &str, unit: &str) -> Result<f64, TypedFault> {
    if text.contains(',') {
        return Err(TypedFault::Comma);
    }
    let digits = text.strip_suffix(unit).unwrap_or(text).trim_end();
    if let Ok(value) = digits.parse() {
        return Ok(value);
    }
    let number_before =
        |sign: &&str| text.strip_suffix(*sign).is_some_and(|rest| rest.trim_end().parse::<f64>().is_ok());
    Err(if SIGNS.iter().any(number_before) { TypedFault::OtherUnit } else { TypedFault::NotANumber })
}

#[cfg(test)]
mod tests {
    use super::{LengthUnit, Typed, TypedFault};

    #[track_caller]
    fn check(text: &str, unit: LengthUnit, expected: Result<f64, TypedFault>) {
        assert_eq!(Typed::Text(text.to_owned()).length_mm(unit), expected, "{text}");
    }

    #[test]
    fn a_length_is_read_with_or_without_its_own_unit() {
        check("0.08", LengthUnit::Mm, Ok(0.08));
        check(" 0.08 mm ", LengthUnit::Mm, Ok(0.08));
        check("1000", LengthUnit::Thou, Ok(25.4));
        check("1 thou", LengthUnit::Thou, Ok(0.0254));
        assert_eq!(Typed::Number(2.0).length_mm(LengthUnit::Thou), Ok(0.0508));
    }

    #[test]
    fn what_could_mean_two_things_is_refused() {
        check("0,08", LengthUnit::Mm, Err(TypedFault::Comma));
        check("3 thou", LengthUnit::Mm, Err(TypedFault::OtherUnit));
        check("0.003in", LengthUnit::Thou, Err(TypedFault::OtherUnit));
        check("8 µm", LengthUnit::Mm, Err(TypedFault::OtherUnit));
        check("", LengthUnit::Mm, Err(TypedFault::NotANumber));
        check("NaN", LengthUnit::Mm, Err(TypedFault::NotANumber));
        check("inf mm", LengthUnit::Mm, Err(TypedFault::NotANumber));
        check("a bit", LengthUnit::Mm, Err(TypedFault::NotANumber));
        assert_eq!(Typed::Number(f64::NAN).number("mm"), Err(TypedFault::NotANumber));
    }
}
