//! Something was found while the car was written down otherwise, and is neither felt again nor taken back with a reason:
//! it counts for nothing where it was found, and is not forgotten.

use super::rule::{Hit, Look, Rule};
use crate::model::rules;

/// See [`rules::SET_APART`].
pub const RULE: Rule = Rule { facts: &rules::SET_APART, look };

fn look(look: &Look<'_>) -> Vec<Hit> {
    if look.case.apart { vec![Hit::default()] } else { Vec::new() }
}
