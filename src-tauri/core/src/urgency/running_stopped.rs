//! A running check was broken off for a heavy knock or a strong vibration.

use super::rule::{Hit, Look, Rule, hit_if_any};
use crate::model::ids::step;
use crate::model::rules;

/// See [`rules::RUNNING_STOPPED`].
pub const RULE: Rule = Rule { facts: &rules::RUNNING_STOPPED, look };

fn look(look: &Look<'_>) -> Vec<Hit> {
    hit_if_any(look.case, &[step::RUNNING_STOP], &["heavy-knock", "strong-vibration"])
}
