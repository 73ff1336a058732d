//! A visit's ledger for reading.

use std::collections::HashMap;

use crate::model::answer::AnswerValue;
use crate::model::bench::{BenchBody, BoreStage};
use crate::model::device::DeviceStand;
use crate::model::entry::{Entry, EntryBody};
use crate::model::standing::UndoOffer;
use crate::walk::record;

use super::at_hand::AtHand;
use super::fault::Fault;
use super::response::{History, HistoryLine, Response};
use super::steady::Inner;
use super::{devices, history_change, outcome};

pub(super) fn history(inner: &mut Inner, visit: &str) -> Result<Response, Fault> {
    let (known, own) = (inner.devices.clone(), inner.writer.device.clone());
    let AtHand { chain, record, .. } = inner.read(visit)?;
    let superseded = record::superseded(chain.entries.iter(), &record.withdrawn);
    let stands =
        |entry: &Entry| !record.withdrawn.contains(&entry.hash) && !superseded.contains(entry.hash.as_str());
    // A code is worked out once a device, not once a line.
    let mut writers: HashMap<&str, DeviceStand> = HashMap::new();
    let mut writer =
        |device| writers.entry(device).or_insert_with(|| devices::stand(device, &own, &known)).clone();
    let mut entries = Vec::new();
    for (place, entry) in chain.entries.iter().enumerate() {
        let before = chain.entries.get(..place).unwrap_or_default();
        entries.push(line(entry, before, (writer(&entry.device), stands(entry))));
    }
    Ok(Response::History(History { visit: visit.to_owned(), entries }))
}

fn line(entry: &Entry, before: &[Entry], (device, stands): (DeviceStand, bool)) -> HistoryLine {
    let mut said = said(&entry.body);
    let mut took_back = None;
    if let EntryBody::Withdrawn { entry: taken, .. } = &entry.body
        && let Some(taken) = before.iter().rev().find(|one| one.hash == *taken)
    {
        let Said { what, about, value, causes, .. } = self::said(&taken.body);
        took_back = Some(what.to_owned());
        said = Said { about, value, causes, ..said };
    }
    HistoryLine {
        seq: entry.seq,
        at: entry.at,
        hash: entry.hash.clone(),
        what: said.what.to_owned(),
        about: said.about,
        took_back,
        changes: history_change::changes(entry, before),
        value: said.value.cloned(),
        causes: said.causes,
        reason: said.reason.map(str::to_owned),
        by: said.by.to_owned(),
        device,
        superseded: !stands,
    }
}

/// The bench's undo of an entry, told as the history tells the entry.
pub(super) fn bench_offer(entry: &Entry) -> UndoOffer {
    let said = said(&entry.body);
    let gate = match &entry.body {
        EntryBody::Bench { bench: BenchBody::GateConfirmed { gate }, .. } => Some(gate.clone()),
        _ => None,
    };
    UndoOffer {
        entry: entry.hash.clone(),
        what: said.what.to_owned(),
        step: None,
        gate,
        set: None,
        by: said.by.to_owned(),
        at: entry.at,
        needs_reason: false,
    }
}

#[derive(Default)]
struct Said<'a> {
    what: &'static str,
    about: Option<String>,
    value: Option<&'a AnswerValue>,
    causes: Vec<String>,
    reason: Option<&'a str>,
    by: &'a str,
}

fn said(body: &EntryBody) -> Said<'_> {
    let plain = |what: &'static str, by| Said { what, by, ..Said::default() };
    match body {
        EntryBody::Opened { by, .. } => plain("opened", by),
        EntryBody::Amended { reason, by, .. } => Said { reason: reason.as_deref(), ..plain("amended", by) },
        EntryBody::OrderChosen { order, by } => {
            Said { about: Some(order.id().to_owned()), ..plain("order-chosen", by) }
        }
        EntryBody::GateConfirmed { gate, by, .. } => {
            Said { about: Some(gate.clone()), ..plain("gate-confirmed", by) }
        }
        EntryBody::LiftSaid { lift, by, .. } => {
            Said { about: Some(lift.id().to_owned()), ..plain("lift-said", by) }
        }
        EntryBody::PartLeft { set, by } => Said { about: Some(set.clone()), ..plain("part-left", by) },
        EntryBody::Answered { step, value, reason, by, .. } => Said {
            about: Some(step.clone()),
            value: Some(value),
            reason: reason.as_deref(),
            ..plain("answered", by)
        },
        EntryBody::PhotoKept { of, by, .. } => {
            Said { about: Some(of.clone().into()), ..plain("photo-kept", by) }
        }
        EntryBody::PhotoMarked { of, by, .. } => {
            Said { about: Some(of.clone().into()), ..plain("photo-marked", by) }
        }
        EntryBody::PhotosPaired { step, by, .. } => {
            Said { about: Some(step.clone()), ..plain("photos-paired", by) }
        }
        EntryBody::PhotoWaived { step, reason, by } => {
            Said { about: Some(step.clone()), reason: Some(reason), ..plain("photo-waived", by) }
        }
        EntryBody::Withdrawn { reason, by, .. } => {
            Said { reason: reason.as_deref(), ..plain("withdrawn", by) }
        }
        EntryBody::OpinionGiven { cause, reason, by } => {
            Said { causes: vec![cause.clone()], reason: Some(reason), ..plain("opinion-given", by) }
        }
        EntryBody::OutcomeConfirmed { outcome, by } => {
            Said { causes: outcome::shown_causes(outcome), ..plain("outcome-confirmed", by) }
        }
        EntryBody::Bench { bench, by } => bench_said(bench, by),
        EntryBody::Arranged { what, by } => Said { about: Some(what.clone()), ..plain("arranged", by) },
        EntryBody::Received { receipt } => {
            Said { about: Some(receipt.decision.id().to_owned()), ..plain("received", &receipt.name) }
        }
    }
}

fn bench_said<'a>(bench: &'a BenchBody, by: &'a str) -> Said<'a> {
    let plain = |what: &'static str| Said { what, by, ..Said::default() };
    match bench {
        BenchBody::Gauged { step, .. } => Said { about: Some(step.clone()), ..plain("gauged") },
        BenchBody::GateConfirmed { gate } => Said { about: Some(gate.clone()), ..plain("gate-confirmed") },
        BenchBody::BoreRead { stage: BoreStage::Found, .. } => plain("bore-found"),
        BenchBody::BoreRead { stage: BoreStage::Behind, .. } => plain("bore-behind"),
        BenchBody::SleeveOut { .. } => plain("sleeve-out"),
        BenchBody::BoreRead { stage: BoreStage::Finished, .. } => plain("bore-finished"),
        BenchBody::Looked { .. } => plain("housing-looked"),
        BenchBody::PassCut { .. } => plain("pass-cut"),
        BenchBody::FitGiven { .. } => plain("fit-given"),
        BenchBody::RingTurned { .. } => plain("ring-turned"),
        BenchBody::RunOutRead { .. } => plain("run-out-read"),
        BenchBody::Noted { text } => Said { reason: Some(text), ..plain("bench-noted") },
    }
}
