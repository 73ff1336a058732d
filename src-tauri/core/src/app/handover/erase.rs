//! Erasing a visit, after its word was repeated: it cannot be taken back.

use super::super::fault::{Fault, Refusal};
use super::super::response::Response;
use super::super::set_aside;
use super::super::steady::Inner;

pub fn erase(inner: &mut Inner, visit: &str, word: &str) -> Result<Response, Fault> {
    if inner.store.is_erased(visit)? {
        return Err(Refusal::VisitErased.into());
    }
    let plate = inner.read(visit)?.record.intake.vehicle.plate.clone();
    let tail = visit.rsplit('-').next().unwrap_or(visit);
    let said = packed(word);
    if said.is_empty() || (said != packed(&plate) && said != packed(tail)) {
        return Err(Refusal::EraseWordDiffers.into());
    }
    let now = inner.now();
    let erased = inner.store.erase(visit, now);
    inner.ledger_changed()?;
    erased?;
    inner.asides = set_aside::counted(inner)?;
    Ok(Response::Erased { visit: visit.to_owned() })
}

/// Letters and digits alone: how a plate is spaced does not matter.
fn packed(text: &str) -> String {
    text.chars().filter(|letter| letter.is_alphanumeric()).flat_map(char::to_lowercase).collect()
}
