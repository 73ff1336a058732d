//! Erasing a visit, after its word was repeated: it cannot be taken back.

use std::collections::BTreeSet;

use super::super::fault::{Fault, Refusal};
use super::super::response::Response;
use super::super::set_aside;
use super::super::steady::Inner;

pub fn erase(inner: &mut Inner, visit: &str, word: &str) -> Result<Response, Fault> {
    if inner.store.is_erased(visit)? {
        return Err(Refusal::VisitErased.into());
    }
    let mut right = plates(inner, visit)?;
    right.insert(visit.rsplit('-').next().unwrap_or(visit).to_owned());
    let said = packed(word);
    if said.is_empty() || !right.iter().any(|right| packed(right) == said) {
        return Err(Refusal::EraseWordDiffers.into());
    }
    let now = inner.now();
    let erased = inner.store.erase(visit, &inner.writer.device, now);
    inner.ledger_changed()?;
    erased?;
    inner.asides = set_aside::counted(inner)?;
    Ok(Response::Erased { visit: visit.to_owned() })
}

/// The plate of a visit; where no list shows it any more, those under which something of it is left.
fn plates(inner: &mut Inner, visit: &str) -> Result<BTreeSet<String>, Fault> {
    match inner.read(visit) {
        Ok(read) => Ok(BTreeSet::from([read.record.intake.vehicle.plate.clone()])),
        Err(Fault::Refused(Refusal::UnknownVisit)) => {
            inner.store.left_of(visit)?.ok_or_else(|| Refusal::UnknownVisit.into())
        }
        Err(fault) => Err(fault),
    }
}

/// Letters and digits alone: how a plate is spaced does not matter.
fn packed(text: &str) -> String {
    text.chars().filter(|letter| letter.is_alphanumeric()).flat_map(char::to_lowercase).collect()
}
