//! The rubber of a support is torn.

use super::rule::{Hit, Look, Rule, hit_if_any};
use crate::model::ids::step;
use crate::model::rules;

/// See [`rules::SUPPORT_TORN`].
pub const RULE: Rule = Rule { facts: &rules::SUPPORT_TORN, look };

fn look(look: &Look<'_>) -> Vec<Hit> {
    hit_if_any(look.case, &[step::SUPPORT_LOOK], &["torn"])
}
