//! The second rules, as they were for most of 2026-11-29: a visit that was rated by them is read so. They differ from
//! those of today by the rules that did not exist, by what WARNING says of driving, by the look at rubber, which only
//! limited a rating, by fewer noises that cold does not clear, and by how `walk/case.rs` reads a shaft turned with the
//! wheels and an idle read cold.

use super::RULES;
use super::rule::Rule;
use crate::model::rules::{self, Facts};

/// Every rule there was, strongest word first.
pub fn rules() -> Vec<&'static Rule> {
    const SINCE: [&Facts; 4] =
        [&rules::STIFF_WITH_WHEELS, &rules::COUPLING_WORN, &rules::BOOT_TORN, &rules::SAGGING_TOUCHES];
    RULES.into_iter().filter(|rule| !SINCE.contains(&rule.facts)).collect()
}
