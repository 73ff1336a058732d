//! What is locked and why. At most one part is entered at a time: either somebody may be under the
//! car or the engine may run, never both.

use crate::model::gates::LiftKind;
use crate::model::standing::{Confirmed, GateSetStand, GateStand, Lock};
use crate::trade::Trade;
use crate::trade::rows::{GateRow, StepRow};

use super::applies;
use super::record::Record;

/// The gate set behind which hands and heads go under the car.
pub const LIFT: &str = "lift";
/// The gate sets behind which the engine may run.
pub const ENGINE_SETS: [&str; 3] = ["running", "creep", ROAD];
/// Those between which one goes on without leaving: the engine runs on, and only what differs is confirmed anew.
const RUNNING_ON: [&str; 2] = ["running", "creep"];
/// The gate set before a drive on the road, which a walk is whole without.
pub const ROAD: &str = "road";

/// Every gate set this car needs, `sets` in walk order.
pub fn gate_sets(trade: &Trade, record: &Record, sets: &[String], danger: Option<&str>) -> Vec<GateSetStand> {
    let stand = |set: &String| {
        let gates = gates_of(trade, record, set);
        let every = applies::gates(trade, set, (record.intake.vehicle.gearbox, None));
        let told = |kind: &LiftKind| every.iter().any(|gate| gate.lifts.contains(kind));
        GateSetStand {
            id: set.clone(),
            open: is_open(trade, record, set),
            lock: set_lock(record, set, danger),
            lift: lift_of(record, set),
            lifts: LiftKind::ALL.into_iter().filter(told).collect(),
            gates: gates.into_iter().map(|gate| gate_stand(record, set, gate)).collect(),
        }
    };
    sets.iter().map(stand).collect()
}

/// Whether every gate of a set is confirmed and its part not left since.
pub fn is_open(trade: &Trade, record: &Record, set: &str) -> bool {
    record.entered.as_deref() == Some(set)
        && gates_of(trade, record, set).into_iter().all(|gate| confirmed(record, set, gate).is_some())
}

/// Whether a set is gone on to from the entered one without leaving it.
pub fn goes_on(entered: Option<&str>, set: &str) -> bool {
    RUNNING_ON.contains(&set)
        && entered.is_some_and(|entered| entered != set && RUNNING_ON.contains(&entered))
}

/// Why the gates of a set cannot be confirmed now.
pub fn set_lock(record: &Record, set: &str, danger: Option<&str>) -> Option<Lock> {
    if let (true, Some(step)) = (ENGINE_SETS.contains(&set), danger) {
        return Some(Lock::DangerFound { step: step.to_owned() });
    }
    match &record.entered {
        Some(entered) if entered != set && !goes_on(Some(entered), set) => {
            Some(Lock::OtherPart { set: entered.clone() })
        }
        _ => None,
    }
}

/// Why a step cannot be answered now. A step that found DANGER with the engine running can still be
/// answered, so that the finding itself can be put right.
pub fn step_lock(trade: &Trade, record: &Record, step: &StepRow, danger: Option<&str>) -> Option<Lock> {
    let set = step.set.as_ref()?;
    let danger = danger.filter(|found| *found != step.id);
    let sets = || std::iter::once(set).chain(&step.also_in);
    if sets().any(|set| is_open(trade, record, set) && set_lock(record, set, danger).is_none()) {
        return None;
    }
    set_lock(record, set, danger).or_else(|| Some(Lock::GatesOpen { set: set.clone() }))
}

fn gates_of<'t>(trade: &'t Trade, record: &Record, set: &str) -> Vec<&'t GateRow> {
    applies::gates(trade, set, (record.intake.vehicle.gearbox, lift_of(record, set)))
}

/// What holds the car up, where it was said for this set.
pub fn lift_of(record: &Record, set: &str) -> Option<LiftKind> {
    record.lift.filter(|_| record.entered.as_deref() == Some(set))
}

fn gate_stand(record: &Record, set: &str, gate: &GateRow) -> GateStand {
    let confirmed = confirmed(record, set, gate).cloned();
    GateStand { id: gate.id.clone(), confirmed, lifts: gate.lifts.clone(), figures: gate.figures.clone() }
}

/// Who confirmed a gate of a set and when: in that set, or, where it is asked before both, in the one gone on from. One
/// about the lift that was left is asked for anew.
fn confirmed<'r>(record: &'r Record, set: &str, gate: &GateRow) -> Option<&'r Confirmed> {
    if !gate.lifts.is_empty() && record.before_lift.contains(&gate.id) {
        return None;
    }
    let entered = record.entered.as_deref();
    let own = || record.confirmed.get(&gate.id).filter(|_| entered == Some(set));
    let holds_on = !gate.also_in.is_empty() && (entered == Some(set) || goes_on(entered, set));
    let carried = || record.held().find(|(id, _)| **id == gate.id).map(|(_, confirmed)| confirmed);
    own().or_else(|| if holds_on { carried() } else { None })
}
