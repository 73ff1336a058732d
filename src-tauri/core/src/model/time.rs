//! Time behind one door: the only file that names `chrono`.
//!
//! A [`Moment`] is a UTC instant in whole milliseconds. Rules never ask for one; it is an argument.

use std::time::SystemTime;

use chrono::{DateTime, SecondsFormat, Utc};
use serde::{Deserialize, Serialize};

const DAY_MS: i64 = 86_400_000;
/// The last moment of the year 9999: later ones have no date of four digits.
const LATEST: Moment = Moment(253_402_300_799_999);
/// How far ahead of the receiver's clock a line from outside may be dated, days. Clocks in a workshop are wrong by a
/// time zone or a date line, half a day each way at most, between sender and receiver twice that; a line dated later
/// would stand before everything that is written until then.
const MOST_DAYS_AHEAD: i64 = 2;
/// 2026-01-01, when this program was being written: a clock that stands before it was never set.
const FIRST_BELIEVED: Moment = Moment(1_767_225_600_000);
/// 2076-01-01: a visit that is dated later would be refused by every other device for half a century.
const LAST_BELIEVED: Moment = Moment(3_345_062_400_000);

/// A UTC instant, whole milliseconds since 1970-01-01.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
#[serde(transparent)]
pub struct Moment(#[cfg_attr(feature = "bindings", ts(type = "number"))] pub i64);

impl Moment {
    /// What the device's clock says; the first moment there is where it stands before 1970. Only shells and tests
    /// call this.
    pub fn now() -> Self {
        let since = SystemTime::now().duration_since(SystemTime::UNIX_EPOCH).unwrap_or_default();
        Self(i64::try_from(since.as_millis()).unwrap_or(i64::MAX))
    }

    /// RFC 3339 in UTC with milliseconds, such as `2026-11-25T09:30:00.000Z`.
    pub fn rfc3339(self) -> String {
        self.date_time().to_rfc3339_opts(SecondsFormat::Millis, true)
    }

    /// The calendar day in UTC, `2026-11-25`.
    pub fn day(self) -> String {
        self.date_time().format("%Y-%m-%d").to_string()
    }

    /// Day and minute in UTC, `2026-11-25 09:30`.
    pub fn minute(self) -> String {
        self.date_time().format("%Y-%m-%d %H:%M").to_string()
    }

    /// Reads what [`Moment::rfc3339`] writes, or any other RFC 3339 instant.
    pub fn parse(text: &str) -> Option<Self> {
        DateTime::parse_from_rfc3339(text).ok().map(|at| Self(at.timestamp_millis()))
    }

    /// The same time of day, this many days of 24 hours before.
    pub fn days_before(self, days: u16) -> Self {
        Self(self.0.saturating_sub(i64::from(days) * DAY_MS))
    }

    /// This moment, or the nearest that a ledger can date a line to: from 1970 to the end of the year 9999.
    #[must_use]
    pub fn datable(self) -> Self {
        self.clamp(Self(0), LATEST)
    }

    /// The latest date that a line from outside may bear when the receiver's clock says this.
    #[must_use]
    pub fn latest_believed(self) -> Self {
        Self(self.0.saturating_add(MOST_DAYS_AHEAD * DAY_MS))
    }

    /// Whether a device's clock can be right that says this.
    #[must_use]
    pub fn is_believable(self) -> bool {
        (FIRST_BELIEVED..LAST_BELIEVED).contains(&self)
    }

    fn date_time(self) -> DateTime<Utc> {
        DateTime::from_timestamp_millis(self.0).unwrap_or(DateTime::UNIX_EPOCH)
    }
}
