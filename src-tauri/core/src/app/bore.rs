//! A bore file measured or planned to be skimmed, without a visit: what the command line asks for.

use crate::content::note_line;
use crate::measure::bore::csv::read;
use crate::measure::bore::fault::BoreFault;
use crate::measure::bore::shape::shape;
use crate::measure::bore::skim::skim;
use crate::measure::bore::unit::typed_mm;
use crate::model::bore::{BoreNote, BoreShape, SkimAsk, SkimPlan};
use crate::model::limits;
use crate::words::Words;

use super::failure::Failure;
use super::fault::Fault;

/// The shape of the bore in a file's text.
///
/// # Errors
/// A code of `measure/bore/fault.rs` with its sentences; the line of the file stands in the message.
pub fn shape_of(text: &str, words: &Words) -> Result<BoreShape, Failure> {
    read(text).and_then(|readings| shape(&readings)).map_err(|fault| refused(fault, words))
}

/// The skim plan for the bore in a file's text.
///
/// # Errors
/// As [`shape_of`].
pub fn plan_of(text: &str, ask: &SkimAsk, words: &Words) -> Result<SkimPlan, Failure> {
    read(text).and_then(|readings| skim(&readings, ask)).map_err(|fault| refused(fault, words))
}

/// A length as written in an option, such as `0.001in`, in mm; without a unit it is in mm.
///
/// # Errors
/// As [`shape_of`].
pub fn length(text: &str, words: &Words) -> Result<f64, Failure> {
    typed_mm(text, &limits::LENGTH_MM).map_err(|fault| refused(fault, words))
}

/// A note in words, its numbers in the workshop's units.
pub fn sentence(note: &BoreNote, words: &Words) -> String {
    note_line(words, note)
}

fn refused(fault: BoreFault, words: &Words) -> Failure {
    Fault::from(fault).shown(words)
}
