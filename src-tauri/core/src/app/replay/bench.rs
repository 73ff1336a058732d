//! The bench's rows of a case file, driven through the same requests as the bench screen, and what a report
//! says of the bench. Gates are confirmed by rows of the case alone: a row behind a closed gate is refused.

use std::collections::BTreeMap;
use std::path::PathBuf;

use serde::Deserialize;
use serde_json::{Value, json};

use crate::app::bench;
use crate::app::failure::Failure;
use crate::app::fault::{Fault, Refusal};
use crate::app::request::Request;
use crate::app::response::Response;
use crate::app::steady::shown;
use crate::model::bench::{BenchStand, BoreStage, BoreStand, Contact, GaugeLines, HousingLook, RingTurn};
use crate::model::standing::Standing;
use crate::words::Words;

use super::{Stage, refused};

/// A row of the list `bench`; the first name of each says what it records.
#[derive(Debug, Clone, Deserialize)]
#[serde(untagged)]
pub(super) enum Row {
    Gates(Gates),
    Gate(Gate),
    Look(Look),
    Bore(Bore),
    Pass(Pass),
    Fit(Fit),
    Ring(Ring),
    Note(Note),
}

/// Every gate of a set.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct Gates {
    gates: String,
}

/// One gate.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct Gate {
    gate: String,
}

/// A look at the torn-down housing.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct Look {
    look: HousingLook,
}

/// A bore file, by its path from the case's folder.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct Bore {
    bore: BoreStage,
    file: PathBuf,
    #[serde(default)]
    photos: Vec<PathBuf>,
}

/// A pass that was cut.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct Pass {
    pass: u32,
    contact: Contact,
    #[serde(default)]
    diameter: Option<String>,
    #[serde(default)]
    photos: Vec<PathBuf>,
}

/// A fit, by the names of `steady fit`.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct Fit {
    fit: BTreeMap<String, String>,
}

/// The ring turned by hand.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct Ring {
    ring: RingTurn,
    #[serde(default)]
    photos: Vec<PathBuf>,
}

/// A note on fasteners and torques.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct Note {
    note: String,
}

/// The rows of a case, all of them read before the first is recorded.
pub(super) fn rows(given: &[Value]) -> Result<Vec<Row>, Failure> {
    let read = |(number, value): (u32, &Value)| {
        let unreadable = |_| at_row(refused(Refusal::BenchRowUnreadable), number);
        Row::deserialize(value).map_err(unreadable)
    };
    (1..).zip(given).map(read).collect()
}

/// A failure that says at which row it was.
pub(super) fn at_row(failure: Failure, number: u32) -> Failure {
    let Ok(words) = Words::of("en") else { return failure };
    let args = [("phrase", failure.message.as_str().into()), ("row", number.into())];
    Failure { message: words.with("bench-at-row", &args), ..failure }
}

impl Stage<'_> {
    /// Records a row.
    pub(super) fn bench(&self, visit: &str, row: &Row) -> Result<(), Failure> {
        let id = visit.to_owned();
        match row.clone() {
            Row::Gates(Gates { gates }) => self.bench_gates(visit, &gates),
            Row::Gate(Gate { gate }) => self.record(Request::BenchGate { visit: id, gate }),
            Row::Look(Look { look }) => self.record(Request::BenchLook { visit: id, look, wall: None }),
            Row::Bore(Bore { bore, file, photos }) => {
                let file = self.bore_text(&file)?;
                self.record(Request::BenchBore { visit: id, stage: bore, file })?;
                self.bench_photos(
                    visit,
                    if bore == BoreStage::Found { "bench-found" } else { "bench-finished" },
                    &photos,
                )
            }
            Row::Pass(Pass { pass, contact, diameter, photos }) => {
                self.record(Request::BenchPass { visit: id, number: pass, contact, diameter })?;
                self.bench_photos(visit, &format!("bench-pass-{pass}"), &photos)
            }
            Row::Fit(Fit { fit }) => {
                self.record(Request::BenchFit { visit: id, values: fit.into_iter().collect() })
            }
            Row::Ring(Ring { ring, photos }) => {
                self.record(Request::BenchRing { visit: id, turns: ring })?;
                self.bench_photos(visit, "bench-ring", &photos)
            }
            Row::Note(Note { note }) => self.record(Request::BenchNote { visit: id, text: note }),
        }
    }

    /// Where the bench stands.
    pub(super) fn bench_stand(&self, visit: &str) -> Result<BenchStand, Failure> {
        match self.steady.handle(Request::Bench { visit: visit.to_owned() })? {
            Response::Bench(stand) => Ok(*stand),
            _ => Err(shown(&Fault::Internal("no bench in reply".to_owned()), "en")),
        }
    }

    fn record(&self, request: Request) -> Result<(), Failure> {
        self.act(|inner| inner.handle(request, Some(self.by))).map(|_| ())
    }

    fn bench_gates(&self, visit: &str, set: &str) -> Result<(), Failure> {
        let sets = self.bench_stand(visit)?.gate_sets;
        let gates =
            sets.into_iter().find(|stand| stand.id == set).ok_or_else(|| refused(Refusal::UnknownGate))?;
        gates
            .gates
            .into_iter()
            .try_for_each(|gate| self.record(Request::BenchGate { visit: visit.to_owned(), gate: gate.id }))
    }

    fn bench_photos(&self, visit: &str, of: &str, photos: &[PathBuf]) -> Result<(), Failure> {
        for photo in photos {
            let bytes = self.photo_bytes(photo)?;
            self.act(|inner| bench::keep_photo(inner, visit, Some(self.by), of, &bytes))?;
        }
        Ok(())
    }
}

/// Adds what gauges, bench and outcome say to a report; `bench` is null where the case recorded none.
pub(super) fn add_to(report: &mut Value, standing: &Standing, bench: &BenchStand, none: bool) {
    let Some(report) = report.as_object_mut() else { return };
    let gauges = standing.gauges.iter().map(|gauge| {
        json!({
            "step": gauge.step,
            "decision": gauge.result.decision,
            "mean_mm": gauge.result.mean_mm,
            "uncertainty": gauge.result.uncertainty,
            "limit": gauge.result.limit,
            "likelihood": gauge.result.likelihood,
            "trend": gauge.result.trend,
            "lines": bench.gauge_lines.get(&gauge.step).map(GaugeLines::all),
        })
    });
    report.insert("gauges".to_owned(), gauges.collect());
    report.insert("bench".to_owned(), if none { Value::Null } else { bench_report(bench) });
    report.insert("outcome".to_owned(), json!(standing.outcome));
}

fn bench_report(bench: &BenchStand) -> Value {
    json!({
        "verdict": bench.verdict,
        "lines": bench.verdict_lines,
        "look": bench.look,
        "found": bench.found.as_ref().map(bore_report),
        "finished": bench.finished.as_ref().map(bore_report),
        "plan": bench.plan_lines,
        "passes": bench.passes,
        "fit": bench.fit_lines,
        "ring": bench.ring,
        "notes": bench.notes,
        "photos": bench.photos,
    })
}

fn bore_report(bore: &BoreStand) -> Value {
    json!({
        "mean_diameter": bore.shape.mean_diameter,
        "greatest_ovality": bore.shape.greatest_ovality,
        "greatest_out_of_roundness": bore.shape.greatest_out_of_roundness,
        "lines": bore.lines,
    })
}
