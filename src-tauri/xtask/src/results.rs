//! Writes what a long run printed into the page that keeps it, with machine, date and commit: figures that nobody
//! copies by hand cannot be copied wrongly. What people say about them stands around the marked part and stays.

use std::fs;

use crate::{Outcome, rooms, say, start};

const BEGIN: &str = "<!-- figures: written by xtask -->";
const END: &str = "<!-- end of figures -->";

/// Puts lines between the marks of a page, in place of the run before.
///
/// # Errors
/// A page that cannot be read or written, or has lost its marks.
pub fn write(page: &str, lines: &[String]) -> Outcome<()> {
    let path = rooms::top().join(page);
    let text = fs::read_to_string(&path).map_err(|fault| format!("{page}: {fault}"))?;
    let text = replaced(&text, &figures(&conditions(), lines)).ok_or(format!("{page} has lost its marks"))?;
    fs::write(&path, text).map_err(|fault| format!("{page}: {fault}"))?;
    say::line(&format!("Written into {page}."));
    Ok(())
}

fn replaced(text: &str, figures: &str) -> Option<String> {
    let (before, rest) = text.split_once(BEGIN)?;
    let (_, after) = rest.split_once(END)?;
    Some(format!("{before}{BEGIN}\n{figures}{END}{after}"))
}

fn figures(conditions: &str, lines: &[String]) -> String {
    format!("{conditions}\n\n```\n{}\n```\n", lines.join("\n").trim_end())
}

/// Date, machine and commit of a run. What cannot be found out is said to be unknown.
fn conditions() -> String {
    let known = |answer: Option<String>| answer.unwrap_or_else(|| "unknown".to_owned());
    let processor = fs::read_to_string("/proc/cpuinfo").ok().and_then(|text| {
        let line = text.lines().find(|line| line.starts_with("model name"))?;
        Some(line.split_once(':')?.1.trim().to_owned())
    });
    let cores = std::thread::available_parallelism().map_or_else(|_| "unknown".to_owned(), |n| n.to_string());
    let changed = start::asked("git", &["status", "--porcelain"]).is_some_and(|files| !files.is_empty());
    format!(
        "Run on {}, {}, {cores} cores, commit {}{}.",
        known(start::asked("date", &["+%Y-%m-%d"])),
        known(processor),
        known(start::asked("git", &["rev-parse", "--short", "HEAD"])),
        if changed { ", with changes not committed" } else { "" },
    )
}

#[cfg(test)]
mod tests {
    use super::{BEGIN, END, figures, replaced};

    #[test]
    fn run_replaces_the_one_before_and_nothing_else() {
        let page = format!("# Measured\n\n{BEGIN}\nold\n{END}\n\nWords.\n");
        let lines = ["a  1 ms".to_owned(), "b  2 ms".to_owned()];
        let first = replaced(&page, &figures("Run today.", &lines)).unwrap_or_default();
        assert_eq!(
            first,
            format!("# Measured\n\n{BEGIN}\nRun today.\n\n```\na  1 ms\nb  2 ms\n```\n{END}\n\nWords.\n")
        );
        assert_eq!(replaced(&first, &figures("Run today.", &lines)), Some(first));
        assert_eq!(replaced("# Measured\n", ""), None);
    }
}
