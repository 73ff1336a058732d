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
use super::posterior::{Posterior, solve};

/// Networks drawn, in groups that are sorted side by side.
pub const DRAWS: usize = 200;

/// Nearest a drawn number comes to 0 or 1: what seven digits can still tell from one.
const EDGE: f64 = 1e-6;

/// The drawn networks of one kind of car.
#[derive(Debug, Clone)]
pub struct Draws {
    groups: Vec<Network<Lanes>>,
}

impl Draws {
    /// Draws the networks for cars like this one.
    pub fn of(trade: &Trade, case: &Case, seed: u64) -> Self {
        let numbers = Numbers::of(trade, case);
        let mut chance = Chance::seeded(seed);
        let mut draw = |beta: Beta| Lanes::each(|| chance.beta(beta).clamp(EDGE, 1.0 - EDGE));
        Self { groups: (0..DRAWS / LANES).map(|_| numbers.network(&mut draw)).collect() }
    }

    /// The interval of each cause in network order, and last of "none present". Each holds the
    /// probability itself.
    pub fn intervals(&self, observed: &[Observation], all: &Posterior) -> Vec<Interval> {
        let drawn: Vec<Posterior<Lanes>> = self.groups.iter().map(|group| solve(group, observed)).collect();
        let causes = (0..all.causes.len()).map(|cause| {
            let drawn = drawn.iter().filter_map(|one| one.causes.get(cause).copied());
            interval(drawn, all.causes.get(cause).copied().unwrap_or(0.0))
        });
        let none = interval(drawn.iter().map(|one| one.none), all.none);
        causes.chain(std::iter::once(none)).collect()
    }
}

fn interval(drawn: impl Iterator<Item = Lanes>, at: f64) -> Interval {
    // A quotient of sums of seven digits can come out a little above one. Of numbers that are not negative the bits are
    // in the same order, and whole numbers compare faster.
    let mut drawn: Vec<u32> =
        drawn.flat_map(|Lanes(drawn)| drawn).map(|one| one.clamp(0.0, 1.0).to_bits()).collect();
    let last = drawn.len().saturating_sub(1);
    let mut ranked = |place: usize| -> f64 {
        if drawn.is_empty() {
            return at;
        }
        let (_, value, _) = drawn.select_nth_unstable(place);
        f64::from(f32::from_bits(*value))
    };
    Interval { low: ranked(last / 20).min(at), high: ranked(last - last / 20).max(at) }
}
