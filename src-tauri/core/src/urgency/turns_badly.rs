//! The bearing turns roughly or resists when turned by hand. Resistance of a shaft that turns the engine or the wheels
//! along is theirs, and no finding; roughness is one whatever comes along.

use super::rule::{Hit, Look, Rule, hit_where, holds};
use crate::model::ids::{answer, step};
use crate::model::rules;

/// See [`rules::TURNS_BADLY`].
pub const RULE: Rule = Rule { facts: &rules::TURNS_BADLY, look };

fn look(look: &Look<'_>) -> Vec<Hit> {
    let badly = [answer::ROUGH, answer::RESISTS];
    hit_where(look.case, &[step::TURN_BY_HAND], |answer| answer.found && holds(answer, &badly))
}
