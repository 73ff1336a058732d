//! The housing is cracked or one of its fasteners is loose.

use super::rule::{Hit, Look, Rule, hit_if_any};
use crate::model::ids::step;
use crate::model::rules;

/// See [`rules::HOUSING_BROKEN`].
pub const RULE: Rule = Rule { facts: &rules::HOUSING_BROKEN, look };

fn look(look: &Look<'_>) -> Vec<Hit> {
    hit_if_any(look.case, &[step::HOUSING_LOOK], &["cracked", "fastener-loose"])
}
