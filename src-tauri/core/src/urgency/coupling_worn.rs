//! A coupling or joint was seen worn, or is stiff.

use super::rule::{Hit, Look, Rule, hit_if_any};
use crate::model::ids::step;
use crate::model::rules;

/// See [`rules::COUPLING_WORN`].
pub const RULE: Rule = Rule { facts: &rules::COUPLING_WORN, look };

fn look(look: &Look<'_>) -> Vec<Hit> {
    hit_if_any(look.case, &[step::COUPLING_LOOK], &["worn", "joint-stiff"])
}
