//! The bearing group is as likely as not or more, whatever was felt.

use super::super::rule::{Hit, Look, Rule};
use crate::model::rules;

/// See [`rules::BEARING_LIKELY`].
pub const RULE: Rule = Rule { facts: &rules::BEARING_LIKELY, look };

fn look(look: &Look<'_>) -> Vec<Hit> {
    let from = look.case.rules.likely;
    let likely = look
        .sorting
        .is_some_and(|sorting| sorting.bearing_probability >= from || sorting.bearing_unexcused >= from);
    if likely { vec![Hit::default()] } else { Vec::new() }
}
