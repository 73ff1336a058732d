//! What a tight seat takes of a bearing's internal clearance.

use super::thermal::{Fits, Pair, ROOM_C};
use crate::model::fit::{ClearanceStand, Spread};
use crate::model::gauge::ClearanceGroup;
use crate::trade::bench::rows::ClearanceRow;

const GROUPS: [ClearanceGroup; 4] =
    [ClearanceGroup::C2, ClearanceGroup::CN, ClearanceGroup::C3, ClearanceGroup::C4];

/// What is left over the temperatures, and the first group that keeps `least_um` in every pair.
pub fn clearance(
    fits: &Fits,
    temperatures: &[f64],
    row: &ClearanceRow,
    group: Option<ClearanceGroup>,
    least_um: f64,
) -> ClearanceStand {
    let loss = |pair: Pair, celsius: f64| loss_um(fits, pair, celsius);
    let corners = |celsius: f64| fits.corners().map(|pair| loss(pair, celsius));
    let least = |celsius: f64| corners(celsius).into_iter().fold(f64::INFINITY, f64::min);
    let most = |celsius: f64| corners(celsius).into_iter().fold(0.0, f64::max);
    let everywhere = || temperatures.iter().copied().chain([ROOM_C]);
    let worst_loss_um = everywhere().map(most).fold(0.0, f64::max);
    let smallest_loss = everywhere().map(least).fold(f64::INFINITY, f64::min);
    let before_um = group.map(|group| row.of(group));
    ClearanceStand {
        group,
        before_um,
        loss_um: Spread { least: least(ROOM_C), mean: loss(fits.middle(), ROOM_C), most: most(ROOM_C) },
        worst_loss_um,
        left_um: before_um.map(|[low, high]| [low - worst_loss_um, high - smallest_loss]),
        needed: GROUPS.into_iter().find(|group| {
            let [low, _] = row.of(*group);
            low - worst_loss_um >= least_um
        }),
    }
}

fn loss_um(fits: &Fits, pair: Pair, celsius: f64) -> f64 {
    let pressures = fits.stack.pressures(fits.free(pair, celsius));
    fits.stack.raceway_loss(pressures.bearing) * 1000.0
}
