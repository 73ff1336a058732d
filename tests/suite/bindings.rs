//! The TypeScript of the boundary types is generated from Rust and committed. This test fails when it
//! is stale; `STEADY_WRITE_BINDINGS=1 cargo test -p suite bindings` writes it anew.

use std::collections::{BTreeMap, BTreeSet};
use std::path::Path;

use steady_core::app::failure::Failure;
use steady_core::app::replies::REPLIES;
use steady_core::app::request::Request;
use steady_core::app::response::Response;
use steady_core::model::limits;
use ts_rs::{Config, TS};

#[test]
fn typescript_of_the_boundary_is_fresh() {
    let committed = Path::new(env!("CARGO_MANIFEST_DIR")).join("../ui/src/types");
    let fresh = tempfile::tempdir().unwrap();
    let config = Config::new().with_out_dir(fresh.path());
    Request::export_all(&config).unwrap();
    Response::export_all(&config).unwrap();
    Failure::export_all(&config).unwrap();
    std::fs::write(fresh.path().join("Replies.ts"), replies()).unwrap();
    std::fs::write(fresh.path().join("Limits.ts"), bounds()).unwrap();
    if std::env::var_os("STEADY_WRITE_BINDINGS").is_some() {
        std::fs::remove_dir_all(&committed).ok();
        std::fs::create_dir_all(&committed).unwrap();
        for (name, text) in files(fresh.path()) {
            std::fs::write(committed.join(name), text).unwrap();
        }
    }
    let fresh = files(fresh.path());
    assert!(fresh.len() > 30, "too few types to be the boundary: {}", fresh.len());
    let committed = files(&committed);
    for (name, text) in &fresh {
        let same = committed.get(name) == Some(text);
        assert!(same, "{name} is stale: run STEADY_WRITE_BINDINGS=1 cargo test -p suite bindings");
    }
    let left_over: Vec<&String> = committed.keys().filter(|name| !fresh.contains_key(*name)).collect();
    assert!(left_over.is_empty(), "no longer generated: {left_over:?}");
}

/// The TypeScript of what is answered to what.
fn replies() -> String {
    let rows: String = REPLIES.iter().map(|(ask, is)| format!("  \"{ask}\": \"{is}\",\n")).collect();
    format!(
        "// Which kind of answer each request gets. Made from `app/replies.rs`.\n\nexport type Replies = {{\n{rows}}};\n"
    )
}

/// The bounds that a screen holds a person to while typing, so that the core never has to refuse what was written.
fn bounds() -> String {
    let rows = [
        ("LINE", limits::LINE),
        ("REASON", limits::REASON),
        ("TYPED", limits::TYPED),
        ("LABEL", limits::LABEL),
        ("SPOTS", limits::SPOTS),
    ];
    let rows: String = rows.iter().map(|(name, most)| format!("export const {name} = {most};\n")).collect();
    format!("// The longest that fields take. Made from `model/limits.rs`.\n\n{rows}")
}

/// The words that one field takes in a union.
fn words(file: &str, field: &str) -> BTreeSet<String> {
    let before = format!("\"{field}\": \"");
    file.split(&before).skip(1).map(|rest| rest.split('"').next().unwrap().to_owned()).collect()
}

#[test]
fn every_request_has_its_reply() {
    let folder = tempfile::tempdir().unwrap();
    let config = Config::new().with_out_dir(folder.path());
    Request::export_all(&config).unwrap();
    Response::export_all(&config).unwrap();
    let read = |name: &str| std::fs::read_to_string(folder.path().join(name)).unwrap();
    let asked: BTreeSet<String> = REPLIES.iter().map(|(ask, _)| (*ask).to_owned()).collect();
    let answered: BTreeSet<String> = REPLIES.iter().map(|(_, is)| (*is).to_owned()).collect();
    assert_eq!(asked, words(&read("Request.ts"), "ask"));
    assert_eq!(answered, words(&read("Response.ts"), "is"));
    assert_eq!(asked.len(), REPLIES.len(), "a request is listed twice");
}

/// File name and text of every generated file.
fn files(folder: &Path) -> BTreeMap<String, String> {
    let files = std::fs::read_dir(folder).unwrap().flatten();
    let named = |file: std::fs::DirEntry| {
        (file.file_name().to_string_lossy().into_owned(), std::fs::read_to_string(file.path()).unwrap())
    };
    files.filter(|file| file.path().is_file()).map(named).collect()
}
