//! Takes an input apart into checked numbers in millimetres.

use super::budget::{Arms, AtWork};
use super::fault::{GaugeFault, Where};
use crate::model::gauge::{GaugeInput, GaugePosition, Limit, LimitSource};
use crate::model::limits;
use crate::model::standing::Support;
use crate::model::typed::Typed;
use crate::trade::bench::BenchTables;

/// Checked numbers of one input.
#[derive(Debug, Clone, PartialEq)]
pub struct Readings {
    /// Every reading, millimetres at the gauge.
    pub readings: Vec<f64>,
    /// The gauge at work.
    pub at: AtWork,
    /// Movement that the readings are compared with, and where it comes from.
    pub limit: Limit,
}

/// Reads and checks an input.
///
/// # Errors
/// The first thing that keeps it from being judged.
pub fn read(input: &GaugeInput, tables: &BenchTables) -> Result<Readings, GaugeFault> {
    let readings = readings(input, tables)?;
    let arms = arms(&input.place, tables.settings.position_error_mm.value)?;
    let positive = |field: &'static str, typed: &Typed| {
        let value =
            typed.length_mm(input.unit).map_err(|fault| GaugeFault::Typed(fault, Where::Named(field)))?;
        if value > 0.0 { Ok(value) } else { Err(GaugeFault::InstrumentRefused(field)) }
    };
    let (mean, deviation) = mean_and_deviation(&readings);
    let at = AtWork {
        mean,
        deviation,
        readings: u32::try_from(readings.len()).unwrap_or(u32::MAX),
        resolution: positive("resolution", &input.instrument.resolution)?,
        mpe: positive("mpe", &input.instrument.mpe)?,
        tilt_deg: tables.settings.gauge_tilt_deg.value,
        arms,
    };
    let limit = limit(input, tables, at.ratio())?;
    Ok(Readings { readings, at, limit })
}

fn readings(input: &GaugeInput, tables: &BenchTables) -> Result<Vec<f64>, GaugeFault> {
    if input.readings.is_empty() {
        return Err(GaugeFault::NoReadings);
    }
    let mut found = Vec::new();
    for (at, reading) in input.readings.iter().enumerate() {
        let typed = reading.length_mm(input.unit);
        let mm = typed.map_err(|fault| GaugeFault::Typed(fault, Where::Reading(at)))?;
        if mm < 0.0 {
            return Err(GaugeFault::NegativeReading(at));
        }
        if mm > tables.settings.largest_reading_mm.value {
            return Err(GaugeFault::ReadingTooLarge(at));
        }
        found.push(mm);
    }
    Ok(found)
}

fn arms(place: &GaugePosition, usual_error: f64) -> Result<Option<Arms>, GaugeFault> {
    let GaugePosition::Shaft { pivot_mm, gauge_mm, bearing_mm, error_mm, or: _ } = place else {
        return Ok(None);
    };
    let error = error_mm.unwrap_or(usual_error);
    let along = |field: &'static str, typed: &Typed| {
        typed.distance("mm").map_err(|fault| GaugeFault::Typed(fault, Where::Named(field)))
    };
    let pivot = along("pivot_mm", pivot_mm)?;
    let (gauge, bearing) = (along("gauge_mm", gauge_mm)?, along("bearing_mm", bearing_mm)?);
    let (gauge, bearing) = ((gauge - pivot).abs(), (bearing - pivot).abs());
    if [gauge, bearing, error].iter().any(|length| !limits::ALONG_SHAFT_MM.contains(length)) {
        return Err(GaugeFault::PlaceRefused);
    }
    // Within a few times its own error, a distance could as well be nothing.
    if gauge <= 4.0 * error || gauge == 0.0 {
        return Err(GaugeFault::GaugeAtPivot);
    }
    if bearing <= error || bearing == 0.0 {
        return Err(GaugeFault::BearingAtPivot);
    }
    Ok(Some(Arms { gauge, bearing, error }))
}

fn limit(input: &GaugeInput, tables: &BenchTables, ratio: f64) -> Result<Limit, GaugeFault> {
    let known = |source: LimitSource, mm: f64| {
        if mm > 0.0 {
            Ok(Limit { source, mm: Some(mm), at_gauge_mm: Some(mm / ratio) })
        } else {
            Err(GaugeFault::LimitRefused)
        }
    };
    if let Some(maker) = &input.maker_limit {
        let typed = maker.length_mm(input.unit);
        let mm = typed.map_err(|fault| GaugeFault::Typed(fault, Where::Named("maker_limit")))?;
        return known(LimitSource::Maker, mm);
    }
    match &input.bearing {
        Some(bearing) if input.support != Support::Rubber => {
            let bore = bearing.bore_mm.number_within("mm", &limits::DIAMETER_MM);
            let bore = bore.map_err(|fault| GaugeFault::Typed(fault, Where::Named("bore_mm")))?;
            let row = tables.clearance(bore).ok_or(GaugeFault::BoreNotTabled)?;
            let [_, most_um] = row.of(bearing.group);
            known(LimitSource::InternalClearance, most_um / 1000.0)
        }
        _ => Ok(Limit { source: LimitSource::None, mm: None, at_gauge_mm: None }),
    }
}

fn mean_and_deviation(readings: &[f64]) -> (f64, Option<f64>) {
    let count = readings.len() as f64;
    let mean = readings.iter().sum::<f64>() / count;
    let squares: f64 = readings.iter().map(|reading| (reading - mean).powi(2)).sum();
    (mean, (readings.len() > 1).then(|| (squares / (count - 1.0)).sqrt()))
}
