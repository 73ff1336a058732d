//! Learning from confirmed outcomes, and the page that shows how well past sortings did.

use crate::model::entry::{Entry, EntryBody};
use crate::model::learned::Learned;
use crate::outcomes::learn::learn;
use crate::outcomes::score;

use super::devices;
use super::fault::Fault;
use super::response::Response;
use super::steady::Inner;

pub(super) fn learned(inner: &Inner) -> Result<Learned, Fault> {
    Ok(learn(&inner.trade, &inner.store.outcomes(|device| teaches_here(inner, device))?))
}

/// Whether outcomes that a device wrote teach: what nobody here confirmed teaches nothing.
pub(super) fn teaches_here(inner: &Inner, device: &str) -> bool {
    !devices::is_doubtful(device, &inner.writer.device, &inner.devices)
}

/// Whether a new entry changes what the outcomes teach: a confirmation, or one taken back.
pub(super) fn teaches(entries: &[Entry], new: &Entry) -> bool {
    let confirms = |entry: &Entry| matches!(entry.body, EntryBody::OutcomeConfirmed { .. });
    match &new.body {
        EntryBody::Withdrawn { entry: hash, .. } => {
            entries.iter().any(|entry| &entry.hash == hash && confirms(entry))
        }
        _ => confirms(new),
    }
}

pub(super) fn calibration(inner: &Inner) -> Result<Response, Fault> {
    Ok(Response::Calibration(Box::new(score::calibration(
        &inner.trade,
        &inner.store.outcomes(|device| teaches_here(inner, device))?,
    ))))
}
