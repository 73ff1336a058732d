//! No play, and nothing found: no bearing action, as far as was looked.

use crate::model::rules;

use super::rule::{Hit, Look, Rule};

/// See [`rules::NO_BEARING_ACTION`].
pub const RULE: Rule = Rule { facts: &rules::NO_BEARING_ACTION, look };

fn look(look: &Look<'_>) -> Vec<Hit> {
    let checked = look.case.hands_on.iter().all(|step| look.case.looked(step));
    let found = look.case.answers.values().any(|answer| answer.found);
    if look.sorting.is_some() && checked && !found && !look.stronger {
        Hit::on(look.case.hands_on.clone())
    } else {
        Vec::new()
    }
}
