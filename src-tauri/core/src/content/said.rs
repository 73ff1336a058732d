//! Ids in words: a step, an answer, a cause. Shared by every paper and by the screens.

use crate::model::answer::AnswerValue;
use crate::model::ids;
use crate::model::rating::Word;
use crate::model::sentence::{Arg, Sentence};
use crate::model::standing::{Standing, StepStand};
use crate::words::Words;

/// Who reads a sentence.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Reader {
    /// Technician and service writer.
    Trade,
    /// Whoever the car belongs to: no trade words, eight years of school.
    Owner,
}

impl Reader {
    /// What the id of a text for this reader ends in.
    pub fn end(self) -> &'static str {
        match self {
            Self::Trade => "",
            Self::Owner => "-owner",
        }
    }
}

/// A step's title, with its support where the shaft has several.
pub fn title(words: &Words, step: &StepStand) -> String {
    words.say(&titled(&step.id, Some(step)))
}

/// The title of a step by its id.
pub fn step(words: &Words, standing: &Standing, id: &str) -> String {
    words.say(&step_title(standing, id))
}

/// The titles of several steps, in a row.
pub fn steps<S: AsRef<str>>(words: &Words, standing: &Standing, ids: &[S]) -> String {
    let titles: Vec<String> = ids.iter().map(|id| step(words, standing, id.as_ref())).collect();
    words.list(&titles)
}

/// An answer in the step's own wording.
pub fn answer(words: &Words, at: &str, value: &AnswerValue) -> String {
    words.arg(&answered(at, value))
}

/// "Step: answer".
pub fn answer_at(words: &Words, standing: &Standing, at: &str, value: &AnswerValue) -> String {
    words.say(&answer_sentence(standing, at, value))
}

/// "Step: answer", in no language yet.
pub fn answer_sentence(standing: &Standing, at: &str, value: &AnswerValue) -> Sentence {
    Sentence::of("answer-at-step").with("step", step_title(standing, at)).with("answer", answered(at, value))
}

/// A cause's name.
pub fn cause(words: &Words, standing: &Standing, id: &str) -> String {
    words.arg(&cause_name(standing, id))
}

/// A cause's name, in no language yet: a workshop's own cause is named in its own file.
pub fn cause_name(standing: &Standing, id: &str) -> Arg {
    let own = standing.sorting.causes.iter().find(|cause| cause.id == id);
    match own.and_then(|cause| cause.own_name.clone()) {
        Some(name) => Arg::Verbatim(name),
        None => Sentence::of(format!("cause-{id}")).or(id).into(),
    }
}

/// A text that may have another wording at supports of this kind: `ID-rubber`.
pub fn by_support(standing: &Standing, words: &Words, id: &str) -> String {
    let own = format!("{id}-{}", standing.support.id());
    if words.find(&own).is_some() { own } else { id.to_owned() }
}

/// Id of the urgency in texts: the word's, or `unrated`.
pub fn urgency_id(word: Option<Word>) -> &'static str {
    word.map_or("unrated", Word::id)
}

/// The end of the text ids that tell the owner what to do now: what an earlier visit forbids comes before what this one
/// allows, and a check that decides before either.
pub fn owner_now(standing: &Standing) -> String {
    let urgency = &standing.urgency;
    let open = standing.still_open.as_ref().filter(|_| urgency.do_not_drive != Some(true));
    match (open, urgency.do_not_drive) {
        (Some(open), _) => format!("still-open-{}", open.word.id()),
        (None, None) => "unrated".to_owned(),
        (None, Some(_)) => standing.asks.clone(),
    }
}

fn step_title(standing: &Standing, id: &str) -> Sentence {
    titled(id, standing.steps.iter().find(|step| step.id == id))
}

fn titled(id: &str, step: Option<&StepStand>) -> Sentence {
    let ends = if step.is_some_and(|step| step.both_ends) { "-ends" } else { "" };
    let title = Sentence::of(format!("step-{}{ends}", ids::base(id)));
    let support = step.and_then(|step| step.at_support);
    // A step that this car has not got, an earlier device's perhaps, names its support by its id alone.
    let number = support.or_else(|| Some(ids::support_number(id)).filter(|number| *number > 1));
    match number {
        None => title,
        Some(number) => Sentence::of("step-at-support").with("step", title).with("number", u32::from(number)),
    }
}

fn answered(at: &str, value: &AnswerValue) -> Arg {
    if let Some(rpm) = value.reading() {
        return Sentence::of("reading-rpm").with("value", Arg::Number(rpm, 3)).into();
    }
    Arg::List(value.choices().into_iter().map(|id| choice(at, id)).collect())
}

fn choice(at: &str, id: &str) -> Sentence {
    Sentence::first_of([format!("answer-{}-{id}", ids::base(at)), format!("answer-{id}")])
}
