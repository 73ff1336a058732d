//! The sorting of one case: probabilities, words for them, what speaks for and against, the next check.

use crate::model::case::Case;
use crate::model::standing::{CauseGroup, CauseStand, Sorting, Weight};
use crate::trade::Trade;

use super::evidence;
use super::explain;
use super::likelihood;
use super::network::Network;
use super::next::{OpenStep, next_check};
use super::posterior::{Posterior, posterior};

/// Id under which "none of the causes is present" is shown.
pub const NORMAL: &str = "normal-character";

/// Sorts a case. `open` lists the steps that are allowed and not looked at, in walk order.
pub fn sort(trade: &Trade, case: &Case, open: &[OpenStep<'_>]) -> Sorting {
    let network = Network::of(trade, case);
    let observed = evidence::observations(trade, &network, case);
    let all = posterior(&network, &observed);
    let unexcused = posterior(&without_excuses(&network), &observed);
    let weights = explain::weights(trade, &network, case, &all);
    Sorting {
        causes: causes(&network, &all, weights),
        bearing_probability: 1.0 - all.no_bearing,
        bearing_unexcused: 1.0 - unexcused.no_bearing,
        next_check: next_check(trade, &network, case, &all, open),
    }
}

/// The network with every other cause taken as absent: nothing else may explain a finding away.
///
/// Against "no bearing cause", each combination of bearing causes then weighs a product of one ratio a
/// sign, at least 1 where the sign was seen and at most 1 where it was not. So a sign more seen can only
/// raise the suspicion, and since another cause brings every ratio of a seen sign nearer to 1, the
/// suspicion is never below the bearing probability itself.
fn without_excuses(network: &Network) -> Network {
    let mut alone = network.clone();
    for cause in alone.causes.iter_mut().filter(|cause| cause.group != CauseGroup::Bearing) {
        cause.prior = 0.0;
    }
    alone
}

fn causes(network: &Network, all: &Posterior, weights: Vec<Vec<Weight>>) -> Vec<CauseStand> {
    let normal = (NORMAL.to_owned(), CauseGroup::Normal, all.none);
    let named = network.causes.iter().zip(&all.causes);
    let named = named.map(|(cause, probability)| (cause.id.clone(), cause.group, *probability));
    let mut causes: Vec<CauseStand> = named
        .chain(std::iter::once(normal))
        .zip(weights)
        .map(|((id, group, probability), weights)| stand(id, group, probability, weights))
        .collect();
    causes.sort_by(|a, b| b.probability.total_cmp(&a.probability));
    causes
}

fn stand(id: String, group: CauseGroup, probability: f64, weights: Vec<Weight>) -> CauseStand {
    let (speaks_for, against) = weights.into_iter().partition(|weight| weight.decibans > 0.0);
    let likelihood = likelihood::word(probability).to_owned();
    CauseStand { id, group, probability, likelihood, speaks_for, against }
}
