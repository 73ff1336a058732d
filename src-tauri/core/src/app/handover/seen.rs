//! What has been seen of a handover file so far, so that no photo is missing and none is extra.

use std::collections::BTreeSet;
use std::io::Read;

use crate::handover::fault::HandoverFault;
use crate::handover::manifest::{PartKind, photo_names};
use crate::handover::read::Reader;
use crate::model::entry::EntryBody;
use crate::model::line::Line;
use crate::photos::validate;

/// Photos that ledgers name and that the file carries.
#[derive(Debug, Default)]
pub struct Seen {
    named: BTreeSet<String>,
    /// Photos of ledgers that are set apart.
    allowed: BTreeSet<String>,
    carried: BTreeSet<String>,
}

impl Seen {
    /// The photos of a ledger that counts belong into the file.
    pub fn require(&mut self, lines: &[Line]) {
        self.named.extend(lines.iter().filter_map(photo_of));
    }

    /// Photos that a ledger may name which is set apart belong to it, there or not.
    pub fn allow(&mut self, ledger: &[u8]) {
        let text = String::from_utf8_lossy(ledger);
        let words = text.split(|letter: char| !letter.is_ascii_hexdigit());
        self.allowed.extend(words.filter(|word| word.len() == 64).map(str::to_owned));
    }

    /// Reads the photo or thumbnail that comes next.
    ///
    /// # Errors
    /// [`HandoverFault::Extra`] if no ledger names it, [`HandoverFault::Photo`] if it is not as Steady
    /// keeps photos.
    pub fn photo<R: Read>(&mut self, reader: &mut Reader<R>, name: &str) -> Result<Vec<u8>, HandoverFault> {
        if let Some(PartKind::Photo(sha256) | PartKind::Thumb(sha256)) = PartKind::of(name) {
            if !self.named.contains(&sha256) && !self.allowed.contains(&sha256) {
                return Err(HandoverFault::Extra { part: name.to_owned() });
            }
            self.carried.insert(sha256);
        }
        let bytes = reader.whole()?;
        validate::check(&bytes).map_err(|_| HandoverFault::Photo { part: name.to_owned() })?;
        Ok(bytes)
    }

    /// Whether every photo is there, but for those the manifest says were not on the device.
    ///
    /// # Errors
    /// [`HandoverFault::Missing`].
    pub fn complete(&self, missing: &[String]) -> Result<(), HandoverFault> {
        let missing: BTreeSet<&String> = missing.iter().collect();
        let lacking = |sha256: &&String| !self.carried.contains(*sha256) && !missing.contains(sha256);
        match self.named.iter().find(lacking) {
            Some(sha256) => {
                let [part, _] = photo_names(sha256);
                Err(HandoverFault::Missing { part })
            }
            None => Ok(()),
        }
    }
}

/// The photo a line names, if it names one.
pub fn photo_of(line: &Line) -> Option<String> {
    let body: EntryBody = serde_json::from_str(&line.body).ok()?;
    body.photo().map(|photo| photo.sha256.clone())
}

/// Lines as bytes of a part.
pub fn text(lines: &[Line]) -> Vec<u8> {
    let mut text = Vec::new();
    for line in lines {
        text.extend(serde_json::to_vec(line).unwrap_or_default());
        text.push(b'\n');
    }
    text
}

/// The lines of a part.
///
/// # Errors
/// [`HandoverFault::Chain`] for what are no lines.
pub fn lines(bytes: &[u8], part: &str) -> Result<Vec<Line>, HandoverFault> {
    let text = std::str::from_utf8(bytes).ok().and_then(|text| text.strip_suffix('\n'));
    let lines = text.and_then(|text| text.split('\n').map(|line| serde_json::from_str(line).ok()).collect());
    lines.ok_or_else(|| HandoverFault::Chain { part: part.to_owned() })
}
