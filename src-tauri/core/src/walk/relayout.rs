//! A layout that turns out to be another: which answers do not hold of the car as it is.

use std::collections::BTreeSet;

use crate::model::answer::AnswerValue;
use crate::model::bench::BenchBody;
use crate::model::entry::{Entry, EntryBody};
use crate::model::ids::answer;
use crate::model::photo_of::PhotoOf;
use crate::model::visit::Gearbox;
use crate::trade::Trade;
use crate::trade::rows::{Layout, Reads, StepRow};

use super::applies;
use super::record::{Record, StandingAnswer};

/// The steps, in walk order, that a car of the other layout and gearbox has not got or is asked otherwise: those that
/// were answered or gauged, and those whose photo no screen would show any more. What was answered to the rest was about the car
/// and stays.
pub fn lost(
    trade: &Trade,
    (record, gauged): (&Record, &BTreeSet<String>),
    to: (&Layout, Option<Gearbox>),
) -> Vec<String> {
    let vehicle = &record.intake.vehicle;
    let Some(layout) = trade.layout(&vehicle.layout) else { return Vec::new() };
    let from = (layout, vehicle.gearbox);
    let had = applies::steps(trade, layout, vehicle.gearbox);
    let is_lost = |row: &&StepRow| {
        let of = PhotoOf::Step(row.id.clone());
        let pictured = record.photos.contains_key(&of) && row_of(trade, to, &row.id).is_none();
        let said = record.answers.contains_key(&row.id) || gauged.contains(&row.id);
        pictured || said && is_asked_otherwise(trade, &row.id, from, to)
    };
    had.into_iter().filter(is_lost).map(|row| row.id.clone()).collect()
}

/// Whether a step is asked otherwise of the one car than of the other, or of one of them alone. A row of the data is one
/// step as one kind of shaft is asked it; what turns with a shaft hangs on its layout.
fn is_asked_otherwise(
    trade: &Trade,
    step: &str,
    from: (&Layout, Option<Gearbox>),
    to: (&Layout, Option<Gearbox>),
) -> bool {
    match (row_of(trade, from, step), row_of(trade, to, step)) {
        (Some(before), Some(now)) => {
            !std::ptr::eq(before, now) || now.asks_free && from.0.speed != to.0.speed
        }
        (before, now) => before.is_some() || now.is_some(),
    }
}

fn row_of<'t>(
    trade: &'t Trade,
    (layout, gearbox): (&Layout, Option<Gearbox>),
    step: &str,
) -> Option<&'t StepRow> {
    applies::steps(trade, layout, gearbox).into_iter().find(|row| row.id == step)
}

/// Sets apart what was answered by another layout and would be asked otherwise by this one: two people wrote down the
/// car without knowing of each other. It counts for nothing and is named.
pub fn set_apart(trade: &Trade, record: &mut Record) {
    let vehicle = &record.intake.vehicle;
    let Some(layout) = trade.layout(&vehicle.layout) else { return };
    let now = (layout, vehicle.gearbox);
    for (step, standing) in &mut record.answers {
        let counts = |answer: &mut StandingAnswer| {
            let Some(by) = &answer.layout else { return true };
            // By another figure, or to a step that the other gearbox has.
            let other_figure = answer.figure_mm.is_some() && answer.figure_mm != vehicle.maker_play_mm;
            if other_figure || *by == layout.id && row_of(trade, now, step).is_none() {
                return false;
            }
            if *by == layout.id {
                return true;
            }
            // By a layout whose file is not here, nobody knows what was asked.
            // Nor by which gearbox: the steps of every one are looked for.
            let then = trade.layout(by).map(|then| (then, None));
            then.is_some_and(|then| !is_asked_otherwise(trade, step, then, now))
        };
        let kept = standing.extract_if(.., |answer| !counts(answer));
        record.elsewhere.extend(kept.map(|answer| (step.clone(), answer)));
    }
    record.answers.retain(|_, standing| !standing.is_empty());
}

/// Whether an answer that was set apart found something, or left it unsure, by any way the step is asked.
pub fn found(trade: &Trade, step: &str, value: &AnswerValue) -> bool {
    if value.has(answer::BY_GAUGE) {
        return true;
    }
    let reads = |row: &StepRow| value.choices().iter().filter_map(|choice| row.reads(choice)).max();
    let rows = trade.steps.iter().filter(|row| row.id == step);
    rows.filter_map(reads).any(|reads| matches!(reads, Reads::Found | Reads::Unsure))
}

/// Hashes of every answer to such steps, and of every reading of a gauge there, in the order of the ledger: one that was superseded must not come back.
pub fn answers_to(trade: &Trade, entries: &[Entry], lost: &[String]) -> Vec<String> {
    let former = |step: &String| {
        let mut rows = trade.steps.iter().filter(|row| lost.contains(&row.id));
        rows.any(|row| row.formerly.as_ref().is_some_and(|former| former.step == *step))
    };
    let of = |entry: &&Entry| match &entry.body {
        EntryBody::Answered { step, .. } => lost.contains(step) || former(step),
        EntryBody::Bench { bench: BenchBody::Gauged { step, .. }, .. } => lost.contains(step),
        _ => false,
    };
    entries.iter().filter(of).map(|entry| entry.hash.clone()).collect()
}
