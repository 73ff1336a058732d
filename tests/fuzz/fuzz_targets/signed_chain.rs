//! Lines of three devices, signed as they should be, then changed, forged, swapped and forked by a stranger who
//! carries them. Whatever comes in, nothing stands in the name of a device that its own key did not sign.

#![no_main]

#[path = "../src/stranger.rs"]
mod stranger;
#[path = "../src/workshop.rs"]
mod workshop;

use std::collections::HashSet;
use std::path::Path;
use std::sync::atomic::{AtomicU32, Ordering};
use std::sync::{Mutex, OnceLock, PoisonError};

use libfuzzer_sys::fuzz_target;
use serde_json::Value;
use steady_core::app::Steady;
use steady_core::app::handover::Wanted;
use steady_core::app::replay::replay;
use steady_core::model::entry::EntryBody;

const CARRIER: u8 = 7;
const THIRD: u8 = 9;
/// Entries that a device may write after the first.
const LATER: [&str; 4] = [
    r#"{"kind":"order-chosen","order":"running-first","by":"Kim Demo"}"#,
    r#"{"kind":"part-left","set":"lift","by":"Kim Demo"}"#,
    r#"{"kind":"answered","step":"play-vertical","value":"felt","by":"Kim Demo"}"#,
    r#"{"kind":"answered","step":"play-vertical","value":"none","by":"Kim Demo"}"#,
];

/// The receiver's own visit.
const CASE: &str = r#"{"vehicle":{"plate":"TR 4417","layout":"rigid-engine-speed","gearbox":"manual"},
    "technician":"Kim Demo","answers":[{"step":"road-speed-vibration","value":"none"}]}"#;

/// A visit of its own each time, since a visit that was set apart stays so.
static VISITS: AtomicU32 = AtomicU32::new(0);

/// The receiver's own visit, and every line that a device's own key signed.
struct Honest {
    visit: String,
    own: Vec<Value>,
    signed: Mutex<HashSet<String>>,
}

fn honest() -> &'static Honest {
    static HONEST: OnceLock<Honest> = OnceLock::new();
    HONEST.get_or_init(|| {
        let workshop = workshop::shared();
        let opened = replay(&workshop.steady, CASE, Path::new("."));
        let visit = opened.unwrap_or_else(|failure| panic!("{failure:?}")).visit;
        let own = lines(&workshop.steady, &visit);
        assert!(!own.is_empty(), "a visit that was opened has no line");
        let signed = own.iter().map(stranger::hash).collect();
        Honest { visit, own, signed: Mutex::new(signed) }
    })
}

fuzz_target!(|bytes: &[u8]| {
    let (honest, workshop) = (honest(), workshop::shared());
    let visit = stranger::visit(VISITS.fetch_add(1, Ordering::Relaxed));
    let opened = opened();
    let bodies: Vec<&str> = [opened.as_str()].into_iter().chain(LATER).collect();
    let third = stranger::device(THIRD);
    let mut signed = honest.signed.lock().unwrap_or_else(PoisonError::into_inner);
    let mut lines: Vec<Value> = stranger::chain(&visit, &third, &bodies);
    lines.extend(honest.own.iter().cloned());
    signed.extend(lines.iter().map(stranger::hash));
    for change in bytes.chunks_exact(3).take(40) {
        changed(&mut lines, (change[0], change[1], change[2]), &mut signed);
    }
    let file = stranger::carried(&sorted(&lines), &stranger::device(CARRIER));
    // Whether it is refused, set apart or taken in: what is held then has to be proven.
    let _ = workshop.steady.import(&mut &file[..]);
    let own = honest.own[0]["device"].as_str().unwrap_or_default();
    for held in [&visit, &honest.visit].into_iter().flat_map(|visit| self::lines(&workshop.steady, visit)) {
        let writer = held["device"].as_str().unwrap_or_default();
        if writer == own || writer == third.device {
            assert!(signed.contains(&stranger::hash(&held)), "never signed by its writer: {held}");
        }
    }
    let kept = self::lines(&workshop.steady, &honest.visit);
    assert!(honest.own.iter().all(|line| kept.contains(line)), "a line of the receiver's own is gone");
});

/// One change by the carrier; a fork is signed by the third device itself, which then wrote both.
fn changed(lines: &mut Vec<Value>, (what, place, with): (u8, u8, u8), signed: &mut HashSet<String>) {
    let (place, other) = (usize::from(place) % lines.len().max(1), usize::from(with) % lines.len().max(1));
    let Some(source) = lines.get(other).cloned() else { return };
    let Some(line) = lines.get_mut(place) else { return };
    let carrier = stranger::device(CARRIER);
    match what % 14 {
        0 => line["body"] = LATER[usize::from(with) % LATER.len()].into(),
        1 => line["signature"] = source["signature"].clone(),
        2 => line["device"] = source["device"].clone(),
        3 => line["seq"] = i64::from(with).into(),
        4 => line["at"] = (line["at"].as_i64().unwrap_or(0) + i64::from(with) * 86_400_000).into(),
        5 => line["prev"] = source["hash"].clone(),
        6 => line["hash"] = stranger::hash(line).into(),
        7 => stranger::sign(line, &carrier),
        8 => {
            line["device"] = carrier.device.clone().into();
            stranger::sign(line, &carrier);
        }
        9 => drop(line.as_object_mut().map(|line| line.remove("signature"))),
        10 => line["visit"] = source["visit"].clone(),
        11 => drop(lines.remove(place)),
        12 => lines.push(source),
        _ => {
            let third = stranger::device(THIRD);
            let mut fork = source;
            if fork["device"] == third.device.as_str() {
                fork["body"] = LATER[place % LATER.len()].into();
                stranger::sign(&mut fork, &third);
                signed.insert(stranger::hash(&fork));
                lines.push(fork);
            }
        }
    }
}

/// The lines by visit, in the order in which a file holds them.
fn sorted(lines: &[Value]) -> Vec<(String, Vec<Value>)> {
    let mut visits: Vec<(String, Vec<Value>)> = Vec::new();
    for line in lines {
        let visit = line["visit"].as_str().unwrap_or_default();
        match visits.iter_mut().find(|known| known.0 == visit) {
            Some(known) => known.1.push(line.clone()),
            None => visits.push((visit.to_owned(), vec![line.clone()])),
        }
    }
    visits.sort_by(|a, b| a.0.cmp(&b.0));
    for visit in &mut visits {
        visit.1.sort_by_key(|line| (line["device"].to_string(), line["seq"].as_i64()));
    }
    visits
}

/// What opens the receiver's visit opens the third device's too.
fn opened() -> String {
    let body = honest().own[0]["body"].as_str().unwrap_or_default();
    let read: EntryBody = serde_json::from_str(body).expect("an own line can be read");
    serde_json::to_string(&read).expect("an entry can be written")
}

/// The lines that a workshop holds of a visit, as its handover file has them; none if it holds none.
fn lines(steady: &Steady, visit: &str) -> Vec<Value> {
    let mut file = Vec::new();
    let visits = [visit.to_owned()];
    let wanted = Wanted { visits: &visits, papers: false, locale: None, sheet: None };
    if steady.export(wanted, &mut file).is_err() {
        return Vec::new();
    }
    let text = String::from_utf8_lossy(&file).into_owned();
    let entries = text.lines().filter(|line| line.contains("\"body\":"));
    entries.filter_map(|line| serde_json::from_str(&line[line.find("{\"")?..]).ok()).collect()
}
