//! The first rules, as they were until 2026-11-29: old visits are read by them as they were rated. Nothing new is
//! rated so. What they share with the rules of today is not repeated.

mod bearing_likely;
mod cold_check_buzz;
mod far_end_play;

use crate::model::case::Case;
use crate::model::ids::step;
use crate::model::rating::{Reason, Word};

use super::rule::Rule;
use super::{
    cause_likely, coupling_failing, finding_unexplained, housing_broken, movement_at_support,
    no_bearing_action, play_unsure, rubber_play, running_stopped, shaft_damaged, shaft_fibre_damaged,
    turns_badly,
};

/// Every rule, strongest word first.
pub const RULES: [&Rule; 15] = [
    &movement_at_support::RULE,
    &housing_broken::RULE,
    &coupling_failing::RULE,
    &shaft_fibre_damaged::RULE,
    &running_stopped::RULE,
    &play_unsure::RULE,
    &rubber_play::RULE,
    &turns_badly::RULE,
    &shaft_damaged::RULE,
    &far_end_play::RULE,
    &bearing_likely::RULE,
    &cause_likely::RULE,
    &cold_check_buzz::RULE,
    &finding_unexplained::RULE,
    &no_bearing_action::RULE,
];

/// The strongest word, unless the hands-on check is open. DANGER stands whatever is missing; a turn by
/// hand alone may be missing where the rating is stronger than NOTICE anyway.
pub fn word(_: &Case, reasons: &[Reason], missing: &[String]) -> Option<Word> {
    let strongest = reasons.iter().map(|reason| reason.word).max();
    if strongest == Some(Word::Danger) || missing.is_empty() {
        return strongest;
    }
    let only_turn = missing.iter().all(|step| step == step::TURN_BY_HAND);
    strongest.filter(|word| only_turn && *word > Word::Notice)
}
