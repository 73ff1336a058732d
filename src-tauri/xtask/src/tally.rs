//! Counts tests by the closing lines of their runners: cargo test, vitest and node's.

use std::fmt;

/// Tests that passed and failed.
#[derive(Debug, Default, PartialEq, Eq)]
pub struct Tally {
    passed: u64,
    failed: u64,
}

impl Tally {
    /// Reads one line of a runner's output.
    pub fn read(&mut self, line: &str) {
        let words: Vec<&str> = line
            .split(|c: char| c.is_whitespace() || ".;|()".contains(c))
            .filter(|w| !w.is_empty())
            .collect();
        match words.as_slice() {
            ["test", "result:", rest @ ..] | ["Tests", rest @ ..] => {
                self.passed += number_before("passed", rest);
                self.failed += number_before("failed", rest);
            }
            ["ℹ", "pass", count] => self.passed += count.parse().unwrap_or(0),
            ["ℹ", "fail", count] => self.failed += count.parse().unwrap_or(0),
            _ => {}
        }
    }
}

impl fmt::Display for Tally {
    fn fmt(&self, to: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(to, "{} passed, {} failed", self.passed, self.failed)
    }
}

fn number_before(word: &str, words: &[&str]) -> u64 {
    let place = words.iter().position(|found| *found == word).and_then(|place| place.checked_sub(1));
    place.and_then(|place| words.get(place)).and_then(|count| count.parse().ok()).unwrap_or(0)
}

#[cfg(test)]
mod tests {
    use super::Tally;

    #[track_caller]
    fn check(line: &str, passed: u64, failed: u64) {
        let mut tally = Tally::default();
        tally.read(line);
        assert_eq!(tally, Tally { passed, failed }, "{line}");
    }

    #[test]
    fn closing_lines_of_each_runner_are_counted() {
        check("test result: ok. 12 passed; 0 failed; 0 ignored; 0 measured; finished in 0.1s", 12, 0);
        check("test result: FAILED. 3 passed; 2 failed; 0 ignored; 0 measured", 3, 2);
        check("      Tests  7 passed (7)", 7, 0);
        check("      Tests  1 failed | 6 passed (7)", 6, 1);
        check("ℹ pass 4", 4, 0);
        check("ℹ fail 1", 0, 1);
    }

    #[test]
    fn other_lines_count_nothing() {
        for line in ["", "test walk::gates ... ok", "Test Files  2 passed (2)", "ℹ tests 4", "5 passed"] {
            check(line, 0, 0);
        }
    }
}
