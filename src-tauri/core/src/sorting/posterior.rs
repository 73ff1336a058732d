//! Exact inference. Signs that were absent, and signs of a single cause, factor into the causes one by
//! one; the combinations of the causes that touch the other observed signs are enumerated, and nothing
//! else is.
//!
//! Each observed sign contributes `if_present + (if_absent - if_present) * P(absent | causes)`, which is
//! `P(absent)` or `1 - P(absent)` for a plain observation. Weights that have become small are brought back
//! to one and the logarithm kept, so that forty signs do not underflow. The order of work is
//! the order of the data, never of the answers.

use super::evidence::Observation;
use super::network::{Network, Sign};
use crate::model::standing::CauseGroup;
use crate::trade::own::MAX_CAUSES;

/// What the evidence leaves of each cause.
#[derive(Debug, Clone, PartialEq)]
pub struct Posterior {
    /// Probability of each cause, in network order.
    pub causes: Vec<f64>,
    /// Probability that no cause at all is present.
    pub none: f64,
    /// Probability that no bearing cause is present.
    pub no_bearing: f64,
    /// Natural logarithm of the probability of the evidence.
    pub log_evidence: f64,
}

/// The exact posterior.
pub fn posterior(network: &Network, evidence: &[Observation]) -> Posterior {
    let mut odds = Odds::beforehand(network);
    let mut rest = Vec::new();
    for observation in evidence {
        let Some(sign) = network.signs.get(observation.sign) else { continue };
        let links: Vec<usize> =
            (0..network.causes.len()).filter(|cause| sign.links(*cause) && odds.possible(*cause)).collect();
        match links.as_slice() {
            _ if observation.if_present == 0.0 => odds.absent(sign, &links, observation.if_absent),
            [] => odds.log_scale += observation.factor(1.0 - sign.leak).ln(),
            [cause] => odds.alone(sign, *cause, observation),
            _ => rest.push((*observation, sign, links)),
        }
    }
    let touched: Vec<usize> = (0..network.causes.len())
        .filter(|cause| rest.iter().any(|(_, _, links)| links.contains(cause)))
        .collect();
    debug_assert!(touched.len() <= MAX_CAUSES, "the network is too wide to enumerate");
    let (weights, log_scale) = weights(network, &rest, &touched, &odds);
    let total: f64 = weights.iter().sum();
    summarise(network, &odds, &touched, &weights, total, log_scale)
}

/// An observation that needs enumeration, with its sign and the causes it touches.
type Joint<'n> = (Observation, &'n Sign, Vec<usize>);

/// Weight of each cause when present, against its weight when absent, after the signs that factor. The
/// greater of the two is kept at one.
struct Odds {
    present: Vec<f64>,
    absent: Vec<f64>,
    log_scale: f64,
}

impl Odds {
    fn beforehand(network: &Network) -> Self {
        let present = network.causes.iter().map(|cause| cause.prior).collect();
        let absent = network.causes.iter().map(|cause| 1.0 - cause.prior).collect();
        Self { present, absent, log_scale: 0.0 }
    }

    /// Whether a cause can be present at all.
    fn possible(&self, cause: usize) -> bool {
        self.present.get(cause).is_some_and(|present| *present > 0.0)
    }

    /// A sign that was not there: each cause it touches weighs its miss.
    fn absent(&mut self, sign: &Sign, links: &[usize], if_absent: f64) {
        for cause in links {
            self.weigh(*cause, sign.miss_of(*cause), 1.0);
        }
        self.log_scale += (if_absent * (1.0 - sign.leak)).ln();
    }

    /// A sign that touches one cause only.
    fn alone(&mut self, sign: &Sign, cause: usize, observation: &Observation) {
        let absent = 1.0 - sign.leak;
        self.weigh(cause, observation.factor(absent * sign.miss_of(cause)), observation.factor(absent));
    }

    fn weigh(&mut self, cause: usize, if_present: f64, if_absent: f64) {
        let (Some(present), Some(absent)) = (self.present.get_mut(cause), self.absent.get_mut(cause)) else {
            return;
        };
        *present *= if_present;
        *absent *= if_absent;
        let greatest = present.max(*absent);
        *present /= greatest;
        *absent /= greatest;
        self.log_scale += greatest.ln();
    }

    fn share(&self, cause: usize) -> f64 {
        let (present, absent) = self.pair(cause);
        present / (present + absent)
    }

    fn pair(&self, cause: usize) -> (f64, f64) {
        (self.present.get(cause).copied().unwrap_or(0.0), self.absent.get(cause).copied().unwrap_or(1.0))
    }
}

/// The weight of every combination of the touched causes, bit `i` standing for `touched[i]`, and the
/// logarithm of what was divided out.
fn weights(network: &Network, rest: &[Joint<'_>], touched: &[usize], odds: &Odds) -> (Vec<f64>, f64) {
    let mut log_scale = odds.log_scale;
    let mut weights = vec![1.0];
    for cause in (0..network.causes.len()).filter(|cause| !touched.contains(cause)) {
        let (present, absent) = odds.pair(cause);
        log_scale += (present + absent).ln();
    }
    for (bit, cause) in touched.iter().enumerate() {
        let (present, absent) = odds.pair(*cause);
        double(&mut weights, absent, present);
        // A sign is weighed as soon as its last cause is in, while there are few combinations.
        for (observation, sign, _) in rest.iter().filter(|(_, _, links)| links.last() == Some(cause)) {
            log_scale += weigh(&mut weights, observation, sign, touched.get(..=bit).unwrap_or_default());
        }
    }
    (weights, log_scale)
}

/// Below this the weights are brought back to one; far from the least number there is.
const SMALL: f64 = 1e-60;

/// Multiplies one sign in, and keeps the greatest weight from vanishing. Gives back the logarithm of what
/// was divided out.
fn weigh(weights: &mut [f64], observation: &Observation, sign: &Sign, touched: &[usize]) -> f64 {
    let mut absent = Vec::with_capacity(weights.len());
    absent.push(1.0 - sign.leak);
    for cause in touched {
        double(&mut absent, 1.0, sign.miss_of(*cause));
    }
    let mut greatest = f64::MIN_POSITIVE;
    for (weight, absent) in weights.iter_mut().zip(&absent) {
        *weight *= observation.factor(*absent);
        greatest = greatest.max(*weight);
    }
    if greatest > SMALL {
        return 0.0;
    }
    for weight in weights {
        *weight /= greatest;
    }
    greatest.ln()
}

/// Adds one bit: the lower half times `clear`, the upper half times `set`.
fn double(values: &mut Vec<f64>, clear: f64, set: f64) {
    let upper: Vec<f64> = values.iter().map(|value| value * set).collect();
    for value in values.iter_mut() {
        *value *= clear;
    }
    values.extend(upper);
}

fn summarise(
    network: &Network,
    odds: &Odds,
    touched: &[usize],
    weights: &[f64],
    total: f64,
    log_scale: f64,
) -> Posterior {
    let mut causes: Vec<f64> = (0..network.causes.len()).map(|cause| odds.share(cause)).collect();
    for (cause, present) in touched.iter().zip(each_present(weights, touched.len())) {
        if let Some(probability) = causes.get_mut(*cause) {
            *probability = present / total;
        }
    }
    let bearing =
        |cause: usize| network.causes.get(cause).is_some_and(|cause| cause.group == CauseGroup::Bearing);
    let untouched = |concerns: &dyn Fn(usize) -> bool| -> f64 {
        let concerned =
            (0..network.causes.len()).filter(|cause| concerns(*cause) && !touched.contains(cause));
        concerned.map(|cause| 1.0 - odds.share(cause)).product()
    };
    let none = weights.first().copied().unwrap_or(0.0) / total;
    let no_bearing = all_absent(weights, touched, &bearing) / total;
    Posterior {
        causes,
        none: none * untouched(&|_| true),
        no_bearing: no_bearing * untouched(&bearing),
        log_evidence: log_scale + total.ln(),
    }
}

/// The weight of each touched cause being present. Summing the topmost bit out halves the combinations, so
/// all of them together cost little more than one pass.
fn each_present(weights: &[f64], bits: usize) -> Vec<f64> {
    let mut left = weights.to_vec();
    let mut present = vec![0.0; bits];
    for one in present.iter_mut().rev() {
        let upper = left.split_off(left.len() / 2);
        *one = upper.iter().sum();
        for (lower, upper) in left.iter_mut().zip(&upper) {
            *lower += upper;
        }
    }
    present
}

/// The weight of every concerned cause being absent, whatever the others are.
fn all_absent(weights: &[f64], touched: &[usize], concerns: &dyn Fn(usize) -> bool) -> f64 {
    let mut left = weights.to_vec();
    for cause in touched.iter().rev() {
        let upper = left.split_off(left.len() / 2);
        if !concerns(*cause) {
            for (lower, upper) in left.iter_mut().zip(&upper) {
                *lower += upper;
            }
        }
    }
    left.iter().sum()
}
