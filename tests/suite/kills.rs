//! A process that records is killed at random instants: every reply it gave is still there, the chain
//! holds, and the data opens again at once.

use std::io::{BufRead, BufReader};
use std::process::{Command, Stdio};
use std::time::Duration;

use serde_json::json;

use crate::bench_tools::{ask, open};
use steady_core::app::request::Request;
use steady_core::app::response::{History, Response};

const KILLS: u64 = 100;

#[test]
fn every_reply_survives_a_hundred_kills() {
    let folder = tempfile::tempdir().unwrap();
    let mut replied = 0;
    for kill in 0..KILLS {
        let lines = record_and_kill(folder.path(), Duration::from_micros(3_000 + kill * 1_370 % 45_000));
        let steady = open(folder.path()).unwrap();
        let Some(visit) = lines.first().and_then(|line| line.split_whitespace().next()) else { continue };
        let standing = ask(&steady, json!({ "ask": "look", "visit": visit }));
        assert_eq!(standing.ledger.broken_at, None, "kill {kill}");
        let History { entries, .. } = history(&steady, visit);
        for line in &lines {
            let hash = line.split_whitespace().nth(1).unwrap();
            assert!(entries.iter().any(|entry| entry.hash == hash), "kill {kill} lost {hash}");
        }
        replied += lines.len();
    }
    println!("{replied} replies before {KILLS} kills, all there");
    assert!(replied as u64 > KILLS, "too few replies to mean anything: {replied}");
}

fn history(steady: &steady_core::app::Steady, visit: &str) -> History {
    let Response::History(history) = steady.handle(Request::History { visit: visit.to_owned() }).unwrap()
    else {
        panic!("no history")
    };
    history
}

/// Lines that came whole before the kill.
fn record_and_kill(folder: &std::path::Path, after: Duration) -> Vec<String> {
    let mut child =
        Command::new(env!("CARGO_BIN_EXE_recorder")).arg(folder).stdout(Stdio::piped()).spawn().unwrap();
    let output = child.stdout.take().unwrap();
    let reader =
        std::thread::spawn(move || BufReader::new(output).lines().map_while(Result::ok).collect::<Vec<_>>());
    std::thread::sleep(Duration::from_millis(12) + after);
    child.kill().unwrap();
    child.wait().unwrap();
    let mut lines = reader.join().unwrap();
    lines.retain(|line| line.len() == 36 + 1 + 64);
    lines
}
