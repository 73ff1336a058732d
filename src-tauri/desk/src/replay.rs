//! `steady replay`: a case file through the core, then its papers and a report.
//!
//! What a case means is the core's business ([`steady_core::app::replay`]); this reads the file,
//! writes the papers and prints.

mod summary;

use std::fs;
use std::path::{Path, PathBuf};

use serde_json::Value;
use steady_core::app::Steady;
use steady_core::app::failure::Failure;
use steady_core::app::replay::{Replayed, replay};
use steady_core::app::request::PaperKind;
use tempfile::TempDir;

use crate::args::Replay;
use crate::{fault, house, say};

/// A case file is a few kilobytes; a larger one is some other file.
const LARGEST_CASE: u64 = steady_core::model::limits::CASE_BYTES;
/// Language of the papers where none is given.
const LOCALE: &str = "en";
/// The repair record, of a case that recorded something at the bench.
const REPAIR: (PaperKind, &str) = (PaperKind::Repair, "repair.pdf");
/// The papers of a visit and their file names.
const PAPERS: [(PaperKind, &str); 3] =
    [(PaperKind::Finding, "finding.pdf"), (PaperKind::Note, "note.pdf"), (PaperKind::ShortText, "note.txt")];

/// Runs the command.
pub fn run(how: &Replay) -> Result<(), Failure> {
    let case = read_case(&how.case)?;
    let bench = Folder::choose(how.data.as_deref())?;
    let steady = house::open(bench.path())?;
    let base = how.case.parent().unwrap_or_else(|| Path::new(""));
    let mut replayed = replay(&steady, &case, base)?;
    let papers = match &how.out {
        Some(out) => write_papers(&steady, &replayed, how, out)?,
        None => Vec::new(),
    };
    if let Value::Object(report) = &mut replayed.report {
        report.insert("papers".to_owned(), papers.iter().map(|path| path.display().to_string()).collect());
    }
    say::line(&if how.json { replayed.report.to_string() } else { summary::of(&replayed.report) });
    Ok(())
}

fn read_case(path: &Path) -> Result<String, Failure> {
    let unreadable = |what: String| {
        fault::failure("case-unreadable", what, "Name a case file that exists and that you may read.")
    };
    let length =
        fs::metadata(path).map_err(|error| unreadable(format!("the case file: {}", fault::cause(&error))))?;
    if length.len() > LARGEST_CASE {
        return Err(unreadable("the case file is larger than any case".to_owned()));
    }
    fs::read_to_string(path).map_err(|error| unreadable(format!("the case file: {}", fault::cause(&error))))
}

/// The data folder of a replay; one nobody named goes away with the value.
enum Folder {
    Named(PathBuf),
    Passing(TempDir),
}

impl Folder {
    fn choose(named: Option<&Path>) -> Result<Self, Failure> {
        if let Some(path) = named {
            return Ok(Self::Named(path.to_owned()));
        }
        tempfile::Builder::new().prefix("steady-replay-").tempdir().map(Self::Passing).map_err(|error| {
            fault::failure(
                "no-temporary-folder",
                format!("a temporary folder: {}", fault::cause(&error)),
                "Free some space, or name a folder with --data DIR.",
            )
        })
    }

    fn path(&self) -> &Path {
        match self {
            Self::Named(path) => path,
            Self::Passing(folder) => folder.path(),
        }
    }
}

fn write_papers(
    steady: &Steady,
    replayed: &Replayed,
    how: &Replay,
    out: &Path,
) -> Result<Vec<PathBuf>, Failure> {
    fs::create_dir_all(out).map_err(|error| unwritten(&error))?;
    let (locale, sheet) = (how.lang.as_deref().unwrap_or(LOCALE), how.sheet.unwrap_or_default());
    let papers = PAPERS.into_iter().chain(replayed.benched.then_some(REPAIR));
    let written = papers.map(|(paper, name)| {
        let path = out.join(name);
        let printed = steady.print(&replayed.visit, paper, locale, sheet)?;
        fs::write(&path, printed.bytes).map_err(|error| unwritten(&error))?;
        Ok(path)
    });
    written.collect()
}

fn unwritten(error: &std::io::Error) -> Failure {
    fault::failure(
        "out-unwritable",
        format!("the folder for the papers: {}", fault::cause(error)),
        "Name another with --out DIR, or free some space.",
    )
}
