//! A fit as tables, a seat each: what is tight by how much, cold, at 20 °C and hot, side by side.

use crate::model::fit::{AtTemperature, FitResult, FitState, SeatFit, Spread};
use crate::words::Words;

use super::fit_lines::{seat_id, seat_rest};
use super::repair::FitTable;

/// The seats of a fit, the bearing's first.
pub(super) fn fit_tables(words: &Words, fit: &FitResult) -> Vec<FitTable> {
    fit.seats.iter().map(|seat| table(words, seat)).collect()
}

fn table(words: &Words, seat: &SeatFit) -> FitTable {
    let room = AtTemperature { celsius: 20.0, interference_um: seat.interference_um, state: seat.state };
    let mut over: Vec<&AtTemperature> = ends(seat);
    if over.iter().all(|at| (at.celsius - room.celsius).abs() > 0.05) {
        over.push(&room);
    }
    over.sort_by(|a, b| a.celsius.total_cmp(&b.celsius));
    let say = |id: &str| words.text(&format!("repair-fit-{id}"));
    let at = |at: &&AtTemperature| {
        words.with("repair-fit-at", &[("celsius", words.rounded(at.celsius, 1).into())])
    };
    let row = |id: &str, which: fn(&Spread) -> f64| {
        let values = over.iter().map(|at| words.fine(which(&at.interference_um)));
        std::iter::once(say(id)).chain(values).collect()
    };
    let states = over.iter().map(|at| say(state(at.state)));
    FitTable {
        heading: words.with(seat_id(seat.seat), &[("diameter", words.measured(seat.diameter_mm).into())]),
        columns: std::iter::once(say("interference")).chain(over.iter().map(at)).collect(),
        rows: vec![
            row("least", |spread| spread.least),
            row("mean", |spread| spread.mean),
            row("most", |spread| spread.most),
            std::iter::once(say("state")).chain(states).collect(),
        ],
        lines: seat_rest(words, seat),
    }
}

/// The coldest and the hottest that were followed; one where no range was given.
fn ends(seat: &SeatFit) -> Vec<&AtTemperature> {
    let (first, last) = (seat.over_temperature.first(), seat.over_temperature.last());
    let mut ends: Vec<&AtTemperature> = first.into_iter().chain(last).collect();
    ends.dedup_by(|a, b| (a.celsius - b.celsius).abs() < 0.05);
    ends
}

fn state(state: FitState) -> &'static str {
    match state {
        FitState::Tight => "tight",
        FitState::MayBeLoose => "may-be-loose",
        FitState::Loose => "loose",
    }
}
