//! A DANGER or WARNING of an earlier visit that nothing has lifted: a new visit does not lift it by being new.

use std::sync::Arc;

use crate::model::device::DeviceStand;
use crate::model::entry::EntryBody;
use crate::model::limits;
use crate::model::occasion::Occasion;
use crate::model::rating::{Reason, Word};
use crate::model::rules::Tells;
use crate::model::standing::{Answered, RepairStage, Standing};
use crate::model::still_open::StillOpen;
use crate::model::time::Moment;
use crate::sorting::sort::NORMAL;
use crate::store::cards::are_one_car;

use super::fault::Fault;
use super::steady::Inner;

/// Whether an entry can change which visits are earlier ones of the car, or what they mean to this one.
pub(super) fn asks_anew(body: &EntryBody) -> bool {
    matches!(body, EntryBody::Opened { .. } | EntryBody::Amended { .. })
}

/// Where the visits of the same car before this one stand, of as many as a screen can show; none where no DANGER or
/// WARNING is among them.
pub(super) fn earlier(inner: &mut Inner, now: &Standing) -> Result<Arc<[Standing]>, Fault> {
    let vehicle = &now.intake.vehicle;
    let car = (vehicle.plate.as_str(), vehicle.vin.as_str());
    let known = inner.store.latest_of_car(car, Some(&now.visit), limits::EARLIER)?;
    // One that cannot be derived, by a layout file that is gone, takes nothing from the others.
    let mut earlier: Vec<Standing> =
        known.iter().filter_map(|visit| inner.standing_of_other(visit).ok()).collect();
    let before = inner.store.written_before(&now.visit, &known)?;
    put_in_order(&mut earlier, &before, (now.opened_at, &now.visit));
    if !earlier.iter().any(|visit| visit.urgency.word >= Some(Word::Warning)) {
        earlier.clear();
    }
    Ok(earlier.into())
}

/// Leaves the visits that came before this one. One that was written here before is an earlier one whatever a clock that
/// ran ahead says of it, and stands before those that came after it.
fn put_in_order(visits: &mut Vec<Standing>, came: &[String], (opened_at, id): (Moment, &str)) {
    let place = |visit: &Standing| came.iter().position(|id| *id == visit.visit);
    let dated_before = |visit: &Standing| (visit.opened_at, visit.visit.as_str()) < (opened_at, id);
    visits.retain(|visit| dated_before(visit) || place(visit).is_some());
    // The latest first: none that came before it is dated after it, where its own date is believed.
    visits.sort_by_key(|visit| std::cmp::Reverse(place(visit)));
    let mut bound = opened_at;
    for visit in visits.iter_mut().filter(|visit| place(visit).is_some()) {
        if visit.opened_at >= opened_at {
            visit.opened_at = Moment(bound.0.saturating_sub(1));
        }
        bound = bound.min(visit.opened_at);
    }
}

/// What they left open to the visit that asks.
pub(super) fn left_by(earlier: &[Standing], now: &Standing, warm_from_c: f64) -> Option<StillOpen> {
    let open = open_of(earlier.iter().chain([now]).collect(), car_of(now), Some(&now.visit), warm_from_c)?;
    let other = |layout: &String| *layout != now.intake.vehicle.layout;
    Some(StillOpen { layout: open.layout.filter(other), ..open })
}

/// What the visits of a car, plate and VIN as typed, left open to one that is about to be opened.
///
/// # Errors
/// What SQLite says.
pub(super) fn left_to_the_next(
    inner: &Inner,
    car: (&str, &str),
    visits: &[Standing],
    warm_from_c: f64,
) -> Result<Option<StillOpen>, Fault> {
    let known: Vec<String> = visits.iter().map(|visit| visit.visit.clone()).collect();
    let came = inner.store.written_before("", &known)?;
    let mut visits = visits.to_vec();
    put_in_order(&mut visits, &came, (inner.now(), ""));
    Ok(open_of(visits.iter().collect(), car, None, warm_from_c))
}

/// What visits of one car left open, the latest of them but for the one that asks. Each reason for DANGER or WARNING is
/// lifted by itself, by a later look at the same place that does not find it any more, warm where it is felt: after a
/// repair, recorded at the bench or said at intake; what was left unsure, at any time. That it turned out to be a fault,
/// that a ring turned freely at the bench, or that somebody calls a visit a look after the repair, lifts nothing; nor does
/// a visit of what turned out to be another car.
fn open_of(
    mut visits: Vec<&Standing>,
    car: (&str, &str),
    asking: Option<&str>,
    warm_from_c: f64,
) -> Option<StillOpen> {
    visits.sort_by(|a, b| (b.opened_at, &b.visit).cmp(&(a.opened_at, &a.visit)));
    let earlier = visits.iter().enumerate().filter(|(_, visit)| Some(visit.visit.as_str()) != asking);
    earlier.into_iter().find_map(|(place, visit)| {
        let later = visits.get(..place).unwrap_or_default().iter().copied();
        let since: Vec<&Standing> = later.filter(|later| is_of_car(later, car, visit)).collect();
        let grave = visit.urgency.reasons.iter().filter(|reason| reason.word >= Word::Warning);
        let open = grave.filter(|reason| !is_lifted(reason, visit, &since, warm_from_c));
        let word = open.map(|reason| reason.word).max()?.min(visit.urgency.word?);
        let layout = Some(visit.intake.vehicle.layout.clone());
        Some(StillOpen {
            visit: visit.visit.clone(),
            opened_at: visit.opened_at,
            word,
            layout,
            corrected_to: corrected_to(visit, car),
        })
    })
}

/// The plate and VIN by which a visit goes now.
fn car_of(visit: &Standing) -> (&str, &str) {
    (&visit.intake.vehicle.plate, &visit.intake.vehicle.vin)
}

/// Whether a later visit is of the car that is asked about, as it is written down now, and of the one that was found
/// grave: one that was corrected to another car says nothing of this one.
fn is_of_car(later: &Standing, car: (&str, &str), visit: &Standing) -> bool {
    let its = car_of(later);
    let former = visit.former_cars.iter().map(|former| (former.plate.as_str(), former.vin.as_str()));
    let mut names = std::iter::once(car_of(visit)).chain(former);
    are_one_car(car, its) && names.any(|name| are_one_car(its, name))
}

/// What a visit that was found by this plate or VIN goes by now, if that is another car.
pub(super) fn corrected_to(visit: &Standing, car: (&str, &str)) -> Option<String> {
    let vehicle = &visit.intake.vehicle;
    if are_one_car(car, (&vehicle.plate, &vehicle.vin)) {
        return None;
    }
    let named = [&vehicle.plate, &vehicle.vin].into_iter().find(|name| !name.trim().is_empty());
    Some(named.map_or("-", |name| name.trim()).to_owned())
}

/// `since`: the visits after the one that gave the reason.
fn is_lifted(reason: &Reason, visit: &Standing, since: &[&Standing], warm_from_c: f64) -> bool {
    // Whoever nobody confirmed can add to what is known of a car, and takes nothing away.
    let known = |visit: &Standing| visit.entries_by(DeviceStand::is_doubtful) == 0;
    let unsure = reason.tells(Tells::Unsure);
    // What was felt or seen was there, whatever somebody writes down afterwards.
    let nothing = (unsure || reason.tells(Tells::Suspicion))
        && known(visit)
        && visit.outcome.as_ref().is_some_and(|outcome| outcome.causes.iter().all(|id| id == NORMAL));
    let repaired = known(visit) && is_repaired(visit);
    let looked = |later: &&Standing| {
        let asked = unsure || repaired || later.intake.occasion == Occasion::AfterRepair;
        asked
            && known(later)
            && later.intake.vehicle.layout == visit.intake.vehicle.layout
            && decisive(reason, visit).iter().all(|step| is_gone(reason, later, step, warm_from_c))
    };
    nothing || since.iter().any(looked)
}

/// The steps that a reason rests on; where it rests on the sorting, those that were found bad.
fn decisive<'s>(reason: &'s Reason, visit: &'s Standing) -> Vec<&'s str> {
    let own: Vec<&str> = reason.steps.iter().map(String::as_str).collect();
    if own.is_empty() { visit.found.iter().map(String::as_str).collect() } else { own }
}

/// Whether a place was felt and looked at, wholly, warm where warmth is asked for, and gives the reason no more. That
/// something else is found there is a reason of its own.
fn is_gone(reason: &Reason, visit: &Standing, id: &str, warm_from_c: f64) -> bool {
    let Some(step) = visit.steps.iter().find(|step| step.id == id) else { return false };
    let warm = |given: &Answered| given.temperature.is_some_and(|read| read.is_warm(warm_from_c));
    let still = |other: &Reason| other.rule == reason.rule && other.steps.iter().any(|step| step == id);
    let done = step
        .answered
        .as_ref()
        .is_some_and(|given| !given.disputed && given.conclusive && (!step.asks_temperature || warm(given)));
    done && !visit.urgency.reasons.iter().any(still)
}

fn is_repaired(visit: &Standing) -> bool {
    matches!(visit.repair, Some(RepairStage::TurnsFree | RepairStage::CheckedAgain))
}
