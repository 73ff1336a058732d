//! How a tight pair goes together: by press, by heat, or by heat and cold.

use super::thermal::ROOM_C;
use crate::model::fit::Assembly;
use crate::trade::bench::rows::{Material, Settings};

/// The tightest pair of one seat.
#[derive(Debug, Clone, Copy)]
pub struct TightestPair<'t> {
    /// Diameter, millimetres.
    pub diameter: f64,
    /// Width, if known, millimetres.
    pub width: Option<f64>,
    /// Interference at 20 C, millimetres on the diameter.
    pub interference: f64,
    /// Pressure at 20 C, MPa.
    pub pressure: f64,
    /// Material of the outer part.
    pub outer: &'t Material,
    /// Material of the inner part.
    pub inner: &'t Material,
    /// The outer part may not be made hotter, Celsius.
    pub heat_limit: f64,
}

/// How it goes together.
pub fn assembly(pair: &TightestPair<'_>, settings: &Settings) -> Assembly {
    let press = |width: f64| {
        let load = pair.pressure * std::f64::consts::PI * pair.diameter * width;
        [settings.friction_least.value * load, settings.friction_most.value * load]
    };
    let mut how = Assembly {
        press_n: pair.width.map(press),
        heat_to_c: None,
        heat_limit_c: pair.heat_limit,
        heat_is_enough: true,
        cool_to_c: None,
        cold_is_enough: true,
    };
    if pair.interference <= 0.0 {
        return how;
    }
    let growth = pair.interference + settings.assembly_clearance_um.value / 1000.0;
    let heat_to = ROOM_C + rise(growth, pair.diameter, pair.outer.expansion_per_million_k);
    how.heat_to_c = Some(heat_to);
    how.heat_is_enough = heat_to <= pair.heat_limit;
    if !how.heat_is_enough {
        let by_heat = pair.diameter * pair.outer.expansion_per_million_k * 1e-6 * (pair.heat_limit - ROOM_C);
        let cool_to = ROOM_C - rise(growth - by_heat, pair.diameter, pair.inner.expansion_per_million_k);
        how.cool_to_c = Some(cool_to);
        how.cold_is_enough = cool_to >= settings.cold_limit_c.value;
    }
    how
}

/// Rise in kelvin that makes a length grow by so much; both in one unit, expansion in 1e-6 per kelvin.
pub fn rise(growth: f64, length: f64, expansion_per_million_k: f64) -> f64 {
    growth / (length * expansion_per_million_k * 1e-6)
}
