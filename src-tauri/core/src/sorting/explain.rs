//! Why: what each answered step weighs for or against each cause.
//!
//! The weight is exact leave-one-out: the cause's log-odds with every answer, minus its log-odds with
//! this step's answer left out. Where two directions are one sign, the weight goes to the direction that
//! spoke: an unsure one beside a felt one is not shown as evidence.

use std::collections::BTreeMap;

use crate::model::case::Case;
use crate::model::standing::Weight;
use crate::trade::Trade;

use super::evidence::{self, Observation};
use super::network::Network;
use super::posterior::{Posterior, posterior};

/// Weights below this many decibans (an odds factor of about 1.06) are not worth a line.
const SILENT_DECIBANS: f64 = 0.25;

/// For each cause in network order, and last for "none present", what each step weighs, heaviest first.
pub fn weights(trade: &Trade, network: &Network, case: &Case, all: &Posterior) -> Vec<Vec<Weight>> {
    let observed = evidence::observations(trade, network, case);
    let mut weights: Vec<Vec<Weight>> = vec![Vec::new(); network.causes.len() + 1];
    for (steps, signs) in groups(trade, network, case, &observed) {
        let without: Vec<Observation> =
            observed.iter().filter(|one| !signs.contains(&one.sign)).copied().collect();
        let left_out = posterior(network, &without);
        for step in steps {
            let Some(answer) = case.answer(&step) else { continue };
            let pairs = probabilities(all).zip(probabilities(&left_out));
            for (list, (with, without)) in weights.iter_mut().zip(pairs) {
                let decibans = decibans(with) - decibans(without);
                if decibans.abs() >= SILENT_DECIBANS {
                    list.push(Weight { step: step.clone(), value: answer.value.clone(), decibans });
                }
            }
        }
    }
    for list in &mut weights {
        list.sort_by(|a, b| b.decibans.abs().total_cmp(&a.decibans.abs()));
    }
    weights
}

fn probabilities(posterior: &Posterior) -> impl Iterator<Item = f64> + '_ {
    posterior.causes.iter().copied().chain(std::iter::once(posterior.none))
}

/// Ten times the decimal logarithm of the odds.
fn decibans(probability: f64) -> f64 {
    let probability = probability.clamp(1e-15, 1.0 - 1e-15);
    10.0 * (probability / (1.0 - probability)).log10()
}

/// Steps whose answers speak together (two directions of one sign), with the signs they decide.
fn groups(
    trade: &Trade,
    network: &Network,
    case: &Case,
    observed: &[Observation],
) -> Vec<(Vec<String>, Vec<usize>)> {
    let mut by_steps: BTreeMap<Vec<String>, Vec<usize>> = BTreeMap::new();
    for (sign, row) in evidence::rows(trade, network) {
        if observed.iter().any(|one| one.sign == sign) {
            let steps = evidence::speakers(row, case).into_iter().map(str::to_owned).collect();
            by_steps.entry(steps).or_default().push(sign);
        }
    }
    by_steps.into_iter().collect()
}
