//! What has been seen of a handover file so far, so that no photo is missing and none is extra.

use std::collections::BTreeSet;
use std::io::Read;

use crate::handover::fault::HandoverFault;
use crate::handover::manifest::{PartKind, photo_names};
use crate::handover::read::Reader;
use crate::model::entry::EntryBody;
use crate::model::line::Line;
use crate::photos::kept;

/// Photos that ledgers name and that the file carries.
#[derive(Debug, Default)]
pub struct Seen {
    named: BTreeSet<String>,
    carried: BTreeSet<String>,
}

impl Seen {
    /// Reads the ledger that comes next and notes its photos.
    ///
    /// # Errors
    /// [`HandoverFault`].
    pub fn ledger<R: Read>(
        &mut self,
        reader: &mut Reader<R>,
        name: &str,
    ) -> Result<Vec<Line>, HandoverFault> {
        let bytes = reader.whole()?;
        let lines = lines(&bytes).ok_or_else(|| HandoverFault::Chain { part: name.to_owned() })?;
        for line in &lines {
            // What cannot be read is refused with its chain, under a name that says why.
            let Ok(body) = serde_json::from_str::<EntryBody>(&line.body) else { continue };
            self.named.extend(body.photo().map(|photo| photo.sha256.clone()));
        }
        Ok(lines)
    }

    /// Reads the photo or thumbnail that comes next.
    ///
    /// # Errors
    /// [`HandoverFault::Extra`] if no ledger names it, [`HandoverFault::Photo`] if it is not as Steady
    /// keeps photos.
    pub fn photo<R: Read>(&mut self, reader: &mut Reader<R>, name: &str) -> Result<Vec<u8>, HandoverFault> {
        if let Some(PartKind::Photo(sha256) | PartKind::Thumb(sha256)) = PartKind::of(name) {
            if !self.named.contains(&sha256) {
                return Err(HandoverFault::Extra { part: name.to_owned() });
            }
            self.carried.insert(sha256);
        }
        let bytes = reader.whole()?;
        kept::check(&bytes).map_err(|_| HandoverFault::Photo { part: name.to_owned() })?;
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

fn lines(bytes: &[u8]) -> Option<Vec<Line>> {
    let text = std::str::from_utf8(bytes).ok()?.strip_suffix('\n')?;
    text.split('\n').map(|line| serde_json::from_str(line).ok()).collect()
}
