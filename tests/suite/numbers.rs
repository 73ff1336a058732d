//! The page that lists every number in the data with its basis: made from the data, and held to it.

use std::fmt::Write as _;
use std::path::{Path, PathBuf};

use toml::{Table, Value};

/// Writes the page anew where this is set.
const WRITE: &str = "STEADY_WRITE_NUMBERS";

const HEAD: &str = "\
# Numbers

Every number in the shipped data that a rating, a probability, a fit or a verdict rests on, with its basis. Made from
the data by `cargo xtask numbers`; do not write here. *Workshop judgement* is just that: nobody measured it. *From
memory* and *second-hand* say that the source itself was not read. A clearance or a tolerance used as a limit is a
yardstick, not an official limit; the gauge decides in the manner of ISO 14253-1, whose text was not read.
";

fn data() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../src-tauri/core/data")
}

/// The data files, in the order of their names; what earlier rules shipped is history.
fn files(folder: &Path) -> Vec<PathBuf> {
    let mut all: Vec<PathBuf> = Vec::new();
    for entry in std::fs::read_dir(folder).unwrap().flatten().map(|entry| entry.path()) {
        if entry.is_dir() {
            all.extend(files(&entry));
        } else if entry.extension().is_some_and(|ending| ending == "toml") {
            all.push(entry);
        }
    }
    all.sort();
    all
}

/// One line of a file's table.
struct Line {
    row: String,
    numbers: Vec<String>,
    basis: String,
}

/// What a table is called: its id, or what it speaks of.
fn name_of(table: &Table, at: &str) -> String {
    let key = ["id", "cause", "answer", "loss", "name"];
    let own = key.iter().find_map(|key| table.get(*key).and_then(Value::as_str)).map(str::to_owned);
    let listed = ["layouts", "seats", "sounds"];
    let of = listed
        .iter()
        .find_map(|key| table.get(*key).and_then(Value::as_array))
        .map(|list| list.iter().filter_map(Value::as_str).collect::<Vec<_>>().join("/"));
    let range = || Some(format!("over {} to {}", table.get("over_mm")?, table.get("to_mm")?));
    let own = own.or(of).or_else(range).unwrap_or_default();
    [at, &own].into_iter().filter(|part| !part.is_empty()).collect::<Vec<_>>().join(" ")
}

fn shown(value: &Value) -> Option<String> {
    match value {
        Value::Integer(_) | Value::Float(_) => Some(value.to_string()),
        Value::Array(list) => {
            let all: Option<Vec<String>> = list.iter().map(shown).collect();
            all.filter(|all| !all.is_empty()).map(|all| format!("[{}]", all.join(", ")))
        }
        _ => None,
    }
}

/// The numbers of a table and of those inside it; `basis` is that of the table around it.
fn collect(table: &Table, at: &str, basis: &str, lines: &mut Vec<Line>) {
    let row = name_of(table, at);
    let basis = table.get("basis").and_then(Value::as_str).unwrap_or(basis);
    let number = |(key, value): (&String, &Value)| shown(value).map(|value| format!("{key} {value}"));
    let numbers: Vec<String> = table.iter().filter_map(number).collect();
    if !numbers.is_empty() {
        lines.push(Line { row: row.clone(), numbers, basis: basis.to_owned() });
    }
    for (key, value) in table {
        let at = [row.as_str(), key.as_str()].into_iter().filter(|part| !part.is_empty());
        let at = at.collect::<Vec<_>>().join(", ");
        match value {
            Value::Table(inner) => collect(inner, &at, basis, lines),
            Value::Array(list) => {
                list.iter().filter_map(Value::as_table).for_each(|inner| collect(inner, &at, basis, lines))
            }
            _ => {}
        }
    }
}

fn lines_of(file: &Path) -> Vec<Line> {
    let table: Table = std::fs::read_to_string(file).unwrap().parse().unwrap();
    let mut lines = Vec::new();
    collect(&table, "", "", &mut lines);
    lines
}

fn page() -> String {
    let mut page = HEAD.to_owned();
    for file in files(&data()) {
        let lines = lines_of(&file);
        if lines.is_empty() {
            continue;
        }
        let name = file.strip_prefix(data()).unwrap().display().to_string().replace('\\', "/");
        write!(page, "\n## {name}\n\n| row | numbers | basis |\n| --- | --- | --- |\n").unwrap();
        for Line { row, numbers, basis } in lines {
            let basis = basis.split_whitespace().collect::<Vec<_>>().join(" ");
            writeln!(page, "| {row} | {} | {basis} |", numbers.join("; ")).unwrap();
        }
    }
    page
}

#[test]
fn every_number_of_the_data_says_where_it_is_from() {
    for file in files(&data()) {
        for line in lines_of(&file) {
            // The version of the rules is a name, not a number that anything is reckoned with.
            let version = line.numbers.iter().all(|number| number.starts_with("version "));
            assert!(version || !line.basis.trim().is_empty(), "{}: {}", file.display(), line.row);
        }
    }
}

#[test]
fn the_page_of_numbers_is_that_of_the_data() {
    let path = data().join("NUMBERS.md");
    let page = page();
    if std::env::var_os(WRITE).is_some() {
        std::fs::write(&path, &page).unwrap();
    }
    let kept = std::fs::read_to_string(&path).unwrap_or_default();
    assert!(kept == page, "data/NUMBERS.md is not that of the data: run cargo xtask numbers");
}
