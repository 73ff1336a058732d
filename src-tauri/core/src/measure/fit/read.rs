//! Takes an input apart into checked numbers.

use super::fault::FitFault;
use super::sizes;
use crate::model::fit::{FitInput, SizeStand, Sleeve};
use crate::model::limits;
use crate::model::typed::Typed;
use crate::trade::bench::BenchTables;
use crate::trade::bench::rows::Material;

/// Checked numbers of one input; lengths in millimetres.
#[derive(Debug, Clone, PartialEq)]
pub struct Checked<'t> {
    /// Nominal outside diameter of the bearing.
    pub nominal: f64,
    /// Outside diameter of the bearing.
    pub outside: SizeStand,
    /// The seat that takes it.
    pub seat: SizeStand,
    /// Whether a measured seat lies in the class also given.
    pub seat_in_class: Option<bool>,
    /// Bore of the bearing.
    pub bore: Option<f64>,
    /// Width of the bearing.
    pub width: Option<f64>,
    /// Pressed in, or to be; none for a bearing in a bare housing.
    pub sleeve: Option<CheckedSleeve<'t>>,
    /// Outside diameter of the housing.
    pub housing_outside: Option<f64>,
    /// Row of `data/bench/materials.toml` the input names.
    pub housing: &'t Material,
    /// Row of bearing steel.
    pub bearing: &'t Material,
    /// Lowest and highest temperature.
    pub temperature: Option<[f64; 2]>,
}

/// Sizes of a sleeve, mm.
#[derive(Debug, Clone, PartialEq)]
pub struct CheckedSleeve<'t> {
    /// Its outside diameter.
    pub outside: SizeStand,
    /// Bore that takes the sleeve, in the housing as it is.
    pub housing_bore: SizeStand,
    /// Row of `data/bench/materials.toml` the input names.
    pub material: &'t Material,
}

/// Reads and checks an input.
///
/// # Errors
/// The first thing that keeps the fit from being worked out.
pub fn read<'t>(input: &FitInput, tables: &'t BenchTables) -> Result<Checked<'t>, FitFault> {
    let nominal = length("bearing-od", input.bearing_outside.as_ref())?.ok_or(FitFault::OutsideMissing)?;
    let apart = tables.settings.measured_size_apart_mm.value;
    let tabled = sizes::of_bearing(tables, nominal)?;
    let outside = match &input.measured_outside {
        Some(measured) => sizes::of_measured(measured, ["od", "od-u"], nominal, apart)?,
        None => tabled,
    };
    let (seat, seat_in_class) = seat(input, tables, nominal)?;
    let bore = length("bearing-bore", input.bearing_bore.as_ref())?;
    let width = length("bearing-width", input.bearing_width.as_ref())?;
    if bore.is_some_and(|bore| !(0.0 < bore && bore < nominal)) {
        return Err(FitFault::BearingRefused("bearing-bore"));
    }
    if width.is_some_and(|width| width <= 0.0) {
        return Err(FitFault::BearingRefused("bearing-width"));
    }
    if bore.is_some_and(|bore| tables.clearance(bore).is_none()) {
        return Err(FitFault::BoreNotTabled);
    }
    let housing = tables.material(&input.housing).ok_or(FitFault::UnknownMaterial("housing"))?;
    let sleeve = input.sleeve.as_ref().map(|given| sleeve(given, tables, nominal)).transpose()?;
    let innermost = sleeve.as_ref().map_or(nominal, |sleeve| sleeve.housing_bore.most_mm);
    let housing_outside = length("housing-od", input.housing_outside.as_ref())?;
    if housing_outside.is_some_and(|outside| outside <= innermost) {
        return Err(FitFault::NegativeWall);
    }
    Ok(Checked {
        nominal,
        outside,
        seat,
        seat_in_class,
        bore,
        width,
        sleeve,
        housing_outside,
        housing,
        bearing: tables.material("bearing-steel").ok_or(FitFault::UnknownMaterial("bearing-od"))?,
        temperature: input.temperature.as_ref().map(temperature).transpose()?,
    })
}

/// Measured wins; the class then only says whether the measured hole lies in it.
fn seat(input: &FitInput, tables: &BenchTables, nominal: f64) -> Result<(SizeStand, Option<bool>), FitFault> {
    let class =
        input.class.as_ref().map(|class| sizes::of_class(tables, class.trim(), nominal)).transpose()?;
    let apart = tables.settings.measured_size_apart_mm.value;
    match (&input.measured_bore, class) {
        (Some(measured), class) => {
            let size = sizes::of_measured(measured, ["bore", "bore-u"], nominal, apart)?;
            let inside = |class: SizeStand| class.least_mm <= size.mean_mm && size.mean_mm <= class.most_mm;
            Ok((size, class.map(inside)))
        }
        (None, Some(class)) => Ok((class, None)),
        (None, None) => Err(FitFault::SeatMissing),
    }
}

fn sleeve<'t>(given: &Sleeve, tables: &'t BenchTables, nominal: f64) -> Result<CheckedSleeve<'t>, FitFault> {
    let material = tables.material(&given.material).ok_or(FitFault::UnknownMaterial("sleeve"))?;
    let outside = sizes::of_measured(&given.outside, ["sleeve-od", "sleeve-od-u"], nominal, f64::INFINITY)?;
    let wall = (outside.mean_mm - nominal) / 2.0;
    if wall < tables.settings.sleeve_wall_least_mm.value {
        return Err(FitFault::SleeveTooThin);
    }
    let apart = tables.settings.measured_size_apart_mm.value;
    let fields = ["housing-bore", "housing-bore-u"];
    let housing_bore = sizes::of_measured(&given.housing_bore, fields, outside.mean_mm, apart)?;
    Ok(CheckedSleeve { outside, housing_bore, material })
}

fn length(field: &'static str, typed: Option<&Typed>) -> Result<Option<f64>, FitFault> {
    typed.map(sizes::mm).transpose().map_err(|fault| FitFault::Typed(fault, field))
}

fn temperature(range: &[Typed; 2]) -> Result<[f64; 2], FitFault> {
    let [low, high] = range;
    let celsius = |typed: &Typed| typed.number("C").map_err(|fault| FitFault::Typed(fault, "temp"));
    let (low, high) = (celsius(low)?, celsius(high)?);
    if low <= high && [low, high].iter().all(|end| limits::IN_USE_C.contains(end)) {
        Ok([low, high])
    } else {
        Err(FitFault::TemperatureRefused)
    }
}
