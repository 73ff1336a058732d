//! The second rules, as they were for most of 2026-11-29: a visit that was rated by them is read so. They differ from
//! those of today by one rule that did not exist, by what WARNING says of driving, and by how `walk/case.rs` reads a
//! shaft turned with the wheels and an idle read cold.

use super::RULES;
use super::rule::Rule;
use crate::model::rules;

/// Every rule there was, strongest word first.
pub fn rules() -> Vec<&'static Rule> {
    RULES.into_iter().filter(|rule| rule.facts != &rules::STIFF_WITH_WHEELS).collect()
}
