//! The shaft resists, and wheels, brakes and final drive came along: they drag on a sound car, but not so that a hand
//! notices. Whether it is the bearing only the free turn tells.

use super::rule::{Hit, Look, Rule, hit_where};
use crate::model::ids::{answer, step};
use crate::model::rules;

/// See [`rules::STIFF_WITH_WHEELS`].
pub const RULE: Rule = Rule { facts: &rules::STIFF_WITH_WHEELS, look };

fn look(look: &Look<'_>) -> Vec<Hit> {
    // An engine's compression always resists and says nothing.
    if look.case.engine_speed {
        return Vec::new();
    }
    let stiff = |answer: &crate::model::case::CaseAnswer| !answer.found && answer.value.has(answer::RESISTS);
    hit_where(look.case, &[step::TURN_BY_HAND], stiff)
}
