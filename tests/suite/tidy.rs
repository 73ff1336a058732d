//! House rules that a compiler does not see: layers, headers, sizes, where the clock and SQL may stand.

use std::path::{Path, PathBuf};

fn root() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("..")
}

/// Every Rust file below a folder, with its text, in path order.
fn rust_files(folder: &str) -> Vec<(String, String)> {
    let mut found = Vec::new();
    let mut folders = vec![root().join(folder)];
    while let Some(folder) = folders.pop() {
        for file in std::fs::read_dir(folder).unwrap().flatten() {
            let path = file.path();
            if path.is_dir() {
                let name = path.file_name().unwrap().to_string_lossy().into_owned();
                if !["target", "node_modules", "gen", "fuzz"].contains(&name.as_str()) {
                    folders.push(path);
                }
            } else if path.extension().is_some_and(|ending| ending == "rs") {
                let name = path.strip_prefix(root()).unwrap().to_string_lossy().into_owned();
                found.push((name, std::fs::read_to_string(&path).unwrap()));
            }
        }
    }
    found.sort();
    assert!(found.len() > 5, "nothing to look at in {folder}");
    found
}

/// A file's text without its comments and inline tests.
fn code(text: &str) -> String {
    let code = text.split("#[cfg(test)]").next().unwrap();
    code.lines().filter(|line| !line.trim_start().starts_with("//")).collect::<Vec<_>>().join("\n")
}

/// What each room of the core may import; itself always.
const MAY_IMPORT: &[(&str, &[&str])] = &[
    ("model", &[]),
    ("trade", &["model"]),
    ("walk", &["model", "trade"]),
    ("sorting", &["model", "trade"]),
    ("urgency", &["model", "trade"]),
    ("measure", &["model", "trade"]),
    ("outcomes", &["model", "trade"]),
    ("words", &["model"]),
    ("content", &["model", "words"]),
    ("signing", &[]),
    ("store", &["model", "signing"]),
    ("photos", &["model"]),
    ("handover", &["model", "signing"]),
    (
        "app",
        &[
            "model", "trade", "walk", "sorting", "urgency", "measure", "outcomes", "words", "content",
            "signing", "store", "photos", "handover",
        ],
    ),
];

#[test]
fn rooms_import_only_what_lies_below() {
    let mut looked_at = 0;
    for (name, text) in rust_files("src-tauri/core/src") {
        let room =
            name.trim_start_matches("src-tauri/core/src/").split(['/', '.']).next().unwrap().to_owned();
        if room == "lib" {
            continue;
        }
        let (_, allowed) = MAY_IMPORT
            .iter()
            .find(|(known, _)| *known == room)
            .unwrap_or_else(|| panic!("{room} is no room"));
        for path in code(&text).split("crate::").skip(1) {
            let target: String =
                path.chars().take_while(|letter| letter.is_alphanumeric() || *letter == '_').collect();
            if target.is_empty() {
                continue;
            }
            looked_at += 1;
            let fine = target == room || allowed.contains(&target.as_str());
            assert!(fine, "{name} imports {target}");
        }
    }
    assert!(looked_at > 100, "only {looked_at} imports seen");
}

#[test]
fn files_open_with_what_they_are_and_stay_short() {
    for folder in ["src-tauri", "tests"] {
        for (name, text) in rust_files(folder) {
            assert!(text.starts_with("//!"), "{name} does not say what it is");
            let lines = text.lines().count();
            assert!(lines <= 600, "{name} has {lines} lines");
        }
    }
}

/// Where each word may stand: the clock, the database, files and chance have one door each.
#[test]
fn doors_are_kept() {
    for (word, allowed) in [
        ("chrono::", &["model/time.rs"][..]),
        ("rusqlite::", &["store/"]),
        ("std::fs", &["store/", "app/replay.rs"]),
        ("Moment::now", &["model/time.rs"]),
        ("std::net", &[]),
        ("tauri::", &[]),
    ] {
        for (name, text) in rust_files("src-tauri/core/src") {
            let inside = name.trim_start_matches("src-tauri/core/src/");
            let found = code(&text).contains(word);
            let fine = inside.ends_with("tests.rs") || allowed.iter().any(|door| inside.starts_with(door));
            assert!(!found || fine, "{name} names {word}");
        }
    }
}

#[test]
fn sql_names_its_columns() {
    for (name, text) in rust_files("src-tauri/core/src/store") {
        assert!(!text.contains("SELECT *"), "{name}");
        for insert in text.split("INSERT INTO ").skip(1) {
            let head: String = insert.chars().take(60).collect();
            assert!(head.contains('('), "{name}: {head}");
        }
    }
}

#[test]
fn top_level_holds_the_agreed_names_alone() {
    let allowed = [
        "Cargo.toml",
        "Cargo.lock",
        "README.md",
        "DEVELOPERS.md",
        "LICENSE-MIT",
        "LICENSE-APACHE",
        "src-tauri",
        "ui",
        "tests",
        "demo-data",
        "icons",
        "target",
    ];
    for file in std::fs::read_dir(root()).unwrap().flatten() {
        let name = file.file_name().to_string_lossy().into_owned();
        assert!(name.starts_with('.') || allowed.contains(&name.as_str()), "{name}");
    }
}
