//! The command line's grammar: words in, [`Command`] out. Runs nothing.

pub mod handover;
pub mod measure;
pub mod paper;
pub mod workshop;

use std::ffi::OsString;
use std::path::PathBuf;

use lexopt::{Arg, Parser};
use steady_core::app::failure::Failure;
use steady_core::app::request::Sheet;

use crate::fault;

pub mod bore;

/// What `--help` prints.
pub const HELP: &str = "\
Steady: checks the bearing that steadies a prop shaft, and carries what was found to the owner.

Usage
  steady serve [--data DIR] [--port N] [--no-open]
      Serves the screens to a browser on this computer alone.
  steady replay CASE.json [--data DIR] [--out DIR [--lang TAG] [--paper SHEET]] [--json]
      Drives a written case through the core, as a screen would.
  steady bore FILE.csv [--json]
      Size and shape of a bore from its readings, and what they cannot see.
  steady skim FILE.csv --pass 0.001in [--axis datum|free] [--wall 6mm] [--wall-min 4mm] [--json]
      Passes until the cutter has touched all round, and the wall left.
  steady gauge FILE [--json]
      Judges the readings of a gauge on the shaft, with their uncertainty.
  steady fit --bearing-od MM (--class CLASS | --bore MM) --housing MATERIAL [--temp A..B] [...] [--json]
      Works out the fit of a bearing in its seat, cold and hot.
  steady export [VISIT...] --out FILE.steady [--papers [--lang TAG] [--paper SHEET]] [--data DIR] [--json]
      Writes visits, all of them if none is named, into a signed handover file.
  steady import FILE.steady [--data DIR] [--json]
      Takes in a handover file: all of it, or nothing. What is here already grows by what is new.
  steady verify FILE.steady [--json]
      Checks every byte, chain and photo of a handover file, and says who made it.
  steady erase VISIT --confirm WORD [--data DIR]
      Erases a visit for good, at its owner's wish. WORD is its plate or the last block of its id.
  steady backup DIR [--data DIR] [--json]
  steady restore DIR [--data DIR] [--json]
      Makes or renews a backup in a folder; takes in what a backup holds and the data folder does not.
  steady salvage STEADY.DB [--data DIR] [--json]
      Takes in every visit of a set-aside, damaged database that still verifies.
  steady workshop [FILE.json] [--data DIR] [--json]
      Takes the workshop's own particulars from a file; without one, prints them.
  steady outcome VISIT --cause ID... [--by NAME] [--data DIR]
      Records what was really there, as seen at teardown or after the repair.
  steady sorted VISIT [--knowledge VERSION] [--json] [--data DIR]
      Sorts a visit again by the knowledge it was sorted by, or by another version that sorted here.

Options
  --data DIR   Folder of the visits; the platform's data folder if not given.
               (replay: a folder that is removed at the end).
  --port N     Port on 127.0.0.1; a free one if not given.
  --no-open    Only print the address.
  --pass LEN   Depth of a pass, on the diameter. Lengths end in mm, um, in or thou; mm if bare.
  --axis WHICH Cut about the datum axis, or a free one; the datum where the readings know it.
  --wall LEN, --wall-min LEN
               Thinnest wall now (or wall= in the file), and the least that may be left.
  --cause ID   outcome: a cause that was there, or normal-character alone; once for each.
  --knowledge VERSION
               sorted: sort by this version; that which the visit recorded if not given.
  --by NAME    outcome: who says so; the technician if not given.
  --out DIR    replay: write finding.pdf, note.pdf and note.txt there.
  --lang TAG   Language of the papers: en, de, es or fr. English for replay; for export, the one each paper
               was last made in.
  --paper SHEET
               a4 or us-letter. A4 for replay; for export, the sheet each paper was last made on.
  --json       Print one JSON object instead of a summary.

Sizes of fit, in mm; each measured one wins over its class, and takes its uncertainty (95 %) in um
  --bearing-od, --bearing-bore, --bearing-width   nominal sizes of the bearing
  --od, --od-u, --bore, --bore-u                  measured: outside of the bearing, bore of its seat
  --class N7   --group C3                         hole class of the seat, clearance group of the bearing
  --housing A356   --housing-od                   material and outside diameter of the housing
  --sleeve mild-steel --sleeve-od --sleeve-od-u --housing-bore --housing-bore-u
  --temp 20..100                                  lowest and highest temperature in use, Celsius

  --help, --version

Exit status: 0 done; 2 refused, with `code: message` and what to do on standard error.";

/// What was asked for.
#[derive(Debug, PartialEq, Eq)]
pub enum Command {
    /// Print the help.
    Help,
    /// Print the version.
    Version,
    /// Serve the screens.
    Serve(Serve),
    /// Replay a case.
    Replay(Replay),
    /// Measure a bore.
    Bore(bore::Bore),
    /// Plan to skim a bore.
    Skim(bore::Skim),
    /// Judge the readings of a gauge.
    Gauge(measure::Gauge),
    /// Work out a fit.
    Fit(measure::Fit),
    /// Hand over, erase, back up.
    Handover(handover::Handover),
    /// Record an outcome.
    Outcome(Outcome),
    /// Sort a visit as it was sorted.
    Sorted(Sorted),
    /// Take or print the workshop's particulars.
    Workshop(workshop::Workshop),
}

/// The visit to sort by knowledge of another version.
#[derive(Debug, Default, PartialEq, Eq)]
pub struct Sorted {
    /// The visit's id.
    pub visit: String,
    /// Version, if given.
    pub knowledge: Option<String>,
    /// Print one JSON object.
    pub json: bool,
    /// Data folder, if given.
    pub data: Option<PathBuf>,
}

/// The outcome to record.
#[derive(Debug, Default, PartialEq, Eq)]
pub struct Outcome {
    /// The visit's id.
    pub visit: String,
    /// The causes that were there.
    pub causes: Vec<String>,
    /// Who says so, if given.
    pub by: Option<String>,
    /// Data folder, if given.
    pub data: Option<PathBuf>,
}

/// How to serve.
#[derive(Debug, Default, PartialEq, Eq)]
pub struct Serve {
    /// Data folder, if given.
    pub data: Option<PathBuf>,
    /// Port; 0 takes a free one.
    pub port: u16,
    /// Do not open a browser.
    pub no_open: bool,
}

/// What to replay and what to do with it.
#[derive(Debug, Default, PartialEq, Eq)]
pub struct Replay {
    /// The case file.
    pub case: PathBuf,
    /// Data folder, if given.
    pub data: Option<PathBuf>,
    /// Folder for the papers, if they are wanted.
    pub out: Option<PathBuf>,
    /// Language of the papers, if given.
    pub lang: Option<String>,
    /// Their sheet, if given.
    pub paper: Option<Sheet>,
    /// Print one JSON object.
    pub json: bool,
}

/// Reads the command line.
pub fn read(mut words: Parser) -> Result<Command, Failure> {
    let command = match words.next().map_err(|_| unknown())? {
        Some(Arg::Value(word)) if word == "serve" => serve(&mut words)?,
        Some(Arg::Value(word)) if word == "replay" => replay(&mut words)?,
        Some(Arg::Value(word)) if word == "outcome" => outcome(&mut words)?,
        Some(Arg::Value(word)) if word == "sorted" => sorted(&mut words)?,
        Some(Arg::Value(word)) if word == "workshop" => workshop::read(&mut words)?,
        Some(Arg::Value(word)) if word == "bore" => bore::bore(&mut words)?,
        Some(Arg::Value(word)) if word == "skim" => bore::skim(&mut words)?,
        Some(Arg::Value(word)) if word == "gauge" => measure::gauge(&mut words)?,
        Some(Arg::Value(word)) if word == "fit" => measure::fit(&mut words)?,
        Some(Arg::Value(word)) => match handover::COMMANDS.iter().find(|command| word == **command) {
            Some(command) => handover::read(command, &mut words)?.map_or(Command::Help, Command::Handover),
            None => return Err(unknown()),
        },
        Some(Arg::Long("help") | Arg::Short('h')) | None => Command::Help,
        Some(Arg::Long("version") | Arg::Short('V')) => Command::Version,
        Some(_) => return Err(unknown()),
    };
    Ok(command)
}

fn serve(words: &mut Parser) -> Result<Command, Failure> {
    let mut how = Serve::default();
    while let Some(arg) = words.next().map_err(|_| unknown())? {
        match arg {
            Arg::Long("data") => how.data = Some(folder(words)?),
            Arg::Long("port") => how.port = port(&value(words)?)?,
            Arg::Long("no-open") => how.no_open = true,
            Arg::Long("help") | Arg::Short('h') => return Ok(Command::Help),
            _ => return Err(unknown()),
        }
    }
    Ok(Command::Serve(how))
}

fn replay(words: &mut Parser) -> Result<Command, Failure> {
    let mut how = Replay::default();
    while let Some(arg) = words.next().map_err(|_| unknown())? {
        match arg {
            Arg::Long("data") => how.data = Some(folder(words)?),
            Arg::Long("out") => how.out = Some(folder(words)?),
            Arg::Long("lang") => how.lang = Some(paper::language(words)?),
            Arg::Long("paper") => how.paper = Some(paper::sheet(words)?),
            Arg::Long("json") => how.json = true,
            Arg::Long("help") | Arg::Short('h') => return Ok(Command::Help),
            Arg::Value(case) if how.case.as_os_str().is_empty() => how.case = case.into(),
            _ => return Err(unknown()),
        }
    }
    if how.case.as_os_str().is_empty() {
        return Err(fault::failure(
            "no-case",
            "replay needs a case file",
            "Name one: steady replay CASE.json",
        ));
    }
    Ok(Command::Replay(how))
}

fn outcome(words: &mut Parser) -> Result<Command, Failure> {
    let mut how = Outcome::default();
    while let Some(arg) = words.next().map_err(|_| unknown())? {
        match arg {
            Arg::Long("cause") => how.causes.push(text(words)?),
            Arg::Long("by") => how.by = Some(text(words)?),
            Arg::Long("data") => how.data = Some(folder(words)?),
            Arg::Long("help") | Arg::Short('h') => return Ok(Command::Help),
            Arg::Value(visit) if how.visit.is_empty() => how.visit = readable(visit)?,
            // More causes may follow one --cause.
            Arg::Value(cause) if !how.causes.is_empty() => how.causes.push(readable(cause)?),
            _ => return Err(unknown()),
        }
    }
    if how.visit.is_empty() || how.causes.is_empty() {
        return Err(fault::failure(
            "no-outcome",
            "outcome needs a visit and what was really there",
            "Name both: steady outcome VISIT --cause ID",
        ));
    }
    Ok(Command::Outcome(how))
}

fn sorted(words: &mut Parser) -> Result<Command, Failure> {
    let mut how = Sorted::default();
    while let Some(arg) = words.next().map_err(|_| unknown())? {
        match arg {
            Arg::Long("knowledge") => how.knowledge = Some(text(words)?),
            Arg::Long("json") => how.json = true,
            Arg::Long("data") => how.data = Some(folder(words)?),
            Arg::Long("help") | Arg::Short('h') => return Ok(Command::Help),
            Arg::Value(visit) if how.visit.is_empty() => how.visit = readable(visit)?,
            _ => return Err(unknown()),
        }
    }
    if how.visit.is_empty() {
        return Err(fault::failure("no-visit", "sorted needs a visit", "Name one: steady sorted VISIT"));
    }
    Ok(Command::Sorted(how))
}

fn text(words: &mut Parser) -> Result<String, Failure> {
    value(words).and_then(readable)
}

fn readable(word: OsString) -> Result<String, Failure> {
    word.into_string().map_err(|_| unknown())
}

fn folder(words: &mut Parser) -> Result<PathBuf, Failure> {
    value(words).map(PathBuf::from)
}

fn value(words: &mut Parser) -> Result<OsString, Failure> {
    words
        .value()
        .ok()
        .filter(|value| !value.is_empty())
        .ok_or_else(|| fault::failure("missing-value", "an option lacks its value", "See steady --help."))
}

/// One file and whether JSON is wanted, as `bore` and `gauge` take them; none where help is asked for. The file is
/// empty where none was named.
fn file_and_json(words: &mut Parser) -> Result<Option<(PathBuf, bool)>, Failure> {
    let (mut file, mut json) = (PathBuf::new(), false);
    while let Some(arg) = words.next().map_err(|_| unknown())? {
        match arg {
            Arg::Long("json") => json = true,
            Arg::Long("help") | Arg::Short('h') => return Ok(None),
            Arg::Value(named) if file.as_os_str().is_empty() => file = named.into(),
            _ => return Err(unknown()),
        }
    }
    Ok(Some((file, json)))
}

fn port(word: &OsString) -> Result<u16, Failure> {
    word.to_str().and_then(|word| word.parse().ok()).ok_or_else(|| {
        fault::failure(
            "bad-port",
            "the port is not a number from 0 to 65535",
            "Give another, or leave --port out.",
        )
    })
}

/// The word itself is not repeated: it may be a name or a plate.
fn unknown() -> Failure {
    fault::failure("unknown-argument", "there is an argument that Steady does not know", "See steady --help.")
}

#[cfg(test)]
mod tests {
    use super::measure::{Fit, Gauge};
    use super::workshop::Workshop;
    use super::{Command, Outcome, Replay, Serve, Sorted, read};
    use lexopt::Parser;
    use steady_core::app::request::Sheet;

    fn words(line: &str) -> Parser {
        Parser::from_args(line.split_whitespace())
    }

    #[track_caller]
    fn check(line: &str, expected: Command) {
        assert_eq!(read(words(line)).expect("the line is read"), expected, "{line}");
    }

    #[track_caller]
    fn refused(line: &str, code: &str) {
        assert_eq!(read(words(line)).expect_err("the line is refused").code, code, "{line}");
    }

    #[test]
    fn options_stand_in_any_order() {
        check("", Command::Help);
        check("--version", Command::Version);
        check("serve", Command::Serve(Serve::default()));
        check(
            "serve --no-open --port 8123 --data here",
            Command::Serve(Serve { data: Some("here".into()), port: 8123, no_open: true }),
        );
        let whole = || {
            Command::Replay(Replay {
                case: "a.json".into(),
                data: Some("d".into()),
                out: Some("o".into()),
                lang: Some("de".into()),
                paper: Some(Sheet::UsLetter),
                json: true,
            })
        };
        check("replay a.json --data d --out o --lang de --paper us-letter --json", whole());
        check("replay --json --paper=us-letter --lang=de --out=o --data=d a.json", whole());
        let told = |file: Option<&str>| Workshop { file: file.map(Into::into), data: None, json: false };
        check("workshop", Command::Workshop(told(None)));
        check("workshop w.json", Command::Workshop(told(Some("w.json"))));
        check("serve --port 1 --help", Command::Help);
        check("gauge --json g.json", Command::Gauge(Gauge { file: "g.json".into(), json: true }));
        let values = [("class", "N7"), ("temp", "-20..100")].map(|(name, value)| (name.into(), value.into()));
        check("fit --class N7 --temp=-20..100", Command::Fit(Fit { values: values.into(), json: false }));
        let told = Command::Outcome(Outcome {
            visit: "v".into(),
            causes: vec!["misfire".into(), "low-idle".into()],
            by: Some("Robin".into()),
            data: Some("d".into()),
        });
        check("outcome v --cause misfire low-idle --by Robin --data d", told);
    }

    #[test]
    fn what_is_not_understood_is_refused() {
        refused("start", "unknown-argument");
        refused("serve extra", "unknown-argument");
        refused("serve --out o", "unknown-argument");
        refused("replay a.json b.json", "unknown-argument");
        refused("replay", "no-case");
        refused("replay a.json --paper letter", "bad-paper");
        refused("replay a.json --paper", "missing-value");
        refused("replay a.json --lang xx", "unknown-locale");
        refused("workshop a.json b.json", "unknown-argument");
        refused("gauge", "no-file");
        refused("gauge a.json b.json", "unknown-argument");
        refused("fit --colour red", "unknown-argument");
        refused("fit 72", "unknown-argument");
        refused("fit --class", "missing-value");
        let told = Command::Sorted(Sorted {
            visit: "v".to_owned(),
            knowledge: Some("k".to_owned()),
            json: true,
            ..Sorted::default()
        });
        check("sorted v --knowledge k --json", told);
        refused("sorted --json", "no-visit");
        refused("outcome", "no-outcome");
        refused("outcome v", "no-outcome");
        refused("outcome v w --cause misfire", "unknown-argument");
        refused("serve --data", "missing-value");
        refused("serve --port 65536", "bad-port");
        refused("serve --port -1", "bad-port");
    }
}
