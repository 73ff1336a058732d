//! Sets and maps by an entry's hash. SHA-256 spreads its digits evenly already: hashing all 64 of them once more, for each
//! entry at each answer, would be the dearest part of reading a visit.

use std::collections::{HashMap, HashSet};
use std::hash::{BuildHasherDefault, Hasher};

/// A set of entries' hashes.
pub type HashesSeen<'e> = HashSet<&'e str, BuildHasherDefault<FirstDigits>>;

/// Something by an entry's hash.
pub type ByHash<'e, T> = HashMap<&'e str, T, BuildHasherDefault<FirstDigits>>;

/// A place in the table by the first sixteen digits, 64 bits of the hash. Equal is what is equal in all of them.
#[derive(Debug, Default)]
pub struct FirstDigits(u64);

/// Odd and without a pattern: the digits of the golden ratio.
const SPREAD: u64 = 0x9E37_79B9_7F4A_7C15;

impl Hasher for FirstDigits {
    fn write(&mut self, bytes: &[u8]) {
        for digits in bytes.chunks(8).take(2) {
            let digits = digits.iter().fold(0, |sum, digit| sum << 8 | u64::from(*digit));
            self.0 = (self.0 ^ digits).wrapping_mul(SPREAD).rotate_right(29);
        }
    }

    fn write_u8(&mut self, _: u8) {
        // What ends a text is the same after each.
    }

    fn finish(&self) -> u64 {
        self.0
    }
}

#[cfg(test)]
mod tests {
    use super::HashesSeen;
    use crate::model::hex;
    use sha2::{Digest, Sha256};
    use std::hash::{BuildHasher, BuildHasherDefault};

    #[test]
    fn hashes_lie_apart_and_are_told_apart_to_the_last_digit() {
        let hashes: Vec<String> =
            (0_u32..1_000).map(|number| hex::encode(&Sha256::digest(number.to_le_bytes()))).collect();
        let seen: HashesSeen<'_> = hashes.iter().map(String::as_str).collect();
        assert_eq!(seen.len(), hashes.len());
        let other = format!("{}x", hashes[0].get(..63).unwrap_or_default());
        assert!(!seen.contains(other.as_str()));
        let place = BuildHasherDefault::<super::FirstDigits>::default();
        let mut low: Vec<u64> = hashes.iter().map(|hash| place.hash_one(hash.as_str()) & 1023).collect();
        low.sort_unstable();
        low.dedup();
        // Thrown at random, 1,000 of them hit 639 of 1,024 places.
        assert!((590..690).contains(&low.len()), "{}", low.len());
    }
}
