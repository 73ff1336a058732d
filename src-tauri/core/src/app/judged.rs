//! Where sorting and rating meet: which decision a rule has already made, which open check could still
//! change the rating, and what people say beside the sorting.

use crate::model::case::Case;
use crate::model::entry::EntryBody;
use crate::model::ids::step;
use crate::model::outcome::{Outcome, OutcomeStand};
use crate::model::rating::{Reason, Urgency, Word};
use crate::model::rules::{self, Facts, Tells};
use crate::model::standing::{NextCheck, Sorting, Standing};
use crate::sorting::evidence;
use crate::sorting::foresee::{answered, possible_answers};
use crate::sorting::network::Network;
use crate::sorting::next::OpenStep;
use crate::sorting::sort::{NORMAL, sort_as_judged};
use crate::trade::Trade;
use crate::trade::rows::StepRow;
use crate::urgency::rating;
use crate::walk::case;
use crate::walk::record::Record;

use super::decide::{Scene, line_fits, reason_fits};
use super::fault::Refusal;

/// The decision that rests on the bearing suspicion alone.
const RATING_JUDGEMENT: &str = "warning-or-caution";

/// Fits the sorting to the rating: a decision that a rule has made is no judgement, and an open check that
/// could still raise the rating is worth doing even where no other decision hangs on it.
pub fn add_decisions(
    trade: &Trade,
    case: &Case,
    open: &[OpenStep<'_>],
    urgency: &Urgency,
    sorting: &mut Sorting,
) {
    let by_rule = |reason: &Reason| reason.word >= Word::Warning && !reason.tells(Tells::Suspicion);
    // Where noise alone is behind a suspicion, a rule holds it at CAUTION.
    let held = |reason: &Reason| reason.tells(Tells::Suspicion) && reason.word < Word::Warning;
    if urgency.reasons.iter().any(|reason| by_rule(reason) || held(reason)) {
        sorting.judgements.retain(|judgement| judgement.id != RATING_JUDGEMENT);
    }
    if let Some(check) = asked_by_rule(urgency, open, case) {
        (sorting.next_check, sorting.no_check) = (Some(check), None);
        return;
    }
    if sorting.next_check.is_some() {
        return;
    }
    let raises = |step: &&OpenStep<'_>| raises(trade, case, urgency, step.row);
    let quickest = open.iter().filter(raises).min_by(|a, b| cost(a.row).total_cmp(&cost(b.row)));
    if let Some(step) = quickest {
        let check = NextCheck { step: step.row.id.clone(), why: "next-rating".to_owned(), gain: 0.0 };
        (sorting.next_check, sorting.no_check) = (Some(check), None);
    }
}

/// The check that a rule asks for once the hands-on check is done: the free turn for what could be drag; a second
/// look and feel for a far end that was left unsure.
fn asked_by_rule(urgency: &Urgency, open: &[OpenStep<'_>], case: &Case) -> Option<NextCheck> {
    let fired = |facts: &Facts| urgency.reasons.iter().find(|reason| reason.rule == facts.id);
    let check =
        |step: &str, why: &str| Some(NextCheck { step: step.to_owned(), why: why.to_owned(), gain: 0.0 });
    if !urgency.complete || urgency.word > Some(Word::Warning) {
        return None;
    }
    if let Some(step) = fired(&rules::PLAY_UNSURE).and_then(|reason| reason.steps.first()) {
        return check(step, "next-unsure");
    }
    if urgency.word > Some(Word::Caution) {
        return None;
    }
    if let Some(step) = fired(&rules::COLD_CHECK).and_then(|reason| reason.steps.first()) {
        return check(step, "next-warm");
    }
    if let Some(step) = fired(&rules::DRAG_UNCHECKED).and_then(|reason| reason.steps.first()) {
        return check(step, "next-free-turn");
    }
    fired(&rules::FAR_END_UNSURE)?;
    let coupling = open.iter().find(|one| one.row.id == step::COUPLING_LOOK && !case.looked(&one.row.id));
    match coupling {
        Some(one) => check(&one.row.id, "next-far-end"),
        None => check(step::PLAY_FAR_END, "next-unsure"),
    }
}

fn cost(row: &StepRow) -> f64 {
    row.minutes * (1.0 + row.hazard)
}

/// Whether an answer to this step would raise the rating.
fn raises(trade: &Trade, case: &Case, urgency: &Urgency, row: &StepRow) -> bool {
    possible_answers(row, case).into_iter().any(|value| {
        let then = answered(case, row, value);
        rating::rate(&then, &sort_as_judged(trade, &then)).word > urgency.word
    })
}

/// A confirmed outcome as shown.
pub fn outcome(record: &Record) -> Option<OutcomeStand> {
    let (outcome, by, at) = record.outcome.as_ref()?;
    Some(OutcomeStand { causes: shown_causes(outcome), by: by.clone(), at: *at })
}

/// The causes of an outcome, or `normal-character` where there was none.
pub fn shown_causes(outcome: &Outcome) -> Vec<String> {
    if outcome.causes.is_empty() { vec![NORMAL.to_owned()] } else { outcome.causes.clone() }
}

/// An opinion as an entry.
///
/// # Errors
/// [`Refusal::UnknownCause`], [`Refusal::OpinionWithoutReason`] or [`Refusal::ReasonTooLong`].
pub fn give_opinion(scene: Scene<'_>, cause: &str, reason: &str) -> Result<EntryBody, Refusal> {
    known(scene.standing, cause)?;
    let reason = reason.trim();
    if reason.is_empty() {
        return Err(Refusal::OpinionWithoutReason);
    }
    if !reason_fits(reason) {
        return Err(Refusal::ReasonTooLong);
    }
    Ok(EntryBody::OpinionGiven {
        cause: cause.to_owned(),
        reason: reason.to_owned(),
        by: scene.by.to_owned(),
    })
}

/// A confirmed outcome as an entry, with what was known before; nothing if it stands confirmed as it is.
///
/// # Errors
/// [`Refusal::UnknownCause`]; [`Refusal::NameTooLong`]; [`Refusal::OutcomeContradicts`] for no cause at all, one
/// named twice, or `normal-character` beside another.
pub fn confirm_outcome(scene: Scene<'_>, causes: &[String]) -> Result<Option<EntryBody>, Refusal> {
    for cause in causes {
        known(scene.standing, cause)?;
    }
    let twice = |cause: &String| causes.iter().filter(|other| *other == cause).count() > 1;
    let normal = causes.iter().any(|cause| cause == NORMAL);
    if causes.is_empty() || causes.iter().any(twice) || normal && causes.len() > 1 {
        return Err(Refusal::OutcomeContradicts);
    }
    let by = scene.by;
    if !line_fits(by) {
        return Err(Refusal::NameTooLong);
    }
    let mut causes: Vec<String> = causes.iter().filter(|cause| *cause != NORMAL).cloned().collect();
    causes.sort();
    let outcome = witnessed(scene, causes)?;
    let stands = scene.standing.outcome.as_ref();
    let same = |stands: &OutcomeStand| stands.causes == shown_causes(&outcome) && stands.by == by;
    if stands.is_some_and(same) {
        return Ok(None);
    }
    Ok(Some(EntryBody::OutcomeConfirmed { outcome, by: by.to_owned() }))
}

fn known(standing: &Standing, cause: &str) -> Result<(), Refusal> {
    let known = standing.sorting.causes.iter().any(|stand| stand.id == cause);
    if known { Ok(()) } else { Err(Refusal::UnknownCause) }
}

/// The outcome with the signs that were decided and what the sorting said.
fn witnessed(scene: Scene<'_>, causes: Vec<String>) -> Result<Outcome, Refusal> {
    let layout = scene.trade.layout(&scene.record.intake.vehicle.layout).ok_or(Refusal::UnknownLayout)?;
    let case = case::case(scene.trade, layout, scene.record);
    let network = Network::of(scene.trade, &case);
    let id = |sign: usize| {
        let row = network.signs.get(sign).and_then(|sign| scene.trade.signs.get(sign.row));
        row.map(|row| row.id.clone())
    };
    let observed = evidence::observations(scene.trade, &network, &case);
    let signs = observed.iter().filter_map(|one| Some((id(one.sign)?, one.decided()?))).collect();
    let sorted = scene.standing.sorting.causes.iter().map(|cause| (cause.id.clone(), cause.probability));
    Ok(Outcome {
        causes,
        layout: case.layout,
        signs,
        sorted: sorted.collect(),
        knowledge: scene.standing.knowledge.clone(),
    })
}
