//! The answers that count, for the rules. Where devices disagree the worse answer counts.

use std::collections::{BTreeMap, BTreeSet};

use crate::model::answer::AnswerValue;
use crate::model::answer::{Beside, EngineWarmth};
use crate::model::case::{Case, CaseAnswer};
use crate::model::ids::answer;
use crate::model::visit::{DistanceUnit, Intake};
use crate::trade::Trade;
use crate::trade::rows::{Form, Layout, Reads, Speed, StepRow};

use super::applies;
use super::order::complaint_sounds;
use super::record::{Record, StandingAnswer};

/// Lays out a record for the rules.
pub fn case(trade: &Trade, layout: &Layout, record: &Record) -> Case {
    let intake = &record.intake;
    let shown = applies::Car::of(trade, layout, record).shown();
    let mut answers = BTreeMap::new();
    for step in &shown {
        let standing = record.answers.get(&step.id);
        if let Some(answer) = standing.and_then(|standing| worst(step, standing, layout, intake)) {
            answers.insert(step.id.clone(), answer);
        }
    }
    let odometer = intake.vehicle.odometer;
    let ids_of = |wanted: fn(&StepRow) -> bool| {
        shown.iter().filter(|step| wanted(step)).map(|step| step.id.clone()).collect()
    };
    Case {
        support: layout.support,
        layout: layout.id.clone(),
        supports: layout.supports,
        engine_speed: layout.speed == Speed::Engine,
        rules: trade.rules_for(intake.vehicle.warm_from_c),
        seat: intake.vehicle.seat,
        odometer_km: odometer.map(|it| it.unit.convert(f64::from(it.value), DistanceUnit::Km)),
        gearbox: intake.vehicle.gearbox,
        idle_rpm: intake.vehicle.idle_rpm,
        complaint_sounds: complaint_sounds(trade, intake),
        hands_on: ids_of(|step| step.hands_on),
        limits: ids_of(|step| step.limits),
        answers,
    }
}

/// What a whole answer means to the rules: its worst part.
pub fn reads(step: &StepRow, value: &AnswerValue, intake: &Intake) -> Reads {
    match value {
        AnswerValue::Reading(reading) => reading_reads(*reading, intake.vehicle.idle_rpm),
        AnswerValue::One(_) | AnswerValue::Any(_) => {
            value.choices().iter().filter_map(|choice| step.reads(choice)).max().unwrap_or(Reads::Open)
        }
    }
}

/// Whether an answer decides something: looked at, not left unsure, and nothing in the way.
pub fn settled(step: &StepRow, answer: &CaseAnswer, intake: &Intake) -> bool {
    !answer.limited && !matches!(reads(step, &answer.value, intake), Reads::Open | Reads::Unsure)
}

/// An idle outside the maker's range is a finding; without a range the reading judges nothing.
fn reading_reads(reading: f64, range: Option<[u32; 2]>) -> Reads {
    match range {
        None => Reads::Neutral,
        Some([low, high]) if reading < f64::from(low) || reading > f64::from(high) => Reads::Found,
        Some(_) => Reads::Clear,
    }
}

/// The answer that counts among those that stand: the union of what was seen at an any-of step, the
/// worst one elsewhere.
fn worst(
    step: &StepRow,
    standing: &[StandingAnswer],
    layout: &Layout,
    intake: &Intake,
) -> Option<CaseAnswer> {
    let limited_by = |answer: &StandingAnswer| limits(step, answer.beside, layout, intake, &answer.value);
    // Of equal answers the one that proves less is the worse one.
    let chosen =
        standing.iter().max_by_key(|answer| (rank(step, &answer.value, intake), limited_by(answer)))?;
    let value = if step.form == Form::AnyOf { union(step, standing) } else { chosen.value.clone() };
    let reads = reads(step, &value, intake);
    let is_open = |choice: &&str| step.reads(choice) == Some(Reads::Open);
    let open = reads == Reads::Open;
    Some(CaseAnswer {
        temperature: chosen.beside.temperature,
        found: reads == Reads::Found && !of_the_engine(step, chosen.beside, limited_by(chosen), &value),
        open,
        limited: !open && (limited_by(chosen) || value.choices().iter().any(is_open)),
        measured: None,
        value,
    })
}

/// Whether what was recorded beside an answer keeps it from proving that nothing is there: the shaft was turned
/// together with the engine, or its idle read cold, when it runs fast.
fn limits(step: &StepRow, beside: Beside, layout: &Layout, intake: &Intake, value: &AnswerValue) -> bool {
    let free = beside.free.unwrap_or(layout.speed == Speed::Output);
    let turned_with_it = step.asks_free && !free;
    let low = intake.vehicle.idle_rpm.map_or(0.0, |[low, _]| f64::from(low));
    let fast = value.reading().is_some_and(|rpm| rpm >= low);
    turned_with_it || step.asks_engine && beside.engine == Some(EngineWarmth::Cold) && fast
}

/// Whether what reads as a finding is the engine's own: compression that resists where the shaft is known to turn
/// it, or the fast idle of a cold one.
fn of_the_engine(step: &StepRow, beside: Beside, limited: bool, value: &AnswerValue) -> bool {
    let compression = step.asks_free && beside.free == Some(false) && value.has(answer::RESISTS);
    compression || step.asks_engine && limited
}

/// Order of badness: by meaning, then by the order of the step's answers, then by reading.
fn rank(step: &StepRow, value: &AnswerValue, intake: &Intake) -> (Reads, usize) {
    let place = |choice: &&str| step.answers.iter().position(|row| row.id == **choice);
    let place = value.choices().iter().filter_map(place).max().unwrap_or(0);
    (reads(step, value, intake), place)
}

fn union(step: &StepRow, standing: &[StandingAnswer]) -> AnswerValue {
    let seen: BTreeSet<&str> = standing.iter().flat_map(|answer| answer.value.choices()).collect();
    let rows = || step.answers.iter().filter(|row| seen.contains(row.id.as_str()));
    let several = rows().any(|row| !row.lone);
    let kept = rows().filter(|row| !(several && row.lone)).map(|row| row.id.clone());
    AnswerValue::Any(kept.collect())
}
