//! Both directions without movement, turned smoothly, nothing found: no bearing action.

use crate::model::rating::Word;

use super::rule::{Hit, Look, Rule};

/// Both directions without movement, turned smoothly, nothing found: no bearing action.
pub const RULE: Rule = Rule { id: "no-bearing-action", word: Word::Notice, look };

fn look(look: &Look<'_>) -> Vec<Hit> {
    let checked = look.case.hands_on.iter().all(|step| look.case.looked(step));
    let found = look.case.answers.values().any(|answer| answer.found);
    if look.sorting.is_some() && checked && !found && !look.stronger {
        vec![Hit { steps: look.case.hands_on.clone(), cause: None }]
    } else {
        Vec::new()
    }
}
