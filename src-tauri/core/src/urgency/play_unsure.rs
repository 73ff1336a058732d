//! Movement at the support could not be decided; unsure never reads as safe.

use super::rule::{Hit, Look, Rule, hit_if_any};
use crate::model::ids::{answer, step};
use crate::model::rules;

/// See [`rules::PLAY_UNSURE`].
pub const RULE: Rule = Rule { facts: &rules::PLAY_UNSURE, look };

fn look(look: &Look<'_>) -> Vec<Hit> {
    let steps = [step::PLAY_VERTICAL, step::PLAY_LATERAL, step::TUBE_OPEN_CHECK];
    hit_if_any(look.case, &steps, &[answer::UNSURE])
}
