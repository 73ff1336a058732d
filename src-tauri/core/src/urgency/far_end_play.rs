//! Movement at the far end of the shaft, felt or not decided.

use super::rule::{Hit, Look, Rule, hit_if_any};
use crate::model::ids::{answer, step};
use crate::model::rating::Word;

/// Movement at the far end of the shaft, felt or not decided.
pub const RULE: Rule = Rule { id: "far-end-play", word: Word::Warning, look };

fn look(look: &Look<'_>) -> Vec<Hit> {
    hit_if_any(look.case, &[step::PLAY_FAR_END], &[answer::FELT, answer::UNSURE])
}
