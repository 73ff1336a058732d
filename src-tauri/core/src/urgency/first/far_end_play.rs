//! Movement at the far end of the shaft, felt or not decided.

use super::super::rule::{Hit, Look, Rule, hit_if_any};
use crate::model::ids::{answer, step};
use crate::model::rules;

/// See [`rules::FAR_END_PLAY`].
pub const RULE: Rule = Rule { facts: &rules::FAR_END_PLAY, look };

fn look(look: &Look<'_>) -> Vec<Hit> {
    hit_if_any(look.case, &[step::PLAY_FAR_END], &[answer::FELT, answer::UNSURE])
}
