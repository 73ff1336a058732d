//! What the open steps could still say: each answer they may get, how probable it is, and what it would
//! make of the causes.

use crate::model::answer::AnswerValue;
use crate::model::case::{Case, CaseAnswer};
use crate::trade::Trade;
use crate::trade::rows::{Form, Reads, StepRow};

use super::evidence::{self, Observation};
use super::network::Network;
use super::posterior::Posterior;
use super::ready::Asked;

/// A step that can still be done.
#[derive(Debug, Clone, Copy)]
pub struct OpenStep<'t> {
    /// As the data has it.
    pub row: &'t StepRow,
    /// It is not about what the car came in for: it can be done, and is not the next check.
    pub off_topic: bool,
}

/// One answer that an open step may get.
#[derive(Debug, Clone)]
pub struct Foreseen {
    /// In the form the step takes.
    pub value: AnswerValue,
    /// Its probability among the answers of its step.
    pub probability: f64,
    /// What it would make of the causes.
    pub posterior: Posterior,
}

/// The answers a step may get that tell something. Their probabilities add up to one: answers that could
/// both be true are weighed against each other.
pub fn foresee(
    trade: &Trade,
    network: &Network,
    case: &Case,
    (observed, now): (&[Observation], &Posterior),
    step: &StepRow,
) -> Vec<Foreseen> {
    foreseen(trade, &Asked::new(network.clone()), &mut case.clone(), (observed, now), step)
}

/// The same; the case is as it was afterwards.
pub(super) fn foreseen(
    trade: &Trade,
    asked: &Asked,
    with: &mut Case,
    (observed, now): (&[Observation], &Posterior),
    step: &StepRow,
) -> Vec<Foreseen> {
    let concerned = evidence::concerned(trade, &asked.network, step);
    let given = with.answers.get(&step.id).cloned();
    // Answers that say the same of every sign make the same of the causes.
    let mut known: Vec<(Vec<Observation>, Posterior)> = Vec::new();
    let mut foreseen: Vec<Foreseen> = possible_answers(step, with)
        .into_iter()
        .map(|value| {
            answer(with, step, value.clone());
            let evidence = evidence::again(trade, observed, &concerned, with);
            let then = match known.iter().find(|(same, _)| *same == evidence) {
                Some((_, then)) => then.clone(),
                None if evidence == observed => now.clone(),
                None => {
                    let then = asked.posterior(&evidence);
                    known.push((evidence, then.clone()));
                    then
                }
            };
            let probability = (then.log_evidence - now.log_evidence).exp();
            Foreseen { value, probability, posterior: then }
        })
        .collect();
    match given {
        Some(given) => drop(with.answers.insert(step.id.clone(), given)),
        None => drop(with.answers.remove(&step.id)),
    }
    let total: f64 = foreseen.iter().map(|one| one.probability).sum();
    for one in &mut foreseen {
        one.probability = if total > 0.0 { one.probability / total } else { 0.0 };
    }
    foreseen
}

/// The case with one more answer.
pub fn answered(case: &Case, step: &StepRow, value: AnswerValue) -> Case {
    let mut with = case.clone();
    answer(&mut with, step, value);
    with
}

fn answer(case: &mut Case, step: &StepRow, value: AnswerValue) {
    let reads = value.choices().into_iter().filter_map(|choice| step.reads(choice)).max();
    let answer = CaseAnswer {
        value,
        temperature: None,
        found: reads == Some(Reads::Found),
        open: false,
        limited: false,
        measured: None,
    };
    match case.answers.get_mut(&step.id) {
        Some(there) => *there = answer,
        None => drop(case.answers.insert(step.id.clone(), answer)),
    }
}

/// How far a foreseen reading lies from the edge of the maker's range, rpm: workshop judgement.
const READING_OFF_RPM: f64 = 100.0;

/// The answers that decide something: each informative choice, or each single finding and none, or a
/// reading on either side of the range.
pub fn possible_answers(step: &StepRow, case: &Case) -> Vec<AnswerValue> {
    let informative = step
        .answers
        .iter()
        .filter(|row| row.offered && row.reads != Reads::Open && row.reads != Reads::Unsure);
    match step.form {
        Form::OneOf => informative.map(|row| AnswerValue::One(row.id.clone())).collect(),
        Form::AnyOf => informative.map(|row| AnswerValue::Any(vec![row.id.clone()])).collect(),
        Form::Reading => case
            .idle_rpm
            .map(|[low, high]| {
                let (low, high) = (f64::from(low), f64::from(high));
                [low - READING_OFF_RPM, (low + high) / 2.0, high + READING_OFF_RPM].map(AnswerValue::Reading)
            })
            .map_or(Vec::new(), Vec::from),
    }
}
