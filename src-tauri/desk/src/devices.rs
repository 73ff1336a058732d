//! `steady devices`, `device` and `take-back`: who wrote what came in, and what a person decides about it.

use serde_json::json;
use steady_core::app::Steady;
use steady_core::app::devices::{DeviceList, ImportStand};
use steady_core::app::failure::Failure;
use steady_core::app::handover::TakenBack;
use steady_core::app::request::Request;
use steady_core::app::response::Response;
use steady_core::model::device::{DeviceStand, Trust};

use crate::args::devices::{DeviceVerb, Task, Which};
use crate::args::handover::How;
use crate::handover::Said;
use crate::house::Begin;
use crate::{fault, house, say};

/// Characters of an id that are listed, and that tell devices apart.
const SHOWN: usize = 16;

/// Runs the command.
pub fn run(task: &Task) -> Result<(), Failure> {
    let (said, json) = match task {
        Task::Devices { how } => (listed(&list(&opened(how)?)?), how.json),
        Task::TakeBack { import, how } => (taken_back(&opened(how)?, *import)?, how.json),
        Task::Device { decision } => decided(decision)?,
    };
    say::line(&if json { said.value.to_string() } else { said.lines.join("\n") });
    Ok(())
}

fn opened(how: &How) -> Result<Steady, Failure> {
    house::open(&house::data_dir(how.data.as_deref(), Begin::Never)?)
}

fn list(steady: &Steady) -> Result<DeviceList, Failure> {
    as_list(steady.handle(Request::Devices)?)
}

fn as_list(response: Response) -> Result<DeviceList, Failure> {
    match response {
        Response::Devices(list) => Ok(*list),
        _ => Err(fault::internal()),
    }
}

fn decided(decision: &DeviceVerb) -> Result<(Said, bool), Failure> {
    let (which, how) = match decision {
        DeviceVerb::Confirm { which, how, .. }
        | DeviceVerb::Name { which, how, .. }
        | DeviceVerb::Retire { which, how }
        | DeviceVerb::TakeOver { which, how }
        | DeviceVerb::StartOver { which, how } => (which, how),
    };
    let steady = opened(how)?;
    let device = found(&list(&steady)?, which)?;
    let request = match decision {
        DeviceVerb::Confirm { code, .. } => Request::ConfirmDevice { device, code: code.concat() },
        DeviceVerb::Name { name, .. } => Request::NameDevice { device, name: name.clone() },
        DeviceVerb::Retire { .. } => Request::RetireDevice { device },
        DeviceVerb::TakeOver { .. } => Request::TakeOverDevice { device },
        DeviceVerb::StartOver { .. } => Request::ResetDevice { device },
    };
    let decided = match &which.by {
        Some(by) => steady.handle_by(request, by),
        None => steady.handle(request),
    };
    Ok((listed(&as_list(decided?)?), how.json))
}

/// The one device whose id begins so.
fn found(list: &DeviceList, which: &Which) -> Result<String, Failure> {
    let begins = which.device.to_ascii_lowercase();
    let mut fitting = list.devices.iter().filter(|stand| stand.device.starts_with(&begins));
    match (fitting.next(), fitting.next()) {
        (Some(stand), None) => Ok(stand.device.clone()),
        (Some(_), Some(_)) => Err(fault::failure(
            "device-not-one",
            "the ids of several devices begin like that".to_owned(),
            "Give more of its id. `steady devices` lists them. Nothing was changed.",
        )),
        (None, _) => Err(fault::failure(
            "unknown-device",
            "no device is known here whose id begins like that".to_owned(),
            "`steady devices` lists those that are. Nothing was changed.",
        )),
    }
}

fn listed(list: &DeviceList) -> Said {
    let mut lines = vec![format!("This device: {}", list.own.code)];
    lines.extend(list.devices.iter().map(line));
    lines.extend(list.imports.iter().map(import));
    Said { value: json!(list), lines }
}

fn line(stand: &DeviceStand) -> String {
    let id: String = stand.device.chars().take(SHOWN).collect();
    let name = if stand.name.is_empty() { "without a name" } else { &stand.name };
    format!("Device {id} {name}, {}, code {}", trust(stand), stand.code)
}

/// How far a device is trusted, in words.
pub fn trust(stand: &DeviceStand) -> &'static str {
    match (stand.trust, stand.confirmed) {
        (Trust::ThisDevice, _) => "this device",
        (Trust::Confirmed, _) => "confirmed",
        (Trust::Retired, true) => "confirmed, then retired",
        (Trust::Retired, false) => "retired here",
        (Trust::NotConfirmed | Trust::BeforeSignatures, _) => "not yet confirmed",
    }
}

fn import(row: &ImportStand) -> String {
    let state = if row.taken_back.is_some() { ", taken back" } else { "" };
    let ImportStand { import, sender, at, visits, .. } = row;
    format!("Import {import} of {}: {visits} visits from {}{state}", at.rfc3339(), sender.code)
}

fn taken_back(steady: &Steady, import: i64) -> Result<Said, Failure> {
    let Response::TakenBack(done) = steady.handle(Request::TakeBackImport { import })? else {
        return Err(fault::internal());
    };
    let TakenBack { gone, restored, stayed } = &done;
    let lines = [
        ("Out of the list again", gone),
        ("Read as before", restored),
        ("Stay, this device went on with them", stayed),
    ];
    let lines = lines.into_iter().filter(|(_, ids)| !ids.is_empty());
    let lines = lines.map(|(what, ids)| format!("{what}: {}", ids.join(" ")));
    Ok(Said { value: json!(done), lines: lines.collect() })
}
