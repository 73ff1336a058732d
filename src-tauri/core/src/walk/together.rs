//! Which steps share a screen, and which looks can be said to be sound at once.

use crate::model::entry::Order;
use crate::model::standing::StepStand;
use crate::model::together::{LooksStand, PairStand};
use crate::trade::rows::StepRow;

/// The pairs of a car, in walk order. A step whose other half is not there is on a screen of its own.
pub fn pairs(rows: &[&StepRow], steps: &[StepStand]) -> Vec<PairStand> {
    let halves = |(at, first): (usize, &&StepRow)| {
        let id = first.pair.clone()?;
        let other = |row: &&&StepRow| row.pair == first.pair && row.support_number == first.support_number;
        let second = rows.iter().skip(at + 1).find(other)?;
        let at_support = steps.iter().find(|step| step.id == first.id).and_then(|step| step.at_support);
        Some(PairStand { id, steps: [first.id.clone(), second.id.clone()], at_support })
    };
    rows.iter().enumerate().filter_map(halves).collect()
}

/// The looks that the walk in this order asks for. `unseen` says what nobody can see as the car stands: it is said to be
/// sound by nobody.
pub fn looks(
    rows: &[&StepRow],
    steps: &[StepStand],
    order: Order,
    unseen: impl Fn(&StepRow) -> bool,
) -> LooksStand {
    let alone = order == Order::HandsOn;
    let asked: Vec<&StepStand> = rows
        .iter()
        .filter(|row| row.sound_together && !unseen(row) && (row.is_hands_on_check() || !alone))
        .filter_map(|row| steps.iter().find(|step| step.id == row.id))
        .collect();
    let open = |step: &&&StepStand| step.answered.is_none() && step.lock.is_none();
    LooksStand {
        steps: asked.iter().map(|step| step.id.clone()).collect(),
        open: asked.iter().filter(open).map(|step| step.id.clone()).collect(),
    }
}
