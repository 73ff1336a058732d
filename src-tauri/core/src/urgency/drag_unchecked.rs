//! A hiss, whine or whirr, and the shaft was not turned free: whether the bearing drags is not known.

use super::rule::{Hit, Look, Rule, holds};
use crate::model::ids::step;
use crate::model::rules;
use crate::model::standing::Support;

/// See [`rules::DRAG_UNCHECKED`].
pub const RULE: Rule = Rule { facts: &rules::DRAG_UNCHECKED, look };

/// What a bearing that drags sounds like.
const WHIRR: [&str; 2] = ["hiss", "whine"];

fn look(look: &Look<'_>) -> Vec<Hit> {
    let case = look.case;
    // At idle a shaft that turns with the gearbox's output stands still and is not what is heard.
    let heard = case.engine_speed && case.at(step::IDLE_NOISE).any(|(_, answer)| holds(answer, &WHIRR));
    let told = case.complaint_sounds.iter().any(|sound| WHIRR.contains(&sound.as_str()));
    let turns: Vec<&String> = case.limits.iter().filter(|step| is_turn(step)).collect();
    let found = turns.iter().any(|step| case.answer(step).is_some_and(|answer| answer.found));
    let open: Vec<String> = turns.into_iter().filter(|step| !case.says_all(step)).cloned().collect();
    // Where no bearing holds the shaft, none drags.
    let bearing = case.support != Support::Absent;
    if bearing && (heard || told) && !found { Hit::on(open) } else { Vec::new() }
}

fn is_turn(step: &str) -> bool {
    crate::model::ids::base(step) == step::TURN_BY_HAND
}
