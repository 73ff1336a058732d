//! Sizes with their limits: from a class, from a bearing's tolerance, or measured.

use super::fault::FitFault;
use crate::model::fit::{Measured, SizeFrom, SizeStand, Spread};
use crate::model::limits;
use crate::model::typed::{LengthUnit, Typed, TypedFault};
use crate::trade::bench::BenchTables;

/// A size of a bearing, a seat or a sleeve as it was typed, millimetres.
///
/// # Errors
/// What keeps it from being read.
pub fn mm(typed: &Typed) -> Result<f64, TypedFault> {
    typed.number_within(LengthUnit::Mm.sign(), &limits::DIAMETER_MM)
}

/// A hole of a class at a nominal diameter.
///
/// # Errors
/// [`FitFault::UnknownClass`] or [`FitFault::DiameterNotTabled`].
pub fn of_class(tables: &BenchTables, class: &str, nominal: f64) -> Result<SizeStand, FitFault> {
    if !tables.holes.iter().any(|row| row.class == class) {
        return Err(FitFault::UnknownClass);
    }
    let row = tables.hole(class, nominal).ok_or(FitFault::DiameterNotTabled)?;
    Ok(between(SizeFrom::Class, nominal + row.lower_um / 1000.0, nominal + row.upper_um / 1000.0))
}

/// The outside diameter of a bearing of Normal class.
///
/// # Errors
/// [`FitFault::DiameterNotTabled`].
pub fn of_bearing(tables: &BenchTables, nominal: f64) -> Result<SizeStand, FitFault> {
    let row = tables.outside(nominal).ok_or(FitFault::DiameterNotTabled)?;
    Ok(between(SizeFrom::Bearing, nominal + row.lower_um / 1000.0, nominal + row.upper_um / 1000.0))
}

/// A measured size, its limits the ends of its uncertainty.
///
/// # Errors
/// What keeps it from being read; [`FitFault::MeasuredSizeRefused`] further than `apart` from `near`. They name the size or
/// its uncertainty, as `fields` call them.
pub fn of_measured(
    measured: &Measured,
    fields: [&'static str; 2],
    near: f64,
    apart: f64,
) -> Result<SizeStand, FitFault> {
    let [size_field, doubt_field] = fields;
    let size = mm(&measured.size).map_err(|fault| FitFault::Typed(fault, size_field))?;
    let expanded = match &measured.expanded_um {
        Some(expanded) => {
            expanded.number("um").map_err(|fault| FitFault::Typed(fault, doubt_field))? / 1000.0
        }
        None => 0.0,
    };
    if (size - near).abs() > apart {
        return Err(FitFault::MeasuredSizeRefused(size_field));
    }
    if !(0.0..=1.0).contains(&expanded) {
        return Err(FitFault::MeasuredSizeRefused(doubt_field));
    }
    Ok(SizeStand {
        from: SizeFrom::Measured,
        least_mm: size - expanded,
        mean_mm: size,
        most_mm: size + expanded,
    })
}

/// Interference of a part in a hole, millimetres: the smallest part in the largest hole, and the other way.
pub fn interference(part: &SizeStand, hole: &SizeStand) -> Spread {
    Spread {
        least: whole_nanometres(part.least_mm - hole.most_mm),
        mean: whole_nanometres(part.mean_mm - hole.mean_mm),
        most: whole_nanometres(part.most_mm - hole.least_mm),
    }
}

/// A difference of sizes without the noise of its last bits: equal sizes are neither tight nor loose by it.
fn whole_nanometres(mm: f64) -> f64 {
    (mm * 1e6).round() / 1e6
}

fn between(from: SizeFrom, least: f64, most: f64) -> SizeStand {
    SizeStand { from, least_mm: least, mean_mm: (least + most) / 2.0, most_mm: most }
}
