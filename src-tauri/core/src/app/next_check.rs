//! Where sorting and rating meet: which decision a rule has already made, and which open check could still
//! change the rating.

use crate::model::case::Case;
use crate::model::ids::{self, step};
use crate::model::rating::{Reason, Urgency, Word};
use crate::model::rules::{self, Facts, Tells};
use crate::model::standing::{NextCheck, Sorting, StepStand};
use crate::sorting::draws::Draws;
use crate::sorting::foresee::{answered, possible_answers};
use crate::sorting::next::OpenStep;
use crate::sorting::sort::sort_judged;
use crate::trade::Trade;
use crate::trade::rows::{Form, StepRow};
use crate::urgency::rating;

/// The decision that rests on the bearing suspicion alone.
const RATING_JUDGEMENT: &str = "warning-or-caution";

/// The gate set of the road test.
const ROAD: &str = "road";

/// Fits the sorting to the rating: a decision that a rule has made is no judgement, and an open check that
/// could still raise the rating is worth doing even where no other decision hangs on it.
pub fn add_decisions(
    (trade, draws): (&Trade, &Draws),
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
    let first = asked_by_rule(urgency, open, case)
        .or_else(|| looked_at_first(urgency, open, case))
        .or_else(|| left_out(urgency, open));
    if let Some(check) = first {
        (sorting.next_check, sorting.no_check) = (Some(check), None);
        return;
    }
    if sorting.next_check.is_some() {
        return;
    }
    let raises = |step: &&OpenStep<'_>| !step.off_topic && raises((trade, draws), case, urgency, step.row);
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
    // Rough, turned with what hangs on it: whose roughness it is, the free turn tells.
    let along = |step: &&String| case.answer(step).is_some_and(|answer| answer.limited);
    if let Some(step) = fired(&rules::TURNS_BADLY).and_then(|reason| reason.steps.iter().find(along)) {
        return check(step, "next-whose-roughness");
    }
    if urgency.word > Some(Word::Caution) {
        return None;
    }
    if let Some(step) = fired(&rules::COLD_CHECK).and_then(|reason| reason.steps.first()) {
        return check(step, "next-warm");
    }
    for unturned in [&rules::DRAG_UNCHECKED, &rules::STIFF_WITH_WHEELS] {
        if let Some(step) = fired(unturned).and_then(|reason| reason.steps.first()) {
            return check(step, "next-free-turn");
        }
    }
    fired(&rules::FAR_END_UNSURE)?;
    let coupling = open.iter().find(|one| one.row.id == step::COUPLING_LOOK && !case.looked(&one.row.id));
    match coupling {
        Some(one) => check(&one.row.id, "next-far-end"),
        None => check(step::PLAY_FAR_END, "next-unsure"),
    }
}

/// Where nothing was found, and not all was looked at: the first look that was left out.
fn left_out(urgency: &Urgency, open: &[OpenStep<'_>]) -> Option<NextCheck> {
    let is_look = |id: &String| {
        let look = |one: &&OpenStep<'_>| one.row.id == *id && one.row.form == Form::AnyOf;
        open.iter().find(look).map(|one| one.row.id.clone())
    };
    let left = urgency.limits.iter().chain(&urgency.unlooked).filter(|_| urgency.in_part);
    let step = left.into_iter().find_map(is_look)?;
    Some(NextCheck { step, why: "next-left-out".to_owned(), gain: 0.0 })
}

/// Where every check of the bay is done and the road test is not, that is said instead of that nothing is left.
pub fn road_test_left(steps: &[StepStand], sorting: &mut Sorting) {
    let left = steps.iter().any(|step| step.set.as_deref() == Some(ROAD) && step.answered.is_none());
    if left && sorting.no_check.as_deref() == Some("stop-all-done") {
        sorting.no_check = Some("stop-road-test".to_owned());
    }
}

/// The look at what holds the bearing, then at the mounts, where the play was put off with "not done": that is what is
/// said where shaft and housing move together.
fn looked_at_first(urgency: &Urgency, open: &[OpenStep<'_>], case: &Case) -> Option<NextCheck> {
    const PLAYS: [&str; 2] = [step::PLAY_VERTICAL, step::PLAY_LATERAL];
    const LOOKS: [&str; 3] = [step::HOUSING_LOOK, step::SUPPORT_LOOK, step::SHIELD_AND_MOUNTS];
    let put_off = |id: &&String| PLAYS.contains(&ids::base(id)) && case.answer(id).is_some();
    let play = urgency.missing.iter().find(put_off)?;
    let here = |one: &&OpenStep<'_>| ids::support_number(&one.row.id) == ids::support_number(play);
    let look = LOOKS
        .iter()
        .find_map(|look| open.iter().filter(here).chain(open).find(|one| ids::base(&one.row.id) == *look))?;
    Some(NextCheck { step: look.row.id.clone(), why: "next-looks-first".to_owned(), gain: 0.0 })
}

fn cost(row: &StepRow) -> f64 {
    row.minutes * (1.0 + row.hazard)
}

/// Whether an answer to this step would raise the rating.
fn raises((trade, draws): (&Trade, &Draws), case: &Case, urgency: &Urgency, row: &StepRow) -> bool {
    possible_answers(row, case).into_iter().any(|value| {
        let then = answered(case, row, value);
        rating::rate(&then, &sort_judged(trade, &then, draws)).word > urgency.word
    })
}
