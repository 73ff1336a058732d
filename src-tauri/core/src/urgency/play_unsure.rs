//! Movement at the support could not be decided; unsure never reads as safe.

use super::rule::{Hit, Look, Rule, hit_if_any};
use crate::model::ids::{answer, step};
use crate::model::rating::Word;

/// Movement at the support could not be decided; unsure never reads as safe.
pub const RULE: Rule = Rule { id: "play-unsure", word: Word::Warning, look };

fn look(look: &Look<'_>) -> Vec<Hit> {
    hit_if_any(
        look.case,
        &[step::PLAY_VERTICAL, step::PLAY_LATERAL, step::TUBE_OPEN_CHECK],
        &[answer::UNSURE],
    )
}
