//! A device's own key pair (Ed25519, RFC 8032). A signature says that something came from the device that holds the
//! key, not who holds the device.

use ed25519_dalek::{Signature, Signer, SigningKey, VerifyingKey};

use super::code;
use crate::model::hex;

/// Length of an Ed25519 signature (RFC 8032, 5.1.6), bytes.
pub const SIGNATURE_BYTES: usize = 64;

/// A device's key pair.
#[derive(Debug, Clone)]
pub struct DeviceKey(SigningKey);

impl DeviceKey {
    /// The pair that belongs to a seed of 32 random bytes.
    pub fn from_seed(seed: &[u8; 32]) -> Self {
        Self(SigningKey::from_bytes(seed))
    }

    /// The pair of a seed written as hexadecimal digits.
    pub fn from_hex(seed: &str) -> Option<Self> {
        hex::decode(seed).map(|seed| Self::from_seed(&seed))
    }

    /// The seed as hexadecimal digits; for keeping, never for showing.
    pub fn seed_hex(&self) -> String {
        hex::encode(self.0.as_bytes())
    }

    /// Ed25519, 32 bytes; in hex it is the device's id.
    pub fn public(&self) -> PublicKey {
        PublicKey(self.0.verifying_key())
    }

    /// Ed25519; the same message gives the same signature.
    pub fn sign(&self, message: &[u8]) -> [u8; SIGNATURE_BYTES] {
        self.0.sign(message).to_bytes()
    }
}

/// A device's public key.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct PublicKey(VerifyingKey);

impl PublicKey {
    /// The key written as 64 hexadecimal digits; nothing for what is no key, or one under which many messages
    /// share a signature.
    pub fn from_hex(public: &str) -> Option<Self> {
        let key = VerifyingKey::from_bytes(&hex::decode::<32>(public)?).ok()?;
        (!key.is_weak()).then_some(Self(key))
    }

    /// The short code of a device's own id, which is its key: nobody has to prove that to itself.
    pub fn own_code(id: &str) -> String {
        hex::decode::<32>(id).map(|key| code::code(&key)).unwrap_or_default()
    }

    /// The key as 64 hexadecimal digits: the id of the device that holds it.
    ///
    /// The key itself and no hash of it: a line then proves itself, with no list of keys beside it that could be
    /// lost with a damaged page or be filled by somebody who comes first.
    pub fn hex(&self) -> String {
        hex::encode(self.0.as_bytes())
    }

    /// The short code that two people compare.
    pub fn code(&self) -> String {
        code::code(self.0.as_bytes())
    }

    /// Whether a signature belongs to a message and this key.
    pub fn has_signed(&self, message: &[u8], signature: &[u8; SIGNATURE_BYTES]) -> bool {
        self.0.verify_strict(message, &Signature::from_bytes(signature)).is_ok()
    }
}

#[cfg(test)]
mod tests {
    use super::{DeviceKey, PublicKey, hex};

    /// RFC 8032, section 7.1, tests 1 to 3: seed, public key, message, signature.
    const RFC_8032: [[&str; 4]; 3] = [
        [
            "9d61b19deffd5a60ba844af492ec2cc44449c5697b326919703bac031cae7f60",
            "d75a980182b10ab7d54bfed3c964073a0ee172f3daa62325af021a68f707511a",
            "",
            "e5564300c360ac729086e2cc806e828a84877f1eb8e5d974d873e065224901555fb8821590a33bacc61e39701cf9b46b\
             d25bf5f0595bbe24655141438e7a100b",
        ],
        [
            "4ccd089b28ff96da9db6c346ec114e0f5b8a319f35aba624da8cf6ed4fb8a6fb",
            "3d4017c3e843895a92b70aa74d1b7ebc9c982ccf2ec4968cc0cd55f12af4660c",
            "72",
            "92a009a9f0d4cab8720e820b5f642540a2b27b5416503f8fb3762223ebdb69da085ac1e43e15996e458f3613d0f11d8c\
             387b2eaeb4302aeeb00d291612bb0c00",
        ],
        [
            "c5aa8df43f9f837bedb7442f31dcb7b166d38535076f094b85ce3a2e0b4458f7",
            "fc51cd8e6218a1a38da47ed00230f0580816ed13ba3303ac5deb911548908025",
            "af82",
            "6291d657deec24024827e69c3abe01a30ce548a284743a445e3680d7db5ac3ac18ff9b538d16f290ae67f760984dc659\
             4a7c15e9716ed28dc027beceea1ec40a",
        ],
    ];

    #[test]
    fn published_signatures_come_out_and_hold() {
        for [seed, public, message, signature] in RFC_8032 {
            let key = DeviceKey::from_hex(seed).expect("a seed");
            let message = match message.len() {
                0 => Vec::new(),
                2 => hex::decode::<1>(message).expect("one byte").to_vec(),
                _ => hex::decode::<2>(message).expect("two bytes").to_vec(),
            };
            let expected = hex::decode::<64>(signature).expect("a signature");
            assert_eq!(key.public().hex(), public);
            assert_eq!(PublicKey::from_hex(public), Some(key.public()));
            assert_eq!(key.sign(&message), expected);
            assert!(key.public().has_signed(&message, &expected));
            assert!(!key.public().has_signed(b"another message", &expected));
            let mut changed = expected;
            changed[40] ^= 1;
            assert!(!key.public().has_signed(&message, &changed));
        }
    }

    #[test]
    fn weak_key_is_none() {
        // The neutral element: as key and commitment it would sign any message under a lenient check.
        assert_eq!(PublicKey::from_hex(&format!("01{}", "00".repeat(31))), None);
    }
}
