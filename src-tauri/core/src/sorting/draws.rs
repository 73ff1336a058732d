//! How uncertain the judged numbers leave each probability: the same evidence under many networks, each
//! with its numbers drawn from their Beta distributions. The draws depend on the knowledge and the car
//! alone, never on the answers, so they are made once and kept.

use crate::model::case::Case;
use crate::model::certainty::Interval;
use crate::model::learned::Beta;
use crate::trade::Trade;

use super::chance::Chance;
use super::evidence::Observation;
use super::network::{Network, Numbers};
use super::number::{LANES, Lanes};
use super::posterior::{Beforehand, Posterior, solve};
use super::ready::Ready;

/// Networks drawn, in groups that are sorted side by side.
pub const DRAWS: usize = 200;

/// Nearest a drawn number comes to 0 or 1: what seven digits can still tell from one.
const EDGE: f64 = 1e-6;

/// The drawn networks of one kind of car, with those at the means.
#[derive(Debug, Clone)]
pub struct Draws {
    groups: Vec<(Network<Lanes>, Beforehand<Lanes>)>,
    /// The interval of each cause of which no evidence speaks, whatever its probability.
    unmoved: Vec<Interval>,
    /// At the means.
    pub(super) ready: Ready,
}

impl Draws {
    /// Draws the networks for cars like this one.
    pub fn of(trade: &Trade, case: &Case, seed: u64) -> Self {
        let numbers = Numbers::of(trade, case);
        let mut chance = Chance::seeded(seed);
        let mut draw = |beta: Beta| Lanes::each(|| chance.beta(beta).clamp(EDGE, 1.0 - EDGE));
        let groups: Vec<_> = (0..DRAWS / LANES)
            .map(|_| numbers.network(&mut draw))
            .map(|network| {
                let before = Beforehand::of(&network);
                (network, before)
            })
            .collect();
        let ready = Ready::of(trade, case);
        let of_cause = |cause: usize| {
            let drawn: Vec<Lanes> =
                groups.iter().filter_map(|(_, before)| before.shares().get(cause)).copied().collect();
            ranks(drawn.into_iter())
        };
        let unmoved = (0..ready.taught.network.causes.len()).filter_map(of_cause).collect();
        Self { groups, unmoved, ready }
    }

    /// The interval of each cause in network order, and last of "none present". Each holds the
    /// probability itself.
    pub fn intervals(&self, observed: &[Observation], all: &Posterior) -> Vec<Interval> {
        let drawn: Vec<Posterior<Lanes>> =
            self.groups.iter().map(|(group, before)| solve(group, before, observed, false)).collect();
        let causes = (0..all.causes.len()).map(|cause| {
            let at = all.causes.get(cause).copied().unwrap_or(0.0);
            match self.unmoved.get(cause).filter(|_| !self.speaks_of(cause, observed)) {
                Some(known) => around(*known, at),
                None => interval(drawn.iter().filter_map(|one| one.causes.get(cause).copied()), at),
            }
        });
        let none = interval(drawn.iter().map(|one| one.none), all.none);
        causes.chain(std::iter::once(none)).collect()
    }

    /// Whether evidence speaks of a cause: links are the same in each group.
    fn speaks_of(&self, cause: usize, observed: &[Observation]) -> bool {
        let links = |(group, _): &(Network<Lanes>, Beforehand<Lanes>)| {
            observed.iter().any(|one| group.signs.get(one.sign).is_some_and(|sign| sign.links(cause)))
        };
        self.groups.first().is_none_or(links)
    }
}

fn interval(drawn: impl Iterator<Item = Lanes>, at: f64) -> Interval {
    ranks(drawn).map_or(Interval { low: at, high: at }, |drawn| around(drawn, at))
}

/// An interval that holds the probability itself.
fn around(drawn: Interval, at: f64) -> Interval {
    Interval { low: drawn.low.min(at), high: drawn.high.max(at) }
}

/// Nine tenths of what was drawn lie in it; none of nothing.
fn ranks(drawn: impl Iterator<Item = Lanes>) -> Option<Interval> {
    // A quotient of sums of seven digits can come out a little above one. Of numbers that are not negative the bits are
    // in the same order, and whole numbers compare faster.
    let mut drawn: Vec<u32> =
        drawn.flat_map(|Lanes(drawn)| drawn).map(|one| one.clamp(0.0, 1.0).to_bits()).collect();
    let last = drawn.len().checked_sub(1)?;
    let mut ranked = |place: usize| f64::from(f32::from_bits(*drawn.select_nth_unstable(place).1));
    Some(Interval { low: ranked(last / 20), high: ranked(last - last / 20) })
}
