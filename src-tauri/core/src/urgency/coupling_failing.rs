//! A coupling is about to fail.

use super::rule::{Hit, Look, Rule, hit_if_any};
use crate::model::ids::step;
use crate::model::rating::Word;

/// A coupling is about to fail.
pub const RULE: Rule = Rule { id: "coupling-failing", word: Word::Danger, look };

fn look(look: &Look<'_>) -> Vec<Hit> {
    hit_if_any(look.case, &[step::COUPLING_LOOK], &["about-to-fail"])
}
