//! What was seen or felt by hand, what was made milder, and what an earlier visit left open: facts that come before
//! any probability.

use crate::model::milder::MilderStand;
use crate::model::rating::Word;
use crate::model::standing::{Standing, StepStand};
use crate::model::still_open::StillOpen;
use crate::words::Words;

use super::said::{self, Reader};

/// The steps at which hands or eyes found something, weightiest first.
pub fn by_hand(standing: &Standing) -> Vec<&StepStand> {
    let step = |id: &String| standing.steps.iter().find(|step| &step.id == id);
    standing.found.iter().filter_map(step).collect()
}

/// "Found: ..."; none where hands and eyes found nothing.
pub fn sentence(standing: &Standing, words: &Words) -> Option<String> {
    let said = |step: &&StepStand| {
        let given = step.answered.as_ref()?;
        Some(said::answer_at(words, standing, &step.id, &given.value))
    };
    let found: Vec<String> = by_hand(standing).iter().filter_map(said).collect();
    (!found.is_empty()).then(|| words.with("finding-sum-found", &[("findings", words.list(&found).into())]))
}

/// Every DANGER answer that was made milder, with its reason, as many as are told.
pub fn made_milder(standing: &Standing, words: &Words) -> Vec<String> {
    standing.milder.iter().map(|made| milder(standing, words, made)).collect()
}

fn milder(standing: &Standing, words: &Words, made: &MilderStand) -> String {
    let id = if made.now.is_some() { "made-milder" } else { "made-milder-withdrawn" };
    let now = made.now.as_ref().map(|now| said::answer(words, &made.step, now)).unwrap_or_default();
    let args = [
        ("step", said::step(words, standing, &made.step).into()),
        ("was", said::answer(words, &made.step, &made.was).into()),
        ("now", now.into()),
        ("by", made.by.as_str().into()),
        ("at", words.time(made.at).into()),
        ("reason", made.reason.as_str().into()),
    ];
    let mut said = words.with(id, &args);
    if made.stands_again(standing) {
        said.push(' ');
        said.push_str(&words.text("made-milder-again"));
    }
    said
}

/// What an earlier visit of the car left open; none where nothing is known to be.
pub fn still_open(standing: &Standing, words: &Words, reader: Reader) -> Option<String> {
    let open = standing.still_open.as_ref()?;
    let label = words.text(&format!("word-{}", open.word.id()));
    let args = [("label", label.into()), ("day", words.date(open.opened_at).into())];
    if reader == Reader::Owner {
        return Some(words.with(owner_id(open), &args));
    }
    let mut sentences = vec![words.with("still-open-before", &args)];
    let layout = open.layout.iter().map(|id| {
        let layout = words.find(&format!("layout-{id}")).unwrap_or_else(|| id.clone());
        words.with("still-open-layout", &[("layout", layout.into())])
    });
    sentences.extend(layout);
    let corrected = open.corrected_to.as_deref();
    sentences.extend(corrected.map(|car| words.with("still-open-corrected", &[("car", car.into())])));
    sentences.extend(open.unread.then(|| words.text("still-open-unread")));
    Some(sentences.join(" "))
}

fn owner_id(open: &StillOpen) -> &'static str {
    if open.word == Word::Danger { "note-still-open-danger" } else { "note-still-open-warning" }
}
