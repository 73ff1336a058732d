//! The printing press, as the core sees it: content in, bytes out. `steady-papers` builds one.

use crate::content::{
    before_after::BeforeAfter, finding::Finding, machinist::MachinistSheet, note::Note, repair::RepairRecord,
};
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
    /// The page that the machinist works by.
    Machinist(&'a MachinistSheet),
    /// The bore before and after, for the customer.
    BeforeAfter(&'a BeforeAfter),
}

/// What a press needs beside the words.
pub struct PrintRun<'a> {
    /// Sheet to lay it out on.
    pub sheet: Sheet,
    /// The date the document carries; the same ledger and date give the same bytes.
    pub at: Moment,
    /// A photo by its SHA-256.
    pub photo: &'a dyn Fn(&str) -> PhotoFound,
}

/// What was found where a photo's file has to be.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum PhotoFound {
    /// Its JPEG bytes, proven by its hash.
    Whole(Vec<u8>),
    /// No file.
    Missing,
    /// A file with other bytes: no evidence, and not to be printed as any.
    Damaged,
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
