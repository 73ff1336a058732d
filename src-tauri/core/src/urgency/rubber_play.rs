//! Movement beyond what the rubber support allows, or felt where no figure is known.

use super::rule::{Hit, Look, Rule, hit_if_any};
use crate::model::ids::{answer, step};
use crate::model::rating::Word;
use crate::model::standing::Support;

/// Movement beyond what the rubber support allows, or felt where no figure is known.
pub const RULE: Rule = Rule { id: "rubber-play", word: Word::Warning, look };

fn look(look: &Look<'_>) -> Vec<Hit> {
    if look.case.support != Support::Rubber {
        return Vec::new();
    }
    hit_if_any(look.case, &[step::PLAY_VERTICAL, step::PLAY_LATERAL], &[answer::FELT, answer::BEYOND_FIGURE])
}
