//! The shaft is dented or has lost a balance weight.

use super::rule::{Hit, Look, Rule, hit_if_any};
use crate::model::ids::step;
use crate::model::rules;

/// See [`rules::SHAFT_DAMAGED`].
pub const RULE: Rule = Rule { facts: &rules::SHAFT_DAMAGED, look };

fn look(look: &Look<'_>) -> Vec<Hit> {
    hit_if_any(look.case, &[step::SHAFT_LOOK], &["dented", "weight-missing"])
}
