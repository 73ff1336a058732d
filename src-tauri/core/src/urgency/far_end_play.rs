//! Movement at the far end of the shaft, felt or not decided.

use crate::model::rating::Word;
use crate::model::ids::{answer, step};
use super::rule::{Hit, Look, Rule, hit_if_any};

/// Movement at the far end of the shaft, felt or not decided.
pub const RULE: Rule = Rule { id: "far-end-play", word: Word::Warning, look };

fn look(look: &Look<'_>) -> Vec<Hit> {
    hit_if_any(look.case, &[step::PLAY_FAR_END], &[answer::FELT, answer::UNSURE])
}
