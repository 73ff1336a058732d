//! Why an answer is milder now: when that has to be said, and when it is written down.

use std::collections::BTreeMap;

use crate::model::entry::EntryBody;
use crate::model::limits;
use crate::model::rating::Word;

use super::decide::Scene;
use super::derive::{grave_steps, step_words_with};
use super::fault::Refusal;

/// A reason as it is written down; none where only blanks were given.
///
/// # Errors
/// [`Refusal::ReasonTooLong`].
pub fn given(reason: Option<String>) -> Result<Option<String>, Refusal> {
    let reason = reason.map(|reason| reason.trim().to_owned()).filter(|reason| !reason.is_empty());
    if reason.as_ref().is_some_and(|reason| !fits(reason)) {
        return Err(Refusal::ReasonTooLong);
    }
    Ok(reason)
}

/// Whether a reason is one that papers can show.
pub fn fits(reason: &str) -> bool {
    reason.chars().count() <= limits::REASON && limits::is_printable(reason, true)
}

/// Refuses to go without a reason where one is needed.
///
/// # Errors
/// [`Refusal::ReasonNeeded`], or [`Refusal::ReasonTooShort`] where it says nothing in a few words.
pub fn needed(reason: Option<&str>, is_needed: bool) -> Result<(), Refusal> {
    let says_why =
        |reason: &str| reason.chars().filter(|sign| sign.is_alphanumeric()).count() >= limits::REASON_LETTERS;
    match reason {
        Some(reason) if is_needed && !says_why(reason) => Err(Refusal::ReasonTooShort),
        None if is_needed => Err(Refusal::ReasonNeeded),
        _ => Ok(()),
    }
}

/// Whether an entry would make any step milder that asks for DANGER or WARNING, with gauges counted in.
pub fn makes_milder(scene: Scene<'_>, body: EntryBody) -> bool {
    milder_of(scene, grave_steps(scene.trade, scene.entries, scene.record), body)
}

/// Whether it would make this one milder.
pub fn makes_milder_at(scene: Scene<'_>, step: &str, body: EntryBody) -> bool {
    let stand = scene.standing.steps.iter().find(|stand| stand.id == step);
    // Most steps are not grave, and what they would be then need not be asked.
    if stand.is_none_or(|stand| stand.word < Some(Word::Warning)) {
        return false;
    }
    let mut grave = grave_steps(scene.trade, scene.entries, scene.record);
    grave.retain(|other, _| other == step);
    milder_of(scene, grave, body)
}

fn milder_of(scene: Scene<'_>, grave: BTreeMap<String, Word>, body: EntryBody) -> bool {
    if grave.is_empty() {
        return false;
    }
    let then = step_words_with(scene.trade, (scene.entries, scene.device), body);
    grave.iter().any(|(step, word)| then.get(step) < Some(word))
}

/// Whether an answer is another than the grave one that stands: a gauge may hold the rating, and a hand take its word back.
pub fn is_changed(scene: Scene<'_>, step: &str, body: &EntryBody) -> bool {
    let EntryBody::Answered { value, .. } = body else { return false };
    let stand = scene.standing.steps.iter().find(|stand| stand.id == step);
    let stands = stand.and_then(|stand| stand.answered.as_ref());
    stands.is_some_and(|answered| answered.milder_needs_reason && answered.value != *value)
}
