//! Which steps, gates and causes this car has, and which steps are hidden for now.

use crate::model::answer::AnswerValue;
use crate::model::gates::LiftKind;
use crate::model::ids;
use crate::model::visit::Gearbox;
use crate::trade::Trade;
use crate::trade::rows::{GateRow, Layout, StepAnswers, StepRow};

use super::record::{Record, StandingAnswer};

/// Steps that apply to the car, in walk order; hidden ones included.
pub fn steps<'t>(trade: &'t Trade, layout: &Layout, gearbox: Option<Gearbox>) -> Vec<&'t StepRow> {
    let fits = |step: &&StepRow| {
        (step.supports.is_empty() || step.supports.contains(&layout.support))
            && step.speed.is_none_or(|speed| speed == layout.speed)
            && step.joints_decide.is_none_or(|decide| decide == layout.joints_decide)
            && step.support_number <= layout.supports.max(1)
            && gearbox_fits(&step.gearboxes, gearbox)
    };
    trade.steps.iter().filter(fits).collect()
}

/// Gates of a set that apply to the car and to what holds it up, in order. Where nobody said what that is, those of
/// every kind.
pub fn gates<'t>(
    trade: &'t Trade,
    set: &str,
    (gearbox, lift): (Option<Gearbox>, Option<LiftKind>),
) -> Vec<&'t GateRow> {
    let held = |gate: &GateRow| gate.lifts.is_empty() || lift.is_none_or(|lift| gate.lifts.contains(&lift));
    let of = |gate: &GateRow| gate.set == set || gate.also_in.iter().any(|also| also == set);
    let fits = |gate: &&GateRow| of(gate) && gearbox_fits(&gate.gearboxes, gearbox) && held(gate);
    trade.gates.iter().filter(fits).collect()
}

/// An unknown gearbox keeps everything: nothing is skipped on a guess.
pub fn gearbox_fits(allowed: &[Gearbox], gearbox: Option<Gearbox>) -> bool {
    allowed.is_empty() || gearbox.is_none_or(|gearbox| allowed.contains(&gearbox))
}

/// The steps that a car has, and what its maker calls warm.
pub struct Car<'t, 'r> {
    rows: Vec<&'t StepRow>,
    record: &'r Record,
    warm_from_c: f64,
}

impl<'t, 'r> Car<'t, 'r> {
    /// The car that a visit is about.
    pub fn of(trade: &'t Trade, layout: &Layout, record: &'r Record) -> Self {
        let vehicle = &record.intake.vehicle;
        let rows = steps(trade, layout, vehicle.gearbox);
        Self { rows, record, warm_from_c: trade.rules_for(vehicle.warm_from_c).warm_from_c }
    }

    /// Its steps, in walk order; hidden ones included.
    pub fn rows(&self) -> &[&'t StepRow] {
        &self.rows
    }

    /// Its steps that are not hidden, in walk order.
    pub fn shown(&self) -> Vec<&'t StepRow> {
        self.rows.iter().filter(|row| !self.hides(row)).copied().collect()
    }

    /// Whether a step is hidden: it undoes or explains something that was looked for and not there, or it has to wait
    /// until others are found in order. What was answered once stays.
    pub fn hides(&self, step: &StepRow) -> bool {
        let needed =
            |group: &Vec<StepAnswers>| group.iter().any(|condition| may_hold(condition, self.record));
        let waits = || step.after.iter().any(|condition| !self.holds_everywhere(condition));
        !step.needs.iter().all(needed) || !self.record.answers.contains_key(&step.id) && waits()
    }

    /// Whether a step is answered so at every support; one that this car has not got is in nobody's way.
    fn holds_everywhere(&self, condition: &StepAnswers) -> bool {
        let warm = |answer: &StandingAnswer| {
            !condition.warm
                || answer.circumstances.temperature.is_some_and(|read| read.is_warm(self.warm_from_c))
        };
        let so = |answer: &StandingAnswer| {
            answer.value.choices().into_iter().all(|choice| condition.any.iter().any(|any| any == choice))
        };
        let asked = self.rows.iter().filter(|row| ids::base(&row.id) == condition.step);
        asked.map(|row| self.record.answers.get(&row.id)).all(|standing| {
            standing.is_some_and(|all| !all.is_empty() && all.iter().all(|answer| so(answer) && warm(answer)))
        })
    }
}

fn may_hold(condition: &StepAnswers, record: &Record) -> bool {
    let Some(answers) = record.answers.get(&condition.step) else { return true };
    let holds = |value: &AnswerValue| condition.any.iter().any(|choice| value.has(choice));
    answers.iter().any(|answer| holds(&answer.value))
}
