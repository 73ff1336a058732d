//! The answers that count, for the rules. Where devices disagree the worse answer counts.

use std::collections::{BTreeMap, BTreeSet};

use crate::model::answer::AnswerValue;
use crate::model::answer::{Circumstances, EngineWarmth};
use crate::model::case::{Case, CaseAnswer};
use crate::model::ids::{self, answer};
use crate::model::standing::Support;
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
    let car = Scene { layout, intake, rules: trade.rules.version, tube_opened: record.tube_opened };
    let mut answers = BTreeMap::new();
    for step in &shown {
        let standing = record.answers.get(&step.id);
        if let Some(answer) = standing.and_then(|standing| worst(step, standing, &car)) {
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
        occasion: intake.occasion,
        hands_on: ids_of(|step| step.hands_on),
        limits: ids_of(|step| step.limits),
        driveline: ids_of(|step| step.driveline && !step.hands_on),
        answers,
        apart: false,
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
pub fn is_conclusive(step: &StepRow, answer: &CaseAnswer, intake: &Intake) -> bool {
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

/// What an answer is judged by beside its own words.
struct Scene<'a> {
    layout: &'a Layout,
    intake: &'a Intake,
    /// The version of the rules.
    rules: u32,
    /// A tube was looked into.
    tube_opened: bool,
}

/// The answer that counts among those that stand: the union of what was seen at an any-of step, the
/// worst one elsewhere.
fn worst(step: &StepRow, standing: &[StandingAnswer], scene: &Scene<'_>) -> Option<CaseAnswer> {
    let limited_by = |answer: &StandingAnswer| {
        limits(step, answer.circumstances, scene, &answer.value) || was_hidden(step, answer, scene)
    };
    // Of equal answers the one that proves less is the worse one.
    let badness = |answer: &&StandingAnswer| (rank(step, &answer.value, scene.intake), limited_by(answer));
    let chosen = standing.iter().max_by_key(badness)?;
    let value = if step.form == Form::AnyOf { union(step, standing) } else { chosen.value.clone() };
    let reads = reads(step, &value, scene.intake);
    let is_open = |choice: &&str| step.reads(choice) == Some(Reads::Open);
    let open = reads == Reads::Open;
    Some(CaseAnswer {
        temperature: chosen.circumstances.temperature,
        found: reads == Reads::Found && !of_something_else(step, chosen.circumstances, scene, &value),
        open,
        limited: !open && (limited_by(chosen) || value.choices().iter().any(is_open)),
        measured: None,
        value,
    })
}

/// Whether what was recorded beside an answer keeps it from proving that nothing is there: the shaft was turned
/// together with the engine or the wheels, or the idle was read cold.
fn limits(step: &StepRow, circumstances: Circumstances, scene: &Scene<'_>, value: &AnswerValue) -> bool {
    // Before the third rules a shaft that turns with the gearbox's output was taken as free without a word.
    let unsaid = scene.layout.speed == Speed::Output && scene.rules < 3;
    let turned_along = step.asks_free && !circumstances.free.unwrap_or(unsaid);
    turned_along || is_cold(step, circumstances) && (scene.rules >= 3 || is_fast(scene, value))
}

/// Whether a step was answered while a closed tube hid what it looks at, and nobody answered it since.
fn was_hidden(step: &StepRow, answer: &StandingAnswer, scene: &Scene<'_>) -> bool {
    let behind = [ids::step::SHAFT_LOOK, ids::step::TURN_BY_HAND].contains(&step.id.as_str());
    let closed = scene.tube_opened && !answer.tube_opened;
    scene.layout.support == Support::Tube && scene.rules >= 3 && behind && closed
}

/// Whether what reads as a finding belongs to something else: resistance of the engine, or of wheels, brakes and
/// final drive, where the shaft is known to turn them along; or the fast idle of a cold engine.
fn of_something_else(
    step: &StepRow,
    circumstances: Circumstances,
    scene: &Scene<'_>,
    value: &AnswerValue,
) -> bool {
    let turned_along = step.asks_free && circumstances.free == Some(false) && value.has(answer::RESISTS);
    turned_along || is_cold(step, circumstances) && is_fast(scene, value)
}

fn is_cold(step: &StepRow, circumstances: Circumstances) -> bool {
    step.asks_engine && circumstances.engine == Some(EngineWarmth::Cold)
}

/// An idle that is not below the maker's range; a cold engine runs fast.
fn is_fast(scene: &Scene<'_>, value: &AnswerValue) -> bool {
    let low = scene.intake.vehicle.idle_rpm.map_or(0.0, |[low, _]| f64::from(low));
    value.reading().is_some_and(|rpm| rpm >= low)
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
