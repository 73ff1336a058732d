//! What "undo" would take back: the latest entry of this device that can be taken back alone.

use crate::model::bench::BenchBody;
use crate::model::entry::{Entry, EntryBody};
use crate::model::photo_of::PhotoOf;
use crate::model::standing::UndoOffer;

use super::record::Record;

/// The offer, without `needs_reason`, which takes a rating to know.
///
/// Leaving a part, signing and intake end the reach of undo: taking back a gate that was confirmed
/// before the part was left would say somebody is still there.
pub fn offer(entries: &[Entry], record: &Record, device: &str) -> Option<UndoOffer> {
    for entry in entries.iter().rev().filter(|entry| entry.device == device) {
        if record.withdrawn.contains(&entry.hash) || matches!(entry.body, EntryBody::Withdrawn { .. }) {
            continue;
        }
        return offered(entry);
    }
    None
}

fn offered(entry: &Entry) -> Option<UndoOffer> {
    let (what, step, by) = match &entry.body {
        EntryBody::Answered { step, by, .. } => ("answered", Some(step), by),
        EntryBody::PhotoKept { of: PhotoOf::Step(step), by, .. } => ("photo-kept", Some(step), by),
        EntryBody::PhotoMarked { of: PhotoOf::Step(step), by, .. } => ("photo-marked", Some(step), by),
        EntryBody::PhotosPaired { step, by, .. } => ("photos-paired", Some(step), by),
        EntryBody::PhotoWaived { step, by, .. } => ("photo-waived", Some(step), by),
        EntryBody::GateConfirmed { by, .. } => ("gate-confirmed", None, by),
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
    Some(UndoOffer {
        entry: entry.hash.clone(),
        what: what.to_owned(),
        step: step.cloned(),
        by: by.clone(),
        at: entry.at,
        needs_reason: false,
    })
}
