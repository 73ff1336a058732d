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
    let (what, step) = match &entry.body {
        EntryBody::Answered { step, .. } => ("answered", Some(step)),
        EntryBody::PhotoKept { of: PhotoOf::Step(step), .. } => ("photo-kept", Some(step)),
        EntryBody::PhotoMarked { of: PhotoOf::Step(step), .. } => ("photo-marked", Some(step)),
        EntryBody::PhotosPaired { step, .. } => ("photos-paired", Some(step)),
        EntryBody::PhotoWaived { step, .. } => ("photo-waived", Some(step)),
        EntryBody::GateConfirmed { .. } => ("gate-confirmed", None),
        EntryBody::OrderChosen { .. } => ("order-chosen", None),
        EntryBody::OpinionGiven { .. } => ("opinion-given", None),
        EntryBody::OutcomeConfirmed { .. } => ("outcome-confirmed", None),
        EntryBody::Bench { bench: BenchBody::Gauged { step, .. }, .. } => ("gauged", Some(step)),
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
        needs_reason: false,
    })
}
