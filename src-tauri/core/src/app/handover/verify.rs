//! Reads a handover file to its end and says what it holds, without a data folder.

use std::io::{self, Read};

use serde::Serialize;

use super::super::failure::Failure;
use super::super::fault::Fault;
use super::super::steady::shown;
use super::import::line_fault;
use super::seen::{Seen, lines};
use crate::handover::manifest::PartKind;
use crate::handover::read::Reader;
use crate::signing::key::PublicKey;
use crate::store::ledger::check_lines;

/// What a whole and unchanged handover file says of itself.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Verified {
    /// Version of the program that made it.
    pub made_by: String,
    /// When, RFC 3339, by the clock of the device.
    pub at: String,
    /// The device that made and signed it: its public key, hexadecimal.
    pub device: String,
    /// That key's short code.
    pub code: String,
    /// Ids of the visits in it.
    pub visits: Vec<String>,
    /// Who wrote the entries of each visit, and how many each.
    pub writers: Vec<Wrote>,
    /// Entries of all ledgers.
    pub entries: u64,
    /// Photos it carries.
    pub photos: u64,
    /// Photos that are named and were not on the device.
    pub photos_missing: u64,
    /// Papers it carries.
    pub papers: u64,
}

/// A device that wrote entries of a visit.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Wrote {
    /// Id of the visit, as the file names it.
    pub visit: String,
    /// Its id: its public key, where it signs.
    pub device: String,
    /// That key's short code; empty for entries from before signatures, which nothing proves.
    pub code: String,
    /// How many entries.
    pub entries: u64,
}

/// Verifies a handover file: signature, every byte, every chain, every photo.
///
/// # Errors
/// The [`Failure`] an import would give, in English.
pub fn verify(source: &mut dyn Read) -> Result<Verified, Failure> {
    read(source).map_err(|fault| shown(&fault, "en"))
}

fn read(source: &mut dyn Read) -> Result<Verified, Fault> {
    let mut reader = Reader::open(source)?;
    let manifest = reader.manifest().clone();
    let mut seen = Seen::default();
    let mut verified = Verified {
        made_by: manifest.made_by,
        at: manifest.at.rfc3339(),
        code: code(&manifest.device),
        device: manifest.device,
        visits: Vec::new(),
        writers: Vec::new(),
        entries: 0,
        photos: 0,
        photos_missing: manifest.missing.len() as u64,
        papers: 0,
    };
    while let Some(part) = reader.upcoming().map(|part| part.name.clone()) {
        match PartKind::of(&part) {
            Some(PartKind::Ledger(visit)) => {
                let lines = lines(&reader.whole()?, &part)?;
                seen.require(&lines);
                check_lines(&visit, &lines).map_err(|fault| line_fault(fault, &part))?;
                verified.entries += lines.len() as u64;
                for line in &lines {
                    signed(&mut verified.writers, &visit, &line.device);
                }
                verified.visits.push(visit);
            }
            Some(PartKind::Photo(_)) => {
                seen.photo(&mut reader, &part)?;
                verified.photos += 1;
            }
            Some(PartKind::Thumb(_)) => {
                seen.photo(&mut reader, &part)?;
            }
            Some(PartKind::Paper) | None => {
                reader.pass_on(&mut io::sink())?;
                verified.papers += 1;
            }
        }
    }
    reader.finish()?;
    seen.complete(&manifest.missing)?;
    Ok(verified)
}

/// Counts an entry for its writer.
fn signed(writers: &mut Vec<Wrote>, visit: &str, device: &str) {
    // Lines come visit by visit, and in each device by device.
    match writers.last_mut().filter(|wrote| wrote.visit == visit && wrote.device == device) {
        Some(wrote) => wrote.entries += 1,
        None => writers.push(Wrote {
            visit: visit.to_owned(),
            device: device.to_owned(),
            code: code(device),
            entries: 1,
        }),
    }
}

/// The short code of a device; empty for an id that is no key.
fn code(device: &str) -> String {
    PublicKey::from_hex(device).map(|key| key.code()).unwrap_or_default()
}
