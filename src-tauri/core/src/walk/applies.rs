//! Which steps, gates and causes this car has, and which steps are hidden for now.

use crate::model::answer::AnswerValue;
use crate::model::ids;
use crate::model::visit::Gearbox;
use crate::trade::Trade;
use crate::trade::rows::{GateRow, Layout, StepAnswers, StepRow};

use super::record::Record;

/// Steps that apply to the car, in walk order; hidden ones included.
pub fn steps<'t>(trade: &'t Trade, layout: &Layout, gearbox: Option<Gearbox>) -> Vec<&'t StepRow> {
    let fits = |step: &&StepRow| {
        (step.supports.is_empty() || step.supports.contains(&layout.support))
            && step.speed.is_none_or(|speed| speed == layout.speed)
            && step.support_number <= layout.supports.max(1)
            && gearbox_fits(&step.gearboxes, gearbox)
    };
    trade.steps.iter().filter(fits).collect()
}

/// Gates of a set that apply to the car, in order.
pub fn gates<'t>(trade: &'t Trade, set: &str, gearbox: Option<Gearbox>) -> Vec<&'t GateRow> {
    let fits = |gate: &&GateRow| gate.set == set && gearbox_fits(&gate.gearboxes, gearbox);
    trade.gates.iter().filter(fits).collect()
}

/// An unknown gearbox keeps everything: nothing is skipped on a guess.
pub fn gearbox_fits(allowed: &[Gearbox], gearbox: Option<Gearbox>) -> bool {
    allowed.is_empty() || gearbox.is_none_or(|gearbox| allowed.contains(&gearbox))
}

/// Whether a step is hidden: it undoes or explains something that was looked for and not there, or it has to wait
/// until `rows`, the steps of this car, are found in order. What was answered once stays.
pub fn hidden(step: &StepRow, record: &Record, rows: &[&StepRow]) -> bool {
    let needed = step.needs.iter().all(|group| group.iter().any(|condition| may_hold(condition, record)));
    let answered = record.answers.contains_key(&step.id);
    !needed || !answered && step.after.iter().any(|condition| !holds_everywhere(condition, record, rows))
}

/// Whether a step is answered so at every support of this car; one that the car has not got is in nobody's way.
fn holds_everywhere(condition: &StepAnswers, record: &Record, rows: &[&StepRow]) -> bool {
    let asked = rows.iter().filter(|row| ids::base(&row.id) == condition.step);
    let so = |value: &AnswerValue| {
        value.choices().iter().all(|choice| condition.any.contains(&(*choice).to_owned()))
    };
    asked.map(|row| record.answers.get(&row.id)).all(|standing| {
        standing
            .is_some_and(|standing| !standing.is_empty() && standing.iter().all(|answer| so(&answer.value)))
    })
}

fn may_hold(condition: &StepAnswers, record: &Record) -> bool {
    let Some(answers) = record.answers.get(&condition.step) else { return true };
    let holds = |value: &AnswerValue| condition.any.iter().any(|choice| value.has(choice));
    answers.iter().any(|answer| holds(&answer.value))
}
