//! A DANGER or WARNING of an earlier visit that nothing has settled: a new visit does not lift it by being new.

use crate::model::entry::EntryBody;
use crate::model::limits;
use crate::model::rating::Word;
use crate::model::standing::{RepairStage, Standing};
use crate::model::still_open::StillOpen;

use super::fault::Fault;
use super::steady::Inner;

/// Whether an entry can change which visits are earlier ones of the car, or what they mean to this one.
pub(super) fn asks_anew(body: &EntryBody) -> bool {
    matches!(body, EntryBody::Opened { .. } | EntryBody::Amended { .. })
}

/// The latest visit of the same car, before this one, that still stands open; of as many as a screen can show.
pub(super) fn find(inner: &mut Inner, now: &Standing) -> Result<Option<StillOpen>, Fault> {
    let vehicle = &now.intake.vehicle;
    let mut known = inner.store.visits_of_car(&vehicle.plate, &vehicle.vin)?;
    known.retain(|visit| *visit != now.visit);
    let known = known.split_off(known.len().saturating_sub(limits::EARLIER));
    // One that cannot be derived, by a layout file that is gone, takes nothing from the others.
    let mut earlier: Vec<Standing> =
        known.iter().filter_map(|visit| inner.standing_beside(visit).ok()).collect();
    earlier.retain(|visit| (visit.opened_at, &visit.visit) < (now.opened_at, &now.visit));
    earlier.sort_by(|a, b| (b.opened_at, &b.visit).cmp(&(a.opened_at, &a.visit)));
    Ok(open_of(Some(&vehicle.layout), &earlier))
}

/// What visits of one car, newest first, left open; `now` is the layout of the visit that asks, where it has one. A
/// recorded repair settles what came before it; that somebody calls a visit a look after the repair does not.
pub(super) fn open_of(now: Option<&str>, earlier: &[Standing]) -> Option<StillOpen> {
    for visit in earlier {
        if is_repaired(visit) {
            return None;
        }
        let bad = visit.urgency.word.filter(|word| *word >= Word::Warning && visit.outcome.is_none());
        if let Some(word) = bad {
            let was = &visit.intake.vehicle.layout;
            let layout = now.is_some_and(|now| now != was).then(|| was.clone());
            return Some(StillOpen { visit: visit.visit.clone(), opened_at: visit.opened_at, word, layout });
        }
    }
    None
}

fn is_repaired(visit: &Standing) -> bool {
    matches!(visit.repair, Some(RepairStage::TurnsFree | RepairStage::CheckedAgain))
}
