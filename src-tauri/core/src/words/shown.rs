//! How numbers, shares, lengths and dates read in a language. The signs and month names are texts like any other.
//!
//! The screens leave the same to the browser's `Intl`; `tests/published/formats.toml` holds both to one list.

use super::Words;
use crate::model::time::Moment;

impl Words {
    /// A number as printed: digits in groups of three, as many decimals as it has.
    pub fn number(&self, value: f64) -> String {
        let plain = format!("{}", value.abs());
        let (whole, decimals) = plain.split_once('.').unwrap_or((&plain, ""));
        let sign = if value < 0.0 { "-" } else { "" };
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

    /// A length in millimetres as printed: with thousandths of an inch beside it where the language's readers
    /// may measure in either (one inch is 25.4 mm exactly, BS 350 and ASTM SI10).
    pub fn length(&self, mm: f64) -> String {
        let thou = (mm / 0.0254 * 10.0).round() / 10.0;
        let args = [("mm", self.number(mm).into()), ("thou", self.number(thou).into())];
        let id = if self.text("length-shown") == "both" { "length-both" } else { "length-mm" };
        self.with(id, &args)
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
