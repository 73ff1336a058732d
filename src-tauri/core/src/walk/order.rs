//! Which part comes first. A complaint of buzz, knock or vibration goes under the car before any
//! revving; otherwise the engine is heard first, and the other order is offered because running makes
//! the exhaust hot.

use crate::model::entry::Order;
use crate::model::visit::Intake;
use crate::trade::Trade;
use crate::trade::rows::SoundRow;

use super::record::Record;

/// What Hebrew writes onto the front of a word: and, the, in, to, that, as, from.
const ONTO_THE_FRONT: &str = "והבלשכמ";

/// The order that holds: the one chosen, else the one the complaint asks for.
pub fn order(trade: &Trade, record: &Record) -> Order {
    record.order.unwrap_or_else(|| by_complaint(trade, &record.intake))
}

/// The order the complaint asks for.
pub fn by_complaint(trade: &Trade, intake: &Intake) -> Order {
    let sounds = complaint_sounds(trade, intake);
    let under = trade.sounds.iter().any(|row| row.under_car_first && sounds.contains(&row.id));
    if under { Order::UnderCarFirst } else { Order::RunningFirst }
}

/// The sounds complained of: those chosen at intake, and those the owner's own words name.
pub fn complaint_sounds(trade: &Trade, intake: &Intake) -> Vec<String> {
    let text = intake.complaint.to_lowercase();
    let words: Vec<&str> = text.split(|letter: char| !letter.is_alphabetic()).collect();
    let said = |row: &SoundRow| {
        let begins = |word: &str| row.words.iter().any(|start| word.starts_with(start));
        words.iter().any(|word| bare(word).any(begins))
    };
    let named = |row: &&SoundRow| intake.complaint_sounds.contains(&row.id) || said(row);
    trade.sounds.iter().filter(named).map(|row| row.id.clone()).collect()
}

/// A word as it stands, then without one, two and three such letters.
fn bare(word: &str) -> impl Iterator<Item = &str> {
    let without = |letter: char| ONTO_THE_FRONT.contains(letter);
    std::iter::successors(Some(word), move |word| word.strip_prefix(without)).take(4)
}
