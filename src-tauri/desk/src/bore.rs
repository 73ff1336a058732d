//! `steady bore` and `steady skim`: a bore file through the core, and what it says for a person or as JSON.
//!
//! What the readings mean is the core's business; this reads the file and prints.

mod lines;

use std::path::Path;

use serde::Serialize;
use serde_json::{Value, json};
use steady_core::app::bore::{length, plan_of, sentence, shape_of};
use steady_core::app::failure::Failure;
use steady_core::model::bore::{BoreNote, SkimAsk};
use steady_core::words::Words;

use crate::args::{File, Skim};
use crate::{fault, input, say};

/// 100,000 readings are a few megabytes; a larger file is some other file.
const LARGEST_FILE: u64 = steady_core::model::limits::BORE_FILE_BYTES;
/// Language of the sentences.
const LOCALE: &str = "en";

/// Runs `bore`.
pub fn measure(how: &File) -> Result<(), Failure> {
    let words = words()?;
    let shape = shape_of(&read(&how.file)?, words)?;
    let notes = sentences(&shape.notes, words);
    say::line(&if how.json { report(&shape, &notes)? } else { lines::of_shape(&shape, &notes, words) });
    Ok(())
}

/// Runs `skim`.
pub fn plan(how: &Skim) -> Result<(), Failure> {
    let words = words()?;
    let asked = |text: &Option<String>| text.as_deref().map(|text| length(text, words)).transpose();
    let ask = SkimAsk {
        pass_diameter_mm: length(&how.pass, words)?,
        axis: how.axis,
        wall_mm: asked(&how.wall)?,
        wall_min_mm: asked(&how.wall_min)?,
        wall_error_mm: asked(&how.wall_error)?,
        sleeve_bore_mm: asked(&how.sleeve_bore)?,
    };
    let plan = plan_of(&read(&how.file)?, &ask, words)?;
    let notes = sentences(&plan.notes, words);
    say::line(&if how.json { report(&plan, &notes)? } else { lines::of_plan(&plan, &notes) });
    Ok(())
}

fn words() -> Result<&'static Words, Failure> {
    Words::of(LOCALE).map_err(|_| fault::internal())
}

fn sentences(notes: &[BoreNote], words: &Words) -> Vec<String> {
    notes.iter().map(|note| sentence(note, words)).collect()
}

/// The answer as it crosses to a screen, with the notes' sentences beside it.
fn report(answer: &impl Serialize, sentences: &[String]) -> Result<String, Failure> {
    let mut value = serde_json::to_value(answer).map_err(|_| fault::internal())?;
    if let Value::Object(answer) = &mut value {
        answer.insert("sentences".to_owned(), json!(sentences));
    }
    Ok(value.to_string())
}

fn read(path: &Path) -> Result<String, Failure> {
    let unreadable = |what: &str| {
        fault::failure(
            "bore-unreadable",
            format!("the bore file: {what}"),
            "Name a text file that exists and that you may read, saved as CSV in UTF-8.",
        )
    };
    input::text(path, LARGEST_FILE).map_err(|what| unreadable(&what))
}
