//! What a file would change, before anybody agrees to it: who sends it, what it brings, and which ratings would read
//! otherwise.

use std::io::Read;

use serde::Serialize;

use super::super::devices;
use super::super::fault::Fault;
use super::super::steady::Inner;
use super::Imported;
use super::import::{Change, is_milder, walk};
use crate::model::device::{DeviceStand, WriterStand};
use crate::model::rating::Word;
use crate::model::time::Moment;

/// What a file would change.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct Preview {
    /// The device that made the file.
    pub sender: DeviceStand,
    /// When, by that device's clock.
    pub made: Moment,
    /// The visits that are new here or would grow; those whose rating would read milder first.
    pub visits: Vec<PreviewVisit>,
    /// What would be counted afterwards.
    pub imported: Imported,
}

/// A visit that is new here or would grow.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "bindings", derive(ts_rs::TS))]
pub struct PreviewVisit {
    /// Id of the visit, as the file names it.
    pub visit: String,
    /// Make and model as they would read.
    pub label: String,
    /// Plate as it would read.
    pub plate: String,
    /// It is not here yet.
    pub is_new: bool,
    /// Entries that are not here.
    #[cfg_attr(feature = "bindings", ts(type = "number"))]
    pub entries: u64,
    /// Entries that are damaged here and would be whole again.
    #[cfg_attr(feature = "bindings", ts(type = "number"))]
    pub mended: u64,
    /// Its rating now.
    pub before: Option<Word>,
    /// Its rating afterwards.
    pub after: Option<Word>,
    /// The rating would read milder than it does.
    pub milder: bool,
    /// Who wrote it.
    pub writers: Vec<WriterStand>,
}

/// Reads a file to its end and says what it would change; nothing is written.
///
/// # Errors
/// What taking it in would be refused for.
pub fn preview(inner: &mut Inner, source: &mut dyn Read) -> Result<Preview, Fault> {
    let walked = walk(inner, source, None)?;
    let mut visits: Vec<PreviewVisit> = walked.changes.into_iter().map(visit).collect();
    visits.sort_by_key(|visit| !visit.milder);
    Ok(Preview {
        sender: devices::stand(&walked.device, &inner.writer.device, &inner.devices),
        made: walked.made,
        visits,
        imported: walked.imported,
    })
}

fn visit(change: Change) -> PreviewVisit {
    let Change { standing, before, entries, mended } = change;
    let (is_new, milder) = (before.is_none(), is_milder(before.as_ref(), &standing));
    let before = before.flatten().as_deref().and_then(Word::from_id);
    let after = standing.urgency.word;
    PreviewVisit {
        visit: standing.visit,
        label: standing.intake.vehicle.label,
        plate: standing.intake.vehicle.plate,
        is_new,
        entries,
        mended,
        before,
        after,
        milder,
        writers: standing.writers,
    }
}
