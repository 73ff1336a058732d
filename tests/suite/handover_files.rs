//! Handover files built by hand, right and wrong: a zip writer that can say anything, and the manifest's
//! form written down a second time, so that the reader is not tested with its own writer alone.
//!
//! Zip structures: PKWARE APPNOTE.TXT 6.3.10, sections 4.3.7, 4.3.12, 4.3.16.

use serde_json::{Value, json};
use sha2::{Digest, Sha256};
use steady_core::app::Steady;
use steady_core::signing::key::DeviceKey;

use crate::support::{ask, code};

/// An entry of a zip, with every field open to lies.
#[derive(Debug, Clone)]
pub struct Entry {
    pub name: Vec<u8>,
    /// The bytes as they stand in the file.
    pub data: Vec<u8>,
    pub method: u16,
    pub flags: u16,
    pub date: u16,
    pub attributes: u32,
    /// Length before compression, where it is not that of `data`.
    pub claimed: Option<u32>,
    pub extra: Vec<u8>,
}

impl Entry {
    pub fn new(name: &str, data: &[u8]) -> Self {
        Self {
            name: name.as_bytes().to_vec(),
            data: data.to_vec(),
            method: 0,
            flags: 0,
            date: 0x21,
            attributes: 0o100_644 << 16,
            claimed: None,
            extra: Vec::new(),
        }
    }

    fn shared(&self) -> Vec<u8> {
        let mut bytes = Vec::new();
        for number in [10, self.flags, self.method, 0, self.date] {
            bytes.extend(number.to_le_bytes());
        }
        let length = u32::try_from(self.data.len()).unwrap();
        for number in [crc32fast::hash(&self.data), length, self.claimed.unwrap_or(length)] {
            bytes.extend(number.to_le_bytes());
        }
        for length in [self.name.len(), self.extra.len()] {
            bytes.extend(u16::try_from(length).unwrap().to_le_bytes());
        }
        bytes
    }
}

/// A zip of these entries.
pub fn zip(entries: &[Entry]) -> Vec<u8> {
    let (mut file, mut directory) = (Vec::new(), Vec::new());
    for entry in entries {
        let offset = u32::try_from(file.len()).unwrap();
        file.extend([b"PK\x03\x04", &entry.shared()[..], &entry.name, &entry.extra, &entry.data].concat());
        directory.extend([b"PK\x01\x02", &[20, 3][..], &entry.shared(), &[0; 6]].concat());
        directory.extend(entry.attributes.to_le_bytes());
        directory.extend(offset.to_le_bytes());
        directory.extend([&entry.name[..], &entry.extra].concat());
    }
    let count = u16::try_from(entries.len()).unwrap().to_le_bytes();
    let (length, offset) = (directory.len(), file.len());
    file.extend(directory);
    file.extend([b"PK\x05\x06", &[0; 4][..], &count, &count].concat());
    for number in [length, offset] {
        file.extend(u32::try_from(number).unwrap().to_le_bytes());
    }
    file.extend([0; 2]);
    file
}

/// The entries of a handover file, read front to back by their local headers.
pub fn entries(file: &[u8]) -> Vec<Entry> {
    let number = |at: usize| u32::from_le_bytes(file[at..at + 4].try_into().unwrap()) as usize;
    let (mut found, mut at) = (Vec::new(), 0);
    while file[at..].starts_with(b"PK\x03\x04") {
        let name = usize::from(u16::from_le_bytes(file[at + 26..at + 28].try_into().unwrap()));
        let (start, length) = (at + 30 + name, number(at + 18));
        let text = std::str::from_utf8(&file[at + 30..start]).unwrap();
        found.push(Entry::new(text, &file[start..start + length]));
        at = start + length;
    }
    found
}

pub fn hex(bytes: &[u8]) -> String {
    steady_core::model::hex::encode(bytes)
}

pub fn sha256(bytes: &[u8]) -> String {
    hex(&Sha256::digest(bytes))
}

/// A stranger's key.
pub fn key() -> DeviceKey {
    DeviceKey::from_seed(&[7; 32])
}

/// A device that nobody has met.
pub fn stranger() -> String {
    key().public().hex()
}

/// Manifest, signature and parts of a stranger's file, signed after `change` had its way.
pub fn sealed(parts: &[(String, Vec<u8>)], change: impl FnOnce(&mut Value)) -> Vec<Entry> {
    let listed = parts
        .iter()
        .map(|(name, bytes)| json!({ "name": name, "bytes": bytes.len(), "sha256": sha256(bytes) }));
    let mut manifest = json!({
        "format": "steady handover", "version": 2, "made_by": "0.1.0", "at": 1_795_599_000_000_i64,
        "device": stranger(), "missing": [], "parts": listed.collect::<Vec<_>>(),
    });
    change(&mut manifest);
    let text = manifest.to_string().into_bytes();
    let mut entries =
        vec![Entry::new("manifest.json", &text), Entry::new("manifest.sig", &key().sign(&text))];
    entries.extend(parts.iter().map(|(name, bytes)| Entry::new(name, bytes)));
    entries
}

/// A ledger line that a stranger wrote, hashed as the ledger does it, and signed with the stranger's key if its device
/// signs: rightly in the stranger's own name, forged in any other. The last hash goes in and out by `prev`.
pub fn line(visit: &str, device: &str, seq: u64, prev: &mut String, body: &str) -> Value {
    let at = 1_795_599_000_000_i64 + i64::try_from(seq).unwrap();
    let hash = sha256(format!("steady entry 1\n{visit}\n{device}\n{seq}\n{at}\n{prev}\n{body}").as_bytes());
    let before = std::mem::replace(prev, hash.clone());
    let line = json!({ "visit": visit, "device": device, "seq": seq, "at": at, "prev": before, "hash": hash, "body": body });
    if device.len() == 64 { signed(line) } else { line }
}

/// A line with the stranger's signature over its hash.
pub fn signed(line: Value) -> Value {
    signed_by(&key(), line)
}

/// A line with a device's signature over its hash.
pub fn signed_by(key: &DeviceKey, mut line: Value) -> Value {
    let message = format!("steady line 1\n{}", line["hash"].as_str().unwrap());
    line["signature"] = json!(hex(&key.sign(message.as_bytes())));
    line
}

/// A ledger's part of these lines.
pub fn ledger(visit: &str, lines: &[Value]) -> (String, Vec<u8>) {
    let text: String = lines.iter().map(|line| format!("{line}\n")).collect();
    (format!("visits/{visit}.jsonl"), text.into_bytes())
}

/// A small visit with one small photo.
pub fn small_visit(steady: &Steady, plate: &str) -> String {
    let intake =
        json!({ "vehicle": { "layout": "torque-tube", "plate": plate }, "owner": { "name": "Åsa O'Brien" } });
    let visit = ask(steady, json!({ "ask": "open", "intake": intake })).visit;
    keep_photo(steady, &visit, 40);
    visit
}

/// A small plain JPEG of this shade.
pub fn jpeg(shade: u8) -> Vec<u8> {
    let mut picture = Vec::new();
    image::RgbImage::from_pixel(160, 160, image::Rgb([shade; 3]))
        .write_to(&mut std::io::Cursor::new(&mut picture), image::ImageFormat::Jpeg)
        .unwrap();
    picture
}

/// The same, base64.
pub fn plain_photo(shade: u8) -> String {
    use base64::Engine;
    base64::engine::general_purpose::STANDARD.encode(jpeg(shade))
}

/// Keeps a plain photo of this shade.
pub fn keep_photo(steady: &Steady, visit: &str, shade: u8) {
    let upload = "0191d2f0-0000-7000-8000-000000000003";
    let base64 = plain_photo(shade);
    assert_eq!(
        code(steady, json!({ "ask": "upload", "upload": upload, "index": 0, "base64": base64 })),
        "ok"
    );
    ask(
        steady,
        json!({ "ask": "keep-photo", "visit": visit, "step": "shield-and-mounts", "upload": upload }),
    );
}
