//! A DANGER or WARNING of an earlier visit that nothing has settled: a new visit does not lift it by being new.

use crate::model::entry::EntryBody;
use crate::model::limits;
use crate::model::occasion::Occasion;
use crate::model::rating::{Reason, Word};
use crate::model::rules::Tells;
use crate::model::standing::{Answered, RepairStage, Standing};
use crate::model::still_open::StillOpen;

use crate::sorting::sort::NORMAL;

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
    let earlier: Vec<Standing> = known.iter().filter_map(|visit| inner.standing_beside(visit).ok()).collect();
    let before = |visit: &&Standing| (visit.opened_at, &visit.visit) < (now.opened_at, &now.visit);
    let visits: Vec<&Standing> = earlier.iter().filter(before).chain([now]).collect();
    let warm_from_c = inner.trade.rules_for(vehicle.warm_from_c).warm_from_c;
    let open = open_of(visits, Some(&now.visit), warm_from_c);
    let other = |layout: &String| *layout != vehicle.layout;
    Ok(open.map(|open| StillOpen { layout: open.layout.filter(other), ..open }))
}

/// What visits of one car left open, the latest of them but for the one that asks. Each reason for DANGER or WARNING is
/// settled by itself: by a repair at the bench where it is about the bearing, or by a look after the repair at the same
/// place, in order, and warm where it was felt. That it turned out to be a fault, or that somebody calls a visit a look
/// after the repair, settles nothing; that nothing was there does.
pub(super) fn open_of(
    mut visits: Vec<&Standing>,
    asking: Option<&str>,
    warm_from_c: f64,
) -> Option<StillOpen> {
    visits.sort_by(|a, b| (b.opened_at, &b.visit).cmp(&(a.opened_at, &a.visit)));
    let earlier = visits.iter().enumerate().filter(|(_, visit)| Some(visit.visit.as_str()) != asking);
    earlier.into_iter().find_map(|(place, visit)| {
        let since = visits.get(..place).unwrap_or_default();
        let grave = visit.urgency.reasons.iter().filter(|reason| reason.word >= Word::Warning);
        let open = grave.filter(|reason| !is_settled(reason, visit, since, warm_from_c));
        let word = open.map(|reason| reason.word).max()?.min(visit.urgency.word?);
        let layout = Some(visit.intake.vehicle.layout.clone());
        Some(StillOpen { visit: visit.visit.clone(), opened_at: visit.opened_at, word, layout })
    })
}

/// `since`: the visits after the one that gave the reason.
fn is_settled(reason: &Reason, visit: &Standing, since: &[&Standing], warm_from_c: f64) -> bool {
    let nothing = visit.outcome.as_ref().is_some_and(|outcome| outcome.causes.iter().all(|id| id == NORMAL));
    let of_bearing = reason.facts().is_some_and(|facts| facts.on_bearing || facts.tells == Tells::Unsure);
    let repaired = of_bearing && (is_repaired(visit) || since.iter().any(|later| is_repaired(later)));
    let looked = |later: &&Standing| {
        later.intake.occasion == Occasion::AfterRepair
            && decisive(reason, visit).iter().all(|step| is_in_order(later, step, warm_from_c))
    };
    nothing || repaired || since.iter().any(looked)
}

/// The steps that a reason rests on; where it rests on the sorting, those that were found bad.
fn decisive<'s>(reason: &'s Reason, visit: &'s Standing) -> Vec<&'s str> {
    let own: Vec<&str> = reason.steps.iter().map(String::as_str).collect();
    if own.is_empty() { visit.found.iter().map(String::as_str).collect() } else { own }
}

/// Whether a place was felt and looked at, wholly, and is in order; warm, where warmth is asked for.
fn is_in_order(visit: &Standing, id: &str, warm_from_c: f64) -> bool {
    let Some(step) = visit.steps.iter().find(|step| step.id == id) else { return false };
    let warm = |given: &Answered| given.temperature.is_some_and(|read| read.is_warm(warm_from_c));
    step.answered.as_ref().is_some_and(|given| {
        !given.found && !given.disputed && given.settled && (!step.asks_temperature || warm(given))
    })
}

fn is_repaired(visit: &Standing) -> bool {
    matches!(visit.repair, Some(RepairStage::TurnsFree | RepairStage::CheckedAgain))
}
