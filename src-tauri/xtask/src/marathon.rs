//! `cargo xtask marathon [KILLS [SECONDS]]`: what the tests do for a moment, for hours: a recording process killed over
//! and over, beside every fuzz target. Its figures go into `tests/fuzz/RESULTS.md` with machine, date and commit.

use crate::{Outcome, fuzz, results, say, start};

/// Kills of a process that records.
const KILLS: u32 = 10_000;
/// For each fuzz target.
const SECONDS: u32 = 600;

/// Runs the command.
pub fn run(words: &[&str]) -> Outcome<()> {
    let [kills, seconds] = numbers(words)?;
    say::step(&format!("{kills} kills while recording, beside every fuzz target for {seconds} s"));
    // A kill waits for processes to start and end; the fuzzers take what it leaves of the processors.
    let killing = std::thread::spawn(move || killed(kills));
    let fuzzed = fuzz::fuzzed(&[], seconds);
    let mut figures = killing.join().map_err(|_| "the kills ended in a panic".to_owned())??;
    let (rows, outcome) = fuzzed?;
    figures.extend(rows);
    results::write("tests/fuzz/RESULTS.md", &figures)?;
    outcome
}

/// Kills a process that records so many times; what the test said of it.
fn killed(kills: u32) -> Outcome<Vec<String>> {
    let words = ["test", "--workspace", "--test", "suite", "every_reply_survives", "--", "--nocapture"];
    let told = start::captured(start::cargo(&words).env("STEADY_KILLS", kills.to_string()))?;
    let mut figures = vec!["# Kills while recording".to_owned()];
    figures.extend(told.into_iter().filter(|line| line.contains(" kills")));
    if figures.len() == 1 {
        return Err("the kill test said nothing of its kills".to_owned());
    }
    Ok(figures)
}

fn numbers(words: &[&str]) -> Outcome<[u32; 2]> {
    let number = |index: usize, usual| match words.get(index) {
        None => Ok(usual),
        Some(word) => {
            word.parse().map_err(|_| format!("marathon takes numbers: kills and seconds, not {word}"))
        }
    };
    if words.len() > 2 {
        return Err("marathon takes two numbers: kills, and seconds for each fuzz target".to_owned());
    }
    Ok([number(0, KILLS)?, number(1, SECONDS)?])
}

#[cfg(test)]
mod tests {
    use super::{KILLS, SECONDS, numbers};

    #[test]
    fn a_short_run_is_asked_for_by_numbers() {
        assert_eq!(numbers(&[]), Ok([KILLS, SECONDS]));
        assert_eq!(numbers(&["50"]), Ok([50, SECONDS]));
        assert_eq!(numbers(&["50", "5"]), Ok([50, 5]));
        assert!(numbers(&["many"]).is_err() && numbers(&["1", "2", "3"]).is_err());
    }
}
