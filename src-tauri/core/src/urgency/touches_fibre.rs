//! Something touches a fibre shaft: it cuts the fibre it rests on.

use super::rule::{Hit, Look, Rule, hit_if_any};
use crate::model::ids::step;
use crate::model::rules;

/// See [`rules::TOUCHES_FIBRE`].
pub const RULE: Rule = Rule { facts: &rules::TOUCHES_FIBRE, look };

fn look(look: &Look<'_>) -> Vec<Hit> {
    hit_if_any(look.case, &[step::SHIELD_AND_MOUNTS], &["touches-fibre"])
}
