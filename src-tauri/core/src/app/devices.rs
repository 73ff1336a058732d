//! Devices that write, and what a person decides about them: whose a code is, what it is called, that it was lost.

use serde::Serialize;

use super::fault::{Fault, Refusal};
use super::qr::scanned;
use super::response::Response;
use super::steady::Inner;
use crate::model::device::{DeviceDecision, DeviceStand, Devices, Trust};
use crate::model::limits;
use crate::model::time::Moment;
use crate::photos::barcode;
use crate::signing::key::PublicKey;
use crate::signing::line::signs;
use crate::store::devices::Decided;

/// The devices and what came from them.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct DeviceList {
    /// The device at hand.
    pub own: DeviceStand,
    /// Every other that was met, the first met first.
    pub devices: Vec<DeviceStand>,
    /// What was decided about them and by whom, the first first.
    pub decided: Vec<DeviceDecision>,
    /// What was taken in, the latest first.
    pub imports: Vec<ImportStand>,
}

/// A file that was taken in.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct ImportStand {
    /// Its number in this data folder, as `TakeBackImport` asks for it.
    #[cfg_attr(feature = "bindings", ts(type = "number"))]
    pub import: i64,
    /// The device that made it.
    pub sender: DeviceStand,
    /// When it was taken in.
    pub at: Moment,
    /// How many visits it brought something of.
    #[cfg_attr(feature = "bindings", ts(type = "number"))]
    pub visits: u64,
    /// When it was taken back, if it was.
    pub taken_back: Option<Moment>,
}

/// A device as it stands here, with its code: that takes the key apart, so it is for what is shown.
pub(super) fn stand(device: &str, own: &str, devices: &Devices) -> DeviceStand {
    let known = devices.get(device);
    DeviceStand {
        device: device.to_owned(),
        code: if device == own {
            PublicKey::own_code(own)
        } else {
            PublicKey::from_hex(device).map(|key| key.code()).unwrap_or_default()
        },
        name: known.map(|known| known.name.clone()).unwrap_or_default(),
        confirmed: known.is_some_and(|known| known.confirmed),
        trust: trust(device, own, devices),
        met: known.filter(|_| device != own).map(|known| known.met),
    }
}

/// Whether nobody here said whose a device is; asked line by line.
pub(super) fn is_doubtful(device: &str, own: &str, devices: &Devices) -> bool {
    let confirmed = devices.get(device).is_some_and(|known| known.confirmed);
    trust(device, own, devices).is_doubtful(confirmed)
}

fn trust(device: &str, own: &str, devices: &Devices) -> Trust {
    match devices.get(device) {
        _ if device == own => Trust::ThisDevice,
        _ if !signs(device) => Trust::BeforeSignatures,
        Some(known) => known.trust,
        None => Trust::NotConfirmed,
    }
}

/// The least trust in what others wrote of a visit, where a person is to be told. What a device wrote that was
/// confirmed before it was retired stays as good as it was.
pub(super) fn doubt(inner: &Inner, visit: &str) -> Result<Option<Trust>, Fault> {
    let own = &inner.writer.device;
    let writers = inner.store.writers(visit)?;
    let stands = writers.iter().map(|device| stand(device, own, &inner.devices));
    Ok(stands.filter(|stand| stand.is_doubtful()).map(|stand| stand.trust).max())
}

/// Every device and every import.
pub(super) fn list(inner: &Inner) -> Result<Response, Fault> {
    let own = &inner.writer.device;
    let stand = |device: &str| stand(device, own, &inner.devices);
    let mut devices: Vec<DeviceStand> =
        inner.devices.keys().filter(|device| *device != own).map(|device| stand(device)).collect();
    devices.sort_by(|a, b| (a.met, &a.device).cmp(&(b.met, &b.device)));
    let imports = inner.store.imports(limits::LISTED_IMPORTS)?.into_iter().map(|row| ImportStand {
        import: row.id,
        sender: stand(&row.device),
        at: row.at,
        visits: row.visits,
        taken_back: row.taken_back,
    });
    let (decided, imports) = (inner.store.decisions()?, imports.collect());
    Ok(Response::Devices(Box::new(DeviceList { own: stand(own), devices, decided, imports })))
}

/// Two people compared a device's code; `code` is what they read, so that a slip of the thumb confirms nothing.
pub(super) fn confirm(
    inner: &mut Inner,
    device: &str,
    code: &str,
    by: Option<&str>,
) -> Result<Response, Fault> {
    let digits = |text: &str| text.chars().filter(char::is_ascii_digit).collect::<String>();
    let known = PublicKey::from_hex(device).ok_or(Refusal::UnknownDevice)?;
    if digits(&known.code()) != digits(code) {
        return Err(Refusal::CodeDiffers.into());
    }
    // Also before anything came from it: a file is looked at before it is taken in.
    written(inner, device, by, &[Decided::Confirmed])
}

/// A photo of the other device's screen shows its whole key.
pub(super) fn confirm_by_photo(
    inner: &mut Inner,
    device: &str,
    upload: &str,
    by: Option<&str>,
) -> Result<Response, Fault> {
    let bytes = inner.store.upload(upload)?;
    inner.store.drop_upload(upload);
    let texts = barcode::texts(&bytes)?;
    let shown = texts.iter().find_map(|text| scanned(text)).ok_or(Refusal::NoDeviceInPhoto)?;
    if shown.hex() != device {
        return Err(Refusal::CodeDiffers.into());
    }
    written(inner, device, by, &[Decided::Confirmed])
}

/// This device took the place of that one: its words stand, and nothing new comes in from it.
pub(super) fn take_over(inner: &mut Inner, device: &str, by: Option<&str>) -> Result<Response, Fault> {
    decide(inner, device, by, &[Decided::Confirmed, Decided::Retired])
}

/// A device is given a name here.
pub(super) fn name(inner: &mut Inner, device: &str, name: &str, by: Option<&str>) -> Result<Response, Fault> {
    let name = name.trim();
    if name.chars().count() > limits::DEVICE_NAME || !limits::is_printable(name, false) {
        return Err(Refusal::DeviceNameTooLong.into());
    }
    decide(inner, device, by, &[Decided::Named(name)])
}

/// A device was lost or replaced.
pub(super) fn retire(inner: &mut Inner, device: &str, by: Option<&str>) -> Result<Response, Fault> {
    decide(inner, device, by, &[Decided::Retired])
}

/// What was decided about a device counts no more.
pub(super) fn reset(inner: &mut Inner, device: &str, by: Option<&str>) -> Result<Response, Fault> {
    decide(inner, device, by, &[Decided::Reset])
}

fn decide(
    inner: &mut Inner,
    device: &str,
    by: Option<&str>,
    decided: &[Decided<'_>],
) -> Result<Response, Fault> {
    if !inner.devices.contains_key(device) {
        return Err(Refusal::UnknownDevice.into());
    }
    written(inner, device, by, decided)
}

fn written(
    inner: &mut Inner,
    device: &str,
    by: Option<&str>,
    decided: &[Decided<'_>],
) -> Result<Response, Fault> {
    if device == inner.writer.device {
        return Err(Refusal::UnknownDevice.into());
    }
    let by = inner.technician(by)?;
    let now = inner.now();
    inner.store.decide(device, decided, (&by, now))?;
    // Outcomes that it wrote teach from now on, or no more.
    inner.ledger_changed()?;
    list(inner)
}
