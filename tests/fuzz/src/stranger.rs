//! A handover file of a stranger's device, signed and chained as it should be, around bodies that may be anything.

use std::io::{self, Cursor, Read};

use serde_json::json;
use sha2::{Digest, Sha256};
use steady_core::handover::manifest::{Made, ledger_name};
use steady_core::handover::write::{measure, write};
use steady_core::model::time::Moment;
use steady_core::signing::key::DeviceKey;
use steady_core::signing::line::Writer;

const AT: i64 = 1_795_599_000_000;

/// The stranger's visit of this number.
pub fn visit(number: u32) -> String {
    format!("0191d2f0-0000-7000-8000-{number:012x}")
}

/// The file with one visit, an entry for each body.
pub fn file(visit: &str, bodies: &[&str]) -> Vec<u8> {
    let stranger = Writer::of(DeviceKey::from_seed(&[7; 32]));
    let ledger = ledger(visit, &stranger, bodies);
    let mut open = |_: &str| -> io::Result<Box<dyn Read>> { Ok(Box::new(Cursor::new(ledger.clone()))) };
    let part = measure(&ledger_name(visit), &mut open).expect("a part in memory can be measured");
    let made = Made { by: "0.1.0".to_owned(), at: Moment(AT), device: stranger.device.clone() };
    let mut file = Vec::new();
    write(made, Vec::new(), &[part], stranger.key(), (&mut open, &mut file)).expect("a part in memory can be written");
    file
}

fn ledger(visit: &str, stranger: &Writer, bodies: &[&str]) -> Vec<u8> {
    let device = &stranger.device;
    let mut prev = "0".repeat(64);
    let mut text = String::new();
    for (seq, body) in (1_i64..).zip(bodies) {
        let at = AT + seq;
        let sum = Sha256::digest(format!("steady entry 1\n{visit}\n{device}\n{seq}\n{at}\n{prev}\n{body}"));
        let hash: String = sum.iter().map(|byte| format!("{byte:02x}")).collect();
        let line = json!({
            "visit": visit, "device": device, "seq": seq, "at": at, "prev": prev, "hash": hash,
            "signature": stranger.sign(&hash), "body": body
        });
        text += &format!("{line}\n");
        prev = hash;
    }
    text.into_bytes()
}
