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
    ("signing", &["model"]),
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

/// Longest function of the program itself, lines from its name to its end.
const LONGEST: usize = 80;
/// Most parameters of one.
const PARAMETERS: usize = 6;

/// The functions of a formatted file: name, lines, parameters.
fn functions(text: &str) -> Vec<(String, usize, usize)> {
    let lines: Vec<&str> = text.lines().collect();
    let begins = |line: &str| {
        line.trim_start().split_once("fn ").map(|(before, after)| (before.to_owned(), after.to_owned()))
    };
    let mut found = Vec::new();
    for (at, line) in lines.iter().enumerate() {
        let Some((before, after)) = begins(line) else { continue };
        if !before
            .split(' ')
            .all(|word| ["", "pub", "pub(crate)", "pub(super)", "const", "async"].contains(&word))
        {
            continue;
        }
        let end = format!("{}}}", &line[..line.len() - line.trim_start().len()]);
        let rest = || lines.iter().skip(at);
        // A function of one line, or one that a trait only names.
        let one = line.ends_with('}') || line.ends_with(';');
        let long = if one {
            1
        } else {
            rest().position(|line| *line == end || *line == format!("{end};")).unwrap_or(0) + 1
        };
        let head: String = rest()
            .take_while(|line| !line.ends_with('{'))
            .chain(rest().find(|line| line.ends_with('{')))
            .copied()
            .collect();
        let name: String =
            after.chars().take_while(|letter| letter.is_alphanumeric() || *letter == '_').collect();
        found.push((name, long, parameters(&head)));
    }
    found
}

/// Colons directly inside the first brackets, and a `self` where there is one.
fn parameters(head: &str) -> usize {
    let (mut round, mut other, mut count) = (0, 0, 0);
    let list = head.split_once("fn ").map_or("", |(_, list)| list);
    let letters: Vec<char> = list.chars().collect();
    for (at, letter) in letters.iter().enumerate() {
        let beside = |step: isize| at.checked_add_signed(step).and_then(|at| letters.get(at)).copied();
        match letter {
            '(' => round += 1,
            ')' => {
                round -= 1;
                if round == 0 && other == 0 {
                    break;
                }
            }
            '<' | '[' | '{' => other += 1,
            '>' if beside(-1) != Some('-') => other -= 1,
            ']' | '}' => other -= 1,
            ':' if round == 1 && other == 0 && beside(1) == Some(' ') => count += 1,
            _ => {}
        }
    }
    count + usize::from(list.contains("self,") || list.contains("self)"))
}

#[test]
fn functions_are_counted_as_they_are_written() {
    let text = "fn a() {}\n\npub fn b(x: u8, y: &[u8]) -> u8 {\n    x\n}\n\nimpl C {\n    fn d<T: Read>(\n        &mut self,\n        x: Vec<(u8, u8)>,\n        f: impl Fn(u8) -> u8,\n    ) -> u8 {\n        1\n    }\n}\n";
    let expected = [("a", 1, 0), ("b", 3, 2), ("d", 7, 3)];
    assert_eq!(functions(text), expected.map(|(name, lines, count)| (name.to_owned(), lines, count)));
}

#[test]
fn functions_stay_short_and_ask_for_little() {
    let mut counted = 0;
    for (name, text) in rust_files("src-tauri") {
        if name.contains("/tests") || name.ends_with("tests.rs") {
            continue;
        }
        for (function, lines, parameters) in functions(&code(&text)) {
            counted += 1;
            assert!(lines <= LONGEST, "{name}: {function} has {lines} lines");
            assert!(parameters <= PARAMETERS, "{name}: {function} has {parameters} parameters");
        }
    }
    assert!(counted > 1_000, "only {counted} functions seen");
}

/// Whether a comment says no more than a name does: one noun, or which question the field answers.
fn says_nothing(line: &str) -> bool {
    let said = line.trim().strip_prefix("/// ").and_then(|said| said.strip_suffix('.'));
    let words: Vec<&str> = said.unwrap_or_default().split(' ').collect();
    match words[..] {
        [word] => ["When", "Who", "What", "Which", "How", "Why"].contains(&word),
        [article, _] => ["The", "Its", "A", "An", "One", "Their", "Every", "This"].contains(&article),
        _ => false,
    }
}

/// What a type's own line says once is expected to be missing at its fields. The command line's comments are its help.
#[test]
fn comments_say_more_than_the_name() {
    assert!(says_nothing("    /// The visit.") && says_nothing("/// Who."));
    assert!(!says_nothing("/// Millimetres.") && !says_nothing("/// The visit that is no more."));
    for (name, text) in ["src-tauri", "tests"].into_iter().flat_map(rust_files) {
        let line = text.lines().position(says_nothing).filter(|_| !name.contains("desk/src/args"));
        assert!(line.is_none(), "{name}: line {}", line.unwrap_or_default() + 1);
    }
}

/// A journey that waits for a time instead of for what it needs is slow on a fast machine and fails on a slow one. How
/// long a finger rests is the hand's own, in `stage.mjs`; how often is looked again the window's, in `window.mjs`.
#[test]
fn journeys_wait_for_what_they_need() {
    let mut looked_at = 0;
    let folders =
        ["tests/browser", "tests/window"].map(|folder| std::fs::read_dir(root().join(folder)).unwrap());
    for file in folders.into_iter().flatten().flatten() {
        let name = file.file_name().to_string_lossy().into_owned();
        let text =
            if name.ends_with(".mjs") { std::fs::read_to_string(file.path()).unwrap() } else { continue };
        looked_at += 1;
        let own = ["stage.mjs", "speed.mjs", "window.mjs"].contains(&name.as_str());
        let waits = ["waitForTimeout", "setTimeout", "timers/promises"].iter().any(|way| text.contains(way));
        assert!(own || !waits, "{name} waits for a time");
    }
    assert!(looked_at > 20, "only {looked_at} files seen");
}

/// What the router names and the tour does not reach is never measured, pictured or read in another language.
#[test]
fn every_place_is_in_the_tour() {
    let read = |path: &str| std::fs::read_to_string(root().join(path)).unwrap();
    let (router, tour) = (read("ui/src/router.ts"), read("tests/browser/tour.mjs"));
    let table = router.split("const ADDRESSES = {").nth(1).unwrap().split("} as const").next().unwrap();
    let places: Vec<(&str, &str)> = table.lines().filter_map(|line| line.trim().split_once(": '")).collect();
    assert!(places.len() > 15, "{places:?}");
    for (screen, address) in places {
        let address = address.trim_end_matches("',");
        let word = address.split('/').rfind(|word| !word.starts_with(':')).unwrap();
        let reached = if address.contains(":visit") {
            [", \"W\"", ", \"W/", "`W/"].iter().any(|form| tour.contains(&form.replace('W', word)))
        } else {
            tour.contains(&format!("hash: \"#/{address}\""))
        };
        // The bare address of a visit stands for the screen where its walk goes on.
        assert!(reached || screen.trim_matches('\'') == "walk", "{screen} is nowhere in the tour");
    }
}

/// The formatter breaks code, not words and paths of a drawing.
#[test]
fn no_line_of_the_screens_is_over_120() {
    let mut folders = vec![root().join("ui/src")];
    let mut looked_at = 0;
    while let Some(folder) = folders.pop() {
        for file in std::fs::read_dir(folder).unwrap().flatten() {
            let path = file.path();
            if path.is_dir() {
                if !path.ends_with("types") {
                    folders.push(path);
                }
                continue;
            }
            looked_at += 1;
            let text = std::fs::read_to_string(&path).unwrap();
            let long = text.lines().position(|line| line.chars().count() > 120);
            assert!(long.is_none(), "{}: line {}", path.display(), long.unwrap_or_default() + 1);
        }
    }
    assert!(looked_at > 100, "only {looked_at} files seen");
}
