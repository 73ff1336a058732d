//! What is built in: licences, sources and bans as `.cargo/deny.toml` has them, read from the resolved packages
//! themselves; locks that name every byte; and which program holds what could speak to a network.
//!
//! `cargo deny check`, where it is installed, reads the same file with the advisories beside it: `cargo xtask test
//! supply`. This is what holds where it is not.

use std::collections::{BTreeMap, BTreeSet};
use std::path::{Path, PathBuf};
use std::process::Command;

use serde_json::Value;

fn root() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("..")
}

/// What cargo prints, without asking a network.
fn cargo(words: &[&str]) -> String {
    let mut command = Command::new(env!("CARGO"));
    command.args(words).args(["--locked", "--offline"]).current_dir(root());
    let out = command.output().unwrap();
    assert!(out.status.success(), "{words:?}: {}", String::from_utf8_lossy(&out.stderr));
    String::from_utf8(out.stdout).unwrap()
}

fn deny() -> toml::Table {
    std::fs::read_to_string(root().join(".cargo/deny.toml")).unwrap().parse().unwrap()
}

/// Every package of the lock that is not ours.
fn packages() -> Vec<Value> {
    let told = cargo(&["metadata", "--format-version", "1", "--all-features"]);
    let told: Value = serde_json::from_str(&told).unwrap();
    let foreign: Vec<Value> =
        told["packages"].as_array().unwrap().iter().filter(|one| !one["source"].is_null()).cloned().collect();
    assert!(foreign.len() > 300, "nothing to look at");
    foreign
}

/// The packages of a program, build tools left out, on these systems.
fn tree(program: &str, target: &str) -> BTreeSet<String> {
    let told =
        cargo(&["tree", "--package", program, "--edges", "normal", "--target", target, "--prefix", "none"]);
    told.lines().filter_map(|line| line.split(' ').next()).map(str::to_owned).collect()
}

/// Whether a licence expression (SPDX) can be met with licences of a list.
fn is_met(expression: &str, allowed: &BTreeSet<String>) -> bool {
    let words: Vec<String> = expression
        .replace('/', " OR ")
        .replace('(', " ( ")
        .replace(')', " ) ")
        .split_whitespace()
        .map(str::to_owned)
        .collect();
    let mut words = words.into_iter().peekable();
    let met = any(&mut words, allowed);
    assert!(words.next().is_none(), "{expression} is not read to its end");
    met
}

type Words = std::iter::Peekable<std::vec::IntoIter<String>>;

fn any(words: &mut Words, allowed: &BTreeSet<String>) -> bool {
    let mut met = all(words, allowed);
    while words.next_if_eq("OR").is_some() {
        met |= all(words, allowed);
    }
    met
}

fn all(words: &mut Words, allowed: &BTreeSet<String>) -> bool {
    let mut met = one(words, allowed);
    while words.next_if_eq("AND").is_some() {
        met &= one(words, allowed);
    }
    met
}

fn one(words: &mut Words, allowed: &BTreeSet<String>) -> bool {
    if words.next_if_eq("(").is_some() {
        let met = any(words, allowed);
        assert!(words.next_if_eq(")").is_some(), "a bracket is not closed");
        return met;
    }
    let mut licence = words.next().unwrap();
    if words.next_if_eq("WITH").is_some() {
        licence = format!("{licence} WITH {}", words.next().unwrap());
    }
    allowed.contains(&licence)
}

#[test]
fn licence_expressions_are_met_as_they_are_bracketed() {
    let allowed: BTreeSet<String> =
        ["MIT", "Apache-2.0 WITH LLVM-exception", "IJG"].map(str::to_owned).into();
    for (expression, met) in [
        ("MIT", true),
        ("GPL-3.0", false),
        ("MIT OR GPL-3.0", true),
        ("MIT/Apache-2.0", true),
        ("MIT AND GPL-3.0", false),
        ("(MIT OR Apache-2.0) AND IJG", true),
        ("MIT AND (GPL-3.0 OR LGPL-3.0)", false),
        ("GPL-3.0 OR MIT AND IJG", true),
        ("Apache-2.0 WITH LLVM-exception", true),
        ("Apache-2.0", false),
    ] {
        assert_eq!(is_met(expression, &allowed), met, "{expression}");
    }
}

#[test]
fn every_package_comes_under_a_licence_that_is_allowed() {
    let deny = deny();
    let allowed = deny["licenses"]["allow"].as_array().unwrap();
    let allowed: BTreeSet<String> = allowed.iter().map(|name| name.as_str().unwrap().to_owned()).collect();
    for package in packages() {
        let (name, licence) = (&package["name"], package["license"].as_str());
        assert!(licence.is_some_and(|licence| is_met(licence, &allowed)), "{name} comes under {licence:?}");
    }
}

#[test]
fn every_package_comes_from_the_registry_and_none_is_banned() {
    let deny = deny();
    let banned: Vec<&str> =
        deny["bans"]["deny"].as_array().unwrap().iter().map(|row| row["crate"].as_str().unwrap()).collect();
    assert!(!banned.is_empty());
    for package in packages() {
        let (name, source) = (package["name"].as_str().unwrap(), package["source"].as_str().unwrap());
        assert_eq!(source, "registry+https://github.com/rust-lang/crates.io-index", "{name}");
        assert!(!banned.contains(&name), "{name} is banned");
    }
}

/// Whether it has passed is looked at where the advisories are: an old state of the repository still tests.
#[test]
fn every_ignored_advisory_says_until_when_and_why() {
    let deny = deny();
    let ignored = deny["advisories"]["ignore"].as_array().unwrap();
    for row in ignored {
        let (id, reason) = (row["id"].as_str().unwrap(), row["reason"].as_str().unwrap());
        let (date, why) = reason.strip_prefix("until ").and_then(|rest| rest.split_once(": ")).expect(id);
        let parts: Vec<u32> = date.split('-').map(|part| part.parse().expect(id)).collect();
        assert!(matches!(parts[..], [2026..=2028, 1..=12, 1..=31]) && date.len() == 10, "{id}: {date}");
        assert!(why.len() > 10, "{id}: {why}");
    }
}

/// The two flaws that are ignored are in reading XML of somebody else's: here it is read by what loads styles of
/// citations alone, no paper cites, and the press hands out no file but its own.
#[test]
fn flawed_reader_of_xml_is_in_reach_of_nothing_that_is_read() {
    let readers = cargo(&[
        "tree",
        "--workspace",
        "--target",
        "all",
        "--invert",
        "quick-xml@0.38.4",
        "--depth",
        "1",
        "--prefix",
        "none",
    ]);
    let readers: Vec<&str> = readers.lines().skip(1).filter_map(|line| line.split(' ').next()).collect();
    assert_eq!(readers, ["citationberg"]);
    for file in std::fs::read_dir(root().join("src-tauri/papers/templates")).unwrap().flatten() {
        let path = file.path();
        if path.extension().is_some_and(|ending| ending == "typ") {
            let text = std::fs::read_to_string(&path).unwrap();
            for door in ["bibliography", "cite(", "read(", "xml(", "plugin("] {
                assert!(!text.contains(door), "{}: {door}", path.display());
            }
        }
    }
}

/// The packages that our manifests name, for whatever purpose.
fn asked_for() -> BTreeSet<String> {
    let members = ["src-tauri", "src-tauri/core", "src-tauri/papers", "src-tauri/desk", "src-tauri/device"];
    let folders = members.into_iter().chain(["src-tauri/xtask", "tests", "tests/fuzz"]);
    let mut names = BTreeSet::new();
    for folder in folders {
        let text = std::fs::read_to_string(root().join(folder).join("Cargo.toml")).unwrap();
        let manifest: toml::Table = text.parse().unwrap();
        let of_targets = manifest.get("target").and_then(toml::Value::as_table);
        let of_targets = of_targets.into_iter().flatten().filter_map(|(_, table)| table.as_table());
        for table in std::iter::once(&manifest).chain(of_targets) {
            for kind in ["dependencies", "dev-dependencies", "build-dependencies"] {
                let named = table.get(kind).and_then(toml::Value::as_table);
                names.extend(named.into_iter().flat_map(toml::Table::keys).cloned());
            }
        }
    }
    names.retain(|name| !name.starts_with("steady-") && name != "tauri-plugin-device");
    names
}

/// In the first column, what is in brackets says where it is used.
#[test]
fn every_dependency_has_its_reason() {
    let text = std::fs::read_to_string(root().join("src-tauri/DEPENDENCIES.md")).unwrap();
    let cells = text.lines().filter_map(|line| line.strip_prefix("| ")?.split(" | ").next()).skip(2);
    let names = cells.flat_map(|cell| cell.split(" (").next().unwrap_or(cell).split(", "));
    let explained: BTreeSet<String> = names.map(str::to_owned).collect();
    assert!(explained.len() > 30, "{explained:?}");
    assert_eq!(explained, asked_for());
}

#[test]
fn locks_name_the_bytes_of_every_package() {
    let lock: toml::Table = std::fs::read_to_string(root().join("Cargo.lock")).unwrap().parse().unwrap();
    for package in lock["package"].as_array().unwrap() {
        let named = package.get("source").is_none() || package.get("checksum").is_some();
        assert!(named, "{package}");
    }
    for folder in ["ui", "tests/browser"] {
        let text = std::fs::read_to_string(root().join(folder).join("package-lock.json")).unwrap();
        let lock: Value = serde_json::from_str(&text).unwrap();
        let packages = lock["packages"].as_object().unwrap();
        assert!(packages.len() > 2, "{folder}");
        for (place, package) in packages.iter().filter(|(place, _)| !place.is_empty()) {
            let sum = package["integrity"].as_str().unwrap_or_default();
            assert!(sum.starts_with("sha512-") && sum.len() == 95, "{folder}: {place}");
            let from = package["resolved"].as_str().unwrap_or("https://registry.npmjs.org/");
            assert!(from.starts_with("https://registry.npmjs.org/"), "{folder}: {place} from {from}");
        }
    }
}

/// What could open a connection, or listen for one: clients, servers, what they are made of, and ciphers for them.
const NETWORK: [&str; 22] = [
    "attohttpc",
    "curl",
    "h2",
    "h3",
    "hyper",
    "hyper-util",
    "isahc",
    "mio",
    "native-tls",
    "openssl-sys",
    "quinn",
    "reqwest",
    "ring",
    "rustls",
    "smol",
    "socket2",
    "tiny_http",
    "tokio",
    "tower",
    "tungstenite",
    "ureq",
    "warp",
];

fn speakers(program: &str, target: &str) -> Vec<String> {
    tree(program, target).into_iter().filter(|name| NETWORK.contains(&name.as_str())).collect()
}

/// In the tree as it is resolved, not in a manifest: what a dependency brings along counts.
#[test]
fn core_and_papers_hold_nothing_that_speaks_to_a_network() {
    for program in ["steady-core", "steady-papers"] {
        assert_eq!(speakers(program, "all"), [""; 0], "{program}");
    }
}

/// The desk listens: a server, with no client and no cipher.
#[test]
fn desk_holds_a_server_and_no_client() {
    assert_eq!(speakers("steady", "all"), ["hyper", "hyper-util", "mio", "socket2", "tokio"]);
    let features = cargo(&[
        "tree",
        "--package",
        "steady",
        "--edges",
        "normal,features",
        "--target",
        "all",
        "--prefix",
        "none",
    ]);
    for feature in
        ["hyper feature \"client\"", "hyper-util feature \"client\"", "hyper-util feature \"client-legacy\""]
    {
        assert!(!features.contains(feature), "{feature}");
    }
}

/// The window on a desktop holds a runtime that can wait for sockets and nothing that opens one. On a phone Tauri
/// brings a client, which it builds for a page that is served by a development server, and calls then alone; it comes
/// without ciphers, and nothing else asks for it.
#[test]
fn window_holds_no_client_but_the_one_of_tauris_own_development() {
    let desktops = ["x86_64-unknown-linux-gnu", "x86_64-pc-windows-msvc", "aarch64-apple-darwin"];
    let mut held: BTreeMap<&str, Vec<String>> = BTreeMap::new();
    for target in desktops.iter().chain(&["aarch64-linux-android", "aarch64-apple-ios"]) {
        held.insert(target, speakers("steady-app", target));
    }
    for target in desktops {
        assert!(
            held[target].iter().all(|name| ["tokio", "mio", "socket2"].contains(&name.as_str())),
            "{held:?}"
        );
    }
    for target in ["aarch64-linux-android", "aarch64-apple-ios"] {
        let known = ["hyper", "hyper-util", "mio", "reqwest", "socket2", "tokio", "tower"];
        assert_eq!(held[target], known, "{target}");
        let askers = cargo(&[
            "tree",
            "--package",
            "steady-app",
            "--target",
            target,
            "--invert",
            "reqwest",
            "--depth",
            "1",
            "--prefix",
            "none",
        ]);
        let askers: Vec<&str> = askers.lines().skip(1).filter_map(|line| line.split(' ').next()).collect();
        assert_eq!(askers, ["tauri"], "{target}");
    }
}

/// The packages of a program with their versions, build tools left out, without ours.
fn foreign(program: &str, target: &str) -> BTreeSet<String> {
    let told =
        cargo(&["tree", "--package", program, "--edges", "normal", "--target", target, "--prefix", "none"]);
    let package = |line: &str| {
        let mut words = line.split(' ');
        let (name, version) = (words.next()?, words.next()?.strip_prefix('v')?);
        // Ours stand with their folder.
        (!line.contains(" (/")).then(|| format!("{name} {version}"))
    };
    told.lines().filter_map(package).collect()
}

fn built(path: &str) -> String {
    let read = std::fs::read_to_string(root().join(path));
    read.unwrap_or_else(|_| panic!("{path} is made with the screens: npm --prefix ui run build"))
}

/// For people: who made what is built in, and under which licence.
#[test]
fn notices_name_every_package_that_is_built_in() {
    let (notices, bill) = (built("ui/dist/notices.txt"), bill());
    let (list, texts) = notices.split_once("\n\n").unwrap();
    let licences: BTreeMap<&str, &str> =
        list.lines().map(|line| line.rsplit_once(": ").unwrap_or_else(|| panic!("{line}"))).collect();
    for package in built_in(&bill) {
        let licence = licences.get(package.as_str()).unwrap_or_else(|| panic!("{package} is not named"));
        assert!(licence.len() > 2, "{package} comes under {licence:?}");
    }
    let fonts = licences.keys().any(|name| name.contains("Noto Sans"));
    let page = licences.keys().any(|name| name.starts_with("svelte "));
    assert!(fonts && page, "the papers' letters and the page's packages");
    for text in ["Permission is hereby granted", "Apache License", "SIL OPEN FONT LICENSE"] {
        assert!(texts.contains(text), "{text}");
    }
}

fn bill() -> Value {
    serde_json::from_str(&built("target/sbom/steady.cdx.json")).unwrap()
}

/// What both programs hold, on the system that the bill was made for.
fn built_in(bill: &Value) -> BTreeSet<String> {
    let target = bill["metadata"]["properties"][0]["value"].as_str().unwrap();
    let all: BTreeSet<String> =
        ["steady", "steady-app"].iter().flat_map(|program| foreign(program, target)).collect();
    assert!(all.len() > 300, "nothing to look at");
    all
}

/// For machines: each package once, with the sum its lock names, and what needs what from the program down.
#[test]
fn bill_of_materials_holds_every_package_its_sum_and_what_it_needs() {
    let bill = bill();
    assert_eq!((&bill["bomFormat"], &bill["specVersion"]), (&"CycloneDX".into(), &"1.5".into()));
    let lock: toml::Table = std::fs::read_to_string(root().join("Cargo.lock")).unwrap().parse().unwrap();
    let sum = |row: &toml::Value| {
        let word = |field: &str| row.get(field).and_then(toml::Value::as_str);
        Some((format!("{} {}", word("name")?, word("version")?), word("checksum")?.to_owned()))
    };
    let sums: BTreeMap<String, String> = lock["package"].as_array().unwrap().iter().filter_map(sum).collect();
    let (mut crates, mut listed) = (BTreeSet::new(), BTreeSet::new());
    for part in bill["components"].as_array().unwrap() {
        let [name, version, purl] = ["name", "version", "purl"].map(|field| part[field].as_str().unwrap());
        let (name, hash) = (format!("{name} {version}"), &part["hashes"][0]);
        if purl.starts_with("pkg:cargo/") {
            assert_eq!(
                (&hash["alg"], hash["content"].as_str()),
                (&"SHA-256".into(), sums.get(&name).map(String::as_str)),
                "{name}"
            );
            crates.insert(name);
        } else {
            assert!(purl.starts_with("pkg:npm/"), "{purl}");
            let sum = hash["content"].as_str().unwrap();
            assert_eq!((&hash["alg"], sum.len()), (&"SHA-512".into(), 128), "{name}");
        }
        assert!(listed.insert(purl.to_owned()), "{purl} stands twice");
    }
    let lacking: Vec<String> = built_in(&bill).difference(&crates).cloned().collect();
    assert!(lacking.is_empty(), "not in the bill, build the screens anew: {lacking:?}");
    let needs: BTreeMap<&str, Vec<&str>> = bill["dependencies"]
        .as_array()
        .unwrap()
        .iter()
        .map(|row| {
            let on = row["dependsOn"].as_array().unwrap().iter().map(|purl| purl.as_str().unwrap());
            (row["ref"].as_str().unwrap(), on.collect())
        })
        .collect();
    let (mut reached, mut open) = (BTreeSet::new(), vec!["steady"]);
    while let Some(purl) = open.pop() {
        if purl != "steady" && !reached.insert(purl.to_owned()) {
            continue;
        }
        open.extend(needs.get(purl).unwrap_or_else(|| panic!("{purl} is needed and not listed")));
    }
    assert_eq!(reached, listed, "all of it is needed by something");
}

/// Whoever has the package has them beside it, without starting anything.
#[test]
fn notices_go_into_every_package() {
    let conf: Value =
        serde_json::from_str(&std::fs::read_to_string(root().join("src-tauri/tauri.conf.json")).unwrap())
            .unwrap();
    assert_eq!(conf["bundle"]["resources"]["../ui/dist/notices.txt"], "notices.txt");
}

/// What builds something builds what the lock names: each command that a script, a text or a hint tells.
#[test]
fn every_build_that_is_told_is_locked() {
    let mut told = 0;
    for path in [
        "README.md",
        "DEVELOPERS.md",
        "src-tauri/desk/README.md",
        "src-tauri/desk/src/serve/files.rs",
        "src-tauri/gen/README.md",
        "tests/reference/run.sh",
    ] {
        let text = std::fs::read_to_string(root().join(path)).unwrap().replace("\n   ", " ");
        for line in text.lines() {
            for build in
                ["cargo build", "cargo install", "tauri android build", "tauri ios dev", "tauri ios build"]
            {
                for (at, _) in line.match_indices(build) {
                    // To the end of the command: a bracket, a quote, or another command.
                    let rest = &line[at..];
                    let end = rest.find(['`', ';', '&', '"']).unwrap_or(rest.len());
                    assert!(rest[..end].contains("--locked"), "{path}: {}", &rest[..end]);
                    told += 1;
                }
            }
        }
    }
    assert!(told >= 6, "{told}");
}

/// What no tree of packages shows: the standard library's own sockets. The desk's server names them alone.
#[test]
fn sockets_of_the_standard_library_are_the_desks_servers_alone() {
    let rooms = ["src", "core/src", "papers/src", "desk/src", "device/src"];
    let mut open: Vec<PathBuf> = rooms.map(|room| root().join("src-tauri").join(room)).into();
    let (mut read, mut named) = (0, BTreeSet::new());
    while let Some(folder) = open.pop() {
        for file in std::fs::read_dir(&folder).unwrap().flatten() {
            let path = file.path();
            if path.is_dir() {
                open.push(path);
            } else if path.extension().is_some_and(|ending| ending == "rs") {
                let text = std::fs::read_to_string(&path).unwrap();
                let sockets = ["std::net", "unix::net", "TcpStream", "TcpListener", "UdpSocket"];
                read += 1;
                if sockets.iter().any(|socket| text.contains(socket)) {
                    named.insert(file.file_name().to_string_lossy().into_owned());
                }
            }
        }
    }
    assert!(read > 200, "{read}");
    assert_eq!(named.into_iter().collect::<Vec<_>>(), ["serve.rs"]);
}
