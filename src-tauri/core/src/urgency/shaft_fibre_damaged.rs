//! A fibre shaft is damaged: it can burst without further warning.

use super::rule::{Hit, Look, Rule, hit_if_any};
use crate::model::ids::step;
use crate::model::rating::Word;

/// A fibre shaft is damaged: it can burst without further warning.
pub const RULE: Rule = Rule { id: "shaft-fibre-damaged", word: Word::Danger, look };

fn look(look: &Look<'_>) -> Vec<Hit> {
    hit_if_any(look.case, &[step::SHAFT_LOOK], &["fibre-damage"])
}
