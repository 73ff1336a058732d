//! The bench's rows of a case file, driven through the same requests as the bench screen, and what a report
//! says of the bench. Gates are confirmed by rows of the case alone: a row behind a closed gate is refused.

use std::path::{Path, PathBuf};

use serde::Deserialize;
use serde_json::{Value, json};

use crate::app::bench;
use crate::app::failure::Failure;
use crate::app::fault::{Fault, Refusal};
use crate::app::request::Request;
use crate::app::response::Response;
use crate::app::steady::shown;
use crate::model::bench::{BenchStand, BoreStand};
use crate::model::bench_act::BenchAct;
use crate::model::photo_of::WorkPlace;
use crate::model::standing::Standing;
use crate::words::Words;

use super::{Stage, refused};

/// A row of the list `bench`: what a screen could do there, and the photos taken of it.
#[derive(Debug)]
pub(super) struct Row {
    does: Does,
    photos: Vec<PathBuf>,
}

#[derive(Debug, Deserialize)]
#[serde(untagged)]
enum Does {
    /// Every gate of a set.
    Gates(Gates),
    /// One act; a bore's `file` is a path from the case's folder.
    Act(BenchAct),
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
struct Gates {
    gates: String,
}

impl Row {
    /// Photos stand only where the act has a place for them; what names an upload or an entry is a screen's alone.
    fn read(given: &Value) -> Option<Self> {
        let mut given = given.clone();
        let photos = given.as_object_mut()?.remove("photos");
        let photos: Vec<PathBuf> = Vec::deserialize(photos.unwrap_or_else(|| json!([]))).ok()?;
        let does = Does::deserialize(given).ok()?;
        let of_a_case = match &does {
            Does::Gates(_) => photos.is_empty(),
            Does::Act(BenchAct::Photo { .. } | BenchAct::Mark { .. } | BenchAct::Undo { .. }) => false,
            Does::Act(act) => photos.is_empty() || act.photo_place().is_some(),
        };
        of_a_case.then_some(Self { does, photos })
    }
}

/// The rows of a case, all of them read before the first is recorded.
pub(super) fn rows(given: &[Value]) -> Result<Vec<Row>, Failure> {
    let read = |(number, value): (u32, &Value)| {
        Row::read(value).ok_or_else(|| at_row(refused(Refusal::BenchRowUnreadable), number))
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
    /// Does what a row says.
    pub(super) fn bench(&self, visit: &str, row: Row) -> Result<(), Failure> {
        let act = match row.does {
            Does::Gates(Gates { gates }) => return self.bench_gates(visit, &gates),
            Does::Act(BenchAct::Bore { stage, file, instrument }) => {
                BenchAct::Bore { stage, file: self.bore_text(Path::new(&file))?, instrument }
            }
            Does::Act(act) => act,
        };
        let place = act.photo_place();
        self.act_at_bench(visit, act)?;
        place.map_or(Ok(()), |of| self.bench_photos(visit, of, &row.photos))
    }

    /// Where the bench stands.
    pub(super) fn bench_stand(&self, visit: &str) -> Result<BenchStand, Failure> {
        match self.steady.handle(Request::LookAtBench { visit: visit.to_owned() })? {
            Response::Bench(shown) => Ok(shown.bench),
            _ => Err(shown(&Fault::Internal("no bench in reply".to_owned()), "en")),
        }
    }

    fn act_at_bench(&self, visit: &str, act: BenchAct) -> Result<(), Failure> {
        let request = Request::Bench { visit: visit.to_owned(), act };
        self.act(|inner| inner.handle(request, Some(self.by))).map(|_| ())
    }

    fn bench_gates(&self, visit: &str, set: &str) -> Result<(), Failure> {
        let sets = self.bench_stand(visit)?.gate_sets;
        let known = sets.into_iter().find(|stand| stand.id == set);
        let gates = known.ok_or_else(|| refused(Refusal::UnknownGate))?.gates;
        gates.into_iter().try_for_each(|gate| self.act_at_bench(visit, BenchAct::Gate { gate: gate.id }))
    }

    fn bench_photos(&self, visit: &str, of: WorkPlace, photos: &[PathBuf]) -> Result<(), Failure> {
        for photo in photos {
            let bytes = self.photo_bytes(photo)?;
            self.act(|inner| bench::keep_photo(inner, visit, Some(self.by), of, &bytes))?;
        }
        Ok(())
    }
}

/// Adds what gauges, bench and outcome say to a report; `bench` is null where the case recorded none.
pub(super) fn add_to(report: &mut Value, words: &Words, standing: &Standing, bench: &BenchStand, none: bool) {
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
            "lines": gauge.lines.all().iter().map(|line| words.say(line)).collect::<Vec<_>>(),
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
        "look_lines": bench.look_lines,
        "found": bench.found.as_ref().map(bore_report),
        "sleeve_out": bench.sleeve_out,
        "behind": bench.behind.as_ref().map(bore_report),
        "finished": bench.finished.as_ref().map(bore_report),
        "plan": bench.plan_lines,
        "passes": bench.passes,
        "fit": bench.fit_lines,
        "stock": bench.stock,
        "ring": bench.ring,
        "rings": bench.ring_lines,
        "run_out": bench.run_out,
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
