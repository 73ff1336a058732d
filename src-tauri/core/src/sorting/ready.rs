//! The networks of one kind of car at the means, with what each comes to before any answer: answers change nothing of
//! them, so that they are made once and kept.

use crate::model::case::Case;
use crate::model::standing::CauseGroup;
use crate::trade::Trade;

use super::evidence::Observation;
use super::network::Network;
use super::posterior::{Beforehand, Posterior, solve};

/// A network that is asked again and again.
#[derive(Debug, Clone)]
pub struct Asked {
    /// The network itself.
    pub network: Network,
    before: Beforehand,
}

impl Asked {
    /// Makes a network ready to be asked.
    pub fn new(network: Network) -> Self {
        let before = Beforehand::of(&network);
        Self { network, before }
    }

    /// The exact posterior.
    pub fn posterior(&self, evidence: &[Observation]) -> Posterior {
        solve(&self.network, &self.before, evidence, true)
    }
}

/// The networks of cars like one.
#[derive(Debug, Clone)]
pub struct Ready {
    /// With what outcomes have taught.
    pub taught: Asked,
    /// By the numbers as judged; none where nothing was taught, and both are one.
    judged: Option<Asked>,
    /// As judged, with every cause but the bearing's taken as absent.
    alone: Asked,
}

impl Ready {
    /// Those of cars like this one.
    pub fn of(trade: &Trade, case: &Case) -> Self {
        let judged = trade.learned.layouts.contains_key(&case.layout);
        let judged = judged.then(|| Asked::new(Network::untaught(trade, case)));
        let taught = Asked::new(Network::of(trade, case));
        let alone = alone(judged.as_ref().unwrap_or(&taught).network.clone());
        Self { taught, judged, alone }
    }

    /// Those of cars like this one, for whom no outcome has taught anything.
    pub fn untaught(trade: &Trade, case: &Case) -> Self {
        let taught = Asked::new(Network::untaught(trade, case));
        let alone = alone(taught.network.clone());
        Self { taught, judged: None, alone }
    }

    /// By the numbers as judged: what ratings rest on.
    pub fn judged(&self) -> &Asked {
        self.judged.as_ref().unwrap_or(&self.taught)
    }

    /// Probability of the bearing group with every other cause taken as absent: nothing else may explain a
    /// finding away.
    ///
    /// Against "no bearing cause", each combination of bearing causes then weighs a product of one ratio a
    /// sign, at least 1 where the sign was seen and at most 1 where it was not. So a sign more seen can only
    /// raise the suspicion, and since another cause brings every ratio of a seen sign nearer to 1, the
    /// suspicion is never below the bearing probability itself.
    pub fn suspicion(&self, observed: &[Observation]) -> f64 {
        self.alone.posterior(observed).bearing()
    }
}

fn alone(mut network: Network) -> Asked {
    for cause in network.causes.iter_mut().filter(|cause| cause.group != CauseGroup::Bearing) {
        cause.prior = 0.0;
    }
    Asked::new(network)
}
