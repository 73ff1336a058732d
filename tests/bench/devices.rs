//! A visit that as many devices wrote as one may have: each of their chains is proven by a signature of its own.

use std::path::Path;
use std::time::Duration;

use rusqlite::{Connection, params};
use sha2::{Digest as _, Sha256};
use steady_core::app::Steady;
use steady_core::app::request::Request;
use steady_core::model::hex;
use steady_core::model::limits::VISIT_WRITERS;
use steady_core::signing::key::DeviceKey;

use super::{SAMPLES, intake, open, report, standing, timed};

/// Opens a visit of 500 entries by 64 devices, taking turns with another so that nothing is at hand.
pub fn measure(folder: &Path) {
    let data = folder.join("devices");
    let steady = open(&data);
    let opened = |number: usize| standing(steady.handle(Request::Open { intake: intake(number) }).unwrap());
    let (visit, other) = (opened(1).visit, opened(2).visit);
    drop(steady);
    write_for_others(&data.join("steady.db"), &visit);
    let steady = open(&data);
    let look = |steady: &Steady, visit: &str| {
        standing(steady.handle(Request::Look { visit: visit.to_owned() }).unwrap())
    };
    let seen = look(&steady, &visit);
    assert_eq!((seen.ledger.entries, seen.ledger.broken_at), (500, None));
    assert_eq!(seen.writers.len(), VISIT_WRITERS);
    let mut times: Vec<Duration> = Vec::new();
    for _ in 0..SAMPLES {
        look(&steady, &other);
        timed(&mut times, || look(&steady, &visit));
    }
    report("opening a visit of 500 entries by 64 devices", times);
}

/// 499 more entries, in turn by 63 devices, each signed.
fn write_for_others(database: &Path, visit: &str) {
    let connection = Connection::open(database).unwrap();
    let first = "SELECT at FROM entry WHERE visit = ?1";
    let mut at: i64 = connection.query_row(first, [visit], |row| row.get(0)).unwrap();
    let seeds = 1..u8::try_from(VISIT_WRITERS).unwrap();
    let mut writers: Vec<(DeviceKey, u64, String)> =
        seeds.map(|seed| (DeviceKey::from_seed(&[seed; 32]), 0, "0".repeat(64))).collect();
    let body = r#"{"kind":"order-chosen","order":"running-first","by":"Kim Demo"}"#;
    let sql = "INSERT INTO entry (visit, device, seq, at, prev, hash, signature, body)
         VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8)";
    let others = writers.len();
    for turn in 0..499 {
        let (key, seq, prev) = &mut writers[turn % others];
        let device = key.public().hex();
        (*seq, at) = (*seq + 1, at + 1);
        let chained = format!("steady entry 1\n{visit}\n{device}\n{seq}\n{at}\n{prev}\n{body}");
        let hash = hex::encode(&Sha256::digest(chained.as_bytes()));
        let signature = hex::encode(&key.sign(format!("steady line 1\n{hash}").as_bytes()));
        let seq = i64::try_from(*seq).unwrap();
        connection.execute(sql, params![visit, device, seq, at, &*prev, hash, signature, body]).unwrap();
        *prev = hash;
    }
}
