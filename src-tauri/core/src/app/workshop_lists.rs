//! The workshop's sleeves and instruments: what is typed is read here, strictly.

use std::ops::RangeInclusive;

use crate::measure::bore::unit::typed_mm;
use crate::model::limits;
use crate::model::time::Moment;
use crate::model::workshop::{InstrumentGiven, OwnInstrument, SleeveGiven, StockSleeve};
use crate::trade::bench::BenchTables;

use super::fault::Refusal;
use super::workshop::line;

/// The sleeves of a list as typed, without its empty rows.
pub(super) fn sleeves(given: &[SleeveGiven]) -> Result<Vec<StockSleeve>, Refusal> {
    let is_empty = |row: &SleeveGiven| [&row.outside, &row.bore].iter().all(|text| text.trim().is_empty());
    let read = |row: &SleeveGiven| {
        let size = |text: &str| mm(text, &limits::DIAMETER_MM).ok_or(Refusal::WorkshopSleeve);
        let material = row.material.trim().to_owned();
        let sleeve = StockSleeve { material, outside_mm: size(&row.outside)?, bore_mm: size(&row.bore)? };
        if is_sleeve(&sleeve) { Ok(sleeve) } else { Err(Refusal::WorkshopSleeve) }
    };
    let rows: Vec<StockSleeve> =
        given.iter().filter(|row| !is_empty(row)).map(read).collect::<Result<_, _>>()?;
    if rows.len() > limits::WORKSHOP_SLEEVES { Err(Refusal::WorkshopSleeve) } else { Ok(rows) }
}

/// The instruments of a list as typed, without its empty rows.
pub(super) fn instruments(given: &[InstrumentGiven]) -> Result<Vec<OwnInstrument>, Refusal> {
    let is_empty = |row: &InstrumentGiven| {
        [&row.name, &row.resolution, &row.mpe].iter().all(|text| text.trim().is_empty())
    };
    let rows: Vec<OwnInstrument> =
        given.iter().filter(|row| !is_empty(row)).map(instrument).collect::<Result<_, _>>()?;
    if are_sound(&[], &rows) { Ok(rows) } else { Err(Refusal::WorkshopInstrument) }
}

fn instrument(row: &InstrumentGiven) -> Result<OwnInstrument, Refusal> {
    let refused = Refusal::WorkshopInstrument;
    let size = |text: &str| mm(text, &limits::INSTRUMENT_MM).ok_or(refused);
    let given = |text: &str| (!text.trim().is_empty()).then(|| text.trim().to_owned());
    Ok(OwnInstrument {
        name: line(&row.name, limits::INSTRUMENT_NAME).map_err(|_| refused)?,
        resolution_mm: size(&row.resolution)?,
        mpe_mm: size(&row.mpe)?,
        repeatability_mm: given(&row.repeatability).map(|text| size(&text)).transpose()?,
        calibrated: given(&row.calibrated),
        due: given(&row.due),
        overdue: false,
    })
}

/// Whether lists that a folder brings are such as could have been entered here.
pub(super) fn are_sound(sleeves: &[StockSleeve], instruments: &[OwnInstrument]) -> bool {
    let alike = |(at, one): (usize, &OwnInstrument)| {
        instruments.iter().take(at).any(|earlier| is_called_alike(&earlier.name, &one.name))
    };
    sleeves.len() <= limits::WORKSHOP_SLEEVES
        && instruments.len() <= limits::WORKSHOP_INSTRUMENTS
        && sleeves.iter().all(is_sleeve)
        && instruments.iter().all(is_instrument)
        && !instruments.iter().enumerate().any(alike)
}

/// Whether two names differ by capitals and spaces alone: nobody at a bench tells them apart.
fn is_called_alike(one: &str, other: &str) -> bool {
    let plain = |name: &str| name.to_lowercase().split_whitespace().collect::<Vec<_>>().join(" ");
    plain(one) == plain(other)
}

fn is_sleeve(sleeve: &StockSleeve) -> bool {
    let known = |tables: &BenchTables| tables.material(&sleeve.material).is_some();
    BenchTables::shipped().is_ok_and(known)
        && limits::DIAMETER_MM.contains(&sleeve.outside_mm)
        && limits::DIAMETER_MM.contains(&sleeve.bore_mm)
        && sleeve.bore_mm < sleeve.outside_mm
}

fn is_instrument(instrument: &OwnInstrument) -> bool {
    let OwnInstrument { name, resolution_mm, mpe_mm, repeatability_mm, calibrated, due, overdue: _ } =
        instrument;
    let size = |mm: &f64| limits::INSTRUMENT_MM.contains(mm);
    let in_order = calibrated.as_ref().zip(due.as_ref()).is_none_or(|(calibrated, due)| calibrated <= due);
    !name.is_empty()
        && line(name, limits::INSTRUMENT_NAME).is_ok_and(|kept| kept == *name)
        && size(resolution_mm)
        && size(mpe_mm)
        && repeatability_mm.iter().all(size)
        && [calibrated, due].into_iter().flatten().all(|day| is_day(day))
        && in_order
}

/// A day of the calendar as it is written: `2026-11-25`.
fn is_day(text: &str) -> bool {
    text.len() == 10 && Moment::parse(&format!("{text}T12:00:00Z")).is_some_and(|noon| noon.day() == text)
}

/// A length as typed, mm, above zero and in its range.
fn mm(text: &str, range: &RangeInclusive<f64>) -> Option<f64> {
    typed_mm(text, range).ok().filter(|mm| *mm > 0.0 && range.contains(mm))
}
