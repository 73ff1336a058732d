//! Why a car is rated as it is: the sentence of each rule that fired, by what was listened for, looked at and left
//! open. Chosen here once, for both papers and the screens.

use std::collections::BTreeSet;

use crate::model::gauge::GaugeDecision;
use crate::model::ids::{self, answer};
use crate::model::occasion::Occasion;
use crate::model::rating::{Reason, Word};
use crate::model::rules::{self, Tells};
use crate::model::sentence::{Arg, Sentence};
use crate::model::standing::{Standing, StepStand, Support};
use crate::words::Words;

use super::open_points::{Listening, complains, listening};
use super::said::{self, Reader};

/// The cause that can ruin the catalyst if the car is driven on.
const MISFIRE: &str = "misfire";

/// Gives every reason of a visit's rating its sentences, with the answers it rests on.
pub fn word_reasons(standing: &mut Standing) {
    let says: Vec<_> = standing.urgency.reasons.iter().map(|reason| with_answers(standing, reason)).collect();
    for (reason, says) in standing.urgency.reasons.iter_mut().zip(says) {
        reason.says = says;
    }
}

/// A reason for the trade, with the answers it rests on.
pub fn with_answers(standing: &Standing, reason: &Reason) -> Vec<Sentence> {
    let rests_on = standing.steps.iter().filter(|step| reason.steps.contains(&step.id));
    let answers: Vec<Sentence> = rests_on.filter_map(|step| answer_at(standing, step)).collect();
    let sentences = sentences(standing, reason, Reader::Trade);
    if answers.is_empty() {
        return sentences;
    }
    let rests_on = Sentence::of("reason-rests-on").with("reason", Arg::Sentences(sentences));
    vec![rests_on.with("answers", Arg::List(answers))]
}

/// The sentence of a rule that fired, in words.
pub fn reason_text(words: &Words, standing: &Standing, reason: &Reason, reader: Reader) -> String {
    words.say_all(&sentences(standing, reason, reader))
}

/// What could happen if the strongest reason is left alone; without a rating, that it cannot be said.
pub fn could_happen(words: &Words, standing: &Standing) -> String {
    let urgency = &standing.urgency;
    match urgency.reasons.first().filter(|_| urgency.word.is_some()) {
        None => words.text(&said::by_support(standing, words, "note-could-unrated")),
        Some(reason) if names_misfire(reason) => words.text("note-could-cause-likely-misfire"),
        Some(reason) => {
            let id = format!("note-could-{}", reason.rule);
            words.text(&said::by_support(standing, words, &id))
        }
    }
}

/// What a tube that is still closed leaves open; none where there is no such tube.
pub fn closed_tube(words: &Words, standing: &Standing, reader: Reader) -> Option<String> {
    let urgency = &standing.urgency;
    let closed = standing.support == Support::Tube && !urgency.complete && urgency.rules > 1;
    let id = match urgency.word {
        Some(_) => "limit-tube-closed",
        None if urgency.reasons.is_empty() => "limit-tube-nothing",
        None => return None,
    };
    closed.then(|| words.text(&format!("{id}{}", reader.end())))
}

/// What of the driveline nobody looked at, or not all over, in one sentence; none where everything was.
pub fn unlooked(words: &Words, standing: &Standing, reader: Reader) -> Option<String> {
    unlooked_sentence(standing, reader).map(|sentence| words.say(&sentence))
}

/// That it is looked at before a car with nothing found is handed back.
pub fn left_out(words: &Words, standing: &Standing) -> Option<String> {
    let cleared = standing.urgency.word == Some(Word::Notice);
    let parts = unlooked_parts(standing, Reader::Trade).filter(|_| cleared)?;
    Some(words.say(&Sentence::of("finding-next-unlooked").with("parts", parts)))
}

/// What a step of the support leaves open, on a car of this kind.
pub fn limit(words: &Words, standing: &Standing, step: &str, reader: Reader) -> String {
    words.say(&limit_sentence(standing, step, reader))
}

fn unlooked_sentence(standing: &Standing, reader: Reader) -> Option<Sentence> {
    let parts = unlooked_parts(standing, reader)?;
    Some(Sentence::of(format!("limit-unlooked{}", reader.end())).with("parts", parts))
}

fn unlooked_parts(standing: &Standing, reader: Reader) -> Option<Arg> {
    let steps = &standing.urgency.unlooked;
    let part = |step: &String| Sentence::of(format!("unlooked-{}{}", ids::base(step), reader.end()));
    (!steps.is_empty()).then(|| Arg::List(steps.iter().map(part).collect()))
}

fn limit_sentence(standing: &Standing, step: &str, reader: Reader) -> Sentence {
    let (id, end) = (format!("limit-{}", ids::base(step)), reader.end());
    Sentence::first_of([format!("{id}-{}{end}", standing.support.id()), format!("{id}{end}")])
}

/// The rule's own sentence, the support it is about, and what it is limited to.
fn sentences(standing: &Standing, reason: &Reason, reader: Reader) -> Vec<Sentence> {
    let end = reader.end();
    let mut rule = Sentence::first_of(worded(standing, reason, end));
    let named = reason.cause.as_deref();
    rule = rule.with("cause", named.map_or(nothing(), |id| said::cause_name(standing, id)));
    rule = rule.with("about", named.map_or(nothing(), |id| about(id).into()));
    let mut sentences = vec![rule];
    sentences.extend(at_support(standing, reason).map(|at| Sentence::of(format!("{at}{end}"))));
    if reason.tells(Tells::NoAction) {
        sentences.extend(limits(standing, reader));
        sentences.extend(unlooked_sentence(standing, reader));
    }
    sentences
}

/// The ids of a reason's sentence, the first that there is: where one answer alone is behind it, that answer's own
/// words; then those of the support; then those of the rule.
fn worded(standing: &Standing, reason: &Reason, end: &str) -> Vec<String> {
    let id = rule_text(standing, reason);
    let choice = only_choice(standing, reason).map(|choice| format!("rule-{id}-{choice}{end}"));
    let support = format!("rule-{id}-{}{end}", standing.support.id());
    choice.into_iter().chain([support, format!("rule-{id}{end}")]).collect()
}

/// The one answer that the steps of a reason hold; none where there are several, or where a gauge spoke.
fn only_choice<'s>(standing: &'s Standing, reason: &Reason) -> Option<&'s str> {
    let here = standing.steps.iter().filter(|step| reason.steps.contains(&step.id));
    let given = here.map(|step| step.answered.as_ref().map(|given| given.value.choices()));
    let choices: Option<Vec<Vec<&str>>> = given.collect();
    let choices: BTreeSet<&str> = choices?.into_iter().flatten().collect();
    choices.first().copied().filter(|_| choices.len() == 1)
}

fn nothing() -> Arg {
    Arg::Verbatim(String::new())
}

/// What a cause is, where it is one of ours.
fn about(cause: &str) -> Sentence {
    Sentence::of(format!("cause-{cause}-about")).or("")
}

/// "Step: answer", and that a gauge proves it.
fn answer_at(standing: &Standing, step: &StepStand) -> Option<Sentence> {
    let given = step.answered.as_ref();
    let given = given.map(|given| said::answer_sentence(standing, &step.id, &given.value));
    if !is_proven(standing, step) {
        return given;
    }
    // A gauge can prove it where no hand answered.
    let answer = given.unwrap_or_else(|| Sentence::of("answer-missing"));
    Some(Sentence::of("answer-and-gauge").with("answer", answer))
}

/// Whether a gauge proved movement there, whatever the hand answered.
fn is_proven(standing: &Standing, step: &StepStand) -> bool {
    let decision = GaugeDecision::Proven;
    standing.gauges.iter().any(|gauge| gauge.step == step.id && gauge.result.decision == decision)
}

/// Which of several supports a reason is about, as the id of a text; none where it is about all of them, or where
/// there is one.
fn at_support(standing: &Standing, reason: &Reason) -> Option<String> {
    let at = |id: &String| standing.steps.iter().find(|step| &step.id == id).and_then(|step| step.at_support);
    let numbers: BTreeSet<u8> = reason.steps.iter().filter_map(at).collect();
    let only = numbers.first().filter(|_| numbers.len() == 1)?;
    Some(format!("reason-at-support-{only}"))
}

/// What a rating without a finding is limited to, one sentence for each thing that was not looked at or judged by
/// feel.
fn limits(standing: &Standing, reader: Reader) -> Vec<Sentence> {
    let mut sentences: Vec<Sentence> = Vec::new();
    for step in &standing.urgency.limits {
        let sentence = limit_sentence(standing, step, reader);
        if !sentences.contains(&sentence) {
            sentences.push(sentence);
        }
    }
    let springy =
        |step: &StepStand| step.answered.as_ref().is_some_and(|answered| answered.value.has(answer::SPRINGY));
    if standing.steps.iter().any(springy) {
        sentences.push(Sentence::of(format!("limit-no-figure{}", reader.end())));
    }
    sentences
}

/// The id of a rule's sentence, by what was listened for, without its reader and support.
fn rule_text(standing: &Standing, reason: &Reason) -> String {
    let variant = variant(standing, reason);
    if variant.is_empty() {
        return reason.rule.clone();
    }
    let known = |facts: &rules::Facts| facts.tells.variants().contains(&variant.as_str());
    debug_assert!(reason.facts().is_some_and(known), "{} {variant} is asked of no language", reason.rule);
    format!("{}-{variant}", reason.rule)
}

/// One of [`Tells::variants`]; empty where the rule's own sentence says it.
fn variant(standing: &Standing, reason: &Reason) -> String {
    if names_misfire(reason) {
        return MISFIRE.to_owned();
    }
    if suspects(reason) {
        let closed = standing.support == Support::Tube && !standing.urgency.complete;
        return if closed { "suspected-closed" } else { "suspected" }.to_owned();
    }
    if reason.tells(Tells::FarEnd) && standing.support == Support::Absent {
        return "ends".to_owned();
    }
    let repaired = standing.intake.occasion != Occasion::Complaint;
    if reason.tells(Tells::Cold) && repaired && standing.intake.complaint_sounds.is_empty() {
        return "repaired".to_owned();
    }
    if !reason.tells(Tells::NoAction) {
        return String::new();
    }
    if standing.intake.occasion == Occasion::AfterRepair {
        return "after-repair".to_owned();
    }
    // The first rules asked for the turn by hand before they called anything good.
    let played = match standing.support {
        _ if standing.urgency.rules <= 1 => "",
        Support::Absent => "ends",
        Support::Rigid | Support::Rubber | Support::Tube => "play",
    };
    let listened = match listening(standing) {
        // Neither a noise nor a vibration was complained of: there is nothing to reproduce.
        _ if !complains(standing) => "",
        Listening::NotDriven if standing.urgency.rules > 1 => "not-driven",
        Listening::Silent | Listening::NotDriven => "not-reproduced",
        Listening::NotDone => "not-listened",
        Listening::Heard => "",
    };
    let parts: Vec<&str> = [played, listened].into_iter().filter(|part| !part.is_empty()).collect();
    parts.join("-")
}

fn names_misfire(reason: &Reason) -> bool {
    reason.tells(Tells::Cause) && reason.cause.as_deref() == Some(MISFIRE)
}

/// The bearing is suspected, and no hand or eye found anything there.
fn suspects(reason: &Reason) -> bool {
    reason.tells(Tells::Suspicion) && reason.word < Word::Warning
}
