//! Why: what each answered step weighs for or against each cause.
//!
//! A weight is exact leave-one-out: the cause's log-odds with every answer, minus its log-odds with this
//! step's answer left out. Single weights do not add up where answers explain each other, so what is left
//! to the full log-odds stands beside them as the weight of the answers together. Where two directions are
//! one sign, the weight goes to the direction that spoke: an unsure one beside a felt one is no evidence.

use std::collections::BTreeMap;

use crate::model::case::Case;
use crate::model::standing::Weight;
use crate::trade::Trade;
use crate::trade::rows::SignRow;

use super::evidence::{self, Observation};
use super::posterior::Posterior;
use super::ready::Asked;

/// Weights below this many decibans (an odds factor of about 1.06) are not worth a line of their own.
const SILENT_DECIBANS: f64 = 0.25;

/// The sorting without one answer, or without those of several steps that decide one sign together.
#[derive(Debug, Clone, PartialEq)]
pub struct LeftOut {
    /// The steps that spoke.
    pub steps: Vec<String>,
    /// Indices of the signs that were left out.
    pub signs: Vec<usize>,
    /// What the other answers make of the causes.
    pub posterior: Posterior,
}

/// The account of one cause.
#[derive(Debug, Clone, PartialEq)]
pub struct Account {
    /// Probability before any answer.
    pub before: f64,
    /// What each step weighs, heaviest first.
    pub weights: Vec<Weight>,
    /// The rest, decibans.
    pub together: f64,
}

/// Leaves out each answer in turn.
pub fn left_out(trade: &Trade, asked: &Asked, case: &Case, observed: &[Observation]) -> Vec<LeftOut> {
    let mut signs_by_steps: BTreeMap<&[String], Vec<(usize, &SignRow)>> = BTreeMap::new();
    for (sign, row) in evidence::rows(trade, &asked.network) {
        if observed.iter().any(|one| one.sign == sign) {
            signs_by_steps.entry(&row.steps).or_default().push((sign, row));
        }
    }
    let without = |rows: Vec<(usize, &SignRow)>| {
        let signs: Vec<usize> = rows.iter().map(|(sign, _)| *sign).collect();
        let others: Vec<Observation> =
            observed.iter().filter(|one| !signs.contains(&one.sign)).copied().collect();
        // Where one answer shows a sign, another that saw nothing does not speak for it.
        let shown: Vec<String> = rows.iter().flat_map(|(_, row)| evidence::showing(row, case)).collect();
        let spoken = || rows.iter().flat_map(|(_, row)| evidence::speakers(row, case)).collect();
        let mut steps: Vec<String> = Vec::new();
        for step in if shown.is_empty() { spoken() } else { shown } {
            if !steps.contains(&step) {
                steps.push(step);
            }
        }
        LeftOut { steps, signs, posterior: asked.posterior(&others) }
    };
    signs_by_steps.into_values().map(without).collect()
}

/// The account of each cause in network order, and last of "none present".
pub fn accounts(asked: &Asked, case: &Case, all: &Posterior, left_out: &[LeftOut]) -> Vec<Account> {
    let before = asked.posterior(&[]);
    probabilities(&before)
        .zip(probabilities(all))
        .enumerate()
        .map(|(place, (before, now))| account(before, now, place, case, left_out))
        .collect()
}

fn account(before: f64, now: f64, place: usize, case: &Case, left_out: &[LeftOut]) -> Account {
    let mut weights: Vec<Weight> = Vec::new();
    let all = decibans(now);
    for out in left_out {
        let without = probabilities(&out.posterior).nth(place).unwrap_or(now);
        let share = (all - decibans(without)) / out.steps.len().max(1) as f64;
        if share.abs() < SILENT_DECIBANS {
            continue;
        }
        for step in &out.steps {
            let Some(answer) = case.answer(step) else { continue };
            let gauge = answer.measured.map(|read| read.if_movement / read.if_none);
            let (step, value) = (step.clone(), answer.value.clone());
            weights.push(Weight { step, value, decibans: share, gauge, basis: Vec::new() });
        }
    }
    weights.sort_by(|a, b| b.decibans.abs().total_cmp(&a.decibans.abs()));
    let single: f64 = weights.iter().map(|weight| weight.decibans).sum();
    Account { before, weights, together: all - decibans(before) - single }
}

fn probabilities(posterior: &Posterior) -> impl Iterator<Item = f64> + '_ {
    posterior.causes.iter().copied().chain(std::iter::once(posterior.none))
}

/// Ten times the decimal logarithm of the odds.
pub fn decibans(probability: f64) -> f64 {
    let probability = probability.clamp(1e-15, 1.0 - 1e-15);
    10.0 * (probability / (1.0 - probability)).log10()
}
