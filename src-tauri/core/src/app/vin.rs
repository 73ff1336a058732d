//! A VIN read from a photo of its barcode. The photo is looked at and forgotten; nothing is written.

use crate::photos::barcode;
use crate::walk::vin;

use super::fault::{Fault, Refusal};
use super::response::{Response, VinRead};
use super::steady::Inner;

/// Reads an upload, and drops it whatever it shows.
pub(super) fn read(inner: &mut Inner, upload: &str) -> Result<Response, Fault> {
    let bytes = inner.store.upload(upload)?;
    inner.store.drop_upload(upload);
    let texts = barcode::texts(&bytes)?;
    let vin = texts.iter().find_map(|text| vin::within(text)).ok_or(Refusal::NoVinInPhoto)?;
    Ok(Response::Vin(VinRead { hint: vin::hint(&vin), vin }))
}
