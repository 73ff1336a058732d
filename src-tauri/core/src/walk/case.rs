//! The answers that count, for the rules. Where devices disagree the worse answer counts.

use std::collections::{BTreeMap, BTreeSet};

use crate::model::answer::AnswerValue;
use crate::model::case::{Case, CaseAnswer};
use crate::model::visit::Intake;
use crate::trade::Trade;
use crate::trade::rows::{Form, Layout, Reads, StepRow};

use super::applies;
use super::order::complaint_sounds;
use super::record::{Record, StandingAnswer};

/// Lays out a record for the rules.
pub fn case(trade: &Trade, layout: &Layout, record: &Record) -> Case {
    let intake = &record.intake;
    let steps = applies::steps(trade, layout, intake.vehicle.gearbox);
    let shown: Vec<&StepRow> = steps.into_iter().filter(|step| !applies::hidden(step, record)).collect();
    let mut answers = BTreeMap::new();
    for step in &shown {
        let standing = record.answers.get(&step.id);
        if let Some(answer) = standing.and_then(|standing| worst(step, standing, intake)) {
            answers.insert(step.id.clone(), answer);
        }
    }
    Case {
        support: layout.support,
        layout: layout.id.clone(),
        gearbox: intake.vehicle.gearbox,
        idle_rpm: intake.vehicle.idle_rpm,
        complaint_sounds: complaint_sounds(trade, intake),
        hands_on: shown.iter().filter(|step| step.hands_on).map(|step| step.id.clone()).collect(),
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

/// Whether an answer decides something: looked at, and not left unsure.
pub fn settled(step: &StepRow, value: &AnswerValue, intake: &Intake) -> bool {
    !matches!(reads(step, value, intake), Reads::Open | Reads::Unsure)
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
fn worst(step: &StepRow, standing: &[StandingAnswer], intake: &Intake) -> Option<CaseAnswer> {
    let chosen = standing.iter().max_by_key(|answer| rank(step, &answer.value, intake))?;
    let value = if step.form == Form::AnyOf { union(step, standing) } else { chosen.value.clone() };
    let reads = reads(step, &value, intake);
    Some(CaseAnswer {
        value,
        temperature: chosen.temperature,
        found: reads == Reads::Found,
        open: reads == Reads::Open,
        measured: None,
    })
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
