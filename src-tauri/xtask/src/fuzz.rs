//! `cargo xtask fuzz [TARGET...]`: every target of `tests/fuzz` for a while each, from a corpus made by its own
//! program. Stable Rust and a C++ compiler are enough: the flags are those that cargo-fuzz sets.

use std::fs;
use std::path::PathBuf;
use std::process::Command;

use crate::{Outcome, rooms, say, start};

/// Where the sanitizer is known to work, and what cargo calls it.
const TRIPLE: &str = "x86_64-unknown-linux-gnu";
/// Coverage of every edge, comparisons told, and memory watched; source: cargo-fuzz's own flags.
const FLAGS: &str = "-Cpasses=sancov-module -Cllvm-args=-sanitizer-coverage-level=4 \
                     -Cllvm-args=-sanitizer-coverage-inline-8bit-counters \
                     -Cllvm-args=-sanitizer-coverage-pc-table -Cllvm-args=-sanitizer-coverage-trace-compares \
                     -Zsanitizer=address";
/// For each target.
const SECONDS: u32 = 60;
/// What libFuzzer may hold, MB: a photo may take 512 MiB to decode, and the sanitizer keeps what was freed.
const MEMORY_MB: u32 = 3_072;

/// Runs the command; with names, only those targets.
pub fn run(names: &[&str]) -> Outcome<()> {
    let known = targets()?;
    if let Some(odd) = names.iter().find(|name| known.iter().all(|target| target != *name)) {
        return Err(format!("there is no target {odd}; the targets are {}", known.join(", ")));
    }
    let corpus = rooms::top().join("target/fuzz/corpus");
    let words = [
        "build",
        "--release",
        "--manifest-path",
        "tests/fuzz/Cargo.toml",
        "--target",
        TRIPLE,
        "--target-dir",
        "target/fuzz",
    ];
    // The sanitizer is behind a flag that stable takes only so; nothing else of the project is built this way.
    start::to_the_end(start::cargo(&words).env("RUSTC_BOOTSTRAP", "1").env("RUSTFLAGS", FLAGS))?;
    start::to_the_end(built("seeds").arg(&corpus))?;
    let mut found = Vec::new();
    for target in known.iter().filter(|target| names.is_empty() || names.contains(&target.as_str())) {
        let findings = rooms::top().join("target/fuzz/findings").join(target);
        fs::create_dir_all(&findings).map_err(|fault| format!("{}: {fault}", findings.display()))?;
        let mut fuzzer = built(target);
        fuzzer.arg(corpus.join(target)).arg(format!("-max_total_time={SECONDS}"));
        fuzzer.arg(format!("-rss_limit_mb={MEMORY_MB}")).args(["-timeout=20", "-print_final_stats=1"]);
        fuzzer.arg(format!("-artifact_prefix={}/", findings.display()));
        if start::to_the_end(&mut fuzzer).is_err() {
            found.push(format!("{target}: see {}", findings.display()));
        }
    }
    if found.is_empty() {
        say::line("No target found anything.");
        return Ok(());
    }
    Err(found.join("\n"))
}

fn built(name: &str) -> Command {
    let program: PathBuf = rooms::top().join("target/fuzz").join(TRIPLE).join("release").join(name);
    start::program(&program.to_string_lossy(), &[])
}

/// The targets there are, by their files, in the order of their names.
fn targets() -> Outcome<Vec<String>> {
    let folder = rooms::top().join("tests/fuzz/fuzz_targets");
    let files = fs::read_dir(&folder).map_err(|fault| format!("{}: {fault}", folder.display()))?;
    let mut names: Vec<String> = files
        .flatten()
        .filter_map(|file| Some(file.path().file_stem()?.to_string_lossy().into_owned()))
        .collect();
    names.sort();
    Ok(names)
}
