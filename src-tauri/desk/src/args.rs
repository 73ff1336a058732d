//! The command line's grammar: words in, [`Asked`] out. Runs nothing. Help, suggestions, completions and the manual
//! are made from what stands here.

pub mod devices;
pub mod fit;
pub mod handover;
pub mod paper;
mod refusal;

use std::ffi::OsString;
use std::path::PathBuf;

use clap::builder::{NonEmptyStringValueParser, PossibleValuesParser, TypedValueParser as _};
use clap::{Args, CommandFactory as _, Parser, Subcommand};
use clap_complete::Shell;
use steady_core::app::failure::Failure;
use steady_core::app::request::Sheet;
use steady_core::model::bore::SkimAxis;

/// What the words ask for.
#[derive(Debug, PartialEq, Eq)]
pub enum Asked {
    /// A command to run.
    Run(Command),
    /// Help, or the version: to be printed as it is.
    Say(String),
}

/// Checks the bearing that steadies a prop shaft, and carries what was found to the owner
#[derive(Debug, Parser)]
#[command(
    name = "steady",
    version,
    args_override_self = true,
    max_term_width = 100,
    after_help = "Exit status: 0 done; 2 refused, with `code: message` and what to do on standard error."
)]
pub struct CommandLine {
    #[command(subcommand)]
    command: Option<Command>,
}

/// One command.
#[derive(Debug, PartialEq, Eq, Subcommand)]
pub enum Command {
    /// Serve the screens to a browser on this computer alone
    Serve(Serve),
    /// Drive a written case through the core, as a screen would
    Replay(Replay),
    /// Size and shape of a bore from its readings, and what they cannot see
    Bore(File),
    /// Passes until the cutter has touched all round, and the wall left
    Skim(Skim),
    /// Judge the readings of a gauge on the shaft, with their uncertainty
    Gauge(File),
    /// Work out the fit of a bearing in its seat, cold and hot
    Fit(fit::Fit),
    #[command(flatten)]
    Handover(handover::Task),
    #[command(flatten)]
    Devices(devices::Task),
    /// Take the workshop's own particulars from a file; without one, print them
    Workshop(Workshop),
    /// Record what was really there, as seen at teardown or after the repair
    Outcome(Outcome),
    /// Sort a visit again by the knowledge it was sorted by, or by another version that sorted here
    Sorted(Sorted),
    /// Print what others made and is built in, and its licences
    Notices,
    /// Print the completions of these commands for a shell
    Completions {
        /// The shell
        shell: Shell,
    },
    /// Write the manual's pages into a folder
    Manual {
        /// The folder; made if it is not there
        #[arg(value_name = "DIR")]
        folder: PathBuf,
    },
}

/// A file that is read, and how it is answered.
#[derive(Debug, PartialEq, Eq, Args)]
pub struct File {
    /// The file of readings; its form stands in demo-data/README.md
    pub file: PathBuf,
    /// Print one JSON object instead of a summary
    #[arg(long)]
    pub json: bool,
}

/// Which bore to skim, and how. Lengths stay text here; the core reads them.
#[derive(Debug, PartialEq, Eq, Args)]
pub struct Skim {
    /// The bore file
    pub file: PathBuf,
    /// Depth of a pass, on the diameter: 0.001in. Lengths end in mm, um, in or thou; mm if bare
    #[arg(long, value_name = "LEN", value_parser = NonEmptyStringValueParser::new())]
    pub pass: String,
    /// Cut about the datum axis, or a free one; the datum where the readings know it
    #[arg(long, value_name = "WHICH", value_parser = axis())]
    pub axis: Option<SkimAxis>,
    /// Thinnest wall now; the file's own wall= if not given
    #[arg(long, value_name = "LEN", allow_negative_numbers = true)]
    pub wall: Option<String>,
    /// Least wall that may be left
    #[arg(long, value_name = "LEN", allow_negative_numbers = true)]
    pub wall_min: Option<String>,
    /// How far the wall may be read off, either way; the file's own wall-error= if not given, else 0.1 mm
    #[arg(long, value_name = "LEN", allow_negative_numbers = true)]
    pub wall_error: Option<String>,
    /// Bore that the new sleeve is pressed into: the wall is what that leaves
    #[arg(long, value_name = "LEN", allow_negative_numbers = true)]
    pub sleeve_bore: Option<String>,
    /// Print one JSON object instead of a summary
    #[arg(long)]
    pub json: bool,
}

/// How to serve.
#[derive(Debug, Default, PartialEq, Eq, Args)]
pub struct Serve {
    /// Folder of the visits; the platform's data folder if not given
    #[arg(long, value_name = "DIR")]
    pub data: Option<PathBuf>,
    /// Begin a new data folder where none of that name is there
    #[arg(long)]
    pub new: bool,
    /// Port on 127.0.0.1; a free one if not given
    #[arg(
        long,
        value_name = "N",
        default_value_t = 0,
        hide_default_value = true,
        allow_negative_numbers = true
    )]
    pub port: u16,
    /// Only print the address
    #[arg(long)]
    pub no_open: bool,
}

/// What to replay and what to do with it.
#[derive(Debug, PartialEq, Eq, Args)]
pub struct Replay {
    /// The case file
    #[arg(value_name = "CASE.json")]
    pub case: PathBuf,
    /// Folder of the visits; one that is removed at the end if not given
    #[arg(long, value_name = "DIR")]
    pub data: Option<PathBuf>,
    /// Begin a new data folder where none of that name is there
    #[arg(long)]
    pub new: bool,
    /// Write the papers there: finding.pdf, note.pdf, note.txt, and repair.pdf, machinist.pdf and before-after.pdf after work at the bench
    #[arg(long, value_name = "DIR")]
    pub out: Option<PathBuf>,
    /// Put the papers in the place of files of their names
    #[arg(long)]
    pub replace: bool,
    /// Language of the papers; English if not given
    #[arg(long, value_name = "TAG", value_parser = paper::language())]
    pub lang: Option<String>,
    /// Sheet of the papers; A4 if not given
    #[arg(long, value_parser = paper::sheet())]
    pub sheet: Option<Sheet>,
    /// Print one JSON object instead of a summary
    #[arg(long)]
    pub json: bool,
}

/// What to do with the workshop's particulars.
#[derive(Debug, Default, PartialEq, Eq, Args)]
pub struct Workshop {
    /// The file to take them from; without one they are printed
    #[arg(value_name = "FILE.json")]
    pub file: Option<PathBuf>,
    /// Folder of the visits; the platform's data folder if not given
    #[arg(long, value_name = "DIR")]
    pub data: Option<PathBuf>,
    /// Begin a new data folder where none of that name is there
    #[arg(long)]
    pub new: bool,
    /// Print one JSON object instead of a summary
    #[arg(long)]
    pub json: bool,
}

/// The outcome to record.
#[derive(Debug, Default, PartialEq, Eq, Args)]
pub struct Outcome {
    /// The visit
    pub visit: String,
    /// A cause that was there, or normal-character alone; more may follow
    #[arg(long = "cause", value_name = "ID", required = true, num_args = 1..)]
    pub causes: Vec<String>,
    /// Who says so; the technician if not given
    #[arg(long, value_name = "NAME")]
    pub by: Option<String>,
    /// Folder of the visits; the platform's data folder if not given
    #[arg(long, value_name = "DIR")]
    pub data: Option<PathBuf>,
}

/// The visit to sort by knowledge of another version.
#[derive(Debug, Default, PartialEq, Eq, Args)]
pub struct Sorted {
    /// The visit
    pub visit: String,
    /// Sort by this version; by that which the visit recorded if not given
    #[arg(long, value_name = "VERSION")]
    pub knowledge: Option<String>,
    /// Print one JSON object instead of a summary
    #[arg(long)]
    pub json: bool,
    /// Folder of the visits; the platform's data folder if not given
    #[arg(long, value_name = "DIR")]
    pub data: Option<PathBuf>,
}

/// Reads the command line, the program's own name first.
pub fn read(words: impl IntoIterator<Item = OsString>) -> Result<Asked, Failure> {
    match CommandLine::try_parse_from(words) {
        Ok(CommandLine { command: Some(command) }) => Ok(Asked::Run(command)),
        Ok(CommandLine { command: None }) => Ok(Asked::Say(CommandLine::command().render_help().to_string())),
        Err(error) => refusal::of(&error),
    }
}

fn axis() -> impl clap::builder::TypedValueParser<Value = SkimAxis> {
    PossibleValuesParser::new(["datum", "free"])
        .map(|which| if which == "datum" { SkimAxis::Datum } else { SkimAxis::Free })
}

#[cfg(test)]
#[path = "args/tests.rs"]
mod tests;
