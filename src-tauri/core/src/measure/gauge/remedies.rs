//! What would decide a case that is not decided: worked out by doing the budget again with more readings,
//! a finer gauge, or the gauge at the bearing, on the assumption that mean and scatter stay as they are.

use super::budget::{AtWork, contributions, lines};
use super::combine::combine;
use super::decide::{bands, decide, guard_of};
use crate::model::gauge::{GaugeDecision, Remedy};
use crate::model::typed::LengthUnit;

/// With fewer, effective degrees of freedom make the interval narrower than a Monte Carlo run finds it: by a
/// fifth with three readings whose scatter is a fifth of the variance.
const FIRST_READINGS: u32 = 5;

/// What a remedy is sought for.
#[derive(Debug, Clone, Copy)]
pub struct Sought<'t> {
    /// The gauge as it was used.
    pub at: AtWork,
    /// The limit at the bearing, millimetres.
    pub limit: f64,
    /// Least guard band, in standard uncertainties.
    pub guard_least: f64,
    /// Most readings that anybody takes.
    pub most_readings: u32,
    /// Unit of the gauge: a finer one is sought in the same.
    pub unit: LengthUnit,
    /// Steps of gauges in that unit, coarsest first.
    pub steps: &'t [f64],
}

/// Everything that would decide it, the least effort first; [`Remedy::TooNearLimit`] if nothing would.
pub fn remedies(sought: &Sought<'_>) -> Vec<Remedy> {
    if sought.at.deviation.is_none() {
        return vec![Remedy::ReadAgain { readings: FIRST_READINGS }];
    }
    let found: Vec<Remedy> =
        [more_readings(sought), finer_gauge(sought), at_bearing(sought)].into_iter().flatten().collect();
    if !found.is_empty() {
        return found;
    }
    vec![finer_gauge_more_readings(sought).unwrap_or(Remedy::TooNearLimit)]
}

fn more_readings(sought: &Sought<'_>) -> Option<Remedy> {
    enough_readings(sought, sought.at).map(|readings| Remedy::MoreReadings { readings })
}

fn finer_gauge(sought: &Sought<'_>) -> Option<Remedy> {
    finer(sought)
        .find(|at| decides(sought, at))
        .map(|at| Remedy::FinerGauge { resolution_mm: at.resolution, mpe_mm: at.mpe })
}

/// Only where the lever enlarges what the gauge does not know.
fn at_bearing(sought: &Sought<'_>) -> Option<Remedy> {
    let ratio = sought.at.ratio();
    let deviation = sought.at.deviation.map(|deviation| deviation * ratio);
    let moved = AtWork { arms: None, mean: sought.at.movement(), deviation, ..sought.at };
    (ratio > 1.0 && decides(sought, &moved)).then_some(Remedy::AtBearing)
}

fn finer_gauge_more_readings(sought: &Sought<'_>) -> Option<Remedy> {
    finer(sought).find_map(|at| {
        let readings = enough_readings(sought, at)?;
        Some(Remedy::FinerGaugeMoreReadings { resolution_mm: at.resolution, mpe_mm: at.mpe, readings })
    })
}

/// Gauges with a finer step, permissible error finer in proportion, coarsest first.
fn finer<'t>(sought: &Sought<'t>) -> impl Iterator<Item = AtWork> + use<'t> {
    let Sought { at, unit, steps, .. } = *sought;
    steps
        .iter()
        .map(move |step| unit.to_mm(*step))
        .filter(move |step| *step < at.resolution * 0.999)
        .map(move |step| AtWork { resolution: step, mpe: at.mpe * step / at.resolution, ..at })
}

fn enough_readings(sought: &Sought<'_>, at: AtWork) -> Option<u32> {
    (at.readings + 1..=sought.most_readings)
        .find(|readings| decides(sought, &AtWork { readings: *readings, ..at }))
}

fn decides(sought: &Sought<'_>, at: &AtWork) -> bool {
    let combined = combine(&contributions(&lines(at)));
    let guard = guard_of(at, sought.limit, (&combined, sought.guard_least));
    let bands = bands(sought.limit, guard);
    decide(at.movement(), &bands) != GaugeDecision::NotDecided
}
