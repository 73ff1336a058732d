//! Measurements, side by side with a peer in one run; `cargo xtask bench` starts it in a release build.
//! Prints a table and is never part of the tests. With names of sections, only those:
//! `cargo bench --workspace --bench bench -- photos papers`.

#![expect(
    clippy::unwrap_used,
    clippy::print_stdout,
    clippy::indexing_slicing,
    reason = "a bench prints and may fail loudly"
)]

mod alone;
mod backup;
mod bore;
mod devices;
mod handover;
mod papers;
mod photos;
mod sorting;

use std::path::Path;
use std::sync::Arc;
use std::time::{Duration, Instant};

use rusqlite::Connection;
use steady_core::app::press::{Paper, Press, PressError, PrintRun};
use steady_core::app::request::Request;
use steady_core::app::response::Response;
use steady_core::app::{Setup, Steady};
use steady_core::model::answer::AnswerValue;
use steady_core::model::standing::Standing;
use steady_core::model::time::Moment;
use steady_core::model::visit::{Gearbox, Intake, Owner, Vehicle};

struct NoPress;

impl Press for NoPress {
    fn print(&self, _paper: Paper<'_>, _run: &PrintRun<'_>) -> Result<Vec<u8>, PressError> {
        Ok(Vec::new())
    }
}

fn main() {
    // `cargo bench` passes --bench; a process of its own is started for what its memory is measured of.
    if alone::is_done() {
        return;
    }
    let folder = tempfile::tempdir_in(env!("CARGO_TARGET_TMPDIR")).unwrap();
    let folder = folder.path();
    let named: Vec<String> = std::env::args().skip(1).filter(|word| !word.starts_with("--")).collect();
    let section = |name: &str, measure: &dyn Fn()| {
        if named.is_empty() || named.iter().any(|wanted| wanted == name) {
            measure();
        }
    };
    section("answers", &|| answers_beside_bare_inserts(folder));
    section("visits", &|| visit_of_500_entries(folder));
    section("devices", &|| devices::measure(folder));
    section("list", &|| list_of_10_000_visits(folder));
    section("bore", &bore::rows);
    section("photos", &|| photos::measure(folder));
    section("papers", &|| papers::measure(folder));
    section("handover", &|| handover::measure(folder));
    section("backup", &|| backup::measure(folder));
    section("sorting", &sorting::measure);
    section("sizes", &sizes);
}

fn open(folder: &Path) -> Steady {
    let setup = Setup { data_dir: folder.to_owned(), press: Arc::new(NoPress), clock: Moment::now };
    let steady = Steady::open(setup).unwrap();
    steady.handle(Request::SetTechnician { name: "Kim Demo".to_owned() }).unwrap();
    steady
}

fn intake(number: usize) -> Intake {
    Intake {
        vehicle: Vehicle {
            layout: "rigid-engine-speed".to_owned(),
            label: "demo tourer".to_owned(),
            plate: format!("TR {number:05}"),
            gearbox: Some(Gearbox::AutomatedClutch),
            idle_rpm: Some([700, 800]),
            ..Vehicle::default()
        },
        owner: Owner { name: format!("Owner {number}"), contact: String::new() },
        ..Intake::default()
    }
}

fn standing(response: Response) -> Standing {
    let Response::Visit(standing) = response else { panic!("no standing") };
    Arc::unwrap_or_clone(standing)
}

fn answer(visit: &str, turn: usize) -> Request {
    Request::Answer {
        visit: visit.to_owned(),
        step: "road-speed-vibration".to_owned(),
        value: AnswerValue::One(["none", "grows-with-speed"][turn % 2].to_owned()),
        temperature: None,
        free: None,
        engine: None,
        heard_at: None,
        reason: None,
    }
}

/// From so many samples on the slowest hundredth is told; of fewer, the slowest of all.
const SAMPLES: usize = 1_000;

fn report(what: &str, mut times: Vec<Duration>) {
    times.sort();
    let at = |share: f64| times[((times.len() - 1) as f64 * share) as usize].as_secs_f64() * 1e3;
    let (end, slow) = if times.len() < SAMPLES { ("max", at(1.0)) } else { ("p99", at(0.99)) };
    println!("{what:<58} p50 {:>8.3} ms   {end} {slow:>8.3} ms   n {}", at(0.5), times.len());
}

fn timed<T>(times: &mut Vec<Duration>, work: impl FnOnce() -> T) -> T {
    let start = Instant::now();
    let done = work();
    times.push(start.elapsed());
    done
}

/// One answer from request to synced reply, taking turns with a bare insert with the same pragmas.
fn answers_beside_bare_inserts(folder: &Path) {
    let steady = open(&folder.join("answers"));
    let bare = Connection::open(folder.join("bare.db")).unwrap();
    bare.pragma_update(None, "journal_mode", "WAL").unwrap();
    bare.pragma_update(None, "synchronous", "FULL").unwrap();
    bare.execute_batch(
        "CREATE TABLE entry (id INTEGER PRIMARY KEY AUTOINCREMENT, body TEXT NOT NULL) STRICT",
    )
    .unwrap();
    let body = "x".repeat(300);
    let (mut ours, mut theirs) = (Vec::new(), Vec::new());
    for number in 0..SAMPLES / 250 {
        let visit = standing(steady.handle(Request::Open { intake: intake(number) }).unwrap()).visit;
        for turn in 0..250 {
            timed(&mut theirs, || bare.execute("INSERT INTO entry (body) VALUES (?1)", [&body]).unwrap());
            timed(&mut ours, || steady.handle(answer(&visit, turn)).unwrap());
        }
    }
    report("one answer, request to synced reply (visits of 1 to 250)", ours);
    report("  peer: bare SQLite insert, same pragmas, same disk", theirs);
}

fn visit_of_500_entries(folder: &Path) {
    let data = folder.join("long");
    let steady = open(&data);
    let long = |number: usize| {
        let visit = standing(steady.handle(Request::Open { intake: intake(number) }).unwrap()).visit;
        for turn in 0..499 {
            steady.handle(answer(&visit, turn)).unwrap();
        }
        visit
    };
    let visit = long(1);
    let other = standing(steady.handle(Request::Open { intake: intake(2) }).unwrap()).visit;
    let look = |visit: &str| steady.handle(Request::Look { visit: visit.to_owned() }).unwrap();
    let mut times = Vec::new();
    for _ in 0..SAMPLES {
        look(&other);
        timed(&mut times, || look(&visit));
    }
    report("opening a visit of 500 entries by one device", times);
    let mut times = Vec::new();
    for _ in 0..SAMPLES {
        timed(&mut times, || look(&visit));
    }
    report("looking again at the visit at hand", times);
    // Several visits, so that none of them grows far beyond its 500.
    let mut times = Vec::new();
    for number in 3..3 + SAMPLES / 50 {
        let visit = long(number);
        for turn in 0..50 {
            timed(&mut times, || steady.handle(answer(&visit, turn)).unwrap());
        }
    }
    report("one answer in a visit of 500 to 550 entries", times);
}

fn list_of_10_000_visits(folder: &Path) {
    let data = folder.join("list");
    let steady = open(&data);
    let first = standing(steady.handle(Request::Open { intake: intake(0) }).unwrap()).visit;
    drop(steady);
    copy_cards(&data.join("steady.db"), &first);
    let steady = open(&data);
    let page = |what: &str, search: &str| {
        let mut times = Vec::new();
        for _ in 0..SAMPLES {
            let request = Request::Visits { search: search.to_owned(), after: None };
            timed(&mut times, || steady.handle(request).unwrap());
        }
        report(what, times);
    };
    page("a page of the list out of 10,000 visits", "");
    page("search in 10,000 visits: one plate", "tr09876");
    page("search in 10,000 visits: nothing found", "nobody there");
}

/// 9,999 more cards like the first: the list reads nothing else.
fn copy_cards(database: &Path, first: &str) {
    let connection = Connection::open(database).unwrap();
    connection
        .execute(
            "WITH RECURSIVE n (i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n WHERE i < 9999)
             INSERT INTO card (visit, label, plate, vin, owner, opened_at, updated_at, word, answered, steps, receipt, haystack)
             SELECT visit || '-' || i, label, plate, vin, owner, opened_at + i, updated_at, word, answered, steps, receipt,
                 replace(haystack, '00000', printf('%05d', i))
             FROM card, n WHERE visit = ?1",
            [first],
        )
        .unwrap();
}

/// Sizes of what is shipped, where they have been built.
fn sizes() {
    let root = Path::new(env!("CARGO_MANIFEST_DIR")).join("..");
    for name in ["target/release/steady", "target/release/steady-app"] {
        match std::fs::metadata(root.join(name)) {
            Ok(file) => println!("{name:<58} {:>8.1} MB", file.len() as f64 / 1e6),
            Err(_) => println!("{name:<58} not built"),
        }
    }
}
