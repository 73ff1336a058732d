//! An entry against its bounds. Every field is named: one that is added does not compile until it has its own.

use super::super::answer::{AnswerValue, Temperature};
use super::super::entry::{EntryBody, PhotoRef, Receipt};
use super::super::mark;
use super::super::occasion::{Conditions, Speed};
use super::super::outcome::Outcome;
use super::super::rating::Word;
use super::super::time::Moment;
use super::super::visit::{Intake, Odometer, Owner, Vehicle};
use super::check::{Checked, count, ensure, hash, id, maybe_number, maybe_text, number, text};
use super::{bench, check};

/// Checks an entry, whoever wrote it. Whether its ids are known, and whether it may stand where it stands, is
/// for the rules.
///
/// # Errors
/// The first field found beyond its bound.
pub fn check(body: &EntryBody) -> Checked {
    match body {
        EntryBody::Opened { intake: taken, knowledge, rules: _, by } => {
            intake(taken)?;
            id("knowledge", knowledge)?;
            name(by)
        }
        EntryBody::Amended { intake: taken, takes_back, reason, by } => {
            intake(taken)?;
            count("takes_back", takes_back, super::ENTRIES)?;
            takes_back.iter().try_for_each(|answer| hash("takes_back", answer))?;
            maybe_text("reason", reason.as_ref(), super::REASON)?;
            name(by)
        }
        EntryBody::OrderChosen { order: _, by } => name(by),
        EntryBody::GateConfirmed { set, gate, lift: _, clock, by } => {
            id("set", set)?;
            dated("clock", *clock)?;
            id("gate", gate)?;
            name(by)
        }
        EntryBody::LiftSaid { set, lift: _, by } | EntryBody::PartLeft { set, by } => {
            id("set", set)?;
            name(by)
        }
        EntryBody::Answered { .. } => answered(body),
        EntryBody::PhotoKept { of, photo: kept, by } => {
            of.step().map_or(Ok(()), |step| id("step", step))?;
            photo(kept)?;
            name(by)
        }
        EntryBody::PhotoMarked { of, photo, marks, by } => {
            of.step().map_or(Ok(()), |step| id("step", step))?;
            hash("photo", photo)?;
            ensure("marks", mark::check(marks).is_ok())?;
            name(by)
        }
        EntryBody::PhotosPaired { step, before, after, by } => {
            id("step", step)?;
            before.as_ref().map_or(Ok(()), |before| hash("before", before))?;
            hash("after", after)?;
            name(by)
        }
        EntryBody::PhotoWaived { step, reason, by } => {
            id("step", step)?;
            text("reason", reason, super::LINE)?;
            name(by)
        }
        EntryBody::Withdrawn { entry, reason, by } => {
            hash("entry", entry)?;
            maybe_text("reason", reason.as_ref(), super::REASON)?;
            name(by)
        }
        EntryBody::Arranged { what, by } => {
            id("what", what)?;
            name(by)
        }
        EntryBody::OpinionGiven { cause, reason, by } => {
            id("cause", cause)?;
            text("reason", reason, super::REASON)?;
            name(by)
        }
        EntryBody::OutcomeConfirmed { outcome: confirmed, by } => {
            outcome(confirmed)?;
            name(by)
        }
        EntryBody::Bench { bench: recorded, by } => {
            bench::check(recorded)?;
            name(by)
        }
        EntryBody::Received { receipt: received } => receipt(received),
    }
}

/// Who wrote an entry.
fn answered(body: &EntryBody) -> Checked {
    let EntryBody::Answered {
        step,
        value,
        temperature,
        free: _,
        engine: _,
        heard_at: _,
        layout,
        figure_mm,
        clock,
        reason,
        supersedes,
        by,
    } = body
    else {
        return Ok(());
    };
    id("step", step)?;
    layout.as_ref().map_or(Ok(()), |layout| id("layout", layout))?;
    maybe_number("figure_mm", *figure_mm, &super::MAKER_PLAY_MM)?;
    dated("clock", *clock)?;
    ensure("temperature", temperature.is_none_or(Temperature::is_plausible))?;
    answer(value)?;
    maybe_text("reason", reason.as_ref(), super::REASON)?;
    count("supersedes", supersedes, super::SUPERSEDED)?;
    supersedes.iter().try_for_each(|answer| hash("supersedes", answer))?;
    name(by)
}

fn dated(field: &'static str, at: Option<Moment>) -> Checked {
    ensure(field, at.is_none_or(|at| at == at.datable()))
}

fn name(by: &str) -> Checked {
    text("by", by, super::LINE)
}

/// Checks what was written down at intake.
///
/// # Errors
/// The first field found beyond its bound.
pub fn intake(intake: &Intake) -> Checked {
    let Intake { vehicle: car, complaint, complaint_sounds, when, owner, occasion: _, conditions } = intake;
    vehicle(car)?;
    text("complaint", complaint, super::TEXT)?;
    count("complaint_sounds", complaint_sounds, super::CHOICES)?;
    complaint_sounds.iter().try_for_each(|sound| id("complaint_sounds", sound))?;
    text("when", when, super::TEXT)?;
    let Owner { name, contact } = owner;
    text("owner.name", name, super::LINE)?;
    text("owner.contact", contact, super::LINE)?;
    let Conditions { speed, gear, engine: _ } = conditions;
    if let Some(Speed { value, unit: _ }) = *speed {
        number("conditions.speed", value, &super::SPEED)?;
    }
    text("conditions.gear", gear, super::TYPED)
}

fn vehicle(vehicle: &Vehicle) -> Checked {
    let Vehicle {
        layout,
        label,
        plate,
        vin,
        seat: _,
        cylinders,
        gearbox: _,
        idle_rpm,
        odometer,
        maker_play_mm,
        warm_from_c,
    } = vehicle;
    id("layout", layout)?;
    text("label", label, super::LINE)?;
    text("plate", plate, super::LINE)?;
    text("vin", vin, super::LINE)?;
    maybe_number("cylinders", *cylinders, &super::CYLINDERS)?;
    if let Some([low, high]) = *idle_rpm {
        number("idle_rpm", low, &super::IDLE_RPM)?;
        number("idle_rpm", high, &super::IDLE_RPM)?;
        ensure("idle_rpm", low <= high)?;
    }
    if let Some(Odometer { value, unit: _ }) = *odometer {
        number("odometer", value, &super::ODOMETER)?;
    }
    maybe_number("maker_play_mm", *maker_play_mm, &super::MAKER_PLAY_MM)?;
    ensure("maker_play_mm", maker_play_mm.is_none_or(|figure| figure > 0.0))?;
    maybe_number("warm_from_c", *warm_from_c, &super::WARM_FROM_C)
}

fn answer(value: &AnswerValue) -> Checked {
    match value {
        AnswerValue::Reading(reading) => number("value", *reading, &super::READING),
        AnswerValue::One(one) => id("value", one),
        AnswerValue::Any(any) => {
            count("value", any, super::CHOICES)?;
            any.iter().try_for_each(|one| id("value", one))
        }
    }
}

fn photo(photo: &PhotoRef) -> Checked {
    let PhotoRef { sha256, original_sha256, width, height, taken } = photo;
    hash("sha256", sha256)?;
    hash("original_sha256", original_sha256)?;
    number("width", *width, &(1..=super::PHOTO_SIDE))?;
    number("height", *height, &(1..=super::PHOTO_SIDE))?;
    maybe_text("taken", taken.as_ref(), super::CAPTURED)
}

fn outcome(outcome: &Outcome) -> Checked {
    let Outcome { causes, layout, signs, sorted, knowledge } = outcome;
    count("causes", causes, super::CAUSES)?;
    causes.iter().try_for_each(|cause| id("causes", cause))?;
    id("layout", layout)?;
    ensure("signs", signs.len() <= super::SIGNS)?;
    signs.keys().try_for_each(|sign| id("signs", sign))?;
    // The causes, and that there is none.
    ensure("sorted", sorted.len() <= super::CAUSES + 1)?;
    sorted.keys().try_for_each(|cause| id("sorted", cause))?;
    sorted.values().try_for_each(|probability| number("sorted", *probability, &super::SHARE))?;
    id("knowledge", knowledge)
}

/// Rating of a note that rates nothing yet.
const UNRATED: &str = "unrated";

fn receipt(receipt: &Receipt) -> Checked {
    let Receipt { decision: _, name, note_sha256, locale, rating, lines, strokes } = receipt;
    maybe_number("lines", *lines, &(0..=super::ENTRIES as u64))?;
    text("receipt.name", name, super::LINE)?;
    hash("note_sha256", note_sha256)?;
    text("locale", locale, super::LOCALE)?;
    let known = |rating: &String| rating == UNRATED || Word::from_id(rating).is_some();
    ensure("rating", rating.as_ref().is_none_or(known))?;
    signature(strokes)
}

/// Checks a signature: its strokes, its points, and that they lie on the pad.
///
/// # Errors
/// [`check::Beyond`].
pub fn signature(strokes: &[Vec<[f32; 2]>]) -> Checked {
    count("strokes", strokes, super::STROKES)?;
    let points = || strokes.iter().flatten();
    ensure("strokes", points().count() <= super::POINTS)?;
    points().flatten().try_for_each(|share| check::number("strokes", f64::from(*share), &super::SHARE))
}
