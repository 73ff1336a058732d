//! A bolt of a coupling is loose or missing: the others shear, and the shaft comes off.

use super::rule::{Hit, Look, Rule, hit_if_any};
use crate::model::ids::step;
use crate::model::rules;

/// See [`rules::COUPLING_BOLTS`].
pub const RULE: Rule = Rule { facts: &rules::COUPLING_BOLTS, look };

fn look(look: &Look<'_>) -> Vec<Hit> {
    hit_if_any(look.case, &[step::COUPLING_LOOK], &["bolt-loose", "bolt-missing"])
}
