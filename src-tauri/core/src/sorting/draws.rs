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
use super::posterior::{Posterior, posterior};

/// Networks drawn.
pub const DRAWS: u32 = 200;

/// Nearest a drawn number comes to 0 or 1.
const EDGE: f64 = 1e-9;

/// The drawn networks of one kind of car.
#[derive(Debug, Clone)]
pub struct Draws {
    networks: Vec<Network>,
}

impl Draws {
    /// Draws the networks for cars like this one.
    pub fn of(trade: &Trade, case: &Case, seed: u64) -> Self {
        let numbers = Numbers::of(trade, case);
        let mut chance = Chance::seeded(seed);
        let mut draw = |beta: Beta| chance.beta(beta).clamp(EDGE, 1.0 - EDGE);
        Self { networks: (0..DRAWS).map(|_| numbers.network(&mut draw)).collect() }
    }

    /// The interval of each cause in network order, and last of "none present". Each holds the
    /// probability itself.
    pub fn intervals(&self, observed: &[Observation], all: &Posterior) -> Vec<Interval> {
        let drawn: Vec<Posterior> =
            self.networks.iter().map(|network| posterior(network, observed)).collect();
        let causes = (0..all.causes.len()).map(|cause| {
            let drawn = drawn.iter().filter_map(|one| one.causes.get(cause).copied());
            (drawn.collect::<Vec<f64>>(), all.causes.get(cause).copied().unwrap_or(0.0))
        });
        let none = (drawn.iter().map(|one| one.none).collect(), all.none);
        causes.chain(std::iter::once(none)).map(|(drawn, at)| interval(drawn, at)).collect()
    }
}

fn interval(mut drawn: Vec<f64>, at: f64) -> Interval {
    drawn.sort_by(f64::total_cmp);
    let last = drawn.len().saturating_sub(1);
    let (low, high) = (last / 20, last - last / 20);
    let value = |place: usize| drawn.get(place).copied().unwrap_or(at);
    Interval { low: value(low).min(at), high: value(high).max(at) }
}
