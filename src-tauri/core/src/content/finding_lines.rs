//! The finding's tables: vehicle, complaint, reasons, steps, causes and the foot.

use std::collections::BTreeSet;

use crate::model::answer::{EngineWarmth, Temperature, Warmth};
use crate::model::device::{DeviceStand, WriterStand};
use crate::model::ids::{self, answer};
use crate::model::milder::MilderStand;
use crate::model::occasion::{Conditions, Occasion};
use crate::model::rating::Reason;
use crate::model::standing::{
    Answered, CLEAR_DECIBANS, CauseStand, PhotoStand, Standing, StepStand, TurnsWith, Weight,
};
use crate::model::time::Moment;
use crate::model::visit::{Gearbox, Seat, Vehicle};
use crate::words::Words;

use super::finding::{FURTHER, ReasonLine, StepLine};
use super::open_points::without_result;
use super::parts::{answer_of, field, pair, photo, photo_line};
use super::reasons;
use super::said;
use super::shared::{CauseLine, Field, PhotoLine};

/// Weight from which an answer counts as strong evidence: it turns the odds tenfold.
const STRONG_DECIBANS: f64 = 10.0;

/// Vehicle and visit.
pub fn vehicle(standing: &Standing, words: &Words) -> Vec<Field> {
    let intake = &standing.intake;
    let car = &intake.vehicle;
    let shipped = || words.find(&format!("layout-{}", car.layout));
    let layout = standing.layout_name.clone().or_else(shipped).unwrap_or_else(|| car.layout.clone());
    let fields = [
        field(words, "label", car.label.as_str()),
        field(words, "plate", car.plate.as_str()),
        field(words, "vin", car.vin.as_str()),
        field(words, "layout", layout),
        field(words, "seat", car.seat.map(|seat| words.text(seat_text(seat))).unwrap_or_default()),
        field(words, "gearbox", car.gearbox.map(|it| words.text(gearbox_text(it))).unwrap_or_default()),
        field(words, "cylinders", car.cylinders.map(|count| count.to_string()).unwrap_or_default()),
        field(words, "idle", idle_range(car, words)),
        field(words, "odometer", odometer(car, words)),
        field(words, "maker-play", maker_play(car, words)),
        field(words, "owner", intake.owner.name.as_str()),
        field(words, "contact", intake.owner.contact.as_str()),
        field(words, "opened", words.time(standing.opened_at)),
    ];
    fields.into_iter().flatten().collect()
}

/// The complaint, whole and in the owner's words.
pub fn complaint(standing: &Standing, words: &Words) -> Vec<Field> {
    let intake = &standing.intake;
    let sounds: Vec<String> =
        intake.complaint_sounds.iter().map(|id| words.text(&format!("sound-{id}"))).collect();
    let told = if intake.complaint.trim().is_empty() {
        words.text("field-complaint-none")
    } else {
        intake.complaint.clone()
    };
    let fields = [
        field(words, "complaint", told),
        field(words, "sounds", words.list(&sounds)),
        field(words, "when", intake.when.as_str()),
        field(words, "conditions", conditions(&intake.conditions, words)),
        field(words, "occasion", occasion(intake.occasion, words)),
    ];
    fields.into_iter().flatten().collect()
}

fn conditions(heard: &Conditions, words: &Words) -> String {
    let speed = heard.speed.map(|speed| {
        words.with(&format!("speed-{}", speed.unit.id()), &[("value", speed.value.to_string().into())])
    });
    let gear = Some(&heard.gear).filter(|gear| !gear.trim().is_empty());
    let gear = gear.map(|gear| words.with("conditions-gear-said", &[("gear", gear.as_str().into())]));
    let engine = heard.engine.map(|engine| match engine {
        EngineWarmth::Warm => words.text("conditions-engine-warm"),
        EngineWarmth::Cold => words.text("conditions-engine-cold"),
    });
    let said: Vec<String> = [speed, gear, engine].into_iter().flatten().collect();
    words.list(&said)
}

fn occasion(occasion: Occasion, words: &Words) -> String {
    match occasion {
        Occasion::Complaint => String::new(),
        Occasion::AfterRepair => words.text("occasion-said-after-repair"),
        Occasion::Comeback => words.text("occasion-said-comeback"),
    }
}

/// Every rule that fired, with the answers it rests on.
pub fn reasons(standing: &Standing, words: &Words) -> Vec<ReasonLine> {
    standing.urgency.reasons.iter().map(|reason| reason_line(standing, words, reason)).collect()
}

/// Every step that was looked at, or that keeps a photo all the same.
pub fn steps(standing: &Standing, words: &Words) -> Vec<StepLine> {
    let shown = standing.steps.iter().filter(|step| step.counts() && !is_unchecked(standing, step));
    shown.map(|step| step_line(standing, step, words)).collect()
}

/// The other steps, in one sentence; none where every step was looked at.
pub fn not_checked(standing: &Standing, words: &Words) -> Option<String> {
    let ids: Vec<&str> = standing
        .steps
        .iter()
        .filter(|step| is_unchecked(standing, step))
        .map(|step| step.id.as_str())
        .collect();
    (!ids.is_empty())
        .then(|| words.with("finding-not-checked", &[("steps", said::steps(words, standing, &ids).into())]))
}

/// Whether nothing can be read off a step: no answer that says something, no photo, no gauge, no dispute, no
/// reason; where nobody answered, none for the missing photo either.
fn is_unchecked(standing: &Standing, step: &StepStand) -> bool {
    if !step.counts() {
        return false;
    }
    let says_nothing = |given: &Answered| without_result(step) && !given.disputed && given.reason.is_none();
    let silent = step.answered.as_ref().map_or(step.waiver.is_none(), says_nothing);
    step.photo.is_none() && !has_gauge(standing, step) && silent
}

/// Every cause of this car, in the order of the standing.
pub fn causes(standing: &Standing, words: &Words) -> Vec<CauseLine> {
    standing.sorting.causes.iter().map(|cause| cause_line(standing, cause, words)).collect()
}

/// What people say beside the sorting: an opinion, and what was found to be there. Neither changes it.
pub fn beside_the_sorting(standing: &Standing, words: &Words) -> Vec<String> {
    let opinion = standing.opinion.iter().map(|opinion| {
        let cause = said::cause(words, standing, &opinion.cause);
        let args = [
            ("by", opinion.by.as_str().into()),
            ("cause", cause.into()),
            ("reason", opinion.reason.as_str().into()),
        ];
        words.with("finding-opinion", &args)
    });
    let outcome = standing.outcome.iter().map(|outcome| {
        let causes: Vec<String> = outcome.causes.iter().map(|id| said::cause(words, standing, id)).collect();
        let args = [
            ("causes", words.list(&causes).into()),
            ("by", outcome.by.as_str().into()),
            ("at", words.date(outcome.at).into()),
        ];
        words.with("finding-outcome", &args)
    });
    opinion.chain(outcome).collect()
}

/// Who checked, when, and what the ledger stands at.
pub fn foot(standing: &Standing, words: &Words) -> Vec<Field> {
    let ledger = &standing.ledger;
    let kept = words.with(
        "field-ledger-value",
        &[("entries", ledger.entries.into()), ("head", ledger.head.as_str().into())],
    );
    let broken = ledger.broken_at.map(|at| words.with("field-ledger-broken-value", &[("at", at.into())]));
    let fields = [
        field(words, "technician", technicians(standing, words)),
        field(words, "checked", words.time(last_checked(standing))),
        field(words, "visit", standing.visit.as_str()),
        field(words, "ledger", kept),
        field(words, "ledger-broken", broken.unwrap_or_default()),
        field(words, "signed", signed(standing, words)),
        field(words, "knowledge", standing.knowledge.as_str()),
    ];
    fields.into_iter().flatten().collect()
}

/// What of the ledger is proven, and by whose devices; nothing of a broken one, of which the line above speaks.
fn signed(standing: &Standing, words: &Words) -> String {
    if standing.ledger.broken_at.is_some() || standing.writers.is_empty() {
        return String::new();
    }
    let told = |writer: &WriterStand| {
        let DeviceStand { code, name, trust, .. } = &writer.device;
        let device = if name.is_empty() { code } else { name };
        let args = [("entries", writer.entries.into()), ("device", device.as_str().into())];
        words.with(&format!("signed-{}", trust.id()), &args)
    };
    standing.writers.iter().map(told).collect::<Vec<_>>().join(" ")
}

/// When the latest standing answer was given; when the car came in, if there is none. A receipt does not
/// move it, so a note reads the same before and after it is signed.
pub fn last_checked(standing: &Standing) -> Moment {
    let answers = standing.steps.iter().filter_map(|step| step.answered.as_ref());
    answers.map(|given| given.at).max().unwrap_or(standing.opened_at)
}

fn technicians(standing: &Standing, words: &Words) -> String {
    let mut names: BTreeSet<&str> = standing
        .steps
        .iter()
        .filter_map(|step| step.answered.as_ref())
        .map(|given| given.by.as_str())
        .collect();
    names.insert(standing.technician.as_str());
    let names: Vec<String> = names.into_iter().filter(|name| !name.is_empty()).map(str::to_owned).collect();
    words.list(&names)
}

fn reason_line(standing: &Standing, words: &Words, reason: &Reason) -> ReasonLine {
    let text = words.say_all(&reasons::with_answers(standing, reason));
    let word = reason.word.id();
    ReasonLine { word: word.to_owned(), label: words.text(&format!("word-{word}")), text }
}

/// What is done at a step, at a support of this kind.
fn how(standing: &Standing, step: &StepStand, words: &Words) -> String {
    let id = format!("step-{}-do", ids::base(&step.id));
    words.find(&format!("{id}-{}", standing.support.id())).unwrap_or_else(|| words.text(&id))
}

fn step_line(standing: &Standing, step: &StepStand, words: &Words) -> StepLine {
    let label = step.word.map_or("word-none-yet".to_owned(), |word| format!("word-{}", word.id()));
    let (before, photo) = match pair(step, words) {
        Some((before, after)) => (Some(before), Some(after)),
        None => (None, photo(step, words)),
    };
    StepLine {
        step: step.id.clone(),
        title: said::title(words, step),
        how: how(standing, step, words),
        answer: answer_of(step, words),
        word: step.word.map(|word| word.id().to_owned()),
        label: words.text(&label),
        details: details(standing, step, words),
        photo,
        before,
        further: further(step, words),
        waiver: step.waiver.as_deref().filter(|_| step.photo.is_none()).map(|why| waiver(why, words)),
    }
}

/// The photos kept before the latest, without the one that is paired with it.
fn further(step: &StepStand, words: &Words) -> Vec<PhotoLine> {
    let paired = step.before.as_ref().map(|kept| &kept.photo.sha256);
    let others: Vec<&PhotoStand> =
        step.earlier.iter().filter(|kept| Some(&kept.photo.sha256) != paired).collect();
    let from = others.len().saturating_sub(FURTHER);
    others.iter().skip(from).map(|kept| photo_line(step, kept, words)).collect()
}

fn has_gauge(standing: &Standing, step: &StepStand) -> bool {
    standing.gauges.iter().any(|gauge| gauge.step == step.id)
}

/// What is known of a step beside its answer; what a gauge read stands in its own table.
fn details(standing: &Standing, step: &StepStand, words: &Words) -> Vec<String> {
    let given = step.answered.as_ref();
    let mut lines = given.map(|given| answer_details(step, given, words)).unwrap_or_default();
    lines.extend(milder(standing, step, words));
    if has_gauge(standing, step) {
        lines.push(words.text("detail-gauge"));
    }
    lines
}

/// The latest times its DANGER answer was made milder, and why.
fn milder(standing: &Standing, step: &StepStand, words: &Words) -> Vec<String> {
    let here = standing.milder.iter().filter(|made| made.step == step.id);
    let id = |made: &MilderStand| {
        if made.stands_again(standing) { "detail-milder-again" } else { "detail-milder" }
    };
    let reasons: BTreeSet<(&str, &str)> = here.map(|made| (id(made), made.reason.as_str())).collect();
    reasons.iter().map(|(id, reason)| words.with(id, &[("reason", (*reason).into())])).collect()
}

fn answer_details(step: &StepStand, given: &Answered, words: &Words) -> Vec<String> {
    let by = [("at", words.time(given.at).into()), ("by", given.by.as_str().into())];
    let mut lines = vec![words.with("detail-answered", &by)];
    if let Some(temperature) = given.temperature {
        lines.push(match temperature {
            Temperature::Felt(Warmth::Cold) => words.text("detail-cold"),
            Temperature::Felt(Warmth::Warm) => words.text("detail-warm"),
            Temperature::Celsius(degrees) => {
                words.with("detail-degrees", &[("degrees", words.number(degrees).into())])
            }
        });
    } else if step.asks_temperature && !given.value.has(answer::NOT_DONE) {
        lines.push(words.text("detail-no-temperature"));
    }
    let turned = step.asks_free.map_or("engine", TurnsWith::id);
    let id = |free: bool| format!("detail-{}-{turned}", if free { "free" } else { "not-free" });
    lines.extend(given.free.map(|free| words.text(&id(free))));
    lines.extend(given.engine.map(|engine| {
        words.text(if engine == EngineWarmth::Warm { "detail-engine-warm" } else { "detail-engine-cold" })
    }));
    lines.extend(given.heard_at.map(|place| words.text(&format!("detail-heard-{}", place.id()))));
    if given.disputed {
        lines.push(words.text("detail-disputed"));
    }
    lines
}

/// The text of a shipped reason, or the technician's own words; of what going on noted by itself, that.
fn waiver(why: &str, words: &Words) -> String {
    if why == ids::NOTHING_TO_SHOW {
        return words.text("photo-none-taken");
    }
    let reason = words.find(&format!("waiver-{why}")).unwrap_or_else(|| why.to_owned());
    words.with("photo-none", &[("reason", reason.into())])
}

fn cause_line(standing: &Standing, cause: &CauseStand, words: &Words) -> CauseLine {
    CauseLine {
        cause: cause.id.clone(),
        name: said::cause(words, standing, &cause.id),
        probability: cause.probability,
        percent: words.percent(cause.probability),
        likelihood: likelihood(cause, words),
        speaks_for: cause.speaks_for.iter().map(|weight| weight_line(standing, weight, words)).collect(),
        against: cause.against.iter().map(|weight| weight_line(standing, weight, words)).collect(),
    }
}

/// The word of the likelihood scale, and between which shares the probability lies.
fn likelihood(cause: &CauseStand, words: &Words) -> String {
    let word = words.text(&format!("likelihood-{}", cause.likelihood));
    let Some(range) = cause.interval else { return word };
    let (low, high) = (words.percent(range.low), words.percent(range.high));
    words.with("cause-range", &[("word", word.into()), ("low", low.into()), ("high", high.into())])
}

fn weight_line(standing: &Standing, weight: &Weight, words: &Words) -> String {
    let decibans = weight.decibans.abs();
    let strength = if decibans >= STRONG_DECIBANS {
        "weight-strong"
    } else if decibans >= CLEAR_DECIBANS {
        "weight-clear"
    } else {
        "weight-slight"
    };
    let answer = said::answer_at(words, standing, &weight.step, &weight.value);
    let by_gauge = || words.with("weight-by-gauge", &[("answer", answer.as_str().into())]);
    let answer = weight.gauge.map_or_else(|| answer.clone(), |_| by_gauge());
    words.with(strength, &[("answer", answer.into())])
}

fn idle_range(car: &Vehicle, words: &Words) -> String {
    let range = car.idle_rpm.map(|[low, high]| {
        let (low, high) = (words.number(f64::from(low)), words.number(f64::from(high)));
        words.with("field-idle-value", &[("low", low.into()), ("high", high.into())])
    });
    range.unwrap_or_default()
}

fn odometer(car: &Vehicle, words: &Words) -> String {
    car.odometer.map(|it| words.distance(it.value, it.unit)).unwrap_or_default()
}

fn maker_play(car: &Vehicle, words: &Words) -> String {
    car.maker_play_mm.map(|mm| words.length(mm)).unwrap_or_default()
}

fn seat_text(seat: Seat) -> &'static str {
    match seat {
        Seat::Bare => "seat-bare",
        Seat::Sleeved => "seat-sleeved",
    }
}

fn gearbox_text(gearbox: Gearbox) -> &'static str {
    match gearbox {
        Gearbox::AutomatedClutch => "gearbox-automated-clutch",
        Gearbox::TorqueConverter => "gearbox-torque-converter",
        Gearbox::Manual => "gearbox-manual",
    }
}
