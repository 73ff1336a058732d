//! The boot of a joint is torn: grease goes out, dirt gets in.

use super::rule::{Hit, Look, Rule, hit_if_any};
use crate::model::ids::step;
use crate::model::rules;

/// See [`rules::BOOT_TORN`].
pub const RULE: Rule = Rule { facts: &rules::BOOT_TORN, look };

fn look(look: &Look<'_>) -> Vec<Hit> {
    hit_if_any(look.case, &[step::COUPLING_LOOK], &["boot-torn"])
}
