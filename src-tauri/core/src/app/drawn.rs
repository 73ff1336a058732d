//! The drawn networks of each kind of car, made when first needed and kept until the knowledge changes.

use std::collections::BTreeMap;

use crate::model::case::Case;
use crate::sorting::draws::Draws;
use crate::trade::Trade;

/// A seed that is always the same: the interval in a finding must not change when it is opened again.
const SEED: u64 = 20_261_125;

/// Draws by layout and gearbox: nothing else of a car changes its network.
#[derive(Debug, Default)]
pub struct DrawnFor {
    kept: BTreeMap<(String, Option<&'static str>), Draws>,
}

impl DrawnFor {
    /// The draws of cars like this one.
    pub fn of(&mut self, trade: &Trade, case: &Case) -> &Draws {
        let kind = (case.layout.clone(), case.gearbox.map(|gearbox| gearbox.id()));
        self.kept.entry(kind).or_insert_with(|| Draws::of(trade, case, SEED))
    }
}
