//! What stays open in a visit: checks not done, answers left unsure, a noise that never showed.
//!
//! It finds the points; the two papers word them, each for its reader.

use crate::model::device::{DeviceStand, Trust};
use crate::model::ids::{self, answer, step};
use crate::model::rules::Tells;
use crate::model::standing::{Standing, StepStand, Support};

/// Answers that mean nobody looked.
pub const OPEN_ANSWERS: [&str; 6] =
    [answer::NOT_DONE, answer::NOT_SEEN, "not-tried", "not-read", "unknown", "not-driven"];
/// Whether the noise showed.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Listening {
    /// Something was heard or felt with the engine running.
    Heard,
    /// Listened for, and nothing heard.
    Silent,
    /// Something on the road is complained of, the road was not driven, and nothing was heard elsewhere.
    NotDriven,
    /// No running check says anything.
    NotDone,
}

/// One thing that is not known.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum OpenPoint<'a> {
    /// A hands-on step without a result.
    HandsOn(&'a str),
    /// Another step of the support that says nothing.
    Limit(&'a str),
    /// A step done and left unsure, which no gauge made conclusive.
    Unsure(&'a str),
    /// A step at which two devices disagree.
    Disputed(&'a str),
    /// Parts of the driveline beyond the support that nobody looked at, or not all over.
    Unlooked,
    /// Other steps without a result.
    Others(Vec<&'a str>),
    /// Movement was judged by the maker's figure, and no figure is recorded.
    FigureMissing,
    /// A buzz, and movement felt for only with the housing cold.
    ColdCheck,
    /// Listened for, and nothing heard.
    NotReproduced,
    /// Complained of on the road, which was not driven.
    NotDriven,
    NotListened,
    /// The chain of entries does not fit from here on.
    LedgerBroken(u64),
    /// So many entries came from devices that nobody has confirmed.
    DeviceNotConfirmed(u64),
    /// So many entries were written before there were signatures.
    BeforeSignatures(u64),
}

/// Whether the noise showed while the engine ran.
pub fn listening(standing: &Standing) -> Listening {
    let stopped = said(standing, step::RUNNING_STOP).is_some_and(|choices| !choices.contains(&answer::NONE));
    let heard: Vec<&str> = step::LISTENING
        .iter()
        .filter_map(|id| said(standing, id))
        .flatten()
        .filter(|id| !is_open(id))
        .collect();
    if stopped || heard.iter().any(|id| *id != answer::NONE) {
        Listening::Heard
    } else if on_the_road(standing) && !driven(standing) {
        Listening::NotDriven
    } else if heard.is_empty() {
        Listening::NotDone
    } else {
        Listening::Silent
    }
}

/// Whether anything is complained of that could be heard or felt again.
pub fn complains(standing: &Standing) -> bool {
    let intake = &standing.intake;
    let told = [&intake.complaint, &intake.when].iter().any(|text| !text.trim().is_empty());
    told || !intake.complaint_sounds.is_empty() || on_the_road(standing)
}

/// Whether something on the road is complained of, whatever else is: a vibration, or anything that is noticed at a speed.
fn on_the_road(standing: &Standing) -> bool {
    let told =
        said(standing, step::ROAD_SPEED_VIBRATION).is_some_and(|said| said.contains(&"grows-with-speed"));
    let at_speed = standing.intake.conditions.speed.is_some_and(|speed| speed.value > 0);
    let mut sounds = standing.sounds.iter().chain(&standing.intake.complaint_sounds);
    told || at_speed || sounds.any(|sound| sound == "vibration")
}

/// Whether any part of the road test was done.
fn driven(standing: &Standing) -> bool {
    let done = |step: &StepStand| step.set.as_deref() == Some("road") && !without_result(step);
    standing.steps.iter().any(done)
}

/// Everything that is not known, weightiest first.
pub fn open_points(standing: &Standing) -> Vec<OpenPoint<'_>> {
    // Seen in part, a place was looked at, though not all over.
    let in_part = |id: &str| standing.steps.iter().any(|step| step.id == id && !without_result(step));
    let missing = |id| if in_part(id) { OpenPoint::Limit(id) } else { OpenPoint::HandsOn(id) };
    let mut points: Vec<OpenPoint<'_>> = hands_on_missing(standing).into_iter().map(missing).collect();
    // A closed tube was not felt for play either: that the turn is open says too much.
    let closed = standing.support == Support::Tube && !standing.urgency.complete;
    let found = |step: &&String| standing.found.contains(step);
    let turn = |step: &&String| ids::base(step) == step::TURN_BY_HAND && (closed || found(step));
    let limits = standing.urgency.limits.iter().filter(|step| !turn(step));
    points.extend(limits.map(|step| OpenPoint::Limit(step)));
    points.extend(
        which(standing, |step| has(step, answer::UNSURE) && !step.is_conclusive()).map(OpenPoint::Unsure),
    );
    points.extend(
        which(standing, |step| step.answered.as_ref().is_some_and(|it| it.disputed)).map(OpenPoint::Disputed),
    );
    if figure_missing(standing) {
        points.push(OpenPoint::FigureMissing);
    }
    if cold_check(standing) {
        points.push(OpenPoint::ColdCheck);
    }
    let urgency = &standing.urgency;
    if !urgency.unlooked.is_empty() {
        points.push(OpenPoint::Unlooked);
    }
    let named = |id: &&str| {
        urgency.missing.iter().chain(&urgency.limits).chain(&urgency.unlooked).any(|step| step == id)
    };
    let others: Vec<&str> =
        which(standing, |step| step.counts() && without_result(step)).filter(|id| !named(id)).collect();
    if !others.is_empty() {
        points.push(OpenPoint::Others(others));
    }
    match listening(standing) {
        Listening::Heard => {}
        _ if !complains(standing) => {}
        Listening::Silent => points.push(OpenPoint::NotReproduced),
        Listening::NotDriven => points.push(OpenPoint::NotDriven),
        Listening::NotDone => points.push(OpenPoint::NotListened),
    }
    points.extend(standing.ledger.broken_at.map(OpenPoint::LedgerBroken));
    let unconfirmed = standing.entries_by(DeviceStand::is_doubtful);
    let some = |entries: u64| (entries > 0).then_some(entries);
    points.extend(some(unconfirmed).map(OpenPoint::DeviceNotConfirmed));
    let unsigned = standing.entries_by(|device| device.trust == Trust::BeforeSignatures);
    points.extend(some(unsigned).map(OpenPoint::BeforeSignatures));
    points
}

/// The hands-on steps without a result.
pub fn hands_on_missing(standing: &Standing) -> Vec<&str> {
    standing.urgency.missing.iter().map(String::as_str).collect()
}

/// Whether an answer speaks of the maker's figure, though none was written down at intake.
fn figure_missing(standing: &Standing) -> bool {
    let by_figure = |step: &StepStand| has(step, answer::WITHIN_FIGURE) || has(step, answer::BEYOND_FIGURE);
    standing.intake.vehicle.maker_play_mm.is_none() && standing.steps.iter().any(by_figure)
}

/// Whether something stands against a check that was only done cold.
fn cold_check(standing: &Standing) -> bool {
    standing.urgency.reasons.iter().any(|reason| reason.tells(Tells::Cold))
}

/// Whether nobody answered the step, or answered that nobody looked.
pub fn without_result(step: &StepStand) -> bool {
    step.answered.as_ref().is_none_or(|it| {
        let choices = it.value.choices();
        !choices.is_empty() && choices.into_iter().all(is_open)
    })
}

fn is_open(choice: &str) -> bool {
    OPEN_ANSWERS.contains(&choice)
}

fn has(step: &StepStand, choice: &str) -> bool {
    step.answered.as_ref().is_some_and(|it| it.value.has(choice))
}

fn said<'a>(standing: &'a Standing, id: &str) -> Option<Vec<&'a str>> {
    let step = standing.steps.iter().find(|step| step.id == id)?;
    step.answered.as_ref().map(|it| it.value.choices())
}

fn which(standing: &Standing, wanted: impl Fn(&StepStand) -> bool) -> impl Iterator<Item = &str> {
    standing.steps.iter().filter(move |step| wanted(step)).map(|step| step.id.as_str())
}
