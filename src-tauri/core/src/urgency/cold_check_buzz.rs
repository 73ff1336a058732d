//! A buzz with no movement felt on a cold housing: an aluminium seat opens when hot, so cold `none` does not clear it.

use super::rule::{Hit, Look, Rule};
use crate::model::answer::Temperature;
use crate::model::case::Case;
use crate::model::ids::{answer, step};
use crate::model::rating::Word;
use crate::model::standing::Support;

/// A buzz with no movement felt on a cold housing: an aluminium seat opens when hot, so cold `none` does not clear it.
pub const RULE: Rule = Rule { id: "cold-check-buzz", word: Word::Caution, look };

fn look(look: &Look<'_>) -> Vec<Hit> {
    let buzz = look.case.has(step::NEUTRAL_2500_BUZZ, answer::FELT)
        || look.case.complaint_sounds.iter().any(|sound| sound == "buzz");
    let support = [step::PLAY_VERTICAL, step::PLAY_LATERAL];
    let cold = support.iter().any(|step| none_but_not_warm(look.case, step));
    let felt = support.iter().any(|step| look.case.has(step, answer::FELT));
    if look.case.support == Support::Rigid && buzz && cold && !felt {
        vec![Hit::default()]
    } else {
        Vec::new()
    }
}

/// A `none` felt cold, or with no temperature recorded: a missing answer is taken as cold.
fn none_but_not_warm(case: &Case, step: &str) -> bool {
    case.has(step, answer::NONE)
        && case.answer(step).is_some_and(|answer| answer.temperature != Some(Temperature::Warm))
}
