//! The papers: content from where a visit stands, bytes from the press.

use crate::content::finding::Finding;
use crate::content::note::Note;
use crate::content::{build_before_after, build_finding, build_machinist, build_note, build_repair};
use crate::model::time::Moment;
use crate::store::fault::StoreFault;
use crate::store::photo_files::PhotoSize;

use super::fault::Fault;
use super::press::{Paper, PhotoFound, PrintRun};
use super::request::{PaperKind, Sheet};
use super::response::Response;
use super::steady::Inner;
use super::{bench, qr};

pub(super) fn finding(inner: &mut Inner, visit: &str, locale: &str) -> Result<Response, Fault> {
    Ok(Response::Finding(Box::new(written_finding(inner, visit, locale)?)))
}

pub(super) fn note(inner: &mut Inner, visit: &str, locale: &str) -> Result<Response, Fault> {
    Ok(Response::Note(Box::new(written_note(inner, visit, locale)?)))
}

/// The hash of the note as it reads now.
pub(super) fn note_sha256(inner: &mut Inner, visit: &str, locale: &str) -> Result<String, Fault> {
    Ok(written_note(inner, visit, locale)?.sha256)
}

/// A printed paper.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Printed {
    /// File name without anything a person typed.
    pub name: String,
    /// `application/pdf` or `text/plain`.
    pub mime: &'static str,
    /// PDF/A-3a, or UTF-8 text.
    pub bytes: Vec<u8>,
    /// The text itself, for `text/plain`.
    pub text: Option<String>,
}

/// A paper in a language and on a sheet.
pub(super) fn printed(
    inner: &mut Inner,
    visit: &str,
    kind: PaperKind,
    (locale, sheet): (&str, Sheet),
) -> Result<Printed, Fault> {
    let at = inner.standing(visit)?.updated_at;
    let named = |ending: &str| name(kind.id(), visit, locale, ending);
    Ok(match kind {
        PaperKind::ShortText => {
            let text = written_note(inner, visit, locale)?.short_text;
            let bytes = text.clone().into_bytes();
            Printed { name: named("txt"), mime: "text/plain", bytes, text: Some(text) }
        }
        PaperKind::Finding => {
            let finding = written_finding(inner, visit, locale)?;
            pdf(named("pdf"), print(inner, Paper::Finding(&finding), sheet, at)?)
        }
        PaperKind::Repair => {
            let (standing, words) = (inner.standing(visit)?, inner.words(locale)?);
            let bench = bench::stand(inner, visit, locale)?;
            let record = build_repair(&standing, &bench, &inner.workshop, &words);
            pdf(named("pdf"), print(inner, Paper::Repair(&record), sheet, at)?)
        }
        PaperKind::Machinist => {
            let (standing, words) = (inner.standing(visit)?, inner.words(locale)?);
            let bench = bench::stand(inner, visit, locale)?;
            let page = build_machinist(&standing, &bench, &inner.workshop, qr::visit(visit)?, &words);
            pdf(named("pdf"), print(inner, Paper::Machinist(&page), sheet, at)?)
        }
        PaperKind::BeforeAfter => {
            let (standing, words) = (inner.standing(visit)?, inner.words(locale)?);
            let bench = bench::stand(inner, visit, locale)?;
            let page = build_before_after(&standing, &bench, &inner.workshop, &words);
            pdf(named("pdf"), print(inner, Paper::BeforeAfter(&page), sheet, at)?)
        }
        PaperKind::Note => {
            let note = written_note(inner, visit, locale)?;
            pdf(named("pdf"), print(inner, Paper::Note(&note), sheet, at)?)
        }
    })
}

fn written_finding(inner: &mut Inner, visit: &str, locale: &str) -> Result<Finding, Fault> {
    let (standing, words) = (inner.standing(visit)?, inner.words(locale)?);
    let bench = bench::stand(inner, visit, locale)?;
    let verdict = bench.is_begun().then_some(&bench.verdict);
    Ok(build_finding(&standing, verdict, &inner.workshop, &words))
}

pub(super) fn written_note(inner: &mut Inner, visit: &str, locale: &str) -> Result<Note, Fault> {
    let (standing, words) = (inner.standing(visit)?, inner.words(locale)?);
    Ok(build_note(&standing, &inner.workshop, &words))
}

/// The document carries the date of the visit's latest entry, so the same ledger gives the same bytes.
fn print(inner: &Inner, paper: Paper<'_>, sheet: Sheet, at: Moment) -> Result<Vec<u8>, Fault> {
    let photo = |sha256: &str| match inner.store.photo(sha256, PhotoSize::Full) {
        Ok(jpeg) => PhotoFound::Whole(jpeg),
        Err(StoreFault::PhotoDamaged) => PhotoFound::Damaged,
        Err(_) => PhotoFound::Missing,
    };
    Ok(inner.press.print(paper, &PrintRun { sheet, at, photo: &photo })?)
}

fn pdf(name: String, bytes: Vec<u8>) -> Printed {
    Printed { name, mime: "application/pdf", bytes, text: None }
}

/// Kind, the end of the visit's id and the language: nothing a person typed.
fn name(kind: &str, visit: &str, locale: &str, ending: &str) -> String {
    let id = visit.rsplit('-').next().unwrap_or(visit);
    format!("{kind}-{id}-{locale}.{ending}")
}
