//! Readings that do not fit their neighbours. They are flagged and used all the same: only a second reading
//! can say whether it was a slip or a burr.
//!
//! Test: the residual from a smooth fit, over the scatter that the other readings show (externally studentised,
//! Cook and Weisberg, Residuals and Influence in Regression (1982), from memory). The scatter is never taken
//! as less than the instrument's own.

use super::harmonics::{fit, terms_at};
use super::solve::dot;

/// With fewer readings nothing can be said against one.
pub const FEWEST: usize = 9;
/// Waves of the smooth fit, at most.
const WAVES: usize = 6;
/// Scatters away from the others.
const FAR: f64 = 5.0;

/// For each reading, whether it does not fit. `standard` is the standard uncertainty of one value.
pub fn flagged(angles: &[f64], values: &[f64], fold: usize, standard: f64) -> Vec<bool> {
    let count = values.len();
    let none = vec![false; count];
    if count < FEWEST {
        return none;
    }
    let Some(waves) = fit(angles, values, fold, ((count / 2 - 1) / 2).min(WAVES)) else { return none };
    let terms: Vec<Vec<f64>> = angles.iter().map(|angle| terms_at(*angle, fold, waves.pairs())).collect();
    let residuals: Vec<f64> =
        terms.iter().zip(values).map(|(terms, value)| value - dot(&waves.terms, terms)).collect();
    let squares = dot(&residuals, &residuals);
    let freedom = count as f64 - waves.terms.len() as f64 - 1.0;
    let far = |(residual, terms): (&f64, &Vec<f64>)| {
        let held: f64 = waves.spread.iter().zip(terms).map(|(row, term)| term * dot(row, terms)).sum();
        let open = (1.0 - held).max(1e-9);
        let others = ((squares - residual * residual / open) / freedom).max(standard * standard);
        residual.abs() > FAR * (others * open).sqrt()
    };
    residuals.iter().zip(&terms).map(far).collect()
}
