//! Another cause is as likely as not or more.

use super::rule::{Hit, Look, Rule};
use crate::model::rating::Word;
use crate::model::standing::CauseGroup;

/// Another cause is as likely as not or more.
pub const RULE: Rule = Rule { id: "cause-likely", word: Word::Caution, look };

/// "As likely as not": one half.
const LIKELY: f64 = 0.5;

fn look(look: &Look<'_>) -> Vec<Hit> {
    let causes = look.sorting.map(|sorting| sorting.causes.as_slice()).unwrap_or_default();
    let likely =
        causes.iter().filter(|cause| cause.group == CauseGroup::Other && cause.probability >= LIKELY);
    likely.map(|cause| Hit { steps: Vec::new(), cause: Some(cause.id.clone()) }).collect()
}
