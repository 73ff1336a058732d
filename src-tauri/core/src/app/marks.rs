//! Marks over photos and pairs of photos: from a request to the entry it asks for, or a refusal. Pure, as
//! `decide`.

use crate::model::entry::EntryBody;
use crate::model::mark::{self, Mark, MarkFault};
use crate::model::photo_of::PhotoOf;
use crate::model::standing::{PhotoStand, StepStand};

use super::decide::{Scene, check_step};
use super::fault::Refusal;

/// Marks over a photo of a step, in place of those it has; nothing if they are the same.
///
/// # Errors
/// [`Refusal::PhotoNotOfStep`], why the marks are not taken, or the step's own refusal.
pub fn mark(
    scene: Scene<'_>,
    step: &str,
    photo: &str,
    marks: Vec<Mark>,
) -> Result<Option<EntryBody>, Refusal> {
    let stand = stand(scene, step)?;
    let kept = photos(stand).find(|kept| kept.photo.sha256 == photo).ok_or(Refusal::PhotoNotOfStep)?;
    let marks = checked(marks)?;
    if kept.marks == marks {
        return Ok(None);
    }
    let (of, photo, by) = (PhotoOf::Step(step.to_owned()), photo.to_owned(), scene.by.to_owned());
    Ok(Some(EntryBody::PhotoMarked { of, photo, marks, by }))
}

/// The step's latest photo beside an earlier one, or alone; nothing if it is shown so already.
///
/// # Errors
/// [`Refusal::PhotoNotOfStep`], or the step's own refusal.
pub fn pair(scene: Scene<'_>, step: &str, before: Option<String>) -> Result<Option<EntryBody>, Refusal> {
    let stand = stand(scene, step)?;
    let latest = stand.photo.as_ref().ok_or(Refusal::PhotoNotOfStep)?;
    let earlier = |sha256: &String| stand.earlier.iter().any(|kept| &kept.photo.sha256 == sha256);
    if before.as_ref().is_some_and(|sha256| !earlier(sha256)) {
        return Err(Refusal::PhotoNotOfStep);
    }
    if before.as_ref() == stand.before.as_ref().map(|kept| &kept.photo.sha256) {
        return Ok(None);
    }
    let (step, after, by) = (step.to_owned(), latest.photo.sha256.clone(), scene.by.to_owned());
    Ok(Some(EntryBody::PhotosPaired { step, before, after, by }))
}

/// Marks as they are kept, labels without blanks around them.
///
/// # Errors
/// Why they are not taken.
pub fn checked(marks: Vec<Mark>) -> Result<Vec<Mark>, Refusal> {
    let marks: Vec<Mark> = marks.into_iter().map(trimmed).collect();
    mark::check(&marks).map_err(|fault| match fault {
        MarkFault::TooMany => Refusal::MarksTooMany,
        MarkFault::Shape => Refusal::MarkRefused,
        MarkFault::Label => Refusal::MarkLabelRefused,
    })?;
    Ok(marks)
}

fn stand<'s>(scene: Scene<'s>, step: &str) -> Result<&'s StepStand, Refusal> {
    check_step(scene, step)?;
    scene.standing.steps.iter().find(|stand| stand.id == step).ok_or(Refusal::StepHidden)
}

fn photos(stand: &StepStand) -> impl Iterator<Item = &PhotoStand> {
    stand.earlier.iter().chain(&stand.photo)
}

fn trimmed(mark: Mark) -> Mark {
    match mark {
        Mark::Label { at, text } => Mark::Label { at, text: text.trim().to_owned() },
        other => other,
    }
}
