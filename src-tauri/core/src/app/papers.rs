//! The papers: content from where a visit stands, bytes from the press.

use base64::Engine;
use base64::engine::general_purpose::STANDARD;

use crate::content::{build_finding, build_note, build_repair};
use crate::model::time::Moment;
use crate::store::photo_files::PhotoSize;
use crate::words::Words;

use super::bench;
use super::fault::Fault;
use super::press::{Paper, PrintRun};
use super::request::{PaperKind, Sheet};
use super::response::{PaperFile, Response};
use super::steady::Inner;

pub(super) fn finding(inner: &mut Inner, visit: &str, locale: &str) -> Result<Response, Fault> {
    let words = Words::of(locale)?;
    Ok(Response::Finding(Box::new(build_finding(&inner.standing(visit)?, words))))
}

pub(super) fn note(inner: &mut Inner, visit: &str, locale: &str) -> Result<Response, Fault> {
    let words = Words::of(locale)?;
    Ok(Response::Note(Box::new(build_note(&inner.standing(visit)?, words))))
}

/// The hash of the note as it reads now.
pub(super) fn note_sha256(inner: &mut Inner, visit: &str, locale: &str) -> Result<String, Fault> {
    let words = Words::of(locale)?;
    Ok(build_note(&inner.standing(visit)?, words).sha256)
}

pub(super) fn paper(
    inner: &mut Inner,
    visit: &str,
    kind: PaperKind,
    locale: &str,
    sheet: Sheet,
) -> Result<Response, Fault> {
    let words = Words::of(locale)?;
    let standing = inner.standing(visit)?;
    let at = standing.updated_at;
    let file = match kind {
        PaperKind::ShortText => {
            let text = build_note(&standing, words).short_text;
            PaperFile {
                name: name("note", visit, locale, "txt"),
                mime: "text/plain".to_owned(),
                base64: STANDARD.encode(&text),
                text: Some(text),
            }
        }
        PaperKind::Finding => {
            let finding = build_finding(&standing, words);
            pdf(name("finding", visit, locale, "pdf"), &print(inner, Paper::Finding(&finding), sheet, at)?)
        }
        PaperKind::Repair => {
            let record = build_repair(&standing, &bench::stand(inner, visit, locale)?, words);
            pdf(name("repair", visit, locale, "pdf"), &print(inner, Paper::Repair(&record), sheet, at)?)
        }
        PaperKind::Note => {
            let note = build_note(&standing, words);
            pdf(name("note", visit, locale, "pdf"), &print(inner, Paper::Note(&note), sheet, at)?)
        }
    };
    Ok(Response::Paper(file))
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
