//! Steps and answers of earlier versions, read under the names they have now. The ledger keeps what was written.

use crate::model::answer::AnswerValue;
use crate::model::photo_of::PhotoOf;
use crate::trade::Trade;
use crate::trade::rows::{Former, Layout, StepRow};

use super::record::Record;
use super::{applies, relayout};

/// A record under the names that the trade's knowledge has now, and without what was asked of another layout.
pub fn named(trade: &Trade, mut record: Record) -> Record {
    let vehicle = &record.intake.vehicle;
    let Some(layout) = trade.layout(&vehicle.layout) else { return record };
    for row in applies::steps(trade, layout, vehicle.gearbox) {
        if let Some(former) = &row.formerly {
            rename(&mut record, former, &row.id);
        }
    }
    relayout::set_apart(trade, &mut record);
    record
}

/// The step of this car that replaces one of an earlier version.
pub fn step<'t>(trade: &'t Trade, layout: &Layout, earlier: &str) -> Option<&'t StepRow> {
    let replaces = |row: &&StepRow| row.formerly.as_ref().is_some_and(|former| former.step == earlier);
    applies::steps(trade, layout, None).into_iter().find(replaces)
}

/// An answer of an earlier version under the names it has now.
pub fn value(former: &Former, value: &AnswerValue) -> AnswerValue {
    let now = |choice: &String| former.answers.get(choice).unwrap_or(choice).clone();
    match value {
        AnswerValue::Reading(reading) => AnswerValue::Reading(*reading),
        AnswerValue::One(one) => AnswerValue::One(now(one)),
        AnswerValue::Any(any) => AnswerValue::Any(any.iter().map(now).collect()),
    }
}

fn rename(record: &mut Record, former: &Former, now: &str) {
    for mut answer in record.answers.remove(&former.step).unwrap_or_default() {
        answer.value = value(former, &answer.value);
        record.answers.entry(now.to_owned()).or_default().push(answer);
    }
    for milder in record.milder.iter_mut().filter(|milder| milder.step == former.step) {
        now.clone_into(&mut milder.step);
        milder.was = value(former, &milder.was);
        milder.now = milder.now.as_ref().map(|answer| value(former, answer));
    }
    let (before, since) = (PhotoOf::Step(former.step.clone()), PhotoOf::Step(now.to_owned()));
    let photos = record.photos.remove(&before).unwrap_or_default();
    if !photos.is_empty() {
        // What was kept before the step had its new name is older than what was kept since.
        record.photos.entry(since.clone()).or_default().splice(0..0, photos);
    }
    let marks = std::mem::take(&mut record.marks);
    let under = |of: PhotoOf| if of == before { since.clone() } else { of };
    record.marks = marks.into_iter().map(|((of, photo), marks)| ((under(of), photo), marks)).collect();
    if let Some(pair) = record.pairs.remove(&former.step) {
        record.pairs.entry(now.to_owned()).or_insert(pair);
    }
    if let Some(reason) = record.waivers.remove(&former.step) {
        record.waivers.entry(now.to_owned()).or_insert(reason);
    }
}
