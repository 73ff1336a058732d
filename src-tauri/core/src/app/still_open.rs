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
use crate::store::cards::{CardRow, are_one_car, is_same_name};

use super::fault::Fault;
use super::steady::Inner;

/// Whether an entry can change which visits are earlier ones of the car, or what they mean to this one.
pub(super) fn asks_anew(body: &EntryBody) -> bool {
    matches!(body, EntryBody::Opened { .. } | EntryBody::Amended { .. })
}

/// The visits of a car before the one that asks.
#[derive(Default)]
pub(super) struct Earlier {
    /// Where those stand that can be read.
    pub(super) read: Vec<Standing>,
    /// What the list of visits says of those that cannot, or not in full, where that is DANGER or WARNING and graver than
    /// what can be read: nothing lifts it.
    unread: Vec<StillOpen>,
}

/// Where the visits of a car stand, of as many as a screen can show, without the one that asks.
///
/// # Errors
/// What SQLite says.
pub(super) fn of_car(inner: &mut Inner, car: (&str, &str), except: Option<&str>) -> Result<Earlier, Fault> {
    let mut found = Earlier::default();
    for visit in inner.store.latest_of_car(car, except, limits::EARLIER)? {
        // One that cannot be derived, by a layout file that is gone, takes nothing from the others.
        let standing = inner.standing_of_other(&visit).ok();
        let is_whole = standing.as_ref().is_some_and(|standing| standing.ledger.broken_at.is_none());
        if !is_whole && let Some(card) = inner.store.card(&visit)? {
            let read = standing.as_ref().and_then(|standing| standing.urgency.word);
            found.unread.extend(listed(&card, car).filter(|open| Some(open.word) > read));
        }
        found.read.extend(standing);
    }
    Ok(found)
}

/// What a card leaves open.
fn listed(card: &CardRow, car: (&str, &str)) -> Option<StillOpen> {
    let word = card.word.as_deref().and_then(Word::from_id).filter(|word| *word >= Word::Warning)?;
    Some(StillOpen {
        visit: card.visit.clone(),
        opened_at: Moment(card.opened_at),
        word,
        layout: None,
        corrected_to: corrected_to((&card.plate, &card.vin), car),
        unread: true,
    })
}

/// Where the visits of the same car before this one stand; none where no DANGER or WARNING is among them.
pub(super) fn earlier(inner: &mut Inner, now: &Standing) -> Result<Arc<Earlier>, Fault> {
    let Earlier { mut read, mut unread } = of_car(inner, car_of(now), Some(&now.visit))?;
    let id = |visit: &Standing| visit.visit.clone();
    let known: Vec<String> =
        read.iter().map(id).chain(unread.iter().map(|open| open.visit.clone())).collect();
    let before = inner.store.written_before(&now.visit, &known)?;
    put_in_order(&mut read, &before, (now.opened_at, &now.visit));
    unread.retain(|open| open.opened_at < now.opened_at || before.contains(&open.visit));
    if !read.iter().any(|visit| visit.urgency.word >= Some(Word::Warning)) {
        read.clear();
    }
    Ok(Arc::new(Earlier { read, unread }))
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
pub(super) fn left_by(earlier: &Earlier, now: &Standing, warm_from_c: f64) -> Option<StillOpen> {
    let visits = earlier.read.iter().chain([now]).collect();
    let open = open_of(visits, car_of(now), Some(&now.visit), warm_from_c);
    let open = gravest(open, &earlier.unread)?;
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
    earlier: &Earlier,
    warm_from_c: f64,
) -> Result<Option<StillOpen>, Fault> {
    let known: Vec<String> = earlier.read.iter().map(|visit| visit.visit.clone()).collect();
    let came = inner.store.written_before("", &known)?;
    let mut visits = earlier.read.clone();
    put_in_order(&mut visits, &came, (inner.now(), ""));
    Ok(gravest(open_of(visits.iter().collect(), car, None, warm_from_c), &earlier.unread))
}

/// The gravest of what is open, of those the latest.
fn gravest(open: Option<StillOpen>, unread: &[StillOpen]) -> Option<StillOpen> {
    unread.iter().cloned().chain(open).max_by_key(|open| (open.word, open.opened_at))
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
    let open = earlier.into_iter().filter_map(|(place, visit)| {
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
            corrected_to: corrected_to(car_of(visit), car),
            unread: false,
        })
    });
    // The latest of the gravest: a WARNING found since does not hide a DANGER.
    open.reduce(|gravest, earlier| if earlier.word > gravest.word { earlier } else { gravest })
}

/// The plate and VIN by which a visit goes now.
pub(super) fn car_of(visit: &Standing) -> (&str, &str) {
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

/// What a visit that was found by this plate or VIN goes by now, if that is another car: its plate, or else its VIN where
/// the plate is the same.
pub(super) fn corrected_to(now: (&str, &str), car: (&str, &str)) -> Option<String> {
    if are_one_car(car, now) {
        return None;
    }
    let differs = |(name, typed): &(&str, &str)| !name.trim().is_empty() && !is_same_name(name, typed);
    let named = [(now.0, car.0), (now.1, car.1)].into_iter().find(differs);
    Some(named.map_or("-", |(name, _)| name.trim()).to_owned())
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
