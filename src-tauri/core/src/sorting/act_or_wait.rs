//! The choices that are judgement: act where acting is expected to lose less than waiting. Ratings by
//! rule are made in `urgency` and are not touched here.

use crate::model::certainty::{Course, Judgement};
use crate::model::standing::CauseGroup;
use crate::trade::Trade;
use crate::trade::losses::{About, JudgementRow};

use super::network::Network;
use super::posterior::Posterior;

/// One choice about one probability.
#[derive(Debug, Clone, PartialEq)]
pub struct ActOrWait<'t> {
    row: &'t JudgementRow,
    /// Index of the cause it is about; none for the bearing group.
    cause: Option<usize>,
    /// Lost by acting without a fault, minutes.
    act_loss: f64,
    /// Lost by waiting with one, minutes.
    wait_loss: f64,
    act_basis: &'t str,
    wait_basis: &'t str,
}

/// Every choice of this car.
pub fn choices<'t>(trade: &'t Trade, network: &Network) -> Vec<ActOrWait<'t>> {
    let losses = &trade.losses;
    let mut choices = Vec::new();
    for row in &losses.judgements {
        let others = network.causes.iter().enumerate().filter(|(_, cause)| cause.group == CauseGroup::Other);
        let causes: Vec<Option<usize>> = match row.about {
            About::Suspicion | About::Bearing => vec![None],
            About::Other => others.map(|(index, _)| Some(index)).collect(),
        };
        choices.extend(causes.into_iter().map(|cause| ActOrWait {
            row,
            cause,
            act_loss: losses.minutes(&row.act_loss),
            wait_loss: losses.minutes(&row.wait_loss),
            act_basis: losses.basis(&row.act_loss),
            wait_basis: losses.basis(&row.wait_loss),
        }));
    }
    choices
}

impl ActOrWait<'_> {
    /// The probability it rests on.
    pub fn probability(&self, posterior: &Posterior) -> f64 {
        let cause = |index: usize| posterior.causes.get(index).copied().unwrap_or(0.0);
        self.cause.map_or(posterior.bearing(), cause)
    }

    /// The probability from which on acting loses less.
    pub fn turns_at(&self) -> f64 {
        self.act_loss / (self.act_loss + self.wait_loss)
    }

    /// Whether acting loses less.
    pub fn acts(&self, probability: f64) -> bool {
        probability >= self.turns_at()
    }

    /// Expected loss of acting or waiting, minutes.
    pub fn loss(&self, acts: bool, probability: f64) -> f64 {
        if acts { (1.0 - probability) * self.act_loss } else { probability * self.wait_loss }
    }
}

/// The choices as shown: those about the bearing, and the one about the likeliest other cause.
/// `suspicion` is the probability that the rating reads.
pub fn judgements(
    choices: &[ActOrWait<'_>],
    network: &Network,
    all: &Posterior,
    suspicion: f64,
) -> Vec<Judgement> {
    let shown = |choice: &ActOrWait<'_>| {
        let probability =
            if choice.row.about == About::Suspicion { suspicion } else { choice.probability(all) };
        let cause = choice.cause.and_then(|index| network.causes.get(index)).map(|cause| cause.id.clone());
        judgement(choice, cause, probability)
    };
    let (group, each): (Vec<_>, Vec<_>) = choices.iter().partition(|choice| choice.cause.is_none());
    let likeliest = each.into_iter().max_by(|a, b| a.probability(all).total_cmp(&b.probability(all)));
    group.into_iter().chain(likeliest).map(shown).collect()
}

fn judgement(choice: &ActOrWait<'_>, cause: Option<String>, probability: f64) -> Judgement {
    let row = choice.row;
    let course = |id: &str, loss: &str, acts: bool| Course {
        id: id.to_owned(),
        loss: loss.to_owned(),
        expected: choice.loss(acts, probability),
        basis: if acts { choice.act_basis } else { choice.wait_basis }.to_owned(),
    };
    Judgement {
        id: row.id.clone(),
        cause,
        probability,
        turns_at: choice.turns_at(),
        act: course(&row.act, &row.act_loss, true),
        wait: course(&row.wait, &row.wait_loss, false),
        acts: choice.acts(probability),
    }
}
