//! What is done in a process of its own, so that the most memory it held is that of one piece of work.

use std::path::Path;
use std::process::Command;

use crate::{bore, handover};

/// What starts such a process; the work and what it needs follow.
const ALONE: &str = "--alone";

/// Does the work that this process was started for, if it was, and prints the peak of its resident memory, kB (Linux).
pub fn is_done() -> bool {
    let words: Vec<String> = std::env::args().skip(1).collect();
    match words.iter().map(String::as_str).collect::<Vec<_>>().as_slice() {
        [ALONE, "nothing"] => {}
        [ALONE, "zone"] => bore::zone_alone(),
        [ALONE, "page"] => bore::page_alone(),
        [ALONE, "share", data, to] => handover::share_alone(Path::new(data), Path::new(to)),
        _ => return false,
    }
    let status = std::fs::read_to_string("/proc/self/status").unwrap_or_default();
    let peak = status.lines().find_map(|line| line.strip_prefix("VmHWM:")).unwrap_or("0 kB");
    println!("{}", peak.trim().trim_end_matches(" kB"));
    true
}

/// Prints the peak memory of a work in a process of its own.
pub fn report(what: &str, work: &[&str]) {
    let output = Command::new(std::env::current_exe().unwrap()).arg(ALONE).args(work).output().unwrap();
    let kb: f64 = String::from_utf8_lossy(&output.stdout).trim().parse().unwrap();
    println!("{what:<58} {:>8.1} MB", kb / 1024.0);
}
