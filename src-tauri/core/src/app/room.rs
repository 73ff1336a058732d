//! Whether a visit has room for one more entry, and whether the entry is one that every device takes in. Each
//! request refuses by name what it knows of; this is the last look before the ledger.

use crate::model::bench::BenchBody;
use crate::model::entry::{Entry, EntryBody};
use crate::model::limits;

use super::fault::Refusal;

/// Checks an entry that is about to be written behind these.
///
/// # Errors
/// [`Refusal::VisitFull`], [`Refusal::VisitPhotosFull`], [`Refusal::BenchNotesFull`] or [`Refusal::EntryBeyond`].
pub fn check(entries: &[Entry], body: &EntryBody) -> Result<(), Refusal> {
    if entries.len() >= limits::ENTRIES {
        return Err(Refusal::VisitFull);
    }
    let photos = || entries.iter().filter(|entry| entry.body.photo().is_some()).count();
    if body.photo().is_some() && photos() >= limits::PHOTOS {
        return Err(Refusal::VisitPhotosFull);
    }
    let is_note = |body: &EntryBody| matches!(body, EntryBody::Bench { bench: BenchBody::Noted { .. }, .. });
    let notes = || entries.iter().filter(|entry| is_note(&entry.body)).count();
    if is_note(body) && notes() >= limits::NOTES {
        return Err(Refusal::BenchNotesFull);
    }
    limits::entry::check(body).map_err(|_| Refusal::EntryBeyond)
}
