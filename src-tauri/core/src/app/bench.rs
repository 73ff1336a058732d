//! The bench's requests: what is recorded after teardown, and where the bench stands.

use std::collections::BTreeMap;
use std::ops::RangeInclusive;

use crate::content::{
    bore_lines, fit_lines, instrument_line, look_lines, note_line, ring_lines, verdict_lines,
};
use crate::measure;
use crate::measure::bore::csv;
use crate::measure::bore::shape::shape;
use crate::measure::bore::unit::typed_mm;
use crate::measure::verdict::verdict;
use crate::model::bench::{
    BenchBody, BenchGates, BenchStand, BoreStage, BoreStand, GaugeGiven, HousingLook, InstrumentUsed,
    RingStand, WorkPhoto,
};
use crate::model::bench_act::BenchAct;
use crate::model::bore::{BoreInstrument, BoreReadings};
use crate::model::entry::{EntryBody, PhotoRef};
use crate::model::limits;
use crate::model::mark::Mark;
use crate::model::photo_of::{PhotoOf, WorkPlace};
use crate::model::standing::GateStand;
use crate::model::verdict::BenchVerdict;
use crate::model::workshop::OwnInstrument;
use crate::trade::bench::BenchTables;
use crate::walk::bench::{self as walk_bench, BenchRecord, MACHINING, Recorded, TEARDOWN};
use crate::walk::record::Record;
use crate::words::Words;

use super::at_hand::AtHand;
use super::bench_findings::{Found, plan, with_width};
use super::fault::{Fault, Refusal};
use super::history::bench_offer;
use super::response::{BenchShown, Response};
use super::steady::Inner;
use super::{bench_parts, bench_stock, decide, earlier, fit, marks, old_sleeve, play_gauge, workshop};

/// Where the bench stands, and its visit.
pub(super) fn bench(inner: &mut Inner, visit: &str) -> Result<Response, Fault> {
    let locale = inner.locale();
    let bench = stand(inner, visit, &locale)?;
    let standing = inner.standing(visit)?;
    Ok(Response::Bench(Box::new(BenchShown { bench, standing })))
}

/// Does something at the bench and says where bench and visit stand then.
pub(super) fn act(
    inner: &mut Inner,
    visit: &str,
    by: Option<&str>,
    act: BenchAct,
) -> Result<Response, Fault> {
    match act {
        BenchAct::Photo { of, upload } => {
            let bytes = inner.store.upload(&upload)?;
            keep_photo(inner, visit, by, of, &bytes)?;
            inner.store.drop_upload(&upload);
        }
        BenchAct::Mark { of, photo, marks } => mark(inner, visit, by, (of, &photo), marks)?,
        BenchAct::Undo { entry } => undo(inner, visit, by, &entry)?,
        recorded => {
            let body = body(&read(inner, visit)?, &inner.workshop.instruments, recorded)?;
            inner.change(visit, by, |scene| {
                Ok(Some(EntryBody::Bench { bench: body, by: scene.by.to_owned() }))
            })?;
        }
    }
    bench(inner, visit)
}

/// Readings of a gauge at a play step; the visit's standing comes back, since they can change its rating.
pub(super) fn gauge(
    inner: &mut Inner,
    visit: &str,
    by: Option<&str>,
    step: &str,
    (given, reason): (GaugeGiven, Option<String>),
) -> Result<Response, Fault> {
    let standing = inner.standing(visit)?;
    let maker = standing.intake.vehicle.maker_play_mm;
    let mut input = play_gauge::input(step, given, standing.support, maker, tables()?)?;
    input.earlier = earlier::earlier(inner, visit, step, tables()?)?;
    inner.change(visit, by, |scene| decide::record_gauge(scene, step, (Box::new(input), reason)).map(Some))
}

/// A photo of the bench's work, from its bytes.
pub(super) fn keep_photo(
    inner: &mut Inner,
    visit: &str,
    by: Option<&str>,
    of: WorkPlace,
    bytes: &[u8],
) -> Result<Response, Fault> {
    let photo = inner.taken_in(bytes)?;
    inner.change(visit, by, |scene| {
        Ok(Some(EntryBody::PhotoKept { of: PhotoOf::Work(of), photo, by: scene.by.to_owned() }))
    })
}

/// Marks over a photo of the bench's work, named by what it shows and its hash; nothing if they are the same.
fn mark(
    inner: &mut Inner,
    visit: &str,
    by: Option<&str>,
    (of, photo): (WorkPlace, &str),
    marks: Vec<Mark>,
) -> Result<(), Fault> {
    let of = PhotoOf::Work(of);
    let record = &inner.read(visit)?.record;
    let mut shown = record.photos.get(&of).into_iter().flatten().map(|(kept, _)| kept);
    let kept = shown.find(|kept| kept.sha256 == photo).ok_or(Refusal::PhotoNotOfStep)?;
    let before = record.marks_over(&of, kept);
    let marks = marks::checked(marks)?;
    inner.change(visit, by, |scene| {
        let (photo, by) = (photo.to_owned(), scene.by.to_owned());
        Ok((marks != before).then_some(EntryBody::PhotoMarked { of, photo, marks, by }))
    })?;
    Ok(())
}

/// Takes back the bench's latest entry, which `entry` has to name.
fn undo(inner: &mut Inner, visit: &str, by: Option<&str>, entry: &str) -> Result<(), Fault> {
    let latest = latest_of(&read(inner, visit)?, &inner.writer.device).ok_or(Refusal::NothingToUndo)?;
    if latest != entry {
        return Err(Refusal::UndoOutOfDate.into());
    }
    inner.change(visit, by, |scene| {
        Ok(Some(EntryBody::Withdrawn { entry: latest, reason: None, by: scene.by.to_owned() }))
    })?;
    Ok(())
}

fn tables() -> Result<&'static BenchTables, Fault> {
    BenchTables::shipped().map_err(Fault::Internal)
}

fn read(inner: &mut Inner, visit: &str) -> Result<BenchRecord, Fault> {
    let AtHand { chain, record, .. } = inner.read(visit)?;
    Ok(walk_bench::read(&chain.entries, record))
}

/// Hash of the bench's latest entry, if this device wrote it.
fn latest_of(bench: &BenchRecord, device: &str) -> Option<String> {
    bench.latest.as_ref().filter(|(_, by)| by == device).map(|(entry, _)| entry.clone())
}

/// What the ledger keeps of an act, or why it is refused.
fn body(now: &BenchRecord, own: &[OwnInstrument], act: BenchAct) -> Result<BenchBody, Fault> {
    let tables = tables()?;
    let is_closed = |set: &str| !now.is_open(set, tables);
    let asks = match &act {
        BenchAct::Gate { .. } => None,
        BenchAct::Pass { .. } => Some(MACHINING),
        BenchAct::SleeveOut { way, .. } => Some(way.gates()),
        _ => Some(TEARDOWN),
    };
    if asks.is_some_and(|set| is_closed(TEARDOWN) || is_closed(set)) {
        return Err(Refusal::GateClosed.into());
    }
    Ok(match act {
        BenchAct::Gate { gate } => {
            let known = tables.gates.iter().any(|row| row.id == gate);
            if !known {
                return Err(Refusal::UnknownGate.into());
            }
            BenchBody::GateConfirmed { gate }
        }
        BenchAct::Bore { stage: BoreStage::Behind, .. } if now.sleeve_out.is_none() => {
            return Err(Refusal::SleeveStillIn.into());
        }
        BenchAct::SleeveOut { way, outside } => {
            BenchBody::SleeveOut { way, outside_mm: diameter_mm(outside, Refusal::SleeveSizeRefused)? }
        }
        BenchAct::Bore { stage, file, instrument } => bore_body(stage, &file, instrument.as_deref(), own)?,
        BenchAct::Look { look, wall } => {
            let wall_least_mm =
                wall.map(|wall| mm(&wall, &limits::WALL_MM)).transpose()?.or(look.wall_least_mm);
            let look = HousingLook { wall_least_mm, ..look };
            if look.wall_least_mm.is_some_and(|wall| !limits::WALL_MM.contains(&wall)) {
                return Err(Refusal::WallRefused.into());
            }
            BenchBody::Looked { look }
        }
        BenchAct::Pass { number, contact, diameter } => {
            if now.bores.is_empty() {
                return Err(Refusal::PassWithoutBore.into());
            }
            if !(1..=limits::PASSES).contains(&number) {
                return Err(Refusal::PassNumberRefused.into());
            }
            let diameter_mm = diameter_mm(diameter, Refusal::PassDiameterRefused)?;
            BenchBody::PassCut { number, contact, diameter_mm }
        }
        BenchAct::Fit { values } => {
            // The latest in the order of the work.
            let bore = now.bores.values().next_back();
            let measured = bore.and_then(|bore| shape(&bore.what).ok());
            let values = fit::with_measured(values.into_iter().collect(), measured.as_ref())?;
            BenchBody::FitGiven { fit: Box::new(fit::checked(&values)?) }
        }
        BenchAct::Ring { turns, bearing, cold, clearance } => {
            let clearance_mm = clearance.map(|typed| mm(&typed, &limits::CLEARANCE_MM)).transpose()?;
            if clearance_mm.is_some_and(|clearance| !limits::CLEARANCE_MM.contains(&clearance)) {
                return Err(Refusal::ClearanceRefused.into());
            }
            BenchBody::RingTurned { turns, bearing, cold, clearance_mm }
        }
        BenchAct::RunOut { run_out } => {
            let run_out_mm = mm(&run_out, &limits::RUN_OUT_MM)?;
            if !limits::RUN_OUT_MM.contains(&run_out_mm) {
                return Err(Refusal::RunOutRefused.into());
            }
            BenchBody::RunOutRead { run_out_mm }
        }
        BenchAct::Note { text } => BenchBody::Noted { text: note(&text)? },
        // Done before they come here: they are no entry of the kind `bench`.
        BenchAct::Photo { .. } | BenchAct::Mark { .. } | BenchAct::Undo { .. } => {
            return Err(Refusal::UnknownRequest.into());
        }
    })
}

/// A bore as it was read; the step and error of an instrument that is named go before those of the file.
fn bore_body(
    stage: BoreStage,
    file: &str,
    instrument: Option<&str>,
    own: &[OwnInstrument],
) -> Result<BenchBody, Fault> {
    let mut bore = csv::read(file)?;
    let with =
        instrument.map(|name| own.iter().find(|own| own.name == name).ok_or(Refusal::UnknownInstrument));
    let with = with.transpose()?;
    if let Some(own) = with {
        let tried = own.repeatability_mm.unwrap_or_default();
        bore.instrument = BoreInstrument {
            resolution_mm: own.resolution_mm,
            mpe_mm: own.mpe_mm,
            // What was tried today is not made smaller by what was tried once.
            repeatability_mm: bore.instrument.repeatability_mm.max(tried),
        };
    }
    shape(&bore)?;
    let used = |own: &OwnInstrument| InstrumentUsed {
        name: own.name.clone(),
        calibrated: own.calibrated.clone(),
        due: own.due.clone(),
    };
    Ok(BenchBody::BoreRead { stage, bore: Box::new(bore), instrument: with.map(used) })
}

/// A note as it is kept.
fn note(text: &str) -> Result<String, Refusal> {
    let text = text.trim();
    if text.is_empty() {
        return Err(Refusal::BenchNoteEmpty);
    }
    if text.chars().count() > limits::NOTE { Err(Refusal::BenchNoteTooLong) } else { Ok(text.to_owned()) }
}

/// A diameter as typed, mm, if one was; one that no seat has is refused.
fn diameter_mm(typed: Option<String>, refusal: Refusal) -> Result<Option<f64>, Fault> {
    let diameter = typed.map(|typed| mm(&typed, &limits::DIAMETER_MM)).transpose()?;
    match diameter {
        Some(diameter) if !limits::DIAMETER_MM.contains(&diameter) => Err(refusal.into()),
        diameter => Ok(diameter),
    }
}

/// A length as typed, mm, of something that lies in `range`.
fn mm(text: &str, range: &RangeInclusive<f64>) -> Result<f64, measure::bore::fault::BoreFault> {
    typed_mm(text, range)
}

/// Where the bench stands, from the ledger.
pub(super) fn stand(inner: &mut Inner, visit: &str, locale: &str) -> Result<BenchStand, Fault> {
    let words = &inner.words(locale)?;
    let (own, instruments) = (inner.workshop.sleeves.clone(), workshop::instruments(inner));
    let standing = inner.standing(visit)?;
    let device = inner.writer.device.clone();
    let AtHand { chain, record, .. } = inner.read(visit)?;
    let bench = walk_bench::read(&chain.entries, record);
    let latest = latest_of(&bench, &device);
    let undo = chain.entries.iter().find(|entry| latest.as_ref() == Some(&entry.hash)).map(bench_offer);
    let tables = tables()?;
    let fit = bench.fit.as_ref().and_then(|input| measure::fit::calculate::calculate(input, tables).ok());
    let read = |stage: BoreStage| bench.bores.get(&stage).map(|read| with_width(read, bench.fit.as_ref()));
    let (as_found, as_finished) = (read(BoreStage::Found), read(BoreStage::Finished));
    let as_behind = read(BoreStage::Behind);
    let old_sleeve = bench.old_sleeve(standing.intake.vehicle.seat);
    // What is cut is the housing: an old sleeve's bore says nothing of the one behind it.
    let to_cut = if old_sleeve == Some(true) { as_behind.as_ref() } else { as_found.as_ref() };
    let plan = to_cut.and_then(|bore| plan(&bore.what, bench.look.wall_least_mm, fit.as_ref()));
    let shape_of = |read: &Option<Recorded<BoreReadings>>| shape(&read.as_ref()?.what).ok();
    let seat = [&as_finished, &as_behind, &as_found].into_iter().find_map(shape_of);
    let found = Found {
        look: bench.look,
        seat: seat.as_ref(),
        to_cut: to_cut.map(|read| &read.what),
        plan: plan.as_ref(),
        pass: bench.last_pass(),
        fit: fit.as_ref(),
        sleeve_in: as_finished.is_some() || old_sleeve == Some(true) && bench.sleeve_out.is_none(),
        old_sleeve,
        sleeve_out: bench.sleeve_out.is_some(),
    };
    let findings = found.findings();
    let used = |stage: BoreStage| bench.instruments.get(&stage);
    let limit = findings.diameter_mm.and_then(|diameter| tables.form_limit_um(diameter));
    let found = bore_stand(as_found.as_ref(), used(BoreStage::Found), limit, words);
    let behind = bore_stand(as_behind.as_ref(), used(BoreStage::Behind), limit, words);
    let finished = bore_stand(as_finished.as_ref(), used(BoreStage::Finished), limit, words);
    let read = [&found, &behind, &finished];
    let housing = bench_stock::housing(&findings, read, &bench);
    let stock = bench_stock::stands(&own, &bench, &housing, (tables, words));
    let verdict = verdict(&findings, tables);
    let left = still_to_do(&verdict, &bench, tables);
    let gate_sets = gate_sets(&bench, tables);
    let rings: Vec<RingStand> = bench.rings.values().cloned().collect();
    let sleeve_ways = old_sleeve::ways(&bench, tables);
    let sleeve_out = old_sleeve::out(&bench, behind.as_ref(), words);
    let parts = bench_parts::parts(&bench, &verdict, tables);
    Ok(BenchStand {
        visit: visit.to_owned(),
        gate_sets,
        next: bench_parts::next(&parts),
        parts,
        plan_lines: plan.iter().flat_map(|plan| &plan.notes).map(|note| note_line(words, note)).collect(),
        plan,
        passes: bench.passes.into_values().collect(),
        fit_lines: fit.as_ref().map(|fit| fit_lines(words, fit)).unwrap_or_default(),
        fit,
        look_lines: look_lines(words, &bench.look),
        look: bench.look,
        form_limit_um: limit,
        found,
        sleeve_out,
        sleeve_ways,
        behind,
        finished,
        ring_lines: ring_lines(words, &rings),
        rings,
        ring: bench.ring,
        run_out: bench.run_out,
        notes: bench.notes,
        photos: photos(record),
        verdict_lines: verdict_lines(words, &left),
        verdict,
        undo,
        stock,
        materials: tables.materials.iter().map(|row| row.id.clone()).collect(),
        classes: classes(tables),
        instruments,
    })
}

fn photos(record: &Record) -> BTreeMap<WorkPlace, Vec<WorkPhoto>> {
    let of_work = record.photos.iter().filter_map(|(of, kept)| Some((of, of.work()?, kept)));
    let shown = |of: &PhotoOf, photo: &PhotoRef| WorkPhoto {
        sha256: photo.sha256.clone(),
        marks: record.marks_over(of, photo),
    };
    of_work
        .map(|(of, place, kept)| (place, kept.iter().map(|(photo, _)| shown(of, photo)).collect()))
        .collect()
}

/// The verdict without what it asked for and was done since: gates confirmed, the ring turned freely.
fn still_to_do(verdict: &BenchVerdict, bench: &BenchRecord, tables: &BenchTables) -> BenchVerdict {
    let mut left = verdict.clone();
    left.gates.retain(|set| !bench.is_open(set, tables));
    if bench.turned_free {
        left.closing_checks.clear();
    }
    left
}

/// The gates by set, in the order of the data.
fn gate_sets(bench: &BenchRecord, tables: &BenchTables) -> Vec<BenchGates> {
    let mut sets: Vec<BenchGates> = Vec::new();
    for row in &tables.gates {
        if sets.last().is_none_or(|set| set.id != row.set) {
            sets.push(BenchGates { id: row.set.clone(), gates: Vec::new() });
        }
        let gate = GateStand {
            id: row.id.clone(),
            confirmed: bench.gates.get(&row.id).cloned(),
            lifts: Vec::new(),
            figures: row.figures.clone(),
        };
        if let Some(set) = sets.last_mut() {
            set.gates.push(gate);
        }
    }
    sets
}

fn classes(tables: &BenchTables) -> Vec<String> {
    let mut classes: Vec<String> = tables.holes.iter().map(|row| row.class.clone()).collect();
    classes.dedup();
    classes.sort();
    classes.dedup();
    classes
}

fn bore_stand(
    recorded: Option<&Recorded<BoreReadings>>,
    used: Option<&InstrumentUsed>,
    limit_um: Option<f64>,
    words: &Words,
) -> Option<BoreStand> {
    let recorded = recorded?;
    let shape = shape(&recorded.what).ok()?;
    let mut lines = bore_lines(words, &shape, limit_um);
    lines.extend(used.map(|used| instrument_line(words, used, recorded.at)));
    let clockwise = recorded.what.clockwise;
    Some(BoreStand { shape, lines, clockwise, by: recorded.by.clone(), at: recorded.at })
}
