//! How numbers, shares, lengths and dates read in a language. The signs and month names are texts like any other.
//!
//! The screens leave the same to the browser's `Intl`; each language's `formats.toml` holds both to one list.

use super::Words;
use crate::model::time::Moment;
use crate::model::typed::LengthUnit;
use crate::model::visit::DistanceUnit;

/// One inch in millimetres, exactly (NIST SP 811, App. B.8).
const INCH_MM: f64 = 25.4;
/// From a tenth of an inch on a length reads in inches: a depth of 393.7 thousandths says nothing to anybody.
const IN_INCHES_FROM_MM: f64 = 2.54;

impl Words {
    /// A number as printed: digits in groups of three, as many decimals as it has.
    pub fn number(&self, value: f64) -> String {
        let plain = format!("{}", value.abs());
        let (whole, decimals) = plain.split_once('.').unwrap_or((&plain, ""));
        let sign = if value < 0.0 { self.text("number-minus") } else { String::new() };
        let grouped = self.grouped(whole);
        if decimals.is_empty() {
            format!("{sign}{grouped}")
        } else {
            format!("{sign}{grouped}{}{decimals}", self.text("number-point"))
        }
    }

    /// A number with at most so many decimals.
    pub fn rounded(&self, value: f64, decimals: u8) -> String {
        let scale = 10_f64.powi(i32::from(decimals));
        // Adding zero turns -0 into 0.
        self.number((value * scale).round() / scale + 0.0)
    }

    /// An angle in degrees from 0 to below 360 as it is shown, with at most so many decimals: readings may count on past a
    /// turn, or back, and rounding may end a turn.
    pub fn angle(&self, degrees: f64, decimals: u8) -> String {
        let scale = 10_f64.powi(i32::from(decimals));
        self.rounded(((degrees * scale).round() / scale).rem_euclid(360.0), decimals)
    }

    /// A length as a maker gives it, in the workshop's unit. Where the workshop chose none: in millimetres, with
    /// thousandths of an inch beside it where the language's readers may measure in either (one inch is 25.4 mm
    /// exactly, BS 350 and ASTM SI10).
    pub fn length(&self, mm: f64) -> String {
        if self.units.length.is_some() {
            return self.measured(mm);
        }
        let thou = (mm / 0.0254 * 10.0).round() / 10.0;
        let args = [("mm", self.number(mm).into()), ("thou", self.number(thou).into())];
        let id = if self.text("length-shown") == "both" { "length-both" } else { "length-mm" };
        self.with(id, &args)
    }

    /// A measured length, to a micrometre, or to a hundredth of a thousandth of an inch; from a
    /// tenth of an inch on to a ten-thousandth of an inch.
    pub fn measured(&self, mm: f64) -> String {
        match self.units.length {
            Some(LengthUnit::Thou) if mm.abs() >= IN_INCHES_FROM_MM => {
                self.with("length-inch", &[("inch", self.rounded(mm / INCH_MM, 4).into())])
            }
            _ => self.small(mm, 4),
        }
    }

    /// A movement felt through a shaft, to a micrometre or a hundredth of a thousandth of an inch: finer says
    /// nothing.
    pub fn movement(&self, mm: f64) -> String {
        self.small(mm, 3)
    }

    /// A form error or an uncertainty given in micrometres, to a tenth of one.
    pub fn fine(&self, um: f64) -> String {
        match self.units.length {
            Some(LengthUnit::Thou) => self.thou(um / 1000.0),
            Some(LengthUnit::Mm) | None => self.with("length-um", &[("um", self.rounded(um, 1).into())]),
        }
    }

    /// Several readings of a gauge in a row, the unit once.
    pub fn readings(&self, all_mm: &[f64]) -> String {
        let unit = self.units.length.unwrap_or(LengthUnit::Mm);
        let decimals = if unit == LengthUnit::Mm { 4 } else { 2 };
        let all: Vec<String> = all_mm.iter().map(|mm| self.rounded(unit.of_mm(*mm), decimals)).collect();
        let row = all.join(&self.text("readings-joint"));
        match unit {
            LengthUnit::Mm => self.with("length-mm", &[("mm", row.into())]),
            LengthUnit::Thou => self.with("length-thou", &[("thou", row.into())]),
        }
    }

    /// A distance driven, in the workshop's unit, with what was read beside it where that was another.
    pub fn distance(&self, value: u32, read_in: DistanceUnit) -> String {
        let shown = |value: f64, unit: DistanceUnit| {
            self.with(&format!("field-odometer-{}", unit.id()), &[("value", self.rounded(value, 0).into())])
        };
        let read = shown(f64::from(value), read_in);
        match self.units.distance.filter(|unit| *unit != read_in) {
            None => read,
            Some(unit) => {
                let converted = shown(read_in.convert(f64::from(value), unit), unit);
                self.with("odometer-converted", &[("converted", converted.into()), ("read", read.into())])
            }
        }
    }

    /// An amount of money: whole, or with two decimals.
    pub fn money(&self, value: f64) -> String {
        let cents = (value * 100.0).round();
        if cents % 100.0 == 0.0 {
            return self.number(cents / 100.0);
        }
        let whole = self.number((cents / 100.0).trunc());
        format!("{whole}{}{:02.0}", self.text("number-point"), cents % 100.0)
    }

    fn small(&self, mm: f64, decimals: u8) -> String {
        match self.units.length {
            Some(LengthUnit::Thou) => self.thou(mm),
            Some(LengthUnit::Mm) | None => {
                self.with("length-mm", &[("mm", self.rounded(mm, decimals).into())])
            }
        }
    }

    fn thou(&self, mm: f64) -> String {
        self.with("length-thou", &[("thou", self.rounded(LengthUnit::Thou.of_mm(mm), 2).into())])
    }

    /// A probability as a whole percentage. It never reads as certain, either way.
    pub fn percent(&self, probability: f64) -> String {
        let percent = (probability * 100.0).round();
        if percent < 1.0 {
            self.with("percent-below", &[("number", "1".into())])
        } else if percent > 99.0 {
            self.with("percent-above", &[("number", "99".into())])
        } else {
            self.with("percent", &[("number", self.number(percent).into())])
        }
    }

    /// The calendar day in UTC, in words.
    pub fn date(&self, at: Moment) -> String {
        let day = at.day();
        let mut parts = day.rsplitn(3, '-').map(|part| part.trim_start_matches('0'));
        let (day, month, year) = (parts.next(), parts.next(), parts.next());
        let month = self.text(&format!("month-{}", month.unwrap_or_default()));
        self.with(
            "date-day",
            &[
                ("day", day.unwrap_or_default().into()),
                ("month", month.into()),
                ("year", year.unwrap_or_default().into()),
            ],
        )
    }

    /// Day and minute in figures, marked as UTC.
    pub fn time(&self, at: Moment) -> String {
        let minute = at.minute();
        let (day, clock) = minute.split_once(' ').unwrap_or((&minute, ""));
        let mut parts = day.rsplitn(3, '-');
        let (day, month, year) = (parts.next(), parts.next(), parts.next());
        self.with(
            "time-utc",
            &[
                ("day", day.unwrap_or_default().into()),
                ("month", month.unwrap_or_default().into()),
                ("year", year.unwrap_or_default().into()),
                ("clock", clock.into()),
            ],
        )
    }

    /// Several things one after the other.
    pub fn list(&self, items: &[String]) -> String {
        items.join(&self.text("list-joint"))
    }

    /// Digits in groups of three, from as many digits on as the language wants before it groups any.
    fn grouped(&self, digits: &str) -> String {
        if digits.len() < self.text("number-group-from").parse().unwrap_or(4) {
            return digits.to_owned();
        }
        let mark = self.text("number-group");
        let mut out = String::new();
        for (at, digit) in digits.chars().enumerate() {
            if at > 0 && (digits.len() - at).is_multiple_of(3) {
                out.push_str(&mark);
            }
            out.push(digit);
        }
        out
    }
}
