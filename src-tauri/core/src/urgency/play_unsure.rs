//! Movement at the support could not be decided; unsure never reads as safe.

use super::rule::{Hit, Look, Rule, hit_if_any};
use crate::model::case::Case;
use crate::model::ids::{answer, step};
use crate::model::rules;
use crate::model::standing::Support;

/// See [`rules::PLAY_UNSURE`].
pub const RULE: Rule = Rule { facts: &rules::PLAY_UNSURE, look };

fn look(look: &Look<'_>) -> Vec<Hit> {
    let mut steps = vec![step::PLAY_VERTICAL, step::PLAY_LATERAL, step::TUBE_OPEN_CHECK];
    steps.extend(ends_decide(look.case).then_some(step::PLAY_FAR_END));
    hit_if_any(look.case, &steps, &[answer::UNSURE])
}

/// Whether the ends of the shaft are where hands decide: nothing holds it between them. The second rules left an unsure
/// one at CAUTION.
pub fn ends_decide(case: &Case) -> bool {
    case.support == Support::Absent && case.rules.version > 2
}
