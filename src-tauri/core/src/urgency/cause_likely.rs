//! Another cause is as likely as not or more.

use super::rule::{Hit, Look, Rule};
use crate::model::rules;
use crate::model::standing::CauseGroup;

/// See [`rules::CAUSE_LIKELY`].
pub const RULE: Rule = Rule { facts: &rules::CAUSE_LIKELY, look };

fn look(look: &Look<'_>) -> Vec<Hit> {
    let causes = look.sorting.map(|sorting| sorting.causes.as_slice()).unwrap_or_default();
    let from = look.case.rules.likely;
    let likely = causes.iter().filter(|cause| cause.group == CauseGroup::Other && cause.probability >= from);
    likely.map(|cause| Hit { cause: Some(cause.id.clone()), ..Hit::default() }).collect()
}
