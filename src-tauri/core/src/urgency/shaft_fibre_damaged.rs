//! A fibre shaft is damaged: it can burst without further warning.

use super::rule::{Hit, Look, Rule, hit_if_any};
use crate::model::ids::step;
use crate::model::rules;

/// See [`rules::SHAFT_FIBRE_DAMAGED`].
pub const RULE: Rule = Rule { facts: &rules::SHAFT_FIBRE_DAMAGED, look };

fn look(look: &Look<'_>) -> Vec<Hit> {
    hit_if_any(look.case, &[step::SHAFT_LOOK], &["fibre-damage"])
}
