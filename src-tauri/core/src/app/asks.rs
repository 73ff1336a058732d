//! What was found by hand or eye, and what a rating asks for: its word, and of a CAUTION whether there is something
//! to repair yet.

use crate::model::ids::step;
use crate::model::rating::{Reason, Urgency, Word};
use crate::model::rules;
use crate::model::standing::{CLEAR_DECIBANS, Sorting, StepStand, Weight};
use crate::model::still_open::StillOpen;

/// The gate set behind which hands and eyes are at the shaft.
const LIFT: &str = "lift";

/// The end of the text ids that say it: `danger`, `warning`, `caution`, `caution-look`, `notice` or `unrated`.
pub fn asks(urgency: &Urgency, steps: &[StepStand], sorting: &Sorting) -> String {
    let fault = urgency.reasons.iter().any(|reason| names_a_fault(reason, steps, sorting));
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
        (None, Some(Word::Caution)) if urgency.do_not_drive.is_none() && asks == Word::Caution.id() => {
            "caution-open".to_owned()
        }
        (None, _) => asks.to_owned(),
    }
}

/// Beside where somebody listens: what tells of a noise or a vibration, and nothing of what makes it.
const TOLD: [&str; 3] = [step::ROAD_SPEED_VIBRATION, step::IDLE_RAISE_EFFECT, step::RUNNING_STOP];

/// Whether a reason names what can be repaired: a cause that something read or seen points at, or something felt or
/// seen. What was only heard or told names none, nor do dust and rub marks, which many sound supports have.
fn names_a_fault(reason: &Reason, steps: &[StepStand], sorting: &Sorting) -> bool {
    let slight = |step: &StepStand| {
        step.answered.as_ref().is_some_and(|given| {
            given.value.choices().iter().all(|choice| ["marks", "grease-or-dust"].contains(choice))
        })
    };
    let seen = |step: &StepStand| is_under(step) && step.is_found() && !slight(step);
    let rests = steps.iter().filter(|step| reason.steps.contains(&step.id)).any(seen);
    let found = |id: &str| steps.iter().any(|step| step.id == id && step.is_found());
    let heard = |id: &str| TOLD.contains(&id) || step::LISTENING.contains(&id);
    let read =
        |weight: &Weight| weight.decibans >= CLEAR_DECIBANS && !heard(&weight.step) && found(&weight.step);
    let cause = sorting.causes.iter().find(|cause| reason.cause.as_ref() == Some(&cause.id));
    let suspicion = reason.rule == rules::BEARING_LIKELY.id;
    rests || !suspicion && cause.is_some_and(|cause| cause.speaks_for.iter().any(read))
}

fn is_under(step: &StepStand) -> bool {
    step.set.as_deref() == Some(LIFT)
}

/// The steps at which hands or eyes found something, weightiest first.
pub fn found(steps: &[StepStand]) -> Vec<String> {
    let here = |step: &&StepStand| is_under(step) && step.is_found();
    let mut found: Vec<&StepStand> = steps.iter().filter(here).collect();
    found.sort_by_key(|step| std::cmp::Reverse(step.word));
    found.into_iter().map(|step| step.id.clone()).collect()
}
