//! A coupling is about to fail.

use super::rule::{Hit, Look, Rule, hit_if_any};
use crate::model::ids::step;
use crate::model::rules;

/// See [`rules::COUPLING_FAILING`].
pub const RULE: Rule = Rule { facts: &rules::COUPLING_FAILING, look };

fn look(look: &Look<'_>) -> Vec<Hit> {
    hit_if_any(look.case, &[step::COUPLING_LOOK], &["about-to-fail"])
}
