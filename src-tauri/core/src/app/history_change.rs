//! What an entry changed of what was written down before it: what there was, and what there is now.

use serde::Serialize;

use crate::model::entry::{Entry, EntryBody};
use crate::model::gates::LiftKind;
use crate::model::visit::{Intake, Vehicle};

/// One thing that an entry changed.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct HistoryChange {
    /// What of the intake, such as `plate`, or `lift`.
    pub field: String,
    /// As typed, or ids of choices; empty where nothing was written down.
    pub before: Vec<String>,
    /// The same, as it is since.
    pub now: Vec<String>,
}

/// What an entry changed, by the entries that came before it.
pub(super) fn changes(entry: &Entry, before: &[Entry]) -> Vec<HistoryChange> {
    match &entry.body {
        EntryBody::Amended { intake, .. } => {
            before.iter().rev().find_map(intake_of).map(|was| of_intake(was, intake)).unwrap_or_default()
        }
        EntryBody::LiftSaid { set, lift, .. } => {
            let was = before.iter().rev().find_map(|entry| lift_of(entry, set));
            let id = |lift: LiftKind| vec![lift.id().to_owned()];
            was.map(|was| changed("lift", id(was), id(*lift))).into_iter().flatten().collect()
        }
        _ => Vec::new(),
    }
}

fn intake_of(entry: &Entry) -> Option<&Intake> {
    match &entry.body {
        EntryBody::Opened { intake, .. } | EntryBody::Amended { intake, .. } => Some(intake),
        _ => None,
    }
}

fn lift_of(entry: &Entry, wanted: &str) -> Option<LiftKind> {
    match &entry.body {
        EntryBody::LiftSaid { set, lift, .. } if set == wanted => Some(*lift),
        EntryBody::GateConfirmed { set, lift, .. } if set == wanted => *lift,
        _ => None,
    }
}

fn changed(field: &str, before: Vec<String>, now: Vec<String>) -> Option<HistoryChange> {
    (before != now).then(|| HistoryChange { field: field.to_owned(), before, now })
}

fn of_intake(was: &Intake, is: &Intake) -> Vec<HistoryChange> {
    let all = fields(was).into_iter().zip(fields(is));
    all.filter_map(|((field, before), (_, now))| changed(field, before, now)).collect()
}

/// The fields of an intake in the order of its screen.
fn fields(intake: &Intake) -> Vec<(&'static str, Vec<String>)> {
    let car: &Vehicle = &intake.vehicle;
    let typed = |text: &str| if text.is_empty() { Vec::new() } else { vec![text.to_owned()] };
    let id = |value: Option<serde_json::Value>| -> Vec<String> {
        value.and_then(|value| value.as_str().map(str::to_owned)).into_iter().collect()
    };
    let odometer = car.odometer.map(|read| format!("{} {}", read.value, read.unit.id()));
    let heard = &intake.conditions;
    let speed = heard.speed.map(|speed| format!("{} {}", speed.value, speed.unit.id()));
    let engine = id(heard.engine.and_then(|engine| serde_json::to_value(engine).ok()));
    let conditions = speed.into_iter().chain(typed(&heard.gear)).chain(engine).collect();
    vec![
        ("plate", typed(&car.plate)),
        ("vin", typed(&car.vin)),
        ("layout", typed(&car.layout)),
        ("seat", id(car.seat.and_then(|seat| serde_json::to_value(seat).ok()))),
        ("gearbox", car.gearbox.map(|gearbox| gearbox.id().to_owned()).into_iter().collect()),
        ("maker-play", number(car.maker_play_mm)),
        ("warm-from", number(car.warm_from_c)),
        ("sounds", intake.complaint_sounds.clone()),
        ("complaint", typed(&intake.complaint)),
        ("when", typed(&intake.when)),
        ("conditions", conditions),
        ("occasion", id(serde_json::to_value(intake.occasion).ok())),
        ("label", typed(&car.label)),
        ("odometer", odometer.into_iter().collect()),
        ("cylinders", number(car.cylinders)),
        ("idle", car.idle_rpm.iter().flatten().map(u32::to_string).collect()),
        ("owner", typed(&intake.owner.name)),
        ("contact", typed(&intake.owner.contact)),
    ]
}

fn number(value: Option<impl ToString>) -> Vec<String> {
    value.map(|value| value.to_string()).into_iter().collect()
}
