//! A mount of engine or gearbox is broken: the shaft runs at an angle it was not made for.

use super::rule::{Hit, Look, Rule, hit_if_any};
use crate::model::ids::step;
use crate::model::rules;

/// See [`rules::MOUNT_BROKEN`].
pub const RULE: Rule = Rule { facts: &rules::MOUNT_BROKEN, look };

fn look(look: &Look<'_>) -> Vec<Hit> {
    hit_if_any(look.case, &[step::SHIELD_AND_MOUNTS], &["mount-broken"])
}
