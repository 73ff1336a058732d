//! The housing is cracked or one of its fasteners is loose.

use super::rule::{Hit, Look, Rule, hit_if_any};
use crate::model::ids::step;
use crate::model::rating::Word;

/// The housing is cracked or one of its fasteners is loose.
pub const RULE: Rule = Rule { id: "housing-broken", word: Word::Danger, look };

fn look(look: &Look<'_>) -> Vec<Hit> {
    hit_if_any(look.case, &[step::HOUSING_LOOK], &["cracked", "fastener-loose"])
}
