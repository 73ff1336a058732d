//! A running check was broken off for a heavy knock or a strong vibration.

use super::rule::{Hit, Look, Rule, hit_if_any};
use crate::model::ids::step;
use crate::model::rating::Word;

/// A running check was broken off for a heavy knock or a strong vibration.
pub const RULE: Rule = Rule { id: "running-stopped", word: Word::Danger, look };

fn look(look: &Look<'_>) -> Vec<Hit> {
    hit_if_any(look.case, &[step::RUNNING_STOP], &["heavy-knock", "strong-vibration"])
}
