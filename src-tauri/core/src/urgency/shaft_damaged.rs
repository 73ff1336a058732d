//! The shaft is dented or has lost a balance weight.

use super::rule::{Hit, Look, Rule, hit_if_any};
use crate::model::ids::step;
use crate::model::rating::Word;

/// The shaft is dented or has lost a balance weight.
pub const RULE: Rule = Rule { id: "shaft-damaged", word: Word::Warning, look };

fn look(look: &Look<'_>) -> Vec<Hit> {
    hit_if_any(look.case, &[step::SHAFT_LOOK], &["dented", "weight-missing"])
}
