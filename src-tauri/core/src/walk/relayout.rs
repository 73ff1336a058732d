//! A layout that turns out to be another: which answers do not hold of the car as it is.

use crate::model::entry::{Entry, EntryBody};
use crate::trade::Trade;
use crate::trade::rows::Layout;

use super::applies;
use super::record::Record;

/// The answered steps, in walk order, that a car of the other layout has not got or is asked otherwise. What was
/// answered to the rest was about the car and stays.
pub fn lost(trade: &Trade, record: &Record, to: &Layout) -> Vec<String> {
    let vehicle = &record.intake.vehicle;
    let Some(from) = trade.layout(&vehicle.layout) else { return Vec::new() };
    let rows = applies::steps(trade, to, vehicle.gearbox);
    // A row of the data is one step as one kind of shaft is asked it.
    let stays = |id: &String| rows.iter().find(|row| row.id == *id).copied();
    let had = applies::steps(trade, from, vehicle.gearbox);
    let answered = had.into_iter().filter(|row| record.answers.contains_key(&row.id));
    let gone = answered.filter(|row| stays(&row.id).is_none_or(|other| !std::ptr::eq(*row, other)));
    gone.map(|row| row.id.clone()).collect()
}

/// Hashes of every answer to such steps, in the order of the ledger: one that was superseded must not come back.
pub fn answers_to(trade: &Trade, entries: &[Entry], lost: &[String]) -> Vec<String> {
    let former = |step: &String| {
        let mut rows = trade.steps.iter().filter(|row| lost.contains(&row.id));
        rows.any(|row| row.formerly.as_ref().is_some_and(|former| former.step == *step))
    };
    let of = |entry: &&Entry| matches!(&entry.body, EntryBody::Answered { step, .. } if lost.contains(step) || former(step));
    entries.iter().filter(of).map(|entry| entry.hash.clone()).collect()
}
