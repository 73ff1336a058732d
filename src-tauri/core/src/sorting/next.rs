//! The next check to do. A hands-on step that is still open always comes first; after that, the open step
//! whose answer is expected to save most of the choices' loss per minute of work, less its hazard.
//!
//! The value of an answer is what would be lost by deciding as now, minus what is lost by deciding with
//! it. It is never below zero, and zero for a step none of whose answers changes a choice.

use crate::model::certainty::Turn;
use crate::model::standing::NextCheck;
use crate::trade::rows::StepRow;

use super::act_or_wait::ActOrWait;
use super::foresee::Foreseen;
use super::network::Network;
use super::posterior::Posterior;
use super::sort::NORMAL;

pub use super::foresee::OpenStep;

/// An open step with what it could say.
pub struct Outlook<'t> {
    /// Step that is still open.
    pub row: &'t StepRow,
    /// It is not about what the car came in for.
    pub off_topic: bool,
    /// The answers it may get.
    pub foreseen: Vec<Foreseen>,
}

/// A check that takes so long, minutes, has to be worth it: something is opened first.
const LONG: f64 = 30.0;
/// Less than this is nothing, minutes.
const NOTHING: f64 = 1e-9;

/// The next check, or the id of the text that says why none is worth doing. `hazard` is what a hazard of
/// one costs, minutes.
pub fn next_check(
    outlook: &[Outlook<'_>],
    choices: &[ActOrWait<'_>],
    now: &Posterior,
    hazard: f64,
) -> Result<NextCheck, &'static str> {
    let gain = |one: &Outlook<'_>| expected_gain(&one.foreseen, choices, now);
    let check = |one: &Outlook<'_>, why: &str| NextCheck {
        step: one.row.id.clone(),
        why: why.to_owned(),
        gain: gain(one),
    };
    // What takes an hour to get at waits for what can be seen and heard from outside.
    let by_hand = outlook.iter().find(|one| one.row.hands_on);
    if let Some(one) = by_hand.filter(|one| one.row.minutes < LONG) {
        return Ok(check(one, "next-hands-on"));
    }
    let outlook: &[&Outlook<'_>] = &outlook.iter().filter(|one| !one.row.hands_on).collect::<Vec<_>>();
    let mut best: Option<(f64, &Outlook<'_>)> = None;
    for one in outlook.iter().copied().filter(|one| !one.off_topic) {
        let rate = (gain(one) - hazard * one.row.hazard) / one.row.minutes;
        if gain(one) > NOTHING && best.is_none_or(|(top, _)| rate > top) {
            best = Some((rate, one));
        }
    }
    match (best, by_hand) {
        (Some((rate, one)), _) if rate > 0.0 => Ok(check(one, "next-informs")),
        (_, Some(one)) => Ok(check(one, "next-hands-on")),
        (Some(_), None) => Err("stop-not-worth"),
        (None, None) if !outlook.is_empty() => Err("stop-nothing-changes"),
        (None, None) => Err("stop-all-done"),
    }
}

/// Expected value of a step's answer, minutes of loss.
///
/// Source: Russell & Norvig, *Artificial Intelligence: A Modern Approach*, 16.6 (value of information),
/// from memory.
pub fn expected_gain(foreseen: &[Foreseen], choices: &[ActOrWait<'_>], now: &Posterior) -> f64 {
    let saving = |then: &Posterior| -> f64 {
        let saving = |choice: &ActOrWait<'_>| {
            let probability = choice.probability(then);
            let losses = [true, false].map(|acts| choice.loss(acts, probability));
            saved(&losses, usize::from(!choice.acts(choice.probability(now))))
        };
        choices.iter().map(saving).sum()
    };
    foreseen.iter().map(|one| one.probability * saving(&one.posterior)).sum()
}

/// What is saved by taking the course that loses least, instead of the one that is best now.
pub fn saved(losses: &[f64], best_now: usize) -> f64 {
    let least = losses.iter().copied().fold(f64::INFINITY, f64::min);
    losses.get(best_now).map_or(0.0, |loss| loss - least)
}

/// The most probable answer still open that would put another cause first.
pub fn turn(outlook: &[Outlook<'_>], network: &Network, now: &Posterior) -> Option<Turn> {
    let (leads, _) = leader(network, now)?;
    let mut turn: Option<(f64, Turn)> = None;
    for (one, foreseen) in
        outlook.iter().flat_map(|one| one.foreseen.iter().map(move |foreseen| (one, foreseen)))
    {
        let Some((cause, probability)) = leader(network, &foreseen.posterior) else { continue };
        if cause != leads && turn.as_ref().is_none_or(|(top, _)| foreseen.probability > *top) {
            let step = one.row.id.clone();
            let value = foreseen.value.clone();
            turn = Some((foreseen.probability, Turn { step, value, cause: cause.to_owned(), probability }));
        }
    }
    turn.map(|(_, turn)| turn)
}

/// The likeliest cause, "none" among them, and its probability.
fn leader<'n>(network: &'n Network, posterior: &Posterior) -> Option<(&'n str, f64)> {
    let named = network.causes.iter().map(|cause| cause.id.as_str()).zip(posterior.causes.iter().copied());
    named.chain(std::iter::once((NORMAL, posterior.none))).reduce(|a, b| if b.1 > a.1 { b } else { a })
}
