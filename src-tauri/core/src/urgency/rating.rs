//! The visit's urgency and each step's own rating, from the rules' reasons.

use std::collections::BTreeMap;

use crate::model::answer::AnswerValue;
use crate::model::case::Case;
use crate::model::ids;
use crate::model::rating::{Reason, Urgency, Word};
use crate::model::rules::Tells;
use crate::model::standing::{Sorting, Support};

use super::rule::{Look, Rule};
use super::{RULES, first, second};

/// The visit's urgency.
pub fn rate(case: &Case, sorting: &Sorting) -> Urgency {
    let reasons = reasons(case, Some(sorting));
    let asked = |step: &&String| !(is_earlier(case) && is_look(step));
    // A look that saw a part only is open as one that saw nothing: the rest may hide the tear.
    let done = |step: &&String| if is_look(step) { case.says_all(step) } else { case.looked(step) };
    let missing: Vec<String> =
        case.hands_on.iter().filter(asked).filter(|step| !done(step)).cloned().collect();
    let word = if is_first(case) { first::word } else { word }(case, &reasons, &missing);
    let mut limits = not_saying_all(case, &case.limits);
    let unlooked: Vec<String> =
        case.driveline.iter().filter(|step| !case.says_all(step) || is_hidden(case, step)).cloned().collect();
    // By earlier rules a look only ever limited.
    let looks = case.hands_on.iter().filter(|step| is_look(step) && !case.says_all(step));
    limits.splice(0..0, looks.filter(|step| !missing.contains(step)).cloned());
    Urgency {
        word,
        do_not_drive: forbids(case, word, &missing),
        complete: missing.is_empty(),
        reasons,
        missing,
        in_part: word == Some(Word::Notice) && !(limits.is_empty() && unlooked.is_empty()),
        limits,
        unlooked,
        rules: case.rules.version,
    }
}

/// Whether a closed tube hides what is looked at: nobody sees the shaft in it, whatever was answered.
fn is_hidden(case: &Case, step: &str) -> bool {
    let closed = case.support == Support::Tube && !case.looked(ids::step::TUBE_OPEN_CHECK);
    closed && step == ids::step::SHAFT_LOOK && !is_earlier(case)
}

fn is_first(case: &Case) -> bool {
    case.rules.version <= 1
}

/// Whether it is rated by rules that knew no look among what decides.
fn is_earlier(case: &Case) -> bool {
    case.rules.version <= 2
}

/// Whether the car may not be driven; nothing while what decides is open and nothing forbids it: a CAUTION for
/// something else says nothing of the bearing. Earlier rules took every word for an answer.
fn forbids(case: &Case, word: Option<Word>, missing: &[String]) -> Option<bool> {
    let forbidden = word? >= undriven(case);
    (forbidden || missing.is_empty() || is_earlier(case)).then_some(forbidden)
}

/// From this word on the car is not to be driven. Earlier rules held that of DANGER alone.
fn undriven(case: &Case) -> Word {
    if case.rules.version <= 2 { Word::Danger } else { Word::Warning }
}

fn not_saying_all(case: &Case, steps: &[String]) -> Vec<String> {
    steps.iter().filter(|step| !case.says_all(step)).cloned().collect()
}

/// The rules of a version, strongest word first.
fn rules_of(version: u32) -> Vec<&'static Rule> {
    match version {
        0 | 1 => first::RULES.to_vec(),
        2 => second::rules(),
        _ => RULES.to_vec(),
    }
}

/// The strongest word, unless the hands-on check is open. DANGER stands whatever is missing, and so does a WARNING
/// for what a hand felt or left unsure or an eye saw: a check left out takes nothing back. A tube takes an hour to open: until then what was found from outside is rated,
/// and nothing found from outside rates nothing.
fn word(case: &Case, reasons: &[Reason], missing: &[String]) -> Option<Word> {
    let strongest = reasons.iter().map(|reason| reason.word).max();
    if strongest == Some(Word::Danger) || missing.is_empty() {
        return strongest;
    }
    let waits = |reason: &Reason| reason.tells(Tells::Unsure) && is_earlier(case);
    let certain = |reason: &Reason| !reason.tells(Tells::Suspicion) && !waits(reason);
    if reasons.iter().any(|reason| reason.word == Word::Warning && certain(reason)) {
        return strongest;
    }
    // Where hands decided and only the eyes are still open, what asks for CAUTION or more stands.
    let felt = missing.iter().all(|step| is_look(step));
    strongest.filter(|word| (felt || case.support == Support::Tube) && *word > Word::Notice)
}

/// Whether a hands-on step is a look, at a rubber support or at joints that decide: part of the check since the third
/// rules.
fn is_look(step: &str) -> bool {
    [ids::step::SUPPORT_LOOK, ids::step::COUPLING_LOOK].contains(&ids::base(step))
}

fn reasons(case: &Case, sorting: Option<&Sorting>) -> Vec<Reason> {
    let mut reasons: Vec<Reason> = Vec::new();
    for rule in rules_of(case.rules.version) {
        let covers = |reason: &&Reason| match is_earlier(case) {
            true => reason.word > rule.facts.word,
            false => reason.word >= rule.facts.word,
        };
        let covered: Vec<String> =
            reasons.iter().filter(covers).flat_map(|reason| reason.steps.clone()).collect();
        let stronger = reasons.iter().any(|reason| reason.word > rule.facts.word);
        reasons.extend(rule.reasons(&Look { case, sorting, covered: &covered, stronger }));
    }
    // A rule may ask for a milder word than its own; the strongest comes first all the same.
    reasons.sort_by_key(|reason| std::cmp::Reverse(reason.word));
    reasons
}

/// Each answered step's own rating, by the rules that look at answers. A step that was not looked at
/// has none; one that was, with nothing to say, is a NOTICE.
pub fn rate_steps(case: &Case) -> BTreeMap<String, Word> {
    let mut words: BTreeMap<String, Word> = case
        .answers
        .iter()
        .filter(|(_, answer)| answer.found || !answer.open && !answer.limited)
        .filter(|(_, answer)| !says_nothing(case, &answer.value))
        .map(|(step, _)| (step.clone(), Word::Notice))
        .collect();
    for reason in reasons(case, None) {
        for step in &reason.steps {
            if let Some(word) = words.get_mut(step) {
                *word = reason.word.max(*word);
            }
        }
    }
    words
}

/// A reading without the maker's range has nothing to be compared with: no comparison is no good sign.
fn says_nothing(case: &Case, value: &AnswerValue) -> bool {
    matches!(value, AnswerValue::Reading(_)) && case.idle_rpm.is_none()
}

/// The step whose finding forbids running the engine, if there is one.
pub fn danger_step(case: &Case) -> Option<String> {
    let danger = |reason: &Reason| reason.word == Word::Danger;
    reasons(case, None).into_iter().find(danger).and_then(|reason| reason.steps.into_iter().next())
}
