//! Movement across, or a clunk, at the far end. Sliding along the axis is what a plunge joint or slip yoke is for.

use super::rule::{Hit, Look, Rule, hit_if_any};
use crate::model::ids::{answer, step};
use crate::model::rules;

/// See [`rules::FAR_END_PLAY`].
pub const RULE: Rule = Rule { facts: &rules::FAR_END_PLAY, look };

fn look(look: &Look<'_>) -> Vec<Hit> {
    hit_if_any(look.case, &[step::PLAY_FAR_END], &[answer::FELT])
}
