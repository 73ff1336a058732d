//! The readings of every gauge in a table: what was read, and what it decides.

use crate::model::gauge::{GaugeResult, Uncertainty};
use crate::model::standing::Standing;
use crate::words::Words;

use super::finding::{GaugeRow, GaugeTable};
use super::gauge_lines::decision_id;
use super::said;

/// The table; none where no gauge was read.
pub fn gauge_table(standing: &Standing, words: &Words) -> Option<GaugeTable> {
    let rows: Vec<GaugeRow> =
        standing.gauges.iter().map(|gauge| row(standing, &gauge.step, &gauge.result, words)).collect();
    (!rows.is_empty()).then(|| GaugeTable {
        columns: ["place", "readings", "mean", "expanded", "limit", "decision"]
            .map(|column| words.text(&format!("gauge-column-{column}")))
            .into(),
        rows,
    })
}

fn row(standing: &Standing, step: &str, result: &GaugeResult, words: &Words) -> GaugeRow {
    let read: Vec<f64> = result.readings.iter().map(|reading| reading.at_gauge_mm).collect();
    let away = (result.ratio - 1.0).abs() > 1e-9;
    let ratio = || words.with("gauge-ratio", &[("ratio", words.rounded(result.ratio, 3).into())]);
    let expanded = |known: Uncertainty| {
        words.with("gauge-plus-minus", &[("expanded", words.movement(known.expanded_mm).into())])
    };
    GaugeRow {
        place: said::step(words, standing, step),
        readings: words.readings(&read),
        ratio: if away { ratio() } else { String::new() },
        mean: words.movement(result.mean_mm),
        expanded: result.uncertainty.map_or_else(|| words.text("gauge-expanded-none"), expanded),
        limit: result
            .limit
            .mm
            .map_or_else(|| words.text("gauge-limit-unknown"), |limit| words.movement(limit)),
        decision: words.text(decision_id(result.decision)),
    }
}
