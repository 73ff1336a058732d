//! Whether the list of causes fits this car at all: the answers fit no cause together, or what was found
//! is mostly explained by nothing on the list.

use crate::model::certainty::Surprise;
use crate::trade::Trade;

use super::evidence::{self, Observation};
use super::explain::LeftOut;
use super::network::Network;
use super::posterior::{Posterior, posterior};

/// From this many bits the signs disagree: seen together they are 30 times less probable than if each had
/// come by itself. Workshop judgement.
const DISAGREE_BITS: f64 = 4.9;

/// From this share of what was found, something else than the list explains most of it.
const NOT_LISTED: f64 = 0.5;

/// The surprise, if there is one. That nothing on the list explains the findings says more than that they
/// disagree, so it comes first.
pub fn surprise(
    trade: &Trade,
    network: &Network,
    observed: &[Observation],
    all: &Posterior,
    left_out: &[LeftOut],
) -> Option<Surprise> {
    not_listed(trade, network, observed, all).or_else(|| disagree(network, observed, all, left_out))
}

/// The steps whose finding no listed cause brought about, if that is most of what was found.
fn not_listed(
    trade: &Trade,
    network: &Network,
    observed: &[Observation],
    all: &Posterior,
) -> Option<Surprise> {
    let seen = observed.iter().enumerate().filter(|(_, one)| one.if_absent == 0.0);
    let unexplained: Vec<(usize, f64)> =
        seen.map(|(place, one)| (one.sign, by_leak(network, observed, place, all))).collect();
    let total: f64 = unexplained.iter().map(|(_, share)| share).sum();
    if unexplained.is_empty() || total < NOT_LISTED * unexplained.len() as f64 {
        return None;
    }
    let mut worst = unexplained;
    worst.retain(|(_, share)| *share >= NOT_LISTED);
    worst.sort_by(|a, b| b.1.total_cmp(&a.1));
    let mut steps: Vec<String> = Vec::new();
    for (sign, _) in worst {
        let row = evidence::rows(trade, network).find(|(index, _)| *index == sign);
        for step in row.into_iter().flat_map(|(_, row)| &row.steps) {
            if !steps.contains(step) {
                steps.push(step.clone());
            }
        }
    }
    Some(Surprise { why: "surprise-not-listed".to_owned(), steps })
}

/// Probability that a seen sign came by its leak, no present cause having brought it about: its factor is
/// then `leak * misses`, which is that of an absent sign times `leak / (1 - leak)`.
fn by_leak(network: &Network, observed: &[Observation], place: usize, all: &Posterior) -> f64 {
    let mut changed = observed.to_vec();
    let Some(one) = changed.get_mut(place) else { return 0.0 };
    let leak = network.signs.get(one.sign).map_or(0.0, |sign| sign.leak);
    *one = Observation { sign: one.sign, if_present: 0.0, if_absent: leak / (1.0 - leak) };
    (posterior(network, &changed).log_evidence - all.log_evidence).exp()
}

/// The steps that fit least with the others.
///
/// The measure is the conflict of evidence, the logarithm of the product of each observation's own
/// probability over that of all together. Source: Jensen, Chamberlain, Nordahl & Jensen, *Analysis in
/// HUGIN of data conflict*, UAI 1990, from memory.
fn disagree(
    network: &Network,
    observed: &[Observation],
    all: &Posterior,
    left_out: &[LeftOut],
) -> Option<Surprise> {
    let alone = |one: &Observation| posterior(network, &[*one]).log_evidence;
    let single: Vec<(usize, f64)> = observed.iter().map(|one| (one.sign, alone(one))).collect();
    let sum = |keep: &dyn Fn(usize) -> bool| -> f64 {
        single.iter().filter(|(sign, _)| keep(*sign)).map(|(_, log)| log).sum()
    };
    let bits = |log: f64| log / std::f64::consts::LN_2;
    let conflict = sum(&|_| true) - all.log_evidence;
    if bits(conflict) < DISAGREE_BITS {
        return None;
    }
    let mut drops: Vec<(f64, &LeftOut)> = left_out
        .iter()
        .map(|out| (conflict - (sum(&|sign| !out.signs.contains(&sign)) - out.posterior.log_evidence), out))
        .filter(|(drop, _)| bits(*drop) >= 1.0)
        .collect();
    drops.sort_by(|a, b| b.0.total_cmp(&a.0));
    let steps = drops.into_iter().flat_map(|(_, out)| out.steps.clone()).collect();
    Some(Surprise { why: "surprise-signs-disagree".to_owned(), steps })
}
