//! A number as a person gave it: a plain number, or text that may carry a unit.
//!
//! Text is read strictly: what could mean two things is refused, never guessed. A comma is the decimal sign of most
//! languages and the only one on their phones' pads for numbers; it is read as one unless it could part thousands.

use std::borrow::Cow;
use std::ops::RangeInclusive;

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
    /// A comma that could part thousands, `1,250`, or one too many; of a long distance a point too.
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

    /// As [`Self::number`], of a distance long enough for thousands: a point that could part them, `1.250`, is refused as
    /// a comma is.
    ///
    /// # Errors
    /// What keeps it from being read.
    pub fn distance(&self, unit: &str) -> Result<f64, TypedFault> {
        match self {
            Self::Text(text) if parts_thousands(&without(text.trim(), unit).replacen('.', ",", 1)) => {
                Err(TypedFault::Comma)
            }
            typed => typed.number(unit),
        }
    }

    /// As [`Self::number`], of something that lies in `range`: a comma is decimal where thousands would lie beyond it.
    /// No bearing is 72013 mm wide, so that `72,013` can be read one way alone.
    ///
    /// # Errors
    /// What keeps it from being read.
    pub fn number_within(&self, unit: &str, range: &RangeInclusive<f64>) -> Result<f64, TypedFault> {
        match (self.number(unit), self) {
            (Err(TypedFault::Comma), Self::Text(text)) => {
                one_way(without(text.trim(), unit), |thousands| range.contains(&thousands))
            }
            (read, _) => read,
        }
    }

    /// The length in millimetres.
    ///
    /// # Errors
    /// What keeps it from being read.
    pub fn length_mm(&self, unit: LengthUnit) -> Result<f64, TypedFault> {
        self.number(unit.sign()).map(|value| unit.to_mm(value))
    }
}

/// A number's text with a decimal point, where its comma can be nothing but a decimal sign.
///
/// # Errors
/// [`TypedFault::Comma`] where it could part thousands, or stands beside another comma or a point.
pub fn with_point(digits: &str) -> Result<Cow<'_, str>, TypedFault> {
    if !digits.contains(',') {
        return Ok(Cow::Borrowed(digits));
    }
    let one_sign = digits.matches([',', '.']).count() == 1;
    if one_sign && !parts_thousands(digits) {
        Ok(Cow::Owned(digits.replacen(',', ".", 1)))
    } else {
        Err(TypedFault::Comma)
    }
}

/// A number whose comma parts thousands or is decimal, where `can_be` says whether so many thousands can be: the decimal
/// reading where they cannot.
///
/// # Errors
/// [`TypedFault::Comma`] where it still reads two ways.
pub fn one_way(digits: &str, can_be: impl Fn(f64) -> bool) -> Result<f64, TypedFault> {
    let thousands = digits.replace(',', "").parse();
    let cannot = parts_thousands(digits) && thousands.is_ok_and(|value| !can_be(value));
    let decimal = digits.replacen(',', ".", 1).parse().ok();
    decimal.filter(|_| cannot).ok_or(TypedFault::Comma)
}

/// Both readings of a text that is a number with a sign behind it or none.
pub fn both_ways_of(text: &str) -> Option<[String; 2]> {
    let text = text.trim();
    both_ways(text.trim_end_matches(|sign: char| !sign.is_ascii_digit()), text)
}

/// Both readings of a text whose number is `digits`, where its comma is decimal or parts thousands.
pub fn both_ways(digits: &str, text: &str) -> Option<[String; 2]> {
    let read = |with: &str| text.replacen(digits, &digits.replacen(',', with, 1), 1);
    parts_thousands(digits).then(|| [read("."), read("")])
}

/// One to three figures, not 0 first, a comma and three figures.
fn parts_thousands(digits: &str) -> bool {
    let plain = digits.strip_prefix(['-', '+']).unwrap_or(digits);
    let figures = |part: &str| part.bytes().all(|byte| byte.is_ascii_digit());
    plain.split_once(',').is_some_and(|(whole, rest)| {
        let leads = (1..=3).contains(&whole.len()) && !whole.starts_with('0');
        leads && figures(whole) && rest.len() == 3 && figures(rest)
    })
}

fn without<'t>(text: &'t str, unit: &str) -> &'t str {
    text.strip_suffix(unit).unwrap_or(text).trim_end()
}

fn read(text: &str, unit: &str) -> Result<f64, TypedFault> {
    if let Ok(value) = with_point(without(text, unit))?.parse() {
        return Ok(value);
    }
    let number_before = |sign: &&str| text.strip_suffix(*sign).is_some_and(|rest| is_number(rest.trim_end()));
    Err(if SIGNS.iter().any(number_before) { TypedFault::OtherUnit } else { TypedFault::NotANumber })
}

fn is_number(digits: &str) -> bool {
    with_point(digits).map_or_else(|_| parts_thousands(digits), |plain| plain.parse::<f64>().is_ok())
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
    fn a_comma_is_decimal_where_it_can_be_nothing_else() {
        check("0,08", LengthUnit::Mm, Ok(0.08));
        check("0,012 mm", LengthUnit::Mm, Ok(0.012));
        check("-80,5", LengthUnit::Mm, Ok(-80.5));
        check("1,25", LengthUnit::Mm, Ok(1.25));
        check("1,2500", LengthUnit::Mm, Ok(1.25));
        check("1000,5", LengthUnit::Mm, Ok(1000.5));
        check("0,003in", LengthUnit::Thou, Err(TypedFault::OtherUnit));
        for two_ways in ["1,250", "-1,250", "72,013 mm", "1.234,5", "1,234,5", "1,234,567"] {
            check(two_ways, LengthUnit::Mm, Err(TypedFault::Comma));
        }
    }

    #[test]
    fn thousands_that_cannot_be_leave_one_way_to_read_a_comma() {
        let within = |text: &str| Typed::Text(text.to_owned()).number_within("mm", &(1.0..=1_000.0));
        assert_eq!(within("72,013"), Ok(72.013));
        assert_eq!(within("72,013 mm"), Ok(72.013));
        assert_eq!(within("72.013"), Ok(72.013));
        assert_eq!(within("1,234,567"), Err(TypedFault::Comma));
        assert_eq!(within("a,bcd"), Err(TypedFault::NotANumber));
        let lever = Typed::Text("1,250".to_owned()).number_within("mm", &(0.0..=10_000.0));
        assert_eq!(lever, Err(TypedFault::Comma), "a shaft may be 1250 mm long");
    }

    #[test]
    fn a_point_that_could_part_thousands_is_refused_of_a_distance() {
        let distance = |text: &str| Typed::Text(text.to_owned()).distance("mm");
        for two_ways in ["1.250", "-1.250", "1.250 mm", "1,250"] {
            assert_eq!(distance(two_ways), Err(TypedFault::Comma), "{two_ways}");
        }
        for (text, mm) in
            [("1.25", 1.25), ("1.2500", 1.25), ("0.250", 0.25), ("1250", 1250.0), ("80,5", 80.5)]
        {
            assert_eq!(distance(text), Ok(mm), "{text}");
        }
        assert_eq!(Typed::Number(1.25).distance("mm"), Ok(1.25));
    }

    #[test]
    fn what_could_mean_two_things_is_refused() {
        check("3 thou", LengthUnit::Mm, Err(TypedFault::OtherUnit));
        check("0.003in", LengthUnit::Thou, Err(TypedFault::OtherUnit));
        check("8 µm", LengthUnit::Mm, Err(TypedFault::OtherUnit));
        check("2,835in", LengthUnit::Mm, Err(TypedFault::OtherUnit));
        check("", LengthUnit::Mm, Err(TypedFault::NotANumber));
        check("NaN", LengthUnit::Mm, Err(TypedFault::NotANumber));
        check("inf mm", LengthUnit::Mm, Err(TypedFault::NotANumber));
        check("a bit", LengthUnit::Mm, Err(TypedFault::NotANumber));
        assert_eq!(Typed::Number(f64::NAN).number("mm"), Err(TypedFault::NotANumber));
    }
}
