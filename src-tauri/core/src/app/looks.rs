//! Several looks said to be sound at once: an answer for each, as if each had been given by itself.

use crate::model::answer::{AnswerValue, Circumstances};
use crate::model::entry::EntryBody;

use super::decide::{self, GivenAnswer, Scene};
use super::fault::Refusal;

/// An answer for each look that was listed on the screen. The list has to be the one that is open now: nobody says of a
/// part that it is sound without having read its name, nor of one that another layout has by the same name.
///
/// # Errors
/// [`Refusal::LooksChanged`] where another list is open; else why one of them cannot be answered.
pub fn all_sound(scene: Scene<'_>, layout: &str, listed: &[String]) -> Result<Vec<EntryBody>, Refusal> {
    for step in listed {
        decide::check_unlocked(scene, step)?;
    }
    let same_car = layout == scene.record.intake.vehicle.layout;
    if listed.is_empty() || !same_car || listed != scene.standing.looks.open {
        return Err(Refusal::LooksChanged);
    }
    listed.iter().map(|step| sound(scene, step)).collect()
}

fn sound(scene: Scene<'_>, step: &str) -> Result<EntryBody, Refusal> {
    let row = scene.trade.steps.iter().find(|row| row.id == step && row.sound_together);
    let sound = row.and_then(|row| row.sound()).ok_or(Refusal::LooksChanged)?;
    let value = AnswerValue::Any(vec![sound.to_owned()]);
    let given =
        GivenAnswer { step: step.to_owned(), value, circumstances: Circumstances::default(), reason: None };
    decide::answer(scene, given)
}
