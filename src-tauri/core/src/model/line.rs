//! A ledger line before its body is read: the hash is over the text as it stands, so the text travels.

use serde::{Deserialize, Serialize};

use super::time::Moment;

/// One line of a visit's ledger as stored, and as carried in a handover file.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Line {
    /// The visit it belongs to.
    pub visit: String,
    /// The device that wrote it.
    pub device: String,
    /// Its place in the chain of this visit and device, from 1.
    pub seq: u64,
    /// When it was written, by the device's clock.
    pub at: Moment,
    /// SHA-256 of the line before it in the chain, in hex; 64 zeros for the first.
    pub prev: String,
    /// SHA-256 over this line's fields, in hex.
    pub hash: String,
    /// The device's signature over the hash, in hex; none where it was written before there were signatures.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub signature: Option<String>,
    /// The entry's body, JSON, byte for byte as it was hashed.
    pub body: String,
}
