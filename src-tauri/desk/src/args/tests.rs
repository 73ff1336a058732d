//! Words in, commands or refusals out.

use clap::CommandFactory as _;
use steady_core::app::fit::NAMES;
use steady_core::app::request::Sheet;
use steady_core::model::bore::SkimAxis;

use super::fit::{Fit, OPTIONS, Values};
use super::handover::{Export, How, Task};
use super::{Asked, Command, CommandLine, File, Outcome, Replay, Serve, Skim, Sorted, Workshop, read};

fn asked(line: &str) -> Result<Asked, steady_core::app::failure::Failure> {
    read(std::iter::once("steady").chain(line.split_whitespace()).map(Into::into))
}

#[track_caller]
fn check(line: &str, expected: Command) {
    assert_eq!(asked(line).expect("the line is read"), Asked::Run(expected), "{line}");
}

#[track_caller]
fn refused(line: &str, code: &str) {
    let failure = asked(line).expect_err("the line is refused");
    assert_eq!(failure.code, code, "{line}: {failure:?}");
    let typed = line.split_whitespace().filter(|word| word.contains("secret"));
    for word in typed {
        assert!(!format!("{failure:?}").contains(word), "{line}: {failure:?}");
    }
}

#[track_caller]
fn says(line: &str, parts: &[&str]) {
    let Asked::Say(text) = asked(line).expect("the line is read") else { panic!("{line}: a command") };
    for part in parts {
        assert!(text.contains(part), "{line}: {part} in {text}");
    }
}

#[test]
fn grammar_is_whole() {
    CommandLine::command().debug_assert();
}

#[test]
fn every_value_of_a_fit_has_an_option() {
    let mut options = OPTIONS.map(|(name, ..)| name);
    let mut names = NAMES;
    options.sort_unstable();
    names.sort_unstable();
    assert_eq!(options, names);
}

#[test]
fn options_stand_in_any_order() {
    check("serve", Command::Serve(Serve::default()));
    let port = Serve { data: Some("here".into()), port: 8123, no_open: true, new: true };
    check("serve --no-open --port 8123 --data here --new", Command::Serve(port));
    let whole = || {
        Command::Replay(Replay {
            case: "a.json".into(),
            data: Some("d".into()),
            new: true,
            out: Some("o".into()),
            replace: true,
            lang: Some("de".into()),
            sheet: Some(Sheet::UsLetter),
            json: true,
        })
    };
    check("replay a.json --data d --new --out o --replace --lang de --sheet us-letter --json", whole());
    check("replay --json --new --replace --sheet=us-letter --lang=de --out=o --data=d a.json", whole());
    check(
        "replay --json --new --replace --sheet a4 --sheet=us-letter --lang=de --out=o --data=d a.json",
        whole(),
    );
    let workshop = |file: Option<&str>| Workshop { file: file.map(Into::into), ..Workshop::default() };
    check("workshop", Command::Workshop(workshop(None)));
    check("workshop w.json", Command::Workshop(workshop(Some("w.json"))));
    check("gauge --json g.json", Command::Gauge(File { file: "g.json".into(), json: true }));
    check("bore b.csv --json", Command::Bore(File { file: "b.csv".into(), json: true }));
    let skim = Skim {
        file: "b.csv".into(),
        pass: "0.001in".to_owned(),
        axis: Some(SkimAxis::Free),
        wall: Some("6mm".to_owned()),
        wall_min: Some("4".to_owned()),
        wall_error: Some("0.05".to_owned()),
        sleeve_bore: Some("75mm".to_owned()),
        json: false,
    };
    let line =
        "skim b.csv --pass 0.001in --axis free --wall 6mm --wall-min=4 --wall-error 0.05 --sleeve-bore 75mm";
    check(line, Command::Skim(skim));
    let values = [("class", "N7"), ("temp", "-20..100")].map(|(name, value)| (name.into(), value.into()));
    let fit = || Command::Fit(Fit { values: Values(values.clone().into()), json: false });
    check("fit --class N7 --temp=-20..100", fit());
    check("fit --temp -20..100 --class N7", fit());
    let outcome = Outcome {
        visit: "v".into(),
        causes: vec!["misfire".into(), "low-idle".into()],
        by: Some("Robin".into()),
        data: Some("d".into()),
    };
    check("outcome v --cause misfire low-idle --by Robin --data d", Command::Outcome(outcome));
    let sorted = Sorted { visit: "v".into(), knowledge: Some("k".into()), json: true, data: None };
    check("sorted v --knowledge k --json", Command::Sorted(sorted));
}

#[test]
fn visits_are_handed_over_erased_and_kept_safe() {
    let check = |line: &str, task: Task| check(line, Command::Handover(task));
    let how = |data: Option<&str>, json: bool| How { data: data.map(Into::into), json };
    let all = || Export {
        visits: Vec::new(),
        out: "a.steady".into(),
        replace: false,
        papers: false,
        lang: None,
        sheet: None,
        how: How::default(),
    };
    check("export --out a.steady", Task::Export(all()));
    let two =
        Export { visits: vec!["v".into(), "w".into()], papers: true, how: how(Some("d"), true), ..all() };
    check("export v --json w --out=a.steady --papers --data d", Task::Export(two));
    let french = Export { papers: true, lang: Some("fr".into()), sheet: Some(Sheet::UsLetter), ..all() };
    check("export --out a.steady --papers --lang fr --sheet us-letter", Task::Export(french));
    check(
        "import a.steady --data d",
        Task::Import {
            file: "a.steady".into(),
            look: false,
            yes: false,
            new: false,
            how: how(Some("d"), false),
        },
    );
    let import =
        |look, yes| Task::Import { file: "a.steady".into(), look, yes, new: false, how: How::default() };
    check("import a.steady --look", import(true, false));
    check("import a.steady --yes", import(false, true));
    check("verify a.steady --json", Task::Verify { file: "a.steady".into(), json: true });
    let erase = Task::Erase { visit: "v".into(), word: "TR-1".into(), how: How::default() };
    check("erase v --confirm TR-1", erase);
    let backup = |list, check| Task::Backup { folder: "d".into(), list, check, how: how(None, true) };
    check("backup d --json", backup(false, false));
    check("backup --list d --json", backup(true, false));
    check("backup --check d --json", backup(false, true));
    let restore =
        |generation| Task::Restore { folder: "d".into(), generation, new: false, how: How::default() };
    check("restore d", restore(None));
    check("restore d --generation 2026-11-25", restore(Some("2026-11-25".to_owned())));
    check("salvage steady.db", Task::Salvage { file: "steady.db".into(), new: false, how: How::default() });
}

#[test]
fn each_command_has_help_of_its_own() {
    says("", &["Usage: steady", "serve", "salvage", "Exit status"]);
    says("--version", &[env!("CARGO_PKG_VERSION")]);
    says("serve --port 1 --help", &["--port <N>", "a free one"]);
    says("fit -h", &["--bearing-od <MM>", "uncertainty"]);
    says("help erase", &["--confirm <WORD>"]);
    let mut whole = CommandLine::command();
    whole.build();
    for command in whole.get_subcommands() {
        assert!(command.get_about().is_some(), "{} says nothing", command.get_name());
        for argument in command.get_arguments() {
            assert!(argument.get_help().is_some(), "{} {}", command.get_name(), argument.get_id());
        }
    }
}

#[test]
fn what_is_not_understood_is_refused() {
    for (line, code) in [
        ("start-secret", "unknown-command"),
        ("serve secret", "unknown-argument"),
        ("serve --out secret", "unknown-argument"),
        ("serve --data", "missing-value"),
        ("serve --data=", "missing-value"),
        ("serve --port 65536", "bad-port"),
        ("serve --port -1", "bad-port"),
        ("replay a.json secret.json", "unknown-argument"),
        ("replay", "missing-argument"),
        ("replay a.json --sheet letter", "bad-sheet"),
        ("replay a.json --sheet", "missing-value"),
        ("replay a.json --lang secret", "unknown-locale"),
        ("workshop a.json b.json", "unknown-argument"),
        ("gauge", "missing-argument"),
        ("gauge a.json b.json", "unknown-argument"),
        ("fit --colour red", "unknown-argument"),
        ("fit 72", "unknown-argument"),
        ("fit --class", "missing-value"),
        ("bore", "missing-argument"),
        ("skim b.csv", "missing-argument"),
        ("skim b.csv --pass", "missing-value"),
        ("skim b.csv --pass 1thou --axis spindle", "bad-axis"),
        ("sorted --json", "missing-argument"),
        ("outcome", "missing-argument"),
        ("outcome v", "missing-argument"),
        ("outcome v secret --cause misfire", "unknown-argument"),
        ("export", "missing-argument"),
        ("export v", "missing-argument"),
        ("export v --out", "missing-value"),
        ("export --out a --lang de", "missing-argument"),
        ("import a --lang de", "unknown-argument"),
        ("import", "missing-argument"),
        ("verify a --data d", "unknown-argument"),
        ("erase v", "missing-argument"),
        ("erase --confirm secret", "missing-argument"),
        ("salvage a --out b", "unknown-argument"),
        ("completions secret", "bad-shell"),
    ] {
        refused(line, code);
    }
}

#[test]
fn a_mistyped_word_is_answered_with_the_one_that_was_meant() {
    for (line, meant) in [
        ("exprot --out a", "export"),
        ("serve --dta here", "--data"),
        ("replay a.json --sheet a5", "us-letter"),
    ] {
        let failure = asked(line).expect_err("the line is refused");
        assert!(failure.help.contains(meant), "{line}: {}", failure.help);
    }
}
