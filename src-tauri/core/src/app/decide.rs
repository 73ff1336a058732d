//! From a request that changes a visit to the entries it asks for, or a refusal. Pure: reads the
//! visit's entries, writes nothing.

use std::collections::BTreeSet;

use crate::model::answer::{AnswerValue, Circumstances};
use crate::model::bench::BenchBody;
use crate::model::device::Devices;
use crate::model::entry::{Entry, EntryBody, Order, OwnerDecision, Receipt};
use crate::model::gates::LiftKind;
use crate::model::gauge::GaugeInput;
use crate::model::ids::answer;
use crate::model::limits::{self, Beyond};
use crate::model::standing::{Lock, Standing, StepStand};
use crate::model::time::Moment;
use crate::model::visit::Intake;
use crate::trade::Trade;
use crate::trade::rows::{Form, Reads, StepRow};
use crate::walk::record::{Record, StandingAnswer};
use crate::walk::{applies, bench, case, former, locks, relayout};

use super::fault::Refusal;
use super::{devices, reason, signature, stale};

/// What a decision may look at.
#[derive(Clone, Copy)]
pub struct Scene<'a> {
    /// The trade's knowledge.
    pub trade: &'a Trade,
    /// The visit's entries.
    pub entries: &'a [Entry],
    pub record: &'a Record,
    /// Where they stand.
    pub standing: &'a Standing,
    /// Who acts.
    pub by: &'a str,
    /// On which device.
    pub device: &'a str,
    /// What was decided about the others.
    pub devices: &'a Devices,
    pub now: Moment,
}

/// An answer as asked for; fields as in `Request::Answer`.
#[derive(Debug, Clone, PartialEq)]
pub struct GivenAnswer {
    pub step: String,
    pub value: AnswerValue,
    /// What is recorded beside it.
    pub circumstances: Circumstances,
    /// Why it is milder.
    pub reason: Option<String>,
}

/// An answer to a step.
///
/// # Errors
/// The refusal that fits; see [`Refusal`].
pub fn answer(scene: Scene<'_>, given: GivenAnswer) -> Result<EntryBody, Refusal> {
    let row = step_row(scene, &given.step)?;
    let former = row.formerly.as_ref().filter(|former| former.step == given.step);
    let value = former.map_or_else(|| given.value.clone(), |former| former::value(former, &given.value));
    let value = checked_value(row, value)?;
    if let Some(lock) = &shown_lock(scene, &row.id)? {
        return Err(lock_refusal(lock));
    }
    own_gates(scene, row)?;
    figure_known(scene.record, &value)?;
    let Circumstances { temperature, free, engine, heard_at } = given.circumstances;
    if temperature.is_some_and(|read| !read.is_plausible()) {
        return Err(Refusal::TemperatureOutOfRange);
    }
    let heard = case::reads(row, &value, &scene.record.intake) == Reads::Found;
    let apart: Vec<&StandingAnswer> =
        scene.record.elsewhere.iter().filter(|(step, _)| *step == row.id).map(|(_, answer)| answer).collect();
    let standing = scene.record.answers.get(&row.id).into_iter().flatten();
    let supersedes = standing.chain(apart.iter().copied()).map(|answer| answer.entry.clone()).collect();
    let reason = reason::given(given.reason)?;
    // What was found under another layout is not answered away without a word.
    let was_found = apart.iter().any(|answer| relayout::found(scene.trade, &row.id, &answer.value));
    let figure_mm = scene.record.intake.vehicle.maker_play_mm.filter(|_| by_figure(&value));
    let mut body = EntryBody::Answered {
        step: row.id.clone(),
        value,
        temperature: temperature.filter(|_| row.asks_temperature),
        free: free.filter(|_| row.asks_free),
        engine: engine.filter(|_| row.asks_engine),
        heard_at: heard_at.filter(|_| row.asks_heard_at && heard),
        layout: Some(scene.record.intake.vehicle.layout.clone()),
        figure_mm,
        clock: clock(scene),
        reason: None,
        supersedes,
        by: scene.by.to_owned(),
    };
    let needed = was_found && !heard || reason::makes_milder_at(scene, &row.id, body.clone());
    reason::needed(reason.as_deref(), needed)?;
    // Kept of nothing else: a reason stands for something grave that was changed.
    let kept = reason.filter(|_| needed || reason::is_changed(scene, &row.id, &body));
    if let EntryBody::Answered { reason, .. } = &mut body {
        *reason = kept;
    }
    Ok(body)
}

/// Whether an answer says how a movement compares with the maker's figure.
fn by_figure(value: &AnswerValue) -> bool {
    value.has(answer::WITHIN_FIGURE) || value.has(answer::BEYOND_FIGURE)
}

/// Refuses "within" and "beyond the maker's figure" where no figure is written down.
fn figure_known(record: &Record, value: &AnswerValue) -> Result<(), Refusal> {
    let missing = by_figure(value) && record.intake.vehicle.maker_play_mm.is_none();
    if missing { Err(Refusal::FigureMissing) } else { Ok(()) }
}

/// Refuses an answer behind gates that somebody else confirmed, or that were confirmed too long ago: whoever goes under
/// the car or sits at the engine has looked for themselves, and today.
fn own_gates(scene: Scene<'_>, row: &StepRow) -> Result<(), Refusal> {
    if row.set.is_none() {
        return Ok(());
    }
    let Scene { by, device, devices, now, .. } = scene;
    let why = stale::why(scene.trade, scene.record, stale::Asking { by, device, devices, now });
    why.map_or(Ok(()), |lock| Err(lock_refusal(&lock)))
}

/// Readings of a gauge at a step. Where they say less than those before, which asked for DANGER or WARNING, they say why.
///
/// # Errors
/// Why the step cannot be answered now, or the refusals of a reason.
pub fn record_gauge(
    scene: Scene<'_>,
    step: &str,
    (gauge, reason): (Box<GaugeInput>, Option<String>),
) -> Result<EntryBody, Refusal> {
    check_unlocked(scene, step)?;
    let reason = reason::given(reason)?;
    let read = bench::read(scene.entries, scene.record);
    let stand = read.gauges.get(step).into_iter().flatten();
    let supersedes: Vec<String> = stand.map(|readings| readings.entry.clone()).collect();
    let body = |reason: Option<String>| {
        let (step, gauge, supersedes) = (step.to_owned(), gauge.clone(), supersedes.clone());
        let bench = BenchBody::Gauged { step, gauge, reason, supersedes };
        EntryBody::Bench { bench, by: scene.by.to_owned() }
    };
    let needed = reason::makes_milder_at(scene, step, body(None));
    reason::needed(reason.as_deref(), needed)?;
    Ok(body(reason.filter(|_| needed)))
}

fn step_row<'t>(scene: Scene<'t>, step: &str) -> Result<&'t StepRow, Refusal> {
    let known =
        |row: &StepRow| row.id == step || row.formerly.as_ref().is_some_and(|former| former.step == step);
    if !scene.trade.steps.iter().any(known) {
        return Err(Refusal::UnknownStep);
    }
    let vehicle = &scene.record.intake.vehicle;
    let layout = scene.trade.layout(&vehicle.layout).ok_or(Refusal::UnknownLayout)?;
    let car = applies::Car::of(scene.trade, layout, scene.record);
    let row = car.rows().iter().find(|row| row.id == step).copied();
    let row = row.or_else(|| former::step(scene.trade, layout, step)).ok_or(Refusal::StepDoesNotApply)?;
    if car.hides(row) { Err(Refusal::StepHidden) } else { Ok(row) }
}

fn shown_lock(scene: Scene<'_>, step: &str) -> Result<Option<Lock>, Refusal> {
    let stand = scene.standing.steps.iter().find(|stand| stand.id == step).ok_or(Refusal::StepHidden)?;
    Ok(stand.lock.clone())
}

fn lock_refusal(lock: &Lock) -> Refusal {
    match lock {
        Lock::GatesOpen { .. } => Refusal::GateClosed,
        Lock::OtherPart { .. } => Refusal::PartEntered,
        Lock::DangerFound { .. } => Refusal::DangerLocksRunning,
        Lock::GatesOfAnother { .. } => Refusal::GatesOfAnother,
        Lock::GatesTooOld { .. } => Refusal::GatesTooOld,
        Lock::NotDriven => Refusal::NotDriven,
        Lock::SetApart => Refusal::SetApart,
        Lock::EarlierDanger => Refusal::EarlierDanger,
    }
}

/// The answer in the step's own form and order, or why it is not one.
fn checked_value(row: &StepRow, value: AnswerValue) -> Result<AnswerValue, Refusal> {
    match (row.form, value) {
        (Form::Reading, AnswerValue::Reading(reading)) if (row.min..=row.max).contains(&reading) => {
            Ok(AnswerValue::Reading(reading))
        }
        (Form::Reading, AnswerValue::Reading(_)) => Err(Refusal::ReadingOutOfRange),
        (Form::OneOf, AnswerValue::One(one)) => known(row, &one).map(|()| AnswerValue::One(one)),
        (Form::AnyOf, AnswerValue::One(one)) => any_of(row, &[one]),
        (Form::AnyOf, AnswerValue::Any(any)) => any_of(row, &any),
        (Form::Reading | Form::OneOf, AnswerValue::One(_) | AnswerValue::Any(_))
        | (Form::OneOf | Form::AnyOf, AnswerValue::Reading(_)) => Err(Refusal::WrongKindOfAnswer),
    }
}

fn known(row: &StepRow, choice: &str) -> Result<(), Refusal> {
    if row.reads(choice).is_some() { Ok(()) } else { Err(Refusal::UnknownAnswer) }
}

fn any_of(row: &StepRow, chosen: &[String]) -> Result<AnswerValue, Refusal> {
    for choice in chosen {
        known(row, choice)?;
    }
    let kept: Vec<_> = row.answers.iter().filter(|answer| chosen.contains(&answer.id)).collect();
    let lone_among_others = kept.len() > 1 && kept.iter().any(|answer| answer.lone);
    if kept.is_empty() {
        return Err(Refusal::WrongKindOfAnswer);
    }
    if lone_among_others {
        return Err(Refusal::AnswersContradict);
    }
    Ok(AnswerValue::Any(kept.into_iter().map(|answer| answer.id.clone()).collect()))
}

/// A gate confirmed; nothing if it stands confirmed already.
///
/// # Errors
/// [`Refusal::UnknownGate`], or why the set is locked.
pub fn confirm_gate(
    scene: Scene<'_>,
    set: &str,
    (gate, lift): (&str, Option<LiftKind>),
) -> Result<Option<EntryBody>, Refusal> {
    let stand = scene.standing.gate_sets.iter().find(|stand| stand.id == set).ok_or(Refusal::UnknownGate)?;
    let found = stand.gates.iter().find(|stand| stand.id == gate).ok_or(Refusal::UnknownGate)?;
    if let Some(lock) = &stand.lock {
        return Err(lock_refusal(lock));
    }
    // Said with the first of them; a screen that was opened anew need not say it again.
    let lift = lift.or(locks::lift_of(scene.record, set)).filter(|_| !stand.lifts.is_empty());
    let (set, gate, by) = (set.to_owned(), gate.to_owned(), scene.by.to_owned());
    let body = EntryBody::GateConfirmed { set, gate, lift, clock: clock(scene), by };
    Ok(found.confirmed.is_none().then_some(body))
}

/// What holds the car up, said anew in the entered part; nothing if it stands so.
///
/// # Errors
/// [`Refusal::UnknownGate`] for a set whose gates do not hang on it, [`Refusal::PartNotEntered`], or why the set is locked.
pub fn say_lift(scene: Scene<'_>, set: &str, lift: LiftKind) -> Result<Option<EntryBody>, Refusal> {
    let stand = scene.standing.gate_sets.iter().find(|stand| stand.id == set).ok_or(Refusal::UnknownGate)?;
    if !stand.lifts.contains(&lift) {
        return Err(Refusal::UnknownGate);
    }
    if let Some(lock) = &stand.lock {
        return Err(lock_refusal(lock));
    }
    if scene.standing.entered.as_deref() != Some(set) {
        return Err(Refusal::PartNotEntered);
    }
    let body = EntryBody::LiftSaid { set: set.to_owned(), lift, by: scene.by.to_owned() };
    Ok((stand.lift != Some(lift)).then_some(body))
}

/// The entered part left.
///
/// # Errors
/// [`Refusal::PartNotEntered`].
pub fn leave_part(scene: Scene<'_>) -> Result<EntryBody, Refusal> {
    let set = scene.standing.entered.clone().ok_or(Refusal::PartNotEntered)?;
    Ok(EntryBody::PartLeft { set, by: scene.by.to_owned() })
}

/// The order chosen.
pub fn choose_order(scene: Scene<'_>, order: Order) -> EntryBody {
    EntryBody::OrderChosen { order, by: scene.by.to_owned() }
}

/// A step that photos and waivers can belong to.
///
/// # Errors
/// The refusal that fits.
pub fn check_step(scene: Scene<'_>, step: &str) -> Result<(), Refusal> {
    step_row(scene, step).map(|_| ())
}

/// A step that can be answered now by who asks.
///
/// # Errors
/// The refusal that fits.
pub fn check_unlocked(scene: Scene<'_>, step: &str) -> Result<(), Refusal> {
    let row = step_row(scene, step)?;
    match shown_lock(scene, &row.id)? {
        Some(lock) => Err(lock_refusal(&lock)),
        None => own_gates(scene, row),
    }
}

/// A step without a photo.
///
/// # Errors
/// [`Refusal::WaiverEmpty`], [`Refusal::WaiverTooLong`], or the step's own refusal.
pub fn waive_photo(scene: Scene<'_>, step: &str, reason: &str) -> Result<EntryBody, Refusal> {
    check_step(scene, step)?;
    let reason = reason.trim().to_owned();
    if reason.is_empty() {
        return Err(Refusal::WaiverEmpty);
    }
    if !line_fits(&reason) {
        return Err(Refusal::WaiverTooLong);
    }
    Ok(EntryBody::PhotoWaived { step: step.to_owned(), reason, by: scene.by.to_owned() })
}

/// The offered entry taken back.
///
/// # Errors
/// [`Refusal::NothingToUndo`], [`Refusal::UndoOutOfDate`], [`Refusal::ReasonNeeded`], [`Refusal::ReasonTooShort`] or
/// [`Refusal::ReasonTooLong`].
pub fn undo(scene: Scene<'_>, entry: &str, reason: Option<String>) -> Result<EntryBody, Refusal> {
    let offer = scene.standing.undo.as_ref().ok_or(Refusal::NothingToUndo)?;
    if offer.entry != entry {
        return Err(Refusal::UndoOutOfDate);
    }
    let reason = reason::given(reason)?;
    reason::needed(reason.as_deref(), offer.needs_reason)?;
    let reason = reason.filter(|_| offer.needs_reason);
    Ok(EntryBody::Withdrawn { entry: entry.to_owned(), reason, by: scene.by.to_owned() })
}

/// A receipt as asked for; fields as in `Request::Sign`.
#[derive(Debug, Clone, PartialEq)]
pub struct GivenReceipt {
    /// What the owner decided.
    pub decision: OwnerDecision,
    pub name: String,
    /// The note they saw.
    pub note_sha256: String,
    pub locale: String,
    pub strokes: Vec<Vec<[f32; 2]>>,
}

/// The note received; `current` is the hash of the note as it reads now, `rating` what it rates, `lines` how many the
/// record has.
///
/// # Errors
/// [`Refusal::NoteChanged`], [`Refusal::SignatureEmpty`], [`Refusal::SignatureRefused`] or
/// [`Refusal::NameTooLong`].
pub fn sign(
    given: GivenReceipt,
    (current, rating): (&str, &str),
    lines: usize,
) -> Result<EntryBody, Refusal> {
    if given.note_sha256 != current {
        return Err(Refusal::NoteChanged);
    }
    if limits::entry::signature(&given.strokes).is_err() {
        return Err(Refusal::SignatureRefused);
    }
    if !signature::is_written(&given.strokes) {
        return Err(Refusal::SignatureEmpty);
    }
    if !line_fits(&given.name) {
        return Err(Refusal::NameTooLong);
    }
    let GivenReceipt { decision, name, note_sha256, locale, strokes } = given;
    let (name, rating) = (name.trim().to_owned(), Some(rating.to_owned()));
    let lines = Some(lines as u64);
    let receipt = Receipt { decision, name, note_sha256, locale, rating, lines, strokes };
    Ok(EntryBody::Received { receipt })
}

/// Intake that can be written down.
///
/// # Errors
/// [`Refusal::UnknownLayout`], [`Refusal::IntakeTooLong`] or [`Refusal::IntakeRefused`].
pub fn check_intake(trade: &Trade, intake: &Intake) -> Result<(), Refusal> {
    let vehicle = &intake.vehicle;
    let layout = trade.layout(&vehicle.layout).ok_or(Refusal::UnknownLayout)?;
    if let Some(field) = too_long(intake) {
        return Err(Refusal::IntakeTooLong(field));
    }
    if vehicle.warm_from_c.is_some_and(|from| from < limits::WARM_FROM_LEAST_C) {
        return Err(Refusal::WarmFromRefused);
    }
    if vehicle.seat.is_some_and(|seat| !layout.seats.contains(&seat)) {
        return Err(Refusal::IntakeRefused("seat"));
    }
    limits::entry::intake(intake).map_err(|Beyond(field)| Refusal::IntakeRefused(field))?;
    let is_known = |sound: &String| trade.sounds.iter().any(|row| &row.id == sound);
    if intake.complaint_sounds.iter().all(is_known) {
        Ok(())
    } else {
        Err(Refusal::IntakeRefused("complaint_sounds"))
    }
}

/// What a person typed at intake that is longer than screens and papers can show, or cannot be shown.
fn too_long(intake: &Intake) -> Option<&'static str> {
    let Intake { vehicle, owner, complaint, when, .. } = intake;
    let lines = [
        ("label", &vehicle.label),
        ("plate", &vehicle.plate),
        ("vin", &vehicle.vin),
        ("owner.name", &owner.name),
        ("owner.contact", &owner.contact),
    ];
    let fits = |text: &str| text.chars().count() <= limits::TEXT && limits::is_printable(text, true);
    let line = lines.into_iter().find(|(_, text)| !line_fits(text));
    let text = [("complaint", complaint), ("when", when)].into_iter().find(|(_, text)| !fits(text));
    line.or(text).map(|(field, _)| field)
}

/// Whether a line that a person typed is one that screens and papers can show.
pub fn line_fits(text: &str) -> bool {
    text.chars().count() <= limits::LINE && limits::is_printable(text, false)
}

/// What a change of layout takes back.
#[derive(Debug, Clone, Default)]
pub struct Relaid {
    /// The steps whose answers would not hold, in walk order.
    pub steps: Vec<String>,
    /// One of them asked for DANGER, or found what asks for WARNING: it is not taken back without a word.
    pub needs_reason: bool,
}

/// What a change of intake would take back: answers that the car as it is now written down has not got, is asked
/// otherwise, or judges by another figure.
///
/// # Errors
/// [`Refusal::UnknownLayout`]; [`Refusal::LayoutFixed`] once the bench worked at the shaft of this one;
/// [`Refusal::PartStillEntered`] where somebody is in a part that the car would no longer have.
pub fn relaid(scene: Scene<'_>, intake: &Intake) -> Result<Relaid, Refusal> {
    let (was, is) = (&scene.record.intake.vehicle, &intake.vehicle);
    let to = scene.trade.layout(&is.layout).ok_or(Refusal::UnknownLayout)?;
    // What a device that nobody confirmed measured fixes nothing.
    let stands = |entry: &&Entry| {
        !scene.record.withdrawn.contains(&entry.hash)
            && !devices::is_doubtful(&entry.device, scene.device, scene.devices)
    };
    let at_gauge: BTreeSet<String> = bench::read(scene.entries, scene.record).gauges.into_keys().collect();
    let at_the_bench = |entry: &Entry| match &entry.body {
        EntryBody::Bench { bench, .. } => !matches!(bench, BenchBody::Gauged { .. }),
        _ => false,
    };
    let measured = || scene.entries.iter().filter(stands).any(at_the_bench);
    if was.layout != is.layout && measured() {
        return Err(Refusal::LayoutFixed);
    }
    let has = |set: &String| {
        applies::steps(scene.trade, to, is.gearbox).iter().any(|row| row.set.as_ref() == Some(set))
    };
    if scene.record.entered.as_ref().is_some_and(|set| !has(set)) {
        return Err(Refusal::PartStillEntered);
    }
    let same_car = was.layout == is.layout && was.gearbox == is.gearbox;
    let mut steps = if same_car {
        Vec::new()
    } else {
        relayout::lost(scene.trade, (scene.record, &at_gauge), (to, is.gearbox))
    };
    if was.maker_play_mm != is.maker_play_mm {
        let by_figure = by_another_figure(scene.record);
        let all = scene.standing.steps.iter().map(|step| &step.id);
        let lost = |step: &&String| steps.contains(step) || by_figure.contains(*step);
        steps = all.filter(lost).cloned().collect();
    }
    let takes_back = relayout::answers_to(scene.trade, scene.entries, &steps);
    let body =
        EntryBody::Amended { intake: intake.clone(), takes_back, reason: None, by: scene.by.to_owned() };
    let grave =
        |step: &&StepStand| step.answered.as_ref().is_some_and(|answered| answered.milder_needs_reason);
    let lost = scene.standing.steps.iter().filter(grave).any(|step| steps.contains(&step.id));
    let needs_reason = lost || reason::makes_milder(scene, body);
    Ok(Relaid { steps, needs_reason })
}

/// The steps whose answer says how a movement compares with the maker's figure.
fn by_another_figure(record: &Record) -> BTreeSet<String> {
    let by_figure =
        |value: &AnswerValue| value.has(answer::WITHIN_FIGURE) || value.has(answer::BEYOND_FIGURE);
    let answers = record.answers.iter().filter(|(_, all)| all.iter().any(|answer| by_figure(&answer.value)));
    answers.map(|(step, _)| step.clone()).collect()
}

/// A changed intake, whole, as asked for; fields as in `Request::Amend`.
#[derive(Debug, Clone, Default)]
pub struct GivenIntake {
    pub intake: Intake,
    /// Hash of the entry by which the intake stood that was changed; none where nobody looked at it.
    pub from: Option<String>,
    /// The steps whose answers are taken back, as they were shown.
    pub seen: Vec<String>,
    /// Why, where that makes a grave step milder.
    pub reason: Option<String>,
}

/// Intake written anew. Where it takes answers back, `seen` names their steps: whoever changes it was told.
///
/// # Errors
/// As [`check_intake`] and [`relaid`]; [`Refusal::CarCorrectedTooOften`]; [`Refusal::IntakeChanged`] where somebody wrote it anew meanwhile,
/// [`Refusal::LayoutTakesBack`] where others are lost than were seen, and the refusals of a reason.
pub fn amend(scene: Scene<'_>, given: GivenIntake) -> Result<EntryBody, Refusal> {
    let GivenIntake { intake, from, seen, reason } = given;
    if from.is_some_and(|from| from != scene.standing.intake_entry) {
        return Err(Refusal::IntakeChanged);
    }
    check_intake(scene.trade, &intake)?;
    if scene.record.has_no_room_for(&intake) {
        return Err(Refusal::CarCorrectedTooOften);
    }
    let Relaid { steps, needs_reason } = relaid(scene, &intake)?;
    if steps != seen {
        return Err(Refusal::LayoutTakesBack);
    }
    let reason = reason::given(reason)?.filter(|_| needs_reason || !steps.is_empty());
    reason::needed(reason.as_deref(), needs_reason)?;
    let takes_back = relayout::answers_to(scene.trade, scene.entries, &steps);
    Ok(EntryBody::Amended { intake, takes_back, reason, by: scene.by.to_owned() })
}

/// The gate set of a gate, among those this car needs.
pub fn set_of_gate(standing: &Standing, gate: &str) -> Option<String> {
    let set = standing.gate_sets.iter().find(|set| set.gates.iter().any(|stand| stand.id == gate))?;
    Some(set.id.clone())
}

/// Whether the part behind a set is open in the standing.
pub fn is_open(standing: &Standing, set: &str) -> bool {
    standing.gate_sets.iter().any(|stand| stand.id == set && stand.open)
}

/// What the clock says, where an entry written now is dated visibly later: how old a safety check is, is reckoned by
/// the clock of whoever looked.
fn clock(scene: Scene<'_>) -> Option<Moment> {
    let at = dated(scene.entries, scene.device, scene.now);
    (at.0.saturating_sub(scene.now.0) > stale::MINUTE).then(|| scene.now.datable())
}

/// The moment a new entry of this device is dated: never before the latest of its chain and always after
/// what another device wrote, whatever the clock says, so that on every device it reads after what its
/// writer saw. And never where no line can be dated to, as a clock before 1970 or after 9999 would have it.
pub fn dated(entries: &[Entry], device: &str, now: Moment) -> Moment {
    let after = |entry: &Entry| Moment(entry.at.0.saturating_add(i64::from(entry.device != device)));
    entries.iter().map(after).max().map_or(now, |latest| latest.max(now)).datable()
}
