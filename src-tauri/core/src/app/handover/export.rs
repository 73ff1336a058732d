//! Writes visits into a handover file: for the command line to a file, for a screen into one that it
//! fetches in pieces.

use std::collections::BTreeSet;
use std::io::{self, BufWriter, Cursor, Read, Write};

use super::super::fault::{Fault, Refusal};
use super::super::request::{PaperKind, Sheet};
use super::super::response::{HandoverFile, Response};
use super::super::steady::Inner;
use super::super::{papers, photo};
use super::seen::{photo_of, text};
use super::{Exported, Wanted};
use crate::handover::fault::HandoverFault;
use crate::handover::manifest::{Made, PartKind, ledger_name, photo_names};
use crate::handover::write::{Measured, measure, write};
use crate::store::fault::StoreFault;
use crate::store::ledger::check_lines;
use crate::store::photo_files::PhotoSize;
use crate::store::spool::Spool;
use crate::words::Words;

/// The papers of a visit by the start of their names.
const PAPERS: [(&str, PaperKind); 2] = [("finding", PaperKind::Finding), ("note", PaperKind::Note)];

/// Writes a file for a screen to fetch.
pub fn prepare(inner: &mut Inner, wanted: Wanted<'_>) -> Result<Response, Fault> {
    let (file, going) = inner.store.outgoing().map_err(|fault| Fault::from(fault).of_a_file())?;
    let exported = export(inner, wanted, &mut BufWriter::new(going));
    let exported = exported.inspect_err(|_| inner.store.drop_outgoing(&file)).map_err(Fault::of_a_file)?;
    Ok(Response::Handover(HandoverFile {
        name: file_name(wanted.visits, exported.visits),
        file,
        bytes: exported.bytes,
        left_out: exported.left_out,
        photos_damaged: exported.photos_damaged,
    }))
}

/// Nothing a person typed: the end of the visit's id, or how many there are.
fn file_name(visits: &[String], count: u64) -> String {
    match visits {
        [visit] => format!("visit-{}.steady", visit.rsplit('-').next().unwrap_or(visit)),
        _ => format!("visits-{count}.steady"),
    }
}

pub fn export(inner: &mut Inner, wanted: Wanted<'_>, sink: &mut dyn Write) -> Result<Exported, Fault> {
    let Choice { visits, left_out } = choose(inner, wanted.visits)?;
    let Photos { here: photos, missing, damaged } = photos(inner, &visits)?;
    let mut names: Vec<String> = visits.iter().map(|visit| ledger_name(visit)).collect();
    names.extend(photos.iter().flat_map(|sha256| photo_names(sha256)));
    if wanted.papers {
        let named = |(start, _): &(&str, PaperKind)| {
            let start = (*start).to_owned();
            visits.iter().map(move |visit| format!("papers/{start}-{visit}.pdf"))
        };
        names.extend(PAPERS.iter().flat_map(named));
    }
    let (by, at) = (env!("CARGO_PKG_VERSION").to_owned(), inner.now());
    let made = Made { by, at, device: inner.writer.device.clone() };
    let key = inner.writer.key().clone();
    // A language there are no texts in is refused before anything is written.
    wanted.locale.map(Words::of).transpose()?;
    let mut printed = inner.store.spool();
    let mut open = |name: &str| open_part(inner, &mut printed, name, wanted);
    let parts: Vec<Measured> = names.iter().map(|name| measure(name, &mut open)).collect::<Result<_, _>>()?;
    let bytes = write(made, missing, &parts, &key, (&mut open, sink))?;
    sink.flush().map_err(HandoverFault::Write)?;
    let (visits, photos) = (visits.len() as u64, photos.len() as u64);
    Ok(Exported { visits, photos, bytes, left_out, photos_damaged: damaged })
}

struct Choice {
    visits: BTreeSet<String>,
    left_out: Vec<String>,
}

/// The visits asked for, whose chains have to be whole; or all of them but those whose are not.
fn choose(inner: &Inner, asked: &[String]) -> Result<Choice, Fault> {
    let mut choice = Choice { visits: BTreeSet::new(), left_out: Vec::new() };
    let all = if asked.is_empty() { inner.store.visit_ids()? } else { Vec::new() };
    for visit in asked.iter().chain(&all) {
        let lines = inner.store.lines(visit)?;
        if lines.is_empty() && asked.is_empty() {
            // Its id rotted until nothing is found by it.
            choice.left_out.push(visit.clone());
            continue;
        }
        if lines.is_empty() {
            let erased = inner.store.is_erased(visit)?;
            return Err(if erased { Refusal::VisitErased } else { Refusal::UnknownVisit }.into());
        }
        match check_lines(visit, &lines) {
            Ok(()) => {
                choice.visits.insert(visit.clone());
            }
            Err(_) if asked.is_empty() => choice.left_out.push(visit.clone()),
            Err(_) => return Err(Refusal::ChainBroken.into()),
        }
    }
    match (choice.visits.is_empty(), inner.asides.is_empty()) {
        (false, _) => Ok(choice),
        (true, true) => Err(Refusal::NothingToExport.into()),
        (true, false) => Err(Refusal::NothingToExportSetAside.into()),
    }
}

/// Photos that visits name.
#[derive(Default)]
struct Photos {
    /// Those that are here and whole.
    here: BTreeSet<String>,
    /// Those that cannot go along.
    missing: Vec<String>,
    /// Those of them whose file is here and is not what was kept.
    damaged: Vec<String>,
}

fn photos(inner: &Inner, visits: &BTreeSet<String>) -> Result<Photos, Fault> {
    let mut named = BTreeSet::new();
    for visit in visits {
        named.extend(inner.store.lines(visit)?.iter().filter_map(photo_of));
    }
    let mut photos = Photos::default();
    for sha256 in named {
        let found = photo::read(inner, &sha256, PhotoSize::Full);
        // The thumbnail goes along: made anew now where it has to be.
        match found.and_then(|_| photo::read(inner, &sha256, PhotoSize::Thumb)) {
            Ok(_) => {
                photos.here.insert(sha256);
            }
            Err(fault) => {
                if matches!(fault, Fault::Store(StoreFault::PhotoDamaged)) {
                    photos.damaged.push(sha256.clone());
                }
                photos.missing.push(sha256);
            }
        }
    }
    Ok(photos)
}

fn open_part(
    inner: &mut Inner,
    printed: &mut Spool,
    name: &str,
    wanted: Wanted<'_>,
) -> io::Result<Box<dyn Read>> {
    match PartKind::of(name) {
        Some(PartKind::Ledger(visit)) => {
            let lines = inner.store.lines(&visit).map_err(io::Error::other)?;
            Ok(Box::new(Cursor::new(text(&lines))))
        }
        Some(PartKind::Photo(sha256)) => Ok(Box::new(inner.store.photo_file(&sha256, PhotoSize::Full)?)),
        Some(PartKind::Thumb(sha256)) => {
            let thumb = photo::read(inner, &sha256, PhotoSize::Thumb).map_err(io::Error::other)?;
            Ok(Box::new(Cursor::new(thumb)))
        }
        Some(PartKind::Paper) | None => Ok(Box::new(printed.or_put(name, || paper(inner, name, wanted))?)),
    }
}

/// Printed once, when it is measured; written from the spool.
fn paper(inner: &mut Inner, name: &str, wanted: Wanted<'_>) -> io::Result<Vec<u8>> {
    let unknown = || io::Error::other("no such paper");
    let stem = name.strip_prefix("papers/").and_then(|name| name.strip_suffix(".pdf")).ok_or_else(unknown)?;
    let (start, visit) = stem.split_once('-').ok_or_else(unknown)?;
    let (_, kind) = PAPERS.iter().find(|(known, _)| *known == start).ok_or_else(unknown)?;
    let made = inner.store.last_made(visit, kind.id()).map_err(io::Error::other)?;
    let last = made.as_ref().map(|made| made.locale.clone());
    let locale = wanted.locale.map(str::to_owned).or(last).unwrap_or_else(|| inner.locale());
    let sheet = wanted.sheet.or_else(|| Sheet::from_id(&made?.sheet)).unwrap_or_default();
    let printed = papers::printed(inner, visit, *kind, (&locale, sheet)).map_err(io::Error::other)?;
    Ok(printed.bytes)
}

impl From<HandoverFault> for Fault {
    fn from(fault: HandoverFault) -> Self {
        match fault {
            // A full disk reads the same wherever it is met.
            HandoverFault::Write(source) => match StoreFault::file(source) {
                StoreFault::File(source) => Self::Handover(HandoverFault::Write(source)),
                fault => Self::Store(fault),
            },
            fault => Self::Handover(fault),
        }
    }
}
