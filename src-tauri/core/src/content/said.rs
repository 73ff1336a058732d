//! Ids in words: a step, an answer, a cause, and the reason behind a rating. Shared by both papers.

use crate::model::answer::AnswerValue;
use crate::model::rating::{Reason, Word};
use crate::model::standing::Standing;
use crate::words::Words;

use super::open_points::{Listening, listening};

/// The rule whose sentence depends on whether anything was listened for.
const NO_ACTION: &str = "no-bearing-action";
/// The rule that names a cause.
const CAUSE_LIKELY: &str = "cause-likely";
/// The cause that can ruin the catalyst if the car is driven on.
const MISFIRE: &str = "misfire";

/// Who reads a sentence.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Reader {
    /// Technician and service writer.
    Trade,
    /// The owner.
    Owner,
}

/// A step's title.
pub fn step(words: &Words, id: &str) -> String {
    words.text(&format!("step-{id}"))
}

/// The titles of several steps, in a row.
pub fn steps<S: AsRef<str>>(words: &Words, ids: &[S]) -> String {
    let titles: Vec<String> = ids.iter().map(|id| step(words, id.as_ref())).collect();
    words.list(&titles)
}

/// An answer in the step's own wording.
pub fn answer(words: &Words, at: &str, value: &AnswerValue) -> String {
    if let Some(reading) = value.reading() {
        return words.with("reading-rpm", &[("value", words.number(reading).into())]);
    }
    let choices: Vec<String> = value.choices().into_iter().map(|id| choice(words, at, id)).collect();
    words.list(&choices)
}

/// "Step: answer".
pub fn answer_at(words: &Words, at: &str, value: &AnswerValue) -> String {
    words.with(
        "answer-at-step",
        &[("step", step(words, at).into()), ("answer", answer(words, at, value).into())],
    )
}

/// A cause's name: a workshop's own cause is named in its own file.
pub fn cause(words: &Words, standing: &Standing, id: &str) -> String {
    let own = standing.sorting.causes.iter().find(|cause| cause.id == id);
    let own = own.and_then(|cause| cause.own_name.clone());
    own.or_else(|| words.find(&format!("cause-{id}"))).unwrap_or_else(|| id.to_owned())
}

/// Id of the urgency in texts: the word's, or `unrated`.
pub fn urgency_id(word: Option<Word>) -> &'static str {
    word.map_or("unrated", Word::id)
}

/// The sentence of a rule that fired.
pub fn reason_text(words: &Words, standing: &Standing, reason: &Reason, reader: Reader) -> String {
    let id = rule_text(standing, reason);
    let named = reason.cause.as_deref();
    let args = [
        ("cause", named.map(|id| cause(words, standing, id)).unwrap_or_default().into()),
        ("about", named.and_then(|id| words.find(&format!("cause-{id}-about"))).unwrap_or_default().into()),
    ];
    match reader {
        Reader::Trade => words.with(&format!("rule-{id}"), &args),
        Reader::Owner => words.with(&format!("rule-{id}-owner"), &args),
    }
}

/// What could happen if the strongest reason is left alone; without a rating, that it cannot be said.
pub fn could_happen(words: &Words, standing: &Standing) -> String {
    let urgency = &standing.urgency;
    match urgency.reasons.first().filter(|_| urgency.word.is_some()) {
        None => words.text("note-could-unrated"),
        Some(reason) if names_misfire(reason) => words.text("note-could-cause-likely-misfire"),
        Some(reason) => words.text(&format!("note-could-{}", reason.rule)),
    }
}

fn rule_text(standing: &Standing, reason: &Reason) -> String {
    if names_misfire(reason) {
        return format!("{CAUSE_LIKELY}-{MISFIRE}");
    }
    match listening(standing) {
        Listening::Silent if reason.rule == NO_ACTION => format!("{NO_ACTION}-not-reproduced"),
        Listening::NotDone if reason.rule == NO_ACTION => format!("{NO_ACTION}-not-listened"),
        _ => reason.rule.clone(),
    }
}

fn names_misfire(reason: &Reason) -> bool {
    reason.rule == CAUSE_LIKELY && reason.cause.as_deref() == Some(MISFIRE)
}

fn choice(words: &Words, at: &str, id: &str) -> String {
    words.find(&format!("answer-{at}-{id}")).unwrap_or_else(|| words.text(&format!("answer-{id}")))
}
