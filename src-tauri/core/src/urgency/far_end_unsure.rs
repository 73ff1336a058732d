//! Movement at the far end could not be decided.

use super::play_unsure::ends_decide;
use super::rule::{Hit, Look, Rule, hit_if_any};
use crate::model::ids::{answer, step};
use crate::model::rules;

/// See [`rules::FAR_END_UNSURE`].
pub const RULE: Rule = Rule { facts: &rules::FAR_END_UNSURE, look };

fn look(look: &Look<'_>) -> Vec<Hit> {
    if ends_decide(look.case) {
        return Vec::new();
    }
    hit_if_any(look.case, &[step::PLAY_FAR_END], &[answer::UNSURE])
}
