//! Takes a handover file in: every ledger by union, every photo before the entries that name it, all in
//! one transaction that is kept only after the last byte of the file was right.

use std::collections::BTreeSet;
use std::io::{self, Read};

use super::super::derive;
use super::super::drawn::DrawnFor;
use super::super::fault::{Fault, Refusal};
use super::super::list;
use super::super::response::Response;
use super::super::steady::Inner;
use super::Imported;
use super::seen::{Seen, photo_of};
use crate::handover::fault::HandoverFault;
use crate::handover::manifest::{MANIFEST, PartKind};
use crate::handover::read::Reader;
use crate::model::limits::{self, Beyond};
use crate::model::line::Line;
use crate::store::fault::StoreFault;
use crate::store::ledger::{LineFault, check_lines};
use crate::store::merge::{MergeFault, Merging, Origin};
use crate::store::staging::Staging;
use crate::store::uploads::MAX_PIECE_BYTES;
use crate::trade::Trade;
use crate::walk::{former, record};

/// One piece of a handover file that a screen sends.
pub fn take_piece(inner: &Inner, upload: &str, index: u32, piece: &[u8]) -> Result<Response, Fault> {
    if piece.len() as u64 > MAX_PIECE_BYTES {
        return Err(Refusal::UploadTooLarge.into());
    }
    let added = inner.store.add_piece_up_to(limits::HANDOVER_BYTES, upload, index, piece);
    let bytes = added.map_err(|fault| match fault {
        StoreFault::UploadTooLarge => HandoverFault::TooLarge { part: MANIFEST.to_owned() }.into(),
        fault => Fault::Store(fault),
    })?;
    Ok(Response::Uploaded { bytes })
}

/// The file that a screen has sent.
pub fn import_upload(inner: &mut Inner, upload: &str) -> Result<Response, Fault> {
    let file = inner.store.upload_file(upload)?;
    let imported = import(inner, &mut io::BufReader::new(file));
    inner.store.drop_upload(upload);
    Ok(Response::Imported(imported?))
}

pub fn import(inner: &mut Inner, source: &mut dyn Read) -> Result<Imported, Fault> {
    let mut reader = Reader::open(source)?;
    let own = own_ids(inner)?;
    let staging = inner.store.staging()?;
    let place = Place { trade: &inner.trade, drawn: &inner.drawn, device: &inner.writer.device };
    let taken = inner.store.merging(|merging| {
        let origin = Origin::File { own: &own };
        let mut work =
            Work { merging, origin, place, staging, seen: Seen::default(), wanted: BTreeSet::new() };
        let mut imported = Imported::default();
        while let Some(part) = reader.upcoming().map(|part| part.name.clone()) {
            work.part(&mut reader, &part, &mut imported)?;
        }
        let missing = reader.manifest().missing.clone();
        reader.finish()?;
        work.seen.complete(&missing)?;
        if imported.taken.is_empty() && imported.unchanged == 0 && imported.erased > 0 {
            return Err(Refusal::VisitErased.into());
        }
        work.staging.keep()?;
        Ok::<_, Fault>(imported)
    });
    inner.ledger_changed()?;
    taken
}

/// Where visits are taken in: what their cards are derived with.
#[derive(Clone, Copy)]
pub struct Place<'a> {
    /// The drawn networks.
    pub drawn: &'a DrawnFor,
    pub trade: &'a Trade,
    pub device: &'a str,
}

struct Work<'a, 'm> {
    merging: &'a Merging<'m>,
    origin: Origin<'a>,
    place: Place<'a>,
    staging: Staging,
    seen: Seen,
    /// Photos of the visits that are taken.
    wanted: BTreeSet<String>,
}

impl Work<'_, '_> {
    fn part<R: Read>(
        &mut self,
        reader: &mut Reader<R>,
        name: &str,
        imported: &mut Imported,
    ) -> Result<(), Fault> {
        match PartKind::of(name) {
            Some(PartKind::Ledger(visit)) => {
                let lines = self.seen.ledger(reader, name)?;
                self.ledger(&visit, name, &lines, imported)
            }
            Some(PartKind::Photo(sha256)) => {
                imported.photos += u64::from(self.photo(reader, name, &sha256)?);
                Ok(())
            }
            Some(PartKind::Thumb(sha256)) => self.photo(reader, name, &sha256).map(|_| ()),
            Some(PartKind::Paper) | None => Ok(reader.pass_on(&mut io::sink())?),
        }
    }

    fn ledger(
        &mut self,
        visit: &str,
        part: &str,
        lines: &[Line],
        imported: &mut Imported,
    ) -> Result<(), Fault> {
        if self.merging.is_erased(visit)? {
            check_lines(visit, lines).map_err(|fault| line_fault(fault, part))?;
            imported.erased += 1;
            return Ok(());
        }
        self.wanted.extend(lines.iter().filter_map(photo_of));
        let added = take_in(self.merging, self.place, visit, (lines, self.origin))
            .map_err(|fault| named(fault, part))?;
        imported.entries += added;
        if added == 0 {
            imported.unchanged += 1;
        } else {
            imported.taken.push(visit.to_owned());
        }
        Ok(())
    }

    /// Whether the photo belongs to a visit that is taken.
    fn photo<R: Read>(&mut self, reader: &mut Reader<R>, name: &str, sha256: &str) -> Result<bool, Fault> {
        let bytes = self.seen.photo(reader, name)?;
        let wanted = self.wanted.contains(sha256);
        if let Some(file) = name.strip_prefix("photos/").filter(|_| wanted) {
            self.staging.add(file, &bytes)?;
        }
        Ok(wanted)
    }
}

/// Why one visit was not taken in.
pub enum TakeFault {
    /// Its lines.
    Merge(MergeFault),
    /// What they add up to, or storage.
    Other(Fault),
}

/// Merges one visit and writes its card; gives back how many entries were not here.
pub fn take_in(
    merging: &Merging<'_>,
    place: Place<'_>,
    visit: &str,
    (lines, origin): (&[Line], Origin<'_>),
) -> Result<u64, TakeFault> {
    let plan = merging.plan(visit, lines, origin).map_err(TakeFault::Merge)?;
    if plan.added() == 0 {
        return Ok(0);
    }
    let (entries, broken_at) = (&plan.chain.entries, plan.chain.broken_at);
    let record = &former::named(place.trade, record::read(entries));
    let stands = derive::Visit { id: visit, entries, record, broken_at, device: place.device };
    let other = |fault: Fault| TakeFault::Other(fault);
    let standing =
        derive::standing(place.trade, stands, place.drawn).map_err(|refusal| other(refusal.into()))?;
    merging.keep(&plan).map_err(|fault| other(fault.into()))?;
    merging.write_card(&list::card(&standing)).map_err(|fault| other(fault.into()))?;
    Ok(plan.added() as u64)
}

/// Every id that this data folder writes or wrote under.
fn own_ids(inner: &Inner) -> Result<Vec<String>, Fault> {
    let mut own = inner.store.former_devices()?;
    own.push(inner.writer.device.clone());
    Ok(own)
}

fn named(fault: TakeFault, part: &str) -> Fault {
    let part = || part.to_owned();
    match fault {
        TakeFault::Merge(MergeFault::Lines(fault)) => line_fault(fault, &part()).into(),
        TakeFault::Merge(MergeFault::Forked) => HandoverFault::Forked { part: part() }.into(),
        TakeFault::Merge(MergeFault::OwnName) => HandoverFault::OwnName { part: part() }.into(),
        TakeFault::Merge(MergeFault::Unsigned) => HandoverFault::Unsigned { part: part() }.into(),
        TakeFault::Merge(MergeFault::Store(fault)) => fault.into(),
        TakeFault::Other(fault) => fault,
    }
}

/// What a fault of lines means for the file that carries them.
pub fn line_fault(fault: LineFault, part: &str) -> HandoverFault {
    match fault {
        LineFault::Broken => HandoverFault::Chain { part: part.to_owned() },
        LineFault::Newer => HandoverFault::Newer,
        LineFault::Unproven => HandoverFault::Unproven { part: part.to_owned() },
        LineFault::Spelling => HandoverFault::Spelling { part: part.to_owned() },
        LineFault::Beyond(Beyond(field)) => HandoverFault::Beyond { part: format!("{part}, {field}") },
    }
}
