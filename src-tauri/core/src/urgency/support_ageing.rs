//! A rubber support sits off centre, is soaked in oil or crazed.

use super::rule::{Hit, Look, Rule, hit_if_any};
use crate::model::ids::step;
use crate::model::rules;

/// See [`rules::SUPPORT_AGEING`].
pub const RULE: Rule = Rule { facts: &rules::SUPPORT_AGEING, look };

fn look(look: &Look<'_>) -> Vec<Hit> {
    hit_if_any(look.case, &[step::SUPPORT_LOOK], &["off-centre", "oil-soaked", "crazed"])
}
