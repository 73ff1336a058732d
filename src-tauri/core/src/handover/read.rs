//! Reads a handover file from front to back, once, in constant memory. Nothing is interpreted that the
//! manifest did not announce: every header is compared with the bytes that have to be there.

use std::io::{self, Read, Write};

use sha2::{Digest, Sha256};

use super::container::{self, CENTRAL_MARK, LOCAL_BYTES, LOCAL_MARK, ZipEntry};
use super::fault::HandoverFault;
use super::manifest::{MANIFEST, MAX_MANIFEST, Manifest, Part, SIGNATURE};
use crate::model::hex;
use crate::signing::key::{PublicKey, SIGNATURE_BYTES};

/// What a fault at the end of the file is said to be about.
const DIRECTORY: &str = "the directory at the end";

/// A handover file being read: its manifest is checked and signed, its parts are still to come.
#[derive(Debug)]
pub struct Reader<R> {
    source: Source<R>,
    manifest: Manifest,
    entries: Vec<ZipEntry>,
    next: usize,
}

impl<R: Read> Reader<R> {
    /// Reads the manifest and its signature.
    ///
    /// # Errors
    /// [`HandoverFault`]; see there.
    pub fn open(source: R) -> Result<Self, HandoverFault> {
        let mut source = Source { inner: source, bytes: 0 };
        let mut entries = Vec::new();
        let text = announced(&mut source, MANIFEST, MAX_MANIFEST, &mut entries)?;
        let manifest = Manifest::read(&text)?;
        let signature = announced(&mut source, SIGNATURE, SIGNATURE_BYTES as u64, &mut entries)?;
        let signature: [u8; SIGNATURE_BYTES] =
            signature.try_into().map_err(|_| HandoverFault::Changed { part: SIGNATURE.to_owned() })?;
        let key = PublicKey::from_hex(&manifest.device);
        if !key.is_some_and(|key| key.has_signed(&text, &signature)) {
            return Err(HandoverFault::Signature);
        }
        Ok(Self { source, manifest, entries, next: 0 })
    }

    /// Who made the file and what is in it.
    pub fn manifest(&self) -> &Manifest {
        &self.manifest
    }

    /// The part that comes next.
    pub fn upcoming(&self) -> Option<&Part> {
        self.manifest.parts.get(self.next)
    }

    /// Passes the next part on, piece by piece. What was passed on counts only once this has returned.
    ///
    /// # Errors
    /// [`HandoverFault`] if the part is not what the manifest says, or [`HandoverFault::Write`].
    pub fn pass_on(&mut self, into: &mut dyn Write) -> Result<(), HandoverFault> {
        let Some(part) = self.manifest.parts.get(self.next) else { return Ok(()) };
        let header = self.source.header(&part.name)?;
        self.expect_header(part, &header)?;
        let crc = header.crc();
        let offset = container::short(self.source.bytes - header.bytes.len() as u64);
        self.entries.push(ZipEntry { crc, bytes: container::short(part.bytes), offset });
        let (mut digest, mut sum) = (Sha256::new(), crc32fast::Hasher::new());
        let mut left = part.bytes;
        let mut buffer = vec![0; 64 * 1024];
        while left > 0 {
            let wanted = usize::try_from(left).unwrap_or(usize::MAX).min(buffer.len());
            let piece = buffer.get_mut(..wanted).unwrap_or_default();
            self.source.fill(piece)?;
            digest.update(&*piece);
            sum.update(piece);
            into.write_all(piece).map_err(HandoverFault::Write)?;
            left -= wanted as u64;
        }
        if sum.finalize() != crc || hex::encode(&digest.finalize()) != part.sha256 {
            return Err(HandoverFault::Changed { part: part.name.clone() });
        }
        self.next += 1;
        Ok(())
    }

    /// The next part as a whole; its length is bounded by the manifest's limits.
    ///
    /// # Errors
    /// As [`Reader::pass_on`].
    pub fn whole(&mut self) -> Result<Vec<u8>, HandoverFault> {
        let mut bytes = Vec::new();
        self.pass_on(&mut bytes)?;
        Ok(bytes)
    }

    /// Reads what follows the last part: the directory and nothing else. All parts must have been read.
    ///
    /// # Errors
    /// [`HandoverFault`] if a byte of it differs, or if there is more.
    pub fn finish(mut self) -> Result<(), HandoverFault> {
        let start = self.source.bytes;
        let names =
            [MANIFEST, SIGNATURE].into_iter().chain(self.manifest.parts.iter().map(|part| &*part.name));
        for (name, entry) in names.zip(&self.entries) {
            self.source.expect(&container::central(name, *entry))?;
        }
        let length = self.source.bytes - start;
        self.source.expect(&container::end(self.entries.len(), length, start))?;
        if self.source.is_at_end()? { Ok(()) } else { Err(extra_after(DIRECTORY)) }
    }

    /// Sorts what is wrong with a header by what a person would want to know.
    fn expect_header(&self, part: &Part, header: &Header) -> Result<(), HandoverFault> {
        if header.bytes == container::local(&part.name, header.crc(), container::short(part.bytes)) {
            return Ok(());
        }
        let missing = || HandoverFault::Missing { part: part.name.clone() };
        let later = self.manifest.parts.get(self.next + 1..).unwrap_or_default();
        if header.mark() == CENTRAL_MARK || later.iter().any(|later| header.names(&later.name)) {
            Err(missing())
        } else if header.mark() == LOCAL_MARK && !header.names(&part.name) {
            Err(extra_after(self.before().map_or(SIGNATURE, |before| &before.name)))
        } else {
            Err(HandoverFault::Changed { part: part.name.clone() })
        }
    }

    fn before(&self) -> Option<&Part> {
        self.next.checked_sub(1).and_then(|index| self.manifest.parts.get(index))
    }
}

fn extra_after(part: &str) -> HandoverFault {
    HandoverFault::Extra { part: format!("after {part}") }
}

/// An entry whose length only its own header tells.
fn announced<R: Read>(
    source: &mut Source<R>,
    name: &str,
    limit: u64,
    entries: &mut Vec<ZipEntry>,
) -> Result<Vec<u8>, HandoverFault> {
    let changed = || HandoverFault::Changed { part: name.to_owned() };
    let offset = container::short(source.bytes);
    let header = match source.header(name) {
        // Too short to tell what it is.
        Err(HandoverFault::CutShort) if offset == 0 => return Err(HandoverFault::Unknown),
        header => header?,
    };
    if header.mark() != LOCAL_MARK || !header.names(name) {
        return Err(if offset == 0 { HandoverFault::Unknown } else { changed() });
    }
    let (crc, bytes) = (header.crc(), header.length());
    if header.bytes != container::local(name, crc, bytes) {
        return Err(changed());
    }
    if u64::from(bytes) > limit {
        return Err(HandoverFault::TooLarge { part: name.to_owned() });
    }
    let mut content = vec![0; usize::try_from(bytes).unwrap_or_default()];
    source.fill(&mut content)?;
    if crc32fast::hash(&content) != crc {
        return Err(changed());
    }
    entries.push(ZipEntry { crc, bytes, offset });
    Ok(content)
}

#[derive(Debug)]
struct Source<R> {
    inner: R,
    bytes: u64,
}

impl<R: Read> Source<R> {
    fn fill(&mut self, buffer: &mut [u8]) -> Result<(), HandoverFault> {
        self.inner.read_exact(buffer).map_err(|fault| match fault.kind() {
            io::ErrorKind::UnexpectedEof => HandoverFault::CutShort,
            _ => HandoverFault::Read(fault),
        })?;
        self.bytes += buffer.len() as u64;
        Ok(())
    }

    /// As many bytes as the header of this name has.
    fn header(&mut self, name: &str) -> Result<Header, HandoverFault> {
        let mut bytes = vec![0; LOCAL_BYTES + name.len()];
        self.fill(&mut bytes)?;
        Ok(Header { bytes })
    }

    fn expect(&mut self, expected: &[u8]) -> Result<(), HandoverFault> {
        let mut found = vec![0; expected.len()];
        self.fill(&mut found)?;
        if found == expected {
            return Ok(());
        }
        let another = found.starts_with(&LOCAL_MARK);
        Err(if another {
            extra_after("the last")
        } else {
            HandoverFault::Changed { part: DIRECTORY.to_owned() }
        })
    }

    fn is_at_end(&mut self) -> Result<bool, HandoverFault> {
        match self.inner.read(&mut [0; 1]) {
            Ok(read) => Ok(read == 0),
            Err(fault) => Err(HandoverFault::Read(fault)),
        }
    }
}

/// A local header as read. As much of its name was read as the expected one is long.
struct Header {
    bytes: Vec<u8>,
}

impl Header {
    fn at<const N: usize>(&self, place: usize) -> [u8; N] {
        let found = self.bytes.get(place..place + N).and_then(|bytes| bytes.try_into().ok());
        found.unwrap_or([0; N])
    }

    fn mark(&self) -> [u8; 4] {
        self.at(0)
    }

    fn crc(&self) -> u32 {
        u32::from_le_bytes(self.at(14))
    }

    fn length(&self) -> u32 {
        u32::from_le_bytes(self.at(18))
    }

    /// Whether it is the header of the entry of this name, as far as it was read.
    fn names(&self, name: &str) -> bool {
        let length = usize::from(u16::from_le_bytes(self.at(26)));
        let read = self.bytes.get(LOCAL_BYTES..).unwrap_or_default();
        length == name.len()
            && name.as_bytes().starts_with(read.get(..length.min(read.len())).unwrap_or_default())
    }
}
