//! What "undo" would take back: the latest entry of this device that can be taken back alone.

use crate::model::bench::BenchBody;
use crate::model::entry::{Entry, EntryBody};
use crate::model::photo_of::PhotoOf;
use crate::model::standing::UndoOffer;

use super::record::Record;

/// The offer, without `needs_reason`, which takes a rating to know.
///
/// Leaving a part, going on to the next without leaving, signing and intake end the reach of undo: taking back a gate
/// that was confirmed before would say somebody is still there, or that the car has not moved since.
pub fn offer(entries: &[Entry], record: &Record, device: &str) -> Option<UndoOffer> {
    for entry in entries.iter().rev().filter(|entry| entry.device == device) {
        if record.withdrawn.contains(&entry.hash) || matches!(entry.body, EntryBody::Withdrawn { .. }) {
            continue;
        }
        return if goes_on(entries, record, entry) { None } else { offered(entry) };
    }
    None
}

/// Whether an entry went on from one part to another without leaving: the first gate of the other part.
fn goes_on(entries: &[Entry], record: &Record, entry: &Entry) -> bool {
    let EntryBody::GateConfirmed { set, .. } = &entry.body else { return false };
    let stands = |earlier: &&Entry| !record.withdrawn.contains(&earlier.hash);
    let place = entries.iter().position(|earlier| earlier.hash == entry.hash).unwrap_or(0);
    let last = entries.iter().take(place).rev().filter(stands).find_map(|earlier| match &earlier.body {
        EntryBody::GateConfirmed { set, .. } => Some(Some(set)),
        EntryBody::PartLeft { .. } => Some(None),
        _ => None,
    });
    last.flatten().is_some_and(|last| last != set)
}

fn offered(entry: &Entry) -> Option<UndoOffer> {
    let (what, step, by) = match &entry.body {
        EntryBody::Answered { step, by, .. } => ("answered", Some(step), by),
        EntryBody::PhotoKept { of: PhotoOf::Step(step), by, .. } => ("photo-kept", Some(step), by),
        EntryBody::PhotoMarked { of: PhotoOf::Step(step), by, .. } => ("photo-marked", Some(step), by),
        EntryBody::PhotosPaired { step, by, .. } => ("photos-paired", Some(step), by),
        EntryBody::PhotoWaived { step, by, .. } => ("photo-waived", Some(step), by),
        EntryBody::GateConfirmed { by, .. } => ("gate-confirmed", None, by),
        EntryBody::LiftSaid { by, .. } => ("lift-said", None, by),
        EntryBody::OrderChosen { by, .. } => ("order-chosen", None, by),
        EntryBody::OpinionGiven { by, .. } => ("opinion-given", None, by),
        EntryBody::OutcomeConfirmed { by, .. } => ("outcome-confirmed", None, by),
        EntryBody::Bench { bench: BenchBody::Gauged { step, .. }, by } => ("gauged", Some(step), by),
        EntryBody::PhotoKept { of: PhotoOf::Work(_), .. }
        | EntryBody::PhotoMarked { of: PhotoOf::Work(_), .. }
        | EntryBody::Bench { .. }
        | EntryBody::Opened { .. }
        | EntryBody::Amended { .. }
        | EntryBody::PartLeft { .. }
        | EntryBody::Withdrawn { .. }
        | EntryBody::Arranged { .. }
        | EntryBody::Received { .. } => return None,
    };
    let (gate, set) = match &entry.body {
        EntryBody::GateConfirmed { gate, set, .. } => (Some(gate.clone()), Some(set.clone())),
        EntryBody::LiftSaid { set, .. } => (None, Some(set.clone())),
        _ => (None, None),
    };
    Some(UndoOffer {
        entry: entry.hash.clone(),
        what: what.to_owned(),
        step: step.cloned(),
        gate,
        set,
        by: by.clone(),
        at: entry.at,
        needs_reason: false,
    })
}
