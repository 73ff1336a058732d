//! A gauge's readings from their file to what is shown of them. Needs no visit and writes nothing.

use super::failure::Failure;
use super::fault::Fault;
use super::steady::shown;
use crate::content::gauge_lines;
use crate::measure::gauge::evaluate::evaluate;
use crate::measure::gauge::fault::GaugeFault;
use crate::model::bench::GaugeLines;
use crate::model::gauge::{BudgetSource, GaugeInput, GaugeResult, LimitSource};
use crate::trade::bench::BenchTables;
use crate::trade::bench::rows::Setting;
use crate::words::Words;

/// What the readings of a gauge come to.
#[derive(Debug, Clone, PartialEq)]
pub struct GaugeReport {
    /// Numbers; `lines` say the same.
    pub result: GaugeResult,
    /// The same as sentences, in order.
    pub lines: Vec<String>,
}

/// Evaluates the readings of a JSON file of the form [`GaugeInput`].
///
/// # Errors
/// A code and what to do.
pub fn gauge(json: &str, locale: &str) -> Result<GaugeReport, Failure> {
    evaluated(json, locale).map_err(|fault| shown(&fault, locale))
}

fn evaluated(json: &str, locale: &str) -> Result<GaugeReport, Fault> {
    let words = Words::of(locale)?;
    let tables = BenchTables::shipped().map_err(Fault::Internal)?;
    let input: GaugeInput = serde_json::from_str(json).map_err(|_| GaugeFault::Unreadable)?;
    let result = evaluate(&input, tables)?;
    let lines = gauge_lines(&result).all().iter().map(|line| words.say(line)).collect();
    Ok(GaugeReport { result, lines })
}

/// A result as sentences, with where the numbers that decide come from.
pub(super) fn lines(result: &GaugeResult, tables: &BenchTables) -> GaugeLines {
    GaugeLines { basis: basis(result, tables), ..gauge_lines(result) }
}

/// Where the numbers behind a decision come from, in the data's own words.
fn basis(result: &GaugeResult, tables: &BenchTables) -> Vec<String> {
    let settings = &tables.settings;
    let told = |what: &str, number: &Setting| format!("{what} ({}): {}", number.value, number.basis);
    let mut lines = vec![
        told("guard band, standard uncertainties", &settings.guard_standard_uncertainties),
        told("gauge out of line with the movement, degrees", &settings.gauge_tilt_deg),
        told("a reading is doubtful from this score on", &settings.doubtful_score),
    ];
    if result.budget.iter().any(|line| line.source == BudgetSource::GaugePlace) {
        lines.push(told("a place along the shaft, mm", &settings.position_error_mm));
    }
    if result.limit.source == LimitSource::InternalClearance {
        lines.extend(tables.clearances.first().map(|row| format!("clearance as a yardstick: {}", row.basis)));
    }
    lines
}

impl From<GaugeFault> for Fault {
    fn from(fault: GaugeFault) -> Self {
        Self::Gauge(fault)
    }
}
