//! The first screen and the list of visits.

use std::collections::BTreeMap;

use crate::model::entry::OwnerDecision;
use crate::model::limits;
use crate::model::rating::Word;
use crate::model::standing::{RepairStage, Standing, Support};
use crate::model::time::Moment;
use crate::photos::barcode;
use crate::store::cards::{CardRow, haystack};

use super::decide::line_fits;
use super::fault::{Fault, Refusal};
use super::response::{Home, LayoutChoice, Response, VisitCard, VisitPage};
use super::sought::sought;
use super::steady::Inner;
use super::{devices, qr, set_aside};

pub(super) fn home(inner: &Inner) -> Result<Response, Fault> {
    inner.store.sweep_again();
    let settings = inner.store.settings()?;
    let preference =
        |(name, value): (&String, &String)| Some((name.strip_prefix("pref.")?.to_owned(), value.clone()));
    let preferences: BTreeMap<String, String> = settings.iter().filter_map(preference).collect();
    Ok(Response::Home(Home {
        technician: settings.get("technician").cloned().unwrap_or_default(),
        preferences,
        version: env!("CARGO_PKG_VERSION").to_owned(),
        knowledge: inner.trade.version.clone(),
        visits: inner.store.visits()?,
        units: inner.workshop.units,
        layouts: layouts(inner),
        complaint_sounds: inner.trade.sounds.iter().map(|sound| sound.id.clone()).collect(),
        waivers: inner.trade.waivers.iter().filter(|row| row.offered).map(|row| row.id.clone()).collect(),
        notices: inner.notices.clone(),
        set_aside: set_aside::shown(inner),
    }))
}

fn layouts(inner: &Inner) -> Vec<LayoutChoice> {
    let choice = |layout: &crate::trade::rows::Layout| LayoutChoice {
        id: layout.id.clone(),
        support: layout.support,
        own_name: layout.name.clone(),
        has_seat: !layout.seats.is_empty(),
        has_maker_figure: layout.support == Support::Rubber,
    };
    inner.trade.layouts.iter().map(choice).collect()
}

pub(super) fn set_technician(inner: &mut Inner, name: &str) -> Result<Response, Fault> {
    let name = name.trim();
    if name.is_empty() {
        return Err(Refusal::TechnicianMissing.into());
    }
    if !line_fits(name) {
        return Err(Refusal::NameTooLong.into());
    }
    inner.store.set("technician", name)?;
    home(inner)
}

pub(super) fn set_preference(inner: &mut Inner, name: &str, value: &str) -> Result<Response, Fault> {
    let plain = !name.is_empty()
        && name.len() <= limits::PREFERENCE_NAME
        && name.bytes().all(|byte| byte.is_ascii_lowercase() || byte == b'-');
    if !plain || !line_fits(value) {
        return Err(Refusal::UnknownRequest.into());
    }
    inner.store.set(&format!("pref.{name}"), value)?;
    home(inner)
}

/// Whether a setting that a backup brings is one that could have been set here: nothing longer, nothing unprintable.
pub(super) fn setting_fits(name: &str, value: &str) -> bool {
    let plain = name.strip_prefix("pref.").unwrap_or(name);
    plain.len() <= limits::PREFERENCE_NAME && line_fits(name) && line_fits(value)
}

/// The visit whose code is in a photo, and drops the photo whatever it shows.
pub(super) fn scanned(inner: &mut Inner, upload: &str) -> Result<Response, Fault> {
    let bytes = inner.store.upload(upload)?;
    inner.store.drop_upload(upload);
    let texts = barcode::texts(&bytes)?;
    let visit = texts.iter().find_map(|text| qr::scanned_visit(text)).ok_or(Refusal::NoVisitInPhoto)?;
    one(inner, &visit)
}

/// The page with this visit alone.
fn one(inner: &mut Inner, visit: &str) -> Result<Response, Fault> {
    let row = card(&inner.standing_of_other(visit)?);
    let graver = inner.store.beside_graver(std::slice::from_ref(&row))?;
    let mut known = shown(row);
    known.from = devices::doubt(inner, visit)?;
    known.still_open = graver.get(visit).and_then(|_| still_open(inner, &known));
    Ok(Response::Visits(VisitPage { visits: vec![known], total: 1, next: None }))
}

pub(super) fn visits(inner: &mut Inner, search: &str, after: Option<&str>) -> Result<Response, Fault> {
    // A scanner that types what it reads. A visit that is not here is looked for like any other words, and not found.
    if let Some(visit) = qr::scanned_visit(search)
        && let Ok(found) = one(inner, &visit)
    {
        return Ok(found);
    }
    let page = inner.store.cards(&sought(search), after)?;
    let (total, next) = (page.total, page.next);
    let graver = inner.store.beside_graver(&page.cards)?;
    let mut visits: Vec<VisitCard> = page.cards.into_iter().map(|known| whole(inner, known)).collect();
    for card in &mut visits {
        card.from = devices::doubt(inner, &card.visit)?;
        card.still_open = graver.get(&card.visit).and_then(|_| still_open(inner, card));
    }
    Ok(Response::Visits(VisitPage { visits, total, next }))
}

/// What earlier visits of the car left open, where that is graver than the card's own rating. One that cannot be derived
/// takes nothing from the list.
fn still_open(inner: &mut Inner, card: &VisitCard) -> Option<Word> {
    inner.left_open_to(&card.visit).ok().flatten().filter(|open| Some(*open) > card.word)
}

/// A card as shown. One that an earlier version wrote lacks a part, and is derived anew where its visit can be.
fn whole(inner: &mut Inner, known: CardRow) -> VisitCard {
    if known.conclusive.is_some() {
        return shown(known);
    }
    let Ok(standing) = inner.standing_of_other(&known.visit) else { return shown(known) };
    let renewed = card(&standing);
    // Where the disk takes nothing now, the next list derives it once more.
    let _ = inner.store.renew_card(&renewed);
    shown(renewed)
}

/// Derives cards of an earlier version anew where a look for the car would miss their visits. Where one cannot be, or
/// the disk takes nothing now, the next start tries once more.
pub(super) fn renew_corrected(inner: &mut Inner) {
    for visit in inner.store.cards_to_renew().unwrap_or_default() {
        if let Ok(standing) = inner.standing_of_other(&visit) {
            let _ = inner.store.renew_card(&card(&standing));
        }
    }
}

/// The card of a visit, derived from where it stands.
pub(super) fn card(standing: &Standing) -> CardRow {
    let vehicle = &standing.intake.vehicle;
    let owner = &standing.intake.owner.name;
    let count = |steps: usize| u32::try_from(steps).unwrap_or(u32::MAX);
    CardRow {
        visit: standing.visit.clone(),
        label: vehicle.label.clone(),
        plate: vehicle.plate.clone(),
        vin: vehicle.vin.clone(),
        owner: owner.clone(),
        opened_at: standing.opened_at.0,
        updated_at: standing.updated_at.0,
        word: standing.urgency.word.map(|word| word.id().to_owned()),
        answered: count(standing.steps.iter().filter(|step| step.answered.is_some()).count()),
        conclusive: Some(count(standing.steps.iter().filter(|step| step.is_conclusive()).count())),
        steps: count(standing.steps.iter().filter(|step| step.counts()).count()),
        receipt: signed_for_this(standing),
        repair: standing.repair.map(|stage| stage.id().to_owned()),
        confirmed: standing.outcome.is_some(),
        haystack: haystack(
            &[&vehicle.label, &vehicle.plate, &vehicle.vin, owner],
            &standing.former_cars,
            &standing.opened_at.day(),
        ),
    }
}

/// What was decided by the receipt, unless the rating or what the note tells is another since: nobody signed for that.
fn signed_for_this(standing: &Standing) -> Option<String> {
    let receipt = standing.receipt.as_ref().filter(|receipt| !receipt.outdated)?;
    Some(receipt.decision.id().to_owned())
}

fn shown(card: CardRow) -> VisitCard {
    VisitCard {
        word: card.word.as_deref().and_then(Word::from_id),
        receipt: card.receipt.as_deref().and_then(OwnerDecision::from_id),
        repair: card.repair.as_deref().and_then(RepairStage::from_id),
        confirmed: card.confirmed,
        conclusive: card.conclusive.unwrap_or(0),
        visit: card.visit,
        label: card.label,
        plate: card.plate,
        vin: card.vin,
        owner: card.owner,
        opened_at: Moment(card.opened_at),
        updated_at: Moment(card.updated_at),
        answered: card.answered,
        steps: card.steps,
        from: None,
        still_open: None,
    }
}
