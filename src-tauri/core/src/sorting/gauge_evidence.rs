//! A sign of which a gauge speaks: its likelihood instead of a bare yes or no.
//!
//! Where several steps are one sign, the loudest of them is the observation: the one whose odds for the sign are
//! highest, a step that says nothing counting as even odds. A hand that felt movement is certain and so always the
//! loudest; a gauge that is not decided never weighs less than the hand's `unsure`, which says nothing. The odds
//! therefore never fall when readings grow or an answer gets worse, and the proof in `sort::suspicion` holds.

use crate::model::case::{Case, CaseAnswer};
use crate::trade::rows::SignRow;

use super::evidence::Observation;

/// Likelihoods of an answer with the sign and without it.
type Pair = (f64, f64);

/// Says nothing of the sign.
const EVEN: Pair = (1.0, 1.0);

/// Whether a gauge made the answer to one of a sign's steps.
pub fn is_measured(row: &SignRow, case: &Case) -> bool {
    let steps = row.steps_at(case.supports);
    steps.iter().filter_map(|step| case.answer(step)).any(|answer| answer.measured.is_some())
}

/// The observation, if anything is said of the sign.
pub fn observe(row: &SignRow, sign: usize, case: &Case) -> Option<Observation> {
    let (if_present, if_absent) = loudest(row, case);
    let silent = if_present == if_absent;
    (!silent).then_some(Observation { sign, if_present, if_absent })
}

/// The steps that are as loud as the loudest.
pub fn speakers(row: &SignRow, case: &Case) -> Vec<String> {
    let loudest = odds(loudest(row, case));
    let speaks = |step: &String| odds(said(row, case.answer(step))) == loudest;
    row.steps_at(case.supports).into_iter().filter(speaks).collect()
}

fn loudest(row: &SignRow, case: &Case) -> Pair {
    let steps = row.steps_at(case.supports);
    let pairs = steps.iter().map(|step| said(row, case.answer(step)));
    pairs.max_by(|a, b| odds(*a).total_cmp(&odds(*b))).unwrap_or(EVEN)
}

fn odds((present, absent): Pair) -> f64 {
    present / absent
}

/// What one answer says of the sign.
fn said(row: &SignRow, answer: Option<&CaseAnswer>) -> Pair {
    let Some(answer) = answer else { return EVEN };
    let one_of = |choices: &[String]| choices.iter().any(|choice| answer.value.has(choice));
    let measured = answer.measured.map(|read| (read.if_movement, read.if_none));
    if one_of(&row.present) {
        return measured.unwrap_or((1.0, 0.0));
    }
    if one_of(&row.absent) {
        return measured.unwrap_or((0.0, 1.0));
    }
    measured.filter(|read| odds(*read) > 1.0).unwrap_or(EVEN)
}
