//! What was found by hand or eye, and what a rating asks for: its word, and of a CAUTION whether there is something
//! to repair yet.

use crate::model::rating::{Reason, Urgency, Word};
use crate::model::rules;
use crate::model::standing::StepStand;
use crate::model::still_open::StillOpen;

/// The gate set behind which hands and eyes are at the shaft.
pub const LIFT: &str = "lift";

/// The end of the text ids that say it: `danger`, `warning`, `caution`, `caution-look`, `notice` or `unrated`.
pub fn asks(urgency: &Urgency, steps: &[StepStand]) -> String {
    let fault = urgency.reasons.iter().any(|reason| names_a_fault(reason, steps));
    match urgency.word {
        Some(Word::Caution) if !fault => "caution-look".to_owned(),
        word => word.map_or("unrated", Word::id).to_owned(),
    }
}

/// The end of the id of a visit's headline. No headline clears, or calls repairable, what an earlier visit or an open
/// check forbids to be driven.
pub fn headline(urgency: &Urgency, asks: &str, earlier: Option<&StillOpen>) -> String {
    let forbids = urgency.do_not_drive == Some(true);
    match (earlier.filter(|_| !forbids), urgency.word) {
        (Some(open), _) => format!("still-open-{}", open.word.id()),
        (None, Some(Word::Notice)) if urgency.in_part => "notice-in-part".to_owned(),
        (None, Some(Word::Caution)) if urgency.do_not_drive.is_none() => "caution-open".to_owned(),
        (None, _) => asks.to_owned(),
    }
}

/// Whether a reason names what can be repaired: a cause, or something felt or seen.
fn names_a_fault(reason: &Reason, steps: &[StepStand]) -> bool {
    let found = found(steps);
    let seen = |id: &String| found.contains(id);
    let suspicion = reason.rule == rules::BEARING_LIKELY.id;
    !suspicion && reason.cause.is_some() || reason.steps.iter().any(seen)
}

/// The steps at which hands or eyes found something, weightiest first.
pub fn found(steps: &[StepStand]) -> Vec<String> {
    let here = |step: &&StepStand| step.set.as_deref() == Some(LIFT) && step.is_found();
    let mut found: Vec<&StepStand> = steps.iter().filter(here).collect();
    found.sort_by_key(|step| std::cmp::Reverse(step.word));
    found.into_iter().map(|step| step.id.clone()).collect()
}
