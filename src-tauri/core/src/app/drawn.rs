//! The drawn networks of each kind of car, made when first needed and kept until the knowledge changes.

use std::cell::RefCell;
use std::collections::BTreeMap;
use std::sync::Arc;

use crate::model::case::Case;
use crate::sorting::draws::Draws;
use crate::sorting::network;
use crate::trade::Trade;

/// A seed that is always the same: the interval in a finding must not change when it is opened again.
const SEED: u64 = 20_261_125;

/// A kind of car: all that its network hangs on, and so what shifts its priors too.
type Kind = (String, Option<&'static str>, Vec<u64>);

/// Draws by kind: nothing else of a car changes its network.
#[derive(Debug, Default, Clone)]
pub struct DrawnFor {
    kept: RefCell<BTreeMap<Kind, Arc<Draws>>>,
}

impl DrawnFor {
    /// The draws of cars like this one.
    pub fn of(&self, trade: &Trade, case: &Case) -> Arc<Draws> {
        let odds = network::odds(trade, case).into_iter().map(f64::to_bits);
        let kind = (case.layout.clone(), case.gearbox.map(|gearbox| gearbox.id()), odds.collect());
        let mut kept = self.kept.borrow_mut();
        Arc::clone(kept.entry(kind).or_insert_with(|| Arc::new(Draws::of(trade, case, SEED))))
    }
}
