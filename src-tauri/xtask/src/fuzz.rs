//! `cargo xtask fuzz [TARGET...]`: every target of `tests/fuzz` for a while each, from a corpus made by its own
//! program. Stable Rust and a C++ compiler are enough: the flags are those that cargo-fuzz sets.

use std::fs;
use std::path::{Path, PathBuf};
use std::process::Command;
use std::sync::{Mutex, PoisonError};

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
    fuzzed(names, SECONDS)?.1
}

/// Runs the targets for so many seconds each; gives back a row of figures for each, and what they found.
pub fn fuzzed(names: &[&str], seconds: u32) -> Outcome<(Vec<String>, Outcome<()>)> {
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
    let chosen = known.into_iter().filter(|target| names.is_empty() || names.contains(&target.as_str()));
    let told = in_parallel(chosen.collect(), |target| one(target, &corpus, seconds));
    let mut rows = vec![format!("# Fuzzing, {seconds} s for each target, {} at a time", at_a_time())];
    let mut found = Vec::new();
    for (row, outcome) in told {
        rows.push(row?);
        found.extend(outcome.err());
    }
    let nothing = "No target found anything.".to_owned();
    rows.push(if found.is_empty() { nothing.clone() } else { format!("Found something: {}", found.len()) });
    if found.is_empty() {
        say::line(&nothing);
        return Ok((rows, Ok(())));
    }
    Ok((rows, Err(found.join("\n"))))
}

/// One target for so many seconds: its row of figures, and what it found.
fn one(target: &str, corpus: &Path, seconds: u32) -> (Outcome<String>, Outcome<()>) {
    let findings = rooms::top().join("target/fuzz/findings").join(target);
    let log = findings.with_extension("log");
    let opened = fs::create_dir_all(&findings).and_then(|()| fs::File::create(&log));
    let out = match opened {
        Ok(out) => out,
        Err(fault) => return (Err(format!("{}: {fault}", log.display())), Ok(())),
    };
    let mut fuzzer = built(target);
    fuzzer.stderr(out);
    fuzzer.arg(corpus.join(target)).arg(format!("-max_total_time={seconds}"));
    fuzzer.arg(format!("-rss_limit_mb={MEMORY_MB}")).args(["-timeout=20", "-print_final_stats=1"]);
    fuzzer.arg(format!("-artifact_prefix={}/", findings.display()));
    let outcome = start::to_the_end(&mut fuzzer)
        .map_err(|_| format!("{target}: see {} and {}", findings.display(), log.display()));
    let row = row(target, &told(&log));
    say::line(&row);
    (Ok(row), outcome)
}

/// As many targets at a time as there are processors.
fn at_a_time() -> usize {
    std::thread::available_parallelism().map_or(1, usize::from)
}

/// What each target gives, in the order of the targets, several of them at a time.
fn in_parallel<T: Send>(targets: Vec<String>, one: impl Fn(&str) -> T + Sync) -> Vec<T> {
    let next = Mutex::new(targets.iter().enumerate());
    let done = Mutex::new(Vec::new());
    let taken = || next.lock().unwrap_or_else(PoisonError::into_inner).next();
    std::thread::scope(|scope| {
        for _ in 0..at_a_time() {
            scope.spawn(|| {
                while let Some((place, target)) = taken() {
                    let told = one(target);
                    done.lock().unwrap_or_else(PoisonError::into_inner).push((place, told));
                }
            });
        }
    });
    let mut done = done.into_inner().unwrap_or_else(PoisonError::into_inner);
    done.sort_by_key(|row| row.0);
    done.into_iter().map(|row| row.1).collect()
}

/// What a fuzzer said; its findings may hold bytes that are no text.
fn told(log: &Path) -> String {
    fs::read(log).map(|text| String::from_utf8_lossy(&text).into_owned()).unwrap_or_default()
}

/// Runs, edges covered and size of the corpus, as libFuzzer's last lines have them.
fn row(target: &str, told: &str) -> String {
    let after = |word: &str| {
        let found = told.lines().rev().find_map(|line| line.split_once(word));
        let figure = found.and_then(|(_, rest)| rest.trim_start().split([' ', '/']).next());
        figure.unwrap_or("unknown").to_owned()
    };
    let runs = after("stat::number_of_executed_units:");
    format!("{target:<20}{runs:>12} runs{:>9} edges{:>7} in the corpus", after(" cov:"), after(" corp:"))
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

#[cfg(test)]
mod tests {
    use super::{in_parallel, row};

    #[test]
    fn figures_are_read_from_what_the_fuzzer_says() {
        let told = "#2\tINITED cov: 3 ft: 3 corp: 1/1b\n#90\tDONE   cov: 87 ft: 240 corp: 72/33Kb lim: 4096 exec/s: 2\n\
                    stat::number_of_executed_units: 8053332\n";
        assert_eq!(
            row("kept_photo", told),
            "kept_photo               8053332 runs       87 edges     72 in the corpus"
        );
        assert!(row("typed", "").contains("unknown runs"));
    }

    #[test]
    fn targets_beside_each_other_answer_in_their_order() {
        let names: Vec<String> = (0..9).map(|number| number.to_string()).collect();
        assert_eq!(in_parallel(names.clone(), str::to_owned), names);
    }
}
