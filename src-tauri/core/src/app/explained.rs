//! What a likely cause accounts for is not also called unexplained.

use std::collections::BTreeSet;

use crate::model::rating::{Reason, Urgency, Word};
use crate::model::rules::{self, LIKELY, Tells};
use crate::model::standing::{CauseGroup, CauseStand, Sorting};

/// Weight from which a likely cause accounts for what was found.
const EXPLAINS_DECIBANS: f64 = 1.0;

/// Takes from "found, and no other reason explains it" what speaks for a cause that another reason names,
/// and the reason itself where nothing is left of it. The rating stays: the reason that names the cause holds it.
pub fn leave_out(urgency: &mut Urgency, sorting: &Sorting) {
    let likely = sorting.causes.iter().filter(|cause| cause.probability >= LIKELY);
    let named: Vec<&CauseStand> = likely.filter(|cause| names(&urgency.reasons, cause)).collect();
    let spoken = named.iter().flat_map(|cause| &cause.speaks_for);
    let explained: BTreeSet<&str> = spoken
        .filter(|weight| weight.decibans >= EXPLAINS_DECIBANS)
        .map(|weight| weight.step.as_str())
        .collect();
    if urgency.rules <= 2 || explained.is_empty() {
        return;
    }
    for reason in urgency.reasons.iter_mut().filter(|reason| is_unexplained(reason)) {
        reason.steps.retain(|step| !explained.contains(step.as_str()));
    }
    urgency.reasons.retain(|reason| !is_unexplained(reason) || !reason.steps.is_empty());
}

/// A cause less likely than one in twenty stands first for nothing.
const ALMOST_NEVER: f64 = 0.05;

/// Puts the causes that what was found points at before the others, and that nothing is wrong at the
/// end: what a hand felt or an eye saw decides, whatever a noise makes likelier.
pub fn put_first(sorting: &mut Sorting, found: &[String], word: Option<Word>) {
    if found.is_empty() && word < Some(Word::Warning) {
        return;
    }
    sorting.causes.sort_by_key(|cause| match cause.group {
        CauseGroup::Normal => 2,
        _ if cause.probability >= ALMOST_NEVER && cause.is_pointed_at(found) => 0,
        _ => 1,
    });
}

fn is_unexplained(reason: &Reason) -> bool {
    reason.rule == rules::FINDING_UNEXPLAINED.id
}

/// Whether a reason that asks for CAUTION at least speaks of this cause.
fn names(reasons: &[Reason], cause: &CauseStand) -> bool {
    let speaks = |reason: &Reason| match cause.group {
        CauseGroup::Bearing => {
            reason.tells(Tells::Suspicion) || reason.facts().is_some_and(|facts| facts.on_bearing)
        }
        CauseGroup::Other => reason.cause.as_ref() == Some(&cause.id),
        CauseGroup::Normal => false,
    };
    reasons.iter().any(|reason| reason.word >= Word::Caution && speaks(reason))
}
