//! The papers: content from where a visit stands, bytes from the press.

use base64::Engine;
use base64::engine::general_purpose::STANDARD;

use crate::content::finding::Finding;
use crate::content::note::Note;
use crate::content::{build_finding, build_note, build_repair};
use crate::model::time::Moment;
use crate::store::photo_files::PhotoSize;
use crate::store::workshop::PaperMade;

use super::bench;
use super::fault::Fault;
use super::press::{Paper, PrintRun};
use super::request::{PaperKind, Sheet};
use super::response::{PaperFile, Response};
use super::steady::Inner;

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

/// A paper for a person, and a memory of how it was made, so that a handover file's is made alike.
pub(super) fn paper(
    inner: &mut Inner,
    visit: &str,
    kind: PaperKind,
    locale: &str,
    sheet: Sheet,
) -> Result<Response, Fault> {
    let file = printed(inner, visit, kind, (locale, sheet))?;
    if kind != PaperKind::ShortText {
        let made = PaperMade { locale: locale.to_owned(), sheet: sheet.id().to_owned() };
        // The paper is worth more than the memory of it: a full disk does not hold it back.
        let _ = inner.store.paper_made(visit, kind.id(), &made);
    }
    Ok(Response::Paper(file))
}

/// A paper in a language and on a sheet.
pub(super) fn printed(
    inner: &mut Inner,
    visit: &str,
    kind: PaperKind,
    (locale, sheet): (&str, Sheet),
) -> Result<PaperFile, Fault> {
    let at = inner.standing(visit)?.updated_at;
    let named = |ending: &str| name(kind.id(), visit, locale, ending);
    Ok(match kind {
        PaperKind::ShortText => {
            let text = written_note(inner, visit, locale)?.short_text;
            let (name, mime) = (named("txt"), "text/plain".to_owned());
            PaperFile { name, mime, base64: STANDARD.encode(&text), text: Some(text) }
        }
        PaperKind::Finding => {
            let finding = written_finding(inner, visit, locale)?;
            pdf(named("pdf"), &print(inner, Paper::Finding(&finding), sheet, at)?)
        }
        PaperKind::Repair => {
            let (standing, words) = (inner.standing(visit)?, inner.words(locale)?);
            let bench = bench::stand(inner, visit, locale)?;
            let record = build_repair(&standing, &bench, &inner.workshop, &words);
            pdf(named("pdf"), &print(inner, Paper::Repair(&record), sheet, at)?)
        }
        PaperKind::Note => {
            let note = written_note(inner, visit, locale)?;
            pdf(named("pdf"), &print(inner, Paper::Note(&note), sheet, at)?)
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
    let photo = |sha256: &str| inner.store.photo(sha256, PhotoSize::Full).ok();
    Ok(inner.press.print(paper, &PrintRun { sheet, at, photo: &photo })?)
}

fn pdf(name: String, bytes: &[u8]) -> PaperFile {
    PaperFile { name, mime: "application/pdf".to_owned(), base64: STANDARD.encode(bytes), text: None }
}

/// Kind, the end of the visit's id and the language: nothing a person typed.
fn name(kind: &str, visit: &str, locale: &str, ending: &str) -> String {
    let id = visit.rsplit('-').next().unwrap_or(visit);
    format!("{kind}-{id}-{locale}.{ending}")
}
