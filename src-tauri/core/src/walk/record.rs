//! The ledger read once, front to back: what stands after supersession and withdrawal.

use std::cell::LazyCell;
use std::collections::{BTreeMap, BTreeSet, HashMap};

use crate::model::answer::{AnswerValue, Circumstances, Temperature};
use crate::model::bench::{BenchBody, TurnedFree};
use crate::model::by_hash::{ByHash, HashesSeen};
use crate::model::entry::{Entry, EntryBody, Order, PhotoRef, Receipt};
use crate::model::former_car::FormerCar;
use crate::model::gates::LiftKind;
use crate::model::ids;
use crate::model::limits;
use crate::model::mark::{self, Mark};
use crate::model::milder::MilderStand;
use crate::model::outcome::{OpinionStand, Outcome};
use crate::model::photo_of::PhotoOf;
use crate::model::standing::Confirmed;
use crate::model::time::Moment;
use crate::model::visit::Intake;

use super::locks;

/// What a visit's entries add up to before any rule looks at it.
#[derive(Debug, Clone, Default)]
pub struct Record {
    /// Latest intake.
    pub intake: Intake,
    /// Hash of the entry that wrote it.
    pub intake_entry: String,
    /// What the car was written down as before it was corrected, once something of it was checked.
    pub former_cars: Vec<FormerCar>,
    /// Something was answered, or read at the bench.
    pub checked: bool,
    /// Who opened the visit.
    pub opened_by: String,
    /// The version of the rules then; 0 before the visit is opened.
    pub opened_under: u32,
    /// When it was opened.
    pub opened_at: Option<Moment>,
    /// When the latest entry was written.
    pub updated_at: Option<Moment>,
    /// Order chosen by the technician.
    pub order: Option<Order>,
    /// Confirmed gates of the entered set, by gate. Empty when nobody is in a part.
    pub confirmed: BTreeMap<String, Confirmed>,
    /// Confirmed gates of the set that was gone on from without leaving the engine's part, by gate.
    pub carried: BTreeMap<String, Confirmed>,
    /// The devices on which they were confirmed.
    pub confirmed_on: BTreeSet<String>,
    /// The entered gate set.
    pub entered: Option<String>,
    /// What holds the car up, where every gate of the entered set was confirmed for the same.
    pub lift: Option<LiftKind>,
    /// Gates confirmed before another lift was said, and not since: those about the lift say nothing of this one.
    pub before_lift: BTreeSet<String>,
    /// When a gate was confirmed or a step answered last, since the set was entered.
    pub active_at: Option<Moment>,
    /// How warm the housing was felt last, since the set was entered.
    pub warmth: Option<Temperature>,
    /// Answers that stand, by step; more than one where devices disagree.
    pub answers: BTreeMap<String, Vec<StandingAnswer>>,
    /// Answers that stand and count for nothing: given by another layout, which asks the step otherwise.
    pub elsewhere: Vec<(String, StandingAnswer)>,
    /// The tube of a tube layout was looked into.
    pub tube_opened: bool,
    /// Photos kept, by what they show, oldest first.
    pub photos: BTreeMap<PhotoOf, Vec<(PhotoRef, Moment)>>,
    /// Marks over photos, by what a photo shows and its SHA-256.
    pub marks: BTreeMap<(PhotoOf, String), Vec<Mark>>,
    /// SHA-256 of the earlier and the later photo that are shown side by side, by step.
    pub pairs: BTreeMap<String, (String, String)>,
    /// Reasons for no photo, by step.
    pub waivers: BTreeMap<String, String>,
    /// What each step was answered last, whatever became of the answer since.
    pub latest: BTreeMap<String, AnswerValue>,
    /// Latest receipt and when it was signed.
    pub receipt: Option<(Receipt, Moment)>,
    /// Something was recorded after the receipt that the note tells.
    pub after_receipt: bool,
    /// The ring turned freely, and nothing was cut or read since: the note tells it.
    pub turned_free: bool,
    /// Which bearings did.
    pub turned: TurnedFree,
    /// Latest opinion.
    pub opinion: Option<OpinionStand>,
    /// Latest confirmed outcome, who says so and when.
    pub outcome: Option<(Outcome, String, Moment)>,
    /// DANGER answers that were made milder, with the reason, of each step the first of each kind and the latest few, in
    /// the order of the ledger.
    pub milder: Vec<MilderStand>,
    /// Hashes of entries that were withdrawn.
    pub withdrawn: BTreeSet<String>,
}

/// An answer that neither was superseded nor withdrawn.
#[derive(Debug, Clone, PartialEq)]
pub struct StandingAnswer {
    /// SHA-256, 64 hex digits: what later entries supersede.
    pub entry: String,
    /// As given, by the step's name of today.
    pub value: AnswerValue,
    /// What was recorded beside it.
    pub circumstances: Circumstances,
    /// The layout by which it was asked, if that was written down.
    pub layout: Option<String>,
    /// The maker's figure that it was judged by, mm, where the answer says so.
    pub figure_mm: Option<f64>,
    /// The tube of a tube layout had been looked into by then.
    pub tube_opened: bool,
    /// Why a DANGER answer was made milder.
    pub reason: Option<String>,
    /// Name, as typed, of who recorded it.
    pub by: String,
    /// Date of its entry, by the clock of the device that wrote it.
    pub at: Moment,
}

/// Reads entries in their stored order.
pub fn read(entries: &[Entry]) -> Record {
    read_all(entries.iter())
}

/// Entries with one more of a device, of the same moment as the last of them.
pub fn with(entries: &[Entry], device: &str, body: EntryBody) -> Vec<Entry> {
    let mut all = entries.to_vec();
    if let Some(last) = all.last().cloned() {
        let device = device.to_owned();
        all.push(Entry { hash: String::new(), signature: None, device, body, ..last });
    }
    all
}

fn read_all<'e>(entries: impl Iterator<Item = &'e Entry> + Clone) -> Record {
    let withdrawn = withdrawn(entries.clone());
    let superseded = superseded(entries.clone(), &withdrawn);
    let mut record = Record::default();
    for entry in entries.clone().filter(|entry| !withdrawn.contains(&entry.hash)) {
        record.take(entry, superseded.contains(entry.hash.as_str()));
    }
    record.milder = telling(milder(entries.clone(), &withdrawn));
    record.updated_at = entries.map(|entry| entry.at).max();
    record.withdrawn = withdrawn;
    record
}

/// Hashes of the answers that a later answer, itself not withdrawn, superseded.
pub fn superseded<'e>(
    entries: impl Iterator<Item = &'e Entry>,
    withdrawn: &BTreeSet<String>,
) -> HashesSeen<'e> {
    let live = entries.filter(|entry| !withdrawn.contains(&entry.hash));
    live.flat_map(superseded_answers).map(String::as_str).collect()
}

/// The answers that were changed or taken back with a reason: one is asked for where DANGER, or what was found of a
/// WARNING, becomes milder. What was answered since takes none of them away, unless the change itself was withdrawn.
fn milder<'e>(
    entries: impl Iterator<Item = &'e Entry> + Clone,
    withdrawn: &BTreeSet<String>,
) -> Vec<MilderStand> {
    // Asked of few visits.
    let answers = LazyCell::new(|| entries.clone().filter_map(answer_of).collect::<ByHash<'_, Given<'_>>>());
    let answer = |hash: &str| answers.get(hash).copied();
    let gauges = LazyCell::new(|| entries.clone().filter_map(gauge_of).collect::<ByHash<'_, &String>>());
    let gauge = |hash: &String| gauges.get(hash.as_str()).copied();
    let live = entries.clone().filter(|entry| !withdrawn.contains(&entry.hash));
    let mut gauged: HashMap<&str, &Entry> = HashMap::new();
    let mut milder = Vec::new();
    for entry in live {
        if let EntryBody::Bench { bench: BenchBody::Gauged { step, reason, .. }, by } = &entry.body {
            let stand = |reason: &String| {
                let (step, was, reason, by) = (step.clone(), by_gauge(), reason.clone(), by.clone());
                MilderStand { step, now: Some(was.clone()), was, reason, by, at: entry.at }
            };
            let before = gauged.insert(step, entry);
            milder.extend(before.and_then(|_| reason.as_ref().map(stand)));
        }
        milder.extend(made_milder(entry, &answer));
        milder.extend(gauges_taken_back(entry, &gauge));
    }
    milder
}

/// Of each step the first of each answer that was made milder, and the latest [`limits::MILDER_OF_A_STEP`], in the order
/// of the ledger: an answer may be changed without end.
fn telling(all: Vec<MilderStand>) -> Vec<MilderStand> {
    let mut known: HashMap<String, Vec<AnswerValue>> = HashMap::new();
    let mut is_first = |made: &MilderStand| {
        let known = known.entry(made.step.clone()).or_default();
        let is_new = !known.contains(&made.was);
        known.extend(is_new.then(|| made.was.clone()));
        is_new
    };
    let firsts: Vec<bool> = all.iter().map(&mut is_first).collect();
    let mut kept: HashMap<String, usize> = HashMap::new();
    let mut is_kept = |(made, first): &(MilderStand, bool)| {
        let of_its_step = kept.entry(made.step.clone()).or_default();
        *of_its_step += 1;
        *first || *of_its_step <= limits::MILDER_OF_A_STEP
    };
    let mut telling: Vec<_> = all.into_iter().zip(firsts).rev().filter(|made| is_kept(made)).collect();
    telling.reverse();
    telling.into_iter().map(|(made, _)| made).collect()
}

/// Readings of gauges that an entry took back with a reason.
fn gauges_taken_back<'e>(entry: &Entry, gauge: &dyn Fn(&String) -> Option<&'e String>) -> Vec<MilderStand> {
    let (gone, reason, by) = match &entry.body {
        EntryBody::Withdrawn { entry, reason: Some(reason), by } => (std::slice::from_ref(entry), reason, by),
        EntryBody::Amended { takes_back, reason: Some(reason), by, .. } => (&takes_back[..], reason, by),
        _ => return Vec::new(),
    };
    let steps: BTreeSet<&String> = gone.iter().filter_map(gauge).collect();
    let stand = |step: &&String| MilderStand {
        step: (*step).clone(),
        was: by_gauge(),
        now: None,
        reason: reason.clone(),
        by: by.clone(),
        at: entry.at,
    };
    steps.iter().map(stand).collect()
}

/// A step and what it was answered.
type Given<'e> = (&'e String, &'e AnswerValue);

/// The readings of a gauge, and the step that it was read at.
fn gauge_of(entry: &Entry) -> Option<(&str, &String)> {
    let EntryBody::Bench { bench: BenchBody::Gauged { step, .. }, .. } = &entry.body else { return None };
    Some((entry.hash.as_str(), step))
}

/// A movement that a gauge proved, among answers.
fn by_gauge() -> AnswerValue {
    AnswerValue::One(ids::answer::BY_GAUGE.to_owned())
}

fn answer_of(entry: &Entry) -> Option<(&str, Given<'_>)> {
    let EntryBody::Answered { step, value, .. } = &entry.body else { return None };
    Some((entry.hash.as_str(), (step, value)))
}

fn made_milder<'e>(entry: &Entry, answer: &dyn Fn(&str) -> Option<Given<'e>>) -> Vec<MilderStand> {
    let (before, now, reason, by) = match &entry.body {
        EntryBody::Answered { value, reason: Some(reason), supersedes, by, .. } => {
            (supersedes.last().into_iter().collect(), Some(value), reason, by)
        }
        EntryBody::Withdrawn { entry, reason: Some(reason), by } => (vec![entry], None, reason, by),
        EntryBody::Amended { takes_back, reason: Some(reason), by, .. } => {
            (latest_of_each(takes_back, answer), None, reason, by)
        }
        _ => return Vec::new(),
    };
    // What a line that is not here any more was answered nobody can tell; that something was made milder stays.
    let gone = AnswerValue::One(ids::answer::NOT_HERE.to_owned());
    let at = if let EntryBody::Answered { step, .. } = &entry.body { Some(step) } else { None };
    let stand = |before: &String| {
        let (step, was) = answer(before).or(at.map(|step| (step, &gone)))?;
        let (step, was, reason, by) = (step.clone(), was.clone(), reason.clone(), by.clone());
        Some(MilderStand { step, was, now: now.cloned(), reason, by, at: entry.at })
    };
    before.into_iter().filter_map(stand).collect()
}

/// Of answers taken back together, the latest to each step.
fn latest_of_each<'e, 'g>(
    taken_back: &'e [String],
    answer: &dyn Fn(&str) -> Option<Given<'g>>,
) -> Vec<&'e String> {
    let step = |hash: &String| answer(hash).map(|(step, _)| step);
    let latest: BTreeMap<_, &String> = taken_back.iter().map(|hash| (step(hash), hash)).collect();
    taken_back.iter().filter(|hash| latest.get(&step(hash)) == Some(hash)).collect()
}

/// Hashes of what was taken back. A change of intake takes back answers, readings of gauges, and nothing else, whatever it
/// names.
fn withdrawn<'e>(entries: impl Iterator<Item = &'e Entry> + Clone) -> BTreeSet<String> {
    // Asked of few visits: a layout is seldom changed.
    let answers = LazyCell::new(|| {
        entries.clone().filter_map(answer_of).map(|(hash, _)| hash).collect::<HashesSeen<'_>>()
    });
    let gauges = LazyCell::new(|| {
        let gauged = entries.clone().filter(|entry| gauge_of(entry).is_some());
        gauged.map(|entry| entry.hash.as_str()).collect::<HashesSeen<'_>>()
    });
    let is_answer = |hash: &&String| answers.contains(hash.as_str()) || gauges.contains(hash.as_str());
    let mut gone = BTreeSet::new();
    for entry in entries.clone() {
        match &entry.body {
            EntryBody::Withdrawn { entry, .. } => {
                gone.insert(entry.clone());
            }
            EntryBody::Amended { takes_back, .. } => {
                gone.extend(takes_back.iter().filter(is_answer).cloned())
            }
            _ => {}
        }
    }
    gone
}

fn superseded_answers(entry: &Entry) -> &[String] {
    if let EntryBody::Answered { supersedes, .. } = &entry.body { supersedes } else { &[] }
}

/// What an intake writes a car down as.
fn car_of(intake: &Intake) -> FormerCar {
    FormerCar { plate: intake.vehicle.plate.clone(), vin: intake.vehicle.vin.clone() }
}

impl Record {
    /// What was found under one plate stays known under it, whatever the car is called since.
    fn corrected(&mut self, intake: &Intake) {
        if let Some(former) = self.left_by(intake) {
            let now = car_of(intake);
            self.former_cars.retain(|known| *known != former && *known != now);
            self.former_cars.push(former);
            // No screen corrects so often. Of what came in otherwise the first stays, which was checked, and the latest.
            let beyond = self.former_cars.len().saturating_sub(limits::FORMER_CARS);
            if beyond > 0 {
                self.former_cars.drain(1..=beyond);
            }
        }
    }

    /// Whether the car cannot be written down as another any more, as that would forget one that it was known as.
    pub fn has_no_room_for(&self, intake: &Intake) -> bool {
        let now = car_of(intake);
        let others = self.former_cars.iter().filter(|known| **known != now).count();
        let is_new = |former: &FormerCar| !self.former_cars.contains(former);
        others >= limits::FORMER_CARS && self.left_by(intake).as_ref().is_some_and(is_new)
    }

    /// The car that an intake would leave, where it is another and something of it was checked.
    fn left_by(&self, intake: &Intake) -> Option<FormerCar> {
        let (before, now) = (&self.intake.vehicle, &intake.vehicle);
        let is_named = !(before.plate.is_empty() && before.vin.is_empty());
        let is_another = (&before.plate, &before.vin) != (&now.plate, &now.vin);
        let left = self.checked && is_named && is_another;
        left.then(|| car_of(&self.intake))
    }

    fn take(&mut self, entry: &Entry, superseded: bool) {
        let beside = match &entry.body {
            EntryBody::Bench { bench, .. } => {
                let before = self.turned_free;
                self.turned = self.turned.after(bench);
                self.turned_free = self.turned.all();
                before == self.turned_free && !matches!(bench, BenchBody::Gauged { .. })
            }
            body if body.is_bench_photo() => true,
            body => matches!(body, EntryBody::OpinionGiven { .. } | EntryBody::OutcomeConfirmed { .. }),
        };
        self.checked |= matches!(entry.body, EntryBody::Answered { .. } | EntryBody::Bench { .. });
        let tells_owner_more = !beside;
        self.after_receipt |= tells_owner_more && self.receipt.is_some();
        self.keep_waiver_of_same(entry);
        match &entry.body {
            EntryBody::Opened { intake, by, rules, .. } => {
                self.intake = intake.clone();
                self.intake_entry.clone_from(&entry.hash);
                self.opened_under = *rules;
                self.opened_by.clone_from(by);
                self.opened_at = Some(entry.at);
            }
            EntryBody::Amended { intake, .. } => {
                self.corrected(intake);
                self.intake = intake.clone();
                self.intake_entry.clone_from(&entry.hash);
            }
            EntryBody::OrderChosen { order, .. } => self.order = Some(*order),
            EntryBody::GateConfirmed { set, gate, lift, clock, by } => {
                self.confirm((set, *lift), gate, by, clock.unwrap_or(entry.at));
                self.confirmed_on.insert(entry.device.clone());
            }
            EntryBody::LiftSaid { set, lift, .. } => self.say_lift(set, *lift, &entry.device),
            EntryBody::PartLeft { .. } => self.leave(),
            EntryBody::Answered { .. } if superseded => self.worked(entry),
            EntryBody::Answered { step, .. } => {
                self.worked(entry);
                self.answer(step, entry);
            }
            EntryBody::PhotoKept { of, photo, .. } => {
                self.photos.entry(of.clone()).or_default().push((photo.clone(), entry.at));
                if let PhotoOf::Step(step) = of {
                    self.waivers.remove(step);
                    self.pairs.remove(step);
                }
            }
            EntryBody::PhotoMarked { of, photo, marks, .. } => self.mark(of, photo, marks),
            EntryBody::PhotosPaired { step, before, after, .. } => {
                self.pairs.remove(step);
                self.pairs.extend(before.iter().map(|one| (step.clone(), (one.clone(), after.clone()))));
            }
            EntryBody::PhotoWaived { step, reason, .. } => {
                self.waivers.insert(step.clone(), reason.clone());
            }
            EntryBody::OpinionGiven { cause, reason, by } => {
                let (cause, reason, by) = (cause.clone(), reason.clone(), by.clone());
                self.opinion = Some(OpinionStand { cause, reason, by, at: entry.at });
            }
            EntryBody::OutcomeConfirmed { outcome, by } => {
                self.outcome = Some((outcome.clone(), by.clone(), entry.at));
            }
            EntryBody::Withdrawn { .. } | EntryBody::Arranged { .. } | EntryBody::Bench { .. } => {}
            EntryBody::Received { receipt } => {
                self.receipt = Some((receipt.clone(), entry.at));
                self.after_receipt = false;
            }
        }
    }

    /// Two devices may confirm gates of different sets without knowing of each other. Only the later
    /// set's gates count then, and it starts unconfirmed where they differ: nobody is both at the seat
    /// and under the car.
    fn confirm(&mut self, (set, lift): (&str, Option<LiftKind>), gate: &str, by: &str, at: Moment) {
        if self.entered.as_deref() != Some(set) {
            let goes_on = locks::goes_on(self.entered.as_deref(), set);
            let before =
                goes_on.then(|| self.held().map(|(gate, who)| (gate.clone(), who.clone())).collect());
            let on = std::mem::take(&mut self.confirmed_on);
            self.leave();
            self.entered = Some(set.to_owned());
            self.lift = lift;
            if let Some(before) = before {
                (self.carried, self.confirmed_on) = (before, on);
            }
        }
        // Confirmed for two kinds of lift, or for none: every gate of every kind is asked for.
        self.lift = self.lift.filter(|kind| Some(*kind) == lift);
        self.active_at = Some(at);
        self.before_lift.remove(gate);
        self.confirmed.insert(gate.to_owned(), Confirmed { by: by.to_owned(), at });
    }

    /// Said anew by whoever confirmed what stands. From another device it is a second opinion, and every gate of every
    /// kind is asked for.
    fn say_lift(&mut self, set: &str, lift: LiftKind, device: &str) {
        if self.entered.as_deref() == Some(set) {
            if self.lift != Some(lift) {
                self.before_lift.extend(self.confirmed.keys().cloned());
            }
            let own = self.confirmed_on.iter().all(|on| on == device);
            self.lift = Some(lift).filter(|_| own);
        }
    }

    /// Gates that hold of the entered set and of the one that was gone on from.
    pub fn held(&self) -> impl Iterator<Item = (&String, &Confirmed)> {
        self.carried.iter().chain(&self.confirmed)
    }

    fn leave(&mut self) {
        self.entered = None;
        self.confirmed.clear();
        self.carried.clear();
        self.confirmed_on.clear();
        self.before_lift.clear();
        (self.lift, self.active_at, self.warmth) = (None, None, None);
    }

    /// A reason for no photo is about what was answered then: of another answer a photo is asked for anew.
    fn keep_waiver_of_same(&mut self, entry: &Entry) {
        let EntryBody::Answered { step, value, .. } = &entry.body else { return };
        let before = self.latest.insert(step.clone(), value.clone());
        let is_changed = before.as_ref().is_some_and(|before| before != value);
        let nothing = self.waivers.get(step).is_some_and(|why| why == ids::NOTHING_TO_SEE);
        // That there is nothing to see can be said before any answer, and is not true of each.
        if is_changed || nothing && before.is_none() {
            self.waivers.remove(step);
        }
    }

    /// Somebody answered in the entered part, whatever became of the answer since.
    fn worked(&mut self, entry: &Entry) {
        let EntryBody::Answered { step, value, temperature, clock, by, .. } = &entry.body else { return };
        if step == ids::step::TUBE_OPEN_CHECK && !value.has(ids::answer::NOT_DONE) {
            self.tube_opened = true;
        }
        let held = self.held().any(|(_, confirmed)| confirmed.by == *by);
        if held && self.confirmed_on.contains(&entry.device) {
            self.active_at = Some(clock.unwrap_or(entry.at));
            self.warmth = temperature.or(self.warmth);
        }
    }

    /// What is drawn over a photo.
    pub fn marks_over(&self, of: &PhotoOf, photo: &PhotoRef) -> Vec<Mark> {
        self.marks.get(&(of.clone(), photo.sha256.clone())).cloned().unwrap_or_default()
    }

    /// Marks that no screen could have drawn are left out, wherever they came from.
    fn mark(&mut self, of: &PhotoOf, photo: &str, marks: &[Mark]) {
        if mark::check(marks).is_ok() {
            self.marks.insert((of.clone(), photo.to_owned()), marks.to_vec());
        }
    }

    fn answer(&mut self, step: &str, entry: &Entry) {
        let EntryBody::Answered {
            value,
            temperature,
            free,
            engine,
            heard_at,
            layout,
            figure_mm,
            reason,
            by,
            ..
        } = &entry.body
        else {
            return;
        };
        self.answers.entry(step.to_owned()).or_default().push(StandingAnswer {
            entry: entry.hash.clone(),
            value: value.clone(),
            circumstances: Circumstances {
                temperature: *temperature,
                free: *free,
                engine: *engine,
                heard_at: *heard_at,
            },
            layout: layout.clone(),
            figure_mm: *figure_mm,
            tube_opened: self.tube_opened,
            reason: reason.clone(),
            by: by.clone(),
            at: entry.at,
        });
    }
}
