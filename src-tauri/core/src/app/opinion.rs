//! What a person thinks it is, beside the sorting.

use crate::model::entry::EntryBody;
use crate::model::standing::Standing;

use super::decide::Scene;
use super::fault::Refusal;
use super::reason as why;

/// An opinion as an entry.
///
/// # Errors
/// [`Refusal::UnknownCause`], [`Refusal::OpinionWithoutReason`] or [`Refusal::ReasonTooLong`].
pub fn give(scene: Scene<'_>, cause: &str, reason: &str) -> Result<EntryBody, Refusal> {
    known_cause(scene.standing, cause)?;
    let reason = reason.trim();
    if reason.is_empty() {
        return Err(Refusal::OpinionWithoutReason);
    }
    if !why::fits(reason) {
        return Err(Refusal::ReasonTooLong);
    }
    Ok(EntryBody::OpinionGiven {
        cause: cause.to_owned(),
        reason: reason.to_owned(),
        by: scene.by.to_owned(),
    })
}

/// Refuses a cause that this car cannot have.
pub(super) fn known_cause(standing: &Standing, cause: &str) -> Result<(), Refusal> {
    let known = standing.sorting.causes.iter().any(|stand| stand.id == cause);
    if known { Ok(()) } else { Err(Refusal::UnknownCause) }
}
