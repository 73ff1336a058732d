//! Drives a written case through the same requests a screen makes, and reports where it ends.
//!
//! A case that names gates is taken word for word, in its own order. One that names none may give its
//! answers in any order: the gates are confirmed and the steps ordered here, and the ledger says so.
//! A case is rehearsed in a data folder of its own first, inside the data folder, so that a refused one leaves the ledger as it was.
//! A case may say how many days ago it was, so that a car has a history; the ledger says that too.
//! What a case records at the bench is in `replay/bench.rs`.

mod bench;

use std::io::Read;
use std::path::{Path, PathBuf};
use std::sync::Arc;

use serde::Deserialize;
use serde_json::{Value, json};

use crate::content::{Reader, reason_text};
use crate::model::answer::{AnswerValue, EngineWarmth, HeardAt, Temperature};
use crate::model::bench::GaugeGiven;
use crate::model::limits;
use crate::model::occasion::{Conditions, Occasion};
use crate::model::standing::{Standing, StepStand};
use crate::model::visit::{Intake, Owner, Vehicle};
use crate::photos::intake::MAX_BYTES;
use crate::walk::{applies, former};
use crate::words::Words;

use super::decide::{is_open, set_of_gate};
use super::failure::Failure;
use super::fault::{Fault, Refusal};
use super::request::Request;
use super::response::Response;
use super::steady::{Inner, Steady, shown};

/// A case that was driven through.
#[derive(Debug, Clone, PartialEq)]
pub struct Replayed {
    /// The visit it made.
    pub visit: String,
    /// Where the visit stands, as printed by `--json`; the papers are the shell's to add.
    pub report: Value,
    /// The case recorded something at the bench, so that there is a repair record to print.
    pub benched: bool,
}

/// Replays a case. Photo paths are relative to `base_dir`.
///
/// # Errors
/// `case-unreadable`, `case-too-long`, or what a screen would have been told; the ledger is as it was.
pub fn replay(steady: &Steady, case_json: &str, base_dir: &Path) -> Result<Replayed, Failure> {
    replay_after(steady, case_json, base_dir, |_, _| Ok(()))
}

/// Replays a case once something has been tried on its rehearsal, such as writing its papers: where that fails,
/// nothing is recorded.
///
/// # Errors
/// As [`replay`], and what `tried` says.
pub fn replay_after(
    steady: &Steady,
    case_json: &str,
    base_dir: &Path,
    tried: impl FnOnce(&Steady, &Replayed) -> Result<(), Failure>,
) -> Result<Replayed, Failure> {
    let case: CaseFile =
        serde_json::from_str(case_json).map_err(|_| shown(&Refusal::CaseUnreadable.into(), "en"))?;
    if case.answers.len().max(case.bench.len()) > limits::CASE_ROWS {
        return Err(refused(Refusal::CaseTooLong));
    }
    rehearse(steady, &case, base_dir, tried)?;
    drive(steady, &case, base_dir)
}

#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
struct CaseFile {
    /// How many days before now the case's entries are dated.
    #[serde(default)]
    days_ago: u16,
    vehicle: Vehicle,
    #[serde(default)]
    complaint: String,
    #[serde(default)]
    complaint_sounds: Vec<String>,
    #[serde(default)]
    when: String,
    #[serde(default)]
    owner: Owner,
    #[serde(default)]
    occasion: Occasion,
    #[serde(default)]
    conditions: Conditions,
    #[serde(default)]
    technician: Option<String>,
    #[serde(default)]
    answers: Vec<Item>,
    /// What the bench records after teardown, in its order; each row is read on its own.
    #[serde(default)]
    bench: Vec<Value>,
    #[serde(default)]
    outcome: Option<OutcomeItem>,
}

#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
struct OutcomeItem {
    causes: Vec<String>,
    #[serde(default)]
    by: Option<String>,
}

#[derive(Debug, Clone, Deserialize)]
#[serde(untagged)]
enum Item {
    Gate(GateItem),
    Answer(Box<AnswerItem>),
}

#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
struct GateItem {
    gate: String,
}

#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
struct AnswerItem {
    step: String,
    value: AnswerValue,
    #[serde(default)]
    temperature: Option<Temperature>,
    #[serde(default)]
    free: Option<bool>,
    #[serde(default)]
    engine: Option<EngineWarmth>,
    #[serde(default)]
    heard_at: Option<HeardAt>,
    #[serde(default)]
    reason: Option<String>,
    #[serde(default)]
    photo: Option<PathBuf>,
    #[serde(default)]
    waiver: Option<String>,
    /// Readings of a gauge at this step, taken after the answer.
    #[serde(default)]
    gauge: Option<GaugeGiven>,
}

/// Who acts where the case does not say.
const REPLAY: &str = "case file";

fn rehearse(
    steady: &Steady,
    case: &CaseFile,
    base_dir: &Path,
    tried: impl FnOnce(&Steady, &Replayed) -> Result<(), Failure>,
) -> Result<(), Failure> {
    let scratch = steady.lock().store.rehearsal_folder();
    let setup = steady.setup_for(scratch.clone())?;
    let rehearsed = Steady::open(setup).and_then(|steady| {
        let replayed = drive(&steady, case, base_dir)?;
        tried(&steady, &replayed)
    });
    // What is left here goes at the next start.
    let _ = std::fs::remove_dir_all(&scratch);
    let _ = scratch.parent().map(std::fs::remove_dir);
    rehearsed
}

fn drive(steady: &Steady, case: &CaseFile, base_dir: &Path) -> Result<Replayed, Failure> {
    let by = case.technician.as_deref().unwrap_or(REPLAY);
    let stage = Stage { steady, by, base_dir, days_ago: case.days_ago };
    let opened = stage.ask(Request::Open { intake: intake(case) })?;
    let visit = opened.visit.clone();
    if case.days_ago > 0 {
        stage.note(&visit, "times-set-back")?;
    }
    let named = stage.named(case)?;
    let given: Vec<&Item> = named.iter().collect();
    if given.iter().any(|item| matches!(item, Item::Gate(_))) {
        for item in given {
            stage.as_given(&visit, item)?;
        }
    } else {
        stage.arranged(&opened, &given)?;
        // Nobody is under the car by what a file says.
        stage.leave(&visit)?;
    }
    let rows = bench::rows(&case.bench)?;
    let benched = !rows.is_empty();
    for (number, row) in (1..).zip(rows) {
        stage.bench(&visit, row).map_err(|failure| bench::at_row(failure, number))?;
    }
    if let Some(OutcomeItem { causes, by }) = case.outcome.clone() {
        stage.ask(Request::ConfirmOutcome { visit: visit.clone(), causes, by })?;
    }
    let standing = stage.ask(Request::Look { visit: visit.clone() })?;
    let words = Words::of("en").map_err(|fault| shown(&fault.into(), "en"))?;
    let mut report = report(words, &standing);
    bench::add_to(&mut report, words, &standing, &stage.bench_stand(&visit)?, !benched);
    Ok(Replayed { report, visit, benched })
}

fn intake(case: &CaseFile) -> Intake {
    Intake {
        vehicle: case.vehicle.clone(),
        complaint: case.complaint.clone(),
        complaint_sounds: case.complaint_sounds.clone(),
        when: case.when.clone(),
        owner: case.owner.clone(),
        occasion: case.occasion,
        conditions: case.conditions.clone(),
    }
}

struct Stage<'a> {
    steady: &'a Steady,
    by: &'a str,
    base_dir: &'a Path,
    days_ago: u16,
}

impl Stage<'_> {
    fn ask(&self, request: Request) -> Result<Arc<Standing>, Failure> {
        visit(self.act(|inner| inner.handle(request, Some(self.by)))?)
    }

    fn act(&self, act: impl FnOnce(&mut Inner) -> Result<Response, Fault>) -> Result<Response, Failure> {
        self.steady.back(self.days_ago, act)
    }

    /// The case's items, steps of earlier versions under the names they have now.
    fn named(&self, case: &CaseFile) -> Result<Vec<Item>, Failure> {
        let mut items = case.answers.clone();
        let trade = &self.steady.lock().trade;
        let Some(layout) = trade.layout(&case.vehicle.layout) else { return Ok(items) };
        let applies = applies::steps(trade, layout, case.vehicle.gearbox);
        for item in &mut items {
            let Item::Answer(answer) = item else { continue };
            let known = applies.iter().any(|row| row.id == answer.step);
            let Some(row) = former::step(trade, layout, &answer.step).filter(|_| !known) else { continue };
            if let Some(former) = &row.formerly {
                answer.value = former::value(former, &answer.value);
            }
            answer.step.clone_from(&row.id);
        }
        Ok(items)
    }

    /// Whether a photo, or a reason for none, belongs to a step at all.
    fn is_pictured(&self, step: &str) -> bool {
        self.steady.lock().trade.steps.iter().any(|row| row.id == step && row.pictured)
    }

    /// Says in the ledger what the replay arranged.
    fn note(&self, visit: &str, what: &str) -> Result<(), Failure> {
        visit_of(self.act(|inner| inner.arranged(visit, what, REPLAY)))
    }

    /// One item word for word. Naming a gate of another part says that the part before was left.
    fn as_given(&self, visit: &str, item: &Item) -> Result<(), Failure> {
        match item {
            Item::Answer(answer) => self.answer(visit, answer),
            Item::Gate(GateItem { gate }) => {
                let standing = self.ask(Request::Look { visit: visit.to_owned() })?;
                let set = set_of_gate(&standing, gate).ok_or_else(|| refused(Refusal::UnknownGate))?;
                self.leave_unless(&standing, &set)?;
                self.confirm(visit, &set, gate)
            }
        }
    }

    /// Answers in an order that opens each part once: the account, the engine, then under the car, so
    /// that a DANGER found beneath does not lock what was heard before.
    fn arranged(&self, opened: &Standing, given: &[&Item]) -> Result<(), Failure> {
        let mut answers: Vec<&AnswerItem> = given.iter().filter_map(|item| item.answer()).collect();
        answers.sort_by_key(|answer| place(opened, &answer.step));
        let visit = &opened.visit;
        let moved = !given
            .iter()
            .filter_map(|item| item.answer())
            .map(|answer| &answer.step)
            .eq(answers.iter().map(|answer| &answer.step));
        if moved {
            self.note(visit, "steps-ordered")?;
        }
        let mut confirmed = false;
        for answer in answers {
            confirmed |= self.open_for(visit, &answer.step, confirmed)?;
            self.answer(visit, answer)?;
        }
        Ok(())
    }

    /// Confirms what stands between here and a step; says in the ledger, once, that the replay did.
    fn open_for(&self, visit: &str, step: &str, said: bool) -> Result<bool, Failure> {
        let standing = self.ask(Request::Look { visit: visit.to_owned() })?;
        let Some(stand) = standing.steps.iter().find(|stand| stand.id == step) else { return Ok(false) };
        let Some(set) = stand.set.clone().filter(|_| stand.lock.is_some()) else { return Ok(false) };
        if is_open(&standing, &set) || blocked(&standing, &set) {
            return Ok(false);
        }
        if !said {
            self.note(visit, "gates-confirmed")?;
        }
        self.leave_unless(&standing, &set)?;
        let gates = standing.gate_sets.iter().filter(|stand| stand.id == set).flat_map(|stand| &stand.gates);
        for gate in gates {
            self.confirm(visit, &set, &gate.id)?;
        }
        Ok(true)
    }

    /// Leaves the part that is entered.
    fn leave(&self, visit: &str) -> Result<(), Failure> {
        let standing = self.ask(Request::Look { visit: visit.to_owned() })?;
        if standing.entered.is_some() {
            self.ask(Request::LeavePart { visit: visit.to_owned() })?;
        }
        Ok(())
    }

    fn leave_unless(&self, standing: &Standing, set: &str) -> Result<(), Failure> {
        if standing.entered.as_deref().is_some_and(|entered| entered != set) {
            self.ask(Request::LeavePart { visit: standing.visit.clone() })?;
        }
        Ok(())
    }

    fn confirm(&self, visit: &str, set: &str, gate: &str) -> Result<(), Failure> {
        let request = Request::ConfirmGate {
            visit: visit.to_owned(),
            set: set.to_owned(),
            gate: gate.to_owned(),
            lift: None,
        };
        self.ask(request).map(|_| ())
    }

    fn answer(&self, visit: &str, item: &AnswerItem) -> Result<(), Failure> {
        let AnswerItem { step, value, temperature, free, engine, heard_at, reason, .. } = item.clone();
        self.ask(Request::Answer {
            visit: visit.to_owned(),
            step: step.clone(),
            value,
            temperature,
            free,
            engine,
            heard_at,
            reason,
        })?;
        match &item.photo {
            Some(path) => {
                let bytes = self.photo_bytes(path)?;
                visit_of(self.act(|inner| inner.keep_bytes(visit, &step, &bytes, Some(self.by))))?;
            }
            None => {
                let unnamed = || self.is_pictured(&step).then(|| "not-in-case".to_owned());
                if let Some(reason) = item.waiver.clone().or_else(unnamed) {
                    self.ask(Request::WaivePhoto { visit: visit.to_owned(), step: step.clone(), reason })?;
                }
            }
        }
        let Some(gauge) = item.gauge.clone() else { return Ok(()) };
        self.ask(Request::RecordGauge { visit: visit.to_owned(), step, gauge, reason: None }).map(|_| ())
    }

    fn photo_bytes(&self, path: &Path) -> Result<Vec<u8>, Failure> {
        read(&self.base_dir.join(path)).map_err(|_| refused(Refusal::CasePhotoUnreadable))
    }

    fn bore_text(&self, path: &Path) -> Result<String, Failure> {
        let bytes = read(&self.base_dir.join(path)).unwrap_or_default();
        let text = String::from_utf8(bytes).ok().filter(|text| !text.is_empty());
        text.ok_or_else(|| refused(Refusal::BenchFileUnreadable))
    }
}

/// A file, or as much of it as says that it is too large: a case may name anything, also what never ends.
fn read(path: &Path) -> std::io::Result<Vec<u8>> {
    let mut bytes = Vec::new();
    std::fs::File::open(path)?.take(MAX_BYTES as u64 + 1).read_to_end(&mut bytes)?;
    Ok(bytes)
}

impl Item {
    fn answer(&self) -> Option<&AnswerItem> {
        if let Self::Answer(answer) = self { Some(answer) } else { None }
    }
}

/// Place of a step in an arranged case: parts in order, walk order within, the stop last of the engine's. A step that
/// is not there yet waits for the others.
fn place(standing: &Standing, step: &str) -> (u8, usize) {
    let within = standing.steps.iter().position(|stand| stand.id == step).unwrap_or(usize::MAX);
    let part = match standing.steps.get(within).map(|stand| stand.set.as_deref()) {
        _ if step == crate::model::ids::step::RUNNING_STOP => 3,
        None => 5,
        Some(None) => 0,
        Some(Some("running")) => 1,
        Some(Some("creep")) => 2,
        Some(Some(_)) => 4,
    };
    (part, within)
}

fn blocked(standing: &Standing, set: &str) -> bool {
    let found = |lock: &crate::model::standing::Lock| {
        matches!(lock, crate::model::standing::Lock::DangerFound { .. })
    };
    standing.gate_sets.iter().any(|stand| stand.id == set && stand.lock.as_ref().is_some_and(found))
}

fn visit(response: Response) -> Result<Arc<Standing>, Failure> {
    match response {
        Response::Visit(standing) => Ok(standing),
        _ => Err(shown(&Fault::Internal("no standing in reply".to_owned()), "en")),
    }
}

fn visit_of(response: Result<Response, Failure>) -> Result<(), Failure> {
    response.and_then(visit).map(|_| ())
}

fn refused(refusal: Refusal) -> Failure {
    shown(&refusal.into(), "en")
}

/// The printed object.
fn report(words: &Words, standing: &Standing) -> Value {
    let (urgency, sorting) = (&standing.urgency, &standing.sorting);
    let reasons = urgency.reasons.iter().map(|reason| {
        json!({
            "rule": reason.rule,
            "word": reason.word,
            "steps": reason.steps,
            "text": reason_text(words, standing, reason, Reader::Trade),
        })
    });
    let causes = sorting.causes.iter().map(|cause| {
        json!({
            "id": cause.id,
            "group": cause.group,
            "probability": cause.probability,
            "interval": cause.interval,
            "before": cause.before,
            "for": cause.speaks_for,
            "against": cause.against,
            "together": cause.together,
        })
    });
    let steps = standing.steps.iter().filter(|step| step.answered.is_some()).map(step_report);
    json!({
        "visit": standing.visit,
        "headline": standing.headline,
        "still_open": standing.still_open,
        "urgency": {
            "word": urgency.word,
            "do_not_drive": urgency.do_not_drive,
            "complete": urgency.complete,
            "missing": urgency.missing,
            "limits": urgency.limits,
            "unlooked": urgency.unlooked,
            "rules": urgency.rules,
            "reasons": reasons.collect::<Vec<_>>(),
        },
        "steps": steps.collect::<Vec<_>>(),
        "causes": causes.collect::<Vec<_>>(),
        "bearing_probability": sorting.bearing_probability,
        "next_check": sorting.next_check,
        "no_check": sorting.no_check,
        "surprise": sorting.surprise,
        "turn": sorting.turn,
        "judgements": sorting.judgements,
        "knowledge": standing.knowledge,
        "ledger": { "entries": standing.ledger.entries, "head": standing.ledger.head },
    })
}

fn step_report(step: &StepStand) -> Value {
    let mut report = json!({
        "step": step.id,
        "value": step.answered.as_ref().map(|answer| &answer.value),
        "word": step.word,
    });
    let (key, value) = match (&step.photo, &step.waiver) {
        (Some(photo), _) => ("photo", json!(photo.photo.sha256)),
        (None, waiver) => ("waiver", json!(waiver)),
    };
    if let Some(object) = report.as_object_mut() {
        object.insert(key.to_owned(), value);
    }
    report
}
