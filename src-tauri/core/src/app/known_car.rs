//! A car that was here before: what each visit found, newest first, for whoever opens or walks the next one.

use serde::Serialize;

use crate::model::answer::AnswerValue;
use crate::model::rating::Word;
use crate::model::standing::{RepairStage, Standing};
use crate::model::time::Moment;
use crate::model::visit::Intake;
use crate::walk::vin;

use super::fault::Fault;
use super::response::Response;
use super::steady::Inner;
use super::still_open;

/// A visit of the same car.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct VisitBefore {
    /// Its id, to be opened by.
    pub visit: String,
    /// When the car came in.
    pub opened_at: Moment,
    /// What was written down, without the owner: who brings the car now may be somebody else.
    pub intake: Intake,
    /// Its rating; none where it was never checked.
    pub word: Option<Word>,
    /// How far a repair came.
    pub repair: Option<RepairStage>,
    /// What it turned out to be, once that was confirmed: ids of causes.
    pub outcome: Vec<String>,
    /// What was answered, in walk order.
    pub answers: Vec<AnswerBefore>,
    /// Movement by gauge.
    pub movements: Vec<MovementBefore>,
    /// Plate, or else VIN, that it goes by now, where it was written down as this car only before it was corrected.
    pub corrected_to: Option<String>,
    /// Its ledger does not fit together: what it says is shown, and is no evidence.
    pub broken: bool,
}

/// What a step was answered then.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct AnswerBefore {
    /// The step, under its name of today.
    pub step: String,
    /// As it counts: of several devices' the worse.
    pub value: AnswerValue,
    /// Its own rating then, by the rules of today.
    pub word: Option<Word>,
}

/// What a gauge read at a step.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct MovementBefore {
    /// Play step that was measured, under its name of today.
    pub step: String,
    /// Mean movement, millimetres.
    pub movement_mm: f64,
    /// Expanded uncertainty, millimetres; none where it could not be stated.
    pub expanded_mm: Option<f64>,
}

/// The visits of a car, newest first, without the one that asks; as many as a screen can show.
pub(super) fn before(
    inner: &mut Inner,
    plate: &str,
    vin: &str,
    except: Option<&str>,
) -> Result<Response, Fault> {
    let mut earlier = still_open::of_car(inner, (plate, vin), except)?;
    earlier.read.sort_by(|a, b| (b.opened_at, &b.visit).cmp(&(a.opened_at, &a.visit)));
    let warm_from_c = inner.trade.rules_for(None).warm_from_c;
    let still_open = still_open::left_to_the_next(inner, (plate, vin), &earlier, warm_from_c)?;
    let vin_hint = vin::hint(vin);
    let visits = earlier.read.into_iter().map(|standing| shown(standing, (plate, vin))).collect();
    Ok(Response::VisitsBefore { visits, still_open, vin_hint })
}

fn shown(standing: Standing, car: (&str, &str)) -> VisitBefore {
    let corrected_to = still_open::corrected_to(still_open::car_of(&standing), car);
    let answers = standing.steps.iter().filter_map(|step| {
        let answered = step.answered.as_ref()?;
        Some(AnswerBefore { step: step.id.clone(), value: answered.value.clone(), word: step.word })
    });
    let movements = standing.gauges.iter().map(|gauge| MovementBefore {
        step: gauge.step.clone(),
        movement_mm: gauge.result.mean_mm,
        expanded_mm: gauge.result.uncertainty.map(|uncertainty| uncertainty.expanded_mm),
    });
    VisitBefore {
        answers: answers.collect(),
        movements: movements.collect(),
        word: standing.urgency.word,
        repair: standing.repair,
        outcome: standing.outcome.map(|outcome| outcome.causes).unwrap_or_default(),
        corrected_to,
        broken: standing.ledger.broken_at.is_some(),
        visit: standing.visit,
        opened_at: standing.opened_at,
        intake: Intake { owner: Default::default(), ..standing.intake },
    }
}
