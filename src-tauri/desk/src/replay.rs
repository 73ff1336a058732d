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
use steady_core::app::replay::{Replayed, replay_after};
use steady_core::app::request::PaperKind;
use tempfile::TempDir;

use crate::args::Replay;
use crate::house::Begin;
use crate::out::{self, Leave, Output};
use crate::{fault, house, input, say};

/// A case file is a few kilobytes; a larger one is some other file.
const LARGEST_CASE: u64 = steady_core::model::limits::CASE_BYTES;
/// Language of the papers where none is given.
const LOCALE: &str = "en";
/// The repair record, the machinist's sheet and the customer's, of a case that recorded something at the bench.
const BENCH: [(PaperKind, &str); 3] = [
    (PaperKind::Repair, "repair.pdf"),
    (PaperKind::Machinist, "machinist.pdf"),
    (PaperKind::BeforeAfter, "before-after.pdf"),
];
/// The papers of a visit and their file names.
const PAPERS: [(PaperKind, &str); 3] =
    [(PaperKind::Finding, "finding.pdf"), (PaperKind::Note, "note.pdf"), (PaperKind::ShortText, "note.txt")];

/// Runs the command. Papers are written once from the rehearsal, so that a visit is recorded only where they can be.
pub fn run(how: &Replay) -> Result<(), Failure> {
    let case = read_case(&how.case)?;
    let bench = Folder::choose(how)?;
    let steady = house::open(bench.path())?;
    let base = how.case.parent().unwrap_or_else(|| Path::new(""));
    let mut papers = Papers::new(how, bench.path());
    let mut replayed =
        replay_after(&steady, &case, base, |steady, rehearsed| papers.fill(steady, rehearsed))?;
    papers.fill(&steady, &replayed)?;
    let papers = papers.persist()?;
    if let Value::Object(report) = &mut replayed.report {
        report.insert("papers".to_owned(), papers.iter().map(|path| path.display().to_string()).collect());
    }
    say::line(&if how.json { replayed.report.to_string() } else { summary::of(&replayed.report) });
    Ok(())
}

fn read_case(path: &Path) -> Result<String, Failure> {
    let unreadable = |cause: String| {
        let what = format!("the case file: {cause}");
        fault::failure("case-unreadable", what, "Name a case file that exists and that you may read.")
    };
    input::text(path, LARGEST_CASE).map_err(unreadable)
}

/// The data folder of a replay; one nobody named goes away with the value.
enum Folder {
    Named(PathBuf),
    Passing(TempDir),
}

impl Folder {
    fn choose(how: &Replay) -> Result<Self, Failure> {
        if how.data.is_some() {
            return house::data_dir(how.data.as_deref(), Begin::new(how.new)).map(Self::Named);
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

/// The papers of a case on their way to their folder; none where none are wanted.
struct Papers<'a> {
    how: &'a Replay,
    data: &'a Path,
    outputs: Vec<(PaperKind, Output)>,
    /// The folder, if it was made for them: gone again unless they are kept.
    made: Option<PathBuf>,
}

impl<'a> Papers<'a> {
    fn new(how: &'a Replay, data: &'a Path) -> Self {
        Self { how, data, outputs: Vec::new(), made: None }
    }

    /// Writes each paper of a visit, in place of what was written of a rehearsal.
    fn fill(&mut self, steady: &Steady, replayed: &Replayed) -> Result<(), Failure> {
        let Some(out) = &self.how.out else { return Ok(()) };
        if self.outputs.is_empty() {
            self.begin(out, replayed.benched)?;
        }
        for (paper, output) in &mut self.outputs {
            let locale = self.how.lang.as_deref().unwrap_or(LOCALE);
            let sheet = self.how.sheet.unwrap_or_default();
            output.fill(&steady.print(&replayed.visit, *paper, locale, sheet)?.bytes)?;
        }
        Ok(())
    }

    fn begin(&mut self, folder: &Path, benched: bool) -> Result<(), Failure> {
        if !folder.exists() {
            fs::create_dir_all(folder).map_err(|error| out::unwritten(&error))?;
            self.made = Some(folder.to_owned());
        }
        let leave = Leave { replace: self.how.replace, data: self.data };
        for (paper, name) in PAPERS.into_iter().chain(BENCH.into_iter().filter(|_| benched)) {
            self.outputs.push((paper, Output::begin(&folder.join(name), leave)?));
        }
        Ok(())
    }

    fn persist(mut self) -> Result<Vec<PathBuf>, Failure> {
        let outputs = std::mem::take(&mut self.outputs);
        let written = outputs.into_iter().map(|(_, output)| output.persist()).collect::<Result<_, _>>()?;
        self.made = None;
        Ok(written)
    }
}

impl Drop for Papers<'_> {
    fn drop(&mut self) {
        self.outputs.clear();
        if let Some(made) = &self.made {
            // Only where it is empty; whatever else is in there is nobody's to remove.
            let _ = fs::remove_dir(made);
        }
    }
}
