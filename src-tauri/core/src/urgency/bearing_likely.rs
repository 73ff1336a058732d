//! The bearing group is as likely as not or more, with no other finding allowed to talk it down.

use crate::model::rating::Word;

use super::rule::{Hit, Look, Rule};

/// The bearing group is as likely as not or more, with no other finding allowed to talk it down.
pub const RULE: Rule = Rule { id: "bearing-likely", word: Word::Warning, look };

/// "As likely as not": one half.
const LIKELY: f64 = 0.5;

fn look(look: &Look<'_>) -> Vec<Hit> {
    let likely = look
        .sorting
        .is_some_and(|sorting| sorting.bearing_probability >= LIKELY || sorting.bearing_unexcused >= LIKELY);
    if likely { vec![Hit::default()] } else { Vec::new() }
}
