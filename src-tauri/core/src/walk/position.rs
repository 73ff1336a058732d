//! Where the walk goes on: the first thing, in the order that holds, that is still to do.

use crate::model::entry::Order;
use crate::model::standing::{Position, StepStand};
use crate::model::together::LooksStand;
use crate::trade::Trade;

use super::locks::{ENGINE_SETS, LIFT, goes_on, is_open};
use super::order;
use super::record::Record;

/// The gate sets of a walk in the order that holds; only those that have steps.
pub fn sets_in_order(order: Order, steps: &[StepStand]) -> Vec<String> {
    let [running, creep, road] = ENGINE_SETS;
    let all = match order {
        Order::UnderCarFirst | Order::HandsOn => [LIFT, running, creep, road],
        Order::RunningFirst => [running, creep, LIFT, road],
    };
    let used = |set: &&str| steps.iter().any(|step| step.set.as_deref() == Some(*set));
    all.into_iter().filter(used).map(str::to_owned).collect()
}

/// Where the walk goes on. `danger` is set where the engine must not run again.
pub fn position(
    trade: &Trade,
    record: &Record,
    (steps, looks): (&[StepStand], &LooksStand),
    danger: bool,
) -> Position {
    if let Some(entered) = &record.entered {
        return inside(trade, record, (steps, looks), entered, danger);
    }
    let holds = order::order(trade, record);
    if holds == Order::HandsOn {
        let left = steps.iter().any(|step| step.hands_on && !done(step));
        return if left { Position::Gates { set: LIFT.to_owned() } } else { Position::Done };
    }
    if let Some(step) = steps.iter().find(|step| step.set.is_none() && !done(step)) {
        return Position::Step { step: step.id.clone() };
    }
    if offer_order(record, steps, danger) {
        return Position::Order;
    }
    let open_sets = |set: &&String| !(danger && ENGINE_SETS.contains(&set.as_str()));
    let sets = sets_in_order(holds, steps);
    for set in sets.iter().filter(open_sets) {
        if steps.iter().any(|step| step.set.as_ref() == Some(set) && step.counts() && !done(step)) {
            return Position::Gates { set: set.clone() };
        }
    }
    Position::Done
}

/// A step is done when it is answered and pictured, or has a reason for no picture, or was not done.
pub fn done(step: &StepStand) -> bool {
    step.answered.is_some() && (step.photo.is_some() || step.waiver.is_some() || !step.wants_photo)
}

/// Until a part was begun or an order chosen, offer the choice: the hands-on check alone, or all of it, of which running
/// first makes the exhaust hot.
pub fn offer_order(record: &Record, steps: &[StepStand], danger: bool) -> bool {
    let begun = steps.iter().any(|step| step.set.is_some() && step.answered.is_some());
    record.order.is_none() && !begun && !danger
}

fn inside(
    trade: &Trade,
    record: &Record,
    (steps, looks): (&[StepStand], &LooksStand),
    entered: &str,
    danger: bool,
) -> Position {
    let set = entered.to_owned();
    if danger && ENGINE_SETS.contains(&entered) {
        return Position::Leave { set };
    }
    // Whoever entered the road test came for steps that nobody has to do.
    let alone = entered == LIFT && order::order(trade, record) == Order::HandsOn;
    let asked = |step: &&StepStand| (step.counts() || entered == ENGINE_SETS[2]) && (step.hands_on || !alone);
    let left = |step: &&StepStand| asked(step) && !done(step);
    let Some(step) = steps.iter().find(|step| step.set.as_deref() == Some(entered) && left(step)) else {
        // With the engine running, on to what is left of it, without leaving.
        let on = steps.iter().filter(left).filter_map(|step| step.set.clone());
        let on = on.into_iter().find(|set| goes_on(Some(entered), set));
        return on.map_or(Position::Leave { set }, |set| Position::Gates { set });
    };
    if !is_open(trade, record, entered) {
        Position::Gates { set }
    } else if looks.several_with(&step.id) {
        Position::Looks
    } else {
        Position::Step { step: step.id.clone() }
    }
}
