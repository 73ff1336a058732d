//! The printing press, as the core sees it: content in, bytes out. `steady-papers` builds one.

use crate::content::{finding::Finding, note::Note, repair::RepairRecord};
use crate::model::time::Moment;

use super::request::Sheet;

/// A paper to print.
#[derive(Debug, Clone, Copy)]
pub enum Paper<'a> {
    /// The service writer's finding.
    Finding(&'a Finding),
    /// The owner's note.
    Note(&'a Note),
    /// The bench's repair record.
    Repair(&'a RepairRecord),
}

/// What a press needs beside the words.
pub struct PrintRun<'a> {
    /// The sheet.
    pub sheet: Sheet,
    /// The date the document carries; the same ledger and date give the same bytes.
    pub at: Moment,
    /// A photo's JPEG bytes by its SHA-256, if its file is there.
    pub photo: &'a dyn Fn(&str) -> Option<Vec<u8>>,
}

/// Turns content into a PDF.
pub trait Press: Send + Sync {
    /// Prints one paper.
    ///
    /// # Errors
    /// [`PressError`] if the document cannot be laid out.
    fn print(&self, paper: Paper<'_>, run: &PrintRun<'_>) -> Result<Vec<u8>, PressError>;
}

/// Why a paper could not be printed. The text holds nothing a person typed.
#[derive(Debug, thiserror::Error)]
#[error("the paper could not be laid out: {0}")]
pub struct PressError(pub String);
