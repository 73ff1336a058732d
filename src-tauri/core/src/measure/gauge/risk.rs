//! How often a gauge at its place would decide rightly and wrongly, over everything the movement may be
//! (global risks, JCGM 106:2012, clause 9.5).

use super::student;
use crate::model::gauge::{Bands, Chances};

/// Steps of the integration on each side of the limit; even, for Simpson's rule.
const STEPS: u32 = 2_000;

/// The global risks of a measurement with standard uncertainty `standard` (normal), where the movement
/// has the density `prior` from 0 to `top`. `limit` lies between them; all in one unit.
pub fn risks(prior: &dyn Fn(f64) -> f64, top: f64, limit: f64, bands: &Bands, standard: f64) -> Chances {
    let below = |edge: f64, truth: f64| student::cumulative((edge - truth) / standard, None);
    let passed = |truth: f64| below(bands.none_up_to_mm, truth);
    let failed = |truth: f64| 1.0 - below(bands.proven_above_mm, truth);
    let missed = integral(limit, top, &|truth| prior(truth) * passed(truth));
    let false_alarm = integral(0.0, limit, &|truth| prior(truth) * failed(truth));
    let open = |truth: f64| prior(truth) * (1.0 - passed(truth) - failed(truth));
    let undecided = integral(0.0, limit, &open) + integral(limit, top, &open);
    Chances { missed, false_alarm, undecided }
}

/// The chances of a gauge where the movement may lie anywhere from none to twice the limit, evenly.
pub fn even_chances(limit: f64, bands: &Bands, standard: f64) -> Chances {
    let top = 2.0 * limit;
    risks(&|_| 1.0 / top, top, limit, bands, standard)
}

/// Simpson's rule.
fn integral(from: f64, to: f64, f: &dyn Fn(f64) -> f64) -> f64 {
    let width = (to - from) / f64::from(STEPS);
    let inner: f64 = (1..STEPS)
        .map(|step| f(from + width * f64::from(step)) * if step % 2 == 0 { 2.0 } else { 4.0 })
        .sum();
    (f(from) + inner + f(to)) * width / 3.0
}
