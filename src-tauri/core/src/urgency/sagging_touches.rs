//! A rubber support sags, and something touches: the shaft has come down on what it touches, or is about to.

use super::rule::{Hit, Look, Rule, hit_if_any};
use crate::model::ids::step;
use crate::model::rules;

/// See [`rules::SAGGING_TOUCHES`].
pub const RULE: Rule = Rule { facts: &rules::SAGGING_TOUCHES, look };

fn look(look: &Look<'_>) -> Vec<Hit> {
    let sagging = hit_if_any(look.case, &[step::SUPPORT_LOOK], &["off-centre"]);
    let touching = hit_if_any(look.case, &[step::SHIELD_AND_MOUNTS], &["touching", "touches-fibre"]);
    if sagging.is_empty() || touching.is_empty() {
        return Vec::new();
    }
    Hit::on(sagging.into_iter().chain(touching).flat_map(|hit| hit.steps).collect())
}
