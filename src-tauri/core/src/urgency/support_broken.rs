//! A rubber support is torn through, or what holds it is cracked or loose: the shaft can drop.

use super::rule::{Hit, Look, Rule, hit_if_any};
use crate::model::ids::step;
use crate::model::rules;

/// See [`rules::SUPPORT_BROKEN`].
pub const RULE: Rule = Rule { facts: &rules::SUPPORT_BROKEN, look };

fn look(look: &Look<'_>) -> Vec<Hit> {
    hit_if_any(look.case, &[step::SUPPORT_LOOK], &["torn-through", "bracket-cracked", "fastener-loose"])
}
