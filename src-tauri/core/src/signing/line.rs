//! The signature over a line of a ledger.
//!
//! The hash that is signed covers every field of the line and, through `prev`, all lines before it in its chain.
//! So each line carries a proof of the whole chain up to it: whoever holds a beginning of a chain, of whatever
//! length, can prove it, and one look at the newest signature proves all before it.

use super::key::{DeviceKey, PublicKey, SIGNATURE_BYTES};
use crate::model::hex;

/// Tells a line's signature from any other that the key makes: a manifest begins with a brace.
const DOMAIN: &str = "steady line 1\n";

fn message(hash: &str) -> Vec<u8> {
    [DOMAIN, hash].concat().into_bytes()
}

/// The device that writes here.
#[derive(Debug)]
pub struct Writer {
    /// Its id: its public key.
    pub device: String,
    key: DeviceKey,
}

impl Writer {
    /// The device with this key.
    pub fn of(key: DeviceKey) -> Self {
        Self { device: key.public().hex(), key }
    }

    /// Its key pair.
    pub fn key(&self) -> &DeviceKey {
        &self.key
    }

    /// The signature over a line with this hash, hexadecimal.
    pub fn sign(&self, hash: &str) -> String {
        hex::encode(&self.key.sign(&message(hash)))
    }
}

/// Whether the key signed a line with this hash.
pub fn is_signed(key: &PublicKey, hash: &str, signature: &str) -> bool {
    hex::decode::<SIGNATURE_BYTES>(signature)
        .is_some_and(|signature| key.has_signed(&message(hash), &signature))
}

/// Whether a device's id is a key, so that every line of it is signed. Ids of time and chance, under which lines
/// were written before there were signatures, are of another length.
pub fn signs(device: &str) -> bool {
    device.len() == KEY_DIGITS
}

/// Hexadecimal digits of a public key.
const KEY_DIGITS: usize = 64;
