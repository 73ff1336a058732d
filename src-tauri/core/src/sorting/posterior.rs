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
use super::number::Number;
use crate::model::standing::CauseGroup;
use crate::trade::own::MAX_CAUSES;

/// What the evidence leaves of each cause.
#[derive(Debug, Clone, PartialEq)]
pub struct Posterior<N = f64> {
    /// Probability of each cause, in network order.
    pub causes: Vec<N>,
    /// Probability that no cause at all is present.
    pub none: N,
    /// Probability that no bearing cause is present.
    pub no_bearing: N,
    /// Natural logarithm of the probability of the evidence.
    pub log_evidence: N,
}

impl Posterior {
    /// Probability that some bearing cause is present; never outside 0 to 1 by rounding.
    pub fn bearing(&self) -> f64 {
        (1.0 - self.no_bearing).clamp(0.0, 1.0)
    }
}

/// The exact posterior.
pub fn posterior(network: &Network, evidence: &[Observation]) -> Posterior {
    solve(network, &Beforehand::of(network), evidence, true)
}

/// What each cause of a network comes to before any evidence: worked out once, where the network is asked again and
/// again of evidence that speaks of few causes.
#[derive(Debug, Clone)]
pub struct Beforehand<N = f64> {
    shares: Vec<N>,
    logarithms: Vec<N>,
}

impl<N: Number> Beforehand<N> {
    /// Of a network.
    pub fn of(network: &Network<N>) -> Self {
        let odds = Odds::beforehand(network);
        let causes = || 0..network.causes.len();
        let shares = causes().map(|cause| odds.share(cause)).collect();
        Self { shares, logarithms: causes().map(|cause| odds.whole(cause).logarithm()).collect() }
    }

    /// Probability of each cause, in network order.
    pub(super) fn shares(&self) -> &[N] {
        &self.shares
    }
}

/// The exact posterior of one network or of several side by side; without `weighed` the probability of the evidence is
/// left out, which takes a logarithm a cause.
pub(super) fn solve<N: Number>(
    network: &Network<N>,
    before: &Beforehand<N>,
    evidence: &[Observation],
    weighed: bool,
) -> Posterior<N> {
    let mut odds = Odds::beforehand(network);
    odds.weighed = weighed;
    let mut rest: Vec<Joint<'_, N>> = Vec::new();
    for observation in evidence {
        let Some(sign) = network.signs.get(observation.sign) else { continue };
        if observation.if_present == 0.0 {
            odds.absent(sign, observation.if_absent);
            continue;
        }
        // Asked some fifty times an answer, and seldom of more than one cause: no list before it is needed.
        let links = || (0..network.causes.len()).filter(|cause| sign.links(*cause) && odds.possible(*cause));
        let mut first = links();
        match (first.next(), first.next()) {
            (None, _) => odds.scale(observation.factor(N::all(1.0) - sign.leak)),
            (Some(cause), None) => odds.alone(sign, cause, observation),
            _ => rest.push((*observation, sign, links().collect())),
        }
    }
    let touched: Vec<usize> = (0..network.causes.len())
        .filter(|cause| rest.iter().any(|(_, _, links)| links.contains(cause)))
        .collect();
    debug_assert!(touched.len() <= MAX_CAUSES, "the network is too wide to enumerate");
    let (weights, log_scale) = weights((before, &odds), &rest, &touched);
    summarise(network, (before, &odds), &touched, &weights, log_scale)
}

/// An observation that needs enumeration, with its sign and the causes it touches.
type Joint<'n, N> = (Observation, &'n Sign<N>, Vec<usize>);

/// Weight of each cause when present, against its weight when absent, after the signs that factor. The
/// greater of the two is kept at one.
struct Odds<N> {
    present: Vec<N>,
    absent: Vec<N>,
    /// Whether any evidence was weighed for the cause.
    moved: Vec<bool>,
    log_scale: N,
    /// The logarithm is kept.
    weighed: bool,
}

impl<N: Number> Odds<N> {
    fn beforehand(network: &Network<N>) -> Self {
        let present = network.causes.iter().map(|cause| cause.prior).collect();
        let absent = network.causes.iter().map(|cause| N::all(1.0) - cause.prior).collect();
        let moved = vec![false; network.causes.len()];
        Self { present, absent, moved, log_scale: N::all(0.0), weighed: true }
    }

    /// Whether a cause can be present at all.
    fn possible(&self, cause: usize) -> bool {
        self.present.get(cause).is_some_and(|present| present.above(0.0))
    }

    /// A sign that was not there: each cause it touches weighs its miss.
    fn absent(&mut self, sign: &Sign<N>, if_absent: f64) {
        for cause in 0..self.present.len() {
            if sign.links(cause) && self.possible(cause) {
                self.weigh(cause, sign.miss_of(cause), N::all(1.0));
            }
        }
        self.scale(N::all(if_absent) * (N::all(1.0) - sign.leak));
    }

    /// A sign that touches one cause only.
    fn alone(&mut self, sign: &Sign<N>, cause: usize, observation: &Observation) {
        let absent = N::all(1.0) - sign.leak;
        self.weigh(cause, observation.factor(absent * sign.miss_of(cause)), observation.factor(absent));
    }

    fn weigh(&mut self, cause: usize, if_present: N, if_absent: N) {
        let (Some(present), Some(absent)) = (self.present.get_mut(cause), self.absent.get_mut(cause)) else {
            return;
        };
        if let Some(moved) = self.moved.get_mut(cause) {
            *moved = true;
        }
        *present *= if_present;
        *absent *= if_absent;
        let greatest = present.greater(*absent);
        // As a rule: a cause that is more likely absent stays so by a sign that was not there.
        if greatest == N::all(1.0) {
            return;
        }
        *present = *present / greatest;
        *absent = *absent / greatest;
        self.scale(greatest);
    }

    /// A factor of everything there is.
    fn scale(&mut self, factor: N) {
        if self.weighed {
            self.log_scale = self.log_scale + factor.logarithm();
        }
    }

    fn moved(&self, cause: usize) -> bool {
        self.moved.get(cause).copied().unwrap_or(true)
    }

    fn whole(&self, cause: usize) -> N {
        let (present, absent) = self.pair(cause);
        present + absent
    }

    fn share(&self, cause: usize) -> N {
        let (present, absent) = self.pair(cause);
        present / (present + absent)
    }

    fn pair(&self, cause: usize) -> (N, N) {
        let at = |of: &[N], otherwise: f64| of.get(cause).copied().unwrap_or(N::all(otherwise));
        (at(&self.present, 0.0), at(&self.absent, 1.0))
    }
}

/// The weight of every combination of the touched causes, bit `i` standing for `touched[i]`, and the
/// logarithm of what was divided out.
fn weights<N: Number>(
    (before, odds): (&Beforehand<N>, &Odds<N>),
    rest: &[Joint<'_, N>],
    touched: &[usize],
) -> (Vec<N>, N) {
    let mut log_scale = odds.log_scale;
    let mut weights = Vec::with_capacity(1 << touched.len());
    weights.push(N::all(1.0));
    let mut absent = Vec::with_capacity(1 << touched.len());
    let known = before.logarithms.iter().enumerate().filter(|_| odds.weighed);
    for (cause, known) in known.filter(|(cause, _)| !touched.contains(cause)) {
        let logarithm = if odds.moved(cause) { odds.whole(cause).logarithm() } else { *known };
        log_scale = log_scale + logarithm;
    }
    for (bit, cause) in touched.iter().enumerate() {
        let (present, not_present) = odds.pair(*cause);
        double(&mut weights, not_present, present);
        // A sign is weighed as soon as its last cause is in, while there are few combinations.
        for (observation, sign, _) in rest.iter().filter(|(_, _, links)| links.last() == Some(cause)) {
            absent_in_each(&mut absent, sign, touched.get(..=bit).unwrap_or_default());
            if let Some(divided) = weigh(&mut weights, &absent, observation).filter(|_| odds.weighed) {
                log_scale = log_scale + divided.logarithm();
            }
        }
    }
    (weights, log_scale)
}

/// P(sign absent) in each combination of these causes.
fn absent_in_each<N: Number>(absent: &mut Vec<N>, sign: &Sign<N>, touched: &[usize]) {
    absent.clear();
    absent.push(N::all(1.0) - sign.leak);
    for cause in touched {
        double(absent, N::all(1.0), sign.miss_of(*cause));
    }
}

/// Multiplies one sign in, and keeps the greatest weight from vanishing. Gives back what was divided out.
fn weigh<N: Number>(weights: &mut [N], absent: &[N], observation: &Observation) -> Option<N> {
    for (weight, absent) in weights.iter_mut().zip(absent) {
        *weight *= observation.factor(*absent);
    }
    // Mostly one of the first is great enough.
    if weights.iter().any(|weight| !weight.below(N::SMALL)) {
        return None;
    }
    let greatest = weights.iter().fold(N::all(N::LEAST), |greatest, weight| greatest.greater(*weight));
    if !greatest.below(N::SMALL) {
        return None;
    }
    for weight in weights {
        *weight = *weight / greatest;
    }
    Some(greatest)
}

/// Adds one bit: the lower half times `clear`, the upper half times `set`.
fn double<N: Number>(values: &mut Vec<N>, clear: N, set: N) {
    let half = values.len();
    values.extend_from_within(..);
    let (lower, upper) = values.split_at_mut(half);
    if clear != N::all(1.0) {
        lower.iter_mut().for_each(|value| *value *= clear);
    }
    upper.iter_mut().for_each(|value| *value *= set);
}

fn sum<N: Number>(values: &[N]) -> N {
    values.iter().fold(N::all(0.0), |sum, value| sum + *value)
}

fn summarise<N: Number>(
    network: &Network<N>,
    (before, odds): (&Beforehand<N>, &Odds<N>),
    touched: &[usize],
    weights: &[N],
    log_scale: N,
) -> Posterior<N> {
    let (total, each_present) = all_and_each(weights, touched.len());
    let share = |(cause, known): (usize, &N)| if odds.moved(cause) { odds.share(cause) } else { *known };
    let mut causes: Vec<N> = before.shares.iter().enumerate().map(share).collect();
    let bearing =
        |cause: usize| network.causes.get(cause).is_some_and(|cause| cause.group == CauseGroup::Bearing);
    let (mut none, mut no_bearing) = (N::all(1.0), N::all(1.0));
    for (cause, share) in causes.iter().enumerate().filter(|(cause, _)| !touched.contains(cause)) {
        let absent = N::all(1.0) - *share;
        none *= absent;
        if bearing(cause) {
            no_bearing *= absent;
        }
    }
    for (cause, present) in touched.iter().zip(each_present) {
        if let Some(probability) = causes.get_mut(*cause) {
            *probability = present / total;
        }
    }
    let first = weights.first().copied().unwrap_or(N::all(0.0));
    Posterior {
        causes,
        none: first / total * none,
        no_bearing: all_absent(weights, touched, &bearing) / total * no_bearing,
        log_evidence: if odds.weighed { log_scale + total.logarithm() } else { N::all(0.0) },
    }
}

/// The weight of all there is, and that of each touched cause being present. Summing the topmost bit out halves the
/// combinations, so all of them together cost little more than one pass.
///
/// The two sums go side by side, since each addition has to wait for the one before it in its own.
fn all_and_each<N: Number>(weights: &[N], bits: usize) -> (N, Vec<N>) {
    let mut left = weights.to_vec();
    let mut all = weights.iter();
    let mut total = N::all(0.0);
    let mut present = vec![N::all(0.0); bits];
    for one in present.iter_mut().rev() {
        let half = left.len() / 2;
        let (lower, upper) = left.split_at_mut(half);
        let mut here = N::all(0.0);
        for ((lower, upper), weight) in lower.iter_mut().zip(upper.iter()).zip(all.by_ref()) {
            here = here + *upper;
            total = total + *weight;
            *lower = *lower + *upper;
        }
        *one = here;
        left.truncate(half);
    }
    (all.fold(total, |total, weight| total + *weight), present)
}

/// The weight of every concerned cause being absent, whatever the others are.
fn all_absent<N: Number>(weights: &[N], touched: &[usize], concerns: &dyn Fn(usize) -> bool) -> N {
    let mut left = weights.to_vec();
    for cause in touched.iter().rev() {
        sum_out(&mut left, !concerns(*cause));
    }
    sum(&left)
}

/// Takes the topmost bit out: its upper half is added to the lower one, or dropped.
fn sum_out<N: Number>(left: &mut Vec<N>, added: bool) {
    let half = left.len() / 2;
    let (lower, upper) = left.split_at_mut(half);
    if added {
        lower.iter_mut().zip(upper.iter()).for_each(|(lower, upper)| *lower = *lower + *upper);
    }
    left.truncate(half);
}
