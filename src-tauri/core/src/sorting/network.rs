//! The network of one car: its causes with priors, its signs with leak and links, as plain numbers.

use crate::model::case::Case;
use crate::model::standing::CauseGroup;
use crate::trade::Trade;
use crate::trade::rows::{CauseRow, SignRow};

/// A two-layer noisy-OR network. Causes are independent beforehand; each sign is absent with
/// probability `(1 - leak) * product over present causes of miss`.
#[derive(Debug, Clone, PartialEq)]
pub struct Network {
    /// Causes, in data order.
    pub causes: Vec<Cause>,
    /// Signs, in data order.
    pub signs: Vec<Sign>,
}

/// A cause.
#[derive(Debug, Clone, PartialEq)]
pub struct Cause {
    /// Id.
    pub id: String,
    /// Group.
    pub group: CauseGroup,
    /// Probability beforehand.
    pub prior: f64,
}

/// A sign.
#[derive(Debug, Clone, PartialEq)]
pub struct Sign {
    /// Index of its row in the trade's signs.
    pub row: usize,
    /// Probability without any linked cause.
    pub leak: f64,
    /// For each cause of the network: the probability that it, present, does not bring the sign about.
    /// One for a cause that is not linked.
    pub miss: Vec<f64>,
}

impl Sign {
    /// Whether a cause is linked to it.
    pub fn links(&self, cause: usize) -> bool {
        self.miss.get(cause).is_some_and(|miss| *miss < 1.0)
    }

    /// P(sign absent | these causes present).
    pub fn absent(&self, present: impl Fn(usize) -> bool) -> f64 {
        let misses = self.miss.iter().enumerate().filter(|(cause, _)| present(*cause)).map(|(_, miss)| miss);
        (1.0 - self.leak) * misses.product::<f64>()
    }
}

impl Network {
    /// The network of one car.
    pub fn of(trade: &Trade, case: &Case) -> Self {
        let listed = trade.layout(&case.layout).map(|layout| layout.causes.as_slice()).unwrap_or_default();
        let exists = |row: &&CauseRow| {
            listed.contains(&row.id)
                && (row.gearboxes.is_empty()
                    || case.gearbox.is_none_or(|gearbox| row.gearboxes.contains(&gearbox)))
        };
        let causes: Vec<Cause> = trade
            .causes
            .iter()
            .filter(exists)
            .map(|row| Cause { id: row.id.clone(), group: row.group, prior: row.prior })
            .collect();
        let applies = |row: &SignRow| row.supports.is_empty() || row.supports.contains(&case.support);
        let signs = trade.signs.iter().enumerate().filter(|(_, row)| applies(row));
        let signs = signs.map(|(index, row)| sign(index, row, &causes)).collect();
        Self { causes, signs }
    }
}

fn sign(index: usize, row: &SignRow, causes: &[Cause]) -> Sign {
    let strength =
        |cause: &Cause| row.links.iter().find(|link| link.cause == cause.id).map_or(0.0, |link| link.p);
    Sign { row: index, leak: row.leak, miss: causes.iter().map(|cause| 1.0 - strength(cause)).collect() }
}
