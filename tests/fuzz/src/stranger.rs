//! Handover files of a stranger's device, signed and chained as they should be, around bodies that may be anything.

use std::io::{self, Cursor, Read};

use serde_json::{Value, json};
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

/// A device whose seed is this byte over and over.
pub fn device(seed: u8) -> Writer {
    Writer::of(DeviceKey::from_seed(&[seed; 32]))
}

/// The file with one visit, an entry for each body, written and carried by one device.
#[allow(dead_code, reason = "each target uses its share")]
pub fn file(visit: &str, bodies: &[&str]) -> Vec<u8> {
    let stranger = device(7);
    carried(&[(visit.to_owned(), chain(visit, &stranger, bodies))], &stranger)
}

/// The file with these visits, carried by that device whoever wrote their lines.
pub fn carried(visits: &[(String, Vec<Value>)], carrier: &Writer) -> Vec<u8> {
    let ledgers: Vec<(String, Vec<u8>)> =
        visits.iter().map(|(visit, lines)| (ledger_name(visit), text(lines))).collect();
    let mut open = |name: &str| -> io::Result<Box<dyn Read>> {
        let ledger = ledgers.iter().find(|ledger| ledger.0 == name).map(|ledger| ledger.1.clone());
        Ok(Box::new(Cursor::new(ledger.unwrap_or_default())))
    };
    let parts: Vec<_> = ledgers
        .iter()
        .map(|ledger| measure(&ledger.0, &mut open).expect("a part in memory can be measured"))
        .collect();
    let made = Made { by: "0.1.0".to_owned(), at: Moment(AT), device: carrier.device.clone() };
    let mut file = Vec::new();
    write(made, Vec::new(), &parts, carrier.key(), (&mut open, &mut file))
        .expect("a part in memory can be written");
    file
}

/// A device's chain in a visit, an entry for each body.
pub fn chain(visit: &str, writer: &Writer, bodies: &[&str]) -> Vec<Value> {
    let mut prev = "0".repeat(64);
    let mut lines = Vec::new();
    for (seq, body) in (1_i64..).zip(bodies) {
        let mut line = json!({
            "visit": visit, "device": writer.device, "seq": seq, "at": AT + seq, "prev": prev, "body": body
        });
        sign(&mut line, writer);
        line["hash"].as_str().unwrap_or_default().clone_into(&mut prev);
        lines.push(line);
    }
    lines
}

/// The line's hash anew, and this device's signature over it.
pub fn sign(line: &mut Value, writer: &Writer) {
    let hash = hash(line);
    line["signature"] = writer.sign(&hash).into();
    line["hash"] = hash.into();
}

/// SHA-256 over what a line says.
pub fn hash(line: &Value) -> String {
    let of = |name: &str| line[name].as_str().unwrap_or_default();
    let (visit, device, prev, body) = (of("visit"), of("device"), of("prev"), of("body"));
    let (seq, at) = (&line["seq"], &line["at"]);
    let sum = Sha256::digest(format!("steady entry 1\n{visit}\n{device}\n{seq}\n{at}\n{prev}\n{body}"));
    steady_core::model::hex::encode(&sum)
}

fn text(lines: &[Value]) -> Vec<u8> {
    lines.iter().map(|line| format!("{line}\n")).collect::<String>().into_bytes()
}
