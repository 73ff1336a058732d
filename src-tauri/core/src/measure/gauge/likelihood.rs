//! What readings say to the sorting, as a pair of likelihoods.
//!
//! Given "movement", the true movement may lie anywhere above the limit; given "none", anywhere below it;
//! both evenly, over ranges that are equally wide and wide against the uncertainty. The likelihood of the
//! readings under each is then the part of their Student's t curve (mean, standard uncertainty, effective
//! degrees of freedom) on that side of the limit, up to a common factor. At the limit the two are equal:
//! the readings say nothing. They are kept inside 0.0001 to 0.9999, so that no gauge outweighs everything
//! else; and a hand that felt movement stands as a sign of its own, which no gauge takes back.

use super::combine::Combined;
use super::student;
use crate::model::gauge::Likelihood;

const LEAST: f64 = 1e-4;

/// The likelihoods of a mean under movement beyond the limit and under none.
pub fn likelihood(mean: f64, combined: &Combined, limit: f64) -> Likelihood {
    let below = student::cumulative((limit - mean) / combined.standard, combined.whole_dof());
    let kept = |p: f64| p.clamp(LEAST, 1.0 - LEAST);
    Likelihood { if_movement: kept(1.0 - below), if_none: kept(below) }
}
