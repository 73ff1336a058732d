//! A buzz with no movement felt on a cold rigid housing.

use super::super::rule::{Hit, Look, Rule};
use crate::model::case::Case;
use crate::model::ids::{answer, step};
use crate::model::rules;
use crate::model::standing::Support;

/// See [`rules::COLD_CHECK`].
pub const RULE: Rule = Rule { facts: &rules::COLD_CHECK, look };

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

fn none_but_not_warm(case: &Case, step: &str) -> bool {
    let warm = |answer: &crate::model::case::CaseAnswer| {
        answer.temperature.is_some_and(|read| read.is_warm(case.rules.warm_from_c))
    };
    case.has(step, answer::NONE) && case.answer(step).is_some_and(|answer| !warm(answer))
}
