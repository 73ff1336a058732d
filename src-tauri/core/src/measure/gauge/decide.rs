//! The decision rule of ISO 14253-1: a guard band on both sides of the limit, so that either proof holds at 95 %;
//! between the two, nothing is proven.
//!
//! The band is 1.66 standard uncertainties or the one-sided t, whichever is larger: the standard's 0.83 U alone would
//! not hold 95 % with few readings. Cost: three readings decide less often.

use super::budget::AtWork;
use super::combine::Combined;
use super::student;
use crate::model::gauge::{Bands, GaugeDecision};

/// The guard band: the standard's figure in standard uncertainties, or the one-sided 95 % of Student's t
/// where few degrees of freedom make that larger.
pub fn guard(combined: &Combined, least: f64) -> f64 {
    least.max(student::quantile(0.95, combined.whole_dof())) * combined.standard
}

/// The guard band of a gauge at work. Where its permissible error alone is as wide as the limit, also all that the gauge
/// itself may be off by: it can still prove a movement beyond the limit, never one within it.
pub fn guard_of(at: &AtWork, limit: f64, (combined, least): (&Combined, f64)) -> f64 {
    let guard = guard(combined, least);
    let coarse = at.mpe * at.ratio() >= limit;
    if coarse { guard.max((at.mpe + 0.5 * at.resolution) * at.ratio()) } else { guard }
}

/// The means at which the decision changes, a guard band to either side of the limit; all in the limit's unit.
pub fn bands(limit: f64, guard: f64) -> Bands {
    Bands { guard_mm: guard, none_up_to_mm: limit - guard, proven_above_mm: limit + guard }
}

/// What a mean proves: movement beyond the limit, none beyond it, or neither.
pub fn decide(mean: f64, bands: &Bands) -> GaugeDecision {
    if mean > bands.proven_above_mm {
        GaugeDecision::Proven
    } else if mean <= bands.none_up_to_mm {
        GaugeDecision::NoneProven
    } else {
        GaugeDecision::NotDecided
    }
}
