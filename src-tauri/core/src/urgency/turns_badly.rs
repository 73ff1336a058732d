//! The bearing turns roughly or resists when turned by hand.

use super::rule::{Hit, Look, Rule, hit_if_any};
use crate::model::ids::{answer, step};
use crate::model::rating::Word;

/// The bearing turns roughly or resists when turned by hand.
pub const RULE: Rule = Rule { id: "turns-badly", word: Word::Warning, look };

fn look(look: &Look<'_>) -> Vec<Hit> {
    hit_if_any(look.case, &[step::TURN_BY_HAND], &[answer::ROUGH, answer::RESISTS])
}
