//! What is refused before anything is fitted: numbers that are none, too few angles, angles that stand twice,
//! units that are mixed, an instrument nobody described.

use crate::model::bore::{BoreKind, BoreLevel, BoreReading, BoreReadings};
use crate::model::limits;

use super::circle::{Point, distance};
use super::fault::BoreRefusal;
use super::profile;

/// Where in the readings something is wrong: level and reading, counted from 0.
pub type ReadingAt = (usize, usize);

/// An inch is 25.4 mm, so a reading five times its neighbours, or a fifth, is one in another unit.
const OTHER_UNIT: f64 = 5.0;
/// Angles nearer than this are the same angle, in degrees.
const SAME_ANGLE_DEG: f64 = 0.01;
/// An instrument for a bore errs by less than this, in mm.
const WORST_INSTRUMENT_MM: f64 = 1.0;

/// Fewest readings at one depth.
///
/// Two-point: mean, size and direction of an oval are three unknowns. Dial and coordinates: two more for the
/// centre. Three-point: one reading is a mean size.
pub fn fewest(kind: BoreKind) -> usize {
    match kind {
        BoreKind::TwoPoint => 3,
        BoreKind::ThreePoint => 1,
        BoreKind::Dial | BoreKind::Coordinates => 5,
    }
}

/// Checks everything read.
///
/// # Errors
/// The first refusal, with its place where it has one.
pub fn check(readings: &BoreReadings) -> Result<(), (BoreRefusal, Option<ReadingAt>)> {
    let whole = |why: BoreRefusal| Err((why, None));
    instrument(readings).or_else(whole)?;
    if readings.levels.is_empty() {
        return whole(BoreRefusal::Empty);
    }
    if readings.levels.len() > limits::BORE_DEPTHS {
        return whole(BoreRefusal::TooManyDepths);
    }
    if readings.levels.iter().map(|level| level.readings.len()).sum::<usize>() > limits::BORE_READINGS {
        return whole(BoreRefusal::TooManyReadings);
    }
    for (at, level) in readings.levels.iter().enumerate() {
        check_level(readings, level).map_err(|(why, reading)| (why, Some((at, reading))))?;
    }
    Ok(())
}

fn instrument(readings: &BoreReadings) -> Result<(), BoreRefusal> {
    let it = &readings.instrument;
    let known = |value: f64| value > 0.0 && value < WORST_INSTRUMENT_MM;
    if !known(it.resolution_mm)
        || !known(it.mpe_mm)
        || !(0.0..WORST_INSTRUMENT_MM).contains(&it.repeatability_mm)
    {
        return Err(BoreRefusal::Instrument);
    }
    let walls = [readings.wall_mm, readings.wall_error_mm];
    if walls.into_iter().flatten().any(|wall| !wall.is_finite() || wall < 0.0) {
        return Err(BoreRefusal::WallNegative);
    }
    if readings.seat_width_mm.is_some_and(|width| !limits::SEAT_MM.contains(&width)) {
        return Err(BoreRefusal::SizeImplausible);
    }
    match (readings.kind, readings.zero_diameter_mm) {
        (BoreKind::Dial, None) => Err(BoreRefusal::HeaderMissing),
        (BoreKind::Dial, Some(zero)) if !limits::SEAT_MM.contains(&zero) => Err(BoreRefusal::SizeImplausible),
        _ => Ok(()),
    }
}

type AtReading = Result<(), (BoreRefusal, usize)>;

fn check_level(readings: &BoreReadings, level: &BoreLevel) -> AtReading {
    let last = level.readings.len().saturating_sub(1);
    for (at, reading) in level.readings.iter().enumerate() {
        let right_form =
            matches!(reading, BoreReading::Point { .. }) == (readings.kind == BoreKind::Coordinates);
        let [a, b] = numbers(reading);
        if !right_form || !a.is_finite() || !b.is_finite() || !level.depth_mm.is_finite() {
            return Err((BoreRefusal::NotANumber, at));
        }
    }
    if level.readings.len() < fewest(readings.kind) {
        return Err((BoreRefusal::TooFewAngles, last));
    }
    if level.readings.len() > limits::BORE_AT_A_DEPTH {
        return Err((BoreRefusal::TooManyReadings, last));
    }
    same_unit(readings, level)?;
    repeated(readings.kind, level)
}

fn numbers(reading: &BoreReading) -> [f64; 2] {
    match reading {
        BoreReading::At { angle_deg, value_mm } => [*angle_deg, *value_mm],
        BoreReading::Point { x_mm, y_mm } => [*x_mm, *y_mm],
    }
}

/// Sizes that no seat has, and single ones that are far from the others.
fn same_unit(readings: &BoreReadings, level: &BoreLevel) -> AtReading {
    if readings.kind == BoreKind::Coordinates {
        return same_unit_of_points(&profile::coordinates(level));
    }
    let zero = readings.zero_diameter_mm.unwrap_or_default();
    // A dial's deviation is a small part of the size, so it counts fifty times.
    let size = |value: f64| if readings.kind == BoreKind::Dial { zero + 50.0 * value.abs() } else { value };
    let sizes: Vec<f64> = level.readings.iter().map(|reading| size(numbers(reading)[1])).collect();
    let usual = median(&sizes);
    plausible(usual)?;
    for (at, size) in sizes.iter().enumerate() {
        if *size > usual * OTHER_UNIT || *size < usual / OTHER_UNIT {
            return Err((BoreRefusal::MixedUnits, at));
        }
    }
    Ok(())
}

fn plausible(size: f64) -> AtReading {
    if limits::SEAT_MM.contains(&size) { Ok(()) } else { Err((BoreRefusal::SizeImplausible, 0)) }
}

/// A point in a larger unit lies far outside; one in a smaller unit lies near the origin. The latter is only
/// looked for where the wall does not pass near the origin itself.
fn same_unit_of_points(points: &[Point]) -> AtReading {
    let middle =
        [0, 1].map(|axis| median(&points.iter().filter_map(|it| it.get(axis).copied()).collect::<Vec<_>>()));
    let from = |centre: Point| points.iter().map(|point| distance(centre, *point)).collect::<Vec<f64>>();
    let (across, out) = (from(middle), from([0.0, 0.0]));
    let (usual, usual_out) = (median(&across), median(&out));
    plausible(2.0 * usual)?;
    let looks_in = quantile(&out, 4) > 0.7 * usual_out;
    for (at, (across, out)) in across.iter().zip(&out).enumerate() {
        if *across > usual * OTHER_UNIT || (looks_in && *out < usual_out / OTHER_UNIT) {
            return Err((BoreRefusal::MixedUnits, at));
        }
    }
    Ok(())
}

/// The middle value; 0 for none.
fn median(values: &[f64]) -> f64 {
    quantile(values, 2)
}

/// The value that one in `parts` lies below; 0 for none.
fn quantile(values: &[f64], parts: usize) -> f64 {
    let mut sorted = values.to_vec();
    sorted.sort_by(f64::total_cmp);
    sorted.get(sorted.len() / parts).copied().unwrap_or_default()
}

/// A two-point diameter is the same half a turn on, one by three points a third of a turn on.
fn repeated(kind: BoreKind, level: &BoreLevel) -> AtReading {
    let turn = match kind {
        BoreKind::TwoPoint => 180.0,
        BoreKind::ThreePoint => 120.0,
        BoreKind::Dial => 360.0,
        BoreKind::Coordinates => return same_points(level),
    };
    let mut angles: Vec<(f64, usize)> =
        level.readings.iter().map(|reading| numbers(reading)[0].rem_euclid(turn)).zip(0..).collect();
    angles.sort_by(|a, b| a.0.total_cmp(&b.0));
    let (first, last) = (angles.first().copied(), angles.last().copied());
    for (a, b) in angles.iter().zip(angles.iter().skip(1)) {
        if b.0 - a.0 < SAME_ANGLE_DEG {
            return Err((BoreRefusal::AngleRepeated, a.1.max(b.1)));
        }
    }
    match (first, last) {
        (Some(first), Some(last)) if first.1 != last.1 && first.0 + turn - last.0 < SAME_ANGLE_DEG => {
            Err((BoreRefusal::AngleRepeated, first.1.max(last.1)))
        }
        _ => Ok(()),
    }
}

fn same_points(level: &BoreLevel) -> AtReading {
    let mut points: Vec<([f64; 2], usize)> = level.readings.iter().map(numbers).zip(0..).collect();
    points.sort_by(|a, b| a.0[0].total_cmp(&b.0[0]).then(a.0[1].total_cmp(&b.0[1])));
    match points.iter().zip(points.iter().skip(1)).find(|(a, b)| a.0 == b.0) {
        Some((a, b)) => Err((BoreRefusal::AngleRepeated, a.1.max(b.1))),
        None => Ok(()),
    }
}
