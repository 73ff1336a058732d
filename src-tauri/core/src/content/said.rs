//! Ids in words: a step, an answer, a cause, and the reason behind a rating. Shared by both papers.

use std::collections::BTreeSet;

use crate::model::answer::AnswerValue;
use crate::model::ids::{self, answer};
use crate::model::occasion::Occasion;
use crate::model::rating::{Reason, Word};
use crate::model::rules::{self, Tells};
use crate::model::standing::{Standing, StepStand, Support};
use crate::words::Words;

use super::open_points::{Listening, complains, listening};

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

/// A step's title, with its support where the shaft has several.
pub fn title(words: &Words, step: &StepStand) -> String {
    titled(words, &step.id, Some(step))
}

/// The title of a step by its id.
pub fn step(words: &Words, standing: &Standing, id: &str) -> String {
    titled(words, id, standing.steps.iter().find(|step| step.id == id))
}

fn titled(words: &Words, id: &str, step: Option<&StepStand>) -> String {
    let ends = if step.is_some_and(|step| step.both_ends) { "-ends" } else { "" };
    let title = words.text(&format!("step-{}{ends}", ids::base(id)));
    let support = step.and_then(|step| step.at_support);
    // A step that this car has not got, an earlier device's perhaps, names its support by its id alone.
    let number = support.or_else(|| Some(ids::support_number(id)).filter(|number| *number > 1));
    match number {
        None => title,
        Some(number) => words.with("step-at-support", &[("step", title.into()), ("number", number.into())]),
    }
}

/// The titles of several steps, in a row.
pub fn steps<S: AsRef<str>>(words: &Words, standing: &Standing, ids: &[S]) -> String {
    let titles: Vec<String> = ids.iter().map(|id| step(words, standing, id.as_ref())).collect();
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
pub fn answer_at(words: &Words, standing: &Standing, at: &str, value: &AnswerValue) -> String {
    words.with(
        "answer-at-step",
        &[("step", step(words, standing, at).into()), ("answer", answer(words, at, value).into())],
    )
}

/// A cause's name: a workshop's own cause is named in its own file.
pub fn cause(words: &Words, standing: &Standing, id: &str) -> String {
    let own = standing.sorting.causes.iter().find(|cause| cause.id == id);
    let own = own.and_then(|cause| cause.own_name.clone());
    own.or_else(|| words.find(&format!("cause-{id}"))).unwrap_or_else(|| id.to_owned())
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

/// The sentence of a rule that fired.
pub fn reason_text(words: &Words, standing: &Standing, reason: &Reason, reader: Reader) -> String {
    let id = rule_text(standing, reason);
    let named = reason.cause.as_deref();
    let args = [
        ("cause", named.map(|id| cause(words, standing, id)).unwrap_or_default().into()),
        ("about", named.and_then(|id| words.find(&format!("cause-{id}-about"))).unwrap_or_default().into()),
    ];
    let end = if reader == Reader::Trade { "" } else { "-owner" };
    let mut sentences = vec![words.with(&worded(words, standing, reason, (&id, end)), &args)];
    sentences.extend(at_support(standing, reason).map(|at| words.text(&format!("{at}{end}"))));
    if reason.tells(Tells::NoAction) {
        sentences.extend(limits(words, standing, reader));
        sentences.extend(unlooked(words, standing, reader));
    }
    sentences.join(" ")
}

/// What a step of the support leaves open, on a car of this kind.
pub fn limit(words: &Words, standing: &Standing, step: &str, reader: Reader) -> String {
    let end = if reader == Reader::Trade { "" } else { "-owner" };
    let id = format!("limit-{}", ids::base(step));
    let own = words.find(&format!("{id}-{}{end}", standing.support.id()));
    own.unwrap_or_else(|| words.text(&format!("{id}{end}")))
}

/// What of the driveline nobody looked at, or not all over, in one sentence; none where everything was.
pub fn unlooked(words: &Words, standing: &Standing, reader: Reader) -> Option<String> {
    let end = if reader == Reader::Trade { "" } else { "-owner" };
    unlooked_in(words, standing, &format!("limit-unlooked{end}"), end)
}

/// That it is looked at before a car with nothing found is handed back.
pub fn left_out(words: &Words, standing: &Standing) -> Option<String> {
    let cleared = standing.urgency.word == Some(Word::Notice);
    unlooked_in(words, standing, "finding-next-unlooked", "").filter(|_| cleared)
}

fn unlooked_in(words: &Words, standing: &Standing, id: &str, end: &str) -> Option<String> {
    let steps = &standing.urgency.unlooked;
    let part = |step: &String| words.text(&format!("unlooked-{}{end}", ids::base(step)));
    let parts: Vec<String> = steps.iter().map(part).collect();
    (!steps.is_empty()).then(|| words.with(id, &[("parts", words.list(&parts).into())]))
}

/// The id of a reason's sentence: where one answer alone is behind it and has words of its own, those; else those of
/// the support, where it has any.
fn worded(words: &Words, standing: &Standing, reason: &Reason, (id, end): (&str, &str)) -> String {
    let known = |id: String| words.find(&id).is_some().then_some(id);
    let own = only_choice(standing, reason).and_then(|choice| known(format!("rule-{id}-{choice}{end}")));
    let support = || known(format!("rule-{id}-{}{end}", standing.support.id()));
    own.or_else(support).unwrap_or_else(|| format!("rule-{id}{end}"))
}

/// The one answer that the steps of a reason hold; none where there are several, or where a gauge spoke.
fn only_choice<'s>(standing: &'s Standing, reason: &Reason) -> Option<&'s str> {
    let here = standing.steps.iter().filter(|step| reason.steps.contains(&step.id));
    let given = here.map(|step| step.answered.as_ref().map(|given| given.value.choices()));
    let choices: Option<Vec<Vec<&str>>> = given.collect();
    let choices: BTreeSet<&str> = choices?.into_iter().flatten().collect();
    choices.first().copied().filter(|_| choices.len() == 1)
}

/// Which of several supports a reason is about, as the id of a text; none where it is about all of them, or where
/// there is one.
fn at_support(standing: &Standing, reason: &Reason) -> Option<String> {
    let at = |id: &String| standing.steps.iter().find(|step| &step.id == id).and_then(|step| step.at_support);
    let numbers: BTreeSet<u8> = reason.steps.iter().filter_map(at).collect();
    let only = numbers.first().filter(|_| numbers.len() == 1)?;
    Some(format!("reason-at-support-{only}"))
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

/// What a tube that is still closed leaves open; none where there is no such tube.
pub fn closed_tube(words: &Words, standing: &Standing, reader: Reader) -> Option<String> {
    let urgency = &standing.urgency;
    let closed = standing.support == Support::Tube && !urgency.complete && urgency.rules > 1;
    let end = if reader == Reader::Trade { "" } else { "-owner" };
    let id = match urgency.word {
        Some(_) => "limit-tube-closed",
        None if urgency.reasons.is_empty() => "limit-tube-nothing",
        None => return None,
    };
    closed.then(|| words.text(&format!("{id}{end}")))
}

/// What a rating without a finding is limited to, one sentence for each thing that was not looked at or judged by
/// feel.
fn limits(words: &Words, standing: &Standing, reader: Reader) -> Vec<String> {
    let end = if reader == Reader::Trade { "" } else { "-owner" };
    let mut sentences: Vec<String> = Vec::new();
    for step in &standing.urgency.limits {
        let sentence = limit(words, standing, step, reader);
        if !sentences.contains(&sentence) {
            sentences.push(sentence);
        }
    }
    let springy =
        |step: &StepStand| step.answered.as_ref().is_some_and(|answered| answered.value.has(answer::SPRINGY));
    if standing.steps.iter().any(springy) {
        sentences.push(words.text(&format!("limit-no-figure{end}")));
    }
    sentences
}

/// What could happen if the strongest reason is left alone; without a rating, that it cannot be said.
pub fn could_happen(words: &Words, standing: &Standing) -> String {
    let urgency = &standing.urgency;
    match urgency.reasons.first().filter(|_| urgency.word.is_some()) {
        None => words.text("note-could-unrated"),
        Some(reason) if names_misfire(reason) => words.text("note-could-cause-likely-misfire"),
        Some(reason) => {
            let id = format!("note-could-{}", reason.rule);
            words.text(&by_support(standing, words, &id))
        }
    }
}

/// The id of a reason's sentence.
fn rule_text(standing: &Standing, reason: &Reason) -> String {
    let rule = &reason.rule;
    if names_misfire(reason) {
        return format!("{rule}-{MISFIRE}");
    }
    if suspects(reason) {
        let closed = standing.support == Support::Tube && !standing.urgency.complete;
        return format!("{rule}-suspected{}", if closed { "-closed" } else { "" });
    }
    let at_far_end = [&rules::FAR_END_PLAY, &rules::FAR_END_UNSURE].iter().any(|facts| facts.id == rule);
    if at_far_end && standing.support == Support::Absent {
        return format!("{rule}-ends");
    }
    if !reason.tells(Tells::NoAction) {
        return rule.clone();
    }
    // The first rules asked for the turn by hand before they called anything good.
    let played = match standing.support {
        _ if standing.urgency.rules <= 1 => "",
        Support::Absent => "-ends",
        Support::Rigid | Support::Rubber | Support::Tube => "-play",
    };
    let listened = listening(standing);
    if standing.intake.occasion == Occasion::AfterRepair && listened != Listening::NotDone {
        return format!("{rule}-after-repair");
    }
    match listened {
        // Neither a noise nor a vibration was complained of: there is nothing to reproduce.
        _ if !complains(standing) => format!("{rule}{played}"),
        Listening::NotDriven if standing.urgency.rules > 1 => format!("{rule}{played}-not-driven"),
        Listening::Silent | Listening::NotDriven => format!("{rule}{played}-not-reproduced"),
        Listening::NotDone => format!("{rule}{played}-not-listened"),
        Listening::Heard => format!("{rule}{played}"),
    }
}

fn names_misfire(reason: &Reason) -> bool {
    reason.tells(Tells::Cause) && reason.cause.as_deref() == Some(MISFIRE)
}

/// The bearing is suspected, and no hand or eye found anything there.
fn suspects(reason: &Reason) -> bool {
    reason.tells(Tells::Suspicion) && reason.word < Word::Warning
}

fn choice(words: &Words, at: &str, id: &str) -> String {
    let at = ids::base(at);
    words.find(&format!("answer-{at}-{id}")).unwrap_or_else(|| words.text(&format!("answer-{id}")))
}
