//! Writes a handover file from front to back: parts are measured first, so that the manifest can stand
//! before them.

use std::io::{self, Read, Write};

use sha2::{Digest, Sha256};

use super::container::{self, ZipEntry};
use super::fault::HandoverFault;
use super::manifest::{MANIFEST, Made, Manifest, Part, SIGNATURE};
use crate::model::hex;
use crate::signing::key::DeviceKey;

/// Where the bytes of a part come from, by its name; asked once for measuring and once for writing.
pub type Opener<'a> = dyn FnMut(&str) -> io::Result<Box<dyn Read>> + 'a;

/// A part's length and sums, before it is written.
#[derive(Debug, Clone)]
pub struct Measured {
    part: Part,
    crc: u32,
}

/// Measures a part.
///
/// # Errors
/// [`HandoverFault::Read`].
pub fn measure(name: &str, open: &mut Opener<'_>) -> Result<Measured, HandoverFault> {
    let mut source = open(name).map_err(HandoverFault::Read)?;
    let (mut digest, mut sum) = (Sha256::new(), crc32fast::Hasher::new());
    let bytes = each_piece(&mut source, |piece| {
        digest.update(piece);
        sum.update(piece);
        Ok(())
    })?;
    let part = Part { name: name.to_owned(), bytes, sha256: hex::encode(&digest.finalize()) };
    Ok(Measured { part, crc: sum.finalize() })
}

/// Writes the whole file; gives back its length in bytes. `missing` are photos that are not on the device.
///
/// # Errors
/// [`HandoverFault::TooLarge`] beyond the greatest file, [`HandoverFault::Changed`] if a part is no longer
/// what was measured, or what reading and writing say.
pub fn write(
    made: Made,
    missing: Vec<String>,
    parts: &[Measured],
    key: &DeviceKey,
    (open, sink): (&mut Opener<'_>, &mut dyn Write),
) -> Result<u64, HandoverFault> {
    let listed = parts.iter().map(|measured| measured.part.clone()).collect();
    let manifest = Manifest::new(made, missing, listed)?.bytes();
    let mut zip = Zip { sink, bytes: 0, entries: Vec::with_capacity(parts.len() + 2) };
    zip.whole(MANIFEST, &manifest)?;
    zip.whole(SIGNATURE, &key.sign(&manifest))?;
    for part in parts {
        zip.part(part, open)?;
    }
    zip.finish()
}

struct Zip<'a> {
    sink: &'a mut dyn Write,
    bytes: u64,
    entries: Vec<(String, ZipEntry)>,
}

impl Zip<'_> {
    fn put(&mut self, bytes: &[u8]) -> Result<(), HandoverFault> {
        self.bytes += bytes.len() as u64;
        if self.bytes > container::MAX_FILE {
            return Err(HandoverFault::TooLarge { part: MANIFEST.to_owned() });
        }
        self.sink.write_all(bytes).map_err(HandoverFault::Write)
    }

    fn header(&mut self, name: &str, crc: u32, bytes: u64) -> Result<(), HandoverFault> {
        let entry = ZipEntry { crc, bytes: container::short(bytes), offset: container::short(self.bytes) };
        self.entries.push((name.to_owned(), entry));
        self.put(&container::local(name, crc, entry.bytes))
    }

    fn whole(&mut self, name: &str, bytes: &[u8]) -> Result<(), HandoverFault> {
        self.header(name, crc32fast::hash(bytes), bytes.len() as u64)?;
        self.put(bytes)
    }

    fn part(
        &mut self,
        Measured { part, crc }: &Measured,
        open: &mut Opener<'_>,
    ) -> Result<(), HandoverFault> {
        self.header(&part.name, *crc, part.bytes)?;
        let mut sum = crc32fast::Hasher::new();
        let mut source = open(&part.name).map_err(HandoverFault::Read)?;
        let bytes = each_piece(&mut source, |piece| {
            sum.update(piece);
            self.put(piece)
        })?;
        let same = bytes == part.bytes && sum.finalize() == *crc;
        if same { Ok(()) } else { Err(HandoverFault::Changed { part: part.name.clone() }) }
    }

    fn finish(mut self) -> Result<u64, HandoverFault> {
        let start = self.bytes;
        let entries = std::mem::take(&mut self.entries);
        for (name, entry) in &entries {
            self.put(&container::central(name, *entry))?;
        }
        let length = self.bytes - start;
        self.put(&container::end(entries.len(), length, start))?;
        Ok(self.bytes)
    }
}

fn each_piece(
    source: &mut dyn Read,
    mut take: impl FnMut(&[u8]) -> Result<(), HandoverFault>,
) -> Result<u64, HandoverFault> {
    let mut buffer = vec![0; 64 * 1024];
    let mut bytes = 0;
    loop {
        let read = match source.read(&mut buffer) {
            Ok(0) => return Ok(bytes),
            Ok(read) => read,
            Err(fault) if fault.kind() == io::ErrorKind::Interrupted => continue,
            Err(fault) => return Err(HandoverFault::Read(fault)),
        };
        bytes += read as u64;
        take(buffer.get(..read).unwrap_or_default())?;
    }
}
