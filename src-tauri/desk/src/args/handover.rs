//! The grammar of the commands that hand visits over, erase them and keep them safe.

use std::path::PathBuf;

use lexopt::{Arg, Parser};
use steady_core::app::failure::Failure;
use steady_core::app::request::Sheet;

use super::{folder, paper, unknown, value};
use crate::fault;

/// One of the commands, with what it works on.
#[derive(Debug, PartialEq, Eq)]
pub struct Handover {
    /// Which.
    pub task: Task,
    /// Data folder, if given.
    pub data: Option<PathBuf>,
    /// Print one JSON object.
    pub json: bool,
}

/// The papers of an export; what is not given is as each was last made.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Papers {
    /// Their language.
    pub lang: Option<String>,
    /// Their sheet.
    pub paper: Option<Sheet>,
}

/// What to do.
#[derive(Debug, PartialEq, Eq)]
pub enum Task {
    /// Visits into a file; none means all.
    Export { visits: Vec<String>, out: PathBuf, papers: Option<Papers> },
    /// A file into the data folder.
    Import { file: PathBuf },
    /// A file looked at.
    Verify { file: PathBuf },
    /// A visit erased.
    Erase { visit: String, word: String },
    /// Everything into a folder.
    Backup { folder: PathBuf },
    /// A folder's backup into the data folder.
    Restore { folder: PathBuf },
    /// What a database still gives.
    Salvage { file: PathBuf },
}

/// The words of these commands.
pub const COMMANDS: [&str; 7] = ["export", "import", "verify", "erase", "backup", "restore", "salvage"];

/// Reads what follows one of [`COMMANDS`]; nothing where help was asked for.
pub fn read(command: &str, words: &mut Parser) -> Result<Option<Handover>, Failure> {
    let mut given = Given::default();
    while let Some(arg) = words.next().map_err(|_| unknown())? {
        match arg {
            Arg::Long("help") | Arg::Short('h') => return Ok(None),
            Arg::Long("json") if command != "erase" => given.json = true,
            Arg::Long("data") if command != "verify" => given.data = Some(folder(words)?),
            Arg::Long("out") if command == "export" => given.out = Some(folder(words)?),
            Arg::Long("papers") if command == "export" => given.papers = true,
            Arg::Long("lang") if command == "export" => given.how.lang = Some(paper::language(words)?),
            Arg::Long("paper") if command == "export" => given.how.paper = Some(paper::sheet(words)?),
            Arg::Long("confirm") if command == "erase" => {
                given.word = Some(value(words)?.to_string_lossy().into_owned());
            }
            Arg::Value(value) if command == "export" || given.values.is_empty() => {
                given.values.push(value.into())
            }
            _ => return Err(unknown()),
        }
    }
    let (data, json) = (given.data.take(), given.json);
    Ok(Some(Handover { task: given.task(command)?, data, json }))
}

#[derive(Default)]
struct Given {
    values: Vec<PathBuf>,
    data: Option<PathBuf>,
    out: Option<PathBuf>,
    word: Option<String>,
    papers: bool,
    how: Papers,
    json: bool,
}

impl Given {
    fn task(mut self, command: &str) -> Result<Task, Failure> {
        if command == "export" {
            let visits = self.values.iter().map(|value| value.to_string_lossy().into_owned()).collect();
            let out = self.out.ok_or_else(|| lacking("export needs --out FILE"))?;
            if !self.papers && self.how != Papers::default() {
                return Err(lacking("--lang and --paper go with --papers"));
            }
            let papers = self.papers.then_some(self.how);
            return Ok(Task::Export { visits, out, papers });
        }
        let one = self.values.pop().ok_or_else(|| lacking("the command lacks what it works on"))?;
        Ok(match command {
            "import" => Task::Import { file: one },
            "verify" => Task::Verify { file: one },
            "erase" => {
                let word = self.word.ok_or_else(|| lacking("erase needs --confirm WORD"))?;
                Task::Erase { visit: one.to_string_lossy().into_owned(), word }
            }
            "backup" => Task::Backup { folder: one },
            "restore" => Task::Restore { folder: one },
            _ => Task::Salvage { file: one },
        })
    }
}

fn lacking(what: &str) -> Failure {
    fault::failure("missing-argument", what, "See steady --help.")
}

#[cfg(test)]
mod tests {
    use super::{Handover, Papers, Task, read};
    use lexopt::Parser;
    use steady_core::app::request::Sheet;

    fn words(line: &str) -> (String, Parser) {
        let (command, rest) = line.split_once(' ').unwrap_or((line, ""));
        (command.to_owned(), Parser::from_args(rest.split_whitespace()))
    }

    #[track_caller]
    fn check(line: &str, task: Task, data: Option<&str>, json: bool) {
        let (command, mut words) = words(line);
        let expected = Handover { task, data: data.map(Into::into), json };
        assert_eq!(read(&command, &mut words).expect("the line is read"), Some(expected), "{line}");
    }

    #[track_caller]
    fn refused(line: &str, code: &str) {
        let (command, mut words) = words(line);
        assert_eq!(read(&command, &mut words).expect_err("the line is refused").code, code, "{line}");
    }

    #[test]
    fn each_command_takes_its_own_words() {
        let all = || Task::Export { visits: Vec::new(), out: "a.steady".into(), papers: None };
        check("export --out a.steady", all(), None, false);
        let two = Task::Export {
            visits: vec!["v".into(), "w".into()],
            out: "a.steady".into(),
            papers: Some(Papers::default()),
        };
        check("export v --json w --out=a.steady --papers --data d", two, Some("d"), true);
        let papers = Some(Papers { lang: Some("fr".into()), paper: Some(Sheet::UsLetter) });
        let french = Task::Export { visits: Vec::new(), out: "a.steady".into(), papers };
        check("export --out a.steady --papers --lang fr --paper us-letter", french, None, false);
        check("import a.steady --data d", Task::Import { file: "a.steady".into() }, Some("d"), false);
        check("verify a.steady --json", Task::Verify { file: "a.steady".into() }, None, true);
        let erase = Task::Erase { visit: "v".into(), word: "TR-1".into() };
        check("erase v --confirm TR-1", erase, None, false);
        check("backup d --json", Task::Backup { folder: "d".into() }, None, true);
        check("restore d", Task::Restore { folder: "d".into() }, None, false);
        check("salvage steady.db", Task::Salvage { file: "steady.db".into() }, None, false);
        let (command, mut words) = words("erase --help");
        assert_eq!(read(&command, &mut words).expect("the line is read"), None);
    }

    #[test]
    fn what_is_lacking_or_too_much_is_refused() {
        refused("export", "missing-argument");
        refused("export v", "missing-argument");
        refused("export v --out", "missing-value");
        refused("export --out a --lang de", "missing-argument");
        refused("export --out a --papers --paper a5", "bad-paper");
        refused("import a --lang de", "unknown-argument");
        refused("import", "missing-argument");
        refused("import a b", "unknown-argument");
        refused("verify a --data d", "unknown-argument");
        refused("erase v", "missing-argument");
        refused("erase --confirm w", "missing-argument");
        refused("erase v --json --confirm w", "unknown-argument");
        refused("backup", "missing-argument");
        refused("salvage a --out b", "unknown-argument");
    }
}
