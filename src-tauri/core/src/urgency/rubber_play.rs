//! A rubber support moves to a stop or beyond what the maker allows; `felt` is what earlier visits call it.

use super::rule::{Hit, Look, Rule, hit_if_any};
use crate::model::ids::{answer, step};
use crate::model::rules;
use crate::model::standing::Support;

/// See [`rules::RUBBER_PLAY`].
pub const RULE: Rule = Rule { facts: &rules::RUBBER_PLAY, look };

fn look(look: &Look<'_>) -> Vec<Hit> {
    if look.case.support != Support::Rubber {
        return Vec::new();
    }
    let moved = [answer::KNOCKS, answer::BEYOND_FIGURE, answer::FELT];
    hit_if_any(look.case, &[step::PLAY_VERTICAL, step::PLAY_LATERAL], &moved)
}
