//! A new sleeve for the bore there is: how much larger it has to be so that the housing still holds it on the hottest day, how
//! much it may be so that every part bears it on the coldest, and how far its bore closes when it is pressed in.

use super::calculate::stress;
use super::read::Checked;
use super::thermal::{Fits, ROOM_C};
use crate::model::fit::{SleeveDesign, Spread};
use crate::trade::bench::BenchTables;

/// More interference than this is no press fit but a mistake, mm on the diameter; the search ends there.
const MOST_MM: f64 = 1.0;
/// Less than this share of the seat's own tolerance is no window to bore to: it would ask more of the machine than the
/// finished seat does. Workshop judgement.
const LEAST_WINDOW: f64 = 0.5;
/// Halvings of the search: to a billionth of a millimetre.
const HALVINGS: usize = 30;

/// The sleeve's limits in this housing; none without a sleeve.
pub(super) fn design(
    checked: &Checked<'_>,
    fits: &Fits,
    shown: &[f64],
    tables: &BenchTables,
) -> Option<SleeveDesign> {
    let sleeve = checked.sleeve.as_ref()?;
    let closes = |interference: f64| 1000.0 * fits.stack.closing(interference);
    let closes_um = Spread {
        least: closes(fits.sleeve.least),
        mean: closes(fits.sleeve.mean),
        most: closes(fits.sleeve.most),
    };
    let before =
        [checked.seat.least_mm + closes_um.most / 1000.0, checked.seat.most_mm + closes_um.least / 1000.0];
    let room = LEAST_WINDOW * (checked.seat.most_mm - checked.seat.least_mm);
    // What the sizes are not known by: a grip has to hold by its least, and be borne by its most.
    let (below, above) = (fits.sleeve.mean - fits.sleeve.least, fits.sleeve.most - fits.sleeve.mean);
    let hold = tables.verdict.least_interference_um.value / 1000.0;
    let least = checked.temperature.map(|range| {
        let lost = range.into_iter().chain([ROOM_C]).map(|celsius| -fits.sleeve_at(0.0, celsius));
        (hold + below + lost.fold(0.0, f64::max)).max(0.0)
    });
    let most = checked.temperature.and_then(|_| most(checked, fits, shown, (below, above), tables));
    let outside = |grip: Option<f64>| grip.map(|grip| sleeve.housing_bore.mean_mm + grip);
    Some(SleeveDesign {
        closes_um,
        bored_before_mm: (before[1] - before[0] >= room).then_some(before),
        outside_least_mm: outside(least),
        outside_most_mm: outside(most),
        holds: least.zip(most).map(|(least, most)| least < most),
    })
}

/// The most that every part bears at every temperature; none where a wall or a yield is not known.
fn most(
    checked: &Checked<'_>,
    fits: &Fits,
    shown: &[f64],
    (below, above): (f64, f64),
    tables: &BenchTables,
) -> Option<f64> {
    let borne = |mean: f64| {
        let with = Fits { sleeve: Spread { least: mean - below, mean, most: mean + above }, ..*fits };
        let parts = stress(checked, &with, shown);
        let shares: Option<Vec<f64>> = parts.iter().map(|part| part.used).collect();
        Some(shares?.into_iter().fold(0.0, f64::max) <= tables.verdict.most_yield_share.value)
    };
    let (mut low, mut high) = (0.0, MOST_MM);
    if !borne(low)? {
        return Some(0.0);
    }
    if borne(high)? {
        return Some(high);
    }
    for _ in 0..HALVINGS {
        let middle = f64::midpoint(low, high);
        if borne(middle)? { low = middle } else { high = middle }
    }
    Some(low)
}
