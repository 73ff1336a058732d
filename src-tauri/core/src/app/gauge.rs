//! A gauge's readings from their file to what is shown of them. Needs no visit and writes nothing.

use super::failure::Failure;
use super::fault::Fault;
use super::steady::shown;
use crate::content::gauge_lines;
use crate::measure::gauge::evaluate::evaluate;
use crate::measure::gauge::fault::GaugeFault;
use crate::model::gauge::{GaugeInput, GaugeResult};
use crate::trade::bench::BenchTables;
use crate::words::Words;

/// What the readings of a gauge come to.
#[derive(Debug, Clone, PartialEq)]
pub struct GaugeReport {
    /// The result.
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
    let lines = gauge_lines(words, &result).all();
    Ok(GaugeReport { result, lines })
}

impl From<GaugeFault> for Fault {
    fn from(fault: GaugeFault) -> Self {
        Self::Gauge(fault)
    }
}
