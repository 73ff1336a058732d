//! A process that records is killed at random instants: every reply it gave is still there, the chain
//! holds, and the data opens again at once.

use std::io::{BufRead, BufReader};
use std::process::{Command, Stdio};
use std::sync::mpsc;
use std::time::Duration;

use serde_json::json;

use crate::support::{ask, open};
use steady_core::app::request::Request;
use steady_core::app::response::{History, Response};

/// Unless a marathon asks for more.
const KILLS: u64 = 100;
/// One kill in so many comes at any instant from the start on; the others only once a reply has come, so that a slow
/// machine makes the test slow and nothing else.
const EARLY: u64 = 5;
/// A machine that has no reply by then is out of order.
const SLOWEST: Duration = Duration::from_secs(120);

#[test]
fn every_reply_survives_a_hundred_kills() {
    let asked = std::env::var("STEADY_KILLS").ok().map(|kills| kills.parse().unwrap());
    let kills = asked.unwrap_or(KILLS);
    let mut folder = tempfile::tempdir().unwrap();
    let mut replied = 0;
    for kill in 0..kills {
        if kill % KILLS == 0 {
            // A workshop's year of visits is enough in one folder.
            folder = tempfile::tempdir().unwrap();
        }
        let after = Duration::from_micros(kill * 1_370 % 45_000);
        let lines = record_and_kill(folder.path(), kill % EARLY != 0, after);
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
    println!("{replied} replies before {kills} kills, all there");
    assert!(
        replied as u64 >= kills - kills.div_ceil(EARLY),
        "a process that had replied lost its line: {replied}"
    );
}

fn history(steady: &steady_core::app::Steady, visit: &str) -> History {
    let Response::History(history) = steady.handle(Request::History { visit: visit.to_owned() }).unwrap()
    else {
        panic!("no history")
    };
    history
}

/// Lines that came whole before the kill.
fn record_and_kill(folder: &std::path::Path, at_work: bool, after: Duration) -> Vec<String> {
    let mut child =
        Command::new(env!("CARGO_BIN_EXE_recorder")).arg(folder).stdout(Stdio::piped()).spawn().unwrap();
    let output = BufReader::new(child.stdout.take().unwrap());
    let (sender, replies) = mpsc::channel();
    std::thread::spawn(move || output.lines().map_while(Result::ok).try_for_each(|line| sender.send(line)));
    let first = at_work.then(|| {
        replies.recv_timeout(SLOWEST).unwrap_or_else(|_| panic!("no reply: a slow machine, and no loss"))
    });
    std::thread::sleep(after);
    child.kill().unwrap();
    child.wait().unwrap();
    first.into_iter().chain(replies).filter(|line| line.len() == 36 + 1 + 64).collect()
}
