//! The stage `supply`: what comes from elsewhere is what it was, under licences that are allowed, with no flaw known.
//!
//! Most of it needs no network and is a part of the suite, `tests/suite/supply.rs`. Here is what takes tools and
//! databases that are not everywhere: cargo-deny where it is installed (it takes five minutes to build, so that a test
//! run does not), its advisories and npm's signatures where they can be reached. What was not done is said.

use std::fs;
use std::sync::{Mutex, PoisonError};
use std::time::{SystemTime, UNIX_EPOCH};

use crate::{Outcome, node, rooms, say, start};

/// Where the advisories are kept.
const ADVISORIES: &str = "https://github.com/RustSec/advisory-db";
/// Folders with npm packages.
pub const NPM: [&str; 2] = ["ui", "tests/browser"];

/// What could not be looked at here, so that the end of a run says it again.
static UNCHECKED: Mutex<Vec<String>> = Mutex::new(Vec::new());

fn unchecked(what: &str) {
    say::line(&format!("!! {what}"));
    UNCHECKED.lock().unwrap_or_else(PoisonError::into_inner).push(what.to_owned());
}

/// Says once more what was not looked at.
pub fn say_unchecked() {
    for what in UNCHECKED.lock().unwrap_or_else(PoisonError::into_inner).iter() {
        say::line(&format!("!! not checked: {what}"));
    }
}

/// Runs the stage.
pub fn run() -> Outcome<()> {
    none_is_out_of_date()?;
    crates()?;
    NPM.into_iter().try_for_each(signatures)
}

fn crates() -> Outcome<()> {
    if start::asked("cargo", &["deny", "--version"]).is_none() {
        unchecked(
            "NOBODY looked whether a flaw is known in what is built in: cargo-deny is not installed. Licences, bans and \
             sources are read by the suite alone.",
        );
        say::line("To have it looked at: cargo install --locked cargo-deny");
        return Ok(());
    }
    let deny = |before: &[&str], what: &[&str]| {
        let words = [&["deny", "--all-features"], before, &["check", "--config", ".cargo/deny.toml"], what];
        start::to_the_end(&mut start::cargo(&words.concat()))
    };
    deny(&["--offline"], &["licenses", "bans", "sources"])?;
    if start::asked("git", &["ls-remote", "--exit-code", ADVISORIES, "HEAD"]).is_none() {
        unchecked(
            "NOBODY looked whether a flaw is known in what is built in: the advisories cannot be reached.",
        );
        return Ok(());
    }
    deny(&[], &["advisories"])
}

/// What is installed was signed by the registry. Its keys come from another place than its packages.
fn signatures(folder: &str) -> Outcome<()> {
    let mut command = node::npm(folder, &["audit", "signatures", "--fetch-retries=1"]);
    say::step(&start::shown(&command));
    let output = command.output().map_err(|error| start::unstartable(&command, &error))?;
    let said = [output.stdout, output.stderr].concat();
    let said = String::from_utf8_lossy(&said);
    if !output.status.success() && is_unreachable(&said) {
        unchecked(&format!(
            "{folder}: NOBODY looked at signatures, their keys cannot be reached; npm ci holds to the lock's sums."
        ));
        return Ok(());
    }
    said.lines().for_each(say::line);
    start::succeeded(&command, output.status)
}

/// Whether npm failed for want of a network, and not for what it found.
fn is_unreachable(said: &str) -> bool {
    let without =
        ["ENOTFOUND", "EAI_AGAIN", "ECONNREFUSED", "ECONNRESET", "ENETUNREACH", "EHOSTUNREACH", "ETIMEDOUT"];
    said.lines()
        .filter_map(|line| line.strip_prefix("npm error code "))
        .any(|code| without.contains(&code.trim()))
}

/// An advisory is ignored until a date, and then looked at again.
fn none_is_out_of_date() -> Outcome<()> {
    let path = rooms::top().join(".cargo/deny.toml");
    let text = fs::read_to_string(&path).map_err(|error| format!("{}: {error}", path.display()))?;
    let since = SystemTime::now().duration_since(UNIX_EPOCH).unwrap_or_default();
    let late = out_of_date(&text, &date(since.as_secs() / 86_400));
    if late.is_empty() {
        return Ok(());
    }
    Err(format!(
        "these advisories were ignored until a date that has passed: {}\nlook at them again, see {}",
        late.join(", "),
        path.display()
    ))
}

/// Ids of ignored advisories whose date is before today's.
fn out_of_date(deny: &str, today: &str) -> Vec<String> {
    let row = |line: &str| {
        let (_, rest) = line.split_once("{ id = \"")?;
        let (id, rest) = rest.split_once('"')?;
        let (_, rest) = rest.split_once("\"until ")?;
        let (date, _) = rest.split_once(':')?;
        (date < today).then(|| id.to_owned())
    };
    deny.lines().filter_map(row).collect()
}

/// The date a number of days after 1 January 1970, by the rule of the Gregorian calendar.
fn date(mut days: u64) -> String {
    let leap = |year: u64| year.is_multiple_of(4) && !year.is_multiple_of(100) || year.is_multiple_of(400);
    let mut year = 1970;
    while days >= 365 + u64::from(leap(year)) {
        days -= 365 + u64::from(leap(year));
        year += 1;
    }
    let lengths = [31, 28 + u64::from(leap(year)), 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
    let mut month = 1;
    for length in lengths {
        if days < length {
            break;
        }
        days -= length;
        month += 1;
    }
    format!("{year}-{month:02}-{:02}", days + 1)
}

#[cfg(test)]
mod tests {
    use super::{date, is_unreachable, out_of_date};

    #[test]
    fn only_a_missing_network_excuses_a_signature_that_was_not_looked_up() {
        for (said, excused) in [
            ("npm error code ENOTFOUND\nnpm error syscall getaddrinfo", true),
            ("npm error code ETIMEDOUT", true),
            ("3 packages have invalid registry signatures:\n\nsomething@1.0.0", false),
            ("npm error code EATTESTATIONVERIFY", false),
            ("a package speaks of ENOTFOUND", false),
            ("", false),
        ] {
            assert_eq!(is_unreachable(said), excused, "{said}");
        }
    }

    #[test]
    fn dates_are_those_of_the_calendar() {
        for (days, expected) in [
            (0, "1970-01-01"),
            (58, "1970-02-28"),
            (59, "1970-03-01"),
            (789, "1972-02-29"),
            (10_956, "1999-12-31"),
            (11_016, "2000-02-29"),
            (20_786, "2026-11-29"),
        ] {
            assert_eq!(date(days), expected, "{days}");
        }
    }

    #[test]
    fn an_advisory_is_out_of_date_on_the_day_after() {
        let deny = "ignore = [\n    { id = \"A-1\", reason = \"until 2027-05-31: x\" },\n    { id = \"A-2\", reason = \"until 2027-06-01: y\" },\n]";
        assert!(out_of_date(deny, "2027-05-31").is_empty());
        assert_eq!(out_of_date(deny, "2027-06-01"), ["A-1"]);
        assert_eq!(out_of_date(deny, "2028-01-01"), ["A-1", "A-2"]);
    }
}
