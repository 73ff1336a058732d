//! What a handover file says of itself: who made it and every part with its length and SHA-256.

use serde::{Deserialize, Serialize};

use super::fault::HandoverFault;
use crate::model::hex;
use crate::model::limits;
use crate::model::time::Moment;
use crate::signing::key::PublicKey;

/// Name of the manifest's entry.
pub const MANIFEST: &str = "manifest.json";
/// Name of the signature's entry.
pub const SIGNATURE: &str = "manifest.sig";
/// What the manifest calls its format.
const FORMAT: &str = "steady handover";
/// The form of file this program writes and reads.
const VERSION: u32 = 2;

/// The form of file whose lines nobody signed.
const BEFORE_SIGNATURES: u32 = 1;

/// Most parts of one file.
pub const MAX_PARTS: usize = limits::HANDOVER_PARTS;
/// Longest manifest, bytes.
pub const MAX_MANIFEST: u64 = limits::MANIFEST_BYTES;
/// Longest ledger of one visit, bytes.
pub const MAX_LEDGER: u64 = limits::LEDGER_BYTES;
/// Longest kept photo, bytes.
pub const MAX_PHOTO: u64 = limits::PHOTO_BYTES;
/// Longest paper, bytes.
pub const MAX_PAPER: u64 = limits::PAPER_BYTES;

/// First entry of a handover file, signed as `signature` says: names every byte that follows.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Manifest {
    format: String,
    version: u32,
    /// Version of the program that made the file.
    pub made_by: String,
    /// When, by the device's clock.
    pub at: Moment,
    /// The device that made it: its public key, 64 hexadecimal digits.
    pub device: String,
    /// SHA-256 of photos that entries name and that were not on the device.
    pub missing: Vec<String>,
    /// Every other entry of the file, in its order: visits, photos, papers, each in order of name.
    pub parts: Vec<Part>,
}

/// One part of the file.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Part {
    /// Its name in the file.
    pub name: String,
    /// Its length, bytes.
    pub bytes: u64,
    /// SHA-256 of its bytes, 64 hexadecimal digits.
    pub sha256: String,
}

/// What a part is, by its name.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord)]
pub enum PartKind {
    /// The ledger of a visit.
    Ledger(String),
    /// A photo, by its SHA-256.
    Photo(String),
    /// The thumbnail of a photo, by the photo's SHA-256.
    Thumb(String),
    /// A paper; read by people, not by Steady.
    Paper,
}

impl PartKind {
    /// What the part of this name is; nothing for a name that no handover file has.
    pub fn of(name: &str) -> Option<Self> {
        let (folder, file) = name.split_once('/')?;
        match folder {
            "visits" => {
                file.strip_suffix(".jsonl").filter(|id| is_id(id)).map(|id| Self::Ledger(id.to_owned()))
            }
            "photos" => match file.strip_suffix(".thumb.jpg") {
                Some(hash) => is_hash(hash).then(|| Self::Thumb(hash.to_owned())),
                None => file
                    .strip_suffix(".jpg")
                    .filter(|hash| is_hash(hash))
                    .map(|hash| Self::Photo(hash.to_owned())),
            },
            "papers" => is_paper(file).then_some(Self::Paper),
            _ => None,
        }
    }

    /// Longest part of this kind, bytes.
    pub fn max_bytes(&self) -> u64 {
        match self {
            Self::Ledger(_) => MAX_LEDGER,
            Self::Photo(_) | Self::Thumb(_) => MAX_PHOTO,
            Self::Paper => MAX_PAPER,
        }
    }

    fn rank(&self) -> u8 {
        match self {
            Self::Ledger(_) => 0,
            Self::Photo(_) | Self::Thumb(_) => 1,
            Self::Paper => 2,
        }
    }
}

/// Name of a visit's ledger in the file.
pub fn ledger_name(visit: &str) -> String {
    format!("visits/{visit}.jsonl")
}

/// Names of a photo and its thumbnail in the file.
pub fn photo_names(sha256: &str) -> [String; 2] {
    [format!("photos/{sha256}.jpg"), format!("photos/{sha256}.thumb.jpg")]
}

/// A visit's id: a UUID in its usual form, lower case.
pub fn is_id(text: &str) -> bool {
    text.len() == 36 && uuid::Uuid::try_parse(text).is_ok_and(|id| id.to_string() == text)
}

/// A SHA-256 in hexadecimal digits, lower case.
pub fn is_hash(text: &str) -> bool {
    hex::decode::<32>(text).is_some()
}

fn is_paper(file: &str) -> bool {
    let Some((stem, ending)) = file.split_once('.') else { return false };
    let plain = |byte: u8| byte.is_ascii_lowercase() || byte.is_ascii_digit() || byte == b'-';
    (1..=80).contains(&stem.len()) && stem.bytes().all(plain) && ["pdf", "txt"].contains(&ending)
}

impl Manifest {
    /// A manifest of this version, checked.
    ///
    /// # Errors
    /// As [`Manifest::read`].
    pub fn new(made: Made, missing: Vec<String>, parts: Vec<Part>) -> Result<Self, HandoverFault> {
        let Made { by, at, device } = made;
        let format = FORMAT.to_owned();
        let manifest = Self { format, version: VERSION, made_by: by, at, device, missing, parts };
        manifest.check().map(|()| manifest)
    }

    /// Reads and checks a manifest.
    ///
    /// # Errors
    /// [`HandoverFault::Unknown`], [`HandoverFault::Newer`], [`HandoverFault::BeforeSignatures`], or what is wrong
    /// with its list of parts.
    pub fn read(bytes: &[u8]) -> Result<Self, HandoverFault> {
        let head: Head = serde_json::from_slice(bytes).map_err(|_| HandoverFault::Unknown)?;
        if head.format != FORMAT {
            return Err(HandoverFault::Unknown);
        }
        if head.version > VERSION {
            return Err(HandoverFault::Newer);
        }
        if head.version == BEFORE_SIGNATURES {
            return Err(HandoverFault::BeforeSignatures);
        }
        let manifest: Self = serde_json::from_slice(bytes).map_err(|_| HandoverFault::Unknown)?;
        manifest.check().map(|()| manifest)
    }

    /// The bytes that are signed.
    pub fn bytes(&self) -> Vec<u8> {
        serde_json::to_vec(self).unwrap_or_default()
    }

    fn check(&self) -> Result<(), HandoverFault> {
        let too_large = || HandoverFault::TooLarge { part: MANIFEST.to_owned() };
        if self.parts.len() > MAX_PARTS || self.missing.len() > MAX_PARTS {
            return Err(too_large());
        }
        let total: u64 = self.parts.iter().fold(0, |sum, part| sum.saturating_add(part.bytes));
        if total > super::container::MAX_FILE {
            return Err(too_large());
        }
        if self.version != VERSION
            || PublicKey::from_hex(&self.device).is_none()
            || !self.missing.iter().all(|hash| is_hash(hash))
            || self.made_by.chars().count() > limits::LINE
            || !limits::is_printable(&self.made_by, false)
        {
            return Err(HandoverFault::Unknown);
        }
        let mut before: Option<(u8, &str)> = None;
        for (index, part) in self.parts.iter().enumerate() {
            let misnamed = || HandoverFault::Name { place: index + 1 };
            let kind = PartKind::of(&part.name).ok_or_else(misnamed)?;
            let here = (kind.rank(), part.name.as_str());
            // In order, and so no name twice.
            if before.is_some_and(|before| before >= here) {
                return Err(misnamed());
            }
            before = Some(here);
            check_part(part, &kind)?;
            let next = self.parts.get(index + 1).map(|part| part.name.as_str());
            let previous = index.checked_sub(1).and_then(|index| self.parts.get(index));
            check_pair(&kind, previous.map(|part| part.name.as_str()), next)?;
        }
        Ok(())
    }
}

fn check_part(part: &Part, kind: &PartKind) -> Result<(), HandoverFault> {
    let named = || part.name.clone();
    if part.bytes > kind.max_bytes() {
        return Err(HandoverFault::TooLarge { part: named() });
    }
    let right = is_hash(&part.sha256) && !matches!(kind, PartKind::Photo(hash) if *hash != part.sha256);
    if right { Ok(()) } else { Err(HandoverFault::Changed { part: named() }) }
}

/// A photo is followed by its thumbnail, and a thumbnail follows its photo.
fn check_pair(kind: &PartKind, previous: Option<&str>, next: Option<&str>) -> Result<(), HandoverFault> {
    let (wanted, found) = match kind {
        PartKind::Photo(hash) => (photo_names(hash)[1].clone(), next),
        PartKind::Thumb(hash) => (photo_names(hash)[0].clone(), previous),
        PartKind::Ledger(_) | PartKind::Paper => return Ok(()),
    };
    if found == Some(wanted.as_str()) { Ok(()) } else { Err(HandoverFault::Missing { part: wanted }) }
}

/// Who made a file and when.
#[derive(Debug, Clone)]
pub struct Made {
    /// Version of the program.
    pub by: String,
    /// By that device's clock.
    pub at: Moment,
    /// The device: its public key.
    pub device: String,
}

/// Enough of any version's manifest to say that it is one.
#[derive(Deserialize)]
struct Head {
    format: String,
    version: u32,
}
