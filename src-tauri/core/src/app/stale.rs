//! Safety checks that hold no more: whoever goes under the car or sits at the engine has looked for themselves, and not
//! too long ago. A standing is the same whatever the clock says; what is shown of it now is not.

use std::sync::Arc;

use crate::model::device::Devices;
use crate::model::standing::{Lock, Position, Standing};
use crate::model::time::Moment;
use crate::trade::Trade;
use crate::walk::locks;
use crate::walk::record::Record;

use super::devices;
use super::response::{BenchShown, Response};
use super::steady::Inner;

/// Who asks, on which device, and when.
#[derive(Debug, Clone, Copy)]
pub struct Asking<'a> {
    pub by: &'a str,
    pub device: &'a str,
    /// What was decided about the others.
    pub devices: &'a Devices,
    pub now: Moment,
}

/// In a moment's own unit.
pub(super) const MINUTE: i64 = 60_000;

/// Why the safety checks of the entered part hold no more for whoever asks; none where they hold, or nobody is in a part.
pub fn why(trade: &Trade, record: &Record, asking: Asking<'_>) -> Option<Lock> {
    let set = record.entered.clone()?;
    let confirmed = || record.held().map(|(_, confirmed)| confirmed);
    // A name that a stranger's device wrote is nobody's look at the lift.
    let doubtful = |device: &String| devices::is_doubtful(device, asking.device, asking.devices);
    if confirmed().any(|confirmed| confirmed.by != asking.by) || record.confirmed_on.iter().any(doubtful) {
        return Some(Lock::GatesOfAnother { set });
    }
    let hold = &trade.gates_hold;
    // A look that lies ahead of the clock has no age that anybody could vouch for.
    let longer = |since: Moment, minutes: u32| {
        let age = asking.now.0.saturating_sub(since.0);
        age > i64::from(minutes) * MINUTE || age < -MINUTE
    };
    let old = record.active_at.is_none_or(|at| longer(at, hold.away_minutes))
        || confirmed().any(|confirmed| longer(confirmed.at, hold.longest_minutes));
    old.then_some(Lock::GatesTooOld { set })
}

/// Closes in a standing what the safety checks hold open no more.
fn close(standing: &mut Standing, why: &Lock) {
    let Some(entered) = standing.entered.clone() else { return };
    for gates in &mut standing.gate_sets {
        if gates.id == entered || locks::goes_on(Some(&entered), &gates.id) {
            gates.open = false;
            gates.lock.get_or_insert_with(|| why.clone());
        }
    }
    for step in &mut standing.steps {
        let shut = |lock: &Lock| !matches!(lock, Lock::GatesOpen { .. });
        if step.set.is_some() && !step.lock.as_ref().is_some_and(shut) {
            step.lock = Some(why.clone());
        }
    }
    let shut = |id: &String| standing.steps.iter().any(|step| &step.id == id && step.lock.is_some());
    standing.looks.open.retain(|id| !shut(id));
    standing.position = Position::Leave { set: entered };
}

impl Inner {
    /// What is shown of a visit now, by the clock and the technician's name.
    pub(super) fn as_of_now(&self, response: Response) -> Response {
        match response {
            Response::Visit(standing) => Response::Visit(self.closed(standing)),
            Response::Bench(shown) => {
                let BenchShown { bench, standing } = *shown;
                Response::Bench(Box::new(BenchShown { bench, standing: self.closed(standing) }))
            }
            other => other,
        }
    }

    fn closed(&self, mut standing: Arc<Standing>) -> Arc<Standing> {
        let entered = |record: &&Record| record.entered.is_some();
        let Some(record) = self.record_at_hand(&standing.visit).filter(entered) else { return standing };
        let by = self.technician(None).unwrap_or_default();
        let asking = Asking { by: &by, device: &self.writer.device, devices: &self.devices, now: self.now() };
        if let Some(why) = why(&self.trade, record, asking) {
            close(Arc::make_mut(&mut standing), &why);
        }
        standing
    }
}
