//! Movement felt at a rigidly held bearing or in an opened tube: the shaft can flail.

use super::rule::{Hit, Look, Rule, hit_if_any};
use crate::model::ids::{answer, step};
use crate::model::rating::Word;
use crate::model::standing::Support;

/// Movement felt at a rigidly held bearing or in an opened tube: the shaft can flail.
pub const RULE: Rule = Rule { id: "movement-at-support", word: Word::Danger, look };

fn look(look: &Look<'_>) -> Vec<Hit> {
    if look.case.support == Support::Rubber {
        return Vec::new();
    }
    hit_if_any(look.case, &[step::PLAY_VERTICAL, step::PLAY_LATERAL, step::TUBE_OPEN_CHECK], &[answer::FELT])
}
