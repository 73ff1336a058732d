//! The words behind `steady bore` and `steady skim`. Lengths stay text here; the core reads them.

use std::path::PathBuf;

use lexopt::{Arg, Parser};
use steady_core::app::failure::Failure;
use steady_core::model::bore::SkimAxis;

use super::{Command, file_and_json, unknown, value};
use crate::fault;

/// Which bore to measure.
#[derive(Debug, Default, PartialEq, Eq)]
pub struct Bore {
    /// The bore file.
    pub file: PathBuf,
    /// Print one JSON object.
    pub json: bool,
}

/// Which bore to skim, and how.
#[derive(Debug, Default, PartialEq, Eq)]
pub struct Skim {
    /// The bore file.
    pub file: PathBuf,
    /// Depth of one pass, on the diameter.
    pub pass: String,
    /// The axis, if chosen.
    pub axis: Option<SkimAxis>,
    /// Thinnest wall now, if given.
    pub wall: Option<String>,
    /// Least wall that may be left, if given.
    pub wall_min: Option<String>,
    /// Print one JSON object.
    pub json: bool,
}

/// Reads the words behind `bore`.
pub fn bore(words: &mut Parser) -> Result<Command, Failure> {
    let Some((file, json)) = file_and_json(words)? else { return Ok(Command::Help) };
    named(&file)?;
    Ok(Command::Bore(Bore { file, json }))
}

/// Reads the words behind `skim`.
pub fn skim(words: &mut Parser) -> Result<Command, Failure> {
    let mut how = Skim::default();
    while let Some(arg) = words.next().map_err(|_| unknown())? {
        match arg {
            Arg::Long("pass") => how.pass = text(words)?,
            Arg::Long("axis") => how.axis = Some(axis(&text(words)?)?),
            Arg::Long("wall") => how.wall = Some(text(words)?),
            Arg::Long("wall-min") => how.wall_min = Some(text(words)?),
            Arg::Long("json") => how.json = true,
            Arg::Long("help") | Arg::Short('h') => return Ok(Command::Help),
            Arg::Value(file) if how.file.as_os_str().is_empty() => how.file = file.into(),
            _ => return Err(unknown()),
        }
    }
    named(&how.file)?;
    if how.pass.is_empty() {
        return Err(fault::failure(
            "no-pass",
            "skim needs the depth of a pass",
            "Give it on the diameter: --pass 0.001in",
        ));
    }
    Ok(Command::Skim(how))
}

fn named(file: &std::path::Path) -> Result<(), Failure> {
    if file.as_os_str().is_empty() {
        return Err(fault::failure(
            "no-bore-file",
            "a bore file is needed",
            "Name one: steady bore FILE.csv; README.md shows its form.",
        ));
    }
    Ok(())
}

fn text(words: &mut Parser) -> Result<String, Failure> {
    value(words)?.into_string().map_err(|_| unknown())
}

fn axis(word: &str) -> Result<SkimAxis, Failure> {
    match word {
        "datum" => Ok(SkimAxis::Datum),
        "free" => Ok(SkimAxis::Free),
        _ => Err(fault::failure("bad-axis", "the axis is not known", "Give --axis datum or --axis free.")),
    }
}

#[cfg(test)]
mod tests {
    use super::{Bore, Command, Skim, SkimAxis};
    use crate::args::read;
    use lexopt::Parser;

    #[track_caller]
    fn check(line: &str, expected: Result<Command, &str>) {
        let found = read(Parser::from_args(line.split_whitespace()));
        assert_eq!(found.map_err(|failure| failure.code), expected.map_err(str::to_owned), "{line}");
    }

    #[test]
    fn a_bore_and_its_skim_are_asked_for() {
        check("bore b.csv --json", Ok(Command::Bore(Bore { file: "b.csv".into(), json: true })));
        let whole = Skim {
            file: "b.csv".into(),
            pass: "0.001in".to_owned(),
            axis: Some(SkimAxis::Free),
            wall: Some("6mm".to_owned()),
            wall_min: Some("4".to_owned()),
            json: false,
        };
        check("skim b.csv --pass 0.001in --axis free --wall 6mm --wall-min=4", Ok(Command::Skim(whole)));
        check("skim --help", Ok(Command::Help));
    }

    #[test]
    fn what_is_missing_is_named() {
        check("bore", Err("no-bore-file"));
        check("bore a.csv b.csv", Err("unknown-argument"));
        check("skim b.csv", Err("no-pass"));
        check("skim b.csv --pass", Err("missing-value"));
        check("skim b.csv --pass 1thou --axis spindle", Err("bad-axis"));
    }
}
