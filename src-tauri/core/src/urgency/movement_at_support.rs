//! Movement felt at a rigidly held bearing or in an opened tube: the shaft can flail.

use super::rule::{Hit, Look, Rule, hit_if_any};
use crate::model::ids::{answer, step};
use crate::model::rules;
use crate::model::standing::Support;

/// See [`rules::MOVEMENT_AT_SUPPORT`].
pub const RULE: Rule = Rule { facts: &rules::MOVEMENT_AT_SUPPORT, look };

fn look(look: &Look<'_>) -> Vec<Hit> {
    if look.case.support == Support::Rubber {
        return Vec::new();
    }
    hit_if_any(look.case, &[step::PLAY_VERTICAL, step::PLAY_LATERAL, step::TUBE_OPEN_CHECK], &[answer::FELT])
}
